/* The cards at a terminal: what is typed, shown, refused and left. */
#include "plot/block.h"
#include "editor/cards/allow_card.h"
#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <stdio.h>
#include <string.h>

/* Opens the card whose name begins so. */
static void open_card(struct table *at, const char *name, const char *shown)
{
	terminal_keys(at->t, "#");
	terminal_wait(at->t, "Which card?");
	terminal_keys(at->t, "home");
	terminal_type(at->t, name);
	terminal_keys(at->t, "enter");
	terminal_wait(at->t, shown);
}

static void accept_card(struct table *at)
{
	terminal_keys(at->t, "pagedown enter");
}

/* ---- Every field ---------------------------------------------------------------------------- */

/* What every attribute of a kind takes, as the file then has it, and what none takes. */
static const struct {
	const char *good, *held, *bad;
} kinds[] = {
	[VALUE_TEXT] = { "Yard", "\"Yard\"", NULL },
	[VALUE_LENGTH] = { "1 in", NULL, "3 cubits" },
	[VALUE_COUNT] = { "2", NULL, "two" },
	[VALUE_DECIMAL] = { "12.5", NULL, "north" },
	[VALUE_PERCENT] = { "7 %", NULL, "101 %" },
	[VALUE_SIZE] = { "1 ft x 6 in x 4 in", NULL, "1 ft x 2 ft x 4 in" },
	[VALUE_CAP] = { "1 ft x 6 in x 2 in", NULL, "some" },
	[VALUE_MIX] = { "loam 2, compost 1", NULL, "loam" },
	[VALUE_PLACE] = { "13,8", NULL, "28,8" },
	[VALUE_SIDES] = { "top, left", "left, top", "left, left" },
	[VALUE_AMOUNT] = { NULL, NULL, "140 stone" },
};

static const char *good_words(const struct attribute_row *row)
{
	static const char *const amounts[] = {
		[QUANTITY_DENSITY] = "140 lb/cu ft", [QUANTITY_VOLUME] = "7 cu ft",
		[QUANTITY_WEIGHT] = "250 lb", [QUANTITY_RATE] = "5 lb/1000 sq ft",
		[QUANTITY_FLOW] = "90 gal/h",
		[QUANTITY_HOURS_EACH] = "0.05 h per each", [QUANTITY_HOURS_LENGTH] = "0.1 h per ft",
		[QUANTITY_HOURS_AREA] = "0.02 h per sq-ft",
		[QUANTITY_HOURS_VOLUME] = "2.2 h per m3",
	};

	if (row->rule.kind == VALUE_AMOUNT)
		return amounts[row->rule.quantity];
	if (row->rule.kind == VALUE_LENGTH && row->rule.least > NM_PER_INCH)
		return row->rule.most < NM_PER_FOOT * 4 ? "2 ft" : "4 ft";
	if (row->rule.kind == VALUE_DECIMAL && row->rule.most == 2 * MILLION)
		return "1.5";
	if (row->rule.kind == VALUE_DECIMAL && row->rule.most == MILLION)
		return "0.9";
	return kinds[row->rule.kind].good;
}

/* Whether the field is not in view at first on 24 rows: those from the end of a long card. */
static bool is_below_view(enum attribute a)
{
	enum { IN_VIEW = 18 };
	enum block_kind block = attribute_block(a);
	int above = block == BLOCK_BED ? 2 : 0; /* its name and its letter */

	for (enum attribute before = block_first(block); before < a; before++)
		above += attribute_row(before)->card == attribute_row(a)->card;
	return above >= IN_VIEW;
}

static void open_card_of(struct table *at, enum attribute a)
{
	static const char *const names[BLOCK_KINDS] = { "The plot", "", "b ", "p ", "l ", "S ",
		"Pickets", "Hours that work takes" };
	const struct attribute_row *row = attribute_row(a);
	enum block_kind block = attribute_block(a);

	open_card(at, block == BLOCK_ALLOW ? allow_card_titles[row->card] : names[block],
		"Esc leave");
	if (is_below_view(a))
		terminal_keys(at->t, "pagedown");
	field_go_to(at->t, row->label);
}

