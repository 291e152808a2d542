/* The values in force for a fence. */
#ifndef TAKEOFF_FENCE_FENCE_VALUES_H
#define TAKEOFF_FENCE_FENCE_VALUES_H

#include "plot/plot.h"

/* A length of the fence, of a plot in force (prices/in_force.h): its own, else the default, which
 * may be derived:
 *
 *	depth     = the greatest of height / 2, 24 in (600 mm), allow's frost depth
 *	hole      = 3 x post
 *	inset     = hole / 2
 *	gate-post = post */
nm fence_derived(const struct plot *plot, const struct block *fence, enum attribute a);
/* Rails of a panel: the fence's own, else 2, 3 above 4 ft (1.2 m). */
int64_t fence_rails(const struct plot *plot, const struct block *fence);
/* Across the hole of a gate's post: where that is of another size than the other posts three of
 * it, else their hole. */
nm fence_gate_hole(const struct plot *plot, const struct block *fence);

#endif
