#include "survey/fence_map.h"

static size_t index_of(int columns, int x, int y)
{
	return (size_t)(y + 1) * (size_t)(columns + 1) + (size_t)(x + 1);
}

/* An upright leg lies right of the cells before it, a level one below those above it. */
static void leg_add(unsigned char *sides, int columns, struct leg leg, bool is_gate)
{
	struct leg f = leg_forward(leg);
	int right = is_gate ? GATE_RIGHT : FENCE_RIGHT, below = is_gate ? GATE_BELOW : FENCE_BELOW;

	if (leg_is_upright(f))
		for (int y = f.from.y; y < f.to.y; y++)
			sides[index_of(columns, f.from.x - 1, y)] |= (unsigned char)right;
	else
		for (int x = f.from.x; x < f.to.x; x++)
			sides[index_of(columns, x, f.from.y - 1)] |= (unsigned char)below;
}

static void fence_add(unsigned char *sides, int columns, const struct fence *fence)
{
	struct legs legs = LEGS_EMPTY;

	fence_legs(fence, &legs);
	for (size_t i = 0; i < legs.count; i++)
		leg_add(sides, columns, legs.items[i], false);
	for (size_t i = 0; i < fence->gates.count; i++)
		leg_add(sides, columns, fence->gates.items[i], true);
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
			sides = arena_new(arena, (size_t)(columns + 1) * (size_t)(rows + 1), 1);
		fence_add(sides, columns, &plot->details.fences[i]);
	}
	return (struct fence_map){ columns, rows, sides };
}

int fence_map_at(const struct fence_map *map, int x, int y)
{
	return map->sides ? map->sides[index_of(map->columns, x, y)] : 0;
}

bool fence_map_is_shut(const struct fence_map *map, struct place cell, bool is_below)
{
	int sides = fence_map_at(map, cell.x, cell.y);

	return (sides & (is_below ? FENCE_BELOW : FENCE_RIGHT)) &&
		!(sides & (is_below ? GATE_BELOW : GATE_RIGHT));
}
