/* The program at a terminal: whole screens, each character with its colours, as they were looked at
 * and found good. What is behind one is said where the things themselves are tested. */

#include "support/golden.h"
#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { STEPS_MOST = 10, ROWS_MOST = 30, TRIES_MOST = 40 };

/* One session, of which there is a picture after each of the keys. */
struct sitting {
	const char *name, *plot;   /* of the golden file, and one of tests/plots */
	struct launch how;
	bool is_wide;              /* else without the panel: how high its foot is goes by all
		that was drawn before, and so by how fast keys come */
	const char *keys[STEPS_MOST];
};

static const char *const no_colour[] = { "NO_COLOR=1", NULL };
static const char *const ascii[] = { "LC_ALL=C", NULL };

/* ---- Pictures -------------------------------------------------------------------------------- */

/* A letter for each way in which a cell is painted. */
static const char letters[] = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"
	"!#$%&()*+-/<=>?@[]^_{}~";

struct look {
	int ink, ground;
	bool bold, underline, reverse;
};

/* A row of a later picture is there only where it has changed. */
struct pictures {
	struct terminal *t;
	int rows, columns;
	bool is_wide;
	int tries_least;           /* to look at a picture, before it is taken for one */
	struct text out, shown[ROWS_MOST];
	struct look looks[sizeof letters];
	size_t look_count;
};

static bool is_same(const struct look *one, const struct look *other)
{
	return one->ink == other->ink && one->ground == other->ground && one->bold == other->bold &&
		one->underline == other->underline && one->reverse == other->reverse;
}

/* A blank: as the terminal does by itself. */
static char look_letter(struct pictures *p, const struct cell *cell)
{
	static const struct look plain = { .ink = -1, .ground = -1 };
	struct look look = { cell->ink, cell->ground, cell->bold, cell->underline, cell->reverse };
	size_t i = 0;

	if (is_same(&look, &plain))
		return ' ';
	while (i < p->look_count && !is_same(&p->looks[i], &look))
		i++;
	ck_assert(letters[i]);
	if (i == p->look_count)
		p->looks[p->look_count++] = look;
	return letters[i];
}

static void trim(struct text *out)
{
	size_t length = out->length;

	while (length > 0 && out->bytes[length - 1] == ' ')
		length--;
	text_cut(out, length);
}

/* How many columns of a row are looked at. */
static int columns_of(const struct pictures *p, int row)
{
	int divider = p->is_wide ? -1 : shown_divider(p->t);
	bool is_divided = divider >= 0 &&
		strcmp(terminal_cell(p->t, row, divider).text, "\u2502") == 0;

	return is_divided ? divider : p->columns;
}

/* The characters of a row, and below them how they are painted where that is not plain. */
static struct text row_of(struct pictures *p, int row)
{
	struct text words = TEXT_EMPTY, paints = TEXT_EMPTY;
	int columns = columns_of(p, row);

	text_print(&words, "%2d|", row);
	for (int column = 0; column < columns; column++) {
		struct cell cell = terminal_cell(p->t, row, column);
		char letter = look_letter(p, &cell);

		text_add(&words, cell.text);
		text_add_bytes(&paints, &letter, 1);
	}
	trim(&words);
	trim(&paints);
	if (paints.length)
		text_print(&words, "\n  :%s", paints.bytes);
	text_add(&words, "\n");
	text_fini(&paints);
	return words;
}

static void add_picture(struct pictures *p, const char *keys)
{
	struct cursor at = terminal_cursor(p->t);

	text_print(&p->out, "---- %s\n", keys);
	for (int row = 0; row < p->rows; row++) {
		struct text now = row_of(p, row);

		if (!p->shown[row].length || strcmp(now.bytes, p->shown[row].bytes) != 0)
			text_add(&p->out, now.bytes);
		text_fini(&now);
	}
	text_print(&p->out, "cursor %d,%d%s\n\n", at.row, at.column,
		at.is_visible ? "" : ", hidden");
}

