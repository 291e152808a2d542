/* Panels between posts, and what they are cut from. */

#include "takeoff/fence/panels.h"

#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <stdlib.h>

#define INCH NM_PER_INCH
#define FOOT NM_PER_FOOT

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* A fence whose posts stand on the grid points themselves. */
static void ground(int columns, int rows)
{
	fences_ground(&garden.plot, columns, rows);
	garden.arena = ARENA_EMPTY;
}

static const struct fencing *only_fence(void)
{
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fences.count, 1);
	return &garden.takeoff.fences.list[0];
}

static void run(const char *points)
{
	fences_run(&garden.plot, points);
	fences_set(&garden.plot, FENCE_INSET, "0 in");
}

/* A leg of a fence of posts 3 1/2 in square, with sections of 8 ft. */
static const struct fencing usual = { .section = 8 * FOOT, .post = INCH * 7 / 2,
	.gate_post = INCH * 7 / 2 };

static struct fence_leg divided(nm length, const struct fencing *fencing, int lead)
{
	struct fence_leg leg = { .length = length };

	panels_divide(&leg, fencing, lead);
	return leg;
}

enum { PANELS_MOST = 8 };

/* Panels in order, 0 after the last. */
static void panels_are(const struct fence_leg *leg, nm section, const nm expected[PANELS_MOST])
{
	struct panel_group groups[PANEL_GROUPS_MOST];
	int count = panels_in_order(leg, section, groups), at = 0;

	for (int i = 0; i < count; i++)
		for (int64_t j = 0; j < groups[i].count; j++, at++) {
			ck_assert_int_lt(at, PANELS_MOST);
			ck_assert_int_eq(groups[i].place, expected[at]);
		}
	ck_assert(at == PANELS_MOST || expected[at] == 0);
}

/* ---- Dividing -------------------------------------------------------------------------------- */

#define WHOLE (8 * FOOT)

/* Reckoned by hand; common practice, no published source. */
static const struct {
	nm length;
	int lead;
	nm panels[PANELS_MOST];
} divisions[] = {
	{ 16 * FOOT, 1, { WHOLE, WHOLE } },
	/* A rest of 4 ft, just half a section. */
	{ 20 * FOOT, 1, { WHOLE, WHOLE, 4 * FOOT } },
	{ 20 * FOOT, -1, { 4 * FOOT, WHOLE, WHOLE } },
	/* Just under half: 8 ft and 3 ft 11 in are 143 in, two of 71 1/2. */
	{ 20 * FOOT - INCH, 1, { WHOLE, INCH * 143 / 2, INCH * 143 / 2 } },
	{ 20 * FOOT - INCH, -1, { INCH * 143 / 2, INCH * 143 / 2, WHOLE } },
	/* 8 ft and 1 ft are two of 4 1/2 ft. */
	{ 9 * FOOT, 1, { FOOT * 9 / 2, FOOT * 9 / 2 } },
	{ 9 * FOOT - 1, 1, { FOOT * 9 / 2, FOOT * 9 / 2 - 1 } },
	{ 9 * FOOT - 1, -1, { FOOT * 9 / 2 - 1, FOOT * 9 / 2 } },
	{ 5 * FOOT, 1, { 5 * FOOT } },
	{ 1 * FOOT, -1, { 1 * FOOT } },
	/* The same from both ends. */
	{ 24 * FOOT, 0, { WHOLE, WHOLE, WHOLE } },
	{ 5 * FOOT, 0, { 5 * FOOT } },
	{ 9 * FOOT, 0, { FOOT * 9 / 2, FOOT * 9 / 2 } },
	{ 17 * FOOT, 0, { FOOT * 9 / 2, WHOLE, FOOT * 9 / 2 } },
	{ 33 * FOOT, 0, { FOOT * 9 / 2, WHOLE, WHOLE, WHOLE, FOOT * 9 / 2 } },
	{ 20 * FOOT, 0, { WHOLE, 4 * FOOT, WHOLE } },
	{ 39 * FOOT, 0, { WHOLE, WHOLE, 7 * FOOT, WHOLE, WHOLE } },
	{ 14 * FOOT, 0, { 7 * FOOT, 7 * FOOT } },
	{ 29 * FOOT, 0, { WHOLE, FOOT * 13 / 2, FOOT * 13 / 2, WHOLE } },
};

