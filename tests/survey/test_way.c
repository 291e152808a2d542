/* Where one can walk to from outside. */
#include "survey/way.h"
#include "base/memory.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static struct arena arena;
static struct plot plot;

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

static void fence_round(int left, int top, int right, int bottom)
{
	struct route *run =
		fence_add_run(details_add_fence(&plot.details, memory_string("Fence")));

	route_add(run, (struct place){ left, top });
	route_add(run, (struct place){ right, top });
	route_add(run, (struct place){ right, bottom });
	route_add(run, (struct place){ left, bottom });
	route_add(run, (struct place){ left, top });
}

/* '#' where one gets to. */
static void check_way(const char *const *rows)
{
	struct survey survey;
	struct fence_map fences = fence_map_of(&plot, &arena);
	unsigned char *way;

	survey_plot(&survey, &arena, &plot);
	way = way_from_outside(&survey, &fences);
	for (int y = 0; rows[y]; y++)
		for (int x = 0; rows[y][x]; x++)
			ck_assert_msg(way[y * survey.columns + x] == (rows[y][x] == '#'),
				"%d,%d is %d", x, y, way[y * survey.columns + x]);
	free(way);
}

#define ROWS (const char *const[])

START_TEST(one_walks_over_path_lawn_and_open_ground_from_the_boundary)
{
	plot_from_rows(&plot, ROWS { "bSbb", "bpl.", "bbbb", NULL });
	check_way(ROWS { "    ", " ###", "    ", NULL });
}
END_TEST

START_TEST(one_walks_over_no_bed_fixture_or_corner)
{
	plot_from_rows(&plot, ROWS { "bbbb", "bpbb", "bbl.", "SbSS", NULL });
	check_way(ROWS { "    ", "    ", "  ##", "    ", NULL });
}
END_TEST

START_TEST(a_fence_is_passed_by_its_gates_only)
{
	plot_from_rows(&plot, ROWS { "....", ".pp.", ".pp.", "....", NULL });
	fence_round(1, 1, 3, 3);
	check_way(ROWS { "####", "#  #", "#  #", "####", NULL });
	legs_add(&plot.details.fences[0].gates, (struct leg){ { 3, 2 }, { 3, 3 } });
	check_way(ROWS { "####", "####", "####", "####", NULL });
}
END_TEST

START_TEST(a_fence_on_the_boundary_keeps_one_out_but_for_its_gates)
{
	static const struct leg gates[] = { { { 0, 0 }, { 1, 0 } }, { { 2, 1 }, { 2, 2 } },
		{ { 1, 2 }, { 0, 2 } }, { { 0, 1 }, { 0, 2 } } };

	plot_from_rows(&plot, ROWS { "pp", "pp", NULL });
	fence_round(0, 0, 2, 2);
	check_way(ROWS { "  ", "  ", NULL });
	for (int i = 0; i < 4; i++) {
		struct legs *of_fence = &plot.details.fences[0].gates;

		of_fence->count = 0;
		legs_add(of_fence, gates[i]);
		check_way(ROWS { "##", "##", NULL });
	}
}
END_TEST

/* The only path, one cell at the boundary, the only gate on its side there. */
START_TEST(one_comes_in_over_each_side_of_the_boundary)
{
	enum { SIDE = 3 };
	const int along = _i % SIDE, edge = _i / SIDE;
	const int across = edge % 2 ? SIDE : 0, cell = edge % 2 ? SIDE - 1 : 0;
	const struct leg gate = edge < 2 ? (struct leg){ { along, across }, { along + 1, across } }
		: (struct leg){ { across, along }, { across, along + 1 } };
	char rows[SIDE][SIDE + 1] = { "bbb", "bbb", "bbb" };

	rows[edge < 2 ? cell : along][edge < 2 ? along : cell] = 'p';
	plot_from_rows(&plot, ROWS { rows[0], rows[1], rows[2], NULL });
	fence_round(0, 0, SIDE, SIDE);
	check_way(ROWS { "   ", "   ", "   ", NULL });
	legs_add(&plot.details.fences[0].gates, gate);
	rows[edge < 2 ? cell : along][edge < 2 ? along : cell] = '#';
	check_way(ROWS { rows[0], rows[1], rows[2], NULL });
}
END_TEST

