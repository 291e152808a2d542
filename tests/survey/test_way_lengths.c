/* How far a barrow goes, cell by cell; by hand, and against lengths found by trying all steps again
 * and again. */
#include "survey/way_lengths.h"
#include "base/memory.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static struct arena arena;
static struct plot plot;
static struct survey survey;

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

static void put_house(int left, int top, int right, int bottom)
{
	obstacles_add(&plot.details.around.houses, memory_string("House"))->cells =
		(struct rectangle){ left, top, right - 1, bottom - 1 };
}

static struct fence *put_fence(const struct place *points, int count)
{
	struct fence *fence = details_add_fence(&plot.details, memory_string("Fence"));
	struct route *run = fence_add_run(fence);

	for (int i = 0; i < count; i++)
		route_add(run, points[i]);
	return fence;
}

static struct way_lengths lengths_from(int x, int y)
{
	struct fence_map fences = fence_map_of(&plot, &arena);
	struct house_map houses = house_map_of(&plot, 1, &arena);

	survey_plot(&survey, &arena, &plot);
	return way_lengths_from(&survey, &fences, &houses, (struct place){ x, y }, &arena);
}

/* Each digit is how many cells it is, a blank: no barrow gets there. */
static void check_from(int x, int y, const char *const *rows)
{
	struct way_lengths lengths = lengths_from(x, y);

	for (int j = 0; rows[j]; j++)
		for (int i = 0; rows[j][i]; i++) {
			int expected = rows[j][i] == ' ' ? 0 : rows[j][i] - '0';

			ck_assert_msg(way_length_at(&lengths, i, j) == expected, "%d,%d is %d", i,
				j, way_length_at(&lengths, i, j));
		}
}

#define ROWS (const char *const[])

START_TEST(from_within_it_goes_along_rows_and_columns)
{
	plot_from_rows(&plot, ROWS { "....", "....", "....", NULL });
	check_from(2, 1, ROWS { "2112", "2112", "3223", NULL });
	check_from(1, 2, ROWS { "2234", "1123", "1123", NULL });
}
END_TEST

START_TEST(it_goes_over_path_lawn_and_open_ground_and_round_all_else)
{
	plot_from_rows(&plot, ROWS { "pbl.", "pSl.", "pp..", NULL });
	check_from(1, 1, ROWS { "1 67", "1 56", "2345", NULL });
}
END_TEST

START_TEST(from_the_edge_it_goes_in_and_round_the_plan)
{
	plot_from_rows(&plot, ROWS { ".b.", ".b.", ".b.", NULL });
	check_from(0, 3, ROWS { "3 6", "2 5", "1 4", NULL });
	/* From within it does not leave the plan. */
	plot_fini(&plot);
	plot_from_rows(&plot, ROWS { "..b.", "..b.", "..b.", NULL });
	check_from(1, 1, ROWS { "11  ", "11  ", "22  ", NULL });
}
END_TEST

START_TEST(a_fence_is_gone_round_or_through_its_gate)
{
	static const struct place across[] = { { 0, 1 }, { 4, 1 } };
	struct fence *fence;

	plot_from_rows(&plot, ROWS { "....", "....", "....", NULL });
	fence = put_fence(across, 2);
	check_from(1, 2, ROWS { "    ", "1123", "1123", NULL });
	legs_add(&fence->gates, (struct leg){ { 3, 1 }, { 4, 1 } });
	check_from(1, 2, ROWS { "7654", "1123", "1123", NULL });
}
END_TEST

/* The fence stands along the whole lower edge; its gate is the side of the third cell. */
START_TEST(a_drop_at_a_fence_on_the_edge_lies_outside_it)
{
	static const struct place below[] = { { 0, 2 }, { 4, 2 } };
	struct fence *fence;

	plot_from_rows(&plot, ROWS { "....", "....", NULL });
	fence = put_fence(below, 2);
	legs_add(&fence->gates, (struct leg){ { 2, 2 }, { 3, 2 } });
	check_from(3, 2, ROWS { "4323", "3212", NULL });
	check_from(1, 2, ROWS { "5545", "4434", NULL });
	check_from(4, 2, ROWS { "5432", "4321", NULL }); /* round the corner, where there is none */
}
END_TEST

