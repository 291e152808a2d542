/* The program and its surroundings: kinds of terminals, locales, colours; signals, a dropped
 * line, a second session; that the terminal is given back as it was. */

#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <signal.h>
#include <stdio.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

static void check_given_back(const struct terminal_end *end)
{
	ck_assert_msg(strstr(end->last, "\033[?1049l") != NULL, "the other screen stays");
	ck_assert_msg(strstr(end->last, "\033[?2004l") != NULL, "pastes stay marked");
	ck_assert_msg(strstr(end->last, "\033[?1l\033>") != NULL, "the keypad stays on");
}

static bool is_rescued(const struct table *at)
{
	char path[4200];

	snprintf(path, sizeof path, "%s/.court.plot.journal", at->folder);
	return access(path, F_OK) == 0;
}

/* ---- Kinds ----------------------------------------------------------------------------------- */

static const char *const terms[] = { "xterm-256color", "vt100", "linux", "tmux-256color", "xterm" };
static const char *const no_colors[] = { "NO_COLOR", "NO_COLOR=1", "NO_COLOR=" };
static const char *const locales[] = { "LC_ALL=C.UTF-8", "LC_ALL=C", "LC_ALL=xx_YY.UTF-8" };

enum { TERMS = 5, NO_COLORS = 3, LOCALES = 3 };

/* Soil is 94 of the 256 colours, red (1) of the eight; its letter white. */
static void check_bed(const char *term, const char *no_color, struct cell bed)
{
	bool is_plain = !strcmp(term, "vt100") || !strcmp(no_color, "NO_COLOR=1");
	bool is_fine = strstr(term, "256") != NULL;
	int ground = is_plain ? -1 : is_fine ? 94 : 1, ink = is_plain ? -1 : is_fine ? 231 : 7;

	ck_assert_msg(!strcmp(bed.text, "b") && bed.ground == ground && bed.ink == ink,
		"%s in %d on %d", bed.text, bed.ink, bed.ground);
}

/* Lays, trails, saves, opens a list and a form, leaves. */
static void work(struct terminal *t)
{
	terminal_keys(t, "p space right = down");
	terminal_until(t, shown_letter(t, 1, 1) == 'p' && shown_letter(t, 12, 1) == 'p');
	terminal_wait(t, "Trail");
	terminal_keys(t, "> > #");
	terminal_wait(t, "Which card?");
	terminal_keys(t, "enter");
	terminal_wait(t, "[2 in]");
	terminal_keys(t, "escape <");
}

static void check_picture(struct terminal *t)
{
	ck_assert_str_eq(terminal_cell(t, PLAN_TOP + 6, PLAN_LEFT + 14).text, "S");
	/* Lines are drawn as lines in every locale. */
	ck_assert_int_gt(shown_divider(t), 0);
	ck_assert_str_eq(terminal_cell(t, 5, shown_divider(t)).text, "\342\224\202");
}

static void check_left(struct terminal *t, const char *term)
{
	struct terminal_end end = terminal_end(t);

	ck_assert_int_eq(end.code, 0);
	ck_assert_ptr_nonnull(strstr(end.last, "\033[?2004l"));
	ck_assert_msg(!strstr(end.last, "parterre: "), "something is said of it");
	if (strstr(term, "256"))
		check_given_back(&end);
	ck_assert(!terminal_is_alternate(t) && terminal_cursor(t).is_visible);
}

START_TEST(each_kind_of_terminal_locale_and_colour_shows_the_plan)
{
	const char *term = terms[_i % TERMS], *no_color = no_colors[_i / TERMS % NO_COLORS];
	const char *locale = locales[_i / TERMS / NO_COLORS];
	struct table at;

	table_lay_out(&at, "court.plot");
	table_start(&at, &(struct launch){
		.term = term, .env = (const char *[]){ no_color, locale, NULL } });
	table_wait(at.t);
	terminal_wait(at.t, "court.plot, saved");
	check_bed(term, no_color, terminal_cell(at.t, PLAN_TOP + 1, PLAN_LEFT + 2));
	check_picture(at.t);
	work(at.t);
	check_left(at.t, term);
	table_leave(&at);
}
END_TEST

