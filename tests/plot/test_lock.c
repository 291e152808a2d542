/* The lock, on a file system that gives a file another number at each look. */
#include "plot/history/lock.h"
#include "support/folder.h"
#include "support/runner.h"

#include <sys/stat.h>

/* In place of the C library's own. */
int lstat(const char *path, struct stat *status)
{
	static ino_t looks;
	int done = stat(path, status);

	status->st_ino += ++looks;
	return done;
}

START_TEST(a_name_that_never_leads_to_the_locked_file_is_given_up)
{
	struct lock lock;

	ck_assert_int_eq(lock_take(&lock, in(".court.plot.lock")), STORE_UNGUARDED);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("lock");
	TCase *numbers = suite_case(suite, "numbers");

	tcase_add_checked_fixture(numbers, folder_start, folder_end);
	tcase_add_test(numbers, a_name_that_never_leads_to_the_locked_file_is_given_up);
	return suite;
}
