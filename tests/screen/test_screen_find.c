/* Lists at a terminal: what is typed finds its row or nothing at all; keys that a list shows work
 * in it; columns stay. */

#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <stdio.h>
#include <string.h>

/* ---- Everyday words -------------------------------------------------------------------------- */

struct saying {
	const char *list, *typed, *shown; /* shown: once Enter has done what was found */
};

static const struct saying sayings[] = {
	{ "!", "print", "Write which part of the takeoff?" },
	{ "!", "undo", "There is no stroke to take back." },
	{ "!", "price", "set it" },
	{ "!", "quit", "Leave without saving" },
	{ "!", "size", "Grow or crop it:" },
	{ "?", "exit", "Leave without saving" },
	{ "?", "export", "Write which part of the takeoff?" },
	{ "?", "line", "Peg a corner first" },
	{ "?", "letter", "letter, .: take in hand" },
	{ "?", "rename", "Which card?" },
	{ "?", "zoom out", "The whole plan is in view." },
	{ "?", "Go  PLACE", "Across from the left" },
};

START_TEST(an_everyday_word_finds_its_act)
{
	const struct saying *saying = &sayings[_i];
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	if (strncmp(saying->shown, "Leave", 5) == 0)
		terminal_keys(at.t, "S space");
	terminal_keys(at.t, saying->list);
	terminal_type(at.t, saying->typed);
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, saying->shown);
	table_leave(&at);
}
END_TEST

START_TEST(a_letter_that_the_locale_lacks_is_sought_as_a_question_mark)
{
	struct table at;

	table_lay_out(&at, "court.plot");
	table_start(&at, &(struct launch){ .env = (const char *[]){ "LC_ALL=C", NULL } });
	table_wait(at.t);
	terminal_keys(at.t, "!");
	terminal_wait(at.t, "Esc one step back");
	terminal_type(at.t, "\351");
	terminal_wait(at.t, "Typed: ?. ");
	table_leave(&at);
}
END_TEST

/* ---- What is typed is kept ------------------------------------------------------------------- */

START_TEST(where_nothing_has_what_was_typed_no_row_is_chosen_and_enter_does_nothing)
{
	static const char *const lists[] = { "!", "?", "#", ";", "! G r o w enter" };
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, lists[_i]);
	terminal_wait(at.t, "Esc one step back");
	terminal_type(at.t, "le");
	terminal_wait(at.t, "Typed: le.");
	terminal_type(at.t, "xv");
	terminal_wait(at.t, "Typed: lexv. Nothing here has it; Backspace takes a letter back.");
	ck_assert(!terminal_shows(at.t, "\342\224\200 Go \342\224\200") || _i > 1); /* a heading */
	terminal_keys(at.t, "enter down up home end pagedown pageup tab enter e");
	terminal_wait(at.t, "Typed: lexve. Nothing here has it");
	terminal_keys(at.t, "backspace x3");
	terminal_wait(at.t, "Typed: le.");
	terminal_wait(at.t, "Picking");
	terminal_wait(at.t, "court.plot, saved");
	terminal_keys(at.t, "escape");
	terminal_wait_gone(at.t, "Typed");
	terminal_wait(at.t, "Picking");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "Drawing");
	table_leave(&at);
}
END_TEST

START_TEST(only_rows_that_fit_are_listed_under_the_headings_of_their_groups)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "?");
	terminal_wait(at.t, "I want to");
	terminal_wait(at.t, "\342\224\200 Go \342\224\200");
	terminal_wait(at.t, "\342\224\200 See \342\224\200");
	terminal_until(at.t, shown_at(at.t, "go to another cell"));
	terminal_type(at.t, "gate");
	terminal_wait(at.t, "Typed: gate.");
	terminal_until(at.t, shown_at(at.t, "set a gate in a fence"));
	ck_assert_int_ge(terminal_find(at.t, "take a gate out again"), 0);
	ck_assert_int_ge(terminal_find(at.t, "\342\224\200 Fence \342\224\200"), 0);
	ck_assert_int_eq(terminal_find(at.t, "\342\224\200 Go \342\224\200"), -1);
	ck_assert_int_eq(terminal_find(at.t, "go to another cell"), -1);
	ck_assert_int_eq(terminal_find(at.t, "lay a fence along"), -1);
	/* Enter takes what the cursor is on. */
	terminal_keys(at.t, "down");
	terminal_until(at.t, shown_at(at.t, "take a gate out again"));
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "There is no gate here.");
	table_leave(&at);
}
END_TEST

