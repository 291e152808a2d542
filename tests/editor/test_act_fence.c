/* Fences drawn in without a terminal: along what, which of them, in the mirror; and what the
 * cells then say. */

#include "support/desk.h"
#include "support/fences.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include "base/memory.h"
#include "editor/here.h"

#include <stdlib.h>
#include <string.h>

#define ROWS (const char *[])

static struct desk *sit(void)
{
	return desk_new(ROWS { "bp.....", ".......", ".......", ".......", ".......", NULL });
}

static const struct fence *fence_at(const struct desk *b, size_t i)
{
	ck_assert_uint_gt(b->editor.plot->details.fence_count, i);
	return &b->editor.plot->details.fences[i];
}

static void peg(struct desk *b, struct place from, struct place to)
{
	b->editor.cursor = from;
	desk_press(b, PRESS_ENTER);
	b->editor.cursor = to;
}

START_TEST(a_pegged_rectangle_is_fenced_all_round_by_a_first_fence)
{
	struct desk *b = sit();

	peg(b, (struct place){ 5, 3 }, (struct place){ 2, 1 });
	desk_answer(b, ROWS { "Fence ...", "Lay a fence", "All round", NULL });
	desk_press(b, PRESS_ENTER);
	desk_asked_whole(b, "Lay a fence along which side?");
	ck_assert_str_eq(b->offered, "All round: 14 ft\nTop: 4 ft\nBottom: 4 ft\nLeft: 3 ft\n"
		"Right: 3 ft\n");
	ck_assert_str_eq(fence_at(b, 0)->name, "Fence");
	fence_is(fence_at(b, 0), "2,1 6,1 6,4 2,4 2,1", "");
	desk_says_whole(b, "Fence: 14 ft laid; Backspace takes it back.");
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	plot_check(b->editor.plot);
	desk_press(b, PRESS_BACKSPACE);
	ck_assert_uint_eq(b->editor.plot->details.fence_count, 0);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

static const struct {
	const char *side, *run;
} sides[] = {
	{ "Top", "2,1 6,1" }, { "Bottom", "2,4 6,4" }, { "Left", "2,1 2,4" },
	{ "Right", "6,1 6,4" },
};

START_TEST(each_side_of_what_is_meant_can_be_fenced)
{
	struct desk *b = sit();

	peg(b, (struct place){ 2, 1 }, (struct place){ 5, 3 });
	desk_answer(b, ROWS { "Lay a fence", sides[_i].side, NULL });
	desk_type(b, ":");
	fence_is(fence_at(b, 0), sides[_i].run, "");
	desk_free(b);
}
END_TEST

START_TEST(without_a_peg_the_cell_under_the_cursor_is_meant_and_what_is_marked_before_it)
{
	struct desk *b = sit();

	b->editor.cursor = (struct place){ 3, 2 };
	desk_answer(b, ROWS { "Lay a fence", "Top", "Mark it", "Lay a fence", "Left", NULL });
	desk_type(b, ":");
	ck_assert_str_eq(b->offered, "All round: 4 ft\nTop: 1 ft\nBottom: 1 ft\nLeft: 1 ft\n"
		"Right: 1 ft\n");
	fence_is(fence_at(b, 0), "3,2 4,2", "");
	peg(b, (struct place){ 0, 0 }, (struct place){ 1, 4 });
	desk_press(b, PRESS_ENTER);
	b->editor.cursor = (struct place){ 6, 4 };
	desk_type(b, ":");
	fence_is(fence_at(b, 0), "0,0 0,5; 3,2 4,2", "");
	ck_assert_int_eq(editor_state(&b->editor), STATE_MARKED);
	desk_free(b);
}
END_TEST

START_TEST(the_question_says_what_is_meant)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "", "", "Mark it", "", NULL });
	desk_type(b, ":");
	desk_asked_whole(b, "Along this cell, 1 ft x 1 ft:");
	ck_assert_str_eq(b->offered, "Lay a fence: \nSet a gate: \nTake out the fence: \n"
		"Take out the gate: \nFence the whole plan: \n");
	peg(b, (struct place){ 2, 1 }, (struct place){ 5, 3 });
	desk_type(b, ":");
	desk_asked_whole(b, "Along the rectangle, 4 ft x 3 ft:");
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	desk_press(b, PRESS_ENTER);
	desk_type(b, ":");
	desk_asked_whole(b, "Along what is marked, 4 ft x 3 ft:");
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(what_goes_along_there_already_is_told)
{
	struct desk *b = sit();

	fence_from(editor_edit(&b->editor), "0,0 7,0", NULL);
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "Lay a fence", "Top", NULL });
	desk_type(b, ":");
	desk_says_whole(b, "It goes along there already.");
	fence_is(fence_at(b, 0), "0,0 7,0", "");
	desk_free(b);
}
END_TEST

