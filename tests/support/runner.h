/* Every tests/test_*.c becomes a program of its own, with the main that runner.c holds. The file
 * defines test_suite:
 *
 *	START_TEST(an_inch_is_25_400_000_nm)
 *	{
 *		ck_assert_int_eq(NM_PER_INCH, 25400000);
 *	}
 *	END_TEST
 *
 *	Suite *test_suite(void)
 *	{
 *		Suite *suite = suite_create("length");
 *		TCase *units = suite_case(suite, "units");
 *		tcase_add_test(units, an_inch_is_25_400_000_nm);
 *		return suite;
 *	}
 *
 * All tests run from the repository's root: name files relative to it ("plots/court.plot"), and
 * what was built relative to BUILD_FOLDER, a string ("build"; build/sanitize in that variant):
 * BUILD_FOLDER "/parterre" is the program.
 *
 * The program prints Check's closing line, which tests/run sums, and fails if a test failed or if
 * none ran. Each test runs in a process of its own: a crash is one error, the others go on. In a
 * debugger set CK_FORK=no; CK_RUN_CASE=units runs one case. */
#ifndef SUPPORT_RUNNER_H
#define SUPPORT_RUNNER_H

#include <check.h>

/* Made by the test file; the runner frees it. */
Suite *test_suite(void);

/* A new case of the suite, with time for a slow machine: 30 s a test, times
 * CK_TIMEOUT_MULTIPLIER. */
TCase *suite_case(Suite *suite, const char *name);

/* How many times to try what is tried at random: few in `make check`, many in `make check-all`. */
int runner_count(int few, int many);

#endif
