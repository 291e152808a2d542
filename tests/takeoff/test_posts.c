/* Posts of fences, and their holes. */

#include "takeoff/fence/posts.h"

#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdlib.h>

#define INCH NM_PER_INCH
#define FOOT NM_PER_FOOT

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static void ground(int columns, int rows)
{
	fences_ground(&garden.plot, columns, rows);
	garden.arena = ARENA_EMPTY;
}

static void set(enum attribute attribute, const char *value)
{
	fences_set(&garden.plot, attribute, value);
}

/* Posts on the grid points themselves. */
static void run(const char *points)
{
	fences_run(&garden.plot, points);
	set(FENCE_INSET, "0 in");
}

static const struct fencing *only_fence(void)
{
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fences.count, 1);
	return &garden.takeoff.fences.list[0];
}

static int64_t panels(const struct fencing *fencing)
{
	return fencing->panels_whole + fencing->panel_pieces;
}

/* ---- How many -------------------------------------------------------------------------------- */

/* Common practice, no published source: n = ceil(L/s) bays, n + 1 posts. 100 ft at 8 ft by
 * arithmetic: 13 bays, 14 posts. */
START_TEST(a_straight_run_of_100_ft_at_8_ft_is_13_panels_and_14_posts)
{
	ground(100, 10);
	run("0,5 100,5");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(panels(fencing), 13);
	ck_assert_int_eq(fencing->post_count, 14);
	ck_assert_int_eq(fencing->of_kind[POST_END], 2);
	ck_assert_int_eq(fencing->of_kind[POST_LINE], 12);
}
END_TEST

/* By the same rule. */
START_TEST(a_straight_run_of_10_m_at_1_m_has_11_posts)
{
	ground(10, 10);
	plot_set(&garden.plot, 0, HEAD_CELL, "1 m");
	run("0,5 10,5");
	set(FENCE_SECTION, "1 m");
	ck_assert_int_eq(only_fence()->post_count, 11);
}
END_TEST

/* The Jargon File, version 4.4.7, 2003, "fencepost error": a fence 100 feet long with posts 10 feet
 * apart has 11 posts, and 9 where its ends stand against something: those between the ends. */
START_TEST(a_fence_of_100_ft_with_posts_10_ft_apart_has_11_posts)
{
	ground(100, 10);
	run("0,5 100,5");
	set(FENCE_SECTION, "10 ft");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->post_count, 11);
	ck_assert_int_eq(fencing->of_kind[POST_LINE], 9);
	ck_assert_int_eq(panels(fencing), 10);
}
END_TEST

/* By arithmetic: sides of 3 and 4 1/2 sections, twice. */
START_TEST(a_closed_fence_of_24_by_36_ft_at_8_ft_is_16_panels_and_16_posts)
{
	ground(24, 36);
	run("0,0 24,0 24,36 0,36 0,0");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(panels(fencing), 16);
	ck_assert_int_eq(fencing->post_count, 16);
	ck_assert_int_eq(fencing->of_kind[POST_CORNER], 4);
	ck_assert_int_eq(fencing->length, 120 * FOOT);
}
END_TEST

START_TEST(tees_crossings_and_gates_have_posts_of_their_kind)
{
	ground(40, 40);
	run("0,20 40,20");
	run("20,0 20,40");
	run("30,0 30,20");
	fences_gate(&garden.plot, "4,20 8,20");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->of_kind[POST_END], 5);
	ck_assert_int_eq(fencing->of_kind[POST_TEE], 2);
	ck_assert_int_eq(fencing->of_kind[POST_GATE], 2);
	ck_assert_int_eq(fencing->of_kind[POST_CORNER], 0);
}
END_TEST

START_TEST(posts_stand_a_section_apart_from_the_first_end_and_are_told_along_the_fence)
{
	static const struct {
		struct spot at;
		enum post_kind kind;
	} posts[] = {
		{ { 22 * FOOT, 3 * FOOT }, POST_END }, { { 22 * FOOT, 5 * FOOT }, POST_CORNER },
		{ { 14 * FOOT, 5 * FOOT }, POST_LINE }, { { 6 * FOOT, 5 * FOOT }, POST_GATE },
		{ { 2 * FOOT, 5 * FOOT }, POST_GATE }, { { 2 * FOOT, 9 * FOOT }, POST_END },
		{ { 30 * FOOT, 1 * FOOT }, POST_END }, { { 34 * FOOT, 1 * FOOT }, POST_END },
	};

	ground(40, 40);
	run("22,3 22,5 2,5 2,9");
	run("30,1 34,1");
	fences_gate(&garden.plot, "2,5 6,5");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->post_count, 8);
	for (int i = 0; i < 8; i++) {
		ck_assert_int_eq(fencing->posts[i].at.x, posts[i].at.x);
		ck_assert_int_eq(fencing->posts[i].at.y, posts[i].at.y);
		ck_assert_int_eq(fencing->posts[i].kind, posts[i].kind);
	}
}
END_TEST

