/* Cells over the walls of raised beds take the hours of the soil beside them. */
#include "takeoff/sun/sun_soil.h"
#include "support/plots.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/stopper.h"
#include "takeoff/sun/sun_hours.h"

#include <limits.h>
#include <stdlib.h>
#include <string.h>

static struct arena arena;
static struct plot plot;
static struct takeoff takeoff;
static struct shade_scene scene;
static struct sun_soil soil;

static void teardown(void)
{
	stopper_end();
	arena_clear(&arena);
	plot_fini(&plot);
}

static void make(const char *const *rows, const char *cell)
{
	plot_from_rows(&plot, rows);
	plot_set(&plot, 0, HEAD_CELL, cell);
	plot_set(&plot, 'b', BED_BLOCK, "16 in x 8 in x 4 in");
	plot_set(&plot, 'b', BED_COURSES, "4");
	plot_set(&plot, 'b', BED_EMBED, "0 in");
	plot_set(&plot, 'b', BED_FREEBOARD, "10 in");
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
	sun_scene_make(&scene, &arena, &takeoff);
	sun_soil_find(&soil, &arena, &takeoff.survey, &scene);
}

/* Each cell has its own number; soil is then put over the wall. */
static void number(uint16_t *lit, int count)
{
	for (int i = 0; i < count; i++)
		lit[i] = (uint16_t)i;
	sun_soil_take(&soil, lit);
}

/* The wall, 8 in, covers the middles of the outer ring of cells of 1 ft. */
START_TEST(the_ring_over_a_wall_takes_the_cells_within_it)
{
	static const int expected[] = {
		0, 1, 2, 3, 4, 5,
		6, 14, 14, 15, 15, 11,
		12, 14, 14, 15, 15, 17,
		18, 20, 20, 21, 21, 23,
		24, 26, 26, 27, 27, 29,
		30, 26, 26, 27, 27, 35,
	};
	uint16_t lit[36];

	make((const char *const[]){ "......", ".bbbb.", ".bbbb.", ".bbbb.", ".bbbb.", ".bbbb.",
		NULL }, "1 ft");
	number(lit, 36);
	for (int i = 0; i < 36; i++)
		ck_assert_int_eq(lit[i], expected[i]);
}
END_TEST

/* A corner that turns in is as far from two cells of soil: it takes what the worse one has. */
START_TEST(of_cells_as_near_the_one_with_least_is_taken)
{
	uint16_t lit[49];

	make((const char *const[]){ "bbbbbbb", "bbbbbbb", "bbbbbbb", "bbb....", "bbb....",
		"bbb....", "bbb....", NULL }, "1 ft");
	number(lit, 49);
	ck_assert_int_eq(lit[2 * 7 + 2], 1 * 7 + 2);
	lit[1 * 7 + 2] = 5;
	lit[2 * 7 + 1] = 3;
	sun_soil_take(&soil, lit);
	ck_assert_int_eq(lit[2 * 7 + 2], 3);
	lit[1 * 7 + 2] = 2;
	sun_soil_take(&soil, lit);
	ck_assert_int_eq(lit[2 * 7 + 2], 2);
}
END_TEST

/* A house over the bed's upper left part has no hours to give: its cells keep their own, and those
 * over the wall beside it look elsewhere. */
START_TEST(ground_under_a_house_is_no_soil)
{
	uint16_t lit[36];

	plot_from_rows(&plot, (const char *const[]){ "......", ".bbbb.", ".bbbb.", ".bbbb.",
		".bbbb.", ".bbbb.", NULL });
	plot_set(&plot, 'b', BED_BLOCK, "16 in x 8 in x 4 in");
	plot_set(&plot, 'b', BED_COURSES, "4");
	plot_set(&plot, 'b', BED_FREEBOARD, "10 in");
	plot_add_lines(&plot, "house \"Shed\"\n  from 0,0 to 3,3\n");
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
	sun_scene_make(&scene, &arena, &takeoff);
	ck_assert_int_eq(scene.levels[2 * 6 + 2], SHADE_NO_LEVEL);
	sun_soil_find(&soil, &arena, &takeoff.survey, &scene);
	number(lit, 36);
	ck_assert_int_eq(lit[1 * 6 + 3], 2 * 6 + 3);
	ck_assert_int_eq(lit[3 * 6 + 1], 3 * 6 + 2);
	ck_assert_int_eq(lit[4 * 6 + 4], 4 * 6 + 3);
	for (size_t i = 0; i < soil.count; i++)
		ck_assert_int_ne(scene.levels[soil.items[i].soil], SHADE_NO_LEVEL);
}
END_TEST

