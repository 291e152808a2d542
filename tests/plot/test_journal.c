/* The file that a session's strokes are in: it grows, is begun anew, and is nobody else's. */
#include "plot/history/journal.h"
#include "support/folder.h"
#include "support/kept.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

/* In place of the system's: how often the disk was asked, and what it said. */
static int disk_asked, disk_says, disk_begun, folders_asked;

int fdatasync(int fd)
{
	(void)fd;
	disk_asked++;
	errno = EIO;
	return disk_says;
}

int fsync(int fd)
{
	struct stat status;

	ck_assert(fstat(fd, &status) == 0 && S_ISDIR(status.st_mode));
	folders_asked++;
	return 0;
}

int sync_file_range(int fd, off_t from, off_t length, unsigned int flags)
{
	(void)fd;
	ck_assert(from == 0 && length == 0 && flags == SYNC_FILE_RANGE_WRITE);
	disk_begun++;
	return 0;
}

static const struct plot_stamp none = { .exists = false };
static struct plot plot;
static struct history *history;
static struct journal journal;

static void start(void)
{
	folder_start();
	plot_from_rows(&plot, (const char *const[]){ "b...............", "p...............",
		NULL });
	history = history_new(&plot);
	journal = JOURNAL_NONE;
}

static void end(void)
{
	journal_close(&journal);
	history_free(history);
	plot_fini(&plot);
	folder_end();
}

static bool begin(const char *name, bool is_over)
{
	const struct journal_place place = { in(name), is_over };
	struct text text = TEXT_EMPTY;
	uint64_t sum = journal_text_begin(&text, &none, &plot);
	bool done = journal_begin(&journal, &place, &text, sum);
	int cause = errno;

	text_fini(&text);
	errno = cause;
	return done;
}

/* Another letter for a cell. */
static void stroke(int i)
{
	char *cell = &plot.ground.cells[i % 32];

	*cell = *cell == 'b' ? 'p' : 'b';
	ck_assert(history_record(history, &plot, ""));
}

static bool add(int i)
{
	stroke(i);
	return journal_add(&journal, history_last(history), &plot);
}

START_TEST(every_step_is_in_the_file_at_once_for_its_owner_alone)
{
	ck_assert(begin("journal", false));
	ck_assert_int_eq(mode_of("journal"), 0600);
	kept_check_journal("journal", &plot);
	for (int i = 0; i < 50; i++) {
		ck_assert(add(i));
		kept_check_journal("journal", &plot);
	}
	ck_assert_int_eq(folder_count(), 1);
	journal_close(&journal);
	kept_check_journal("journal", &plot);
	ck_assert_int_eq(mode_of("journal"), 0600);
}
END_TEST

START_TEST(steps_back_and_on_are_in_it_too)
{
	struct place at;

	ck_assert(begin("journal", false));
	ck_assert(add(1) && add(2));
	ck_assert(history_undo(history, &plot, &at));
	ck_assert(journal_add(&journal, history_last(history), &plot));
	kept_check_journal("journal", &plot);
	ck_assert(history_redo(history, &plot, &at));
	ck_assert(journal_add(&journal, history_last(history), &plot));
	kept_check_journal("journal", &plot);
}
END_TEST

START_TEST(a_file_of_somebody_elses_is_not_written_over_unless_that_is_wanted)
{
	make("victim", "kept");
	ck_assert_int_eq(symlink("victim", in("link")), 0);
	ck_assert(!begin("victim", false));
	ck_assert_int_eq(errno, EEXIST);
	ck_assert(!begin("link", false));
	ck_assert_int_eq(errno, EEXIST);
	ck_assert_ptr_null(journal.path);
	ck_assert_int_eq(folder_count(), 2);
	ck_assert(begin("link", true)); /* the link goes, not what it leads to */
	kept_check_journal("link", &plot);
	struct text text = bytes_of("victim");
	ck_assert_str_eq(text.bytes, "kept");
	text_fini(&text);
}
END_TEST

