/* Files on the way to their place: whole there, or gone. */
#include "base/temporary.h"
#include "base/file.h"
#include "base/folder.h"
#include "base/path.h"
#include "support/folder.h"
#include "support/runner.h"

#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

static void check_holds(const char *name, const char *expected)
{
	struct text bytes = bytes_of(name);

	ck_assert_str_eq(bytes.bytes, expected);
	text_fini(&bytes);
}

/* One with some text in it. */
static struct temporary begun(const char *name)
{
	struct temporary t;

	ck_assert(temporary_begin(&t, in(name)));
	ck_assert_int_eq(write(t.fd, "new", 3), 3);
	return t;
}

START_TEST(it_gets_its_name_when_it_is_placed)
{
	struct temporary t;

	make("file", "old");
	t = begun("file");
	ck_assert_int_eq(folder_count(), 2);
	check_holds("file", "old");
	ck_assert(temporary_place(&t, in("file"), true));
	check_holds("file", "new");
	ck_assert_int_eq(mode_of("file"), 0600);
	ck_assert_int_eq(folder_count(), 1);
	ck_assert_int_eq(write(t.fd, "er", 2), 2);
	check_holds("file", "newer");
	close(t.fd);
}
END_TEST

START_TEST(what_has_the_name_stays_where_only_a_new_file_is_wanted)
{
	struct temporary t;

	make("file", "old");
	t = begun("file");
	ck_assert(!temporary_place(&t, in("file"), false));
	ck_assert_int_eq(errno, EEXIST);
	check_holds("file", "old");
	ck_assert_int_eq(folder_count(), 1);
	t = begun("new");
	ck_assert(temporary_place(&t, in("new"), false));
	check_holds("new", "new");
	close(t.fd);
	t = begun("file");
	temporary_drop(&t);
	ck_assert_int_eq(folder_count(), 2);
	ck_assert(!temporary_begin(&t, in("nowhere/file")));
	ck_assert_int_eq(errno, ENOENT);
}
END_TEST

/* What renaming to a new name fails with; 0: nothing. Not every file system knows it. */
static int renaming_fails;

int renameat2(int from_folder, const char *from, int to_folder, const char *to, unsigned int flags)
{
	errno = renaming_fails;
	return errno ? -1 : (int)syscall(SYS_renameat2, from_folder, from, to_folder, to, flags);
}

START_TEST(where_no_renaming_spares_others_a_second_link_does)
{
	static const int unknown[] = { EINVAL, ENOSYS };
	struct temporary t;

	renaming_fails = unknown[_i];
	make("file", "old");
	t = begun("file");
	ck_assert(!temporary_place(&t, in("file"), false));
	ck_assert_int_eq(errno, EEXIST);
	check_holds("file", "old");
	t = begun("new");
	ck_assert(temporary_place(&t, in("new"), false));
	check_holds("new", "new");
	close(t.fd);
	ck_assert_int_eq(folder_count(), 2);

	renaming_fails = EACCES;
	t = begun("newer");
	ck_assert(!temporary_place(&t, in("newer"), false));
	ck_assert_int_eq(errno, EACCES);
	ck_assert_int_eq(folder_count(), 2);
	renaming_fails = 0;
}
END_TEST

/* ---- Signals --------------------------------------------------------------------------------- */

static const int endings[] = { SIGHUP, SIGINT, SIGQUIT, SIGTERM, SIGPIPE, SIGALRM, SIGXCPU, SIGUSR1,
	SIGUSR2 };

static void print_and_wait(struct sink *sink, const void *context)
{
	sink_add(sink, context);
	for (;;)
		pause();
}

/* While a file is written, in a process of its own, which has no handlers of the test's. */
static pid_t writer(int ignored)
{
	const struct file_content content = { print_and_wait, "half" };
	struct file_error error;
	pid_t child = fork();

	if (child == 0) {
		for (size_t i = 0; i < sizeof endings / sizeof *endings; i++)
			signal(endings[i], endings[i] == ignored ? SIG_IGN : SIG_DFL);
		temporary_guard();
		file_print(in("file"), &content, &error);
		_exit(1);
	}
	while (folder_count() < 2)
		usleep(100);
	return child;
}

START_TEST(a_signal_that_ends_the_writer_leaves_no_half_written_file)
{
	pid_t child;
	int status;

	make("file", "old");
	child = writer(0);
	kill(child, endings[_i]);
	ck_assert_int_eq(waitpid(child, &status, 0), child);
	ck_assert(WIFSIGNALED(status));
	ck_assert_int_eq(WTERMSIG(status), endings[_i]);
	ck_assert_int_eq(folder_count(), 1);
	check_holds("file", "old");
}
END_TEST

START_TEST(a_signal_that_is_ignored_stays_so)
{
	pid_t child;
	int status;

	make("file", "old");
	child = writer(SIGHUP);
	kill(child, SIGHUP);
	kill(child, SIGTERM);
	ck_assert_int_eq(waitpid(child, &status, 0), child);
	ck_assert_int_eq(WTERMSIG(status), SIGTERM);
}
END_TEST

/* ---- Sweeping -------------------------------------------------------------------------------- */

static void act_write(void)
{
	begun("file");
}

static void age(const char *name, time_t seconds)
{
	const struct timespec then = { time(NULL) - seconds, 0 };

	ck_assert_int_eq(utimensat(AT_FDCWD, in(name), (struct timespec[]){ then, then }, 0), 0);
}

