/* Holes of posts that meet beds: cases by hand, and all holes against all walls. */

#include "takeoff/fence/fence_holes.h"

#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <stdlib.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* How many there are, counted anew. */
static int count(void)
{
	int number = 0;

	garden_count(&garden);
	while (garden_snag(&garden, SNAG_HOLE_WALL, number))
		number++;
	return number;
}

static void snag_is(int index, int x, int y, const char *sentence)
{
	const struct snag *snag = garden_snag(&garden, SNAG_HOLE_WALL, index);

	ck_assert_ptr_nonnull(snag);
	ck_assert_int_eq(snag->cell.x, x);
	ck_assert_int_eq(snag->cell.y, y);
	ck_assert_str_eq(garden_sentence(&garden, snag), sentence);
	ck_assert_int_eq(snag->region, survey_region_at(&garden.takeoff.survey, 3, 3));
}

/* ---- Walls ----------------------------------------------------------------------------------- */

/* A raised bed from 3,3 to 9,7; its wall's base reaches 6 in past it, a hole is 10 1/2 in
 * across. */
static void bed(void)
{
	garden_rows(&garden, (const char *const[]){ "............", "............",
		"............", "...bbbbbb...", "...bbbbbb...", "...bbbbbb...", "...bbbbbb...",
		"............", "............", "............", NULL });
}

START_TEST(a_post_along_a_beds_side_goes_through_its_wall)
{
	bed();
	fences_run(&garden.plot, "4,3 8,3");
	ck_assert_int_eq(count(), 2);
	snag_is(0, 3, 2, "A post's hole, 10 1/2 in across, meets this bed's wall or its base.");
	snag_is(1, 7, 2, "A post's hole, 10 1/2 in across, meets this bed's wall or its base.");
}
END_TEST

static const struct { const char *reach; int snags; } sides[] = {
	/* A foot from the wall: 12 less 5 1/4 in are left for the base. */
	{ "6 in", 0 }, { "6 3/4 in", 0 }, { "6 49/64 in", 2 },
};

START_TEST(a_post_beside_a_bed_may_touch_the_walls_base)
{
	bed();
	fences_run(&garden.plot, "4,2 8,2");
	plot_set(&garden.plot, 'b', BED_REACH, sides[_i].reach);
	ck_assert_int_eq(count(), sides[_i].snags);
}
END_TEST

static const struct { const char *reach; int snags; } corners[] = {
	/* 12 in from the bed both ways: the base's corner is sqrt 2 x (12 - reach) off, 5.30 and
	 * 5.24 in. Either way alone the hole would overlap it. */
	{ "8 1/4 in", 0 }, { "8 19/64 in", 1 },
};

START_TEST(a_post_off_a_corner_of_a_bed_is_round)
{
	bed();
	fences_run(&garden.plot, "2,2 2,0");
	plot_set(&garden.plot, 'b', BED_REACH, corners[_i].reach);
	ck_assert_int_eq(count(), corners[_i].snags);
}
END_TEST

/* A hole of 10 in about 25,24 in, the base's corner at 28,28: 3 and 4 in off, just the 5 in. Of the
 * other posts, 2 ft apart, three meet the base; the next is 5 and 4 in off. */
START_TEST(a_hole_may_touch_the_corner_of_the_base)
{
	bed();
	fences_run(&garden.plot, "0,2 12,2");
	fences_set(&garden.plot, FENCE_INSET, "1 in");
	fences_set(&garden.plot, FENCE_SECTION, "2 ft");
	fences_set(&garden.plot, FENCE_HOLE, "10 in");
	plot_set(&garden.plot, 'b', BED_REACH, "8 in");
	ck_assert_int_eq(count(), 3);
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOLE_WALL, 0)->cell.x, 4);
}
END_TEST

START_TEST(between_two_beds_the_first_is_told)
{
	garden_rows(&garden, (const char *const[]){ "bbbbbb....", "bbbbbb....", "bbbbbb....",
		"bbbbbb....", "bbbbbb....", "cccccc....", "cccccc....", "cccccc....", "cccccc....",
		"cccccc....", NULL });
	fences_run(&garden.plot, "3,5 3,7");
	plot_set(&garden.plot, 'b', BED_REACH, "0 in");
	plot_set(&garden.plot, 'c', BED_REACH, "0 in");
	ck_assert_int_eq(count(), 2);
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOLE_WALL, 0)->region, 0);
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOLE_WALL, 1)->region, 1);
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOLE_WALL, 1)->kind, 1);
}
END_TEST

