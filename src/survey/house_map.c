#include "survey/house_map.h"
#include "base/number.h"
#include "base/stop.h"

#include <stdlib.h>

/* Its cells within plan and margin, from their own left upper one; right and bottom are beyond. */
static struct rectangle within(const struct house_map *map, const struct rectangle *house)
{
	int width = map->columns + 2 * map->margin, height = map->rows + 2 * map->margin;

	return (struct rectangle){ held(house->left + map->margin, 0, width),
		held(house->top + map->margin, 0, height),
		held(house->right + 1 + map->margin, 0, width),
		held(house->bottom + 1 + map->margin, 0, height) };
}

/* How many houses more are on each cell than on the one before it, in rows of `width`, told where
 * that changes from row to row. */
static void add_changes(int *changes, size_t width, struct rectangle house)
{
	size_t top = (size_t)house.top * width, bottom = (size_t)house.bottom * width;

	changes[top + (size_t)house.left]++;
	changes[top + (size_t)house.right]--;
	changes[bottom + (size_t)house.left]--;
	changes[bottom + (size_t)house.right]++;
}

static void mark(unsigned char *cells, int *changes, size_t width, size_t height)
{
	for (size_t y = 0; y < height && !stop_asked(); y++) {
		int *row = changes + y * (width + 1), houses = 0;

		for (size_t x = 0; x <= width; x++)
			row[x + width + 1] += row[x];
		for (size_t x = 0; x < width; x++) {
			houses += row[x];
			cells[y * width + x] = houses > 0;
		}
	}
}

struct house_map house_map_of(const struct plot *plot, int margin, struct arena *arena)
{
	const struct obstacles *houses = &plot->details.around.houses;
	struct house_map map = { plot->ground.columns, plot->ground.rows, margin, NULL };
	size_t width = (size_t)(map.columns + 2 * margin);
	size_t height = (size_t)(map.rows + 2 * margin);
	unsigned char *cells;
	int *changes;

	if (houses->count == 0)
		return map;
	cells = arena_new(arena, width * height, sizeof *cells);
	changes = memory_new((width + 1) * (height + 1), sizeof *changes);
	for (size_t i = 0; i < houses->count && !stop_asked(); i++)
		add_changes(changes, width + 1, within(&map, &houses->items[i].cells));
	mark(cells, changes, width, height);
	free(changes);
	map.cells = cells;
	return map;
}

bool house_map_at(const struct house_map *map, int x, int y)
{
	size_t width = (size_t)(map->columns + 2 * map->margin);

	return map->cells && map->cells[(size_t)(y + map->margin) * width +
		(size_t)(x + map->margin)];
}
