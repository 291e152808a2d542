#include "takeoff/setout/rectangles.h"
#include "base/hash.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <assert.h>
#include <math.h>
#include <stdlib.h>

nm diagonal_of(nm width, nm height)
{
	/* Under 2^53 on the largest plans, so that a double holds it to a nanometre. */
	return (nm)llround(hypot((double)width, (double)height));
}

/* Sizes met so far. There are few of them where there are millions of rectangles. */
struct sizes {
	struct setout_rectangle *list;
	size_t count, capacity;
	int *slots;        /* by hash: 1 + where in the list; 0: free. At least half are free */
	size_t slot_count; /* a power of 2 */
};

/* The slot of the size, or the free one where it belongs. */
static size_t slot_of(const struct sizes *sizes, int columns, int rows)
{
	const int size[] = { columns, rows };
	size_t slot = (size_t)hash_bytes(HASH_EMPTY, size, sizeof size);

	for (;; slot++) {
		int at = sizes->slots[slot &= sizes->slot_count - 1];

		if (at == 0)
			return slot;
		assert(sizes->list);
		if (sizes->list[at - 1].columns == columns && sizes->list[at - 1].rows == rows)
			return slot;
	}
}

static void widen(struct sizes *sizes)
{
	free(sizes->slots);
	sizes->slot_count = sizes->slot_count ? 2 * sizes->slot_count : 16;
	sizes->slots = memory_new(sizes->slot_count, sizeof *sizes->slots);
	for (size_t i = 0; i < sizes->count; i++)
		sizes->slots[slot_of(sizes, sizes->list[i].columns, sizes->list[i].rows)] =
			(int)i + 1;
}

static struct setout_rectangle *size_of(struct sizes *sizes, int columns, int rows)
{
	size_t slot;

	if (2 * (sizes->count + 1) > sizes->slot_count)
		widen(sizes);
	slot = slot_of(sizes, columns, rows);
	if (sizes->slots[slot] == 0) {
		sizes->list = memory_grow(sizes->list, sizes->count, &sizes->capacity,
			sizeof *sizes->list);
		sizes->list[sizes->count] = (struct setout_rectangle){ .columns = columns,
			.rows = rows };
		sizes->slots[slot] = (int)++sizes->count;
	}
	return &sizes->list[sizes->slots[slot] - 1];
}

static void add(struct sizes *sizes, const struct region *region, int index)
{
	struct setout_rectangle *size = size_of(sizes, region->most.x - region->left + 1,
		region->most.y - region->first_cell.y + 1);

	if (size->count < SETOUT_NAMED_MOST)
		size->regions[size->count] = index;
	size->count++;
}

static int compare_sizes(const void *one, const void *other)
{
	const struct setout_rectangle *a = one, *b = other;

	return a->columns != b->columns ? compare(a->columns, b->columns) :
		compare(a->rows, b->rows);
}

void rectangles_find(struct setout *out, struct arena *arena)
{
	const struct survey *survey = out->survey;
	struct sizes sizes = { .list = NULL };
	struct setout_rectangle *list;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		if (survey->regions[i].convex == 4 && survey->regions[i].reflex == 0)
			add(&sizes, &survey->regions[i], i);
	list = arena_new(arena, sizes.count, sizeof *list);
	for (size_t i = 0; i < sizes.count; i++) {
		list[i] = sizes.list[i];
		list[i].diagonal = diagonal_of(list[i].columns * survey->cell,
			list[i].rows * survey->cell);
	}
	sort(list, sizes.count, sizeof *list, compare_sizes);
	out->rectangles = list;
	out->rectangle_count = (int)sizes.count;
	free(sizes.list);
	free(sizes.slots);
}