START_TEST(whole_sections_come_first_and_the_rest_is_a_panel_or_two_equal_ones)
{
	struct fence_leg leg = divided(divisions[_i].length, &usual, divisions[_i].lead);

	panels_are(&leg, usual.section, divisions[_i].panels);
}
END_TEST

START_TEST(posts_that_touch_have_no_panel_between_them)
{
	ck_assert_int_eq(divided(INCH * 7 / 2, &usual, 1).cut_count, 0);
	ck_assert_int_eq(divided(INCH * 7 / 2 + 1, &usual, 1).cut_count, 1);
	ck_assert_int_eq(divided(0, &usual, 0).cut_count, 0);
}
END_TEST

/* Half a section of 24 in is just a post of 12 in: a panel there would be nothing. */
START_TEST(no_rest_is_so_short_that_only_the_post_is_left)
{
	const struct fencing tight = { .section = 24 * INCH, .post = 12 * INCH,
		.gate_post = 12 * INCH };
	struct fence_leg leg = divided(36 * INCH, &tight, 1);

	panels_are(&leg, tight.section, (const nm[PANELS_MOST]){ 18 * INCH, 18 * INCH });
}
END_TEST

/* Posts of gates 5 1/2 in square take an inch more of the leg than the others, on its side. */
START_TEST(at_a_wider_post_of_a_gate_the_panels_begin_later)
{
	struct fencing fencing = usual;
	struct fence_leg leg = { .length = 16 * FOOT + INCH, .at_gate = { true, false } };

	fencing.gate_post = INCH * 11 / 2;
	panels_divide(&leg, &fencing, 1);
	panels_are(&leg, usual.section, (const nm[PANELS_MOST]){ WHOLE, WHOLE });
	leg.at_gate[1] = true;
	panels_divide(&leg, &fencing, 1);
	panels_are(&leg, usual.section, (const nm[PANELS_MOST]){ WHOLE, 95 * INCH });
	leg.length += INCH;
	panels_divide(&leg, &fencing, 1);
	panels_are(&leg, usual.section, (const nm[PANELS_MOST]){ WHOLE, WHOLE });
	leg.length = INCH * 11 / 2;
	panels_divide(&leg, &fencing, 1);
	ck_assert_int_eq(leg.cut_count + leg.whole, 0);
}
END_TEST

/* All panels of a leg one by one; returns how many. */
static int spread(const struct fence_leg *leg, nm section, nm *panels)
{
	struct panel_group groups[PANEL_GROUPS_MOST];
	int count = panels_in_order(leg, section, groups), at = 0;

	for (int i = 0; i < count; i++)
		for (int64_t j = 0; j < groups[i].count; j++)
			panels[at++] = groups[i].place;
	return at;
}

