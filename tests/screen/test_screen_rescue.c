/* The real program is killed, terminated, cut off: what was drawn is there at the next start. */

#include "base/file.h"
#include "plot/history/rescue.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/shown.h"
#include "support/table.h"

#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum { SIDE = 40, STROKES = 1000 };

static bool has_file(const struct table *at, const char *name)
{
	char path[4200];

	snprintf(path, sizeof path, "%s/%s", at->folder, name);
	return access(path, F_OK) == 0;
}

static void file_put(const struct table *at, const char *name, const char *bytes)
{
	struct file_error error;
	char path[4200];

	snprintf(path, sizeof path, "%s/%s", at->folder, name);
	ck_assert_msg(file_write(path, bytes, strlen(bytes), &error), "%s", error.sentence);
}

/* Open ground of 40 columns and 25 rows: a thousand strokes, cell by cell. */
static void lay_out_ground(struct table *at)
{
	struct text plot = TEXT_EMPTY;

	table_clear(at, "ground.plot");
	text_add(&plot, "parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"Bed\"\n\n");
	text_print(&plot, "ground %d x %d\n", SIDE, STROKES / SIDE);
	for (int i = 0; i < STROKES / SIDE; i++) {
		text_add(&plot, "  ");
		text_add_repeat(&plot, '.', SIDE);
		text_add(&plot, "\n");
	}
	table_write(at, plot.bytes);
	text_fini(&plot);
}

/* How many strokes a plot has: its first cells are beds, row by row, and no others. */
static int strokes_of(const struct plot *plot)
{
	size_t count = ground_count(&plot->ground), strokes = 0;

	while (strokes < count && plot->ground.cells[strokes] == 'b')
		strokes++;
	for (size_t i = strokes; i < count; i++)
		ck_assert_int_eq(plot->ground.cells[i], OPEN_GROUND);
	return (int)strokes;
}

/* What the next session is offered, or has where it is offered nothing. */
static int strokes_left(const struct table *at)
{
	struct text message = TEXT_EMPTY;
	struct rescue_list list;
	struct store store;
	struct plot plot;
	int strokes, rescued = 0;

	store_open(&store, at->plot);
	plot_init(&plot);
	ck_assert_msg(store_load(&store, &plot, &message), "%s", message.bytes);
	strokes = strokes_of(&plot);
	rescue_find(&store, &list);
	ck_assert_uint_le(list.count, 1);
	for (size_t i = 0; i < list.count; i++) {
		struct rescue rescue;

		rescue_read(&store, list.paths[i], &rescue);
		ck_assert_int_eq(rescue.state, JOURNAL_WHOLE);
		rescued = strokes_of(&rescue.plot);
		/* An older one is told to be so. */
		ck_assert(rescue.is_newer || rescued <= strokes);
		rescue_fini(&rescue);
	}
	rescue_list_fini(&list);
	plot_fini(&plot);
	store_close(&store);
	text_fini(&message);
	return rescued > strokes ? rescued : strokes;
}

/* Strokes that the screen shows; all 40 columns are in view, and 20 of the rows. */
static int strokes_shown(struct terminal *t)
{
	int shown = 0;

	while (shown < 20 * SIDE && shown_letter(t, shown % SIDE, shown / SIDE) == 'b')
		shown++;
	return shown;
}

/* So many strokes from one on, saving after every twentieth where that is wanted. */
static void stroke_keys(struct terminal *t, int from, int count, bool is_saving)
{
	struct text keys = TEXT_EMPTY;

	for (int i = from; i < from + count; i++) {
		text_add(&keys, " ");
		/* At the end of a row down, and all the way back. */
		text_add(&keys, i % SIDE == SIDE - 1 ? "\033OB\033OH" : "\033OC");
		if (is_saving && i % 20 == 19)
			text_add(&keys, "> >");
	}
	terminal_type(t, keys.bytes);
	text_fini(&keys);
}

/* In one column a cell all fit. */
static void start_wide(struct table *at)
{
	table_start(at, &(struct launch){ .rows = 40, .columns = 140 });
	table_wait(at->t);
}

