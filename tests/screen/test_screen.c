/* The program at a terminal: every key and its effect, a whole garden, sizes, forms, pastes,
 * bytes. */

#include "base/file.h"
#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

/* ---- Keys ------------------------------------------------------------------------------------ */

struct pressing {
	const char *keys;
	int x, y;          /* where the cursor is then */
	const char *shown; /* what stands somewhere on the screen; NULL: nothing is asked */
};

static const struct pressing pressings[] = {
	{ "right", 1, 0, "1 ft across, 0 in down" },
	{ "down", 0, 1, "0 in across, 1 ft down" },
	{ "right right left", 1, 0, NULL },
	{ "down down up", 0, 1, NULL },
	{ "1 right", 1, 0, "arrows move  Space" },
	{ "1 2 right", 12, 0, NULL },
	{ "7 down", 0, 7, NULL },
	{ "9", 0, 0, "9 steps: 9 ft   court.plot" },
	{ "ctrl-right", 13, 0, NULL },
	{ "f1", 0, 0, "I want to" },
	{ "f2", 0, 0, "Write the takeoff" },
	{ "f5", 0, 0, "The mirror is off." },
	{ "f9", 0, 0, "The whole plan is in view." },
	{ "end", 13, 0, NULL },
	{ "end home", 0, 0, NULL },
	{ "pagedown", 0, 7, NULL },
	{ "pagedown pageup", 0, 0, NULL },
	{ "p", 0, 0, "hand p Crushed stone" },
	{ "S", 0, 0, "hand S Sundial" },
	{ ".", 0, 0, "hand . open ground" },
	{ "q", 0, 0, "q is not in the legend: b Raised bed, p Crushed stone, l Turf, S Sundial, "
		"." },
	{ "space", 0, 0, "court.plot, not saved" },
	{ "right down delete", 1, 1, "*b Raised bed         28.0" },
	{ "=", 0, 0, "Trail" },
	{ "= down right", 1, 1, "*b Raised bed         34.0" },
	{ "enter", 0, 0, "Pegged" },
	{ "enter right down", 1, 1, "The rectangle: 2 ft x 2 ft, 4.0 sq ft" },
	{ "enter right enter enter", 1, 0, "*b Raised bed         34.0" },
	{ "enter right right down down enter F r a m e enter enter", 2, 2,
		"*. Open ground        31.0" },
	{ "*", 0, 0, "*. Open ground         0.0" },
	{ "|", 0, 0, "The mirror is off." },
	{ "-", 0, 0, "Mirror four-way: " },
	{ "%", 0, 0, "Mirror half-turn: " },
	{ "&", 0, 0, "Folded" },
	{ "space backspace", 0, 0, "Taken back" },
	{ "space backspace +", 0, 0, "Put back" },
	{ "tab", 0, 0, "Edges       " },
	{ "shift-tab", 0, 0, "Changed  " },
	{ "; W a l l s enter )", 0, 0, "more above" },
	{ "; W a l l s enter ) (", 0, 0, "more below" },
	{ "escape", 0, 0, "There is nothing to go back from" },
	{ "ctrl-c", 0, 0, "There is nothing to go back from" },
	{ "= escape", 0, 0, "Drawing" },
	{ "> >", 0, 0, "Saved in " },
};

START_TEST(each_key_does_what_it_says)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, pressings[_i].keys);
	terminal_until(at.t, shown_on_cell(at.t, pressings[_i].x, pressings[_i].y));
	if (pressings[_i].shown)
		terminal_wait(at.t, pressings[_i].shown);
	table_leave(&at);
}
END_TEST

struct asking {
	const char *keys, *shown, *left;
};

static const struct asking askings[] = {
	{ ";", "Which page?", "Drawing" },
	{ "@", "Go to a place", "Drawing" },
	{ "#", "Which card?", "Drawing" },
	{ "> t a k enter", "Write which part of the takeoff?", "Drawing" },
	{ "> t a k enter enter", "Write the takeoff to a file", "Drawing" },
	{ "!", "All that can be done", "Drawing" },
	{ "?", "I want to", "Drawing" },
	{ "enter enter", "Take the peg out", "Pegged" },
	{ "space <", "Leave without saving", "Drawing" },
};

