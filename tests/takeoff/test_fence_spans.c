/* Spans of fences, held against walking the grid side by side. */

#include "takeoff/fence/fence_spans.h"

#include "support/fencing.h"
#include "support/runner.h"

#include <stdio.h>

static struct arena arena;
static struct plot plot;
static const struct fence_span *spans;
static int count;

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

static void draw(int columns, int rows, const char *const *runs)
{
	fences_ground(&plot, columns, rows);
	for (; *runs; runs++)
		fences_run(&plot, *runs);
}

static void divide(void)
{
	spans = fence_spans(&arena, &plot.details.fences[0], &count);
}

static void span_is(int i, struct leg leg, bool is_gate)
{
	ck_assert_int_lt(i, count);
	ck_assert_int_eq(spans[i].leg.from.x, leg.from.x);
	ck_assert_int_eq(spans[i].leg.from.y, leg.from.y);
	ck_assert_int_eq(spans[i].leg.to.x, leg.to.x);
	ck_assert_int_eq(spans[i].leg.to.y, leg.to.y);
	ck_assert_int_eq(spans[i].is_gate, is_gate);
}

START_TEST(a_run_is_one_span_to_each_corner)
{
	draw(14, 8, (const char *[]){ "0,8 14,8 14,0 3,0", NULL });
	divide();
	ck_assert_int_eq(count, 3);
	span_is(0, (struct leg){ { 0, 8 }, { 14, 8 } }, false);
	span_is(1, (struct leg){ { 14, 8 }, { 14, 0 } }, false);
	span_is(2, (struct leg){ { 14, 0 }, { 3, 0 } }, false);
}
END_TEST

START_TEST(a_point_where_a_run_goes_straight_on_divides_nothing)
{
	draw(14, 8, (const char *[]){ "0,8 3,8 14,8 14,5 14,0", NULL });
	divide();
	ck_assert_int_eq(count, 2);
	span_is(0, (struct leg){ { 0, 8 }, { 14, 8 } }, false);
	span_is(1, (struct leg){ { 14, 8 }, { 14, 0 } }, false);
}
END_TEST

START_TEST(a_run_that_ends_on_another_divides_it)
{
	draw(14, 8, (const char *[]){ "14,8 0,8", "5,2 5,8", NULL });
	divide();
	ck_assert_int_eq(count, 3);
	span_is(0, (struct leg){ { 14, 8 }, { 5, 8 } }, false);
	span_is(1, (struct leg){ { 5, 8 }, { 0, 8 } }, false);
	span_is(2, (struct leg){ { 5, 2 }, { 5, 8 } }, false);
}
END_TEST

START_TEST(runs_that_cross_divide_each_other)
{
	draw(14, 8, (const char *[]){ "0,4 14,4", "5,8 5,0", NULL });
	divide();
	ck_assert_int_eq(count, 4);
	span_is(1, (struct leg){ { 5, 4 }, { 14, 4 } }, false);
	span_is(2, (struct leg){ { 5, 8 }, { 5, 4 } }, false);
}
END_TEST

START_TEST(a_run_that_crosses_itself_is_divided_there)
{
	draw(14, 8, (const char *[]){ "0,4 8,4 8,0 4,0 4,8", NULL });
	divide();
	ck_assert_int_eq(count, 6);
	span_is(0, (struct leg){ { 0, 4 }, { 4, 4 } }, false);
	span_is(5, (struct leg){ { 4, 4 }, { 4, 8 } }, false);
}
END_TEST

START_TEST(runs_end_to_end_in_line_keep_the_post_between)
{
	draw(14, 8, (const char *[]){ "0,8 6,8", "6,8 14,8", NULL });
	divide();
	ck_assert_int_eq(count, 2);
}
END_TEST

START_TEST(a_gate_stands_between_two_spans)
{
	draw(14, 8, (const char *[]){ "14,8 0,8", NULL });
	fences_gate(&plot, "6,8 8,8");
	divide();
	ck_assert_int_eq(count, 3);
	span_is(0, (struct leg){ { 14, 8 }, { 8, 8 } }, false);
	span_is(1, (struct leg){ { 8, 8 }, { 6, 8 } }, true);
	span_is(2, (struct leg){ { 6, 8 }, { 0, 8 } }, false);
}
END_TEST