START_TEST(killed_at_any_moment_no_finished_stroke_is_lost)
{
	struct random random = { (uint64_t)_i + 1 };
	int sent = 0, shown = 0, left;
	struct table at;

	lay_out_ground(&at);
	start_wide(&at);
	while (sent < 15 * SIDE) {
		int count = random_between(&random, 1, 60);

		stroke_keys(at.t, sent, count, _i % 2 == 1);
		sent += count;
		if (random_below(&random, 4) == 0)
			break;
		terminal_until(at.t, strokes_shown(at.t) >= sent - count / 2);
	}
	/* In the middle of what was typed last. */
	shown = random_between(&random, shown, sent);
	terminal_until(at.t, strokes_shown(at.t) >= shown - 10);
	shown = strokes_shown(at.t);
	terminal_signal(at.t, SIGKILL);
	ck_assert_int_eq(terminal_end(at.t).signal, SIGKILL);
	left = strokes_left(&at);
	ck_assert_msg(left >= shown && left <= sent, "shown %d, left %d, typed %d", shown, left,
		sent);
	table_leave(&at);
}
END_TEST

START_TEST(a_thousand_strokes_are_rescued_exactly)
{
	struct table at;

	lay_out_ground(&at);
	start_wide(&at);
	for (int i = 0; i < STROKES; i += SIDE) {
		stroke_keys(at.t, i, SIDE, false);
		terminal_until(at.t, shown_letter(at.t, SIDE - 1, i / SIDE) == 'b');
	}
	terminal_signal(at.t, SIGKILL);
	ck_assert_int_eq(terminal_end(at.t).signal, SIGKILL);
	terminal_free(at.t);
	ck_assert_int_eq(strokes_left(&at), STROKES);
	table_start(&at, &(struct launch){ .rows = 40, .columns = 140 });
	terminal_wait(at.t, "rescued. 1000");
	terminal_wait(at.t, "Enter pick");
	terminal_keys(at.t, "enter");
	terminal_wait(at.t, "is taken up; it is not saved yet.");
	table_check_saved(&at, "\n  bbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbb\n");
	ck_assert_int_eq(strokes_left(&at), STROKES);
	ck_assert(!has_file(&at, ".ground.plot.journal"));
	table_leave(&at);
}
END_TEST

/* ---- Other ends ------------------------------------------------------------------------------ */

START_TEST(an_end_from_outside_says_where_the_work_is)
{
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, "S space");
	terminal_wait(at.t, "not saved");
	terminal_signal(at.t, SIGTERM);
	struct terminal_end end = terminal_end(at.t);

	ck_assert_int_eq(end.signal, SIGTERM);
	ck_assert_ptr_nonnull(strstr(end.last, "parterre: The plot is not saved: its work is kept "
		"in "));
	ck_assert_ptr_nonnull(strstr(end.last, "/.court.plot.journal and offered at the next "
		"start."));
	ck_assert(has_file(&at, ".court.plot.journal"));
	table_leave(&at);
}
END_TEST

START_TEST(an_end_by_choice_or_without_a_stroke_leaves_no_journal)
{
	static const char *const keys[] = { "<", "S space < L e a v e enter", "S space backspace <",
		"S space > > <" };
	struct table at;

	table_sit(&at, "court.plot", 24, 80);
	terminal_keys(at.t, keys[_i]);
	ck_assert_int_eq(terminal_end(at.t).code, 0);
	ck_assert(!has_file(&at, ".court.plot.journal"));
	ck_assert(!has_file(&at, ".court.plot.lock"));
	table_leave(&at);
}
END_TEST

START_TEST(a_file_of_an_earlier_version_is_offered_and_taken_up)
{
	struct table at;

	table_lay_out(&at, "court.plot");
	file_put(&at, ".court.plot.rescue", "parterre-plot 1\nunits imperial\ncell 1 ft\n\n"
		"bed b \"Bed\"\n\nground 3 x 1\n  b.b\n");
	table_start(&at, NULL);
	terminal_wait(at.t, "This plot was written on ");
	terminal_wait(at.t, "Take up the rescued work");
	terminal_wait(at.t, "Enter pick");
	terminal_keys(at.t, "T a k e enter");
	terminal_until(at.t, shown_letter(at.t, 2, 0) == 'b');
	ck_assert(!has_file(&at, ".court.plot.rescue"));
	table_check_saved(&at, "\n  b.b\n");
	table_leave(&at);
}
END_TEST