static void keep_rows(struct pictures *p)
{
	for (int row = 0; row < p->rows; row++) {
		text_fini(&p->shown[row]);
		p->shown[row] = row_of(p, row);
	}
}

static void add_colour(struct text *out, int colour)
{
	if (colour < 0)
		text_add(out, "own");
	else
		text_print(out, "%d", colour);
}

static void add_looks(struct pictures *p)
{
	for (size_t i = 0; i < p->look_count; i++) {
		const struct look *look = &p->looks[i];

		text_print(&p->out, "%c ", letters[i]);
		add_colour(&p->out, look->ink);
		text_add(&p->out, " on ");
		add_colour(&p->out, look->ground);
		text_print(&p->out, "%s%s%s\n", look->bold ? " bold" : "",
			look->underline ? " underlined" : "", look->reverse ? " reversed" : "");
	}
}

/* ---- Sitting --------------------------------------------------------------------------------- */

/* Until all is there that comes by itself. */
static void wait_whole(struct terminal *t)
{
	terminal_settle(t);
	if (!terminal_shows(t, "ounting ..."))
		return;
	terminal_until(t, !terminal_shows(t, "ounting ..."));
	terminal_settle(t);
}

/* Adds the picture as soon as it is the one that is known, or how it is after a long while: on a
 * busy machine the program may not have woken up to its keys. False where it is another one. */
static bool await_picture(struct pictures *p, const char *golden, const char *keys)
{
	const size_t length = p->out.length, look_count = p->look_count;
	bool is_known = false;

	for (int tries = 0; tries < TRIES_MOST && !is_known; tries++) {
		text_cut(&p->out, length);
		p->look_count = look_count;
		wait_whole(p->t);
		add_picture(p, keys);
		is_known = tries >= p->tries_least && golden_begins(golden, p->out.bytes);
	}
	keep_rows(p);
	return is_known;
}

static void check(const struct sitting *sitting)
{
	struct pictures p = { .rows = sitting->how.rows ? sitting->how.rows : 24,
		.columns = sitting->how.columns ? sitting->how.columns : 80,
		.is_wide = sitting->is_wide, .out = TEXT_EMPTY,
		.tries_least = getenv("UPDATE_GOLDEN") ? TRIES_MOST / 8 : 0 };
	bool is_known = true;
	struct table at;
	char name[64];

	snprintf(name, sizeof name, "screen/%s.txt", sitting->name);
	for (int row = 0; row < p.rows; row++)
		p.shown[row] = TEXT_EMPTY;
	table_lay_out(&at, sitting->plot);
	table_start(&at, &sitting->how);
	table_wait(at.t);
	wait_whole(at.t);
	p.t = at.t;
	for (int i = 0; i < STEPS_MOST && sitting->keys[i] && is_known; i++) {
		terminal_keys(at.t, sitting->keys[i]);
		is_known = await_picture(&p, name, sitting->keys[i]);
	}
	add_looks(&p);
	table_leave(&at);
	golden_check(name, p.out.bytes);
	for (int row = 0; row < p.rows; row++)
		text_fini(&p.shown[row]);
	text_fini(&p.out);
}

/* ---- Plans ----------------------------------------------------------------------------------- */

/* Two columns a cell; one; from afar; four; a rectangle that is measured, in one and from afar;
 * what is carried. */
#define SIZES { "", "/", "_", "_ \\ \\", "/ / 1 3 right 6 down enter right x5 down x4 \"", \
	"_", "_ \" enter M a r k enter left x3 up x2", "\\", "_" }
#define SMALL .rows = 18, .columns = 60

#define AXES { "-", "8 down", "/", "/", "\\ \\ \\" }

