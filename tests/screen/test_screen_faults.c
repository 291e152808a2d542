/* Every allocation and every call on a file of a session fails in turn, and the program is killed
 * at every call on a file: what the screen has shown is in the plot or offered at the next start,
 * the plot is the old one or the new one, and the terminal is given back. */

#include "base/file.h"
#include "support/faults.h"
#include "support/runner.h"
#include "support/shown.h"
#include "support/strokes.h"
#include "support/table.h"

#include <errno.h>
#include <glob.h>
#include <poll.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#define OPEN_PLOT "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Bed\"\n\n" \
	"ground 9 x 1\n  .........\n"

enum { CELLS = 9, RESCUED = 2, KILL = 0 };

/* What a session has left that was cut off: two strokes that can be read. */
enum before { NOTHING, A_JOURNAL, A_DAMAGED_JOURNAL };

struct scenario {
	const char *name;
	enum before before;
	const char *answer;  /* keys at the question about that */
	int strokes;         /* drawn then */
	const char *after;   /* keys after the strokes */
	const char *said;    /* what the screen says then, without faults */
	bool is_elsewhere;   /* in the end strokes may be in a file of another name */
};

static const struct scenario scenarios[] = {
	{ "strokes", NOTHING, NULL, 3, NULL, NULL, false },
	{ "save", NOTHING, NULL, 3, "> >", "Saved in ", false },
	{ "take up", A_JOURNAL, "enter", 1, NULL, NULL, false },
	{ "take up and save", A_JOURNAL, "enter", 1, "> >", "Saved in ", false },
	{ "take up a part", A_DAMAGED_JOURNAL, "enter", 1, NULL, NULL, false },
	{ "set aside", A_JOURNAL, "down enter", 1, NULL, NULL, true },
	{ "save as", NOTHING, NULL, 2, "! S a v e space a s enter enter", "Saved in ", true },
	{ "copy", NOTHING, NULL, 2, "! W r i t e enter enter", "A copy is in ", false },
	{ "card", NOTHING, NULL, 1, "# P enter T i t l e pagedown enter", "Set; ", false },
};

/* Of calls on files. */
static const struct fault_plan errors[] = {
	{ .error = EIO }, { .error = ENOSPC }, { .error = EACCES }, { .error = EINTR },
	{ .error = EIO, .lasts = true }, { .error = ENOSPC, .lasts = true },
};

enum {
	SCENARIOS = sizeof scenarios / sizeof *scenarios,
	ERRORS = sizeof errors / sizeof *errors,
};

struct sitting {
	struct table at;
	const struct scenario *scenario;
	struct fault_plan plan;
	int shown;          /* strokes that were seen */
	int lost;           /* of them, it was said at the end */
	bool is_left;       /* that was an answer */
	bool is_written;    /* the screen has said so */
};

static void launch(struct sitting *s, const struct fault_plan *plan)
{
	const char *environment[16];
	char state[4300];
	int count = 0;

	snprintf(state, sizeof state, "%s/state", s->at.folder);
	setenv("XDG_STATE_HOME", state, 1);
	snprintf(state, sizeof state, "XDG_STATE_HOME=%s/state", s->at.folder);
	environment[count++] = state;
	faults_begin(plan);
	for (const char *const *line = faults_environment(); *line; line++)
		environment[count++] = *line;
	environment[count] = NULL;
	unsetenv("LD_PRELOAD");
	table_start(&s->at, &(struct launch){ .env = environment });
}

static bool strokes_are_shown(struct terminal *t, int count)
{
	for (int i = 0; i < count; i++)
		if (shown_letter(t, i, 0) != 'b')
			return false;
	return true;
}

static void stroke(struct sitting *s, int number)
{
	struct terminal *t = s->at.t;

	terminal_keys(t, "b space right");
	terminal_until_end(t, strokes_are_shown(t, number) ||
		terminal_shows(t, "looking only"));
	if (!terminal_is_over(t) && strokes_are_shown(t, number))
		s->shown = number;
}

/* Spoils the step that follows those that can be read. */
static void damage(const struct table *at)
{
	struct text bytes = table_file(at, ".ground.plot.journal");
	char *step = bytes.bytes, path[4300];
	struct file_error error;

	for (int i = 0; i <= RESCUED; i++)
		ck_assert_ptr_nonnull(step = strstr(step + 1, "\nstep "));
	step[1] = 'S';
	snprintf(path, sizeof path, "%s/.ground.plot.journal", at->folder);
	ck_assert(file_write(path, bytes.bytes, bytes.length, &error));
	text_fini(&bytes);
}

