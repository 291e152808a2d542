/* What is laid between a peg and the cursor, without a terminal. */

#include "support/desk.h"
#include "support/plots.h"
#include "support/runner.h"

#include <string.h>

#define ROWS (const char *[])

static const char *const nothing[] = { ".......", ".......", ".......", ".......", ".......",
	NULL };

/* Open ground of 7 by 5 with a legend of b and p, p in hand. */
static struct desk *sit(void)
{
	struct desk *b = desk_new(ROWS { "bp.....", ".......", ".......", ".......", ".......",
		NULL });

	memset(editor_edit(&b->editor)->ground.cells, OPEN_GROUND, 35);
	editor_stroke(&b->editor);
	b->editor.saved_position = b->editor.position;
	desk_type(b, "p");
	return b;
}

static void peg(struct desk *b, struct place from, struct place to)
{
	b->editor.cursor = from;
	desk_press(b, PRESS_ENTER);
	b->editor.cursor = to;
}

START_TEST(a_rectangle_is_offered_to_be_filled_framed_run_along_marked_or_left)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "", "Fill it", NULL });
	peg(b, (struct place){ 5, 3 }, (struct place){ 4, 1 });
	desk_press(b, PRESS_ENTER);
	desk_asked_whole(b, "p p, a rectangle of 2 ft x 3 ft:");
	ck_assert_str_eq(b->offered, "Fill it: \nFrame it: \nLay a straight run: \n"
		"Bend the run here and go on: \nRound its corners: \nLay a disc in it: \n"
		"Mark it: \nLay a service line: \nFence ...: :\nTake the peg out: \n");
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	desk_press(b, PRESS_ENTER);
	desk_check(b, ROWS { ".......", "....pp.", "....pp.", "....pp.", ".......", NULL });
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_press(b, PRESS_BACKSPACE);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(a_frame_is_as_thick_as_asked_and_the_thickness_is_remembered)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Frame it", "Thickness: 2 cells", "Frame it", "Thickness: 2", "",
		"Frame it", "Thickness: 3", "Thickness: 1", NULL });
	peg(b, (struct place){ 0, 0 }, (struct place){ 6, 4 });
	desk_press(b, PRESS_ENTER);
	ck_assert_str_eq(b->offered, "Thickness: 1 ft\n");
	desk_check(b, ROWS { "ppppppp", "ppppppp", "pp...pp", "ppppppp", "ppppppp", NULL });
	desk_says_whole(b, "A thickness of 2 ft: 2 cells.");
	desk_type(b, "b");
	/* No more than half the rectangle: of 3 ft by 3 ft, a cell. */
	peg(b, (struct place){ 2, 1 }, (struct place){ 4, 3 });
	desk_press(b, PRESS_ENTER);
	ck_assert_str_eq(b->offered, "Thickness: 1 ft\n");
	ck_assert_str_eq(b->fault, "Thickness: found 2 ft, expected 1 ft to 1 ft, 1 to 1 cells: "
		"no more than half the rectangle");
	ck_assert_int_eq(b->editor.frame, 2);
	desk_press(b, PRESS_ENTER);
	ck_assert_str_eq(b->offered, "Thickness: 1 ft\n");
	desk_check(b, ROWS { "ppppppp", "ppbbbpp", "ppb.bpp", "ppbbbpp", "ppppppp", NULL });
	desk_press(b, PRESS_BACKSPACE);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, nothing);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(a_frame_that_lies_there_already_is_said_to)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Frame it", "Thickness: 1", "Frame it", "Thickness: 1", NULL });
	for (int i = 0; i < 2; i++) {
		peg(b, (struct place){ 0, 0 }, (struct place){ 6, 4 });
		desk_press(b, PRESS_ENTER);
		ck_assert_str_eq(b->editor.message.bytes, i == 0 ? "A thickness of 1 ft: 1 cell." :
			"It lies there already.");
	}
	desk_free(b);
}
END_TEST