START_TEST(a_name_that_the_locale_cannot_show_has_question_marks)
{
	struct table at;
	const char plot[] = "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Caf\303\251 "
		"bed\"\n\n"
		"ground 2 x 1\n  b.\n";

	table_lay_out(&at, "court.plot");
	table_write(&at, plot);
	table_start(&at, &(struct launch){ .env = (const char *[]){ "LC_ALL=C", NULL } });
	terminal_wait(at.t, "hand b Caf? bed");
	terminal_keys(at.t, "#");
	terminal_wait(at.t, "b Caf? bed  ");
	terminal_free(at.t);
	table_start(&at, NULL);
	terminal_wait(at.t, "hand b Caf\303\251 bed");
	table_leave(&at);
}
END_TEST

struct refusal {
	const char *term, *words;
};

static const struct refusal refusals[] = {
	{ "no-such-terminal", "the terminal type \"no-such-terminal\" is unknown here" },
	{ "dumb", "the terminal type \"dumb\" is unknown here, or too simple" },
	{ "", "TERM does not say what type the terminal is" },
};

START_TEST(a_terminal_that_cannot_draw_is_refused_with_what_helps)
{
	struct table at;

	table_lay_out(&at, "court.plot");
	table_start(&at, &(struct launch){ .term = refusals[_i].term });
	struct terminal_end end = terminal_end(at.t);

	ck_assert_int_eq(end.code, 2);
	ck_assert_ptr_nonnull(strstr(end.last, refusals[_i].words));
	ck_assert_ptr_nonnull(strstr(end.last, "TERM=xterm-256color parterre FILE"));
	table_leave(&at);
}
END_TEST

static int run(const char *line, char *output, size_t size)
{
	FILE *pipe = popen(line, "r");

	ck_assert_ptr_nonnull(pipe);
	output[fread(output, 1, size - 1, pipe)] = '\0';
	return WEXITSTATUS(pclose(pipe));
}

START_TEST(without_a_terminal_the_takeoff_is_named)
{
	char output[1000];

	ck_assert_int_eq(run(BUILD_FOLDER "/parterre plots/court.plot 2>&1 </dev/null", output,
		sizeof output), 2);
	ck_assert_ptr_nonnull(strstr(output, "drawing needs a terminal"));
	ck_assert_ptr_nonnull(strstr(output, "parterre takeoff FILE"));
}
END_TEST

START_TEST(a_plot_with_an_error_is_refused_before_the_screen_is_touched)
{
	struct table at;

	table_lay_out(&at, "court.plot");
	table_write(&at, "parterre-plot 9\n");
	table_start(&at, NULL);
	struct terminal_end end = terminal_end(at.t);

	ck_assert_int_eq(end.code, 2);
	ck_assert_ptr_nonnull(strstr(end.last, "court.plot:1:15: found 9"));
	ck_assert(!terminal_sent(at.t, "\033[?1049h"));
	table_leave(&at);
}
END_TEST

/* ---- Ends ------------------------------------------------------------------------------------ */

START_TEST(termination_rescues_the_work_gives_the_terminal_back_and_is_seen_by_the_parent)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "S space");
	terminal_wait(at.t, "not saved");
	terminal_signal(at.t, SIGTERM);
	struct terminal_end end = terminal_end(at.t);

	ck_assert_int_eq(end.signal, SIGTERM);
	check_given_back(&end);
	ck_assert(is_rescued(&at));
	table_leave(&at);
}
END_TEST

START_TEST(termination_inside_a_form_or_a_question_rescues_too)
{
	static const char *const inside[] = { "#", "# enter", "<" };

	for (size_t i = 0; i < sizeof inside / sizeof *inside; i++) {
		struct table at;

		table_sit(&at, "court.plot", 24, 80);
		terminal_keys(at.t, "S space");
		terminal_keys(at.t, inside[i]);
		terminal_wait(at.t, "Esc");
		terminal_signal(at.t, SIGTERM);
		ck_assert_int_eq(terminal_end(at.t).signal, SIGTERM);
		ck_assert(is_rescued(&at));
		table_leave(&at);
	}
}
END_TEST

START_TEST(nothing_is_rescued_where_nothing_is_unsaved)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "S space backspace");
	terminal_wait(at.t, "Taken back");
	terminal_signal(at.t, SIGTERM);
	ck_assert_int_eq(terminal_end(at.t).signal, SIGTERM);
	ck_assert(!is_rescued(&at));
	table_leave(&at);
}
END_TEST

