/* What is typed and pasted into a card at a terminal: saved as it came, byte for byte, or refused
 * with a word. */
#include "base/utf8.h"
#include "support/runner.h"
#include "support/samples.h"
#include "support/shown.h"
#include "support/table.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { NAME_MOST = 60, NOTE_MOST = 500 };

static const char *const locales[] = { "LC_ALL=C.UTF-8", "LC_ALL=C" };

static void sit(struct table *at, const char *plot, const char *locale)
{
	table_clear(at, "text.plot");
	table_write(at, plot);
	table_start(at, &(struct launch){ .env = (const char *[]){ locale, NULL } });
	table_wait(at->t);
}

static const char plain_plot[] = "parterre-plot 1\nunits imperial\ncell 1 ft\n\n"
	"bed b \"Bed\"\n\nground 2 x 2\n  bb\n  ..\n";

/* Opens the card of the bed, at its name. */
static void open_bed(struct table *at)
{
	terminal_keys(at->t, "#");
	terminal_wait(at->t, "Which card?");
	terminal_keys(at->t, "home");
	terminal_type(at->t, "b");
	terminal_keys(at->t, "enter");
	terminal_wait(at->t, "Esc leave");
	terminal_until(at->t, shown_at(at->t, "Name"));
}

static void close_card(struct table *at)
{
	card_drop(at->t);
	terminal_wait(at->t, "Drawing");
}

/* What the file must say of the bed; what it says is shown where it does not. */
static bool file_says(const struct table *at, const char *name)
{
	struct text file = table_file(at, "text.plot"), line = TEXT_EMPTY;
	bool says;

	text_add(&line, "\nbed b ");
	text_add_quoted(&line, name);
	text_add(&line, "\n");
	says = strstr(file.bytes, line.bytes) != NULL;
	if (!says)
		printf("not \"%s\" in %.2000s\n", name, file.bytes);
	text_fini(&file);
	text_fini(&line);
	return says;
}

static void save(struct table *at)
{
	terminal_keys(at->t, "> >");
	terminal_wait(at->t, "Saved in");
}

static void set_and_save(struct table *at)
{
	terminal_keys(at->t, "pagedown enter");
	terminal_wait(at->t, "Set; Backspace");
	save(at);
}

/* ---- Many texts, in many ways ---------------------------------------------------------------- */

static void paste(struct table *at, const char *text)
{
	terminal_type(at->t, "\033[200~");
	terminal_type(at->t, text);
	terminal_type(at->t, "\033[201~");
}

static void type_whole(struct table *at, const char *text, struct text *expected)
{
	terminal_type(at->t, text);
	text_add(expected, text);
}

static void paste_whole(struct table *at, const char *text, struct text *expected)
{
	paste(at, text);
	text_add(expected, text);
}

/* Each byte for itself, and now and then so late that all before it has been seen to. */
static void type_bytes(struct table *at, const char *text, struct text *expected)
{
	for (size_t i = 0; text[i]; i++) {
		terminal_type(at->t, (const char[]){ text[i], '\0' });
		if (i % 7 == 1)
			terminal_settle(at->t);
	}
	text_add(expected, text);
}

static void type_in_the_middle(struct table *at, const char *text, struct text *expected)
{
	terminal_type(at->t, "ab");
	terminal_keys(at->t, "left");
	terminal_type(at->t, text);
	text_print(expected, "a%sb", text);
}

static void paste_in_the_middle(struct table *at, const char *text, struct text *expected)
{
	terminal_type(at->t, "ab");
	terminal_keys(at->t, "left");
	paste(at, text);
	text_print(expected, "a%sb", text);
}

/* To the end and back again, and one letter more that is taken off again. */
static void take_off_the_end(struct table *at, const char *text, struct text *expected)
{
	terminal_type(at->t, text);
	terminal_keys(at->t, "home end");
	terminal_type(at->t, "x");
	terminal_keys(at->t, "left right backspace");
	text_add(expected, text);
}

static const struct {
	void (*put_in)(struct table *at, const char *text, struct text *expected);
	int every, of_full; /* which samples are tried, few and many */
} ways[] = {
	{ type_whole, 4, 1 }, { paste_whole, 4, 1 }, { type_bytes, 12, 1 },
	{ type_in_the_middle, 6, 1 }, { paste_in_the_middle, 6, 1 }, { take_off_the_end, 6, 1 },
};
enum { WAYS = sizeof ways / sizeof *ways };

