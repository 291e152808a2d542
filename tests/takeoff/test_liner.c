/* Liner inside raised beds, and the rolls it is cut from. */
#include "support/beds.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>

enum { RANDOM_PLOTS = 150 };

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct liners *liners(void)
{
	garden_count(&garden);
	return &garden.takeoff.liners;
}

static void allow(enum attribute attribute, const char *value)
{
	plot_set(&garden.plot, 0, attribute, value);
}

/* Blocks 16 x 8 x 6 in leave 6 2/3 x 2 2/3 ft inside 8 x 4 ft, 18 2/3 ft round. Soil at the wall:
 * 18 in less 1 1/2 and 2 in, down to the base past the wall; 6 in turned under. */
START_TEST(a_liner_goes_round_the_inner_face_as_high_as_the_soil_and_its_turn)
{
	garden_rectangle(&garden, 'b', 8, 4);
	ck_assert_int_eq(liners()->count, 1);
	const struct liner *liner = &garden.takeoff.liners.list[0];

	ck_assert_int_eq(liner->length, 224 * NM_PER_INCH);
	ck_assert_double_eq((double)liner->height, 20.5 * (double)NM_PER_INCH);
	ck_assert_double_eq_tol(liner->area / SQUARE_FOOT, 224.0 * 20.5 / 144, EXACT);
	allow(ALLOW_LINER_TURN, "0 in");
	ck_assert_double_eq((double)liners()->list[0].height, 14.5 * (double)NM_PER_INCH);
}
END_TEST

/* Without a base past the wall soil starts at undug ground, 2 in higher; filled from the base's top
 * it is as deep everywhere. */
START_TEST(it_is_no_higher_than_the_soil_at_the_wall)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_REACH_IN, "0 in");
	ck_assert_double_eq((double)liners()->list[0].height, 18.5 * (double)NM_PER_INCH);
	plot_set(&garden.plot, 'b', BED_INSIDE, "filled");
	ck_assert_double_eq((double)liners()->list[0].height, 20.5 * (double)NM_PER_INCH);
	plot_set(&garden.plot, 'b', BED_REACH_IN, "2 in");
	ck_assert_double_eq((double)liners()->list[0].height, 20.5 * (double)NM_PER_INCH);
}
END_TEST

/* ---- Rolls ----------------------------------------------------------------------------------- */

static void check_cut(int index, int64_t pieces, double high, double inches)
{
	const struct liner_cut *cut = &garden.takeoff.liners.cuts[index];

	ck_assert_int_lt(index, garden.takeoff.liners.cut_count);
	ck_assert_int_eq(cut->pieces, pieces);
	ck_assert_double_eq((double)cut->height, high * (double)NM_PER_INCH);
	ck_assert_double_eq((double)cut->length, inches * (double)NM_PER_INCH);
}

/* Of 9 x 5 ft less 4 x 2 ft: 28 ft round, 5 1/3 ft less at the inner face. */
static void four_ells(void)
{
	garden_rows(&garden, (const char *const[]){ "bbbbbbbbb.bbbbbbbbb.bbbbbbbbb.bbbbbbbbb",
		"bbbbbbbbb.bbbbbbbbb.bbbbbbbbb.bbbbbbbbb",
		"bbbbbbbbb.bbbbbbbbb.bbbbbbbbb.bbbbbbbbb",
		"bbbbb.....bbbbb.....bbbbb.....bbbbb....",
		"bbbbb.....bbbbb.....bbbbb.....bbbbb....", NULL });
	plot_set(&garden.plot, 'b', BED_EMBED, "2 in");
}

/* Strips of 22 ft 8 in and 12 in of lap, 20 1/2 in high, round four beds: two side by side out of 4
 * ft, two one after the other out of 50 ft. */
