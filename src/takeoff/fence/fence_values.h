/* The values in force for a fence. */
#ifndef TAKEOFF_FENCE_FENCE_VALUES_H
#define TAKEOFF_FENCE_FENCE_VALUES_H

#include "plot/block.h"

/* A length of the fence: its own, else the default, which may be derived:
 *
 *	depth = the greatest of height / 2, 24 in, allow's frost depth
 *	hole  = 3 x post
 *	inset = hole / 2
 *	gate-post = post */
nm fence_derived(const struct block *allow, const struct block *fence, enum attribute a);
/* Rails of a panel: the fence's own, else 2, 3 above 4 ft. */
int64_t fence_rails(const struct block *fence);

#endif
