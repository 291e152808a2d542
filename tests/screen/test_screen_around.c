/* What is around a plot at the terminal: shown on the plan in every size, entered key by key, with
 * the mirror on; levels walked from point to point; taken back; in 80 columns and in 60. */

#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <stdlib.h>
#include <string.h>

/* Without snags but those of what is kept: they would be in the way of signs, and are words. */
static const char yard[] =
	"parterre-plot 1\nunits imperial\ncell 1 ft\n"
	"allow\n  lawn-clear 0 in\n  service-near 0 in\n  fall-near 0 in\n\n"
	"bed b \"Bed\"\nlawn l \"Turf\"\n\n"
	"ground 14 x 8\n"
	"  ..............\n"
	"  .bbbb.........\n"
	"  .bbbb.........\n"
	"  ..............\n"
	"  .lllll........\n"
	"  .lllll........\n"
	"  ..............\n"
	"  ..............\n\n"
	"service water \"Supply\" existing\n  depth 18 in\n  line 0,4 8,4 8,8\n"
	"service power \"Lamp\" to-lay\n  line 10,8 10,2 14,2\n"
	"levels 4 ft\n"
	"  0 in, 1 in, 2 1/2 in, 3 in, 4 in\n"
	"  1 in, 1 in, 3 in, 4 in, 5 in\n"
	"  2 in, 2 in, 3 in, 5 in, 9 in\n"
	"house \"Number 4\"\n  from 11,-5 to 20,1\n"
	"tie 0,0 \"House corner\" 12 ft\n"
	"keep \"Old pear\" 2 ft\n  at 13,5\n"
	"drop 5,7\n";

static void sit_at(struct table *at, const char *plot, const struct launch *how)
{
	table_clear(at, "yard.plot");
	table_write(at, plot);
	table_start(at, how);
	table_wait(at->t);
}

static void sit(struct table *at, const struct launch *how)
{
	sit_at(at, yard, how);
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

/* 200 by 200 cells of a foot, all open. */
static void write_open(struct text *out)
{
	text_add(out, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Bed\"\n\n"
		"ground 200 x 200\n");
	for (int y = 0; y < 200; y++) {
		text_add(out, "  ");
		for (int x = 0; x < 200; x++)
			text_add(out, ".");
		text_add(out, "\n");
	}
	text_add(out, "\n");
}

/* ---- Shown ----------------------------------------------------------------------------------- */

START_TEST(each_thing_has_a_sign_of_its_own)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	ck_assert(shown_mark(at.t, 0, 0, "\u25ce"));
	ck_assert(shown_mark(at.t, 5, 7, "\u25bc"));
	ck_assert(shown_mark(at.t, 11, 0, "\u2302") && shown_mark(at.t, 13, 0, "\u2302"));
	ck_assert(shown_mark(at.t, 11, 3, "\u25cb") && shown_mark(at.t, 13, 6, "\u25cb"));
	ck_assert(!shown_mark(at.t, 10, 4, "\u25cb") && !shown_mark(at.t, 12, 2, "\u25cb"));
	ck_assert(shown_mark(at.t, 7, 5, "\u00a6") && shown_mark(at.t, 7, 7, "\u00a6"));
	ck_assert(shown_mark(at.t, 9, 4, "\u2551"));
	row_has(at.t, 3, 2, "\u2026\u2026\u2026\u2026");
	row_has(at.t, 1, 20, "\u2017\u2017\u2017\u2017");
	table_leave(&at);
}
END_TEST

START_TEST(the_panel_says_what_is_at_the_cursor)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	terminal_wait(at.t, "Tied to House corner");
	terminal_keys(at.t, "down x4 right x7");
	terminal_wait(at.t, "Water above, right: Supply");
	terminal_wait(at.t, "existing");
	terminal_keys(at.t, "right x5");
	terminal_wait(at.t, "Kept: Old pear");
	terminal_keys(at.t, "up x4 left");
	terminal_wait(at.t, "House: Number 4");
	terminal_keys(at.t, "down");
	terminal_wait(at.t, "Power below: Lamp");
	table_leave(&at);
}
END_TEST

