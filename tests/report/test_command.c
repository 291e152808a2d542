/* The program without a screen: what it prints, where it writes, what it refuses, its exit
 * status. */
#include "base/file.h"
#include "support/program.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static const char plot[] = "plots/court.plot";

static char *folder;

static void setup(void)
{
	folder = scratch_new();
}

static void teardown(void)
{
	scratch_remove(folder);
}

/* A path in the test's folder, good until the next call but one. */
static const char *in_folder(const char *name)
{
	static char paths[2][4096];
	static int turn;

	turn = !turn;
	snprintf(paths[turn], sizeof paths[turn], "%s/%s", folder, name);
	return paths[turn];
}

static void put(const char *name, const char *bytes)
{
	FILE *file = fopen(in_folder(name), "w");

	ck_assert(file && fputs(bytes, file) >= 0);
	fclose(file);
}

static void check_file(const char *name, const char *begins)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;

	ck_assert_msg(file_read(in_folder(name), 1 << 24, &bytes, &error), "%s", error.sentence);
	ck_assert_msg(strncmp(bytes.bytes, begins, strlen(begins)) == 0, "%s holds: %.60s", name,
		bytes.bytes);
	text_fini(&bytes);
}

/* Runs and checks the status, and that the given words are in what it said. */
static void check_run(const char *const *arguments, int status, const char *output,
	const char *errors)
{
	struct program_result r = program_run(arguments, NULL);

	ck_assert_msg(r.status == status, "status %d, said: %s%s", r.status, r.output.bytes,
		r.errors.bytes);
	ck_assert_msg(strstr(r.output.bytes, output) != NULL, "printed: %.300s", r.output.bytes);
	ck_assert_msg(strstr(r.errors.bytes, errors) != NULL, "said: %s", r.errors.bytes);
	if (status == 0)
		ck_assert_str_eq(r.errors.bytes, "");
	else
		ck_assert_str_eq(r.output.bytes, "");
	program_free(&r);
}

START_TEST(without_arguments_it_says_what_to_do_in_one_screen)
{
	struct program_result r = program_run(ARGUMENTS(NULL), NULL);
	int lines = 0;

	ck_assert_int_eq(r.status, 0);
	for (const char *line = r.output.bytes; *line; line = strchr(line, '\n') + 1) {
		ck_assert_int_le(strchr(line, '\n') - line, 80);
		lines++;
	}
	ck_assert_int_le(lines, 23);
	ck_assert(strstr(r.output.bytes, "parterre takeoff FILE") != NULL);
	program_free(&r);
}
END_TEST

START_TEST(a_takeoff_is_printed_as_text_json_or_csv)
{
	check_run(ARGUMENTS("takeoff", plot), 0, "parterre takeoff 1\n", "");
	check_run(ARGUMENTS("takeoff", "--json", plot), 0, "\"format\": \"parterre-takeoff\"", "");
	check_run(ARGUMENTS("takeoff", plot, "--json"), 0, "\"version\": 1", "");
	check_run(ARGUMENTS("takeoff", "--csv", plot), 0, "section,id,item,size,", "");
	check_run(ARGUMENTS("takeoff", "--csv", plot, "-o", "-"), 0, "section,id,item,size,", "");
	check_run(ARGUMENTS("takeoff", "--csv", "--json", plot), 2, "", "not both");
}
END_TEST

/* ---- Parts of the takeoff -------------------------------------------------------------------- */

START_TEST(the_parts_are_listed_by_their_words_without_a_plot)
{
	static const char list[] =
		"front      plan, snags and cautions\n"
		"shopping   what to order, day by day\n"
		"programme  the order of work\n"
		"setout     strings and offsets\n"
		"levels     drops, cut and fill, falls\n"
		"services   lines in the ground\n"
		"dig        what is dug and laid on it\n"
		"walls      how blocks are laid and cut\n"
		"fill       liner, soil and mulch\n"
		"fence      posts, panels and gates\n"
		"lawn       turf and seed\n"
		"planting   what grows where\n"
		"watering   drip lines and minutes\n"
		"advice     what small changes spare\n"
		"areas      how much of each ground\n"
		"assumed    what all this rests on\n";
	struct program_result r = program_run(ARGUMENTS("takeoff", "--only", "list"), NULL);

	ck_assert_int_eq(r.status, 0);
	ck_assert_str_eq(r.output.bytes, list);
	ck_assert_str_eq(r.errors.bytes, "");
	program_free(&r);
	check_run(ARGUMENTS("takeoff", "--only=list", "none.plot"), 0, list, "");
}
END_TEST

