/* What the takeoff said while it was one long list is all still said: in the parts, each printed by
 * itself, or in the JSON.
 *
 * tests/golden/figures.tsv has the figures of tests/plots/figures.plot as they stood there:
 * section, figure, and for one that is in the JSON alone where it is. */
#include "base/memory.h"
#include "report/json/json.h"
#include "report/text/print.h"
#include "support/garden.h"
#include "support/runner.h"

#include <cjson/cJSON.h>
#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static struct garden garden;
static struct text papers, json;
static cJSON *tree;

/* All papers with one blank for each space. */
static void print_papers(void)
{
	struct text printed = TEXT_EMPTY;

	for (int part = 0; part < PARTS; part++)
		garden_print(&garden, &printed, "figures.plot", 1u << part);
	for (const char *c = printed.bytes; *c; c++) {
		bool is_blank = isspace((unsigned char)*c) != 0;

		if (!is_blank || !papers.length || papers.bytes[papers.length - 1] != ' ')
			text_add_bytes(&papers, is_blank ? " " : c, 1);
	}
	text_fini(&printed);
}

static void setup(void)
{
	struct text_sink sink;

	papers = json = TEXT_EMPTY;
	sink = text_sink(&json);
	garden_file(&garden, "tests/plots/figures.plot");
	garden_count(&garden);
	print_papers();
	report_json(&sink.sink, &garden.plot, &garden.takeoff);
	tree = cJSON_Parse(json.bytes);
	ck_assert_ptr_nonnull(tree);
}

static void teardown(void)
{
	cJSON_Delete(tree);
	text_fini(&papers);
	text_fini(&json);
	garden_fini(&garden);
}

/* Whether the papers have it as a figure of its own, no part of a longer one. */
static bool is_said(const char *figure)
{
	for (const char *at = papers.bytes; (at = strstr(at, figure)) != NULL; at++) {
		const char *end = at + strlen(figure);
		char before = at == papers.bytes ? ' ' : at[-1];
		bool goes_on = (*end == '.' || *end == ',') && isdigit((unsigned char)end[1]);

		if (!isalnum((unsigned char)before) && !strchr(".,/", before) && !goes_on &&
			!isalnum((unsigned char)*end) && *end != '/')
			return true;
	}
	return false;
}

/* items[1].laid */
static double value_at(const char *path)
{
	const cJSON *at = tree;

	while (*path) {
		size_t length = strcspn(path, ".[");
		char key[32];

		snprintf(key, sizeof key, "%.*s", (int)length, path);
		at = *path == '[' ? cJSON_GetArrayItem(at, atoi(path + 1)) :
			cJSON_GetObjectItemCaseSensitive(at, key);
		ck_assert_msg(at, "nothing at %s", path);
		path += *path == '[' ? strcspn(path, "]") + 1 : length;
		path += *path == '.';
	}
	ck_assert_msg(cJSON_IsNumber(at), "no number");
	return at->valuedouble;
}

/* "8 ft 5 1/4 in", "1.35 cu yd" in SI, and what half its last digit is. */
static double figure_value(const char *figure, double *half)
{
	static const struct { const char *word; double si; } units[] = {
		{ "cu yd", 0.9144 * 0.9144 * 0.9144 }, { "cu ft", 0.3048 * 0.3048 * 0.3048 },
		{ "sq ft", 0.3048 * 0.3048 }, { "lb", 0.45359237 }, { "ft", 0.3048 },
		{ "in", 0.0254 }, { "hours", 1 },
	};
	double sum = 0;

	for (const char *c = figure; *c;) {
		double number = 0, si = 1, place = 1;
		bool is_behind = false;

		for (; strchr("0123456789.,", *c) && *c; c++) {
			is_behind = is_behind || *c == '.';
			if (isdigit((unsigned char)*c))
				number = number * 10 + (*c - '0');
			place /= is_behind && isdigit((unsigned char)*c) ? 10 : 1;
		}
		number *= place;
		c += strspn(c, " ");
		if (isdigit((unsigned char)*c)) { /* "5 1/4" */
			char *end;
			double top = strtod(c, &end);

			number += top / strtod(end + 1, &end);
			c = end;
		}
		c += strspn(c, " ");
		for (size_t i = 0; i < sizeof units / sizeof *units; i++)
			if (strncmp(c, units[i].word, strlen(units[i].word)) == 0) {
				si = units[i].si;
				c += strlen(units[i].word);
				break;
			}
		ck_assert_msg(*c == ' ' || !*c, "a unit that is not known: %s", figure);
		c += strspn(c, " ");
		sum += number * si;
		*half = place / 2 * si;
	}
	return sum;
}

static void check_figure(const char *section, const char *figure, const char *path)
{
	double half, value, expected;

	if (!path) {
		ck_assert_msg(is_said(figure), "%s: %s is not said any more", section, figure);
		return;
	}
	value = value_at(path);
	expected = figure_value(figure, &half);
	ck_assert_msg(fabs(value - expected) <= half * 1.0001, "%s: %s is %.9g at %s", section,
		figure, value, path);
}

START_TEST(every_figure_of_the_long_list_is_still_there)
{
	FILE *file = fopen("tests/golden/figures.tsv", "re");
	char line[200];
	int lines = 0;

	ck_assert_ptr_nonnull(file);
	for (; fgets(line, sizeof line, file); lines++) {
		const char *section = strtok(line, "\t\n"), *figure = strtok(NULL, "\t\n");

		check_figure(section, figure, strtok(NULL, "\t\n"));
	}
	fclose(file);
	ck_assert_int_ge(lines, 400);
}
END_TEST

/* The check itself: a part of a figure is none, and a wrong value is found out. */
START_TEST(a_figure_within_another_is_not_taken_for_it)
{
	double half;

	ck_assert(is_said("3.03 cu yd"));
	ck_assert(!is_said("03 cu yd"));
	ck_assert(!is_said("3.0 cu yd"));
	ck_assert_double_eq_tol(figure_value("8 ft 5 1/4 in", &half), 2.57175, 1e-9);
	ck_assert_double_eq_tol(figure_value("3,827 lb", &half), 1735.898, 1e-3);
	ck_assert_double_eq_tol(half, 0.2268, 1e-4);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("figures kept");
	TCase *kept = suite_case(suite, "kept");

	tcase_add_checked_fixture(kept, setup, teardown);
	tcase_add_test(kept, every_figure_of_the_long_list_is_still_there);
	tcase_add_test(kept, a_figure_within_another_is_not_taken_for_it);
	return suite;
}
