/* Strips over ground: where pieces lie, by hand, by a plain look at every cell, and against
 * GEOS. */
#include "support/geos.h"
#include "support/plots.h"
#include "support/runner.h"
#include "takeoff/ground/strips.h"

#include <stdlib.h>

enum { PIECES_MOST = 4096, RANDOM_PLOTS = 150 };

static const double EXACT = 1e-9;

/* All pieces and edges, as they were told. */
static struct told {
	struct strips_sink sink; /* first */
	struct cover_box pieces[PIECES_MOST];
	nm edges[PIECES_MOST];
	int piece_count, edge_count;
} told;

static void take_piece(struct strips_sink *sink, const struct cover_box *piece)
{
	ck_assert_ptr_eq(sink, &told.sink);
	ck_assert_int_lt(told.piece_count, PIECES_MOST);
	told.pieces[told.piece_count++] = *piece;
}

static void take_edge(struct strips_sink *sink, nm length)
{
	ck_assert_ptr_eq(sink, &told.sink);
	ck_assert_int_lt(told.edge_count, PIECES_MOST);
	told.edges[told.edge_count++] = length;
}

static void lay(const struct strips *strips, struct strips_way way)
{
	told = (struct told){ .sink = { take_piece, take_edge } };
	strips_lay(strips, way, &told.sink);
}

static void piece_is(int i, nm left, nm top, nm right, nm bottom, int strip)
{
	const struct cover_box *piece = &told.pieces[i];

	ck_assert_int_lt(i, told.piece_count);
	ck_assert_int_eq(piece->left, left);
	ck_assert_int_eq(piece->top, top);
	ck_assert_int_eq(piece->right, right);
	ck_assert_int_eq(piece->bottom, bottom);
	ck_assert_int_eq(piece->owner, strip);
}

/* ---- By hand --------------------------------------------------------------------------------- */

static const struct cover_box slab[] = { { 10, 20, 40, 45, 0 } };
/* The two legs of an elbow, and one box apart in the second row of strips. */
static const struct cover_box elbow[] = {
	{ 0, 0, 30, 8, 0 }, { 0, 8, 10, 18, 0 }, { 20, 14, 24, 18, 0 },
};

START_TEST(nothing_is_laid_over_nothing)
{
	lay(&(struct strips){ NULL, 0, 10, 2, 0 }, (struct strips_way){ false, false });
	ck_assert_int_eq(told.piece_count, 0);
	ck_assert_int_eq(told.edge_count, 0);
}
END_TEST

/* 25 across: 10 and 8 and the last 7, each strip 2 over the one before. */
START_TEST(level_strips_begin_at_the_top_and_lap)
{
	lay(&(struct strips){ slab, 1, 10, 2, 0 }, (struct strips_way){ false, false });
	ck_assert_int_eq(told.piece_count, 3);
	piece_is(0, 10, 20, 40, 30, 0);
	piece_is(1, 10, 28, 40, 38, 1);
	piece_is(2, 10, 36, 40, 46, 2);
	ck_assert_int_eq(told.edge_count, 4);
	for (int i = 0; i < 4; i++)
		ck_assert_int_eq(told.edges[i], 30);
}
END_TEST

START_TEST(turned_round_they_begin_at_the_bottom)
{
	lay(&(struct strips){ slab, 1, 10, 2, 0 }, (struct strips_way){ false, true });
	ck_assert_int_eq(told.piece_count, 3);
	piece_is(0, 10, 35, 40, 45, 0);
	piece_is(1, 10, 27, 40, 37, 1);
	piece_is(2, 10, 19, 40, 29, 2);
}
END_TEST

START_TEST(upright_strips_begin_at_the_left_or_at_the_right)
{
	lay(&(struct strips){ slab, 1, 20, 0, 0 }, (struct strips_way){ true, false });
	ck_assert_int_eq(told.piece_count, 2);
	piece_is(0, 10, 20, 30, 45, 0);
	piece_is(1, 30, 20, 50, 45, 1);
	lay(&(struct strips){ slab, 1, 20, 0, 0 }, (struct strips_way){ true, true });
	ck_assert_int_eq(told.piece_count, 2);
	piece_is(0, 20, 20, 40, 45, 0);
	piece_is(1, 0, 20, 20, 45, 1);
}
END_TEST

