/* The program at a terminal: zooms, panel widths, measures on the rulers, the mouse in both
 * kinds of its reports, and that the terminal is its own again at the end. */

#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include "base/file.h"
#include "plot/format/format.h"

#include <poll.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Of the plan on 24 by 80. */
enum { PLAN_COLUMNS = 48, PLAN_ROWS = 20 };

/* The panel, wide, hidden and back. */
#define PANEL "! P a n e l space w enter"

static const char mouse_on[] = "\033[?1000h\033[?1002h\033[?1006h";
static const char mouse_off[] = "\033[?1006l\033[?1002l\033[?1000l";

static void sit(struct table *at, const char *name, const char *term)
{
	table_lay_out(at, name);
	table_start(at, &(struct launch){ .term = term });
	table_wait(at->t);
}

static void plot_load(const char *path, struct plot *plot)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	struct diag diag;

	plot_init(plot);
	ck_assert(file_read(path, 1 << 20, &bytes, &error));
	ck_assert(format_read(bytes.bytes, bytes.length, plot, &diag));
	text_fini(&bytes);
}

/* ---- Zooms ----------------------------------------------------------------------------------- */

static struct cell plan_cell(struct terminal *t, int row, int column)
{
	return terminal_cell(t, PLAN_TOP + row, PLAN_LEFT + column);
}

/* The colours of the great court's entries, in the order of its legend. */
static int ground_of(char letter)
{
	static const char letters[] = "bcdplUF";
	static const int grounds[] = { 94, 52, 180, 254, 71, 17, 110 };
	const char *found = strchr(letters, letter);

	return found && *found ? grounds[found - letters] : -1;
}

START_TEST(one_column_a_cell_shows_the_grounds_of_the_file)
{
	struct table at;
	struct plot plot;

	table_sit(&at, "great-court.plot", 24, 80);
	plot_load(at.plot, &plot);
	terminal_keys(at.t, "/");
	terminal_wait(at.t, "One column a cell.");
	for (int y = 1; y < PLAN_ROWS; y++)
		for (int x = 1; x < PLAN_COLUMNS; x++)
			ck_assert_int_eq(plan_cell(at.t, y, x).ground,
				ground_of(ground_cell(&plot.ground, x, y)));
	ck_assert_int_eq(plan_cell(at.t, 0, 0).ground, SHOWN_CURSOR);
	plot_fini(&plot);
	table_leave(&at);
}
END_TEST

/* The commonest ground of so many columns and rows of cells, by counting each letter anew; false
 * where the colour is none of those. */
static bool is_commonest(const struct ground *ground, int left, int top, int side, int colour)
{
	int counts[256] = { 0 }, most = 0;
	bool is_found = false;

	for (int y = (top > 0 ? top : 0); y < top + side && y < ground->rows; y++)
		for (int x = (left > 0 ? left : 0); x < left + side && x < ground->columns; x++)
			counts[(int)ground_cell(ground, x, y)]++;
	for (int i = 0; i < 256; i++)
		if (i != OPEN_GROUND && counts[i] > most)
			most = counts[i];
	for (int i = 0; i < 256; i++)
		is_found |= i != OPEN_GROUND && counts[i] == most && ground_of((char)i) == colour;
	return is_found;
}

/* The colours of a character's upper and lower half. */
static void dots_of(struct cell cell, int dots[2])
{
	bool is_lower = strcmp(cell.text, "\u2584") == 0, is_even = strcmp(cell.text, " ") == 0;

	dots[0] = is_even || is_lower ? cell.ground : cell.ink;
	dots[1] = is_lower ? cell.ink : cell.ground;
}

/* Dots of 6 x 6 cells, counted from the middle both ways: the first ones are cut. */
START_TEST(the_overview_shows_all_of_a_large_plan_and_goes_back)
{
	struct table at;
	struct plot plot;

	table_sit(&at, "great-court.plot", 24, 80);
	plot_load(at.plot, &plot);
	terminal_keys(at.t, "end pagedown _");
	terminal_wait(at.t, "A character stands for 6 x 12 cells, 6 ft x 12 ft");
	ck_assert_int_eq(plot.ground.columns, 200);
	ck_assert_int_eq(plot.ground.rows, 200);
	for (int y = 0; y < 17; y++)
		for (int x = 0; x < 34; x++) {
			int dots[2];

			dots_of(plan_cell(at.t, y, x), dots);
			ck_assert(is_commonest(&plot.ground, 6 * x - 2, 12 * y - 2, 6, dots[1]));
			ck_assert(y == 0 ? dots[0] == -1 : is_commonest(&plot.ground, 6 * x - 2,
				12 * y - 8, 6, dots[0]));
		}
	terminal_until(at.t, terminal_cursor(at.t).row == PLAN_TOP + 17 &&
		terminal_cursor(at.t).column == PLAN_LEFT + 33);
	terminal_keys(at.t, "_");
	terminal_wait(at.t, "Two columns a cell.");
	ck_assert_int_eq(terminal_cursor(at.t).column, PLAN_LEFT + PLAN_COLUMNS - 2);
	plot_fini(&plot);
	table_leave(&at);
}
END_TEST

