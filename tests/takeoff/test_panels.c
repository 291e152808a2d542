/* Panels between posts, and what they are cut from. */

#include "takeoff/fence/panels.h"

#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

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

static struct fence_leg divided(nm length, nm section, nm post)
{
	struct fence_leg leg = { .length = length };

	panels_divide(&leg, section, post);
	return leg;
}

/* ---- Dividing -------------------------------------------------------------------------------- */

START_TEST(whole_sections_come_first_and_the_rest_is_cut)
{
	struct fence_leg leg = divided(20 * FOOT, 8 * FOOT, INCH * 7 / 2);

	ck_assert_int_eq(leg.whole, 2);
	ck_assert_int_eq(leg.cut_count, 1);
	ck_assert_int_eq(leg.cut[0], 4 * FOOT);
}
END_TEST

/* Common practice, no published source: a sliver under 1 ft is shared. */
START_TEST(a_rest_under_a_foot_is_shared_by_the_last_two)
{
	struct fence_leg leg = divided(17 * FOOT - 1, 8 * FOOT, INCH * 7 / 2);

	ck_assert_int_eq(leg.whole, 1);
	ck_assert_int_eq(leg.cut_count, 2);
	ck_assert_int_eq(leg.cut[0] + leg.cut[1], 9 * FOOT - 1);
	ck_assert_int_eq(leg.cut[0] - leg.cut[1], 1);
}
END_TEST

START_TEST(a_rest_of_a_foot_is_a_panel_of_its_own)
{
	struct fence_leg leg = divided(17 * FOOT, 8 * FOOT, INCH * 7 / 2);

	ck_assert_int_eq(leg.whole, 2);
	ck_assert_int_eq(leg.cut_count, 1);
	ck_assert_int_eq(leg.cut[0], FOOT);
}
END_TEST

START_TEST(a_leg_shorter_than_a_section_is_one_panel_however_short)
{
	struct fence_leg leg = divided(8 * INCH, 8 * FOOT, INCH * 7 / 2);

	ck_assert_int_eq(leg.whole, 0);
	ck_assert_int_eq(leg.cut_count, 1);
	ck_assert_int_eq(leg.cut[0], 8 * INCH);
}
END_TEST

START_TEST(posts_that_touch_have_no_panel_between_them)
{
	ck_assert_int_eq(divided(INCH * 7 / 2, 8 * FOOT, INCH * 7 / 2).cut_count, 0);
	ck_assert_int_eq(divided(INCH * 7 / 2 + 1, 8 * FOOT, INCH * 7 / 2).cut_count, 1);
	ck_assert_int_eq(divided(0, 8 * FOOT, INCH * 7 / 2).cut_count, 0);
}
END_TEST

/* Bays = ceil(L/s): a farm engineering rule of fencing; 100 ft at 8 ft by arithmetic 13. */
START_TEST(panels_are_as_many_as_sections_begun_and_add_up_to_the_leg)
{
	struct random random = { 11 };

	for (int i = 0; i < 20000; i++) {
		nm post = random_between(&random, 1 * 16, 12 * 16) * INCH / 16;
		nm section = random_between(&random, 24 * 16, 236 * 16) * INCH / 16;
		nm length = random_between(&random, 0, 3000 * 16) * INCH / 16;
		struct fence_leg leg = divided(length, section, post);
		int64_t panels = leg.whole + leg.cut_count;
		nm sum = leg.whole * section;

		for (int j = 0; j < leg.cut_count; j++) {
			sum += leg.cut[j];
			ck_assert(leg.cut[j] > post || leg.whole + leg.cut_count == 0);
			ck_assert_int_lt(leg.cut[j], section);
			ck_assert(leg.cut[j] >= FOOT || panels == 1);
		}
		if (length <= post) {
			ck_assert_int_eq(panels, 0);
			continue;
		}
		ck_assert_int_eq(panels, (length + section - 1) / section);
		ck_assert_int_eq(sum, length);
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

START_TEST(no_panel_is_opened_for_a_leaf)
{
	ground(30, 30);
	run("0,0 20,0");
	fences_gate(&garden.plot, "0,0 4,0");
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

	tcase_add_test(dividing, whole_sections_come_first_and_the_rest_is_cut);
	tcase_add_test(dividing, a_rest_under_a_foot_is_shared_by_the_last_two);
	tcase_add_test(dividing, a_rest_of_a_foot_is_a_panel_of_its_own);
	tcase_add_test(dividing, a_leg_shorter_than_a_section_is_one_panel_however_short);
	tcase_add_test(dividing, posts_that_touch_have_no_panel_between_them);
	tcase_add_test(dividing, panels_are_as_many_as_sections_begun_and_add_up_to_the_leg);

	tcase_add_checked_fixture(cutting, NULL, teardown);
	tcase_add_test(cutting, two_short_panels_come_out_of_one);
	tcase_add_test(cutting, two_longer_panels_take_one_each);
	tcase_add_test(cutting, a_leaf_is_made_of_an_offcut_that_is_long_enough);
	tcase_add_test(cutting, no_panel_is_opened_for_a_leaf);
	tcase_add_test(cutting, leaves_of_one_width_stand_together_the_widest_first);
	tcase_add_test(cutting,
		every_narrow_panel_and_every_leaf_of_an_offcut_fits_the_panel_it_is_cut_from);
	return suite;
}
