/* Raised beds that would not do on the ground.
 *
 *	wall-embed   an embed that is set is under a tenth of the wall's height
 *	wall-high    courses and cap less embed over what is allowed above ground; base, courses
 *	             and cap over what is allowed from the footing's bottom
 *	soil-thin    filled, but with less soil than is allowed for
 *	floor-stone  the base past the wall takes more of the ground between the walls than is
 *	             allowed for; not where it is meant to lie under all of it */
#ifndef TAKEOFF_GROUND_BED_SNAGS_H
#define TAKEOFF_GROUND_BED_SNAGS_H

#include "takeoff/ground/fill.h"

void bed_snags_add(const struct basis *basis, const struct fill_ground *ground,
	const struct fills *fills);

#endif
