/* Regions, edges and corners of plots, by exact small cases, by law, and against GEOS. */
#include "base/memory.h"
#include "support/geos.h"
#include "support/plots.h"
#include "support/runner.h"
#include "survey/survey.h"

#include <stdio.h>
#include <stdlib.h>

enum { RANDOM_PLOTS = 300 };

static struct plot plot;
static struct survey survey;
static struct arena arena;

static void survey_rows(const char *const *rows)
{
	plot_from_rows(&plot, rows);
	survey_plot(&survey, &arena, &plot);
}

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

/* "B1 1,0 cells 5 sides 12 holes 0 corners 5-1": everything of a region in one line. */
static void check_region(int i, const char *expected)
{
	const struct region *r = &survey.regions[i];
	char name[REGION_NAME_MOST], line[160];

	ck_assert_int_lt(i, survey.region_count);
	survey_region_name(r, name);
	snprintf(line, sizeof line, "%s %d,%d cells %d sides %d holes %d corners %d-%d", name,
		r->first_cell.x, r->first_cell.y, r->cells, r->perimeter, region_holes(r),
		(int)r->convex, (int)r->reflex);
	ck_assert_str_eq(line, expected);
}

START_TEST(an_elbow_has_five_corners_out_and_one_in)
{
	survey_rows((const char *const[]){ ".b.", ".bb", NULL });
	ck_assert_int_eq(survey.region_count, 1);
	check_region(0, "B1 1,0 cells 3 sides 8 holes 0 corners 5-1");
	ck_assert_int_eq(survey.regions[0].left, 1);
	ck_assert_int_eq(survey.regions[0].most.x, 2);
	ck_assert_int_eq(survey.regions[0].most.y, 1);
}
END_TEST

START_TEST(a_ring_has_a_hole_and_what_is_in_it_is_a_region_of_its_own)
{
	survey_rows((const char *const[]){ "bbb", "bSb", "bbb", NULL });
	ck_assert_int_eq(survey.region_count, 2);
	check_region(0, "B1 0,0 cells 8 sides 16 holes 1 corners 4-4");
	check_region(1, "F1 1,1 cells 1 sides 4 holes 0 corners 4-0");
}
END_TEST

START_TEST(a_ring_closed_only_at_a_point_has_no_hole)
{
	survey_rows((const char *const[]){ "bb.", "b.b", "bbb", NULL });
	ck_assert_int_eq(survey.region_count, 1);
	/* The pinch at 2,1 is two corners of the one loop, each on its own cell. */
	check_region(0, "B1 0,0 cells 7 sides 16 holes 0 corners 7-3");
}
END_TEST

START_TEST(a_hole_may_touch_the_outline_at_a_point)
{
	survey_rows((const char *const[]){ "bbbb", "b.bb", "bb.b", "bbbb", NULL });
	/* Two cells that meet at a point are one hole, what is around a region being
	 * 8-connected. */
	check_region(0, "B1 0,0 cells 14 sides 24 holes 1 corners 6-6");
}
END_TEST

START_TEST(cells_that_meet_at_a_point_are_two_regions)
{
	survey_rows((const char *const[]){ "b.", ".b", NULL });
	ck_assert_int_eq(survey.region_count, 2);
	check_region(0, "B1 0,0 cells 1 sides 4 holes 0 corners 4-0");
	check_region(1, "B2 1,1 cells 1 sides 4 holes 0 corners 4-0");
}
END_TEST

START_TEST(numbers_follow_the_first_cell_in_reading_order_by_class)
{
	survey_rows((const char *const[]){ "a.b", "p..", "b.a", NULL });
	check_region(0, "B1 0,0 cells 1 sides 4 holes 0 corners 4-0");
	check_region(1, "B2 2,0 cells 1 sides 4 holes 0 corners 4-0");
	check_region(2, "P1 0,1 cells 1 sides 4 holes 0 corners 4-0");
	check_region(3, "B3 0,2 cells 1 sides 4 holes 0 corners 4-0");
	check_region(4, "B4 2,2 cells 1 sides 4 holes 0 corners 4-0");
}
END_TEST

