/* Plants that would not do where they stand: of each rule a plot that breaks it and one that is
 * just within it. */
#include "support/planting.h"
#include "support/runner.h"

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* A garden of rows, with level beds but for those of letter c, and lines behind the ground. */
static void count(const char *const *rows, const char *lines)
{
	garden_rows(&garden, rows);
	for (size_t i = 0; i < garden.plot.details.legend_count; i++)
		if (garden.plot.details.legend[i].letter == 'b')
			plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_add_lines(&garden.plot, lines);
	garden_count(&garden);
}

static void check_one(enum snag_code code, int x, int y, const char *sentence)
{
	const struct snag *snag = planting_snag(&garden, code);

	ck_assert_int_eq(planting_snags(&garden, code), 1);
	ck_assert_int_eq(snag->cell.x, x);
	ck_assert_int_eq(snag->cell.y, y);
	ck_assert_str_eq(garden_sentence(&garden, snag), sentence);
}

/* ---- Places ---------------------------------------------------------------------------------- */

static const char *const all_ground[] = { "ccc.p", "cccl.", "cccS.", NULL };

/* The wall is 8 in deep, the middle of the outer cells 6 in inside it. */
static const struct { const char *lines; int x, y; const char *sentence; } places[] = {
	{ "plant z \"Rose\"\n  at 4,0\n", 4, 0,
		"Rose stands on a path: nothing is planted there." },
	{ "plant z \"Rose\"\n  at 3,2\n", 3, 2,
		"Rose stands on a fixture: nothing is planted there." },
	{ "plant z \"Rose\"\n  at 4,2\nhouse \"House\"\n  from 4,2 to 5,3\n", 4, 2,
		"Rose stands in a house." },
	{ "plant z \"Rose\"\n  at 0,1\n", 0, 1, "Rose stands in the bed's wall." },
};

START_TEST(a_specimen_stands_in_ground_that_is_planted)
{
	count(all_ground, places[_i].lines);
	check_one(SNAG_PLANT_PLACE, places[_i].x, places[_i].y, places[_i].sentence);
}
END_TEST

START_TEST(on_open_ground_in_lawns_and_within_walls_it_may_stand)
{
	count(all_ground, "plant z \"Rose\"\n  at 3,1\n  at 4,1\n  at 1,1\n");
	ck_assert_int_eq(planting_count(&garden), 3);
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_PLACE), 0);
}
END_TEST

/* Walls 6 in deep end where the middles of the outer cells are. */
START_TEST(just_inside_the_wall_it_may_stand)
{
	garden_rows(&garden, all_ground);
	plot_set(&garden.plot, 'c', BED_BLOCK, "1 ft x 6 in x 4 in");
	plot_add_lines(&garden.plot, "plant z \"Rose\"\n  at 0,1\n");
	garden_count(&garden);
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_PLACE), 0);
}
END_TEST

/* ---- Reach ----------------------------------------------------------------------------------- */

