/* Every allocation and every call on a file of a takeoff fails in turn, and the program is killed
 * at every call on a file: it says so and ends with 2, or it was harmless and the takeoff is
 * whole. And every allocation of what is printed besides. */

#include "support/faults.h"
#include "support/program.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <dirent.h>
#include <errno.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#define OLD_TAKEOFF "parterre takeoff 1\n"

enum { OLD_FILES = 3, KILLED = 128 + SIGKILL };

static const char *const samples[] = { "court", "great-court", "snags", "ring", "elbow",
	"rope-walk", "well-yard" };
static const int errors[] = { EIO, ENOSPC, EACCES, EINTR };

enum { SAMPLES = sizeof samples / sizeof *samples, ERRORS = sizeof errors / sizeof *errors };

static char *folder, plot[512], book[512], out[512];
static struct text whole; /* the takeoff as it must be */

static void copy(const char *from, const char *to)
{
	char line[1200];

	snprintf(line, sizeof line, "cp '%s' '%s'", from, to);
	ck_assert_int_eq(system(line), 0);
}

static void old_takeoff_write(void)
{
	FILE *file = fopen(out, "w");

	fputs(OLD_TAKEOFF, file);
	fclose(file);
}

static struct text file_text(const char *path)
{
	struct text text = TEXT_EMPTY;
	FILE *file = fopen(path, "r");
	char buffer[4096];
	size_t length;

	ck_assert_ptr_nonnull(file);
	while ((length = fread(buffer, 1, sizeof buffer, file)) > 0)
		text_add_bytes(&text, buffer, length);
	fclose(file);
	return text;
}

static int files_in_folder(void)
{
	DIR *entries = opendir(folder);
	int count = 0;

	for (struct dirent *entry; (entry = readdir(entries));)
		count += strcmp(entry->d_name, ".") != 0 && strcmp(entry->d_name, "..") != 0;
	closedir(entries);
	return count;
}

static const char *const *arguments(void)
{
	static const char *words[8];

	memcpy(words, ARGUMENTS("takeoff", plot, "--prices", book, "-o", out), 7 * sizeof *words);
	return words;
}

static int run(const struct fault_plan *plan, struct text *said)
{
	struct program_result result;

	faults_begin(plan);
	result = program_run(arguments(), NULL);
	unsetenv("LD_PRELOAD");
	*said = result.errors;
	text_fini(&result.output);
	return result.status;
}

static void setup(void)
{
	struct text said;

	folder = scratch_new();
	snprintf(plot, sizeof plot, "%s/plot", folder);
	snprintf(book, sizeof book, "%s/book", folder);
	snprintf(out, sizeof out, "%s/out", folder);
	copy("plots/court.plot", plot);
	copy("plots/prices.json", book);
	old_takeoff_write();
	ck_assert_int_eq(run(&(struct fault_plan){ .folder = folder }, &said), 0);
	whole = file_text(out);
	text_fini(&said);
}

static void teardown(void)
{
	faults_end();
	text_fini(&whole);
	scratch_remove(folder);
}

static bool holds(const char *path, const char *bytes)
{
	struct text text = file_text(path);
	bool is_so = strcmp(text.bytes, bytes) == 0;

	text_fini(&text);
	return is_so;
}

/* The old takeoff or the new one, and nothing beside it but what was there. */
static void check_files(const struct fault_plan *plan, int status, const char *said)
{
	bool is_old = holds(out, OLD_TAKEOFF), is_whole = holds(out, whole.bytes);

	ck_assert_msg(is_old || is_whole, "call %ld: half a takeoff", plan->at);
	ck_assert_msg(status != 0 || is_whole, "call %ld: 0, and nothing is written", plan->at);
	ck_assert_msg(status == 0 || status == 2 || (status == KILLED && !plan->error),
		"call %ld: status %d", plan->at, status);
	ck_assert_msg(status != 2 || strncmp(said, "parterre: ", 10) == 0, "call %ld: %s",
		plan->at, said);
	ck_assert_msg(status == KILLED || files_in_folder() == OLD_FILES,
		"call %ld: a file is left", plan->at);
}

static void try(const struct fault_plan *plan)
{
	struct text said;
	int status;

	old_takeoff_write();
	status = run(plan, &said);
	check_files(plan, status, said.bytes);
	text_fini(&said);
}

