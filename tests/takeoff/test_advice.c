/* What another size would do for a bed's wall, against laying every plot out anew. */
#include "support/plots.h"
#include "support/runner.h"
#include "takeoff/advice/advice.h"
#include "takeoff/takeoff.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { ROOM = 14, EDGE = 2 };

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
} beds[] = {
	{ 5, 3, "1 ft x 4 in x 4 in", "1 ft" },   { 7, 4, "16 in x 8 in x 6 in", "1 ft" },
	{ 5, 5, "16 in x 8 in x 6 in", "1 ft" },  { 9, 4, "18 in x 6 in x 6 in", "1 ft" },
	{ 10, 6, "16 in x 8 in x 6 in", "6 in" }, { 8, 5, "11 in x 7 in x 4 in", "1 ft" },
	{ 9, 7, "400 mm x 200 mm x 150 mm", "300 mm" },
};

static void advise(struct advice *advice, const struct plot *plot, int64_t *cut)
{
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;

	takeoff_compute(&takeoff, &arena, plot, NULL);
	ck_assert_int_eq(takeoff.walls.count, 1);
	*cut = takeoff.walls.list[0].cut_pieces;
	advice_find(advice, &arena, plot, &takeoff, &takeoff.walls.list[0]);
	arena_clear(&arena);
}

START_TEST(the_sizes_named_need_no_cut_and_none_is_nearer)
{
	int columns = beds[_i].columns, rows = beds[_i].rows, found = 0;
	const char *block = beds[_i].block, *cell = beds[_i].cell;
	struct advice advice;
	struct plot plot;
	int64_t cut;

	plot_bed(&plot, columns, rows, block, cell);
	advise(&advice, &plot, &cut);
	for (int off = 1; off <= ADVICE_REACH && found < ADVICE_SIZES; off++) {
		int here = whole_sizes(columns, rows, off, block, cell), named = 0;

		for (int i = 0; i < advice.size_count; i++) {
			struct place size = advice.sizes[i];

			if (abs(size.x - columns) + abs(size.y - rows) != off)
				continue;
			ck_assert(size_is_whole(size.x, size.y, block, cell));
			named++;
		}
		ck_assert_int_eq(named, here < ADVICE_SIZES - found ? here : ADVICE_SIZES - found);
		found += named;
	}
	ck_assert_int_eq(advice.size_count, found);
	plot_fini(&plot);
}
END_TEST

START_TEST(the_cell_named_needs_no_cut_and_none_is_nearer)
{
	struct advice advice;
	struct plot plot;
	nm cell, nearest = 0;
	int64_t cut;

	plot_bed(&plot, beds[_i].columns, beds[_i].rows, beds[_i].block, beds[_i].cell);
	advise(&advice, &plot, &cut);
	cell = plot_cell(&plot);
	for (nm inches = 3; inches <= 24; inches++) {
		nm other = inches * NM_PER_INCH;

		if (2 * other < cell || other > 2 * cell || other == cell)
			continue;
		block_set(&plot.details.head, HEAD_CELL,
			(struct value){ .set = true, .as.length = other });
		if (is_whole(&plot) && (!nearest || llabs(other - cell) < llabs(nearest - cell)))
			nearest = other;
	}
	if (!nearest)
		ck_assert_int_eq(advice.cell, 0);
	else if (cell % NM_PER_INCH == 0)
		ck_assert_int_eq(advice.cell, nearest);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_bed_of_more_corners_is_told_of_cells_only)
{
	static const char *const elbow[] = { ".........", ".bbbbbbb.", ".bbbbbbb.", ".bbbbbbb.",
		".bbb.....", ".bbb.....", ".bbb.....", ".........", NULL };
	struct advice advice;
	struct plot plot;
	int64_t cut;

	plot_from_rows(&plot, elbow);
	advise(&advice, &plot, &cut);
	ck_assert_int_gt(cut, 0);
	ck_assert_int_eq(advice.size_count, 0);
	ck_assert_int_ne(advice.cell, 0);
	block_set(&plot.details.head, HEAD_CELL,
		(struct value){ .set = true, .as.length = advice.cell });
	ck_assert(is_whole(&plot));
	plot_fini(&plot);
}
END_TEST