static const struct sitting plans[] = {
	{ "plan-256", "gallery.plot", { SMALL }, false, SIZES },
	{ "plan-8", "gallery.plot", { SMALL, .term = "xterm" }, false, SIZES },
	{ "plan-none", "gallery.plot", { SMALL, .env = no_colour }, false, SIZES },
	{ "plan-ascii", "gallery.plot", { SMALL, .env = ascii }, false, SIZES },
	{ "plan-vt100", "gallery.plot", { SMALL, .term = "vt100", .env = ascii }, false, SIZES },
	{ "plan-console", "gallery.plot", { SMALL, .term = "linux" }, false, SIZES },
	{ "plan-near", "gallery.plot", { .rows = 24 }, false, { "\\", "1 6 right 1 5 down",
		"1 0 left" } },
	{ "plan-axes", "rounds.plot", { .rows = 24 }, false, { "4 right 3 down", "|", "-", "\\",
		"/ /" } },
	{ "plan-axes-between", "gallery.plot", { SMALL }, false, AXES },
	{ "plan-axes-ascii", "gallery.plot", { SMALL, .env = ascii }, false, AXES },
};

/* A region that is no rectangle: what is around it within its rectangle stays in view. */
static const struct sitting carried[] = {
	{ "carried", "gallery.plot", { SMALL }, false, { "right 3 down "
		"! M a r k space t h i s enter", "8 right 4 down", "/", "_", "\\ \\ \\" } },
	{ "carried-none", "gallery.plot", { SMALL, .env = no_colour }, false, { "right 3 down "
		"! M a r k space t h i s enter", "8 right 4 down", "_" } },
};

START_TEST(a_region_that_is_carried_is_drawn_as_it_was_looked_at)
{
	check(&carried[_i]);
}
END_TEST

/* With one, two and three rows below it. */
#define BELOW { "1", "5 right 5 down" }

static const struct sitting below[] = {
	{ "below-one", "gallery.plot", { .rows = 22, .env = ascii }, false, BELOW },
	{ "below-two", "gallery.plot", { .rows = 23, .env = ascii }, false, BELOW },
	{ "below-three", "gallery.plot", { .rows = 24, .columns = 72 }, false, BELOW },
	{ "below-few", "rounds.plot", { .rows = 22, .columns = 72 }, false, BELOW },
};

START_TEST(a_plan_is_drawn_as_it_was_looked_at)
{
	check(&plans[_i]);
}
END_TEST

START_TEST(what_is_below_a_plan_is_drawn_as_it_was_looked_at)
{
	check(&below[_i]);
}
END_TEST

/* ---- Layers ---------------------------------------------------------------------------------- */

#define LEVELS "! S h o w space l e v enter"
#define HOURS { "! h o u r s enter", "/", "_", "_ \\ 1 2 right 8 down" }
#define MOMENT { "! S h a d o w s enter", "enter", "right x4 enter", "up x2", "escape", "_" }

static const struct sitting layers[] = {
	{ "levels-256", "falling.plot", { SMALL }, false, { LEVELS, "/", "\\ \\",
		"/ 8 right 6 down" } },
	{ "levels-8", "falling.plot", { SMALL, .term = "xterm" }, false, { LEVELS, "/", "/" } },
	{ "levels-none", "falling.plot", { SMALL, .env = no_colour }, false, { LEVELS, "/",
		"\\ \\", "/ 8 right 6 down" } },
	{ "levels-far", "gallery.plot", { SMALL }, false, { LEVELS, "/", "/", "2 right 1 down" } },
	{ "levels-far-none", "gallery.plot", { SMALL, .env = no_colour }, false, { LEVELS,
		"/", "/" } },
	{ "levels-moved", "falling.plot", { SMALL }, false, { LEVELS, "\\ 2 3 right 1 1 down",
		"9 left 6 up", "\\ \\", "9 left 5 up", "9 right" } },
	{ "levels-wide", "falling.plot", { .rows = 28, .columns = 120 }, false, { LEVELS, "\\" } },
	{ "hours-256", "sun.plot", { SMALL }, false, HOURS },
	{ "hours-8", "sun.plot", { SMALL, .term = "xterm" }, false, HOURS },
	{ "hours-none", "sun.plot", { SMALL, .env = no_colour }, false, HOURS },
	{ "hours-wide", "sun.plot", { .rows = 24, .columns = 110 }, false, HOURS },
	{ "moment-256", "sun.plot", { SMALL }, false, MOMENT },
	{ "moment-none", "sun.plot", { SMALL, .env = no_colour }, false, MOMENT },
	{ "moment-wide", "sun.plot", { .rows = 24, .columns = 110 }, false, MOMENT },
};

