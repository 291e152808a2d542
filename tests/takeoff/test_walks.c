/* Snags of paths, lawns, beds and fixtures: for each a plot that has it and one just inside its
 * rule that has not. */
#include "takeoff/walks/walks.h"
#include "base/memory.h"
#include "support/garden.h"
#include "support/runner.h"

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

#define ROWS (const char *const[])

/* The snags of the plot that have the code; it is counted anew. */
static int count(enum snag_code code)
{
	int found = 0;

	garden_count(&garden);
	while (garden_snag(&garden, code, found))
		found++;
	return found;
}

static void given(const char *const *rows)
{
	garden_fini(&garden);
	garden_rows(&garden, rows);
}

/* Cells of so many inches. */
static void given_inches(const char *const *rows, const char *cell)
{
	given(rows);
	plot_set(&garden.plot, 0, HEAD_CELL, cell);
}

static void check_first(enum snag_code code, int x, int y, const char *sentence)
{
	const struct snag *snag = garden_snag(&garden, code, 0);

	ck_assert_ptr_nonnull(snag);
	ck_assert_int_eq(snag->cell.x, x);
	ck_assert_int_eq(snag->cell.y, y);
	ck_assert_str_eq(garden_sentence(&garden, snag), sentence);
}

/* ---- Paths ----------------------------------------------------------------------------------- */

/* U.S. Department of Justice, 2010 ADA Standards for Accessible Design, 403.5.1: the clear width of
 * walking surfaces is 36 in at least. */
enum { ADA_CLEAR_WIDTH_INCHES = 36 };

static const char *const three_wide[] = { "lllll", ".....", ".ppp.", ".ppp.", ".ppp.", ".ppp.",
	".bbb.", NULL };

START_TEST(a_path_of_36_in_is_wide_enough_and_one_of_33_is_not)
{
	_Static_assert(3 * 12 == ADA_CLEAR_WIDTH_INCHES, "three cells of a foot");

	given(three_wide);
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 0);
	given_inches(three_wide, "11 in"); /* 33 in */
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 1);
	ck_assert_int_eq(count(SNAG_PATH_BARROW), 0);
	check_first(SNAG_PATH_NARROW, 1, 2,
		"Less than 3 ft of clear width: no square that wide passes.");
	/* The whole of it is named. */
	ck_assert_int_eq(garden_snag(&garden, SNAG_PATH_NARROW, 0)->box.bottom, 5);
}
END_TEST

START_TEST(a_barrow_takes_24_in)
{
	static const char *const two_wide[] = { ".pp.", ".pp.", ".pp.", ".bb.", NULL };

	given(two_wide);
	ck_assert_int_eq(count(SNAG_PATH_BARROW), 0);
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 1);
	given_inches(two_wide, "11 in"); /* 22 in: no need to say that it is under 36 too */
	ck_assert_int_eq(count(SNAG_PATH_BARROW), 1);
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 0);
	check_first(SNAG_PATH_BARROW, 1, 0,
		"Less than 2 ft of clear width: no barrow gets through.");
}
END_TEST

START_TEST(only_where_a_path_narrows_is_it_narrow)
{
	given(ROWS { "ppppppp", "ppppppp", "pppbppp", "ppppppp", "ppppppp", NULL });
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 2);
	check_first(SNAG_PATH_NARROW, 3, 0,
		"Less than 3 ft of clear width: no square that wide passes.");
	ck_assert_int_eq(count(SNAG_PATH_BARROW), 0);
}
END_TEST

START_TEST(what_is_allowed_for_decides_and_nothing_asks_nothing)
{
	given(ROWS { ".pp.", ".pp.", ".pp.", ".bb.", NULL });
	plot_set(&garden.plot, 0, ALLOW_PATH_CLEAR, "2 ft");
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 0);
	plot_set(&garden.plot, 0, ALLOW_PATH_CLEAR, "25 in");
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 1);
	plot_set(&garden.plot, 0, ALLOW_BARROW_CLEAR, "5 ft"); /* more than that of a path */
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 1);
	ck_assert_int_eq(count(SNAG_PATH_BARROW), 1);
	plot_set(&garden.plot, 0, ALLOW_BARROW_CLEAR, "0 in");
	plot_set(&garden.plot, 0, ALLOW_PATH_CLEAR, "0 in");
	plot_set(&garden.plot, 0, ALLOW_ARM, "0 in");
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 0);
	ck_assert_int_eq(count(SNAG_PATH_BARROW), 0);
	ck_assert_int_eq(count(SNAG_BED_REACH), 0);
}
END_TEST

