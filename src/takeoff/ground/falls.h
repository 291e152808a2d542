/* Which way finished ground falls: how steep paths are, and whether water runs off from houses.
 *
 *	fall-house   finished ground near a house falls towards it, or away from it by less than
 *	             is allowed for: of paths, and of all other ground but what stands in walls
 *	             and fixtures; once for each region, at its first such cell
 *
 * A fall is asked of the middle of a cell, over a cell's side, and compared to a thousandth of a
 * percent. */
#ifndef TAKEOFF_GROUND_FALLS_H
#define TAKEOFF_GROUND_FALLS_H

#include "survey/surface.h"
#include "takeoff/common/basis.h"
#include "takeoff/common/figure.h"

struct path_fall {
	int region;
	double steepest; /* percent, from the middle of a cell to that of the next */
};

/* Ground near a house. */
struct house_fall {
	int region;  /* NO_REGION: open ground */
	double away; /* percent, the least away from the nearest house; negative: towards it */
};

/* In region order, open ground last. */
struct falls {
	const struct path_fall *paths;
	const struct house_fall *houses;
	int path_count, house_count;
};

/* Of a plot with levels or finished ground that is told; nothing of any other. */
void falls_compute(struct falls *out, const struct basis *basis, const struct surface *surface);

#endif