START_TEST(beds_without_a_middle_over_soil_and_level_ones_keep_their_own)
{
	uint16_t lit[20];

	make((const char *const[]){ "bb.cc", "bb.cc", "bb.cc", "bb.cc", NULL },
		"1 ft");
	ck_assert_uint_eq(soil.count, 0);
	number(lit, 20);
	for (int i = 0; i < 20; i++)
		ck_assert_int_eq(lit[i], i);
}
END_TEST

/* The least of the cells of soil that are nearest to a cell over a wall 8 in wide on cells of 6 in,
 * looked for in the whole bed; -1 where there is none within 2 cells. */
static int nearest_soil(const nm *heights, int x, int y)
{
	int region = survey_region_at(&takeoff.survey, x, y), nearest = INT_MAX, taken = -1;

	for (int i = 0; i < scene.columns * scene.rows; i++) {
		int at_x = i % scene.columns, at_y = i / scene.columns;
		int square = (at_x - x) * (at_x - x) + (at_y - y) * (at_y - y);

		if (survey_region_at(&takeoff.survey, at_x, at_y) != region ||
			heights[i] != 6 * NM_PER_INCH || square >= nearest)
			continue;
		nearest = square;
		taken = abs(at_x - x) <= 2 && abs(at_y - y) <= 2 ? i : -1;
	}
	return taken;
}

/* Walls of 4 courses of 4 in, none of it in the ground, soil 10 in below their top. */
START_TEST(on_random_plans_each_has_the_nearest)
{
	enum { SIDE = 14 };
	struct random random = { 88 };

	for (int round = 0; round < 60; round++) {
		char rows[SIDE][SIDE + 1] = { { 0 } };
		const char *lines[SIDE + 1] = { NULL };
		nm heights[SIDE * SIDE];
		uint16_t lit[SIDE * SIDE];

		for (int y = 0; y < SIDE; y++) {
			for (int x = 0; x < SIDE; x++)
				rows[y][x] = '.';
			lines[y] = rows[y];
		}
		for (int box = 0; box < 3; box++) {
			int left = random_below(&random, 10), top = random_below(&random, 10);
			int right = random_between(&random, left + 2, SIDE);
			int bottom = random_between(&random, top + 2, SIDE);

			for (int y = top; y < bottom; y++)
				memset(&rows[y][left], 'b', (size_t)(right - left));
		}
		make(lines, "6 in");
		for (int i = 0; i < SIDE * SIDE; i++)
			heights[i] = scene.heights[scene.levels[i]];
		number(lit, SIDE * SIDE);
		for (int i = 0; i < SIDE * SIDE; i++) {
			int soil_at = heights[i] == 16 * NM_PER_INCH ?
				nearest_soil(heights, i % SIDE, i / SIDE) : -1;

			ck_assert_msg(lit[i] == (soil_at < 0 ? i : soil_at), "round %d, %d", round,
				i);
		}
		teardown();
	}
	plot_init(&plot);
}
END_TEST

/* Behind its own wall, 20 in above the soil, a bed has less sun than on top of it. */
START_TEST(a_deep_bed_is_not_as_bright_as_its_walls_top)
{
	struct sun_hours deep, shallow;
	const struct date day = { 2026, 6, 21 };
	const char *const rows[] = { "......", ".bbbb.", ".bbbb.", ".bbbb.", "......", NULL };

	plot_from_rows(&plot, rows);
	plot_set(&plot, 0, HEAD_SITE, "51.5");
	plot_set(&plot, 'b', BED_COURSES, "6");
	plot_set(&plot, 'b', BED_FREEBOARD, "0 in");
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
	sun_begin(&shallow, &arena, &takeoff, &day, 1);
	ck_assert(sun_count(&shallow) && sun_finish(&shallow));
	plot_set(&plot, 'b', BED_FREEBOARD, "20 in");
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
	sun_begin(&deep, &arena, &takeoff, &day, 1);
	ck_assert(sun_count(&deep) && sun_finish(&deep));
	ck_assert_double_gt(shallow.regions[0].mean, 15);
	ck_assert_double_lt(deep.regions[0].mean, shallow.regions[0].mean / 2);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sun soil");
	TCase *tests = suite_case(suite, "soil");

	tcase_add_checked_fixture(tests, NULL, teardown);
	tcase_add_test(tests, the_ring_over_a_wall_takes_the_cells_within_it);
	tcase_add_test(tests, of_cells_as_near_the_one_with_least_is_taken);
	tcase_add_test(tests, ground_under_a_house_is_no_soil);
	tcase_add_test(tests, beds_without_a_middle_over_soil_and_level_ones_keep_their_own);
	tcase_add_test(tests, on_random_plans_each_has_the_nearest);
	tcase_add_test(tests, a_deep_bed_is_not_as_bright_as_its_walls_top);
	return suite;
}