START_TEST(a_shared_rest_has_its_post_in_the_middle_of_the_last_two)
{
	ground(40, 10);
	plot_set(&garden.plot, 0, HEAD_CELL, "6 in");
	run("1,5 34,5");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->post_count, 4);
	ck_assert_int_eq(fencing->posts[1].at.x, 6 * INCH + 8 * FOOT);
	ck_assert_int_eq(fencing->posts[2].at.x, 6 * INCH + 8 * FOOT + 51 * INCH);
	ck_assert_int_eq(fencing->posts[3].at.x, 17 * FOOT);
}
END_TEST

/* ---- Along the fence ------------------------------------------------------------------------- */

static void along_is(const struct fencing *fencing, const int *posts, int count)
{
	for (int i = 0; i < count; i++)
		ck_assert_msg(fencing->along[i] == posts[i], "%d: %d", i, fencing->along[i]);
}
#define ALONG_IS(fencing, ...) along_is((fencing), (const int[]){ __VA_ARGS__ }, \
	(int)(sizeof((const int[]){ __VA_ARGS__ }) / sizeof(int)))

START_TEST(each_leg_and_gate_has_its_posts_from_the_first_to_the_last)
{
	ground(40, 40);
	run("22,3 22,5 2,5 2,9");
	run("30,1 34,1");
	fences_gate(&garden.plot, "2,5 6,5");
	const struct fencing *fencing = only_fence();

	/* 2 ft, two sections, the gate, 4 ft, and the run apart. */
	ALONG_IS(fencing, 0, 1, 1, 2, 3, 3, 4, 4, 5, 6, 7);
}
END_TEST

START_TEST(a_closed_fence_comes_back_to_its_first_post)
{
	ground(24, 36);
	run("0,0 8,0 8,8 0,8 0,0");
	ALONG_IS(only_fence(), 0, 1, 1, 2, 2, 3, 3, 0);
}
END_TEST

/* A leg too short for a panel has its two posts, one without any length has none. */
START_TEST(a_leg_without_panels_has_two_posts_and_one_without_length_none)
{
	ground(40, 24);
	plot_set(&garden.plot, 0, HEAD_CELL, "3 in");
	fences_run(&garden.plot, "10,10 11,10 11,20");
	fences_run(&garden.plot, "0,5 1,5");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->legs[0].whole + fencing->legs[0].cut_count, 0);
	ck_assert_int_eq(fencing->legs[2].length, 0);
	ALONG_IS(fencing, 0, 1, 1, 2);
	ck_assert_int_eq(fencing->post_count, 3);
}
END_TEST

/* Both runs are moved to the middle of a plan that is narrower than two insets. */
START_TEST(runs_that_fall_together_share_all_their_posts)
{
	ground(1, 40);
	plot_set(&garden.plot, 0, HEAD_CELL, "6 in");
	fences_run(&garden.plot, "0,2 0,34");
	fences_run(&garden.plot, "1,2 1,34");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->post_count, 3);
	ALONG_IS(fencing, 0, 1, 2, 0, 1, 2);
}
END_TEST

static bool is_between(nm at, nm one, nm other)
{
	return one < other ? one <= at && at <= other : other <= at && at <= one;
}

static nm apart(struct spot a, struct spot b)
{
	return llabs(a.x - b.x) + llabs(a.y - b.y);
}

/* By a look at all posts: those that follow in `along` are all that stand on the line, each farther
 * along it than the one before. Returns how many. */
static int check_line(const struct fencing *fencing, const int *along, struct spot from,
	struct spot to)
{
	int found = 0;

	for (int i = 0; i < fencing->post_count; i++)
		found += is_between(fencing->posts[i].at.x, from.x, to.x) &&
			is_between(fencing->posts[i].at.y, from.y, to.y);
	ck_assert_int_eq(apart(fencing->posts[along[0]].at, from), 0);
	ck_assert_int_eq(apart(fencing->posts[along[found - 1]].at, to), 0);
	for (int i = 0; i < found; i++) {
		struct spot at = fencing->posts[along[i]].at;

		ck_assert(is_between(at.x, from.x, to.x) && is_between(at.y, from.y, to.y));
		ck_assert(i == 0 || apart(at, from) > apart(fencing->posts[along[i - 1]].at, from));
	}
	return found;
}