/* ---- The same, step by step ------------------------------------------------------------------ */

static bool is_walkable(int x, int y)
{
	enum plot_class class = plot_class_of(&plot, ground_cell(&plot.ground, x, y));

	return class == CLASS_PATH || class == CLASS_LAWN || class == CLASS_OPEN;
}

static bool has_fence(const struct legs *legs, struct leg side)
{
	for (size_t i = 0; i < legs->count; i++)
		if (leg_covers(legs->items[i], side))
			return true;
	return false;
}

/* Whether one gets to a cell in one step, from outside or from a cell one gets to. */
static bool is_next(const struct legs *legs, const char *way, int x, int y)
{
	static const int steps[4][2] = { { 1, 0 }, { -1, 0 }, { 0, 1 }, { 0, -1 } };
	const struct leg sides[] = { { { x + 1, y }, { x + 1, y + 1 } }, { { x, y }, { x, y + 1 } },
		{ { x, y + 1 }, { x + 1, y + 1 } }, { { x, y }, { x + 1, y } } };

	for (int i = 0; i < 4; i++) {
		int from_x = x + steps[i][0], from_y = y + steps[i][1];

		if (!has_fence(legs, sides[i]) && (!ground_holds(&plot.ground, from_x, from_y) ||
			way[from_y * plot.ground.columns + from_x]))
			return true;
	}
	return false;
}

START_TEST(one_gets_where_single_steps_lead)
{
	int counts[2] = { 0 };

	for (int seed = 0; seed < runner_count(300, 10000); seed++) {
		struct random random = { (uint64_t)seed };
		struct legs legs = LEGS_EMPTY;
		char way[144] = "", before[144];
		struct survey survey;
		struct fence_map map;
		unsigned char *found;

		plot_at_random(&plot, &random, 12, seed % 2 ? "plb.S" : "ppppppb");
		fence_round(random_below(&random, 2), 0, plot.ground.columns,
			random_between(&random, 1, plot.ground.rows));
		if (plot.ground.columns == 1)
			fence_fini(&plot.details.fences[--plot.details.fence_count]);
		for (size_t i = 0; i < plot.details.fence_count; i++)
			fence_legs(&plot.details.fences[i], &legs);
		do {
			memcpy(before, way, sizeof way);
			for (int i = 0; i < plot.ground.columns * plot.ground.rows; i++) {
				int x = i % plot.ground.columns, y = i / plot.ground.columns;

				way[i] = is_walkable(x, y) && (way[i] ||
					is_next(&legs, way, x, y));
			}
		} while (memcmp(before, way, sizeof way) != 0);
		survey_plot(&survey, &arena, &plot);
		map = fence_map_of(&plot, &arena);
		found = way_from_outside(&survey, &map);
		for (int i = 0; i < plot.ground.columns * plot.ground.rows; i++) {
			counts[way[i] != 0]++;
			ck_assert_msg((found[i] != 0) == (way[i] != 0), "seed %d: cell %d", seed,
				i);
		}
		free(found);
		legs_fini(&legs);
		arena_clear(&arena);
		plot_fini(&plot);
	}
	ck_assert_int_gt(counts[0], 1000);
	ck_assert_int_gt(counts[1], 1000);
	plot_init(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("way");
	TCase *way = suite_case(suite, "way");

	tcase_add_checked_fixture(way, NULL, teardown);
	tcase_add_test(way, one_walks_over_path_lawn_and_open_ground_from_the_boundary);
	tcase_add_test(way, one_walks_over_no_bed_fixture_or_corner);
	tcase_add_test(way, a_fence_is_passed_by_its_gates_only);
	tcase_add_test(way, a_fence_on_the_boundary_keeps_one_out_but_for_its_gates);
	tcase_add_loop_test(way, one_comes_in_over_each_side_of_the_boundary, 0, 12);
	tcase_add_test(way, one_gets_where_single_steps_lead);
	return suite;
}
