/* Every signal that ends a process, in every state: the terminal is given back, its modes too, the
 * strokes are kept and the parent sees the signal. A line that takes no bytes, a stop from outside,
 * a file that may not grow. */

#include "base/memory.h"
#include "screen/signals.h"
#include "screen/terminal.h"
#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <pty.h>
#include <signal.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <termios.h>
#include <unistd.h>

/* ---- Every signal ---------------------------------------------------------------------------- */

static const int endings[] = { SIGHUP, SIGTERM, SIGQUIT, SIGUSR1, SIGUSR2, SIGALRM, SIGVTALRM,
	SIGPROF, SIGIO, SIGPWR, SIGSTKFLT, SIGXCPU, SIGSYS, SIGTRAP, 34, 40, 60 };
static const int crashes[] = { SIGSEGV, SIGABRT, SIGBUS, SIGFPE, SIGILL };
enum { ENDINGS = sizeof endings / sizeof *endings, CRASHES = sizeof crashes / sizeof *crashes };

/* From a plot with a stroke that is not saved, and what is there then. */
static const struct {
	const char *keys, *shown;
} states[] = {
	{ "right", "1 ft across" },
	{ "=", "Trail" },
	{ "enter", "Pegged" },
	{ "right down enter right x4 down x2 enter M a r k enter", "Marked" },
	{ "#", "Which card?" },
	{ "@ 3", "Go to a place" },
	{ "<", "Leave without saving" },
	{ "?", "I want to" },
	{ "! M o u s e enter", "Mouse on" },
};
enum { STATES = sizeof states / sizeof *states };

static void sit_in_state(struct table *at, int state)
{
	table_sit(at, "court.plot", 24, 80);
	terminal_keys(at->t, "S space");
	terminal_wait(at->t, "not saved");
	terminal_keys(at->t, states[state].keys);
	terminal_wait(at->t, states[state].shown);
}

/* The other screen left, pastes and the mouse off, the modes as they were. */
static void check_given_back(struct terminal *t, const struct terminal_end *end)
{
	ck_assert_msg(strstr(end->last, "\033[?1049l") != NULL, "the other screen stays");
	ck_assert_msg(strstr(end->last, "\033[?2004l") != NULL, "pastes stay marked");
	ck_assert_msg(strstr(end->last, "\033[?1000l") != NULL, "the mouse stays on");
	ck_assert_msg(strstr(end->last, "\033[?1l\033>") != NULL, "the keypad stays on");
	ck_assert(!terminal_is_alternate(t) && terminal_cursor(t).is_visible);
	ck_assert_msg(terminal_has_old_modes(t), "the modes stay changed");
}

static void check_ends(int signal, int state)
{
	struct table at;
	struct terminal_end end;

	sit_in_state(&at, state);
	ck_assert(!terminal_has_old_modes(at.t));
	terminal_signal(at.t, signal);
	end = terminal_end(at.t);
	ck_assert_msg(end.signal == signal, "signal %d in state %d: ended by %d, status %d", signal,
		state, end.signal, end.code);
	check_given_back(at.t, &end);
	ck_assert_msg(table_has_rescue(&at), "signal %d in state %d: not rescued", signal, state);
	table_leave(&at);
}

START_TEST(each_signal_that_ends_a_process_gives_back_keeps_and_is_died_of)
{
	int count = runner_count(1, STATES);

	for (int i = 0; i < count; i++)
		check_ends(endings[_i], (_i + i) % STATES);
}
END_TEST

START_TEST(each_state_can_be_ended)
{
	check_ends(_i % 2 ? SIGHUP : SIGTERM, _i);
}
END_TEST

START_TEST(a_crash_gives_the_terminal_back_with_its_modes)
{
	struct table at;
	struct terminal_end end;

	sit_in_state(&at, _i % STATES);
	terminal_signal(at.t, crashes[_i]);
	end = terminal_end(at.t);
	ck_assert_int_eq(end.signal, crashes[_i]);
	check_given_back(at.t, &end);
	ck_assert_ptr_nonnull(strstr(end.last, "parterre crashed"));
	table_leave(&at);
}
END_TEST

