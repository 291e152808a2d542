/* What goes back over the base past walls: cases reckoned by hand, and random plots against GEOS.
 * */
#include "takeoff/ground/over_base.h"

#include "support/beds.h"
#include "support/digging.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdlib.h>

enum { RANDOM_PLOTS = 150 };

static const double EXACT = 1e-9, GEOS_NEAR = 1e-7;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct over_bases *over(void)
{
	return &garden.takeoff.over_bases;
}

static void check(int region, double square_feet, double backfill_cubic_feet)
{
	struct over_base here = over_base_of(over(), region);

	ck_assert_int_eq(here.region, region);
	ck_assert_double_eq_tol(here.area / SQUARE_FOOT, square_feet, EXACT);
	ck_assert_double_eq_tol(here.backfill / CUBIC_FOOT, backfill_cubic_feet, EXACT);
}

/* ---- Cases ----------------------------------------------------------------------------------- */

/* A bed of 8 x 4 ft in the open, its base 6 in past the wall: 9 x 5 less 8 x 4 ft are 13 sq ft, on
 * which 2 in go back. Inside 80 x 32 in, of which 76 x 28 in are no base and stay where they are.
 * */
START_TEST(round_a_bed_in_the_open_the_ground_goes_back_as_deep_as_the_embed)
{
	garden_rows(&garden, (const char *const[]){ "..........", ".bbbbbbbb.", ".bbbbbbbb.",
		".bbbbbbbb.", ".bbbbbbbb.", "..........", NULL });
	garden_count(&garden);
	check(NO_REGION, 13, 13.0 * 2 / 12);
	check(0, 3, 0);
	ck_assert_double_eq_tol(over()->backfill / CUBIC_FOOT, 13.0 / 6, EXACT);
	ck_assert_double_eq_tol(over()->loosened / SQUARE_FOOT, 76.0 * 28 / 144, EXACT);
	plot_set(&garden.plot, 'b', BED_EMBED, "6 in");
	garden_count(&garden);
	check(NO_REGION, 13, 13.0 / 2);
}
END_TEST

/* The same on ground that falls 1 in a foot to the right, lowest 9 in below the string: the base's
 * top is at 11 in, and so from it up to the ground 6 in on the mean: as deep as that middle. */
START_TEST(round_a_level_wall_more_goes_back_where_the_ground_rises)
{
	garden_rows(&garden, (const char *const[]){ "..........", ".bbbbbbbb.", ".bbbbbbbb.",
		".bbbbbbbb.", ".bbbbbbbb.", "..........", NULL });
	plot_add_lines(&garden.plot, "levels 10 ft\n  0 in, 10 in\n  0 in, 10 in\n");
	garden_count(&garden);
	check(NO_REGION, 13, 13.0 * 6 / 12);
}
END_TEST

START_TEST(what_is_dug_out_inside_is_not_loosened)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_INSIDE, "filled");
	garden_count(&garden);
	ck_assert_double_eq(over()->loosened, 0);
	check(0, 3, 0);
	plot_set(&garden.plot, 'b', BED_INSIDE, "base");
	garden_count(&garden);
	ck_assert_double_eq(over()->loosened, 0);
}
END_TEST

/* Path and fixture have bases of their own. */
START_TEST(where_a_path_or_a_fixture_lies_nothing_goes_back)
{
	garden_rows(&garden, (const char *const[]){ "pppppppppp", "pbbbbbbbbp", "pbbbbbbbbp",
		"pbbbbbbbbp", "pbbbbbbbbp", "pSSSSSSSSp", NULL });
	garden_count(&garden);
	ck_assert_double_eq(over()->backfill, 0);
	ck_assert_int_eq(over()->count, 1);
	check(1, 3, 0);
}
END_TEST

/* The hole of a ring is outside the wall too: 3 ft square, 6 in along its sides, 5 sq ft. */
START_TEST(within_the_hole_of_a_ring_it_goes_back_too)
{
	garden_rows(&garden, (const char *const[]){ "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb",
		"bbb...bbb", "bbb...bbb", "bbb...bbb", "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb",
		NULL });
	garden_count(&garden);
	check(NO_REGION, 5, 5.0 / 6);
}
END_TEST

/* Soil of a ground-level bed that is replaced 4 in deep lies there; the embed is 6 in. */
static const struct { const char *replace, *prepare; double inches; } levels[] = {
	{ "no", "4 in", 6 }, { "yes", "4 in", 2 }, { "yes", "6 in", 0 }, { "yes", "8 in", 0 },
};