START_TEST(with_no_more_than_one_side_that_will_do_nothing_is_asked)
{
	struct desk *b = sit();

	fence_from(editor_edit(&b->editor), "0,0 7,0 7,5", NULL);
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "Set a gate", "Set a gate", "Right", "Take out the gate",
		"Take out the fence", NULL });
	peg(b, (struct place){ 1, 0 }, (struct place){ 2, 4 });
	desk_type(b, ":");
	fence_is(fence_at(b, 0), "0,0 7,0 7,5", "1,0 3,0");
	desk_says_whole(b, "Fence: a gate set, 2 ft from post to post.");
	b->editor.cursor = (struct place){ 6, 0 }; /* the corner: fence above and at the right */
	desk_type(b, ":");
	ck_assert_str_eq(b->offered, "Top: 4 ft\nRight: 4 ft\n");
	fence_is(fence_at(b, 0), "0,0 7,0 7,5", "1,0 3,0; 7,0 7,4");
	b->editor.cursor = (struct place){ 2, 0 };
	desk_type(b, ":");
	desk_says_whole(b, "Fence: 1 gate taken out; the fence goes on there.");
	fence_is(fence_at(b, 0), "0,0 7,0 7,5", "7,0 7,4");
	desk_type(b, ":");
	desk_says_whole(b, "Fence: 1 ft taken out; Backspace takes it back.");
	fence_is(fence_at(b, 0), "0,0 2,0; 3,0 7,0 7,5", "7,0 7,4");
	desk_free(b);
}
END_TEST

static const struct {
	const char *act, *says;
} impossible[] = {
	{ "Set a gate", "lay a fence first" },
	{ "Take out the fence", "No fence" },
	{ "Take out the gate", "no gate" },
};

START_TEST(what_cannot_be_done_here_is_told_and_nothing_asked)
{
	struct desk *b = sit();

	fence_from(editor_edit(&b->editor), "4,2 5,2", NULL);
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { impossible[_i].act, NULL });
	desk_type(b, ":");
	desk_says(b, impossible[_i].says);
	ck_assert_int_eq(b->editor.position, 1);
	desk_free(b);
}
END_TEST

START_TEST(of_several_fences_one_is_asked_for_and_offered_first_again)
{
	struct desk *b = sit();

	fence_from(editor_edit(&b->editor), "0,0 7,0", NULL);
	free(editor_edit(&b->editor)->details.fences[0].name);
	editor_edit(&b->editor)->details.fences[0].name = memory_string("Pickets");
	fence_from(editor_edit(&b->editor), "0,5 7,5", NULL);
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "Lay a fence", "Left", "Fence", "Lay a fence", "Right", "Pickets",
		"Lay a fence", "Bottom", "A new fence", "Name: Hurdles; Rails of a panel: 3",
		"Lay a fence", "All round", "", NULL });
	desk_type(b, ":");
	desk_asked_whole(b, "Which fence?");
	ck_assert_str_eq(b->offered, "Pickets\nFence\nA new fence\n");
	fence_is(fence_at(b, 1), "0,0 0,1; 0,5 7,5", "");
	desk_type(b, ":");
	ck_assert_str_eq(b->first, "Fence");
	fence_is(fence_at(b, 0), "0,0 7,0; 1,0 1,1", "");
	desk_type(b, ":");
	ck_assert_uint_eq(b->editor.plot->details.fence_count, 3);
	ck_assert_str_eq(fence_at(b, 2)->name, "Hurdles");
	ck_assert_int_eq(block_number(&fence_at(b, 2)->block, FENCE_RAILS), 3);
	fence_is(fence_at(b, 2), "0,1 1,1", "");
	desk_says_whole(b, "Hurdles: 1 ft laid; Backspace takes it back.");
	ck_assert_int_eq(b->editor.fence, 2);
	ck_assert_str_eq(b->first, "Pickets");
	desk_type(b, ":"); /* left at the last question */
	ck_assert_str_eq(b->first, "Hurdles");
	ck_assert_int_eq(b->editor.position, 4);
	/* The lower side has two of them along it: one is asked for. */
	b->editor.cursor = (struct place){ 0, 4 };
	desk_answer(b, ROWS { "Lay a fence", "Bottom", "Hurdles", "Take out the fence", "Fence",
		NULL });
	desk_type(b, ":");
	desk_type(b, ":");
	ck_assert_str_eq(b->offered, "Fence\nHurdles\n");
	fence_is(fence_at(b, 1), "0,0 0,1; 1,5 7,5", "");
	desk_free(b);
}
END_TEST