/* Calls from the first to the last, so many of them that a run ends soon. */
static void try_all(struct fault_plan plan, long count, int most)
{
	long step = count / most + 1;

	ck_assert_int_gt(count, 5);
	for (plan.at = 1; plan.at <= count; plan.at += step)
		try(&plan);
}

static long calls(struct fault_plan plan)
{
	struct text said;

	plan.at = 0;
	old_takeoff_write();
	run(&plan, &said);
	text_fini(&said);
	return faults_count();
}

START_TEST(every_allocation_that_fails_is_said)
{
	struct fault_plan plan = { .is_memory = true, .error = ENOMEM };
	char sample[64];

	if (!faults_work())
		return;
	snprintf(sample, sizeof sample, "plots/%s.plot", samples[_i]);
	copy(sample, plot);
	text_fini(&whole);
	ck_assert_int_gt(calls(plan), 0);
	whole = file_text(out);
	try_all(plan, calls(plan), runner_count(40, 100000));
}
END_TEST

/* Of plots without a price book: nothing is read as JSON before what is printed so. */
static const char *const *const printed[] = {
	ARGUMENTS("takeoff", "plots/court.plot", "--json"),
	ARGUMENTS("takeoff", "plots/court.plot", "--csv"),
	ARGUMENTS("sun", "tests/plots/sun.plot"),
	ARGUMENTS("sun", "tests/plots/sun.plot", "--json"),
	ARGUMENTS("snags", "plots/snags.plot"),
	ARGUMENTS("snags", "plots/snags.plot", "--json"),
	ARGUMENTS("compare", "plots/court.plot", "plots/elbow.plot"),
	ARGUMENTS("compare", "plots/court.plot", "plots/elbow.plot", "--json"),
	ARGUMENTS("drawing", "plots/court.plot"),
	ARGUMENTS("prices", "new", "plots/court.plot"),
};
enum { PRINTED = sizeof printed / sizeof *printed };

/* All of it is printed; or so far as it went, and that it ended there is said. */
static void check_printed(const struct program_result *result,
	const struct program_result *expected, long call)
{
	if (result->status == 2)
		ck_assert_msg(strncmp(result->errors.bytes, "parterre: ", 10) == 0 &&
			strncmp(result->output.bytes, expected->output.bytes,
			result->output.length) == 0, "call %ld: %s", call, result->errors.bytes);
	else
		ck_assert_msg(result->status == expected->status &&
			strcmp(result->output.bytes, expected->output.bytes) == 0,
			"call %ld: status %d, and other than it was", call, result->status);
}

START_TEST(every_allocation_of_what_is_printed_that_fails_is_said)
{
	struct fault_plan plan = { .is_memory = true, .error = ENOMEM };
	struct program_result expected, result;
	long count, step;

	if (!faults_work())
		return;
	faults_begin(&plan);
	expected = program_run(printed[_i], NULL);
	count = faults_count();
	ck_assert_int_lt(expected.status, 2);
	step = count / runner_count(20, 100000) + 1;
	for (plan.at = 1; plan.at <= count; plan.at += step) {
		faults_begin(&plan);
		result = program_run(printed[_i], NULL);
		check_printed(&result, &expected, plan.at);
		program_free(&result);
	}
	program_free(&expected);
}
END_TEST

START_TEST(every_file_call_that_fails_is_said)
{
	struct fault_plan plan = { .folder = folder, .error = errors[_i] };

	if (faults_work())
		try_all(plan, calls(plan), 1000);
}
END_TEST

START_TEST(killed_at_a_file_call_the_old_takeoff_or_the_new_is_there)
{
	struct fault_plan plan = { .folder = folder };

	if (faults_work())
		try_all(plan, calls(plan), 1000);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("faults");
	TCase *all = suite_case(suite, "faults");

	tcase_set_timeout(all, 300);
	tcase_add_checked_fixture(all, setup, teardown);
	tcase_add_loop_test(all, every_allocation_that_fails_is_said, 0, SAMPLES);
	tcase_add_loop_test(all, every_allocation_of_what_is_printed_that_fails_is_said, 0,
		PRINTED);
	tcase_add_loop_test(all, every_file_call_that_fails_is_said, 0, ERRORS);
	tcase_add_test(all, killed_at_a_file_call_the_old_takeoff_or_the_new_is_there);
	return suite;
}
