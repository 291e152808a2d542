/* Other sizes for a bed whose wall needs no cut, against laying every plot out anew. */
#include "support/plots.h"
#include "support/runner.h"
#include "takeoff/advice/near.h"
#include "takeoff/takeoff.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { ROOM = 14, EDGE = 2, SIZES = 2 };

/* What is found of one bed. */
struct found {
	struct place sizes[SIZES];
	int size_count;
	nm cell;
};

/* A bed of so many cells on open ground, with a block and a cell as the format spells them. */
static void plot_bed(struct plot *plot, int columns, int rows, const char *block, const char *cell)
{
	static const char *const nothing[] = { "b", NULL };

	plot_from_rows(plot, nothing);
	ground_fini(&plot->ground);
	ground_init(&plot->ground, ROOM + 2 * EDGE, ROOM + 2 * EDGE);
	for (int y = 0; y < rows; y++)
		memset(plot->ground.cells + (y + EDGE) * plot->ground.columns + EDGE, 'b',
			(size_t)columns);
	if (strstr(block, "mm"))
		plot_set(plot, 0, HEAD_UNITS, "metric");
	plot_set(plot, 'b', BED_BLOCK, block);
	plot_set(plot, 0, HEAD_CELL, cell);
}

/* True where the bed is laid out, bonds, leaves what it must inside, and needs no cut. */
static bool is_whole(const struct plot *plot)
{
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;
	bool whole;

	takeoff_compute(&takeoff, &arena, plot, NULL);
	whole = takeoff.walls.count == 1 && takeoff.walls.list[0].cut_pieces == 0;
	for (size_t i = 0; i < takeoff.snags.count; i++)
		whole = whole && takeoff.snags.list[i].code != SNAG_WALL_BOND &&
			takeoff.snags.list[i].code != SNAG_BED_THIN;
	arena_clear(&arena);
	return whole;
}

static bool size_is_whole(int columns, int rows, const char *block, const char *cell)
{
	struct plot plot;
	bool whole;

	if (columns < 1 || rows < 1 || columns > ROOM || rows > ROOM)
		return false;
	plot_bed(&plot, columns, rows, block, cell);
	whole = is_whole(&plot);
	plot_fini(&plot);
	return whole;
}

/* How many sizes at that distance, in cells, need no cut. */
static int whole_sizes(int columns, int rows, int off, const char *block, const char *cell)
{
	int count = 0;

	for (int dx = -off; dx <= off; dx++)
		for (int dy = -off; dy <= off; dy++)
			if (abs(dx) + abs(dy) == off)
				count += size_is_whole(columns + dx, rows + dy, block, cell);
	return count;
}

static const struct {
	int columns, rows;
	const char *block, *cell;
	int sizes;     /* as many are found */
	bool has_cell; /* and a side of cells */
} beds[] = {
	{ 5, 3, "1 ft x 4 in x 4 in", "1 ft", 0, false },
	{ 7, 4, "16 in x 8 in x 6 in", "1 ft", 2, true },
	{ 5, 5, "16 in x 8 in x 6 in", "1 ft", 2, true },
	{ 9, 4, "18 in x 6 in x 6 in", "1 ft", 2, false },
	{ 10, 6, "16 in x 8 in x 6 in", "6 in", 2, true },
	{ 8, 5, "11 in x 7 in x 4 in", "1 ft", 1, false },
	{ 9, 7, "400 mm x 200 mm x 150 mm", "300 mm", 2, true },
	{ 8, 5, "400 mm x 200 mm x 150 mm", "200 mm", 2, true },
	{ 6, 5, "300 mm x 100 mm x 100 mm", "200 mm", 2, false },
	{ 2, 4, "12 in x 4 in x 4 in", "8 in", 2, false },
	{ 3, 5, "12 in x 4 in x 4 in", "8 in", 2, false },
	{ 2, 6, "8 in x 4 in x 4 in", "7 in", 2, true }, /* of 6 in: whole, but 4 in inside */
	{ 5, 4, "16 in x 8 in x 6 in", "16 in", 2, true }, /* half of it */
	{ 5, 4, "16 in x 8 in x 6 in", "8 in", 2, true }, /* and twice */
	{ 10, 6, "16 in x 8 in x 6 in", "8.25 in", 0, true }, /* nearest of 8 in */
	{ 10, 6, "16 in x 8 in x 6 in", "7.75 in", 0, true },
	{ 7, 5, "400 mm x 200 mm x 150 mm", "390 mm", 0, true }, /* of 400 mm */
	{ 7, 5, "400 mm x 200 mm x 150 mm", "410 mm", 0, true },
};

static void find(struct found *near, const struct plot *plot, int64_t *cut)
{
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;

	takeoff_compute(&takeoff, &arena, plot, NULL);
	ck_assert_int_eq(takeoff.walls.count, 1);
	*cut = takeoff.walls.list[0].cut_pieces;
	near->size_count = near_sizes(near->sizes, SIZES, &arena, &takeoff, &takeoff.walls.list[0]);
	near->cell = near_cell(&arena, &takeoff, &takeoff.walls.list[0]);
	arena_clear(&arena);
}

