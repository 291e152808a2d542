/* Plants at the terminal: shown on the plan in every size that has room, with their spread, and
 * planted key by key. */

#include "plot/plot.h"
#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* A rose of three cells in open ground, thyme narrower than its cell, a pear of seven
 * half beyond the plan; no snags, which would be in the way. */
static const char yard[] =
	"parterre-plot 1\nunits imperial\ncell 1 ft\nmirror left-right\n"
	"bed b \"Bed\"\n\n"
	"ground 16 x 10\n"
	"  ................\n"
	"  .bbbbb....bbbbb.\n"
	"  .bbbbb....bbbbb.\n"
	"  .bbbbb....bbbbb.\n"
	"  ................\n"
	"  ................\n"
	"  ................\n"
	"  ................\n"
	"  ................\n"
	"  ................\n\n"
	"plant r \"Rose\"\n  spread 3 ft\n  height 4 ft\n  at 4,7\n"
	"plant t \"Thyme\"\n  spacing 8 in\n  at 3,5\n"
	"plant q \"Pear\"\n  spread 7 ft\n  at 14,7\n";

static void sit(struct table *at, const struct launch *how)
{
	table_clear(at, "yard.plot");
	table_write(at, yard);
	table_start(at, how);
	table_wait(at->t);
}

/* The characters of a row of the plan, from one on. */
static void row_has(struct terminal *t, int row, int column, const char *text)
{
	const char *shown = terminal_row(t, PLAN_TOP + row), *end = shown;

	for (int i = 0; i < PLAN_LEFT + column; i++)
		for (end++; ((unsigned char)*end & 0xc0) == 0x80; end++)
			;
	ck_assert_msg(strncmp(end, text, strlen(text)) == 0, "row %d: %s", row, shown);
}

START_TEST(a_specimen_is_its_letter_within_the_edge_of_its_spread)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	row_has(at.t, 6, 6, " \u2234 \u2234 \u2234 ");
	row_has(at.t, 7, 6, " \u2234 r \u2234 ");
	row_has(at.t, 8, 6, " \u2234 \u2234 \u2234 ");
	ck_assert(shown_mark(at.t, 3, 5, "t"));
	/* of the pear what is in the plan: 3.5 cells about its middle */
	ck_assert(shown_mark(at.t, 14, 7, "q") && shown_mark(at.t, 14, 4, "\u2234"));
	ck_assert(shown_mark(at.t, 11, 7, "\u2234") && shown_mark(at.t, 11, 6, "\u2234"));
	ck_assert(!shown_mark(at.t, 12, 7, "\u2234") && !shown_mark(at.t, 10, 7, "\u2234"));
	ck_assert(!shown_mark(at.t, 11, 4, "\u2234"));
	table_leave(&at);
}
END_TEST

/* So many side by side, in rows of 50 from 4,4 on; returns the edges that are seen beyond them. */
static int edges_seen(int count)
{
	struct text plot = TEXT_EMPTY;
	struct table at;
	int seen = 0;

	text_add(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\nbed b \"Bed\"\n"
		"ground 58 x 29\n");
	for (int y = 0; y < 29; y++) {
		text_add(&plot, "  ");
		text_add_repeat(&plot, '.', 58);
		text_add(&plot, "\n");
	}
	text_add(&plot, "plant r \"Rose\"\n  spread 3 ft\n");
	for (int i = 0; i < count; i++)
		text_print(&plot, "  at %d,%d\n", 4 + i % 50, 4 + i / 50);
	table_clear(&at, "many.plot");
	table_write(&at, plot.bytes);
	text_fini(&plot);
	table_start(&at, &(struct launch){ .rows = 40, .columns = 150 });
	table_wait(at.t);
	terminal_settle(at.t);
	for (int x = 4; x < 54; x++)
		seen += shown_mark(at.t, x, 3, "\u2234");
	ck_assert(shown_mark(at.t, 53, 23, "r"));
	table_leave(&at);
	return seen;
}

/* More would drown the plan: they are left out, all of them. */
START_TEST(edges_are_drawn_of_up_to_1000_plants)
{
	ck_assert_int_eq(edges_seen(1000), 50);
	ck_assert_int_eq(edges_seen(1001), 0);
}
END_TEST

START_TEST(without_unicode_the_edge_is_told_apart_too)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80, .term = "vt100",
		.env = (const char *[]){ "LC_ALL=C", NULL } });
	row_has(at.t, 7, 6, " ` r ` ");
	row_has(at.t, 8, 6, " ` ` ` ");
	table_leave(&at);
}
END_TEST

/* A cell is four characters by two: the circle is drawn in those. */
START_TEST(the_nearest_view_draws_a_circle)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	terminal_keys(at.t, "pagedown \\");
	terminal_wait(at.t, "Four columns and two rows a cell.");
	terminal_wait(at.t, "  \u2234\u2234\u2234\u2234\u2234\u2234  ");
	terminal_wait(at.t, "\u2234\u2234      \u2234\u2234");
	terminal_wait(at.t, "\u2234    r     \u2234");
	table_leave(&at);
}
END_TEST