START_TEST(strips_come_side_by_side_and_one_after_another_out_of_a_roll)
{
	four_ells();
	ck_assert_int_eq(liners()->rolls, 1);
	check_cut(0, 4, 20.5, 23 * 12 + 8);
	ck_assert_int_eq(garden.takeoff.liners.cut_count, 1);
	ck_assert_int_eq(garden.takeoff.liners.joins, 0);
	ck_assert_double_eq_tol(garden.takeoff.liners.used, 4 * 284 * 20.5 / (48 * 600), EXACT);
	const struct item *item = garden_item(&garden, "liner");

	ck_assert_double_eq_tol(item->laid / SQUARE_FOOT, 4 * 284 * 20.5 / 144, EXACT);
	ck_assert_double_eq_tol(item->order / SQUARE_FOOT, 200, EXACT);
	ck_assert_double_eq_tol(item->laid + item->spare, item->order, EXACT);
	ck_assert_int_eq(item_unit(item), UNIT_M2);
	ck_assert_int_eq(item->section, SECTION_STONE);
	ck_assert_str_eq(garden_note(&garden, item), "1 roll of 4 ft x 50 ft");
}
END_TEST

/* The same four strips of 23 ft 8 in x 20 1/2 in from rolls of 150 sq ft: 3 ft wide one lies
 * across, two come out of 50 ft; 37 1/2 ft gives one, twice across 4 ft; 25 ft one, three across 6
 * ft. */
static const struct { const char *width, *length; int rolls; } shapes[] = {
	{ "3 ft", "50 ft", 2 }, { "4 ft", "37 ft 6 in", 2 }, { "6 ft", "25 ft", 2 },
	{ "20 1/2 in", "23 ft 8 in", 4 }, { "41 in", "23 ft 8 in", 2 },
	{ "40 63/64 in", "23 ft 8 in", 4 }, { "41 in", "47 ft 4 in", 1 },
	{ "41 in", "47 ft 3 63/64 in", 2 },
};

START_TEST(rolls_are_counted_by_the_strips_that_come_out_of_them)
{
	four_ells();
	allow(ALLOW_LINER_WIDTH, shapes[_i].width);
	allow(ALLOW_LINER_LENGTH, shapes[_i].length);
	ck_assert_int_eq(liners()->rolls, shapes[_i].rolls);
}
END_TEST

/* One strip 48 in high and 19 ft 8 in long leaves 30 ft of a roll for two of 20 1/2 in, side by
 * side; slit into heights, each would take a roll of its own. */
START_TEST(lengths_are_cut_across_where_that_takes_fewer_rolls)
{
	garden_rows(&garden, (const char *const[]){ "aaaaaaaa.bbbbbbbb.bbbbbbbb",
		"aaaaaaaa.bbbbbbbb.bbbbbbbb", "aaaaaaaa.bbbbbbbb.bbbbbbbb",
		"aaaaaaaa.bbbbbbbb.bbbbbbbb", NULL });
	plot_set(&garden.plot, 'a', BED_COURSES, "7");
	plot_set(&garden.plot, 'a', BED_FREEBOARD, "0 in");
	plot_set(&garden.plot, 'a', BED_MULCH, "0 in");
	ck_assert_int_eq(liners()->rolls, 1);
	ck_assert_int_eq(garden.takeoff.liners.way, LINER_ACROSS);
	check_cut(0, 1, 48, 236);
	check_cut(1, 2, 20.5, 236);
}
END_TEST

/* Beside a strip of 35 ft 8 in lie one of 19 ft 8 in and one of 15 ft 8 in, one after the other.
 * Cut across, only the longer one of them lies beside it. */