START_TEST(gates_side_by_side_and_at_a_corner_are_gates_of_their_own)
{
	draw(14, 8, (const char *[]){ "0,0 14,0 14,8", NULL });
	fences_gate(&plot, "14,0 14,4");
	fences_gate(&plot, "14,0 11,0");
	fences_gate(&plot, "8,0 11,0");
	divide();
	ck_assert_int_eq(count, 5);
	span_is(0, (struct leg){ { 0, 0 }, { 8, 0 } }, false);
	span_is(1, (struct leg){ { 8, 0 }, { 11, 0 } }, true);
	span_is(2, (struct leg){ { 11, 0 }, { 14, 0 } }, true);
	span_is(3, (struct leg){ { 14, 0 }, { 14, 4 } }, true);
	span_is(4, (struct leg){ { 14, 4 }, { 14, 8 } }, false);
}
END_TEST

START_TEST(a_gate_over_a_point_of_a_straight_run_is_one)
{
	draw(14, 8, (const char *[]){ "3,0 3,4 3,8", NULL });
	fences_gate(&plot, "3,2 3,4");
	divide();
	ck_assert_int_eq(count, 3);
	span_is(1, (struct leg){ { 3, 2 }, { 3, 4 } }, true);
}
END_TEST

START_TEST(a_gate_that_a_run_meets_is_two)
{
	draw(14, 8, (const char *[]){ "0,8 14,8", "6,0 6,8", NULL });
	fences_gate(&plot, "4,8 8,8");
	divide();
	ck_assert_int_eq(count, 5);
	span_is(1, (struct leg){ { 4, 8 }, { 6, 8 } }, true);
	span_is(2, (struct leg){ { 6, 8 }, { 8, 8 } }, true);
}
END_TEST

/* ---- Against the grid ------------------------------------------------------------------------ */

enum { SIDE = 24, POINTS = SIDE + 1, RIGHT = 1, DOWN = 2, LEFT = 4, UP = 8 };

struct grid {
	int ways[POINTS][POINTS];     /* [y][x]: to where fences go on */
	bool is_end[POINTS][POINTS];  /* of a run or a gate */
	bool is_gate[POINTS][POINTS][2]; /* the side from a point to the right, and down */
};

static int step(int from, int to)
{
	return (to > from) - (to < from);
}

static void walk(struct grid *grid, struct leg leg, bool is_gate)
{
	int dx = step(leg.from.x, leg.to.x), dy = step(leg.from.y, leg.to.y);

	for (int x = leg.from.x, y = leg.from.y; x != leg.to.x || y != leg.to.y; x += dx, y += dy) {
		grid->ways[y][x] |= dx > 0 ? RIGHT : dx < 0 ? LEFT : dy > 0 ? DOWN : UP;
		grid->ways[y + dy][x + dx] |= dx > 0 ? LEFT : dx < 0 ? RIGHT : dy > 0 ? UP : DOWN;
		if (is_gate)
			grid->is_gate[y + (dy < 0 ? dy : 0)][x + (dx < 0 ? dx : 0)][dy != 0] = true;
	}
}

static void mark(struct grid *grid, const struct fence *fence)
{
	for (size_t i = 0; i < fence->run_count; i++) {
		const struct route *run = &fence->runs[i];
		struct place first = run->points[0], last = run->points[run->count - 1];

		grid->is_end[first.y][first.x] = grid->is_end[last.y][last.x] = true;
		for (int j = 1; j < run->count; j++)
			walk(grid, (struct leg){ run->points[j - 1], run->points[j] }, false);
	}
	for (size_t i = 0; i < fence->gates.count; i++) {
		struct leg gate = fence->gates.items[i];

		grid->is_end[gate.from.y][gate.from.x] = grid->is_end[gate.to.y][gate.to.x] = true;
		walk(grid, gate, true);
	}
}

