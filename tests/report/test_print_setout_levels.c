/* The levels of set-out points on paper and in JSON. */
#include "report/json/json.h"
#include "report/text/print.h"
#include "report/text/setout_words.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/json.h"
#include "support/runner.h"

#include <limits.h>
#include <string.h>

#define FT NM_PER_FOOT
#define IN NM_PER_INCH

static struct garden garden;
static struct text page;

static void setup(void)
{
	page = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

/* Ground that falls by 1/2 in per ft to the right, from `first` in. */
static void given(const char *const *rows, int first)
{
	struct levels *levels = &garden.plot.details.levels;

	garden_rows(&garden, rows);
	levels_init(levels, 8 * FT, 3, 3);
	for (int i = 0; i < 9; i++)
		levels->drops[i] = (first + i % 3 * 4) * IN;
}

/* Two beds that meet by a corner: tests/takeoff/test_point_levels.c has the sums. A fence. */
static void draw(void)
{
	static const char *const rows[] = { "............", "....bbbb....", "....bbbb....",
		"....bbbb....", "....bbbb....", "........bbbb", "........bbbb", "........bbbb",
		"........bbbb", NULL };

	given(rows, 0);
	plot_set(&garden.plot, 'b', BED_BLOCK, "12 in x 8 in x 6 in");
	plot_set(&garden.plot, 'b', BED_EMBED, "4 in");
	plot_set(&garden.plot, 'b', BED_BASE, "5 in");
	fences_run(&garden.plot, "0,5 4,5");
	fences_set(&garden.plot, FENCE_INSET, "0 in");
}

static void print(int most)
{
	struct text_sink out = text_sink(&page);
	struct arena arena = ARENA_EMPTY;
	struct report report;
	struct setout setout;

	garden_count(&garden);
	report = garden_report(&garden, &out.sink);
	setout = setout_of(&report, &arena);
	print_setout_levels(&report, &setout, most);
	arena_clear(&arena);
}

#define MANNER "\n" \
	"Levels: finished ground at each point as a staff reads it, down from the level\n" \
	"string line; with a minus, up from it."

START_TEST(each_point_has_its_level_and_room_for_what_is_measured)
{
	draw();
	print(INT_MAX);
	ck_assert_str_eq(page.bytes, MANNER " Formation: what is dug to under a wall\n"
		"that turns there.\n"
		"\n"
		"Point   Across  Down  Level  Measured  Formation\n"
		"1         8 ft  9 ft   4 in  ____      15 in\n"
		"2        12 ft  9 ft   6 in  ____      15 in\n"
		"post 1    0 in  5 ft   0 in  ____      -\n"
		"3         4 ft  5 ft   2 in  ____      13 in\n"
		"post 2    4 ft  5 ft   2 in  ____      -\n"
		"4         8 ft  5 ft   4 in  ____      B1 13 in, B2 15 in\n"
		"5        12 ft  5 ft   6 in  ____      15 in\n"
		"6         4 ft  1 ft   2 in  ____      13 in\n"
		"7         8 ft  1 ft   4 in  ____      13 in\n");
}
END_TEST

START_TEST(so_many_are_listed_the_rest_is_counted)
{
	draw();
	print(2);
	ck_assert_ptr_nonnull(strstr(page.bytes, "2       12 ft  9 ft   6 in  ____      15 in\n"
		"And 7 more points: parterre setout FILE has them all.\n"));
	ck_assert_ptr_null(strstr(page.bytes, "\n3 "));
}
END_TEST

/* 1/2 in up from the string at the datum: a fall of 1 % is 0.12 in per ft. */
START_TEST(readings_are_to_an_eighth_and_may_be_over_the_string)
{
	static const char *const rows[] = { "ppp.", "....", NULL };

	given(rows, 0);
	garden.plot.details.levels.step = 0;
	garden.plot.details.finish = (struct finish){ .has_level = true, .has_fall = true,
		.at = { 4, 0 }, .drop = 0, .percent = MILLION, .bearing = 90 * MILLION };
	print(INT_MAX);
	ck_assert_str_eq(page.bytes, MANNER "\n\n"
		"Point  Across  Down    Level  Measured\n"
		"1        0 in  0 in  -1/2 in  ____\n"
		"2        3 ft  0 in  -1/8 in  ____\n"
		"3        0 in  1 ft  -1/2 in  ____\n"
		"4        3 ft  1 ft  -1/8 in  ____\n");
}
END_TEST

START_TEST(without_levels_there_are_none)
{
	draw();
	levels_fini(&garden.plot.details.levels);
	print(INT_MAX);
	ck_assert_uint_eq(page.length, 0);
}
END_TEST

/* ---- JSON ------------------------------------------------------------------------------------ */

static const cJSON *string_of(const cJSON *root, double offset)
{
	const cJSON *string;

	cJSON_ArrayForEach(string, json_get(json_get(root, "setout"), "strings"))
		if (strcmp(json_get(string, "is")->valuestring, "down") == 0 &&
			json_get(string, "offset_m")->valuedouble == offset &&
			cJSON_GetArraySize(json_get(string, "points")) > 0)
			return string;
	ck_abort_msg("no string");
	return NULL;
}

static cJSON *root_of(void)
{
	struct text_sink out = text_sink(&page);
	cJSON *root;

	garden_count(&garden);
	report_json(&out.sink, &garden.plot, &garden.takeoff);
	root = cJSON_Parse(page.bytes);
	ck_assert_ptr_nonnull(root);
	return root;
}

/* 5 ft are 1.524 m; point 4 is where both beds meet. */
START_TEST(json_has_the_ground_and_the_formations)
{
	const cJSON *points, *post, *corner, *formations;
	cJSON *root;

	draw();
	root = root_of();
	points = json_get(string_of(root, 1.524), "points");
	post = cJSON_GetArrayItem(points, 0);
	ck_assert_double_eq(json_get(post, "ground_m")->valuedouble, 0);
	ck_assert_ptr_null(cJSON_GetObjectItem(post, "formations"));
	cJSON_ArrayForEach(corner, points)
		if (cJSON_GetObjectItem(corner, "point") &&
			json_get(corner, "point")->valueint == 4)
			break;
	ck_assert_ptr_nonnull(corner);
	ck_assert_double_eq(json_get(corner, "ground_m")->valuedouble, 0.1016);
	formations = json_get(corner, "formations");
	ck_assert_int_eq(cJSON_GetArraySize(formations), 2);
	ck_assert_str_eq(json_get(cJSON_GetArrayItem(formations, 1), "bed")->valuestring, "B2");
	ck_assert_double_eq(json_get(cJSON_GetArrayItem(formations, 1),
		"formation_m")->valuedouble, 0.381);
	cJSON_Delete(root);
}
END_TEST

START_TEST(json_without_levels_has_neither)
{
	cJSON *root;

	draw();
	levels_fini(&garden.plot.details.levels);
	root = root_of();
	ck_assert_ptr_null(strstr(page.bytes, "\"ground_m\""));
	ck_assert_ptr_null(strstr(page.bytes, "formation"));
	cJSON_Delete(root);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_setout_levels");
	TCase *paper = suite_case(suite, "paper");
	TCase *json = suite_case(suite, "json");

	tcase_add_checked_fixture(paper, setup, teardown);
	tcase_add_test(paper, each_point_has_its_level_and_room_for_what_is_measured);
	tcase_add_test(paper, so_many_are_listed_the_rest_is_counted);
	tcase_add_test(paper, readings_are_to_an_eighth_and_may_be_over_the_string);
	tcase_add_test(paper, without_levels_there_are_none);
	tcase_add_checked_fixture(json, setup, teardown);
	tcase_add_test(json, json_has_the_ground_and_the_formations);
	tcase_add_test(json, json_without_levels_has_neither);
	return suite;
}
