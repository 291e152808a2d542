/* Files of several users: whose one is after it was written, whose lock holds. Skipped for all
 * but root, who alone can give files away and become somebody else. */
#include "plot/history/store.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <grp.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

enum { NOBODY = 65534, SOMEBODY = 54321, OTHERS = 54322, EXIT_SKIPPED = 77 };

static char *folder, *stood_in;

static void folder_new(void)
{
	folder = scratch_new();
	stood_in = realpath(".", NULL);
}

static void folder_remove(void)
{
	ck_assert_int_eq(chdir(stood_in), 0);
	free(stood_in);
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

/* Root opens the plot in a process that is then killed. */
static pid_t root_opens(void)
{
	int ends[2];
	char done;
	pid_t child;

	ck_assert_int_eq(pipe(ends), 0);
	child = fork();
	if (child == 0) {
		struct store store;

		umask(022);
		store_open(&store, "file");
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

START_TEST(another_users_lock_holds_and_can_be_taken_over)
{
	struct store store;
	pid_t root;

	make(NOBODY, NOBODY, 0600);
	ck_assert_int_eq(chown(".", NOBODY, NOBODY), 0);
	root = root_opens();
	ck_assert_int_eq(seteuid(NOBODY), 0);
	store_open(&store, "file");
	ck_assert_int_eq(store.access, STORE_LOOKS);
	ck_assert_int_eq(store.lock.holder, root);
	store_close(&store);
	ck_assert_int_eq(seteuid(0), 0);
	kill(root, SIGKILL);
	ck_assert_int_eq(waitpid(root, NULL, 0), root);
	ck_assert_int_eq(seteuid(NOBODY), 0);
	store_open(&store, "file");
	ck_assert_int_eq(store.access, STORE_WRITES);
	store_close(&store);
	ck_assert_int_eq(access(".file.lock", F_OK), -1);
	ck_assert_int_eq(seteuid(0), 0);
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
	tcase_add_test(owner, another_users_lock_holds_and_can_be_taken_over);
	return suite;
}
