/* Which cells houses stand on, for whoever goes over the plan cell by cell. */
#ifndef SURVEY_HOUSE_MAP_H
#define SURVEY_HOUSE_MAP_H

#include "base/memory.h"
#include "plot/plot.h"

struct house_map {
	int columns, rows;
	int margin; /* so many cells beyond the plan are told of too, on each side */
	const unsigned char *cells; /* NULL: no house stands on any of them */
};

/* Lives as long as the arena is not cleared. Time: O(houses + cells). It can be stopped
 * (base/stop.h). */
struct house_map house_map_of(const struct plot *plot, int margin, struct arena *arena);
/* x, y: in the plan or its margin. */
bool house_map_at(const struct house_map *map, int x, int y);

#endif