/* The great court is mirrored both ways. */
START_TEST(what_is_symmetric_looks_so_from_afar)
{
	int rows = 40, columns = 120, deep, wide = 68;
	struct table at;

	table_sit(&at, "great-court.plot", rows, columns);
	terminal_keys(at.t, "_");
	terminal_wait(at.t, "A character stands for 3 x 6 cells");
	deep = 34;
	for (int y = 0; y < deep; y++)
		for (int x = 0; x < wide; x++) {
			int one[2], right[2], below[2];

			if (x % (wide - 1) == 0 && y % (deep - 1) == 0)
				continue; /* the cursor and where it would be */
			dots_of(plan_cell(at.t, y, x), one);
			dots_of(plan_cell(at.t, y, wide - 1 - x), right);
			dots_of(plan_cell(at.t, deep - 1 - y, x), below);
			ck_assert(one[0] == right[0] && one[1] == right[1]);
			ck_assert(one[0] == below[1] && one[1] == below[0]);
		}
	table_leave(&at);
}
END_TEST

/* Each cell is a dot; a fence is with the cells between it and the axis. */
START_TEST(a_fence_beside_an_axis_is_seen_from_afar_as_its_image_is)
{
	struct text plot = TEXT_EMPTY;
	struct table at;

	text_add(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\nmirror four-way\n"
		"path p \"Stone\"\n\nground 40 x 40\n");
	for (int y = 0; y < 40; y++)
		text_add(&plot, "  pppppppppppppppppppppppppppppppppppppppp\n");
	text_add(&plot, "\nfence \"Pickets\"\n  run 19,0 19,10\n  run 21,0 21,10\n"
		"  run 0,19 10,19\n  run 0,21 10,21\n");
	table_clear(&at, "fenced.plot");
	table_write(&at, plot.bytes);
	text_fini(&plot);
	table_start(&at, NULL);
	table_wait(at.t);
	terminal_keys(at.t, "_");
	terminal_wait(at.t, "A character stands for 1 x 2 cells");
	for (int x = 18; x < 22; x++) {
		bool is_fenced = x == 19 || x == 20;
		int beside[2], above[2], dot = x % 2;

		dots_of(plan_cell(at.t, 1, x), beside);
		dots_of(plan_cell(at.t, x / 2, 1), above);
		ck_assert_int_eq(beside[0] != ground_of('p'), is_fenced);
		ck_assert_int_eq(beside[1] != ground_of('p'), is_fenced);
		ck_assert_int_eq(above[dot] != ground_of('p'), is_fenced);
	}
	table_leave(&at);
}
END_TEST

START_TEST(in_one_column_a_peg_hides_a_letter_and_other_marks_only_open_ground)
{
	struct table at;

	table_sit(&at, "rope-walk.plot", 24, 80);
	terminal_keys(at.t, "/ right down enter right down");
	terminal_wait(at.t, "The rectangle: 2 ft x 2 ft");
	ck_assert_str_eq(plan_cell(at.t, 1, 1).text, "\u25c6");
	ck_assert_int_eq(plan_cell(at.t, 1, 1).ground, SHOWN_OUTLINE);
	ck_assert_int_eq(plan_cell(at.t, 2, 2).ground, SHOWN_CURSOR);
	ck_assert_int_eq(shown_character(at.t, 2, 2), 'l');
	/* the axes, on open ground and on the path */
	ck_assert_int_eq(shown_character(at.t, 0, 14), '|');
	ck_assert_int_eq(plan_cell(at.t, 1, 14).ground, ground_of('p'));
	ck_assert_str_eq(plan_cell(at.t, 9, 0).text, "\u2581");
	ck_assert_int_eq(plan_cell(at.t, 9, 1).ground, ground_of('p'));
	ck_assert_int_eq(shown_character(at.t, 0, 5), '.');
	ck_assert_int_eq(shown_character(at.t, 0, 6), ' ');
	table_leave(&at);
}
END_TEST

START_TEST(from_afar_the_cursor_goes_by_a_character_and_is_seen)
{
	struct table at;

	table_sit(&at, "great-court.plot", 24, 80);
	terminal_keys(at.t, "_ right right down");
	terminal_until(at.t, terminal_cursor(at.t).row == PLAN_TOP + 1 &&
		terminal_cursor(at.t).column == PLAN_LEFT + 2);
	ck_assert_int_eq(plan_cell(at.t, 1, 2).ground, SHOWN_CURSOR);
	ck_assert(terminal_shows(at.t, "12 ft across, 12 ft down"));
	table_leave(&at);
}
END_TEST

START_TEST(smaller_and_nearer_again_is_the_same_view)
{
	struct table at;
	char row[512];

	table_sit(&at, "great-court.plot", 24, 80);
	terminal_type(at.t, "\033[1;2C\033[1;2B\033[1;2C");
	terminal_keys(at.t, "1 right x5 down x3");
	terminal_wait(at.t, "9 ft down");
	terminal_wait(at.t, "p Crushed stone"); /* of the page, which stands in the row too */
	snprintf(row, sizeof row, "%s", terminal_row(at.t, PLAN_TOP + 4));
	for (int i = 0; i < 2; i++) {
		terminal_keys(at.t, i ? "_ _" : "/ / / \\ \\ \\");
		terminal_wait(at.t, "Two columns a cell.");
		ck_assert_str_eq(terminal_row(at.t, PLAN_TOP + 4), row);
		terminal_keys(at.t, "escape");
		terminal_wait_gone(at.t, "Two columns a cell.");
	}
	table_leave(&at);
}
END_TEST

