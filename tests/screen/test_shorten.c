/* What is shortened looks as it did, and is shorter. The reference is libvterm, a terminal emulator
 * library. */
#include "screen/shorten.h"
#include "support/random.h"
#include "support/runner.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <vterm.h>

enum { ROWS = 6, COLUMNS = 20 };

/* ---- Against a terminal ---------------------------------------------------------------------- */

static VTerm *terminal(bool wraps)
{
	static const char no_wrap[] = "\033[?7l";
	VTerm *t = vterm_new(ROWS, COLUMNS);

	vterm_set_utf8(t, 1);
	vterm_screen_reset(vterm_obtain_screen(t), 1);
	if (!wraps)
		vterm_input_write(t, no_wrap, sizeof no_wrap - 1);
	return t;
}

static unsigned attributes_of(const VTermScreenCell *cell)
{
	return (unsigned)(cell->attrs.bold | cell->attrs.underline << 1 | cell->attrs.italic << 3 |
		cell->attrs.blink << 4 | cell->attrs.reverse << 5 |
		cell->attrs.strike << 7);
}

static void check_alike(VTerm *one, VTerm *other, const char *what)
{
	VTermPos at, cursor[2];

	for (at.row = 0; at.row < ROWS; at.row++)
		for (at.col = 0; at.col < COLUMNS; at.col++) {
			VTermScreenCell a = { 0 }, b = { 0 };

			vterm_screen_get_cell(vterm_obtain_screen(one), at, &a);
			vterm_screen_get_cell(vterm_obtain_screen(other), at, &b);
			ck_assert_msg(a.chars[0] == b.chars[0] &&
				attributes_of(&a) == attributes_of(&b) &&
				vterm_color_is_equal(&a.fg, &b.fg) &&
				vterm_color_is_equal(&a.bg, &b.bg), "%s: %d, %d", what, at.row,
				at.col);
		}
	vterm_state_get_cursorpos(vterm_obtain_state(one), &cursor[0]);
	vterm_state_get_cursorpos(vterm_obtain_state(other), &cursor[1]);
	ck_assert(cursor[0].row == cursor[1].row && cursor[0].col == cursor[1].col);
}

static const char *const pieces[] = {
	"\033[m", "\033(B\033[m", "\033[39;49m", "\033[38;5;16m", "\033[48;5;254m",
	"\033[38;5;231m\033[48;5;94m", "\033[31m", "\033[42m", "\033[97m", "\033[101m",
	"\033[30m", "\033[37m", "\033[40m", "\033[47m", "\033[90m", "\033[100m", "\033[107m",
	"\033(B\033[0;1m", "\033(B\033[0;7m", "\033[4m", "\033[1m", "\033[22m",
	"\033[38;2;1;2;3m",
	"a", "b ", "xyz", "\033[K", "\033[1K", "\033[2K", "\033[J", "\033[3X", "\033[2P", "\033[2@",
	"r\033[3b", "\033[H", "\033[3;5H", "\033[5;18H", "\033[2H", "\033[;7H", "\033[99;99H",
	"\033[C", "\033[4C", "\033[2A", "\033[B", "\033[3D", "\r", "\b", "\n", "\033[5G", "\033[2d",
	"\033[?25l", "\033[L", "\033[T", "\033[2;5r", "\033[1;6r", "\033[r", "\033M", "q", "\033(B",
	"\t",
};
/* No program mixes them: a terminal draws its lines by Unicode, by a set of characters, or by a
 * shift to another. */
enum { LINES_EACH = 6, LINES_ANYWHERE = 4 };
static const char *const lines[][LINES_EACH] = {
	{ "\u25C6", "\u2502", "\u25c7\u2581", "\u00e9", "e\u0301", "\u4e00" },
	{ "\033(0", "\033(B", "q", "\033(0x", "\033(Bx", "lqqk" },
	{ "\016", "\017", "q", "\016x", "\017x", "lqqk" },
};
enum { PIECES = sizeof pieces / sizeof *pieces, LINES = sizeof lines / sizeof *lines };

