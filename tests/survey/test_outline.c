/* Outlines traced round regions, and how wide regions are. */
#include "support/geos.h"
#include "support/plots.h"
#include "support/runner.h"
#include "survey/outline.h"

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

static void survey_at_random(int seed)
{
	struct random random = { (uint64_t)seed };

	plot_at_random(&plot, &random, 20, seed % 2 ? "bp." : "b.");
	survey_plot(&survey, &arena, &plot);
}

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

/* Corners as "x,y", a reflex one with "r" behind it. */
static void check_loop(const struct outline *outline, int loop, const char *expected)
{
	struct text line = TEXT_EMPTY;

	ck_assert_int_lt(loop, outline->count);
	for (int i = 0; i < outline->loops[loop].count; i++) {
		const struct corner *c = &outline->loops[loop].corners[i];

		text_print(&line, "%s%d,%d%s", i ? " " : "", c->x, c->y, c->reflex ? "r" : "");
	}
	ck_assert_str_eq(line.bytes, expected);
	text_fini(&line);
}

START_TEST(the_outer_loop_starts_top_left_and_goes_to_the_right)
{
	struct outline outline;

	survey_rows((const char *const[]){ "....", ".bb.", ".bbb", "....", NULL });
	outline_trace(&outline, &arena, &plot, &survey, 0);
	ck_assert_int_eq(outline.count, 1);
	check_loop(&outline, 0, "1,1 3,1 3,2r 4,2 4,3 1,3");
	ck_assert_int_eq(outline.loops[0].perimeter, 10);
	ck_assert_int_eq(outline_side(&outline.loops[0], 0), 2);
	ck_assert_int_eq(outline_side(&outline.loops[0], 4), 3);
	ck_assert_int_eq(outline_side(&outline.loops[0], 5), 2);
}
END_TEST

START_TEST(a_hole_starts_at_its_topmost_then_leftmost_corner_and_goes_down)
{
	struct outline outline;

	survey_rows((const char *const[]){ "bbbbb", "b.bSb", "b.bbb", "bb..b", "bbbbb", NULL });
	outline_trace(&outline, &arena, &plot, &survey, 0);
	ck_assert_int_eq(outline.count, 3);
	check_loop(&outline, 0, "0,0 5,0 5,5 0,5");
	/* The upright slot meets the level one at 2,3: one hole, and two convex corners there. */
	check_loop(&outline, 1, "1,1r 1,3r 2,3 2,4r 4,4r 4,3r 2,3 2,1r");
	check_loop(&outline, 2, "3,1r 3,2r 4,2r 4,1r");
}
END_TEST

START_TEST(holes_are_in_reading_order)
{
	struct outline outline;

	survey_rows((const char *const[]){ "bbbbbbb", "bbb.b.b", "b.bbbbb", "bbbbbbb", NULL });
	outline_trace(&outline, &arena, &plot, &survey, 0);
	ck_assert_int_eq(outline.count, 4);
	check_loop(&outline, 1, "3,1r 3,2r 4,2r 4,1r");
	check_loop(&outline, 2, "5,1r 5,2r 6,2r 6,1r");
	check_loop(&outline, 3, "1,2r 1,3r 2,3r 2,2r");
}
END_TEST

START_TEST(a_pinch_is_two_convex_corners_each_on_its_own_cell)
{
	struct outline outline;

	survey_rows((const char *const[]){ "bb.", "b.b", "bbb", NULL });
	outline_trace(&outline, &arena, &plot, &survey, 0);
	ck_assert_int_eq(outline.count, 1);
	check_loop(&outline, 0, "0,0 2,0 2,1 1,1r 1,2r 2,2r 2,1 3,1 3,3 0,3");
}
END_TEST

START_TEST(another_region_of_the_same_letter_is_not_followed)
{
	struct outline outline;

	survey_rows((const char *const[]){ "b.b", "...", "b.b", NULL });
	outline_trace(&outline, &arena, &plot, &survey, 3);
	check_loop(&outline, 0, "2,2 3,2 3,3 2,3");
}
END_TEST

/* ---- Laws and GEOS --------------------------------------------------------------------------- */

