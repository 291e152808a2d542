/* parterre prices new: what it prints, where it writes, what it refuses. */
#include "support/folder.h"
#include "support/program.h"
#include "support/runner.h"

#include <string.h>

static const char plot[] = "plots/court.plot";

static void check_run(const char *const *arguments, int status, const char *output,
	const char *errors)
{
	struct program_result r = program_run(arguments, NULL);

	ck_assert_msg(r.status == status, "status %d, said: %s%.2000s", r.status, r.errors.bytes,
		r.output.bytes);
	ck_assert_msg(strstr(r.output.bytes, output) != NULL, "printed: %.300s", r.output.bytes);
	ck_assert_msg(strstr(r.errors.bytes, errors) != NULL, "said: %s", r.errors.bytes);
	ck_assert_int_eq(r.errors.length == 0, status == 0);
	program_free(&r);
}

static void check_file(const char *name, const char *begins)
{
	struct text bytes = bytes_of(name);

	ck_assert_msg(strncmp(bytes.bytes, begins, strlen(begins)) == 0, "%s holds: %.60s", name,
		bytes.bytes);
	text_fini(&bytes);
}

#define BEGINS "{\n  \"format\": \"parterre-prices\",\n"

START_TEST(a_book_is_printed_or_written_and_the_takeoff_takes_it)
{
	check_run(ARGUMENTS("prices", "new", plot), 0, BEGINS, "");
	check_run(ARGUMENTS("prices", "new", plot, "-o", in("book.json")), 0, "", "");
	check_file("book.json", BEGINS);
	check_run(ARGUMENTS("takeoff", "--prices", in("book.json"), plot), 0, "XXX", "");
}
END_TEST

START_TEST(a_plot_comes_from_standard_input_too)
{
	struct program_result r = program_run(ARGUMENTS("prices", "new", "-"),
		"parterre-plot 1\nunits metric\ncell 1 m\nlawn l \"Lawn\"\nground 2 x 1\n  ll\n");

	ck_assert_int_eq(r.status, 0);
	ck_assert(strstr(r.output.bytes, "\"item\": \"turf\"") != NULL);
	program_free(&r);
}
END_TEST

/* An empty one, a takeoff, a book: prices may have been filled in. */
START_TEST(a_file_that_is_there_is_written_over_only_by_force)
{
	static const char *const texts[] = { "", "parterre takeoff 1\n", "{}", "dear diary\n" };

	for (int i = 0; i < 4; i++) {
		make("there", texts[i]);
		check_run(ARGUMENTS("prices", "new", plot, "-o", in("there")), 2, "",
			"is there already: nothing written\nparterre: --force writes over it\n");
		check_file("there", texts[i]);
		check_run(ARGUMENTS("prices", "new", plot, "--force", "-o", in("there")), 0, "",
			"");
		check_file("there", BEGINS);
	}
}
END_TEST

START_TEST(the_plot_itself_is_never_written_over)
{
	static const char text[] = "parterre-plot 1\nunits imperial\ncell 1 ft\nground 1 x 1\n"
		"  .\n";

	make("my.plot", text);
	check_run(ARGUMENTS("prices", "new", in("my.plot"), "--force", "-o", in("my.plot")), 2, "",
		"is the plot itself: nothing written");
	check_file("my.plot", text);
	check_run(ARGUMENTS("prices", "new", in("my.plot")), 0, "\"goods\": []", "");
}
END_TEST

/* It is made for a plot whose book is not there yet. */
START_TEST(the_book_that_the_plot_names_need_not_be_there)
{
	make("my.plot", "parterre-plot 1\nunits imperial\ncell 1 ft\nprices \"book.json\"\nlawn l "
		"\"Lawn\"\nground 2 x 1\n  ll\n");
	check_run(ARGUMENTS("takeoff", in("my.plot")), 2, "", "cannot open");
	check_run(ARGUMENTS("prices", "new", in("my.plot"), "-o", in("book.json")), 0, "", "");
	check_run(ARGUMENTS("takeoff", in("my.plot")), 0, "Turf", "");
}
END_TEST

START_TEST(what_it_does_not_understand_is_refused)
{
	check_run(ARGUMENTS("prices"), 2, "", "prices new FILE prints a price book to fill in");
	check_run(ARGUMENTS("prices", "old", plot), 2, "", "prices new FILE prints");
	check_run(ARGUMENTS("prices", "new"), 2, "", "prices new needs one plot file");
	check_run(ARGUMENTS("prices", "new", plot, plot), 2, "", "prices new needs one plot file");
	check_run(ARGUMENTS("prices", "new", "--json", plot), 2, "", "--json is not understood\n"
		"parterre: prices new takes -o OUT and --force\n");
	check_run(ARGUMENTS("prices", "new", "--prices", "book.json", plot), 2, "",
		"--prices is not understood\nparterre: prices new takes -o OUT and --force\n");
	check_run(ARGUMENTS("prices", "new", in("none.plot")), 2, "", "none.plot");
	check_run(ARGUMENTS("prices", "new", plot, "-o", in("none/book.json")), 2, "", "none");
	check_run(ARGUMENTS("prices", "-h"), 0, "parterre prices new FILE", "");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("prices_command");
	TCase *runs = suite_case(suite, "runs");

	tcase_add_checked_fixture(runs, folder_start, folder_end);
	tcase_add_test(runs, a_book_is_printed_or_written_and_the_takeoff_takes_it);
	tcase_add_test(runs, a_plot_comes_from_standard_input_too);
	tcase_add_test(runs, a_file_that_is_there_is_written_over_only_by_force);
	tcase_add_test(runs, the_plot_itself_is_never_written_over);
	tcase_add_test(runs, the_book_that_the_plot_names_need_not_be_there);
	tcase_add_test(runs, what_it_does_not_understand_is_refused);
	return suite;
}
