/* Overlapping rectangles taken apart: areas and pieces. */
#include "support/geos.h"
#include "support/random.h"
#include "support/runner.h"
#include "survey/cover.h"

#include <stdlib.h>
#include <time.h>

enum { RANDOM_SETS = 200, BOXES_MOST = 40, OWNERS = 5 };

static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

static struct cover sweep(const struct cover_box *boxes, size_t count)
{
	struct cover cover;

	cover_sweep(&cover, &arena, boxes, count);
	return cover;
}

static void check_piece(const struct cover *cover, size_t at, struct cover_box expected)
{
	const struct cover_box *piece = &cover->pieces[at];

	ck_assert_uint_lt(at, cover->count);
	ck_assert_int_eq(piece->left, expected.left);
	ck_assert_int_eq(piece->top, expected.top);
	ck_assert_int_eq(piece->right, expected.right);
	ck_assert_int_eq(piece->bottom, expected.bottom);
	ck_assert_int_eq(piece->owner, expected.owner);
}

START_TEST(the_first_painted_keeps_its_ground)
{
	const struct cover_box boxes[] = { { 2, 2, 4, 4, 0 }, { 0, 0, 6, 6, 1 } };
	struct cover cover = sweep(boxes, 2);

	ck_assert_uint_eq(cover.count, 5);
	check_piece(&cover, 0, (struct cover_box){ 0, 0, 6, 2, 1 });
	check_piece(&cover, 1, (struct cover_box){ 0, 2, 2, 4, 1 });
	check_piece(&cover, 2, (struct cover_box){ 2, 2, 4, 4, 0 });
	check_piece(&cover, 3, (struct cover_box){ 4, 2, 6, 4, 1 });
	check_piece(&cover, 4, (struct cover_box){ 0, 4, 6, 6, 1 });
}
END_TEST

START_TEST(what_lies_all_under_another_shows_nowhere)
{
	const struct cover_box boxes[] = { { 0, 0, 6, 6, 1 }, { 2, 2, 4, 4, 0 } };
	struct cover cover = sweep(boxes, 2);

	ck_assert_uint_eq(cover.count, 1);
	check_piece(&cover, 0, boxes[0]);
}
END_TEST

START_TEST(boxes_of_one_owner_join_side_by_side_and_one_below_the_other)
{
	const struct cover_box boxes[] = { { 0, 0, 3, 2, 7 }, { 3, 0, 5, 4, 7 },
		{ 0, 2, 3, 4, 7 } };
	struct cover cover = sweep(boxes, 3);

	ck_assert_uint_eq(cover.count, 1);
	check_piece(&cover, 0, (struct cover_box){ 0, 0, 5, 4, 7 });
}
END_TEST

START_TEST(pieces_do_not_join_over_a_gap_or_between_owners)
{
	const struct cover_box boxes[] = { { 0, 0, 2, 2, 0 }, { 0, 3, 2, 5, 0 }, { 0, 5, 2, 6, 1 },
		{ 3, 5, 4, 6, 1 } };

	ck_assert_uint_eq(sweep(boxes, 4).count, 4);
}
END_TEST

START_TEST(empty_boxes_and_no_boxes_cover_nothing)
{
	const struct cover_box boxes[] = { { 2, 0, 2, 5, 0 }, { 0, 3, 5, 3, 0 },
		{ 4, 0, 1, 5, 0 } };

	ck_assert_uint_eq(sweep(boxes, 3).count, 0);
	ck_assert_uint_eq(sweep(NULL, 0).count, 0);
	ck_assert_double_eq(cover_m2(cover_box_area(&boxes[2])), 0);
}
END_TEST

START_TEST(the_largest_plan_is_measured_to_the_square_nanometre)
{
	/* 2048 cells of 10 ft each way, less a corner of one nanometre. */
	nm side = 2048 * 10 * NM_PER_FOOT;
	const struct cover_box boxes[] = { { 0, 0, 1, 1, 0 }, { 0, 0, side, side, 1 } };
	struct cover cover = sweep(boxes, 2);
	nm2 areas[2] = { 0 };

	cover_areas(&cover, areas);
	ck_assert(areas[0] == 1);
	ck_assert(areas[1] == (nm2)side * side - 1);
	/* 20,480 ft are 6,242.304 m. */
	ck_assert_double_eq_tol(cover_m2(areas[1]), 6242.304 * 6242.304, 1e-6);
}
END_TEST

START_TEST(a_box_is_clipped_on_all_sides)
{
	const struct cover_box plan = { 0, 0, 10, 8, 0 };
	struct cover_box box = cover_clip((struct cover_box){ -3, -2, 12, 9, 4 }, &plan);

	check_piece(&(struct cover){ &box, 1 }, 0, (struct cover_box){ 0, 0, 10, 8, 4 });
	box = cover_clip((struct cover_box){ 2, 3, 4, 5, 4 }, &plan);
	check_piece(&(struct cover){ &box, 1 }, 0, (struct cover_box){ 2, 3, 4, 5, 4 });
	box = cover_clip((struct cover_box){ 11, 3, 14, 5, 4 }, &plan);
	ck_assert(cover_box_area(&box) == 0);
}
END_TEST

/* ---- Laws and GEOS --------------------------------------------------------------------------- */