START_TEST(nearest_a_cell_has_four_columns_and_two_rows)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "\\ pageup home right right down");
	terminal_until(at.t, terminal_cursor(at.t).row == PLAN_TOP + 2 &&
		terminal_cursor(at.t).column == PLAN_LEFT + 8);
	for (int row = 2; row < 4; row++)
		for (int column = 8; column < 12; column++)
			ck_assert_int_eq(plan_cell(at.t, row, column).ground, SHOWN_CURSOR);
	/* The first bed, from 1,1 to 5,3: the lines along its sides are at the cells' edges. */
	for (int column = 4; column < 24; column++) {
		ck_assert_str_eq(plan_cell(at.t, 1, column).text, "\u2581");
		ck_assert_str_eq(plan_cell(at.t, 7, column).text,
			column < 23 ? "\u2581" : "\u2502");
	}
	for (int row = 2; row < 8; row++) {
		ck_assert_str_eq(plan_cell(at.t, row, 3).text, "\u2502");
		ck_assert_str_eq(plan_cell(at.t, row, 23).text, "\u2502");
	}
	ck_assert_str_eq(plan_cell(at.t, 1, 3).text, " ");
	ck_assert(terminal_shows(at.t, "B1 Raised bed"));
	table_leave(&at);
}
END_TEST

static const int sizes[][2] = { { 18, 60 }, { 24, 80 }, { 50, 132 }, { 60, 200 } };

/* The cursor is on the plan, and the rulers' marks point at it. */
static bool is_pointed_at(struct terminal *t, int rows, int columns)
{
	struct cursor cursor = terminal_cursor(t);

	return cursor.row >= PLAN_TOP && cursor.row < rows - 2 && cursor.column >= PLAN_LEFT &&
		cursor.column < columns &&
		terminal_cell(t, 1, cursor.column).reverse &&
		terminal_cell(t, cursor.row, PLAN_LEFT - 1).reverse;
}

START_TEST(every_zoom_and_panel_keeps_the_cursor_on_the_plan_at_every_size)
{
	int rows = sizes[_i][0], columns = sizes[_i][1];
	struct table at;

	table_sit(&at, "great-court.plot", rows, columns);
	terminal_keys(at.t, "1 0 8 right 1 0 8 down");
	for (int i = 0; i < 12; i++) {
		terminal_keys(at.t, i % 4 == 3 ? PANEL : "/");
		terminal_settle(at.t);
		ck_assert(is_pointed_at(at.t, rows, columns));
		ck_assert(terminal_shows(at.t, "108 ft across, "));
	}
	table_leave(&at);
}
END_TEST

START_TEST(shift_and_an_arrow_scrolls_and_an_act_centres)
{
	static const char *const terms[] = { "xterm-256color", "tmux-256color", "screen-256color" };
	struct table at;

	sit(&at, "great-court.plot", terms[_i]);
	terminal_type(at.t, "\033[1;2B\033[1;2C");
	terminal_wait(at.t, "8 ft across, 6 ft down");
	terminal_until(at.t, terminal_cursor(at.t).row == PLAN_TOP &&
		terminal_cursor(at.t).column == PLAN_LEFT);
	terminal_type(at.t, "\033[1;2A");
	terminal_until(at.t, terminal_cursor(at.t).row == PLAN_TOP + 6);
	terminal_type(at.t, "\033[1;2D");
	terminal_until(at.t, terminal_cursor(at.t).column == PLAN_LEFT + 16);
	terminal_keys(at.t, "6 0 right 6 0 down ! C e n t r e enter");
	terminal_until(at.t, terminal_cursor(at.t).row == PLAN_TOP + 10 &&
		terminal_cursor(at.t).column == PLAN_LEFT + 24);
	ck_assert(terminal_shows(at.t, "68 ft across, 66 ft down"));
	table_leave(&at);
}
END_TEST

START_TEST(a_hidden_panel_leaves_its_room_to_the_plan_and_answers_are_still_seen)
{
	struct table at;

	table_sit(&at, "great-court.plot", 24, 80);
	terminal_keys(at.t, PANEL);
	terminal_wait(at.t, "Areas                          ");
	terminal_keys(at.t, PANEL);
	terminal_until(at.t, !shown_page(at.t, "Areas"));
	terminal_wait(at.t, "30'");
	/* x 36, beyond what the panel left in view */
	ck_assert_int_eq(plan_cell(at.t, 4, 72).ground, ground_of('d'));
	page_turn_to(at.t, "Walls");
	table_leave(&at);
}
END_TEST

/* At 60 columns the panel has 20. */
START_TEST(a_narrow_panel_cuts_no_words)
{
	static const char *const pages[][3] = {
		{ "Areas", "c Elbow bed 3,072.0", "In sq ft" },
		{ "Edges", "path, fixture", "400 ft" },
		{ "Beds", "Over all", "10 ft x 10 ft" },
		{ "Walls", "Block 16 in x 8 in", "x 6 in" },
	};
	struct table at;

	table_sit(&at, "great-court.plot", 18, 60);
	for (size_t i = 0; i < sizeof pages / sizeof *pages; i++) {
		page_turn_to(at.t, pages[i][0]);
		terminal_wait(at.t, pages[i][1]);
		terminal_wait(at.t, pages[i][2]);
	}
	terminal_keys(at.t, ")");
	terminal_wait(at.t, "( 6");
	terminal_wait(at.t, ") 7");
	table_leave(&at);
}
END_TEST

