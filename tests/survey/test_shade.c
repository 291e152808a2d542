/* What the sun shines on, against each ray followed by itself, and by laws of symmetry. */
#include "support/random.h"
#include "support/rays.h"
#include "support/runner.h"
#include "support/stopper.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

enum { COLUMNS = 150, ROWS = 12, CELLS = COLUMNS * ROWS };

static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

/* ---- Each ray by itself ---------------------------------------------------------------------- */

/* What of a ray is between two lines that are so far off along one direction. */
static void clip(double low, double high, double along, double *from, double *to)
{
	double a = low / along, b = high / along;

	*from = fmax(*from, fmin(a, b));
	*to = fmin(*to, fmax(a, b));
}

/* Whether a ray meets a box: it is over it from one distance to another, and lower than its top up
 * to a third. */
static bool meets(const struct shade_scene *scene, int cell, const struct ray *ray,
	const struct occluder *box)
{
	double side = (double)scene->cell, x = (cell % scene->columns + 0.5) * side;
	int row = cell / scene->columns;
	double y = (row + 0.5) * side, from = 0, to;

	to = (double)(box->height - scene->heights[scene->levels[cell]]) / ray->rise;
	clip((double)box->left - x, (double)box->right - x, ray->right, &from, &to);
	clip((double)box->top - y, (double)box->bottom - y, ray->down, &from, &to);
	return from <= to;
}

static bool is_shaded(const struct shade_scene *scene, int cell, const struct ray *ray)
{
	for (size_t i = 0; i < scene->occluder_count; i++) {
		const struct occluder *box = &scene->occluders[i];
		bool is_level = box->level == scene->levels[cell];

		if (box->casting != CAST_ON_ALL && is_level != (box->casting == CAST_ON_LEVEL))
			continue;
		if (box->height > scene->heights[scene->levels[cell]] &&
			meets(scene, cell, ray, box))
			return true;
	}
	return false;
}

enum { BOXES = 9, LEVELS = 3 };

struct garden {
	struct shade_scene scene;
	uint16_t levels[CELLS];
	nm heights[LEVELS];
	struct occluder boxes[BOXES];
};

/* Boxes in steps of a third of a cell, so that none ends in a middle; some are sheets. */
static void box_at_random(struct occluder *box, struct random *random, int columns)
{
	const nm third = NM_PER_FOOT / 3;

	box->left = random_between(random, -30, 3 * columns + 10) * third;
	box->top = random_between(random, -30, 50) * third;
	box->right = box->left + random_below(random, 2) * random_below(random, 3 * columns) *
		third;
	box->bottom = box->top + random_below(random, 2) * random_below(random, 60) * third;
	box->height = random_between(random, 1, random_below(random, 2) ? 30 : 400) * NM_PER_INCH;
	box->casting = (enum casting)random_below(random, 3);
	box->level = random_below(random, LEVELS);
}

static void garden_at_random(struct garden *garden, struct random *random)
{
	int columns = random_between(random, 1, COLUMNS), rows = random_between(random, 1, ROWS);

	garden->scene = (struct shade_scene){ NM_PER_FOOT, columns, rows, garden->levels,
		garden->heights, LEVELS, garden->boxes, (size_t)random_below(random, BOXES + 1) };
	for (int i = 0; i < CELLS; i++)
		garden->levels[i] = (uint16_t)random_below(random, LEVELS);
	for (int i = 0; i < LEVELS; i++)
		garden->heights[i] = random_between(random, -3, 20) * NM_PER_INCH;
	for (int i = 0; i < BOXES; i++)
		box_at_random(&garden->boxes[i], random, columns);
}