static bool has_post(const struct grid *grid, int x, int y)
{
	int ways = grid->ways[y][x];

	return grid->is_end[y][x] || (ways != 0 && ways != (LEFT | RIGHT) && ways != (UP | DOWN));
}

static bool has_span(struct leg leg, bool is_gate)
{
	for (int i = 0; i < count; i++) {
		const struct leg *own = &spans[i].leg;
		bool same = own->from.x == leg.from.x && own->from.y == leg.from.y &&
			own->to.x == leg.to.x && own->to.y == leg.to.y;
		bool turned = own->to.x == leg.from.x && own->to.y == leg.from.y &&
			own->from.x == leg.to.x && own->from.y == leg.to.y;

		if (same || turned)
			return spans[i].is_gate == is_gate;
	}
	return false;
}

/* Walks right or down from a post to the next one; true where a fence goes there. */
static bool span_from(const struct grid *grid, int x, int y, bool down)
{
	struct leg leg = { { x, y }, { x, y } };

	if (!has_post(grid, x, y) || !(grid->ways[y][x] & (down ? DOWN : RIGHT)))
		return false;
	do {
		leg.to.x += !down;
		leg.to.y += down;
	} while (!has_post(grid, leg.to.x, leg.to.y));
	ck_assert_msg(has_span(leg, grid->is_gate[y][x][down]), "%d,%d to %d,%d", x, y, leg.to.x,
		leg.to.y);
	return true;
}

START_TEST(spans_go_from_post_to_post_as_one_walks_the_grid)
{
	struct random random = { 7 };

	for (int round = 0; round < 500; round++) {
		struct grid grid = { 0 };
		int found = 0;

		fences_ground(&plot, random_between(&random, 1, SIDE),
			random_between(&random, 1, SIDE));
		fences_at_random(&plot, &random);
		mark(&grid, &plot.details.fences[0]);
		divide();
		for (int y = 0; y < POINTS; y++)
			for (int x = 0; x < POINTS; x++)
				found += span_from(&grid, x, y, false) + span_from(&grid, x, y,
					true);
		ck_assert_int_eq(count, found);
		teardown();
	}
	fences_ground(&plot, 1, 1);
}
END_TEST

START_TEST(a_fence_of_many_runs_side_by_side_is_divided_in_no_time)
{
	/* 20,000 short runs: the test's own time limit is the check. */
	char points[96];

	fences_ground(&plot, 400, 400);
	for (int y = 0; y < 400; y += 2)
		for (int x = 0; x < 400; x += 4) {
			snprintf(points, sizeof points, "%d,%d %d,%d %d,%d", x, y, x + 1, y, x + 1,
				y + 1);
			fences_run(&plot, points);
		}
	divide();
	ck_assert_int_eq(count, 2 * 200 * 100);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("fence_spans");
	TCase *drawn = suite_case(suite, "drawn");
	TCase *grid = suite_case(suite, "grid");

	tcase_add_checked_fixture(drawn, NULL, teardown);
	tcase_add_test(drawn, a_run_is_one_span_to_each_corner);
	tcase_add_test(drawn, a_point_where_a_run_goes_straight_on_divides_nothing);
	tcase_add_test(drawn, a_run_that_ends_on_another_divides_it);
	tcase_add_test(drawn, runs_that_cross_divide_each_other);
	tcase_add_test(drawn, a_run_that_crosses_itself_is_divided_there);
	tcase_add_test(drawn, runs_end_to_end_in_line_keep_the_post_between);
	tcase_add_test(drawn, a_gate_stands_between_two_spans);
	tcase_add_test(drawn, gates_side_by_side_and_at_a_corner_are_gates_of_their_own);
	tcase_add_test(drawn, a_gate_over_a_point_of_a_straight_run_is_one);
	tcase_add_test(drawn, a_gate_that_a_run_meets_is_two);

	tcase_add_checked_fixture(grid, NULL, teardown);
	tcase_set_timeout(grid, 10);
	tcase_add_test(grid, spans_go_from_post_to_post_as_one_walks_the_grid);
	tcase_add_test(grid, a_fence_of_many_runs_side_by_side_is_divided_in_no_time);
	return suite;
}
