/* What beds are filled with. */
#ifndef TAKEOFF_GROUND_FILL_H
#define TAKEOFF_GROUND_FILL_H

#include "takeoff/common/snags.h"
#include "takeoff/takeoff.h"

/* Height of the wall from the base's top, without cap. */
nm fill_wall_height(const struct block *bed);
/* The deepest surface among the path entries that have a cell, 1 1/2 in without one: walls and fixtures
 * stand as deep, so that they share one formation with the paths. */
nm fill_surface(const struct takeoff *takeoff);
/* What of the wall is below finished ground: the bed's own embed, else fill_surface. */
nm fill_embed(const struct takeoff *takeoff, const struct block *bed);

bool fill_is_topsoil(const struct fill_part *part);
/* What of the part is topsoil that was dug on the plot, m3; its volume less that is to be bought. Earthwork
 * of *takeoff is done. */
double fill_reused(const struct takeoff *takeoff, const struct fill_part *part);

/* Fills fills of *takeoff (survey and walls are done) and adds the snags fill-none, wall-embed and
 * wall-high. Raised beds whose wall is not laid out have no row. */
void fill_compute(struct takeoff *takeoff, struct arena *arena, const struct plot *plot,
	struct snag_list *snags);

#endif
