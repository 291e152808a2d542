/* Levels of set-out points. Common practice, no published source. */
#include "takeoff/setout/point_levels.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>

#define FT NM_PER_FOOT
#define IN NM_PER_INCH

static struct garden garden;
static struct arena arena;
static struct setout setout;

static void teardown(void)
{
	arena_clear(&arena);
	garden_fini(&garden);
}

/* Cells of 1 ft; ground that falls by `fall` in over each 8 ft to the right, by 8 in downwards. */
static void given(const char *const *rows, int fall)
{
	struct levels *levels = &garden.plot.details.levels;

	garden_rows(&garden, rows);
	levels_init(levels, 8 * FT, 3, 3);
	for (int i = 0; i < 9; i++)
		levels->drops[i] = (i % 3 * fall + i / 3 * 8) * IN;
}

static void set_beds(void)
{
	plot_set(&garden.plot, 'b', BED_BLOCK, "12 in x 8 in x 6 in");
	plot_set(&garden.plot, 'b', BED_EMBED, "4 in");
	plot_set(&garden.plot, 'b', BED_BASE, "5 in");
}

static void set_out(void)
{
	garden_set_out(&garden, &setout, &arena);
}

/* The levels of the first point of a kind that is there. */
static struct point_levels levels_at(enum setout_kind kind, nm x, nm y)
{
	struct surface surface = surface_of(&garden.takeoff.plot);
	struct point_levels levels = { .wall_count = 0 };
	struct setout_point point;

	for (int i = 0; i < setout.string_count; i++) {
		struct setout_walk walk = setout_along(&setout, &setout.strings[i]);

		while (setout_next(&walk, &point)) {
			if (point.kind != kind || point.at.x != x || point.at.y != y)
				continue;
			point_levels_find(&levels, &point, &surface, &garden.takeoff.wall_levels);
			return levels;
		}
	}
	ck_abort_msg("no such point");
	return levels;
}

#define ROWS (const char *const[])

/* 1/2 in per ft across, 1 in down: 8 in at 6,5, the bed's lowest. Base's top 12, formation 17. */
START_TEST(a_corner_has_its_ground_and_the_formation_of_its_wall)
{
	struct point_levels levels;

	given(ROWS { "................", "..bbbb....pppp..", "..bbbb....pppp..",
		"..bbbb....pppp..", "..bbbb....pppp..", "................", NULL }, 4);
	set_beds();
	set_out();
	levels = levels_at(SETOUT_CORNER, 2 * FT, FT);
	ck_assert_int_eq(levels.ground, 2 * IN);
	ck_assert_int_eq(levels.wall_count, 1);
	ck_assert_int_eq(levels.walls[0]->formation, 17 * IN);
	levels = levels_at(SETOUT_CORNER, 6 * FT, 5 * FT);
	ck_assert_int_eq(levels.ground, 8 * IN);
	ck_assert_int_eq(levels.walls[0]->formation, 17 * IN);
	/* a path has no wall */
	levels = levels_at(SETOUT_CORNER, 10 * FT, FT);
	ck_assert_int_eq(levels.ground, 6 * IN);
	ck_assert_int_eq(levels.wall_count, 0);
}
END_TEST

/* Two beds meet at 8,5 by a corner: lowest ground 9 and 15 in, formation 9 in more. */
START_TEST(where_walls_meet_each_has_its_formation)
{
	struct point_levels levels;

	given(ROWS { "................", "....bbbb........", "....bbbb........",
		"....bbbb........", "....bbbb........", "........bbbb....",
		"........bbbb....", "........bbbb....", "........bbbb....", NULL }, 4);
	set_beds();
	set_out();
	levels = levels_at(SETOUT_CORNER, 8 * FT, 5 * FT);
	ck_assert_int_eq(levels.ground, 9 * IN);
	ck_assert_int_eq(levels.wall_count, 2);
	ck_assert_int_eq(levels.walls[0]->region, 0);
	ck_assert_int_eq(levels.walls[0]->formation, 18 * IN);
	ck_assert_int_eq(levels.walls[1]->formation, 24 * IN);
}
END_TEST

START_TEST(posts_and_gates_have_their_ground)
{
	given(ROWS { "................", "................", "................", NULL }, 8);
	fences_run(&garden.plot, "2,1 14,1");
	fences_gate(&garden.plot, "6,1 10,1");
	fences_set(&garden.plot, FENCE_INSET, "0 in");
	set_out();
	ck_assert_int_eq(levels_at(SETOUT_POST, 14 * FT, FT).ground, 15 * IN);
	ck_assert_int_eq(levels_at(SETOUT_GATE, 6 * FT, FT).ground, 7 * IN);
	ck_assert_int_eq(levels_at(SETOUT_GATE, 6 * FT, FT).wall_count, 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("point_levels");
	TCase *points = suite_case(suite, "points");

	tcase_add_checked_fixture(points, NULL, teardown);
	tcase_add_test(points, a_corner_has_its_ground_and_the_formation_of_its_wall);
	tcase_add_test(points, where_walls_meet_each_has_its_formation);
	tcase_add_test(points, posts_and_gates_have_their_ground);
	return suite;
}