START_TEST(a_metric_path_is_900_mm_wide)
{
	given(three_wide);
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "300 mm");
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 0);
	plot_set(&garden.plot, 0, HEAD_CELL, "299 mm");
	ck_assert_int_eq(count(SNAG_PATH_NARROW), 1);
	check_first(SNAG_PATH_NARROW, 1, 2,
		"Less than 900 mm of clear width: no square that wide passes.");
}
END_TEST

/* ---- Cut off --------------------------------------------------------------------------------- */

static void check_cut_off(const char *const *rows, int snags, enum path_cut_off kind)
{
	given(rows);
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), snags);
	if (snags > 0)
		ck_assert_int_eq(garden_snag(&garden, SNAG_PATH_CUT_OFF, 0)->kind, kind);
}

START_TEST(a_path_that_nothing_leads_to_is_cut_off)
{
	check_cut_off(ROWS { "bbbbb", "bpppb", "bbbbb", NULL }, 1, PATH_UNREACHED);
	check_first(SNAG_PATH_CUT_OFF, 1, 1, "Nobody gets to this path from outside the plan: "
		"beds, fixtures or a fence without a gate are in the way.");
	check_cut_off(ROWS { "bbbbb", "bppp.", "bbbbb", NULL }, 0, PATH_UNREACHED);
	check_cut_off(ROWS { "bbbbb", "bpplb", "bbblb", NULL }, 0, PATH_UNREACHED);
	check_cut_off(ROWS { "bbbbb", "bppSb", "bbb.b", NULL }, 1, PATH_UNREACHED);
}
END_TEST

START_TEST(a_path_that_touches_nothing_but_open_ground_leads_nowhere)
{
	check_cut_off(ROWS { ".....", ".ppp.", ".....", NULL }, 1, PATH_TO_NOTHING);
	check_first(SNAG_PATH_CUT_OFF, 1, 1, "This path leads nowhere: it touches no gate, "
		"fixture, bed, lawn or boundary.");
	check_cut_off(ROWS { ".....", ".pppb", ".....", NULL }, 0, PATH_TO_NOTHING);
	check_cut_off(ROWS { ".....", ".pppS", ".....", NULL }, 0, PATH_TO_NOTHING);
	check_cut_off(ROWS { ".....", ".pppl", ".....", NULL }, 0, PATH_TO_NOTHING);
	check_cut_off(ROWS { ".....", ".pppp", ".....", NULL }, 0, PATH_TO_NOTHING);
	check_cut_off(ROWS { "....b", ".ppp.", ".....", NULL }, 1, PATH_TO_NOTHING); /* a corner */
}
END_TEST

/* Between two corners, as the format has it. */
static void put_house(int left, int top, int right, int bottom)
{
	obstacles_add(&garden.plot.details.around.houses, memory_string("House"))->cells =
		(struct rectangle){ left, top, right - 1, bottom - 1 };
}

START_TEST(a_path_that_touches_a_house_leads_somewhere)
{
	static const char *const rows[] = { "......", ".ppp..", "......", NULL };

	given(rows);
	put_house(4, 0, 6, 3);
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 0);
	given(rows);
	put_house(1, 2, 2, 3);
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 0);
	given(rows);
	put_house(4, 2, 6, 3); /* a corner alone */
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 1);
	check_first(SNAG_PATH_CUT_OFF, 1, 1, "This path leads nowhere: it touches no gate, "
		"fixture, bed, lawn, house or boundary.");
	given(rows);
	put_house(5, 0, 6, 3);
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 1);
}
END_TEST

START_TEST(paths_that_touch_are_one_whichever_leads_somewhere)
{
	check_cut_off(ROWS { ".....", ".pqs.", "...sb", NULL }, 0, PATH_TO_NOTHING);
	check_cut_off(ROWS { "......", ".sppq.", ".sq.q.", "......", NULL }, 1, PATH_TO_NOTHING);
	/* It leads somewhere before it is seen to touch the other. */
	check_cut_off(ROWS { ".......", ".p..qb.", ".pqqq..", ".......", NULL }, 0,
		PATH_TO_NOTHING);
}
END_TEST

static struct fence *fenced(const struct place *points, int count_of_points)
{
	struct fence *fence = details_add_fence(&garden.plot.details, memory_string("Fence"));
	struct route *run = fence_add_run(fence);

	for (int i = 0; i < count_of_points; i++)
		route_add(run, points[i]);
	return fence;
}