START_TEST(runs_that_join_late_are_one_region)
{
	survey_rows((const char *const[]){ "b.b.b", "b.b.b", "bbb.b", "....b", "bbbbb", NULL });
	ck_assert_int_eq(survey.region_count, 2);
	check_region(0, "B1 0,0 cells 7 sides 16 holes 0 corners 6-2");
	check_region(1, "B2 4,0 cells 9 sides 20 holes 0 corners 5-1");
	ck_assert_int_eq(survey_region_at(&survey, 2, 1), 0);
	ck_assert_int_eq(survey_region_at(&survey, 4, 3), 1);
	ck_assert_int_eq(survey_region_at(&survey, 3, 2), NO_REGION);
}
END_TEST

START_TEST(every_edge_is_in_the_account_once)
{
	survey_rows((const char *const[]){ "abp", "b..", NULL });
	ck_assert_int_eq(survey.edges[CLASS_BED][CLASS_BED], 2);
	ck_assert_int_eq(survey.edges[CLASS_BED][CLASS_PATH], 1);
	ck_assert_int_eq(survey.edges[CLASS_PATH][CLASS_BED], 1);
	ck_assert_int_eq(survey.edges[CLASS_BED][CLASS_OPEN], 2);
	ck_assert_int_eq(survey.edges[CLASS_PATH][CLASS_OPEN], 1);
	ck_assert_int_eq(survey.edges[CLASS_BED][CLASS_BOUNDARY], 5);
	ck_assert_int_eq(survey.edges[CLASS_PATH][CLASS_BOUNDARY], 2);
	ck_assert_int_eq(survey.edges[CLASS_OPEN][CLASS_BOUNDARY], 3);
	ck_assert_int_eq(survey.edges[CLASS_BOUNDARY][CLASS_BOUNDARY], 0);
	ck_assert_int_eq(survey.edges[CLASS_OPEN][CLASS_OPEN], 0);
}
END_TEST

START_TEST(an_area_is_its_cells_times_the_side_squared)
{
	/* 144 sq ft are 13.37803776 m2 by the international foot. */
	ck_assert_double_eq_tol(survey_area(144, NM_PER_FOOT), 13.37803776, 1e-12);
	ck_assert_double_eq(survey_area(4, NM_PER_M / 2), 1.0);
}
END_TEST

/* ---- Laws and GEOS --------------------------------------------------------------------------- */

static void survey_at_random(int seed)
{
	struct random random = { (uint64_t)seed };

	plot_at_random(&plot, &random, 24, seed % 3 ? "abplS..." : "bp");
	survey_plot(&survey, &arena, &plot);
}

START_TEST(perimeters_of_a_class_are_its_edges_with_own_ones_twice)
{
	int64_t perimeters[CLASSES] = { 0 };

	survey_at_random(_i);
	for (int i = 0; i < survey.region_count; i++)
		perimeters[survey.regions[i].entry->class] += survey.regions[i].perimeter;
	for (int a = CLASS_BED; a <= CLASS_FIXTURE; a++) {
		int64_t sum = survey.edges[a][a];

		for (int b = CLASS_BED; b <= CLASS_BOUNDARY; b++) {
			ck_assert_int_eq(survey.edges[a][b], survey.edges[b][a]);
			sum += survey.edges[a][b];
		}
		ck_assert_int_eq(sum, perimeters[a]);
	}
}
END_TEST

START_TEST(the_boundary_is_accounted_for_once_round)
{
	int64_t sum = 0;

	survey_at_random(_i);
	for (int a = CLASS_BED; a <= CLASS_OPEN; a++)
		sum += survey.edges[a][CLASS_BOUNDARY];
	ck_assert_int_eq(sum, 2 * (survey.columns + survey.rows));
}
END_TEST