/* Bays = ceil(L/s): a farm engineering rule of fencing; 100 ft at 8 ft by arithmetic 13. */
START_TEST(panels_are_as_many_as_sections_begun_and_add_up_to_the_leg)
{
	enum { MOST = 200 };
	struct random random = { 11 };

	for (int i = 0; i < 20000; i++) {
		const struct fencing fencing = {
			.post = random_between(&random, 1 * 16, 12 * 16) * INCH / 16,
			.section = random_between(&random, 24 * 16, 236 * 16) * INCH / 16 };
		nm length = random_between(&random, 0, 3000 * 16) * INCH / 16, sum = 0;
		nm panels[MOST], turned[MOST], same[MOST];
		struct fence_leg ahead = divided(length, &fencing, 1);
		struct fence_leg back = divided(length, &fencing, -1);
		struct fence_leg even = divided(length, &fencing, 0);
		int count = spread(&ahead, fencing.section, panels), narrower = 0;

		ck_assert_int_eq(count, length <= fencing.post ? 0 :
			(length + fencing.section - 1) / fencing.section);
		ck_assert_int_eq(spread(&back, fencing.section, turned), count);
		ck_assert_int_eq(spread(&even, fencing.section, same), count);
		for (int j = 0; j < count; j++) {
			sum += panels[j];
			ck_assert_int_eq(turned[count - 1 - j], panels[j]);
			ck_assert_int_le(llabs(same[count - 1 - j] - same[j]), 1);
			ck_assert_int_gt(panels[j], fencing.post);
			ck_assert_int_gt(same[j], fencing.post);
			narrower += panels[j] < fencing.section;
			ck_assert(count == 1 || 2 * panels[j] >= fencing.section);
		}
		ck_assert_int_le(narrower, 2);
		ck_assert(count == 0 || sum == length);
		for (int j = 0; j < count; j++)
			sum -= same[j];
		ck_assert_int_eq(sum, 0);
	}
}
END_TEST

/* ---- Cutting --------------------------------------------------------------------------------- */

/* Two rests of 4 ft: 44 1/2 in each between 3 1/2 in posts, from 92 1/2 in. */
START_TEST(two_short_panels_come_out_of_one)
{
	ground(30, 30);
	run("0,0 20,0 20,20");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->panel, 185 * INCH / 2);
	ck_assert_int_eq(fencing->panels_whole, 4);
	ck_assert_int_eq(fencing->panel_pieces, 2);
	ck_assert_int_eq(fencing->panels_cut, 1);
	ck_assert_int_eq(fencing->cut_count, 1);
	ck_assert_int_eq(fencing->cuts[0].piece_count, 2);
	ck_assert_int_eq(fencing->cuts[0].pieces[0], 89 * INCH / 2);
}
END_TEST

/* 5 ft 3 in less a post is 59 1/2 in: two do not come out of 92 1/2 in. */
START_TEST(two_longer_panels_take_one_each)
{
	ground(60, 60);
	plot_set(&garden.plot, 0, HEAD_CELL, "3 in");
	run("0,0 53,0 53,53");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->panels_whole, 2);
	ck_assert_int_eq(fencing->panels_cut, 2);
}
END_TEST

/* A leg of 5 ft leaves 92 1/2 - 56 1/2 - 1/8 + 1/8 in = 36 in; a gate of 3 ft is a leaf of 31
 * 1/4 in. */
START_TEST(a_leaf_is_made_of_an_offcut_that_is_long_enough)
{
	ground(30, 30);
	run("0,0 8,0");
	fences_gate(&garden.plot, "5,0 8,0");
	fences_set(&garden.plot, FENCE_LEAF_FROM, "offcut");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->leaves_count, 1);
	ck_assert_int_eq(fencing->leaves[0].width, 125 * INCH / 4);
	ck_assert_int_eq(fencing->leaves[0].count, 1);
	ck_assert_int_eq(fencing->leaves[0].from_offcuts, 1);
	ck_assert_int_eq(fencing->panels_cut, 1);
	ck_assert_int_eq(fencing->cuts[0].piece_count, 2);
	ck_assert_int_eq(fencing->cuts[0].pieces[1], 125 * INCH / 4);
}
END_TEST

START_TEST(leaves_are_bought_unless_the_fence_says_otherwise)
{
	ground(30, 30);
	run("0,0 8,0");
	fences_gate(&garden.plot, "5,0 8,0");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->leaves[0].count, 1);
	ck_assert_int_eq(fencing->leaves[0].from_offcuts, 0);
	ck_assert_int_eq(fencing->panels_cut, 1);
	ck_assert_int_eq(fencing->cuts[0].piece_count, 1);
}
END_TEST

START_TEST(no_panel_is_opened_for_a_leaf)
{
	ground(30, 30);
	run("0,0 20,0");
	fences_gate(&garden.plot, "0,0 4,0");
	fences_set(&garden.plot, FENCE_LEAF_FROM, "offcut");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->panels_whole, 2);
	ck_assert_int_eq(fencing->panels_cut, 0);
	ck_assert_int_eq(fencing->leaves[0].from_offcuts, 0);
}
END_TEST