/* Nearer, else of fewer columns, else of fewer rows. */
static bool is_before(struct place a, struct place b, int columns, int rows)
{
	int off_a = abs(a.x - columns) + abs(a.y - rows);
	int off_b = abs(b.x - columns) + abs(b.y - rows);

	if (off_a != off_b)
		return off_a < off_b;
	return a.x != b.x ? a.x < b.x : a.y < b.y;
}

START_TEST(the_sizes_named_need_no_cut_and_none_is_nearer)
{
	int columns = beds[_i].columns, rows = beds[_i].rows, found = 0;
	const char *block = beds[_i].block, *cell = beds[_i].cell;
	struct found near;
	struct plot plot;
	int64_t cut;

	plot_bed(&plot, columns, rows, block, cell);
	find(&near, &plot, &cut);
	for (int off = 1; off <= NEAR_REACH && found < SIZES; off++) {
		int here = whole_sizes(columns, rows, off, block, cell), named = 0;

		for (int i = 0; i < near.size_count; i++) {
			struct place size = near.sizes[i];

			if (abs(size.x - columns) + abs(size.y - rows) != off)
				continue;
			ck_assert(size_is_whole(size.x, size.y, block, cell));
			named++;
		}
		ck_assert_int_eq(named, here < SIZES - found ? here : SIZES - found);
		found += named;
	}
	ck_assert_int_eq(near.size_count, found);
	ck_assert_int_eq(found, beds[_i].sizes);
	for (int i = 1; i < near.size_count; i++)
		ck_assert(is_before(near.sizes[i - 1], near.sizes[i], columns, rows));
	plot_fini(&plot);
}
END_TEST

START_TEST(the_cell_named_needs_no_cut_and_none_is_nearer)
{
	struct found near;
	struct plot plot;
	nm cell, step, nearest = 0;
	int64_t cut;

	plot_bed(&plot, beds[_i].columns, beds[_i].rows, beds[_i].block, beds[_i].cell);
	find(&near, &plot, &cut);
	cell = plot_cell(&plot);
	step = plot_units(&plot) == UNITS_METRIC ? 25 * NM_PER_MM : NM_PER_INCH;
	for (nm other = step; other <= 2 * cell; other += step) {
		if (2 * other < cell || other == cell)
			continue;
		block_set(&plot.details.head, HEAD_CELL,
			(struct value){ .set = true, .as.length = other });
		if (is_whole(&plot) && (!nearest || llabs(other - cell) < llabs(nearest - cell)))
			nearest = other;
	}
	ck_assert_int_eq(near.cell, nearest);
	ck_assert(!beds[_i].has_cell == !nearest);
	plot_fini(&plot);
}
END_TEST

/* Between the walls of 2 x 5 there are just the 8 in that are left free. */
START_TEST(a_bed_just_wide_enough_inside_is_named)
{
	static const struct place from[] = { { 2, 4 }, { 3, 5 } };

	for (int i = 0; i < 2; i++) {
		struct found near;
		struct plot plot;
		int64_t cut;
		bool is_named = false;

		plot_bed(&plot, from[i].x, from[i].y, "12 in x 4 in x 4 in", "8 in");
		find(&near, &plot, &cut);
		for (int j = 0; j < near.size_count; j++)
			is_named = is_named || (near.sizes[j].x == 2 && near.sizes[j].y == 5);
		ck_assert(is_named);
		plot_fini(&plot);
	}
}
END_TEST

START_TEST(a_bed_of_more_corners_is_told_of_cells_only)
{
	static const char *const elbow[] = { ".........", ".bbbbbbb.", ".bbbbbbb.", ".bbbbbbb.",
		".bbb.....", ".bbb.....", ".bbb.....", ".........", NULL };
	struct found near;
	struct plot plot;
	int64_t cut;

	plot_from_rows(&plot, elbow);
	find(&near, &plot, &cut);
	ck_assert_int_gt(cut, 0);
	ck_assert_int_eq(near.size_count, 0);
	ck_assert_int_ne(near.cell, 0);
	block_set(&plot.details.head, HEAD_CELL,
		(struct value){ .set = true, .as.length = near.cell });
	ck_assert(is_whole(&plot));
	plot_fini(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("near");
	TCase *sizes = suite_case(suite, "sizes");
	int count = (int)(sizeof beds / sizeof *beds);

	tcase_add_loop_test(sizes, the_sizes_named_need_no_cut_and_none_is_nearer, 0, count);
	tcase_add_loop_test(sizes, the_cell_named_needs_no_cut_and_none_is_nearer, 0, count);
	tcase_add_test(sizes, a_bed_just_wide_enough_inside_is_named);
	tcase_add_test(sizes, a_bed_of_more_corners_is_told_of_cells_only);
	return suite;
}
