/* Zones of what is dug: cases reckoned by hand, and random plots against GEOS. */
#include "takeoff/ground/zones.h"

#include "support/digging.h"
#include "support/garden.h"
#include "support/runner.h"

#include <stdlib.h>

enum { RANDOM_PLOTS = 150 };

static const double EXACT = 1e-9, GEOS_NEAR = 1e-7;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static double area(int region, enum dig_part part)
{
	const struct zones *zones = &garden.takeoff.zones;

	for (int i = 0; i < zones->count; i++)
		if (zones->list[i].region == region && zones->list[i].part == part)
			return zones->list[i].area / SQUARE_FOOT;
	ck_abort_msg("region %d has no zone of part %d", region, (int)part);
	return -1;
}

/* 8 x 4 ft outside, block 8 in deep, base 6 in past its outer face and 2 in past its inner one: 9 x
 * 5 ft less the 6 ft 4 in x 2 ft 4 in that lie further in than 10 in, by arithmetic. */
START_TEST(a_wall_alone_has_its_ring_and_the_reach_on_both_sides)
{
	garden_rows(&garden, (const char *const[]){ "..........", ".bbbbbbbb.", ".bbbbbbbb.",
		".bbbbbbbb.", ".bbbbbbbb.", "..........", NULL });
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.zones.count, 1);
	ck_assert_double_eq_tol(area(0, DIG_WALL), 45 - 19.0 / 3 * 7 / 3, EXACT);
}
END_TEST

START_TEST(nothing_is_dug_outside_the_plan)
{
	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	ck_assert_double_eq_tol(area(0, DIG_WALL), 32 - 19.0 / 3 * 7 / 3, EXACT);
}
END_TEST

START_TEST(a_wall_stops_where_a_path_or_a_fixture_has_its_base)
{
	garden_rows(&garden, (const char *const[]){ "ppppppppppp", ".bbbbbbbbS.", ".bbbbbbbbS.",
		".bbbbbbbb..", ".bbbbbbbb..", "...........", NULL });
	garden_count(&garden);
	/* Of the 13 sq ft of reach outside, 9 x 1/2 are path and 2 x 1/2 fixture. */
	ck_assert_double_eq_tol(area(1, DIG_WALL), 45 - 19.0 / 3 * 7 / 3 - 4.5 - 1, EXACT);
	ck_assert_double_eq_tol(area(0, DIG_PATH), 11, EXACT);
	ck_assert_double_eq_tol(area(2, DIG_PAD), 2, EXACT);
}
END_TEST

START_TEST(between_two_beds_the_first_has_the_ground)
{
	garden_rows(&garden, (const char *const[]){ "aaaabbbb", "aaaabbbb", "aaaabbbb", "aaaabbbb",
		NULL });
	plot_set(&garden.plot, 'b', BED_REACH, "0 in");
	plot_set(&garden.plot, 'b', BED_REACH_IN, "0 in");
	garden_count(&garden);
	/* 4 x 4 ft less 2 ft 4 in square, and half a foot of the neighbour's side; the neighbour
	 * has its 40 in square ring of 8 in, less that. */
	ck_assert_double_eq_tol(area(0, DIG_WALL), 16 - 49.0 / 9 + 2, EXACT);
	ck_assert_double_eq_tol(area(1, DIG_WALL), 16 - 64.0 / 9 - 2, EXACT);
}
END_TEST

static const struct { const char *inside; double area; } insides[] = {
	{ "filled", 19.0 / 3 * 7 / 3 }, { "base", 19.0 / 3 * 7 / 3 }, { "undug", -1 },
};

START_TEST(the_inside_is_a_zone_where_it_is_dug)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_INSIDE, insides[_i].inside);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.zones.count, insides[_i].area < 0 ? 1 : 2);
	if (insides[_i].area > 0)
		ck_assert_double_eq_tol(area(0, DIG_INSIDE), insides[_i].area, EXACT);
}
END_TEST

START_TEST(a_base_as_wide_as_the_bed_leaves_no_inside)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_INSIDE, "base");
	plot_set(&garden.plot, 'b', BED_REACH_IN, "3 ft");
	garden_count(&garden);
	ck_assert_double_eq_tol(area(0, DIG_WALL), 32, EXACT);
	ck_assert_double_eq(area(0, DIG_INSIDE), 0);
}
END_TEST