static size_t region_boxes(int region, struct geos_box *boxes)
{
	size_t count = 0;

	for (int y = 0; y < survey.rows; y++)
		for (int x = 0; x < survey.columns; x++)
			if (survey_region_at(&survey, x, y) == region)
				boxes[count++] = (struct geos_box){ x, y, x + 1, y + 1 };
	return count;
}

START_TEST(cells_sides_and_holes_are_those_of_the_union_of_squares)
{
	GEOSContextHandle_t geos = geos_start();
	struct geos_box *boxes;

	survey_at_random(_i);
	boxes = calloc((size_t)(survey.columns * survey.rows), sizeof *boxes);
	for (int i = 0; i < survey.region_count; i++) {
		const struct region *r = &survey.regions[i];
		GEOSGeometry *shape = geos_union(geos, boxes, region_boxes(i, boxes));
		/* GEOS makes rings of an outline that touches itself at a point; offset inwards
		 * by a little, every such point opens and the rings are those of the survey. */
		GEOSGeometry *within = geos_offset(geos, shape, -0.125);

		ck_assert_int_eq(geos_polygons(geos, shape), 1);
		ck_assert_double_eq(geos_area(geos, shape), (double)r->cells);
		ck_assert_double_eq(geos_perimeter(geos, shape), (double)r->perimeter);
		ck_assert_int_eq(geos_holes(geos, within), region_holes(r));
		geos_free(geos, within);
		geos_free(geos, shape);
	}
	free(boxes);
	geos_end(geos);
}
END_TEST

/* The straightforward way: spread from each cell in reading order. */
static void spread(int x, int y, int region, int *of)
{
	const struct ground *ground = &plot.ground;

	if (!ground_holds(ground, x, y) || of[y * ground->columns + x] != NO_REGION ||
		ground_cell(ground, x, y) != survey.regions[region].entry->letter)
		return;
	of[y * ground->columns + x] = region;
	spread(x - 1, y, region, of);
	spread(x + 1, y, region, of);
	spread(x, y - 1, region, of);
	spread(x, y + 1, region, of);
}

/* of: the region of each cell. */
static void check_boxes(const int *of)
{
	for (int i = 0; i < survey.region_count; i++) {
		const struct region *r = &survey.regions[i];
		struct rectangle box = { survey.columns, survey.rows, -1, -1 };
		int cells = 0;

		for (int j = 0; j < survey.columns * survey.rows; j++) {
			int x = j % survey.columns, y = j / survey.columns;

			if (of[j] != i)
				continue;
			cells++;
			box = (struct rectangle){ x < box.left ? x : box.left, y < box.top ? y :
				box.top, x > box.right ? x : box.right, y };
		}
		ck_assert_int_eq(r->cells, cells);
		ck_assert_int_eq(r->left, box.left);
		ck_assert_int_eq(r->first_cell.y, box.top);
		ck_assert_int_eq(r->most.x, box.right);
		ck_assert_int_eq(r->most.y, box.bottom);
	}
}

START_TEST(every_cell_is_in_the_region_that_spreads_over_it)
{
	int *of, cells, next = 0;

	survey_at_random(_i);
	cells = survey.columns * survey.rows;
	of = calloc((size_t)cells, sizeof *of);
	for (int i = 0; i < cells; i++)
		of[i] = NO_REGION;
	for (int i = 0; i < cells; i++) {
		int x = i % survey.columns, y = i / survey.columns;

		if (of[i] == NO_REGION && ground_cell(&plot.ground, x, y) != OPEN_GROUND) {
			ck_assert_int_lt(next, survey.region_count);
			ck_assert_int_eq(survey.regions[next].first_cell.x, x);
			ck_assert_int_eq(survey.regions[next].first_cell.y, y);
			spread(x, y, next++, of);
		}
		ck_assert_int_eq(survey_region_at(&survey, x, y), of[i]);
	}
	ck_assert_int_eq(next, survey.region_count);
	check_boxes(of);
	free(of);
}
END_TEST

