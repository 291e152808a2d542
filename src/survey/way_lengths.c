#include "survey/way_lengths.h"
#include "base/stop.h"
#include "survey/way.h"

#include <stdlib.h>

/* Of a cell, besides its length. */
enum { UNREACHED = 0, SHUT = -1 };
/* Cells walked on from between two looks at the stop flag. */
enum { STEPS = 1024 };
enum { AROUND = 4 }; /* cells around a grid point, row by row */

struct walk {
	const struct fence_map *fences;
	int columns, rows;
	int *cells;
	int *waiting; /* cells to walk on from, nearest first */
	size_t at, count, capacity;
};

static size_t index_of(int columns, int x, int y)
{
	return (size_t)(y + 1) * (size_t)(columns + 2) + (size_t)(x + 1);
}

int way_length_at(const struct way_lengths *lengths, int x, int y)
{
	int length = lengths->cells[index_of(lengths->columns, x, y)];

	return length > 0 ? length : 0;
}

static bool is_inside(const struct walk *walk, struct place cell)
{
	return cell.x >= 0 && cell.y >= 0 && cell.x < walk->columns && cell.y < walk->rows;
}

/* ---- What is in the way ---------------------------------------------------------------------- */

static void shut_cells(const struct walk *walk, const struct survey *survey)
{
	for (int y = 0; y < walk->rows && !stop_asked(); y++) {
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];

			for (int x = run->left; !way_is_over(run->class) && x < run->right; x++)
				walk->cells[index_of(walk->columns, x, y)] = SHUT;
		}
	}
}

/* has_ring: a barrow may go round the plan. */
static void shut_houses(const struct walk *walk, const struct house_map *houses, bool has_ring)
{
	for (int y = -1; y <= walk->rows && !stop_asked(); y++)
		for (int x = -1; x <= walk->columns; x++)
			if (house_map_at(houses, x, y) ||
				(!has_ring && !is_inside(walk, (struct place){ x, y })))
				walk->cells[index_of(walk->columns, x, y)] = SHUT;
}

/* Whether a fence without a gate is between two cells that share a side. */
static bool is_shut(const struct walk *walk, struct place a, struct place b)
{
	bool is_below = a.x == b.x;
	struct place first = a.x < b.x || a.y < b.y ? a : b;

	return (is_inside(walk, a) || is_inside(walk, b)) &&
		fence_map_is_shut(walk->fences, first, is_below);
}

/* ---- The walk -------------------------------------------------------------------------------- */

static void reach(struct walk *walk, struct place cell, int length)
{
	size_t index = index_of(walk->columns, cell.x, cell.y);

	if (walk->cells[index] != UNREACHED)
		return;
	walk->cells[index] = length;
	walk->waiting = memory_grow(walk->waiting, walk->count, &walk->capacity,
		sizeof *walk->waiting);
	walk->waiting[walk->count++] = (int)index;
}

/* Whether a barrow is there, outside the plan, and gets from there into the cell beside. */
static bool gets_in(const struct walk *walk, struct place from, struct place cell)
{
	return !is_inside(walk, from) && !is_shut(walk, from, cell) &&
		walk->cells[index_of(walk->columns, from.x, from.y)] != SHUT;
}

/* A drop outside the plan gets into a cell over its side, one inside is in all cells around it. */
static void begin(struct walk *walk, struct place drop, bool is_outside)
{
	struct place around[AROUND];

	for (int i = 0; i < AROUND; i++)
		around[i] = (struct place){ drop.x - 1 + i % 2, drop.y - 1 + i / 2 };
	for (int i = 0; i < AROUND; i++)
		if (!is_outside || !is_inside(walk, around[i]) ||
			gets_in(walk, around[i ^ 1], around[i]) ||
			gets_in(walk, around[i ^ 2], around[i]))
			reach(walk, around[i], 1);
}

static void walk_on(struct walk *walk, int index)
{
	int width = walk->columns + 2;
	struct place from = { index % width - 1, index / width - 1 };
	const struct place to[] = { { from.x - 1, from.y }, { from.x + 1, from.y },
		{ from.x, from.y - 1 }, { from.x, from.y + 1 } };

	for (int i = 0; i < AROUND; i++)
		if (to[i].x >= -1 && to[i].y >= -1 && to[i].x <= walk->columns &&
			to[i].y <= walk->rows && !is_shut(walk, from, to[i]))
			reach(walk, to[i], walk->cells[index] + 1);
}

struct way_lengths way_lengths_from(const struct survey *survey, const struct fence_map *fences,
	const struct house_map *houses, struct place drop, struct arena *arena)
{
	int columns = survey->columns, rows = survey->rows;
	bool is_outside = drop.x == 0 || drop.y == 0 || drop.x == columns || drop.y == rows;
	struct walk walk = { .fences = fences, .columns = columns, .rows = rows,
		.cells = arena_new(arena, (size_t)(columns + 2) * (size_t)(rows + 2),
			sizeof *walk.cells) };

	shut_cells(&walk, survey);
	shut_houses(&walk, houses, is_outside);
	begin(&walk, drop, is_outside);
	while (walk.at < walk.count && !stop_asked())
		for (int i = 0; i < STEPS && walk.at < walk.count; i++)
			walk_on(&walk, walk.waiting[walk.at++]);
	free(walk.waiting);
	return (struct way_lengths){ columns, rows, walk.cells };
}