START_TEST(a_layer_is_drawn_as_it_was_looked_at)
{
	check(&layers[_i]);
}
END_TEST

/* ---- Plants ---------------------------------------------------------------------------------- */

#define PLANTS { "\\", "6 down 4 right", "/ /", "_" }

static const struct sitting planted[] = {
	{ "plants-256", "planted.plot", { .term = NULL }, false, PLANTS },
	{ "plants-none", "planted.plot", { .env = no_colour }, false, PLANTS },
	{ "plants-cut", "planted.plot", { .rows = 24 }, true, { "\\" } },
	{ "plants-ascii", "planted.plot", { .env = ascii, .term = "xterm" }, false, PLANTS },
};

START_TEST(plants_are_drawn_as_they_were_looked_at)
{
	check(&planted[_i]);
}
END_TEST

/* ---- Rulers ---------------------------------------------------------------------------------- */

static const struct sitting measured[] = {
	{ "measure-feet", "great-court.plot", { SMALL }, false, { "\"",
		"3 right 2 down enter 2 down", "right x2", "right x4", "right x8", "1 2 down",
		"3 0 right 9 down", "_" } },
	{ "measure-inches", "inches.plot", { SMALL }, false, { "\"", "3 right 1 down",
		"enter 1 0 right 4 down", "left x3", "up", "\\" } },
	{ "measure-metric", "rounds.plot", { .rows = 24 }, false, { "\"", "3 right 3 down",
		"2 right enter 2 down", "right", "right x6", "\\" } },
	{ "measure-none", "rounds.plot", { SMALL, .env = ascii, .term = "vt100" }, false, { "\"",
		"3 right 3 down", "2 right enter 6 down", "/", "_" } },
};

/* What the cursor is in: a mark left and right of the words, in a region too small for them. */
static const struct sitting regions[] = {
	{ "measure-regions", "gallery.plot", { SMALL }, false, { "\"", "4 right 8 down",
		"left", "7 right 5 up", "9 right 1 0 down", "right", "/", "left" } },
	{ "measure-rows", "rounds.plot", { .rows = 24 }, false, { "\"", "1 5 right 1 0 down",
		"down", "3 left down" } },
};

START_TEST(what_is_measured_is_drawn_as_it_was_looked_at)
{
	check(&measured[_i]);
}
END_TEST

START_TEST(a_region_that_is_measured_is_drawn_as_it_was_looked_at)
{
	check(&regions[_i]);
}
END_TEST

/* ---- Panels and the first and last rows ------------------------------------------------------ */

#define PANEL "! P a n e l space w enter"

static const struct sitting panels[] = {
	{ "panel", "court.plot", { .rows = 24 }, true, { "3 right", "3 down", PANEL, PANEL, "enter",
		"3 right", "2 down" } },
	{ "panel-small", "gallery.plot", { SMALL }, true, { "3 down", ")", ")", ")", "(" } },
	{ "panel-stars", "gallery.plot", { SMALL }, true, { "2 right", "5 down", "delete",
		"right", ")", "(" } },
	{ "panel-one", "court.plot", { SMALL }, true, { "", ")", "(" } },
	{ "panel-below", "rounds.plot", { .rows = 23, .columns = 60 }, true, { PANEL, "1 6 down",
		PANEL } },
	{ "panel-two", "court.plot", { .rows = 24, .columns = 160 }, true, { "right", ")" } },
};

START_TEST(a_panel_is_drawn_as_it_was_looked_at)
{
	check(&panels[_i]);
}
END_TEST

/* ---- In front -------------------------------------------------------------------------------- */