static void check_along(const struct fencing *fencing)
{
	int at = 0, gate = 0, met = 0;

	for (int leg = 0; leg <= fencing->leg_count; leg++) {
		while (gate < fencing->gate_count && fencing->gates[gate].legs_before == leg) {
			at += check_line(fencing, fencing->along + at, fencing->gates[gate].from,
				fencing->gates[gate].to);
			gate++;
		}
		if (leg < fencing->leg_count)
			at += check_line(fencing, fencing->along + at, fencing->legs[leg].from,
				fencing->legs[leg].to);
	}
	for (int i = 0; i < at; i++) {
		ck_assert_int_le(fencing->along[i], met);
		met += fencing->along[i] == met;
	}
	ck_assert_int_eq(met, fencing->post_count);
}

START_TEST(posts_along_a_fence_are_those_on_each_line_in_turn)
{
	struct random random = { (uint64_t)_i };

	ground(random_between(&random, 3, 40), random_between(&random, 3, 40));
	fences_at_random(&garden.plot, &random);
	garden_count(&garden);
	for (int i = 0; i < garden.takeoff.fences.count; i++)
		check_along(&garden.takeoff.fences.list[i]);
}
END_TEST

/* ---- Holes ----------------------------------------------------------------------------------- */

static const struct post_hole *hole(const char *across, const char *in_ground, const char *gravel)
{
	ground(20, 20);
	run("0,5 20,5");
	set(FENCE_HOLE, across);
	set(FENCE_DEPTH, in_ground);
	set(FENCE_GRAVEL, gravel);
	return &only_fence()->hole;
}

/* By arithmetic: 5 x 5 x pi x 30 in3, less 3 1/2 x 3 1/2 x 30 in3. */
START_TEST(a_hole_of_10_by_30_in_is_1_36_cu_ft_and_takes_1_15_of_concrete_round_a_post)
{
	const struct post_hole *dug = hole("10 in", "30 in", "0 in");

	ck_assert_double_eq_tol(dug->spoil / CUBIC_FOOT, 1.36, 0.005);
	ck_assert_double_eq_tol(dug->concrete / CUBIC_FOOT, 1.15, 0.005);
	ck_assert_double_eq(dug->gravel, 0);
}
END_TEST

/* By arithmetic a pier of 12 in, 3 ft deep, is 2.36 cu ft. */
START_TEST(a_hole_of_12_in_by_3_ft_is_2_36_cu_ft)
{
	const struct post_hole *dug = hole("12 in", "30 in", "6 in");

	ck_assert_int_eq(dug->depth, 36 * INCH);
	ck_assert_double_eq_tol(dug->spoil / CUBIC_FOOT, 2.36, 0.005);
	ck_assert_double_eq_tol(dug->gravel / CUBIC_FOOT, 2.36 / 6, 0.005);
}
END_TEST

/* How many bags a post takes has no published source: by arithmetic for 1.15 cu ft 1.92 of 80 lb,
 * which yield 0.6 cu ft, and of others that yield a quarter four times 1.15. */
START_TEST(bags_of_a_hole_go_by_what_a_bag_yields)
{
	const struct post_hole *dug = hole("10 in", "30 in", "0 in");

	ck_assert_double_eq_tol(dug->bags, 1.92, 0.005);
	plot_set(&garden.plot, 0, ALLOW_CONCRETE_BAG, "0.25 cu ft");
	ck_assert_double_eq_tol(only_fence()->hole.bags, 4 * 1.15, 0.02);
}
END_TEST

/* Three post widths across where it is set in concrete: common practice, no published source. */
START_TEST(a_hole_is_three_posts_across_unless_the_fence_says_otherwise)
{
	ground(20, 20);
	run("0,5 20,5");
	set(FENCE_POST, "5 1/2 in");
	ck_assert_int_eq(only_fence()->hole.across, 33 * INCH / 2);
	ck_assert_int_eq(only_fence()->gate_hole.across, 33 * INCH / 2);
	set(FENCE_HOLE, "14 in");
	ck_assert_int_eq(only_fence()->hole.across, 14 * INCH);
	ck_assert_int_eq(only_fence()->gate_hole.across, 14 * INCH);
}
END_TEST

