/* How fences stand on falling ground: by hand, and at random against a naive reading of the ground.
 * Common practice, no published source. */
#include "takeoff/fence/fence_levels.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdlib.h>

#define FT NM_PER_FOOT
#define IN NM_PER_INCH
#define CASES runner_count(60, 3000)

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static void set(enum attribute attribute, const char *value)
{
	if (attribute_block(attribute) == BLOCK_FENCE)
		fences_set(&garden.plot, attribute, value);
	else
		plot_set(&garden.plot, 0, attribute, value);
}

/* Open ground of 24 x 8 ft; drops in 64ths of an inch at each 8 ft along it, the same all down it;
 * posts on the grid points themselves. */
static void given(const char *run, const int drops[4])
{
	struct levels *levels;

	garden_fini(&garden);
	fences_ground(&garden.plot, 24, 8);
	fences_run(&garden.plot, run);
	set(FENCE_INSET, "0 in");
	if (!drops)
		return;
	levels = &garden.plot.details.levels;
	levels_init(levels, 8 * FT, 4, 2);
	for (int i = 0; i < 8; i++)
		levels->drops[i] = drops[i % 4] * NM_PER_64TH;
}

#define INCHES(...) ((const int[4]){ __VA_ARGS__ })
enum { INCH = 64 };

static const struct fence_level *level(int i)
{
	const struct fence_levels *levels = &garden.takeoff.fences.levels;

	ck_assert_int_lt(i, levels->count);
	return &levels->list[i];
}

static const struct fencing *fencing(void)
{
	return &garden.takeoff.fences.list[0];
}

#define is_inches(actual, inches) \
	ck_assert_int_eq(actual, llround((inches) * (double)NM_PER_INCH))

static void check_post(const struct fence_level *on, int i, int post, double ground, double gap)
{
	ck_assert_int_lt(i, on->post_count);
	ck_assert_int_eq(on->posts[i].post, post);
	is_inches(on->posts[i].ground, ground);
	is_inches(on->posts[i].gap, gap);
	is_inches(on->posts[i].height, gap + 36);
}

/* ---- By hand --------------------------------------------------------------------------------- */

#define SLOPE INCHES(0, 4 * INCH, 8 * INCH, 12 * INCH)

/* 4 in over 8 ft: posts at 2, 10 and 18 ft stand on ground at 1, 5 and 9 in. The highest is 1 in,
 * the gap 2 in: panels' bottom 1 in above the string, their top 36 in more. */
START_TEST(panels_hang_level_by_the_highest_ground)
{
	given("2,4 18,4", SLOPE);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fences.levels.count, 1);
	ck_assert_str_eq(level(0)->fence, "Pickets");
	ck_assert(level(0)->part == FENCE_PART_LEG && level(0)->number == 1);
	is_inches(level(0)->bottom, -1);
	is_inches(level(0)->top, -37);
	is_inches(level(0)->widest, 10);
	check_post(level(0), 0, 1, 1, 2);
	check_post(level(0), 1, 2, 5, 6);
	check_post(level(0), 2, 3, 9, 10);
	ck_assert_int_eq(level(0)->post_count, 3);
}
END_TEST

/* The same posts are 38, 42 and 46 in over the ground, 24 in in it: 62, 66 and 70 in. */
START_TEST(posts_are_as_long_as_the_ground_has_them)
{
	static const int needed[] = { 62, 66, 70 };

	given("2,4 18,4", SLOPE);
	set(ALLOW_POST_STOCK, "2 in");
	garden_count(&garden);
	is_inches(fencing()->post_shortest, 62);
	is_inches(fencing()->post_length, 70);
	is_inches(fencing()->post_stock, 70);
	ck_assert_int_eq(fencing()->stock_count, 3);
	for (int i = 0; i < 3; i++) {
		is_inches(fencing()->posts[i].height, needed[i] - 24);
		is_inches(fencing()->stocks[i].length, needed[i]);
		ck_assert_int_eq(fencing()->stocks[i].count, 1);
	}
	ck_assert_double_eq(garden_item(&garden, "fence.post")->order, 1);
}
END_TEST

static double posts_of(int inches)
{
	double count = 0;

	for (size_t i = 0; i < garden.takeoff.items.count; i++) {
		const struct item *item = &garden.takeoff.items.list[i];

		if (item->good == GOOD_FENCE_POST && item->length == inches * IN)
			count += item->order;
	}
	return count;
}

