/* Heights at the drops of the survey. */
#include "takeoff/ground/levelling.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct levelling *levelling(void)
{
	return &garden.takeoff.levelling;
}

static void point_is(int index, double across, double down, double existing, double finished,
	double dig)
{
	const struct level_point *point = &levelling()->points[index];
	nm cut = llround((finished + dig - existing) * (double)NM_PER_INCH);

	ck_assert_int_eq(point->across, llround(across * (double)NM_PER_FOOT));
	ck_assert_int_eq(point->down, llround(down * (double)NM_PER_FOOT));
	ck_assert_int_eq(point->existing, llround(existing * (double)NM_PER_INCH));
	ck_assert_int_eq(point->finished, llround(finished * (double)NM_PER_INCH));
	ck_assert_int_eq(point->dig, llround(dig * (double)NM_PER_INCH));
	ck_assert_int_eq(point->formation, point->finished + point->dig);
	ck_assert_int_eq(point->cut, cut > 0 ? cut : 0);
	ck_assert_int_eq(point->fill, cut < 0 ? -cut : 0);
}

/* A path of 2 in on 4 in beside open ground: what is dug at a point is of the cell right and below
 * of it, on the plan's sides of the last one. */
START_TEST(a_point_has_the_dig_of_what_lies_right_and_below)
{
	garden_rows(&garden, (const char *const[]){ "..pp", "..pp", "....", "....", NULL });
	plot_add_lines(&garden.plot, "levels 2 ft\n  1 in, 2 in, 3 in\n  4 in, 5 in, 6 in\n"
		"  7 in, 8 in, 9 in\nfinish 0,0 5 in\n");
	garden_count(&garden);
	ck_assert_int_eq(levelling()->point_count, 9);
	ck_assert_int_eq(levelling()->step, 2 * NM_PER_FOOT);
	point_is(0, 0, 0, 1, 5, 0);
	point_is(1, 2, 0, 2, 5, 6);
	point_is(2, 4, 0, 3, 5, 6);
	point_is(3, 0, 2, 4, 5, 0);
	point_is(4, 2, 2, 5, 5, 0);
	point_is(5, 4, 2, 6, 5, 0);
	point_is(7, 2, 4, 8, 5, 0);
	point_is(8, 4, 4, 9, 5, 0);
}
END_TEST

/* The path is one piece from the top down, the lawn beside it begins lower. */
START_TEST(a_point_on_an_edge_has_the_dig_of_the_right_however_far_up_that_begins)
{
	garden_rows(&garden, (const char *const[]){ "..pp", "..pp", "llpp", "llpp", NULL });
	plot_add_lines(&garden.plot, "levels 2 ft\n  5 in, 5 in, 5 in\n  5 in, 5 in, 5 in\n"
		"  5 in, 5 in, 5 in\nfinish 0,0 5 in\n");
	garden_count(&garden);
	point_is(4, 2, 2, 5, 5, 6);
	ck_assert_int_ne(levelling()->points[3].dig, levelling()->points[4].dig);
}
END_TEST

START_TEST(points_beyond_the_plan_are_left_out)
{
	garden_rows(&garden, (const char *const[]){ "ppp", "ppp", NULL });
	plot_add_lines(&garden.plot, "levels 2 ft\n  1 in, 2 in, 3 in\n  4 in, 5 in, 6 in\n");
	garden_count(&garden);
	ck_assert_int_eq(levelling()->point_count, 4);
	point_is(1, 2, 0, 2, 2, 6);
	point_is(3, 2, 2, 5, 5, 6);
}
END_TEST

START_TEST(a_finished_ground_alone_has_no_points_and_moves_no_earth)
{
	double bank;

	garden_rectangle(&garden, 'p', 8, 4);
	garden_count(&garden);
	bank = garden.takeoff.earthwork.bank_all;
	plot_add_lines(&garden.plot, "finish 0,0 5 in\nfall 9 % towards 45\n");
	garden_count(&garden);
	ck_assert(levelling()->is_told);
	ck_assert_int_eq(levelling()->step, 0);
	ck_assert_int_eq(levelling()->point_count, 0);
	ck_assert(garden.takeoff.earthwork.bank_all == bank);
}
END_TEST

START_TEST(a_plot_that_tells_nothing_has_no_levelling)
{
	garden_rectangle(&garden, 'p', 8, 4);
	garden_count(&garden);
	ck_assert(!levelling()->is_told);
	ck_assert_ptr_null(levelling()->volumes.zones);
}
END_TEST

/* By hand: the larger of what the two methods' nets are, less the other. Ground falls by 5 % from a
 * house in the middle of the plan's left side; existing ground is level. */
START_TEST(what_the_nets_are_apart_is_said)
{
	garden_rectangle(&garden, '.', 8, 8);
	plot_add_lines(&garden.plot, "levels 8 ft\n  0 in, 0 in\n  0 in, 0 in\nfinish 0,4 0 in\n"
		"fall 5 % away\nhouse \"Kiln\"\n  from -1,3 to 0,5\n");
	garden_count(&garden);
	ck_assert_double_gt(levelling()->apart, 0);
	ck_assert_double_eq_tol(levelling()->apart,
		fabs(levelling()->volumes.finished.net - levelling()->volumes.by_unit_areas.net),
		1e-12);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("levelling");
	TCase *points = suite_case(suite, "points");

	tcase_add_checked_fixture(points, NULL, teardown);
	tcase_add_test(points, a_point_has_the_dig_of_what_lies_right_and_below);
	tcase_add_test(points,
		a_point_on_an_edge_has_the_dig_of_the_right_however_far_up_that_begins);
	tcase_add_test(points, points_beyond_the_plan_are_left_out);
	tcase_add_test(points, a_finished_ground_alone_has_no_points_and_moves_no_earth);
	tcase_add_test(points, a_plot_that_tells_nothing_has_no_levelling);
	tcase_add_test(points, what_the_nets_are_apart_is_said);
	return suite;
}
