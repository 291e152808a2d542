/* A plot's files: the lock that lets one session write, the rescue file, what happens outside. */
#include "plot/history/store.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <dirent.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

enum { NAMES = 8, NAME_ROOM = 1024, NOBODY = 65534 };

static const char *const rows[] = { "bb..", "b..p", NULL };

static char *folder;
static struct plot plot; /* of those rows */
static struct file_error error;

static void start(void)
{
	folder = scratch_new();
	plot_from_rows(&plot, rows);
}

static void end(void)
{
	plot_fini(&plot);
	scratch_remove(folder);
}

/* The path of a name in the folder; good until NAMES more are asked for. */
static const char *in(const char *name)
{
	static char paths[NAMES][NAME_ROOM];
	static int next;
	char *path = paths[next = (next + 1) % NAMES];

	snprintf(path, NAME_ROOM, "%s/%s", folder, name);
	return path;
}

static void make(const char *name, const char *text)
{
	FILE *file = fopen(in(name), "w");

	ck_assert_ptr_nonnull(file);
	fputs(text, file);
	ck_assert_int_eq(fclose(file), 0);
}

static bool is_there(const char *name)
{
	struct stat status;

	return lstat(in(name), &status) == 0;
}

static int mode_of(const char *name)
{
	struct stat status;

	ck_assert_int_eq(lstat(in(name), &status), 0);
	return status.st_mode & 07777;
}

/* Whether the file holds the plot. */
static bool holds(const char *name, const struct plot *expected)
{
	struct plot found;
	struct text message = TEXT_EMPTY;
	bool is_same;

	plot_init(&found);
	is_same = store_read(in(name), &found, &message) && plot_equal(&found, expected);
	plot_fini(&found);
	text_fini(&message);
	return is_same;
}

static struct store opened(const char *name, enum store_access access)
{
	struct store store;

	store_open(&store, in(name));
	ck_assert_int_eq(store.access, access);
	return store;
}

/* A store with the plot saved in it. */
static struct store saved(void)
{
	struct store store = opened("court.plot", STORE_WRITES);

	ck_assert_msg(store_save(&store, &plot, &error), "%s", error.sentence);
	return store;
}

/* ---- The lock -------------------------------------------------------------------------------- */

START_TEST(one_session_writes_and_the_next_only_looks)
{
	struct store first = saved(), second = opened("court.plot", STORE_LOOKS), third;

	ck_assert_int_eq(second.holder, getpid());
	ck_assert_int_eq(first.holder, 0);
	ck_assert(is_there(".court.plot.lock"));
	store_close(&second);
	ck_assert(is_there(".court.plot.lock"));
	third = opened("court.plot", STORE_LOOKS);
	store_close(&third);
	store_close(&first);
	ck_assert(!is_there(".court.plot.lock"));
	third = opened("court.plot", STORE_WRITES);
	store_close(&third);
}
END_TEST

START_TEST(the_lock_holds_through_every_save)
{
	struct store first = saved();

	for (int i = 0; i < 3; i++) {
		struct store second = opened("court.plot", STORE_LOOKS);

		store_close(&second);
		ck_assert(store_save(&first, &plot, &error));
	}
	store_close(&first);
}
END_TEST

START_TEST(other_names_of_a_plot_have_its_lock_and_other_plots_their_own)
{
	struct store first = saved(), second;

	ck_assert_int_eq(mkdir(in("sub"), 0700), 0);
	ck_assert_int_eq(symlink("../court.plot", in("sub/link.plot")), 0);
	second = opened("sub/link.plot", STORE_LOOKS);
	store_close(&second);
	second = opened("other.plot", STORE_WRITES);
	store_close(&second);
	store_close(&first);
}
END_TEST

/* Runs `act` in a process of its own, which says when it is done and then waits to be killed. */
static pid_t session_start(void (*act)(void))
{
	int ends[2];
	char done;
	pid_t child;

	ck_assert_int_eq(pipe(ends), 0);
	child = fork();
	if (child == 0) {
		act();
		if (write(ends[1], "!", 1) == 1)
			for (;;)
				pause();
		_exit(1);
	}
	ck_assert_int_eq(read(ends[0], &done, 1), 1);
	close(ends[0]);
	close(ends[1]);
	return child;
}