/* In the order of the parts, whatever the order they are asked for in. */
START_TEST(only_the_parts_asked_for_are_printed)
{
	struct program_result r = program_run(ARGUMENTS("takeoff", "--only", "fence,walls", plot),
		NULL);
	const char *fence = strstr(r.output.bytes, "\nFence --");
	int heads = 0;

	ck_assert_int_eq(r.status, 0);
	ck_assert_int_eq(strncmp(r.output.bytes, "parterre takeoff 1\n\nWalls --", 28), 0);
	ck_assert(fence && !strstr(fence + 1, "\nWalls --"));
	for (const char *at = r.output.bytes; (at = strstr(at, ", court.plot\n")); at++)
		heads++;
	ck_assert_int_eq(heads, 2);
	program_free(&r);
	check_run(ARGUMENTS("takeoff", "--only", "walls", "-o", in_folder("walls.txt"), plot), 0,
		"", "");
	check_file("walls.txt", "parterre takeoff 1\n\nWalls --");
	/* What is written so is a takeoff: another goes over it. */
	check_run(ARGUMENTS("takeoff", "--only", "dig", "-o", in_folder("walls.txt"), plot), 0,
		"", "");
	check_file("walls.txt", "parterre takeoff 1\n\nDig and stone --");
}
END_TEST

/* Named as it was typed, but in characters that do a terminal no harm. */
START_TEST(a_part_that_there_is_not_is_refused)
{
	check_run(ARGUMENTS("takeoff", "--only", "roof", plot), 2, "", "parterre: --only: there is "
		"no part \"roof\"; --only list names them\n");
	check_run(ARGUMENTS("takeoff", "--only", "walls,roof,fence", plot), 2, "", "\"roof\"");
	check_run(ARGUMENTS("takeoff", "--only", "walls,", plot), 2, "", "no part \"\";");
	check_run(ARGUMENTS("takeoff", "--only", "list,walls", plot), 2, "", "\"list\"");
	check_run(ARGUMENTS("takeoff", "--only", "ro\x1B[2Jof", plot), 2, "", "\"ro<1B>[2Jof\"");
	check_run(ARGUMENTS("takeoff", plot, "--only"), 2, "", "--only needs a part after it");
	check_run(ARGUMENTS("plan", "--only", "walls", plot), 2, "", "--only is not understood");
	check_run(ARGUMENTS("compare", "--only", "walls", plot, plot), 2, "",
		"--only is not understood");
}
END_TEST

START_TEST(pages_are_parted_by_form_feeds_where_they_are_asked_for)
{
	struct program_result r = program_run(ARGUMENTS("takeoff", plot), NULL);

	ck_assert_ptr_null(strchr(r.output.bytes, '\f'));
	program_free(&r);
	check_run(ARGUMENTS("takeoff", "--pages", plot), 0, "\f\nShopping --", "");
	check_run(ARGUMENTS("takeoff", "--only", "walls,fence", "--pages", plot), 0,
		"\f\nFence --", "");
	check_run(ARGUMENTS("takeoff", "--pages", "--json", plot), 2, "", "--pages are for");
	check_run(ARGUMENTS("plan", "--pages", plot), 2, "", "--pages is not understood");
}
END_TEST

START_TEST(json_and_tables_have_no_parts)
{
	const char *words = "--only and --pages are for the takeoff as text";

	check_run(ARGUMENTS("takeoff", "--only", "walls", "--json", plot), 2, "", words);
	check_run(ARGUMENTS("takeoff", "--only", "walls", "--csv", plot), 2, "", words);
	check_run(ARGUMENTS("takeoff", "--only", "walls", "-o", in_folder("x.csv"), plot), 2, "",
		words);
	check_run(ARGUMENTS("takeoff", "--only", "walls", "-o", in_folder("x.json"), plot), 2, "",
		words);
	ck_assert_int_ne(access(in_folder("x.csv"), F_OK), 0);
	ck_assert_int_ne(access(in_folder("x.json"), F_OK), 0);
}
END_TEST

/* ---- The plan alone -------------------------------------------------------------------------- */