/* How far down it may go is not known while its figures are counted, and while it is hidden. */
START_TEST(a_page_stays_where_it_was_turned_to)
{
	struct table at;

	table_sit(&at, "great-court.plot", 18, 60);
	page_turn_to(at.t, "Walls");
	terminal_wait(at.t, "Block 16 in x 8 in");
	terminal_wait(at.t, "here ");
	terminal_settle(at.t); /* what is here takes rows of the panel */
	terminal_keys(at.t, ")");
	terminal_wait(at.t, "( 6");
	terminal_keys(at.t, "b space");
	terminal_wait(at.t, "not saved");
	terminal_settle(at.t);
	ck_assert(terminal_shows(at.t, "( 6"));
	terminal_keys(at.t, PANEL);
	terminal_wait(at.t, "The panel is wide.");
	terminal_keys(at.t, PANEL);
	terminal_wait(at.t, "The panel is hidden; Tab brings it back.");
	terminal_keys(at.t, PANEL);
	terminal_wait(at.t, "The panel is back.");
	terminal_settle(at.t);
	ck_assert(terminal_shows(at.t, "( 6"));
	table_leave(&at);
}
END_TEST

START_TEST(no_line_ends_between_a_figure_and_its_unit)
{
	struct table at;

	table_sit(&at, "great-court.plot", 24, 80);
	terminal_keys(at.t, "4 right 4 down");
	terminal_wait(at.t, "10 ft x 10 ft,");
	terminal_wait(at.t, "100.0 sq ft");
	table_leave(&at);
}
END_TEST

/* Labels of five characters at every tenth foot, cells of about half a foot. */
START_TEST(labels_never_run_into_each_other)
{
	struct text bytes = TEXT_EMPTY;
	struct table at;

	table_clear(&at, "long.plot");
	text_print(&bytes, "parterre-plot 1\nunits imperial\ncell 6 1/16 in\n\nlawn l \"Turf\"\n\n"
		"ground %d x 1\n  ", SIDE_MOST);
	for (int i = 0; i < SIDE_MOST; i++)
		text_add(&bytes, "l");
	text_add(&bytes, "\n");
	table_write(&at, bytes.bytes);
	text_fini(&bytes);
	table_start(&at, NULL);
	table_wait(at.t);
	terminal_keys(at.t, "/ end");
	terminal_wait(at.t, "1030'");
	for (const char *c = terminal_row(at.t, 1); *c; c++)
		ck_assert_msg(c[0] != '\'' || c[1] == ' ', "%s", c);
	table_leave(&at);
}
END_TEST

/* The court ends above the view's end, the great court beyond it. */
START_TEST(below_the_plan_are_a_scale_and_the_title)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	ck_assert_int_eq(terminal_find(at.t, "\u251c\u2500\u2500\u2500\u2500\u2500\u2500\u2500"
		"\u2500\u2524 5'"), PLAN_TOP + 9);
	ck_assert_int_eq(terminal_find(at.t, "Weavers' Yard herb court"), PLAN_TOP + 10);
	table_leave(&at);
	table_sit(&at, "great-court.plot", 24, 80);
	ck_assert_int_eq(terminal_find(at.t, "\u2524 "), -1);
	table_leave(&at);
}
END_TEST

static bool is_cursors(struct cell cell, const char *term)
{
	if (strcmp(term, "vt100") == 0)
		return cell.reverse;
	return cell.ground == (strstr(term, "256") ? SHOWN_CURSOR : 6);
}

/* In the column of the mirror's image: open ground, a bed, path, lawn; and a fixture. */
START_TEST(the_cursor_is_painted_over_every_ground_and_shows_its_letter)
{
	static const char *const terms[] = { "xterm-256color", "xterm", "linux", "vt100" };
	static const struct {
		const char *keys;
		char letter;
		int x, y;
	} places[] = {
		{ "right", ' ', 1, 0 }, { "down", 'b', 1, 1 },
		{ "down x3", 'p', 1, 4 }, { "down", 'l', 1, 5 }, { "right x5 down", 'S', 6, 6 },
	};
	const char *term = terms[_i];
	struct table at;

	sit(&at, "court.plot", term);
	for (size_t i = 0; i < sizeof places / sizeof *places; i++) {
		int x = 2 * places[i].x, y = places[i].y;

		terminal_keys(at.t, places[i].keys);
		terminal_until(at.t, shown_on_cell(at.t, places[i].x, y) &&
			is_cursors(plan_cell(at.t, y, x), term));
		ck_assert(is_cursors(plan_cell(at.t, y, x + 1), term));
		ck_assert_int_eq(shown_character(at.t, y, x), places[i].letter);
		/* a vt100 cannot hide it */
		ck_assert(!terminal_cursor(at.t).is_visible || strcmp(term, "vt100") == 0);
	}
	table_leave(&at);
}
END_TEST

/* 15 rows at two a cell: the last one is left blank, as the plan goes on. */
START_TEST(a_row_that_has_no_room_for_a_cell_is_no_end_of_the_plan)
{
	struct table at;

	table_sit(&at, "great-court.plot", 19, 80);
	terminal_keys(at.t, "\\");
	terminal_wait(at.t, "Four columns and two rows a cell.");
	for (int x = 0; x < PLAN_COLUMNS; x++) {
		ck_assert_int_eq(plan_cell(at.t, 13, x).ground == -1, 0);
		ck_assert_str_eq(plan_cell(at.t, 14, x).text, " ");
	}
	table_leave(&at);
}
END_TEST

/* ---- Measures -------------------------------------------------------------------------------- */