static size_t boxes_at_random(struct cover_box *boxes, int seed)
{
	struct random random = { (uint64_t)seed };
	int count = random_between(&random, 1, BOXES_MOST), size = random_between(&random, 3, 60);

	for (int i = 0; i < count; i++) {
		int left = random_below(&random, size), top = random_below(&random, size);

		boxes[i] = (struct cover_box){ left, top, random_between(&random, left, size),
			random_between(&random, top, size), random_below(&random, OWNERS) };
	}
	return (size_t)count;
}

static struct geos_box geos_box(const struct cover_box *box)
{
	return (struct geos_box){ (double)box->left, (double)box->top, (double)box->right,
		(double)box->bottom };
}

/* The ground of an owner, painted box by box from the last to the first. */
static GEOSGeometry *painted(GEOSContextHandle_t geos, const struct cover_box *boxes, size_t count,
	int owner)
{
	GEOSGeometry *shape = geos_union(geos, NULL, 0);

	while (count-- > 0) {
		struct geos_box box = geos_box(&boxes[count]);
		GEOSGeometry *next, *own;

		if (cover_box_area(&boxes[count]) == 0)
			continue;
		own = geos_union(geos, &box, 1);
		next = boxes[count].owner == owner ? GEOSUnion_r(geos, shape, own) :
			geos_difference(geos, shape, own);
		geos_free(geos, own);
		geos_free(geos, shape);
		shape = next;
	}
	return shape;
}

START_TEST(each_owner_shows_what_geos_leaves_of_its_boxes)
{
	struct cover_box boxes[BOXES_MOST];
	size_t count = boxes_at_random(boxes, _i);
	struct cover cover = sweep(boxes, count);
	struct geos_box *shown = calloc(cover.count + 1, sizeof *shown);
	GEOSContextHandle_t geos = geos_start();
	nm2 areas[OWNERS] = { 0 };

	cover_areas(&cover, areas);
	for (int owner = 0; owner < OWNERS; owner++) {
		GEOSGeometry *expected = painted(geos, boxes, count, owner), *pieces;
		size_t n = 0;

		for (size_t i = 0; i < cover.count; i++)
			if (cover.pieces[i].owner == owner)
				shown[n++] = geos_box(&cover.pieces[i]);
		pieces = geos_union(geos, shown, n);
		ck_assert_double_eq_tol(geos_apart(geos, pieces, expected), 0, 1e-9);
		/* No two pieces overlap, or they would be more than their union. */
		ck_assert_double_eq_tol((double)areas[owner], geos_area(geos, expected), 1e-9);
		geos_free(geos, pieces);
		geos_free(geos, expected);
	}
	geos_end(geos);
	free(shown);
}
END_TEST

START_TEST(pieces_stand_by_top_then_left_and_no_two_could_be_one)
{
	struct cover_box boxes[BOXES_MOST];
	struct cover cover = sweep(boxes, boxes_at_random(boxes, _i));

	for (size_t i = 0; i < cover.count; i++) {
		const struct cover_box *a = &cover.pieces[i];

		ck_assert_int_lt(a->left, a->right);
		ck_assert_int_lt(a->top, a->bottom);
		for (size_t j = i + 1; j < cover.count; j++) {
			const struct cover_box *b = &cover.pieces[j];

			ck_assert(a->top < b->top || (a->top == b->top && a->left < b->left));
			ck_assert(!(a->owner == b->owner && a->left == b->left &&
				a->right == b->right && a->bottom == b->top));
		}
	}
}
END_TEST

static double seconds_for(int side)
{
	size_t count = (size_t)side * (size_t)side, at = 0;
	struct cover_box *boxes = calloc(count, sizeof *boxes);
	clock_t start;
	struct cover cover;

	for (int y = 0; y < side; y++)
		for (int x = 0; x < side; x++)
			boxes[at++] = (struct cover_box){ 10 * x - 3, 10 * y - 3, 10 * x + 13,
				10 * y + 13, (x + y) % 2 };
	start = clock();
	cover = sweep(boxes, count);
	ck_assert_uint_gt(cover.count, count / 2);
	free(boxes);
	return (double)(clock() - start) / CLOCKS_PER_SEC;
}

START_TEST(sixteen_times_the_boxes_take_no_sixty_times_the_time)
{
	double small = seconds_for(100), large = seconds_for(400);

	ck_assert_double_lt(large, small * 60 + 0.2);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("cover");
	TCase *cases = suite_case(suite, "cases"), *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, the_first_painted_keeps_its_ground);
	tcase_add_test(cases, what_lies_all_under_another_shows_nowhere);
	tcase_add_test(cases, boxes_of_one_owner_join_side_by_side_and_one_below_the_other);
	tcase_add_test(cases, pieces_do_not_join_over_a_gap_or_between_owners);
	tcase_add_test(cases, empty_boxes_and_no_boxes_cover_nothing);
	tcase_add_test(cases, the_largest_plan_is_measured_to_the_square_nanometre);
	tcase_add_test(cases, a_box_is_clipped_on_all_sides);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, each_owner_shows_what_geos_leaves_of_its_boxes, 0, RANDOM_SETS);
	tcase_add_loop_test(laws, pieces_stand_by_top_then_left_and_no_two_could_be_one, 0,
		RANDOM_SETS);
	tcase_add_test(laws, sixteen_times_the_boxes_take_no_sixty_times_the_time);
	return suite;
}
