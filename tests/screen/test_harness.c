/* The tests' own tools: the terminal, golden files, scratch folders, numbers that look random. */

#include "support/golden.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/scratch.h"
#include "support/terminal.h"

#include <limits.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

/* The terminal: /bin/sh plays the program. */

#define SHELL(script) { "/bin/sh", "-c", script, NULL }

static struct terminal *shell_at(const char *script, const char *term)
{
	return terminal_new(&(struct launch) {
		.argv = (const char *[]) SHELL(script),
		.term = term,
	});
}

static struct terminal *shell(const char *script)
{
	return shell_at(script, NULL);
}

START_TEST(text_stands_where_the_program_put_it)
{
	struct terminal *t = shell("printf '\\033[3;5Hm\\302\\262 \\345\\272\\255!'; read hold");

	terminal_wait(t, "!");
	const char *row = terminal_row(t, 2);
	ck_assert_int_eq(strncmp(row, "    m\302\262 \345\272\255!  ", 14), 0);
	ck_assert_uint_eq(strlen(row), 80 + 1 + 1);   /* a byte more for each; one column less */
	ck_assert_str_eq(terminal_cell(t, 2, 5).text, "\302\262");
	ck_assert_str_eq(terminal_cell(t, 2, 7).text, "\345\272\255");
	ck_assert_str_eq(terminal_cell(t, 2, 8).text, "");
	ck_assert_str_eq(terminal_cell(t, 2, 9).text, "!");
	ck_assert_str_eq(terminal_cell(t, 0, 0).text, " ");
	ck_assert(!terminal_shows(t, "elsewhere"));
	terminal_free(t);
}
END_TEST

START_TEST(a_character_that_comes_in_pieces_is_whole)
{
	struct terminal *t = shell("printf '\\017a\\342'; sleep 0.1; printf '\\226'; sleep 0.1; "
		"printf '\\222b'; read hold");

	terminal_wait(t, "a\342\226\222b");
	terminal_free(t);
}
END_TEST

START_TEST(a_cell_has_its_colours_and_attributes)
{
	struct terminal *t = shell("printf '\\033[1;4;31;48;5;200mX\\033[0;7mY\\033[0mZ'; read "
		"hold");

	terminal_wait(t, "XYZ");
	struct cell x = terminal_cell(t, 0, 0), y = terminal_cell(t, 0, 1);
	struct cell z = terminal_cell(t, 0, 2);
	ck_assert(x.bold && x.underline && !x.reverse);
	ck_assert_int_eq(x.ink, 1);
	ck_assert_int_eq(x.ground, 200);
	ck_assert(y.reverse && !y.bold && !y.underline);
	ck_assert(!z.reverse && z.ink == -1 && z.ground == -1);
	terminal_free(t);
}
END_TEST

START_TEST(the_cursor_and_the_alternate_screen_are_seen)
{
	struct terminal *t = shell("tput smcup; tput civis; tput cup 6 9; read hold;"
		"tput cnorm; tput rmcup; echo done; read hold");

	terminal_until(t, terminal_cursor(t).row == 6 && terminal_cursor(t).column == 9);
	ck_assert(terminal_is_alternate(t));
	ck_assert(!terminal_cursor(t).is_visible);
	ck_assert(terminal_sent(t, "\033[?1049h"));
	ck_assert(!terminal_sent(t, "\033[?1049l"));
	terminal_keys(t, "enter");
	terminal_wait(t, "done");
	ck_assert(!terminal_is_alternate(t));
	ck_assert(terminal_cursor(t).is_visible);
	terminal_free(t);
}
END_TEST

struct sending {
	const char *term, *keys, *hex;
};

