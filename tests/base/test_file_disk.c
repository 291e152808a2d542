/* What the disk is told when a file is saved, and what it says too late: this program has its own
 * fsync and close, which note what they are given and then do what the C library's do. */
#include "base/file.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

static struct file_error error;
static char *folder, *path;
static char told[64];        /* "f" for a file made safe, "F" for a folder with the file in it */
static bool is_close_to_fail;

static void setup(void)
{
	folder = scratch_new();
	ck_assert_int_gt(asprintf(&path, "%s/file", folder), 0);
	told[0] = '\0';
	is_close_to_fail = false;
}

static void teardown(void)
{
	free(path);
	scratch_remove(folder);
}

int fsync(int fd)
{
	struct stat status;

	if (fstat(fd, &status) == 0 && strlen(told) + 1 < sizeof told)
		strcat(told, !S_ISDIR(status.st_mode) ? "f" : access(path, F_OK) == 0 ? "F" : "-");
	return (int)syscall(SYS_fsync, fd);
}

/* Fails after the file has got bytes, as where a server of files takes them only then. */
int close(int fd)
{
	struct stat status;
	bool is_due = is_close_to_fail && fstat(fd, &status) == 0 && S_ISREG(status.st_mode) &&
		status.st_size > 0;
	int done = (int)syscall(SYS_close, fd);

	errno = is_due ? EIO : errno;
	return is_due ? -1 : done;
}

START_TEST(a_file_is_made_safe_before_its_name_and_its_name_before_it_is_saved)
{
	for (int i = 0; i < 2; i++) {
		told[0] = '\0';
		ck_assert(file_write(path, "plot", 4, &error));
		ck_assert_str_eq(told, "fF");
	}
}
END_TEST

START_TEST(what_goes_wrong_at_the_end_is_told)
{
	is_close_to_fail = true;
	ck_assert(!file_write(path, "plot", 4, &error));
	is_close_to_fail = false;
	ck_assert_msg(strstr(error.sentence, strerror(EIO)) != NULL, "%s", error.sentence);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("file disk");
	TCase *disk = suite_case(suite, "disk");

	tcase_add_checked_fixture(disk, setup, teardown);
	tcase_add_test(disk, a_file_is_made_safe_before_its_name_and_its_name_before_it_is_saved);
	tcase_add_test(disk, what_goes_wrong_at_the_end_is_told);
	return suite;
}