/* A bed 2 ft deep whose base goes farther than that inwards, and not outwards: by its blocks 8 in
 * and 3 ft, or 9 in and 16 in, which is 1 in too far. */
START_TEST(a_base_that_reaches_inwards_alone_stays_within_the_bed)
{
	garden_rows(&garden, (const char *const[]){ "..........", "..........", ".bbbbbbbb.",
		".bbbbbbbb.", "..........", "..........", NULL });
	plot_set(&garden.plot, 'b', BED_REACH, "0 in");
	plot_set(&garden.plot, 'b', BED_REACH_IN, "3 ft");
	garden_count(&garden);
	ck_assert_double_eq_tol(area(0, DIG_WALL), 16, EXACT);
	plot_set(&garden.plot, 'b', BED_BLOCK, "16 in x 9 in x 6 in");
	plot_set(&garden.plot, 'b', BED_REACH_IN, "16 in");
	garden_count(&garden);
	ck_assert_double_eq_tol(area(0, DIG_WALL), 16, EXACT);
}
END_TEST

/* A U, 9 x 8 ft with a gap 1 ft wide and 4 ft long: what reaches 3 ft outwards across the gap is no
 * base within the bed. Walls 4 in deep: 8 ft 4 in x 7 ft 4 in less the gap 1 ft 8 in x 4 ft are
 * inside. */
START_TEST(a_base_that_reaches_outwards_alone_leaves_the_inside)
{
	garden_rows(&garden, (const char *const[]){ "bbbb.bbbb", "bbbb.bbbb", "bbbb.bbbb",
		"bbbb.bbbb", "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb", NULL });
	plot_set(&garden.plot, 'b', BED_BLOCK, "1 ft x 4 in x 4 in");
	plot_set(&garden.plot, 'b', BED_REACH, "3 ft");
	plot_set(&garden.plot, 'b', BED_REACH_IN, "0 in");
	garden_count(&garden);
	ck_assert_double_eq_tol(area(0, DIG_WALL), 72 - (25.0 / 3 * 22 / 3 - 5.0 / 3 * 4), EXACT);
}
END_TEST

START_TEST(lawns_without_cover_and_beds_kept_as_they_are_have_no_zone)
{
	garden_rows(&garden, (const char *const[]){ "llmm", "llmm", "ccdd", "ccdd", NULL });
	plot_set(&garden.plot, 'm', LAWN_COVER, "none");
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	plot_set(&garden.plot, 'd', BED_BUILD, "level");
	plot_set(&garden.plot, 'd', BED_REPLACE, "yes");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.zones.count, 2);
	ck_assert_double_eq_tol(area(0, DIG_LAWN), 4, EXACT);
	ck_assert_double_eq_tol(area(3, DIG_BED), 4, EXACT);
}
END_TEST

START_TEST(a_bed_whose_wall_is_not_laid_out_has_no_zone)
{
	garden_rectangle(&garden, 'b', 8, 1);
	plot_set(&garden.plot, 'b', BED_INSIDE, "base");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.walls.not_laid_count, 1);
	ck_assert_int_eq(garden.takeoff.zones.count, 0);
	ck_assert(!garden.takeoff.complete);
}
END_TEST

/* ---- Laws and GEOS --------------------------------------------------------------------------- */

static GEOSGeometry *zone_shape(GEOSContextHandle_t geos, int zone)
{
	struct zones_ground ground = garden_ground(&garden);
	const struct cover *cover = &ground.cover;
	struct geos_box *boxes = calloc(cover->count + 1, sizeof *boxes);
	GEOSGeometry *shape;
	size_t count = 0;

	for (size_t i = 0; i < cover->count; i++) {
		const struct cover_box *box = &cover->pieces[i];

		if (box->owner == zone)
			boxes[count++] = (struct geos_box){ (double)box->left / 1e9,
				(double)box->top / 1e9, (double)box->right / 1e9,
				(double)box->bottom / 1e9 };
	}
	shape = geos_union(geos, boxes, count);
	free(boxes);
	arena_clear(&ground.arena);
	return shape;
}

