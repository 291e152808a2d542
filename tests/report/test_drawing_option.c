/* What the command line asks of a drawing, and where it goes. */
#include "base/file.h"
#include "support/program.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char plot[] = "plots/court.plot";

static void check(const char *const *arguments, int status, const char *output, const char *errors)
{
	struct program_result result = program_run(arguments, NULL);

	ck_assert_msg(result.status == status, "status %d: %s", result.status, result.errors.bytes);
	ck_assert_msg(strstr(result.output.bytes, output), "printed: %.500s", result.output.bytes);
	ck_assert_msg(strstr(result.errors.bytes, errors), "complained: %s", result.errors.bytes);
	program_free(&result);
}

START_TEST(each_option_is_taken)
{
	static const char *const rows[][3] = {
		{ "--paper", "a3", "width=\"420mm\" height=\"297mm\"" },
		{ "--paper", "tabloid", "width=\"17in\" height=\"11in\"" },
		{ "--turn", "portrait", "width=\"8.5in\" height=\"11in\"" },
		{ "--scale", "1:60", "Scale 1 in = 5 ft (1:60)<" },
		{ "--scale", "8 ft", "Scale 1 in = 8 ft (1:96)<" },
		{ "--scale", "1:70", "Scale 1:70<" },
		{ "--with", "strings", "string of the set-out" },
		{ "--with", "levels,strings", "string of the set-out" },
		{ "--sheet", "1", "Sheet 1 of 1" },
		{ "-o", "-", "<!-- parterre drawing 1 -->" },
	};

	check(ARGUMENTS("drawing", plot, rows[_i][0], rows[_i][1]), 0, rows[_i][2], "");
	check(ARGUMENTS("drawing", "tests/plots/sun.plot", "--with", "sun,levels"), 0,
		"full sun: 6 and more h of sun a day", "");
}
END_TEST

START_TEST(plain_is_without_colours)
{
	struct program_result result = program_run(ARGUMENTS("drawing", plot, "--plain"), NULL);

	ck_assert_int_eq(result.status, 0);
	for (const char *at = result.output.bytes; (at = strchr(at, '#')) != NULL; at++)
		if (at[-1] == '"')
			ck_assert_msg(strncmp(at + 1, at + 3, 2) == 0 &&
				strncmp(at + 1, at + 5, 2) == 0, "%.7s", at);
	program_free(&result);
}
END_TEST

START_TEST(what_is_not_understood_is_said)
{
	static const char *const rows[][3] = {
		{ "--paper", "b5", "it takes a4, a3, letter or tabloid" },
		{ "--turn", "round", "it takes portrait or landscape" },
		{ "--scale", "50", "it takes 1:50, up to 1:10000, or what an inch" },
		{ "--sheet", "0", "it takes a number from 1 to 9999" },
		{ "--sheet", "12345", "it takes a number from 1 to 9999" },
		{ "--sheet", "2", "the drawing has 1 sheet, so there is no sheet 2" },
		{ "--with", "levels,snags", "there is no \"snags\" to be drawn besides" },
		{ "--with", "levels,", "there is no \"\" to be drawn besides" },
		{ "--with", "grass", "it takes levels, strings, sun, or some of them with commas" },
		{ "--with", "sun", "hours of sun need the latitude" },
		{ "--scale", "1:12", "the plan is too large for Tabloid landscape at 1:12" },
		{ "--only", "front", "--only is not understood" },
		{ "--json", "--plain", "--json is not understood" },
	};

	check(ARGUMENTS("drawing", plot, rows[_i][0], rows[_i][1]), 2, "", rows[_i][2]);
	check(ARGUMENTS("drawing", plot, "--paper"), 2, "", "--paper needs a word after it");
	check(ARGUMENTS("takeoff", plot, "--paper", "a4"), 2, "", "--paper is not understood");
}
END_TEST

/* A drawing may be written anew; what is none is kept. */
START_TEST(it_goes_into_a_file_and_over_another_drawing_alone)
{
	char *folder = scratch_new(), path[4096];
	FILE *other;

	snprintf(path, sizeof path, "%s/a.svg", folder);
	check(ARGUMENTS("drawing", plot, "-o", path), 0, "", "");
	check(ARGUMENTS("drawing", plot, "-o", path, "--plain"), 0, "", "");
	other = fopen(path, "w");
	ck_assert(other && fputs("<?xml version=\"1.0\"?>\n<svg/>\n", other) >= 0);
	fclose(other);
	check(ARGUMENTS("drawing", plot, "-o", path), 2, "", "holds something that is no takeoff");
	check(ARGUMENTS("drawing", plot, "-o", path, "--force"), 0, "", "");
	check(ARGUMENTS("drawing", plot, "-o", plot, "--force"), 2, "", "is the plot itself");
	scratch_remove(folder);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("drawing option");
	TCase *options = suite_case(suite, "options");

	tcase_add_loop_test(options, each_option_is_taken, 0, 10);
	tcase_add_test(options, plain_is_without_colours);
	tcase_add_loop_test(options, what_is_not_understood_is_said, 0, 13);
	tcase_add_test(options, it_goes_into_a_file_and_over_another_drawing_alone);
	return suite;
}