/* Of a ray that only just meets a box, or only just does not, rounding decides: a step at most. */
START_TEST(each_ray_followed_by_itself_gives_the_same)
{
	for (int seed = 0; seed < runner_count(30, 600); seed++) {
		struct random random = { (uint64_t)seed };
		struct sun_day day = sun_day_of(random_between(&random, -66, 66),
			(struct date){ 2026, random_between(&random, 1, 12), 21 });
		struct ray rays[RAYS_A_DAY];
		int ray_count = rays_of_day(&day, rays);
		struct garden garden;
		uint16_t lit[CELLS];

		garden_at_random(&garden, &random);
		rays_count(&arena, &garden.scene, rays, ray_count, lit);
		for (int i = 0; i < garden.scene.columns * garden.scene.rows; i++) {
			int expected = 0;

			for (int j = 0; j < ray_count; j++)
				expected += !is_shaded(&garden.scene, i, &rays[j]);
			ck_assert_msg(abs(expected - lit[i]) <= 1, "seed %d, cell %d: %d, not %d",
				seed, i, lit[i], expected);
		}
		arena_clear(&arena);
	}
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

static struct occluder mirrored(const struct occluder *box, nm width)
{
	struct occluder image = *box;

	image.left = width - box->right;
	image.right = width - box->left;
	return image;
}

START_TEST(what_is_mirrored_has_mirrored_shade_when_the_sun_is)
{
	for (int seed = 0; seed < runner_count(30, 300); seed++) {
		struct random random = { (uint64_t)seed };
		struct garden garden, image;
		struct ray rays[RAYS_A_DAY], turned[RAYS_A_DAY];
		struct sun_day day = sun_day_of(45, (struct date){ 2026, 1 + seed % 12, 21 });
		int ray_count = rays_of_day(&day, rays), columns;
		uint16_t lit[CELLS], mirror[CELLS];

		garden_at_random(&garden, &random);
		image = garden;
		columns = garden.scene.columns;
		image.scene.levels = image.levels;
		image.scene.occluders = image.boxes;
		for (int i = 0; i < BOXES; i++)
			image.boxes[i] = mirrored(&garden.boxes[i], columns * NM_PER_FOOT);
		for (int i = 0; i < columns * garden.scene.rows; i++)
			image.levels[i / columns * columns + columns - 1 - i % columns] =
				garden.levels[i];
		for (int i = 0; i < ray_count; i++)
			turned[i] = (struct ray){ -rays[i].right, rays[i].down, rays[i].rise };
		rays_count(&arena, &garden.scene, rays, ray_count, lit);
		rays_count(&arena, &image.scene, turned, ray_count, mirror);
		for (int i = 0; i < columns * garden.scene.rows; i++)
			ck_assert_int_eq(lit[i],
				mirror[i / columns * columns + columns - 1 - i % columns]);
		arena_clear(&arena);
	}
}
END_TEST

/* At noon in the north what is shaded lies straight north; on the equator at an equinox the sun
 * goes straight over from east to west, and no wall along its way throws any shade. */
START_TEST(shade_at_noon_and_on_the_equator_lies_where_it_must)
{
	const nm ground = 0, foot = NM_PER_FOOT;
	const struct occluder post = { 7 * foot, 10 * foot, 8 * foot, 11 * foot, 5 * foot,
		CAST_ON_ALL, 0 };
	const struct occluder along = { -99 * foot, 8 * foot, 99 * foot, 8 * foot, 9 * foot,
		CAST_ON_ALL, 0 };
	struct sun_day equator = sun_day_of(0, (struct date){ 2026, 3, 20 });
	struct shade_scene scene = { foot, 15, 15, NULL, &ground, 1, &post, 1 };
	struct ray rays[RAYS_A_DAY] = { ray_from(45, 180, 0) };
	uint16_t lit[15 * 15];
	int ray_count;

	rays_count(&arena, &scene, rays, 1, lit);
	for (int i = 0; i < 15 * 15; i++)
		ck_assert_int_eq(lit[i], !(i % 15 == 7 && i / 15 >= 5 && i / 15 <= 10));
	scene.occluders = &along;
	ray_count = rays_of_day(&equator, rays);
	rays_count(&arena, &scene, rays, ray_count, lit);
	for (int i = 0; i < 15 * 15; i++)
		ck_assert_int_ge(lit[i], ray_count - 1);
}
END_TEST

START_TEST(a_plan_whose_up_is_not_north_is_turned_under_the_sun)
{
	struct ray ray = ray_from(30, 120, 90), same = ray_from(30, 30, 0);

	ck_assert_double_eq_tol(ray.right, same.right, 1e-12);
	ck_assert_double_eq_tol(ray.down, same.down, 1e-12);
	ray = ray_from(30, 90, 0); /* east is right, where north is up */
	ck_assert_double_eq_tol(ray.right, 1, 1e-12);
	ck_assert_double_eq_tol(ray.down, 0, 1e-12);
	ck_assert_double_eq_tol(ray.rise, 1 / sqrt(3), 1e-12);
}
END_TEST

START_TEST(it_asks_whether_to_stop)
{
	struct random random = { 5 };
	struct sun_day day = sun_day_of(45, (struct date){ 2026, 6, 21 });
	struct ray rays[RAYS_A_DAY];
	int ray_count = rays_of_day(&day, rays);
	struct garden garden;
	struct stopper stopper;
	uint16_t lit[CELLS];
	int64_t asks;

	garden_at_random(&garden, &random);
	stopper_begin(&stopper, 0);
	rays_count(&arena, &garden.scene, rays, ray_count, lit);
	asks = stopper.asks;
	ck_assert_int_gt(asks, ray_count);
	stopper_begin(&stopper, asks / 2);
	rays_count(&arena, &garden.scene, rays, ray_count, lit);
	ck_assert_int_le(stopper.asks, asks / 2 + 1);
	stopper_end();
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("shade");
	TCase *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_test(laws, each_ray_followed_by_itself_gives_the_same);
	tcase_add_test(laws, what_is_mirrored_has_mirrored_shade_when_the_sun_is);
	tcase_add_test(laws, shade_at_noon_and_on_the_equator_lies_where_it_must);
	tcase_add_test(laws, a_plan_whose_up_is_not_north_is_turned_under_the_sun);
	tcase_add_test(laws, it_asks_whether_to_stop);
	return suite;
}