/* Sequences as xterm, tmux and the VT100 document them; od prints the bytes. */
static const struct sending sendings[] = {
	{ "xterm-256color", "up", "1b 4f 41" },
	{ "xterm-256color", "down x3", "1b 4f 42 1b 4f 42 1b 4f 42" },
	{ "xterm-256color", "home end", "1b 4f 48 1b 4f 46" },
	{ "xterm-256color", "delete pageup", "1b 5b 33 7e 1b 5b 35 7e" },
	{ "xterm-256color", "backspace tab", "7f 09" },
	{ "xterm-256color", "b space * ctrl-c escape", "62 20 2a 03 1b" },
	{ "xterm-256color", "shift-tab enter", "1b 5b 5a 0d" },
	{ "tmux-256color", "home", "1b 5b 31 7e" },
	{ "vt100", "left right", "1b 4f 44 1b 4f 43" },
};

START_TEST(keys_send_what_the_terminal_sends_for_them)
{
	struct sending sending = sendings[_i];
	char script[200], expected[200];
	int bytes = 1;

	for (const char *c = sending.hex; *c; c++)
		bytes += *c == ' ';
	snprintf(script, sizeof script, "stty raw -echo; printf 'ready '; dd bs=1 count=%d "
		"2>/dev/null | od -An -v -tx1 -w99; echo done; read hold", bytes + 1);
	struct terminal *t = shell_at(script, sending.term);

	terminal_wait(t, "ready");
	terminal_keys(t, sending.keys);
	/* stands last only if the keys sent as many bytes as they should */
	terminal_keys(t, ".");
	snprintf(expected, sizeof expected, "ready  %s 2e ", sending.hex);
	terminal_wait(t, "done");
	ck_assert_msg(terminal_shows(t, expected), "%s", terminal_row(t, 0));
	terminal_free(t);
}
END_TEST

START_TEST(a_program_is_told_the_size_and_its_changes)
{
	struct terminal *t = terminal_new(&(struct launch) {
		.argv = (const char *[]) SHELL("trap 'echo now $(stty size)' WINCH; stty size;"
			" while :; do read hold; done"),
		.rows = 40, .columns = 132,
	});

	terminal_wait(t, "40 132");
	terminal_resize(t, 10, 30);
	terminal_wait(t, "now 10 30");
	ck_assert_uint_eq(strlen(terminal_row(t, 9)), 30);
	terminal_resize(t, 1, 1);
	terminal_resize(t, 24, 80);
	terminal_wait(t, "now 24 80");
	terminal_free(t);
}
END_TEST

START_TEST(the_environment_is_the_same_whoever_tests)
{
	setenv("LANG", "de_DE.UTF-8", 1);
	setenv("COLUMNS", "33", 1);
	struct terminal *t = terminal_new(&(struct launch) {
		.argv = (const char *[]) SHELL("env | grep -v PWD | sort; read hold"),
		.env = (const char *[]) { "NO_COLOR=1", "ESCDELAY", NULL },
	});

	terminal_wait(t, "TERM=xterm-256color");
	ck_assert(terminal_shows(t, "NO_COLOR=1"));
	ck_assert(terminal_shows(t, "LC_ALL=C.UTF-8"));
	ck_assert(!terminal_shows(t, "ESCDELAY"));
	ck_assert(!terminal_shows(t, "LANG"));
	ck_assert(!terminal_shows(t, "COLUMNS"));
	ck_assert_int_eq(access(terminal_home(t), W_OK), 0);
	ck_assert(terminal_sent(t, terminal_home(t)));
	terminal_free(t);
}
END_TEST

START_TEST(a_terminal_may_have_no_name)
{
	struct terminal *t = shell_at("env; echo done; read hold", "");

	terminal_wait(t, "done");
	ck_assert(terminal_shows(t, "HOME="));
	ck_assert(!terminal_shows(t, "TERM="));
	terminal_free(t);
}
END_TEST

START_TEST(what_goes_is_waited_for_as_well)
{
	struct terminal *t = shell("echo first; read hold; sleep 0.1; clear; echo second; read "
		"hold");

	terminal_wait(t, "first");
	terminal_keys(t, "enter");
	ck_assert(terminal_shows(t, "first"));
	terminal_wait_gone(t, "first");
	ck_assert(!terminal_shows(t, "first"));
	terminal_wait(t, "second");
	terminal_free(t);
}
END_TEST

