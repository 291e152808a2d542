/* parterre sun without a screen: its exit status, text and JSON, what it refuses. */
#include "report/request.h"
#include "support/json.h"
#include "support/program.h"
#include "support/runner.h"
#include "support/scratch.h"
#include "survey/sun.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#define SUNNY "tests/plots/sun.plot"
#define NO_SITE "plots/court.plot"

static char *folder;

static void setup(void)
{
	folder = scratch_new();
}

static void teardown(void)
{
	scratch_remove(folder);
}

static void check_run(const char *const *arguments, int status, const char *output,
	const char *errors)
{
	struct program_result r = program_run(arguments, NULL);

	ck_assert_msg(r.status == status, "status %d, said: %s", r.status, r.errors.bytes);
	ck_assert_msg(strstr(r.output.bytes, output) != NULL, "printed: %.300s", r.output.bytes);
	ck_assert_msg(strstr(r.errors.bytes, errors) != NULL, "said: %s", r.errors.bytes);
	ck_assert_str_eq(status == 2 ? r.output.bytes : r.errors.bytes, "");
	program_free(&r);
}

START_TEST(it_prints_the_usual_days_or_those_asked_for)
{
	check_run(ARGUMENTS("sun", SUNNY), 0, "\n2026-03-21 ", "");
	check_run(ARGUMENTS("sun", SUNNY), 0, "\n2026-09-21 ", "");
	check_run(ARGUMENTS("sun", "--on", "2027-12-21", SUNNY), 0, "\n2027-12-21 ", "");
	check_run(ARGUMENTS("sun", SUNNY, "--on", "2027-12-21", "--on", "2024-02-29"), 0,
		"\n2024-02-29 ", "");
	check_run(ARGUMENTS("sun", "--json", SUNNY), 0, "\"format\": \"parterre-sun\"", "");
}
END_TEST

START_TEST(what_is_missing_or_wrong_is_said)
{
	check_run(ARGUMENTS("sun", NO_SITE), 2, "", "court.plot: hours of sun need the latitude: "
		"a line such as \"site 51.5\"");
	check_run(ARGUMENTS("sun", "--json", NO_SITE), 2, "", "site 51.5");
	check_run(ARGUMENTS("sun"), 2, "", "sun needs one plot file");
	check_run(ARGUMENTS("sun", SUNNY, "--on"), 2, "", "--on needs a day");
	check_run(ARGUMENTS("sun", SUNNY, "--on", "2026-02-29"), 2, "", "not 2026-02-29");
	check_run(ARGUMENTS("sun", SUNNY, "--on", "21 June"), 2, "", "such as 2026-06-21");
	check_run(ARGUMENTS("sun", SUNNY, "--csv"), 2, "", "sun takes -o OUT");
	check_run(ARGUMENTS("takeoff", SUNNY, "--on", "2026-06-21"), 2, "", "takeoff takes");
}
END_TEST

/* What is said of such words on standard error. */
static const char *complained(int count, char **words, const struct accepted *accepted)
{
	static char said[200];
	struct request request;
	FILE *errors = tmpfile();
	int kept = dup(STDERR_FILENO);

	dup2(fileno(errors), STDERR_FILENO);
	request_read(&request, count, words, accepted);
	dup2(kept, STDERR_FILENO);
	close(kept);
	rewind(errors);
	said[fread(said, 1, sizeof said - 1, errors)] = '\0';
	fclose(errors);
	return said;
}

/* The words after the command. */
START_TEST(a_year_of_days_may_be_asked_for_and_no_more)
{
	static const struct accepted accepted = { .plots = 1, .days = true };
	static char sun[] = "sun", plot[] = SUNNY, on[] = "--on", days[367][DATE_SIZE];
	char *words[2 + 2 * 367 + 1] = { sun, plot };
	struct request request;

	for (int i = 0; i < 367; i++) {
		date_write((struct date){ 2000 + i / 12, 1 + i % 12, 1 }, days[i]);
		words[2 + 2 * i] = on;
		words[3 + 2 * i] = days[i];
	}
	ck_assert(request_read(&request, 2 + 2 * 366, words, &accepted));
	ck_assert_int_eq(request.day_count, 366);
	for (int i = 0; i < 366; i++)
		ck_assert_int_eq(request.days[i].year * 12 + request.days[i].month - 1,
			2000 * 12 + i);
	ck_assert(!request_read(&request, 2 + 2 * 367, words, &accepted));
	ck_assert_str_eq(complained(2 + 2 * 367, words, &accepted),
		"parterre: --on takes 366 days at the most\n");
	/* Nor the last day once more. */
	memcpy(days[366], days[365], DATE_SIZE);
	ck_assert(!request_read(&request, 2 + 2 * 367, words, &accepted));
}
END_TEST

START_TEST(it_is_written_over_what_was_one)
{
	char text[4096], json[4096];

	snprintf(text, sizeof text, "%s/sun.txt", folder);
	snprintf(json, sizeof json, "%s/sun.json", folder);
	for (int i = 0; i < 2; i++) {
		check_run(ARGUMENTS("sun", "-o", text, SUNNY), 0, "", "");
		check_run(ARGUMENTS("sun", "-o", json, SUNNY), 0, "", "");
	}
}
END_TEST

/* ---- JSON ------------------------------------------------------------------------------------ */

static cJSON *printed(const char *const *arguments)
{
	struct program_result r = program_run(arguments, NULL);
	cJSON *object = cJSON_Parse(r.output.bytes);

	ck_assert_ptr_nonnull(object);
	program_free(&r);
	return object;
}