START_TEST(a_run_goes_the_longer_way_as_wide_as_asked_and_rounding_is_said)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Lay a straight run", "Width: 3 cells", "Lay a straight run",
		"Width: 20 in", NULL });
	peg(b, (struct place){ 1, 2 }, (struct place){ 5, 3 });
	desk_press(b, PRESS_ENTER);
	ck_assert_str_eq(b->offered, "Width: 1 ft\n");
	desk_check(b, ROWS { ".......", ".ppppp.", ".ppppp.", ".ppppp.", ".......", NULL });
	desk_says_whole(b, "A width of 3 ft: 3 cells.");
	desk_type(b, "b");
	peg(b, (struct place){ 3, 4 }, (struct place){ 4, 0 });
	desk_press(b, PRESS_ENTER);
	ck_assert_str_eq(b->offered, "Width: 3 ft\n");
	desk_check(b, ROWS { "...bb..", ".ppbbp.", ".ppbbp.", ".ppbbp.", "...bb..", NULL });
	desk_says_whole(b, "A width of 2 ft, which is rounded to whole cells: 2.");
	desk_press(b, PRESS_BACKSPACE);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, nothing);
	desk_free(b);
}
END_TEST

START_TEST(a_run_over_the_plans_edge_is_laid_as_far_as_the_plan_reaches)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Lay a straight run", "Width: 5 ft", NULL });
	peg(b, (struct place){ 6, 0 }, (struct place){ 4, 0 });
	desk_press(b, PRESS_ENTER);
	desk_check(b, ROWS { "....ppp", "....ppp", "....ppp", ".......", ".......", NULL });
	desk_free(b);
}
END_TEST

struct mirrored {
	const char *kind;
	const char *framed[6], *run[6];
};

/* A frame of one cell from 0,0 to 4,1, which is all of it, and a run of two cells from 1,1 to
 * 1,0; the images by hand. */
static const struct mirrored mirrored[] = {
	{ "left-right", { "ppppppp", "ppppppp", ".......", ".......", "......." },
		{ ".pp.pp.", ".pp.pp.", ".......", ".......", "......." } },
	{ "top-bottom", { "ppppp..", "ppppp..", ".......", "ppppp..", "ppppp.." },
		{ ".pp....", ".pp....", ".......", ".pp....", ".pp...." } },
	{ "four-way", { "ppppppp", "ppppppp", ".......", "ppppppp", "ppppppp" },
		{ ".pp.pp.", ".pp.pp.", ".......", ".pp.pp.", ".pp.pp." } },
	{ "half-turn", { "ppppp..", "ppppp..", ".......", "..ppppp", "..ppppp" },
		{ ".pp....", ".pp....", ".......", "....pp.", "....pp." } },
};

START_TEST(frames_and_runs_have_their_images)
{
	const struct mirrored *m = &mirrored[_i];
	struct desk *b = sit();

	plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, m->kind);
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "Frame it", "Thickness: 1 ft", "Lay a straight run", "Width: 2 ft",
		NULL });
	peg(b, (struct place){ 0, 0 }, (struct place){ 4, 1 });
	desk_press(b, PRESS_ENTER);
	desk_check(b, m->framed);
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, nothing);
	peg(b, (struct place){ 1, 1 }, (struct place){ 1, 0 });
	desk_press(b, PRESS_ENTER);
	desk_check(b, m->run);
	ck_assert_int_eq(b->editor.faults, 0);
	desk_free(b);
}
END_TEST

START_TEST(a_card_that_is_left_leaves_the_peg_and_the_ground)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Frame it", "Thickness: 2", "", "Lay a straight run", "", NULL });
	peg(b, (struct place){ 0, 0 }, (struct place){ 4, 1 });
	desk_press(b, PRESS_ENTER);
	ck_assert_str_eq(b->fault, "Thickness: found 2 ft, expected 1 ft to 1 ft, 1 to 1 cells: "
		"no more than half the rectangle");
	desk_press(b, PRESS_ENTER);
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	ck_assert_int_eq(b->editor.frame, 1);
	desk_check(b, nothing);
	desk_free(b);
}
END_TEST

