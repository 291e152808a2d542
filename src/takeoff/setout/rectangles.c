#include "takeoff/setout/rectangles.h"
#include "base/sort.h"
#include "base/stop.h"

#include <math.h>
#include <stdlib.h>

nm diagonal_of(nm width, nm height)
{
	/* Under 2^53 on the largest plans, so that a double holds it to a nanometre. */
	return (nm)llround(hypot((double)width, (double)height));
}

/* A rectangle's size and its region in one number, to be sorted: 12 bits of columns, 12 of rows,
 * the rest for the region. */
enum { SIZE_BITS = 12, REGION_BITS = 40 };
_Static_assert(SIDE_MOST < 1 << SIZE_BITS, "a side fits");

static bool is_rectangle(const struct region *region)
{
	return region->convex == 4 && region->reflex == 0;
}

static uint64_t key_of(const struct region *region, int index)
{
	uint64_t columns = (uint64_t)(region->most.x - region->left + 1);
	uint64_t rows = (uint64_t)(region->most.y - region->first_cell.y + 1);

	return (columns << SIZE_BITS | rows) << REGION_BITS | (uint64_t)index;
}

static struct setout_rectangle rectangle_of(uint64_t key, nm cell)
{
	int columns = (int)(key >> (REGION_BITS + SIZE_BITS));
	int rows = (int)(key >> REGION_BITS & ((1u << SIZE_BITS) - 1));

	return (struct setout_rectangle){ .columns = columns, .rows = rows,
		.diagonal = diagonal_of(columns * cell, rows * cell) };
}

/* Sorted keys: those of one size follow each other. */
static void group(struct setout *out, struct arena *arena, const uint64_t *keys, size_t count)
{
	struct setout_rectangle *list = NULL, *last = NULL;
	size_t listed = 0, capacity = 0;

	for (size_t i = 0; i < count && !stop_asked(); i++) {
		if (i == 0 || keys[i] >> REGION_BITS != keys[i - 1] >> REGION_BITS) {
			list = arena_grow(arena, list, listed, &capacity, sizeof *list);
			last = &list[listed++];
			*last = rectangle_of(keys[i], out->survey->cell);
		}
		if (last->count < SETOUT_NAMED_MOST)
			last->regions[last->count] =
				(int)(keys[i] & ((UINT64_C(1) << REGION_BITS) - 1));
		last->count++;
	}
	out->rectangles = list;
	out->rectangle_count = (int)listed;
}

void rectangles_find(struct setout *out, struct arena *arena)
{
	const struct survey *survey = out->survey;
	uint64_t *keys = memory_new((size_t)survey->region_count, sizeof *keys);
	size_t count = 0;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		if (is_rectangle(&survey->regions[i]))
			keys[count++] = key_of(&survey->regions[i], i);
	sort_numbers(keys, count);
	group(out, arena, keys, count);
	free(keys);
}
