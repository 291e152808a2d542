/* Which sides of which cells have fence or a gate, for whoever goes over the plan cell by cell. */
#ifndef SURVEY_FENCE_MAP_H
#define SURVEY_FENCE_MAP_H

#include "base/memory.h"
#include "plot/plot.h"

enum { FENCE_RIGHT = 1, FENCE_BELOW = 2, GATE_RIGHT = 4, GATE_BELOW = 8 };

struct fence_map {
	int columns, rows;
	const unsigned char *sides; /* NULL: there is no fence */
};

/* Lives as long as the arena is not cleared. */
struct fence_map fence_map_of(const struct plot *plot, struct arena *arena);
/* What a cell has at its right and below, of all fences. x, y may be -1: what lies on the plan's
 * left and upper edges. */
int fence_map_at(const struct fence_map *map, int x, int y);
/* True where the cell's right side, or its lower one, has a fence and no gate. */
bool fence_map_is_shut(const struct fence_map *map, struct place cell, bool is_below);

#endif