/* ---- Beds wall to wall ----------------------------------------------------------------------- */

/* The length of all runs of all courses. */
static nm laid(const struct takeoff *takeoff)
{
	nm length = 0;

	for (int i = 0; i < takeoff->walls.count; i++) {
		const struct wall *wall = &takeoff->walls.list[i];

		length += (wall->courses + 1) / 2 * wall->odd.length +
			wall->courses / 2 * wall->even.length;
	}
	return length;
}

START_TEST(two_beds_joined_save_the_blocks_that_are_said)
{
	static const char *const rows[] = { "aaaaabbbbb", "aaaaabbbbb", "aaaaabbbbb", "aaaaabbbbb",
		NULL };
	struct joining list[JOININGS_MOST];
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;
	struct plot plot;
	nm before, after;

	plot_from_rows(&plot, rows);
	takeoff_compute(&takeoff, &arena, &plot, NULL);
	before = laid(&takeoff);
	ck_assert_int_eq(advice_joinings(list, &takeoff), 1);
	ck_assert_int_eq(list[0].region, 0);
	ck_assert_int_eq(list[0].other, 1);
	for (int i = 0; i < 40; i++)
		plot.ground.cells[i] = 'a';
	takeoff_compute(&takeoff, &arena, &plot, NULL);
	after = laid(&takeoff);
	/* Twice 4 ft less four corners of 8 in, in 3 courses of 16 in blocks: 12. */
	ck_assert_int_eq(list[0].blocks, 12);
	ck_assert_int_eq(list[0].blocks, (before - after) / (16 * NM_PER_INCH));
	plot_fini(&plot);
	arena_clear(&arena);
}
END_TEST

START_TEST(beds_of_different_blocks_or_hardly_touching_are_not_joined)
{
	static const char *const rows[] = { "aaaaa.bbbbb", "aaaaa.bbbbb", "aaaaabbbbbb",
		"aaaaa.bbbbb",
		"aaaaa.bbbbb", NULL };
	static const char *const side_by_side[] = { "aaaabbbb", "aaaabbbb", "aaaabbbb", "aaaabbbb",
		NULL };
	struct joining list[JOININGS_MOST];
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;
	struct plot plot;

	plot_from_rows(&plot, rows);
	takeoff_compute(&takeoff, &arena, &plot, NULL);
	ck_assert_int_eq(advice_joinings(list, &takeoff), 0);
	plot_fini(&plot);
	plot_from_rows(&plot, side_by_side);
	plot_set(&plot, 'b', BED_BLOCK, "1 ft x 6 in x 6 in");
	takeoff_compute(&takeoff, &arena, &plot, NULL);
	ck_assert_int_eq(advice_joinings(list, &takeoff), 0);
	plot_fini(&plot);
	arena_clear(&arena);
}
END_TEST

START_TEST(beds_one_over_the_other_are_found_too)
{
	static const char *const rows[] = { "aaaaaa..", "aaaaaa..", "aaaaaa..", "..bbbbbb",
		"..bbbbbb",
		"..bbbbbb", NULL };
	struct joining list[JOININGS_MOST];
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;
	struct plot plot;

	plot_from_rows(&plot, rows);
	takeoff_compute(&takeoff, &arena, &plot, NULL);
	ck_assert_int_eq(advice_joinings(list, &takeoff), 1);
	ck_assert_int_eq(list[0].blocks, 12);
	plot_fini(&plot);
	arena_clear(&arena);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("advice");
	TCase *sizes = suite_case(suite, "sizes"), *joined = suite_case(suite, "joined");
	int count = (int)(sizeof beds / sizeof *beds);

	tcase_add_loop_test(sizes, the_sizes_named_need_no_cut_and_none_is_nearer, 0, count);
	tcase_add_loop_test(sizes, the_cell_named_needs_no_cut_and_none_is_nearer, 0, count);
	tcase_add_test(sizes, a_bed_of_more_corners_is_told_of_cells_only);
	tcase_add_test(joined, two_beds_joined_save_the_blocks_that_are_said);
	tcase_add_test(joined, beds_of_different_blocks_or_hardly_touching_are_not_joined);
	tcase_add_test(joined, beds_one_over_the_other_are_found_too);
	return suite;
}
