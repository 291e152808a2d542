/* The header from the tap to the beds: cases on small plans, and a law on random ones: its ways are
 * as long as those found side by side from the other end. */
#include "takeoff/watering/header.h"
#include "base/measure.h"
#include "support/around.h"
#include "support/garden.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

enum { RANDOM_PLOTS = 100, FAR = 1 << 20 };

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct watering *header_of(const char *const *rows, const char *lines)
{
	garden_rows(&garden, rows);
	around_add(&garden.plot, lines);
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	garden_count(&garden);
	return &garden.takeoff.watering;
}

static bool has_leg(const struct watering *watering, int x1, int y1, int x2, int y2)
{
	return legs_cover(&watering->legs, (struct leg){ { x1, y1 }, { x2, y2 } });
}

START_TEST(it_goes_the_shortest_way_to_each_bed_and_shares_what_it_can)
{
	const struct watering *watering = header_of((const char *const[]){ "..........",
		"......bb..", "..........", "......bb..", "..........", NULL }, "tap 0,2\n");

	ck_assert_int_eq(watering->count, 2);
	/* six sides to the first bed, one more to the second */
	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert(has_leg(watering, 0, 2, 6, 2));
	ck_assert(has_leg(watering, 6, 2, 6, 3));
	ck_assert_int_eq(watering->sleeve_count, 0);
}
END_TEST

START_TEST(it_goes_round_fixtures_houses_and_beds)
{
	const struct watering *watering = header_of((const char *const[]){ "......", "..SS..",
		"..SS..", "..SSbb", "..SSSS", NULL }, "tap 1,4\n");

	/* up beside the fixture, over its top and down to the bed: 3 + 3 + 2 sides */
	ck_assert_int_eq(watering->trench, 8 * NM_PER_FOOT);
	ck_assert(has_leg(watering, 2, 1, 4, 1));
	garden_fini(&garden);
	watering = header_of((const char *const[]){ "........", "........", "......bb", NULL },
		"house \"H\"\n  from 2,0 to 4,2\ntap 0,1\n");
	/* level through the house would be 6 sides and 1 down; it goes below it */
	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert(!has_leg(watering, 2, 1, 3, 1));
}
END_TEST

/* Of ways as long it is the one on open ground. */
START_TEST(it_keeps_off_paths_and_walls_where_that_is_no_longer)
{
	const struct watering *watering = header_of((const char *const[]){ "......", ".pppp.",
		".pppp.", ".pppp.", "....bb", NULL }, "tap 0,1\n");

	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert_int_eq(watering->sleeve_count, 0);
}
END_TEST

/* 3 ft of path, and 12 in past either side. */
START_TEST(under_a_path_it_lies_in_a_sleeve)
{
	const struct watering *watering = header_of((const char *const[]){ "..ppp....", "..ppp..bb",
		"..ppp..bb", NULL }, "tap 0,2\n");

	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert_int_eq(watering->sleeve_count, 1);
	ck_assert_int_eq(watering->sleeves[0].length, 5 * NM_PER_FOOT);
	ck_assert_double_eq_tol(garden_item(&garden, "water.sleeve")->order, 5 * 0.3048, 1e-9);
}
END_TEST

START_TEST(a_bed_that_it_cannot_get_to_is_a_snag)
{
	const struct watering *watering = header_of((const char *const[]){ "......", ".SSSS.",
		".SbbS.", ".SSSS.", "......", NULL }, "tap 0,0\n");
	const struct snag *snag = garden_snag(&garden, SNAG_WATER_CUT_OFF, 0);

	ck_assert(!watering->list[0].is_reached);
	ck_assert_int_eq(watering->trench, 0);
	ck_assert_ptr_nonnull(snag);
	ck_assert_int_eq(snag->region, watering->list[0].region);
	garden_fini(&garden);
	watering = header_of((const char *const[]){ "..bb", NULL }, "tap 0,0\n");
	ck_assert(watering->list[0].is_reached);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_CUT_OFF, 0));
	garden_fini(&garden);
	/* at the bed's own corner */
	watering = header_of((const char *const[]){ "bb..", NULL }, "tap 0,0\n");
	ck_assert(watering->list[0].is_reached);
	ck_assert_int_eq(watering->trench, 0);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_CUT_OFF, 0));
}
END_TEST

START_TEST(without_a_tap_there_is_none)
{
	const struct watering *watering = header_of((const char *const[]){ "..ppbb", NULL }, "");

	ck_assert(!watering->has_tap);
	ck_assert_int_eq(watering->trench, 0);
	ck_assert_int_eq((int64_t)watering->legs.count, 0);
	ck_assert_ptr_null(garden_item(&garden, "water.sleeve"));
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_CUT_OFF, 0));
}
END_TEST

/* Blocks 8 in deep; the base goes 6 in past them outside and 2 in inside: 16 in, and 12 in past
 * either side. */
START_TEST(it_comes_into_a_raised_bed_under_its_wall)
{
	const struct watering *watering;

	garden_rows(&garden, (const char *const[]){ "......bbbb", "......bbbb", "......bbbb",
		"......bbbb", NULL });
	around_add(&garden.plot, "tap 0,2\n");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden_count(&garden);
	watering = &garden.takeoff.watering;
	ck_assert_int_eq(watering->walls, 1);
	/* it comes square to the wall, and ends at its outer face, over 6 in of the base */
	ck_assert_int_eq(watering->trench, 6 * NM_PER_FOOT);
	/* what it has of a sleeve there is a part of the wall's */
	ck_assert_int_eq(watering->sleeves[0].length, 18 * NM_PER_INCH);
	ck_assert_int_eq(watering->sleeve_length, 40 * NM_PER_INCH);
	/* under 8 in of wall, up three courses of 6 in, along three lines 10 2/3 in apart */
	ck_assert_int_eq(watering->list[0].drip.count, 3);
	ck_assert_double_eq_tol(metres(watering->list[0].within) / 0.0254,
		8 + 18 + 2 * 32.0 / 3, 1e-6);
}
END_TEST

