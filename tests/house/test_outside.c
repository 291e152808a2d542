/* Names of files and options come from outside: whatever bytes they have, nothing of them reaches
 * standard error that works on a terminal, and every line there is one of ours. */

#include "support/program.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* Each stands between an "a" and a "z" of a name. */
static const char *const evils[] = {
	"\033[2J", "\033]0;x\007", "\033c", "\033P1$x\033\\", "\b\b\b", "\r", "\n", "\t", "\v",
	"\f", "\016", "\017", "\177", "\001", "\302\23331m", "\302\205", "\23331m",
	"\2350;x\234", "\342\200\256", "\342\200\255", "\342\201\246", "\342\201\247",
	"\342\200\216", "\330\234", "\342\200\213", "\342\200\215", "\342\201\240",
	"\357\273\277", "\302\255", "\342\200\250", "\342\200\251", "\357\277\271",
	"\363\240\200\201", "\356\200\200", "\377\376", "\355\240\200", "\300\257", "\360\237",
};

enum { EVILS = sizeof evils / sizeof *evils, LINE_FIRST = sizeof "parterre: " - 1 };

static char *folder;
static char evil[64], good[512], spoilt[512], taken[512], missing[512];

static void file_write(const char *path, const char *bytes)
{
	FILE *file = fopen(path, "w");

	ck_assert_ptr_nonnull(file);
	fputs(bytes, file);
	fclose(file);
}

static void setup(void)
{
	folder = scratch_new();
}

static void teardown(void)
{
	scratch_remove(folder);
}

static void names_make(const char *bytes)
{
	snprintf(evil, sizeof evil, "a%sz", bytes);
	snprintf(good, sizeof good, "%s/good%s.plot", folder, evil);
	snprintf(spoilt, sizeof spoilt, "%s/spoilt%s", folder, evil);
	snprintf(taken, sizeof taken, "%s/taken%s", folder, evil);
	snprintf(missing, sizeof missing, "%s/missing%s", folder, evil);
	file_write(good, "parterre-plot 1\nunits metric\ncell 30 cm\n\nground 1 x 1\n  .\n");
	file_write(spoilt, "parterre-plot 1\nunit\n");
	file_write(taken, "something else\n");
}

/* Only the first byte of a character tells whether it is one that is shown: these are spelled. */
static bool has_unshown(const char *errors)
{
	for (int i = 0; i < EVILS; i++)
		if (strcmp(evils[i], "\n") != 0 && strstr(errors, evils[i]))
			return true;
	return false;
}

static void check(const char *const *arguments)
{
	struct program_result result = program_run(arguments, NULL);
	const char *errors = result.errors.bytes;

	ck_assert_int_eq(result.status, 2);
	ck_assert_msg(!has_unshown(errors), "as it came in: %s", errors);
	ck_assert_msg(strchr(errors, '<'), "not spelled: %s", errors);
	for (const char *line = errors; *line; line = strchr(line, '\n') + 1)
		ck_assert_msg(strncmp(line, "parterre: ", LINE_FIRST) == 0, "a line of theirs: %s",
			line);
	program_free(&result);
}

START_TEST(no_name_or_option_works_on_the_terminal)
{
	char option[80];

	names_make(evils[_i]);
	snprintf(option, sizeof option, "--%s", evil);
	check(ARGUMENTS("takeoff", missing));
	check(ARGUMENTS("takeoff", spoilt));
	check(ARGUMENTS("takeoff", folder, option));
	check(ARGUMENTS("takeoff", good, "-o", taken));
	check(ARGUMENTS("takeoff", good, "-o", good));
	check(ARGUMENTS("takeoff", good, "--prices", missing));
	check(ARGUMENTS("takeoff", good, "--prices", spoilt));
	check(ARGUMENTS(spoilt));
	check(ARGUMENTS(option));
	check(ARGUMENTS(good, missing));
}
END_TEST

START_TEST(a_takeoff_says_the_name_of_its_plot_spelled_out)
{
	struct program_result result;

	names_make("\033[31m");
	result = program_run(ARGUMENTS("takeoff", good), NULL);
	ck_assert_int_eq(result.status, 0);
	ck_assert_ptr_nonnull(strstr(result.output.bytes, "gooda<1B>[31mz.plot"));
	program_free(&result);
}
END_TEST

static const struct {
	const char *locale, *shown;
} locales[] = {
	{ "C.UTF-8", "G\303\244rten" },
	{ "xx_YY.UTF-8", "G\303\244rten" }, /* not installed */
	{ "xx_YY.utf8", "G\303\244rten" },
	{ "C", "G<C3><A4>rten" },
	{ "xx_YY.ISO-8859-1", "G<C3><A4>rten" },
};

START_TEST(a_name_is_shown_in_the_letters_of_the_locale)
{
	struct program_result result;

	setenv("LC_ALL", locales[_i].locale, 1);
	result = program_run(ARGUMENTS("takeoff", "G\303\244rten"), NULL);
	ck_assert_msg(strstr(result.errors.bytes, locales[_i].shown), "%s", result.errors.bytes);
	program_free(&result);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("outside");
	TCase *all = suite_case(suite, "outside");

	tcase_add_checked_fixture(all, setup, teardown);
	tcase_add_loop_test(all, no_name_or_option_works_on_the_terminal, 0, EVILS);
	tcase_add_test(all, a_takeoff_says_the_name_of_its_plot_spelled_out);
	tcase_add_loop_test(all, a_name_is_shown_in_the_letters_of_the_locale, 0,
		sizeof locales / sizeof *locales);
	return suite;
}