/* The first bed of the great court: 10 ft by 10 ft, from 4 ft across and 4 ft down. */
START_TEST(the_rulers_have_a_region_between_brackets)
{
	struct table at;

	table_sit(&at, "great-court.plot", 24, 80);
	terminal_keys(at.t, "\" 5 right 5 down");
	terminal_wait(at.t, "┌───────10'────────┐");
	ck_assert_str_eq(terminal_cell(at.t, 1, PLAN_LEFT + 8).text, "┌");
	ck_assert_str_eq(terminal_cell(at.t, PLAN_TOP + 4, PLAN_LEFT - 1).text, "┌");
	ck_assert(terminal_cell(at.t, PLAN_TOP + 5, PLAN_LEFT - 1).reverse);
	ck_assert_str_eq(terminal_cell(at.t, PLAN_TOP + 13, PLAN_LEFT - 1).text, "└");
	ck_assert(strncmp(terminal_row(at.t, PLAN_TOP + 8), " 10'│", 7) == 0);
	terminal_keys(at.t, "1 right x3");
	/* The words give way to the cursor's place. */
	terminal_wait(at.t, "┌───────────10'────┐");
	terminal_keys(at.t, "\"");
	terminal_wait_gone(at.t, "┌");
	terminal_wait(at.t, "5'        10'");
	table_leave(&at);
}
END_TEST

START_TEST(a_narrow_region_has_its_measure_beside_it)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "\" enter");
	terminal_wait(at.t, "┌┐ 1'");
	terminal_keys(at.t, "end");
	terminal_wait(at.t, "The rectangle: 14 ft x 1 ft");
	ck_assert(terminal_shows(at.t, "From the peg 13 ft"));
	table_leave(&at);
}
END_TEST

/* ---- The mouse ------------------------------------------------------------------------------- */

/* Terminals report in digits where they can, else in bytes; whatever TERM says, both are read. */
struct kind {
	const char *term;
	bool is_text;
};

static const struct kind mice[] = {
	{ "xterm-256color", true }, { "xterm-256color", false }, { "tmux-256color", true },
	{ "tmux-256color", false }, { "screen-256color", false }, { "linux", false },
};

enum { MICE = sizeof mice / sizeof *mice, DRAGGED = 32, WHEEL_DOWN = 65 };

static void report(struct terminal *t, bool is_text, int button, int row, int column, bool is_up)
{
	char bytes[32];

	if (is_text)
		snprintf(bytes, sizeof bytes, "\033[<%d;%d;%d%c", button, column + 1, row + 1,
			is_up ? 'm' : 'M');
	else
		snprintf(bytes, sizeof bytes, "\033[M%c%c%c", 32 + (is_up ? 3 : button),
			column + 33, row + 33);
	terminal_type(t, bytes);
}

static void report_on(struct terminal *t, bool is_text, int button, int x, int y)
{
	report(t, is_text, button, PLAN_TOP + y, PLAN_LEFT + 2 * x, false);
}

static void let_go_on(struct terminal *t, bool is_text, int x, int y)
{
	report(t, is_text, 0, PLAN_TOP + y, PLAN_LEFT + 2 * x, true);
}

static void mouse_begin(struct table *at)
{
	terminal_keys(at->t, "! M o u s e enter");
	terminal_wait(at->t, "Mouse on: a click goes there");
	terminal_wait(at->t, "Mouse on");
	ck_assert(terminal_answered(at->t, mouse_on));
}

START_TEST(a_click_goes_there_and_one_more_lays)
{
	const struct kind *mouse = &mice[_i];
	bool is_text = mouse->is_text;
	struct table at;

	sit(&at, "court.plot", mouse->term);
	ck_assert(!terminal_sent(at.t, mouse_on));
	mouse_begin(&at);
	report_on(at.t, is_text, 0, 2, 6);
	let_go_on(at.t, is_text, 2, 6);
	terminal_wait(at.t, "2 ft across, 6 ft down");
	ck_assert(terminal_shows(at.t, "court.plot, saved"));
	report_on(at.t, is_text, 0, 2, 6);
	let_go_on(at.t, is_text, 2, 6);
	terminal_wait(at.t, "court.plot, not saved");
	terminal_until(at.t, shown_letter(at.t, 2, 6) == 'b');
	table_leave(&at);
}
END_TEST

START_TEST(a_drag_pegs_a_rectangle_and_an_answer_is_picked_by_a_click)
{
	const struct kind *mouse = &mice[_i];
	bool is_text = mouse->is_text;
	struct table at;
	int row;

	sit(&at, "court.plot", mouse->term);
	mouse_begin(&at);
	report_on(at.t, is_text, 0, 1, 5);
	report_on(at.t, is_text, DRAGGED, 2, 5);
	terminal_wait(at.t, "Pegged");
	report_on(at.t, is_text, DRAGGED, 3, 6);
	terminal_wait(at.t, "The rectangle: 3 ft x 2 ft");
	let_go_on(at.t, is_text, 3, 6);
	terminal_wait(at.t, "Fill it");
	row = terminal_find(at.t, "Fill it");
	report(at.t, is_text, 0, row, 58, false);
	report(at.t, is_text, 0, row, 58, true);
	terminal_wait(at.t, "Drawing ");
	terminal_until(at.t, shown_letter(at.t, 3, 6) == 'b');
	ck_assert_int_eq(shown_letter(at.t, 1, 5), 'b');
	table_leave(&at);
}
END_TEST

