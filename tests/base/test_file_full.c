/* Saving to a disk that is full: a file system of 64 kB of one's own. Skipped where the system lets
 * nobody mount one. */
#include "base/file.h"
#include "base/path.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <sched.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/mount.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

enum { DISK = 64 * 1024, PAGE = 4096, EXIT_SKIPPED = 77 };

static char *folder, path[1024], other[1024];
static struct file_error error;

static bool put(const char *name, const char *text)
{
	FILE *file = fopen(name, "w");

	return file && fputs(text, file) >= 0 && fclose(file) == 0;
}

/* The right to mount: root has it; others are root in a name space where they are alone. */
static bool may_mount(void)
{
	char user[32], group[32];

	snprintf(user, sizeof user, "0 %u 1", geteuid());
	snprintf(group, sizeof group, "0 %u 1", getegid());
	if (geteuid() == 0)
		return unshare(CLONE_NEWNS) == 0;
	return unshare(CLONE_NEWNS | CLONE_NEWUSER) == 0 && put("/proc/self/setgroups", "deny") &&
		put("/proc/self/uid_map", user) && put("/proc/self/gid_map", group);
}

/* Seen, and kept, by this process alone. */
static bool disk_mount(const char *where)
{
	return may_mount() && mount("none", "/", NULL, MS_REC | MS_PRIVATE, NULL) == 0 &&
		mount("none", where, "tmpfs", 0, "size=64k") == 0;
}

static void disk_start(void)
{
	folder = scratch_new();
	ck_assert_msg(disk_mount(folder), "no disk of one's own: %s", strerror(errno));
	snprintf(path, sizeof path, "%s/file", folder);
	snprintf(other, sizeof other, "%s/other", folder);
}

static void disk_end(void)
{
	umount(folder);
	scratch_remove(folder);
}

static bool write_letters(char letter, size_t length)
{
	char *bytes = malloc(length);
	bool done;

	memset(bytes, letter, length);
	done = file_write(path, bytes, length, &error);
	free(bytes);
	return done;
}

static void check_holds(const char *name, char letter, size_t length)
{
	struct text text = TEXT_EMPTY;
	struct file_error reading;

	ck_assert_msg(file_read(name, DISK, &text, &reading), "%s", reading.sentence);
	ck_assert_uint_eq(text.length, length);
	ck_assert_uint_eq(strspn(text.bytes, (char[]){ letter, '\0' }), length);
	text_fini(&text);
}

static int entries(void)
{
	DIR *list = opendir(folder);
	int count = -2;

	while (readdir(list))
		count++;
	closedir(list);
	return count;
}

/* Another file takes all that is left. */
static void fill_up(void)
{
	char filler[1024], page[PAGE] = "";
	int fd;

	snprintf(filler, sizeof filler, "%s/filler", folder);
	fd = open(filler, O_WRONLY | O_CREAT, 0600);
	while (write(fd, page, PAGE) > 0)
		continue;
	ck_assert_int_eq(errno, ENOSPC);
	close(fd);
}

START_TEST(the_old_file_stays_whole_and_no_other_is_left)
{
	ck_assert(write_letters('a', 5 * PAGE));
	ck_assert(!write_letters('b', DISK + 1));
	ck_assert_ptr_nonnull(strstr(error.sentence, "cannot write "));
	ck_assert_ptr_nonnull(strstr(error.sentence, "/file: No space left on device"));
	check_holds(path, 'a', 5 * PAGE);
	ck_assert_int_eq(entries(), 1);
	/* There was room for either of them, not for both at once. */
	ck_assert(!write_letters('b', DISK - 2 * PAGE));
	check_holds(path, 'a', 5 * PAGE);
	ck_assert_int_eq(entries(), 1);
	ck_assert(write_letters('b', 5 * PAGE));
	check_holds(path, 'b', 5 * PAGE);
}
END_TEST

START_TEST(a_new_file_without_room_is_not_there)
{
	fill_up();
	ck_assert(!write_letters('a', 1));
	ck_assert_int_eq(entries(), 1);
}
END_TEST

START_TEST(a_file_with_two_names_stays_whole)
{
	char *copy = path_in_state(path, FILE_COPY);

	ck_assert(write_letters('a', 5 * PAGE + 7));
	ck_assert_int_eq(link(path, other), 0);
	fill_up();
	ck_assert(!write_letters('b', 9 * PAGE));
	ck_assert_ptr_nonnull(strstr(error.sentence, "cannot write "));
	ck_assert_ptr_nonnull(strstr(error.sentence, "/file: No space left on device"));
	ck_assert_ptr_null(strstr(error.sentence, copy));
	ck_assert_int_ne(access(copy, F_OK), 0); /* nothing was begun */
	free(copy);
	check_holds(other, 'a', 5 * PAGE + 7);
	/* What needs no more room is written even so. */
	ck_assert(write_letters('b', 4 * PAGE));
	check_holds(other, 'b', 4 * PAGE);
	check_holds(path, 'b', 4 * PAGE);
}
END_TEST

/* The old file has a size, but no room on the disk: that it is full shows only midway. */
START_TEST(a_rewriting_that_fails_midway_names_the_copy_that_is_left)
{
	char *copy;

	ck_assert(file_write(path, "", 0, &error));
	ck_assert_int_eq(truncate(path, 9 * PAGE), 0);
	ck_assert_int_eq(link(path, other), 0);
	fill_up();
	ck_assert(!write_letters('b', 9 * PAGE));
	copy = path_in_state(path, FILE_COPY);
	ck_assert_ptr_nonnull(strstr(error.sentence, "cannot finish rewriting "));
	ck_assert_ptr_nonnull(strstr(error.sentence, "; what it should hold is in "));
	ck_assert_ptr_nonnull(strstr(error.sentence, copy));
	check_holds(copy, 'b', 9 * PAGE);
	ck_assert_int_eq(unlink(copy), 0);
	free(copy);
}
END_TEST

/* Tried in a process of its own; the reason is the last line printed. */
static void skip_unless_mounted(void)
{
	int status;
	pid_t child = fork();

	if (child == 0)
		_exit(disk_mount(BUILD_FOLDER) ? 0 : errno);
	waitpid(child, &status, 0);
	if (status != 0) {
		printf("no disk of one's own: %s\n", strerror(WEXITSTATUS(status)));
		exit(EXIT_SKIPPED);
	}
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("a full disk");
	TCase *saving = suite_case(suite, "saving");

	skip_unless_mounted();
	tcase_add_checked_fixture(saving, disk_start, disk_end);
	tcase_add_test(saving, the_old_file_stays_whole_and_no_other_is_left);
	tcase_add_test(saving, a_new_file_without_room_is_not_there);
	tcase_add_test(saving, a_file_with_two_names_stays_whole);
	tcase_add_test(saving, a_rewriting_that_fails_midway_names_the_copy_that_is_left);
	return suite;
}
