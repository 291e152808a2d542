/* What is shortened looks as it did, and is shorter. The reference is libvterm, a terminal emulator
 * library. */
#include "screen/sgr.h"
#include "support/random.h"
#include "support/runner.h"

#include <string.h>
#include <vterm.h>

enum { ROWS = 6, COLUMNS = 20 };

/* ---- Against a terminal ---------------------------------------------------------------------- */

static VTerm *terminal(void)
{
	VTerm *t = vterm_new(ROWS, COLUMNS);

	vterm_set_utf8(t, 1);
	vterm_screen_reset(vterm_obtain_screen(t), 1);
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
	"\033(B\033[0;1m", "\033(B\033[0;7m", "\033[4m", "\033[1m", "\033[22m", "\033[38;2;1;2;3m",
	"a", "b ", "xyz", "\033[K", "\033[J", "\033[3X", "\033[2P", "\033[H",
	"\033[3;5H", "\033[C", "\033[2A", "\r", "\b", "\n", "\033[5G", "\033[2d", "\033[?25l",
	"\033[L", "\033[T", "q", "\033(B",
};
/* No program mixes them: a terminal draws its lines by a set of characters, or by Unicode. */
static const char *const lines[][2] = { { "\u25C6", "\u2502" }, { "\033(0", "\033(B" } };
enum { PIECES = sizeof pieces / sizeof *pieces };

static const char *any_piece(struct random *random, const char *const lines_of[2])
{
	int piece = random_below(random, PIECES + 2);

	return piece < PIECES ? pieces[piece] : lines_of[piece - PIECES];
}

/* Frame after frame of anything: each looks as it would. */
START_TEST(what_is_shortened_looks_alike)
{
	struct random random = { (uint64_t)_i };
	struct sgr sgr = SGR_UNKNOWN;
	VTerm *plain = terminal(), *shortened = terminal();

	for (int frame = 0; frame < 6; frame++) {
		struct text bytes = TEXT_EMPTY, shorter = TEXT_EMPTY;

		for (int i = random_below(&random, 60); i > 0; i--)
			text_add(&bytes, any_piece(&random, lines[_i % 2]));
		sgr_shorten(&sgr, bytes.bytes, bytes.length, &shorter);
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

/* ---- To the byte ----------------------------------------------------------------------------- */

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
	{ "\033[4\033[31ma", NULL }, /* a cut sequence is no reason to fall over */
};

START_TEST(only_what_changes_is_sent)
{
	struct sgr sgr = SGR_UNKNOWN;
	struct text shorter = TEXT_EMPTY;

	sgr_shorten(&sgr, rows[_i].bytes, strlen(rows[_i].bytes), &shorter);
	if (rows[_i].shorter)
		ck_assert_str_eq(shorter.bytes, rows[_i].shorter);
	text_fini(&shorter);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sgr");
	TCase *all = suite_case(suite, "all");

	tcase_add_loop_test(all, what_is_shortened_looks_alike, 0, runner_count(400, 40000));
	tcase_add_loop_test(all, only_what_changes_is_sent, 0, (int)(sizeof rows / sizeof *rows));
	return suite;
}