START_TEST(a_quick_drag_that_comes_all_at_once_loses_nothing)
{
	const struct kind *mouse = &mice[_i];
	struct table at;

	sit(&at, "court.plot", mouse->term);
	mouse_begin(&at);
	terminal_keys(at.t, "=");
	terminal_wait(at.t, "Trail ");
	terminal_type(at.t, mouse->is_text ?
		"\033[<0;6;10M\033[<32;8;10M\033[<32;14;10M\033[<32;14;9M\033[<32;14;8M"
		"\033[<32;14;7M\033[<32;12;7M\033[<32;10;7M\033[<32;8;7M\033[<32;6;7M"
		"\033[<0;6;7m=" :
		"\033[M &*\033[M@(*\033[M@.*\033[M@.)\033[M@.(\033[M@.'\033[M@,'\033[M@*'\033[M@('"
		"\033[M@&'\033[M#&'=");
	terminal_wait(at.t, "Drawing ");
	for (int x = 0; x < 5; x++) {
		ck_assert_int_eq(shown_letter(at.t, x, 7), 'b');
		ck_assert_int_eq(shown_letter(at.t, x, 4), 'b');
	}
	ck_assert_int_eq(shown_letter(at.t, 4, 5), 'b');
	ck_assert_int_eq(shown_letter(at.t, 4, 6), 'b');
	table_leave(&at);
}
END_TEST

START_TEST(the_wheel_scrolls_and_the_pages_name_lists_pages)
{
	const struct kind *mouse = &mice[_i];
	bool is_text = mouse->is_text;
	struct table at;

	sit(&at, "great-court.plot", mouse->term);
	mouse_begin(&at);
	report_on(at.t, is_text, WHEEL_DOWN, 3, 3);
	terminal_wait(at.t, "0 in across, 6 ft down");
	report(at.t, is_text, 0, 1, 60, false);
	report(at.t, is_text, 0, 1, 60, true);
	terminal_wait(at.t, "Which page?");
	report(at.t, is_text, WHEEL_DOWN, 5, 60, false);
	terminal_keys(at.t, "enter");
	terminal_until(at.t, shown_page(at.t, "Edges"));
	table_leave(&at);
}
END_TEST

/* The second piece comes after a pause, but before the silence that ends a report. On a busy
 * machine the pause may turn out too long: then once more. */
static void type_in_pieces(struct terminal *t, const char *one, const char *other,
	const char *shown)
{
	for (int i = 0; i < 20 && !terminal_shows(t, shown); i++) {
		terminal_keys(t, "escape escape");
		terminal_settle(t);
		terminal_type(t, one);
		poll(NULL, 0, 30);
		terminal_type(t, other);
		terminal_settle(t);
	}
	terminal_wait(t, shown);
}

START_TEST(a_report_in_pieces_is_put_together)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	mouse_begin(&at);
	type_in_pieces(at.t, "\033[<0;1", "0;9M", "2 ft across, 6 ft down");
	type_in_pieces(at.t, "\033[M", " ,'", "3 ft across, 4 ft down");
	table_leave(&at);
}
END_TEST

START_TEST(reports_of_no_use_and_those_nobody_asked_for_do_nothing)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_type(at.t, "\033[<0;10;8M\033[<0;10;8m\033[M *(\033[M#*(");
	terminal_settle(at.t);
	ck_assert(terminal_shows(at.t, "0 in across, 0 in down"));
	mouse_begin(&at);
	terminal_type(at.t,
		"\033[<2;10;8M\033[<2;10;8m\033[<35;10;8M\033[<;;M\033[<0;0;0M\033[M\"*(");
	terminal_settle(at.t);
	ck_assert(terminal_shows(at.t, "0 in across, 0 in down"));
	ck_assert(terminal_shows(at.t, "court.plot, saved"));
	terminal_keys(at.t, "right");
	terminal_wait(at.t, "1 ft across");
	table_leave(&at);
}
END_TEST

START_TEST(pasted_reports_do_nothing)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	mouse_begin(&at);
	terminal_type(at.t, "\033[200~\033[<0;10;8M\033[<0;10;8m S\033[M *( S\033[201~");
	terminal_wait(at.t, "Pasted text was ignored");
	ck_assert(terminal_shows(at.t, "0 in across, 0 in down"));
	ck_assert(terminal_shows(at.t, "court.plot, saved"));
	ck_assert(terminal_shows(at.t, "hand b Raised bed"));
	table_leave(&at);
}
END_TEST

START_TEST(the_mouse_is_the_terminals_own_again_when_it_is_turned_off)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	mouse_begin(&at);
	terminal_keys(at.t, "! M o u s e enter");
	terminal_wait(at.t, "Mouse off");
	terminal_wait(at.t, "Mouse off");
	ck_assert(terminal_answered(at.t, mouse_off));
	table_leave(&at);
}
END_TEST

START_TEST(a_terminal_without_a_mouse_says_so)
{
	struct table at;

	sit(&at, "court.plot", "vt100");
	terminal_keys(at.t, "! M o u s e enter");
	terminal_wait(at.t, "This terminal does not report a mouse.");
	ck_assert(!terminal_sent(at.t, "\033[?1000h"));
	ck_assert(!terminal_shows(at.t, "Mouse on"));
	table_leave(&at);
}
END_TEST

/* How a session can end, by keys or by a signal. */
struct ending {
	const char *keys;
	int signal;
};

static const struct ending ends[] = { { "<", 0 }, { NULL, SIGTERM }, { NULL, SIGSEGV } };

