/* Which sides of which cells have a service, and which cells are in a house, kept or have a
 * specimen, for whoever goes over the plan cell by cell. */
#ifndef SURVEY_AROUND_MAP_H
#define SURVEY_AROUND_MAP_H

#include "base/memory.h"
#include "plot/plot.h"

enum {
	EXISTING_RIGHT = 1, EXISTING_BELOW = 2, TO_LAY_RIGHT = 4, TO_LAY_BELOW = 8,
	CELL_KEPT = 16, /* some of the cell is */
	CELL_HOUSE = 32, CELL_PLANT = 64
};

struct around_map {
	int columns, rows;
	const unsigned char *cells; /* NULL: nothing is around */
};

/* Lives as long as the arena is not cleared. */
struct around_map around_map_of(const struct plot *plot, struct arena *arena);
/* What a cell has, and what lies at its right and below. x, y may be -1: lines on the plan's left
 * and upper edges. */
int around_map_at(const struct around_map *map, int x, int y);
/* Whether some of a cell is in a circle or a rectangle. */
bool obstacle_touches(const struct obstacle *obstacle, nm cell, int x, int y);

#endif