START_TEST(each_question_and_form_can_be_left_by_esc_and_by_ctrl_c)
{
	const struct asking *asking = &askings[_i];
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	for (int way = 0; way < 2; way++) {
		terminal_keys(at.t, asking->keys);
		terminal_wait(at.t, asking->shown);
		terminal_keys(at.t, way ? "ctrl-c" : "escape");
		terminal_wait_gone(at.t, asking->shown);
		terminal_until(at.t, strncmp(terminal_row(at.t, 0), asking->left,
			strlen(asking->left)) == 0);
		terminal_keys(at.t, "escape");
	}
	table_leave(&at);
}
END_TEST

START_TEST(a_stroke_is_mirrored_before_the_eyes)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "S space");
	terminal_until(at.t, shown_letter(at.t, 0, 0) == 'S' && shown_letter(at.t, 13, 0) == 'S');
	ck_assert_ptr_nonnull(strstr(terminal_row(at.t, 0), "12 snags  left-right, 1 fault"));
	ck_assert(shown_mark(at.t, 1, 4, "\u25b2")); /* a snag stands before a fault */
	ck_assert(shown_mark(at.t, 12, 4, "\u2260"));
	ck_assert(shown_mark(at.t, 6, 6, "|"));
	table_leave(&at);
}
END_TEST

START_TEST(what_has_changed_since_saving_is_told_on_a_page)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	page_turn_to(at.t, "Changed");
	terminal_wait(at.t, "Nothing has changed since");
	terminal_keys(at.t, "l space");
	terminal_wait(at.t, "More to buy and to haul");
	ck_assert(terminal_shows(at.t, "Turf"));
	terminal_keys(at.t, "> >");
	terminal_wait(at.t, "Nothing has changed since");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "Left over, or less to");
	table_leave(&at);
}
END_TEST

/* Where there is room for two pages, it stands beside the one before it. */
START_TEST(the_page_of_changes_is_made_beside_the_one_before_it)
{
	struct table at;

	table_sit(&at, "court.plot", 50, 160);
	page_turn_to(at.t, "Snags");
	terminal_wait(at.t, "Nothing has changed since");
	terminal_keys(at.t, "l space");
	terminal_wait(at.t, "More to buy and to haul");
	table_leave(&at);
}
END_TEST

START_TEST(a_list_is_walked_jumped_in_and_picked_from)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "; down enter");
	terminal_until(at.t, shown_page(at.t, "Edges"));
	terminal_keys(at.t, "; end enter");
	terminal_until(at.t, shown_page(at.t, "Changed"));
	terminal_keys(at.t, "; home tab shift-tab pagedown pageup up down w");
	terminal_keys(at.t, "enter");
	terminal_until(at.t, shown_page(at.t, "Walls"));
	terminal_keys(at.t, "! T r enter");
	terminal_until(at.t, strncmp(terminal_row(at.t, 0), "Trail", 5) == 0);
	table_leave(&at);
}
END_TEST

START_TEST(a_list_finds_words_inside_and_says_what_was_typed)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "!");
	terminal_wait(at.t, "Type what you seek");
	terminal_keys(at.t, "m a r k e d");
	terminal_wait(at.t, "Typed: marked. 5 of ");
	terminal_until(at.t, shown_at(at.t, "Stamp what is marked"));
	terminal_keys(at.t, "tab");
	terminal_until(at.t, shown_at(at.t, "Move what is marked"));
	terminal_keys(at.t, "z");
	terminal_wait(at.t, "Typed: markedz. Nothing here has it");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "Typed: marked. 5 of ");
	terminal_until(at.t, shown_at(at.t, "Stamp what is marked"));
	terminal_keys(at.t, "down x2"); /* goes on among those found */
	terminal_until(at.t, shown_at(at.t, "Turn what is marked"));
	terminal_wait(at.t, "Typed: marked.");
	terminal_keys(at.t, "escape"); /* stays there in the whole list */
	terminal_wait_gone(at.t, "Typed");
	terminal_until(at.t, shown_at(at.t, "Turn what is marked"));
	terminal_keys(at.t, "c o p y space t o"); /* an act whose name has other words */
	terminal_until(at.t, shown_at(at.t, "Stamp what is marked"));
	terminal_keys(at.t, "backspace x7");
	terminal_wait_gone(at.t, "Typed");
	terminal_keys(at.t, "c a r d enter");
	terminal_wait(at.t, "Which card?");
	terminal_keys(at.t, "t u r enter");
	terminal_wait(at.t, "The lawn l");
	table_leave(&at);
}
END_TEST