START_TEST(in_one_column_a_cell_letter_and_edge_take_the_cells)
{
	struct text plot = TEXT_EMPTY;
	struct table at;

	text_add(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Bed\"\n\n"
		"ground 40 x 10\n");
	for (int y = 0; y < 10; y++) {
		text_add(&plot, "  .bbbbb");
		text_add_repeat(&plot, OPEN_GROUND, 34);
		text_add(&plot, "\n");
	}
	text_add(&plot, "\nplant r \"Rose\"\n  spread 3 ft\n  at 9,7\n");
	table_clear(&at, "yard.plot");
	table_write(&at, plot.bytes);
	text_fini(&plot);
	table_start(&at, &(struct launch){ .rows = 24, .columns = 80 });
	table_wait(at.t);
	terminal_keys(at.t, "/");
	terminal_wait(at.t, "One column a cell.");
	row_has(at.t, 6, 8, "\u2234\u2234\u2234");
	row_has(at.t, 7, 8, "\u2234r\u2234");
	table_leave(&at);
}
END_TEST

/* Square rows of a foot in a bed of cells of a foot without walls: one in the middle of each, which
 * is the third column and the second row of its characters. */
START_TEST(the_nearest_view_shows_where_plants_of_a_drift_stand)
{
	struct table at;

	table_clear(&at, "yard.plot");
	table_write(&at, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Bed\"\n"
		"  build level\n\nground 5 x 4\n  .....\n  .bbb.\n  .bbb.\n  .....\n\n"
		"plant s \"Sage\"\n  spacing 1 ft\n  pattern square\n  drift b whole\n");
	table_start(&at, &(struct launch){ .rows = 24, .columns = 80 });
	table_wait(at.t);
	ck_assert(!terminal_shows(at.t, "s   s   s"));
	terminal_keys(at.t, "\\");
	terminal_wait(at.t, "Four columns and two rows a cell.");
	terminal_wait(at.t, "s   s   s");
	row_has(at.t, 3, 6, "s   s   s");
	row_has(at.t, 5, 4, "\u2581\u2581s\u2581\u2581\u2581s\u2581\u2581\u2581s");
	table_leave(&at);
}
END_TEST

START_TEST(the_panel_says_what_grows_at_the_cursor)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	terminal_keys(at.t, "down x7 right x4");
	terminal_wait(at.t, "Plant: r Rose, 3 ft wide,");
	terminal_wait(at.t, "4 ft tall");
	table_leave(&at);
}
END_TEST

START_TEST(a_plant_is_taken_in_hand_set_with_its_image_lifted_and_saved)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	terminal_keys(at.t, "t");
	terminal_wait(at.t, "In hand: t Thyme.");
	terminal_wait(at.t, "hand t Thyme");
	terminal_keys(at.t, "right x2 down x2 space");
	terminal_wait(at.t, "Plant: t Thyme, 8 in wide");
	terminal_keys(at.t, "right");
	terminal_wait(at.t, "3 ft across, 2 ft down");
	ck_assert(shown_mark(at.t, 2, 2, "t") && shown_mark(at.t, 13, 2, "t"));
	table_check_saved(&at, "  at 3,5\n  at 2,2\n  at 13,2\n");
	terminal_keys(at.t, "left delete");
	terminal_wait(at.t, "Lifted: t Thyme. Delete again lifts the ground.");
	table_check_saved(&at, "  spacing 8 in\n  at 3,5\nplant q");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "Taken back: Lift");
	table_check_saved(&at, "  at 3,5\n  at 2,2\n  at 13,2\n");
	table_leave(&at);
}
END_TEST

START_TEST(the_bands_of_a_bed_and_its_drifts_are_listed_whole)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	terminal_keys(at.t, "t right x2 down x2 !");
	terminal_type(at.t, "plant a drift");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "How much of the bed is filled");
	terminal_wait(at.t, "Its front  the third by the walk");
	terminal_wait(at.t, "Its middle the third behind it");
	terminal_wait(at.t, "Its back   the third farthest in");
	terminal_keys(at.t, "down enter enter");
	terminal_wait(at.t, "t Thyme fills it");
	terminal_keys(at.t, "!");
	terminal_type(at.t, "lift a drift");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "t Thyme: front of bed B1");
	terminal_wait(at.t, "t Thyme: front of bed B2");
	table_leave(&at);
}
END_TEST

