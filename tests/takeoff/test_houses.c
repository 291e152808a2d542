/* Snags of houses: for each a plot that has it and one just inside its rule that has not; and beds
 * near houses against the distances that GEOS finds. */
#include "takeoff/walks/houses.h"
#include "support/garden.h"
#include "support/geos.h"
#include "support/runner.h"

#include <math.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

#define ROWS (const char *const[])

/* Cells of 3 in. */
static void given(const char *const *rows)
{
	garden_fini(&garden);
	garden_rows(&garden, rows);
	plot_set(&garden.plot, 0, HEAD_CELL, "3 in");
	if (plot_entry(&garden.plot, 'b'))
		plot_set(&garden.plot, 'b', BED_BUILD, "level");
}

/* Between two corners, as the format has it. */
static void put_house(int left, int top, int right, int bottom)
{
	obstacles_add(&garden.plot.details.around.houses, memory_string("House"))->cells =
		(struct rectangle){ left, top, right - 1, bottom - 1 };
}

static int count(enum snag_code code)
{
	int found = 0;

	garden_count(&garden);
	while (garden_snag(&garden, code, found))
		found++;
	return found;
}

static void check_first(enum snag_code code, int x, int y, const char *sentence)
{
	const struct snag *snag = garden_snag(&garden, code, 0);

	ck_assert_ptr_nonnull(snag);
	ck_assert_int_eq(snag->cell.x, x);
	ck_assert_int_eq(snag->cell.y, y);
	ck_assert_str_eq(garden_sentence(&garden, snag), sentence);
}

/* ---- Near ------------------------------------------------------------------------------------ */

static const char *const bed[] = { ".......", ".......", "..bbb..", "..bbb..", ".......", ".......",
	NULL };

/* 6 in: common practice, no published source. */
START_TEST(a_bed_6_in_from_a_house_is_far_enough_and_one_of_3_is_not)
{
	given(bed);
	put_house(0, -9, 7, 0); /* two rows of 3 in between them */
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 0);
	given(bed);
	put_house(0, -9, 7, 1);
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 1);
	check_first(SNAG_HOUSE_NEAR, 2, 2, "This bed is nearer to a house than 6 in.");
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOUSE_NEAR, 0)->region, 0);
}
END_TEST

START_TEST(a_house_counts_from_every_side_within_the_plan_and_beyond_it)
{
	static const struct rectangle near[] = { { 6, 0, 9, 9 }, { -4, 0, 1, 9 }, { 3, 5, 4, 6 },
		{ 5, 2, 6, 3 } };
	static const struct rectangle far[] = { { 7, 0, 9, 9 }, { -4, 0, 0, 9 }, { 3, 6, 4, 9 } };

	for (int i = 0; i < 4; i++) {
		given(bed);
		put_house(near[i].left, near[i].top, near[i].right, near[i].bottom);
		ck_assert_msg(count(SNAG_HOUSE_NEAR) == 1, "%d", i);
	}
	for (int i = 0; i < 3; i++) {
		given(bed);
		put_house(far[i].left, far[i].top, far[i].right, far[i].bottom);
		ck_assert_msg(count(SNAG_HOUSE_NEAR) == 0, "%d", i);
	}
}
END_TEST

/* Corner to corner a cell across and a cell down are the root of 2 times 3 in, 107.763 mm. */
START_TEST(round_a_corner_it_is_as_the_crow_flies)
{
	given(bed);
	put_house(6, 5, 7, 6);
	plot_set(&garden.plot, 0, ALLOW_HOUSE_CLEAR, "107.764 mm");
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 1);
	check_first(SNAG_HOUSE_NEAR, 4, 3, "This bed is nearer to a house than 4 1/4 in.");
	plot_set(&garden.plot, 0, ALLOW_HOUSE_CLEAR, "107.763 mm");
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 0);
}
END_TEST

START_TEST(what_is_allowed_for_decides_and_nothing_asks_nothing)
{
	given(bed);
	put_house(0, 0, 7, 2); /* along the bed */
	plot_set(&garden.plot, 0, ALLOW_HOUSE_CLEAR, "1/64 in");
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 1);
	plot_set(&garden.plot, 0, ALLOW_HOUSE_CLEAR, "0 in");
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 0);
}
END_TEST

