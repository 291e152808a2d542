/* Every act, once and its effect, without a terminal. */

#include "support/desk.h"
#include "support/plots.h"
#include "support/runner.h"

#include "base/file.h"
#include "editor/acts/act_groups.h"
#include "report/text/parts.h"
#include "screen/width.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#define ROWS (const char *[])

static struct place at(int x, int y)
{
	return (struct place){ x, y };
}

static void check_cursor(const struct desk *b, int x, int y)
{
	ck_assert_int_eq(b->editor.cursor.x, x);
	ck_assert_int_eq(b->editor.cursor.y, y);
}

/* Open ground of 6 by 4 with a legend of b, p and S, the cursor on 1,1. */
static struct desk *open_ground(void)
{
	struct desk *b = desk_new(ROWS { "bpS...", "......", "......", "......", NULL });

	memset(editor_edit(&b->editor)->ground.cells, OPEN_GROUND, 24);
	editor_stroke(&b->editor);
	b->editor.saved_position = b->editor.position;
	b->editor.cursor = at(1, 1);
	desk_refresh(b);
	return b;
}

static void mirror_set(struct desk *b, const char *kind)
{
	plot_set(editor_edit(&b->editor), 0, HEAD_MIRROR, kind);
	editor_stroke(&b->editor);
}

/* ---- Moving ---------------------------------------------------------------------------------- */

START_TEST(home_end_and_the_page_keys_go_to_the_edges)
{
	struct desk *b = open_ground();

	desk_press(b, PRESS_END);
	check_cursor(b, 5, 1);
	desk_press(b, PRESS_PAGE_DOWN);
	check_cursor(b, 5, 3);
	desk_press(b, PRESS_HOME);
	check_cursor(b, 0, 3);
	desk_press(b, PRESS_PAGE_UP);
	check_cursor(b, 0, 0);
	desk_free(b);
}
END_TEST

START_TEST(a_place_is_gone_to_by_its_distances)
{
	struct desk *b = open_ground();

	desk_answer(b, ROWS { "Across from the left: 3 ft 6 in; Down from the top: 36 in", NULL });
	desk_type(b, "@");
	check_cursor(b, 3, 3);
	desk_answer(b, ROWS { "Across from the left: 6 ft; Down from the top: 0 in", NULL });
	desk_type(b, "@");
	check_cursor(b, 5, 0);
	desk_free(b);
}
END_TEST

START_TEST(a_place_beyond_the_plan_is_refused_and_one_without_a_unit_is_in_feet)
{
	struct desk *b = open_ground();

	desk_answer(b, ROWS { "Across from the left: 6 ft 1 in", "", NULL });
	desk_type(b, "@");
	ck_assert_str_eq(b->fault, "Across: beyond the plan, which is 6 ft wide");
	desk_answer(b, ROWS { "Down from the top: 4 ft 1 in", "", NULL });
	desk_type(b, "@");
	ck_assert_str_eq(b->fault, "Down: beyond the plan, which is 4 ft deep");
	desk_answer(b, ROWS { "Down from the top: 1 mile", "", NULL });
	desk_type(b, "@");
	ck_assert_str_eq(b->fault, "Down from the top: mile is no unit of length; ft, in, m, cm "
		"and mm are");
	check_cursor(b, 1, 1);
	desk_answer(b, ROWS { "Across from the left: 4; Down from the top: 2 ft 6", NULL });
	desk_type(b, "@");
	check_cursor(b, 4, 2);
	desk_says_whole(b, "4 ft across, 2 ft down.");
	desk_free(b);
}
END_TEST

/* ---- Laying ---------------------------------------------------------------------------------- */

START_TEST(a_letter_of_the_legend_is_taken_in_hand)
{
	struct desk *b = open_ground();

	desk_type(b, "p");
	ck_assert_int_eq(b->editor.hand, 'p');
	desk_type(b, "S");
	ck_assert_int_eq(b->editor.hand, 'S');
	desk_type(b, ".");
	ck_assert_int_eq(b->editor.hand, '.');
	desk_says_whole(b, "In hand: . open ground.");
	desk_free(b);
}
END_TEST

START_TEST(a_letter_that_is_not_in_the_legend_does_nothing_but_name_those_that_are)
{
	struct desk *b = open_ground();

	for (int key = 'A'; key <= 'z'; key++) {
		if (key > 'Z' && key < 'a')
			continue;
		if (plot_entry(b->editor.plot, (char)key))
			continue;
		desk_press(b, key);
		ck_assert_int_eq(b->editor.hand, 'b');
		desk_says(b, "b b, p p, S S, . open ground");
	}
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(space_lays_what_is_in_hand_and_delete_lifts_it)
{
	struct desk *b = open_ground();

	desk_type(b, "p ");
	desk_check(b, ROWS { "......", ".p....", "......", "......", NULL });
	ck_assert(!editor_is_saved(&b->editor));
	desk_type(b, " ");
	desk_says_whole(b, "It lies there already.");
	desk_press(b, PRESS_DELETE);
	desk_check(b, ROWS { "......", "......", "......", "......", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_trail_lays_every_cell_on_the_way)
{
	struct desk *b = open_ground();

	b->editor.step = 3;
	desk_type(b, "=");
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_DOWN);
	desk_check(b, ROWS { "......", ".bbbb.", "....b.", "....b.", NULL });
	desk_type(b, "=");
	desk_press(b, PRESS_LEFT);
	desk_check(b, ROWS { "......", ".bbbb.", "....b.", "....b.", NULL });
	ck_assert_uint_eq(history_undo_count(b->editor.history), 1 + 3);
	desk_free(b);
}
END_TEST

START_TEST(a_trail_does_not_follow_to_a_place)
{
	struct desk *b = open_ground();

	desk_answer(b, ROWS { "Across from the left: 5 ft; Down from the top: 3 ft", NULL });
	desk_type(b, "=@");
	desk_check(b, ROWS { "......", ".b....", "......", "......", NULL });
	desk_free(b);
}
END_TEST

START_TEST(two_pegs_fill_or_frame_a_rectangle)
{
	struct desk *b = open_ground();

	desk_answer(b, ROWS { "Fill it", NULL });
	desk_press(b, PRESS_ENTER);
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	b->editor.step = 2;
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_DOWN);
	desk_press(b, PRESS_ENTER);
	desk_asked_whole(b, "b b, a rectangle of 3 ft x 3 ft:");
	desk_check(b, ROWS { "......", ".bbb..", ".bbb..", ".bbb..", NULL });
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);

	desk_answer(b, ROWS { "Frame it", "Thickness: 1 ft", NULL });
	desk_type(b, "p");
	desk_press(b, PRESS_ENTER);
	desk_press(b, PRESS_LEFT);
	desk_press(b, PRESS_UP);
	desk_press(b, PRESS_ENTER);
	desk_check(b, ROWS { "......", ".ppp..", ".pbp..", ".ppp..", NULL });
	ck_assert_uint_eq(history_undo_count(b->editor.history), 1 + 2);
	desk_free(b);
}
END_TEST