static bool is_ascii(const char *text)
{
	for (; *text; text++)
		if ((unsigned char)*text > 0x7e)
			return false;
	return true;
}

/* Whether something is said against what came, on the rows above the keys. */
static bool says_no(struct terminal *t)
{
	return terminal_shows(t, "Name: not all that came is in it.") ||
		terminal_shows(t, "Name: no plot can hold ");
}

static void try_text(struct table *at, const struct sample *sample, int way, bool is_utf8)
{
	struct text expected = TEXT_EMPTY, before = table_file(at, "text.plot"), after;

	open_bed(at);
	ways[way].put_in(at, sample->text, &expected);
	terminal_keys(at->t, "pagedown enter");
	if (sample->is_kept && (is_utf8 || is_ascii(sample->text))) {
		terminal_wait(at->t, "Set; Backspace takes it back.");
		save(at);
		ck_assert_msg(file_says(at, expected.bytes), "%s, way %d", sample->text, way);
	} else {
		terminal_until(at->t, says_no(at->t));
		close_card(at);
		terminal_wait(at->t, ", saved");
		after = table_file(at, "text.plot");
		ck_assert_str_eq(after.bytes, before.bytes);
		text_fini(&after);
	}
	text_fini(&before);
	text_fini(&expected);
}

/* All in one session: what one text leaves behind must not spoil the next. */
START_TEST(a_text_is_saved_as_it_came_or_refused_with_a_word)
{
	int way = _i % WAYS, every = runner_count(ways[way].every, ways[way].of_full);
	bool is_utf8 = _i < WAYS;
	struct table at;

	sit(&at, plain_plot, locales[!is_utf8]);
	for (int i = way % every; i < SAMPLES; i += every)
		try_text(&at, &samples[i], way, is_utf8);
	table_leave(&at);
}
END_TEST

/* ---- Limits ---------------------------------------------------------------------------------- */

static void repeat(struct text *out, const char *text, int times)
{
	for (int i = 0; i < times; i++)
		text_add(out, text);
}

START_TEST(the_most_is_said_while_typing_and_no_more_is_taken)
{
	struct text name = TEXT_EMPTY;
	struct table at;

	repeat(&name, u8"\u5EAD", NAME_MOST);
	sit(&at, plain_plot, locales[0]);
	open_bed(&at);
	terminal_type(at.t, name.bytes);
	terminal_until(at.t, terminal_cursor(at.t).column > 60);
	terminal_type(at.t, "x");
	terminal_wait(at.t, "Name: 60 characters are the most; what comes after is left out.");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Name: not all that came is in it. Enter takes it so.");
	set_and_save(&at);
	ck_assert(file_says(&at, name.bytes));
	text_fini(&name);
	table_leave(&at);
}
END_TEST

/* What did not fit is forgotten once the field is empty, not when there is room again. */
START_TEST(what_came_too_much_is_forgotten_with_the_field_s_words)
{
	struct text name = TEXT_EMPTY;
	struct table at;

	text_add_repeat(&name, 'z', NAME_MOST + 1);
	sit(&at, plain_plot, locales[0]);
	open_bed(&at);
	terminal_type(at.t, name.bytes);
	terminal_wait(at.t, "Name: 60 characters are the most");
	if (_i)
		terminal_keys(at.t, "backspace x5");
	else
		terminal_keys(at.t, "ctrl-u");
	terminal_type(at.t, "Yard");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, _i ? "Name: not all that came is in it." : "2 of ");
	text_fini(&name);
	table_leave(&at);
}
END_TEST

START_TEST(what_came_too_much_is_asked_about_where_esc_leads_to_setting_it)
{
	struct text name = TEXT_EMPTY;
	struct table at;

	text_add_repeat(&name, 'z', NAME_MOST + 1);
	sit(&at, plain_plot, locales[0]);
	open_bed(&at);
	terminal_type(at.t, name.bytes);
	terminal_wait(at.t, "Name: 60 characters are the most");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "What was typed is not set yet.");
	terminal_keys(at.t, "s e t enter");
	terminal_wait(at.t, "Name: not all that came is in it. Enter takes it so.");
	set_and_save(&at);
	text_cut(&name, NAME_MOST);
	ck_assert(file_says(&at, name.bytes));
	text_fini(&name);
	table_leave(&at);
}
END_TEST

static bool stands_before_cursor(struct terminal *t, int columns, const char *text)
{
	struct cursor at = terminal_cursor(t);

	return strcmp(terminal_cell(t, at.row, at.column - columns).text, text) == 0;
}