/* Where it falls by 24 in over 24 ft posts need 62, 70, 78 and 86 in, where it does by 2 in 64 at
 * most. */
START_TEST(longer_posts_are_bought_only_where_they_are_needed)
{
	given("0,4 24,4", INCHES(0, 8 * INCH, 16 * INCH, 24 * INCH));
	garden_count(&garden);
	ck_assert_double_eq(posts_of(72), 2);
	ck_assert_double_eq(posts_of(84), 1);
	ck_assert_double_eq(posts_of(96), 1);
	given("0,4 24,4", INCHES(0, 1 * INCH, 1 * INCH, 2 * INCH));
	garden_count(&garden);
	ck_assert_double_eq(posts_of(72), 4);
}
END_TEST

/* A leg down at 18 ft has its posts at 9 in: its bottom is at 7 in, 8 in below that of the leg it
 * meets. The corner post reaches the higher top. */
START_TEST(a_corner_post_reaches_the_higher_of_two_tops)
{
	given("2,0 18,0 18,8", SLOPE);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fences.levels.count, 2);
	is_inches(level(0)->bottom, -1);
	is_inches(level(1)->bottom, 7);
	check_post(level(0), 2, 3, 9, 10);
	check_post(level(1), 0, 3, 9, 2);
	check_post(level(1), 1, 4, 9, 2);
	is_inches(fencing()->posts[2].height, 46);
	is_inches(fencing()->posts[3].height, 38);
	is_inches(fencing()->widest_gap, 10);
}
END_TEST

/* Legs 2 to 10 and 14 to 18 ft, a gate of 4 ft between: ground 1, 5, 7, 9 in. */
START_TEST(a_gate_hangs_by_the_ground_between_its_own_posts)
{
	given("2,4 18,4", SLOPE);
	fences_gate(&garden.plot, "10,4 14,4");
	set(FENCE_GATE_POST, "5 1/2 in");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fences.levels.count, 3);
	ck_assert(level(1)->part == FENCE_PART_GATE && level(1)->number == 1);
	ck_assert(level(2)->part == FENCE_PART_LEG && level(2)->number == 2);
	is_inches(level(1)->bottom, 3);
	check_post(level(1), 0, 2, 5, 2);
	check_post(level(1), 1, 3, 7, 4);
	is_inches(level(2)->bottom, 5);
	check_post(level(2), 1, 4, 9, 4);
	/* the post at 10 ft is on the first leg too, whose top is higher */
	is_inches(fencing()->posts[1].height, 42);
	ck_assert_int_eq(fencing()->stock_count, 2);
	ck_assert(!fencing()->stocks[0].is_of_gates && fencing()->stocks[1].is_of_gates);
	ck_assert(fencing()->stocks[0].count == 2 && fencing()->stocks[1].count == 2);
}
END_TEST

/* Between its posts at 4 and 20 ft, ground 4 in, it rises to 1 in at 8 ft; 3 in is at 16 ft. */
START_TEST(ground_between_posts_counts_too)
{
	given("4,4 20,4", INCHES(7 * INCH, 1 * INCH, 3 * INCH, 5 * INCH));
	set(FENCE_SECTION, "16 ft");
	garden_count(&garden);
	is_inches(level(0)->bottom, -1);
	is_inches(level(0)->widest, 5);
	check_post(level(0), 0, 1, 4, 5);
	check_post(level(0), 1, 2, 4, 5);
}
END_TEST

/* Between posts of 12 in, 1 ft apart, there is no room for a panel: both stand there. */
START_TEST(a_leg_without_a_panel_has_its_two_posts)
{
	given("2,4 3,4", SLOPE);
	fences_run(&garden.plot, "10,4 18,4");
	set(FENCE_POST, "12 in");
	garden_count(&garden);
	ck_assert_int_eq(fencing()->legs[0].whole + fencing()->legs[0].cut_count, 0);
	ck_assert_int_eq(level(0)->post_count, 2);
	check_post(level(0), 1, 2, 1.5, 2.5);
	check_post(level(1), 0, 3, 5, 2);
	check_post(level(1), 1, 4, 9, 6);
}
END_TEST