START_TEST(a_peg_can_be_taken_out_or_kept)
{
	struct desk *b = open_ground();

	desk_answer(b, ROWS { "", "Take the peg out", NULL });
	desk_press(b, PRESS_ENTER);
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_ENTER);
	ck_assert_int_eq(editor_state(&b->editor), STATE_PEGGED);
	desk_press(b, PRESS_ENTER);
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(a_flood_lays_over_one_patch)
{
	struct desk *b = desk_new(ROWS { "bbp.", "b.p.", "bbp.", NULL });

	desk_type(b, "p*");
	desk_check(b, ROWS { "ppp.", "p.p.", "ppp.", NULL });
	desk_type(b, "*");
	desk_says_whole(b, "It lies there already.");
	desk_free(b);
}
END_TEST

START_TEST(esc_goes_one_step_back_and_never_loses_a_cell)
{
	struct desk *b = open_ground();

	desk_type(b, "=");
	desk_press(b, PRESS_ESCAPE);
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_press(b, PRESS_ENTER);
	desk_press(b, PRESS_ESCAPE);
	ck_assert_int_eq(editor_state(&b->editor), STATE_REST);
	desk_press(b, PRESS_ESCAPE);
	desk_says_whole(b, "There is nothing to go back from. < leaves, ? helps.");
	ck_assert(!b->editor.is_over);
	desk_check(b, ROWS { "......", ".b....", "......", "......", NULL });
	desk_free(b);
}
END_TEST

/* ---- Mirror ---------------------------------------------------------------------------------- */

struct mirrored {
	const char *kind;
	const char *laid[5], *framed[5], *flooded[5];
};

/* A cell on 1,0; a frame from 0,0 to 1,1; a flood of the patch at 0,0 of a plan whose left two
 * columns of rows 0 and 1 are p. The images by hand from the meaning of each kind. */
static const struct mirrored mirrored[] = {
	{ "off", { ".b....", "......", "......", "......" },
		{ "bb....", "bb....", "......", "......" },
		{ "bb....", "bb....", "......", "......" } },
	{ "left-right", { ".b..b.", "......", "......", "......" },
		{ "bb..bb", "bb..bb", "......", "......" },
		{ "bb..bb", "bb..bb", "......", "......" } },
	{ "top-bottom", { ".b....", "......", "......", ".b...." },
		{ "bb....", "bb....", "bb....", "bb...." },
		{ "bb....", "bb....", "bb....", "bb...." } },
	{ "four-way", { ".b..b.", "......", "......", ".b..b." },
		{ "bb..bb", "bb..bb", "bb..bb", "bb..bb" },
		{ "bb..bb", "bb..bb", "bb..bb", "bb..bb" } },
	{ "half-turn", { ".b....", "......", "......", "....b." },
		{ "bb....", "bb....", "....bb", "....bb" },
		{ "bb....", "bb....", "....bb", "....bb" } },
};

START_TEST(every_stroke_lays_its_images_too)
{
	const struct mirrored *m = &mirrored[_i];
	struct desk *b = open_ground();

	mirror_set(b, m->kind);
	b->editor.cursor = at(1, 0);
	desk_type(b, " ");
	desk_check(b, m->laid);
	desk_press(b, PRESS_DELETE);
	desk_check(b, ROWS { "......", "......", "......", "......", NULL });

	desk_type(b, "=");
	desk_press(b, PRESS_LEFT);
	desk_press(b, PRESS_DOWN);
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_ESCAPE);
	desk_check(b, m->framed);
	ck_assert_int_eq(b->editor.faults, 0);
	desk_free(b);
}
END_TEST

START_TEST(a_frame_and_a_flood_have_images_too)
{
	const struct mirrored *m = &mirrored[_i];
	struct desk *b = open_ground();

	b->editor.cursor = at(0, 0);
	desk_answer(b, ROWS { "Frame it", "Thickness: 1 ft", "Frame it", "Thickness: 1 ft",
		NULL });
	desk_type(b, "p");
	desk_press(b, PRESS_ENTER);
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_DOWN);
	desk_press(b, PRESS_ENTER);
	desk_check(b, ROWS { "pp....", "pp....", "......", "......", NULL });

	mirror_set(b, m->kind);
	desk_type(b, "b*");
	desk_check(b, m->flooded);
	desk_press(b, PRESS_BACKSPACE);
	b->editor.cursor = at(0, 0);
	desk_press(b, PRESS_ENTER);
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_DOWN);
	desk_press(b, PRESS_ENTER);
	desk_check(b, m->framed);
	desk_free(b);
}
END_TEST

START_TEST(mirror_keys_turn_their_own_part_on_and_off)
{
	static const struct {
		char key;
		const char *kind;
	} presses[] = {
		{ '|', "left-right" }, { '-', "four-way" }, { '|', "top-bottom" }, { '-', "off" },
		{ '-', "top-bottom" }, { '%', "half-turn" }, { '|', "left-right" },
		{ '%', "half-turn" },
		{ '%', "off" },
	};
	struct desk *b = open_ground();

	for (size_t i = 0; i < sizeof presses / sizeof *presses; i++) {
		desk_press(b, presses[i].key);
		ck_assert_str_eq(mirror_word(mirror_of(b->editor.plot).kind), presses[i].kind);
		ck_assert_uint_eq(history_undo_count(b->editor.history), 2 + i);
	}
	desk_check(b, ROWS { "......", "......", "......", "......", NULL });
	ck_assert(!block_value(&b->editor.plot->details.head, HEAD_MIRROR)->set);
	desk_free(b);
}
END_TEST

