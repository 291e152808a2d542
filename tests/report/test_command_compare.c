/* parterre compare without a screen: its exit status, what it refuses, where it writes. */
#include "base/file.h"
#include "support/program.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define OLD_PLOT "tests/plots/compare-old.plot"
#define NEW_PLOT "tests/plots/compare-new.plot"

static char *folder;

static void setup(void)
{
	folder = scratch_new();
}

static void teardown(void)
{
	scratch_remove(folder);
}

/* A path in the test's folder; the caller frees it. */
static char *in_folder(const char *name)
{
	struct text path = TEXT_EMPTY;

	text_print(&path, "%s/%s", folder, name);
	return text_take(&path);
}

START_TEST(its_status_says_whether_anything_differs)
{
	program_check(ARGUMENTS("compare", OLD_PLOT, OLD_PLOT), NULL, 0, "nothing differs", "");
	program_check(ARGUMENTS("compare", OLD_PLOT, NEW_PLOT), NULL, 1, "New: B3 Raised", "");
	program_check(ARGUMENTS("compare", "--json", OLD_PLOT, OLD_PLOT), NULL, 0,
		"\"same\": true", "");
	program_check(ARGUMENTS("compare", OLD_PLOT, NEW_PLOT, "--json"), NULL, 1,
		"\"same\": false", "");
}
END_TEST

START_TEST(what_it_cannot_read_or_understand_is_told)
{
	program_check(ARGUMENTS("compare", OLD_PLOT), NULL, 2, "", "compare needs two plot files");
	program_check(ARGUMENTS("compare", OLD_PLOT, NEW_PLOT, OLD_PLOT), NULL, 2, "",
		"compare needs two plot files");
	program_check(ARGUMENTS("compare", "--both", OLD_PLOT, NEW_PLOT), NULL, 2, "",
		"compare takes -o OUT");
	program_check(ARGUMENTS("compare", "none.plot", NEW_PLOT), NULL, 2, "", "none.plot");
	program_check(ARGUMENTS("compare", OLD_PLOT, "none.plot"), NULL, 2, "", "none.plot");
	program_check(ARGUMENTS("compare", "--prices", "none.json", OLD_PLOT, NEW_PLOT), NULL,
		2, "", "none.json");
	program_check(ARGUMENTS("compare", "-", "-"), "", 2, "", "one plot, not two");
	program_check(ARGUMENTS("compare", "-", OLD_PLOT), "parterre-plot 2\n", 2, "",
		"expected version 1");
}
END_TEST

START_TEST(help_tells_of_it)
{
	program_check(ARGUMENTS("compare", "-h"), NULL, 0, "parterre compare OLD NEW", "");
	program_check(ARGUMENTS("compare", "--help"), NULL, 0, "parterre compare OLD NEW", "");
}
END_TEST

START_TEST(one_of_the_plots_may_be_standard_input)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;

	/* Without its price book, which is looked for beside the plot. */
	ck_assert(file_read("plots/court.plot", 1 << 20, &bytes, &error));
	program_check(ARGUMENTS("compare", "-", "plots/court.plot"), bytes.bytes, 0,
		"nothing differs", "");
	program_check(ARGUMENTS("compare", "plots/elbow.plot", "-"), bytes.bytes, 1,
		"standard input", "");
	text_fini(&bytes);
}
END_TEST

START_TEST(one_book_may_price_both)
{
	program_check(ARGUMENTS("compare", "--prices", "plots/prices.json", "plots/court.plot",
		OLD_PLOT), NULL, 1, "Cost ", "");
}
END_TEST

START_TEST(it_writes_over_another_comparison_and_never_over_what_it_reads)
{
	char *out = in_folder("out.txt"), *old = in_folder("old.plot");
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	FILE *file = fopen(old, "w");
	bool is_read = file_read("plots/court.plot", 1 << 20, &bytes, &error);
	bool is_written = fputs(bytes.bytes, file) >= 0;

	ck_assert(fclose(file) == 0 && is_read && is_written);
	program_check(ARGUMENTS("compare", "-o", out, OLD_PLOT, NEW_PLOT), NULL, 1, "", "");
	program_check(ARGUMENTS("compare", "-o", out, OLD_PLOT, OLD_PLOT), NULL, 0, "", "");
	program_check(ARGUMENTS("compare", "-o", out, OLD_PLOT, NEW_PLOT), NULL, 1, "", "");
	program_check(ARGUMENTS("compare", "--force", "-o", old, old, NEW_PLOT), NULL, 2, "",
		"the plot itself: nothing written");
	program_check(ARGUMENTS("compare", "--force", "-o", old, NEW_PLOT, old), NULL, 2, "",
		"the plot itself: nothing written");
	program_check(ARGUMENTS("compare", "-o", old, OLD_PLOT, NEW_PLOT), NULL, 2, "", "--force");
	text_fini(&bytes);
	free(out);
	free(old);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("command_compare");
	TCase *all = suite_case(suite, "compare");

	tcase_add_checked_fixture(all, setup, teardown);
	tcase_add_test(all, its_status_says_whether_anything_differs);
	tcase_add_test(all, what_it_cannot_read_or_understand_is_told);
	tcase_add_test(all, help_tells_of_it);
	tcase_add_test(all, one_of_the_plots_may_be_standard_input);
	tcase_add_test(all, one_book_may_price_both);
	tcase_add_test(all, it_writes_over_another_comparison_and_never_over_what_it_reads);
	return suite;
}