/* As it is in the takeoff, by itself. */
START_TEST(a_plan_is_printed_alone)
{
	check_run(ARGUMENTS("plan", plot), 0, "parterre plan 1\n", "");
	check_run(ARGUMENTS("plan", plot), 0, "o3=====", "");
	check_run(ARGUMENTS("takeoff", plot), 0, "o3=====", "");
	check_run(ARGUMENTS("plan", "-h"), 0, "parterre plan FILE", "");
	check_run(ARGUMENTS("plan", "--json", plot), 2, "",
		"plan takes -o OUT, --prices BOOK and --force");
	check_run(ARGUMENTS("plan"), 2, "", "plan needs one plot file");
}
END_TEST

START_TEST(a_set_out_is_printed_alone)
{
	check_run(ARGUMENTS("setout", plot), 0, "parterre setout 1\n", "");
	check_run(ARGUMENTS("setout", plot), 0, "Datum:", "");
	check_run(ARGUMENTS("setout", "-h"), 0, "parterre setout FILE", "");
	check_run(ARGUMENTS("setout", "--json", plot), 2, "",
		"setout takes -o OUT, --prices BOOK and --force");
	check_run(ARGUMENTS("setout", "-o", in_folder("set.txt"), plot), 0, "", "");
	check_file("set.txt", "parterre setout 1\n");
	check_run(ARGUMENTS("setout", "-o", in_folder("set.txt"), plot), 0, "", "");
}
END_TEST

/* Over a plan, and a takeoff, another plan may be written. */
START_TEST(a_plan_is_written_over_what_was_one)
{
	check_run(ARGUMENTS("plan", "-o", in_folder("out.txt"), plot), 0, "", "");
	check_file("out.txt", "parterre plan 1\n");
	check_run(ARGUMENTS("takeoff", "-o", in_folder("out.txt"), plot), 0, "", "");
	check_run(ARGUMENTS("plan", "-o", in_folder("out.txt"), plot), 0, "", "");
	check_file("out.txt", "parterre plan 1\n");
	put("other.txt", "dear diary\n");
	check_run(ARGUMENTS("plan", "-o", in_folder("other.txt"), plot), 2, "", "--force");
	check_run(ARGUMENTS("plan", "-o", in_folder("other.txt"), plot), 2, "",
		"holds something that is no takeoff, plan, set-out, sun, drawing, comparison or "
		"snags: nothing written");
	check_file("other.txt", "dear diary\n");
}
END_TEST

START_TEST(a_plot_is_read_from_standard_input_too)
{
	struct program_result r = program_run(ARGUMENTS("takeoff", "-"),
		"parterre-plot 1\nunits metric\ncell 500 mm\npath p \"Walk\"\nground 2 x 1\n  "
		"pp\n");

	ck_assert_int_eq(r.status, 0);
	ck_assert(strstr(r.output.bytes, "Walk") != NULL);
	program_free(&r);
	r = program_run(ARGUMENTS("takeoff", "-"), "parterre-plot 1\nunits metric\ncell 5\n");
	ck_assert_int_eq(r.status, 2);
	ck_assert_msg(strstr(r.errors.bytes, "-:3:6: found 5, expected ") != NULL, "%s",
		r.errors.bytes);
	program_free(&r);
}
END_TEST

static const char priced_plot[] = "parterre-plot 1\nunits imperial\ncell 1 ft\nprices "
	"\"book.json\"\n"
	"bed b \"Bed\"\nground 8 x 4\n  bbbbbbbb\n  bbbbbbbb\n  bbbbbbbb\n  bbbbbbbb\n";
#define BOOK_HEAD "{\"format\": \"parterre-prices\", \"version\": 1, \"currency\": \"USD\""

START_TEST(the_price_book_asked_for_goes_before_the_one_that_the_plot_names)
{
	put("garden.plot", priced_plot);
	put("book.json", BOOK_HEAD ", \"allow\": {\"kerf\": \"3/16 in\"}}");
	put("other.json", BOOK_HEAD ", \"allow\": {\"kerf\": \"5/16 in\"}}");
	check_run(ARGUMENTS("takeoff", in_folder("garden.plot")), 0,
		"\n  Saw kerf 3/16 in (price book).\n", "");
	check_run(ARGUMENTS("takeoff", "--prices", in_folder("other.json"),
		in_folder("garden.plot")),
		0, "\n  Saw kerf 5/16 in (price book).\n", "");
}
END_TEST

