/* Cards with one field at a terminal: asked on the message row, with all of the plan in view. */
#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <string.h>

/* Pegs a rectangle of 4 by 3 cells. */
#define PEG "enter right x3 down x2"
#define RUN PEG " enter S t r a i g h t"
#define LIST "!"

static void sit_at_run(struct table *at, int rows, int columns)
{
	table_sit(at, "court.plot", rows, columns);
	terminal_keys(at->t, RUN " enter");
	terminal_wait(at->t, "Enter lay it");
}

static bool is_asking(struct terminal *t, int rows)
{
	return strstr(terminal_row(t, rows - 1), "Enter lay it  Esc leave") &&
		terminal_cursor(t).row == rows - 2;
}

/* The first row says what state it is in; of the rest only the two last are another's. */
START_TEST(a_card_with_one_field_leaves_the_plan_and_the_panel_as_they_are)
{
	static const struct {
		int rows, columns;
		int above; /* rows that the unit takes where there is no room beside the field */
		const char *row;
	} sizes[] = {
		{ 24, 80, 0, "Lay a straight run  Width 1 ft  " },
		{ 24, 80, 0, "  A number alone is in feet." },
		{ 40, 120, 0, "  How wide the run is, all of it. A number alone is in feet." },
		{ 18, 60, 1, "Lay a straight run  Width 1 ft  " },
		{ 18, 60, 1, "A number alone is in feet." },
	};
	struct table at;

	for (size_t i = 0; i < sizeof sizes / sizeof *sizes; i++) {
		int rows = sizes[i].rows, columns = sizes[i].columns;
		int kept = rows - 3 - sizes[i].above;
		struct text before;

		table_sit(&at, "court.plot", rows, columns);
		terminal_keys(at.t, PEG);
		terminal_wait(at.t, "The rectangle: 4 ft x 3 ft");
		shown_wait_counted(at.t);
		before = shown_picture(at.t, 1, kept, columns);
		terminal_keys(at.t, "enter S t r a i g h t enter");
		terminal_wait(at.t, "Enter lay it");
		terminal_until(at.t, is_asking(at.t, rows));
		ck_assert_ptr_nonnull(strstr(terminal_row(at.t, rows - 2), "Width 1 ft"));
		terminal_until(at.t, shown_is(at.t, &before, 1, kept, columns));
		ck_assert(terminal_shows(at.t, sizes[i].row));
		text_fini(&before);
		table_leave(&at);
	}
}
END_TEST

START_TEST(which_part_is_asked_for_in_words_that_stand_there_whole)
{
	static const char *const answers[] = { "Front            plan, snags and cautions",
		"Dig and stone    what is dug and laid on it",
		"Filling the beds liner, soil and mulch",
		"Planting         what grows where" };
	struct table at;

	table_sit(&at, "court.plot", 18, 60);
	terminal_keys(at.t, "> t a k enter");
	for (size_t i = 0; i < sizeof answers / sizeof *answers; i++)
		terminal_wait(at.t, answers[i]);
	terminal_keys(at.t, "end");
	terminal_wait(at.t, "Areas and edges  how much of each ground");
	terminal_wait(at.t, "Advice           what small changes spare");
	table_leave(&at);
}
END_TEST

/* Asked from a list, which goes. */
START_TEST(to_ask_and_to_leave_costs_few_bytes)
{
	enum { OPENED_MOST = 1000, LEFT_MOST = 400, TYPED_MOST = 60 };
	struct traffic opened, typed, left;
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_settle(at.t);
	terminal_keys(at.t, "> t a k");
	terminal_wait(at.t, "Typed: tak");
	terminal_settle(at.t);
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Write which part of the takeoff?");
	terminal_settle(at.t);
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Write the takeoff to a file  File /");
	opened = terminal_settle(at.t);
	ck_assert_msg(opened.bytes <= OPENED_MOST, "opened: %zu bytes", opened.bytes);
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "Drawing");
	left = terminal_settle(at.t);
	ck_assert_msg(left.bytes <= LEFT_MOST, "left: %zu bytes", left.bytes);
	terminal_keys(at.t, "> t a k enter enter x"); /* in place of a name of any length */
	terminal_wait(at.t, "File x  ");
	terminal_settle(at.t);
	terminal_keys(at.t, "y");
	typed = terminal_settle(at.t);
	ck_assert_msg(typed.bytes <= TYPED_MOST, "typed: %zu bytes", typed.bytes);
	table_leave(&at);
}
END_TEST

