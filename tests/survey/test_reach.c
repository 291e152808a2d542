/* What is out of an arm's reach, against every side that one can stand at. */
#include "survey/reach.h"
#include "base/memory.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdlib.h>

static struct arena arena;
static struct plot plot;
static struct survey survey;

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

static void given(const char *const *rows)
{
	plot_from_rows(&plot, rows);
}

/* '#' where a bed's middle is out of reach, row by row. */
static void check_beyond(nm arm, const char *const *rows)
{
	struct fence_map fences = fence_map_of(&plot, &arena);
	struct house_map houses = house_map_of(&plot, 0, &arena);
	unsigned char *beyond;

	survey_plot(&survey, &arena, &plot);
	beyond = reach_beyond(&survey, &fences, &houses, arm);
	for (int y = 0; rows[y]; y++)
		for (int x = 0; rows[y][x]; x++)
			ck_assert_msg(beyond[y * survey.columns + x] == (rows[y][x] == '#'),
				"%d,%d is %d", x, y, beyond[y * survey.columns + x]);
	free(beyond);
}

#define FEET(n) ((n) * NM_PER_FOOT)
#define ROWS (const char *const[])

/* University of Missouri Extension, G6985, Raised-Bed Gardening, as quoted, its year not noted:
 * beds up to 4 ft where both sides can be reached. South Dakota State University Extension, as
 * quoted, title and year not noted: 2 ft where one can. So an arm is 2 ft. */
START_TEST(four_feet_are_reached_from_both_sides_and_two_from_one)
{
	given(ROWS { "pppppp", "bbbbbb", "bbbbbb", "bbbbbb", "bbbbbb", "pppppp", NULL });
	check_beyond(FEET(2), ROWS { "      ", "      ", "      ", "      ", "      ", NULL });
	plot_fini(&plot);
	given(ROWS { "pppppp", "bbbbbb", "bbbbbb", "bbbbbb", "bbbbbb", "bbbbbb", "pppppp", NULL });
	check_beyond(FEET(2), ROWS { "      ", "      ", "      ", "######", "      ", "      ",
		NULL });
	plot_fini(&plot);
	given(ROWS { "pppppp", "bbbbbb", "bbbbbb", "SSSSSS", NULL });
	check_beyond(FEET(2), ROWS { "      ", "      ", "      ", NULL });
	plot_fini(&plot);
	given(ROWS { "pppppp", "bbbbbb", "bbbbbb", "bbbbbb", "SSSSSS", NULL });
	check_beyond(FEET(2), ROWS { "      ", "      ", "      ", "######", NULL });
}
END_TEST

START_TEST(the_middle_counts_and_as_far_as_the_arm_is_not_beyond_it)
{
	given(ROWS { "p", "b", "b", NULL });
	check_beyond(FEET(3) / 2, ROWS { " ", " ", " ", NULL });
	check_beyond(FEET(3) / 2 - 1, ROWS { " ", " ", "#", NULL });
	check_beyond(FEET(1) / 2, ROWS { " ", " ", "#", NULL });
	check_beyond(FEET(1) / 2 - 1, ROWS { " ", "#", "#", NULL });
}
END_TEST

START_TEST(nobody_stands_where_a_house_does)
{
	given(ROWS { "....", "bbbb", "bbbb", "....", NULL });
	obstacles_add(&plot.details.around.houses, memory_string("House"))->cells =
		(struct rectangle){ -1, 3, 9, 9 };
	check_beyond(FEET(1), ROWS { "    ", "    ", "####", "    ", NULL });
}
END_TEST

START_TEST(round_a_corner_one_reaches_as_the_crow_flies)
{
	/* From the path's corner, 1,1, to the middle of 2,2: 1 1/2 ft both ways, the root of 4.5 in
	 * all, 646.5784 mm. */
	given(ROWS { "pSSS", "bbbb", "bbbb", "bbbb", NULL });
	check_beyond(646578000, ROWS { "    ", "   #", "  ##", "####", NULL });
	check_beyond(646579000, ROWS { "    ", "   #", "   #", "####", NULL });
}
END_TEST