START_TEST(a_shell_stops_and_resumes_what_it_runs)
{
	struct terminal *t = terminal_new(&(struct launch) {
		.argv = (const char *[]) { "/bin/bash", "--norc", "-i", NULL },
		.env = (const char *[]) { "PS1=ready> ", NULL },
	});

	terminal_wait(t, "ready>");
	terminal_type(t, "sh -c 'echo begun; read a; echo $a again; exit 5'\r");
	terminal_until(t, !strncmp(terminal_row(t, 1), "begun ", 6));
	terminal_keys(t, "ctrl-z");
	terminal_wait(t, "Stopped");
	terminal_until(t, !strncmp(terminal_row(t, terminal_cursor(t).row), "ready> ", 7));
	terminal_type(t, "fg\r");
	terminal_until(t, !strncmp(terminal_row(t, terminal_cursor(t).row - 1), "sh -c ", 6));
	terminal_type(t, "once\r");
	terminal_wait(t, "once again");
	terminal_until(t, !strncmp(terminal_row(t, terminal_cursor(t).row), "ready> ", 7));
	terminal_type(t, "exit\r");
	ck_assert_int_eq(terminal_end(t).code, 5);
	terminal_free(t);
}
END_TEST

START_TEST(the_end_tells_the_exit_status_and_the_last_bytes)
{
	struct terminal *t = shell("stty -echo; printf first; read hold; printf '\\033[?25hlast'; "
		"exit 7");

	terminal_wait(t, "first");
	terminal_keys(t, "enter");
	struct terminal_end end = terminal_end(t);
	ck_assert_int_eq(end.code, 7);
	ck_assert_int_eq(end.signal, 0);
	ck_assert_str_eq(end.last, "\033[?25hlast");
	terminal_free(t);
}
END_TEST

START_TEST(a_signal_reaches_the_program)
{
	struct terminal *t = shell("trap 'echo caught; kill -s KILL $$' TERM; echo ready;"
		" while :; do read hold; done");

	terminal_wait(t, "ready");
	terminal_signal(t, SIGTERM);
	struct terminal_end end = terminal_end(t);
	ck_assert_int_eq(end.signal, SIGKILL);
	ck_assert_int_eq(end.code, -1);
	ck_assert_str_eq(end.last, "caught\r\n");
	terminal_free(t);
}
END_TEST

/* Even where nohup has begun the tests. */
START_TEST(a_dropped_line_hangs_the_program_up)
{
	void (*before)(int) = signal(SIGHUP, SIG_IGN);
	struct terminal *t = shell("echo ready; read hold; read hold");

	terminal_wait(t, "ready");
	terminal_hang_up(t);
	ck_assert_int_eq(terminal_end(t).signal, SIGHUP);
	signal(SIGHUP, before);
	terminal_free(t);
}
END_TEST

START_TEST(a_program_that_is_not_there_ends_with_127)
{
	struct terminal *t = terminal_new(&(struct launch) {
		.argv = (const char *[]) { BUILD_FOLDER "/no-such-program", NULL },
	});

	ck_assert_int_eq(terminal_end(t).code, 127);
	terminal_free(t);
}
END_TEST

START_TEST(questions_to_the_terminal_are_answered)
{
	struct terminal *t = shell("stty raw -echo; printf '\\033[4;7H\\033[6n';"
		" dd bs=1 count=6 2>/dev/null | od -An -tc; read hold");

	terminal_wait(t, "033   [   4   ;   7   R");
	terminal_free(t);
}
END_TEST

START_TEST(bytes_and_frames_are_counted_since_the_last_count)
{
	struct terminal *t = shell("stty -echo; printf 1234567; read hold; printf abc; read hold");

	terminal_wait(t, "1234567");
	struct traffic first = terminal_settle(t);
	ck_assert_uint_eq(first.bytes, 7);
	terminal_keys(t, "enter");
	terminal_wait(t, "abc");
	struct traffic second = terminal_settle(t);
	ck_assert_uint_eq(second.bytes, 3);
	ck_assert_int_eq(second.reads, 1);
	ck_assert_uint_eq(terminal_settle(t).bytes, 0);
	terminal_free(t);
}
END_TEST