START_TEST(the_list_of_acts_lays_between_peg_and_cursor_or_says_that_a_peg_is_needed)
{
	static const char *const names[] = { "Fill", "Frame", "Straight run", "Mark" };
	struct desk *b = sit();

	for (size_t i = 0; i < sizeof names / sizeof *names; i++) {
		desk_answer(b, ROWS { names[i], NULL });
		desk_type(b, "!");
		desk_says_whole(b, "Peg a corner first: Enter, go to the other corner, and Enter "
			"again.");
	}
	desk_answer(b, ROWS { "Straight run", "Width: 1 ft", NULL });
	peg(b, (struct place){ 2, 2 }, (struct place){ 4, 2 });
	desk_type(b, "!");
	desk_check(b, ROWS { ".......", ".......", "..ppp..", ".......", ".......", NULL });
	desk_answer(b, ROWS { "Fill", NULL });
	peg(b, (struct place){ 2, 0 }, (struct place){ 2, 2 });
	desk_type(b, "!");
	desk_check(b, ROWS { "..p....", "..p....", "..ppp..", ".......", ".......", NULL });
	desk_free(b);
}
END_TEST

/* ---- Runs at an axis, and bent ones ---------------------------------------------------------- */

/* Of 8 by 3 open cells, mirrored left-right. */
static struct desk *sit_mirrored(void)
{
	struct desk *b = desk_new(ROWS { "p.......", "........", "........", NULL });

	desk_type(b, ".");
	desk_type(b, " ");
	desk_type(b, "p|");
	return b;
}

START_TEST(a_run_along_the_axis_is_as_wide_as_asked_where_it_can_be)
{
	struct desk *b = sit_mirrored();

	desk_answer(b, ROWS { "Lay a straight run", "Width: 2 ft", NULL });
	peg(b, (struct place){ 4, 0 }, (struct place){ 4, 2 });
	desk_press(b, PRESS_ENTER);
	desk_check(b, ROWS { "...pp...", "...pp...", "...pp...", NULL });
	desk_says_whole(b, "A width of 2 ft: 2 cells.");
	desk_free(b);
}
END_TEST

START_TEST(what_width_it_becomes_with_the_mirror_is_said_before)
{
	struct desk *b = sit_mirrored();

	desk_answer(b, ROWS { "Lay a straight run", "Width: 3 ft", "Leave the ground as it is",
		"Lay a straight run", "Width: 3 ft", "Lay it so", NULL });
	peg(b, (struct place){ 4, 0 }, (struct place){ 4, 2 });
	desk_press(b, PRESS_ENTER);
	desk_asked_whole(b, "With the mirror it is 4 ft wide, 4 cells. 3 ft about the axis needs "
		"cells of 6 in.");
	desk_check(b, ROWS { "........", "........", "........", NULL });
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	desk_press(b, PRESS_ENTER);
	desk_check(b, ROWS { "..pppp..", "..pppp..", "..pppp..", NULL });
	desk_says_whole(b, "A width of 4 ft: 4 cells.");
	desk_free(b);
}
END_TEST