START_TEST(a_roll_as_wide_as_the_ground_lies_once)
{
	lay(&(struct strips){ slab, 1, 25, 5, 0 }, (struct strips_way){ false, false });
	ck_assert_int_eq(told.piece_count, 1);
	lay(&(struct strips){ slab, 1, 24, 5, 0 }, (struct strips_way){ false, false });
	ck_assert_int_eq(told.piece_count, 2);
}
END_TEST

START_TEST(each_stretch_of_ground_in_a_strip_has_a_piece_and_a_lap_is_one_edge)
{
	lay(&(struct strips){ elbow, 3, 10, 2, 0 }, (struct strips_way){ false, false });
	ck_assert_int_eq(told.piece_count, 3);
	piece_is(0, 0, 0, 30, 10, 0);
	piece_is(1, 0, 8, 10, 18, 1);
	piece_is(2, 20, 8, 24, 18, 1);
	/* Outer edge 30, the lap 30, below 10 and 4. */
	ck_assert_int_eq(told.edge_count, 4);
	ck_assert_int_eq(told.edges[0] + told.edges[1], 60);
	ck_assert_int_eq(told.edges[2], 10);
	ck_assert_int_eq(told.edges[3], 4);
}
END_TEST

START_TEST(a_strip_over_a_gap_between_beds_has_no_piece)
{
	static const struct cover_box apart[] = { { 0, 0, 5, 5, 0 }, { 0, 50, 5, 55, 0 } };

	lay(&(struct strips){ apart, 2, 10, 2, 0 }, (struct strips_way){ false, false });
	ck_assert_int_eq(told.piece_count, 2);
	piece_is(1, 0, 48, 5, 58, 6);
}
END_TEST

/* In one strip gaps of 3 and of 4, in the next one gap of 7 between its own ground. */
static const struct cover_box gaps[] = {
	{ 0, 0, 5, 10, 0 }, { 8, 4, 12, 6, 0 }, { 16, 0, 20, 18, 0 }, { 5, 12, 9, 18, 0 },
};

START_TEST(a_gap_shorter_than_the_bridge_is_run_through)
{
	lay(&(struct strips){ gaps, 4, 10, 2, 4 }, (struct strips_way){ false, false });
	ck_assert_int_eq(told.piece_count, 4);
	piece_is(0, 0, 0, 12, 10, 0);
	piece_is(1, 16, 0, 20, 10, 0);
	piece_is(2, 5, 8, 9, 18, 1);
	piece_is(3, 16, 8, 20, 18, 1);
	/* Pins go where the pieces are: along 12 and 4 outside and in the lap, 4 and 4 below. */
	ck_assert_int_eq(told.edge_count, 6);
	ck_assert_int_eq(told.edges[0], 12);
	ck_assert_int_eq(told.edges[1], 4);
	ck_assert_int_eq(told.edges[2], 12);
	ck_assert_int_eq(told.edges[3], 4);
	ck_assert_int_eq(told.edges[4], 4);
	lay(&(struct strips){ gaps, 4, 10, 2, 5 }, (struct strips_way){ false, true });
	ck_assert_int_eq(told.piece_count, 3);
	piece_is(0, 0, 8, 9, 18, 0);
	piece_is(1, 16, 8, 20, 18, 0);
	piece_is(2, 0, 0, 20, 10, 1);
}
END_TEST

