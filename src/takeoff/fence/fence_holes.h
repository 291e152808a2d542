/* Holes of posts that meet beds. */
#ifndef TAKEOFF_FENCE_FENCE_HOLES_H
#define TAKEOFF_FENCE_FENCE_HOLES_H

#include "takeoff/fence/fences.h"

/* Adds the snag hole-wall, of the bed, for each post whose hole overlaps a bed's wall or the base
 * under it (the zone DIG_WALL; `kind` 0), else for each whose middle is within a bed (`kind` 1).
 * No more distance is asked: posts are set before the base is laid. */
void fences_warn_holes(const struct fences *fences, const struct basis *basis,
	const struct zones *zones, const struct cover *ground);

#endif