START_TEST(signals_that_come_again_and_late_do_no_harm)
{
	struct table at;
	struct terminal_end end;

	sit_in_state(&at, 0);
	for (int i = 0; i < 50; i++)
		terminal_signal(at.t, i % 3 ? SIGTERM : SIGWINCH);
	terminal_signal(at.t, SIGHUP);
	end = terminal_end(at.t);
	ck_assert(end.signal == SIGTERM || end.signal == SIGHUP);
	ck_assert(terminal_has_old_modes(at.t));
	ck_assert(!terminal_is_alternate(at.t));
	ck_assert(table_has_rescue(&at));
	table_leave(&at);
}
END_TEST

/* ---- A crash of the stack -------------------------------------------------------------------- */

static volatile int bottom = -1;

static int deeper(int depth)
{
	volatile char here[4096];

	here[0] = 1;
	return depth == bottom ? here[0] : deeper(depth + 1) + here[0];
}

START_TEST(a_full_stack_is_a_crash_like_others)
{
	char words[200] = "";
	int ends[2], status;
	pid_t child;

	ck_assert_int_eq(pipe(ends), 0);
	child = fork();
	if (child == 0) {
		struct rlimit none = { 0, 0 }, small = { 1 << 20, 1 << 20 };

		setrlimit(RLIMIT_CORE, &none);
		setrlimit(RLIMIT_STACK, &small);
		dup2(ends[1], STDERR_FILENO);
		signals_open();
		exit(deeper(0));
	}
	close(ends[1]);
	ck_assert_int_gt(read(ends[0], words, sizeof words - 1), 0);
	close(ends[0]);
	ck_assert_int_eq(waitpid(child, &status, 0), child);
	ck_assert_int_eq(WTERMSIG(status), SIGSEGV);
	ck_assert_ptr_nonnull(strstr(words, "parterre crashed"));
}
END_TEST

/* ---- Out of memory --------------------------------------------------------------------------- */

_Noreturn static void run_out(void)
{
	struct text message = TEXT_EMPTY;

	setenv("TERM", "xterm-256color", 1);
	if (!terminal_open(&message))
		_exit(1);
	memory_resize(NULL, SIZE_MAX, 2);
	_exit(0);
}

START_TEST(out_of_memory_gives_the_terminal_back_with_its_modes)
{
	struct winsize size = { .ws_row = 24, .ws_col = 80 };
	struct termios before, after;
	char said[20000];
	size_t length = 0;
	int line, status;
	ssize_t got;
	pid_t child = forkpty(&line, NULL, NULL, NULL);

	ck_assert_int_ge(child, 0);
	if (child == 0) {
		getchar(); /* the modes are looked at first */
		run_out();
	}
	ck_assert_int_eq(tcgetattr(line, &before), 0);
	ck_assert_int_eq(ioctl(line, TIOCSWINSZ, &size), 0);
	ck_assert_int_eq(write(line, "\n", 1), 1);
	while ((got = read(line, said + length, sizeof said - 1 - length)) > 0)
		length += (size_t)got;
	said[length] = '\0';
	ck_assert_int_eq(waitpid(child, &status, 0), child);
	ck_assert_int_eq(WEXITSTATUS(status), 2);
	ck_assert_int_eq(tcgetattr(line, &after), 0);
	ck_assert_uint_eq(after.c_lflag, before.c_lflag);
	ck_assert_uint_eq(after.c_iflag, before.c_iflag);
	ck_assert_uint_eq(after.c_oflag, before.c_oflag);
	ck_assert_ptr_nonnull(strstr(said, "\033[?1049l"));
	ck_assert_ptr_nonnull(strstr(strstr(said, "\033[?1049l"), "parterre: out of memory."));
	close(line);
}
END_TEST

/* ---- A line that takes no bytes -------------------------------------------------------------- */

START_TEST(a_line_that_takes_no_bytes_does_not_hold_the_end_up)
{
	static const int signals[] = { SIGTERM, SIGHUP, SIGQUIT, SIGUSR1, SIGSEGV };
	int signal = signals[_i];
	struct table at;

	sit_in_state(&at, 0);
	terminal_stall(at.t);
	terminal_keys(at.t, "right x3 ctrl-l space");
	usleep(200000); /* the program is writing now, as a rule; it may also be about to */
	terminal_signal(at.t, signal);
	ck_assert_int_eq(terminal_end(at.t).signal, signal);
	ck_assert(terminal_has_old_modes(at.t));
	if (signal != SIGSEGV)
		ck_assert(table_has_rescue(&at));
	table_leave(&at);
}
END_TEST