/* But no marks that join letters: at the last column terminals differ in what they join. */
static void add_piece(struct text *bytes, struct random *random, const char *const *lines_of)
{
	int piece = random_below(random, PIECES + LINES_ANYWHERE);

	text_add(bytes, piece < PIECES ? pieces[piece] : lines_of[piece - PIECES]);
}

/* As a program draws: here and there a few cells, or what erases some. */
static void add_drawing(struct text *bytes, struct random *random, const char *const *lines_of)
{
	static const char *const drawn[] = { "a", "bc", "     ", "\033[K", "\033[4X",
		"x\033[2b", "\033[P", "\033[@" };
	static const char *const looks[] = { "\033[m", "\033[0;1m", "\033[38;5;16m\033[48;5;254m",
		"\033[38;5;231m\033[48;5;94m", "\033[48;5;226m", "\033[0;7m" };

	text_print(bytes, "\033[%d;%dH%s%s%s", 1 + random_below(random, ROWS),
		1 + random_below(random, COLUMNS),
		looks[random_below(random, (int)(sizeof looks / sizeof *looks))],
		random_below(random, 4) ? "" : lines_of[random_below(random, LINES_EACH)],
		drawn[random_below(random, (int)(sizeof drawn / sizeof *drawn))]);
}

/* Whether moves are known, and which lines a terminal has: every way for frames of either kind. */
enum { WAYS = 2 * 2 * LINES };

static struct shortener shortener_for(int way)
{
	return shortener_of(way % 2 ? (struct stand){ ROWS, COLUMNS } : (struct stand){ 0, 0 });
}

static bool is_drawing(int way)
{
	return way / 2 % 2;
}

static void add_frame(struct text *bytes, struct random *random, int way)
{
	for (int i = random_below(random, 60); i > 0; i--)
		if (is_drawing(way))
			add_drawing(bytes, random, lines[way / 4]);
		else
			add_piece(bytes, random, lines[way / 4]);
}

/* Frame after frame, of drawings or of anything: each looks as it would, and leaves the cursor
 * where it would. Anything is sent to a terminal that does not wrap: this one takes even what says
 * how things look for a move, after which it would not any more. */
START_TEST(what_is_shortened_looks_alike)
{
	struct random random = { (uint64_t)_i };
	int way = _i % WAYS;
	struct shortener shortener = shortener_for(way);
	VTerm *plain = terminal(is_drawing(way)), *shortened = terminal(is_drawing(way));

	for (int frame = 0; frame < 6; frame++) {
		struct text bytes = TEXT_EMPTY, shorter = TEXT_EMPTY;

		add_frame(&bytes, &random, way);
		shorten(&shortener, bytes.bytes, bytes.length, &shorter);
		vterm_input_write(plain, bytes.bytes, bytes.length);
		vterm_input_write(shortened, shorter.bytes, shorter.length);
		check_alike(plain, shortened, bytes.bytes);
		text_fini(&bytes);
		text_fini(&shorter);
	}
	vterm_free(plain);
	vterm_free(shortened);
}
END_TEST

/* Bytes of 100 sessions of six frames, each way. Fewer are welcome. */
static const int bytes_most[WAYS] = { 66769, 63890, 340450, 304595, 64673, 61698, 335437, 294082,
	63617, 60639, 332361, 289169 };

START_TEST(no_way_takes_more_bytes_than_it_did)
{
	int count = 0;

	for (int seed = 0; seed < 100; seed++) {
		struct random random = { (uint64_t)seed };
		struct shortener shortener = shortener_for(_i);

		for (int frame = 0; frame < 6; frame++) {
			struct text bytes = TEXT_EMPTY, shorter = TEXT_EMPTY;

			add_frame(&bytes, &random, _i);
			shorten(&shortener, bytes.bytes, bytes.length, &shorter);
			count += (int)shorter.length;
			text_fini(&bytes);
			text_fini(&shorter);
		}
	}
	ck_assert_int_le(count, bytes_most[_i]);
}
END_TEST

