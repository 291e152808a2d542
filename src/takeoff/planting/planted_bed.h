/* A bed that plants stand in, and its ground by bands: what is within the inner face - in a raised
 * bed the wall's depth inside its outline, else the outline itself - and not under a house. */
#ifndef TAKEOFF_PLANTING_PLANTED_BED_H
#define TAKEOFF_PLANTING_PLANTED_BED_H

#include "survey/cover.h"
#include "takeoff/common/basis.h"
#include "takeoff/common/spot.h"
#include "takeoff/planting/bands.h"

struct planted_bed {
	const struct basis *basis;
	struct mirror mirror;
	int region;
	nm wall;             /* its depth; 0 of a bed at ground level */
	struct bands bands;
	bool has_houses;     /* some stand somewhere in the plan */
};

/* The depth of the wall around a region: 0 of all that is no raised bed. */
nm planting_wall(const struct region *region);
/* Whether a square of ground, `around` to all four sides of a spot, is within the region. 0: the
 * spot alone, which then is on no edge of a cell. */
bool planting_is_clear(const struct survey *survey, int region, struct spot at, nm around);

/* The same within the inner face, and clear of houses. */
bool planted_bed_is_clear(const struct planted_bed *bed, struct spot at, nm around);
/* Whether one of the cells that have the spot, also on their edge, is in the band. */
bool planted_bed_holds(const struct planted_bed *bed, enum band band, struct spot at);

/* A set of bands. */
#define BIT_OF_BAND(band) (1u << (band))

/* Cuts the ground of bands into rectangles, none meets another along all of a common side: slabs,
 * whose ends are what they are all along, one above the other or side by side. So images of beds
 * have images of rectangles. In the arena; it can be stopped. */
enum bed_cut { CUT_ABOVE_ONE_ANOTHER, CUT_SIDE_BY_SIDE };
void planted_bed_cut(struct cover *out, struct arena *arena, const struct planted_bed *bed,
	unsigned int bands, enum bed_cut way);
/* Square metres of that ground. */
double planted_bed_area(const struct planted_bed *bed, unsigned int bands);

#endif