START_TEST(a_price_book_that_cannot_be_read_ends_the_takeoff)
{
	put("garden.plot", priced_plot);
	check_run(ARGUMENTS("takeoff", in_folder("garden.plot")), 2, "", "parterre: cannot open ");
	put("book.json", BOOK_HEAD ", \"allow\": {\"kerf\": 3}}");
	check_run(ARGUMENTS("takeoff", in_folder("garden.plot")), 2, "",
		"book.json: allow.kerf: found 3, expected a length with its unit, such as ");
	check_run(ARGUMENTS("takeoff", "--prices", in_folder("none.json"),
		in_folder("garden.plot")), 2, "", "none.json");
	check_run(ARGUMENTS("takeoff", "--prices", plot, plot), 2, "",
		"court.plot:1:1: found parterre-plot, expected a price book in JSON");
	check_run(ARGUMENTS("takeoff", plot, "--prices"), 2, "", "prices");
}
END_TEST

START_TEST(words_it_does_not_understand_are_refused)
{
	check_run(ARGUMENTS("--wrong"), 2, "", "--wrong");
	check_run(ARGUMENTS("one.plot", "two.plot"), 2, "", "two.plot");
	check_run(ARGUMENTS("takeoff"), 2, "", "one plot file");
	check_run(ARGUMENTS("takeoff", plot, plot), 2, "", "one plot file");
	check_run(ARGUMENTS("takeoff", "--wrong", plot), 2, "", "wrong");
	check_run(ARGUMENTS("takeoff", plot, "-o"), 2, "", "o");
}
END_TEST

START_TEST(the_screen_needs_a_terminal_and_says_so)
{
	check_run(ARGUMENTS(plot), 2, "", "terminal");
}
END_TEST

START_TEST(a_takeoff_goes_to_a_file_and_over_an_older_takeoff)
{
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("out.txt")), 0, "", "");
	check_file("out.txt", "parterre takeoff 1\n");
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("out.txt"), "--json"), 0, "", "");
	check_file("out.txt", "{\n  \"format\": \"parterre-takeoff\"");
	check_run(ARGUMENTS("takeoff", plot, "--output", in_folder("out.txt")), 0, "", "");
	check_file("out.txt", "parterre takeoff 1\n");
}
END_TEST

START_TEST(what_is_written_goes_by_what_is_asked_for_else_by_the_name_of_the_file)
{
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("out.json")), 0, "", "");
	check_file("out.json", "{\n  \"format\": \"parterre-takeoff\"");
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("out.csv")), 0, "", "");
	check_file("out.csv", "section,id,item,size,");
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("out.txt"), "--csv"), 0, "", "");
	check_file("out.txt", "section,id,item,size,");
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("out.json"), "--csv"), 0, "", "");
	check_file("out.json", "section,id,item,size,");
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("data.csv"), "--json"), 0, "", "");
	check_file("data.csv", "{\n  \"format\": \"parterre-takeoff\"");
}
END_TEST

/* Prices of one's own, say. */
START_TEST(a_table_that_may_be_filled_in_is_written_over_only_by_force)
{
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("out.csv")), 0, "", "");
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("out.csv")), 2, "",
		"somebody may have filled in more: nothing written");
	check_run(ARGUMENTS("takeoff", plot, "--json", "-o", in_folder("out.csv")), 2, "",
		"--force");
	check_file("out.csv", "section,id,item,size,");
	check_run(ARGUMENTS("takeoff", plot, "--force", "-o", in_folder("out.csv")), 0, "", "");
}
END_TEST

START_TEST(another_file_is_written_over_only_by_force)
{
	put("letter.txt", "Dear neighbour,\n");
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("letter.txt")), 2, "", "--force");
	check_file("letter.txt", "Dear neighbour,\n");
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("letter.txt"), "--force"), 0, "", "");
	check_file("letter.txt", "parterre takeoff 1\n");
}
END_TEST

START_TEST(the_plot_itself_is_never_written_over)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;

	file_read(plot, 1 << 20, &bytes, &error);
	put("my.plot", bytes.bytes);
	ck_assert_int_eq(symlink("my.plot", in_folder("link.txt")), 0);
	ck_assert_int_eq(link(in_folder("my.plot"), in_folder("hard.txt")), 0);
	check_run(ARGUMENTS("takeoff", in_folder("my.plot"), "--force", "-o", in_folder("my.plot")),
		2, "", "the plot itself");
	check_run(ARGUMENTS("takeoff", in_folder("my.plot"), "--force", "-o",
		in_folder("link.txt")), 2, "", "the plot itself");
	check_run(ARGUMENTS("takeoff", in_folder("my.plot"), "--force", "-o",
		in_folder("hard.txt")), 2, "", "the plot itself");
	check_file("my.plot", bytes.bytes);
	text_fini(&bytes);
}
END_TEST