static void check_loop_shape(const struct loop *loop)
{
	int64_t perimeter = 0;

	ck_assert_int_ge(loop->count, 4);
	ck_assert_int_eq(loop->count % 2, 0);
	for (int i = 0; i < loop->count; i++) {
		const struct corner *a = &loop->corners[i];
		const struct corner *b = &loop->corners[(i + 1) % loop->count];
		const struct corner *c = &loop->corners[(i + 2) % loop->count];
		int turn = (b->x - a->x) * (c->y - b->y) - (b->y - a->y) * (c->x - b->x);

		ck_assert((a->x == b->x) != (a->y == b->y));
		/* With y down, a turn to the right, towards the region, is positive. */
		ck_assert_int_ne(turn, 0);
		ck_assert_int_eq(b->reflex, turn < 0);
		perimeter += outline_side(loop, i);
	}
	ck_assert_int_eq(perimeter, loop->perimeter);
}

START_TEST(loops_turn_at_every_corner_and_add_up_to_the_region)
{
	survey_at_random(_i);
	for (int i = 0; i < survey.region_count; i++) {
		const struct region *r = &survey.regions[i];
		int64_t perimeter = 0, convex = 0, reflex = 0;
		struct outline outline;

		outline_trace(&outline, &arena, &plot, &survey, i);
		ck_assert_int_eq(outline.count, region_holes(r) + 1);
		for (int l = 0; l < outline.count; l++) {
			int64_t turned = 0;

			check_loop_shape(&outline.loops[l]);
			perimeter += outline.loops[l].perimeter;
			for (int k = 0; k < outline.loops[l].count; k++)
				turned += outline.loops[l].corners[k].reflex ? -1 : 1;
			ck_assert_int_eq(turned, l ? -4 : 4);
			reflex += (outline.loops[l].count - turned) / 2;
			convex += (outline.loops[l].count + turned) / 2;
		}
		ck_assert_int_eq(perimeter, r->perimeter);
		ck_assert_int_eq(convex, r->convex);
		ck_assert_int_eq(reflex, r->reflex);
	}
}
END_TEST

/* Even-odd fill of the loops, by GEOS: a ring that touches itself is made valid first. */
static GEOSGeometry *loop_shape(GEOSContextHandle_t geos, const struct loop *loop)
{
	double *xy = calloc((size_t)loop->count * 2, sizeof *xy);
	GEOSGeometry *ring, *shape;

	for (int i = 0; i < loop->count; i++) {
		xy[2 * i] = loop->corners[i].x;
		xy[2 * i + 1] = loop->corners[i].y;
	}
	ring = geos_ring(geos, xy, (size_t)loop->count);
	shape = GEOSMakeValid_r(geos, ring);
	ck_assert_ptr_nonnull(shape);
	geos_free(geos, ring);
	free(xy);
	return shape;
}

static size_t region_boxes(int region, struct geos_box *boxes)
{
	size_t count = 0;

	for (int y = 0; y < survey.rows; y++)
		for (int x = 0; x < survey.columns; x++)
			if (survey_region_at(&survey, x, y) == region)
				boxes[count++] = (struct geos_box){ x, y, x + 1, y + 1 };
	return count;
}

START_TEST(the_outer_loop_less_the_holes_is_the_union_of_the_cells)
{
	GEOSContextHandle_t geos = geos_start();
	struct geos_box *boxes;

	survey_at_random(_i);
	boxes = calloc((size_t)(survey.columns * survey.rows), sizeof *boxes);
	for (int i = 0; i < survey.region_count; i++) {
		GEOSGeometry *cells = geos_union(geos, boxes, region_boxes(i, boxes)), *shape;
		struct outline outline;

		outline_trace(&outline, &arena, &plot, &survey, i);
		shape = loop_shape(geos, &outline.loops[0]);
		for (int l = 1; l < outline.count; l++) {
			GEOSGeometry *hole = loop_shape(geos, &outline.loops[l]);
			GEOSGeometry *rest = geos_difference(geos, shape, hole);

			geos_free(geos, hole);
			geos_free(geos, shape);
			shape = rest;
		}
		ck_assert_double_eq(geos_apart(geos, shape, cells), 0);
		geos_free(geos, shape);
		geos_free(geos, cells);
	}
	free(boxes);
	geos_end(geos);
}
END_TEST