START_TEST(what_is_drawn_with_what_is_waited_for_is_there_too)
{
	struct terminal *t = shell("printf one; i=0; while [ $i -lt 300 ]; do i=$((i + 1)); done;"
		" printf ' two'; read hold");

	terminal_wait(t, "one");
	ck_assert(terminal_shows(t, "one two"));
	terminal_free(t);
}
END_TEST

START_TEST(more_than_the_line_holds_is_typed_while_the_program_writes)
{
	enum { MANY = 200000 };
	struct terminal *t = shell("stty raw -echo; printf ready; head -c 200000 | tee /dev/tty | "
		"wc -c; echo done; read hold");
	char *pasted = malloc(MANY + 1);

	memset(pasted, 'p', MANY);
	pasted[MANY] = 0;
	terminal_wait(t, "ready");
	terminal_type(t, pasted);
	terminal_wait(t, "done");
	ck_assert(terminal_sent(t, "200000"));
	ck_assert(terminal_sent(t, pasted));
	free(pasted);
	terminal_free(t);
}
END_TEST

/* Golden files */

START_TEST(a_golden_text_is_written_only_when_asked)
{
	char *folder = scratch_new(), *path;

	ck_assert_int_gt(asprintf(&path, "%s/text", folder), 0);
	setenv("UPDATE_GOLDEN", "1", 1);
	golden_check_file(path, "one\ntwo\n");
	unsetenv("UPDATE_GOLDEN");
	golden_check_file(path, "one\ntwo\n");
	setenv("UPDATE_GOLDEN", "1", 1);
	golden_check_file(path, "");
	unsetenv("UPDATE_GOLDEN");
	golden_check_file(path, "");
	scratch_remove(folder);
	free(path);
}
END_TEST

START_TEST(a_scratch_folder_is_new_and_goes_with_all_in_it)
{
	char *one = scratch_new(), *two = scratch_new(), *inner;

	ck_assert_str_ne(one, two);
	ck_assert_int_gt(asprintf(&inner, "%s/file", one), 0);
	fclose(fopen(inner, "w"));
	ck_assert_int_eq(access(inner, F_OK), 0);
	scratch_remove(one);
	ck_assert_int_eq(access(inner, F_OK), -1);
	inner[strlen(inner) - strlen("/file")] = 0;
	ck_assert_int_eq(access(inner, F_OK), -1);
	scratch_remove(two);
	free(inner);
}
END_TEST

/* Numbers */

START_TEST(the_numbers_are_those_of_splitmix64)
{
	/* The first outputs for seed 1234567, as printed with the algorithm in many places; from
	 * memory, and the same by a second writing of its published steps in another language. */
	static const uint64_t published[] = {
		UINT64_C(6457827717110365317), UINT64_C(3203168211198807973),
		UINT64_C(9817491932198370423), UINT64_C(4593380528125082431),
	};
	struct random r = { 1234567 };

	for (size_t i = 0; i < sizeof published / sizeof *published; i++)
		ck_assert_uint_eq(random_next(&r), published[i]);
}
END_TEST

START_TEST(numbers_reach_both_ends_and_stay_between)
{
	struct random r = { 1 };
	int seen[3] = { 0 };

	for (int i = 0; i < 300; i++) {
		int n = random_between(&r, -1, 1);
		ck_assert(n >= -1 && n <= 1);
		seen[n + 1]++;
		ck_assert_int_lt(random_below(&r, 5), 5);
	}
	ck_assert(seen[0] > 60 && seen[1] > 60 && seen[2] > 60);
	/* Between the least and the most of all, half are below nought. */
	seen[0] = 0;
	for (int i = 0; i < 300; i++)
		seen[0] += random_between(&r, INT_MIN, INT_MAX) < 0;
	ck_assert(seen[0] > 100 && seen[0] < 200);
}
END_TEST

/* What a failing test does, seen from outside: this program runs itself with HARNESS_FAILS set,
 * which gives it the tests below, made to fail, instead of its own. */