/* Half of the panel at most is what is here. */
START_TEST(the_panel_says_how_much_of_what_is_here_has_no_room)
{
	struct text plot = TEXT_EMPTY;
	struct table at;

	text_print(&plot, "%s", yard);
	for (int i = 1; i <= 9; i++)
		text_print(&plot, "tie 3,0 \"Gate post %d\" 12 ft\n", i);
	sit_at(&at, plot.bytes, &(struct launch){ .rows = 24, .columns = 80 });
	text_fini(&plot);
	ck_assert(!terminal_shows(at.t, " more "));
	terminal_keys(at.t, "right x3");
	terminal_wait(at.t, "\u2500 3 more ");
	table_leave(&at);
}
END_TEST

START_TEST(without_unicode_all_is_told_apart_too)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80, .term = "vt100",
		.env = (const char *[]){ "LC_ALL=C", NULL } });
	row_has(at.t, 0, 1, "t");
	row_has(at.t, 7, 11, "v");
	row_has(at.t, 3, 2, "~~~~");
	row_has(at.t, 5, 15, "~");
	row_has(at.t, 5, 19, "^");
	row_has(at.t, 5, 23, "k k k");
	table_leave(&at);
}
END_TEST

START_TEST(lines_along_the_plans_left_and_upper_edges_stand_on_the_rulers)
{
	struct table at;

	sit_at(&at, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Bed\"\n\n"
		"ground 6 x 2\n  ......\n  ......\n\n"
		"service water \"Supply\" existing\n  line 0,2 0,0 3,0\n"
		"service power \"Lamp\" to-lay\n  line 3,0 6,0\n", NULL);
	row_has(at.t, 0, -1, "\u00a6");
	row_has(at.t, 1, -1, "\u00a6");
	row_has(at.t, -1, 2, "\u2026\u2026\u2026\u2026\u2017\u2017\u2017\u2017");
	table_leave(&at);
}
END_TEST

/* 6 by 12 cells to a character. */
START_TEST(from_afar_a_sign_stands_where_the_ground_is_even)
{
	struct table at;
	struct text plot = TEXT_EMPTY;

	write_open(&plot);
	text_add(&plot, "service gas \"Main\" existing\n  line 0,30 150,30 150,200\n"
		"service drain \"Drain\" to-lay\n  line 30,100 30,200\n"
		"plant r \"Pear\"\n  at 110,62\n  at 70,130\n"
		"keep \"Wood\"\n  from 60,100 to 90,160\n");
	sit_at(&at, plot.bytes, NULL);
	text_fini(&plot);
	terminal_keys(at.t, "_");
	terminal_wait(at.t, "A character stands for 6 x 12 cells");
	row_has(at.t, 3, 3, "\u2026\u2026\u2026");
	row_has(at.t, 12, 25, "\u00a6");
	row_has(at.t, 12, 5, "\u2551");
	row_has(at.t, 10, 11, "\u25cb\u25cb\u25cb");
	/* a plant, but where something is kept */
	row_has(at.t, 5, 18, "\u2234");
	table_leave(&at);
}
END_TEST

START_TEST(in_one_column_a_cell_lines_take_the_letters_place_and_signs_that_of_open_ground)
{
	struct table at;
	struct text plot;

	/* 30 by 20 cells: row 0 is open, row 1 of p from column 1 */
	table_lay_out(&at, "rope-walk.plot");
	plot = table_file(&at, "rope-walk.plot");
	text_add(&plot, "\nservice gas \"Main\" existing\n  line 0,1 8,1 8,0\n"
		"service drain \"Drain\" to-lay\n  line 12,2 12,0\n"
		"house \"Number 4\"\n  from 20,-2 to 26,2\n");
	table_write(&at, plot.bytes);
	text_fini(&plot);
	table_start(&at, &(struct launch){ .rows = 24, .columns = 80 });
	table_wait(at.t);
	terminal_keys(at.t, "/");
	terminal_wait(at.t, "One column a cell");
	row_has(at.t, 0, 1, "\u2026\u2026\u2026\u2026\u2026\u2026\u00a6");
	row_has(at.t, 0, 11, "\u2551");
	row_has(at.t, 0, 20, "\u2302\u2302\u2302\u2302\u2302\u2302");
	ck_assert_int_eq(shown_character(at.t, 1, 11), "\u2551"[0]);
	ck_assert_int_ne(shown_character(at.t, 1, 20), "\u2302"[0]);
	table_leave(&at);
}
END_TEST