/* 6 in are 152.4 mm. */
START_TEST(a_hair_more_than_whole_cells_is_more)
{
	given(bed);
	put_house(0, -9, 7, 0);
	plot_set(&garden.plot, 0, ALLOW_HOUSE_CLEAR, "152.4 mm");
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 0);
	plot_set(&garden.plot, 0, ALLOW_HOUSE_CLEAR, "152.400001 mm");
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 1);
}
END_TEST

START_TEST(a_metric_bed_is_150_mm_from_a_house)
{
	given(bed);
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "75 mm");
	put_house(0, -1, 7, 0);
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 0);
	plot_set(&garden.plot, 0, HEAD_CELL, "74 mm");
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 1);
	check_first(SNAG_HOUSE_NEAR, 2, 2, "This bed is nearer to a house than 150 mm.");
}
END_TEST

START_TEST(only_beds_are_to_be_clear_of_a_house)
{
	given(ROWS { "plpS", "bbbb", NULL });
	put_house(0, -1, 4, 0);
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 1);
	check_first(SNAG_HOUSE_NEAR, 0, 1, "This bed is nearer to a house than 6 in.");
	ck_assert_int_eq(count(SNAG_HOUSE_COVERED), 0);
	given(ROWS { "pppp", "llll", "SSSS", NULL });
	put_house(0, -1, 4, 0);
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 0);
}
END_TEST

enum { MOST = 12 };

/* Whether a cell of the region is nearer to any house than the length, all in cells. */
static bool is_near(GEOSContextHandle_t geos, int region, const GEOSGeometry *houses, double clear)
{
	const struct survey *survey = &garden.takeoff.survey;
	struct geos_box boxes[MOST * MOST];
	size_t boxes_count = 0;
	GEOSGeometry *shape;
	bool is_near;

	for (int y = 0; y < survey->rows; y++)
		for (int x = 0; x < survey->columns; x++)
			if (survey_region_at(survey, x, y) == region)
				boxes[boxes_count++] = (struct geos_box){ x, y, x + 1, y + 1 };
	shape = geos_union(geos, boxes, boxes_count);
	is_near = geos_apart_by(geos, shape, houses) < clear;
	geos_free(geos, shape);
	return is_near;
}

static const struct snag *snag_of(enum snag_code code, int region)
{
	const struct snag *snag;

	for (int i = 0; (snag = garden_snag(&garden, code, i)); i++)
		if (snag->region == region)
			return snag;
	return NULL;
}

static double out_of(double low, double high, double other_low, double other_high)
{
	return fmax(0, fmax(other_low - high, low - other_high));
}

/* Fails the test unless the snag is at the first cell of its region that is nearer than that to one
 * of two houses. */
static void check_cell(const struct snag *snag, const struct geos_box boxes[2], double clear)
{
	const struct survey *survey = &garden.takeoff.survey;

	for (int y = 0; y < survey->rows; y++)
		for (int x = 0; x < survey->columns; x++)
			for (int i = 0; i < 2; i++) {
				double across = out_of(x, x + 1, boxes[i].left,
					boxes[i].right);
				double down = out_of(y, y + 1, boxes[i].top,
					boxes[i].bottom);

				if (survey_region_at(survey, x, y) != snag->region ||
					hypot(across, down) >= clear)
					continue;
				ck_assert_int_eq(snag->cell.x, x);
				ck_assert_int_eq(snag->cell.y, y);
				return;
			}
	ck_abort_msg("no cell is near");
}