START_TEST(the_price_book_is_never_written_over_by_whatever_name)
{
	put("book.json", BOOK_HEAD "}");
	put("my.plot", priced_plot);
	ck_assert_int_eq(symlink("book.json", in_folder("link.txt")), 0);
	ck_assert_int_eq(link(in_folder("book.json"), in_folder("hard.txt")), 0);
	for (int i = 0; i < 3; i++) {
		const char *out = (const char *[]){ "book.json", "link.txt", "hard.txt" }[i];

		check_run(ARGUMENTS("takeoff", in_folder("my.plot"), "--force", "-o",
			in_folder(out)), 2, "", "the price book that it reads: nothing written");
	}
	check_run(ARGUMENTS("takeoff", plot, "--force", "--prices", in_folder("book.json"), "-o",
		in_folder("book.json")), 2, "", "the price book that it reads");
	check_file("book.json", BOOK_HEAD);
	/* Another plot's is a file like others. */
	check_run(ARGUMENTS("takeoff", plot, "--force", "-o", in_folder("book.json")), 0, "", "");
}
END_TEST

START_TEST(help_and_version_have_short_names_too)
{
	check_run(ARGUMENTS("-h"), 0, "parterre takeoff FILE", "");
	check_run(ARGUMENTS("--help"), 0, "parterre takeoff FILE", "");
	check_run(ARGUMENTS("-V"), 0, "parterre 1", "");
	check_run(ARGUMENTS("--version"), 0, "parterre 1", "");
	check_run(ARGUMENTS("takeoff", "-h"), 0, "--prices BOOK", "");
	check_run(ARGUMENTS("takeoff", "--help"), 0, "--prices BOOK", "");
	check_run(ARGUMENTS("-x"), 2, "", "parterre: unknown option -x");
	check_run(ARGUMENTS("takeoff", "-x", plot), 2, "", "parterre: option -x is not");
}
END_TEST

START_TEST(what_cannot_be_begun_or_printed_is_told)
{
	char line[512];

	check_run(ARGUMENTS(""), 2, "", "a plot needs a name");
	check_run(ARGUMENTS("takeoff", ""), 2, "", "cannot open \"\"");
	ck_assert_int_eq(symlink("b.plot", in_folder("a.plot")), 0);
	ck_assert_int_eq(symlink("a.plot", in_folder("b.plot")), 0);
	check_run(ARGUMENTS(in_folder("a.plot")), 2, "", "Too many levels of symbolic links");
	for (int i = 0; i < 3; i++) {
		const char *words = (const char *[]){ "--help", "--version", "takeoff "
			"plots/court.plot" }[i];
		FILE *errors;

		snprintf(line, sizeof line, BUILD_FOLDER "/parterre %s 2>&1 >/dev/full", words);
		errors = popen(line, "r");
		ck_assert_ptr_nonnull(fgets(line, sizeof line, errors));
		ck_assert_int_eq(WEXITSTATUS(pclose(errors)), 2);
		ck_assert_str_eq(line, "parterre: cannot write to standard output: No space left "
			"on device\n");
	}
}
END_TEST

START_TEST(only_regular_files_are_written)
{
	ck_assert_int_eq(mkfifo(in_folder("pipe"), 0600), 0);
	check_run(ARGUMENTS("takeoff", plot, "--force", "-o", in_folder("pipe")), 2, "", "pipe");
	check_run(ARGUMENTS("takeoff", plot, "--force", "-o", folder), 2, "", "directory");
	check_run(ARGUMENTS("takeoff", plot, "--force", "-o", "/dev/null"), 2, "", "/dev/null");
	check_run(ARGUMENTS("takeoff", plot, "-o", in_folder("no/such/folder")), 2, "", "No such");
}
END_TEST

START_TEST(a_full_disk_is_an_error)
{
	int status = system(BUILD_FOLDER "/parterre takeoff plots/court.plot >/dev/full "
		"2>/dev/null");

	ck_assert_int_eq(WEXITSTATUS(status), 2);
}
END_TEST

