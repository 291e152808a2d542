/* The program at a terminal: what the plan is a picture of, with few colours and none, in other
 * locales and on a console; names in it and the title below it. */

#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <string.h>

static struct cell plan_cell(struct terminal *t, int row, int column)
{
	return terminal_cell(t, PLAN_TOP + row, PLAN_LEFT + column);
}

static void sit(struct table *at, const char *plot, const struct launch *how)
{
	table_clear(at, "picture.plot");
	table_write(at, plot);
	table_start(at, how);
	table_wait(at->t);
}

static void sit_at(struct table *at, const char *name, const struct launch *how)
{
	table_lay_out(at, name);
	table_start(at, how);
	table_wait(at->t);
}

static const char *const no_colour[] = { "NO_COLOR=1", NULL };
static const char *const ascii[] = { "LC_ALL=C", NULL };

/* ---- Names ----------------------------------------------------------------------------------- */

static const char named[] = "parterre-plot 1\nunits imperial\ncell 1 ft\n\n"
	"bed b \"Kr\u00e4uter\"\npath p \"\u5ead\u5712\"\n\nground 12 x 6\n"
	"  ............\n  bbbbbbbbbbbb\n  bbbbbbbbbbbb\n  bbbbbbbbbbbb\n  pppppppppppp\n"
	"  pppppppppppp\n";

START_TEST(regions_have_their_names_in_any_script)
{
	struct table at;

	sit(&at, named, NULL);
	terminal_wait(at.t, "B1 Kr\u00e4uter ");
	/* In its middle, of 23 columns, each cluster on the ground it is on. */
	ck_assert_str_eq(plan_cell(at.t, 2, 6).text, "B");
	ck_assert_str_eq(plan_cell(at.t, 4, 8).text, "P");
	ck_assert_str_eq(plan_cell(at.t, 4, 11).text, "\u5ead");
	ck_assert_str_eq(plan_cell(at.t, 4, 13).text, "\u5712");
	ck_assert_int_eq(plan_cell(at.t, 4, 11).ground, plan_cell(at.t, 4, 8).ground);
	table_leave(&at);
	sit(&at, named, &(struct launch){ .env = ascii });
	terminal_wait(at.t, " B1  ");
	ck_assert_int_eq(terminal_find(at.t, "B1 Kr"), -1);
	table_leave(&at);
}
END_TEST

/* The longest run of the bed is its last row, with its wall below. */
START_TEST(a_name_on_a_wall_stands_on_its_line)
{
	struct table at;

	sit(&at, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Herbs\"\n\nground 12 x 4\n"
		"  ............\n  bb..........\n  bbbbbbbbbbbb\n  ............\n", NULL);
	terminal_wait(at.t, "B1 Herbs");
	ck_assert_str_eq(plan_cell(at.t, 2, 17).text, "\u2581");
	ck_assert(plan_cell(at.t, 2, 10).underline);
	table_leave(&at);
}
END_TEST

/* The bed is 8 by 6 cells less a notch of 6 by 3, which has the lawn in it. Where the bed is marked
 * the right side of that runs through the lawn's name, and beside its number. */
START_TEST(a_marked_region_is_as_large_as_its_cells_and_cuts_no_name)
{
	struct table at;

	sit(&at, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Herbs\"\n"
		"lawn l \"Turf\"\n\nground 20 x 7\n  bbbbbbbb............\n  bbbbbbbb............\n"
		"  bbbbbbbb............\n  bblllllllllllllll...\n  bblllllllllllllll...\n"
		"  bblllllllllllllll...\n  ....................\n", NULL);
	terminal_wait(at.t, "L1 Turf");
	terminal_keys(at.t, "! M a r k space t h i s enter right");
	terminal_wait(at.t,
		"Marked: 8 ft x 6 ft, 30.0 sq ft. It is shown where a stamp would lie.");
	ck_assert_int_ne(terminal_find(at.t, " L1  "), -1);
	ck_assert_int_eq(terminal_find(at.t, "L1 Turf"), -1);
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "L1 Turf");
	table_leave(&at);
}
END_TEST

/* ---- Without colours, and few ---------------------------------------------------------------- */