static const cJSON *cell(const cJSON *rows, int x, int y)
{
	return cJSON_GetArrayItem(cJSON_GetArrayItem(rows, y), x);
}

static const char *class_of(double hours)
{
	return hours >= 6 ? "full-sun" : hours >= 4 ? "part-sun" : hours >= 2 ? "part-shade" :
		"shade";
}

/* Hours of whole steps; the mean and the class of each cell by its days. */
START_TEST(each_cell_has_hours_by_day_a_mean_and_a_class)
{
	cJSON *sun = printed(ARGUMENTS("sun", "--json", SUNNY));
	const cJSON *days = json_get(sun, "days"), *day;
	int none = 0;

	ck_assert_int_eq(cJSON_GetArraySize(days), 7);
	for (int y = 0; y < 16; y++) {
		for (int x = 0; x < 24; x++) {
			const cJSON *mean = cell(json_get(sun, "mean_h"), x, y);
			const cJSON *class = cell(json_get(sun, "class"), x, y);
			double all = 0;

			cJSON_ArrayForEach(day, days) {
				const cJSON *hours = cell(json_get(day, "hours"), x, y);

				ck_assert_int_eq(cJSON_IsNull(hours), cJSON_IsNull(mean));
				all += cJSON_IsNull(hours) ? 0 : hours->valuedouble;
			}
			none += cJSON_IsNull(mean);
			if (cJSON_IsNull(mean)) {
				ck_assert(cJSON_IsNull(class));
				continue;
			}
			ck_assert_double_eq_tol(all / 7, mean->valuedouble, 1e-8);
			ck_assert_double_eq_tol(all * 12, round(all * 12), 1e-6);
			ck_assert_str_eq(class->valuestring, class_of(mean->valuedouble));
		}
	}
	ck_assert_int_eq(none, 4 + 4 + 4 + 6); /* the dial, two urns, the shed on the plan */
	ck_assert_int_eq(json_get(sun, "houses_without_height")->valueint, 1);
	cJSON_Delete(sun);
}
END_TEST

START_TEST(days_and_dials_are_those_of_the_sun)
{
	cJSON *sun = printed(ARGUMENTS("sun", "--json", SUNNY, "--on", "2026-06-21"));
	const cJSON *day = cJSON_GetArrayItem(json_get(sun, "days"), 0);
	const cJSON *dial = cJSON_GetArrayItem(json_get(sun, "dials"), 0), *line;
	struct sun_day of = sun_day_of(51.5, (struct date){ 2026, 6, 21 });
	struct sun_times times = sun_times(&of, SUN_SET_HEIGHT);

	ck_assert_str_eq(json_get(day, "date")->valuestring, "2026-06-21");
	ck_assert_double_eq_tol(json_get(day, "rise_h")->valuedouble, times.rise, 1e-8);
	ck_assert_double_eq_tol(json_get(day, "day_length_h")->valuedouble,
		times.set - times.rise, 1e-8);
	ck_assert_int_eq(cJSON_GetArraySize(json_get(sun, "dials")), 1);
	ck_assert_str_eq(json_get(dial, "region")->valuestring, "F1");
	ck_assert_int_eq(cJSON_GetArraySize(json_get(dial, "hour_lines")), 17);
	cJSON_ArrayForEach(line, json_get(dial, "hour_lines")) {
		double angle = sun_dial_angle(51.5, json_get(line, "hour")->valueint);

		ck_assert_double_eq_tol(json_get(line, "angle_deg")->valuedouble, angle, 1e-8);
	}
	cJSON_Delete(sun);
}
END_TEST

START_TEST(beds_and_lawns_have_their_own_names_and_hours)
{
	cJSON *sun = printed(ARGUMENTS("sun", "--json", SUNNY));
	const cJSON *regions = json_get(sun, "regions"), *region, *class;
	double cells = 0;

	ck_assert_int_eq(cJSON_GetArraySize(regions), 6);
	cJSON_ArrayForEach(region, regions) {
		const cJSON *hours = json_get(region, "hours"), *day;
		double all = 0;

		cJSON_ArrayForEach(day, hours)
			all += day->valuedouble;
		ck_assert_int_eq(cJSON_GetArraySize(hours), 7);
		ck_assert_double_eq_tol(json_get(region, "mean_h")->valuedouble, all / 7, 1e-8);
		ck_assert_str_eq(json_get(region, "class")->valuestring, class_of(all / 7));
	}
	cJSON_ArrayForEach(class, json_get(sun, "classes"))
		cells += json_get(class, "cells")->valuedouble;
	ck_assert_double_eq(cells, 24 * 16 - 18);
	cJSON_Delete(sun);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("command sun");
	TCase *runs = suite_case(suite, "runs");
	TCase *json = suite_case(suite, "json");

	tcase_add_checked_fixture(runs, setup, teardown);
	tcase_add_test(runs, it_prints_the_usual_days_or_those_asked_for);
	tcase_add_test(runs, what_is_missing_or_wrong_is_said);
	tcase_add_test(runs, a_year_of_days_may_be_asked_for_and_no_more);
	tcase_add_test(runs, it_is_written_over_what_was_one);
	tcase_add_test(json, each_cell_has_hours_by_day_a_mean_and_a_class);
	tcase_add_test(json, days_and_dials_are_those_of_the_sun);
	tcase_add_test(json, beds_and_lawns_have_their_own_names_and_hours);
	return suite;
}