#define SHOW "! S h o w space l e v enter "

static const struct {
	const char *before, *move, *key;
	int most;
} costs[] = {
	{ "down x3", "", "right", 100 },      /* along a service */
	{ "end", "", "down", 120 },           /* over what is kept */
	{ "l end down x7", "left", "space", 230 }, /* 185 with nothing around */
	{ "l end down x3", "left", "space", 340 }, /* within what is kept: a snag besides */
	{ SHOW "down x6", "", "right", 100 },      /* over shades of depth */
};
enum { TIMES = 5 };

static int by_bytes(const void *a, const void *b)
{
	return *(const int *)a - *(const int *)b;
}

/* What a key has the program write, however late on a busy machine. */
static int bytes_of(struct terminal *t, const char *key)
{
	int bytes = 0;

	terminal_keys(t, key);
	while (bytes == 0)
		bytes = (int)terminal_settle(t).bytes;
	return bytes;
}

/* In the median of five. */
START_TEST(a_key_costs_few_bytes_among_it)
{
	int bytes[TIMES];
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	bytes_of(at.t, costs[_i].before);
	for (int i = 0; i < TIMES; i++) {
		if (*costs[_i].move)
			bytes_of(at.t, costs[_i].move);
		bytes[i] = bytes_of(at.t, costs[_i].key);
	}
	qsort(bytes, TIMES, sizeof *bytes, by_bytes);
	ck_assert_msg(bytes[TIMES / 2] <= costs[_i].most, "%s: %d bytes", costs[_i].key,
		bytes[TIMES / 2]);
	table_leave(&at);
}
END_TEST

/* ---- Levels shown ---------------------------------------------------------------------------- */

/* The shades of 256 colours, from the highest ground to the lowest. */
static const int shades[] = { 195, 152, 109, 66, 23 };
enum { SHADES = sizeof shades / sizeof *shades };

START_TEST(each_drop_stands_at_its_point_and_goes_again)
{
	struct table at;

	sit(&at, &(struct launch){ .rows = 24, .columns = 80 });
	terminal_wait(at.t, "B1");
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "15 drops, from 0 in to 9 in below the string; 1 of them 0.");
	ck_assert(!terminal_shows(at.t, "B1"));
	row_has(at.t, 0, 16, "2 1/2");
	row_has(at.t, 4, 8, "1");
	row_has(at.t, 4, 24, "4");
	row_has(at.t, 7, 27, "9");
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "The plan shows no levels now.");
	ck_assert(!terminal_shows(at.t, "2 1/2") && terminal_shows(at.t, "B1"));
	table_leave(&at);
}
END_TEST

START_TEST(from_afar_a_digit_says_how_deep_with_colours_and_without)
{
	static const char *const env[2][2] = { { NULL }, { "NO_COLOR=1", NULL } };
	struct text plot = TEXT_EMPTY;
	struct table at;

	write_open(&plot);
	text_add(&plot, "levels 200 ft\n  0 in, 10 in\n  0 in, 10 in\n");
	sit_at(&at, plot.bytes, &(struct launch){ .rows = 24, .columns = 80, .env = env[_i] });
	text_fini(&plot);
	terminal_keys(at.t, SHOW "_");
	terminal_wait(at.t, "A character stands for 6 x 12 cells");
	/* 9 m / 200 without its fraction: the middles m of the blocks are 2, 7, 13 ... 199 ft */
	terminal_until(at.t, strstr(terminal_row(at.t, PLAN_TOP + 1),
		"0000111122233334444555566677778888"));
	for (int i = 0; i < 34; i++) {
		struct cell cell = terminal_cell(at.t, PLAN_TOP + 1, PLAN_LEFT + i);

		ck_assert_int_eq(cell.ground, _i ? -1 : shades[(cell.text[0] - '0') / 2]);
	}
	terminal_wait(at.t, "0 in 0123456789 10 in");
	terminal_resize(at.t, 60, 160);
	terminal_wait(at.t, "0 in 0123456789 10 in below the string");
	table_leave(&at);
}
END_TEST