START_TEST(only_what_nobody_writes_any_longer_is_swept)
{
	pid_t living = session_start(act_write), killed = session_start(act_write);
	char name[64];

	session_kill(killed);
	ck_assert(process_is_gone(killed) && !process_is_gone(living));
	make(".parterre-aBcDeF", "of an earlier version");
	age(".parterre-aBcDeF", 25 * 60 * 60);
	make(".parterre-gHiJkL", "not so old");
	make(".court.plot", "somebody's");
	age(".court.plot", 100 * 24 * 60 * 60);
	ck_assert_int_eq(mkdir(in(".parterre-folder"), 0700), 0);
	age(".parterre-folder", 25 * 60 * 60);
	ck_assert_int_eq(symlink(".court.plot", in(".parterre-1-1")), 0);
	ck_assert_int_eq(folder_count(), 7);
	temporary_sweep(in("anything"));
	ck_assert_int_eq(folder_count(), 5);
	ck_assert(!is_there(".parterre-aBcDeF"));
	snprintf(name, sizeof name, ".parterre-%ld-1", (long)living);
	ck_assert(is_there(name));
	session_kill(living);
	temporary_sweep(in("anything"));
	ck_assert(!is_there(name));
	temporary_sweep(in("nowhere/anything"));
}
END_TEST

/* What a process of the same number left does not stand in the way. */
START_TEST(a_name_that_is_taken_is_passed_over)
{
	struct temporary t;
	char name[64];

	snprintf(name, sizeof name, ".parterre-%ld-1", (long)getpid());
	make(name, "left");
	t = begun("file");
	ck_assert(temporary_place(&t, in("file"), true));
	check_holds(name, "left");
	check_holds("file", "new");
	close(t.fd);
}
END_TEST

/* Nor is what is not its own taken away when the process ends. */
START_TEST(where_all_names_are_taken_none_is_begun_and_all_stay)
{
	struct temporary t;
	pid_t child = fork();
	int status;

	if (child == 0) {
		for (int number = 1; number <= 1000; number++) {
			char name[64];

			snprintf(name, sizeof name, ".parterre-%ld-%d", (long)getpid(), number);
			make(name, "left");
		}
		if (temporary_begin(&t, in("file")) || errno != EEXIST)
			_exit(1);
		temporary_abandon();
		_exit(0);
	}
	ck_assert_int_eq(waitpid(child, &status, 0), child);
	ck_assert_int_eq(status, 0);
	ck_assert_int_eq(folder_count(), 1000);
}
END_TEST

/* ---- The user's state ------------------------------------------------------------------------ */

START_TEST(files_of_a_plot_among_the_users_state_go_by_its_real_path)
{
	char *one, *other;

	setenv("XDG_STATE_HOME", in("state"), 1);
	ck_assert_int_eq(mkdir(in("sub"), 0700), 0);
	ck_assert_int_eq(symlink("../file", in("sub/link")), 0);
	one = path_in_state(in("file"), ".journal");
	other = path_in_state(in("sub/link"), ".journal");
	ck_assert_str_eq(one, other);
	ck_assert_uint_eq(strlen(one), strlen(in("state/parterre/0123456789abcdef.journal")));
	ck_assert_int_eq(strncmp(one, in("state/parterre/"), strlen(in("state/parterre/"))), 0);
	free(other);
	other = path_in_state(in("file2"), ".journal");
	ck_assert_str_ne(one, other);
	free(other);
	free(one);
	/* in folders that are not there */
	one = path_in_state(in("none/file"), ".journal");
	other = path_in_state(in("nowhere/file"), ".journal");
	ck_assert_str_ne(one, other);
	free(other);

	/* Its folders are made for the owner alone. */
	ck_assert(folder_make(one));
	ck_assert_int_eq(mode_of("state"), 0700);
	ck_assert_int_eq(mode_of("state/parterre"), 0700);
	ck_assert(folder_make(one));
	free(one);

	setenv("XDG_STATE_HOME", "not/absolute", 1);
	setenv("HOME", in("home"), 1);
	one = path_in_state(in("file"), ".journal");
	ck_assert_int_eq(strncmp(one, in("home/.local/state/parterre/"),
		strlen(in("home/.local/state/parterre/"))), 0);
	free(one);
	unsetenv("HOME");
	ck_assert_ptr_null(path_in_state(in("file"), ".journal"));
	make("file", "");
	ck_assert(!folder_make(in("file/folder/file")));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("temporary");
	TCase *place = suite_case(suite, "place");

	tcase_add_checked_fixture(place, folder_start, folder_end);
	tcase_add_test(place, it_gets_its_name_when_it_is_placed);
	tcase_add_test(place, what_has_the_name_stays_where_only_a_new_file_is_wanted);
	tcase_add_loop_test(place, where_no_renaming_spares_others_a_second_link_does, 0, 2);
	tcase_add_loop_test(place, a_signal_that_ends_the_writer_leaves_no_half_written_file, 0,
		(int)(sizeof endings / sizeof *endings));
	tcase_add_test(place, a_signal_that_is_ignored_stays_so);
	tcase_add_test(place, only_what_nobody_writes_any_longer_is_swept);
	tcase_add_test(place, a_name_that_is_taken_is_passed_over);
	tcase_add_test(place, where_all_names_are_taken_none_is_begun_and_all_stay);
	tcase_add_test(place, files_of_a_plot_among_the_users_state_go_by_its_real_path);
	return suite;
}