START_TEST(a_dropped_line_rescues_the_work_which_is_offered_and_taken_up)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "S space");
	terminal_wait(at.t, "not saved");
	terminal_hang_up(at.t);
	ck_assert_int_eq(terminal_end(at.t).signal, SIGHUP);
	terminal_free(at.t);
	ck_assert(is_rescued(&at));

	/* To look at the saved plot leaves the question for the next time. */
	table_start(&at, NULL);
	terminal_wait(at.t, "was rescued.");
	terminal_wait(at.t, "Enter pick");
	ck_assert_int_ne(shown_letter(at.t, 0, 0), 'S');
	terminal_keys(at.t, "L o o k enter");
	terminal_wait(at.t, "looking only");
	terminal_keys(at.t, "space");
	terminal_wait(at.t, "rescued work waits");
	terminal_keys(at.t, "<");
	ck_assert_int_eq(terminal_end(at.t).code, 0);
	terminal_free(at.t);

	table_start(&at, NULL);
	terminal_wait(at.t, "was rescued.");
	terminal_keys(at.t, "enter");
	terminal_until(at.t, shown_letter(at.t, 0, 0) == 'S');
	terminal_wait(at.t, "court.plot, not saved");
	terminal_keys(at.t, "> >");
	terminal_wait(at.t, "court.plot, saved");
	ck_assert(!is_rescued(&at));
	terminal_keys(at.t, "<");
	ck_assert_int_eq(terminal_end(at.t).code, 0);
	table_leave(&at);
}
END_TEST

START_TEST(rescued_work_survives_a_question_that_is_cut_off)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "S space");
	terminal_wait(at.t, "not saved");
	terminal_signal(at.t, SIGTERM);
	terminal_end(at.t);
	terminal_free(at.t);
	table_start(&at, NULL);
	terminal_wait(at.t, "was rescued.");
	terminal_signal(at.t, SIGTERM);
	terminal_end(at.t);
	terminal_free(at.t);
	table_start(&at, NULL);
	terminal_wait(at.t, "was rescued.");
	terminal_keys(at.t, "enter");
	terminal_until(at.t, shown_letter(at.t, 0, 0) == 'S');
	table_leave(&at);
}
END_TEST

START_TEST(a_session_that_is_killed_leaves_its_strokes)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "S = right x6 down left x6");
	terminal_until(at.t, shown_letter(at.t, 0, 1) == 'S');
	terminal_signal(at.t, SIGKILL);
	ck_assert_int_eq(terminal_end(at.t).signal, SIGKILL);
	terminal_free(at.t);
	ck_assert(is_rescued(&at));
	table_start(&at, NULL);
	terminal_wait(at.t, "was rescued.");
	terminal_keys(at.t, "enter");
	terminal_until(at.t, shown_letter(at.t, 0, 0) == 'S');
	table_leave(&at);
}
END_TEST

START_TEST(a_crash_gives_the_terminal_back)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_signal(at.t, SIGSEGV);
	struct terminal_end end = terminal_end(at.t);

	ck_assert_int_eq(end.signal, SIGSEGV);
	check_given_back(&end);
	ck_assert_ptr_nonnull(strstr(end.last, "parterre crashed"));
	table_leave(&at);
}
END_TEST

START_TEST(an_interrupt_from_outside_ends_nothing)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_signal(at.t, SIGINT);
	terminal_signal(at.t, SIGPIPE);
	terminal_keys(at.t, "right");
	terminal_wait(at.t, "1 ft across");
	table_leave(&at);
}
END_TEST

START_TEST(ctrl_z_goes_to_the_shell_and_fg_comes_back_with_all_keys)
{
	struct table at;

	table_lay_out(&at, "court.plot");
	table_start_in_shell(&at);
	for (int i = 0; i < 2; i++) {
		if (i == 0)
			terminal_keys(at.t, "ctrl-z");
		else
			terminal_keys(at.t, "! P a u enter");
		terminal_wait(at.t, "Stopped");
		ck_assert(!terminal_is_alternate(at.t));
		terminal_type(at.t, "fg\r");
		terminal_wait(at.t, "court.plot, saved");
		ck_assert(terminal_is_alternate(at.t));
	}
	terminal_keys(at.t, "right");
	terminal_wait(at.t, "1 ft across");
	terminal_type(at.t, "\033[200~S\033[201~");
	terminal_wait(at.t, "Pasted text was ignored");
	terminal_keys(at.t, "<");
	terminal_until(at.t, !terminal_is_alternate(at.t));
	terminal_type(at.t, "echo left with $?\r");
	terminal_wait(at.t, "left with 0");
	table_leave(&at);
}
END_TEST

