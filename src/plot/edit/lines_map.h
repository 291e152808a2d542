/* What strips do to the lines of the grid. */
#ifndef PLOT_EDIT_LINES_MAP_H
#define PLOT_EDIT_LINES_MAP_H

#include "plot/edit/strip.h"

/* One direction of the plan: how often each column or row is there afterwards, and where each line
 * of the grid goes. */
struct lines_map {
	int count;
	int *copies; /* owned: 1: as before */
	int *lines;  /* owned, count + 1 */
	bool is_short; /* some that were to be taken out are not there */
};

/* What the strip and its image do. End with lines_map_fini. */
struct lines_map lines_map_of(const struct plot *plot, const struct strip *strip);
void lines_map_fini(struct lines_map *map);

#endif
