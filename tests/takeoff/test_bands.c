/* Bands of beds, against each cell's distance from every side that one can walk up to. */
#include "support/fencing.h"
#include "support/plots.h"
#include "support/runner.h"
#include "survey/way.h"
#include "takeoff/planting/bands.h"

#include <limits.h>

static struct plot plot;
static struct survey survey;
static struct arena arena;
static struct fence_map fences;
static struct house_map houses;

static void look(void)
{
	survey_plot(&survey, &arena, &plot);
	fences = fence_map_of(&plot, &arena);
	houses = house_map_of(&plot, 0, &arena);
}

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

static struct bands bands_of(int x, int y)
{
	struct bands bands;

	bands_find(&bands, &survey, &fences, &houses, survey_region_at(&survey, x, y));
	return bands;
}

/* f, m and b for each cell of a row of the bed, as columns are. */
static void check_row(const struct bands *bands, int y, const char *words)
{
	for (int x = 0; words[x]; x++) {
		ck_assert_int_eq(bands_hold(bands, BAND_FRONT, x, y), words[x] == 'f');
		ck_assert_int_eq(bands_hold(bands, BAND_MIDDLE, x, y), words[x] == 'm');
		ck_assert_int_eq(bands_hold(bands, BAND_BACK, x, y), words[x] == 'b');
		ck_assert_int_eq(bands_hold(bands, BAND_WHOLE, x, y), words[x] != '.');
	}
}

/* Six cells deep, a path below: middles are 1/2 to 5 1/2 cells from it; thirds end at 1.83 and
 * 3.67. */
START_TEST(bands_are_thirds_of_the_greatest_distance_from_where_one_walks_up)
{
	plot_from_rows(&plot, (const char *const[]){ "FFFFFFF", "FbbbbbF", "FbbbbbF", "FbbbbbF",
		"FbbbbbF", "FbbbbbF", "FbbbbbF", ".......", NULL });
	look();
	struct bands bands = bands_of(1, 1);

	check_row(&bands, 1, ".bbbbb.");
	check_row(&bands, 2, ".bbbbb.");
	check_row(&bands, 3, ".mmmmm.");
	check_row(&bands, 4, ".mmmmm.");
	check_row(&bands, 5, ".fffff.");
	check_row(&bands, 6, ".fffff.");
	check_row(&bands, 7, ".......");
	bands_end(&bands);
}
END_TEST