START_TEST(a_path_within_a_fence_needs_a_gate)
{
	static const struct place round[] = { { 0, 0 }, { 6, 0 }, { 6, 4 }, { 0, 4 }, { 0, 0 } };
	struct fence *fence;

	given(ROWS { "......", ".pppp.", ".pppp.", "...b..", NULL });
	fence = fenced(round, 5);
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 1);
	legs_add(&fence->gates, (struct leg){ { 0, 0 }, { 4, 0 } });
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 0);
}
END_TEST

START_TEST(a_gate_is_somewhere_to_lead_to)
{
	static const struct place across[] = { { 2, 1 }, { 5, 1 } };
	struct fence *fence;

	given(ROWS { ".......", "..ppp..", "..ppp..", ".......", NULL });
	fence = fenced(across, 2);
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 1);
	legs_add(&fence->gates, (struct leg){ { 2, 1 }, { 5, 1 } });
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 0);
	given(ROWS { ".......", "..ppp..", ".......", ".......", NULL }); /* below it */
	fence = fenced((const struct place[]){ { 2, 2 }, { 5, 2 } }, 2);
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 1);
	legs_add(&fence->gates, (struct leg){ { 2, 2 }, { 5, 2 } });
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 0);
}
END_TEST

/* ---- Beds ------------------------------------------------------------------------------------ */

/* University of Missouri Extension, G6985, Raised-Bed Gardening, as quoted, its year not noted: no
 * wider than 4 ft where one works from both sides. South Dakota State University Extension, as
 * quoted, title and year not noted: 2 ft from one side. */
START_TEST(a_bed_is_four_feet_deep_at_most_or_two_from_one_side)
{
	given(ROWS { "......", ".bbbb.", ".bbbb.", ".bbbb.", ".bbbb.", "......", NULL });
	ck_assert_int_eq(count(SNAG_BED_REACH), 0);
	given(ROWS { "......", ".bbbbb", ".bbbbb", ".bbbbb", ".bbbbb", ".bbbbb", "......", NULL });
	ck_assert_int_eq(count(SNAG_BED_REACH), 1);
	check_first(SNAG_BED_REACH, 3, 3,
		"Ground of this bed is farther than 2 ft from every side one can stand at.");
	given(ROWS { "pppp", "bbbb", "bbbb", NULL });
	ck_assert_int_eq(count(SNAG_BED_REACH), 0);
	given(ROWS { "pppp", "bbbb", "bbbb", "bbbb", NULL });
	ck_assert_int_eq(count(SNAG_BED_REACH), 1);
	check_first(SNAG_BED_REACH, 0, 3,
		"Ground of this bed is farther than 2 ft from every side one can stand at.");
}
END_TEST

START_TEST(each_bed_is_named_once)
{
	given(ROWS { "bbb", "bbb", "bbb", "ccc", "ccc", NULL });
	ck_assert_int_eq(count(SNAG_BED_REACH), 2);
	ck_assert_int_eq(garden_snag(&garden, SNAG_BED_REACH, 1)->region, 1);
	ck_assert_int_eq(garden_snag(&garden, SNAG_BED_REACH, 1)->box.top, 3);
}
END_TEST

START_TEST(a_fence_beside_a_bed_keeps_one_off_it)
{
	static const struct place beside[] = { { 0, 1 }, { 4, 1 } };

	given(ROWS { "pppp", "bbbb", "bbbb", NULL });
	fenced(beside, 2);
	ck_assert_int_eq(count(SNAG_BED_REACH), 1);
}
END_TEST

/* ---- Lawns and fixtures ---------------------------------------------------------------------- */

START_TEST(a_lawn_is_two_feet_wide_to_be_mown)
{
	static const char *const rows[] = { "pppppp", "lllmmm", "lllmmm", "pppppp", NULL };

	given(rows);
	ck_assert_int_eq(count(SNAG_LAWN_NARROW), 0);
	given_inches(rows, "11 1/2 in"); /* 23 in */
	ck_assert_int_eq(count(SNAG_LAWN_NARROW), 1);
	check_first(SNAG_LAWN_NARROW, 0, 1, "Less than 2 ft of lawn: too narrow to mow.");
}
END_TEST