START_TEST(in_beds_at_ground_level_less_goes_back_where_soil_is_replaced)
{
	garden_rows(&garden, (const char *const[]){ "bbbb", "bbbb", "bbbb", "cccc", NULL });
	plot_set(&garden.plot, 'b', BED_EMBED, "6 in");
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	plot_set(&garden.plot, 'c', BED_REPLACE, levels[_i].replace);
	plot_set(&garden.plot, 'c', BED_PREPARE, levels[_i].prepare);
	garden_count(&garden);
	check(1, 2, 2 * levels[_i].inches / 12);
}
END_TEST

START_TEST(under_a_neighbours_wall_nothing_goes_back)
{
	garden_rows(&garden, (const char *const[]){ "aaaabbbb", "aaaabbbb", "aaaabbbb", "aaaabbbb",
		NULL });
	garden_count(&garden);
	ck_assert_double_eq(over()->backfill, 0);
}
END_TEST

START_TEST(without_a_wall_that_is_laid_out_there_is_nothing)
{
	garden_rows(&garden, (const char *const[]){ "......", ".bbbb.", "......", NULL });
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.walls.not_laid_count, 1);
	ck_assert_int_eq(over()->count, 0);
	ck_assert_double_eq(over()->backfill, 0);
	ck_assert_double_eq(over()->loosened, 0);
	check(0, 0, 0);
}
END_TEST

/* ---- Against GEOS ---------------------------------------------------------------------------- */

/* What of one region lies on bases, or of open ground, and what goes back there. */
struct found {
	double area, topsoil, backfill;
};

static double metres_of(const struct block *block, enum attribute a)
{
	return (double)block_length(block, a) / 1e9;
}

static void add_lawn(struct found *found, const struct block *lawn, double area, double embed)
{
	double turf = block_number(lawn, LAWN_COVER) == COVER_TURF ?
		metres_of(lawn, LAWN_THICKNESS) : 0;
	double room = fmax(0, embed - turf), soil = fmin(room, metres_of(lawn, LAWN_TOPSOIL));

	if (block_number(lawn, LAWN_COVER) == COVER_NONE)
		soil = 0;
	found->topsoil += area * soil;
	found->backfill += area * (room - soil);
}

static void add_ground(struct found *found, const struct entry *entry, double area, double embed)
{
	found->area += area;
	if (!entry)
		found->backfill += area * embed;
	else if (entry->class == CLASS_LAWN)
		add_lawn(found, &entry->block, area, embed);
	else if (block_number(&entry->block, BED_BUILD) == BUILD_LEVEL)
		found->backfill += area * fmax(0, embed - (block_number(&entry->block,
			BED_REPLACE) == CHOICE_YES ? metres_of(&entry->block, BED_PREPARE) : 0));
}

/* A region between its walls where it has them. */
static GEOSGeometry *shape_of(GEOSContextHandle_t geos, int region)
{
	const struct survey *survey = &garden.takeoff.survey;
	const struct wall *wall = walls_find(&garden.takeoff.walls, region);
	GEOSGeometry *inner, *shape = beds_shape(geos, survey, region);

	if (!wall)
		return shape;
	inner = geos_offset(geos, shape, -(double)wall->block.across / 1e9);
	geos_free(geos, shape);
	return inner;
}

static GEOSGeometry *open_shape(GEOSContextHandle_t geos)
{
	const struct survey *survey = &garden.takeoff.survey;
	double cell = (double)survey->cell / 1e9;
	size_t cells = (size_t)(survey->columns * survey->rows), count = 0;
	struct geos_box *boxes = calloc(cells + 1, sizeof *boxes);
	GEOSGeometry *shape;

	for (int y = 0; y < survey->rows; y++)
		for (int x = 0; x < survey->columns; x++)
			if (survey_region_at(survey, x, y) == NO_REGION)
				boxes[count++] = (struct geos_box){ x * cell, y * cell,
					(x + 1) * cell, (y + 1) * cell };
	shape = geos_union(geos, boxes, count);
	free(boxes);
	return shape;
}

/* What of the region, or of open ground, lies on each wall's base. */
static struct found find(GEOSContextHandle_t geos, const struct diggings *diggings, int region)
{
	struct found found = { 0, 0, 0 };
	const struct entry *entry = region == NO_REGION ? NULL :
		garden.takeoff.survey.regions[region].entry;
	GEOSGeometry *shape = region == NO_REGION ? open_shape(geos) : shape_of(geos, region);