START_TEST(the_mouse_is_the_terminals_own_again_at_every_end)
{
	const struct ending *ending = &ends[_i];
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	mouse_begin(&at);
	if (ending->keys)
		terminal_keys(at.t, ending->keys);
	else
		terminal_signal(at.t, ending->signal);
	ck_assert(strstr(terminal_end(at.t).last, mouse_off));
	table_leave(&at);
}
END_TEST

START_TEST(a_stopped_session_gives_the_mouse_back_and_takes_it_again)
{
	struct table at;

	table_lay_out(&at, "court.plot");
	table_start_in_shell(&at);
	mouse_begin(&at);
	terminal_keys(at.t, "ctrl-z");
	terminal_wait(at.t, "Stopped");
	ck_assert(terminal_answered(at.t, mouse_off));
	terminal_type(at.t, "fg\r");
	terminal_wait(at.t, "Mouse on");
	terminal_until(at.t, terminal_answered(at.t, mouse_on));
	report_on(at.t, true, 0, 2, 6);
	terminal_wait(at.t, "2 ft across, 6 ft down");
	table_leave(&at);
}
END_TEST

/* ---- Bytes ----------------------------------------------------------------------------------- */

START_TEST(what_is_seen_costs_few_bytes_a_key)
{
	static const struct {
		const char *first, *before, *keys; /* first: drawn by itself */
		size_t most;
		const char *seen; /* once `before` is drawn; NULL: nothing tells */
	} rows[] = {
		{ "", "/", "right", 80, NULL },
		{ "", "_", "right", 80, NULL },
		/* Within a region between brackets, and into one, with as many lines to say. */
		{ "", "\" 5 right 5 down", "right", 95, "5 ft across, 5 ft down" },
		{ "\" 4 right 4 down", "left", "right", 210, "3 ft across, 4 ft down" },
		{ "", "/ space right", "right", 70, NULL },
		{ "", "", "_", 7500, NULL }, /* every dot beside one of another colour */
		{ "", "", "/", 2100, NULL },
	};
	struct table at;

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct traffic cost;

		table_sit(&at, "great-court.plot", 24, 80);
		terminal_keys(at.t, rows[i].first);
		shown_wait_counted(at.t);
		terminal_keys(at.t, rows[i].before);
		if (rows[i].seen)
			terminal_wait(at.t, rows[i].seen);
		terminal_settle(at.t);
		shown_wait_counted(at.t);
		terminal_settle(at.t);
		terminal_keys(at.t, rows[i].keys);
		cost = terminal_settle(at.t);
		ck_assert_msg(cost.bytes > 0 && cost.bytes <= rows[i].most,
			"%s after %s: %zu bytes", rows[i].keys, rows[i].before, cost.bytes);
		table_leave(&at);
	}
}
END_TEST

static void add_mouse(TCase *mouse)
{
	tcase_add_loop_test(mouse, a_click_goes_there_and_one_more_lays, 0, MICE);
	tcase_add_loop_test(mouse, a_drag_pegs_a_rectangle_and_an_answer_is_picked_by_a_click, 0,
		MICE);
	tcase_add_loop_test(mouse, a_quick_drag_that_comes_all_at_once_loses_nothing, 0, MICE);
	tcase_add_loop_test(mouse, the_wheel_scrolls_and_the_pages_name_lists_pages, 0, MICE);
	tcase_add_test(mouse, a_report_in_pieces_is_put_together);
	tcase_add_test(mouse, reports_of_no_use_and_those_nobody_asked_for_do_nothing);
	tcase_add_test(mouse, pasted_reports_do_nothing);
	tcase_add_test(mouse, the_mouse_is_the_terminals_own_again_when_it_is_turned_off);
	tcase_add_test(mouse, a_terminal_without_a_mouse_says_so);
	tcase_add_loop_test(mouse, the_mouse_is_the_terminals_own_again_at_every_end, 0, 3);
	tcase_add_test(mouse, a_stopped_session_gives_the_mouse_back_and_takes_it_again);
}

/* What the plot has of its north, and what stands below the plan; without Unicode in words. */
static const struct {
	const char *north, *shown, *plain;
} norths[] = {
	{ "0", "north \u2191 ", "north up " }, { "90", "north \u2190 ", "north left " },
	{ "20", "north \u2191 20\u00b0 left ", "north up 20 left " },
	{ "340", "north \u2191 20\u00b0 right ", "north up 20 right " },
	{ "100", "north \u2190 10\u00b0 below ", "north left 10 below " },
};

START_TEST(north_is_told_as_it_is_in_a_plot_of_80_columns)
{
	bool is_plain = _i % 2;
	const char *environment[] = { "LC_ALL=C", NULL };
	struct text plot = TEXT_EMPTY;
	struct table at;

	text_print(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\nnorth %s\n"
		"bed b \"Bed\"\n\nground 18 x 2\n  ..................\n"
		"  ..................\n",
		norths[_i / 2].north);
	table_clear(&at, "north.plot");
	table_write(&at, plot.bytes);
	text_fini(&plot);
	table_start(&at, &(struct launch){ .rows = 24, .columns = 80,
		.term = is_plain ? "vt100" : NULL, .env = is_plain ? environment : NULL });
	table_wait(at.t);
	terminal_wait(at.t, is_plain ? norths[_i / 2].plain : norths[_i / 2].shown);
	table_leave(&at);
}
END_TEST

