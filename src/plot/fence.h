/* Fences: lines of posts along the sides of cells, through grid points, with gates in them. */
#ifndef PLOT_FENCE_H
#define PLOT_FENCE_H

#include "plot/block.h"
#include "plot/route.h"

/* No leg of a fence lies over another of the same fence; each gate lies wholly on one leg of a
 * run, and gates do not overlap. */
struct fence {
	char *name; /* owned */
	struct block block;
	struct route *runs;
	size_t run_count, run_capacity;
	struct legs gates;
};

void fence_fini(struct fence *fence);
struct fence fence_copy(const struct fence *fence);
bool fence_equal(const struct fence *a, const struct fence *b);
/* Appends an empty run; points are added to it. */
struct route *fence_add_run(struct fence *fence);

/* Appends the legs of all runs, in their order. */
void fence_legs(const struct fence *fence, struct legs *out);
/* The first gate that lies on no one leg; the count where all do. The legs must not overlap. */
size_t fence_first_stray(const struct fence *fence);

#endif