START_TEST(of_several_fences_each_has_its_own_levels)
{
	int next = 0;

	given("2,0 18,0 18,4", SLOPE);
	details_add_fence(&garden.plot.details, memory_string("Rails"));
	fences_run(&garden.plot, "2,8 6,8");
	fences_gate(&garden.plot, "3,8 5,8");
	details_add_fence(&garden.plot.details, memory_string("Boards"));
	fences_run(&garden.plot, "20,8 24,8 24,4");
	garden_count(&garden);
	for (int i = 0; i < garden.takeoff.fences.count; i++) {
		const struct fencing *of = &garden.takeoff.fences.list[i];

		ck_assert_int_eq(of->first_level, next);
		ck_assert_int_eq(of->level_count, i == 1 ? 3 : 2);
		for (int end = next + of->level_count; next < end; next++)
			ck_assert_str_eq(level(next)->fence, of->name);
	}
	ck_assert_int_eq(next, garden.takeoff.fences.levels.count);
	ck_assert_int_eq(next, 7);
}
END_TEST

/* ---- The rule's edge ------------------------------------------------------------------------- */

/* 6 in over 24 ft are 2 in over 8: a gap of 4 in at the lower end. */
START_TEST(a_gap_of_four_inches_is_left_one_of_more_is_to_be_filled)
{
	given("0,4 8,4", INCHES(0, 2 * INCH, 0, 0));
	garden_count(&garden);
	is_inches(level(0)->widest, 4);
	ck_assert(!level(0)->is_wide);
	given("0,4 8,4", INCHES(0, 2 * INCH + 1, 0, 0));
	garden_count(&garden);
	ck_assert(level(0)->is_wide);
	set(ALLOW_FENCE_GAP, "5 in");
	garden_count(&garden);
	ck_assert(!level(0)->is_wide);
}
END_TEST

START_TEST(in_a_metric_plot_it_is_100_mm)
{
	given("0,4 8,4", INCHES(0, 0, 0, 0));
	set(HEAD_UNITS, "metric");
	garden.plot.details.levels.drops[1] = garden.plot.details.levels.drops[5] = 50 * NM_PER_MM;
	garden_count(&garden);
	ck_assert_int_eq(level(0)->widest, 100 * NM_PER_MM);
	ck_assert(!level(0)->is_wide);
	garden.plot.details.levels.drops[1]++;
	garden.plot.details.levels.drops[5]++;
	garden_count(&garden);
	ck_assert(level(0)->is_wide);
}
END_TEST

/* ---- Where there is nothing to tell ---------------------------------------------------------- */

START_TEST(without_levels_there_is_nothing_to_tell)
{
	given("0,4 24,4", NULL);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fences.levels.count, 0);
	ck_assert(fencing()->level_count == 0 && fencing()->widest_gap == 0);
	is_inches(fencing()->posts[0].height, 38);
}
END_TEST

START_TEST(on_level_ground_posts_are_as_without_levels)
{
	nm length;

	given("0,4 24,4", NULL);
	garden_count(&garden);
	length = fencing()->post_length;
	given("0,4 24,4", INCHES(5 * INCH, 5 * INCH, 5 * INCH, 5 * INCH));
	garden_count(&garden);
	ck_assert_int_eq(fencing()->post_length, length);
	ck_assert_int_eq(fencing()->post_shortest, length);
	ck_assert_int_eq(fencing()->stock_count, 1);
	ck_assert_double_eq(posts_of(72), fencing()->post_count);
	for (int i = 0; i < 4; i++)
		check_post(level(0), i, i + 1, 5, 2);
}
END_TEST

START_TEST(a_leg_without_length_has_no_levels)
{
	garden_fini(&garden);
	fences_ground(&garden.plot, 1, 8);
	fences_run(&garden.plot, "0,4 1,4");
	set(FENCE_INSET, "1 ft");
	levels_init(&garden.plot.details.levels, 8 * FT, 2, 2);
	garden_count(&garden);
	ck_assert_int_eq(fencing()->leg_count, 1);
	ck_assert_int_eq(garden.takeoff.fences.levels.count, 0);
}
END_TEST

