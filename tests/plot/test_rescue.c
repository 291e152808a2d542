/* What cut off sessions left: found, read, taken up, kept; never lost. */
#include "plot/history/rescue.h"
#include "base/folder.h"
#include "base/path.h"
#include "support/folder.h"
#include "support/kept.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

static struct plot plot, later;
static struct file_error error;
static struct store store;
static struct rescue_list list;
static struct rescue rescue;

static void start(void)
{
	folder_start();
	plot_from_rows(&plot, (const char *const[]){ "bb..", "b..p", NULL });
	plot_from_rows(&later, (const char *const[]){ "bbpp", "b..p", NULL });
	list = (struct rescue_list){ .paths = NULL };
}

static void end(void)
{
	plot_fini(&plot);
	plot_fini(&later);
	folder_end();
}

/* ---- Sessions that are cut off --------------------------------------------------------------- */

/* Saves the plot, and writes down that it became the later one. */
static void act_draw(void)
{
	struct history *history = history_new(&plot);

	store_open(&store, in("court.plot"));
	if (!store_save(&store, &plot, &error))
		_exit(1);
	memcpy(plot.ground.cells, later.ground.cells, ground_count(&plot.ground));
	history_record(history, &plot, "");
	if (!store_note(&store, history_last(history), &plot, &error))
		_exit(1);
}

static void act_begin(void)
{
	store_open(&store, in("court.plot"));
	if (!store_hold(&store, &later, &error))
		_exit(1);
}

static void cut_off(void (*act)(void))
{
	session_kill(session_start(act));
}

static void open_and_find(void)
{
	struct text message = TEXT_EMPTY;
	struct plot read;

	store_open(&store, in("court.plot"));
	plot_init(&read);
	if (store.stamp.exists)
		store_load(&store, &read, &message);
	plot_fini(&read);
	text_fini(&message);
	rescue_find(&store, &list);
}

/* The next session finds just this one file, and reads it. */
static void find_one(const char *name)
{
	open_and_find();
	ck_assert_uint_eq(list.count, 1);
	ck_assert_str_eq(list.paths[0], in(name));
	rescue_read(&store, list.paths[0], &rescue);
}

static void found_end(void)
{
	rescue_fini(&rescue);
	rescue_list_fini(&list);
	store_close(&store);
}

START_TEST(work_of_a_killed_session_is_found_and_newer_than_the_plot)
{
	struct timespec now;

	cut_off(act_draw);
	find_one(".court.plot.journal");
	ck_assert_int_eq(rescue.state, JOURNAL_WHOLE);
	ck_assert(plot_equal(&rescue.plot, &later));
	ck_assert(rescue.is_newer);
	clock_gettime(CLOCK_REALTIME, &now);
	ck_assert_int_ge(rescue.written.tv_sec, now.tv_sec - 60);
	ck_assert_int_le(rescue.written.tv_sec, now.tv_sec + 1);
	found_end();
}
END_TEST

START_TEST(a_plot_that_was_written_since_is_not_older_whatever_its_time_says)
{
	struct timespec times[2];
	struct text bytes;
	struct stat was;

	cut_off(act_draw);
	ck_assert_int_eq(stat(in("court.plot"), &was), 0);
	times[0] = was.st_atim;
	times[1] = was.st_mtim;
	/* A second name and a copy that keeps the time change nothing. */
	bytes = bytes_of("court.plot");
	make("copy", bytes.bytes);
	ck_assert_int_eq(utimensat(AT_FDCWD, in("copy"), times, 0), 0);
	ck_assert_int_eq(rename(in("copy"), in("court.plot")), 0);
	find_one(".court.plot.journal");
	ck_assert(rescue.is_newer);
	found_end();
	/* Another time, and other bytes of the same time and length. */
	times[1].tv_nsec = times[1].tv_nsec ? 0 : 1;
	ck_assert_int_eq(utimensat(AT_FDCWD, in("court.plot"), times, 0), 0);
	find_one(".court.plot.journal");
	ck_assert(!rescue.is_newer);
	found_end();
	*strstr(bytes.bytes, "bb..") = 'p';
	make("court.plot", bytes.bytes);
	times[1] = was.st_mtim;
	ck_assert_int_eq(utimensat(AT_FDCWD, in("court.plot"), times, 0), 0);
	find_one(".court.plot.journal");
	ck_assert(!rescue.is_newer);
	found_end();
	ck_assert_int_eq(unlink(in("court.plot")), 0);
	find_one(".court.plot.journal");
	ck_assert(!rescue.is_newer);
	found_end();
	text_fini(&bytes);
}
END_TEST