/* Turns to another word, or types a bad value, is refused, and types a good one. */
static void fill(struct table *at, const struct attribute_row *row)
{
	char refused[128];

	if (row->rule.kind == VALUE_CHOICE) {
		terminal_keys(at->t, "right");
		return;
	}
	terminal_keys(at->t, "backspace");
	if (kinds[row->rule.kind].bad) {
		terminal_type(at->t, kinds[row->rule.kind].bad);
		terminal_keys(at->t, "enter");
		snprintf(refused, sizeof refused, "%s: ", row->label);
		terminal_wait(at->t, refused);
		terminal_keys(at->t, "up down backspace");
	}
	terminal_type(at->t, good_words(row));
}

static bool file_has(struct table *at, enum attribute a, const char *words)
{
	const struct attribute_row *row = attribute_row(a);
	const char *before = !block_keyword(attribute_block(a)) ? "" :
		attribute_block(a) == BLOCK_RATES ? "rate " : "  ";
	struct text bytes = TEXT_EMPTY, line = TEXT_EMPTY;
	struct file_error error;
	const char *block;
	bool has;

	terminal_keys(at->t, "> >");
	terminal_wait(at->t, "Saved in");
	ck_assert(file_read(at->plot, 1 << 20, &bytes, &error));
	block = bytes.bytes;
	if (strcmp(before, "  ") == 0) {
		text_print(&line, "\n%s", block_keyword(attribute_block(a)));
		block = strstr(bytes.bytes, line.bytes);
		text_clear(&line);
	}
	text_print(&line, "\n%s%s %s", before, row->keyword, words);
	has = block && strstr(block, line.bytes) != NULL;
	text_fini(&bytes);
	text_fini(&line);
	return has;
}

/* A choice's words are the file's; which of them is next is of no matter here. */
static const char *words_held(const struct attribute_row *row)
{
	if (row->rule.kind == VALUE_CHOICE)
		return "";
	return kinds[row->rule.kind].held ? kinds[row->rule.kind].held : good_words(row);
}

/* The side of the cells asks further: tests of its own below. */
START_TEST(each_field_takes_a_good_value_refuses_a_bad_one_is_emptied_and_taken_back)
{
	const struct attribute_row *row = attribute_row((enum attribute)_i);
	bool is_book = _i == HEAD_PRICES; /* of that name there is none */
	const char *set = _i == HEAD_UNITS ? "values that are not set have the defaults of metric" :
		"Set; Backspace takes it back.";
	struct table at;

	if (_i == HEAD_CELL)
		return;
	table_sit(&at, "court.plot", 24, 80);
	open_card_of(&at, (enum attribute)_i);
	fill(&at, row);
	accept_card(&at);
	terminal_wait(at.t, is_book ? "No prices: cannot open" : set);
	ck_assert_msg(file_has(&at, (enum attribute)_i, words_held(row)), "%s is not in the file",
		row->label);

	open_card_of(&at, (enum attribute)_i);
	terminal_keys(at.t, "backspace");
	accept_card(&at);
	if (row->required) {
		terminal_wait(at.t, "needed here");
		table_leave(&at);
		return;
	}
	terminal_wait(at.t, "Set; Backspace takes it back.");
	ck_assert_msg(!file_has(&at, (enum attribute)_i, words_held(row)),
		"%s is still in the file", row->label);
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, is_book ? "No prices: cannot open" : "Taken back");
	ck_assert_msg(file_has(&at, (enum attribute)_i, words_held(row)), "%s has not come back",
		row->label);
	table_leave(&at);
}
END_TEST

START_TEST(every_label_leaves_a_blank_before_its_field)
{
	for (int a = 0; a < ATTRIBUTES; a++)
		ck_assert_msg(strlen(attribute_row((enum attribute)a)->label) < 22, "%s",
			attribute_row((enum attribute)a)->label);
}
END_TEST

START_TEST(an_entry_is_added_and_laid)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "Add", "Add what to the legend?");
	terminal_keys(at.t, "down enter");
	terminal_wait(at.t, "A new path");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Name: needed here");
	terminal_type(at.t, "Gravel");
	accept_card(&at);
	terminal_wait(at.t, "hand a Gravel");
	terminal_keys(at.t, "space");
	terminal_wait(at.t, "*a Gravel");
	table_check_saved(&at, "path a \"Gravel\"\n");
	table_leave(&at);
}
END_TEST