/* ---- Without a place ------------------------------------------------------------------------- */

/* A folder has the journal's name, and the user's state is a file. */
static void start_without_place(struct table *at)
{
	char path[4200], state[4200];

	table_lay_out(at, "court.plot");
	snprintf(path, sizeof path, "%s/.court.plot.journal", at->folder);
	ck_assert_int_eq(mkdir(path, 0700), 0);
	file_put(at, "state", "");
	snprintf(state, sizeof state, "XDG_STATE_HOME=%s/state", at->folder);
	table_start(at, &(struct launch){ .env = (const char *[]){ state, NULL } });
}

START_TEST(where_nothing_can_be_rescued_it_is_said_at_once_and_stays_on_the_screen)
{
	struct table at;

	start_without_place(&at);
	/* After words of any length: a line may end anywhere in it. */
	terminal_until(at.t, terminal_shows(at.t, "No rescue can") ||
		terminal_shows(at.t, "be kept here: save"));
	terminal_wait(at.t, "court.plot, saved, no rescue");
	terminal_wait(at.t, "? help");
	terminal_keys(at.t, "right");
	terminal_wait_gone(at.t, "save often.");
	terminal_keys(at.t, "S space right space right");
	terminal_wait(at.t, "court.plot, not saved, no rescue");
	terminal_until(at.t, shown_on_cell(at.t, 3, 0));
	terminal_signal(at.t, SIGTERM);
	struct terminal_end end = terminal_end(at.t);

	ck_assert_ptr_nonnull(strstr(end.last, "parterre: 2 strokes are lost: "));
	table_leave(&at);
}
END_TEST

/* The program has an empty home of its own. */
START_TEST(work_kept_among_the_users_state_is_offered_from_there)
{
	char path[4200], state[4200], variable[4300];
	struct table at;

	table_lay_out(&at, "court.plot");
	snprintf(path, sizeof path, "%s/.court.plot.journal", at.folder);
	snprintf(state, sizeof state, "%s/state", at.folder);
	snprintf(variable, sizeof variable, "XDG_STATE_HOME=%s", state);
	const struct launch launch = { .env = (const char *[]){ variable, NULL } };

	ck_assert_int_eq(mkdir(path, 0700), 0);
	table_start(&at, &launch);
	terminal_wait(at.t, "? help");
	terminal_keys(at.t, "S space");
	terminal_wait(at.t, "court.plot, not saved  ");
	terminal_signal(at.t, SIGKILL);
	terminal_end(at.t);
	terminal_free(at.t);
	table_start(&at, &launch);
	terminal_wait(at.t, "was rescued.");
	terminal_wait(at.t, "Enter pick");
	terminal_keys(at.t, "enter");
	terminal_until(at.t, shown_letter(at.t, 0, 0) == 'S');
	table_leave(&at);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("screen rescue");
	TCase *kills = suite_case(suite, "kills"), *ends = suite_case(suite, "ends"),
		*place = suite_case(suite, "place");

	tcase_add_loop_test(kills, killed_at_any_moment_no_finished_stroke_is_lost, 0,
		runner_count(20, 200));
	tcase_add_test(kills, a_thousand_strokes_are_rescued_exactly);
	tcase_add_test(ends, an_end_from_outside_says_where_the_work_is);
	tcase_add_loop_test(ends, an_end_by_choice_or_without_a_stroke_leaves_no_journal, 0, 4);
	tcase_add_test(ends, a_file_of_an_earlier_version_is_offered_and_taken_up);
	tcase_add_test(place,
		where_nothing_can_be_rescued_it_is_said_at_once_and_stays_on_the_screen);
	tcase_add_test(place, work_kept_among_the_users_state_is_offered_from_there);
	return suite;
}
