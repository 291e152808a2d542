/* A drift: a band of a bed filled with one kind of plant.
 *
 * Places stand on the rows of lattice.h in the rectangle around the band, as far as that is within
 * the bed's inner face: in a raised bed the wall's depth inside its outline, else the outline
 * itself. Of these places count those in the band that have half a spacing of the bed clear to all
 * four sides (the square that a plant takes); none is nearer to a plant that stands already than
 * half of both spacings.
 *
 * Rows begin at the inner face where the band has one on one side and not on the other. In a band
 * that is its own image they lie in the middle, with as much left at both ends; else they begin
 * away from the mirror's axis, left and at the top where there is none: so images of bands have
 * images of plants. */
#ifndef TAKEOFF_PLANTING_DRIFTS_H
#define TAKEOFF_PLANTING_DRIFTS_H

#include "takeoff/common/basis.h"
#include "takeoff/planting/bands.h"
#include "takeoff/planting/placed.h"

/* A bed that plants stand in. */
struct planted_bed {
	const struct basis *basis;
	struct mirror mirror;
	int region;
	nm wall;             /* its depth; 0 of a bed at ground level */
	struct bands bands;
};

/* The depth of the wall around a region: 0 of all that is no raised bed. */
nm planting_wall(const struct region *region);

/* Whether a square of ground, `around` to all four sides of a spot, is within the region. */
bool planting_is_clear(const struct survey *survey, int region, struct spot at, nm around);

/* Places plants of a kind, until there are too many of them. Returns how many. It can be
 * stopped. */
int64_t drift_lay(struct placed *placed, const struct planted_bed *bed, enum band band,
	const struct placed_plant *plant, bool is_square);

/* Square metres of the band that are within the inner face. */
double drift_area(const struct planted_bed *bed, enum band band);

#endif