START_TEST(without_a_bridge_each_gap_is_left_open)
{
	lay(&(struct strips){ gaps, 4, 10, 2, 0 }, (struct strips_way){ false, false });
	ck_assert_int_eq(told.piece_count, 5);
	lay(&(struct strips){ gaps, 4, 10, 2, 3 }, (struct strips_way){ false, false });
	ck_assert_int_eq(told.piece_count, 5);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

enum { CELL = 12 };

static struct plot plot;
static struct cover_box *boxes;
static size_t box_count;
static struct strips strips;
static struct strips_way way;

/* Cells of p in runs along their row, as survey and zones have them, a roll of any width. */
static void ground_at_random(int seed)
{
	struct random random = { (uint64_t)seed };

	plot_at_random(&plot, &random, 24, seed % 2 ? "p.." : "p.");
	boxes = calloc((size_t)(plot.ground.columns * plot.ground.rows), sizeof *boxes);
	box_count = 0;
	for (int y = 0; y < plot.ground.rows; y++)
		for (int x = 0; x < plot.ground.columns; x++)
			if (ground_cell(&plot.ground, x, y) == 'p')
				boxes[box_count++] = (struct cover_box){ x * CELL, y * CELL,
					(x + 1) * CELL, (y + 1) * CELL, 0 };
	strips = (struct strips){ boxes, box_count, random_between(&random, 2, 60), 0, 0 };
	strips.lap = random_below(&random, (int)strips.width / 2 + 1);
	way = (struct strips_way){ seed / 2 % 2, seed / 4 % 2 };
	strips.bridge = seed % 3 ? random_between(&random, 0, 6 * CELL) : 0;
	lay(&strips, way);
}

static void teardown(void)
{
	plot_fini(&plot);
	free(boxes);
	boxes = NULL;
}

/* ---- By a plain look at the cells: `along` and `across` are indices of cells */

static int cells_across(void)
{
	return way.is_upright ? plot.ground.columns : plot.ground.rows;
}

static int cells_along(void)
{
	return way.is_upright ? plot.ground.rows : plot.ground.columns;
}

/* across counts from the first strip's side of the plan. */
static bool is_ground(int along, int across)
{
	if (way.is_turned)
		across = cells_across() - 1 - across;
	return (way.is_upright ? ground_cell(&plot.ground, across, along) :
		ground_cell(&plot.ground, along, across)) == 'p';
}

static int first_across(void)
{
	for (int across = 0; across < cells_across(); across++)
		for (int along = 0; along < cells_along(); along++)
			if (is_ground(along, across))
				return across;
	return -1;
}

/* Is there ground in the column of cells, between so far and so far across the strips? */
static bool any_ground(int along, nm near, nm far)
{
	for (int across = 0; across < cells_across(); across++)
		if (across * CELL < far && (across + 1) * CELL > near && is_ground(along, across))
			return true;
	return false;
}

/* Does a piece lie there: over ground, or between two places with ground less than the bridge
 * apart? */
static bool any_piece(int along, nm near, nm far)
{
	int before = along, after = along;

	while (before >= 0 && !any_ground(before, near, far))
		before--;
	while (after < cells_along() && !any_ground(after, near, far))
		after++;
	return before == along || (before >= 0 && after < cells_along() &&
		(after - before - 1) * CELL < strips.bridge);
}

START_TEST(pieces_are_those_of_a_plain_look_at_the_cells)
{
	int found = 0;

	ground_at_random(_i);
	nm edge = first_across() * CELL, pitch = strips.width - strips.lap;

	for (int row = 0; box_count > 0 && edge + row * pitch < cells_across() * CELL; row++) {
		nm near = row ? edge + row * pitch + strips.lap : edge;
		nm far = edge + row * pitch + strips.width;
		int from = 0;

		for (int along = 0; along <= cells_along(); along++) {
			bool any = along < cells_along() && any_piece(along, near, far);

			if (!any && from < along) {
				const struct cover_box *piece = &told.pieces[found++];

				ck_assert_int_le(found, told.piece_count);
				ck_assert_int_eq(piece->owner, row);
				ck_assert_int_eq(way.is_upright ? piece->top : piece->left,
					from * CELL);
				ck_assert_int_eq(way.is_upright ? piece->bottom : piece->right,
					along * CELL);
			}
			from = any ? from : along + 1;
		}
	}
	ck_assert_msg(found == told.piece_count, "seed %d", _i);
}
END_TEST

static GEOSGeometry *shape(GEOSContextHandle_t geos, const struct cover_box *list, size_t count)
{
	struct geos_box *copies = calloc(count + 1, sizeof *copies);
	GEOSGeometry *all;

	for (size_t i = 0; i < count; i++)
		copies[i] = (struct geos_box){ (double)list[i].left, (double)list[i].top,
			(double)list[i].right, (double)list[i].bottom };
	all = geos_union(geos, copies, count);
	free(copies);
	return all;
}

START_TEST(laid_back_over_the_ground_the_pieces_cover_all_of_it)
{
	GEOSContextHandle_t geos = geos_start();

	ground_at_random(_i);
	GEOSGeometry *ground = shape(geos, boxes, box_count);
	GEOSGeometry *fabric = shape(geos, told.pieces, (size_t)told.piece_count);
	GEOSGeometry *bare = geos_difference(geos, ground, fabric);

	ck_assert_msg(geos_area(geos, bare) < EXACT, "seed %d", _i);
	geos_free(geos, ground);
	geos_free(geos, fabric);
	geos_free(geos, bare);
	geos_end(geos);
}
END_TEST

/* 0 or less where the two are not of one strip. */
static nm gap_before(const struct told *all, int i)
{
	const struct cover_box *piece = &all->pieces[i], *before = &all->pieces[i - 1];

	return before->owner != piece->owner ? 0 : way.is_upright ? piece->top - before->bottom :
		piece->left - before->right;
}

static nm total_length(const struct told *all)
{
	nm total = 0;

	for (int i = 0; i < all->piece_count; i++)
		total += way.is_upright ? all->pieces[i].bottom - all->pieces[i].top :
			all->pieces[i].right - all->pieces[i].left;
	return total;
}

START_TEST(running_through_takes_the_gaps_more_and_nothing_else)
{
	nm run_through = 0;
	nm bridge;

	ground_at_random(_i);
	struct told with = told;

	bridge = strips.bridge;
	strips.bridge = 0;
	lay(&strips, way);
	for (int i = 1; i < told.piece_count; i++)
		if (gap_before(&told, i) < bridge)
			run_through += gap_before(&told, i);
	ck_assert_int_eq(total_length(&with), total_length(&told) + run_through);
	ck_assert_int_le(with.piece_count, told.piece_count);
}
END_TEST

START_TEST(pieces_are_as_wide_as_the_roll_and_in_one_strip_stand_apart)
{
	ground_at_random(_i);
	for (int i = 0; i < told.piece_count; i++) {
		const struct cover_box *piece = &told.pieces[i];
		const struct cover_box *before = i ? &told.pieces[i - 1] : NULL;

		ck_assert_int_eq(way.is_upright ? piece->right - piece->left :
			piece->bottom - piece->top, strips.width);
		if (before && before->owner == piece->owner)
			ck_assert(gap_before(&told, i) > 0 &&
				gap_before(&told, i) >= strips.bridge);
		else if (before)
			ck_assert_int_lt(before->owner, piece->owner);
	}
}
END_TEST

START_TEST(boxes_joined_or_in_another_order_make_no_difference)
{
	ground_at_random(_i);
	struct told first = told;
	struct cover joined;
	struct arena arena = ARENA_EMPTY;

	cover_sweep(&joined, &arena, boxes, box_count);
	lay(&(struct strips){ joined.pieces, joined.count, strips.width, strips.lap,
		strips.bridge }, way);
	ck_assert_int_eq(told.piece_count, first.piece_count);
	ck_assert_int_eq(told.edge_count, first.edge_count);
	for (int i = 0; i < told.piece_count; i++)
		piece_is(i, first.pieces[i].left, first.pieces[i].top, first.pieces[i].right,
			first.pieces[i].bottom, first.pieces[i].owner);
	for (int i = 0; i < told.edge_count; i++)
		ck_assert_int_eq(told.edges[i], first.edges[i]);
	arena_clear(&arena);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("strips");
	TCase *hand = suite_case(suite, "by hand"), *laws = suite_case(suite, "laws");

	tcase_add_test(hand, nothing_is_laid_over_nothing);
	tcase_add_test(hand, level_strips_begin_at_the_top_and_lap);
	tcase_add_test(hand, turned_round_they_begin_at_the_bottom);
	tcase_add_test(hand, upright_strips_begin_at_the_left_or_at_the_right);
	tcase_add_test(hand, a_roll_as_wide_as_the_ground_lies_once);
	tcase_add_test(hand, each_stretch_of_ground_in_a_strip_has_a_piece_and_a_lap_is_one_edge);
	tcase_add_test(hand, a_strip_over_a_gap_between_beds_has_no_piece);
	tcase_add_test(hand, a_gap_shorter_than_the_bridge_is_run_through);
	tcase_add_test(hand, without_a_bridge_each_gap_is_left_open);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, pieces_are_those_of_a_plain_look_at_the_cells, 0, RANDOM_PLOTS);
	tcase_add_loop_test(laws, laid_back_over_the_ground_the_pieces_cover_all_of_it, 0,
		RANDOM_PLOTS);
	tcase_add_loop_test(laws, pieces_are_as_wide_as_the_roll_and_in_one_strip_stand_apart, 0,
		RANDOM_PLOTS);
	tcase_add_loop_test(laws, running_through_takes_the_gaps_more_and_nothing_else, 0,
		RANDOM_PLOTS);
	tcase_add_loop_test(laws, boxes_joined_or_in_another_order_make_no_difference, 0,
		RANDOM_PLOTS);
	return suite;
}