START_TEST(leaves_of_one_width_stand_together_the_widest_first)
{
	ground(40, 40);
	run("0,0 40,0");
	fences_gate(&garden.plot, "0,0 3,0");
	fences_gate(&garden.plot, "6,0 10,0");
	fences_gate(&garden.plot, "12,0 15,0");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->leaves_count, 2);
	ck_assert_int_eq(fencing->leaves[0].count, 1);
	ck_assert_int_eq(fencing->leaves[1].count, 2);
	ck_assert_int_eq(fencing->leaves[0].width - fencing->leaves[1].width, FOOT);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

static void check_cut(const struct fencing *fencing, const struct cut *cut)
{
	nm taken = 0;

	for (int i = 0; i < cut->piece_count; i++)
		taken += cut->pieces[i] - fencing->fit + (i > 0 ? fencing->kerf : 0);
	ck_assert_int_gt(cut->blocks, 0);
	ck_assert_int_le(taken, fencing->panel);
}

START_TEST(every_narrow_panel_and_every_leaf_of_an_offcut_fits_the_panel_it_is_cut_from)
{
	struct random random = { 13 };

	for (int round = 0; round < 300; round++) {
		int64_t pieces = 0, cut_up = 0, leaves = 0;
		const struct fencing *fencing;

		ground(random_between(&random, 4, 60), random_between(&random, 4, 60));
		fences_at_random(&garden.plot, &random);
		if (round % 4 > 0)
			fences_set(&garden.plot, FENCE_LEAF_FROM, "offcut");
		fencing = only_fence();
		for (int i = 0; i < fencing->cut_count; i++) {
			check_cut(fencing, &fencing->cuts[i]);
			pieces += fencing->cuts[i].blocks * fencing->cuts[i].piece_count;
			cut_up += fencing->cuts[i].blocks;
		}
		for (int i = 0; i < fencing->leaves_count; i++) {
			ck_assert_int_le(fencing->leaves[i].from_offcuts, fencing->leaves[i].count);
			leaves += fencing->leaves[i].from_offcuts;
		}
		ck_assert_int_eq(pieces, fencing->panel_pieces + leaves);
		ck_assert_int_eq(cut_up, fencing->panels_cut);
		ck_assert_int_le(fencing->panels_cut, fencing->panel_pieces);
		garden_fini(&garden);
	}
	ground(1, 1);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("panels");
	TCase *dividing = suite_case(suite, "dividing");
	TCase *cutting = suite_case(suite, "cutting");

	tcase_add_loop_test(dividing,
		whole_sections_come_first_and_the_rest_is_a_panel_or_two_equal_ones, 0,
		sizeof divisions / sizeof *divisions);
	tcase_add_test(dividing, posts_that_touch_have_no_panel_between_them);
	tcase_add_test(dividing, no_rest_is_so_short_that_only_the_post_is_left);
	tcase_add_test(dividing, at_a_wider_post_of_a_gate_the_panels_begin_later);
	tcase_add_test(dividing, panels_are_as_many_as_sections_begun_and_add_up_to_the_leg);

	tcase_add_checked_fixture(cutting, NULL, teardown);
	tcase_add_test(cutting, two_short_panels_come_out_of_one);
	tcase_add_test(cutting, two_longer_panels_take_one_each);
	tcase_add_test(cutting, a_leaf_is_made_of_an_offcut_that_is_long_enough);
	tcase_add_test(cutting, leaves_are_bought_unless_the_fence_says_otherwise);
	tcase_add_test(cutting, no_panel_is_opened_for_a_leaf);
	tcase_add_test(cutting, leaves_of_one_width_stand_together_the_widest_first);
	tcase_add_test(cutting,
		every_narrow_panel_and_every_leaf_of_an_offcut_fits_the_panel_it_is_cut_from);
	return suite;
}