static void session_kill(pid_t session)
{
	kill(session, SIGKILL);
	ck_assert_int_eq(waitpid(session, NULL, 0), session);
}

static void act_open(void)
{
	struct store store;

	store_open(&store, in("court.plot"));
}

static void act_open_and_rescue(void)
{
	struct store store;

	store_open(&store, in("court.plot"));
	if (!store_rescue(&store, &plot, &error))
		_exit(1);
}

START_TEST(a_session_killed_lets_go_of_its_lock)
{
	pid_t session = session_start(act_open);
	struct store store = opened("court.plot", STORE_LOOKS);

	ck_assert_int_eq(store.holder, session);
	store_close(&store);
	session_kill(session);
	ck_assert(is_there(".court.plot.lock"));
	store = opened("court.plot", STORE_WRITES);
	struct store second = opened("court.plot", STORE_LOOKS);
	ck_assert_int_eq(second.holder, getpid());
	store_close(&second);
	store_close(&store);
	ck_assert(!is_there(".court.plot.lock"));
}
END_TEST

/* Opens and closes; while it may write, nobody else may. */
static void contend(void)
{
	char mark[NAME_ROOM];

	snprintf(mark, sizeof mark, "%s", in("mark"));
	for (int i = 0; i < 300; i++) {
		struct store store;

		store_open(&store, in("court.plot"));
		if (store.access == STORE_UNGUARDED)
			_exit(2);
		if (store.access == STORE_WRITES) {
			int fd = open(mark, O_CREAT | O_EXCL, 0600);

			if (fd < 0)
				_exit(1);
			close(fd);
			usleep(i % 3 ? 0 : 50);
			unlink(mark);
		}
		store_close(&store);
	}
	_exit(0);
}

START_TEST(never_do_two_of_many_sessions_write_at_once)
{
	enum { SESSIONS = 6 };
	pid_t sessions[SESSIONS];

	for (int i = 0; i < SESSIONS; i++) {
		sessions[i] = fork();
		if (sessions[i] == 0)
			contend();
	}
	for (int i = 0; i < SESSIONS; i++) {
		int status;

		ck_assert_int_eq(waitpid(sessions[i], &status, 0), sessions[i]);
		ck_assert(WIFEXITED(status));
		ck_assert_int_eq(WEXITSTATUS(status), 0);
	}
	ck_assert(!is_there(".court.plot.lock"));
}
END_TEST

START_TEST(a_lock_file_that_somebody_removed_is_not_mistaken_for_the_next_ones)
{
	struct store first = saved(), second, third;

	ck_assert_int_eq(unlink(in(".court.plot.lock")), 0);
	second = opened("court.plot", STORE_WRITES);
	store_close(&first);
	third = opened("court.plot", STORE_LOOKS);
	store_close(&third);
	store_close(&second);
}
END_TEST

START_TEST(where_no_lock_can_be_had_the_plot_is_open_unguarded)
{
	struct store store;

	ck_assert_int_eq(mkdir(in(".court.plot.lock"), 0700), 0);
	store = opened("court.plot", STORE_UNGUARDED);
	ck_assert(store_save(&store, &plot, &error));
	store_close(&store);
	ck_assert(is_there(".court.plot.lock"));
	ck_assert(holds("court.plot", &plot));
	/* Nor is a link followed to where somebody else would have a file made. */
	ck_assert_int_eq(symlink("victim", in(".other.plot.lock")), 0);
	store = opened("other.plot", STORE_UNGUARDED);
	store_close(&store);
	ck_assert(!is_there("victim"));
	store_open(&store, in("nowhere/court.plot"));
	ck_assert_int_eq(store.access, STORE_UNGUARDED);
	ck_assert(!store_save(&store, &plot, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, "No such file or directory"));
	store_close(&store);
}
END_TEST