/* What is written after a frame, by whoever does not know of it, looks as it would. */
START_TEST(a_frame_leaves_the_pen_as_it_was_wanted)
{
	struct random random = { (uint64_t)_i };
	struct shortener shortener = shortener_of((struct stand){ ROWS, COLUMNS });
	VTerm *plain = terminal(true), *shortened = terminal(true);
	struct text bytes = TEXT_EMPTY, shorter = TEXT_EMPTY;

	for (int i = 0; i < 12; i++)
		add_drawing(&bytes, &random, lines[_i % LINES]);
	shorten(&shortener, bytes.bytes, bytes.length, &shorter);
	text_add(&bytes, "\rx\033[K");
	text_add(&shorter, "\rx\033[K");
	vterm_input_write(plain, bytes.bytes, bytes.length);
	vterm_input_write(shortened, shorter.bytes, shorter.length);
	check_alike(plain, shortened, bytes.bytes);
	text_fini(&bytes);
	text_fini(&shorter);
	vterm_free(plain);
	vterm_free(shortened);
}
END_TEST

/* Whatever rows scroll, a line feed and what is written after it lie where they would. */
START_TEST(within_any_margins_it_looks_alike)
{
	VTerm *plain, *shortened;
	char bytes[120];

	for (int top = 0; top <= ROWS; top++)
		for (int bottom = 0; bottom <= ROWS; bottom++) {
			struct shortener shortener =
				shortener_of((struct stand){ ROWS, COLUMNS });
			struct text shorter = TEXT_EMPTY;

			snprintf(bytes, sizeof bytes,
				"\033[Ha\033[%d;%dr\033[%d;1Hb\ncd\033[3;1He\nf", top, bottom,
				bottom);
			plain = terminal(false);
			shortened = terminal(false);
			shorten(&shortener, bytes, strlen(bytes), &shorter);
			vterm_input_write(plain, bytes, strlen(bytes));
			vterm_input_write(shortened, shorter.bytes, shorter.length);
			check_alike(plain, shortened, bytes);
			text_fini(&shorter);
			vterm_free(plain);
			vterm_free(shortened);
		}
}
END_TEST

/* ---- What it costs --------------------------------------------------------------------------- */

/* The same place by the one sequence that names both. */
static size_t by_both(struct stand to)
{
	char bytes[32];

	return (size_t)snprintf(bytes, sizeof bytes, to.column ? "\033[%d;%dH" :
		to.row ? "\033[%dH" : "\033[H", to.row + 1, to.column + 1);
}

/* Along one of the two by its number, by the way there, or by a byte for each step. */
static size_t along(int from, int to, bool has_back, bool has_on)
{
	char bytes[32];
	int way = abs(to - from);
	size_t by_way = (size_t)snprintf(bytes, sizeof bytes, way == 1 ? "\033[C" : "\033[%dC",
		way);
	size_t best = (size_t)snprintf(bytes, sizeof bytes, to ? "\033[%dG" : "\033[G", to + 1);

	best = by_way < best ? by_way : best;
	if (way == 0 || (to < from ? !has_back : !has_on))
		return way ? best : 0;
	return (size_t)way < best ? (size_t)way : best;
}

static size_t by_each(struct stand from, struct stand to)
{
	size_t down = along(from.row, to.row, false, true);

	return down + (to.column == 0 && from.column > 0 ? 1 :
		along(from.column, to.column, true, false));
}

START_TEST(a_move_is_the_shortest_and_is_told_so)
{
	static const int below[] = { 4, 12, 120, 1200 };
	struct random random = { 1 };

	for (int i = 0; i < 4000; i++) {
		int most = below[i % 4];
		struct stand from = { random_below(&random, most), random_below(&random, most) };
		struct stand to = { i % 3 ? random_below(&random, most) : from.row,
			i % 5 ? random_below(&random, most) : 0 };
		bool is_known = i % 7 != 0;
		size_t each = by_each(from, to), both = by_both(to);
		struct stand begin = is_known ? from : STAND_UNKNOWN;
		struct text bytes = TEXT_EMPTY;

		steer_send(begin, to, &bytes);
		ck_assert_uint_eq(bytes.length, is_known && each < both ? each : both);
		ck_assert_int_eq(steer_cost(begin, to), (int)bytes.length);
		text_fini(&bytes);
	}
}
END_TEST