START_TEST(a_run_bends_at_each_peg_with_its_corners_whole)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Bend the run here and go on", "Bend the run here and go on",
		"Lay a straight run", "Width: 2 ft", NULL });
	peg(b, (struct place){ 0, 0 }, (struct place){ 3, 0 });
	desk_press(b, PRESS_ENTER);
	desk_says_whole(b, "It bends here. Go on and press Enter: lay the run, or bend again.");
	b->editor.cursor = (struct place){ 3, 3 };
	desk_press(b, PRESS_ENTER);
	b->editor.cursor = (struct place){ 6, 3 };
	desk_press(b, PRESS_ENTER);
	desk_asked_whole(b, "Lay a bent run");
	desk_check(b, ROWS { "ppppp..", "ppppp..", "...pp..", "...pppp", "...pppp", NULL });
	desk_press(b, PRESS_BACKSPACE);
	desk_check(b, nothing);
	peg(b, (struct place){ 0, 0 }, (struct place){ 1, 0 });
	ck_assert_int_eq(b->editor.bend_count, 0);
	desk_free(b);
	/* as far across as down: level first, and level again */
	b = sit();
	desk_answer(b, ROWS { "Bend the run here and go on", "Lay a straight run", "Width: 1 ft",
		NULL });
	peg(b, (struct place){ 0, 0 }, (struct place){ 2, 2 });
	desk_press(b, PRESS_ENTER);
	b->editor.cursor = (struct place){ 2, 4 };
	desk_press(b, PRESS_ENTER);
	desk_check(b, ROWS { "ppp....", "..p....", "..p....", "..p....", "..p....", NULL });
	desk_free(b);
	/* back to the left: the corner is beyond where either piece ends */
	b = sit();
	desk_answer(b, ROWS { "Bend the run here and go on", "Lay a straight run", "Width: 2 ft",
		NULL });
	peg(b, (struct place){ 3, 0 }, (struct place){ 3, 3 });
	desk_press(b, PRESS_ENTER);
	b->editor.cursor = (struct place){ 0, 3 };
	desk_press(b, PRESS_ENTER);
	desk_check(b, ROWS { "...pp..", "...pp..", "...pp..", "ppppp..", "ppppp..", NULL });
	desk_free(b);
}
END_TEST

/* ---- Round shapes ---------------------------------------------------------------------------- */

START_TEST(a_disc_lies_about_the_cursor_or_in_the_rectangle)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Diameter: 3 ft", "Lay a disc in it", "", "Lay a disc in it",
		"Diameter: 4 ft", "Lay it so", NULL });
	b->editor.cursor = (struct place){ 1, 1 };
	desk_do(b, ACT_DISC);
	desk_check(b, ROWS { "ppp....", "ppp....", "ppp....", ".......", ".......", NULL });
	desk_says_whole(b, "A diameter of 3 ft: 3 cells.");
	desk_type(b, ".");
	peg(b, (struct place){ 0, 0 }, (struct place){ 6, 4 });
	desk_press(b, PRESS_ENTER);
	ck_assert_str_eq(b->offered, "Diameter: 5 ft\n");
	desk_type(b, "p");
	desk_press(b, PRESS_ENTER);
	desk_asked_whole(b, "About this middle it is 3 ft x 3 ft in cells, 3 x 3.");
	desk_check(b, ROWS { "ppp....", "ppppp..", "ppppp..", "..ppp..", ".......", NULL });
	desk_free(b);
}
END_TEST

START_TEST(corners_are_rounded_and_walls_that_then_fail_are_said_before)
{
	struct desk *b = sit();

	desk_answer(b, ROWS { "Round its corners", "Radius: 2 ft", NULL });
	peg(b, (struct place){ 0, 0 }, (struct place){ 6, 4 });
	desk_press(b, PRESS_ENTER);
	ck_assert_str_eq(b->offered, "Radius: 2 ft\n");
	desk_check(b, ROWS { ".ppppp.", "ppppppp", "ppppppp", "ppppppp", ".ppppp.", NULL });
	desk_type(b, "b");
	plot_set(editor_edit(&b->editor), 'b', BED_BLOCK, "2 ft x 1 ft x 6 in");
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "Round its corners", "Radius: 2 ft", "Leave the ground as it is",
		NULL });
	peg(b, (struct place){ 0, 0 }, (struct place){ 6, 4 });
	desk_press(b, PRESS_ENTER);
	desk_asked_whole(b, "8 snags more of walls. A side of 1 ft is too short for the wall: it "
		"takes 1 ft 6 in, the block's depth and the shortest piece.");
	desk_check(b, ROWS { ".ppppp.", "ppppppp", "ppppppp", "ppppppp", ".ppppp.", NULL });
	desk_free(b);
}
END_TEST

