/* What comes on the line and is no key, in every state; pastes with and without marks. */

#include "support/random.h"
#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

/* ---- States ---------------------------------------------------------------------------------- */

static const struct {
	const char *keys, *shown;
} states[] = {
	{ "right", "1 ft across" },
	{ "=", "Trail" },
	{ "enter right", "Pegged" },
	{ "right down enter right x4 down x2 enter M a r k enter", "Marked" },
	{ "#", "Which card?" },
	{ "! m a r", "Typed: mar" },
	{ "@ 3 space f", "3 f" },
	{ "space <", "Leave without saving" },
	{ "?", "I want to" },
	{ "! M o u s e enter", "Mouse on" },
};
enum { STATES = sizeof states / sizeof *states, IN_CARD = 6 };

static void sit_in_state(struct table *at, int state)
{
	table_sit(at, "court.plot", 24, 80);
	terminal_keys(at->t, states[state].keys);
	terminal_wait(at->t, states[state].shown);
	terminal_settle(at->t);
}

static char *picture(struct terminal *t)
{
	char *all = calloc(24, 400);

	for (int row = 0; row < 24; row++)
		strcat(strcat(all, terminal_row(t, row)), "\n");
	return all;
}

static bool is_picture(struct terminal *t, const char *wanted)
{
	char *now = picture(t);
	bool is_same = strcmp(now, wanted) == 0;

	free(now);
	return is_same;
}

/* The program is there and shows what it did: asked to draw it all afresh. */
static void check_unchanged(struct terminal *t, const char *before)
{
	terminal_keys(t, "ctrl-l");
	terminal_until(t, terminal_answered(t, "\033[2J"));
	terminal_until(t, is_picture(t, before));
}

/* ---- Events that mean nothing ---------------------------------------------------------------- */

static const char *const events[] = {
	/* the right, middle, back and forward buttons, let go, dragged; the wheel to the sides */
	"\033[<2;12;5M", "\033[<2;12;5m", "\033[<1;12;5M", "\033[<128;12;5M", "\033[<129;12;5M",
	"\033[<34;12;5M", "\033[<66;12;5M", "\033[<67;12;5M", "\033[<35;12;5M",
	"\033[M\"*(", "\033[M!*(", "\033[Mb*(", "\033[Mc*(", "\033[MB*(",
	/* reports that are not well formed */
	"\033[<0;99999999999;1M", "\033[<;;M", "\033[<M", "\033[<0;0;0M", "\033[32;12;5M",
	/* answers of terminals, with their strings, and what tells of the focus */
	"\033[12;40R", "\033[?62;1;6c", "\033[>0;276;0c", "\033[0n", "\033[I", "\033[O",
	"\033[8;24;80t", "\033[?2026;2$y", "\033]11;rgb:0000/0000/0000\007",
	"\033]11;rgb:0/0/0\033\\", "\033P>|a terminal = p S\033\\", "\033P1$r0m\033\\",
	"\033_Gi=1;OK\033\\", "\033^Sp = \033\\", "\033XSp = \033\\", "\033]0;S p =\r\n<\007",
	"\033\\", "\033[201~",
	/* control characters of eight bits, bytes that are no characters */
	"\233", "\220", "\235", "\302\233", "\377", "\376\301\300", "\355\240\200",
	"\364\220\200\200", "\364\220\200\230", "\364\220\200\231", "\364\220\200\232",
	/* what was cut off */
	"\303", "\340\270", "\360\237\214", "\033[", "\033O", "\033[1;", "\033[<0;12", "\033[M",
	"\033[M ", "\033[?", "\033[20",
};
enum { EVENTS = sizeof events / sizeof *events, CUT_OFF = 11 };

START_TEST(what_means_nothing_changes_nothing)
{
	struct table at;
	char *before;

	sit_in_state(&at, _i);
	before = picture(at.t);
	for (int i = 0; i < EVENTS; i++) {
		terminal_type(at.t, events[i]);
		if (i >= EVENTS - CUT_OFF)
			usleep(120000); /* a silence, which cuts off what it comes after */
		check_unchanged(at.t, before);
	}
	for (int i = 0; i < EVENTS; i++)
		terminal_type(at.t, events[i]);
	check_unchanged(at.t, before);
	free(before);
	table_leave(&at);
}
END_TEST