static const struct {
	const char *cell, *across[2], *down[2]; /* labels that are there, and that are not */
} labelled[] = {
	{ "16 in", { "  10' ", " 5'" }, { "5'", "3'" } }, /* 8 columns are 5'4", 7 are 4'8" */
	{ "15 in", { "  5' ", " 2'" }, { "5'", "2'" } },  /* 5' and 3'9" are the least apart */
	{ "2 ft", { "  10' ", " 5'" }, { "10'", "5'" } }, /* 3 rows are 6', 2 rows 4' */
};

START_TEST(labels_are_8_columns_apart_and_3_rows_at_least)
{
	struct text plot = TEXT_EMPTY;
	bool has[2] = { false, false };
	struct table at;

	text_print(&plot, "parterre-plot 1\nunits imperial\ncell %s\nbed b \"Bed\"\n\n"
		"ground 14 x 14\n", labelled[_i].cell);
	for (int i = 0; i < 14; i++)
		text_add(&plot, "  ..............\n");
	table_clear(&at, "labels.plot");
	table_write(&at, plot.bytes);
	text_fini(&plot);
	table_start(&at, NULL);
	table_wait(at.t);
	ck_assert_ptr_nonnull(strstr(terminal_row(at.t, 1), labelled[_i].across[0]));
	ck_assert_ptr_null(strstr(terminal_row(at.t, 1), labelled[_i].across[1]));
	for (int row = PLAN_TOP; row < PLAN_TOP + 14; row++)
		for (int i = 0; i < 2; i++)
			has[i] |= strncmp(terminal_row(at.t, row), labelled[_i].down[i],
				strlen(labelled[_i].down[i])) == 0;
	ck_assert(has[0] && !has[1]);
	table_leave(&at);
}
END_TEST

/* A label as wide as the ruler would stand on the plan's edge. */
START_TEST(beside_the_plan_stands_no_label_of_1000_feet)
{
	struct text plot = TEXT_EMPTY;
	struct table at;

	text_add(&plot, "parterre-plot 1\nunits imperial\ncell 10 ft\nbed b \"Bed\"\n\n"
		"ground 2 x 110\n");
	for (int i = 0; i < 110; i++)
		text_add(&plot, "  ..\n");
	table_clear(&at, "long.plot");
	table_write(&at, plot.bytes);
	text_fini(&plot);
	table_start(&at, NULL);
	table_wait(at.t);
	terminal_keys(at.t, "1 0 9 down");
	terminal_until(at.t, terminal_find(at.t, "950'") > 0);
	ck_assert_int_lt(terminal_find(at.t, "1000'"), 0);
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen view");
	TCase *zooms = suite_case(suite, "zooms"), *measures = suite_case(suite, "measures");
	TCase *mouse = suite_case(suite, "mouse"), *bytes = suite_case(suite, "bytes");

	tcase_set_timeout(bytes, 20);
	tcase_set_timeout(zooms, 20);
	tcase_add_loop_test(measures, north_is_told_as_it_is_in_a_plot_of_80_columns, 0,
		2 * (int)(sizeof norths / sizeof *norths));
	tcase_add_test(zooms, one_column_a_cell_shows_the_grounds_of_the_file);
	tcase_add_test(zooms, the_overview_shows_all_of_a_large_plan_and_goes_back);
	tcase_add_test(zooms, in_one_column_a_peg_hides_a_letter_and_other_marks_only_open_ground);
	tcase_add_test(zooms, what_is_symmetric_looks_so_from_afar);
	tcase_add_test(zooms, a_fence_beside_an_axis_is_seen_from_afar_as_its_image_is);
	tcase_add_test(zooms, from_afar_the_cursor_goes_by_a_character_and_is_seen);
	tcase_add_test(zooms, smaller_and_nearer_again_is_the_same_view);
	tcase_add_test(zooms, a_row_that_has_no_room_for_a_cell_is_no_end_of_the_plan);
	tcase_add_loop_test(zooms, the_cursor_is_painted_over_every_ground_and_shows_its_letter, 0,
		4);
	tcase_add_test(zooms, nearest_a_cell_has_four_columns_and_two_rows);
	tcase_add_loop_test(zooms, every_zoom_and_panel_keeps_the_cursor_on_the_plan_at_every_size,
		0, (int)(sizeof sizes / sizeof *sizes));
	tcase_add_loop_test(zooms, shift_and_an_arrow_scrolls_and_an_act_centres, 0, 3);
	tcase_add_test(zooms,
		a_hidden_panel_leaves_its_room_to_the_plan_and_answers_are_still_seen);
	tcase_add_test(zooms, a_narrow_panel_cuts_no_words);
	tcase_add_test(zooms, a_page_stays_where_it_was_turned_to);
	tcase_add_test(zooms, no_line_ends_between_a_figure_and_its_unit);
	tcase_add_test(zooms, labels_never_run_into_each_other);
	tcase_add_test(measures, beside_the_plan_stands_no_label_of_1000_feet);
	tcase_add_test(measures, below_the_plan_are_a_scale_and_the_title);
	tcase_add_test(measures, the_rulers_have_a_region_between_brackets);
	tcase_add_loop_test(measures, labels_are_8_columns_apart_and_3_rows_at_least, 0, 3);
	tcase_add_test(measures, a_narrow_region_has_its_measure_beside_it);
	add_mouse(mouse);
	tcase_add_test(bytes, what_is_seen_costs_few_bytes_a_key);
	return suite;
}