START_TEST(begun_anew_it_takes_its_own_place_or_leaves_nothing_at_its_old_one)
{
	ck_assert(begin("journal", false));
	ck_assert(add(1));
	ck_assert(begin("journal", false));
	ck_assert(add(2));
	kept_check_journal("journal", &plot);
	ck_assert(begin("another", false));
	ck_assert(!is_there("journal"));
	ck_assert(add(3));
	kept_check_journal("another", &plot);
	ck_assert(!begin("nowhere/journal", false));
	ck_assert(add(4));
	kept_check_journal("another", &plot);
	journal_drop(&journal);
	ck_assert_int_eq(folder_count(), 0);
}
END_TEST

START_TEST(it_is_full_when_its_steps_exceed_both_its_beginning_and_the_least)
{
	struct text bytes;
	size_t most;

	ck_assert(begin("journal", false));
	for (int i = 0; !journal_is_full(&journal); i++)
		ck_assert(add(i));
	bytes = bytes_of("journal");
	most = journal.start + JOURNAL_STEPS_LEAST;
	ck_assert_uint_gt(bytes.length, most);
	ck_assert_uint_lt(bytes.length, most + 100);
	text_fini(&bytes);

	ground_fini(&plot.ground);
	ground_init(&plot.ground, 400, 400);
	ck_assert(history_record(history, &plot, ""));
	ck_assert(begin("journal", false));
	ck_assert_uint_gt(journal.start, JOURNAL_STEPS_LEAST);
	journal.steps = journal.start;
	ck_assert(!journal_is_full(&journal));
	journal.steps++;
	ck_assert(journal_is_full(&journal));
}
END_TEST

START_TEST(a_journal_that_somebody_removed_or_replaced_does_not_grow_unseen)
{
	ck_assert(begin("journal", false));
	ck_assert_int_eq(unlink(in("journal")), 0);
	ck_assert(!add(1));
	ck_assert(begin("journal", false));
	make("other", "somebody's");
	ck_assert_int_eq(rename(in("other"), in("journal")), 0);
	ck_assert(!add(2));
	journal_drop(&journal);
	ck_assert(is_there("journal"));
}
END_TEST

/* No file may grow over the limit: a write stops midway, as on a full disk. */
START_TEST(a_step_that_does_not_fit_is_not_there_in_part_and_none_follows_it)
{
	struct rlimit was, now;
	struct text before, after;

	signal(SIGXFSZ, SIG_IGN);
	ck_assert(begin("journal", false));
	ck_assert(add(1));
	before = bytes_of("journal");
	getrlimit(RLIMIT_FSIZE, &was);
	now = (struct rlimit){ before.length + 20, was.rlim_max };
	ck_assert_int_eq(setrlimit(RLIMIT_FSIZE, &now), 0);
	ck_assert(!add(2));
	ck_assert_int_eq(setrlimit(RLIMIT_FSIZE, &was), 0);
	ck_assert(!add(3));
	after = bytes_of("journal");
	ck_assert_str_eq(before.bytes, after.bytes);
	ck_assert(begin("journal", false));
	ck_assert(add(4));
	kept_check_journal("journal", &plot);
	text_fini(&before);
	text_fini(&after);
}
END_TEST

/* As if it had been written that much earlier. */
static void pass(int ms)
{
	journal.due_ms -= ms;
}