/* A frame over what is laid already: what closing it draws is the frame. */
START_TEST(to_answer_costs_few_bytes)
{
	enum { LAID_MOST = 1000 };
	struct traffic laid;
	struct table at;

	sit_at_run(&at, 24, 80);
	terminal_settle(at.t);
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "A width of 1 ft");
	laid = terminal_settle(at.t);
	ck_assert_msg(laid.bytes <= LAID_MOST, "%zu bytes", laid.bytes);
	table_leave(&at);
}
END_TEST

/* By its name in the list of acts, or picked after a peg; where the cursor is on a bed. */
START_TEST(every_card_with_one_field_is_asked_so)
{
	static const struct {
		const char *keys, *row;
	} cards[] = {
		{ PEG " enter F r a m e enter", "Frame it  Thickness 1 ft " },
		{ PEG " enter D i s c enter", "Lay a disc  Diameter 3 ft " },
		{ PEG " enter C o r n e r s enter", "Round its corners  Radius 1 ft " },
		{ LIST " d i s c enter", "Lay a disc  Diameter 1 ft " },
		{ LIST " N a m e space t h i s enter",
			"This place: b Raised bed  Name [none of its own] " },
		{ LIST " c o p y enter", "Write a copy to another file  File /" },
		{ LIST " a n o t h e r space f i l e enter",
			"Save as another file, and go on there  File /" },
		{ LIST " t a k e o f f enter enter", "Write the takeoff to a file  File /" },
	};
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "right down");
	terminal_keys(at.t, cards[_i].keys);
	terminal_wait(at.t, cards[_i].row);
	ck_assert_ptr_nonnull(strstr(terminal_row(at.t, 22), cards[_i].row));
	terminal_until(at.t, terminal_cursor(at.t).row == 22);
	table_leave(&at);
}
END_TEST

START_TEST(what_is_wrong_stands_above_and_what_is_typed_then_takes_its_place)
{
	struct table at;

	sit_at_run(&at, 24, 80);
	terminal_type(at.t, "99");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Width: found 99 ft, expected 1 ft to 8 ft, 1 to 8 cells");
	ck_assert_int_eq(terminal_find(at.t, "Width: found 99 ft"), 21);
	terminal_until(at.t, is_asking(at.t, 24));
	terminal_type(at.t, "2");
	terminal_wait(at.t, "Width 2  ");
	terminal_wait_gone(at.t, "Width: found");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "A width of 2 ft: 2 cells");
	table_leave(&at);
}
END_TEST

/* On the smallest screen what is wrong takes two rows. */
START_TEST(what_is_wrong_is_said_in_full_on_the_smallest_screen)
{
	struct table at;

	sit_at_run(&at, 18, 60);
	terminal_type(at.t, "99");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Width: found 99 ft, expected 1 ft to 8 ft, 1 to 8 cells: no");
	terminal_wait(at.t, "more than the plan");
	ck_assert_int_eq(terminal_find(at.t, "more than the plan"), 15);
	terminal_until(at.t, is_asking(at.t, 18));
	table_leave(&at);
}
END_TEST

START_TEST(nothing_that_was_typed_is_dropped_unasked)
{
	struct table at;

	sit_at_run(&at, 24, 80);
	terminal_type(at.t, "3");
	terminal_wait(at.t, "Width 3  ");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "What was typed is not set");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "Width 3  ");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "What was typed is not set");
	terminal_type(at.t, "Set");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "A width of 3 ft: 3 cells");
	table_leave(&at);
}
END_TEST

static void open_name(struct table *at, int rows, int columns)
{
	table_sit(at, "court.plot", rows, columns);
	terminal_keys(at->t, "right down " LIST " N a m e space t h i s enter");
	terminal_wait(at->t, "Name [none of its own]");
}