/* Every letter is of 2 x 2 cells. */
static const char *const many[] = { "................................................",
	"..aaaaaaaa..bbbbbbbb........bbbbbbbb..aaaaaaaa..",
	"..aaaaaaaa..bbbbbbbb........bbbbbbbb..aaaaaaaa..",
	"..aaaaaaaa..bbbbbbbb........bbbbbbbb..aaaaaaaa..",
	"..aaaaaaaa..bbbbbbbb........bbbbbbbb..aaaaaaaa..",
	"..cccccccc..pppppppp........pppppppp..cccccccc..",
	"..cccccccc..pppppppp........pppppppp..cccccccc..",
	"..cccccccc..llllllll........llllllll..cccccccc..",
	"..cccccccc..llllllll........llllllll..cccccccc..",
	"................................................" };
enum { MANY = sizeof many / sizeof *many };

/* From afar, a dot for each letter. */
static void sit_far(struct table *at, const struct launch *how)
{
	struct text plot = TEXT_EMPTY;

	text_print(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\nmirror left-right\n\n"
		"bed a \"A\"\nbed b \"B\"\nbed c \"C\"\npath p \"P\"\nlawn l \"L\"\n\n"
		"ground 96 x %d\n", 2 * MANY);
	for (int y = 0; y < 2 * MANY; y++) {
		text_add(&plot, "  ");
		for (const char *c = many[y / 2]; *c; c++)
			text_add_repeat(&plot, *c, 2);
		text_add(&plot, "\n");
	}
	sit(at, plot.bytes, how);
	text_fini(&plot);
	terminal_keys(at->t, "_");
	terminal_wait(at->t, "A character stands for 2 x 4 cells");
}

static void check_row(struct terminal *t, int row, const char *wanted)
{
	const char *shown = terminal_row(t, PLAN_TOP + row);

	ck_assert_msg(strstr(shown, wanted), "no %s in %s", wanted, shown);
}

START_TEST(from_afar_without_colours_grounds_are_patterns_with_letters_at_their_corners)
{
	struct table at;

	sit_far(&at, &(struct launch){ .env = no_colour });
	check_row(at.t, 1, "a\u2592\u2592\u2592\u2592\u2592\u2592a");
	check_row(at.t, 3, "\u00b0 \u00b0 ");
	check_row(at.t, 4, "l\u00b7\u00b7\u00b7\u00b7\u00b7\u00b7l  ");
	table_leave(&at);
}
END_TEST

START_TEST(from_afar_in_eight_colours_the_second_has_its_pattern_and_the_third_its_letter)
{
	enum { RED = 1 };
	struct table at;

	sit_far(&at, &(struct launch){ .term = "xterm" });
	ck_assert_str_eq(plan_cell(at.t, 1, 2).text, " ");
	ck_assert_int_eq(plan_cell(at.t, 1, 2).ground, RED);
	ck_assert_str_eq(plan_cell(at.t, 1, 12).text, "\u2592");
	ck_assert_int_eq(plan_cell(at.t, 1, 12).ground, RED);
	check_row(at.t, 3, "c      c");
	table_leave(&at);
}
END_TEST

/* ---- A console ------------------------------------------------------------------------------- */

/* The Linux console underlines nothing that has colours, and its fonts have no thin blocks. */
START_TEST(a_console_has_lines_below_cells_too)
{
	struct table at;

	sit_at(&at, "court.plot", &(struct launch){ .term = "linux" });
	check_row(at.t, 0, "________");
	check_row(at.t, 3, "\u2502_________\u2502");
	check_row(at.t, 7, "\u2584\u2584\u2584\u2584\u2584");
	table_leave(&at);
}
END_TEST

/* ---- Lines ----------------------------------------------------------------------------------- */

