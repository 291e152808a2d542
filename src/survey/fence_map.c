#include "survey/fence_map.h"
#include "survey/cell_sides.h"

static void fence_add(unsigned char *sides, int columns, const struct fence *fence)
{
	struct legs legs = LEGS_EMPTY;

	fence_legs(fence, &legs);
	for (size_t i = 0; i < legs.count; i++)
		cell_sides_mark(sides, columns, legs.items[i], FENCE_RIGHT, FENCE_BELOW);
	for (size_t i = 0; i < fence->gates.count; i++)
		cell_sides_mark(sides, columns, fence->gates.items[i], GATE_RIGHT, GATE_BELOW);
	legs_fini(&legs);
}

struct fence_map fence_map_of(const struct plot *plot, struct arena *arena)
{
	int columns = plot->ground.columns, rows = plot->ground.rows;
	unsigned char *sides = NULL;

	for (size_t i = 0; i < plot->details.fence_count; i++) {
		if (!plot->details.fences[i].run_count)
			continue;
		if (!sides)
			sides = arena_new(arena, cell_sides_size(columns, rows), sizeof *sides);
		fence_add(sides, columns, &plot->details.fences[i]);
	}
	return (struct fence_map){ columns, rows, sides };
}

int fence_map_at(const struct fence_map *map, int x, int y)
{
	return map->sides ? map->sides[cell_sides_index(map->columns, x, y)] : 0;
}

bool fence_map_is_shut(const struct fence_map *map, struct place cell, bool is_below)
{
	int sides = fence_map_at(map, cell.x, cell.y);

	return (sides & (is_below ? FENCE_BELOW : FENCE_RIGHT)) &&
		!(sides & (is_below ? GATE_BELOW : GATE_RIGHT));
}