START_TEST(a_new_fence_that_is_left_at_its_card_leaves_the_plot)
{
	struct desk *b = sit();

	fence_from(editor_edit(&b->editor), "0,0 7,0", NULL);
	fence_from(editor_edit(&b->editor), "0,5 7,5", NULL);
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "Lay a fence", "Left", "A new fence", "", NULL });
	desk_type(b, ":");
	ck_assert_uint_eq(b->editor.plot->details.fence_count, 2);
	ck_assert_int_eq(b->editor.position, 1);
	desk_free(b);
}
END_TEST

START_TEST(the_mirror_holds_for_fences_and_gates)
{
	struct desk *b = sit();

	plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, "four-way");
	editor_stroke(&b->editor);
	peg(b, (struct place){ 0, 0 }, (struct place){ 2, 0 });
	desk_answer(b, ROWS { "Lay a fence", "Top", "Set a gate", NULL });
	desk_type(b, ":");
	fence_is(fence_at(b, 0), "0,0 3,0; 4,0 7,0; 0,5 3,5; 4,5 7,5", "");
	desk_says_whole(b, "Fence: 12 ft laid; Backspace takes it back.");
	peg(b, (struct place){ 2, 0 }, (struct place){ 2, 0 });
	desk_type(b, ":");
	fence_is(fence_at(b, 0), "0,0 3,0; 4,0 7,0; 0,5 3,5; 4,5 7,5",
		"2,0 3,0; 4,0 5,0; 2,5 3,5; 4,5 5,5");
	desk_says_whole(b, "Fence: 4 gates set, each 1 ft from post to post.");
	desk_free(b);
}
END_TEST

START_TEST(images_outside_the_plan_are_told)
{
	struct desk *b = sit();

	plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, "left-right");
	plot_set(editor_edit(&b->editor), 0, HEAD_AXIS, "3,5");
	editor_stroke(&b->editor);
	b->editor.cursor = (struct place){ 5, 0 };
	desk_answer(b, ROWS { "Lay a fence", "Bottom", NULL });
	desk_type(b, ":");
	fence_is(fence_at(b, 0), "5,1 6,1", "");
	desk_says_whole(b, "Some images fall outside the plan; they are left out.");
	desk_free(b);
}
END_TEST

START_TEST(the_whole_plan_is_fenced_at_once)
{
	struct desk *b = sit();

	b->editor.cursor = (struct place){ 3, 2 };
	desk_answer(b, ROWS { "Fence the whole plan", NULL });
	desk_type(b, ":");
	fence_is(fence_at(b, 0), "0,0 7,0 7,5 0,5 0,0", "");
	desk_free(b);
}
END_TEST

START_TEST(folding_takes_fences_along)
{
	struct desk *b = sit();

	fence_from(editor_edit(&b->editor), "0,0 0,3 3,3", "0,0 0,2");
	plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, "left-right");
	editor_stroke(&b->editor);
	b->editor.cursor = (struct place){ 1, 1 };
	desk_type(b, "&");
	fence_is(fence_at(b, 0), "0,0 0,3 3,3; 7,0 7,3 4,3", "0,0 0,2; 7,0 7,2");
	desk_says_whole(b, "Folded: this side lies on the other now.");
	desk_type(b, "&");
	desk_says_whole(b, "Both sides match already.");
	desk_free(b);
}
END_TEST

START_TEST(a_crop_says_what_fence_and_gates_it_would_take)
{
	struct desk *b = sit();

	fence_from(editor_edit(&b->editor), "0,0 7,0 7,5", "1,0 3,0; 7,1 7,2");
	editor_stroke(&b->editor);
	b->editor.cursor = (struct place){ 2, 0 };
	desk_answer(b, ROWS { "Crop all left of the cursor", "Leave the plan as it is",
		"Crop all left of the cursor", "Crop it all the same", NULL });
	desk_do(b, ACT_SIZE);
	desk_asked_whole(b, "1 cell of bed, 1 of path, 2 ft of fence, 1 gate would go.");
	fence_is(fence_at(b, 0), "0,0 7,0 7,5", "1,0 3,0; 7,1 7,2");
	desk_do(b, ACT_SIZE);
	fence_is(fence_at(b, 0), "0,0 5,0 5,5", "5,1 5,2");
	desk_press(b, PRESS_BACKSPACE);
	fence_is(fence_at(b, 0), "0,0 7,0 7,5", "1,0 3,0; 7,1 7,2");
	desk_free(b);
}
END_TEST

/* ---- What cells say ------------------------------------------------------------------------- */

