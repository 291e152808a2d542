/* A plot's files: the lock that lets one session write, the journal, what happens outside. */
#include "plot/history/store.h"
#include "base/folder.h"
#include "base/path.h"
#include "base/temporary.h"
#include "support/folder.h"
#include "support/kept.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

enum { NAME_ROOM = 4300, NOBODY = 65534 };

static const char *const rows[] = { "bb..", "b..p", NULL };

static struct plot plot; /* of those rows */
static struct file_error error;

static void start(void)
{
	folder_start();
	plot_from_rows(&plot, rows);
}

static void end(void)
{
	plot_fini(&plot);
	folder_end();
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

	ck_assert_int_eq(second.lock.holder, getpid());
	ck_assert_int_eq(first.lock.holder, 0);
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

static void act_open(void)
{
	struct store store;

	store_open(&store, in("court.plot"));
}

START_TEST(a_session_killed_lets_go_of_its_lock)
{
	pid_t session = session_start(act_open);
	struct store store = opened("court.plot", STORE_LOOKS);

	ck_assert_int_eq(store.lock.holder, session);
	store_close(&store);
	session_kill(session);
	ck_assert(is_there(".court.plot.lock"));
	store = opened("court.plot", STORE_WRITES);
	struct store second = opened("court.plot", STORE_LOOKS);
	ck_assert_int_eq(second.lock.holder, getpid());
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
	ck_assert(kept_plot("court.plot", &plot));
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
	struct plot changed;

	plot_from_rows(&changed, (const char *const[]){ "p", NULL });
	ck_assert(store_hold(&first, &plot, &error));
	second = opened("court.plot", STORE_LOOKS);
	ck_assert(!store_save(&second, &changed, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, "another session (process "));
	ck_assert(store_hold(&second, &changed, &error));
	ck_assert(kept_plot("court.plot", &plot));
	store_forget(&second);
	ck_assert(is_there(".court.plot.journal"));
	store_close(&second);
	store_close(&first);
	ck_assert_int_eq(folder_count(), 2);
	plot_fini(&changed);
}
END_TEST

START_TEST(who_looks_is_told_whether_the_writer_is_still_there)
{
	pid_t session = session_start(act_open);
	struct store second = opened("court.plot", STORE_LOOKS);

	ck_assert(store_is_held(&second));
	ck_assert_int_eq(second.lock.holder, session);
	session_kill(session);
	ck_assert(!store_is_held(&second));
	ck_assert_int_eq(unlink(in(".court.plot.lock")), 0);
	ck_assert(!store_is_held(&second));
	store_close(&second);
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

START_TEST(a_plot_whose_file_is_a_dash_is_never_read_from_standard_input)
{
	struct store store;

	store_open(&store, "-");
	ck_assert_str_eq(store.path, "./-");
	store_close(&store);
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

START_TEST(the_same_bytes_are_no_change_whatever_else_became_of_the_file)
{
	struct store store = saved();
	struct text bytes = bytes_of("court.plot");
	struct timespec times[2];
	struct stat was;

	ck_assert_int_eq(link(in("court.plot"), in("backup")), 0);
	ck_assert(!store_is_changed(&store));
	make("copy", bytes.bytes);
	ck_assert_int_eq(rename(in("copy"), in("court.plot")), 0);
	ck_assert(!store_is_changed(&store));
	/* The same length and time with other bytes: only the time of the inode tells. */
	ck_assert(store_save(&store, &plot, &error));
	ck_assert_int_eq(stat(in("court.plot"), &was), 0);
	times[0] = was.st_atim;
	times[1] = was.st_mtim;
	*strchr(bytes.bytes, 'f') = 'm';
	make("court.plot", bytes.bytes);
	ck_assert_int_eq(utimensat(AT_FDCWD, in("court.plot"), times, 0), 0);
	ck_assert(store_is_changed(&store));
	store_close(&store);
	text_fini(&bytes);
}
END_TEST

/* ---- The journal ----------------------------------------------------------------------------- */

static struct history *history;

/* A stroke that changes the cell, written down. */
static bool stroke(struct store *store, int cell, char letter)
{
	plot.ground.cells[cell] = letter;
	ck_assert(history_record(history, &plot, ""));
	return store_note(store, history_last(history), &plot, &error);
}

static void check_journal(const char *name, const struct plot *expected,
	const struct plot_stamp *expected_stamp)
{
	struct plot_stamp stamp = kept_check_journal(name, expected);

	ck_assert(plot_stamp_equal(&stamp, expected_stamp));
}

/* The plot that the journal began with is the one that was saved. */
START_TEST(the_first_stroke_begins_the_journal_with_the_plot_as_it_was_saved)
{
	struct store store = saved();
	struct plot_stamp stamp = store_stamp(&store);
	struct text saved_text = bytes_of("court.plot"), text;

	history = history_new(&plot);
	ck_assert(!is_there(".court.plot.journal"));
	ck_assert_int_eq(store_sync(&store), -1);
	ck_assert(stroke(&store, 2, 'p'));
	text = bytes_of(".court.plot.journal");
	ck_assert_ptr_nonnull(strstr(text.bytes, saved_text.bytes));
	ck_assert_int_eq(mode_of(".court.plot.journal"), 0600);
	check_journal(".court.plot.journal", &plot, &stamp);
	ck_assert(stroke(&store, 3, 'p'));
	check_journal(".court.plot.journal", &plot, &stamp);
	ck_assert_int_eq(folder_count(), 3);
	/* Closing leaves it: the session may have been cut off. */
	store_close(&store);
	check_journal(".court.plot.journal", &plot, &stamp);
	text_fini(&text);
	text_fini(&saved_text);
	history_free(history);
}
END_TEST

/* Nor is it a failure. */
START_TEST(strokes_of_who_only_looks_are_written_nowhere)
{
	struct store first = saved(), second = opened("court.plot", STORE_LOOKS);

	history = history_new(&plot);
	ck_assert(stroke(&second, 2, 'p'));
	ck_assert(!is_there(".court.plot.journal"));
	store_close(&second);
	store_close(&first);
	ck_assert_int_eq(folder_count(), 1);
	history_free(history);
}
END_TEST

START_TEST(a_save_takes_the_journal_away_and_the_next_stroke_begins_another)
{
	struct store store = saved();
	struct plot_stamp stamp;
	struct place at;

	history = history_new(&plot);
	ck_assert(stroke(&store, 2, 'p'));
	ck_assert(store_save(&store, &plot, &error));
	ck_assert(!is_there(".court.plot.journal"));
	stamp = store_stamp(&store);
	/* Taking back what was saved is work that is not saved. */
	ck_assert(history_undo(history, &plot, &at));
	ck_assert(store_note(&store, history_last(history), &plot, &error));
	check_journal(".court.plot.journal", &plot, &stamp);
	store_forget(&store);
	ck_assert(!is_there(".court.plot.journal"));
	store_close(&store);
	ck_assert_int_eq(folder_count(), 1);
	history_free(history);
}
END_TEST

START_TEST(a_save_that_fails_leaves_the_journal)
{
	struct store store = opened("court.plot", STORE_WRITES);

	ck_assert(store_hold(&store, &plot, &error));
	ck_assert_int_eq(mkfifo(in("court.plot"), 0600), 0);
	ck_assert(!store_save(&store, &plot, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, "it is not a regular file"));
	check_journal(".court.plot.journal", &plot, &(struct plot_stamp){ .exists = false });
	store_close(&store);
}
END_TEST

/* A stroke may wait for the disk; a whole plot, of which there is nothing else, may not. */
START_TEST(a_held_plot_is_on_the_disk_and_a_stroke_will_be)
{
	struct store store = saved();

	history = history_new(&plot);
	ck_assert(store_hold(&store, &plot, &error));
	ck_assert_int_eq(store_sync(&store), -1);
	ck_assert(stroke(&store, 2, 'p'));
	ck_assert_int_gt(store_sync(&store), 0);
	store_close(&store);
	history_free(history);
}
END_TEST

/* However many strokes: twice the plot, or the plot and 64 kB, and one more stroke. */
START_TEST(a_journal_is_begun_anew_before_it_grows_without_end)
{
	struct store store = saved();
	struct text bytes = bytes_of("court.plot");
	size_t most = 2 * bytes.length + 64 * 1024 + 1000, largest = 0;
	struct stat status;

	history = history_new(&plot);
	for (int i = 0; i < 5000; i++) {
		ck_assert(stroke(&store, 2, i % 2 ? 'p' : 'b'));
		ck_assert_int_eq(stat(in(".court.plot.journal"), &status), 0);
		largest = (size_t)status.st_size > largest ? (size_t)status.st_size : largest;
	}
	ck_assert_uint_lt(largest, most);
	ck_assert_uint_gt(largest, 64 * 1024);
	ck_assert_int_lt(status.st_size, (off_t)largest);
	check_journal(".court.plot.journal", &plot, &(struct plot_stamp){ .exists = true,
		.written = store.stamp.written, .length = bytes.length, .hash = store.hash });
	ck_assert_int_eq(folder_count(), 3);
	store_close(&store);
	text_fini(&bytes);
	history_free(history);
}
END_TEST

START_TEST(a_full_journal_that_cannot_be_begun_anew_grows_on)
{
	struct store store;

	plain_user();
	setenv("XDG_STATE_HOME", "/nowhere", 1);
	store = saved();
	history = history_new(&plot);
	ck_assert(stroke(&store, 2, 'p'));
	ck_assert_int_eq(chmod(".", 0500), 0);
	while (!journal_is_full(&store.journal))
		ck_assert(stroke(&store, 2, plot.ground.cells[2] == 'p' ? 'b' : 'p'));
	ck_assert(stroke(&store, 3, 'p') && stroke(&store, 3, 'b'));
	check_journal(".court.plot.journal", &plot, &(struct plot_stamp){ .exists = true,
		.written = store.stamp.written, .length = (size_t)store.stamp.size,
		.hash = store.hash });
	ck_assert_int_eq(chmod(".", 0700), 0);
	ck_assert(stroke(&store, 3, 'p'));
	ck_assert(!journal_is_full(&store.journal));
	store_close(&store);
	history_free(history);
	usual_user();
}
END_TEST

/* As where names are long: none of a journal fits beside the plot. */
START_TEST(where_no_journal_can_be_beside_the_plot_it_is_among_the_users_state)
{
	struct store store;
	char *state;

	ck_assert_int_eq(mkdir(in(".court.plot.journal"), 0700), 0);
	store = opened("court.plot", STORE_WRITES);
	state = path_in_state(in("court.plot"), ".journal");
	ck_assert_int_ne(access(state, F_OK), 0);
	ck_assert(store_has_place(&store));
	ck_assert(store_hold(&store, &plot, &error));
	ck_assert_str_eq(store.journal.path, state);
	ck_assert_int_eq(access(state, R_OK), 0);
	store_forget(&store);
	ck_assert_int_ne(access(state, F_OK), 0);
	store_close(&store);
	free(state);
}
END_TEST

START_TEST(a_name_as_long_as_names_may_be_has_its_journal_there)
{
	for (size_t length = 240; length <= 255; length++) {
		char name[256];
		struct store store;

		memset(name, 'n', length);
		name[length] = '\0';
		store_open(&store, in(name));
		ck_assert(store_has_place(&store));
		ck_assert(store_save(&store, &plot, &error));
		ck_assert_msg(store_hold(&store, &plot, &error), "%zu: %s", length, error.sentence);
		store_forget(&store);
		store_close(&store);
	}
	ck_assert_int_eq(folder_count(), 16);
}
END_TEST

START_TEST(without_a_place_for_a_journal_it_is_said_why)
{
	struct store store;

	ck_assert_int_eq(mkdir(in(".court.plot.journal"), 0700), 0);
	make("state", "");
	setenv("XDG_STATE_HOME", in("state"), 1);
	store = opened("court.plot", STORE_WRITES);
	ck_assert(!store_has_place(&store));
	ck_assert(!store_hold(&store, &plot, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence, "there is no place for it"));
	history = history_new(&plot);
	ck_assert(!stroke(&store, 2, 'p'));
	ck_assert(store_save(&store, &plot, &error));
	store_close(&store);
	unsetenv("XDG_STATE_HOME");
	unsetenv("HOME");
	store = opened("court.plot", STORE_WRITES);
	ck_assert(!store_has_place(&store));
	store_close(&store);
	history_free(history);
}
END_TEST

/* Both places were free when the plot was opened. */
START_TEST(where_a_place_is_taken_meanwhile_it_is_said_why)
{
	struct store store;
	char sentence[sizeof error.sentence], *state;

	make("state", "");
	setenv("XDG_STATE_HOME", in("state"), 1);
	state = path_in_state(in("court.plot"), ".journal");
	store = opened("court.plot", STORE_WRITES);
	ck_assert_int_eq(mkdir(in(".court.plot.journal"), 0700), 0);
	ck_assert(!store_hold(&store, &plot, &error));
	snprintf(sentence, sizeof sentence, "cannot write %s: %s", state, strerror(ENOTDIR));
	ck_assert_str_eq(error.sentence, sentence);
	store_close(&store);
	free(state);
	unsetenv("XDG_STATE_HOME");
}
END_TEST

START_TEST(without_a_lock_two_sessions_have_a_journal_each_and_leave_the_others)
{
	struct store first, second;
	char name[64];

	ck_assert_int_eq(mkdir(in(".court.plot.lock"), 0700), 0);
	first = opened("court.plot", STORE_UNGUARDED);
	second = opened("court.plot", STORE_UNGUARDED);
	ck_assert(store_hold(&first, &plot, &error));
	snprintf(name, sizeof name, ".court.plot.journal.%ld", (long)getpid());
	ck_assert(is_there(name));
	store_forget(&second);
	ck_assert(store_save(&second, &plot, &error));
	store_close(&second);
	ck_assert(is_there(name));
	store_forget(&first);
	ck_assert(!is_there(name));
	store_close(&first);
}
END_TEST

static void write_and_die(void)
{
	struct temporary left;

	if (!temporary_begin(&left, in("court.plot")))
		_exit(1);
}

START_TEST(what_a_killed_process_left_half_written_is_swept_by_the_next_writer)
{
	pid_t session = session_start(write_and_die);
	struct store store;

	ck_assert_int_eq(folder_count(), 1);
	store = opened("other.plot", STORE_WRITES); /* while it lives it may still be written */
	ck_assert_int_eq(folder_count(), 2);
	store_close(&store);
	session_kill(session);
	make(".parterre-notes", "kept"); /* nobody's, and new */
	make("parterre-1-1", "kept");
	store = opened("court.plot", STORE_WRITES);
	ck_assert_int_eq(folder_count(), 3);
	store_close(&store);
	ck_assert_int_eq(folder_count(), 2);
}
END_TEST

static void write_copy_and_die(void)
{
	char *copy = path_in_state(in("court.plot"), FILE_COPY);
	struct temporary left;

	if (!folder_make(copy) || !temporary_begin(&left, copy))
		_exit(1);
}

START_TEST(so_is_what_it_left_among_the_users_state)
{
	struct store store;

	setenv("XDG_STATE_HOME", in("state"), 1);
	session_kill(session_start(write_copy_and_die));
	ck_assert_int_ne(rmdir(in("state/parterre")), 0);
	store = opened("court.plot", STORE_WRITES);
	store_close(&store);
	ck_assert_int_eq(rmdir(in("state/parterre")), 0); /* nothing is in it */
}
END_TEST

START_TEST(in_a_folder_that_takes_no_file_a_plot_is_saved_and_rescued_without_one)
{
	struct store store = saved();

	store_close(&store);
	if (getuid() == 0)
		ck_assert_int_eq(chown(in("court.plot"), NOBODY, NOBODY), 0);
	plain_user();
	ck_assert_int_eq(chmod(".", 0500), 0);
	setenv("XDG_STATE_HOME", "/nowhere", 1);
	store = opened("court.plot", STORE_UNGUARDED);
	ck_assert(!store_has_place(&store));
	plot_set(&plot, 0, HEAD_NORTH, "90");
	/* Nor can a copy be kept while the old plot is written over. */
	ck_assert(!store_save(&store, &plot, &error));
	ck_assert_ptr_nonnull(strstr(error.sentence,
		"cannot keep a copy before writing over court.plot"));
	store_close(&store);

	ck_assert_int_eq(chmod(".", 0700), 0);
	ck_assert_int_eq(mkdir("state", 0700), 0);
	char *state = realpath("state", NULL);
	ck_assert_int_eq(chmod(".", 0500), 0);
	setenv("XDG_STATE_HOME", state, 1);
	free(state);
	store = opened("court.plot", STORE_UNGUARDED);
	ck_assert(store_has_place(&store));
	ck_assert_msg(store_hold(&store, &plot, &error), "%s", error.sentence);
	ck_assert_msg(store_save(&store, &plot, &error), "%s", error.sentence);
	ck_assert(kept_plot("court.plot", &plot));
	store_close(&store);
	ck_assert_int_eq(chmod(".", 0700), 0);
	ck_assert_int_eq(folder_count(), 2);
	usual_user();
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
	tcase_add_test(lock, who_looks_is_told_whether_the_writer_is_still_there);
}

static void add_journal(TCase *journal)
{
	tcase_add_test(journal,
		the_first_stroke_begins_the_journal_with_the_plot_as_it_was_saved);
	tcase_add_test(journal, strokes_of_who_only_looks_are_written_nowhere);
	tcase_add_test(journal, a_save_takes_the_journal_away_and_the_next_stroke_begins_another);
	tcase_add_test(journal, a_save_that_fails_leaves_the_journal);
	tcase_add_test(journal, a_held_plot_is_on_the_disk_and_a_stroke_will_be);
	tcase_add_test(journal, a_journal_is_begun_anew_before_it_grows_without_end);
	tcase_add_test(journal, a_full_journal_that_cannot_be_begun_anew_grows_on);
	tcase_add_test(journal,
		where_no_journal_can_be_beside_the_plot_it_is_among_the_users_state);
	tcase_add_test(journal, a_name_as_long_as_names_may_be_has_its_journal_there);
	tcase_add_test(journal, without_a_place_for_a_journal_it_is_said_why);
	tcase_add_test(journal, where_a_place_is_taken_meanwhile_it_is_said_why);
	tcase_add_test(journal,
		without_a_lock_two_sessions_have_a_journal_each_and_leave_the_others);
	tcase_add_test(journal,
		what_a_killed_process_left_half_written_is_swept_by_the_next_writer);
	tcase_add_test(journal, so_is_what_it_left_among_the_users_state);
	tcase_add_test(journal,
		in_a_folder_that_takes_no_file_a_plot_is_saved_and_rescued_without_one);
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("store");
	TCase *lock = suite_case(suite, "lock"), *reading = suite_case(suite, "reading"),
		*journal = suite_case(suite, "journal");

	tcase_add_checked_fixture(lock, start, end);
	tcase_add_checked_fixture(reading, start, end);
	tcase_add_checked_fixture(journal, start, end);
	add_lock(lock);
	tcase_add_test(reading, what_cannot_be_read_is_told_in_one_line);
	tcase_add_test(reading, a_dash_is_standard_input_and_is_named_so);
	tcase_add_test(reading, a_plot_whose_file_is_a_dash_is_never_read_from_standard_input);
	tcase_add_test(reading, what_was_saved_is_loaded);
	tcase_add_test(reading, a_change_outside_is_noticed);
	tcase_add_test(reading, the_same_bytes_are_no_change_whatever_else_became_of_the_file);
	add_journal(journal);
	return suite;
}
