#include "plot/edit/lines_map.h"
#include "base/memory.h"

#include <stdlib.h>

static int side_of(const struct plot *plot, bool is_level)
{
	return is_level ? plot->ground.rows : plot->ground.columns;
}

/* Cells beyond the plan are left out, as images are. */
static void copy(struct lines_map *map, int cell, int more)
{
	if (cell >= 0 && cell < map->count)
		map->copies[cell] += more;
}

static void leave_out(struct lines_map *map, int first, int count)
{
	for (int i = first; i < first + count; i++)
		if (i >= 0 && i < map->count)
			map->copies[i] = 0;
}

static void put_on_axis(struct lines_map *map, int axis, int count)
{
	if (axis % 2) {
		copy(map, axis / 2, count);
		return;
	}
	copy(map, axis / 2 - 1, count - count / 2);
	copy(map, axis / 2, count / 2);
}

/* The middle column stays as long as it can: what stands in it alone would be lost. Where the axis
 * is a line the two beside it are each other's images, and of an odd number it takes one. */
static void take_on_axis(struct lines_map *map, int axis, int count)
{
	int middle = axis / 2, half = count / 2, is_odd = count % 2;

	if (axis % 2 && !is_odd) {
		leave_out(map, middle - half, half);
		leave_out(map, middle + 1, half);
	} else {
		leave_out(map, middle - half - (axis % 2 ? 0 : is_odd), count);
	}
}

/* At the cell, and at its image where it has one. */
static void change_at(struct lines_map *map, const struct strip *strip, bool has_image, int image)
{
	if (strip->is_out) {
		map->is_short = strip->cell + strip->count > map->count;
		leave_out(map, strip->cell, strip->count);
		if (has_image)
			leave_out(map, image - strip->count + 1, strip->count);
		return;
	}
	copy(map, strip->cell, strip->count);
	if (has_image)
		copy(map, image, strip->count);
}

struct lines_map lines_map_of(const struct plot *plot, const struct strip *strip)
{
	struct mirror mirror = mirror_of(plot);
	struct lines_map map = { .count = side_of(plot, strip->is_level) };
	int axis = mirror_axis(&mirror, strip->is_level), image = axis - 1 - strip->cell;
	bool has_axis = mirror_has_axis(&mirror, strip->is_level);

	map.copies = memory_new((size_t)map.count, sizeof *map.copies);
	map.lines = memory_new((size_t)map.count + 1, sizeof *map.lines);
	for (int i = 0; i < map.count; i++)
		map.copies[i] = 1;
	if (!strip->is_on_axis && (!has_axis || image != strip->cell))
		change_at(&map, strip, has_axis, image);
	else if (strip->is_out)
		take_on_axis(&map, axis, strip->count);
	else
		put_on_axis(&map, axis, strip->count);
	for (int i = 0; i < map.count; i++)
		map.lines[i + 1] = map.lines[i] + map.copies[i];
	return map;
}

void lines_map_fini(struct lines_map *map)
{
	free(map->copies);
	free(map->lines);
}