START_TEST(nothing_is_found_where_nothing_was_left_or_another_has_the_plot)
{
	pid_t session;

	open_and_find();
	ck_assert_uint_eq(list.count, 0);
	store_close(&store);
	session = session_start(act_draw);
	open_and_find();
	ck_assert_int_eq(store.access, STORE_LOOKS);
	ck_assert_uint_eq(list.count, 0);
	store_close(&store);
	/* Nor while the journal is written, even if somebody removed the lock. */
	ck_assert_int_eq(unlink(in(".court.plot.lock")), 0);
	open_and_find();
	ck_assert_int_eq(store.access, STORE_WRITES);
	ck_assert_uint_eq(list.count, 0);
	store_close(&store);
	session_kill(session);
	find_one(".court.plot.journal");
	found_end();
}
END_TEST

/* Each has the process in its name. */
START_TEST(journals_of_sessions_without_a_lock_are_found_one_after_the_other)
{
	pid_t first, second;
	char names[2][64];

	ck_assert_int_eq(mkdir(in(".court.plot.lock"), 0700), 0);
	make(".court.plot.journal.notes", "nobody's");
	make(".court.plot.journalist.1", "nobody's");
	first = session_start(act_begin);
	second = session_start(act_begin);
	snprintf(names[0], sizeof names[0], ".court.plot.journal.%ld", (long)first);
	snprintf(names[1], sizeof names[1], ".court.plot.journal.%ld", (long)second);
	open_and_find();
	ck_assert_uint_eq(list.count, 0);
	store_close(&store);
	/* Nor does one's save or end take away another's. */
	store_open(&store, in("court.plot"));
	ck_assert_int_eq(store.access, STORE_UNGUARDED);
	ck_assert(store_hold(&store, &plot, &error));
	ck_assert(store_save(&store, &plot, &error));
	store_forget(&store);
	store_close(&store);
	ck_assert_int_eq(unlink(in("court.plot")), 0);
	session_kill(first);
	find_one(names[0]);
	found_end();
	session_kill(second);
	open_and_find();
	ck_assert_uint_eq(list.count, 2);
	rescue_list_fini(&list);
	store_close(&store);
	/* Also by a session that has a lock. */
	ck_assert_int_eq(rmdir(in(".court.plot.lock")), 0);
	open_and_find();
	ck_assert_int_eq(store.access, STORE_WRITES);
	ck_assert_uint_eq(list.count, 2);
	rescue_list_fini(&list);
	store_close(&store);
}
END_TEST

/* As where files have no locks: a link is not opened. */
START_TEST(where_a_journal_cannot_be_looked_into_its_process_tells_whether_it_is_left)
{
	pid_t gone = fork();
	char alive[64], left[64];

	if (gone == 0)
		_exit(0);
	ck_assert_int_eq(waitpid(gone, NULL, 0), gone);
	snprintf(alive, sizeof alive, ".court.plot.journal.%ld", (long)getpid());
	snprintf(left, sizeof left, ".court.plot.journal.%ld", (long)gone);
	ck_assert_int_eq(symlink("nowhere", in(alive)), 0);
	open_and_find();
	ck_assert_uint_eq(list.count, 0);
	store_close(&store);
	ck_assert_int_eq(symlink("nowhere", in(left)), 0);
	open_and_find();
	ck_assert_uint_eq(list.count, 1);
	ck_assert_str_eq(list.paths[0], in(left));
	rescue_list_fini(&list);
	store_close(&store);
}
END_TEST

