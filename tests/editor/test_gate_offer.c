/* The gate that is offered where one cell is meant. */

#include "editor/acts/gate_offer.h"

#include "base/number.h"
#include "plot/mirror.h"
#include "prices/in_force.h"
#include "support/fencing.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdio.h>
#include <stdlib.h>

static struct plot plot;
static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

static struct leg offer(struct leg side)
{
	struct plot all = plot_in_force(&arena, &plot, NULL);

	return gate_offer(&all, &all.details.fences[0], side);
}

static void offer_is(struct leg side, int from_x, int from_y, int to_x, int to_y)
{
	struct leg gate = offer(side);

	ck_assert_int_eq(gate.from.x, from_x);
	ck_assert_int_eq(gate.from.y, from_y);
	ck_assert_int_eq(gate.to.x, to_x);
	ck_assert_int_eq(gate.to.y, to_y);
}

static struct leg top_of(int x, int y)
{
	return (struct leg){ { x, y }, { x + 1, y } };
}

static struct leg left_of(int x, int y)
{
	return (struct leg){ { x, y }, { x, y + 1 } };
}

/* ---- How many cells -------------------------------------------------------------------------- */

/* 36 in and a post of 3 1/2 in are 39 1/2 in: so many sides of cells at least. */
static const struct { const char *cell; int cells; } sizes[] = {
	{ "1 ft", 4 }, { "6 in", 7 }, { "2 ft", 2 }, { "39 in", 2 }, { "39 1/2 in", 1 },
	{ "10 ft", 1 },
};

START_TEST(a_gate_has_the_fewest_cells_that_leave_36_in_clear)
{
	fences_ground(&plot, 40, 20);
	plot_set(&plot, 0, HEAD_CELL, sizes[_i].cell);
	fences_run(&plot, "1,10 39,10");
	ck_assert_int_eq(leg_length(offer(top_of(20, 10))), sizes[_i].cells);
}
END_TEST

/* 900 and 90 mm are 990 mm. */
START_TEST(in_a_metric_plot_it_leaves_900_mm)
{
	fences_ground(&plot, 40, 20);
	plot_set(&plot, 0, HEAD_UNITS, "metric");
	plot_set(&plot, 0, HEAD_CELL, "330 mm");
	fences_run(&plot, "1,10 39,10");
	ck_assert_int_eq(leg_length(offer(top_of(20, 10))), 3);
	plot_set(&plot, 0, HEAD_CELL, "329 mm");
	ck_assert_int_eq(leg_length(offer(top_of(20, 10))), 4);
}
END_TEST

START_TEST(a_wider_post_or_more_clear_width_takes_more_cells)
{
	fences_ground(&plot, 40, 20);
	fences_run(&plot, "1,10 39,10");
	fences_set(&plot, FENCE_GATE_POST, "12 in");
	ck_assert_int_eq(leg_length(offer(top_of(20, 10))), 4);
	plot_set(&plot, 0, ALLOW_GATE_CLEAR, "37 in");
	ck_assert_int_eq(leg_length(offer(top_of(20, 10))), 5);
}
END_TEST

/* 5 1/4 in of the first cell are outside the fence: of 42 in are 36 3/4 left, and 33 1/4 clear. */
START_TEST(in_a_corner_of_the_plan_what_the_posts_are_moved_in_counts)
{
	fences_ground(&plot, 40, 20);
	plot_set(&plot, 0, HEAD_CELL, "14 in");
	fences_run(&plot, "0,0 40,0");
	ck_assert_int_eq(leg_length(offer(top_of(20, 0))), 3);
	offer_is(top_of(0, 0), 0, 0, 4, 0);
}
END_TEST

/* ---- Where ----------------------------------------------------------------------------------- */

START_TEST(the_side_that_is_meant_is_in_its_middle)
{
	fences_ground(&plot, 40, 20);
	fences_run(&plot, "1,10 39,10");
	fences_run(&plot, "20,1 20,19");
	offer_is(top_of(5, 10), 3, 10, 7, 10);
	offer_is(left_of(20, 5), 20, 3, 20, 7);
	fences_set(&plot, FENCE_GATE_POST, "1 in");
	plot_set(&plot, 0, ALLOW_GATE_CLEAR, "35 in");
	offer_is(top_of(5, 10), 4, 10, 7, 10);
	offer_is((struct leg){ { 6, 10 }, { 5, 10 } }, 4, 10, 7, 10);
}
END_TEST

START_TEST(it_goes_no_farther_than_the_fence)
{
	fences_ground(&plot, 40, 20);
	fences_run(&plot, "10,10 20,10 20,2");
	offer_is(top_of(10, 10), 10, 10, 14, 10);
	offer_is(top_of(19, 10), 16, 10, 20, 10);
	offer_is(left_of(20, 9), 20, 6, 20, 10);
}
END_TEST

START_TEST(where_the_fence_is_too_short_all_of_it_is_offered)
{
	fences_ground(&plot, 40, 20);
	fences_run(&plot, "10,10 13,10");
	offer_is(top_of(12, 10), 10, 10, 13, 10);
}
END_TEST

/* ---- In the mirror --------------------------------------------------------------------------- */

/* An axis between cells 19 and 20: four cells about it are their own image. One cell off, the image
 * would make it six. */
START_TEST(near_an_axis_it_lies_about_the_axis)
{
	fences_ground(&plot, 40, 20);
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	fences_run(&plot, "1,10 39,10");
	for (int x = 18; x <= 21; x++)
		offer_is(top_of(x, 10), 18, 10, 22, 10);
	/* Beside it, wholly on one side of the axis. */
	offer_is(top_of(16, 10), 14, 10, 18, 10);
}
END_TEST