START_TEST(one_does_not_stand_at_a_fence_a_bed_a_fixture_or_the_boundary)
{
	struct fence *fence;
	struct route *run;

	given(ROWS { "bbS", "cbp", NULL });
	check_beyond(FEET(1), ROWS { "# ", "#  ", NULL });
	fence = details_add_fence(&plot.details, memory_string("Fence"));
	run = fence_add_run(fence);
	route_add(run, (struct place){ 2, 2 });
	route_add(run, (struct place){ 2, 1 });
	check_beyond(FEET(1), ROWS { "## ", "## ", NULL });
	legs_add(&fence->gates, (struct leg){ { 2, 2 }, { 2, 1 } }); /* nor at a gate */
	check_beyond(FEET(1), ROWS { "## ", "## ", NULL });
}
END_TEST

START_TEST(one_reaches_over_another_bed)
{
	given(ROWS { "p", "b", "c", "c", NULL });
	check_beyond(FEET(2), ROWS { " ", " ", " ", "#", NULL });
}
END_TEST

/* An arm longer than any plan, and ten times as long. */
START_TEST(a_long_arm_reaches_whatever_one_can_get_beside)
{
	given(ROWS { "pbbbbbbb", "SSSSSSSS", "bbbbbbbS", "bSSSSSSb", NULL });
	for (nm arm = 5000; arm <= 50000; arm *= 10)
		check_beyond(FEET(arm), ROWS { "        ", "        ", "        ", "        ",
			NULL });
	plot_fini(&plot);
	given(ROWS { "bbbb", NULL });
	check_beyond(FEET(50000), ROWS { "####", NULL });
}
END_TEST

/* ---- All sides, one by one ------------------------------------------------------------------- */

static bool is_in_house(int x, int y)
{
	const struct obstacles *houses = &plot.details.around.houses;

	for (size_t i = 0; i < houses->count; i++) {
		const struct rectangle *r = &houses->items[i].cells;

		if (x >= r->left && x <= r->right && y >= r->top && y <= r->bottom)
			return true;
	}
	return false;
}

/* Nobody stands in a house, nor beyond the plan. */
static enum plot_class class_at(int x, int y)
{
	return ground_holds(&plot.ground, x, y) && !is_in_house(x, y) ?
		plot_class_of(&plot, ground_cell(&plot.ground, x, y)) : CLASS_BOUNDARY;
}

static bool is_standing(enum plot_class class)
{
	return class == CLASS_PATH || class == CLASS_LAWN || class == CLASS_OPEN;
}

/* Four times the square of the distance from a cell's middle to a side, in cells. */
static int64_t square_to_side(int x, int y, struct leg side)
{
	int64_t left = 2 * side.from.x, right = 2 * side.to.x, top = 2 * side.from.y,
		bottom = 2 * side.to.y, at_x = 2 * x + 1, at_y = 2 * y + 1;
	int64_t across = at_x < left ? left - at_x : at_x > right ? at_x - right : 0;
	int64_t down = at_y < top ? top - at_y : at_y > bottom ? at_y - bottom : 0;

	return across * across + down * down;
}

/* The least of them over all sides one can stand at. */
static int64_t square_to_nearest(const struct legs *fences, int x, int y)
{
	int64_t nearest = INT64_MAX;

	for (int i = 0; i < 2 * plot.ground.columns * plot.ground.rows; i++) {
		int at_x = i / 2 % plot.ground.columns, at_y = i / 2 / plot.ground.columns;
		bool is_below = i % 2;
		enum plot_class one = class_at(at_x, at_y),
			other = class_at(at_x + !is_below, at_y + is_below);
		struct leg side = { { at_x + !is_below, at_y + is_below }, { at_x + 1, at_y + 1 } };
		int64_t square = square_to_side(x, y, side);
		bool has_fence = false;

		for (size_t j = 0; j < fences->count; j++)
			has_fence = has_fence || leg_covers(fences->items[j], side);
		if (((one == CLASS_BED && is_standing(other)) ||
			(other == CLASS_BED && is_standing(one))) && !has_fence &&
			square < nearest)
			nearest = square;
	}
	return nearest;
}

