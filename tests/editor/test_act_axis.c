/* The mirror's axis set at the cursor, and its faults one after the other, without a terminal. */

#include "support/desk.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/random.h"
#include "support/runner.h"

#include <stdio.h>
#include <string.h>

#define ROWS (const char *[])

static void go(struct desk *b, int x, int y)
{
	b->editor.cursor = (struct place){ x, y };
}

static void check_axis(const struct desk *b, int across, int down)
{
	const struct value *axis = block_value(&b->editor.plot->details.head, HEAD_AXIS);

	ck_assert(axis->set);
	ck_assert_int_eq(axis->as.place.x, across);
	ck_assert_int_eq(axis->as.place.y, down);
	plot_check(b->editor.plot);
}

/* ---- The axis -------------------------------------------------------------------------------- */

struct setting {
	const char *answer;
	int across, down;
};

/* In half cells from the datum, with the cursor on 4,2 of 7 by 5: the other axis stays in the
 * middle. */
static const struct setting settings[] = {
	{ "Upright, on this cell's left edge", 8, 5 }, { "Upright, through this cell", 9, 5 },
	{ "Level, on this cell's top edge", 7, 4 },    { "Level, through this cell", 7, 5 },
};

static struct desk *sit(void)
{
	return desk_new(ROWS { "bb.....", ".......", ".......", ".......", ".......", NULL });
}

START_TEST(an_axis_stands_on_the_cells_edge_or_goes_through_it_in_one_step)
{
	const struct setting *setting = &settings[_i];
	struct desk *b = sit();

	desk_answer(b, ROWS { setting->answer, NULL });
	go(b, 4, 2);
	desk_do(b, ACT_AXIS);
	ck_assert_str_eq(b->offered, "Upright, on this cell's left edge: 4 ft\n"
		"Upright, through this cell: 4 ft 6 in\nLevel, on this cell's top edge: 2 ft\n"
		"Level, through this cell: 2 ft 6 in\nBoth in the middle: \n");
	check_axis(b, setting->across, setting->down);
	desk_says(b, "mirror is off");
	ck_assert_uint_eq(history_undo_count(b->editor.history), 1);
	desk_press(b, PRESS_BACKSPACE);
	ck_assert(!block_value(&b->editor.plot->details.head, HEAD_AXIS)->set);
	desk_free(b);
}
END_TEST

START_TEST(both_axes_are_set_one_by_one_and_go_back_to_the_middle_together)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Upright, through this cell", "Level, on this cell's top edge",
		"Level, on this cell's top edge", "Both in the middle", "Both in the middle",
		NULL });
	go(b, 1, 4);
	desk_do(b, ACT_AXIS);
	desk_do(b, ACT_AXIS);
	check_axis(b, 3, 8);
	desk_do(b, ACT_AXIS);
	desk_says_whole(b, "It stands there already.");
	desk_do(b, ACT_AXIS);
	ck_assert(!block_value(&b->editor.plot->details.head, HEAD_AXIS)->set);
	desk_says(b, "middle");
	ck_assert_uint_eq(history_undo_count(b->editor.history), 3);
	desk_do(b, ACT_AXIS);
	desk_says_whole(b, "It stands there already.");
	desk_free(b);
}
END_TEST

START_TEST(an_axis_on_the_plans_edge_is_refused_and_one_through_its_last_cell_is_not)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Upright, on this cell's left edge", "Level, on this cell's top edge",
		"", "Upright, through this cell", "Level, through this cell", NULL });
	desk_do(b, ACT_AXIS);
	desk_says_whole(b, "The axis cannot stand on the plan's edge: go right by a cell.");
	desk_do(b, ACT_AXIS);
	desk_says_whole(b, "The axis cannot stand on the plan's edge: go down by a cell.");
	desk_do(b, ACT_AXIS);
	ck_assert(!block_value(&b->editor.plot->details.head, HEAD_AXIS)->set);
	ck_assert(editor_is_saved(&b->editor));
	go(b, 6, 4);
	desk_do(b, ACT_AXIS);
	desk_do(b, ACT_AXIS);
	check_axis(b, 13, 9);
	desk_free(b);
}
END_TEST

START_TEST(an_axis_that_was_moved_says_what_it_broke_or_that_both_sides_match)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Upright, on this cell's left edge", "Upright, through this cell",
		NULL });
	desk_type(b, "|");
	go(b, 1, 0);
	desk_do(b, ACT_AXIS);
	ck_assert_int_eq(b->editor.faults, 0);
	desk_says_whole(b, "The upright axis stands here. Both sides match.");
	desk_do(b, ACT_AXIS);
	ck_assert_int_eq(b->editor.faults, 1);
	desk_says_whole(b, "The upright axis stands here. Now 1 cell differs from its image.");
	desk_free(b);
}
END_TEST

/* ---- Faults ---------------------------------------------------------------------------------- */