START_TEST(for_what_no_act_does_there_is_an_answer)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "!");
	terminal_type(at.t, "open");
	terminal_wait(at.t, "Typed: open. Leave, then name the other file: parterre FILE");
	terminal_keys(at.t, "enter");
	terminal_settle(at.t);
	terminal_wait(at.t, "Typed: open.");
	table_leave(&at);
}
END_TEST

/* ---- Headings -------------------------------------------------------------------------------- */

/* Steps go over them; the one above the chosen row stays in view. */
START_TEST(headings_are_never_chosen)
{
	struct table at;

	table_sit(&at, "court.plot", 18, 60);
	terminal_keys(at.t, "!");
	terminal_until(at.t, shown_at(at.t, "Move"));
	terminal_keys(at.t, "up");
	terminal_keys(at.t, "down x6");
	terminal_until(at.t, shown_at(at.t, "Farther"));
	terminal_keys(at.t, "up");
	terminal_until(at.t, shown_at(at.t, "Step"));
	terminal_keys(at.t, "end");
	terminal_until(at.t, shown_at(at.t, "Help"));
	terminal_keys(at.t, "pageup x9");
	terminal_until(at.t, shown_at(at.t, "Move"));
	ck_assert_int_eq(terminal_find(at.t, "\342\224\200 Go \342\224\200"),
		terminal_cursor(at.t).row - 1);
	terminal_keys(at.t, "pagedown x9");
	terminal_until(at.t, shown_at(at.t, "Help"));
	terminal_keys(at.t, "home");
	terminal_until(at.t, shown_at(at.t, "Move"));
	table_leave(&at);
}
END_TEST

static void click(struct terminal *t, int row)
{
	char bytes[64];

	snprintf(bytes, sizeof bytes, "\033[<0;50;%dM\033[<0;50;%dm", row + 1, row + 1);
	terminal_type(t, bytes);
}

START_TEST(a_click_on_an_answer_picks_it_and_one_on_a_heading_nothing)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "! M o u s e enter");
	terminal_wait(at.t, "Mouse on");
	terminal_keys(at.t, "! end");
	terminal_until(at.t, shown_at(at.t, "Help"));
	click(at.t, terminal_find(at.t, "\342\224\200 Program \342\224\200"));
	terminal_settle(at.t);
	terminal_wait(at.t, "Picking");
	ck_assert(shown_at(at.t, "Help"));
	click(at.t, terminal_find(at.t, "Leave  "));
	terminal_until_end(at.t, terminal_is_over(at.t));
	ck_assert_int_eq(terminal_end(at.t).code, 0);
	table_leave(&at);
}
END_TEST

/* ---- Keys ------------------------------------------------------------------------------------ */

static const struct saying keyings[] = {
	{ "enter", "[", "Flipped, left for right" },
	{ "enter", "]", "Flipped, top for bottom" },
	{ "enter", "}", "Turned a quarter clockwise" },
	{ "enter", " ", "It lies there already." },
	{ "enter", "\033[3~", "Lifted, and still carried" },
	{ "escape enter right enter", ":", "Along the rectangle" },
};

/* Marks the left bed, 5 by 3 cells from 1,1. */
#define MARK "right down enter right x4 down x2 enter M a r k enter "

START_TEST(a_key_that_a_list_shows_works_in_it)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, MARK);
	terminal_wait(at.t, "Go on; Space stamps");
	terminal_keys(at.t, keyings[_i].list);
	terminal_wait(at.t, "Esc one step back");
	terminal_type(at.t, keyings[_i].typed);
	terminal_wait(at.t, keyings[_i].shown);
	table_leave(&at);
}
END_TEST