/* How deep the yard lies in the middle of a cell, bilinear between the four drops around it: their
 * range is 9 in, so that a digit is a whole inch and a shade two of them. */
static const struct {
	int x, y; /* its middle in inches below the string: */
	int shade;
} deeper[] = { { 1, 0, 0 } /* 0.45 */, { 5, 7, 1 } /* 2.30 */, { 10, 7, 2 } /* 4.17 */,
	{ 13, 7, 3 } /* 6.23 */ };
enum { DEEPER = sizeof deeper / sizeof *deeper, BELOW = PLAN_TOP + 9 };

START_TEST(the_deeper_the_darker_in_256_colours_and_a_scale_says_how_deep)
{
	static const char highest[] = "0 in ";
	struct table at;
	int bed;

	sit(&at, &(struct launch){ .rows = 30, .columns = 80 });
	bed = shown_ground(at.t, 3, 1);
	ck_assert(shown_is_open(at.t, 13, 7));
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "15 drops, from 0 in to 9 in below the string; 1 of them 0.");
	for (int i = 0; i < DEEPER; i++)
		ck_assert_int_eq(shown_ground(at.t, deeper[i].x, deeper[i].y),
			shades[deeper[i].shade]);
	row_has(at.t, 9, 0, highest);
	for (int i = 0; i < SHADES; i++)
		ck_assert_int_eq(terminal_cell(at.t, BELOW, PLAN_LEFT +
			(int)strlen(highest) + 2 * i).ground, shades[i]);
	row_has(at.t, 9, (int)strlen(highest) + 2 * SHADES, " 9 in ");
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "The plan shows no levels now.");
	ck_assert_int_eq(shown_ground(at.t, 3, 1), bed);
	ck_assert(shown_is_open(at.t, 13, 7));
	ck_assert(!strstr(terminal_row(at.t, BELOW), "9 in"));
	table_leave(&at);
}
END_TEST

static const struct launch few_colours[] = {
	{ .rows = 30, .columns = 80, .env = (const char *[]){ "NO_COLOR=1", NULL } },
	{ .rows = 30, .columns = 80, .term = "xterm" },
};

START_TEST(in_few_colours_and_none_ground_stays_as_it_is)
{
	int before[DEEPER];
	struct table at;

	sit(&at, &few_colours[_i]);
	for (int i = 0; i < DEEPER; i++)
		before[i] = shown_ground(at.t, deeper[i].x, deeper[i].y);
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "15 drops, from 0 in to 9 in below the string; 1 of them 0.");
	for (int i = 0; i < DEEPER; i++)
		ck_assert_int_eq(shown_ground(at.t, deeper[i].x, deeper[i].y), before[i]);
	ck_assert(!strstr(terminal_row(at.t, BELOW), "9 in"));
	table_leave(&at);
}
END_TEST

/* Of two drops in the last cell, which has two columns, the first has the room. */
START_TEST(no_dot_stands_in_a_drop)
{
	struct table at;

	sit_at(&at, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Bed\"\n\n"
		"ground 6 x 2\n  ......\n  ......\n\n"
		"levels 5 ft\n  1 in, 7 1/2 in, 8 in\n  2 in, 3 in, 4 in\n", NULL);
	terminal_keys(at.t, SHOW);
	terminal_wait(at.t, "6 drops, from 1 in to 8 in below the string.");
	row_has(at.t, 0, 7, "7 1/2");
	table_leave(&at);
}
END_TEST

/* ---- Entered --------------------------------------------------------------------------------- */

