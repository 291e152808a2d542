/* The readings of walls on paper, on the panel and in JSON. */
#include "report/json/json.h"
#include "report/panel/pages.h"
#include "report/text/print.h"
#include "support/garden.h"
#include "support/runner.h"

#include <string.h>

static struct garden garden;
static struct text page;

/* 2, 6 / 4, 12 in at the corners of 8 x 8 ft: tests/takeoff/test_wall_levels.c has the sums. */
#define BEFORE "parterre-plot 1\nunits imperial\ncell 1 ft\n\n" \
	"bed b \"Bed\"\n  block 12 in x 8 in x 6 in\n  courses 3\n  embed 4 in\n  base 5 in\n\n" \
	"ground 8 x 8\n  ........\n  .bbbbbb.\n  .bbbbbb.\n  .bbbbbb.\n  .bbbbbb.\n  .bbbbbb.\n" \
	"  .bbbbbb.\n  ........\n"
#define FALLING "\nlevels 8 ft\n  2 in, 6 in\n  4 in, 12 in\n"

static void setup(void)
{
	page = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

static void print(const char *plot, bool is_whole)
{
	struct text_sink out = text_sink(&page);
	struct report report;

	plot_from_text(&garden.plot, plot);
	garden_count(&garden);
	report = garden_report(&garden, &out.sink);
	report.is_whole = is_whole;
	print_wall_levels(&report);
}

#define READINGS \
	"Readings of a staff held there: how far down from the level string line; with a\n" \
	"minus, how far up from it. Course 1: its top.\n"
#define TABLES "\n" \
	"Bed   Formation  Base's top   Course 1   Wall's top\n" \
	"B1   19 5/16 in  14 5/16 in  8 5/16 in  -3 11/16 in\n" \
	"\n" \
	"Bed  Across, down      Ground   Exposed  Base's top, course 1\n" \
	"B1   1 ft, 1 ft    2 13/16 in  6 1/2 in  14 5/16 in, 8 5/16 in\n" \
	"B1   7 ft, 1 ft     6 3/16 in  9 7/8 in  14 5/16 in, 8 5/16 in\n" \
	"B1   7 ft, 7 ft    10 5/16 in     14 in  14 5/16 in, 8 5/16 in\n" \
	"B1   1 ft, 7 ft    4 11/16 in  8 3/8 in  14 5/16 in, 8 5/16 in\n"

START_TEST(beds_and_corners_have_their_readings)
{
	print(BEFORE FALLING, false);
	ck_assert_str_eq(page.bytes, "\n"
		"Levels of the walls\n"
		"-------------------\n"
		READINGS
		"\n"
		"Walls are level, ground falls: the first course lies so deep that the whole\n"
		"embed is in the ground where that is lowest. Where it rises the wall stands\n"
		"deeper and shows less; with a minus the ground stands over it. The dig, what\n"
		"goes back outside and the soil are counted so. The wall's top is its cap's,\n"
		"where it has one. Common practice, no published source.\n"
		TABLES);
}
END_TEST

START_TEST(where_all_is_printed_nothing_is_explained)
{
	print(BEFORE FALLING, true);
	ck_assert_str_eq(page.bytes, "\n" READINGS TABLES);
}
END_TEST

START_TEST(a_plot_without_levels_has_none)
{
	print(BEFORE, false);
	ck_assert_uint_eq(page.length, 0);
}
END_TEST

/* ---- Other views ----------------------------------------------------------------------------- */

static void print_json(const char *plot)
{
	struct text_sink out = text_sink(&page);

	plot_from_text(&garden.plot, plot);
	garden_count(&garden);
	report_json(&out.sink, &garden.plot, &garden.takeoff);
}

/* 2.8125 in are 0.0714375 m. */
START_TEST(json_has_them_where_there_are_any)
{
	print_json(BEFORE FALLING);
	ck_assert_ptr_nonnull(strstr(page.bytes, "\"wall_levels\": [\n    {\"bed\":\"B1\","
		"\"highest_ground_m\":0.0714375,\"lowest_ground_m\":0.2619375,"
		"\"formation_m\":0.4905375,\"base_top_m\":0.3635375,\"course_1_m\":0.2111375,"
		"\"top_m\":-0.0936625, \"corners\": [\n"
		"      {\"at\":[1,1],\"at_m\":[0.3048,0.3048],\"ground_m\":0.0714375,"
		"\"exposed_m\":0.1651},\n"));
	garden_fini(&garden);
	text_fini(&page);
	page = TEXT_EMPTY;
	print_json(BEFORE);
	ck_assert_ptr_null(strstr(page.bytes, "wall_levels"));
}
END_TEST

static const char *value_on_page(const struct page *walls, const char *label)
{
	for (size_t i = 0; i < walls->count; i++)
		if (strcmp(walls->lines[i].label, label) == 0)
			return walls->lines[i].value;
	return NULL;
}

START_TEST(the_panels_page_of_walls_has_them)
{
	struct pages pages = { .pages = { { .count = 0 } } };
	const struct page *walls;
	int page_of_walls = 0;

	while (strcmp(page_name(page_of_walls), "Walls") != 0)
		page_of_walls++;
	plot_from_text(&garden.plot, BEFORE FALLING);
	garden_count(&garden);
	ck_assert(pages_make(&pages, page_of_walls, &garden.takeoff, &garden.plot, NULL));
	walls = &pages.pages[page_of_walls];
	ck_assert_str_eq(value_on_page(walls, "Formation"), "19 5/16 in");
	ck_assert_str_eq(value_on_page(walls, "Course 1, top"), "8 5/16 in");
	ck_assert_str_eq(value_on_page(walls, "Ground to"), "10 5/16 in");
	ck_assert_ptr_nonnull(value_on_page(walls, "Below the string line"));
	pages_fini(&pages);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_wall_levels");
	TCase *page_case = suite_case(suite, "page");

	tcase_add_checked_fixture(page_case, setup, teardown);
	tcase_add_test(page_case, beds_and_corners_have_their_readings);
	tcase_add_test(page_case, where_all_is_printed_nothing_is_explained);
	tcase_add_test(page_case, a_plot_without_levels_has_none);
	tcase_add_test(page_case, json_has_them_where_there_are_any);
	tcase_add_test(page_case, the_panels_page_of_walls_has_them);
	return suite;
}