START_TEST(a_place_is_typed_corrected_and_gone_to)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "@");
	terminal_wait(at.t, "Across from the left");
	terminal_type(at.t, "3\r");
	terminal_wait(at.t, "Across from the left: 3 is taken as 3 ft.");
	terminal_keys(at.t, "up end");
	terminal_type(at.t, " 6 in");
	terminal_wait(at.t, "3 ft 6 in");
	field_go_to(at.t, "Down from the top");
	terminal_keys(at.t, "backspace");
	terminal_type(at.t, "24 xin");
	terminal_keys(at.t, "left left left delete enter");
	terminal_until(at.t, shown_on_cell(at.t, 3, 2));
	table_leave(&at);
}
END_TEST

/* ---- A whole garden -------------------------------------------------------------------------- */

START_TEST(a_garden_is_begun_drawn_mirrored_saved_opened_again_and_taken_off)
{
	struct table at;
	struct text bytes;
	char path[4096];

	table_clear(&at, "herbs.plot");
	table_start(&at, NULL);
	terminal_wait(at.t, "Begin a new plot");
	terminal_type(at.t, "Herb c\303\266urt");
	field_go_to(at.t, "Width, left to right");
	terminal_type(at.t, "12 ft");
	field_go_to(at.t, "Depth, top to bottom");
	terminal_type(at.t, "8 ft");
	terminal_keys(at.t, "enter enter");
	terminal_wait(at.t, "A new plot.");

	/* Mirror on, a bed of 4 x 3 by two pegs, a path by a trail, lawn by a flood, a sundial. */
	terminal_keys(at.t, "| right down enter 3 right 2 down enter");
	terminal_wait(at.t, "of 4 ft x 3 ft:");
	terminal_keys(at.t, "enter 1 home pagedown p up up = end =");
	terminal_wait(at.t, "b Raised bed         24.0");
	terminal_keys(at.t, "down l *");
	terminal_wait(at.t, "l Turf               24.0");
	terminal_keys(at.t, "S 6 left space");
	terminal_wait(at.t, "S Sundial             2.0");
	terminal_keys(at.t, "backspace + > >");
	terminal_wait(at.t, "herbs.plot, saved");
	terminal_keys(at.t, "> t a k enter enter");
	terminal_wait(at.t, "Write the takeoff to a file");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Takeoff written to ");
	terminal_keys(at.t, "> t a k enter enter");
	terminal_wait(at.t, "Write the takeoff to a file");
	terminal_type(at.t, "~/at-home.txt");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "at-home.txt.");
	snprintf(path, sizeof path, "%s/at-home.txt", terminal_home(at.t));
	ck_assert_int_eq(access(path, F_OK), 0);
	terminal_keys(at.t, "<");
	ck_assert_int_eq(terminal_end(at.t).code, 0);
	terminal_free(at.t);

	bytes = table_file(&at, "herbs.plot");
	ck_assert_str_eq(bytes.bytes, "parterre-plot 1\ntitle \"Herb c\303\266urt\"\n"
		"units imperial\ncell 1 ft\nmirror left-right\n\n"
		"bed b \"Raised bed\"\npath p \"Crushed stone\"\nlawn l \"Turf\"\n"
		"fixture S \"Sundial\"\n\nground 12 x 8\n"
		"  ............\n  .bbbb..bbbb.\n  .bbbb..bbbb.\n  .bbbb..bbbb.\n"
		"  ............\n  pppppppppppp\n  lllllSSlllll\n  llllllllllll\n");
	text_fini(&bytes);
	bytes = table_file(&at, "herbs.txt");
	ck_assert_ptr_nonnull(strstr(bytes.bytes, "parterre takeoff 1\n"));
	ck_assert_ptr_nonnull(strstr(bytes.bytes, "24.0 sq ft"));
	text_fini(&bytes);

	table_start(&at, NULL);
	terminal_wait(at.t, "herbs.plot, saved");
	terminal_wait(at.t, "! menu");
	ck_assert_int_eq(shown_letter(at.t, 10, 3), 'b');
	ck_assert_int_eq(shown_letter(at.t, 6, 6), 'S');
	terminal_keys(at.t, "<");
	ck_assert_int_eq(terminal_end(at.t).code, 0);
	table_leave(&at);
}
END_TEST

