/* All fences of a plot, set out on the ground. */
#ifndef TAKEOFF_FENCE_FENCES_H
#define TAKEOFF_FENCE_FENCES_H

#include "takeoff/fence/fence_levels.h"
#include "takeoff/ground/dig.h"

struct fences {
	const struct fencing *list; /* in the plot's order; a fence without a run has no row */
	int count;
	struct fence_levels levels;
};

/* Adds the snags of each fence (fence_snags.h). */
void fences_compute(struct fences *out, const struct basis *basis);
/* Adds the digging of all holes: a row for each fence, of no region. */
void fences_dig(struct dig_list *list, const struct fences *fences);
/* Adds posts by stock length and size, panels by fence, gate leaves by fence and width (those made
 * of offcuts are not bought), concrete in whole bags and one more (common practice, no published
 * source), gravel, fixings. */
void fences_items(struct item_list *items, const struct fences *fences);

#endif
