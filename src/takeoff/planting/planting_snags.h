/* Plants that would not do where they stand. Of each kind in each region the first of them has the
 * snag.
 *
 *	plant-place  a specimen on a path, a fixture or in a house, or in its bed's wall
 *	plant-reach  in a bed, in a cell out of an arm's reach (survey/reach.h)
 *	plant-soil   the soil of its bed is less deep than it needs: of a raised bed what is
 *	             filled in, of one at ground level what is dug over
 *	plant-wall   in a raised bed, taller than so many times the depth of its soil
 *	plant-close  two plants are nearer to each other than half of both their spreads
 *	plant-front  in a bed, a taller plant is nearer than half its spread to the line from a
 *	             plant to the nearest place where one can walk up to it, between the two */
#ifndef TAKEOFF_PLANTING_PLANTING_SNAGS_H
#define TAKEOFF_PLANTING_PLANTING_SNAGS_H

#include "takeoff/planting/planting.h"

/* After planting_find, before planting_end. */
void planting_snags_add(const struct basis *basis, struct planting *planting);

/* The cell of the ground that holds a spot of it. */
struct place planting_cell(const struct survey *survey, struct spot at);
/* Adds plant-close and plant-front. */
void plant_pairs_check(const struct basis *basis, struct planting *planting,
	const struct fence_map *fences, const struct house_map *houses);

#endif