START_TEST(a_service_is_laid_round_a_corner_shown_saved_and_taken_back)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "down x7 enter right x3 enter B e n d enter up x3 enter s e r v i c e "
		"enter");
	terminal_wait(at.t, "Along which side");
	terminal_keys(at.t, "B e l o w space a n d space r enter");
	terminal_wait(at.t, "A new service");
	terminal_keys(at.t, "S u p p l y down right down right down 1 8 pagedown enter");
	terminal_wait(at.t, "Supply: a line of 8 ft; Backspace takes it back. What is around is "
		"not mirrored.");
	ck_assert(shown_mark(at.t, 3, 6, "\u2551"));
	ck_assert(!shown_mark(at.t, 9, 6, "\u2551") && !shown_mark(at.t, 10, 6, "\u2551"));
	table_check_saved(&at, "service gas \"Supply\" to-lay\n  depth 18 in\n"
		"  line 0,8 4,8 4,4\n");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "Taken back: Lay a service line");
	ck_assert(!shown_mark(at.t, 3, 6, "\u2551"));
	table_leave(&at);
}
END_TEST

/* What holds where nothing is typed: of an existing line nobody knows; one to lay has the depth and
 * the trench of its kind (takeoff/services/service_values.h). */
START_TEST(a_services_card_says_its_kinds_and_what_holds_by_kind_and_state)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "right x4 down enter down x4 enter S e r v i c e enter L e f t enter");
	terminal_wait(at.t, "A new service");
	terminal_wait(at.t, "Depth                 [not known]");
	terminal_keys(at.t, "P i p e down");
	terminal_wait(at.t, "One of water, gas, power, telecom, drain or other.");
	terminal_keys(at.t, "p");
	terminal_wait(at.t, "Kind                  power");
	terminal_keys(at.t, "down");
	terminal_wait(at.t, "Existing: it is in the ground.");
	ck_assert(!terminal_shows(at.t, "One of "));
	terminal_keys(at.t, "t");
	terminal_wait(at.t, "Depth                 [2 ft]");
	terminal_wait(at.t, "Trench, width         [6 in]");
	terminal_keys(at.t, "up d");
	terminal_wait(at.t, "Depth                 [1 ft]");
	terminal_wait(at.t, "Trench, width         [1 ft]");
	terminal_keys(at.t, "down e");
	terminal_wait(at.t, "Depth                 [not known]");
	table_leave(&at);
}
END_TEST

START_TEST(a_keep_is_entered_shown_not_mirrored_and_taken_back)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "right x2 down x2 ! t r e e enter O l d space p e a r down x3 1 '"
		" space 6 pagedown enter");
	terminal_wait(at.t, "Kept: Old pear, 1 ft 6 in about 2 ft across, 2 ft down;");
	terminal_wait(at.t, "What is around is not mirrored.");
	ck_assert(shown_mark(at.t, 2, 1, "\u25cb") && shown_mark(at.t, 3, 1, "\u25cb"));
	ck_assert(!shown_mark(at.t, 11, 1, "\u25cb"));
	table_check_saved(&at, "keep \"Old pear\" 18 in\n  at 2,2\n");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "Taken back: Keep a tree");
	ck_assert(!shown_mark(at.t, 2, 1, "\u25cb"));
	table_leave(&at);
}
END_TEST

/* ---- Levels entered -------------------------------------------------------------------------- */

static const struct {
	int rows, columns;
} sizes[] = { { 24, 80 }, { 18, 60 } };

START_TEST(levels_are_walked_from_point_to_point_each_drop_a_step)
{
	struct table at;

	table_sit(&at, "court.plot", sizes[_i].rows, sizes[_i].columns);
	terminal_keys(at.t, "! M e a s u r e space l enter 7 enter");
	terminal_wait(at.t, "Drop  0 in across, 0 in down");
	terminal_keys(at.t, "1 enter");
	terminal_wait(at.t, "Drop  7 ft across, 0 in down");
	terminal_keys(at.t, "2 space 1 / 2 down");
	terminal_wait(at.t, "Drop  7 ft across, 7 ft down");
	if (sizes[_i].columns == 80)
		ck_assert_int_eq(shown_ground(at.t, 7, 7), SHOWN_CURSOR);
	terminal_keys(at.t, "3 left");
	terminal_wait(at.t, "Drop  0 in across, 7 ft down");
	terminal_keys(at.t, "4 space f e x t right");
	terminal_wait(at.t, "fext is no unit of length");
	terminal_keys(at.t, "ctrl-u 4 down"); /* the last row but one: the plan has 8 */
	terminal_wait(at.t, "Drop  0 in across, 14 ft down");
	terminal_keys(at.t, "down up");
	terminal_wait(at.t, "Drop  0 in across, 7 ft down");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "9 drops, from 0 in to 4 in below the string; 5 of them 0.");
	table_check_saved(&at, "levels 7 ft\n  1 in, 2 1/2 in, 0 in\n  4 in, 3 in, 0 in\n"
		"  0 in, 0 in, 0 in\n");
	terminal_keys(at.t, "backspace");
	terminal_wait(at.t, "Taken back: Measure levels");
	table_check_saved(&at, "\n  0 in, 3 in, 0 in\n");
	terminal_keys(at.t, "backspace x4");
	terminal_wait(at.t, "no more can be");
	table_leave(&at);
}
END_TEST