/* Posts of 3 1/2 in, at gates of 5 1/2 in, whose holes are 16 1/2 in across. Two of those and two
 * others: (213.82 - 30.25) x 24 in3 and (86.59 - 12.25) x 24 in3, twice. */
START_TEST(posts_of_gates_of_another_size_have_holes_of_their_own_as_deep)
{
	const double wide = acos(-1) * 8.25 * 8.25, usual = acos(-1) * 5.25 * 5.25;

	ground(20, 20);
	run("2,5 18,5");
	fences_gate(&garden.plot, "8,5 12,5");
	set(FENCE_GATE_POST, "5 1/2 in");
	set(FENCE_HOLE, "10 1/2 in");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->gate_post, 11 * INCH / 2);
	ck_assert_int_eq(fencing->gate_hole.across, 33 * INCH / 2);
	ck_assert_int_eq(fencing->gate_hole.depth, fencing->hole.depth);
	ck_assert_int_eq(fencing->post_count, 4);
	ck_assert_int_eq(fencing->of_kind[POST_GATE], 2);
	ck_assert_double_eq_tol(fencing->concrete_bags, 2 * ((wide - 30.25) + (usual - 12.25)) *
		24 / 1728 / 0.6, EXACT);
	ck_assert_double_eq_tol(fencing->gravel / CUBIC_FOOT, 2 * (wide + usual) * 6 / 1728, EXACT);
	ck_assert_int_eq(garden.takeoff.earthwork.count, 1);
	ck_assert_double_eq_tol(garden.takeoff.earthwork.rows[0].area / SQUARE_FOOT,
		2 * (wide + usual) / 144, EXACT);
}
END_TEST

/* Sections of 8 ft and wider posts at the gate: 8 ft of leg are an inch too short for a whole one,
 * and the post in the leg stands an inch farther from the gate. */
START_TEST(beside_a_wider_post_of_a_gate_the_others_stand_an_inch_farther_off)
{
	ground(40, 20);
	run("2,5 26,5");
	fences_gate(&garden.plot, "2,5 6,5");
	set(FENCE_GATE_POST, "5 1/2 in");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->legs[0].whole, 1);
	ck_assert_int_eq(fencing->legs[0].cut_count, 2);
	ck_assert_int_eq(fencing->legs[0].cut[0], (8 * FOOT + 47 * INCH) / 2);
	ck_assert_int_eq(fencing->posts[2].at.x, 6 * FOOT + INCH + 8 * FOOT);
	ck_assert_int_eq(fencing->posts[4].at.x, 26 * FOOT);
	ck_assert_int_eq(fencing->gates[0].clear, 85 * INCH / 2);
}
END_TEST

static const struct { const char *units, *height; int rails; } rails[] = {
	{ "imperial", "4 ft", 2 }, { "imperial", "48 1/64 in", 3 },
	{ "metric", "1200 mm", 2 }, { "metric", "1201 mm", 3 },
};

/* Common practice, no published source. Two whole panels: a bracket at each end of each rail. */
START_TEST(a_panel_higher_than_four_feet_has_three_rails)
{
	ground(20, 20);
	plot_set(&garden.plot, 0, HEAD_UNITS, rails[_i].units);
	run("0,5 20,5");
	set(FENCE_SECTION, "10 ft");
	set(FENCE_HEIGHT, rails[_i].height);
	ck_assert_int_eq(only_fence()->rails, rails[_i].rails);
	ck_assert_int_eq(only_fence()->brackets, 2 * 2 * rails[_i].rails);
	set(FENCE_RAILS, "4");
	ck_assert_int_eq(only_fence()->brackets, 2 * 2 * 4);
}
END_TEST

START_TEST(in_a_metric_plot_a_post_goes_down_600_mm)
{
	ground(20, 20);
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	run("0,5 20,5");
	ck_assert_int_eq(only_fence()->hole.in_ground, 600 * NM_PER_MM);
}
END_TEST

/* So a third of a post is in the ground, or more: common practice, no published source. */
static const struct { const char *height, *frost, *depth; int inches; } depths[] = {
	{ "3 ft", "0 in", NULL, 24 }, { "6 ft", "0 in", NULL, 36 }, { "6 ft", "42 in", NULL, 42 },
	{ "6 ft", "30 in", NULL, 36 }, { "3 ft", "0 in", "20 in", 20 },
	{ "6 ft", "42 in", "30 in", 30 },
};