/* In ASCII and beyond: a mark, a wide letter, a flag of two characters. */
START_TEST(a_name_is_typed_pasted_edited_by_the_line_keys_and_saved)
{
	struct table at;

	open_name(&at, 24, 80);
	terminal_type(at.t, "\033[200~Quince\rwalk\033[201~");
	terminal_wait(at.t, "Name Quince walk ");
	terminal_wait(at.t, "Name: ends of lines and tabs went in as blanks.");
	terminal_keys(at.t, "home right -");
	terminal_wait(at.t, "Name Q-uince walk ");
	terminal_keys(at.t, "backspace end ctrl-w");
	terminal_type(at.t, "e\u0301t\u00E9 \u5EAD \U0001F1EB\U0001F1F7");
	terminal_wait(at.t, "Name Quince e\u0301t\u00E9 \u5EAD");
	terminal_keys(at.t, "home ctrl-k");
	terminal_wait(at.t, "Name [none of its own]");
	terminal_type(at.t, "\u5EADe\u0301");
	terminal_wait(at.t, "Name \u5EADe\u0301 ");
	terminal_keys(at.t, "left backspace");
	terminal_wait(at.t, "Name e\u0301 ");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Named: e\u0301.");
	table_leave(&at);
}
END_TEST

START_TEST(a_long_text_moves_within_the_field_and_is_seen_whole_above)
{
	static const char words[] = "The first of all beds and the one nearest to the pond";
	struct table at;

	open_name(&at, 24, 80);
	terminal_type(at.t, words);
	terminal_wait(at.t, words);
	ck_assert_int_eq(terminal_find(at.t, words), 21);
	terminal_until(at.t, terminal_cursor(at.t).row == 22);
	ck_assert_ptr_nonnull(strstr(terminal_row(at.t, 22), "nearest to the pond "));
	ck_assert_ptr_null(strstr(terminal_row(at.t, 22), "The first"));
	terminal_keys(at.t, "home");
	terminal_wait(at.t, "Name The first of all beds");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "What was typed is not set");
	table_leave(&at);
}
END_TEST

/* The longest is some rows; the plan stays in view. */
START_TEST(a_text_of_many_rows_leaves_half_the_plan)
{
	struct text words = TEXT_EMPTY;
	struct table at;

	text_add_repeat(&words, 'z', 3000);
	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "> t a k enter enter");
	terminal_wait(at.t, "takeoff to a file  File /");
	terminal_type(at.t, words.bytes);
	terminal_wait(at.t, "zzzzzzzz");
	terminal_settle(at.t);
	ck_assert_int_eq(terminal_find(at.t, "zzzz"), 12);
	ck_assert_int_eq(terminal_cursor(at.t).row, 22);
	ck_assert_ptr_nonnull(strstr(terminal_row(at.t, 22), "to a file  File zz"));
	text_fini(&words);
	table_leave(&at);
}
END_TEST

START_TEST(the_takeoffs_file_is_of_kinds_and_a_parts_is_text)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 150);
	terminal_keys(at.t, _i ? "> t a k enter down enter" : "> t a k enter enter");
	terminal_wait(at.t, _i ? "As text." : "A spreadsheet takes .csv, programs .json.");
	table_leave(&at);
}
END_TEST

START_TEST(a_title_without_room_is_cut_and_the_field_stays)
{
	static const char plot[] = "parterre-plot 1\nunits imperial\ncell 1 ft\n\n"
		"bed b \"The bed with all the old roses by the oak wall\"\n\n"
		"ground 2 x 2\n  bb\n  ..\n";
	struct table at;

	table_clear(&at, "long.plot");
	table_write(&at, plot);
	table_start(&at, &(struct launch){ .rows = 18, .columns = 60 });
	table_wait(at.t);
	terminal_keys(at.t, LIST " N a m e space t h i s enter");
	terminal_wait(at.t, "This place: b The bed with all...  Name [none of its own]");
	table_leave(&at);
}
END_TEST