START_TEST(rolls_are_slit_where_that_takes_fewer)
{
	garden_rows(&garden, (const char *const[]){ "aaaaaaaaaaaaaaaa", "aaaaaaaaaaaaaaaa",
		"aaaaaaaaaaaaaaaa", "aaaaaaaaaaaaaaaa", "................",
		"bbbbbbbb.bbbbbb.", "bbbbbbbb.bbbbbb.", "bbbbbbbb.bbbbbb.",
		"bbbbbbbb.bbbbbb.", NULL });
	allow(ALLOW_LINER_WIDTH, "41 in");
	allow(ALLOW_LINER_LENGTH, "36 ft");
	ck_assert_int_eq(liners()->rolls, 1);
	ck_assert_int_eq(garden.takeoff.liners.way, LINER_SLIT);
	check_cut(0, 1, 20.5, 34 * 12 + 8 + 12);
	check_cut(1, 1, 20.5, 236);
	check_cut(2, 1, 20.5, 188);
}
END_TEST

/* One strip 24 in high and 236 in long, three of 20 1/2 in and 428 in. Two of these or one of each
 * lie side by side, in twice 428 in: 700 in are too short for both. */
START_TEST(a_length_is_as_long_as_the_longest_piece_in_it)
{
	garden_rows(&garden, (const char *const[]){ "aaaaaaaa.bbbbbbbbbbbbbbbb........",
		"aaaaaaaa.bbbbbbbbbbbbbbbb........",
		"aaaaaaaa.bbbbbbbbbbbbbbbb........",
		"aaaaaaaa.bbbbbbbbbbbbbbbb........",
		".................................",
		"bbbbbbbbbbbbbbbb.bbbbbbbbbbbbbbbb",
		"bbbbbbbbbbbbbbbb.bbbbbbbbbbbbbbbb",
		"bbbbbbbbbbbbbbbb.bbbbbbbbbbbbbbbb",
		"bbbbbbbbbbbbbbbb.bbbbbbbbbbbbbbbb", NULL });
	plot_set(&garden.plot, 'a', BED_FREEBOARD, "0 in");
	plot_set(&garden.plot, 'a', BED_MULCH, "0 in");
	allow(ALLOW_LINER_WIDTH, "44 1/2 in");
	allow(ALLOW_LINER_LENGTH, "700 in");
	ck_assert_int_eq(liners()->rolls, 2);
	check_cut(0, 1, 24, 236);
	check_cut(1, 3, 20.5, 428);
}
END_TEST

/* 18 ft 8 in and 1 ft of lap from rolls of 10 ft: 10 ft, and 10 ft 8 in more with a lap: 10 ft and
 * 1 ft 8 in with another. */
START_TEST(a_strip_longer_than_a_roll_is_joined_with_laps)
{
	garden_rectangle(&garden, 'b', 8, 4);
	allow(ALLOW_LINER_LENGTH, "10 ft");
	ck_assert_int_eq(liners()->joins, 2);
	check_cut(0, 2, 20.5, 120);
	check_cut(1, 1, 20.5, 20);
	/* 20 1/2 in twice across 4 ft. */
	ck_assert_int_eq(garden.takeoff.liners.rolls, 2);
}
END_TEST

/* 10 courses: 60 less 1 1/2 and 2 in, and 6 in: 62 1/2 in; with a lap 48 and 26 1/2 in. */
START_TEST(a_strip_higher_than_a_roll_is_wide_lies_in_two_with_a_lap)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_COURSES, "10");
	ck_assert_int_eq(liners()->joins, 1);
	check_cut(0, 1, 48, 236);
	check_cut(1, 1, 26.5, 236);
	/* One after the other, 39 ft 4 in. */
	ck_assert_int_eq(garden.takeoff.liners.rolls, 1);
}
END_TEST

START_TEST(a_ring_is_lined_along_both_its_walls)
{
	garden_rows(&garden, (const char *const[]){ "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb",
		"bbb...bbb", "bbb...bbb", "bbb...bbb", "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb",
		NULL });
	garden_count(&garden);
	/* Outer 36 ft less 8 x 8 in, inner 12 ft and 8 x 8 in; each closes with its own lap. */
	ck_assert_int_eq(garden.takeoff.liners.list[0].length, 48 * NM_PER_FOOT);
	ck_assert_int_eq(garden.takeoff.liners.cut_count, 2);
	check_cut(0, 1, 20.5, 36 * 12 - 64 + 12);
	check_cut(1, 1, 20.5, 12 * 12 + 64 + 12);
}
END_TEST