START_TEST(a_mark_that_has_no_letter_has_a_column_of_its_own)
{
	struct table at;

	sit(&at, plain_plot, locales[0]);
	open_bed(&at);
	terminal_type(at.t, u8"\u0301x");
	terminal_until(at.t, stands_before_cursor(at.t, 1, "x"));
	ck_assert(stands_before_cursor(at.t, 2, u8" \u0301"));
	table_leave(&at);
}
END_TEST

/* The limit is characters, however wide they are and however many bytes. */
START_TEST(the_longest_note_is_saved_whole)
{
	static const char *const units[] = { "n", u8"\u5EAD", u8"\U0001F333", u8"e\u0301",
		u8"\U0001F469\u200D\U0001F33E " };
	static const int lengths[] = { 1, 1, 1, 2, 4 };
	struct text note = TEXT_EMPTY, line = TEXT_EMPTY, file;
	struct table at;

	repeat(&note, units[_i / 2], (NOTE_MOST - 3) / lengths[_i / 2]);
	text_add(&note, "!#!");
	sit(&at, plain_plot, locales[0]);
	open_bed(&at);
	terminal_keys(at.t, "pagedown up");
	terminal_until(at.t, shown_at(at.t, "New note, type it"));
	if (_i % 2)
		paste(&at, note.bytes);
	else
		terminal_type(at.t, note.bytes); /* as a paste without marks comes */
	terminal_wait(at.t, "!#! ");
	terminal_keys(at.t, "enter enter");
	terminal_wait(at.t, "Set; Backspace");
	save(&at);
	file = table_file(&at, "text.plot");
	text_print(&line, "\n  note \"%s\"\n", note.bytes);
	ck_assert_ptr_nonnull(strstr(file.bytes, line.bytes));
	text_fini(&file);
	text_fini(&line);
	text_fini(&note);
	table_leave(&at);
}
END_TEST

/* None of it: half a paste would look like all of it. */
START_TEST(a_paste_too_long_is_refused_whole_and_answered_at_once)
{
	static const int sizes[] = { 61, 1000, 60 * 1024, 1000 * 1000 };
	struct text words = TEXT_EMPTY;
	struct table at;

	text_add_repeat(&words, 'z', (size_t)sizes[_i]);
	sit(&at, plain_plot, locales[0]);
	open_bed(&at);
	terminal_type(at.t, "New");
	terminal_wait(at.t, "Name        New");
	paste(&at, words.bytes);
	terminal_wait(at.t, "Name: none of what was pasted is in it: it has ");
	terminal_wait(at.t, " characters, and there");
	terminal_wait(at.t, "Name        New   ");
	terminal_type(at.t, "er");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Name: not all that came is in it.");
	set_and_save(&at);
	ck_assert(file_says(&at, "Newer"));
	text_fini(&words);
	table_leave(&at);
}
END_TEST

START_TEST(what_is_pasted_is_one_line_without_controls)
{
	struct table at;

	sit(&at, plain_plot, locales[0]);
	open_bed(&at);
	paste(&at, "one\r\ntwo\tthree\n");
	terminal_wait(at.t, "Name: ends of lines and tabs went in as blanks.");
	terminal_wait(at.t, "one two three");
	paste(&at, "a\377b");
	terminal_wait(at.t, "Name: none of what was pasted is in it: it is no text in this");
	terminal_wait(at.t, "one two three   ");
	paste(&at, " f\001o\033ur");
	terminal_wait(at.t, "Name: control characters were left out of what was pasted.");
	terminal_wait(at.t, "one two three four ");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Name: not all that came is in it. Enter takes it so.");
	table_leave(&at);
}
END_TEST

/* Said at once, and kept for the eye to find; it must go before the card is taken. */
START_TEST(a_character_that_hides_is_shown_and_can_be_taken_out)
{
	struct table at;

	sit(&at, plain_plot, locales[0]);
	open_bed(&at);
	paste(&at, u8"Her\u200Bbs");
	terminal_wait(at.t, "Name: U+200B is shown as ?. No plot can hold it: take it out.");
	terminal_wait(at.t, "Name        Her?bs");
	terminal_keys(at.t, "left left backspace");
	terminal_wait(at.t, "Name        Herbs");
	set_and_save(&at);
	ck_assert(file_says(&at, "Herbs"));
	table_leave(&at);
}
END_TEST

/* ---- Keys ------------------------------------------------------------------------------------ */