START_TEST(ctrl_z_in_a_form_keeps_what_was_typed)
{
	struct table at;

	table_lay_out(&at, "court.plot");
	table_start_in_shell(&at);
	terminal_keys(at.t, "@");
	terminal_wait(at.t, "Go to a place");
	terminal_type(at.t, "11 ft");
	terminal_keys(at.t, "ctrl-z");
	terminal_wait(at.t, "Stopped");
	terminal_type(at.t, "fg\r");
	terminal_wait(at.t, "Go to a place");
	terminal_wait(at.t, "11 ft");
	terminal_keys(at.t, "enter enter");
	terminal_wait(at.t, "11 ft across");
	table_leave(&at);
}
END_TEST

/* ---- Two sessions ---------------------------------------------------------------------------- */

START_TEST(a_second_session_looks_and_does_not_write)
{
	struct table at;
	struct terminal *second;

	table_sit(&at, "court.plot", 24, 80);
	second = table_start_another(&at, NULL);
	terminal_wait(second, "court.plot, looking only");
	terminal_wait(second, "? help");
	terminal_keys(second, "space");
	terminal_wait(second, "Looking only: another session (process ");
	terminal_keys(second, "> >");
	terminal_wait(second, "Looking only: another session (process ");
	ck_assert_int_ne(shown_letter(second, 0, 0), 'b');
	terminal_keys(second, "right tab");
	terminal_until(second, shown_page(second, "Edges"));
	terminal_signal(second, SIGTERM);
	ck_assert_int_eq(terminal_end(second).signal, SIGTERM);
	ck_assert(!is_rescued(&at));
	terminal_free(second);

	terminal_keys(at.t, "space");
	terminal_wait(at.t, "not saved");
	terminal_keys(at.t, "> >");
	terminal_wait(at.t, "Saved in ");
	table_leave(&at);
}
END_TEST

static void add_kinds(TCase *kinds)
{
	tcase_add_loop_test(kinds, each_kind_of_terminal_locale_and_colour_shows_the_plan, 0,
		TERMS * NO_COLORS * LOCALES);
	tcase_add_test(kinds, a_name_that_the_locale_cannot_show_has_question_marks);
	tcase_add_loop_test(kinds, a_terminal_that_cannot_draw_is_refused_with_what_helps, 0,
		(int)(sizeof refusals / sizeof *refusals));
	tcase_add_test(kinds, without_a_terminal_the_takeoff_is_named);
	tcase_add_test(kinds, a_plot_with_an_error_is_refused_before_the_screen_is_touched);
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen ends");
	TCase *ends = suite_case(suite, "ends"), *pause = suite_case(suite, "pause");

	add_kinds(suite_case(suite, "kinds"));
	tcase_add_test(ends,
		termination_rescues_the_work_gives_the_terminal_back_and_is_seen_by_the_parent);
	tcase_add_test(ends, termination_inside_a_form_or_a_question_rescues_too);
	tcase_add_test(ends, nothing_is_rescued_where_nothing_is_unsaved);
	tcase_add_test(ends, a_dropped_line_rescues_the_work_which_is_offered_and_taken_up);
	tcase_add_test(ends, rescued_work_survives_a_question_that_is_cut_off);
	tcase_add_test(ends, a_session_that_is_killed_leaves_its_strokes);
	tcase_add_test(ends, a_crash_gives_the_terminal_back);
	tcase_add_test(ends, an_interrupt_from_outside_ends_nothing);
	tcase_add_test(ends, a_second_session_looks_and_does_not_write);
	tcase_add_test(pause, ctrl_z_goes_to_the_shell_and_fg_comes_back_with_all_keys);
	tcase_add_test(pause, ctrl_z_in_a_form_keeps_what_was_typed);
	return suite;
}