START_TEST(waits_in_vain)
{
	struct terminal *t = shell("trap '' HUP; echo pid $$; printf '\\033[5;1Hthe fifth'; exec "
		"sleep 9");

	setenv("CK_TIMEOUT_MULTIPLIER", "0.04", 1);
	terminal_wait(t, "what never comes");
}
END_TEST

START_TEST(waits_for_a_program_that_ended)
{
	terminal_wait(shell("echo gone"), "what never comes");
}
END_TEST

START_TEST(ends_a_program_with_a_fault)
{
	/* As a sanitizer does: a report in the file it was told. */
	struct terminal *t = shell("echo the report >${ASAN_OPTIONS#log_path=}.1");

	terminal_end(t);
}
END_TEST

START_TEST(differs_from_its_file)
{
	char *folder = scratch_new(), *path;

	ck_assert_int_gt(asprintf(&path, "%s/text", folder), 0);
	setenv("UPDATE_GOLDEN", "1", 1);
	golden_check_file(path, "one\ntwo\nthree\n");
	unsetenv("UPDATE_GOLDEN");
	golden_check_file(path, "one\ntow\nthree\n");
}
END_TEST

START_TEST(is_shorter_than_its_file)
{
	char *folder = scratch_new(), *path;

	ck_assert_int_gt(asprintf(&path, "%s/text", folder), 0);
	setenv("UPDATE_GOLDEN", "1", 1);
	golden_check_file(path, "one\ntwo\n");
	unsetenv("UPDATE_GOLDEN");
	golden_check_file(path, "one\n");
}
END_TEST

static const char fails[] = "HARNESS_FAILS";

/* Runs this program again; its exit status. What it prints goes to output[size], what its tests
 * leave behind goes with it. */
static int run_self(const char *variable, const char *value, char *output, size_t size)
{
	char self[4096] = "", line[4200], *folder = scratch_new();
	FILE *run;
	int status;

	ck_assert_int_gt(readlink("/proc/self/exe", self, sizeof self - 1), 0);
	snprintf(line, sizeof line, "%s 2>&1", self);
	setenv(variable, value, 1);
	setenv("SCRATCH_FOLDER", folder, 1);
	run = popen(line, "r");
	unsetenv("SCRATCH_FOLDER");
	unsetenv(variable);
	ck_assert_ptr_nonnull(run);
	output[fread(output, 1, size - 1, run)] = 0;
	status = pclose(run);
	scratch_remove(folder);
	return WEXITSTATUS(status);
}

/* Whether it has ended, though nobody may have waited for it yet. */
static bool has_ended(long program)
{
	char path[64], state = 'Z';

	snprintf(path, sizeof path, "/proc/%ld/stat", program);
	FILE *stat = fopen(path, "r");
	if (!stat)
		return true;
	if (fscanf(stat, "%*d (%*[^)]) %c", &state) != 1)
		state = 'Z';
	fclose(stat);
	return state == 'Z' || state == 'X';
}

START_TEST(a_failed_wait_shows_the_screen_and_leaves_no_program)
{
	char output[20000];

	ck_assert_int_eq(run_self(fails, "1", output, sizeof output), EXIT_FAILURE);
	ck_assert_ptr_nonnull(strstr(output, "  4|the fifth   "));
	ck_assert_ptr_nonnull(strstr(output, "waited in vain for: what never comes"));
	ck_assert_ptr_nonnull(strstr(output, "what never comes (the program has ended)"));
	ck_assert_ptr_nonnull(strstr(output, "Checks: 5, Failures: 5, Errors: 0"));

	const char *shown = strstr(output, "|pid ");
	ck_assert_ptr_nonnull(shown);
	long program = strtol(shown + strlen("|pid "), NULL, 10);
	ck_assert_int_gt(program, 1);
	for (int tries = 0; !has_ended(program) && tries < 1000; tries++)
		usleep(1000);
	ck_assert_msg(has_ended(program), "program %ld lives on", program);
}
END_TEST