START_TEST(the_line_keys_edit_a_field)
{
	static const struct {
		const char *keys, *shown;
	} steps[] = {
		{ "ctrl-e", "one two three " }, { "ctrl-w", "one two  " }, { "ctrl-w", "one  " },
		{ "t w o", "one two " }, { "ctrl-a x", "xone two " }, { "delete", "xne two " },
		{ "right right ctrl-k", "xne   " }, { "home right ctrl-u", "ne   " },
		{ "end backspace", "n   " }, { "ctrl-u", "    " },
	};
	char row[64];
	struct table at;

	sit(&at, plain_plot, locales[0]);
	open_bed(&at);
	terminal_type(at.t, "one two three");
	for (size_t i = 0; i < sizeof steps / sizeof *steps; i++) {
		terminal_keys(at.t, steps[i].keys);
		snprintf(row, sizeof row, "Name        %s", steps[i].shown);
		terminal_wait(at.t, row);
	}
	table_leave(&at);
}
END_TEST

/* The cursor stands where the character will go in, and what is left of the field's edge comes
 * back. */
START_TEST(a_long_text_moves_sideways_with_the_cursor)
{
	struct table at;

	sit(&at, plain_plot, locales[0]);
	open_bed(&at);
	terminal_type(at.t, "The first of all beds, and the one nearest to the");
	terminal_wait(at.t, "nearest to the ");
	terminal_until(at.t, shown_at(at.t, "Name"));
	terminal_type(at.t, " pond");
	terminal_wait(at.t, "nearest to the pond ");
	terminal_keys(at.t, "home");
	terminal_wait(at.t, "Name        The first of all");
	terminal_keys(at.t, "end backspace");
	terminal_wait(at.t, "nearest to the pon ");
	table_leave(&at);
}
END_TEST

/* ---- Lists ----------------------------------------------------------------------------------- */

static const char seek_plot[] = u8"parterre-plot 1\nunits imperial\ncell 1 ft\n\n"
	u8"bed b \"Bed\"\npath p \"Gr\u00E4ser \u5EAD\"\nlawn l \"Gr\u00FCn\"\n\nground 2 x 2\n"
	u8"  bp\n  ..\n";

START_TEST(an_answer_is_found_by_any_letter_of_it)
{
	struct table at;

	sit(&at, seek_plot, locales[0]);
	terminal_keys(at.t, "#");
	terminal_wait(at.t, "Which card?");
	terminal_type(at.t, u8"gr\u00FC");
	terminal_wait(at.t, u8"Typed: gr\u00FC. 1 of ");
	terminal_until(at.t, shown_at(at.t, u8"l Gr\u00FCn"));
	terminal_type(at.t, u8"\u5EAD");
	terminal_wait(at.t, u8"Typed: gr\u00FC\u5EAD. Nothing here has it");
	terminal_keys(at.t, "backspace x2");
	terminal_wait(at.t, "Typed: gr. ");
	terminal_keys(at.t, "backspace x2");
	terminal_wait_gone(at.t, "Typed:");
	terminal_type(at.t, u8"\u5EAD");
	terminal_wait(at.t, u8"Typed: \u5EAD. 1 of ");
	terminal_until(at.t, shown_at(at.t, u8"p Gr\u00E4ser \u5EAD"));
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "The path p");
	table_leave(&at);
}
END_TEST

/* ---- A locale without the letters ------------------------------------------------------------ */

static const char letters_plot[] = u8"parterre-plot 1\nunits imperial\ncell 1 ft\n\n"
	u8"bed b \"Caf\u00E9 \u5EAD\"\n  note \"na\u00EFf\"\n\nground 2 x 2\n  bb\n  ..\n";

START_TEST(a_field_that_cannot_be_shown_is_left_whole)
{
	struct table at;

	sit(&at, letters_plot, locales[1]);
	open_bed(&at);
	terminal_wait(at.t, "Name: the locale cannot show all of it: left whole. Ctrl-U");
	terminal_wait(at.t, "Name        Caf? ?");
	terminal_type(at.t, "x");
	terminal_keys(at.t, "backspace delete end");
	paste(&at, "y");
	field_go_to(at.t, "Courses");
	terminal_type(at.t, "2");
	set_and_save(&at);
	ck_assert(file_says(&at, u8"Caf\u00E9 \u5EAD"));
	table_check_file(&at, u8"  note \"na\u00EFf\"\n");
	table_check_file(&at, "  courses 2\n");
	table_leave(&at);
}
END_TEST