static const struct sitting fronts[] = {
	{ "list", "court.plot", { .rows = 24 }, true, { "1 3 right 7 down !", "down x3",
		"pagedown", "end", "up x2", "f e n", "down x2", "backspace x3", "z z" } },
	{ "list-small", "court.plot", { SMALL }, true, { "1 3 right 6 down !", "down x3", "end up",
		"home s" } },
	{ "list-cut", "court.plot", { SMALL }, true, { "# ", "down x3", "end", "home" } },
	{ "card", "court.plot", { .rows = 24 }, true, { "2 right 2 down # b e d enter", "down x2",
		"3 x", "down x4", "right", "pagedown", "up" } },
	{ "card-small", "court.plot", { SMALL }, true, { "1 2 right 3 down # b e d enter",
		"down", "x y", "down x8", "down x9", "pagedown" } },
	{ "card-choice", "planted.plot", { .rows = 24 }, true, { "# S h r u b enter", "up x6",
		"m", "m", "m", "backspace 1 1", "1", "backspace", "right", "left x2" } },
	{ "card-hyphen", "court.plot", { SMALL }, true, { "# T h e space p l o t enter", "down x5",
		"t o p", "space", "b", "x", "ctrl-u l e f t r" } },
	{ "card-words", "planted.plot", { .rows = 24 }, true, { "# S h r u b enter",
		"up x6 right x8", "right", "2", "2", "backspace 3", "space", "N", "\u00e9" } },
	{ "card-required", "court.plot", { SMALL }, true, { "# T h e space p l o t enter",
		"down backspace", "right", "left x2", "backspace", "enter", "i" } },
	{ "card-on", "court.plot", { .rows = 24 }, false, { "! M e a s u r e space l enter",
		"7 enter", "1 enter", "2 down", "q right", "ctrl-u left" } },
	{ "card-low", "great-court.plot", { SMALL }, true, { "1 2 right 1 2 down # b space S enter",
		"down x9" } },
	{ "card-fault", "court.plot", { SMALL }, true, { "1 2 right 3 down # b e d enter down x4",
		"z x40", "z x400 enter", "down", "up backspace" } },
	{ "card-texts", "court.plot", { SMALL }, true, { "# T h e space p l o t enter",
		"space a n d space a space l o n g space o n e space o n c e space m o r e",
		"f o r space t h e space r o a d", "home", "end left x2", "down", "z",
		"down space" } },
	{ "prompt", "court.plot", { .rows = 24 }, false, { "5 right 3 down ! S t e p enter", "2",
		"q enter" } },
	{ "prompt-small", "court.plot", { SMALL }, false, {
		"2 right 2 down ! N a m e space t h enter",
		"W e a v e r s space o f space t h e space y a r d space a n d space m o",
		"home", "ctrl-u", "ctrl-u enter" } },
};

START_TEST(what_stands_in_front_is_drawn_as_it_was_looked_at)
{
	check(&fronts[_i]);
}
END_TEST

#define ADD(name, test, list)                                                       \
	tcase_add_loop_test(suite_case(suite, name), test, 0, sizeof(list) / sizeof *(list))

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen whole");

	ADD("plans", a_plan_is_drawn_as_it_was_looked_at, plans);
	ADD("carried", a_region_that_is_carried_is_drawn_as_it_was_looked_at, carried);
	ADD("below", what_is_below_a_plan_is_drawn_as_it_was_looked_at, below);
	ADD("layers", a_layer_is_drawn_as_it_was_looked_at, layers);
	ADD("plants", plants_are_drawn_as_they_were_looked_at, planted);
	ADD("rulers", what_is_measured_is_drawn_as_it_was_looked_at, measured);
	ADD("regions", a_region_that_is_measured_is_drawn_as_it_was_looked_at, regions);
	ADD("panels", a_panel_is_drawn_as_it_was_looked_at, panels);
	ADD("front", what_stands_in_front_is_drawn_as_it_was_looked_at, fronts);
	return suite;
}