START_TEST(characters_in_pieces_are_characters)
{
	static const char *const letters[] = { "\303\251", "\340\270\201", "\360\237\214\271" };
	struct table at;

	table_clear(&at, "new.plot");
	table_start(&at, NULL);
	terminal_wait(at.t, "Begin a new plot");
	for (int i = 0; i < 3; i++) {
		for (const char *byte = letters[i]; *byte; byte++) {
			terminal_type(at.t, (char[]){ *byte, '\0' });
			usleep(50000);
		}
		terminal_wait(at.t, letters[i]);
	}
	table_leave(&at);
}
END_TEST

/* As most users have it: the environment does not say how long to wait for the rest of a
 * sequence. */
START_TEST(with_nothing_told_esc_alone_is_answered)
{
	struct table at;

	table_lay_out(&at, "court.plot");
	table_start(&at, &(struct launch){ .env = (const char *[]){ "ESCDELAY", NULL } });
	table_wait(at.t);
	for (int i = 0; i < 2; i++) {
		terminal_keys(at.t, "#");
		terminal_wait(at.t, "Which card?");
		terminal_keys(at.t, "escape");
		terminal_wait_gone(at.t, "Which card?");
	}
	table_leave(&at);
}
END_TEST

/* Over a line that falters: what was read of a sequence is no key until then. */
START_TEST(esc_waits_for_the_rest_of_a_sequence_as_long_as_is_told)
{
	struct table at;

	table_lay_out(&at, "court.plot");
	table_start(&at, &(struct launch){ .env = (const char *[]){ "ESCDELAY=20000", NULL } });
	table_wait(at.t);
	terminal_keys(at.t, "#");
	terminal_wait(at.t, "Which card?");
	terminal_until(at.t, shown_at(at.t, "b Raised bed"));
	terminal_type(at.t, "\033");
	terminal_settle(at.t);
	terminal_type(at.t, "[B");
	terminal_until(at.t, shown_at(at.t, "p Crushed stone"));
	table_leave(&at);
}
END_TEST

/* With a gap longer than the program waits for the rest of a sequence. */
START_TEST(arrows_and_clicks_in_pieces_stay_what_they_are)
{
	static const char *const pieces[][2] = {
		{ "\033", "OC" }, { "\033", "[C" }, { "\033", "[1;2D" }, { "\033[<0;1", "2;3M" },
		{ "\033[", "<0;14;3M" },
	};
	static const int columns[] = { 1, 2, 1, 3, 4 };
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "! M o u s e enter");
	terminal_wait(at.t, "Mouse on");
	for (int i = 0; i < 5; i++) {
		terminal_type(at.t, pieces[i][0]);
		if (i < 3)
			terminal_wait(at.t, "There is nothing to go back from");
		else
			usleep(150000);
		terminal_type(at.t, pieces[i][1]);
		terminal_until(at.t, i == 2 || shown_on_cell(at.t, columns[i], 0));
		terminal_wait_gone(at.t, "There is nothing to go back from");
	}
	terminal_wait(at.t, "court.plot, saved");
	terminal_wait(at.t, "arrows move  ");
	table_leave(&at);
}
END_TEST

/* None of them together is Enter, which may end one. */
START_TEST(bytes_at_random_end_no_session)
{
	static const char *const pieces[] = { "\033[", "\033O", "\033]", "\033P", "\033[<",
		"\033[M", "\007", "\033\\", "\033[200~", "\033[201~", "\303", "\377", "m",
		";", "12" };
	struct random r = { (uint64_t)_i };
	struct table at;

	sit_in_state(&at, _i % STATES);
	for (int i = 0; i < runner_count(300, 1200); i++) {
		char byte[] = { (char)random_between(&r, 128, 255), '\0' };

		terminal_type(at.t, random_below(&r, 2) ? byte :
			pieces[random_below(&r, sizeof pieces / sizeof *pieces)]);
		if (random_below(&r, 20) == 0)
			usleep(100000);
	}
	terminal_type(at.t, "\033[201~");
	usleep(1200000); /* whatever was begun is over after a second's silence */
	for (int i = 0; i < 5; i++) {
		card_drop(at.t);
		terminal_settle(at.t);
	}
	terminal_wait(at.t, "Drawing");
	table_leave(&at);
}
END_TEST

/* ---- Pastes ---------------------------------------------------------------------------------- */

enum { PASTED = 100000 };