START_TEST(nothing_goes_through_a_house_within_the_plan_or_beside_it)
{
	plot_from_rows(&plot, ROWS { "...", "...", "...", NULL });
	put_house(1, 0, 2, 2);
	check_from(1, 2, ROWS { "2 4", "1 3", "112", NULL });
	plot_fini(&plot);
	plot_from_rows(&plot, ROWS { ".b.", ".b.", ".b.", NULL });
	put_house(-1, -2, 4, 0);
	check_from(0, 3, ROWS { "3 6", "2 5", "1 4", NULL });
	put_house(1, 3, 2, 4);
	check_from(0, 3, ROWS { "3  ", "2  ", "1  ", NULL });
}
END_TEST

START_TEST(from_the_middle_of_a_bed_nothing_goes_anywhere)
{
	plot_from_rows(&plot, ROWS { "....", ".bb.", ".bb.", "....", NULL });
	check_from(2, 2, ROWS { "    ", "    ", "    ", "    ", NULL });
	check_from(1, 2, ROWS { "2345", "1  6", "1  6", "2345", NULL });
}
END_TEST

/* ---- Against all steps, tried again and again ------------------------------------------------ */

enum { MOST = 9, FAR = 1 << 20 };

struct tried {
	int lengths[MOST + 2][MOST + 2];
	bool is_shut[MOST + 2][MOST + 2];
	struct legs fences;
};

static bool is_inside(int x, int y)
{
	return x >= 0 && y >= 0 && x < plot.ground.columns && y < plot.ground.rows;
}

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

static void shut_cells(struct tried *tried, bool is_outside)
{
	for (int y = -1; y <= plot.ground.rows; y++)
		for (int x = -1; x <= plot.ground.columns; x++) {
			char c = is_inside(x, y) ? ground_cell(&plot.ground, x, y) : '.';

			tried->lengths[y + 1][x + 1] = FAR;
			tried->is_shut[y + 1][x + 1] = is_in_house(x, y) || strchr("bS", c) ||
				(!is_inside(x, y) && !is_outside);
		}
}

/* Whether nothing is between two cells side by side, `over` being the side they share. */
static bool is_free(const struct tried *tried, int x, int y, int to_x, int to_y, struct leg over)
{
	if (!is_inside(x, y) && !is_inside(to_x, to_y))
		return true;
	for (size_t i = 0; i < tried->fences.count; i++)
		if (leg_covers(tried->fences.items[i], over))
			return false;
	return true;
}

static bool improve(struct tried *tried, int x, int y, int to_x, int to_y)
{
	int left = to_x > x ? to_x : x, top = to_y > y ? to_y : y;
	struct leg over = { { left, top }, { left + (y != to_y), top + (x != to_x) } };
	int length = tried->lengths[y + 1][x + 1] + 1;

	if (to_x < -1 || to_y < -1 || to_x > plot.ground.columns || to_y > plot.ground.rows ||
		tried->is_shut[to_y + 1][to_x + 1] || tried->is_shut[y + 1][x + 1] ||
		length >= tried->lengths[to_y + 1][to_x + 1] ||
		!is_free(tried, x, y, to_x, to_y, over))
		return false;
	tried->lengths[to_y + 1][to_x + 1] = length;
	return true;
}