/* At the court, after a command of the shell that starts the program in its own place. */
static void sit_under(struct table *at, const char *command)
{
	char line[5000];

	table_lay_out(at, "court.plot");
	snprintf(line, sizeof line, "%s; exec " BUILD_FOLDER "/parterre %s", command, at->plot);
	at->t = terminal_new(&(struct launch){
		.argv = (const char *[]){ "/bin/bash", "-c", line, NULL } });
	table_wait(at->t);
}

START_TEST(a_line_that_is_gone_is_a_hang_up_even_where_those_are_ignored)
{
	struct table at;

	sit_under(&at, "trap '' HUP");
	terminal_keys(at.t, "S space");
	terminal_wait(at.t, "not saved");
	terminal_hang_up(at.t);
	ck_assert_int_eq(terminal_end(at.t).signal, SIGHUP);
	ck_assert(table_has_rescue(&at));
	table_leave(&at);
}
END_TEST

/* It leaves the cursor, and the colours it wrote in, elsewhere; in a window that is too small the
 * program's own is where the picture begins. */
START_TEST(what_another_program_wrote_is_drawn_over)
{
	static const struct {
		int rows, columns;
		const char *shown;
	} windows[] = { { 24, 80, "? help" }, { 10, 50, "This window has" } };
	int rows = windows[_i].rows, columns = windows[_i].columns;
	struct table at;
	struct text picture;
	char path[4200];

	sit_under(&at, "(until test -e ~/now; do sleep 0.01; done; "
		"printf '\\033[9;20H\\033[1;4;31;42mClosed at noon.') & :");
	terminal_resize(at.t, rows, columns);
	terminal_wait(at.t, windows[_i].shown);
	terminal_settle(at.t);
	picture = shown_picture(at.t, 0, rows, columns);
	snprintf(path, sizeof path, "%s/now", terminal_home(at.t));
	fclose(fopen(path, "w"));
	terminal_wait(at.t, "Closed at noon.");
	terminal_keys(at.t, "ctrl-l");
	terminal_until(at.t, shown_is(at.t, &picture, 0, rows, columns));
	text_fini(&picture);
	table_leave(&at);
}
END_TEST

START_TEST(ignored_signals_stay_ignored)
{
	struct table at;

	sit_under(&at, "trap '' TERM USR1");
	terminal_signal(at.t, SIGTERM);
	terminal_signal(at.t, SIGUSR1);
	terminal_signal(at.t, SIGINT);
	terminal_signal(at.t, SIGPIPE);
	terminal_signal(at.t, SIGXFSZ);
	terminal_keys(at.t, "right");
	terminal_wait(at.t, "1 ft across");
	terminal_keys(at.t, "<");
	ck_assert_int_eq(terminal_end(at.t).code, 0);
	ck_assert(terminal_has_old_modes(at.t));
	table_leave(&at);
}
END_TEST

/* ---- Stopped and continued ------------------------------------------------------------------- */

START_TEST(a_stop_from_outside_is_followed_by_the_whole_picture_and_the_modes)
{
	struct table at;
	struct text picture;

	sit_in_state(&at, _i);
	terminal_settle(at.t);
	picture = shown_picture(at.t, 0, 24, 80);
	terminal_signal(at.t, SIGSTOP);
	terminal_set_old_modes(at.t);
	terminal_signal(at.t, SIGCONT);
	terminal_until(at.t, terminal_answered(at.t, "\033[?1049h"));
	terminal_until(at.t, terminal_answered(at.t, "\033[?2004h"));
	terminal_until(at.t, terminal_answered(at.t, "\033[?1h\033="));
	terminal_until(at.t, terminal_answered(at.t, "court.plot"));
	terminal_until(at.t, shown_is(at.t, &picture, 0, 24, 80));
	text_fini(&picture);
	terminal_until(at.t, !terminal_has_old_modes(at.t));
	if (strcmp(states[_i].keys, "! M o u s e enter") == 0)
		terminal_until(at.t, terminal_answered(at.t, "\033[?1000h"));
	card_drop(at.t);
	terminal_wait(at.t, "Drawing");
	table_leave(&at);
}
END_TEST

START_TEST(a_size_changed_while_stopped_is_followed)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_signal(at.t, SIGSTOP);
	terminal_resize(at.t, 30, 100);
	terminal_signal(at.t, SIGCONT);
	terminal_until(at.t, strstr(terminal_row(at.t, 29), "? help"));
	table_leave(&at);
}
END_TEST