START_TEST(another_letter_is_put_on_the_ground)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "b", "The bed b");
	field_go_to(at.t, "Letter");
	terminal_type(at.t, "p");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Letter: p is taken");
	terminal_keys(at.t, "backspace");
	terminal_type(at.t, "k");
	accept_card(&at);
	terminal_wait(at.t, "Set; Backspace takes it back.");
	terminal_until(at.t, shown_character(at.t, 1, 2) == 'k');
	table_check_saved(&at, "  .kkkkkppkkkkk.\n");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "court.plot, not saved");
	table_check_saved(&at, "  .bbbbbppbbbbb.\n");
	table_leave(&at);
}
END_TEST

START_TEST(a_removed_entry_becomes_another_or_open_ground)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "Remove", "Remove which entry?");
	terminal_type(at.t, "l");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "20 cells");
	terminal_type(at.t, "p");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Set; Backspace");
	table_check_saved(&at, "  .pppppSSppppp.\n");
	table_leave(&at);
}
END_TEST

START_TEST(other_units_are_shown_at_once)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "The plot", "Units shown");
	field_go_to(at.t, "Units shown");
	terminal_type(at.t, "m");
	terminal_wait(at.t, "304.8 mm");
	accept_card(&at);
	terminal_wait(at.t, "In all");
	terminal_wait(at.t, "m2");
	table_check_saved(&at, "units metric\ncell 304.8 mm\n");
	table_leave(&at);
}
END_TEST

START_TEST(another_cell_keeps_the_cells_or_the_measure)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "The plot", "Units shown");
	field_go_to(at.t, "Side of a cell");
	terminal_type(at.t, "6");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Side of a cell: 6 is taken as 6 in.");
	terminal_wait(at.t, "Side of a cell        6 in");
	accept_card(&at);
	terminal_wait(at.t, "Cells of 6 in instead of");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "nothing was picked");
	terminal_keys(at.t, "pagedown enter");
	terminal_wait(at.t, "28 x 16 cells");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "28 x 16 cells, all as it was.");
	table_check_saved(&at, "ground 28 x 16\n");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "court.plot, not saved");
	table_check_saved(&at, "ground 14 x 8\n");

	open_card(&at, "The plot", "Units shown");
	field_go_to(at.t, "Side of a cell");
	terminal_type(at.t, "2 ft");
	accept_card(&at);
	terminal_wait(at.t, "28 ft x 16 ft");
	terminal_keys(at.t, "down enter");
	terminal_wait(at.t, "Set; Backspace");
	table_check_saved(&at, "cell 2 ft\n");
	table_check_saved(&at, "ground 14 x 8\n");
	table_leave(&at);
}
END_TEST

START_TEST(a_note_is_added_and_one_too_long_for_its_field_is_shown_whole)
{
	static const char words[] = "Look for the old drain before anything else is dug on this "
		"side";
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "The plot", "New note, type it");
	field_go_to(at.t, "New note, type it");
	/* Enter in it, empty or not, goes on to the row that sets the card. */
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Enter takes the card as it stands");
	terminal_keys(at.t, "up");
	terminal_type(at.t, words);
	terminal_wait(at.t, words);
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Enter takes the card as it stands");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Set; Backspace");
	table_check_saved(&at, "\nnote \"Look for the old drain before anything else is dug on "
		"this side\"\n");
	table_leave(&at);
}
END_TEST

START_TEST(esc_asks_before_it_drops_everything)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "b", "The bed b");
	terminal_type(at.t, "Other");
	field_go_to(at.t, "Letter");
	terminal_keys(at.t, "k");
	field_go_to(at.t, "Block as laid");
	terminal_wait(at.t, "Name        Other");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "What was typed is not set yet. Esc goes back");
	terminal_type(at.t, "drop");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Drawing   court.plot, saved   hand b Raised bed");
	open_card(&at, "b", "Name        Raised bed");
	/* Nothing is asked where nothing was typed. */
	terminal_keys(at.t, "down escape");
	terminal_wait(at.t, "Drawing   court.plot, saved   hand b Raised bed");
	table_leave(&at);
}
END_TEST

/* The end of an arrow key whose Esc came long before is no more than letters. */
START_TEST(an_esc_too_many_loses_nothing_that_was_typed)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "b", "The bed b");
	terminal_type(at.t, "Other");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "What was typed is not set");
	terminal_type(at.t, "[B");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "Name        Other");
	terminal_wait(at.t, "Typing    court.plot");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "What was typed is not set");
	terminal_keys(at.t, "enter"); /* go on typing: the first answer */
	terminal_wait_gone(at.t, "What was typed is not set");
	terminal_wait(at.t, "Name        Other");
	field_go_to(at.t, "Courses");
	terminal_type(at.t, "many");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "What was typed is not set");
	terminal_type(at.t, "Set");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Courses: found many");
	terminal_type(at.t, "4");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "What was typed is not set");
	terminal_type(at.t, "Set");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "hand b Other");
	table_check_saved(&at, "  courses 4\n");
	table_leave(&at);
}
END_TEST