START_TEST(a_metric_plot_is_begun_by_turning_the_units)
{
	struct table at;

	table_clear(&at, "new.plot");
	table_start(&at, NULL);
	terminal_wait(at.t, "Begin a new plot");
	field_go_to(at.t, "Units");
	terminal_keys(at.t, "space");
	terminal_wait(at.t, "300 mm");
	terminal_keys(at.t, "left");
	terminal_wait(at.t, "24 ft");
	terminal_keys(at.t, "right");
	field_go_to(at.t, "Width, left to right");
	terminal_type(at.t, "5 m");
	field_go_to(at.t, "Side of a cell");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "5 m is no whole number of cells of 300 mm, but 4800 mm is");
	terminal_wait(at.t, "5100 mm is");
	ck_assert(shown_at(at.t, "Width, left to right"));
	terminal_keys(at.t, "backspace x3");
	terminal_type(at.t, "4.8 m");
	terminal_keys(at.t, "pagedown enter");
	terminal_wait(at.t, "A new plot.");
	terminal_wait(at.t, "In m2");
	terminal_wait(at.t, "28.80");
	table_leave(&at);
}
END_TEST

START_TEST(a_form_for_a_new_plot_that_is_left_leaves_nothing_behind)
{
	struct table at;

	table_clear(&at, "new.plot");
	table_start(&at, NULL);
	terminal_wait(at.t, "Begin a new plot");
	terminal_keys(at.t, "escape");
	ck_assert_int_eq(terminal_end(at.t).code, 0);
	ck_assert_int_ne(access(at.plot, F_OK), 0);
	table_leave(&at);
}
END_TEST

START_TEST(a_bed_is_built_otherwise_by_its_card)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "; w");
	terminal_keys(at.t, "enter #");
	terminal_wait(at.t, "Which card?");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Block as laid");
	terminal_wait(at.t, "[135 lb/cu ft]");
	field_go_to(at.t, "Courses");
	terminal_type(at.t, "41");
	terminal_keys(at.t, "pagedown enter");
	terminal_wait(at.t, "Courses: found 41, expected 1 to 40");
	terminal_type(at.t, "40");
	terminal_keys(at.t, "pagedown enter");
	terminal_wait(at.t, "Set; Backspace takes it back.");
	terminal_wait(at.t, "court.plot, not saved");
	terminal_wait(at.t, "*To order");
	table_leave(&at);
}
END_TEST

/* ---- Sizes ----------------------------------------------------------------------------------- */

/* In an environment that says other sizes, which must not be believed. */
static void sit(struct table *at, const char *name, int rows, int columns)
{
	table_lay_out(at, name);
	table_start(at, &(struct launch){
		.rows = rows, .columns = columns,
		.env = (const char *[]){ "LINES=50", "COLUMNS=200", NULL },
	});
}

START_TEST(a_large_screen_shows_more_of_a_large_plan)
{
	struct table at;

	sit(&at, "great-court.plot", 40, 120);
	table_wait(at.t);
	/* The last cell in view: row 35 of the file's ground, column 43. */
	terminal_until(at.t, shown_letter(at.t, 43, 35) == 'p');
	terminal_keys(at.t, "end");
	terminal_until(at.t, terminal_cursor(at.t).column == 91);
	terminal_keys(at.t, "pagedown");
	terminal_until(at.t, terminal_cursor(at.t).row == 37);
	terminal_wait(at.t, "199 ft across");
	table_leave(&at);
}
END_TEST