START_TEST(a_drop_that_is_typed_is_not_left_unasked)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "! M e a s u r e space l enter enter");
	terminal_wait(at.t, "Drop  0 in across, 0 in down");
	terminal_keys(at.t, "5 escape");
	terminal_wait(at.t, "What was typed is not set yet.");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "Drop  0 in across, 0 in down");
	terminal_keys(at.t, "escape");
	terminal_wait(at.t, "What was typed is not set yet.");
	terminal_keys(at.t, "S e t enter");
	terminal_wait(at.t, "6 drops, from 0 in to 5 in below the string; 5 of them 0.");
	table_leave(&at);
}
END_TEST

START_TEST(the_last_drop_ends_the_walk)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "! M e a s u r e space l enter 1 4 enter");
	terminal_wait(at.t, "Drop  0 in across, 0 in down");
	terminal_keys(at.t, "1 enter 2 enter 3 enter 4 enter");
	terminal_wait(at.t, "4 drops, from 1 in to 4 in below the string.");
	table_check_saved(&at, "levels 14 ft\n  1 in, 2 in\n  3 in, 4 in\n");
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen_around");
	TCase *shown = suite_case(suite, "shown"), *entered = suite_case(suite, "entered");

	tcase_add_test(shown, each_thing_has_a_sign_of_its_own);
	tcase_add_test(shown, the_panel_says_what_is_at_the_cursor);
	tcase_add_test(shown, the_panel_says_how_much_of_what_is_here_has_no_room);
	tcase_add_test(shown, without_unicode_all_is_told_apart_too);
	tcase_add_test(shown,
		in_one_column_a_cell_lines_take_the_letters_place_and_signs_that_of_open_ground);
	tcase_add_test(shown, lines_along_the_plans_left_and_upper_edges_stand_on_the_rulers);
	tcase_add_test(shown, from_afar_a_sign_stands_where_the_ground_is_even);
	tcase_add_loop_test(shown, a_key_costs_few_bytes_among_it, 0,
		sizeof costs / sizeof *costs);
	tcase_add_test(shown, each_drop_stands_at_its_point_and_goes_again);
	tcase_add_test(shown, the_deeper_the_darker_in_256_colours_and_a_scale_says_how_deep);
	tcase_add_loop_test(shown, in_few_colours_and_none_ground_stays_as_it_is, 0,
		sizeof few_colours / sizeof *few_colours);
	tcase_add_test(shown, no_dot_stands_in_a_drop);
	tcase_add_loop_test(shown, from_afar_a_digit_says_how_deep_with_colours_and_without, 0, 2);
	tcase_add_test(entered, a_service_is_laid_round_a_corner_shown_saved_and_taken_back);
	tcase_add_test(entered, a_services_card_says_its_kinds_and_what_holds_by_kind_and_state);
	tcase_add_test(entered, a_keep_is_entered_shown_not_mirrored_and_taken_back);
	tcase_add_loop_test(entered, levels_are_walked_from_point_to_point_each_drop_a_step, 0,
		sizeof sizes / sizeof *sizes);
	tcase_add_test(entered, a_drop_that_is_typed_is_not_left_unasked);
	tcase_add_test(entered, the_last_drop_ends_the_walk);
	return suite;
}