START_TEST(the_disk_is_waited_for_a_second_after_the_first_that_it_lacks)
{
	int ms;

	ck_assert_int_eq(journal_sync(&journal), -1);
	ck_assert(begin("journal", false));
	ck_assert_int_eq(disk_begun, 1);
	pass(JOURNAL_SYNC_MS / 2);
	ck_assert(add(1));
	ck_assert_int_eq(disk_begun, 2);
	ms = journal_sync(&journal);
	ck_assert_int_le(ms, JOURNAL_SYNC_MS / 2);
	/* On a machine that stood still for half a second it is due already. */
	ck_assert_int_eq(disk_asked, ms > 0 ? 0 : 1);
	pass(JOURNAL_SYNC_MS / 2);
	ck_assert_int_eq(journal_sync(&journal), -1);
	ck_assert(!journal.is_unsynced);
	ck_assert_int_eq(disk_asked, 1);
	ck_assert_int_eq(folders_asked, 1); /* for its name, which is there from now on */
	/* A minute ahead it is due on no machine. */
	ck_assert(add(2));
	pass(-60 * 1000);
	ck_assert_int_gt(journal_sync(&journal), 0);
	ck_assert(journal.is_unsynced);
	ck_assert_int_eq(disk_asked, 1);
	pass(60 * 1000 + JOURNAL_SYNC_MS);
	ck_assert_int_eq(journal_sync(&journal), -1);
	ck_assert(!journal.is_unsynced);
	ck_assert_int_eq(disk_asked, 2);
	ck_assert_int_eq(journal_sync(&journal), -1);
	ck_assert_int_eq(disk_asked, 2);
	ck_assert_int_eq(disk_begun, 3);
	ck_assert_int_eq(folders_asked, 1);
}
END_TEST

START_TEST(what_takes_the_place_of_a_journal_is_on_the_disk_before)
{
	struct plot was;

	ck_assert(begin("journal", false));
	ck_assert(add(1));
	was = (struct plot){ details_copy(&plot.details), ground_copy(&plot.ground) };
	disk_says = -1;
	stroke(2);
	ck_assert(!begin("journal", false));
	ck_assert_int_eq(errno, EIO);
	kept_check_journal("journal", &was);
	ck_assert_int_eq(folder_count(), 1);
	disk_says = 0;
	disk_asked = 0;
	ck_assert(begin("journal", false));
	ck_assert_int_eq(disk_asked, 1);
	plot_fini(&was);
}
END_TEST

static void act_begin(void)
{
	if (!begin("journal", false))
		_exit(1);
}

START_TEST(a_journal_is_left_when_its_session_is_gone_however_that_ended)
{
	pid_t session = session_start(act_begin);

	ck_assert(!journal_is_left(in("journal"), session));
	/* Whatever process the name says. */
	ck_assert(!journal_is_left(in("journal"), 0));
	session_kill(session);
	ck_assert(journal_is_left(in("journal"), session));
	ck_assert(journal_is_left(in("journal"), getpid()));
	/* A journal that cannot be looked at has only the process in its name. */
	ck_assert_int_eq(symlink("journal", in("link")), 0);
	ck_assert(!journal_is_left(in("link"), getpid()));
	ck_assert(journal_is_left(in("link"), session));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("journal");
	TCase *file = suite_case(suite, "file");

	tcase_add_checked_fixture(file, start, end);
	tcase_add_test(file, every_step_is_in_the_file_at_once_for_its_owner_alone);
	tcase_add_test(file, steps_back_and_on_are_in_it_too);
	tcase_add_test(file, a_file_of_somebody_elses_is_not_written_over_unless_that_is_wanted);
	tcase_add_test(file, begun_anew_it_takes_its_own_place_or_leaves_nothing_at_its_old_one);
	tcase_add_test(file, it_is_full_when_its_steps_exceed_both_its_beginning_and_the_least);
	tcase_add_test(file, a_journal_that_somebody_removed_or_replaced_does_not_grow_unseen);
	tcase_add_test(file, a_step_that_does_not_fit_is_not_there_in_part_and_none_follows_it);
	tcase_add_test(file, the_disk_is_waited_for_a_second_after_the_first_that_it_lacks);
	tcase_add_test(file, what_takes_the_place_of_a_journal_is_on_the_disk_before);
	tcase_add_test(file, a_journal_is_left_when_its_session_is_gone_however_that_ended);
	return suite;
}