/* However the folder lists them. No process has so high a number. */
START_TEST(journals_of_processes_are_found_in_the_order_of_their_names)
{
	static const int order[] = { 5, 1, 7, 3, 8, 2, 6, 4 };
	enum { COUNT = sizeof order / sizeof *order };
	char name[64];

	for (int i = 0; i < COUNT; i++) {
		snprintf(name, sizeof name, ".court.plot.journal.99999999%d", order[i]);
		ck_assert_int_eq(symlink("nowhere", in(name)), 0);
	}
	open_and_find();
	ck_assert_uint_eq(list.count, COUNT);
	for (int i = 0; i < COUNT; i++) {
		snprintf(name, sizeof name, ".court.plot.journal.99999999%d", i + 1);
		ck_assert_str_eq(list.paths[i], in(name));
	}
	rescue_list_fini(&list);
	store_close(&store);
}
END_TEST

START_TEST(a_journal_of_a_process_lies_among_the_users_state_too)
{
	pid_t gone = fork();
	char process[32], *left, *folder;

	if (gone == 0)
		_exit(0);
	ck_assert_int_eq(waitpid(gone, NULL, 0), gone);
	snprintf(process, sizeof process, ".journal.%ld", (long)gone);
	left = path_in_state(in("court.plot"), process);
	folder = path_parent(left);
	ck_assert(folder_make(folder));
	free(folder);
	ck_assert_int_eq(symlink("nowhere", left), 0);
	open_and_find();
	ck_assert_uint_eq(list.count, 1);
	ck_assert_str_eq(list.paths[0], left);
	rescue_list_fini(&list);
	store_close(&store);
	ck_assert_int_eq(unlink(left), 0);
	free(left);
}
END_TEST

static void act_draw_by_another_name(void)
{
	store_open(&store, in("backup"));
	if (store.access != STORE_WRITES || !store_hold(&store, &later, &error))
		_exit(1);
}

START_TEST(a_session_by_a_second_hard_link_leaves_the_others_work)
{
	pid_t session;

	store_open(&store, in("court.plot"));
	ck_assert(store_save(&store, &plot, &error));
	store_close(&store);
	ck_assert_int_eq(link(in("court.plot"), in("backup")), 0);
	session = session_start(act_draw_by_another_name);
	store_open(&store, in("court.plot"));
	ck_assert(store_hold(&store, &plot, &error));
	ck_assert(store_save(&store, &plot, &error));
	store_forget(&store);
	store_close(&store);
	ck_assert(is_there(".backup.journal"));
	session_kill(session);
	store_open(&store, in("backup"));
	rescue_find(&store, &list);
	ck_assert_uint_eq(list.count, 1);
	rescue_read(&store, list.paths[0], &rescue);
	ck_assert(plot_equal(&rescue.plot, &later));
	found_end();
}
END_TEST

START_TEST(work_among_the_users_state_is_found_by_every_way_to_the_plot)
{
	char *state;

	ck_assert_int_eq(mkdir(in(".court.plot.journal"), 0700), 0);
	cut_off(act_draw);
	state = path_in_state(in("court.plot"), ".journal");
	ck_assert_int_eq(rmdir(in(".court.plot.journal")), 0);
	ck_assert_int_eq(mkdir(in("sub"), 0700), 0);
	ck_assert_int_eq(symlink("../court.plot", in("sub/link.plot")), 0);
	store_open(&store, in("sub/link.plot"));
	rescue_find(&store, &list);
	ck_assert_uint_eq(list.count, 1);
	ck_assert_str_eq(list.paths[0], state);
	rescue_read(&store, state, &rescue);
	ck_assert(plot_equal(&rescue.plot, &later));
	rescue_drop(&rescue);
	found_end();
	free(state);
}
END_TEST

/* ---- What cannot be read --------------------------------------------------------------------- */