START_TEST(faults_are_gone_to_in_reading_order_and_round_again)
{
	struct desk *b = desk_new(ROWS { "b..p", "....", ".p..", "bbpb", NULL });

	desk_type(b, "'");
	desk_says(b, "mirror is off");
	desk_type(b, "|");
	desk_type(b, "'"); /* the cursor is on the first */
	ck_assert(b->editor.cursor.x == 1 && b->editor.cursor.y == 2);
	ck_assert_int_eq(b->editor.faults, 3);
	desk_says_whole(b, "3 faults. Here is p p; its image at 2 ft across, 2 ft down is . open "
		"ground.");
	desk_type(b, "'");
	ck_assert(b->editor.cursor.x == 1 && b->editor.cursor.y == 3);
	desk_says_whole(b, "3 faults. Here is b b; its image at 2 ft across, 3 ft down is p p.");
	desk_type(b, "'");
	ck_assert(b->editor.cursor.x == 0 && b->editor.cursor.y == 0);
	desk_says_whole(b, "3 faults. Here is b b; its image at 3 ft across, 0 in down is p p.");
	go(b, 3, 3);
	desk_type(b, "'");
	ck_assert(b->editor.cursor.x == 0 && b->editor.cursor.y == 0);
	ck_assert_uint_eq(history_undo_count(b->editor.history), 1);
	desk_free(b);
}
END_TEST

START_TEST(of_a_four_way_mirror_each_image_that_disagrees_is_named)
{
	struct desk *b = desk_new(ROWS { "b..b", "....", "p...", NULL });

	desk_type(b, "|-'");
	ck_assert(b->editor.cursor.x == 0 && b->editor.cursor.y == 0);
	ck_assert_int_eq(b->editor.faults, 1);
	desk_says_whole(b, "1 fault, here: b b; its image at 0 in across, 2 ft down is p p; its "
		"image at 3 ft across, 2 ft down is . open ground.");
	desk_free(b);
}
END_TEST

START_TEST(where_both_sides_match_there_is_no_fault_to_go_to)
{
	struct desk *b = desk_new(ROWS { "b..b", NULL });

	desk_type(b, "|'");
	desk_says_whole(b, "Both sides match: there is no fault.");
	ck_assert(b->editor.cursor.x == 0);
	desk_free(b);
}
END_TEST

START_TEST(walking_meets_every_fault_once)
{
	for (uint64_t seed = 0; seed < 200; seed++) {
		struct random r = { seed };
		struct desk *b = desk_new(ROWS { "bp", NULL });
		bool met[20][20] = { { false } };
		struct plot plot;
		int64_t faults;

		plot_at_random(&plot, &r, 20, ".bp");
		plot_set(&plot, 0, HEAD_MIRROR, (const char *[]){ "left-right", "top-bottom",
			"four-way", "half-turn" }[seed % 4]);
		editor_take(&b->editor, &plot, true);
		desk_refresh(b);
		faults = b->editor.faults;
		go(b, random_below(&r, b->editor.plot->ground.columns),
			random_below(&r, b->editor.plot->ground.rows));
		for (int64_t i = 0; i < faults; i++) {
			struct mirror mirror = mirror_of(b->editor.plot);
			struct place at;

			desk_type(b, "'");
			at = b->editor.cursor;
			ck_assert(mirror_is_broken(&mirror, &b->editor.plot->ground, at.x, at.y));
			ck_assert_msg(!met[at.y][at.x], "seed %d meets %d,%d twice", (int)seed,
				at.x, at.y);
			met[at.y][at.x] = true;
		}
		desk_free(b);
	}
}
END_TEST

START_TEST(axis_and_next_fault_are_in_the_list_by_name)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Axis", "Upright, through this cell", "Next fault", NULL });
	desk_type(b, "|!!");
	check_axis(b, 1, 5);
	desk_says(b, "there is no fault"); /* all images are outside */
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_axis");
	TCase *axis = suite_case(suite, "axis"), *faults = suite_case(suite, "faults");

	tcase_add_loop_test(axis, an_axis_stands_on_the_cells_edge_or_goes_through_it_in_one_step,
		0, sizeof settings / sizeof *settings);
	tcase_add_test(axis, both_axes_are_set_one_by_one_and_go_back_to_the_middle_together);
	tcase_add_test(axis,
		an_axis_on_the_plans_edge_is_refused_and_one_through_its_last_cell_is_not);
	tcase_add_test(axis, an_axis_that_was_moved_says_what_it_broke_or_that_both_sides_match);
	tcase_add_test(faults, faults_are_gone_to_in_reading_order_and_round_again);
	tcase_add_test(faults, of_a_four_way_mirror_each_image_that_disagrees_is_named);
	tcase_add_test(faults, where_both_sides_match_there_is_no_fault_to_go_to);
	tcase_add_test(faults, walking_meets_every_fault_once);
	tcase_add_test(faults, axis_and_next_fault_are_in_the_list_by_name);
	return suite;
}
