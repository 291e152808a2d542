/* Where the posts of a fence stand: on the grid points of its runs, but those within `inset` of the
 * plan's boundary are moved in to that distance, so that nothing stands on the neighbour's ground;
 * to the middle where the plan is too narrow for that. */
#ifndef TAKEOFF_FENCE_STAND_H
#define TAKEOFF_FENCE_STAND_H

#include "plot/plot.h"
#include "takeoff/common/spot.h"

struct stand {
	nm cell, width, height; /* of the plan */
	nm inset;
};

/* Of a fence of a plot in force. */
struct stand stand_of(const struct plot *plot, const struct block *fence);
/* Of the middle of a post at a grid point. */
struct spot stand_spot(const struct stand *stand, struct place point);
/* In reading order, as qsort wants it. */
int spot_compare(const struct spot *a, const struct spot *b);
/* From one spot to another that is level with it or upright over it. */
nm spot_distance(struct spot a, struct spot b);
/* What is clear between the posts of a gate, each `post` square: from centre to centre less a
 * post, 0 or more. */
nm stand_clear(const struct stand *stand, struct leg gate, nm post);

#endif
