/* What is dug where: the ground of a plan divided into zones that do not overlap.
 *
 * Paths and fixtures have all their cells. Next come the raised beds in region order: a wall's
 * base runs under the wall, `reach` past its outer face and `reach-in` past its inner one, and
 * stops where a path, a fixture or an earlier wall has its base; outside the plan nothing is dug.
 * The walls leave the rest: the inside of raised beds that is dug out or on base all over,
 * ground-level beds whose soil is replaced, lawns with a cover. A raised bed whose wall is not
 * laid out has no zone. */
#ifndef TAKEOFF_GROUND_ZONES_H
#define TAKEOFF_GROUND_ZONES_H

#include "survey/cover.h"
#include "takeoff/common/embed.h"
#include "takeoff/walls/wall.h"

/* The purpose of digging. Post holes are no zone: each is dug from the ground's surface down,
 * whatever else is dug there. Nor is ground that is only graded: all that is in no zone. */
enum dig_part { DIG_PATH, DIG_WALL, DIG_INSIDE, DIG_PAD, DIG_LAWN, DIG_BED, DIG_HOLES, DIG_GRADED };
enum { DIG_PARTS = DIG_GRADED + 1 };

struct zone {
	int region;
	enum dig_part part;
	double area; /* m2, may be 0 */
};

struct zones {
	const struct zone *list; /* in region order, a bed's wall before its inside */
	int count;
};

/* The zones' ground taken apart. It takes more than all that is counted on it, so it does not live
 * with the takeoff: arena_clear(&ground.arena). */
struct zones_ground {
	struct arena arena;
	struct cover cover; /* owners are indices into the list of zones */
};

void zones_compute(struct zones *out, struct zones_ground *ground, const struct basis *basis,
	const struct walls *walls);
/* How deep a zone is dug below finished ground. */
nm zone_depth(const struct embeds *embeds, const struct zone *zone);
/* Depth of the stone base under a zone; 0: none. */
nm zone_base(const struct survey *survey, const struct zone *zone);

#endif