/* What is typed, letter by letter, and what the field then says. */
static const struct {
	const char *label, *typed, *says;
} words_typed[] = {
	{ "Planted from", "Mar", "march" }, { "Planted from", "march", "march" },
	{ "Planted from", "may", "may" }, { "Planted from", "june", "june" },
	{ "Planted from", "july", "july" }, { "Planted from", "september", "september" },
	{ "Planted from", "decem", "december" }, { "Planted from", "3", "march" },
	{ "Planted from", "1", "january" }, { "Planted from", "12", "december" },
	{ "Planted from", "mm", "may" }, { "Planted until", "august", "august" },
	{ "Sun it needs", "part-shade", "part-shade" },
	{ "Sun it needs", "part shade", "part-shade" },
	{ "Sun it needs", "part", "part" }, { "Sun it needs", "part  ", "shade" },
	{ "Sun it needs", "sh", "shade" },
	/* pasted */
	{ "Sun it needs", "\033[200~part-shade \033[201~", "part-shade" },
	{ "Planted from", "\033[200~june\033[201~", "june" },
};

static void open_rose(struct table *at)
{
	terminal_keys(at->t, "#");
	terminal_wait(at->t, "Which card?");
	terminal_type(at->t, "Rose");
	terminal_keys(at->t, "enter");
	terminal_wait(at->t, "Planted from");
}

static void check_says(struct table *at, const char *label, const char *value)
{
	char row[80];

	snprintf(row, sizeof row, "%-22s%s ", label, value);
	terminal_wait(at->t, row);
}

START_TEST(letters_typed_into_a_field_of_words_begin_one_of_them)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	open_rose(&at);
	for (size_t i = 0; i < sizeof words_typed / sizeof *words_typed; i++) {
		field_go_to(at.t, words_typed[i].label);
		terminal_keys(at.t, "backspace");
		check_says(&at, words_typed[i].label, "[not told]");
		terminal_type(at.t, words_typed[i].typed);
		check_says(&at, words_typed[i].label, words_typed[i].says);
	}
	table_leave(&at);
}
END_TEST

START_TEST(what_begins_no_word_is_refused_and_said)
{
	static const char *const typed[] = { "marx", "0", "13", "octover", "x", "june." };
	static const char *const held[] = { "march", "[not told]", "january", "october",
		"[not told]", "june" };
	static const char *const refused[] = { "marx", "0", "13", "octor", "x", "june." };
	struct table at;
	char said[80];

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	open_rose(&at);
	field_go_to(at.t, "Planted from");
	for (size_t i = 0; i < sizeof typed / sizeof *typed; i++) {
		terminal_keys(at.t, "backspace");
		terminal_type(at.t, typed[i]);
		snprintf(said, sizeof said, "Planted from: no word here begins with %s. ",
			refused[i]);
		terminal_wait(at.t, said);
		check_says(&at, "Planted from", held[i]);
	}
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "Planted from: not all that came is in it. Enter takes it so.");
	terminal_keys(at.t, "pagedown enter");
	table_check_saved(&at, "  plant-from june\n");
	table_leave(&at);
}
END_TEST

START_TEST(a_new_plant_fills_the_front_of_a_bed_and_its_image)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	terminal_keys(at.t, "! N e w space p l a n t enter");
	terminal_wait(at.t, "A new plant");
	terminal_keys(at.t, "S a g e pagedown enter");
	terminal_wait(at.t, "In hand: a Sage.");
	terminal_keys(at.t, "right x3 down x2");
	terminal_wait(at.t, "3 ft across, 2 ft down");
	terminal_keys(at.t, "! P l a n t space a space d enter");
	terminal_wait(at.t, "How much of the bed is filled");
	terminal_keys(at.t, "down enter");
	terminal_wait(at.t, "Which beds?");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "a Sage fills it;");
	terminal_wait(at.t, "In front: a Sage");
	table_check_saved(&at, "plant a \"Sage\"\n  drift 3,2 front\n  drift 12,2 front\n");
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen_plants");
	TCase *shown = suite_case(suite, "shown"), *planted = suite_case(suite, "planted");

	tcase_add_test(shown, a_specimen_is_its_letter_within_the_edge_of_its_spread);
	tcase_add_test(shown, without_unicode_the_edge_is_told_apart_too);
	tcase_add_test(shown, edges_are_drawn_of_up_to_1000_plants);
	tcase_add_test(shown, the_nearest_view_draws_a_circle);
	tcase_add_test(shown, the_nearest_view_shows_where_plants_of_a_drift_stand);
	tcase_add_test(shown, in_one_column_a_cell_letter_and_edge_take_the_cells);
	tcase_add_test(shown, the_panel_says_what_grows_at_the_cursor);
	tcase_add_test(planted, a_plant_is_taken_in_hand_set_with_its_image_lifted_and_saved);
	tcase_add_test(planted, a_new_plant_fills_the_front_of_a_bed_and_its_image);
	tcase_add_test(planted, the_bands_of_a_bed_and_its_drifts_are_listed_whole);
	tcase_add_test(planted, letters_typed_into_a_field_of_words_begin_one_of_them);
	tcase_add_test(planted, what_begins_no_word_is_refused_and_said);
	return suite;
}
