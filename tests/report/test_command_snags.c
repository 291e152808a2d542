/* parterre snags without a screen: its exit status, text and JSON, what it refuses. */
#include "base/file.h"
#include "support/json.h"
#include "support/program.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define NONE "plots/elbow.plot"
#define SOME "plots/snags.plot"

static char *folder;

static void setup(void)
{
	folder = scratch_new();
}

static void teardown(void)
{
	scratch_remove(folder);
}

START_TEST(its_status_says_whether_there_are_any)
{
	program_check(ARGUMENTS("snags", NONE), NULL, 0, "\nNo snags.\n", "");
	program_check(ARGUMENTS("snags", SOME), NULL, 1, "\nWall jog, ", "");
	program_check(ARGUMENTS("snags", "--json", NONE), NULL, 0, "\"snags\": [", "");
	program_check(ARGUMENTS("snags", SOME, "--json"), NULL, 1, "\"code\":\"wall-jog\"", "");
}
END_TEST

/* Behind a head of its own all is as on the front of the takeoff, byte by byte. */
START_TEST(it_prints_the_snags_as_the_front_of_the_takeoff_does)
{
	struct program_result front = program_run(ARGUMENTS("takeoff", "--only", "front", SOME),
		NULL);
	struct program_result alone = program_run(ARGUMENTS("snags", SOME), NULL);
	const char *snags = strstr(alone.output.bytes, "\nSnags: ");

	ck_assert_int_eq(strncmp(alone.output.bytes, "parterre snags 1\n", 17), 0);
	ck_assert(strstr(alone.output.bytes, "\nPlan  snags.plot: "));
	ck_assert(snags && strlen(snags) > 1000);
	ck_assert(strstr(front.output.bytes, snags));
	program_free(&front);
	program_free(&alone);
}
END_TEST

static cJSON *printed(const char *command, const char *plot)
{
	struct program_result r = program_run(ARGUMENTS(command, "--json", plot), NULL);
	cJSON *object = cJSON_Parse(r.output.bytes);

	ck_assert_ptr_nonnull(object);
	program_free(&r);
	return object;
}

START_TEST(json_has_the_plot_and_the_snags_of_the_takeoff)
{
	static const char *const plots[] = { NONE, SOME };

	for (int i = 0; i < 2; i++) {
		cJSON *alone = printed("snags", plots[i]), *takeoff = printed("takeoff", plots[i]);

		ck_assert_str_eq(json_get(alone, "format")->valuestring, "parterre-snags");
		ck_assert_int_eq(json_get(alone, "version")->valueint, 1);
		ck_assert(cJSON_Compare(json_get(alone, "plot"), json_get(takeoff, "plot"), true));
		ck_assert(cJSON_Compare(json_get(alone, "snags"), json_get(takeoff, "snags"),
			true));
		ck_assert_int_eq(cJSON_GetArraySize(alone), 4);
		cJSON_Delete(alone);
		cJSON_Delete(takeoff);
	}
}
END_TEST

/* A path 3 ft wide is as wide as is usually asked for; the book asks for more. */
START_TEST(the_price_book_may_make_snags)
{
	static const char plot[] = "parterre-plot 1\nunits imperial\ncell 1 ft\npath p \"Walk\"\n"
		"lawn l \"Grass\"\nground 3 x 5\n  ppp\n  ppp\n  ppp\n  lll\n  lll\n";
	struct text book = TEXT_EMPTY;
	FILE *file;

	text_print(&book, "%s/book.json", folder);
	file = fopen(book.bytes, "w");
	ck_assert(fputs("{\"format\": \"parterre-prices\", \"version\": 1, \"currency\": "
		"\"XXX\", \"allow\": {\"path-clear\": \"4 ft\"}}", file) >= 0);
	ck_assert_int_eq(fclose(file), 0);
	program_check(ARGUMENTS("snags", "-"), plot, 0, "No snags.", "");
	program_check(ARGUMENTS("snags", "--prices", book.bytes, "-"), plot, 1, "Path narrow", "");
	text_fini(&book);
}
END_TEST

