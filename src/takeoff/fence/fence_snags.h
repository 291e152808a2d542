/* What would not work along one fence. */
#ifndef TAKEOFF_FENCE_FENCE_SNAGS_H
#define TAKEOFF_FENCE_FENCE_SNAGS_H

#include "takeoff/common/basis.h"
#include "takeoff/fence/fencing.h"

/* Adds the snags
 *
 *	fence-tight  no room for a panel, or for a leaf, between two posts
 *	fence-hole   a hole narrower than the diagonal of its post
 *	fence-high   a fence higher than is allowed for
 *	fence-path   the fence crosses path, side by side, and has no gate in it there
 *	gate-narrow  a gate with a leaf that is less clear than is allowed for
 *	gate-blocked a gate with a bed or a fixture in front of it, on either side, nearer than a
 *	             barrow is wide: nothing could be turned there */
void fence_warn(const struct basis *basis, const struct fencing *fencing);

/* Adds a snag around the cells that have a part of the leg as a side. */
struct snag *fence_warn_at(const struct basis *basis, enum snag_code code, struct leg on,
	const nm figures[static SNAG_FIGURES]);

#endif