static int colour_at_random(struct random *random, int own)
{
	static const int colours[] = { SGR_UNKNOWN, 0, 9, 10, 99, 100, 255, SGR_CODE + 31,
		SGR_CODE + 107 };
	int at = random_below(random, 10);

	return at < 9 ? colours[at] : own;
}

static struct pen pen_at_random(struct random *random)
{
	return (struct pen){ colour_at_random(random, SGR_CODE + 39),
		colour_at_random(random, SGR_CODE + 49),
		random_below(random, 8) ? 2 * random_below(random, 8) |
			random_below(random, 2) << 9 : SGR_UNKNOWN,
		"\0B0"[random_below(random, 3)], "\0\016\017"[random_below(random, 3)] };
}

START_TEST(a_look_costs_what_is_sent_for_it)
{
	struct random random = { 1 };

	for (int i = 0; i < 4000; i++) {
		struct pen sent = pen_at_random(&random), wanted = pen_at_random(&random);
		int cost = sgr_cost(&sent, &wanted);
		struct text bytes = TEXT_EMPTY;

		sgr_send(&sent, &wanted, &bytes);
		ck_assert_int_eq(cost, (int)bytes.length);
		text_fini(&bytes);
	}
}
END_TEST

START_TEST(what_is_not_known_leaves_the_pen_as_it_was)
{
	static const char *const unknown[] = { "\033[31;58m", "\033[1;4;53m", "\033[48;2;1m",
		"\033[H", "x" };
	const struct pen plain = PEN_PLAIN;

	for (size_t i = 0; i < sizeof unknown / sizeof *unknown; i++) {
		struct pen pen = plain;

		ck_assert_uint_eq(sgr_read(&pen, unknown[i], strlen(unknown[i])), 0);
		ck_assert_int_eq(pen.ink, plain.ink);
		ck_assert_int_eq(pen.ground, plain.ground);
		ck_assert_int_eq(pen.attributes, plain.attributes);
	}
}
END_TEST

/* ---- To the byte ----------------------------------------------------------------------------- */

#define TEN ";;;;;;;;;;"

static const struct {
	const char *bytes, *shorter;
} rows[] = {
	/* the ink stays, the ground changes */
	{ "\033[38;5;16m\033[48;5;254ma\033[38;5;16m\033[48;5;226mb",
		"\033[38;5;16;48;5;254ma\033[48;5;226mb" },
	/* the same again is nothing */
	{ "\033[31ma\033[31mb", "\033[31mab" },
	/* a reset in three ways is one, and sets of characters are not set twice */
	{ "\033(B\033[m\033[31ma\033[39;49m\033(B\033[mb", "\033(B\033[0;31ma\033[mb" },
	/* what nothing is written with is not sent, nor before a move */
	{ "\033[m\033[31m\033[3;5H\033[32ma", "\033[3;5H\033[0;32ma" },
	{ "\033[ma\033[31m\033[mb", "\033[mab" },
	/* at the end things look as they were left */
	{ "\033[ma\033[31m", "\033[ma\033[31m" },
	/* an attribute goes with a reset, after which the colours are set anew */
	{ "\033[m\033[0;1m\033[31ma\033[0;31mb", "\033[0;1;31ma\033[0;31mb" },
	/* erasing is done in a colour */
	{ "\033[ma\033[41m\033[K", "\033[ma\033[41m\033[K" },
	/* what is not known goes through, and what was known is not any more */
	{ "\033[31ma\033[38;2;1;2;3mb\033[31mc", "\033[31ma\033[38;2;1;2;3mb\033[31mc" },
	{ "\033[31ma\033[22mb", "\033[31ma\033[22mb" },
	{ "\033[?25l\033]0;t\007\u25C6", "\033[?25l\033]0;t\007\u25C6" },
	/* so many parameters are known, and no larger ones */
	{ "\033[" TEN TEN TEN "31ma\033[31mb", "\033[0;31mab" },
	{ "\033[" TEN TEN TEN ";31ma\033[31mb", "\033[" TEN TEN TEN ";31ma\033[31mb" },
	{ "\033[0;9999999999999ma\033[0mb", "\033[0;9999999999999ma\033[mb" },
	{ "\033[4\033[31ma", NULL }, /* a cut sequence is no reason to fall over */
	{ "a\033[4", "a\033[4" },
};