START_TEST(turning_the_mirror_on_counts_its_faults)
{
	struct desk *b = desk_new(ROWS { "b..b", "b...", "bp..", NULL });

	desk_type(b, "|");
	ck_assert_int_eq(b->editor.faults, 3);
	desk_says_whole(b, "Mirror left-right: 3 cells differ from their images. Press & to copy "
		"this side over.");
	desk_free(b);
}
END_TEST

START_TEST(images_outside_the_plan_are_said_once_for_each_turn_of_the_mirror)
{
	struct desk *b = open_ground();

	plot_set(editor_edit(&b->editor), 0, HEAD_AXIS, "2,4");
	desk_type(b, "|");
	b->editor.cursor = at(4, 0);
	desk_type(b, " ");
	desk_says_whole(b, "Some images fall outside the plan; they are left out.");
	desk_check(b, ROWS { "....b.", "......", "......", "......", NULL });
	desk_press(b, PRESS_RIGHT);
	desk_type(b, " ");
	ck_assert_uint_eq(b->editor.message.length, 0);
	desk_type(b, "||p ");
	desk_says_whole(b, "Some images fall outside the plan; they are left out.");
	desk_free(b);
}
END_TEST

START_TEST(a_fold_copies_the_side_with_the_cursor)
{
	struct desk *b = desk_new(ROWS { "bb.p", "p..p", NULL });

	desk_type(b, "|&");
	desk_check(b, ROWS { "bbbb", "p..p", NULL });
	desk_says_whole(b, "Folded: this side lies on the other now.");
	desk_type(b, "&");
	desk_says_whole(b, "Both sides match already.");
	desk_press(b, PRESS_BACKSPACE);
	b->editor.cursor = at(3, 0);
	desk_type(b, "&");
	desk_check(b, ROWS { "p..p", "p..p", NULL });
	desk_free(b);
}
END_TEST

START_TEST(a_fold_asks_for_a_mirror_and_for_a_side)
{
	struct desk *b = desk_new(ROWS { "bbp", "p.b", NULL });

	desk_type(b, "&");
	desk_says(b, "mirror is off");
	b->editor.cursor = at(1, 0);
	desk_type(b, "|&");
	desk_says_whole(b, "The cursor is on the axis: move it to the side to be copied.");
	desk_check(b, ROWS { "bbp", "p.b", NULL });
	desk_free(b);
}
END_TEST

/* ---- Taking back ----------------------------------------------------------------------------- */

START_TEST(strokes_are_taken_back_and_put_back_where_they_happened)
{
	struct desk *b = open_ground();

	desk_type(b, " ");
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_RIGHT);
	desk_type(b, "p ");
	b->editor.cursor = at(5, 3);
	desk_press(b, PRESS_BACKSPACE);
	check_cursor(b, 3, 1);
	desk_check(b, ROWS { "......", ".b....", "......", "......", NULL });
	desk_press(b, PRESS_BACKSPACE);
	check_cursor(b, 1, 1);
	ck_assert(editor_is_saved(&b->editor));
	desk_type(b, "+");
	desk_type(b, "+");
	desk_check(b, ROWS { "......", ".b.p..", "......", "......", NULL });
	desk_type(b, "+");
	desk_says_whole(b, "Nothing was taken back that could be put back.");
	desk_free(b);
}
END_TEST

START_TEST(there_is_an_end_to_taking_back)
{
	struct desk *b = desk_new(ROWS { "b", NULL });

	desk_press(b, PRESS_BACKSPACE);
	desk_says_whole(b, "There is no stroke to take back.");
	desk_free(b);
}
END_TEST

/* ---- Pages ----------------------------------------------------------------------------------- */

START_TEST(pages_are_turned_and_picked)
{
	struct desk *b = open_ground();

	desk_press(b, PRESS_TAB);
	ck_assert_str_eq(page_name(b->editor.page), "Edges");
	desk_press(b, PRESS_BACK_TAB);
	desk_press(b, PRESS_BACK_TAB);
	ck_assert_str_eq(page_name(b->editor.page), "Changed");
	desk_press(b, PRESS_TAB);
	ck_assert_str_eq(page_name(b->editor.page), "Areas");
	desk_answer(b, ROWS { "Snags", "", NULL });
	desk_type(b, ";");
	ck_assert_str_eq(b->offered,
		"Areas\nEdges\nBeds\nWalls\nFill\nStone\nDig\nLevels\nServices\nFence\nPlanting\n"
		"Watering\nSet-out\nSun\nCosts\n"
		"Advice\nSnags\nChanged\n");
	ck_assert_str_eq(page_name(b->editor.page), "Snags");
	desk_type(b, ";");
	ck_assert_str_eq(page_name(b->editor.page), "Snags");
	desk_free(b);
}
END_TEST

START_TEST(a_page_is_turned_down_and_up_again)
{
	struct desk *b = open_ground();

	b->editor.page_rows = 10;
	desk_type(b, "))");
	ck_assert_int_eq(b->editor.page_top, 18);
	desk_type(b, "((");
	ck_assert_int_eq(b->editor.page_top, 0);
	desk_type(b, ")");
	desk_press(b, PRESS_TAB);
	ck_assert_int_eq(b->editor.page_top, 0);
	desk_free(b);
}
END_TEST

/* ---- Cards ---------------------------------------------------------------------------------- */