START_TEST(a_stopped_session_can_be_ended_by_its_shell)
{
	static const char *const ways[] = { "", "bg; sleep 0.2; ", "bg; bg; sleep 0.1; " };
	struct table at;

	table_lay_out(&at, "court.plot");
	table_start_in_shell(&at);
	terminal_keys(at.t, "S space");
	terminal_wait(at.t, "not saved");
	terminal_keys(at.t, "ctrl-z");
	terminal_wait(at.t, "Stopped");
	terminal_type(at.t, "set -b\r");
	terminal_type(at.t, ways[_i]);
	terminal_type(at.t, "kill %1\r");
	terminal_wait(at.t, "Terminated");
	ck_assert(table_has_rescue(&at));
	ck_assert(!terminal_is_alternate(at.t));
	terminal_type(at.t, "echo still\" \"here\r");
	terminal_wait(at.t, "still here");
	table_leave(&at);
}
END_TEST

START_TEST(a_stopped_session_keeps_its_work_when_the_line_is_closed)
{
	struct table at;
	long since;

	table_lay_out(&at, "court.plot");
	table_start_in_shell(&at);
	terminal_keys(at.t, "S space");
	terminal_wait(at.t, "not saved");
	terminal_keys(at.t, "ctrl-z");
	terminal_wait(at.t, "Stopped");
	since = terminal_deadline();
	terminal_hang_up(at.t);
	while (!table_has_rescue(&at) && terminal_deadline() - since < 20000)
		usleep(10000);
	ck_assert(table_has_rescue(&at));
	table_leave(&at);
}
END_TEST

/* ---- A file that may not grow ---------------------------------------------------------------- */

START_TEST(a_limit_of_the_size_of_files_is_a_full_disk)
{
	struct table at;

	sit_under(&at, "ulimit -f 0");
	terminal_keys(at.t, "space");
	terminal_wait(at.t, "not saved");
	terminal_keys(at.t, "> >");
	terminal_wait(at.t, "Not saved: cannot write ");
	table_check_file(&at, "  .bbbbbppbbbbb.\n");
	terminal_keys(at.t, "right");
	terminal_wait(at.t, "1 ft across");
	table_leave(&at);

	ck_assert_int_eq(WEXITSTATUS(system("ulimit -f 1; " BUILD_FOLDER "/parterre takeoff "
		"plots/court.plot -o " BUILD_FOLDER "/too-large "
		"2>" BUILD_FOLDER "/too-large.said")), 2);
	ck_assert_int_eq(access(BUILD_FOLDER "/too-large", F_OK), -1);
	ck_assert_int_eq(system("grep -q 'File too large' " BUILD_FOLDER "/too-large.said"), 0);
	unlink(BUILD_FOLDER "/too-large.said");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen signals");
	TCase *ends = suite_case(suite, "ends"), *line = suite_case(suite, "line");
	TCase *stops = suite_case(suite, "stops");

	tcase_add_loop_test(ends,
		each_signal_that_ends_a_process_gives_back_keeps_and_is_died_of, 0, ENDINGS);
	tcase_add_loop_test(ends, each_state_can_be_ended, 0, STATES);
	tcase_add_loop_test(ends, a_crash_gives_the_terminal_back_with_its_modes, 0, CRASHES);
	tcase_add_test(ends, signals_that_come_again_and_late_do_no_harm);
	tcase_add_test(ends, a_full_stack_is_a_crash_like_others);
	tcase_add_test(ends, out_of_memory_gives_the_terminal_back_with_its_modes);
	tcase_add_test(ends, a_limit_of_the_size_of_files_is_a_full_disk);
	tcase_add_test(ends, ignored_signals_stay_ignored);
	tcase_add_loop_test(line, a_line_that_takes_no_bytes_does_not_hold_the_end_up, 0, 5);
	tcase_add_loop_test(line, what_another_program_wrote_is_drawn_over, 0, 2);
	tcase_add_test(line, a_line_that_is_gone_is_a_hang_up_even_where_those_are_ignored);
	tcase_add_loop_test(stops,
		a_stop_from_outside_is_followed_by_the_whole_picture_and_the_modes, 0, STATES);
	tcase_add_test(stops, a_size_changed_while_stopped_is_followed);
	tcase_add_loop_test(stops, a_stopped_session_can_be_ended_by_its_shell, 0, 3);
	tcase_add_test(stops, a_stopped_session_keeps_its_work_when_the_line_is_closed);
	return suite;
}