START_TEST(who_only_looks_writes_nothing)
{
	struct store first = saved(), second;
	struct plot changed, rescued;
	struct timespec when;
	char *kept;

	plot_from_rows(&changed, (const char *const[]){ "p", NULL });
	plot_init(&rescued);
	ck_assert(store_rescue(&first, &plot, &error));
	second = opened("court.plot", STORE_LOOKS);
	ck_assert(!store_save(&second, &changed, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, "another session (process "));
	ck_assert(store_rescue(&second, &changed, &error));
	ck_assert(holds("court.plot", &plot));
	ck_assert(holds(".court.plot.rescue", &plot));
	ck_assert(!store_rescued(&second, &rescued, &when));
	store_rescue_drop(&second);
	ck_assert(!store_rescue_keep(&second, &kept));
	ck_assert_ptr_null(kept);
	ck_assert(is_there(".court.plot.rescue"));
	store_close(&second);
	store_close(&first);
	plot_fini(&changed);
}
END_TEST

/* ---- Reading --------------------------------------------------------------------------------- */

static void check_message(const char *path, const char *expected)
{
	struct text message = TEXT_EMPTY;
	struct plot read;

	plot_init(&read);
	ck_assert(!store_read(path, &read, &message));
	ck_assert_str_eq(message.bytes, expected);
	ck_assert_ptr_null(read.ground.cells);
	text_fini(&message);
}

START_TEST(what_cannot_be_read_is_told_in_one_line)
{
	char expected[2 * NAME_ROOM];

	make("bad.plot", "parterre-plot 1\nunits imperial\ncell 12\n");
	snprintf(expected, sizeof expected,
		"%s:3:6: found 12, expected a length with its unit, such as 12 in", in("bad.plot"));
	check_message(in("bad.plot"), expected);
	snprintf(expected, sizeof expected, "cannot open %s: No such file or directory",
		in("missing.plot"));
	check_message(in("missing.plot"), expected);
	make("large.plot", "");
	ck_assert_int_eq(truncate(in("large.plot"), FORMAT_BYTES_MOST + 1), 0);
	snprintf(expected, sizeof expected, "cannot read %s: File too large", in("large.plot"));
	check_message(in("large.plot"), expected);
}
END_TEST

START_TEST(a_dash_is_standard_input_and_is_named_so)
{
	int kept = dup(STDIN_FILENO), fd;

	make("bad.plot", "nothing\n");
	fd = open(in("bad.plot"), O_RDONLY);
	dup2(fd, STDIN_FILENO);
	close(fd);
	check_message("-", "-:1:1: found nothing, expected parterre-plot 1, the first line of a "
		"plot");
	dup2(kept, STDIN_FILENO);
	close(kept);
}
END_TEST

START_TEST(what_was_saved_is_loaded)
{
	struct store store = saved();
	struct text message = TEXT_EMPTY;
	struct plot read;

	plot_init(&read);
	ck_assert(store_load(&store, &read, &message));
	ck_assert(plot_equal(&read, &plot));
	ck_assert_uint_eq(message.length, 0);
	plot_fini(&read);
	store_close(&store);
	ck_assert_ptr_null(store.path);
	text_fini(&message);
}
END_TEST

START_TEST(a_change_outside_is_noticed)
{
	struct store store = opened("court.plot", STORE_WRITES);
	struct text message = TEXT_EMPTY;
	struct plot read;

	ck_assert(!store_is_changed(&store)); /* there is none, as before */
	make("court.plot", "");
	ck_assert(store_is_changed(&store));
	ck_assert(store_save(&store, &plot, &error));
	ck_assert(!store_is_changed(&store));
	make("court.plot", "parterre-plot 1\nunits metric\ncell 1 m\nground 1 x 1\n .\n");
	ck_assert(store_is_changed(&store));
	plot_init(&read);
	ck_assert(store_load(&store, &read, &message));
	ck_assert(!store_is_changed(&store));
	ck_assert_int_eq(unlink(in("court.plot")), 0);
	ck_assert(store_is_changed(&store));
	plot_fini(&read);
	store_close(&store);
	text_fini(&message);
}
END_TEST

/* ---- Rescue ---------------------------------------------------------------------------------- */

