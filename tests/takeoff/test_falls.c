/* How steep paths are, and which way ground falls beside houses. */
#include "takeoff/ground/falls.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct falls *falls(void)
{
	return &garden.takeoff.levelling.falls;
}

static int snags(void)
{
	int count = 0;

	while (garden_snag(&garden, SNAG_FALL_HOUSE, count))
		count++;
	return count;
}

static void ground(const char *const *rows, const char *lines)
{
	garden_fini(&garden);
	garden_rows(&garden, rows);
	plot_add_lines(&garden.plot, lines);
	garden_count(&garden);
}

#define ROWS (const char *const[])

/* ---- Paths ----------------------------------------------------------------------------------- */

static void steepest_is(double percent)
{
	ck_assert_int_eq(falls()->path_count, 1);
	ck_assert_double_eq_tol(falls()->paths[0].steepest, percent, 1e-5);
}

START_TEST(a_path_is_as_steep_as_from_a_cell_to_the_next)
{
	ground(ROWS { "pppp", NULL }, "fall 2 % towards 90\n");
	steepest_is(2);
	ground(ROWS { "pppp", NULL }, "fall 2 % towards 0\n");
	steepest_is(0);
	ground(ROWS { "p", "p", "p", NULL }, "fall 2 % towards 0\n");
	steepest_is(2);
	ground(ROWS { "pp", "pp", NULL }, "fall 2 % towards 225\n");
	steepest_is(sqrt(2));
	ground(ROWS { "p", NULL }, "fall 2 % towards 90\n");
	steepest_is(0);
}
END_TEST

/* 1 in over 1 ft is 8 1/3 %; the ground between the two cells of the path is not walked on. */
START_TEST(a_path_goes_by_the_ground_as_it_is_where_no_other_is_told)
{
	ground(ROWS { "ppl", "p..", NULL },
		"levels 1 ft\n  0 in, 0 in, 1 in, 9 in\n  0 in, 0 in, 1 in, 9 in\n"
		"  0 in, 0 in, 1 in, 9 in\n");
	steepest_is(0.5 / 12 * 100);
	ck_assert_int_eq(snags(), 0);
}
END_TEST

/* The middle of the row below lies 3 1/2 in lower. */
START_TEST(ground_beside_a_path_is_none_of_its_own)
{
	ground(ROWS { "pp", "..", NULL }, "levels 1 ft\n  2 in, 2 in, 2 in\n  2 in, 2 in, 2 in\n"
		"  9 in, 9 in, 9 in\n");
	steepest_is(0);
	ground(ROWS { "pp", "pp", NULL }, "levels 1 ft\n  2 in, 2 in, 2 in\n  2 in, 2 in, 2 in\n"
		"  9 in, 9 in, 9 in\n");
	steepest_is(3.5 / 12 * 100);
}
END_TEST

/* Drops of the middles 0 and 1/2 in, then 2 1/2 and 6 1/2 in. */
START_TEST(each_path_is_told_by_its_region)
{
	ground(ROWS { "ppSqq", NULL }, "levels 1 ft\n  0 in, 0 in, 1 in, 1 in, 4 in, 9 in\n"
		"  0 in, 0 in, 1 in, 1 in, 4 in, 9 in\n");
	ck_assert_int_eq(falls()->path_count, 2);
	ck_assert_int_eq(falls()->paths[0].region, 0);
	ck_assert_int_eq(falls()->paths[1].region, 2);
	ck_assert_double_eq_tol(falls()->paths[0].steepest, 0.5 / 12 * 100, 1e-5);
	ck_assert_double_eq_tol(falls()->paths[1].steepest, 4.0 / 12 * 100, 1e-5);
}
END_TEST

START_TEST(nothing_is_said_of_a_plot_that_tells_no_levels)
{
	ground(ROWS { "pppp", NULL }, "house \"Home\"\n  from 0,-4 to 4,0\n");
	ck_assert_int_eq(falls()->path_count + falls()->house_count + snags(), 0);
	ck_assert(!garden.takeoff.levelling.is_told);
}
END_TEST

/* ---- Houses ---------------------------------------------------------------------------------- */

#define HOUSE "house \"Home\"\n  from 0,-9 to 4,0\n"

/* International Code Council, International Residential Code, R401.3, its edition not noted: ground
 * falls 6 in or more over the first 10 ft from a house, 5 %; hard surfaces there 2 % or more. */