START_TEST(what_it_cannot_read_or_understand_is_told)
{
	program_check(ARGUMENTS("snags"), NULL, 2, "", "snags needs one plot file");
	program_check(ARGUMENTS("snags", NONE, NONE), NULL, 2, "", "snags needs one plot file");
	program_check(ARGUMENTS("snags", "--csv", NONE), NULL, 2, "",
		"snags takes -o OUT, --prices BOOK, --force and --json");
	program_check(ARGUMENTS("snags", "none.plot"), NULL, 2, "", "none.plot");
	program_check(ARGUMENTS("snags", folder), NULL, 2, "", "directory");
	program_check(ARGUMENTS("snags", "--prices", "none.json", NONE), NULL, 2, "", "none.json");
	program_check(ARGUMENTS("snags", "-"), "parterre-plot 2\n", 2, "", "expected version 1");
	program_check(ARGUMENTS("snags", "-"), "parterre-plot 1\nunits imperial\ncell 1 ft\n"
		"ground 2 x 2\n  ..\n", 2, "", "-:6:1: found the end of the file");
	program_check(ARGUMENTS("snags", "--help"), NULL, 0, "parterre snags FILE", "");
}
END_TEST

/* Where nothing can be written nobody may take it for a plot without snags, or with some. */
START_TEST(what_cannot_be_written_is_an_error)
{
	static const char *const words[] = { NONE, SOME, "--json " NONE, "--json " SOME };

	for (int i = 0; i < 4; i++) {
		char line[512];
		FILE *errors;

		snprintf(line, sizeof line, BUILD_FOLDER "/parterre snags %s 2>&1 >/dev/full",
			words[i]);
		errors = popen(line, "r");
		ck_assert_ptr_nonnull(fgets(line, sizeof line, errors));
		ck_assert_int_eq(WEXITSTATUS(pclose(errors)), 2);
		ck_assert_str_eq(line, "parterre: cannot write to standard output: No space left "
			"on device\n");
	}
	program_check(ARGUMENTS("snags", "-o", "/dev/null", SOME), NULL, 2, "", "/dev/null");
	program_check(ARGUMENTS("snags", "-o", NONE, "--force", NONE), NULL, 2, "",
		"the plot itself");
}
END_TEST

START_TEST(it_writes_over_snags_and_takeoffs_alone)
{
	struct text out = TEXT_EMPTY, bytes = TEXT_EMPTY;
	struct file_error error;

	text_print(&out, "%s/out.json", folder);
	program_check(ARGUMENTS("snags", "-o", out.bytes, SOME), NULL, 1, "", "");
	program_check(ARGUMENTS("takeoff", "-o", out.bytes, NONE), NULL, 0, "", "");
	program_check(ARGUMENTS("snags", "-o", out.bytes, NONE), NULL, 0, "", "");
	ck_assert(file_read(out.bytes, 1 << 20, &bytes, &error));
	ck_assert(strstr(bytes.bytes, "\"parterre-snags\""));
	text_clear(&out);
	text_print(&out, "%s/out.txt", folder);
	program_check(ARGUMENTS("snags", "-o", out.bytes, NONE), NULL, 0, "", "");
	program_check(ARGUMENTS("snags", "-o", out.bytes, SOME), NULL, 1, "", "");
	text_fini(&bytes);
	text_fini(&out);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("command_snags");
	TCase *all = suite_case(suite, "snags");

	tcase_add_checked_fixture(all, setup, teardown);
	tcase_add_test(all, its_status_says_whether_there_are_any);
	tcase_add_test(all, it_prints_the_snags_as_the_front_of_the_takeoff_does);
	tcase_add_test(all, json_has_the_plot_and_the_snags_of_the_takeoff);
	tcase_add_test(all, the_price_book_may_make_snags);
	tcase_add_test(all, what_it_cannot_read_or_understand_is_told);
	tcase_add_test(all, what_cannot_be_written_is_an_error);
	tcase_add_test(all, it_writes_over_snags_and_takeoffs_alone);
	return suite;
}