START_TEST(zones_are_the_ground_that_geos_finds)
{
	struct random random = { (uint64_t)_i };
	GEOSContextHandle_t geos = geos_start();
	const struct zones *zones = &garden.takeoff.zones;
	struct diggings expected;
	double sum = 0;

	garden = (struct garden){ .arena = ARENA_EMPTY };
	diggings_plot(&garden.plot, &random);
	garden_count(&garden);
	expected = diggings_find(geos, &garden.takeoff);
	ck_assert_int_eq(zones->count, expected.count);
	for (int i = 0; i < zones->count; i++) {
		const struct zone *zone = &zones->list[i];
		const struct digging *digging = diggings_at(&expected, zone->region, zone->part);
		GEOSGeometry *shape = zone_shape(geos, i);

		ck_assert_ptr_nonnull(digging);
		ck_assert_double_eq_tol(geos_apart(geos, shape, digging->shape), 0, GEOS_NEAR);
		ck_assert_double_eq_tol(zone->area, geos_area(geos, digging->shape), GEOS_NEAR);
		ck_assert(i == 0 || zones->list[i - 1].region < zone->region ||
			(zones->list[i - 1].part == DIG_WALL && zone->part == DIG_INSIDE));
		sum += zone->area;
		geos_free(geos, shape);
	}
	/* No ground twice: all areas added up are the area of all ground together. */
	ck_assert_double_eq_tol(sum, geos_area(geos, expected.taken), GEOS_NEAR);
	diggings_free(&expected);
	geos_end(geos);
}
END_TEST

/* A library's mitred offsets, outwards and in, of a whole outline rather than cell by cell. */
START_TEST(a_wall_zone_alone_is_between_two_mitred_offsets)
{
	static const char *const rows[] = { ".................", "..bbbb.....bbbb..",
		"..bbbb.....bbbb..",
		"..bbbb.....bbbb..", "..bbbbbbbbbbbbb..", "..bbbbbbbbbbbbb..", "..bbbbbbbbbbbbb..",
		"..bbbb.....bbbb..", "..bbbb.....bbbb..", "..bbbbbbbbbbbbb..", "..bbbbbbbbbbbbb..",
		"..bbbbbbbbbbbbb..", ".................", NULL };
	static const double out = 0.1524, depth = 0.2032, in = 0.0508;
	GEOSContextHandle_t geos = geos_start();
	struct geos_box boxes[200];
	GEOSGeometry *bed, *outer, *inner, *ring, *shape;
	size_t count = 0;

	garden_rows(&garden, rows);
	garden_count(&garden);
	for (int y = 0; rows[y]; y++)
		for (int x = 0; rows[y][x]; x++)
			if (rows[y][x] == 'b')
				boxes[count++] = (struct geos_box){ x * 0.3048, y * 0.3048,
					(x + 1) * 0.3048, (y + 1) * 0.3048 };
	bed = geos_union(geos, boxes, count);
	outer = geos_offset(geos, bed, out);
	inner = geos_offset(geos, bed, -(depth + in));
	ring = geos_difference(geos, outer, inner);
	shape = zone_shape(geos, 0);
	ck_assert_double_eq_tol(geos_apart(geos, ring, shape), 0, GEOS_NEAR);
	for (int i = 0; i < 5; i++)
		geos_free(geos, (GEOSGeometry *[]){ bed, outer, inner, ring, shape }[i]);
	geos_end(geos);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("zones");
	TCase *cases = suite_case(suite, "cases"), *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, a_wall_alone_has_its_ring_and_the_reach_on_both_sides);
	tcase_add_test(cases, nothing_is_dug_outside_the_plan);
	tcase_add_test(cases, a_wall_stops_where_a_path_or_a_fixture_has_its_base);
	tcase_add_test(cases, between_two_beds_the_first_has_the_ground);
	tcase_add_loop_test(cases, the_inside_is_a_zone_where_it_is_dug, 0, 3);
	tcase_add_test(cases, a_base_as_wide_as_the_bed_leaves_no_inside);
	tcase_add_test(cases, a_base_that_reaches_inwards_alone_stays_within_the_bed);
	tcase_add_test(cases, a_base_that_reaches_outwards_alone_leaves_the_inside);
	tcase_add_test(cases, lawns_without_cover_and_beds_kept_as_they_are_have_no_zone);
	tcase_add_test(cases, a_bed_whose_wall_is_not_laid_out_has_no_zone);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, zones_are_the_ground_that_geos_finds, 0, RANDOM_PLOTS);
	tcase_add_test(laws, a_wall_zone_alone_is_between_two_mitred_offsets);
	return suite;
}