START_TEST(words_of_the_first_row_give_way_before_a_name_is_cut)
{
	struct table at;

	sit(&at, "snags.plot", 24, 80);
	table_wait(at.t);
	ck_assert_ptr_nonnull(strstr(terminal_row(at.t, 0),
		"snags.plot, saved  a Too narrow for its"));
	ck_assert_ptr_null(strstr(terminal_row(at.t, 0), "hand"));
	terminal_keys(at.t, "p |");
	terminal_wait(at.t, "The mirror is off.");
	ck_assert_ptr_nonnull(strstr(terminal_row(at.t, 0),
		"snags.plot, not saved   hand p Crushed stone"));
	table_leave(&at);
}
END_TEST

START_TEST(the_smallest_screen_shows_all_parts)
{
	struct table at;

	sit(&at, "court.plot", 18, 60);
	terminal_until(at.t, shown_page(at.t, "Areas"));
	terminal_wait(at.t, u8"saved  b Raised bed  \u25b210  left-right \u22601");
	terminal_wait(at.t, "here");
	terminal_wait(at.t, "! menu");
	terminal_until(at.t, shown_letter(at.t, 12, 1) == 'b');
	terminal_wait(at.t, "? help");
	terminal_keys(at.t, "#");
	terminal_wait(at.t, "Which card?");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Block as laid");
	terminal_keys(at.t, "pagedown");
	terminal_wait(at.t, "Soil replaced");
	table_leave(&at);
}
END_TEST

START_TEST(a_screen_too_small_says_so_keeps_the_work_and_saves_it)
{
	struct table at;

	sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "space");
	terminal_wait(at.t, "not saved");
	terminal_resize(at.t, 10, 30);
	terminal_wait(at.t, "This window has 30 columns");
	terminal_keys(at.t, "delete right space < q");
	terminal_resize(at.t, 1, 1);
	terminal_resize(at.t, 24, 80);
	terminal_wait(at.t, "court.plot, not saved");
	terminal_until(at.t, shown_on_cell(at.t, 0, 0) && shown_letter(at.t, 0, 0) == 'b');
	ck_assert_int_ne(shown_letter(at.t, 1, 0), 'b');
	terminal_resize(at.t, 10, 30);
	terminal_wait(at.t, "This window has 30 columns");
	ck_assert(terminal_shows(at.t, "saves it"));
	terminal_keys(at.t, ">");
	terminal_wait(at.t, "Saved in ");
	table_leave(&at);
}
END_TEST

/* A list, a card, a question about leaving: none of them takes the key that would save. */
START_TEST(on_a_screen_too_small_what_was_asked_waits_as_it_was)
{
	static const char *const asked[][2] = {
		{ "!", "All that can be done" }, { "# enter", "The bed b" },
		{ "<", "Leave?" }, { "! S e t space h o w enter", "Each step 1 ft" },
	};
	struct table at;

	sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "space");
	terminal_wait(at.t, "not saved");
	terminal_keys(at.t, asked[_i][0]);
	terminal_wait(at.t, asked[_i][1]);
	terminal_resize(at.t, 10, 30);
	terminal_wait(at.t, "What was asked waits.");
	ck_assert(!terminal_shows(at.t, "saves it"));
	terminal_keys(at.t, "> x");
	terminal_resize(at.t, 24, 80);
	terminal_wait(at.t, asked[_i][1]);
	ck_assert(!terminal_shows(at.t, "Typed:"));
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "Drawing   court.plot, not saved");
	table_leave(&at);
}
END_TEST

START_TEST(too_small_from_the_start_is_no_harm)
{
	struct table at;

	sit(&at, "court.plot", 5, 20);
	terminal_wait(at.t, "This window has 20");
	terminal_resize(at.t, 24, 80);
	terminal_wait(at.t, "Drawing   court.plot");
	table_leave(&at);
}
END_TEST

START_TEST(a_new_size_in_the_middle_of_a_trail_a_list_and_a_form_changes_nothing_else)
{
	struct table at;

	sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "= right");
	terminal_resize(at.t, 30, 100);
	terminal_until(at.t, strstr(terminal_row(at.t, 29), "arrows lay  "));
	terminal_keys(at.t, "right =");
	terminal_until(at.t, shown_letter(at.t, 2, 0) == 'b');

	terminal_keys(at.t, "!");
	terminal_wait(at.t, "All that can be done");
	terminal_keys(at.t, "end");
	terminal_resize(at.t, 18, 60);
	terminal_wait(at.t, "Type what you seek");
	terminal_until(at.t, shown_at(at.t, "Help"));
	terminal_keys(at.t, "escape @");
	terminal_wait(at.t, "Across from the left");
	terminal_type(at.t, "5 f");
	terminal_resize(at.t, 24, 80);
	terminal_until(at.t, terminal_shows(at.t, "5 f") && shown_at(at.t, "Across from the left"));
	terminal_type(at.t, "t\r\r");
	terminal_until(at.t, shown_on_cell(at.t, 5, 0));
	table_leave(&at);
}
END_TEST