/* The hole of a post 5 1/2 in square is 16 1/2 in across: 12 less 8 1/4 in are 3 3/4. */
START_TEST(the_wider_hole_of_a_post_of_a_gate_counts)
{
	bed();
	fences_run(&garden.plot, "0,2 12,2");
	fences_gate(&garden.plot, "4,2 8,2");
	fences_set(&garden.plot, FENCE_INSET, "0 in");
	fences_set(&garden.plot, FENCE_GATE_POST, "5 1/2 in");
	plot_set(&garden.plot, 'b', BED_REACH, "3 3/4 in");
	ck_assert_int_eq(count(), 0);
	plot_set(&garden.plot, 'b', BED_REACH, "4 in");
	ck_assert_int_eq(count(), 2);
	fences_set(&garden.plot, FENCE_GATE_POST, "3 1/2 in");
	ck_assert_int_eq(count(), 0);
}
END_TEST

/* Moved in by half a hole, a post stands in the wall of a bed that goes to the boundary. */
START_TEST(on_the_boundary_a_post_meets_a_bed_that_is_there)
{
	garden_rectangle(&garden, 'b', 8, 8);
	fences_run(&garden.plot, "0,8 8,8");
	ck_assert_int_eq(count(), 2);
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOLE_WALL, 0)->cell.x, 0);
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOLE_WALL, 0)->cell.y, 7);
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOLE_WALL, 1)->cell.x, 7);
}
END_TEST

/* A path has base of its own, where the wall's stops. */
START_TEST(in_a_path_beside_the_bed_there_is_no_base_of_the_wall)
{
	bed();
	fences_run(&garden.plot, "4,2 8,2");
	plot_set(&garden.plot, 'b', BED_REACH, "11 in");
	ck_assert_int_eq(count(), 2);
	details_add_entry(&garden.plot.details, CLASS_PATH, 'p', memory_string("p"));
	for (int x = 0; x < 12; x++)
		garden.plot.ground.cells[2 * 12 + x] = 'p';
	ck_assert_int_eq(count(), 0);
}
END_TEST

/* ---- Beds ------------------------------------------------------------------------------------ */

/* 18 in inside the bed the hole is past the wall and the base within. */
START_TEST(a_post_within_a_bed_is_told)
{
	bed();
	fences_run(&garden.plot, "5,5 7,5");
	ck_assert_int_eq(count(), 2);
	snag_is(0, 4, 4, "A post's hole, 10 1/2 in across, is in this bed.");
}
END_TEST

START_TEST(along_a_bed_at_ground_level_a_post_is_no_snag_within_it_one)
{
	bed();
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	fences_run(&garden.plot, "4,3 8,3");
	ck_assert_int_eq(count(), 0);
	fences_run(&garden.plot, "3,3 3,7 9,7 9,6");
	ck_assert_int_eq(count(), 0);
	fences_run(&garden.plot, "4,4 4,2");
	ck_assert_int_eq(count(), 1);
	snag_is(0, 3, 3, "A post's hole, 10 1/2 in across, is in this bed.");
}
END_TEST

