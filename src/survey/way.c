#include "survey/way.h"
#include "base/stop.h"

#include <stdlib.h>

/* Of a cell: one can walk there; one was seen to get there, which is all that is told. */
enum { REACHED = 1, WALKABLE = 2 };
/* Cells walked on from between two looks at the stop flag. */
enum { STEPS = 1024 };

struct walk {
	const struct fence_map *fences;
	int columns, rows;
	unsigned char *cells;
	int *waiting; /* cells to walk on from */
	size_t count, capacity;
};

bool way_is_over(unsigned int class)
{
	return class == CLASS_PATH || class == CLASS_LAWN || class == CLASS_OPEN;
}

static void mark_walkable(struct walk *walk, const struct survey *survey)
{
	for (int y = 0; y < walk->rows && !stop_asked(); y++) {
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];

			for (int x = run->left; way_is_over(run->class) && x < run->right; x++)
				walk->cells[(size_t)y * (size_t)walk->columns + (size_t)x] =
					WALKABLE;
		}
	}
}

/* Walks over a side of a cell into another, unless a fence without a gate is there; `at`: the cell
 * at whose right or lower side that is. */
static void enter(struct walk *walk, int x, int y, struct place at, bool is_below)
{
	size_t cell = (size_t)y * (size_t)walk->columns + (size_t)x;

	if (x < 0 || y < 0 || x >= walk->columns || y >= walk->rows ||
		walk->cells[cell] != WALKABLE || fence_map_is_shut(walk->fences, at, is_below))
		return;
	walk->cells[cell] = REACHED;
	walk->waiting = memory_grow(walk->waiting, walk->count, &walk->capacity,
		sizeof *walk->waiting);
	walk->waiting[walk->count++] = (int)cell;
}

static void enter_from_outside(struct walk *walk)
{
	int right = walk->columns - 1, bottom = walk->rows - 1;

	for (int x = 0; x <= right; x++) {
		enter(walk, x, 0, (struct place){ x, -1 }, true);
		enter(walk, x, bottom, (struct place){ x, bottom }, true);
	}
	for (int y = 0; y <= bottom; y++) {
		enter(walk, 0, y, (struct place){ -1, y }, false);
		enter(walk, right, y, (struct place){ right, y }, false);
	}
}

static void walk_on(struct walk *walk, int cell)
{
	int x = cell % walk->columns, y = cell / walk->columns;

	enter(walk, x - 1, y, (struct place){ x - 1, y }, false);
	enter(walk, x + 1, y, (struct place){ x, y }, false);
	enter(walk, x, y - 1, (struct place){ x, y - 1 }, true);
	enter(walk, x, y + 1, (struct place){ x, y }, true);
}

unsigned char *way_from_outside(const struct survey *survey, const struct fence_map *fences)
{
	size_t cells = (size_t)survey->columns * (size_t)survey->rows;
	struct walk walk = { .fences = fences, .columns = survey->columns, .rows = survey->rows,
		.cells = memory_new(cells, sizeof *walk.cells) };

	mark_walkable(&walk, survey);
	enter_from_outside(&walk);
	while (walk.count > 0 && !stop_asked())
		for (int i = 0; i < STEPS && walk.count > 0; i++)
			walk_on(&walk, walk.waiting[--walk.count]);
	free(walk.waiting);
	for (size_t i = 0; i < cells; i++)
		walk.cells[i] &= REACHED;
	return walk.cells;
}