START_TEST(a_field_that_cannot_be_shown_is_emptied_by_its_key_and_typed_anew)
{
	struct table at;

	sit(&at, letters_plot, locales[1]);
	open_bed(&at);
	terminal_wait(at.t, "Ctrl-U empties it.");
	terminal_keys(at.t, "ctrl-u");
	terminal_wait(at.t, "Name                ");
	terminal_type(at.t, "Garden");
	set_and_save(&at);
	ck_assert(file_says(&at, "Garden"));
	table_leave(&at);
}
END_TEST

/* ---- Widths ---------------------------------------------------------------------------------- */

/* Whatever the terminal counts: what stands right of a text stays where it is. */
START_TEST(nothing_shifts_behind_a_text_that_the_terminal_counts_otherwise)
{
	/* The last four are counted otherwise by this terminal. */
	static const char *const names[] = { u8"\u5EAD\u5712", u8"\U0001F333\U0001F333\U0001F333",
		u8"\U0001F469\u200D\U0001F33E x", u8"\U0001F1E9\U0001F1EA\u2764\uFE0F",
		u8"\u0E17\u0E35\u0E48\u0E19\u0E35\u0E48", u8"\u0917\u0941\u0932\u093E\u092C",
		u8"\u1112\u1161\u11AB", u8"e\u0301e\u0301e\u0301", u8"\u05D2\u05BC\u05DF",
		u8"\U0001FAB4\U0001FAB4 pots", u8"\U0001F93B\U0001F93B",
		u8"a\U0001E130b\U0001E130c",
		u8"\U0001F7E0\U0001FAB4\U0001F7E0\U0001FAB4\U0001F7E0\U0001FAB4 x" };
	struct text plot = TEXT_EMPTY;
	struct table at;

	text_print(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"%s\"\n\n"
		"ground 2 x 2\n  bb\n  ..\n", names[_i]);
	sit(&at, plot.bytes, locales[0]);
	/* The last of the row, and the line left of the panel on each row of it. */
	terminal_until(at.t, terminal_cell(at.t, 0, 79).text[0] == 'f');
	ck_assert_str_eq(terminal_cell(at.t, 0, 70).text, "m");
	for (int row = 1; row < 20; row++)
		ck_assert_str_eq(terminal_cell(at.t, row, shown_divider(at.t)).text, u8"\u2502");
	ck_assert_ptr_nonnull(strstr(terminal_row(at.t, 3), "2.0"));
	if (strcmp(names[_i], u8"\U0001FAB4\U0001FAB4 pots") == 0)
		ck_assert_str_eq(terminal_cell(at.t, 3, shown_divider(at.t) + 9).text, "p");
	ck_assert_str_eq(terminal_cell(at.t, 3, 79).text, "0");
	/* The bed keeps its colour, drawn in whatever way. */
	ck_assert_int_eq(terminal_cell(at.t, PLAN_TOP, PLAN_LEFT).ground, SHOWN_CURSOR);
	/* Coming and going leaves nothing behind. */
	open_bed(&at);
	terminal_type(at.t, "Beds");
	terminal_keys(at.t, "pagedown enter");
	terminal_wait(at.t, "Set; Backspace");
	terminal_wait(at.t, "hand b Beds   ");
	terminal_wait(at.t, "*b Beds                2.0");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "Taken back");
	terminal_wait_gone(at.t, "b Beds");
	terminal_until(at.t, terminal_cell(at.t, 0, 79).text[0] == 'f');
	for (int row = 1; row < 20; row++)
		ck_assert_str_eq(terminal_cell(at.t, row, shown_divider(at.t)).text, u8"\u2502");
	text_fini(&plot);
	table_leave(&at);
}
END_TEST

/* A row that is drawn in our own way is there again after all that loses the screen. */
START_TEST(odd_rows_come_back_after_a_repaint_and_a_new_size)
{
	struct table at;

	sit(&at, letters_plot, locales[0]);
	terminal_wait(at.t, u8"hand b Caf\u00E9 \u5EAD");
	terminal_keys(at.t, "ctrl-l");
	terminal_until(at.t, terminal_answered(at.t, u8"hand b") &&
		terminal_shows(at.t, u8"hand b Caf\u00E9 \u5EAD"));
	terminal_resize(at.t, 30, 100);
	terminal_wait(at.t, u8"hand b Caf\u00E9 \u5EAD");
	terminal_until(at.t, terminal_cell(at.t, 0, 99).text[0] == 'f');
	table_leave(&at);
}
END_TEST

