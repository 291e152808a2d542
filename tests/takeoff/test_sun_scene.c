/* What casts shade on a plan, against each ray of the sun followed step by step over the plan. */
#include "takeoff/sun/sun_scene.h"
#include "base/number.h"
#include "support/details.h"
#include "support/plots.h"
#include "support/runner.h"
#include "survey/sun.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { SIDE = 10, RAYS = 24, STEPS_A_CELL = 128 };

static struct arena arena;
static struct plot plot;
static struct takeoff takeoff;
static struct shade_scene scene;

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

static void make(void)
{
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
	sun_scene_make(&scene, &arena, &takeoff);
}

static int at(int x, int y)
{
	return scene.levels[y * scene.columns + x];
}

static nm height_at(int x, int y)
{
	ck_assert_int_ne(at(x, y), SHADE_NO_LEVEL);
	return scene.heights[at(x, y)];
}

/* ---- What is seen from above ----------------------------------------------------------------- */

/* Walls of 3 courses of 6 in, 2 in of them in the ground, 2 in a cap: 16 in and 18 in high. The
 * middles of cells of 1 ft lie 6 in from the outline. */
START_TEST(middles_are_at_the_ground_the_mulch_or_the_wall)
{
	plot_from_rows(&plot, (const char *const[]){ "..........", ".bbbb.cc..", ".bbbb.cc..",
		".bbbb.SS..", ".bbbb.pl..", "..........", NULL });
	plot_set(&plot, 'b', BED_BLOCK, "16 in x 5 in x 6 in");
	plot_set(&plot, 'b', BED_EMBED, "2 in");
	plot_set(&plot, 'b', BED_CAP, "16 in x 5 in x 2 in");
	plot_set(&plot, 'b', BED_FREEBOARD, "3 in");
	plot_set(&plot, 'c', BED_BUILD, "level");
	obstacles_add(&plot.details.around.houses, memory_string("House"))->cells =
		(struct rectangle){ -3, -3, 0, 0 };
	make();
	ck_assert_int_eq(height_at(1, 0), 0);
	ck_assert_int_eq(height_at(6, 1), 0);
	ck_assert_int_eq(height_at(6, 4), 0);
	ck_assert_int_eq(height_at(7, 4), 0);
	ck_assert_int_eq(height_at(2, 2), 13 * NM_PER_INCH);
	ck_assert_int_eq(height_at(1, 1), 13 * NM_PER_INCH); /* the wall is 5 in deep */
	ck_assert_int_eq(at(6, 3), SHADE_NO_LEVEL);
	ck_assert_int_eq(at(0, 0), SHADE_NO_LEVEL);
	arena_clear(&arena);
	plot_set(&plot, 'b', BED_BLOCK, "16 in x 6 in x 6 in");
	make();
	ck_assert_int_eq(height_at(1, 1), 18 * NM_PER_INCH); /* right over the wall's inner face */
	ck_assert_int_eq(height_at(4, 4), 18 * NM_PER_INCH);
	ck_assert_int_eq(height_at(2, 2), 13 * NM_PER_INCH);
	arena_clear(&arena);
	plot_set(&plot, 'b', BED_BLOCK, "18 in x 18 in x 6 in");
	make();
	ck_assert_int_eq(height_at(2, 2), 18 * NM_PER_INCH);
}
END_TEST

static size_t count_of(enum casting casting)
{
	size_t count = 0;

	for (size_t i = 0; i < scene.occluder_count; i++)
		count += scene.occluders[i].casting == casting;
	return count;
}

START_TEST(a_rectangle_is_one_box_from_without_and_four_walls_from_within)
{
	plot_from_rows(&plot, (const char *const[]){ "..........", ".bbbb.SS..", ".bbbb.SS..",
		".bbbb..T..", "..........", NULL });
	plot_set(&plot, 'S', FIXTURE_HEIGHT, "4 ft");
	make();
	ck_assert_uint_eq(count_of(CAST_ON_OTHERS), 2); /* of T no height is told */
	ck_assert_uint_eq(count_of(CAST_ON_LEVEL), 4);
	ck_assert_uint_eq(count_of(CAST_ON_ALL), 0);
}
END_TEST