START_TEST(sizes_in_the_environment_do_not_hide_the_real_one)
{
	struct table at;

	sit(&at, "court.plot", 24, 80);
	terminal_until(at.t, strstr(terminal_row(at.t, 23), "? help"));
	table_leave(&at);
}
END_TEST

/* ---- What comes in --------------------------------------------------------------------------- */

START_TEST(pasted_text_never_becomes_strokes)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_type(at.t, "\033[200~S ===\r\033[C<\033[201~");
	terminal_wait(at.t, "Pasted text was ignored");
	terminal_wait(at.t, "court.plot, saved");
	terminal_wait(at.t, "hand b Raised bed");
	ck_assert(shown_on_cell(at.t, 0, 0));
	terminal_keys(at.t, "right left");
	terminal_wait_gone(at.t, "Pasted text was ignored");
	table_leave(&at);
}
END_TEST

START_TEST(pasted_text_goes_into_a_field_without_its_ends_of_lines)
{
	struct table at;

	table_clear(&at, "new.plot");
	table_start(&at, NULL);
	terminal_wait(at.t, "Begin a new plot");
	terminal_type(at.t, "\033[200~Herb\rcourt\033[31m \303\251\033[201~");
	terminal_wait(at.t, " Herb court");
	ck_assert_ptr_nonnull(strstr(terminal_row(at.t, terminal_find(at.t, "Title ")),
		"\303\251"));
	ck_assert(shown_at(at.t, "Title"));
	table_leave(&at);
}
END_TEST

START_TEST(a_key_that_is_unknown_is_swallowed_whole)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_type(at.t, "\033[97;5u");
	terminal_wait(at.t, "This key does nothing");
	terminal_wait(at.t, "arrows move  ");
	terminal_wait(at.t, "hand b Raised bed");
	terminal_type(at.t, "\033[<0;10;10M");
	terminal_keys(at.t, "right");
	terminal_until(at.t, shown_on_cell(at.t, 1, 0));
	terminal_wait(at.t, "arrows move  ");
	table_leave(&at);
}
END_TEST

START_TEST(arrows_are_known_in_both_modes_of_the_keypad)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_type(at.t, "\033[C\033OC\033[B\033OB\033[C");
	terminal_until(at.t, shown_on_cell(at.t, 3, 2));
	table_leave(&at);
}
END_TEST

START_TEST(an_arrow_that_comes_in_pieces_is_an_arrow)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "=");
	terminal_wait(at.t, "not saved");
	terminal_type(at.t, "\033");
	terminal_wait(at.t, "Drawing");
	terminal_type(at.t, "[B");
	terminal_until(at.t, shown_on_cell(at.t, 0, 1));
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "court.plot, saved");
	table_leave(&at);
}
END_TEST

/* ---- Bytes ----------------------------------------------------------------------------------- */

static struct traffic traffic_of(struct table *at, const char *keys)
{
	terminal_settle(at->t);
	terminal_keys(at->t, keys);
	return terminal_settle(at->t);
}

START_TEST(keys_cost_few_bytes_in_one_write)
{
	static const struct {
		const char *before, *keys;
		size_t most;
	} rows[] = {
		/* two places of the rulers, a figure, the image, two cells */
		{ "right right", "right", 85 },
		{ "", "down", 110 },         /* the same and a region's three lines */
		/* two cells more, three figures with stars, a region's area */
		{ "= right", "right", 155 },
		/* the same, a plot that was saved is not any more, all figures of a page in view, a
		 * snag with its cure */
		{ "right", "space", 720 },
		{ "", "p", 60 },
		{ "", "tab", 285 },
	};
	struct table at;

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		table_sit(&at, "court.plot", 24, 80);
		traffic_of(&at, rows[i].before);
		struct traffic cost = traffic_of(&at, rows[i].keys);

		ck_assert_msg(cost.bytes > 0 && cost.bytes <= rows[i].most, "%s costs %zu bytes",
			rows[i].keys, cost.bytes);
		ck_assert_msg(cost.reads == 1, "%s in %d writes", rows[i].keys, cost.reads);
		table_leave(&at);
	}
}
END_TEST