/* Nor does the cursor spoil it, which goes the cheapest way: over blanks by writing them. */
START_TEST(the_cursor_goes_over_an_odd_row_and_leaves_it_as_it_is)
{
	struct cursor start;
	struct table at;

	sit(&at, u8"parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"abcd\u5EAD efgh\"\n\n"
		u8"ground 2 x 2\n  bb\n  ..\n", locales[0]);
	open_bed(&at);
	terminal_wait(at.t, u8"Name        abcd\u5EAD efgh");
	start = terminal_cursor(at.t);
	for (int i = 1; i <= 10; i++) {
		terminal_keys(at.t, "right");
		terminal_until(at.t, terminal_cursor(at.t).column ==
			start.column + i + (i > 4));
		ck_assert(terminal_shows(at.t, u8"Name        abcd\u5EAD efgh"));
	}
	table_leave(&at);
}
END_TEST

START_TEST(odd_rows_come_back_after_a_stop)
{
	struct table at;

	table_clear(&at, "text.plot");
	table_write(&at, letters_plot);
	table_start_in_shell(&at);
	for (int i = 0; i < 2; i++) {
		terminal_wait(at.t, u8"hand b Caf\u00E9 \u5EAD");
		terminal_keys(at.t, "ctrl-z");
		terminal_wait(at.t, "Stopped");
		terminal_wait_gone(at.t, "hand b");
		terminal_type(at.t, "fg\r");
	}
	terminal_wait(at.t, u8"hand b Caf\u00E9 \u5EAD");
	table_leave(&at);
}
END_TEST

/* Over a slow line a row is not sent again for nothing. */
START_TEST(an_odd_row_is_sent_once)
{
	struct table at;

	sit(&at, u8"parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Caf\u00E9 \u5EAD\"\n\n"
		"ground 4 x 2\n  bbbb\n  ....\n", locales[0]);
	terminal_until(at.t, terminal_shows(at.t, u8"hand b Caf\u00E9 \u5EAD"));
	terminal_keys(at.t, "right"); /* from the first cell, which has a snag */
	terminal_settle(at.t);
	terminal_keys(at.t, "right"); /* in the row above the panel's odd one */
	terminal_until(at.t, shown_on_cell(at.t, 2, 0));
	terminal_settle(at.t);
	ck_assert(!terminal_answered(at.t, u8"\u5EAD"));
	terminal_keys(at.t, "ctrl-l");
	terminal_until(at.t, terminal_answered(at.t, u8"\u5EAD"));
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen text");
	TCase *texts = suite_case(suite, "texts"), *limits = suite_case(suite, "limits");
	TCase *keys = suite_case(suite, "keys"), *shown = suite_case(suite, "shown");

	tcase_set_timeout(texts, runner_count(30, 300));
	tcase_add_loop_test(texts, a_text_is_saved_as_it_came_or_refused_with_a_word, 0, 2 * WAYS);
	tcase_add_test(limits, the_most_is_said_while_typing_and_no_more_is_taken);
	tcase_add_loop_test(limits, what_came_too_much_is_forgotten_with_the_field_s_words, 0, 2);
	tcase_add_test(limits, what_came_too_much_is_asked_about_where_esc_leads_to_setting_it);
	tcase_add_test(limits, a_mark_that_has_no_letter_has_a_column_of_its_own);
	tcase_add_loop_test(limits, the_longest_note_is_saved_whole, 0, 10);
	tcase_add_loop_test(limits, a_paste_too_long_is_refused_whole_and_answered_at_once, 0, 4);
	tcase_add_test(limits, what_is_pasted_is_one_line_without_controls);
	tcase_add_test(limits, a_character_that_hides_is_shown_and_can_be_taken_out);
	tcase_add_test(keys, the_line_keys_edit_a_field);
	tcase_add_test(keys, a_long_text_moves_sideways_with_the_cursor);
	tcase_add_test(keys, an_answer_is_found_by_any_letter_of_it);
	tcase_add_test(shown, a_field_that_cannot_be_shown_is_left_whole);
	tcase_add_test(shown, a_field_that_cannot_be_shown_is_emptied_by_its_key_and_typed_anew);
	tcase_add_loop_test(shown, nothing_shifts_behind_a_text_that_the_terminal_counts_otherwise,
		0, 13);
	tcase_add_test(shown, the_cursor_goes_over_an_odd_row_and_leaves_it_as_it_is);
	tcase_add_test(shown, odd_rows_come_back_after_a_stop);
	tcase_add_test(shown, an_odd_row_is_sent_once);
	tcase_add_test(shown, odd_rows_come_back_after_a_repaint_and_a_new_size);
	return suite;
}