START_TEST(a_wrong_field_keeps_its_words_and_the_cursor)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "b", "The bed b");
	field_go_to(at.t, "Block as laid");
	terminal_type(at.t, "1 ft x 2 ft x 3 in");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Block as laid: found 2, expected a depth across the wall");
	terminal_wait(at.t, "1 ft x 2 ft x 3 in");
	ck_assert(shown_at(at.t, "Block as laid"));
	/* Gone from, which still says so, and come back to with the whole card. */
	terminal_keys(at.t, "down");
	terminal_wait(at.t, "How much of the block's size is joint");
	terminal_wait(at.t, "expected a depth across the wall");
	terminal_keys(at.t, "down");
	terminal_wait_gone(at.t, "expected a depth across the wall");
	accept_card(&at);
	terminal_wait(at.t, "expected a depth across the wall");
	terminal_until(at.t, shown_at(at.t, "Block as laid"));
	/* To be mended after a key that goes there, as in any field. */
	terminal_keys(at.t, "end");
	terminal_type(at.t, "!");
	terminal_wait(at.t, "1 ft x 2 ft x 3 in!");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Block as laid: found 2");
	terminal_type(at.t, "12 x 4 x 4");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Block as laid: 12 x 4 x 4 is taken as 12 x 4 x 4 in.");
	table_leave(&at);
}
END_TEST

/* Refused as too long, as taken, as no such value. */
START_TEST(what_is_typed_after_a_refusal_takes_its_place_as_in_a_field_just_come_to)
{
	static const struct {
		const char *label, *bad, *said, *good, *shown;
	} rows[] = {
		{ "Letter", "bv", "Letter: not all that came is in it", "k",
			"Letter                k " },
		{ "Letter", "p", "Letter: p is taken", "k", "Letter                k " },
		{ "Courses", "many", "Courses: found many", "4", "Courses               4 " },
		{ "Mix of the fill", "loam", "Mix of the fill: found", "loam 1",
			"Mix of the fill       loam 1 " },
	};
	struct table at;

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		table_sit(&at, "court.plot", 24, 80);
		open_card(&at, "b", "The bed b");
		field_go_to(at.t, rows[i].label);
		terminal_type(at.t, rows[i].bad);
		terminal_keys(at.t, "enter");
		terminal_wait(at.t, rows[i].said);
		terminal_type(at.t, rows[i].good);
		terminal_wait(at.t, rows[i].shown);
		table_leave(&at);
	}
}
END_TEST

START_TEST(letters_turn_to_the_word_that_begins_so)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "The plot", "Units shown");
	field_go_to(at.t, "Mirror");
	terminal_type(at.t, "h");
	terminal_wait(at.t, "Mirror                half-turn");
	terminal_type(at.t, "z");
	terminal_wait(at.t, "Mirror: no word here begins with hz. Backspace empties it");
	terminal_wait(at.t, "Mirror                half-turn");
	terminal_keys(at.t, "backspace");
	terminal_type(at.t, "top");
	terminal_wait(at.t, "Mirror                top-bottom");
	table_leave(&at);
}
END_TEST

START_TEST(an_emptied_field_shows_its_default_in_brackets)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "b", "The bed b");
	field_go_to(at.t, "Block as laid");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "[16 x 8 x 6 in]");
	terminal_wait(at.t, "Length along the wall x depth across it x height");
	terminal_wait(at.t, "Unset, so 16 x 8 x 6 in. A number alone is in inches.");
	field_go_to(at.t, "Mix of the fill");
	terminal_keys(at.t, "backspace");
	field_go_to(at.t, "Block as laid");
	terminal_wait(at.t, "[topsoil 1, compost 1]");
	field_go_to(at.t, "Built");
	/* the first word that differs from what holds unset */
	terminal_keys(at.t, "space");
	terminal_wait(at.t, "Built                 level");
	terminal_keys(at.t, "delete");
	terminal_wait(at.t, "Built                 [raised]");
	table_leave(&at);
}
END_TEST