/* Distances in cells are roots of whole numbers; 2.1 is none of them. */
START_TEST(beds_near_houses_are_those_that_geos_finds)
{
	GEOSContextHandle_t geos = geos_start();
	int near = 0, covered = 0, regions = 0;

	for (int seed = 0; seed < runner_count(200, 2000); seed++) {
		struct random random = { (uint64_t)seed };
		struct geos_box boxes[2];
		GEOSGeometry *houses;

		garden_fini(&garden);
		plot_at_random(&garden.plot, &random, MOST, "..bcp");
		plot_set(&garden.plot, 0, ALLOW_HOUSE_CLEAR, "2.1 ft");
		for (int i = 0; i < 2; i++) {
			int left = random_between(&random, -6, 14);
			int top = random_between(&random, -6, 14);
			int right = left + random_between(&random, 1, 4);
			int bottom = top + random_between(&random, 1, 4);

			put_house(left, top, right, bottom);
			boxes[i] = (struct geos_box){ left, top, right, bottom };
		}
		garden_count(&garden);
		houses = geos_union(geos, boxes, 2);
		for (int r = 0; r < garden.takeoff.survey.region_count; r++) {
			bool is_bed = garden.takeoff.survey.regions[r].entry->class == CLASS_BED;
			const struct snag *told = snag_of(SNAG_HOUSE_NEAR, r);
			bool is_covered = snag_of(SNAG_HOUSE_COVERED, r), is_told = told;

			ck_assert_msg(is_told == (is_bed && !is_covered &&
				is_near(geos, r, houses, 2.1)), "seed %d, region %d", seed, r);
			if (told)
				check_cell(told, boxes, 2.1);
			near += is_told;
			covered += is_covered;
			regions++;
		}
		geos_free(geos, houses);
	}
	ck_assert_int_gt(near, 20);
	ck_assert_int_gt(covered, 20);
	ck_assert_int_gt(regions, near + covered);
	geos_end(geos);
}
END_TEST

/* ---- Covered --------------------------------------------------------------------------------- */

START_TEST(ground_that_a_house_stands_on_is_told_once_a_region)
{
	given(ROWS { "lll..pp", "lll..pp", "lll.bpp", NULL });
	put_house(2, 1, 5, 9);
	ck_assert_int_eq(count(SNAG_HOUSE_COVERED), 2);
	check_first(SNAG_HOUSE_COVERED, 2, 1, "A house stands on this ground.");
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOUSE_COVERED, 1)->cell.x, 4);
	/* Of the bed that alone is told. */
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 0);
	given(ROWS { "lll..pp", "lll..pp", "lll.bpp", NULL });
	put_house(3, 0, 4, 3);
	ck_assert_int_eq(count(SNAG_HOUSE_COVERED), 0);
	ck_assert_int_eq(count(SNAG_HOUSE_NEAR), 1);
}
END_TEST

START_TEST(a_raised_bed_and_a_fixture_in_a_house_are_told_too)
{
	given(ROWS { "cccccccc....", "cccccccc..SS", "cccccccc..SS", NULL });
	put_house(7, 2, 11, 9);
	ck_assert_int_eq(count(SNAG_HOUSE_COVERED), 2);
	check_first(SNAG_HOUSE_COVERED, 7, 2, "A house stands on this ground.");
	given(ROWS { "cccccccc....", "cccccccc..SS", "cccccccc..SS", NULL });
	put_house(8, 0, 10, 9);
	ck_assert_int_eq(count(SNAG_HOUSE_COVERED), 0);
}
END_TEST

/* ---- Fences ---------------------------------------------------------------------------------- */

static void put_fence(const struct place *points, int count_of_points)
{
	struct fence *fence = details_add_fence(&garden.plot.details, memory_string("Fence"));
	struct route *run = fence_add_run(fence);

	for (int i = 0; i < count_of_points; i++)
		route_add(run, points[i]);
}

static void given_open(void)
{
	given(ROWS { ".......", ".......", ".......", ".......", ".......", NULL });
	plot_set(&garden.plot, 0, HEAD_CELL, "1 ft");
}

