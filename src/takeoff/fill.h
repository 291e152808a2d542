/* What beds are filled with. */
#ifndef TAKEOFF_FILL_H
#define TAKEOFF_FILL_H

#include "takeoff/snags.h"
#include "takeoff/takeoff.h"

/* Height of the wall from the base's top, without cap. */
nm fill_wall_height(const struct block *bed);
/* What of the wall is below finished ground: the bed's own, else the deepest surface among the path
 * entries that have a cell (so that walls, paths and fixtures share one formation), else 1 1/2 in. */
nm fill_embed(const struct takeoff *takeoff, const struct block *bed);

/* Fills fills of *takeoff (survey and walls are done) and adds the snags fill-none, wall-embed and
 * wall-high. Raised beds whose wall is not laid out have no row. */
void fill_compute(struct takeoff *takeoff, struct arena *arena, const struct plot *plot,
	struct snag_list *snags);

#endif