/* The run above of a run, by a look at all of them; -1: there is none. */
static int run_above(int y, const struct run *run)
{
	for (int i = y > 0 ? (int)survey.row_runs[y - 1] : 0; i < (int)survey.row_runs[y]; i++) {
		const struct run *above = &survey.runs[i];

		if (y > 0 && above->left == run->left && above->right == run->right &&
			above->region == run->region)
			return i;
	}
	return -1;
}

START_TEST(a_run_goes_on_below_one_of_the_same_cells_and_region)
{
	int found = 0;

	for (int seed = 0; seed < RANDOM_PLOTS; seed++) {
		survey_at_random(seed);
		for (int y = 0; y < survey.rows; y++) {
			size_t i = y > 0 ? survey.row_runs[y - 1] : 0;

			for (size_t j = survey.row_runs[y]; j < survey.row_runs[y + 1]; j++) {
				int above = run_above(y, &survey.runs[j]);
				bool has = survey_has_run_above(&survey, y, &survey.runs[j], &i);

				ck_assert_msg(has == (above >= 0) && (!has || (int)i == above),
					"seed %d, row %d", seed, y);
				found += has;
			}
		}
		teardown();
	}
	ck_assert_int_gt(found, 1000);
	plot_init(&plot);
}
END_TEST

/* ---- Names ----------------------------------------------------------------------------------- */

START_TEST(of_several_names_of_a_region_the_first_counts)
{
	static const struct { struct place at; const char *text; } names[] = {
		{ { 4, 0 }, "Sage" }, { { 0, 1 }, "Rose" }, { { 2, 0 }, "Nobody's" },
		{ { 1, 1 }, "Thyme" }, { { 0, 0 }, "Mint" }, { { 3, 1 }, "Rue" },
	};

	plot_from_rows(&plot, (const char *const[]){ "bb.pc", "bb.pc", NULL });
	for (size_t i = 0; i < sizeof names / sizeof *names; i++)
		names_add(&plot.details.names, names[i].at, memory_string(names[i].text));
	survey_plot(&survey, &arena, &plot);
	ck_assert_int_eq(survey.name_count, 3);
	ck_assert_str_eq(survey_own_name(&survey, 0), "Rose");
	ck_assert_str_eq(survey_own_name(&survey, 1), "Rue");
	ck_assert_str_eq(survey_own_name(&survey, 2), "Sage");
	arena_clear(&arena);
	plot_fini(&plot);
	survey_rows((const char *const[]){ "bb", NULL });
	ck_assert_ptr_null(survey_own_name(&survey, 0));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("survey");
	TCase *cases = suite_case(suite, "cases"), *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, an_elbow_has_five_corners_out_and_one_in);
	tcase_add_test(cases, a_ring_has_a_hole_and_what_is_in_it_is_a_region_of_its_own);
	tcase_add_test(cases, a_ring_closed_only_at_a_point_has_no_hole);
	tcase_add_test(cases, a_hole_may_touch_the_outline_at_a_point);
	tcase_add_test(cases, cells_that_meet_at_a_point_are_two_regions);
	tcase_add_test(cases, numbers_follow_the_first_cell_in_reading_order_by_class);
	tcase_add_test(cases, runs_that_join_late_are_one_region);
	tcase_add_test(cases, every_edge_is_in_the_account_once);
	tcase_add_test(cases, an_area_is_its_cells_times_the_side_squared);
	tcase_add_test(cases, of_several_names_of_a_region_the_first_counts);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_test(laws, a_run_goes_on_below_one_of_the_same_cells_and_region);
	tcase_add_loop_test(laws, perimeters_of_a_class_are_its_edges_with_own_ones_twice, 0,
		RANDOM_PLOTS);
	tcase_add_loop_test(laws, the_boundary_is_accounted_for_once_round, 0, RANDOM_PLOTS);
	tcase_add_loop_test(laws, cells_sides_and_holes_are_those_of_the_union_of_squares, 0,
		RANDOM_PLOTS);
	tcase_add_loop_test(laws, every_cell_is_in_the_region_that_spreads_over_it, 0,
		RANDOM_PLOTS);
	return suite;
}