static int by_bytes(const void *a, const void *b)
{
	return *(const int *)a - *(const int *)b;
}

static int median(int *costs, int count)
{
	qsort(costs, (size_t)count, sizeof *costs, by_bytes);
	return costs[count / 2];
}

/* A copy of a plot of any folder. */
static void sit_at(struct table *at, const char *path)
{
	struct text plot = TEXT_EMPTY;
	struct file_error error;

	ck_assert_msg(file_read(path, 1 << 20, &plot, &error), "%s", error.sentence);
	table_clear(at, "court.plot");
	table_write(at, plot.bytes);
	table_start(at, &(struct launch){ .rows = 24, .columns = 80 });
	table_wait(at->t);
	text_fini(&plot);
}

enum { STROKES = 12, TURN = 5, FEW = 5 };
static const struct {
	const char *plot, *before;
	int strokes, most;
} walks[] = {
	/* over open ground; and then into a bed, which has walls and figures that change */
	{ "plots/court.plot", "p space", FEW, 135 },
	{ "plots/court.plot", "p space", STROKES, 150 },
	{ "tests/plots/court.plot", "p space", FEW, 135 },
	{ "tests/plots/court.plot", "p space", STROKES, 163 },
	/* turf through a bed; a bed over a path: regions, snags and figures change */
	{ "plots/court.plot", "right down down l space", FEW, 205 },
	{ "tests/plots/court.plot", "right down down l space", FEW, 180 },
	{ "plots/court.plot", "right down x5 b space", FEW, 190 },
	{ "tests/plots/court.plot", "right down x5 b space", FEW, 240 },
};

/* Laid one by one with the mirror's images, to the right, and after five of them back in the row
 * below. */
START_TEST(a_stroke_costs_few_bytes)
{
	int costs[STROKES] = { 0 }, middle;
	struct table at;

	sit_at(&at, walks[_i].plot);
	traffic_of(&at, walks[_i].before);
	for (int i = 0; i < walks[_i].strokes; i++) {
		traffic_of(&at, i % (TURN + 1) == TURN ? "down" : i < TURN ? "right" : "left");
		costs[i] = (int)traffic_of(&at, "space").bytes;
	}
	middle = median(costs, walks[_i].strokes);
	ck_assert_msg(middle > 0 && middle <= walks[_i].most, "%s after %s: %d bytes",
		walks[_i].plot, walks[_i].before, middle);
	table_leave(&at);
}
END_TEST

static const char *const courts[] = { "plots/court.plot", "tests/plots/court.plot" };

START_TEST(a_list_that_closes_costs_few_bytes)
{
	static const char *const lists[] = { "!", "?", ";", "#" };
	struct table at;

	sit_at(&at, courts[_i]);
	for (size_t i = 0; i < sizeof lists / sizeof *lists; i++) {
		size_t bytes;

		traffic_of(&at, lists[i]);
		bytes = traffic_of(&at, "escape").bytes;
		ck_assert_msg(bytes > 0 && bytes <= 880, "%s: %zu bytes", lists[i], bytes);
	}
	table_leave(&at);
}
END_TEST

/* On a bed without a snag, on one with a snag, on open ground. */
START_TEST(the_page_does_not_move_with_what_is_under_the_cursor)
{
	struct table at;
	int row;

	table_sit(&at, "snags.plot", 40, 120);
	terminal_keys(at.t, "right down");
	terminal_wait(at.t, "Snag: ");
	row = terminal_find(at.t, " here ");
	terminal_keys(at.t, "up");
	terminal_wait_gone(at.t, "Snag: ");
	ck_assert_int_eq(terminal_find(at.t, " here "), row);
	table_leave(&at);
}
END_TEST