START_TEST(a_fence_through_a_house_is_a_snag_and_one_along_its_wall_is_not)
{
	given_open();
	put_house(2, 1, 5, 4);
	put_fence((const struct place[]){ { 0, 3 }, { 7, 3 } }, 2);
	ck_assert_int_eq(count(SNAG_HOUSE_FENCE), 1);
	check_first(SNAG_HOUSE_FENCE, 2, 2, "The fence goes through a house for 3 ft.");
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOUSE_FENCE, 0)->fence, 0);
	given_open();
	put_house(2, 1, 5, 4);
	put_fence((const struct place[]){ { 0, 4 }, { 5, 4 }, { 5, 0 } }, 3);
	put_fence((const struct place[]){ { 0, 3 }, { 2, 3 } }, 2); /* up to it */
	ck_assert_int_eq(count(SNAG_HOUSE_FENCE), 0);
}
END_TEST

START_TEST(each_straight_piece_within_is_told_and_houses_side_by_side_are_one)
{
	given_open();
	put_house(1, 1, 4, 4);
	put_house(4, 1, 6, 4);
	put_fence((const struct place[]){ { 0, 0 }, { 7, 0 } }, 2);
	put_fence((const struct place[]){ { 2, 0 }, { 2, 2 }, { 7, 2 } }, 3);
	ck_assert_int_eq(count(SNAG_HOUSE_FENCE), 2);
	check_first(SNAG_HOUSE_FENCE, 1, 1, "The fence goes through a house for 1 ft.");
	ck_assert_str_eq(garden_sentence(&garden, garden_snag(&garden, SNAG_HOUSE_FENCE, 1)),
		"The fence goes through a house for 4 ft.");
	ck_assert_int_eq(garden_snag(&garden, SNAG_HOUSE_FENCE, 1)->fence, 1);
	/* The wall between two houses is within one. */
	given_open();
	put_house(1, 1, 4, 4);
	put_house(4, 1, 6, 4);
	put_fence((const struct place[]){ { 4, 0 }, { 4, 5 } }, 2);
	ck_assert_int_eq(count(SNAG_HOUSE_FENCE), 1);
}
END_TEST

/* A house that stands beyond the plan may have the plan's boundary within it. */
START_TEST(a_fence_on_the_boundary_may_be_in_a_house)
{
	given_open();
	put_house(5, -3, 9, 2);
	put_fence((const struct place[]){ { 0, 0 }, { 7, 0 }, { 7, 5 } }, 3);
	ck_assert_int_eq(count(SNAG_HOUSE_FENCE), 2);
	given_open();
	put_house(0, -3, 7, 0);
	put_fence((const struct place[]){ { 0, 0 }, { 7, 0 } }, 2);
	ck_assert_int_eq(count(SNAG_HOUSE_FENCE), 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("houses");
	TCase *near = suite_case(suite, "near"), *covered = suite_case(suite, "covered");
	TCase *fence = suite_case(suite, "fence");

	tcase_add_checked_fixture(near, NULL, teardown);
	tcase_add_test(near, a_bed_6_in_from_a_house_is_far_enough_and_one_of_3_is_not);
	tcase_add_test(near, a_house_counts_from_every_side_within_the_plan_and_beyond_it);
	tcase_add_test(near, round_a_corner_it_is_as_the_crow_flies);
	tcase_add_test(near, what_is_allowed_for_decides_and_nothing_asks_nothing);
	tcase_add_test(near, a_hair_more_than_whole_cells_is_more);
	tcase_add_test(near, a_metric_bed_is_150_mm_from_a_house);
	tcase_add_test(near, only_beds_are_to_be_clear_of_a_house);
	tcase_add_test(near, beds_near_houses_are_those_that_geos_finds);
	tcase_add_checked_fixture(covered, NULL, teardown);
	tcase_add_test(covered, ground_that_a_house_stands_on_is_told_once_a_region);
	tcase_add_test(covered, a_raised_bed_and_a_fixture_in_a_house_are_told_too);
	tcase_add_checked_fixture(fence, NULL, teardown);
	tcase_add_test(fence, a_fence_through_a_house_is_a_snag_and_one_along_its_wall_is_not);
	tcase_add_test(fence, each_straight_piece_within_is_told_and_houses_side_by_side_are_one);
	tcase_add_test(fence, a_fence_on_the_boundary_may_be_in_a_house);
	return suite;
}