START_TEST(esc_is_shown_at_no_row_since_it_leaves_the_list)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, MARK "enter");
	terminal_wait(at.t, "Drop the mark");
	ck_assert_ptr_null(strstr(terminal_row(at.t, terminal_find(at.t, "Drop the mark")), "Esc"));
	table_leave(&at);
}
END_TEST

/* Once a word is begun, a blank and a sign are part of it. */
START_TEST(in_a_word_keys_are_typed)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, MARK "enter");
	terminal_wait(at.t, "Drop the mark");
	terminal_type(at.t, "it h");
	terminal_wait(at.t, "Typed: it h.");
	terminal_until(at.t, shown_at(at.t, "Move it here"));
	ck_assert_int_eq(terminal_find(at.t, "Lift it"), -1);
	terminal_type(at.t, "[");
	terminal_wait(at.t, "Typed: it h[. Nothing here has it");
	table_leave(&at);
}
END_TEST

/* Help tells of keys that work elsewhere: there, a sign is looked up. */
START_TEST(in_the_lists_of_acts_a_sign_finds_the_act_that_has_it)
{
	static const struct saying signs[] = {
		{ "?", "@", "go to a measured place" }, { "!", "-", "Mirror top-bottom" },
		{ "?", ">", "save, or write something out" }, { "!", ".", "Take in hand" },
	};
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, signs[_i].list);
	terminal_type(at.t, signs[_i].typed);
	terminal_wait(at.t, "Typed: ");
	terminal_until(at.t, shown_at(at.t, signs[_i].shown));
	table_leave(&at);
}
END_TEST

/* ---- Columns --------------------------------------------------------------------------------- */

static const char long_plot[] = "parterre-plot 1\nunits imperial\ncell 1 ft\n\n"
	"bed b \"The bed with all the old roses along a wall\"\npath p \"Path\"\n\n"
	"ground 2 x 2\n  bp\n  ..\n";

START_TEST(a_name_that_is_too_long_is_cut_and_the_column_beside_it_stays)
{
	struct table at;

	table_clear(&at, "long.plot");
	table_write(&at, long_plot);
	table_start(&at, NULL);
	table_wait(at.t);
	terminal_keys(at.t, "#");
	terminal_wait(at.t, "Which card?");
	terminal_wait(at.t, "b The bed with all the old roses alon... bed ");
	terminal_wait(at.t, "p Path                                   path");
	/* It is chosen, so the message has it whole. */
	terminal_wait(at.t, "b The bed with all the old roses along a wall  ");
	terminal_type(at.t, "old");
	terminal_wait(at.t, "b The bed with all the old roses along a wall. Typed: old.");
	terminal_keys(at.t, "backspace x3 down");
	terminal_until(at.t, shown_at(at.t, "p Path"));
	ck_assert_int_eq(terminal_find(at.t, "along a wall"), -1);
	terminal_type(at.t, "path");
	terminal_until(at.t, shown_at(at.t, "p Path"));
	terminal_wait(at.t, "p Path                                   path");
	table_leave(&at);
}
END_TEST

/* What somebody types in the list of cards, and the card that is chosen then. */
static const struct {
	const char *typed, *card;
} carded[] = {
	{ "drip", "Allowed for: watering" }, { "watered", "b Raised bed" },
	{ "irrigation", "Allowed for: watering" }, { "site", "The plot itself" },
	{ "latitude", "The plot itself" }, { "compass", "The plot itself" },
	{ "bearing", "The plot itself" }, { "planting", "Add a plant" },
	{ "month plant", "Add a plant" }, { "kerf", "Allowed for: walls and soil" },
};

START_TEST(a_card_is_found_by_its_fields)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "#");
	terminal_wait(at.t, "Which card?");
	terminal_wait(at.t, ", more below. Type what you seek.");
	terminal_type(at.t, carded[_i].typed);
	terminal_until(at.t, shown_at(at.t, carded[_i].card));
	table_leave(&at);
}
END_TEST