START_TEST(a_fixture_is_three_times_as_high_as_wide_at_most)
{
	given(ROWS { "pppp", "pSSp", "pSSp", "pSSp", NULL }); /* 2 ft across, 3 ft down */
	plot_set(&garden.plot, 'S', FIXTURE_HEIGHT, "6 ft");
	ck_assert_int_eq(count(SNAG_FIXTURE_TALL), 0);
	plot_set(&garden.plot, 'S', FIXTURE_HEIGHT, "72 1/64 in");
	ck_assert_int_eq(count(SNAG_FIXTURE_TALL), 1);
	plot_set(&garden.plot, 'S', FIXTURE_HEIGHT, "8 ft");
	ck_assert_int_eq(count(SNAG_FIXTURE_TALL), 1);
	check_first(SNAG_FIXTURE_TALL, 1, 1, "8 ft high and 2 ft across its narrower way, over 6 "
		"ft: fix it against tipping.");
	plot_set(&garden.plot, 0, ALLOW_FIXTURE_SLENDER, "4");
	ck_assert_int_eq(count(SNAG_FIXTURE_TALL), 0);
}
END_TEST

START_TEST(a_path_touches_a_fixture_by_a_side)
{
	given(ROWS { ".S.", "p..", NULL });
	ck_assert_int_eq(count(SNAG_FIXTURE_NO_PATH), 1);
	check_first(SNAG_FIXTURE_NO_PATH, 1, 0, "No path touches this fixture.");
	given(ROWS { ".S.", ".p.", NULL });
	ck_assert_int_eq(count(SNAG_FIXTURE_NO_PATH), 0);
	given(ROWS { "SSp", NULL });
	ck_assert_int_eq(count(SNAG_FIXTURE_NO_PATH), 0);
}
END_TEST

START_TEST(a_fixture_in_a_bed_needs_no_path)
{
	given(ROWS { "bbbb", "bSUb", "bbbb", NULL });
	ck_assert_int_eq(count(SNAG_FIXTURE_NO_PATH), 0);
	given(ROWS { "bbbb", "bSSb", "bblb", NULL });
	ck_assert_int_eq(count(SNAG_FIXTURE_NO_PATH), 1);
	given(ROWS { "bbbb", "bbSS", "bbbb", NULL }); /* it stands at the boundary */
	ck_assert_int_eq(count(SNAG_FIXTURE_NO_PATH), 1);
}
END_TEST

START_TEST(a_path_beyond_a_fence_does_not_reach_a_fixture_but_through_a_gate)
{
	static const struct place between[] = { { 1, 0 }, { 1, 1 } };
	struct fence *fence;

	given(ROWS { "Sppp", NULL });
	fence = fenced(between, 2);
	ck_assert_int_eq(count(SNAG_FIXTURE_NO_PATH), 1);
	legs_add(&fence->gates, (struct leg){ between[0], between[1] });
	ck_assert_int_eq(count(SNAG_FIXTURE_NO_PATH), 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("walks");
	TCase *paths = suite_case(suite, "paths"), *others = suite_case(suite, "others");

	tcase_add_checked_fixture(paths, NULL, teardown);
	tcase_add_test(paths, a_path_of_36_in_is_wide_enough_and_one_of_33_is_not);
	tcase_add_test(paths, a_barrow_takes_24_in);
	tcase_add_test(paths, only_where_a_path_narrows_is_it_narrow);
	tcase_add_test(paths, what_is_allowed_for_decides_and_nothing_asks_nothing);
	tcase_add_test(paths, a_metric_path_is_900_mm_wide);
	tcase_add_test(paths, a_path_that_nothing_leads_to_is_cut_off);
	tcase_add_test(paths, a_path_that_touches_nothing_but_open_ground_leads_nowhere);
	tcase_add_test(paths, a_path_that_touches_a_house_leads_somewhere);
	tcase_add_test(paths, paths_that_touch_are_one_whichever_leads_somewhere);
	tcase_add_test(paths, a_path_within_a_fence_needs_a_gate);
	tcase_add_test(paths, a_gate_is_somewhere_to_lead_to);

	tcase_add_checked_fixture(others, NULL, teardown);
	tcase_add_test(others, a_bed_is_four_feet_deep_at_most_or_two_from_one_side);
	tcase_add_test(others, each_bed_is_named_once);
	tcase_add_test(others, a_fence_beside_a_bed_keeps_one_off_it);
	tcase_add_test(others, a_lawn_is_two_feet_wide_to_be_mown);
	tcase_add_test(others, a_fixture_is_three_times_as_high_as_wide_at_most);
	tcase_add_test(others, a_path_touches_a_fixture_by_a_side);
	tcase_add_test(others, a_fixture_in_a_bed_needs_no_path);
	tcase_add_test(others, a_path_beyond_a_fence_does_not_reach_a_fixture_but_through_a_gate);
	return suite;
}
