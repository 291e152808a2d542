/* How far a barrow goes from the drop to where it is tipped, along the way that
 * survey/way_lengths.h finds: to paths and lawns on the average of their cells that it gets to, to
 * beds and fixtures on that of the sides where it can stand at them, without a fence between; to a
 * fence on that of the nearer sides of its line. */
#ifndef TAKEOFF_WALKS_BARROW_WAYS_H
#define TAKEOFF_WALKS_BARROW_WAYS_H

#include "takeoff/common/basis.h"
#include "takeoff/common/figure.h"
#include "takeoff/walks/walking.h"

/* To one region that a barrow gets to, one way. */
struct barrow_way {
	int region;
	nm length;
};

/* To one fence. */
struct barrow_fence {
	const char *name;
	nm length;
};

struct barrow_ways {
	const struct barrow_way *list;         /* in region order */
	int count;
	const struct barrow_fence *fence_list; /* in the plot's order */
	int fence_count;
	const nm *regions; /* by region, 0: no barrow gets there; NULL: there is no drop */
	nm fences;         /* to all fences together; 0: to none */
};

/* Nothing where there is no drop. Also adds the snag drop-cut-off: once where no barrow gets from
 * the drop to anything; else for each bed, path or lawn that none gets to, unless it is a path that
 * nobody gets to from outside either, which path-cut-off tells. */
void barrow_ways_find(struct barrow_ways *out, const struct basis *basis,
	const struct walking *walking);

extern const struct figure_table barrow_way_table, barrow_fence_table;

#endif