START_TEST(the_plots_card_sets_its_title_and_axis_in_one_step)
{
	struct desk *b = open_ground();

	desk_answer(b, ROWS { "The plot itself",
		"Title: Court \"B\"; Axis, in half cells: 5,4; Bearing of plan's top: 12.5",
		NULL });
	desk_type(b, "#");
	ck_assert_str_eq(block_value(&b->editor.plot->details.head, HEAD_TITLE)->as.text,
		"Court \"B\"");
	ck_assert_int_eq(mirror_of(b->editor.plot).across, 5);
	ck_assert_int_eq(block_number(&b->editor.plot->details.head, HEAD_NORTH), 12500000);
	ck_assert_uint_eq(history_undo_count(b->editor.history), 2);
	desk_press(b, PRESS_BACKSPACE);
	ck_assert(!block_value(&b->editor.plot->details.head, HEAD_TITLE)->set);
	desk_free(b);
}
END_TEST

START_TEST(a_card_refuses_what_the_file_would_refuse)
{
	struct desk *b = open_ground();

	desk_answer(b, ROWS { "The plot itself", "Axis, in half cells: 12,4", "", NULL });
	desk_type(b, "#");
	ck_assert_str_eq(b->fault, "Axis, in half cells: found 12,4, expected 1,1 to 11,7");
	desk_answer(b, ROWS { "The plot itself", "Side of a cell: ", "", NULL });
	desk_type(b, "#");
	ck_assert_str_eq(b->fault, "Side of a cell: needed here");
	desk_answer(b, ROWS { "b b", "Courses: 41", "Courses: 4 high", "", NULL });
	desk_type(b, "#");
	ck_assert_str_eq(b->fault, "Courses: found high, expected nothing more");
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(a_beds_card_shows_what_is_set_and_sets_the_rest)
{
	struct desk *b = open_ground();

	plot_set(editor_edit(&b->editor), 'b', BED_COURSES, "4");
	desk_answer(b, ROWS { "b b", "Courses: ; Cap: 1 ft x 8 in x 2 in", NULL });
	desk_type(b, "#");
	ck_assert_ptr_nonnull(strstr(b->offered, "Courses: 4\n"));
	ck_assert_ptr_nonnull(strstr(b->offered, "Cap: \n"));
	ck_assert(!block_value(&plot_entry(b->editor.plot, 'b')->block, BED_COURSES)->set);
	ck_assert_int_eq(block_effective(&plot_entry(b->editor.plot, 'b')->block,
		BED_CAP)->as.size.across, 8 * NM_PER_INCH);
	desk_free(b);
}
END_TEST

/* ---- Files ----------------------------------------------------------------------------------- */

static void read_file(const char *path, struct text *bytes)
{
	struct file_error error;

	ck_assert_msg(file_read(path, 1 << 20, bytes, &error), "%s", error.sentence);
}

static void write_file(const char *path, const char *words)
{
	struct file_error error;

	ck_assert_msg(file_write(path, words, strlen(words), &error), "%s", error.sentence);
}

START_TEST(saving_writes_the_plot_and_a_change_makes_it_unsaved_again)
{
	struct desk *b = open_ground();
	struct text bytes = TEXT_EMPTY;

	desk_type(b, " ");
	ck_assert(!editor_is_saved(&b->editor));
	desk_do(b, ACT_SAVE);
	ck_assert(editor_is_saved(&b->editor));
	desk_says_whole(b, "Saved in FOLDER/garden.plot.");
	read_file(b->path, &bytes);
	ck_assert_ptr_nonnull(strstr(bytes.bytes, "\n  ......\n  .b....\n"));
	desk_press(b, PRESS_DELETE);
	ck_assert(!editor_is_saved(&b->editor));
	desk_press(b, PRESS_BACKSPACE);
	ck_assert(editor_is_saved(&b->editor));
	text_fini(&bytes);
	desk_free(b);
}
END_TEST

START_TEST(a_saved_state_behind_a_new_stroke_cannot_be_reached_any_more)
{
	struct desk *b = open_ground();

	desk_type(b, " ");
	desk_do(b, ACT_SAVE);
	desk_press(b, PRESS_BACKSPACE);
	desk_type(b, "p ");
	ck_assert(!editor_is_saved(&b->editor));
	desk_press(b, PRESS_BACKSPACE);
	ck_assert(!editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(a_file_changed_by_somebody_else_is_written_over_only_if_so_told)
{
	struct desk *b = open_ground();
	struct text bytes = TEXT_EMPTY;

	desk_type(b, " ");
	desk_do(b, ACT_SAVE);
	write_file(b->path, "theirs");
	desk_answer(b, ROWS { "Keep the file as it is", "Write over it", NULL });
	desk_press(b, PRESS_DELETE);
	desk_do(b, ACT_SAVE);
	ck_assert(!editor_is_saved(&b->editor));
	read_file(b->path, &bytes);
	ck_assert_str_eq(bytes.bytes, "theirs");
	desk_do(b, ACT_SAVE);
	ck_assert(editor_is_saved(&b->editor));
	text_clear(&bytes);
	read_file(b->path, &bytes);
	ck_assert_ptr_nonnull(strstr(bytes.bytes, "parterre-plot 1\n"));
	text_fini(&bytes);
	desk_free(b);
}
END_TEST

START_TEST(what_cannot_be_saved_is_said_and_stays_unsaved)
{
	struct desk *b = desk_open("no/such/folder/garden.plot");
	struct plot plot;

	plot_from_rows(&plot, ROWS { "b.", NULL });
	editor_take(&b->editor, &plot, true);
	desk_press(b, PRESS_DELETE);
	desk_do(b, ACT_SAVE);
	desk_says_whole(b, "Not saved: cannot write no/such/folder/garden.plot: No such file or "
		"directory.");
	ck_assert(!editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(a_takeoff_goes_beside_the_plot_as_text_or_by_its_name_as_json)
{
	struct desk *b = open_ground();
	char typed[5000], path[4300];
	struct text bytes = TEXT_EMPTY;

	desk_type(b, " ");
	desk_answer(b, ROWS { "All of it", "File: ", "", NULL });
	desk_do(b, ACT_TAKEOFF);
	snprintf(path, sizeof path, "File: %s/garden.txt\n", b->folder);
	ck_assert_str_eq(b->offered, path);
	ck_assert_str_eq(b->fault, "File: needed here");

	snprintf(typed, sizeof typed, "File: %s/garden.txt", b->folder);
	desk_answer(b, (const char *[]){ "All of it", typed, NULL });
	desk_do(b, ACT_TAKEOFF);
	read_file(typed + strlen("File: "), &bytes);
	ck_assert_int_eq(strncmp(bytes.bytes, "parterre takeoff 1\n", 19), 0);

	snprintf(typed, sizeof typed, "File: %s/garden.json", b->folder);
	desk_answer(b, (const char *[]){ "All of it", typed, NULL });
	desk_do(b, ACT_TAKEOFF);
	desk_says_whole(b, "Takeoff written to FOLDER/garden.json. It is incomplete: see the "
		"snags.");
	text_clear(&bytes);
	read_file(typed + strlen("File: "), &bytes);
	ck_assert_int_eq(bytes.bytes[0], '{');
	text_fini(&bytes);
	desk_free(b);
}
END_TEST

/* All that is offered, in its order; the file is named after the part and holds it alone. */
START_TEST(a_part_of_the_takeoff_is_written_by_itself_beside_the_plot)
{
	struct desk *b = desk_new(ROWS { "bbbbbb", "bbbbbb", "bbbbbb", "bbbbbb", NULL });
	char path[4300], typed[4400];
	struct text bytes = TEXT_EMPTY, answers = TEXT_EMPTY;

	text_add(&answers, "All of it: \n");
	for (int part = 0; part < PARTS; part++)
		text_print(&answers, "%s: %s\n", part_title((enum part)part),
			part_tells((enum part)part));
	desk_answer(b, ROWS { "", NULL });
	desk_do(b, ACT_TAKEOFF);
	desk_asked_whole(b, "Write which part of the takeoff?");
	ck_assert_str_eq(b->offered, answers.bytes);
	ck_assert_str_eq(b->first, "All of it");

	snprintf(path, sizeof path, "%s/garden-shopping.txt", b->folder);
	snprintf(typed, sizeof typed, "File: %s", path);
	desk_answer(b, ROWS { "Shopping", "", NULL });
	desk_do(b, ACT_TAKEOFF);
	ck_assert_int_eq(strncmp(b->offered, typed, strlen(typed)), 0);
	ck_assert_str_eq(b->offered + strlen(typed), "\n");
	/* For programs and spreadsheets there are no parts. */
	for (int i = 0; i < 2; i++) {
		char other[4400];

		snprintf(other, sizeof other, "File: %s/part.%s", b->folder, i ? "csv" : "json");
		desk_answer(b, (const char *[]){ "Shopping", other, "", NULL });
		desk_do(b, ACT_TAKEOFF);
		desk_answered(b);
		ck_assert_ptr_nonnull(strstr(b->fault, "A part is text"));
		ck_assert_int_ne(access(other + strlen("File: "), F_OK), 0);
	}
	desk_answer(b, (const char *[]){ "Shopping", typed, NULL });
	desk_do(b, ACT_TAKEOFF);
	desk_says_whole(b, "Takeoff written to FOLDER/garden-shopping.txt. 1 snag: read before "
		"anything is bought.");
	read_file(path, &bytes);
	ck_assert_int_eq(strncmp(bytes.bytes, "parterre takeoff 1\n\nShopping --", 31), 0);
	ck_assert_ptr_nonnull(strstr(bytes.bytes, "Wall block"));
	ck_assert_ptr_null(strstr(bytes.bytes, "Before you start"));
	ck_assert_ptr_null(strstr(bytes.bytes, "\nWalls --"));
	text_fini(&answers);
	text_fini(&bytes);
	desk_free(b);
}
END_TEST

START_TEST(a_table_goes_by_its_name_and_what_is_filled_in_is_not_lost_unasked)
{
	struct desk *b = open_ground();
	char typed[5000];
	struct text bytes = TEXT_EMPTY;

	snprintf(typed, sizeof typed, "File: %s/garden.csv", b->folder);
	desk_answer(b, (const char *[]){ "All of it", typed, NULL });
	desk_do(b, ACT_TAKEOFF);
	desk_says_whole(b, "Takeoff written to FOLDER/garden.csv.");
	read_file(typed + strlen("File: "), &bytes);
	ck_assert_int_eq(strncmp(bytes.bytes, "section,id,item,size,", 21), 0);
	write_file(typed + strlen("File: "), "section,id,item,size,mine\r\n");
	desk_answer(b, (const char *[]){ "All of it", typed, "Leave that file alone", "", NULL });
	desk_do(b, ACT_TAKEOFF);
	text_clear(&bytes);
	read_file(typed + strlen("File: "), &bytes);
	ck_assert_str_eq(bytes.bytes, "section,id,item,size,mine\r\n");
	text_fini(&bytes);
	desk_free(b);
}
END_TEST

START_TEST(a_takeoff_that_is_written_tells_of_its_snags)
{
	static const struct {
		const char *row, *keys, *says;
	} rows[] = {
		{ "....", "", "" }, { "S...", "", "1 snag" }, { "S...", "|", "2 snags" },
		{ "b...", "", "incomplete" },
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct desk *b = desk_new(ROWS { rows[i].row, NULL });
		char typed[5000];
		const char *said;

		desk_type(b, rows[i].keys);
		snprintf(typed, sizeof typed, "File: %s/garden.txt", b->folder);
		desk_answer(b, (const char *[]){ "All of it", typed, NULL });
		desk_do(b, ACT_TAKEOFF);
		said = strstr(b->editor.message.bytes, "garden.txt.");
		ck_assert_ptr_nonnull(said);
		said += strlen("garden.txt.");
		ck_assert_ptr_nonnull(strstr(said, rows[i].says));
		ck_assert_int_eq(!*said, !*rows[i].says); /* nothing more where there is none */
		desk_free(b);
	}
}
END_TEST

START_TEST(a_takeoff_replaces_another_file_only_if_so_told_and_never_the_plot)
{
	struct desk *b = open_ground();
	char typed[5000], plot[5000];
	struct text bytes = TEXT_EMPTY;

	desk_do(b, ACT_SAVE);
	snprintf(typed, sizeof typed, "File: %s/letter.txt", b->folder);
	snprintf(plot, sizeof plot, "File: %s", b->path);
	write_file(typed + strlen("File: "), "Dear Ada,\n");
	desk_answer(b, (const char *[]){ "All of it", typed, "Leave that file alone", plot, typed,
		"Write over it", NULL });
	desk_do(b, ACT_TAKEOFF);
	desk_says_whole(b, "Takeoff written to FOLDER/letter.txt.");
	read_file(typed + strlen("File: "), &bytes);
	ck_assert_int_eq(strncmp(bytes.bytes, "parterre takeoff", 16), 0);
	text_clear(&bytes);
	read_file(b->path, &bytes);
	ck_assert_int_eq(strncmp(bytes.bytes, "parterre-plot 1", 15), 0);
	text_fini(&bytes);
	desk_free(b);
}
END_TEST

START_TEST(a_takeoff_is_not_written_over_the_price_book)
{
	static const char bytes[] = "{\"format\": \"parterre-prices\", \"version\": 1, "
		"\"currency\": \"USD\"}";
	struct desk *b = open_ground();
	struct text kept = TEXT_EMPTY;
	char typed[5000];

	snprintf(typed, sizeof typed, "File: %s/book.json", b->folder);
	write_file(typed + strlen("File: "), bytes);
	plot_set(editor_edit(&b->editor), 0, HEAD_PRICES, "\"book.json\"");
	editor_stroke(&b->editor);
	desk_answer(b, (const char *[]){ "All of it", typed, "", NULL });
	desk_do(b, ACT_TAKEOFF);
	ck_assert_ptr_nonnull(strstr(b->fault, "is the price book that it reads"));
	read_file(typed + strlen("File: "), &kept);
	ck_assert_str_eq(kept.bytes, bytes);
	text_fini(&kept);
	desk_free(b);
}
END_TEST

/* Whatever the price book was when it was read first; 51 blocks. */
START_TEST(a_takeoff_is_written_with_the_price_book_as_its_file_is_now)
{
	static const char book[] = "{\"format\": \"parterre-prices\", \"version\": 1, "
		"\"currency\": \"USD\", \"goods\": [{\"item\": \"block.wall\", \"block\": "
		"\"16 in x 8 in x 6 in\", \"packs\": [{\"pack\": \"piece\", \"size\": 1, "
		"\"price\": %s}]}]}";
	static const char *const prices[] = { "2.5", "3.50", NULL };
	static const char *const totals[] = { "127.50", "178.50", NULL };
	struct desk *b = desk_new(ROWS { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL });
	char path[4200], typed[4300], bytes[400];
	const char *answers[] = { "All of it", typed, NULL };
	struct text out = TEXT_EMPTY;

	snprintf(path, sizeof path, "%s/book.json", b->folder);
	for (int i = 0; i < 3; i++) {
		if (prices[i]) {
			snprintf(bytes, sizeof bytes, book, prices[i]);
			write_file(path, bytes);
		} else {
			ck_assert_int_eq(remove(path), 0);
		}
		if (i == 0) {
			plot_set(editor_edit(&b->editor), 0, HEAD_PRICES, "\"book.json\"");
			editor_stroke(&b->editor);
			desk_refresh(b);
		}
		snprintf(typed, sizeof typed, "File: %s/out-%d.txt", b->folder, i);
		desk_answer(b, answers);
		desk_do(b, ACT_TAKEOFF);
		ck_assert_int_eq(strstr(b->editor.message.bytes, "It has no prices: book.json is "
			"not there, or cannot be read.") != NULL, prices[i] == NULL);
		text_clear(&out);
		read_file(typed + strlen("File: "), &out);
		for (int j = 0; totals[j]; j++)
			ck_assert_int_eq(strstr(out.bytes, totals[j]) != NULL, i == j);
	}
	text_fini(&out);
	desk_free(b);
}
END_TEST

START_TEST(leaving_asks_only_where_something_is_unsaved)
{
	struct desk *b = open_ground();

	desk_type(b, "<");
	ck_assert(b->editor.is_over);
	b->editor.is_over = false;
	desk_type(b, " ");
	desk_answer(b, ROWS { "Stay", "", "Leave without saving", NULL });
	desk_type(b, "<");
	ck_assert_str_eq(b->offered, "Save and leave\nLeave without saving\nStay\n");
	ck_assert(!b->editor.is_over);
	desk_type(b, "<");
	ck_assert(!b->editor.is_over);
	desk_type(b, "<");
	ck_assert(b->editor.is_over);
	ck_assert_int_ne(access(b->path, F_OK), 0);
	desk_free(b);
}
END_TEST

START_TEST(save_and_leave_does_both_or_neither)
{
	struct desk *b = open_ground();

	desk_type(b, " ");
	desk_do(b, ACT_SAVE);
	desk_press(b, PRESS_DELETE);
	write_file(b->path, "theirs");
	desk_answer(b, ROWS { "Save and leave", "Keep the file as it is", "Save and leave",
		"Write over it", NULL });
	desk_type(b, "<");
	ck_assert(!b->editor.is_over);
	desk_type(b, "<");
	ck_assert(b->editor.is_over);
	ck_assert(editor_is_saved(&b->editor));
	desk_free(b);
}
END_TEST

/* ---- Lists and the table --------------------------------------------------------------------- */

START_TEST(the_list_of_all_acts_names_each_key_and_does_what_is_picked)
{
	struct desk *b = open_ground();

	desk_answer(b, ROWS { "Lay", "Count steps", "", NULL });
	desk_type(b, "!");
	desk_check(b, ROWS { "......", ".b....", "......", "......", NULL });
	ck_assert_ptr_nonnull(strstr(b->offered, "Save: >\n"));
	desk_type(b, "!");
	desk_says_whole(b, "digits: go several steps at once.");
	desk_type(b, "!");
	desk_free(b);
}
END_TEST

START_TEST(help_goes_by_what_one_wants_to_do)
{
	struct desk *b = open_ground();

	desk_answer(b, ROWS { "draw left and right alike", "see this list", "", NULL });
	desk_type(b, "?");
	ck_assert_int_eq(mirror_of(b->editor.plot).kind, MIRROR_LEFT_RIGHT);
	desk_type(b, "?");
	desk_free(b);
}
END_TEST

START_TEST(pausing_and_drawing_afresh_are_handed_on)
{
	struct desk *b = open_ground();

	desk_press(b, PRESS_PAUSE);
	desk_press(b, PRESS_REPAINT);
	ck_assert_int_eq(b->pauses, 1);
	ck_assert_int_eq(b->repaints, 1);
	desk_free(b);
}
END_TEST

START_TEST(a_key_without_an_act_changes_nothing)
{
	struct desk *b = open_ground();
	static const int keys[] = { 0xa7, 0xe9, 0x1f600, PRESS_OTHER };

	for (size_t i = 0; i < sizeof keys / sizeof *keys; i++) {
		ck_assert_ptr_null(acts_find(keys[i]));
		desk_press(b, keys[i]);
		desk_says_whole(b, "This key does nothing. Press ! for all that can be done.");
	}
	ck_assert(editor_is_saved(&b->editor));
	check_cursor(b, 1, 1);
	desk_free(b);
}
END_TEST

/* To go about, to look, to print, to keep a copy, to leave. */
static bool is_for_lookers(enum act_id id)
{
	static const enum act_id acts[] = {
		ACT_ARROW, ACT_STEPS, ACT_ON, ACT_EDGE, ACT_PLACE, ACT_STEP, ACT_FARTHER,
		ACT_NEARER, ACT_OVERVIEW, ACT_CENTRE, ACT_MEASURE, ACT_SCROLL, ACT_TAKE, ACT_TURN,
		ACT_FLIP_ACROSS, ACT_FLIP_DOWN, ACT_SHOW_LEVELS, ACT_SHOW_SUN, ACT_SHADOWS,
		ACT_NEXT_FAULT, ACT_NEXT_PAGE, ACT_PAGE_BEFORE, ACT_PAGES, ACT_PANEL, ACT_FURTHER,
		ACT_BACK, ACT_GO_THERE, ACT_NEXT_SNAG, ACT_FILES, ACT_SAVE_AS, ACT_COPY,
		ACT_TAKEOFF, ACT_DRAWING, ACT_LEAVE, ACT_MOUSE, ACT_PAUSE, ACT_REPAINT,
		ACT_STEP_BACK, ACT_ALL, ACT_HELP };

	for (size_t i = 0; i < sizeof acts / sizeof *acts; i++)
		if (acts[i] == id)
			return true;
	return false;
}

START_TEST(who_may_only_look_changes_nothing_and_is_told_why)
{
	struct desk *b = desk_new(ROWS { "b.p", "...", NULL });
	char expected[80];

	/* Its own lock is as good as another session's. */
	b->editor.is_looking = true;
	b->editor.store.access = STORE_LOOKS;
	snprintf(expected, sizeof expected, "Looking only: another session (process %ld)",
		(long)getpid());
	for (enum act_id id = ACT_FIRST; id < ACTS; id++) {
		if (is_for_lookers(id))
			continue;
		desk_do(b, id);
		desk_says(b, expected);
	}
	desk_check(b, ROWS { "b.p", "...", NULL });
	desk_press(b, PRESS_RIGHT);
	check_cursor(b, 1, 0);
	close(b->editor.store.lock.fd);
	b->editor.store.lock.fd = -1;
	desk_press(b, PRESS_DELETE);
	desk_says_whole(b, "Looking only: another session was drawing this plot and has left; "
		"start again to draw. > Save as another file makes a plot of your own of it.");
	desk_type(b, "<");
	ck_assert(b->editor.is_over);
	desk_free(b);
}
END_TEST

START_TEST(every_act_has_its_own_identity_keys_and_name_and_fits_the_lists)
{
	for (enum act_id id = ACT_FIRST; id < ACTS; id++) {
		const struct act *act = acts_get(id);

		ck_assert_int_eq(act->id, id);
		ck_assert_msg(!!act->run + !!act->run_with + !!act->run_by_key == 1,
			"\"%s\" has one function", act->name);
		for (enum act_id other = ACT_FIRST; other < id; other++)
			ck_assert_str_ne(act->name, acts_get(other)->name);
		for (int i = 0; i < KEY_RANGES_MOST && act->keys[i].first != PRESS_NOTHING; i++)
			for (int key = act->keys[i].first; key <= act->keys[i].last; key++)
				ck_assert_msg(acts_find(key) == act, "key %d is taken twice", key);
		/* The form's 46 columns less a margin of 2 and a blank between. */
		ck_assert_msg(width_of(act->wish) <= 31, "\"%s\" is too long", act->wish);
		ck_assert_msg(width_of(act->key_name) <= 12, "\"%s\" is too long", act->key_name);
		ck_assert_msg(width_of(act->name) <= 31, "\"%s\" is too long", act->name);
	}
}
END_TEST

/* Two rows with one identity would leave the second one out of all lists. */
START_TEST(every_row_of_every_table_is_the_act_of_its_identity)
{
	int rows = 0;

	for (int i = 0; i < ACT_GROUPS; i++)
		for (int j = 0; j < act_groups[i]->count; j++, rows++)
			ck_assert_ptr_eq(acts_get(act_groups[i]->acts[j].id),
				&act_groups[i]->acts[j]);
	ck_assert_int_eq(rows, ACTS - ACT_FIRST);
}
END_TEST

START_TEST(no_act_is_a_letter)
{
	for (int key = 0; key < 0x110000; key++)
		if ((key >= 'a' && key <= 'z') || (key >= 'A' && key <= 'Z'))
			ck_assert_int_eq(acts_find(key)->id, ACT_TAKE);
		else if (key > 0x7f || key == PRESS_NOTHING)
			ck_assert_ptr_null(acts_find(key));
}
END_TEST

static void add_laying(TCase *laying)
{
	tcase_add_test(laying, a_letter_of_the_legend_is_taken_in_hand);
	tcase_add_test(laying,
		a_letter_that_is_not_in_the_legend_does_nothing_but_name_those_that_are);
	tcase_add_test(laying, space_lays_what_is_in_hand_and_delete_lifts_it);
	tcase_add_test(laying, a_trail_lays_every_cell_on_the_way);
	tcase_add_test(laying, a_trail_does_not_follow_to_a_place);
	tcase_add_test(laying, two_pegs_fill_or_frame_a_rectangle);
	tcase_add_test(laying, a_peg_can_be_taken_out_or_kept);
	tcase_add_test(laying, a_flood_lays_over_one_patch);
	tcase_add_test(laying, esc_goes_one_step_back_and_never_loses_a_cell);
	tcase_add_test(laying, strokes_are_taken_back_and_put_back_where_they_happened);
	tcase_add_test(laying, there_is_an_end_to_taking_back);
}

static void add_mirror(TCase *mirror)
{
	int kinds = sizeof mirrored / sizeof *mirrored;

	tcase_add_loop_test(mirror, every_stroke_lays_its_images_too, 0, kinds);
	tcase_add_loop_test(mirror, a_frame_and_a_flood_have_images_too, 0, kinds);
	tcase_add_test(mirror, mirror_keys_turn_their_own_part_on_and_off);
	tcase_add_test(mirror, turning_the_mirror_on_counts_its_faults);
	tcase_add_test(mirror, images_outside_the_plan_are_said_once_for_each_turn_of_the_mirror);
	tcase_add_test(mirror, a_fold_copies_the_side_with_the_cursor);
	tcase_add_test(mirror, a_fold_asks_for_a_mirror_and_for_a_side);
}

static void add_files(TCase *files)
{
	tcase_add_test(files, saving_writes_the_plot_and_a_change_makes_it_unsaved_again);
	tcase_add_test(files, a_saved_state_behind_a_new_stroke_cannot_be_reached_any_more);
	tcase_add_test(files, a_file_changed_by_somebody_else_is_written_over_only_if_so_told);
	tcase_add_test(files, what_cannot_be_saved_is_said_and_stays_unsaved);
	tcase_add_test(files, a_takeoff_goes_beside_the_plot_as_text_or_by_its_name_as_json);
	tcase_add_test(files, a_part_of_the_takeoff_is_written_by_itself_beside_the_plot);
	tcase_add_test(files, a_table_goes_by_its_name_and_what_is_filled_in_is_not_lost_unasked);
	tcase_add_test(files, a_takeoff_that_is_written_tells_of_its_snags);
	tcase_add_test(files, a_takeoff_replaces_another_file_only_if_so_told_and_never_the_plot);
	tcase_add_test(files, a_takeoff_is_not_written_over_the_price_book);
	tcase_add_test(files, a_takeoff_is_written_with_the_price_book_as_its_file_is_now);
	tcase_add_test(files, leaving_asks_only_where_something_is_unsaved);
	tcase_add_test(files, save_and_leave_does_both_or_neither);
}

static void add_table(TCase *table)
{
	tcase_add_test(table, the_list_of_all_acts_names_each_key_and_does_what_is_picked);
	tcase_add_test(table, help_goes_by_what_one_wants_to_do);
	tcase_add_test(table, pausing_and_drawing_afresh_are_handed_on);
	tcase_add_test(table, a_key_without_an_act_changes_nothing);
	tcase_add_test(table, who_may_only_look_changes_nothing_and_is_told_why);
	tcase_add_test(table, every_act_has_its_own_identity_keys_and_name_and_fits_the_lists);
	tcase_add_test(table, every_row_of_every_table_is_the_act_of_its_identity);
	tcase_add_test(table, no_act_is_a_letter);
}

/* Each row of the list of cards, and whatever it asks. */
START_TEST(a_card_that_is_left_changes_nothing_and_says_nothing)
{
	struct desk *b = desk_new(ROWS { "bbpplS", "bbppl.", NULL });
	char rows[sizeof b->offered], *left = rows, *row;
	const char *answers[] = { NULL, "", NULL };

	plot_add_lines(editor_edit(&b->editor), "extra \"Boards\" 3 each\n"
		"fence \"Pickets\"\n  run 0,0 6,0\nhouse \"Home\"\n  from 0,-9 to 6,-1\n"
		"plant v \"Sage\"\n  at 5,1\n");
	editor_stroke(&b->editor);
	desk_answer(b, ROWS { "", NULL });
	desk_do(b, ACT_CARDS);
	memcpy(rows, b->offered, sizeof rows);
	while ((row = strsep(&left, "\n")) && *row) {
		*strrchr(row, ':') = '\0'; /* and a note behind it */
		text_clear(&b->editor.message);
		desk_answered(b);
		answers[0] = row;
		desk_answer(b, answers);
		desk_do(b, ACT_CARDS);
		ck_assert_msg(!b->editor.message.length, "%s: %s", row, b->editor.message.bytes);
		ck_assert_int_eq(b->editor.position, 1);
	}
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("acts");
	TCase *moving = suite_case(suite, "moving"), *pages = suite_case(suite, "pages");

	tcase_add_test(moving, home_end_and_the_page_keys_go_to_the_edges);
	tcase_add_test(moving, a_place_is_gone_to_by_its_distances);
	tcase_add_test(moving,
		a_place_beyond_the_plan_is_refused_and_one_without_a_unit_is_in_feet);
	add_laying(suite_case(suite, "laying"));
	add_mirror(suite_case(suite, "mirror"));
	tcase_add_test(pages, pages_are_turned_and_picked);
	tcase_add_test(pages, a_page_is_turned_down_and_up_again);
	tcase_add_test(pages, the_plots_card_sets_its_title_and_axis_in_one_step);
	tcase_add_test(pages, a_card_refuses_what_the_file_would_refuse);
	tcase_add_test(pages, a_beds_card_shows_what_is_set_and_sets_the_rest);
	tcase_add_test(pages, a_card_that_is_left_changes_nothing_and_says_nothing);
	add_files(suite_case(suite, "files"));
	add_table(suite_case(suite, "table"));
	return suite;
}