	for (int i = 0; i < diggings->count; i++)
		if (diggings->list[i].part == DIG_WALL)
			add_ground(&found, entry, geos_common(geos, diggings->list[i].shape, shape),
				(double)embed_of(&garden.takeoff.embeds,
					diggings->list[i].region) / 1e9);
	geos_free(geos, shape);
	return found;
}

/* Paths and fixtures are dug by themselves. */
static bool may_lie_on_base(int region)
{
	return region == NO_REGION || (garden.takeoff.survey.regions[region].entry->class !=
		CLASS_PATH && garden.takeoff.survey.regions[region].entry->class != CLASS_FIXTURE);
}

START_TEST(areas_and_volumes_over_bases_are_those_that_geos_finds)
{
	struct random random = { (uint64_t)_i + 3000 };
	GEOSContextHandle_t geos = geos_start();
	struct diggings diggings;
	double backfill = 0, loosened = 0;

	garden = (struct garden){ .arena = ARENA_EMPTY };
	diggings_plot(&garden.plot, &random);
	garden_count(&garden);
	diggings = diggings_find(geos, &garden.takeoff);
	for (int i = NO_REGION; i < garden.takeoff.survey.region_count; i++) {
		struct over_base here = over_base_of(over(), i);
		const struct wall *wall = i == NO_REGION ? NULL :
			walls_find(&garden.takeoff.walls, i);
		struct found found;

		if (!may_lie_on_base(i)) {
			ck_assert_double_eq(here.area, 0);
			continue;
		}
		found = find(geos, &diggings, i);
		ck_assert_double_eq_tol(here.area, found.area, GEOS_NEAR);
		ck_assert_double_eq_tol(here.topsoil, found.topsoil, GEOS_NEAR);
		ck_assert_double_eq_tol(here.backfill, found.backfill, GEOS_NEAR);
		backfill += found.backfill;
		if (wall && block_number(wall->bed, BED_INSIDE) == INSIDE_UNDUG)
			loosened += wall->inner_area - found.area;
	}
	ck_assert_double_eq_tol(over()->backfill, backfill, GEOS_NEAR);
	ck_assert_double_eq_tol(over()->loosened, loosened, GEOS_NEAR);
	diggings_free(&diggings);
	geos_end(geos);
}
END_TEST

/* A lawn is dug by itself where it does not lie on a base, and only there. */
START_TEST(a_lawn_is_its_own_zone_and_what_lies_on_bases)
{
	struct random random = { (uint64_t)_i + 3000 };

	garden = (struct garden){ .arena = ARENA_EMPTY };
	diggings_plot(&garden.plot, &random);
	garden_count(&garden);
	for (int i = 0; i < garden.takeoff.zones.count; i++) {
		const struct zone *zone = &garden.takeoff.zones.list[i];
		const struct region *region = &garden.takeoff.survey.regions[zone->region];

		if (zone->part == DIG_LAWN)
			ck_assert_double_eq_tol(zone->area + over_base_of(over(),
				zone->region).area, survey_area(region->cells,
				garden.takeoff.survey.cell), EXACT);
	}
}
END_TEST

#define ROWS(table) (int)(sizeof(table) / sizeof *(table))

Suite *test_suite(void)
{
	Suite *suite = suite_create("over base");
	TCase *cases = suite_case(suite, "cases"), *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, round_a_bed_in_the_open_the_ground_goes_back_as_deep_as_the_embed);
	tcase_add_test(cases, round_a_level_wall_more_goes_back_where_the_ground_rises);
	tcase_add_test(cases, what_is_dug_out_inside_is_not_loosened);
	tcase_add_test(cases, where_a_path_or_a_fixture_lies_nothing_goes_back);
	tcase_add_test(cases, within_the_hole_of_a_ring_it_goes_back_too);
	tcase_add_loop_test(cases,
		in_beds_at_ground_level_less_goes_back_where_soil_is_replaced, 0, ROWS(levels));
	tcase_add_test(cases, under_a_neighbours_wall_nothing_goes_back);
	tcase_add_test(cases, without_a_wall_that_is_laid_out_there_is_nothing);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, areas_and_volumes_over_bases_are_those_that_geos_finds, 0,
		RANDOM_PLOTS);
	tcase_add_loop_test(laws, a_lawn_is_its_own_zone_and_what_lies_on_bases, 0, RANDOM_PLOTS);
	return suite;
}
