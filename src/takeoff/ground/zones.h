/* What is dug where: the ground of a plan, taken apart into zones of which no two overlap.
 *
 * Paths and fixtures have all their cells. Next come the raised beds in region order: a wall's base runs
 * under the wall and `reach` past both its faces, and stops where a path, a fixture or an earlier wall
 * already has its base; outside the plan nothing is dug. Then what the walls leave: the inside of raised
 * beds that are dug out or stand on base all over, ground-level beds whose soil is replaced, lawns with a
 * cover. A raised bed whose wall is not laid out has no zone. */
#ifndef TAKEOFF_GROUND_ZONES_H
#define TAKEOFF_GROUND_ZONES_H

#include "survey/cover.h"

#include "plot/plot.h"

enum zone_part { ZONE_PATH, ZONE_WALL, ZONE_INSIDE, ZONE_PAD, ZONE_LAWN, ZONE_BED };

struct zone {
	int region;
	enum zone_part part;
	double area; /* m2, may be 0 */
};

struct zones {
	const struct zone *list; /* in region order, a bed's wall before its inside */
	int count;
	struct cover cover;      /* their ground; owners are indices into the list */
};

struct takeoff;

/* Fills zones of *takeoff from its survey and walls. */
void zones_compute(struct takeoff *takeoff, struct arena *arena, const struct plot *plot);

#endif