/* Lines of words that would be strokes, lists, ends of lists and of the session. */
static char *pasted(const char *before, const char *after)
{
	static const char words[] = "S = roses* b p 3 & # take\r! < Lay it\rEnter $ > z\n";
	char *all = malloc(PASTED + strlen(before) + strlen(after) + 1), *at = stpcpy(all, before);

	for (int i = 0; i < PASTED; i++)
		*at++ = words[i % (int)(sizeof words - 1)];
	strcpy(at, after);
	return all;
}

static void type_all(struct terminal *t, const char *text)
{
	char part[4096];

	for (size_t length; *text; text += length) {
		length = strnlen(text, sizeof part - 1);
		memcpy(part, text, length);
		part[length] = '\0';
		terminal_type(t, part);
	}
}

/* The plan, its name and whether it is saved, and that the same is in front. */
static void check_no_stroke(struct terminal *t, const char *row, const char *shown)
{
	char *first = strdup(row);

	terminal_keys(t, "ctrl-l");
	terminal_until(t, terminal_answered(t, "\033[2J"));
	terminal_until(t, strcmp(terminal_row(t, 0), first) == 0);
	terminal_wait(t, shown);
	free(first);
}

START_TEST(a_paste_in_marks_is_never_a_stroke)
{
	struct table at;
	char *text = pasted("\033[200~", "\033[201~"), *row;

	sit_in_state(&at, _i);
	row = strdup(terminal_row(at.t, 0));
	type_all(at.t, text);
	check_no_stroke(at.t, row,
		_i == IN_CARD ? "Go to a place" : "Pasted text was ignored");
	free(row);
	free(text);
	table_leave(&at);
}
END_TEST

START_TEST(a_paste_without_marks_into_a_list_or_card_is_never_a_stroke)
{
	static const int fronts[] = { 4, 5, IN_CARD, 7, 8 };
	int state = fronts[_i];
	struct table at;
	char *text = pasted("", ""), *row;

	sit_in_state(&at, state);
	row = strdup(terminal_row(at.t, 0));
	type_all(at.t, text);
	usleep(200000); /* it ends with silence */
	check_no_stroke(at.t, row,
		state == IN_CARD ? "Go to a place" : "Pasted text was ignored");
	free(row);
	free(text);
	table_leave(&at);
}
END_TEST

/* Tens of thousands of strokes. */
START_TEST(a_paste_without_marks_at_rest_is_keys_that_can_be_taken_back)
{
	struct table at;
	char *text = malloc(PASTED + 1);

	for (int i = 0; i < PASTED; i++)
		text[i] = "S b p l = 3 "[i % 12];
	text[PASTED] = '\0';
	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "1 right");
	terminal_wait(at.t, "1 ft across");
	type_all(at.t, text);
	terminal_keys(at.t, "b"); /* the last key, shown with all that came before it */
	terminal_wait(at.t, "not saved");
	terminal_settle(at.t);
	memset(text, '\177', PASTED);
	type_all(at.t, text);
	terminal_wait(at.t, "court.plot, saved");
	terminal_wait(at.t, "There is no stroke to take back.");
	ck_assert_int_ne(shown_letter(at.t, 1, 0), 'S');
	free(text);
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen keys");
	TCase *nothing = suite_case(suite, "nothing"), *pastes = suite_case(suite, "pastes");

	tcase_add_loop_test(nothing, what_means_nothing_changes_nothing, 0, STATES);
	tcase_add_test(nothing, characters_in_pieces_are_characters);
	tcase_add_test(nothing, with_nothing_told_esc_alone_is_answered);
	tcase_add_test(nothing, esc_waits_for_the_rest_of_a_sequence_as_long_as_is_told);
	tcase_add_test(nothing, arrows_and_clicks_in_pieces_stay_what_they_are);
	tcase_add_loop_test(nothing, bytes_at_random_end_no_session, 0, runner_count(3, 100));
	tcase_add_loop_test(pastes, a_paste_in_marks_is_never_a_stroke, 0, STATES);
	tcase_add_loop_test(pastes, a_paste_without_marks_into_a_list_or_card_is_never_a_stroke, 0,
		5);
	tcase_set_timeout(pastes, 120); /* under sanitizers */
	tcase_add_test(pastes, a_paste_without_marks_at_rest_is_keys_that_can_be_taken_back);
	return suite;
}