static void fence_at_random(struct random *random)
{
	struct route *run =
		fence_add_run(details_add_fence(&plot.details, memory_string("Fence")));
	int x = random_between(random, 0, plot.ground.columns);
	int y = random_between(random, 0, plot.ground.rows);

	route_add(run, (struct place){ x, y });
	route_add(run, (struct place){ x ? 0 : plot.ground.columns, y });
}

/* Within the plan, beyond it, or partly so. */
static void house_at_random(struct random *random)
{
	int left = random_between(random, -3, plot.ground.columns);
	int top = random_between(random, -3, plot.ground.rows);

	obstacles_add(&plot.details.around.houses, memory_string("House"))->cells =
		(struct rectangle){ left, top, left + random_below(random, 5),
			top + random_below(random, 5) };
}

START_TEST(reach_is_the_distance_to_the_nearest_side_one_can_stand_at)
{
	int counts[2] = { 0 };

	for (int seed = 0; seed < runner_count(300, 10000); seed++) {
		struct random random = { (uint64_t)seed };
		struct legs legs = LEGS_EMPTY;
		struct fence_map map;
		struct house_map houses;
		unsigned char *beyond;
		nm arm = random_between(&random, 0, 5000) * NM_PER_MM;

		plot_at_random(&plot, &random, 14, seed % 2 ? "bbbbbbcSp" : "bbbc.lSp");
		fence_at_random(&random);
		for (int i = random_below(&random, 3); i > 0; i--)
			house_at_random(&random);
		fence_legs(&plot.details.fences[0], &legs);
		map = fence_map_of(&plot, &arena);
		houses = house_map_of(&plot, 0, &arena);
		survey_plot(&survey, &arena, &plot);
		beyond = reach_beyond(&survey, &map, &houses, arm);
		for (int i = 0; i < survey.columns * survey.rows; i++) {
			int x = i % survey.columns, y = i / survey.columns;
			int64_t square = square_to_nearest(&legs, x, y), whole_mm = arm / NM_PER_MM;
			/* Squares of whole mm, and of 304.8 mm: no two are so near to be taken for
			 * each other. */
			bool is_beyond = class_at(x, y) == CLASS_BED && (square == INT64_MAX ||
				(double)square * 304.8 * 304.8 >
				4 * (double)whole_mm * (double)whole_mm);

			counts[is_beyond]++;
			ck_assert_msg(beyond[i] == is_beyond, "seed %d: %d,%d", seed, x, y);
		}
		free(beyond);
		legs_fini(&legs);
		arena_clear(&arena);
		plot_fini(&plot);
	}
	ck_assert_int_gt(counts[0], 1000);
	ck_assert_int_gt(counts[1], 300);
	plot_init(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("reach");
	TCase *reach = suite_case(suite, "reach");

	tcase_add_checked_fixture(reach, NULL, teardown);
	tcase_add_test(reach, four_feet_are_reached_from_both_sides_and_two_from_one);
	tcase_add_test(reach, the_middle_counts_and_as_far_as_the_arm_is_not_beyond_it);
	tcase_add_test(reach, nobody_stands_where_a_house_does);
	tcase_add_test(reach, round_a_corner_one_reaches_as_the_crow_flies);
	tcase_add_test(reach, one_does_not_stand_at_a_fence_a_bed_a_fixture_or_the_boundary);
	tcase_add_test(reach, one_reaches_over_another_bed);
	tcase_add_test(reach, a_long_arm_reaches_whatever_one_can_get_beside);
	tcase_add_test(reach, reach_is_the_distance_to_the_nearest_side_one_can_stand_at);
	return suite;
}