/* ---- Each ray step by step ------------------------------------------------------------------- */

/* Whether a point of a bed, in cells, is within its wall: a square of twice the wall's depth around
 * it comes to ground that is not the bed's. */
static bool is_in_wall(double x, double y, int region, double depth)
{
	for (int row = (int)floor(y - depth); row <= (int)floor(y + depth); row++)
		for (int column = (int)floor(x - depth); column <= (int)floor(x + depth); column++)
			if (!ground_holds(&plot.ground, column, row) ||
				survey_region_at(&takeoff.survey, column, row) != region)
				return true;
	return false;
}

static double in_cells(nm length)
{
	return (double)length / (double)scene.cell;
}

/* How high something solid stands at a point; the ground is nothing solid. */
static double solid_at(double x, double y)
{
	const struct obstacles *around[] = { &plot.details.around.houses,
		&plot.details.around.shades };
	int column = (int)floor(x), row = (int)floor(y), region;
	double high = -100;

	for (int i = 0; i < 2; i++) {
		for (size_t j = 0; j < around[i]->count; j++) {
			const struct obstacle *box = &around[i]->items[j];

			if (column >= box->cells.left && column <= box->cells.right &&
				row >= box->cells.top && row <= box->cells.bottom)
				high = fmax(high, in_cells(box->height));
		}
	}
	region = ground_holds(&plot.ground, column, row) ?
		survey_region_at(&takeoff.survey, column, row) : NO_REGION;
	if (region != NO_REGION) {
		const struct region *in = &takeoff.survey.regions[region];
		const struct block *block = &in->entry->block;

		if (in->entry->class == CLASS_FIXTURE)
			high = fmax(high, in_cells(block_length(block, FIXTURE_HEIGHT)));
		else if (region_is_raised(in) && is_in_wall(x, y, region,
			in_cells(block_effective(block, BED_BLOCK)->as.size.across)))
			high = fmax(high, in_cells(wall_height(block) + block_effective(block,
				BED_CAP)->as.size.up - embed_of(&takeoff.embeds, region)));
	}
	return high;
}

/* The same of the fences that lie between two points in cells side by side. */
static double fence_between(double x1, double y1, double x2, double y2)
{
	int left = (int)floor(fmin(x1, x2)), right = (int)floor(fmax(x1, x2));
	int top = (int)floor(fmin(y1, y2)), bottom = (int)floor(fmax(y1, y2));
	struct leg upright = { { right, top }, { right, top + 1 } };
	struct leg level = { { left, bottom }, { left + 1, bottom } };
	double high = -100;

	for (size_t i = 0; i < takeoff.plot.details.fence_count; i++) {
		const struct fence *fence = &takeoff.plot.details.fences[i];
		struct legs legs = LEGS_EMPTY;
		bool is_met = false;

		fence_legs(fence, &legs);
		for (size_t j = 0; j < legs.count; j++)
			is_met = is_met || (left != right && leg_covers(legs.items[j], upright)) ||
				(top != bottom && leg_covers(legs.items[j], level));
		legs_fini(&legs);
		if (is_met)
			high = fmax(high, in_cells(block_length(&fence->block, FENCE_HEIGHT) +
				block_length(&fence->block, FENCE_GAP)));
	}
	return high;
}

/* Follows a ray from the middle of a cell until it is above all. */
static bool is_lit(int x, int y, const struct ray *ray, double highest)
{
	double up = in_cells(height_at(x, y)), across = x + 0.5, down = y + 0.5;

	for (int i = 0; up < highest && i < 3 * SIDE * STEPS_A_CELL; i++) {
		double to_across = across + ray->right / STEPS_A_CELL;
		double to_down = down + ray->down / STEPS_A_CELL;

		if (up < solid_at(across, down) ||
			((floor(to_across) != floor(across) || floor(to_down) != floor(down)) &&
				up < fence_between(across, down, to_across, to_down)))
			return false;
		across = to_across;
		down = to_down;
		up += ray->rise / STEPS_A_CELL;
	}
	return true;
}