/* ---- Width ----------------------------------------------------------------------------------- */

static bool square_fits(int region, int left, int top, int side)
{
	if (left < 0 || top < 0 || left + side > survey.columns || top + side > survey.rows)
		return false;
	for (int y = top; y < top + side; y++)
		for (int x = left; x < left + side; x++)
			if (survey_region_at(&survey, x, y) != region)
				return false;
	return true;
}

static bool is_covered(int region, int x, int y, int side)
{
	for (int top = y - side + 1; top <= y; top++)
		for (int left = x - side + 1; left <= x; left++)
			if (square_fits(region, left, top, side))
				return true;
	return false;
}

START_TEST(a_region_is_wide_where_every_cell_is_in_a_square_of_it)
{
	survey_at_random(_i);
	for (int i = 0; i < survey.region_count; i++) {
		for (int side = 1; side <= 4; side++) {
			struct place narrow = { -1, -1 }, first = { -1, -1 };

			for (int y = survey.rows - 1; y >= 0; y--)
				for (int x = survey.columns - 1; x >= 0; x--)
					if (survey_region_at(&survey, x, y) == i &&
						!is_covered(i, x, y, side))
						first = (struct place){ x, y };
			ck_assert_int_eq(outline_is_wide(&survey, i, side, &narrow), first.x < 0);
			ck_assert_int_eq(narrow.x, first.x);
			ck_assert_int_eq(narrow.y, first.y);
		}
	}
}
END_TEST

/* In cells, eroding by a square of side s and widening again is offsetting by s/2 inwards and
 * out with square corners; GEOS's mitred offsets do that exactly for right angles, but join what
 * is nearer than s across a notch when widening, so a shape may come out larger there: it is cut
 * to the region. */
START_TEST(what_is_wide_survives_an_offset_inwards_and_out)
{
	GEOSContextHandle_t geos = geos_start();
	struct geos_box *boxes;

	survey_at_random(_i);
	boxes = calloc((size_t)(survey.columns * survey.rows), sizeof *boxes);
	for (int i = 0; i < survey.region_count; i++) {
		GEOSGeometry *cells = geos_union(geos, boxes, region_boxes(i, boxes));

		for (int side = 2; side <= 3; side++) {
			/* A hair less than the side, so that a neck just as wide stays. */
			double by = side / 2.0 - 1.0 / 1024;
			GEOSGeometry *within = geos_offset(geos, cells, -by);
			GEOSGeometry *back = geos_offset(geos, within, by);
			struct place narrow;
			double kept = geos_common(geos, back, cells);

			if (outline_is_wide(&survey, i, side, &narrow))
				ck_assert_double_eq_tol(kept, geos_area(geos, cells), 1e-6);
			geos_free(geos, back);
			geos_free(geos, within);
		}
		geos_free(geos, cells);
	}
	free(boxes);
	geos_end(geos);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("outline");
	TCase *cases = suite_case(suite, "cases"), *laws = suite_case(suite, "laws");
	TCase *width = suite_case(suite, "width");

	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, the_outer_loop_starts_top_left_and_goes_to_the_right);
	tcase_add_test(cases, a_hole_starts_at_its_topmost_then_leftmost_corner_and_goes_down);
	tcase_add_test(cases, holes_are_in_reading_order);
	tcase_add_test(cases, a_pinch_is_two_convex_corners_each_on_its_own_cell);
	tcase_add_test(cases, another_region_of_the_same_letter_is_not_followed);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, loops_turn_at_every_corner_and_add_up_to_the_region, 0,
		RANDOM_PLOTS);
	tcase_add_loop_test(laws, the_outer_loop_less_the_holes_is_the_union_of_the_cells, 0,
		RANDOM_PLOTS);
	tcase_add_checked_fixture(width, NULL, teardown);
	tcase_add_loop_test(width, a_region_is_wide_where_every_cell_is_in_a_square_of_it, 0,
		RANDOM_PLOTS);
	tcase_add_loop_test(width, what_is_wide_survives_an_offset_inwards_and_out, 0,
		RANDOM_PLOTS);
	return suite;
}