static const struct { const char *rows[3]; const char *fall; int snags; } rules[] = {
	{ { "pppp", "pppp" }, "fall 2 % away\n", 0 },
	{ { "pppp", "pppp" }, "fall 1.998 % away\n", 1 },
	{ { "llll", "llll" }, "fall 5 % away\n", 0 },
	{ { "llll", "llll" }, "fall 4.998 % away\n", 1 },
	{ { "llll", "llll" }, "fall 4.999 % away\n", 0 }, /* to a thousandth of a percent */
	{ { "llll", "llll" }, "fall 4.998999 % away\n", 1 },
	{ { "....", "...." }, "fall 5 % away\n", 0 },
	{ { "....", "...." }, "fall 4.998 % away\n", 1 },
	{ { "pppp", "llll" }, "fall 3 % away\n", 1 },
	{ { "ppll", "p..l" }, "fall 1 % away\n", 3 },
	{ { "pppp", "pppp" }, "fall 2 % towards 180\n", 0 },
	{ { "pppp", "pppp" }, "fall 1.998 % towards 180\n", 1 },
	{ { "pppp", "pppp" }, "fall 3 % towards 0\n", 1 },
	{ { "SSSS", "SSSS" }, "fall 3 % towards 0\n", 0 },
};

START_TEST(ground_near_a_house_falls_away_as_published_or_is_a_snag)
{
	ground(rules[_i].rows, "finish 0,0 1 ft\n" HOUSE);
	garden.plot.details.finish.has_fall = false;
	plot_add_lines(&garden.plot, rules[_i].fall);
	garden_count(&garden);
	ck_assert_int_eq(snags(), rules[_i].snags);
}
END_TEST

/* Whatever is rounded to a nanometre on the way: cells of 1 in, askew from the house's corners. */
START_TEST(just_the_fall_that_is_asked_for_is_no_snag)
{
	struct random random = { 8 };

	for (int i = 0; i < 100; i++) {
		char lines[120];
		int x = random_between(&random, -3, 14), y = random_between(&random, -3, 14);

		snprintf(lines, sizeof lines, "finish 0,0 %d mm\nfall 5 %% away\n"
			"house \"Home\"\n  from %d,%d to %d,%d\n", random_below(&random, 900), x, y,
			x + random_between(&random, 1, 7), y + random_between(&random, 1, 7));
		garden_fini(&garden);
		garden_rectangle(&garden, 'l', 12, 12);
		plot_set(&garden.plot, 0, HEAD_CELL, "1 in");
		plot_add_lines(&garden.plot, lines);
		garden_count(&garden);
		ck_assert_int_eq(falls()->house_count, 1);
		ck_assert_msg(snags() == 0, "%s", lines);
	}
}
END_TEST

/* By hand: 6 in over the first 10 ft. */
START_TEST(six_inches_in_ten_feet_are_just_enough_for_a_lawn)
{
	ground(ROWS { "l", "l", "l", "l", "l", "l", "l", "l", "l", "l", NULL },
		"levels 10 ft\n  0 in, 0 in\n  6 in, 6 in\nhouse \"Home\"\n  from -5,-9 to 5,0\n");
	ck_assert_int_eq(snags(), 0);
	ck_assert_double_eq_tol(falls()->houses[0].away, 5, 1e-5);
	ground(ROWS { "l", "l", "l", "l", "l", "l", "l", "l", "l", "l", NULL },
		"levels 10 ft\n  0 in, 0 in\n  5 15/16 in, 5 15/16 in\n"
		"house \"Home\"\n  from -5,-9 to 5,0\n");
	ck_assert_int_eq(snags(), 1);
}
END_TEST

START_TEST(a_snag_has_the_least_fall_and_the_first_cell_where_it_is_too_little)
{
	const struct snag *snag;

	/* level for 1 ft, then 1 in up, then down */
	ground(ROWS { "pp", "pp", "pp", "pp", NULL }, "levels 1 ft\n  2 in, 2 in, 2 in\n"
		"  3 in, 3 in, 3 in\n  2 in, 2 in, 2 in\n  9 in, 9 in, 9 in\n  9 in, 9 in, 9 in\n"
		HOUSE);
	ck_assert_int_eq(snags(), 1);
	snag = garden_snag(&garden, SNAG_FALL_HOUSE, 0);
	ck_assert_int_eq(snag->kind, FALL_TOWARDS);
	ck_assert_int_eq(snag->region, 0);
	ck_assert(snag->cell.x == 0 && snag->cell.y == 1);
	ck_assert_int_le(llabs(snag->figures[0] - llround(1e8 / 12)), 2);
	ck_assert_int_eq(snag->figures[1], 2 * MILLION);
	ck_assert_int_eq(snag->figures[2], 10 * NM_PER_FOOT);
	ck_assert_double_eq_tol(falls()->houses[0].away, -100.0 / 12, 1e-5);
}
END_TEST

START_TEST(level_ground_falls_too_little_not_towards_the_house)
{
	ground(ROWS { "....", NULL }, "finish 0,0 1 ft\n" HOUSE);
	ck_assert_int_eq(snags(), 1);
	ck_assert_int_eq(garden_snag(&garden, SNAG_FALL_HOUSE, 0)->kind, FALL_LITTLE);
	ck_assert_int_eq(garden_snag(&garden, SNAG_FALL_HOUSE, 0)->figures[0], 0);
	ck_assert_int_eq(garden_snag(&garden, SNAG_FALL_HOUSE, 0)->region, NO_REGION);
	ck_assert_int_eq(falls()->houses[0].region, NO_REGION);
}
END_TEST