START_TEST(a_failed_golden_text_names_the_line_and_both_texts)
{
	char output[20000];

	run_self(fails, "1", output, sizeof output);
	ck_assert_ptr_nonnull(strstr(output, "/text:2:\n found    \"tow\"\n expected \"two\""));
	ck_assert_ptr_nonnull(strstr(output, "/text:2:\n found    \"\"\n expected \"two\""));
}
END_TEST

START_TEST(a_sanitizers_report_fails_the_test_and_is_shown)
{
	char output[20000];

	run_self(fails, "1", output, sizeof output);
	ck_assert_ptr_nonnull(strstr(output, "the report\n"));
	ck_assert_ptr_nonnull(strstr(output, "the program was at fault"));
}
END_TEST

START_TEST(a_run_of_no_tests_has_failed)
{
	char output[20000];

	ck_assert_int_eq(run_self("CK_RUN_CASE", "no such case", output, sizeof output),
		EXIT_FAILURE);
	ck_assert_ptr_nonnull(strstr(output, "Checks: 0"));
}
END_TEST

static void add_terminal(TCase *terminal)
{
	tcase_add_test(terminal, text_stands_where_the_program_put_it);
	tcase_add_test(terminal, a_character_that_comes_in_pieces_is_whole);
	tcase_add_test(terminal, a_cell_has_its_colours_and_attributes);
	tcase_add_test(terminal, the_cursor_and_the_alternate_screen_are_seen);
	tcase_add_loop_test(terminal, keys_send_what_the_terminal_sends_for_them, 0,
		(int)(sizeof sendings / sizeof *sendings));
	tcase_add_test(terminal, a_program_is_told_the_size_and_its_changes);
	tcase_add_test(terminal, the_environment_is_the_same_whoever_tests);
	tcase_add_test(terminal, a_terminal_may_have_no_name);
	tcase_add_test(terminal, what_goes_is_waited_for_as_well);
	tcase_add_test(terminal, a_shell_stops_and_resumes_what_it_runs);
	tcase_add_test(terminal, the_end_tells_the_exit_status_and_the_last_bytes);
	tcase_add_test(terminal, a_signal_reaches_the_program);
	tcase_add_test(terminal, a_dropped_line_hangs_the_program_up);
	tcase_add_test(terminal, a_program_that_is_not_there_ends_with_127);
	tcase_add_test(terminal, questions_to_the_terminal_are_answered);
	tcase_add_test(terminal, bytes_and_frames_are_counted_since_the_last_count);
	tcase_add_test(terminal, what_is_drawn_with_what_is_waited_for_is_there_too);
	tcase_add_test(terminal, more_than_the_line_holds_is_typed_while_the_program_writes);
}

static void add_made_to_fail(TCase *made_to_fail)
{
	tcase_add_test(made_to_fail, waits_in_vain);
	tcase_add_test(made_to_fail, waits_for_a_program_that_ended);
	tcase_add_test(made_to_fail, ends_a_program_with_a_fault);
	tcase_add_test(made_to_fail, differs_from_its_file);
	tcase_add_test(made_to_fail, is_shorter_than_its_file);
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("harness");

	if (getenv(fails)) {
		add_made_to_fail(suite_case(suite, "made to fail"));
		return suite;
	}
	add_terminal(suite_case(suite, "terminal"));

	TCase *files = suite_case(suite, "files");
	tcase_add_test(files, a_golden_text_is_written_only_when_asked);
	tcase_add_test(files, a_scratch_folder_is_new_and_goes_with_all_in_it);

	TCase *numbers = suite_case(suite, "numbers");
	tcase_add_test(numbers, the_numbers_are_those_of_splitmix64);
	tcase_add_test(numbers, numbers_reach_both_ends_and_stay_between);

	TCase *failing = suite_case(suite, "failing");
	tcase_add_test(failing, a_failed_wait_shows_the_screen_and_leaves_no_program);
	tcase_add_test(failing, a_failed_golden_text_names_the_line_and_both_texts);
	tcase_add_test(failing, a_sanitizers_report_fails_the_test_and_is_shown);
	tcase_add_test(failing, a_run_of_no_tests_has_failed);
	return suite;
}