/* Side by side, against each leg. */
START_TEST(the_map_has_each_side_of_each_leg_and_no_other)
{
	struct desk *b = sit();
	const struct fence_map *map = &b->editor.fences;
	int count = 0;

	fence_from(editor_edit(&b->editor), "0,0 7,0 7,5 0,5 0,0; 3,0 3,5", "0,2 0,4");
	fence_from(editor_edit(&b->editor), "1,3 6,3", "2,3 3,3");
	editor_stroke(&b->editor);
	desk_refresh(b);
	for (int y = -1; y < 5; y++)
		for (int x = -1; x < 7; x++) {
			int right = y >= 0 && (x == -1 || x == 2 || x == 6);
			int below = (x >= 0 && (y == -1 || y == 4)) || (y == 2 && x >= 1 && x < 6);
			int gates = (x == -1 && (y == 2 || y == 3) ? GATE_RIGHT : 0) |
				(x == 2 && y == 2 ? GATE_BELOW : 0);

			ck_assert_int_eq(fence_map_at(map, x, y),
				(right ? FENCE_RIGHT : 0) | (below ? FENCE_BELOW : 0) | gates);
			count += right + below;
		}
	ck_assert_int_eq(count, 2 * (7 + 5) + 5 + 5);
	desk_free(b);
}
END_TEST

START_TEST(a_plot_without_a_run_has_no_map)
{
	struct desk *b = sit();

	fence_from(editor_edit(&b->editor), "", NULL);
	editor_stroke(&b->editor);
	desk_refresh(b);
	ck_assert_ptr_null(b->editor.fences.sides);
	ck_assert_int_eq(fence_map_at(&b->editor.fences, 3, 3), 0);
	desk_free(b);
}
END_TEST

static void here_is(struct desk *b, struct place at, const char *words)
{
	struct text text = TEXT_EMPTY;
	const char *line;

	b->editor.cursor = at;
	desk_refresh(b);
	here_words(&b->editor, &text);
	line = strstr(text.bytes, "ground\n");
	ck_assert_ptr_nonnull(line);
	ck_assert_str_eq(line + strlen("ground\n"), words);
	text_fini(&text);
}

START_TEST(here_names_fence_and_gates_on_all_sides_of_the_cell)
{
	struct desk *b = sit();

	fence_from(editor_edit(&b->editor), "3,2 6,2 6,4 3,4 3,2", "3,2 5,2; 3,2 3,3");
	plot_set(editor_edit(&b->editor), 0, ALLOW_GATE_CLEAR, "8 in");
	fence_from(editor_edit(&b->editor), "0,3 7,3", NULL);
	free(editor_edit(&b->editor)->details.fences[1].name);
	editor_edit(&b->editor)->details.fences[1].name = memory_string("Hurdles");
	editor_stroke(&b->editor);
	here_is(b, (struct place){ 0, 4 }, "");
	here_is(b, (struct place){ 0, 3 }, "Fence above: Hurdles\n");
	here_is(b, (struct place){ 0, 2 }, "Fence below: Hurdles\n");
	here_is(b, (struct place){ 3, 2 }, "Fence left, above: Fence\n"
		"Gate of 2\302\240ft above: Fence\nGate of 1\302\240ft left: Fence\n"
		"Fence below: Hurdles\n");
	here_is(b, (struct place){ 5, 3 }, "Fence right, below: Fence\nFence above: Hurdles\n");
	here_is(b, (struct place){ 2, 2 }, "Fence right: Fence\nGate of 1\302\240ft right: Fence\n"
		"Fence below: Hurdles\n");
	desk_free(b);
}
END_TEST

static void add_drawing(TCase *drawing)
{
	tcase_add_test(drawing, a_pegged_rectangle_is_fenced_all_round_by_a_first_fence);
	tcase_add_loop_test(drawing, each_side_of_what_is_meant_can_be_fenced, 0, 4);
	tcase_add_test(drawing,
		without_a_peg_the_cell_under_the_cursor_is_meant_and_what_is_marked_before_it);
	tcase_add_test(drawing, the_question_says_what_is_meant);
	tcase_add_test(drawing, what_goes_along_there_already_is_told);
	tcase_add_test(drawing, with_no_more_than_one_side_that_will_do_nothing_is_asked);
	tcase_add_loop_test(drawing, what_cannot_be_done_here_is_told_and_nothing_asked, 0, 3);
	tcase_add_test(drawing, of_several_fences_one_is_asked_for_and_offered_first_again);
	tcase_add_test(drawing, a_new_fence_that_is_left_at_its_card_leaves_the_plot);
	tcase_add_test(drawing, the_mirror_holds_for_fences_and_gates);
	tcase_add_test(drawing, images_outside_the_plan_are_told);
	tcase_add_test(drawing, the_whole_plan_is_fenced_at_once);
	tcase_add_test(drawing, folding_takes_fences_along);
	tcase_add_test(drawing, a_crop_says_what_fence_and_gates_it_would_take);
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_fence");
	TCase *cells = suite_case(suite, "cells");

	add_drawing(suite_case(suite, "drawing"));
	tcase_add_test(cells, the_map_has_each_side_of_each_leg_and_no_other);
	tcase_add_test(cells, a_plot_without_a_run_has_no_map);
	tcase_add_test(cells, here_names_fence_and_gates_on_all_sides_of_the_cell);
	return suite;
}