START_TEST(a_new_size_keeps_what_was_typed)
{
	struct table at;

	sit_at_run(&at, 24, 80);
	terminal_type(at.t, "2 ft");
	terminal_wait(at.t, "Width 2 ft ");
	terminal_resize(at.t, 18, 60);
	terminal_until(at.t, is_asking(at.t, 18));
	ck_assert(terminal_shows(at.t, "Width 2 ft "));
	terminal_resize(at.t, 10, 40);
	terminal_wait(at.t, "This window has 40 columns");
	terminal_keys(at.t, "x y enter");
	terminal_resize(at.t, 50, 150);
	terminal_until(at.t, is_asking(at.t, 50));
	ck_assert(terminal_shows(at.t, "Width 2 ft "));
	ck_assert(terminal_shows(at.t, "How wide the run is, all of it. A number alone is in"));
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "A width of 2 ft: 2 cells");
	table_leave(&at);
}
END_TEST

START_TEST(the_mouse_does_nothing_meanwhile)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, LIST " m o u s e enter");
	terminal_wait(at.t, "Mouse on");
	terminal_keys(at.t, RUN " enter");
	terminal_wait(at.t, "Enter lay it");
	terminal_type(at.t,
		"\033[<0;20;5M\033[<0;20;5m\033[<65;20;5M\033[<0;30;23M\033[<0;30;23m");
	terminal_type(at.t, "2");
	terminal_wait(at.t, "Width 2  ");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "A width of 2 ft: 2 cells");
	table_leave(&at);
}
END_TEST

/* Its last two rows are covered by what is wrong: the plan is higher as long as that is there. */
START_TEST(what_is_wrong_never_hides_the_cursor)
{
	enum { PLAN_LAST = 19 }; /* row of the plan in view at 24 rows */
	struct text before;
	struct table at;

	table_sit(&at, "great-court.plot", 24, 80);
	terminal_keys(at.t, "enter 5 right 1 9 down");
	terminal_until(at.t, shown_on_cell(at.t, 5, PLAN_LAST));
	terminal_keys(at.t, "enter S t r a i g h t enter");
	terminal_wait(at.t, "Enter lay it");
	terminal_settle(at.t);
	ck_assert_int_eq(shown_ground(at.t, 5, PLAN_LAST), SHOWN_CURSOR);
	before = shown_picture(at.t, 1, 20, 80);
	terminal_type(at.t, "999");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Width: found 999");
	terminal_until(at.t, shown_ground(at.t, 5, PLAN_LAST - 2) == SHOWN_CURSOR);
	terminal_type(at.t, "1");
	terminal_wait_gone(at.t, "Width: found 999");
	terminal_until(at.t, shown_ground(at.t, 5, PLAN_LAST) == SHOWN_CURSOR);
	terminal_until(at.t, shown_is(at.t, &before, 1, 20, 80));
	text_fini(&before);
	table_leave(&at);
}
END_TEST

enum { CARDS = 8 };

Suite *test_suite(void)
{
	Suite *suite = suite_create("prompt");
	TCase *row = suite_case(suite, "row"), *typing = suite_case(suite, "typing");

	tcase_add_test(row, a_card_with_one_field_leaves_the_plan_and_the_panel_as_they_are);
	tcase_add_test(row, which_part_is_asked_for_in_words_that_stand_there_whole);
	tcase_add_test(row, to_ask_and_to_leave_costs_few_bytes);
	tcase_add_test(row, to_answer_costs_few_bytes);
	tcase_add_loop_test(row, every_card_with_one_field_is_asked_so, 0, CARDS);
	tcase_add_test(row, what_is_wrong_stands_above_and_what_is_typed_then_takes_its_place);
	tcase_add_test(row, what_is_wrong_is_said_in_full_on_the_smallest_screen);
	tcase_add_test(row, what_is_wrong_never_hides_the_cursor);
	tcase_add_test(row, a_title_without_room_is_cut_and_the_field_stays);
	tcase_add_test(typing, nothing_that_was_typed_is_dropped_unasked);
	tcase_add_test(typing, a_name_is_typed_pasted_edited_by_the_line_keys_and_saved);
	tcase_add_test(typing, a_long_text_moves_within_the_field_and_is_seen_whole_above);
	tcase_add_loop_test(typing, the_takeoffs_file_is_of_kinds_and_a_parts_is_text, 0, 2);
	tcase_add_test(typing, a_text_of_many_rows_leaves_half_the_plan);
	tcase_add_test(typing, a_new_size_keeps_what_was_typed);
	tcase_add_test(typing, the_mouse_does_nothing_meanwhile);
	return suite;
}