START_TEST(a_post_goes_down_half_the_height_two_feet_or_to_frost_unless_told_otherwise)
{
	ground(20, 20);
	run("0,5 20,5");
	set(FENCE_HEIGHT, depths[_i].height);
	plot_set(&garden.plot, 0, ALLOW_FROST, depths[_i].frost);
	if (depths[_i].depth)
		set(FENCE_DEPTH, depths[_i].depth);
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->hole.in_ground, depths[_i].inches * INCH);
	ck_assert_int_eq(fencing->hole.depth, (depths[_i].inches + 6) * INCH);
}
END_TEST

/* A gap of 2 in and steps of a foot: common practice, no published source. */
static const struct { const char *height, *stock; int needed, bought; } lengths[] = {
	{ "3 ft", "1 ft", 62, 72 }, { "3 ft", "2 ft", 62, 72 }, { "34 in", "1 ft", 60, 60 },
	{ "34 1/64 in", "1 ft", 60, 72 }, { "6 ft", "1 in", 110, 110 },
};

START_TEST(a_post_is_height_gap_and_ground_bought_up_to_a_stock_length)
{
	ground(20, 20);
	run("0,5 20,5");
	set(FENCE_HEIGHT, lengths[_i].height);
	plot_set(&garden.plot, 0, ALLOW_POST_STOCK, lengths[_i].stock);
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->post_length / INCH, lengths[_i].needed);
	ck_assert_int_eq(fencing->post_stock, lengths[_i].bought * INCH);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("posts");
	TCase *how_many = suite_case(suite, "how_many");
	TCase *along = suite_case(suite, "along");
	TCase *holes = suite_case(suite, "holes");

	tcase_add_checked_fixture(how_many, NULL, teardown);
	tcase_add_test(how_many, a_straight_run_of_100_ft_at_8_ft_is_13_panels_and_14_posts);
	tcase_add_test(how_many, a_straight_run_of_10_m_at_1_m_has_11_posts);
	tcase_add_test(how_many, a_fence_of_100_ft_with_posts_10_ft_apart_has_11_posts);
	tcase_add_test(how_many, a_closed_fence_of_24_by_36_ft_at_8_ft_is_16_panels_and_16_posts);
	tcase_add_test(how_many, tees_crossings_and_gates_have_posts_of_their_kind);
	tcase_add_test(how_many,
		posts_stand_a_section_apart_from_the_first_end_and_are_told_along_the_fence);
	tcase_add_test(how_many, a_shared_rest_has_its_post_in_the_middle_of_the_last_two);

	tcase_add_checked_fixture(along, NULL, teardown);
	tcase_add_test(along, each_leg_and_gate_has_its_posts_from_the_first_to_the_last);
	tcase_add_test(along, a_closed_fence_comes_back_to_its_first_post);
	tcase_add_test(along, a_leg_without_panels_has_two_posts_and_one_without_length_none);
	tcase_add_test(along, runs_that_fall_together_share_all_their_posts);
	tcase_add_loop_test(along, posts_along_a_fence_are_those_on_each_line_in_turn, 0, 100);

	tcase_add_checked_fixture(holes, NULL, teardown);
	tcase_add_test(holes,
		a_hole_of_10_by_30_in_is_1_36_cu_ft_and_takes_1_15_of_concrete_round_a_post);
	tcase_add_test(holes, a_hole_of_12_in_by_3_ft_is_2_36_cu_ft);
	tcase_add_test(holes, bags_of_a_hole_go_by_what_a_bag_yields);
	tcase_add_test(holes, a_hole_is_three_posts_across_unless_the_fence_says_otherwise);
	tcase_add_test(holes, posts_of_gates_of_another_size_have_holes_of_their_own_as_deep);
	tcase_add_test(holes, beside_a_wider_post_of_a_gate_the_others_stand_an_inch_farther_off);
	tcase_add_loop_test(holes, a_panel_higher_than_four_feet_has_three_rails, 0,
		sizeof rails / sizeof *rails);
	tcase_add_test(holes, in_a_metric_plot_a_post_goes_down_600_mm);
	tcase_add_loop_test(holes,
		a_post_goes_down_half_the_height_two_feet_or_to_frost_unless_told_otherwise,
		0, sizeof depths / sizeof *depths);
	tcase_add_loop_test(holes, a_post_is_height_gap_and_ground_bought_up_to_a_stock_length, 0,
		sizeof lengths / sizeof *lengths);
	return suite;
}
