/* Fences: lines of posts along the sides of cells, through grid points, with gates in them. */
#ifndef PLOT_FENCE_H
#define PLOT_FENCE_H

#include "plot/block.h"
#include "plot/leg.h"

enum { FENCE_POINTS_LEAST = 2, FENCE_POINTS_MOST = 64 };

/* A polyline of grid points; each leg level or upright, its length over 0. */
struct fence_run {
	struct place *points; /* owned */
	int count;            /* FENCE_POINTS_LEAST..FENCE_POINTS_MOST */
	size_t capacity;
};

/* No leg of a fence lies over another of the same fence; each gate lies wholly on one leg of a
 * run, and gates do not overlap. */
struct fence {
	char *name; /* owned */
	struct block block;
	struct fence_run *runs;
	size_t run_count, run_capacity;
	struct legs gates;
};

void fence_fini(struct fence *fence);
struct fence fence_copy(const struct fence *fence);
bool fence_equal(const struct fence *a, const struct fence *b);
/* Appends an empty run; points are added to it. */
struct fence_run *fence_add_run(struct fence *fence);
void fence_run_add(struct fence_run *run, struct place point);

/* Appends the legs of all runs, in their order. */
void fence_legs(const struct fence *fence, struct legs *out);
/* The first gate that lies on no one leg; the count where all do. The legs must not overlap. */
size_t fence_first_stray(const struct fence *fence);

#endif