static void begin_at(struct tried *tried, int x, int y, bool is_outside)
{
	for (int i = 0; i < 4; i++) {
		int to_x = x - 1 + i % 2, to_y = y - 1 + i / 2;

		if (!tried->is_shut[to_y + 1][to_x + 1] && (!is_outside || !is_inside(to_x, to_y)))
			tried->lengths[to_y + 1][to_x + 1] = 1;
	}
	/* Over a side that ends at the drop it is no way at all. */
	for (int i = 0; i < 4 && is_outside; i++) {
		int to_x = x - 1 + i % 2, to_y = y - 1 + i / 2;
		int mate_x = x - 1 + !(i % 2), mate_y = y - 1 + !(i / 2);

		if (is_inside(to_x, to_y) &&
			((!is_inside(mate_x, to_y) && improve(tried, mate_x, to_y, to_x, to_y)) ||
			(!is_inside(to_x, mate_y) && improve(tried, to_x, mate_y, to_x, to_y))))
			tried->lengths[to_y + 1][to_x + 1] = 1;
	}
}

static void try_all(struct tried *tried)
{
	for (bool goes_on = true; goes_on;) {
		goes_on = false;
		for (int y = -1; y <= plot.ground.rows; y++)
			for (int x = -1; x <= plot.ground.columns; x++)
				if (improve(tried, x, y, x - 1, y) ||
					improve(tried, x, y, x + 1, y) ||
					improve(tried, x, y, x, y - 1) ||
					improve(tried, x, y, x, y + 1))
					goes_on = true;
	}
}

START_TEST(a_way_is_as_short_as_any)
{
	int reached = 0, unreached = 0;

	for (int seed = 0; seed < runner_count(400, 10000); seed++) {
		struct random random = { (uint64_t)seed };
		struct tried tried = { .fences = LEGS_EMPTY };
		struct way_lengths lengths;
		int x, y;
		bool is_outside;

		plot_at_random(&plot, &random, MOST, "..plbS");
		x = random_between(&random, 0, plot.ground.columns);
		y = random_between(&random, 0, plot.ground.rows);
		is_outside = x == 0 || y == 0 || x == plot.ground.columns || y == plot.ground.rows;
		for (int i = random_below(&random, 3); i > 0; i--) {
			int line = random_between(&random, 0, plot.ground.rows);
			struct leg leg = { { 0, line }, { plot.ground.columns, line } };

			put_fence((const struct place[]){ leg.from, leg.to }, 2);
			legs_add(&tried.fences, leg);
		}
		if (random_below(&random, 2)) {
			int left = random_between(&random, -2, MOST);
			int top = random_between(&random, -2, MOST);

			put_house(left, top, left + random_between(&random, 1, 4),
				top + random_between(&random, 1, 4));
		}
		shut_cells(&tried, is_outside);
		begin_at(&tried, x, y, is_outside);
		try_all(&tried);
		lengths = lengths_from(x, y);
		for (int j = -1; j <= plot.ground.rows; j++)
			for (int i = -1; i <= plot.ground.columns; i++) {
				int length = way_length_at(&lengths, i, j);
				int shortest = tried.lengths[j + 1][i + 1];

				ck_assert_msg(length == (shortest < FAR ? shortest : 0),
					"seed %d: %d,%d is %d, not %d", seed, i, j, length,
					shortest);
				reached += length > 0;
				unreached += length == 0;
			}
		legs_fini(&tried.fences);
		arena_clear(&arena);
		plot_fini(&plot);
	}
	ck_assert_int_gt(reached, 1000);
	ck_assert_int_gt(unreached, 1000);
	plot_init(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("way lengths");
	TCase *way = suite_case(suite, "way");

	tcase_add_checked_fixture(way, NULL, teardown);
	tcase_add_test(way, from_within_it_goes_along_rows_and_columns);
	tcase_add_test(way, it_goes_over_path_lawn_and_open_ground_and_round_all_else);
	tcase_add_test(way, from_the_edge_it_goes_in_and_round_the_plan);
	tcase_add_test(way, a_fence_is_gone_round_or_through_its_gate);
	tcase_add_test(way, a_drop_at_a_fence_on_the_edge_lies_outside_it);
	tcase_add_test(way, nothing_goes_through_a_house_within_the_plan_or_beside_it);
	tcase_add_test(way, from_the_middle_of_a_bed_nothing_goes_anywhere);
	tcase_add_test(way, a_way_is_as_short_as_any);
	return suite;
}