START_TEST(a_session_killed_leaves_its_work_to_the_next)
{
	pid_t session = session_start(act_open_and_rescue);
	struct plot rescued;
	struct timespec when = { 0 };
	struct store store;

	session_kill(session);
	store = opened("court.plot", STORE_WRITES);
	plot_init(&rescued);
	ck_assert(store_rescued(&store, &rescued, &when));
	ck_assert(plot_equal(&rescued, &plot));
	ck_assert_int_ge(when.tv_sec, time(NULL) - 60);
	ck_assert_int_le(when.tv_sec, time(NULL) + 1);
	ck_assert(store_save(&store, &rescued, &error));
	ck_assert(!is_there(".court.plot.rescue"));
	ck_assert(holds("court.plot", &plot));
	plot_fini(&rescued);
	store_close(&store);
}
END_TEST

START_TEST(where_nothing_was_left_nothing_is_rescued)
{
	struct store store = saved();
	struct plot rescued;
	struct timespec when;
	char *kept;

	plot_init(&rescued);
	ck_assert(!store_rescued(&store, &rescued, &when));
	ck_assert(!store_rescue_keep(&store, &kept));
	ck_assert_ptr_null(kept);
	store_rescue_drop(&store);
	/* Half a plot is none. */
	make(".court.plot.rescue", "parterre-plot 1\nunits metric\n");
	ck_assert(!store_rescued(&store, &rescued, &when));
	ck_assert_ptr_null(rescued.ground.cells);
	store_close(&store);
}
END_TEST

START_TEST(a_rescue_file_is_replaced_dropped_by_saving_and_left_by_closing)
{
	struct store store = saved();
	struct plot later;

	plot_from_rows(&later, (const char *const[]){ "p.", NULL });
	ck_assert(store_rescue(&store, &plot, &error));
	ck_assert(store_rescue(&store, &later, &error));
	ck_assert(holds(".court.plot.rescue", &later));
	store_close(&store);
	ck_assert(is_there(".court.plot.rescue"));
	store = opened("court.plot", STORE_WRITES);
	store_rescue_drop(&store);
	ck_assert(!is_there(".court.plot.rescue"));
	store_close(&store);
	plot_fini(&later);
}
END_TEST

START_TEST(a_save_that_fails_leaves_the_rescue_file)
{
	struct store store = opened("court.plot", STORE_WRITES);

	ck_assert(store_rescue(&store, &plot, &error));
	ck_assert_int_eq(mkfifo(in("court.plot"), 0600), 0);
	ck_assert(!store_save(&store, &plot, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, "it is not a regular file"));
	ck_assert(is_there(".court.plot.rescue"));
	store_close(&store);
}
END_TEST

START_TEST(a_rescue_file_is_as_private_as_the_plot)
{
	struct store store = opened("court.plot", STORE_WRITES);

	ck_assert(store_rescue(&store, &plot, &error));
	ck_assert_int_eq(mode_of(".court.plot.rescue"), 0600);
	ck_assert(store_save(&store, &plot, &error));
	ck_assert_int_eq(chmod(in("court.plot"), 0640), 0);
	ck_assert(store_rescue(&store, &plot, &error));
	ck_assert_int_eq(mode_of(".court.plot.rescue"), 0640);
	store_rescue_drop(&store);
	/* A link that somebody laid there leads nobody's plot away. */
	make("victim", "kept");
	ck_assert_int_eq(symlink("victim", in(".court.plot.rescue")), 0);
	ck_assert(store_rescue(&store, &plot, &error));
	ck_assert(holds(".court.plot.rescue", &plot));
	ck_assert(!holds("victim", &plot));
	store_close(&store);
}
END_TEST