START_TEST(beds_that_say_no_have_no_soil_or_no_wall_have_no_liner)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_LINER, "no");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.liners.count, 0);
	plot_set(&garden.plot, 'b', BED_LINER, "yes");
	plot_set(&garden.plot, 'b', BED_FREEBOARD, "20 in");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.liners.count, 0);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.liners.count, 0);
	ck_assert_int_eq(garden.takeoff.liners.rolls, 0);
	ck_assert_ptr_null(garden_item(&garden, "liner"));
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

/* Beds at random: every strip is as long as its loop and laps, no fewer rolls than their area
 * takes, and never more than one for each piece. */
START_TEST(pieces_go_round_every_loop_and_rolls_hold_them)
{
	static const char *const lengths[] = { "50 ft", "9 ft", "3 m" };
	struct random random = { (uint64_t)_i };
	nm round = 0, laid = 0;
	int64_t strips = 0, pieces = 0;

	garden = (struct garden){ .arena = ARENA_EMPTY };
	beds_at_random(&garden.plot, &random, 3, 3);
	allow(ALLOW_LINER_LENGTH, lengths[random_below(&random, 3)]);
	allow(ALLOW_LINER_WIDTH, random_below(&random, 2) ? "4 ft" : "2 ft");
	const struct liners *all = liners();

	for (int i = 0; i < all->count; i++) {
		round += all->list[i].length;
		strips += region_holes(&garden.takeoff.survey.regions[all->list[i].region]) + 1;
		ck_assert_int_le(all->list[i].height, all->width);
	}
	for (int i = 0; i < all->cut_count; i++) {
		laid += all->cuts[i].pieces * all->cuts[i].length;
		pieces += all->cuts[i].pieces;
		ck_assert_int_le(all->cuts[i].length, all->roll);
	}
	ck_assert_int_eq(pieces, strips + all->joins);
	ck_assert_int_eq(laid, round + (strips + all->joins) * all->lap);
	ck_assert_int_ge(all->rolls, (int64_t)ceil(all->used - EXACT));
	ck_assert_int_le(all->rolls, pieces);
}
END_TEST

#define ROWS(table) (int)(sizeof(table) / sizeof *(table))

Suite *test_suite(void)
{
	Suite *suite = suite_create("liner");
	TCase *liners = suite_case(suite, "liners"), *rolls = suite_case(suite, "rolls");

	tcase_add_checked_fixture(liners, NULL, teardown);
	tcase_add_test(liners, a_liner_goes_round_the_inner_face_as_high_as_the_soil_and_its_turn);
	tcase_add_test(liners, it_is_no_higher_than_the_soil_at_the_wall);
	tcase_add_test(liners, a_ring_is_lined_along_both_its_walls);
	tcase_add_test(liners, beds_that_say_no_have_no_soil_or_no_wall_have_no_liner);
	tcase_add_checked_fixture(rolls, NULL, teardown);
	tcase_add_test(rolls, strips_come_side_by_side_and_one_after_another_out_of_a_roll);
	tcase_add_loop_test(rolls, rolls_are_counted_by_the_strips_that_come_out_of_them, 0,
		ROWS(shapes));
	tcase_add_test(rolls, lengths_are_cut_across_where_that_takes_fewer_rolls);
	tcase_add_test(rolls, rolls_are_slit_where_that_takes_fewer);
	tcase_add_test(rolls, a_length_is_as_long_as_the_longest_piece_in_it);
	tcase_add_test(rolls, a_strip_longer_than_a_roll_is_joined_with_laps);
	tcase_add_test(rolls, a_strip_higher_than_a_roll_is_wide_lies_in_two_with_a_lap);
	tcase_add_loop_test(rolls, pieces_go_round_every_loop_and_rolls_hold_them, 0, RANDOM_PLOTS);
	return suite;
}