/* Half of it is on the neighbour's ground. */
START_TEST(just_on_the_boundary_a_post_is_not_within_a_bed)
{
	garden_rectangle(&garden, 'b', 8, 8);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	fences_run(&garden.plot, "0,2 0,6");
	fences_run(&garden.plot, "2,0 6,0");
	fences_run(&garden.plot, "2,8 6,8");
	fences_run(&garden.plot, "8,2 8,6");
	ck_assert_int_eq(count(), 8);
	fences_set(&garden.plot, FENCE_INSET, "0 in");
	ck_assert_int_eq(count(), 0);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

static double off(nm at, nm low, nm high)
{
	return at < low ? (double)(low - at) : at > high ? (double)(at - high) : 0;
}

/* Whether a hole is nearer to any piece of a wall's zone than half its width. */
static bool meets_wall(const struct cover *cover, const struct zones *zones, struct spot at,
	nm across)
{
	for (size_t i = 0; i < cover->count; i++) {
		const struct cover_box *box = &cover->pieces[i];
		double x = off(at.x, box->left, box->right), y = off(at.y, box->top, box->bottom);

		if (zones->list[box->owner].part == DIG_WALL &&
			4 * (x * x + y * y) < (double)across * (double)across)
			return true;
	}
	return false;
}

static char letter_at(nm x, nm y)
{
	const struct ground *plan = &garden.plot.ground;
	nm cell = garden.takeoff.survey.cell;

	return x < 0 || y < 0 || x >= plan->columns * cell || y >= plan->rows * cell ? '.' :
		plan->cells[y / cell * plan->columns + x / cell];
}

/* A hair off in every direction. */
static bool is_in_bed(struct spot at)
{
	return letter_at(at.x - 1, at.y - 1) == 'b' && letter_at(at.x, at.y - 1) == 'b' &&
		letter_at(at.x - 1, at.y) == 'b' && letter_at(at.x, at.y) == 'b';
}

START_TEST(a_hole_is_told_just_where_it_meets_a_wall_or_is_in_a_bed)
{
	static const char *const cells[] = { "1 ft", "5 in", "3 ft" };
	static const char *const reaches[] = { "6 in", "1 in", "8 in", "11 1/4 in" };
	struct random random = { 29 };
	int walls = 0, beds = 0, none = 0;

	for (int round = 0; round < runner_count(200, 2000); round++) {
		struct zones_ground ground;
		int met = 0;

		plot_at_random(&garden.plot, &random, 25, ".pbb");
		garden.arena = ARENA_EMPTY;
		plot_set(&garden.plot, 0, HEAD_CELL, cells[random_below(&random, 3)]);
		fences_at_random(&garden.plot, &random);
		plot_set(&garden.plot, 'b', BED_BLOCK, "8 in x 4 in x 4 in");
		plot_set(&garden.plot, 'b', BED_REACH, reaches[random_below(&random, 4)]);
		if (random_below(&random, 2))
			fences_set(&garden.plot, FENCE_GATE_POST, "10 in");
		garden_count(&garden);
		ground = garden_ground(&garden);
		const struct fencing *fencing = &garden.takeoff.fences.list[0];

		for (int i = 0; i < fencing->post_count; i++) {
			struct spot at = fencing->posts[i].at;
			bool wall = meets_wall(&ground.cover, &garden.takeoff.zones, at,
				fencing_hole(fencing, fencing->posts[i].kind)->across);
			bool bed = !wall && is_in_bed(at);

			walls += wall;
			beds += bed;
			none += !wall && !bed;
			met += wall || bed;
		}
		arena_clear(&ground.arena);
		ck_assert_int_eq(count(), met);
		garden_fini(&garden);
	}
	ck_assert(walls > 100 && beds > 100 && none > 100);
	fences_ground(&garden.plot, 1, 1);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("fence_holes");
	TCase *walls = suite_case(suite, "walls");
	TCase *beds = suite_case(suite, "beds");

	tcase_add_checked_fixture(walls, NULL, teardown);
	tcase_add_test(walls, a_post_along_a_beds_side_goes_through_its_wall);
	tcase_add_loop_test(walls, a_post_beside_a_bed_may_touch_the_walls_base, 0,
		sizeof sides / sizeof *sides);
	tcase_add_loop_test(walls, a_post_off_a_corner_of_a_bed_is_round, 0,
		sizeof corners / sizeof *corners);
	tcase_add_test(walls, a_hole_may_touch_the_corner_of_the_base);
	tcase_add_test(walls, between_two_beds_the_first_is_told);
	tcase_add_test(walls, the_wider_hole_of_a_post_of_a_gate_counts);
	tcase_add_test(walls, on_the_boundary_a_post_meets_a_bed_that_is_there);
	tcase_add_test(walls, in_a_path_beside_the_bed_there_is_no_base_of_the_wall);

	tcase_add_checked_fixture(beds, NULL, teardown);
	tcase_add_test(beds, a_post_within_a_bed_is_told);
	tcase_add_test(beds, along_a_bed_at_ground_level_a_post_is_no_snag_within_it_one);
	tcase_add_test(beds, just_on_the_boundary_a_post_is_not_within_a_bed);
	tcase_add_test(beds, a_hole_is_told_just_where_it_meets_a_wall_or_is_in_a_bed);
	return suite;
}