/* A fence within the plan, with a gate on it. */
START_TEST(in_one_column_a_cell_a_fence_is_a_line_and_a_gate_a_gap)
{
	struct text plot = TEXT_EMPTY;
	struct table at;

	text_add(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nlawn l \"Turf\"\n\n"
		"ground 60 x 24\n");
	for (int y = 0; y < 24; y++) {
		text_add(&plot, "  ");
		text_add_repeat(&plot, 'l', 60);
		text_add(&plot, "\n");
	}
	text_add(&plot, "\nfence \"Pickets\"\n  run 10,4 10,10 30,10\n  gate 14,10 18,10\n");
	sit(&at, plot.bytes, NULL);
	text_fini(&plot);
	terminal_keys(at.t, "/");
	terminal_wait(at.t, "One column a cell");
	for (int y = 4; y < 10; y++)
		ck_assert_str_eq(plan_cell(at.t, y, 9).text, "\u2503");
	for (int x = 10; x < 30; x++)
		ck_assert_int_eq(strcmp(plan_cell(at.t, 9, x).text, "\u2582") == 0,
			x < 14 || x >= 18);
	table_leave(&at);
}
END_TEST

START_TEST(a_scroll_sends_the_plan_alone)
{
	struct table at;
	struct traffic cost;

	table_sit(&at, "great-court.plot", 24, 80);
	terminal_settle(at.t);
	terminal_type(at.t, "\033[1;2C");
	cost = terminal_settle(at.t);
	ck_assert_msg(cost.bytes > 500 && cost.bytes < 4000, "%zu bytes", cost.bytes);
	ck_assert(!terminal_answered(at.t, "\033[2J") && !terminal_answered(at.t, "\033[J"));
	ck_assert(!terminal_answered(at.t, "Areas") && !terminal_answered(at.t, "Open ground"));
	table_leave(&at);
}
END_TEST

/* ---- Below the plan -------------------------------------------------------------------------- */

static const char titled[] = "parterre-plot 1\n"
	"title \"Four beds of herbs round a basin, with a seat at the end\"\n"
	"units imperial\ncell 1 ft\n\nbed b \"Bed\"\n\nground 23 x %d\n";

static void sit_titled(struct table *at, int rows)
{
	struct text plot = TEXT_EMPTY;

	text_print(&plot, titled, rows);
	for (int y = 0; y < rows; y++)
		text_add(&plot, "  bbbbbbbbbbbbbbbbbbbbbbb\n");
	sit(at, plot.bytes, NULL);
	text_fini(&plot);
}

START_TEST(a_title_takes_the_rows_below_or_ends_at_a_word)
{
	struct table at;

	sit_titled(&at, 10);
	check_row(at.t, 11, "5'");
	check_row(at.t, 12, "Four beds of herbs round a basin, with a seat");
	check_row(at.t, 13, "at the end");
	table_leave(&at);
	sit_titled(&at, 18);
	check_row(at.t, 19, "     Four beds of herbs round a basin, with a seat\u2026 ");
	table_leave(&at);
	/* No scale fits there. */
	table_lay_out(&at, "ring.plot");
	table_start(&at, &(struct launch){ .rows = 18, .columns = 60 });
	table_wait(at.t);
	terminal_keys(at.t, "_");
	terminal_wait(at.t, "A character stands for 1 x 2 cells");
	check_row(at.t, 9, "Ring bed");
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen picture");
	TCase *names = suite_case(suite, "names"), *few = suite_case(suite, "few colours");
	TCase *below = suite_case(suite, "below the plan"), *lines = suite_case(suite, "lines");

	tcase_add_test(names, regions_have_their_names_in_any_script);
	tcase_add_test(names, a_name_on_a_wall_stands_on_its_line);
	tcase_add_test(names, a_marked_region_is_as_large_as_its_cells_and_cuts_no_name);
	tcase_add_test(few,
		from_afar_without_colours_grounds_are_patterns_with_letters_at_their_corners);
	tcase_add_test(few,
		from_afar_in_eight_colours_the_second_has_its_pattern_and_the_third_its_letter);
	tcase_add_test(lines, in_one_column_a_cell_a_fence_is_a_line_and_a_gate_a_gap);
	tcase_add_test(lines, a_scroll_sends_the_plan_alone);
	tcase_add_test(few, a_console_has_lines_below_cells_too);
	tcase_add_test(below, a_title_takes_the_rows_below_or_ends_at_a_word);
	return suite;
}
