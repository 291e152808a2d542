/* Where a line goes that is drawn along one side of a way over cells. */
#ifndef PLOT_EDIT_ROUTE_BESIDE_H
#define PLOT_EDIT_ROUTE_BESIDE_H

#include "plot/route.h"

/* Which side: of what is level the upper or the lower, of what is upright the left or the right. */
struct beside {
	bool is_below, is_right;
	bool is_level; /* of a way of one cell: along which of its sides; else not looked at */
};

/* The way goes from cell to cell, each level with the one before or straight above or below it, and
 * none is there twice one after the other; count is 1 or more, at most ROUTE_POINTS_MOST less 1.
 * The line covers both end cells from edge to edge. Appends its points to an empty route. */
void route_beside(struct route *route, const struct place *cells, int count, struct beside beside);

#endif