static const struct {
	const char *bytes, *why;
} unreadable[] = {
	{ "", "it is empty" },
	{ "court", "it is no journal" },
	{ "parterre-journal 2\n", "another version of the program wrote it" },
	{ "parterre-plot 1\nunits ells\n", "line 2: found ells, expected imperial or metric" },
};

START_TEST(a_file_that_cannot_be_read_is_found_with_its_reason_and_kept_as_it_is)
{
	struct text bytes;
	char *kept;

	make(".court.plot.journal", unreadable[_i].bytes);
	find_one(".court.plot.journal");
	ck_assert_int_eq(rescue.state, JOURNAL_UNREADABLE);
	ck_assert_str_eq(rescue.why.bytes, unreadable[_i].why);
	ck_assert(rescue_set_aside(&store, &rescue, &kept));
	ck_assert_str_eq(kept, in("court.plot.rescued"));
	bytes = bytes_of("court.plot.rescued");
	ck_assert_str_eq(bytes.bytes, unreadable[_i].bytes);
	ck_assert(!is_there(".court.plot.journal"));
	text_fini(&bytes);
	free(kept);
	found_end();
}
END_TEST

START_TEST(a_file_one_may_not_read_is_set_aside_and_what_is_no_file_stays)
{
	char *kept;

	ck_assert_int_eq(mkdir(in(".court.plot.journal"), 0700), 0);
	find_one(".court.plot.journal");
	ck_assert_str_eq(rescue.why.bytes, "it is not a regular file");
	ck_assert(!rescue_set_aside(&store, &rescue, &kept));
	ck_assert_ptr_null(kept);
	found_end();
	ck_assert_int_eq(rmdir(in(".court.plot.journal")), 0);
	ck_assert_int_eq(symlink("court.plot", in(".court.plot.journal")), 0);
	find_one(".court.plot.journal");
	ck_assert_str_eq(rescue.why.bytes, "it is not a regular file");
	found_end();
	ck_assert_int_eq(unlink(in(".court.plot.journal")), 0);

	make(".court.plot.journal", "secret");
	ck_assert_int_eq(chmod(in(".court.plot.journal"), 0), 0);
	plain_user();
	open_and_find();
	rescue_read(&store, list.paths[0], &rescue);
	ck_assert_int_eq(rescue.state, JOURNAL_UNREADABLE);
	ck_assert_ptr_nonnull(strstr(rescue.why.bytes, "Permission denied"));
	ck_assert(rescue_set_aside(&store, &rescue, &kept));
	ck_assert(is_there("court.plot.rescued"));
	free(kept);
	rescue_fini(&rescue);
	rescue_list_fini(&list);
	store_close(&store);
	usual_user();
}
END_TEST

/* ---- What becomes of it ---------------------------------------------------------------------- */

START_TEST(work_that_is_set_aside_is_a_plot_and_lies_over_nothing)
{
	char *kept;

	make("court.plot.rescued", "somebody's");
	cut_off(act_draw);
	ck_assert_int_eq(chmod(in("court.plot"), 0640), 0);
	find_one(".court.plot.journal");
	ck_assert(rescue_set_aside(&store, &rescue, &kept));
	ck_assert_str_eq(kept, in("court.plot.rescued-2"));
	ck_assert(kept_plot("court.plot.rescued-2", &later));
	ck_assert_int_eq(mode_of("court.plot.rescued-2"), 0640);
	ck_assert(!kept_plot("court.plot.rescued", &later));
	ck_assert(!is_there(".court.plot.journal"));
	free(kept);
	found_end();
}
END_TEST

START_TEST(work_that_is_taken_up_stays_in_a_file_until_it_is_saved)
{
	char *kept;

	cut_off(act_draw);
	find_one(".court.plot.journal");
	rescue_take(&store, &rescue, &kept);
	ck_assert_ptr_null(kept);
	ck_assert(is_there(".court.plot.journal"));
	ck_assert(store_hold(&store, &rescue.plot, &error));
	found_end();
	find_one(".court.plot.journal");
	ck_assert(plot_equal(&rescue.plot, &later) && rescue.is_newer);
	rescue_take(&store, &rescue, &kept);
	ck_assert(store_save(&store, &rescue.plot, &error));
	ck_assert(!is_there(".court.plot.journal"));
	found_end();
}
END_TEST

