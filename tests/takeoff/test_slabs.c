/* The ground within a wall's inner face, in slabs: by hand, and against GEOS on random beds. */
#include "takeoff/watering/slabs.h"
#include "base/measure.h"
#include "support/beds.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>

enum { RANDOM_BEDS = 150 };

static struct garden garden;
static struct arena arena;

static void setup(void)
{
	arena = ARENA_EMPTY;
}

static void teardown(void)
{
	arena_clear(&arena);
	garden_fini(&garden);
}

static struct slabs slabs_of(int region, nm depth)
{
	const struct basis basis = { .plot = &garden.takeoff.plot,
		.survey = &garden.takeoff.survey };
	struct slabs slabs;

	slabs_find(&slabs, &arena, &basis, region, depth);
	return slabs;
}

static void chord_is(const struct chord *chord, double from, double to)
{
	ck_assert_double_eq_tol(metres(chord->from) / 0.3048, from, 1e-9);
	ck_assert_double_eq_tol(metres(chord->to) / 0.3048, to, 1e-9);
}

/* 8 x 4 ft with a wall 6 in deep leaves 7 x 3 ft. */
START_TEST(a_rectangle_is_one_slab)
{
	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);

	struct slabs slabs = slabs_of(0, NM_PER_FOOT / 2);

	ck_assert_int_eq(slabs.count, 1);
	ck_assert(!slabs.is_upright);
	chord_is(&slabs.box, 0.5, 7.5);
	ck_assert_int_eq(slabs.near, NM_PER_FOOT / 2);
	ck_assert_int_eq(slabs.far, 7 * NM_PER_FOOT / 2);
	ck_assert_int_eq(slabs.list[0].count, 1);
	chord_is(slabs.list[0].chords, 0.5, 7.5);
}
END_TEST

START_TEST(the_longer_direction_is_along)
{
	garden_rows(&garden, (const char *const[]){ "...", ".bb", ".bb", ".bb", NULL });
	garden_count(&garden);

	struct slabs slabs = slabs_of(0, 0);

	ck_assert(slabs.is_upright);
	chord_is(&slabs.box, 0, 3);
	ck_assert_int_eq(slabs.far, 2 * NM_PER_FOOT);
}
END_TEST

/* An ell, and a hole in a bed: taped from the upper left corner of what the bed lies in. */
START_TEST(each_slab_has_the_chords_that_cross_it)
{
	int count;

	garden_rows(&garden, (const char *const[]){ "......", "bbbbbb", "bb..bb", "bbbbbb",
		"bb....", NULL });
	garden_count(&garden);

	struct slabs slabs = slabs_of(0, 0);

	ck_assert_int_eq(slabs.count, 4);
	ck_assert_int_eq(slabs.list[1].count, 2);
	chord_is(&slabs.list[1].chords[0], 0, 2);
	chord_is(&slabs.list[1].chords[1], 4, 6);
	chord_is(&slabs.list[3].chords[0], 0, 2);
	/* on the line between two slabs both count */
	chord_is(slabs_at(&slabs, &arena, NM_PER_FOOT, &count), 0, 6);
	ck_assert_int_eq(count, 1);
	slabs_at(&slabs, &arena, 3 * NM_PER_FOOT / 2, &count);
	ck_assert_int_eq(count, 2);
	ck_assert_ptr_eq(slab_holding(&slabs.list[1], &slabs.list[3].chords[0]),
		&slabs.list[1].chords[0]);
	ck_assert_ptr_null(slab_holding(&slabs.list[1], &slabs.list[0].chords[0]));
}
END_TEST

/* ---- GEOS ------------------------------------------------------------------------------------ */

static GEOSGeometry *slabs_shape(GEOSContextHandle_t geos, const struct slabs *slabs,
	const struct region *region)
{
	double x = metres(region->left * garden.takeoff.survey.cell);
	double y = metres(region->first_cell.y * garden.takeoff.survey.cell);
	struct geos_box *boxes = NULL;
	size_t count = 0, capacity = 0;

	for (int i = 0; i < slabs->count; i++)
		for (int j = 0; j < slabs->list[i].count; j++) {
			const struct slab *slab = &slabs->list[i];
			double from = metres(slab->chords[j].from), to = metres(slab->chords[j].to);
			double near = metres(slab->from), far = metres(slab->to);

			boxes = arena_grow(&arena, boxes, count, &capacity, sizeof *boxes);
			boxes[count++] = slabs->is_upright ?
				(struct geos_box){ x + near, y + from, x + far, y + to } :
				(struct geos_box){ x + from, y + near, x + to, y + far };
		}
	return geos_union(geos, boxes, count);
}

START_TEST(slabs_are_the_offset_that_geos_finds)
{
	struct random random = { (uint64_t)_i };
	GEOSContextHandle_t geos = geos_start();

	beds_at_random(&garden.plot, &random, 4, 3);
	garden_count(&garden);
	for (int i = 0; i < garden.takeoff.walls.count; i++) {
		const struct wall *wall = &garden.takeoff.walls.list[i];
		struct slabs slabs = slabs_of(wall->region, wall->block.across);
		GEOSGeometry *bed = beds_shape(geos, &garden.takeoff.survey, wall->region);
		GEOSGeometry *inner = geos_offset(geos, bed, -metres(wall->block.across));
		GEOSGeometry *found = slabs_shape(geos, &slabs,
			&garden.takeoff.survey.regions[wall->region]);

		ck_assert_double_lt(geos_apart(geos, inner, found), 1e-6);
		ck_assert_double_eq_tol(geos_area(geos, found), wall->inner_area, 1e-6);
		geos_free(geos, bed);
		geos_free(geos, inner);
		geos_free(geos, found);
	}
	geos_end(geos);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("slabs");
	TCase *cases = suite_case(suite, "cases"), *random = suite_case(suite, "random");

	tcase_add_checked_fixture(cases, setup, teardown);
	tcase_add_test(cases, a_rectangle_is_one_slab);
	tcase_add_test(cases, the_longer_direction_is_along);
	tcase_add_test(cases, each_slab_has_the_chords_that_cross_it);
	tcase_add_checked_fixture(random, setup, teardown);
	tcase_add_loop_test(random, slabs_are_the_offset_that_geos_finds, 0,
		runner_count(RANDOM_BEDS / 5, RANDOM_BEDS));
	return suite;
}