START_TEST(a_list_says_where_more_of_it_is)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "! down x40");
	terminal_wait(at.t, ", more above and below. Type what you seek.");
	terminal_keys(at.t, "end");
	terminal_wait(at.t, ", more above. Type what you seek.");
	table_leave(&at);
}
END_TEST

/* What would be picked is marked as far as the widest answer goes, here "Planting". */
START_TEST(the_mark_is_as_wide_as_the_widest_answer)
{
	struct table at;
	int row, marked = 0;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, ";");
	terminal_wait(at.t, "Which page?");
	terminal_until(at.t, shown_at(at.t, "Areas"));
	row = terminal_cursor(at.t).row;
	for (int column = 0; column < 80; column++)
		marked += terminal_cell(at.t, row, column).reverse;
	ck_assert_int_eq(marked, (int)strlen("Planting"));
	table_leave(&at);
}
END_TEST

START_TEST(the_first_row_says_what_is_going_on_in_plain_words)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, ";");
	terminal_wait(at.t, "Picking   court.plot");
	terminal_keys(at.t, "escape @");
	terminal_wait(at.t, "Typing    court.plot");
	table_leave(&at);
}
END_TEST

/* The row that a terminal of so many rows shows last of a list. */
static bool is_last_shown(struct terminal *t, int rows, const char *answer)
{
	return strstr(terminal_row(t, rows - 3), answer) != NULL;
}

START_TEST(the_end_of_a_list_stays_at_the_foot_of_a_higher_screen)
{
	struct table at;

	table_sit(&at, "court.plot", 18, 60);
	terminal_keys(at.t, "!");
	terminal_wait(at.t, "All that can be done");
	terminal_keys(at.t, "end");
	terminal_until(at.t, is_last_shown(at.t, 18, "Help"));
	terminal_resize(at.t, 30, 60);
	terminal_until(at.t, is_last_shown(at.t, 30, "Help"));
	terminal_resize(at.t, 18, 60);
	terminal_until(at.t, is_last_shown(at.t, 18, "Help"));
	terminal_keys(at.t, "up x4");
	terminal_until(at.t, is_last_shown(at.t, 18, "Help"));
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen_find");
	TCase *words = suite_case(suite, "words"), *keys = suite_case(suite, "keys");
	TCase *headings = suite_case(suite, "headings"), *columns = suite_case(suite, "columns");

	tcase_add_loop_test(words, an_everyday_word_finds_its_act, 0,
		sizeof sayings / sizeof *sayings);
	tcase_add_test(words, a_letter_that_the_locale_lacks_is_sought_as_a_question_mark);
	tcase_add_loop_test(words,
		where_nothing_has_what_was_typed_no_row_is_chosen_and_enter_does_nothing, 0, 5);
	tcase_add_test(words, only_rows_that_fit_are_listed_under_the_headings_of_their_groups);
	tcase_add_test(words, for_what_no_act_does_there_is_an_answer);
	tcase_add_test(headings, headings_are_never_chosen);
	tcase_add_test(headings, a_click_on_an_answer_picks_it_and_one_on_a_heading_nothing);
	tcase_add_loop_test(keys, a_key_that_a_list_shows_works_in_it, 0,
		sizeof keyings / sizeof *keyings);
	tcase_add_test(keys, esc_is_shown_at_no_row_since_it_leaves_the_list);
	tcase_add_test(keys, in_a_word_keys_are_typed);
	tcase_add_loop_test(keys, in_the_lists_of_acts_a_sign_finds_the_act_that_has_it, 0, 4);
	tcase_add_test(columns, a_name_that_is_too_long_is_cut_and_the_column_beside_it_stays);
	tcase_add_loop_test(words, a_card_is_found_by_its_fields, 0,
		sizeof carded / sizeof *carded);
	tcase_add_test(words, a_list_says_where_more_of_it_is);
	tcase_add_test(columns, the_mark_is_as_wide_as_the_widest_answer);
	tcase_add_test(columns, the_end_of_a_list_stays_at_the_foot_of_a_higher_screen);
	tcase_add_test(columns, the_first_row_says_what_is_going_on_in_plain_words);
	return suite;
}