START_TEST(a_field_that_is_left_shows_its_beginning_and_where_it_is_cut)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	open_card(&at, "b", "The bed b");
	terminal_wait(at.t, "Mix of the fill       topsoil 5, compost ...");
	terminal_type(at.t, "The bed of old roses along the wall");
	terminal_wait(at.t, "ses along the wall ");
	terminal_keys(at.t, "down");
	terminal_wait(at.t, "Name        The bed of old roses along th...");
	terminal_wait_gone(at.t, "along the wall");
	terminal_keys(at.t, "up");
	terminal_wait(at.t, "Name        The bed of old roses along the w");
	terminal_wait(at.t, "The bed of old roses along the wall");
	table_leave(&at);
}
END_TEST

/* Whether the title of the bed's card says "3 of 19": the field, of how many. */
static bool says_where(struct terminal *t, int *field, int *count)
{
	int row = terminal_find(t, "The bed b");

	return row >= 0 && sscanf(strstr(terminal_row(t, row), "The bed b"), "The bed b %d of %d",
		field, count) == 2;
}

static bool says_the_last(struct terminal *t)
{
	int field, count;

	return says_where(t, &field, &count) && field == count;
}

START_TEST(a_new_size_keeps_what_was_typed_and_a_long_card_says_where_it_is)
{
	struct table at;
	int field, count;

	table_sit(&at, "court.plot", 34, 80); /* where a bed's card is whole */
	open_card(&at, "b", "The bed b");
	terminal_type(at.t, "Long bed");
	terminal_keys(at.t, "pagedown");
	terminal_resize(at.t, 18, 60);
	terminal_until(at.t, says_the_last(at.t) && shown_at(at.t, "Enter here: set all this"));
	terminal_wait_gone(at.t, "Long bed");
	terminal_keys(at.t, "pageup");
	terminal_wait(at.t, "Name        Long bed");
	terminal_resize(at.t, 34, 80);
	terminal_wait(at.t, "New note, type it");
	terminal_until(at.t, !says_where(at.t, &field, &count));
	accept_card(&at);
	terminal_wait(at.t, "b Long bed");
	table_leave(&at);
}
END_TEST

/* A message of two rows must not hide the field it is about. */
START_TEST(a_long_message_leaves_the_field_in_view)
{
	struct table at;

	table_sit(&at, "court.plot", 18, 60);
	open_card(&at, "b", "The bed b");
	terminal_keys(at.t, "pagedown up");
	terminal_type(at.t, "Look for the old drain before anything else is dug on this side");
	terminal_wait(at.t, "Look for the old drain before anything else is dug on this");
	terminal_wait(at.t, "New note, type it");
	terminal_until(at.t, shown_at(at.t, "New note, type it"));
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("form");
	TCase *legend = suite_case(suite, "legend"), *plot = suite_case(suite, "plot");
	TCase *fields = suite_case(suite, "fields");

	tcase_add_test(legend, an_entry_is_added_and_laid);
	tcase_add_test(legend, another_letter_is_put_on_the_ground);
	tcase_add_test(legend, a_removed_entry_becomes_another_or_open_ground);
	tcase_add_test(plot, other_units_are_shown_at_once);
	tcase_add_test(plot, another_cell_keeps_the_cells_or_the_measure);
	tcase_add_test(plot, a_note_is_added_and_one_too_long_for_its_field_is_shown_whole);
	tcase_add_test(fields, esc_asks_before_it_drops_everything);
	tcase_add_test(fields, an_esc_too_many_loses_nothing_that_was_typed);
	tcase_add_test(fields, a_wrong_field_keeps_its_words_and_the_cursor);
	tcase_add_test(fields,
		what_is_typed_after_a_refusal_takes_its_place_as_in_a_field_just_come_to);
	tcase_add_test(fields, letters_turn_to_the_word_that_begins_so);
	tcase_add_test(fields, an_emptied_field_shows_its_default_in_brackets);
	tcase_add_test(fields, every_label_leaves_a_blank_before_its_field);
	tcase_add_loop_test(fields,
		each_field_takes_a_good_value_refuses_a_bad_one_is_emptied_and_taken_back, 0,
		SERVICE_DEPTH);
	tcase_add_test(fields, a_new_size_keeps_what_was_typed_and_a_long_card_says_where_it_is);
	tcase_add_test(fields, a_field_that_is_left_shows_its_beginning_and_where_it_is_cut);
	tcase_add_test(fields, a_long_message_leaves_the_field_in_view);
	return suite;
}