static void session_before(struct sitting *s)
{
	bool is_damaged = s->scenario->before == A_DAMAGED_JOURNAL;

	launch(s, &(struct fault_plan){ .folder = s->at.folder });
	table_wait(s->at.t);
	for (int i = 1; i <= RESCUED + 2 * is_damaged; i++)
		stroke(s, i);
	terminal_signal(s->at.t, SIGKILL);
	terminal_end(s->at.t);
	terminal_free(s->at.t);
	if (is_damaged)
		damage(&s->at);
	s->shown = 0;
}

/* A plot, what a session before has left of it, and the program at it. */
static void sit(struct sitting *s, const struct scenario *scenario, const struct fault_plan *plan)
{
	*s = (struct sitting){ .scenario = scenario, .plan = *plan };
	table_clear(&s->at, "ground.plot");
	table_write(&s->at, OPEN_PLOT);
	if (scenario->before != NOTHING)
		session_before(s);
	s->plan.folder = s->at.folder;
	launch(s, &s->plan);
}

/* From whatever is on the screen to rest: the list of keys is shown there only. */
static void come_to_rest(struct terminal *t)
{
	terminal_keys(t, "ctrl-c x4 ?");
	terminal_until_end(t, terminal_shows(t, "I want to ..."));
	terminal_keys(t, "ctrl-c");
	terminal_until_end(t, !terminal_shows(t, "I want to ..."));
}

static void answer(struct sitting *s)
{
	struct terminal *t = s->at.t;

	if (!s->scenario->answer || !terminal_shows(t, "Enter pick"))
		return;
	s->is_left = terminal_shows(t, "cannot be read");
	terminal_keys(t, s->scenario->answer);
	terminal_until_end(t, !terminal_shows(t, "Enter pick"));
}

static void draw(struct sitting *s)
{
	struct terminal *t = s->at.t;
	int first = 0;

	while (first < CELLS && shown_letter(t, first, 0) == 'b')
		first++;
	for (int i = 0; i < first; i++)
		terminal_keys(t, "right");
	for (int i = 1; !terminal_is_over(t) && i <= s->scenario->strokes; i++)
		stroke(s, first + i);
}

static void finish(struct sitting *s)
{
	const char *said = s->scenario->said;
	struct terminal *t = s->at.t;

	terminal_keys(t, s->scenario->after);
	terminal_until_end(t, terminal_shows(t, said) || terminal_shows(t, "cannot ") ||
		terminal_shows(t, "Somebody else"));
	s->is_written = terminal_shows(t, "Saved in ");
}

static void play(struct sitting *s)
{
	struct terminal *t = s->at.t;

	terminal_until_end(t, terminal_shows(t, "? help") || terminal_shows(t, "Enter pick"));
	if (!terminal_is_over(t))
		answer(s);
	if (!terminal_is_over(t))
		draw(s);
	if (!terminal_is_over(t) && s->scenario->after)
		finish(s);
	if (!terminal_is_over(t))
		come_to_rest(t);
}

/* ---- What must be there afterwards ----------------------------------------------------------- */

/* At the next start. Where one call failed, what could not be read was set aside. */
static void check_kept(const struct sitting *s)
{
	bool may_be_elsewhere = s->scenario->is_elsewhere || (s->plan.error != KILL &&
		!s->plan.is_memory);
	int least = s->shown - s->lost, kept;
	struct strokes left;

	if (s->scenario->before != NOTHING && least < RESCUED)
		least = RESCUED;
	strokes_find(&left, s->at.folder, s->at.plot);
	kept = may_be_elsewhere ? left.anywhere : left.offered;
	ck_assert_msg(kept >= least, "%s, call %ld: %d strokes, %d kept", s->scenario->name,
		s->plan.at, least, kept);
	ck_assert_msg(!s->is_written || s->scenario->is_elsewhere || left.saved >= s->shown,
		"%s, call %ld: %d strokes said to be saved, %d are", s->scenario->name,
		s->plan.at, s->shown, left.saved);
}

/* Curses may crash where it has no memory. */
static bool is_fair(const struct sitting *s, const struct terminal_end *end)
{
	return end->code == 2 || end->signal == SIGTERM || (end->code == 0 && s->is_left) ||
		(end->signal == SIGKILL && s->plan.error == KILL) ||
		(end->signal == SIGSEGV && s->plan.is_memory);
}

/* A file that was being written. */
static bool has_unfinished(const struct table *at)
{
	glob_t found = { 0 };
	char pattern[4300];
	bool is_there;

	snprintf(pattern, sizeof pattern, "%s/.parterre-*", at->folder);
	is_there = glob(pattern, 0, NULL, &found) == 0;
	globfree(&found);
	return is_there;
}

/* Where no file can be removed any more the next start has to do it. */
static bool may_leave_unfinished(const struct fault_plan *plan)
{
	return plan->lasts && !plan->is_memory;
}