START_TEST(a_file_of_an_earlier_version_is_taken_up_and_goes_once_the_journal_has_its_work)
{
	struct text bytes = TEXT_EMPTY;
	char *kept;

	format_write(&later, &bytes);
	make(".court.plot.rescue", bytes.bytes);
	find_one(".court.plot.rescue");
	ck_assert_int_eq(rescue.state, JOURNAL_WHOLE);
	ck_assert(plot_equal(&rescue.plot, &later));
	ck_assert(!rescue.is_newer);
	rescue_take(&store, &rescue, &kept);
	ck_assert(is_there(".court.plot.rescue"));
	ck_assert(store_hold(&store, &rescue.plot, &error));
	ck_assert(!is_there(".court.plot.rescue"));
	found_end();
	find_one(".court.plot.journal");
	ck_assert(plot_equal(&rescue.plot, &later));
	/* Thrown away by choice both are gone. */
	make(".court.plot.rescue", bytes.bytes);
	rescue_fini(&rescue);
	rescue_read(&store, in(".court.plot.rescue"), &rescue);
	rescue_take(&store, &rescue, &kept);
	store_forget(&store);
	ck_assert(!is_there(".court.plot.rescue"));
	ck_assert(is_there(".court.plot.journal")); /* which was not this session's yet */
	found_end();
	text_fini(&bytes);
}
END_TEST

/* Spoils a step that is followed by others. */
static void damage(const char *name)
{
	struct text bytes = bytes_of(name);
	char *first = strstr(bytes.bytes, "\nstep "), *second = strstr(first + 1, "\nstep ");

	ck_assert_ptr_nonnull(second);
	second[-1] ^= 1;
	make(name, bytes.bytes);
	text_fini(&bytes);
}

static void act_draw_twice(void)
{
	struct history *history = history_new(&plot);

	act_draw();
	for (int i = 0; i < 2; i++) {
		history_record(history, &plot, "");
		plot.ground.cells[4] = i ? 'b' : 'p';
		if (!history_record(history, &plot, "") ||
		    !store_note(&store, history_last(history), &plot, &error))
			_exit(1);
	}
}

START_TEST(what_can_be_read_of_a_damaged_journal_is_taken_up_and_the_file_is_kept)
{
	char *kept;

	cut_off(act_draw_twice);
	damage(".court.plot.journal");
	find_one(".court.plot.journal");
	ck_assert_int_eq(rescue.state, JOURNAL_DAMAGED);
	ck_assert(plot_equal(&rescue.plot, &plot));
	ck_assert_str_eq(rescue.why.bytes, "a step in it is damaged");
	rescue_take(&store, &rescue, &kept);
	ck_assert_str_eq(kept, in("court.plot.rescued"));
	ck_assert(is_there(".court.plot.journal")); /* to be offered again after a kill */
	ck_assert(store_hold(&store, &rescue.plot, &error));
	ck_assert(is_there("court.plot.rescued"));
	free(kept);
	found_end();
	find_one(".court.plot.journal");
	ck_assert_int_eq(rescue.state, JOURNAL_WHOLE);
	found_end();
}
END_TEST

START_TEST(all_that_lies_in_the_way_of_another_plot_is_set_aside)
{
	char *kept;

	make(".court.plot.copy", "one");
	make(".court.plot.rescue", "two");
	cut_off(act_draw);
	store_open(&store, in("court.plot"));
	rescue_set_all_aside(&store, &kept);
	ck_assert_ptr_nonnull(kept);
	ck_assert(is_there("court.plot.rescued") && is_there("court.plot.rescued-2") &&
		is_there("court.plot.rescued-3"));
	rescue_find(&store, &list);
	ck_assert_uint_eq(list.count, 0);
	free(kept);
	rescue_list_fini(&list);
	store_close(&store);
}
END_TEST