static void obstacle_add(struct obstacles *obstacles, struct random *random)
{
	struct obstacle *box = obstacles_add(obstacles, memory_string("O"));
	int left = random_between(random, -SIDE, SIDE), top = random_between(random, -SIDE, SIDE);

	box->cells = (struct rectangle){ left, top, left + random_below(random, 5),
		top + random_below(random, 5) };
	box->height = random_between(random, 1, 12) * NM_PER_FOOT;
}

static void garden_at_random(struct random *random)
{
	static const char *const blocks[] = { "12 in x 3 in x 4 in", "16 in x 5 in x 6 in",
		"16 in x 8 in x 6 in" };
	struct fence *fence;

	plot_init(&plot);
	plot_at_random(&plot, random, SIDE, "bcpS.");
	plot_set(&plot, 'b', BED_BLOCK, blocks[random_below(random, 3)]);
	plot_set(&plot, 'b', BED_CAP, random_below(random, 2) ? "none" : "12 in x 3 in x 2 in");
	plot_set(&plot, 'c', BED_BLOCK, blocks[random_below(random, 3)]);
	plot_set(&plot, 'c', BED_COURSES, random_below(random, 2) ? "1" : "5");
	plot_set(&plot, 'c', BED_FREEBOARD, random_below(random, 2) ? "0 in" : "5 in");
	plot_set(&plot, 'S', FIXTURE_HEIGHT, random_below(random, 2) ? "1 ft" : "5 ft");
	fence = details_add_fence(&plot.details, memory_string("F"));
	route_add(fence_add_run(fence), (struct place){ 0, 0 });
	route_add(&fence->runs[0], (struct place){ 0, plot.ground.rows });
	route_add(&fence->runs[0], (struct place){ plot.ground.columns, plot.ground.rows });
	if (random_below(random, 2))
		obstacle_add(&plot.details.around.houses, random);
	if (random_below(random, 2))
		obstacle_add(&plot.details.around.shades, random);
}

static int rays_at_random(struct ray rays[RAYS], struct random *random)
{
	struct sun_day day = sun_day_of(random_between(random, -66, 66),
		(struct date){ 2026, random_between(random, 1, 12), 21 });
	double north = random_below(random, 360);
	int count = 0;

	for (int i = 0; i < RAYS; i++) {
		struct sun_place place = sun_place(&day, i + 0.3);

		if (place.height > 0)
			rays[count++] = ray_from(place.height, place.azimuth, north);
	}
	return count;
}

/* Steps are a 128th of a cell: what a ray only grazes they may miss, one ray in 24 at most. */
START_TEST(each_ray_followed_step_by_step_comes_as_far)
{
	for (int seed = 0; seed < runner_count(60, 600); seed++) {
		struct random random = { (uint64_t)seed };
		struct ray rays[RAYS];
		uint16_t lit[SIDE * SIDE];
		int count = rays_at_random(rays, &random);

		garden_at_random(&random);
		make();
		shade_count(shade_new(&arena, &scene), rays, count, lit);
		for (int i = 0; i < scene.columns * scene.rows; i++) {
			int x = i % scene.columns, y = i / scene.columns, expected = 0;

			if (at(x, y) == SHADE_NO_LEVEL)
				continue;
			for (int j = 0; j < count; j++)
				expected += is_lit(x, y, &rays[j], 13);
			ck_assert_msg(abs(expected - lit[i]) <= 1, "seed %d at %d,%d: %d, not %d",
				seed, x, y, lit[i], expected);
		}
		teardown();
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sun scene");
	TCase *levels = suite_case(suite, "levels");
	TCase *rays = suite_case(suite, "rays");

	tcase_add_checked_fixture(levels, NULL, teardown);
	tcase_add_test(levels, middles_are_at_the_ground_the_mulch_or_the_wall);
	tcase_add_test(levels, a_rectangle_is_one_box_from_without_and_four_walls_from_within);
	tcase_add_test(rays, each_ray_followed_step_by_step_comes_as_far);
	return suite;
}