/* True unless the screen stays taken or the error is not said. */
static bool check_end(const struct sitting *s, const struct terminal_end *end)
{
	ck_assert_msg(is_fair(s, end), "%s, call %ld: code %d, signal %d", s->scenario->name,
		s->plan.at, end->code, end->signal);
	if (end->signal == SIGKILL)
		return true;
	ck_assert_msg(may_leave_unfinished(&s->plan) || !has_unfinished(&s->at),
		"%s, call %ld: an unfinished file", s->scenario->name, s->plan.at);
	ck_assert_msg(terminal_has_old_modes(s->at.t), "%s, call %ld: other modes",
		s->scenario->name, s->plan.at);
	return !terminal_is_alternate(s->at.t) &&
		(end->code != 2 || terminal_sent(s->at.t, "parterre: "));
}

/* "parterre: 3 strokes are lost: ..." */
static int lost_in(const char *said)
{
	const char *complaint = strstr(said, "parterre: ");
	int lost = 0;

	if (complaint && strstr(complaint, " lost: "))
		sscanf(complaint, "parterre: %d", &lost);
	return lost;
}

static bool try(const struct scenario *scenario, const struct fault_plan *plan)
{
	struct terminal_end end;
	struct sitting s;
	bool is_said;

	sit(&s, scenario, plan);
	play(&s);
	if (!terminal_is_over(s.at.t))
		terminal_signal(s.at.t, SIGTERM);
	end = terminal_end(s.at.t);
	is_said = check_end(&s, &end);
	s.lost = lost_in(end.last);
	check_kept(&s);
	table_leave(&s.at);
	return is_said;
}

/* Without faults; left by choice, since only then the calls are counted. */
static long calls(const struct scenario *scenario, struct fault_plan plan)
{
	struct sitting s;

	plan.at = 0;
	sit(&s, scenario, &plan);
	play(&s);
	ck_assert(!terminal_is_over(s.at.t));
	terminal_keys(s.at.t, "<");
	terminal_until_end(s.at.t, terminal_shows(s.at.t, "Leave?"));
	if (!terminal_is_over(s.at.t))
		terminal_keys(s.at.t, "L e a v e enter");
	ck_assert_int_eq(terminal_end(s.at.t).code, 0);
	table_leave(&s.at);
	return faults_count();
}

/* As a line is hung up the kernel may lose what was written last, the more often the busier it is:
 * a fault of the program's is there each time, however long after. */
static bool is_said_once(const struct scenario *scenario, const struct fault_plan *plan)
{
	enum { TRIES = 8, PAUSE_MS = 40 };

	for (int i = 0; i < TRIES; i++)
		if (try(scenario, plan))
			return true;
		else
			poll(NULL, 0, PAUSE_MS << i);
	return false;
}

/* One scenario, so many of its calls in turn. */
static void try_all(const struct scenario *scenario, struct fault_plan plan, int few)
{
	long count = calls(scenario, plan), step = count / runner_count(few, 100000) + 1;

	ck_assert_int_gt(count, 5);
	for (plan.at = 1 + scenario->strokes % step; plan.at <= count; plan.at += step) {
		mark_point();
		ck_assert_msg(is_said_once(scenario, &plan),
			"%s, call %ld: the screen stays taken, or nothing is said", scenario->name,
			plan.at);
	}
}

/* All allocations that follow fail as well: memory does not come back. */
START_TEST(where_memory_runs_out_strokes_and_terminal_are_safe)
{
	if (faults_work())
		try_all(&scenarios[_i], (struct fault_plan){ .is_memory = true, .lasts = true,
			.error = ENOMEM }, 8);
}
END_TEST

START_TEST(where_a_file_call_fails_strokes_and_plot_are_safe)
{
	if (faults_work())
		try_all(&scenarios[_i / ERRORS], errors[_i % ERRORS], 3);
}
END_TEST

START_TEST(killed_at_a_file_call_strokes_and_plot_are_safe)
{
	if (faults_work())
		try_all(&scenarios[_i], (struct fault_plan){ .error = KILL }, 8);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen faults");
	TCase *memory = suite_case(suite, "memory"), *files = suite_case(suite, "files"),
		*kills = suite_case(suite, "kills");

	tcase_set_timeout(memory, runner_count(60, 3600));
	tcase_set_timeout(files, runner_count(60, 600));
	tcase_set_timeout(kills, runner_count(60, 600));
	tcase_add_loop_test(memory, where_memory_runs_out_strokes_and_terminal_are_safe, 0,
		SCENARIOS);
	tcase_add_loop_test(files, where_a_file_call_fails_strokes_and_plot_are_safe, 0,
		SCENARIOS * ERRORS);
	tcase_add_loop_test(kills, killed_at_a_file_call_strokes_and_plot_are_safe, 0, SCENARIOS);
	return suite;
}
