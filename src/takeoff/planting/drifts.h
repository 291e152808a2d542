/* A drift: a band of a bed filled with one kind of plant.
 *
 * Places stand on the rows of lattice.h, in the rectangle around the band as far as that is within
 * the bed's inner face. Of these places count those in the band that have half a spacing of the bed
 * clear to all four sides (the square that a plant takes); none is nearer to a plant that stands
 * already than placed.h says.
 *
 * Or the band's ground is cut into rectangles (planted_bed.h), and each has rows of its own, half a
 * spacing clear to all its sides: so frames and knots have rows along their arms. Whichever way
 * gives most plants is taken, of equal ones the one that is named first here: one rectangle, those
 * one above the other, those side by side.
 *
 * Rows begin at the inner face where the band has one on one side and not on the other. In ground
 * that is its own image they lie in the middle, with as much left at both ends; else they begin
 * away from the mirror's axis, left and at the top where there is none: so images of bands have
 * images of plants. In ground that is its own image in the plot's mirror, plants have images in it
 * (lattice.h), and only as far as that mirror asks. */
#ifndef TAKEOFF_PLANTING_DRIFTS_H
#define TAKEOFF_PLANTING_DRIFTS_H

#include "takeoff/planting/placed.h"
#include "takeoff/planting/planted_bed.h"

/* What came of it. */
struct drift_laid {
	int64_t count; /* plants */
	int64_t room;  /* places it has, also those that are too near to what stands there */
};

/* Places plants of a kind, until there are too many of them. It can be stopped. */
struct drift_laid drift_lay(struct placed *placed, const struct planted_bed *bed, enum band band,
	const struct placed_plant *plant, bool is_square);

#endif