/* Cells of 6 in: seven are enough, and would be two gates end to end, or with a cell between them.
 * Eight about the axis are one. */
START_TEST(one_gate_on_the_axis_comes_before_two_beside_it)
{
	fences_ground(&plot, 48, 32);
	plot_set(&plot, 0, HEAD_CELL, "6 in");
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	fences_run(&plot, "0,32 48,32");
	for (int x = 20; x <= 27; x++)
		offer_is(top_of(x, 32), 20, 32, 28, 32);
	offer_is(top_of(19, 32), 16, 32, 23, 32);
	offer_is(top_of(28, 32), 25, 32, 32, 32);
}
END_TEST

/* Cells of 2 ft: two are enough. About the axis it would be four for the second cell off it: no
 * better than two gates of two cells, and farther from the side meant. */
START_TEST(two_gates_come_before_one_on_the_axis_that_is_two_cells_longer)
{
	fences_ground(&plot, 40, 20);
	plot_set(&plot, 0, HEAD_CELL, "2 ft");
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	fences_run(&plot, "1,10 39,10");
	offer_is(top_of(20, 10), 19, 10, 21, 10);
	offer_is(top_of(21, 10), 20, 10, 22, 10);
	offer_is(top_of(18, 10), 17, 10, 19, 10);
}
END_TEST

/* Through cell 20 of 41: four cells have no middle there, and five are needed. */
START_TEST(on_an_axis_through_a_cell_it_is_a_cell_longer)
{
	fences_ground(&plot, 41, 20);
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	fences_run(&plot, "1,10 40,10");
	for (int x = 18; x <= 22; x++)
		offer_is(top_of(x, 10), 18, 10, 23, 10);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

/* Sides of cells of the gate as it is set; whether it is one of a pair in its line. */
static int set_length(struct leg gate, bool *is_pair)
{
	struct mirror mirror = mirror_of(&plot);
	struct leg images[IMAGES_MOST];
	int count = mirror_legs(&mirror, gate, images), longest = 0;
	struct legs all = LEGS_EMPTY;

	*is_pair = false;
	for (int i = 0; i < count; i++)
		if (leg_overlap(images[i], gate))
			legs_add(&all, images[i]);
		else if (images[i].from.y == gate.from.y)
			*is_pair = true;
	legs_join(&all);
	for (size_t i = 0; i < all.count; i++)
		longest = leg_length(all.items[i]) > longest ? leg_length(all.items[i]) : longest;
	legs_fini(&all);
	return longest;
}

/* Against all gates that there can be, in a fence away from the boundary, the same from both ends:
 * 4 cells leave 44 1/2 in, 3 only 32 1/2. A pair counts as two cells more. */
START_TEST(no_gate_with_the_side_in_it_has_fewer_cells)
{
	static const char *const mirrors[] = { "off", "left-right", "four-way", "half-turn" };
	struct random random = { 31 };

	for (int round = 0; round < 500; round++) {
		int columns = random_between(&random, 4, 30);
		int left = random_between(&random, 1, columns / 2 - 1), right = columns - left;
		int x = random_between(&random, left, right - 1), cheapest = right - left + 2;
		bool is_pair;
		char points[40];
		struct leg gate;

		fences_ground(&plot, columns, 8);
		plot_set(&plot, 0, HEAD_MIRROR, mirrors[round % 4]);
		snprintf(points, sizeof points, "%d,4 %d,4", left, right);
		fences_run(&plot, points);
		gate = offer(top_of(x, 4));
		for (int from = left; from <= x; from++)
			for (int to = x + 1; to <= right; to++) {
				int length = set_length((struct leg){ { from, 4 }, { to, 4 } },
					&is_pair);

				if (length >= 4)
					cheapest = least(cheapest, length + 2 * is_pair);
			}
		ck_assert(leg_covers(gate, top_of(x, 4)));
		ck_assert(gate.from.x >= left && gate.to.x <= right);
		ck_assert_int_eq(set_length(gate, &is_pair), leg_length(gate));
		ck_assert_int_eq(leg_length(gate) + 2 * is_pair,
			least(cheapest, right - left));
		teardown();
	}
	fences_ground(&plot, 1, 1);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("gate_offer");
	TCase *cells = suite_case(suite, "cells");
	TCase *where = suite_case(suite, "where");

	tcase_add_checked_fixture(cells, NULL, teardown);
	tcase_add_loop_test(cells, a_gate_has_the_fewest_cells_that_leave_36_in_clear, 0,
		sizeof sizes / sizeof *sizes);
	tcase_add_test(cells, in_a_metric_plot_it_leaves_900_mm);
	tcase_add_test(cells, a_wider_post_or_more_clear_width_takes_more_cells);
	tcase_add_test(cells, in_a_corner_of_the_plan_what_the_posts_are_moved_in_counts);

	tcase_add_checked_fixture(where, NULL, teardown);
	tcase_add_test(where, the_side_that_is_meant_is_in_its_middle);
	tcase_add_test(where, it_goes_no_farther_than_the_fence);
	tcase_add_test(where, where_the_fence_is_too_short_all_of_it_is_offered);
	tcase_add_test(where, near_an_axis_it_lies_about_the_axis);
	tcase_add_test(where, one_gate_on_the_axis_comes_before_two_beside_it);
	tcase_add_test(where,
		two_gates_come_before_one_on_the_axis_that_is_two_cells_longer);
	tcase_add_test(where, on_an_axis_through_a_cell_it_is_a_cell_longer);
	tcase_add_test(where, no_gate_with_the_side_in_it_has_fewer_cells);
	return suite;
}