static const struct {
	const char *bytes, *message;
} bad[] = {
	{ "", "bad.plot:1:1: found an empty file, expected parterre-plot 1" },
	{ "\x7F" "ELF\x01\x02", "bad.plot:1:" },
	{ "parterre-plot 2\n", "bad.plot:1:15: found 2, expected version 1" },
	{ "parterre-plot 1\nunits imperial\ncell 1 ft\nground 2 x 2\n  ..\n",
		"bad.plot:6:1: found the end of the file, expected row 2 of 2" },
	{ "parterre-plot 1\nunits imperial\ncell 1 ft\nground 2 x 1\n  .b\n",
		"bad.plot:5:4: found b, expected a letter of the legend" },
	{ "parterre-plot 1\nunits imperial\ncell 12\n",
		"bad.plot:3:6: found 12, expected a length" },
};

START_TEST(a_bad_plot_is_refused_with_its_place)
{
	put("bad.plot", bad[_i].bytes);
	check_run(ARGUMENTS("takeoff", in_folder("bad.plot")), 2, "", bad[_i].message);
}
END_TEST

START_TEST(what_is_no_readable_file_is_refused)
{
	check_run(ARGUMENTS("takeoff", in_folder("none.plot")), 2, "", "No such file");
	check_run(ARGUMENTS("takeoff", folder), 2, "", "directory");
	check_run(ARGUMENTS("takeoff", "/dev/zero"), 2, "", "not a regular file");
	check_run(ARGUMENTS("takeoff", ""), 2, "", "No such file");
}
END_TEST

START_TEST(an_endless_input_is_refused)
{
	int status = system("yes | " BUILD_FOLDER "/parterre takeoff - >/dev/null 2>&1");

	ck_assert_int_eq(WEXITSTATUS(status), 2);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("command");
	TCase *words = suite_case(suite, "words"), *output = suite_case(suite, "output");
	TCase *input = suite_case(suite, "input");

	tcase_add_test(words, without_arguments_it_says_what_to_do_in_one_screen);
	tcase_add_test(words, words_it_does_not_understand_are_refused);
	tcase_add_test(input, the_price_book_asked_for_goes_before_the_one_that_the_plot_names);
	tcase_add_test(input, a_price_book_that_cannot_be_read_ends_the_takeoff);
	tcase_add_test(words, the_screen_needs_a_terminal_and_says_so);
	tcase_add_checked_fixture(output, setup, teardown);
	tcase_add_test(output, a_takeoff_is_printed_as_text_json_or_csv);
	tcase_add_test(output, the_parts_are_listed_by_their_words_without_a_plot);
	tcase_add_test(output, only_the_parts_asked_for_are_printed);
	tcase_add_test(output, a_part_that_there_is_not_is_refused);
	tcase_add_test(output, pages_are_parted_by_form_feeds_where_they_are_asked_for);
	tcase_add_test(output, json_and_tables_have_no_parts);
	tcase_add_test(output, a_plan_is_printed_alone);
	tcase_add_test(output, a_set_out_is_printed_alone);
	tcase_add_test(output, a_plan_is_written_over_what_was_one);
	tcase_add_test(output, a_takeoff_goes_to_a_file_and_over_an_older_takeoff);
	tcase_add_test(output,
		what_is_written_goes_by_what_is_asked_for_else_by_the_name_of_the_file);
	tcase_add_test(output, a_table_that_may_be_filled_in_is_written_over_only_by_force);
	tcase_add_test(output, another_file_is_written_over_only_by_force);
	tcase_add_test(output, the_plot_itself_is_never_written_over);
	tcase_add_test(output, what_cannot_be_begun_or_printed_is_told);
	tcase_add_test(output, help_and_version_have_short_names_too);
	tcase_add_test(output, the_price_book_is_never_written_over_by_whatever_name);
	tcase_add_test(output, only_regular_files_are_written);
	tcase_add_test(output, a_full_disk_is_an_error);
	tcase_add_checked_fixture(input, setup, teardown);
	tcase_add_test(input, a_plot_is_read_from_standard_input_too);
	tcase_add_loop_test(input, a_bad_plot_is_refused_with_its_place, 0,
		(int)(sizeof bad / sizeof *bad));
	tcase_add_test(input, what_is_no_readable_file_is_refused);
	tcase_add_test(input, an_endless_input_is_refused);
	return suite;
}