/* ---- A law ----------------------------------------------------------------------------------- */

/* The bed that all four cells about the tap are of; NO_REGION: none. */
static int bed_of_tap(const struct plot *plot)
{
	struct place tap = plot->details.around.tap;
	int regions[4];

	for (int i = 0; i < 4; i++) {
		struct place cell = { tap.x - i % 2, tap.y - i / 2 };

		if (!ground_holds(&plot->ground, cell.x, cell.y))
			return NO_REGION;
		regions[i] = plot_class_of(plot, ground_cell(&plot->ground, cell.x, cell.y)) !=
			CLASS_BED ? NO_REGION :
			survey_region_at(&garden.takeoff.survey, cell.x, cell.y);
		if (regions[i] != regions[0])
			return NO_REGION;
	}
	return regions[0];
}

/* Whether a way goes along the side, told cell by cell. */
static bool is_open(const struct plot *plot, int x, int y)
{
	enum plot_class class;

	if (!ground_holds(&plot->ground, x, y))
		return false;
	class = plot_class_of(plot, ground_cell(&plot->ground, x, y));
	return class == CLASS_PATH || class == CLASS_LAWN || class == CLASS_OPEN ||
		(class == CLASS_BED && bed_of_tap(plot) ==
		survey_region_at(&garden.takeoff.survey, x, y));
}

/* Lengths relaxed until none gets shorter. To be freed. */
static int *lengths_of(const struct plot *plot)
{
	int columns = plot->ground.columns + 1, rows = plot->ground.rows + 1;
	struct place tap = plot->details.around.tap;
	int *lengths = memory_new((size_t)columns * (size_t)rows, sizeof *lengths);
	bool has_changed = true;

	for (int i = 0; i < columns * rows; i++)
		lengths[i] = FAR;
	lengths[tap.y * columns + tap.x] = 0;
	while (has_changed) {
		has_changed = false;
		for (int y = 0; y < rows; y++)
			for (int x = 0; x < columns; x++) {
				int *here = &lengths[y * columns + x];
				bool right = x + 1 < columns && (is_open(plot, x, y - 1) ||
					is_open(plot, x, y));
				bool down = y + 1 < rows && (is_open(plot, x - 1, y) ||
					is_open(plot, x, y));
				int *to[] = { right ? here + 1 : here,
					down ? here + columns : here };

				for (int i = 0; i < 2; i++) {
					if (*to[i] > *here + 1 && to[i] != here)
						*to[i] = *here + 1, has_changed = true;
					if (*here > *to[i] + 1 && to[i] != here)
						*here = *to[i] + 1, has_changed = true;
				}
			}
	}
	return lengths;
}

START_TEST(no_way_is_shorter_and_each_is_as_long_as_it_says)
{
	struct random random = { (uint64_t)_i };
	struct arena arena = ARENA_EMPTY;
	struct house_map houses;
	struct header_ways ways;
	int *lengths;

	plot_at_random(&garden.plot, &random, 24, ".plbS");
	garden.plot.details.around.has_tap = true;
	garden.plot.details.around.tap = (struct place){
		random_below(&random, garden.plot.ground.columns + 1),
		random_below(&random, garden.plot.ground.rows + 1) };
	garden_count(&garden);
	houses = house_map_of(&garden.plot, 1, &arena);
	header_ways_find(&ways, &arena, &(struct basis){ .plot = &garden.takeoff.plot,
		.survey = &garden.takeoff.survey }, &houses);
	lengths = lengths_of(&garden.plot);
	for (int i = 0; i < ways.columns * ways.rows; i++) {
		int sides = 0;

		ck_assert_int_eq(ways.steps[i].from < 0, lengths[i] == FAR);
		for (int at = i; ways.steps[i].from >= 0 && ways.steps[at].from != at;
			at = ways.steps[at].from)
			sides++;
		if (ways.steps[i].from >= 0) {
			ck_assert_int_eq(sides, lengths[i]);
			ck_assert_int_eq(sides, ways.steps[i].sides);
		}
	}
	free(lengths);
	arena_clear(&arena);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("header");
	TCase *cases = suite_case(suite, "cases"), *random = suite_case(suite, "random");

	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, it_goes_the_shortest_way_to_each_bed_and_shares_what_it_can);
	tcase_add_test(cases, it_goes_round_fixtures_houses_and_beds);
	tcase_add_test(cases, it_keeps_off_paths_and_walls_where_that_is_no_longer);
	tcase_add_test(cases, under_a_path_it_lies_in_a_sleeve);
	tcase_add_test(cases, a_bed_that_it_cannot_get_to_is_a_snag);
	tcase_add_test(cases, without_a_tap_there_is_none);
	tcase_add_test(cases, it_comes_into_a_raised_bed_under_its_wall);
	tcase_add_checked_fixture(random, NULL, teardown);
	tcase_add_loop_test(random, no_way_is_shorter_and_each_is_as_long_as_it_says, 0,
		runner_count(RANDOM_PLOTS / 4, RANDOM_PLOTS));
	return suite;
}