START_TEST(only_what_changes_is_sent)
{
	struct shortener shortener = shortener_of((struct stand){ 0, 0 });
	struct text shorter = TEXT_EMPTY;

	shorten(&shortener, rows[_i].bytes, strlen(rows[_i].bytes), &shorter);
	if (rows[_i].shorter) {
		ck_assert_str_eq(shorter.bytes, rows[_i].shorter);
		ck_assert_uint_eq(shorter.length, strlen(shorter.bytes));
	}
	text_fini(&shorter);
}
END_TEST

/* With the cursor at the top left corner, and plain. */
static const struct {
	const char *bytes, *shorter;
} orders[] = {
	/* at once what is at hand, then what looks alike */
	{ "\033[31ma\033[5;9H\033[32mb\033[5;3H\033[31mc",
		"\033[31ma\033[5;3Hc\033[9G\033[32mb\033[4G\033[31m" },
	/* moves that lead nowhere are not made */
	{ "\033[3;5H\033[2;1H\033[3;5Hx", "\n\n\033[5Gx" },
	/* in a row by its column, a row down by a new line */
	{ "a\033[1;18Hb\033[2;18Hc", "a\033[18Gb\n\bc" },
	/* nothing overtakes what changes the same cells */
	{ "\033[1;5Hab\033[31m\033[1;6Hc\033[m\033[1;6Hdd\033[1;1Hx",
		"x\033[5Gab\b\033[31mc\b\033[mdd\033[2G" },
	{ "\033[1;5Hab\033[1;2H\033[K\033[1;1Hx", "x\033[5Gab\033[2G\033[K" },
	/* in the last column it ends: what comes after it goes by row and column */
	{ "\033[1;20Hab\033[2;2Hc", "\033[20Gab\033[2;2Hc" },
	/* a repeat is spelled where it leaves but the last column, and goes as it is into that */
	{ "\033[2;3Hq\033[15bx", "\n\033[3Gq\033[15bx" },
	{ "\033[2;3Hq\033[16bx", "\n\033[3Gqqqqqqqqqqqqqqqqqx" },
	{ "\033[2;3Hq\033[17b", "\n\033[3Gq\033[17b" },
	/* a mark joins the letter that was written last */
	{ "\033[2;1He\u0301\033[1;1Hx", "\ne\u0301\033[Hx" },
	/* where rows scroll by themselves all stays as it is */
	{ "\033[2;4r\033[4;1H\n\033[1;6r\033[1;1Hx",
		"\033[2;4r\033[4;1H\n\033[1;6r\033[Hx" },
};

START_TEST(what_is_near_or_looks_alike_comes_next)
{
	struct shortener shortener = shortener_of((struct stand){ ROWS, COLUMNS });
	struct text first = TEXT_EMPTY, shorter = TEXT_EMPTY;

	shorten(&shortener, "\033[m\033[H", 6, &first);
	shorten(&shortener, orders[_i].bytes, strlen(orders[_i].bytes), &shorter);
	ck_assert_str_eq(shorter.bytes, orders[_i].shorter);
	text_fini(&first);
	text_fini(&shorter);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("shorten");
	TCase *all = suite_case(suite, "all");

	tcase_add_test(all, within_any_margins_it_looks_alike);
	tcase_add_test(all, what_is_not_known_leaves_the_pen_as_it_was);
	tcase_add_loop_test(all, what_is_shortened_looks_alike, 0, runner_count(1200, 60000));
	tcase_add_loop_test(all, no_way_takes_more_bytes_than_it_did, 0, WAYS);
	tcase_add_loop_test(all, a_frame_leaves_the_pen_as_it_was_wanted, 0,
		runner_count(100, 4000));
	tcase_add_test(all, a_move_is_the_shortest_and_is_told_so);
	tcase_add_test(all, a_look_costs_what_is_sent_for_it);
	tcase_add_loop_test(all, only_what_changes_is_sent, 0, (int)(sizeof rows / sizeof *rows));
	tcase_add_loop_test(all, what_is_near_or_looks_alike_comes_next, 0,
		(int)(sizeof orders / sizeof *orders));
	return suite;
}