START_TEST(keys_typed_ahead_are_drawn_once)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_settle(at.t);
	terminal_type(at.t, "\033OC\033OC\033OC\033OC\033OC\033OC\033OC\033OC\033OC\033OC");
	terminal_until(at.t, shown_on_cell(at.t, 10, 0));
	struct traffic cost = terminal_settle(at.t);

	ck_assert_msg(cost.bytes < 240, "%zu bytes", cost.bytes);
	table_leave(&at);
}
END_TEST

START_TEST(a_garbled_screen_is_sent_again_as_a_whole)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	ck_assert_uint_gt(traffic_of(&at, "ctrl-l").bytes, 1000);
	terminal_keys(at.t, "!");
	terminal_type(at.t, "redraw");
	terminal_settle(at.t);
	ck_assert_uint_gt(traffic_of(&at, "enter").bytes, 1000);
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen");
	TCase *keys = suite_case(suite, "keys"), *garden = suite_case(suite, "garden");
	TCase *sizes = suite_case(suite, "sizes"), *input = suite_case(suite, "input");
	TCase *bytes = suite_case(suite, "bytes");

	tcase_add_loop_test(keys, each_key_does_what_it_says, 0,
		(int)(sizeof pressings / sizeof *pressings));
	tcase_add_loop_test(keys, each_question_and_form_can_be_left_by_esc_and_by_ctrl_c, 0,
		(int)(sizeof askings / sizeof *askings));
	tcase_add_test(keys, a_stroke_is_mirrored_before_the_eyes);
	tcase_add_test(keys, what_has_changed_since_saving_is_told_on_a_page);
	tcase_add_test(keys, the_page_of_changes_is_made_beside_the_one_before_it);
	tcase_add_test(keys, a_list_is_walked_jumped_in_and_picked_from);
	tcase_add_test(keys, a_list_finds_words_inside_and_says_what_was_typed);
	tcase_add_test(keys, a_place_is_typed_corrected_and_gone_to);
	tcase_add_test(garden, a_garden_is_begun_drawn_mirrored_saved_opened_again_and_taken_off);
	tcase_add_test(garden, a_metric_plot_is_begun_by_turning_the_units);
	tcase_add_test(garden, a_form_for_a_new_plot_that_is_left_leaves_nothing_behind);
	tcase_add_test(garden, a_bed_is_built_otherwise_by_its_card);
	tcase_add_test(sizes, a_large_screen_shows_more_of_a_large_plan);
	tcase_add_test(sizes, words_of_the_first_row_give_way_before_a_name_is_cut);
	tcase_add_test(sizes, the_smallest_screen_shows_all_parts);
	tcase_add_test(sizes, a_screen_too_small_says_so_keeps_the_work_and_saves_it);
	tcase_add_loop_test(sizes, on_a_screen_too_small_what_was_asked_waits_as_it_was, 0, 4);
	tcase_add_test(sizes, too_small_from_the_start_is_no_harm);
	tcase_add_test(sizes,
		a_new_size_in_the_middle_of_a_trail_a_list_and_a_form_changes_nothing_else);
	tcase_add_test(sizes, sizes_in_the_environment_do_not_hide_the_real_one);
	tcase_add_test(input, pasted_text_never_becomes_strokes);
	tcase_add_test(input, pasted_text_goes_into_a_field_without_its_ends_of_lines);
	tcase_add_test(input, a_key_that_is_unknown_is_swallowed_whole);
	tcase_add_test(input, arrows_are_known_in_both_modes_of_the_keypad);
	tcase_add_test(input, an_arrow_that_comes_in_pieces_is_an_arrow);
	tcase_add_test(bytes, keys_cost_few_bytes_in_one_write);
	tcase_add_loop_test(bytes, a_stroke_costs_few_bytes, 0,
		(int)(sizeof walks / sizeof *walks));
	tcase_add_loop_test(bytes, a_list_that_closes_costs_few_bytes, 0,
		(int)(sizeof courts / sizeof *courts));
	tcase_add_test(bytes, the_page_does_not_move_with_what_is_under_the_cursor);
	tcase_add_test(bytes, keys_typed_ahead_are_drawn_once);
	tcase_add_test(bytes, a_garbled_screen_is_sent_again_as_a_whole);
	return suite;
}
