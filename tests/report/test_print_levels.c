/* The part of the text with the levels. */
#include "report/text/print.h"
#include "support/json.h"
#include "support/lines.h"
#include "support/quantity.h"
#include "support/runner.h"
#include "support/digging.h"

#include <locale.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static struct garden garden;
static struct text page;

static void setup(void)
{
	setlocale(LC_CTYPE, "C.UTF-8");
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

/* Prints the part alone, its lines of a paragraph joined. */
static void print(void)
{
	garden_count(&garden);
	text_clear(&page);
	garden_print(&garden, &page, "slope.plot", 1u << PART_LEVELS);
	lines_check(page.bytes, "levels");
	for (char *c = page.bytes; *c; c++)
		if (*c == '\n' && c[1] != '\n')
			*c = ' ';
}

static void says(const char *words)
{
	ck_assert_msg(strstr(page.bytes, words), "\"%s\" is not in %s", words, page.bytes);
}

/* What stands behind the words is such a volume. */
static void says_volume(const char *words, double cubic_metres)
{
	const char *at = strstr(page.bytes, words);

	ck_assert_msg(at, "\"%s\" is not in %s", words, page.bytes);
	at += strlen(words);
	quantity_is(&at, cubic_metres);
}

/* ---- What is told ---------------------------------------------------------------------------- */

#define FLAT "levels 4 ft\n  6 in, 6 in, 6 in\n  6 in, 6 in, 6 in\n"
#define HOUSE "house \"Home\"\n  from 2,-9 to 6,0\n"

static const struct { const char *lines, *words; } told[] = {
	{ FLAT, "Drops below the level string line were measured every 4 ft: 6 of them in the "
		"plan. No other finished ground is told: it stays as it is, and all but walls is "
		"dug as deep as it would be on level ground." },
	{ FLAT "finish 1,2 3 in\n", "The finished ground is level, 3 in below the string at "
		"1 ft across, 2 ft down." },
	{ FLAT "finish 1,2 3 in\nfall 2.5 % towards 112.5\n", "The finished ground falls 2.5 % "
		"towards 112.5 degrees from true north, 22.5 degrees below right on the plan, "
		"from 3 in below the string at 1 ft across, 2 ft down." },
	{ FLAT "fall 2 % towards 90\n", "The finished ground falls 2 % towards 90 degrees from "
		"true north, right on the plan, from the ground as it is at the datum." },
	{ FLAT "fall 5 % away\n" HOUSE, "The finished ground falls 5 % away from the house, from "
		"the ground as it is at the house." },
	{ FLAT "fall 5 % away\n", "No other finished ground is told" },
	{ FLAT "finish 1,2 3 in\nfall 5 % away\n", "The finished ground is level, since no house "
		"is told that it could fall away from, 3 in below the string" },
	{ "finish 0,0 3 in\n", "No drops are measured: what is dug is counted as if the ground lay "
		"as it is to be finished. The finished ground is level" },
};

START_TEST(what_the_plot_tells_is_said)
{
	garden_rectangle(&garden, 'p', 8, 4);
	plot_add_lines(&garden.plot, told[_i].lines);
	print();
	says(told[_i].words);
}
END_TEST

START_TEST(of_a_plot_that_tells_no_levels_the_part_says_so)
{
	garden_rectangle(&garden, 'p', 8, 4);
	print();
	says("No level of the ground is told, nor a fall: it counts as level.");
	ck_assert_ptr_null(strstr(page.bytes, "Drop"));
}
END_TEST

/* ---- Figures --------------------------------------------------------------------------------- */

START_TEST(cut_and_fill_are_said_by_both_methods)
{
	const struct cut_fills *volumes = &garden.takeoff.levelling.volumes;

	garden_file(&garden, "plots/slope.plot");
	print();
	says_volume("To the formation, cell by cell: cut ", volumes->formation.cut);
	says_volume("before anything is dug below it: cut ", volumes->finished.cut);
	says_volume("on squares of 4 ft: cut ", volumes->by_unit_areas.cut);
	says_volume("The two nets are ", garden.takeoff.levelling.apart);
	says(" more is cut than filled.");
}
END_TEST

START_TEST(more_that_is_filled_is_said_so)
{
	garden_rectangle(&garden, '.', 8, 4);
	plot_add_lines(&garden.plot, FLAT "finish 0,0 3 in\n");
	print();
	says("To the formation, cell by cell: fill 8.0 cu ft, nothing to cut.");
	says("; for 8.0 cu ft, in place, there is not enough: 11.1 cu ft is to be brought, loose.");
	says("Other ground: graded alone, 8.0 cu ft");
	/* each square of 4 ft */
	says("4 ft       0 in  4.0 cu ft     3 in");
}
END_TEST

START_TEST(as_much_that_is_filled_as_cut_is_said_so)
{
	garden_rectangle(&garden, '.', 8, 4);
	plot_add_lines(&garden.plot, "levels 4 ft\n  0 in, 3 in, 6 in\n  0 in, 3 in, 6 in\n"
		"finish 0,0 3 in\n");
	print();
	says("To the formation, cell by cell: cut 2.0 cu ft, fill 2.0 cu ft; as much is cut as "
		"filled.");
}
END_TEST

START_TEST(falls_name_paths_and_ground_near_a_house)
{
	garden_rows(&garden, (const char *const[]){ "pppp....", "pppp....", "llllllll", NULL });
	plot_add_lines(&garden.plot, "finish 0,0 0 in\nfall 2.5 % towards 0\n" HOUSE);
	print();
	says("Path  Steepest, % P1           2.50\n");
	says("Near a house  Least fall away ");
	says("P1                    -2.50 % ");
	says("L1                    -2.50 % ");
	says("open ground           -2.50 %");
}
END_TEST

START_TEST(drops_are_listed_from_the_first_hundred_on_counted)
{
	garden_rectangle(&garden, '.', 10, 10);
	levels_init(&garden.plot.details.levels, NM_PER_FOOT, 11, 11);
	print();
	says("10 ft   0 in      0 in      0 in       0 in 0 in    1 ft");
	says("0 in    9 ft      0 in      0 in       0 in and 21 more; --json lists them.");
	says("cut 0.0 cu ft, nothing to fill.");
	ck_assert_ptr_null(strstr(page.bytes, "before anything is dug below it"));
}
END_TEST

/* ---- Level ground ---------------------------------------------------------------------------- */

/* Points of the set-out have theirs. */
static void drop_points_levels(const cJSON *setout)
{
	const cJSON *string;
	cJSON *point;

	cJSON_ArrayForEach(string, json_get(setout, "strings")) {
		cJSON_ArrayForEach(point, json_get(string, "points")) {
			cJSON_DeleteItemFromObjectCaseSensitive(point, "ground_m");
			cJSON_DeleteItemFromObjectCaseSensitive(point, "formations");
		}
	}
}

static char *json_without_levels(void)
{
	static const char *const keys[] = { "levels", "level_points", "path_falls", "low_ground",
		"wall_levels", "fence_levels" };
	struct text text = TEXT_EMPTY;
	cJSON *root = json_of(&garden, &text);
	char *bytes;

	for (size_t i = 0; i < sizeof keys / sizeof *keys; i++)
		cJSON_DeleteItemFromObjectCaseSensitive(root, keys[i]);
	drop_points_levels(json_get(root, "setout"));
	bytes = cJSON_PrintUnformatted(root);
	cJSON_Delete(root);
	text_fini(&text);
	return bytes;
}

/* All drops alike, finished as it is or so far below the string: every figure of JSON. */
START_TEST(level_ground_has_exactly_the_figures_of_a_plot_without_levels)
{
	struct random random = { 12 };

	for (int i = 0; i < runner_count(40, 2000); i++) {
		struct levels *levels = &garden.plot.details.levels;
		nm drop = random_below(&random, 900) * NM_PER_64TH, cell;
		char *without, *with;

		diggings_plot(&garden.plot, &random);
		without = json_without_levels();
		cell = plot_cell(&garden.plot);
		levels_init(levels, 3 * cell,
			(int)levels_count(garden.plot.ground.columns, cell, 3 * cell),
			(int)levels_count(garden.plot.ground.rows, cell, 3 * cell));
		for (int k = 0; k < levels->columns * levels->rows; k++)
			levels->drops[k] = drop;
		garden.plot.details.finish = (struct finish){ .has_level = i % 2, .drop = drop };
		with = json_without_levels();
		ck_assert_str_eq(with, without);
		cJSON_free(with);
		cJSON_free(without);
		garden_fini(&garden);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print levels");
	TCase *words = suite_case(suite, "words"), *level = suite_case(suite, "level");

	tcase_add_checked_fixture(words, setup, teardown);
	tcase_add_loop_test(words, what_the_plot_tells_is_said, 0,
		(int)(sizeof told / sizeof *told));
	tcase_add_test(words, of_a_plot_that_tells_no_levels_the_part_says_so);
	tcase_add_test(words, cut_and_fill_are_said_by_both_methods);
	tcase_add_test(words, more_that_is_filled_is_said_so);
	tcase_add_test(words, as_much_that_is_filled_as_cut_is_said_so);
	tcase_add_test(words, falls_name_paths_and_ground_near_a_house);
	tcase_add_test(words, drops_are_listed_from_the_first_hundred_on_counted);
	tcase_add_checked_fixture(level, setup, teardown);
	tcase_add_test(level, level_ground_has_exactly_the_figures_of_a_plot_without_levels);
	return suite;
}