START_TEST(one_does_not_walk_up_through_a_fence_a_house_or_a_fixture)
{
	struct half_point point;

	plot_from_rows(&plot, (const char *const[]){ ".......", "FbbbbbF", "FbbbbbF", "FbbbbbF",
		".......", NULL });
	plot_add_lines(&plot, "fence \"Low\"\n  run 0,1 7,1\nhouse \"House\" 10 ft\n"
		"  from 0,4 to 7,9\n");
	look();
	struct bands bands = bands_of(1, 1);

	ck_assert(!bands_nearest(&bands, 3, 2, &point));
	check_row(&bands, 2, ".bbbbb.");
	bands_end(&bands);
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

static bool is_in_house(int x, int y)
{
	const struct obstacles *list = &plot.details.around.houses;

	for (size_t i = 0; i < list->count; i++) {
		const struct rectangle *r = &list->items[i].cells;

		if (x >= r->left && x <= r->right && y >= r->top && y <= r->bottom)
			return true;
	}
	return false;
}

static bool is_way(int x, int y)
{
	return ground_holds(&plot.ground, x, y) && !is_in_house(x, y) &&
		way_is_over(plot_class_of(&plot, ground_cell(&plot.ground, x, y)));
}

/* On the side of a cell towards a neighbour. */
static bool has_fence(int x, int y, int across, int down)
{
	return across ? fence_map_at(&fences, x - (across < 0), y) & FENCE_RIGHT :
		fence_map_at(&fences, x, y - (down < 0)) & FENCE_BELOW;
}

static int64_t square(int64_t number)
{
	return number * number;
}

static int64_t out_of(int64_t at, int64_t low, int64_t high)
{
	return at < low ? low - at : at > high ? at - high : 0;
}

/* In halves of a cell, squared; INT64_MAX: there is no such side. */
static int64_t distance(int region, int x, int y)
{
	static const int steps[][2] = { { 1, 0 }, { -1, 0 }, { 0, 1 }, { 0, -1 } };
	int64_t least = INT64_MAX;

	for (int v = 0; v < survey.rows; v++)
		for (int u = 0; u < survey.columns; u++)
			for (int i = 0; i < 4 && survey_region_at(&survey, u, v) == region &&
				!is_in_house(u, v); i++) {
				int across = steps[i][0], down = steps[i][1];
				int64_t side_x = 2 * u + 1 + across, side_y = 2 * v + 1 + down;
				int64_t away = square(out_of(2 * x + 1, side_x - (down != 0),
					side_x + (down != 0))) + square(out_of(2 * y + 1,
					side_y - (across != 0), side_y + (across != 0)));

				if (is_way(u + across, v + down) &&
					!has_fence(u, v, across, down) && away < least)
					least = away;
			}
	return least;
}

START_TEST(cells_under_a_house_are_in_no_band)
{
	plot_from_rows(&plot, (const char *const[]){ ".....", ".bbb.", ".....", NULL });
	plot_add_lines(&plot, "house \"House\"\n  from 3,0 to 5,3\n");
	look();
	struct bands bands = bands_of(1, 1);

	check_row(&bands, 1, ".bb..");
	bands_end(&bands);
}
END_TEST

/* Thirds of the greatest distance: 9 times the square against its own and 4 times it. */
static enum band band_at(int64_t away, int64_t farthest)
{
	if (away == INT64_MAX)
		return BAND_BACK;
	return 9 * away <= farthest ? BAND_FRONT : 9 * away <= 4 * farthest ? BAND_MIDDLE :
		BAND_BACK;
}

static void check_cell(const struct bands *bands, int x, int y, int64_t away, int64_t farthest)
{
	struct half_point near = { 0, 0 };
	bool is_near = bands_nearest(bands, x, y, &near);

	ck_assert_int_eq(is_near, away < INT64_MAX);
	if (is_near)
		ck_assert_int_eq(square(2 * x + 1 - near.x) + square(2 * y + 1 - near.y), away);
	for (int band = BAND_FRONT; band <= BAND_BACK; band++)
		ck_assert_int_eq(bands_hold(bands, (enum band)band, x, y),
			band_at(away, farthest) == (enum band)band);
}

static void check_bands(int region)
{
	int64_t away[14][14], farthest = 0;
	struct bands bands;
	struct half_point near;

	bands_find(&bands, &survey, &fences, &houses, region);
	for (int y = 0; y < survey.rows; y++)
		for (int x = 0; x < survey.columns; x++) {
			bool is_own = survey_region_at(&survey, x, y) == region &&
				!is_in_house(x, y);

			away[y][x] = is_own ? distance(region, x, y) : -1;
			ck_assert_int_eq(bands_hold(&bands, BAND_WHOLE, x, y), is_own);
			ck_assert(is_own || !bands_nearest(&bands, x, y, &near));
			if (away[y][x] < INT64_MAX && away[y][x] > farthest)
				farthest = away[y][x];
		}
	for (int y = 0; y < survey.rows; y++)
		for (int x = 0; x < survey.columns; x++)
			if (away[y][x] >= 0)
				check_cell(&bands, x, y, away[y][x], farthest);
	ck_assert_int_eq(bands.farthest, farthest);
	bands_end(&bands);
}

/* With fences and their gates, and with a house, by turns. */
START_TEST(each_cell_is_in_the_band_of_its_distance)
{
	struct random random = { (uint64_t)_i };

	plot_at_random(&plot, &random, 14, _i % 2 ? "bbbF." : "bF.");
	if (_i % 3 == 0)
		fences_at_random(&plot, &random);
	if (_i % 4 == 0) {
		int left = random_between(&random, -3, 12), top = random_between(&random, -3, 12);

		obstacles_add(&plot.details.around.houses, memory_string("House"))->cells =
			(struct rectangle){ left, top, left + random_below(&random, 5),
			top + random_below(&random, 5) };
	}
	look();
	for (int region = 0; region < survey.region_count; region++)
		if (survey.regions[region].entry->class == CLASS_BED)
			check_bands(region);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("bands");
	TCase *bands = suite_case(suite, "bands");

	tcase_add_checked_fixture(bands, NULL, teardown);
	tcase_add_test(bands, bands_are_thirds_of_the_greatest_distance_from_where_one_walks_up);
	tcase_add_test(bands, cells_under_a_house_are_in_no_band);
	tcase_add_test(bands, one_does_not_walk_up_through_a_fence_a_house_or_a_fixture);
	tcase_add_loop_test(bands, each_cell_is_in_the_band_of_its_distance, 0,
		runner_count(60, 1000));
	return suite;
}