/* The third cell is 2 1/2 ft inside, the second 1 1/2. */
START_TEST(one_reaches_from_where_one_stands)
{
	static const char *const rows[] = { "FFFFFFF", "FbbbbbF", "FbbbbbF", "FbbbbbF", ".......",
		NULL };

	count(rows, "plant z \"Rose\"\n  at 3,1\n");
	check_one(SNAG_PLANT_REACH, 3, 1,
		"Rose stands farther than 2 ft from every side one can stand at.");
	garden_fini(&garden);
	count(rows, "plant z \"Rose\"\n  at 3,2\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_REACH), 0);
}
END_TEST

/* ---- Soil ------------------------------------------------------------------------------------ */

/* Three courses of 6 in less 1 1/2 in free, 2 in of mulch and 2 in of embed over undug ground. */
START_TEST(soil_is_as_deep_as_what_is_within_the_walls)
{
	static const char *const rows[] = { "......", ".cccc.", ".cccc.", ".cccc.", "......",
		NULL };

	count(rows, "plant z \"Rose\"\n  soil 12 5/8 in\n  at 2,2\n");
	ck_assert_int_eq(garden.takeoff.fills.list[0].soil_depth, 25 * NM_PER_INCH / 2);
	check_one(SNAG_PLANT_SOIL, 2, 2,
		"Rose needs 1 ft 5/8 in of soil; within these walls are 1 ft 1/2 in.");
	garden_fini(&garden);
	count(rows, "plant z \"Rose\"\n  soil 12 1/2 in\n  at 2,2\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_SOIL), 0);
}
END_TEST

START_TEST(at_ground_level_it_is_as_deep_as_is_dug_over)
{
	static const char *const rows[] = { "....", ".bb.", "....", NULL };

	count(rows, "plant z \"Rose\"\n  soil 8 1/8 in\n  at 2,1\n");
	check_one(SNAG_PLANT_SOIL, 2, 1, "Rose needs 8 1/8 in of soil; here 8 in are dug over.");
	garden_fini(&garden);
	count(rows, "plant z \"Rose\"\n  soil 8 in\n  at 2,1\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_SOIL), 0);
	plot_set(&garden.plot, 'b', BED_PREPARE, "0 in");
	garden_count(&garden);
	check_one(SNAG_PLANT_SOIL, 2, 1, "Rose needs 8 in of soil; here 0 in are dug over.");
}
END_TEST

/* Six times 12 1/2 in are 75 in: common practice, no published source. */
START_TEST(what_grows_within_walls_is_at_most_six_times_as_tall_as_its_soil_is_deep)
{
	static const char *const rows[] = { "......", ".cccc.", ".cccc.", ".cccc.", "......",
		NULL };

	count(rows, "plant z \"Rose\"\n  height 75 1/8 in\n  at 2,2\n");
	check_one(SNAG_PLANT_WALL, 2, 2, "Rose grows 6 ft 3 1/8 in tall over 1 ft 1/2 in of soil "
		"within walls, over 6 ft 3 in: it may not stand in wind.");
	plot_set(&garden.plot, 0, ALLOW_PLANT_TALL, "7");
	garden_count(&garden);
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_WALL), 0);
	garden_fini(&garden);
	count(rows, "plant z \"Rose\"\n  height 75 in\n  at 2,2\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_WALL), 0);
}
END_TEST

/* ---- Room ------------------------------------------------------------------------------------ */

START_TEST(two_specimens_stand_half_of_both_spreads_apart)
{
	static const char *const rows[] = { ".......", ".......", NULL };

	count(rows, "plant y \"Yew\"\n  spread 4 ft\n  at 1,0\n"
		"plant z \"Rose\"\n  spread 24 1/4 in\n  at 4,0\n");
	check_one(SNAG_PLANT_CLOSE, 1, 0, "Yew and Rose stand 3 ft apart; grown they take "
		"3 ft 1/8 in, half of both spreads.");
	ck_assert_int_eq(planting_snag(&garden, SNAG_PLANT_CLOSE)->kind, PLANT_CLOSE_SPECIMENS);
	garden_fini(&garden);
	count(rows, "plant y \"Yew\"\n  spread 4 ft\n  at 1,0\n"
		"plant z \"Rose\"\n  spread 2 ft\n  at 4,0\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_CLOSE), 0);
}
END_TEST

/* The card is that of the first plant a snag names. */
static void check_first(const char *const *rows, const char *plants, int first)
{
	count(rows, plants);
	ck_assert_int_eq(planting_snag(&garden, SNAG_PLANT_CLOSE)->figures[0], first);
	garden_fini(&garden);
}

/* A specimen takes its spread, so no drift is too close to it; of drifts the one whose spacing says
 * less than its spread is to be changed. */
START_TEST(what_takes_more_than_its_share_has_the_card)
{
	static const char *const rows[] = { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL };

	count(rows, "plant y \"Willow\"\n  spread 4 ft\n  at 3,1\n"
		"plant z \"Thyme\"\n  spacing 6 in\n  drift b whole\n");
	ck_assert_int_gt(planting_count(&garden), 20);
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_CLOSE), 0);
	garden_fini(&garden);
	check_first(rows, "plant y \"Sage\"\n  spacing 1 ft\n  drift b front\n"
		"plant z \"Thyme\"\n  spacing 6 in\n  spread 1 ft\n  drift b whole\n",
		1);
	check_first(rows, "plant y \"Sage\"\n  spread 3 ft\n  at 0,0\n"
		"plant z \"Yew\"\n  spread 9 ft\n  at 1,0\n", 1);
}
END_TEST

/* In one region or two; the nearest one is told. */
START_TEST(two_of_a_kind_do_too)
{
	static const char *const rows[] = { "bbb.lll", "bbb.lll", NULL };

	count(rows, "plant z \"Rose\"\n  spread 3 1/64 ft\n  at 2,0\n  at 5,0\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_CLOSE), 2);
	garden_fini(&garden);
	count(rows, "plant z \"Rose\"\n  spread 3 ft\n  at 2,0\n  at 5,0\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_CLOSE), 0);
}
END_TEST

START_TEST(in_a_drift_they_are_close_where_they_spread_wider_than_they_are_spaced)
{
	static const char *const rows[] = { "bbbbbb", "bbbbbb", NULL };

	count(rows, "plant z \"Thyme\"\n  spread 12 1/8 in\n  pattern square\n  drift b whole\n");
	check_one(SNAG_PLANT_CLOSE, 0, 0,
		"Thyme and Thyme stand 1 ft apart; grown they take 1 ft 1/8 in, half of both "
		"spreads.");
	ck_assert_int_eq(planting_snag(&garden, SNAG_PLANT_CLOSE)->kind, PLANT_CLOSE_DRIFTS);
	garden_fini(&garden);
	count(rows, "plant z \"Thyme\"\n  pattern square\n  drift b whole\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_CLOSE), 0);
}
END_TEST

/* ---- In front -------------------------------------------------------------------------------- */

static const char *const border[] = { "FFFFFFF", "FbbbbbF", "FbbbbbF", "FbbbbbF", "FbbbbbF",
	".......", NULL };

/* One walks up from below. A rose 2 ft wide hides what stands in its column. */
START_TEST(what_is_taller_stands_behind)
{
	count(border, "plant y \"Rose\"\n  height 4 ft\n  spread 2 ft\n  at 3,4\n"
		"plant z \"Lily\"\n  height 3 ft\n  at 3,2\n");
	check_one(SNAG_PLANT_FRONT, 3, 2,
		"Rose, 4 ft tall, hides Lily, 3 ft tall, from where one walks up to it.");
	garden_fini(&garden);
	count(border, "plant y \"Rose\"\n  height 4 ft\n  spread 2 ft\n  at 3,2\n"
		"plant z \"Lily\"\n  height 3 ft\n  at 3,4\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_FRONT), 0);
}
END_TEST

START_TEST(just_as_tall_or_half_a_spread_aside_it_hides_nothing)
{
	count(border, "plant y \"Rose\"\n  height 3 ft\n  spread 2 ft\n  at 3,4\n"
		"plant z \"Lily\"\n  height 3 ft\n  at 3,2\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_FRONT), 0);
	garden_fini(&garden);
	count(border, "plant y \"Rose\"\n  height 4 ft\n  spread 2 ft\n  at 4,4\n"
		"plant z \"Lily\"\n  height 3 ft\n  at 3,2\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_FRONT), 0);
	garden_fini(&garden);
	count(border, "plant y \"Rose\"\n  height 4 ft\n  spread 2 1/64 ft\n  at 4,4\n"
		"plant z \"Lily\"\n  height 3 ft\n  at 3,2\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_FRONT), 1);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("planting snags");
	TCase *snags = suite_case(suite, "snags");

	tcase_add_checked_fixture(snags, NULL, teardown);
	tcase_add_loop_test(snags, a_specimen_stands_in_ground_that_is_planted, 0,
		sizeof places / sizeof *places);
	tcase_add_test(snags, on_open_ground_in_lawns_and_within_walls_it_may_stand);
	tcase_add_test(snags, just_inside_the_wall_it_may_stand);
	tcase_add_test(snags, one_reaches_from_where_one_stands);
	tcase_add_test(snags, soil_is_as_deep_as_what_is_within_the_walls);
	tcase_add_test(snags, at_ground_level_it_is_as_deep_as_is_dug_over);
	tcase_add_test(snags,
		what_grows_within_walls_is_at_most_six_times_as_tall_as_its_soil_is_deep);
	tcase_add_test(snags, two_specimens_stand_half_of_both_spreads_apart);
	tcase_add_test(snags, two_of_a_kind_do_too);
	tcase_add_test(snags,
		in_a_drift_they_are_close_where_they_spread_wider_than_they_are_spaced);
	tcase_add_test(snags, what_is_taller_stands_behind);
	tcase_add_test(snags, just_as_tall_or_half_a_spread_aside_it_hides_nothing);
	tcase_add_test(snags, what_takes_more_than_its_share_has_the_card);
	return suite;
}