START_TEST(a_gate_without_length_has_no_levels)
{
	garden_fini(&garden);
	fences_ground(&garden.plot, 1, 8);
	fences_run(&garden.plot, "0,4 1,4");
	fences_gate(&garden.plot, "0,4 1,4");
	set(FENCE_INSET, "1 ft");
	levels_init(&garden.plot.details.levels, 8 * FT, 2, 2);
	garden_count(&garden);
	ck_assert_int_eq(fencing()->gate_count, 1);
	ck_assert_int_eq(garden.takeoff.fences.levels.count, 0);
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

enum { COLUMNS = 24, ROWS = 16, STEP = 4, ACROSS = COLUMNS / STEP + 1, DOWN = ROWS / STEP + 1 };

static void draw_at_random(struct plot *plot, int seed)
{
	struct random random = { (uint64_t)seed };
	int most = random_between(&random, 1, 40);

	fences_ground(plot, COLUMNS, ROWS);
	fences_at_random(plot, &random);
	levels_init(&plot->details.levels, STEP * FT, ACROSS, DOWN);
	for (int i = 0; i < ACROSS * DOWN; i++)
		plot->details.levels.drops[i] = random_below(&random, most) * IN;
}

/* In inches, between the four drops around. */
static double naive_drop(const struct levels *levels, struct spot at)
{
	double x = (double)at.x / (double)(STEP * FT), y = (double)at.y / (double)(STEP * FT);
	int column = (int)fmin(x, ACROSS - 2), row = (int)fmin(y, DOWN - 2);
	double u = x - column, v = y - row;
	const nm *above = &levels->drops[row * ACROSS + column], *below = above + ACROSS;

	return ((1 - v) * ((1 - u) * (double)above[0] + u * (double)above[1]) +
		v * ((1 - u) * (double)below[0] + u * (double)below[1])) / (double)IN;
}

/* The highest and the lowest at the ends and at each foot between: ground bends at each fourth. */
static void naive_span(const struct levels *levels, struct spot from, struct spot to,
	double *highest, double *lowest)
{
	struct spot a = { from.x < to.x ? from.x : to.x, from.y < to.y ? from.y : to.y };
	struct spot b = { from.x + to.x - a.x, from.y + to.y - a.y }, at = a;

	*highest = *lowest = naive_drop(levels, a);
	while (at.x != b.x || at.y != b.y) {
		nm x = (at.x / FT + 1) * FT, y = (at.y / FT + 1) * FT;

		at = (struct spot){ a.x == b.x ? a.x : x < b.x ? x : b.x,
			a.y == b.y ? a.y : y < b.y ? y : b.y };
		*highest = fmin(*highest, naive_drop(levels, at));
		*lowest = fmax(*lowest, naive_drop(levels, at));
	}
}

static bool is_near(nm length, double inches)
{
	return fabs((double)length / (double)IN - inches) < 1e-6;
}

static void check_naively(const struct fence_level *on, int seed)
{
	const struct levels *levels = &garden.plot.details.levels;
	const struct fence_post *posts = fencing()->posts;
	double highest, lowest;

	naive_span(levels, on->from, on->to, &highest, &lowest);
	ck_assert_msg(is_near(on->bottom, highest - 2) && is_near(on->top, highest - 38) &&
		is_near(on->widest, lowest - highest + 2), "seed %d", seed);
	ck_assert_msg(on->is_wide == (on->widest > 4 * IN), "seed %d", seed);
	for (int i = 0; i < on->post_count; i++) {
		const struct fence_level_post *post = &on->posts[i];
		const struct fence_post *stands = &posts[post->post - 1];

		ck_assert_msg(stands->at.x == post->at.x && stands->at.y == post->at.y &&
			is_near(post->ground, naive_drop(levels, post->at)) &&
			post->gap == post->ground - on->bottom && post->gap >= 2 * IN &&
			post->height == post->gap + 36 * IN && stands->height >= post->height,
			"seed %d, post %d", seed, post->post);
	}
}

/* Posts are as high as the highest of their tops, and all are on some leg or gate. */
static void check_heights(int seed)
{
	const struct fence_levels *levels = &garden.takeoff.fences.levels;
	nm *heights = memory_new((size_t)fencing()->post_count, sizeof *heights);
	int bought = 0;

	for (int i = 0; i < levels->count; i++)
		for (int j = 0; j < level(i)->post_count; j++) {
			nm *height = &heights[level(i)->posts[j].post - 1];

			*height = level(i)->posts[j].height > *height ?
				level(i)->posts[j].height : *height;
		}
	for (int i = 0; i < fencing()->post_count; i++)
		ck_assert_msg(heights[i] == fencing()->posts[i].height, "seed %d", seed);
	for (int i = 0; i < fencing()->stock_count; i++)
		bought += fencing()->stocks[i].count;
	ck_assert_int_eq(bought, fencing()->post_count);
	free(heights);
}

START_TEST(levels_are_as_the_ground_read_naively)
{
	int seen = 0;

	for (int seed = 0; seed < CASES; seed++) {
		garden_fini(&garden);
		draw_at_random(&garden.plot, seed);
		garden_count(&garden);
		for (int i = 0; i < garden.takeoff.fences.levels.count; i++, seen++)
			check_naively(level(i), seed);
		check_heights(seed);
	}
	ck_assert_int_gt(seen, 2 * CASES);
}
END_TEST

static void swap(nm *a, nm *b)
{
	nm before = *a;

	*a = *b;
	*b = before;
}

/* Left for right, all of the plan. */
static void mirror(struct plot *plot)
{
	struct fence *fence = &plot->details.fences[0];
	nm *drops = plot->details.levels.drops;

	for (size_t i = 0; i < fence->run_count; i++)
		for (int j = 0; j < fence->runs[i].count; j++)
			fence->runs[i].points[j].x = COLUMNS - fence->runs[i].points[j].x;
	for (size_t i = 0; i < fence->gates.count; i++) {
		fence->gates.items[i].from.x = COLUMNS - fence->gates.items[i].from.x;
		fence->gates.items[i].to.x = COLUMNS - fence->gates.items[i].to.x;
	}
	for (int y = 0; y < DOWN; y++)
		for (int x = 0; x < ACROSS / 2; x++)
			swap(&drops[y * ACROSS + x], &drops[y * ACROSS + ACROSS - 1 - x]);
}

static bool are_alike(nm a, nm b)
{
	return llabs(a - b) <= 1;
}

START_TEST(images_in_a_mirror_have_the_same_levels)
{
	for (int seed = 0; seed < CASES; seed++) {
		struct garden image = { .has_book = false };
		const struct fence_levels *levels = &image.takeoff.fences.levels;

		garden_fini(&garden);
		draw_at_random(&garden.plot, seed);
		garden_count(&garden);
		draw_at_random(&image.plot, seed);
		mirror(&image.plot);
		garden_count(&image);
		ck_assert_int_eq(levels->count, garden.takeoff.fences.levels.count);
		for (int i = 0; i < levels->count; i++) {
			const struct fence_level *one = level(i), *two = &levels->list[i];

			ck_assert_msg(are_alike(one->bottom, two->bottom) &&
				are_alike(one->widest, two->widest) &&
				one->post_count == two->post_count, "seed %d", seed);
			for (int j = 0; j < one->post_count; j++)
				ck_assert_msg(are_alike(one->posts[j].height, two->posts[j].height),
					"seed %d", seed);
		}
		garden_fini(&image);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("fence_levels");
	TCase *hand = suite_case(suite, "hand");
	TCase *random = suite_case(suite, "random");

	tcase_add_checked_fixture(hand, NULL, teardown);
	tcase_add_test(hand, panels_hang_level_by_the_highest_ground);
	tcase_add_test(hand, posts_are_as_long_as_the_ground_has_them);
	tcase_add_test(hand, longer_posts_are_bought_only_where_they_are_needed);
	tcase_add_test(hand, a_corner_post_reaches_the_higher_of_two_tops);
	tcase_add_test(hand, a_gate_hangs_by_the_ground_between_its_own_posts);
	tcase_add_test(hand, ground_between_posts_counts_too);
	tcase_add_test(hand, a_leg_without_a_panel_has_its_two_posts);
	tcase_add_test(hand, of_several_fences_each_has_its_own_levels);
	tcase_add_test(hand, a_gap_of_four_inches_is_left_one_of_more_is_to_be_filled);
	tcase_add_test(hand, in_a_metric_plot_it_is_100_mm);
	tcase_add_test(hand, without_levels_there_is_nothing_to_tell);
	tcase_add_test(hand, on_level_ground_posts_are_as_without_levels);
	tcase_add_test(hand, a_leg_without_length_has_no_levels);
	tcase_add_test(hand, a_gate_without_length_has_no_levels);
	tcase_add_checked_fixture(random, NULL, teardown);
	tcase_add_test(random, levels_are_as_the_ground_read_naively);
	tcase_add_test(random, images_in_a_mirror_have_the_same_levels);
	return suite;
}