/* A bed with sides too short for its wall is there already, before the new one. */
START_TEST(of_walls_that_then_fail_a_new_one_is_told)
{
	struct desk *b = desk_new(ROWS { "bb.........", "bb.........", "...........", "...........",
		"...........", "...........", NULL });

	plot_set(editor_edit(&b->editor), 'b', BED_BLOCK, "5 ft x 1 ft x 6 in");
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "Round its corners", "Radius: 2 ft", "Leave the ground as it is",
		NULL });
	peg(b, (struct place){ 4, 0 }, (struct place){ 10, 5 });
	desk_press(b, PRESS_ENTER);
	desk_asked_whole(b, "8 snags more of walls. A side of 1 ft is too short for the wall: it "
		"takes 2 ft 3 in, the block's depth and the shortest piece.");
	desk_free(b);
}
END_TEST

/* Caps as long as the blocks: on four of the sides their joints stand over those of the course
 * below, and with them the wall is too high for its depth. Without them all is well. */
START_TEST(caps_that_then_fail_count_as_walls_do)
{
	struct desk *b = sit();

	plot_set(editor_edit(&b->editor), 'b', BED_BLOCK, "8 in x 4 in x 4 in");
	editor_stroke(&b->editor);
	desk_type(b, "b");
	desk_answer(b, ROWS { "Round its corners", "Radius: 2 ft", "Round its corners",
		"Radius: 2 ft", "Leave the ground as it is", NULL });
	peg(b, (struct place){ 0, 0 }, (struct place){ 6, 4 });
	desk_press(b, PRESS_ENTER);
	desk_press(b, PRESS_BACKSPACE);
	plot_set(editor_edit(&b->editor), 'b', BED_CAP, "8 in x 3 in x 2 in");
	editor_stroke(&b->editor);
	peg(b, (struct place){ 0, 0 }, (struct place){ 6, 4 });
	desk_press(b, PRESS_ENTER);
	desk_asked(b, "5 snags more of walls. ");
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("act_peg");
	TCase *pegging = suite_case(suite, "pegging");

	tcase_add_test(pegging,
		a_rectangle_is_offered_to_be_filled_framed_run_along_marked_or_left);
	tcase_add_test(pegging, a_frame_is_as_thick_as_asked_and_the_thickness_is_remembered);
	tcase_add_test(pegging, a_frame_that_lies_there_already_is_said_to);
	tcase_add_test(pegging, a_run_goes_the_longer_way_as_wide_as_asked_and_rounding_is_said);
	tcase_add_test(pegging, a_run_over_the_plans_edge_is_laid_as_far_as_the_plan_reaches);
	tcase_add_loop_test(pegging, frames_and_runs_have_their_images, 0,
		sizeof mirrored / sizeof *mirrored);
	tcase_add_test(pegging, a_run_along_the_axis_is_as_wide_as_asked_where_it_can_be);
	tcase_add_test(pegging, what_width_it_becomes_with_the_mirror_is_said_before);
	tcase_add_test(pegging, a_run_bends_at_each_peg_with_its_corners_whole);
	tcase_add_test(pegging, a_disc_lies_about_the_cursor_or_in_the_rectangle);
	tcase_add_test(pegging, corners_are_rounded_and_walls_that_then_fail_are_said_before);
	tcase_add_test(pegging, of_walls_that_then_fail_a_new_one_is_told);
	tcase_add_test(pegging, caps_that_then_fail_count_as_walls_do);
	tcase_add_test(pegging, a_card_that_is_left_leaves_the_peg_and_the_ground);
	tcase_add_test(pegging,
		the_list_of_acts_lays_between_peg_and_cursor_or_says_that_a_peg_is_needed);
	return suite;
}
