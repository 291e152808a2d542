/* Whose a file is after it was written. Skipped for all but root, who alone can give files away. */
#include "base/file.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>
#include <grp.h>

enum { NOBODY = 65534, SOMEBODY = 54321, OTHERS = 54322, EXIT_SKIPPED = 77 };

static char *folder;

static void folder_new(void)
{
	folder = scratch_new();
}

static void folder_remove(void)
{
	scratch_remove(folder);
}

/* Makes "file" in the folder, where one goes to stand, and gives it away. */
static void make(uid_t user, gid_t group, mode_t mode)
{
	FILE *file;

	ck_assert_int_eq(chdir(folder), 0);
	file = fopen("file", "w");
	fputs("old", file);
	fclose(file);
	ck_assert_int_eq(chown("file", user, group), 0);
	ck_assert_int_eq(chmod("file", mode), 0);
}

static struct stat status_after(void (*writer)(void))
{
	struct stat status;

	writer();
	ck_assert_int_eq(stat("file", &status), 0);
	ck_assert_int_eq(status.st_size, 5);
	return status;
}

static void write_file(void)
{
	struct file_error error;

	ck_assert_msg(file_write("file", "newer", 5, &error), "%s", error.sentence);
}

/* As nobody, who is in the group of that number and in one more. */
static void write_as_nobody(gid_t group)
{
	ck_assert_int_eq(chown(".", NOBODY, NOBODY), 0);
	ck_assert_int_eq(setgroups(1, &group), 0);
	ck_assert_int_eq(setegid(NOBODY), 0);
	ck_assert_int_eq(seteuid(NOBODY), 0);
	write_file();
	ck_assert_int_eq(seteuid(0), 0);
	ck_assert_int_eq(setegid(0), 0);
}

static void write_in_the_group(void)
{
	write_as_nobody(OTHERS);
}

static void write_from_outside(void)
{
	write_as_nobody(NOBODY);
}

START_TEST(root_leaves_a_file_to_its_owner)
{
	struct stat status;

	make(SOMEBODY, OTHERS, 0640);
	status = status_after(write_file);
	ck_assert_uint_eq(status.st_uid, SOMEBODY);
	ck_assert_uint_eq(status.st_gid, OTHERS);
	ck_assert_int_eq(status.st_mode & 07777, 0640);
}
END_TEST

START_TEST(a_shared_file_stays_with_its_group)
{
	struct stat status;

	make(SOMEBODY, OTHERS, 0660);
	status = status_after(write_in_the_group);
	ck_assert_uint_eq(status.st_uid, NOBODY);
	ck_assert_uint_eq(status.st_gid, OTHERS);
	ck_assert_int_eq(status.st_mode & 07777, 0660);
}
END_TEST

START_TEST(another_group_gets_no_rights_that_it_had_not)
{
	struct stat status;

	make(SOMEBODY, OTHERS, 0666);
	status = status_after(write_from_outside);
	ck_assert_uint_eq(status.st_uid, NOBODY);
	ck_assert_uint_eq(status.st_gid, NOBODY);
	ck_assert_int_eq(status.st_mode & 07777, 0606);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("owners of files");
	TCase *owner = suite_case(suite, "owners");

	if (geteuid() != 0) {
		puts("only root can give files away");
		exit(EXIT_SKIPPED);
	}
	tcase_add_checked_fixture(owner, folder_new, folder_remove);
	tcase_add_test(owner, root_leaves_a_file_to_its_owner);
	tcase_add_test(owner, a_shared_file_stays_with_its_group);
	tcase_add_test(owner, another_group_gets_no_rights_that_it_had_not);
	return suite;
}