/* To a thousandth of a percent it is level. */
START_TEST(ground_that_hardly_falls_towards_a_house_is_called_level)
{
	static const struct { const char *fall; int kind, figure; } falling[] = {
		{ "fall 0.001 % towards 0\n", FALL_LITTLE, 0 },
		{ "fall 0.001001 % towards 0\n", FALL_TOWARDS, 1001 },
		{ "fall 1 % towards 180\n", FALL_LITTLE, 1000000 },
	};

	for (size_t i = 0; i < sizeof falling / sizeof *falling; i++) {
		ground(ROWS { "llll", NULL }, "finish 0,0 1 ft\n" HOUSE);
		garden.plot.details.finish.has_fall = false;
		plot_add_lines(&garden.plot, falling[i].fall);
		garden_count(&garden);
		ck_assert_int_eq(snags(), 1);
		ck_assert_int_eq(garden_snag(&garden, SNAG_FALL_HOUSE, 0)->kind, falling[i].kind);
		ck_assert_int_eq(garden_snag(&garden, SNAG_FALL_HOUSE, 0)->figures[0],
			falling[i].figure);
	}
}
END_TEST

/* The middle of the cell next to it is 6 in from the house. */
START_TEST(ground_is_near_as_far_as_the_plot_allows_for)
{
	ground(ROWS { "l...", NULL }, "finish 0,0 1 ft\nhouse \"Home\"\n  from 2,-9 to 9,0\n");
	ck_assert_int_eq(falls()->house_count, 2);
	plot_set(&garden.plot, 0, ALLOW_FALL_NEAR, "6 in");
	garden_count(&garden);
	ck_assert_int_eq(falls()->house_count, 1);
	ck_assert_int_eq(snags(), 1);
	ck_assert_int_eq(garden_snag(&garden, SNAG_FALL_HOUSE, 0)->cell.x, 2);
	plot_set(&garden.plot, 0, ALLOW_FALL_NEAR, "5 in");
	garden_count(&garden);
	ck_assert_int_eq(falls()->house_count + snags(), 0);
	plot_set(&garden.plot, 0, ALLOW_FALL_NEAR, "10 ft");
	plot_set(&garden.plot, 0, ALLOW_FALL_GROUND, "0 %");
	garden_count(&garden);
	ck_assert_int_eq(snags(), 0);
}
END_TEST

START_TEST(beds_at_ground_level_count_and_raised_ones_do_not)
{
	static const char *const lines = "finish 0,0 1 ft\nhouse \"Home\"\n  from 0,-9 to 6,0\n";

	ground(ROWS { "bbbbbb", "bbbbbb", "bbbbbb", "bbbbbb", NULL }, lines);
	ck_assert_int_eq(falls()->house_count + snags(), 0);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	garden_count(&garden);
	ck_assert_int_eq(snags(), 1);
}
END_TEST

START_TEST(ground_within_a_house_falls_nowhere)
{
	ground(ROWS { "....", NULL }, "finish 0,0 1 ft\nhouse \"Home\"\n  from 0,0 to 4,1\n");
	ck_assert_int_eq(falls()->house_count + snags(), 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("falls");
	TCase *paths = suite_case(suite, "paths"), *houses = suite_case(suite, "houses");

	tcase_add_checked_fixture(paths, NULL, teardown);
	tcase_add_test(paths, a_path_is_as_steep_as_from_a_cell_to_the_next);
	tcase_add_test(paths, a_path_goes_by_the_ground_as_it_is_where_no_other_is_told);
	tcase_add_test(paths, ground_beside_a_path_is_none_of_its_own);
	tcase_add_test(paths, each_path_is_told_by_its_region);
	tcase_add_test(paths, nothing_is_said_of_a_plot_that_tells_no_levels);
	tcase_add_checked_fixture(houses, NULL, teardown);
	tcase_add_loop_test(houses, ground_near_a_house_falls_away_as_published_or_is_a_snag, 0,
		(int)(sizeof rules / sizeof *rules));
	tcase_add_test(houses, just_the_fall_that_is_asked_for_is_no_snag);
	tcase_add_test(houses, six_inches_in_ten_feet_are_just_enough_for_a_lawn);
	tcase_add_test(houses, a_snag_has_the_least_fall_and_the_first_cell_where_it_is_too_little);
	tcase_add_test(houses, level_ground_falls_too_little_not_towards_the_house);
	tcase_add_test(houses, ground_that_hardly_falls_towards_a_house_is_called_level);
	tcase_add_test(houses, ground_is_near_as_far_as_the_plot_allows_for);
	tcase_add_test(houses, beds_at_ground_level_count_and_raised_ones_do_not);
	tcase_add_test(houses, ground_within_a_house_falls_nowhere);
	return suite;
}