START_TEST(work_that_is_kept_is_no_longer_offered_and_lies_over_nothing)
{
	static const char *const names[] = { "court.plot.rescued", "court.plot.rescued-2",
		"court.plot.rescued-3" };
	struct store store = saved();
	struct plot rescued;
	struct timespec when;

	plot_init(&rescued);
	make(names[1], "somebody's");
	for (int i = 0; i < 3; i += 2) {
		char *kept = NULL;

		ck_assert(store_rescue(&store, &plot, &error));
		ck_assert(store_rescue_keep(&store, &kept));
		ck_assert_str_eq(kept, in(names[i]));
		ck_assert(holds(names[i], &plot));
		ck_assert(!is_there(".court.plot.rescue"));
		ck_assert(!store_rescued(&store, &rescued, &when));
		free(kept);
	}
	ck_assert(!holds(names[1], &plot));
	store_close(&store);
}
END_TEST

START_TEST(in_a_folder_that_takes_no_file_a_plot_is_saved_without_lock_or_rescue)
{
	char *was = realpath(".", NULL), *whole = folder;
	struct store store = saved();

	store_close(&store);
	ck_assert_int_eq(chdir(folder), 0);
	folder = strdup(".");
	if (getuid() == 0) {
		ck_assert_int_eq(chown(".", NOBODY, NOBODY), 0);
		ck_assert_int_eq(chown("court.plot", NOBODY, NOBODY), 0);
		ck_assert_int_eq(seteuid(NOBODY), 0);
	}
	ck_assert_int_eq(chmod(".", 0500), 0);
	store = opened("court.plot", STORE_UNGUARDED);
	plot_set(&plot, 0, HEAD_NORTH, "90");
	ck_assert_msg(store_save(&store, &plot, &error), "%s", error.sentence);
	ck_assert(holds("court.plot", &plot));
	ck_assert(!store_rescue(&store, &plot, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, ".court.plot.rescue: Permission denied"));
	store_close(&store);
	ck_assert_int_eq(chmod(".", 0700), 0);
	ck_assert(getuid() != 0 || seteuid(0) == 0);
	ck_assert_int_eq(chdir(was), 0);
	free(was);
	free(folder);
	folder = whole;
}
END_TEST

static void add_lock(TCase *lock)
{
	tcase_add_test(lock, one_session_writes_and_the_next_only_looks);
	tcase_add_test(lock, the_lock_holds_through_every_save);
	tcase_add_test(lock, other_names_of_a_plot_have_its_lock_and_other_plots_their_own);
	tcase_add_test(lock, a_session_killed_lets_go_of_its_lock);
	tcase_add_test(lock, never_do_two_of_many_sessions_write_at_once);
	tcase_add_test(lock, a_lock_file_that_somebody_removed_is_not_mistaken_for_the_next_ones);
	tcase_add_test(lock, where_no_lock_can_be_had_the_plot_is_open_unguarded);
	tcase_add_test(lock, who_only_looks_writes_nothing);
}

static void add_rescue(TCase *rescue)
{
	tcase_add_test(rescue, a_session_killed_leaves_its_work_to_the_next);
	tcase_add_test(rescue, where_nothing_was_left_nothing_is_rescued);
	tcase_add_test(rescue, a_rescue_file_is_replaced_dropped_by_saving_and_left_by_closing);
	tcase_add_test(rescue, a_save_that_fails_leaves_the_rescue_file);
	tcase_add_test(rescue, a_rescue_file_is_as_private_as_the_plot);
	tcase_add_test(rescue, work_that_is_kept_is_no_longer_offered_and_lies_over_nothing);
	tcase_add_test(rescue,
		in_a_folder_that_takes_no_file_a_plot_is_saved_without_lock_or_rescue);
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("store");
	TCase *lock = suite_case(suite, "lock"), *reading = suite_case(suite, "reading"),
		*rescue = suite_case(suite, "rescue");

	tcase_add_checked_fixture(lock, start, end);
	tcase_add_checked_fixture(reading, start, end);
	tcase_add_checked_fixture(rescue, start, end);
	add_lock(lock);
	tcase_add_test(reading, what_cannot_be_read_is_told_in_one_line);
	tcase_add_test(reading, a_dash_is_standard_input_and_is_named_so);
	tcase_add_test(reading, what_was_saved_is_loaded);
	tcase_add_test(reading, a_change_outside_is_noticed);
	add_rescue(rescue);
	return suite;
}