/* ---- A plot that is rewritten in place ------------------------------------------------------- */

/* A killed writer has left the plot in pieces, and the copy that it made before. */
START_TEST(a_save_in_place_that_is_cut_off_leaves_a_copy_that_is_found)
{
	struct text bytes = TEXT_EMPTY;

	format_write(&later, &bytes);
	make(".court.plot.copy", bytes.bytes);
	make("court.plot", "parterre-plot 1\nunits imp");
	find_one(".court.plot.copy");
	ck_assert_int_eq(rescue.state, JOURNAL_WHOLE);
	ck_assert(plot_equal(&rescue.plot, &later));
	found_end();
	text_fini(&bytes);
}
END_TEST

static bool holds_either(const char *name)
{
	return kept_plot(name, &plot) || kept_plot(name, &later);
}

START_TEST(a_writer_in_place_that_is_killed_leaves_the_plot_or_its_copy_whole)
{
	make("court.plot", "");
	ck_assert_int_eq(link(in("court.plot"), in("backup")), 0);
	for (int i = 0; i < runner_count(30, 300); i++) {
		pid_t child = fork();

		if (child == 0) {
			store_open(&store, in("court.plot"));
			for (int j = 0;; j++)
				store_save(&store, j % 2 ? &plot : &later, &error);
		}
		while (!holds_either("court.plot") && !is_there(".court.plot.copy"))
			usleep(100);
		usleep((useconds_t)(i * 37 % 5000));
		session_kill(child);
		ck_assert(holds_either("court.plot") || holds_either(".court.plot.copy"));
	}
}
END_TEST

static void add_becomes(TCase *becomes)
{
	tcase_add_test(becomes, work_that_is_set_aside_is_a_plot_and_lies_over_nothing);
	tcase_add_test(becomes, work_that_is_taken_up_stays_in_a_file_until_it_is_saved);
	tcase_add_test(becomes,
		a_file_of_an_earlier_version_is_taken_up_and_goes_once_the_journal_has_its_work);
	tcase_add_test(becomes,
		what_can_be_read_of_a_damaged_journal_is_taken_up_and_the_file_is_kept);
	tcase_add_test(becomes, all_that_lies_in_the_way_of_another_plot_is_set_aside);
	tcase_add_test(becomes, a_save_in_place_that_is_cut_off_leaves_a_copy_that_is_found);
	tcase_add_test(becomes, a_writer_in_place_that_is_killed_leaves_the_plot_or_its_copy_whole);
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("rescue");
	TCase *found = suite_case(suite, "found"), *becomes = suite_case(suite, "becomes");

	tcase_add_checked_fixture(found, start, end);
	tcase_add_checked_fixture(becomes, start, end);
	tcase_add_test(found, work_of_a_killed_session_is_found_and_newer_than_the_plot);
	tcase_add_test(found, a_plot_that_was_written_since_is_not_older_whatever_its_time_says);
	tcase_add_test(found, nothing_is_found_where_nothing_was_left_or_another_has_the_plot);
	tcase_add_test(found, journals_of_sessions_without_a_lock_are_found_one_after_the_other);
	tcase_add_test(found,
		where_a_journal_cannot_be_looked_into_its_process_tells_whether_it_is_left);
	tcase_add_test(found,
		a_journal_of_a_process_lies_among_the_users_state_too);
	tcase_add_test(found, journals_of_processes_are_found_in_the_order_of_their_names);
	tcase_add_test(found, a_session_by_a_second_hard_link_leaves_the_others_work);
	tcase_add_test(found, work_among_the_users_state_is_found_by_every_way_to_the_plot);
	tcase_add_loop_test(found,
		a_file_that_cannot_be_read_is_found_with_its_reason_and_kept_as_it_is, 0,
		(int)(sizeof unreadable / sizeof *unreadable));
	tcase_add_test(found, a_file_one_may_not_read_is_set_aside_and_what_is_no_file_stays);
	add_becomes(becomes);
	return suite;
}
