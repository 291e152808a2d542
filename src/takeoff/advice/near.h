/* What other size a bed, or the plan's cells, could have for a wall without a cut: with each the
 * wall was laid out, block by block. Nothing else of the plot is asked. */
#ifndef TAKEOFF_ADVICE_NEAR_H
#define TAKEOFF_ADVICE_NEAR_H

#include "takeoff/takeoff.h"

/* So many cells off in all at most, and so many sizes are as near as that. */
enum { NEAR_REACH = 4, NEAR_SIZES_MOST = 2 * NEAR_REACH * (NEAR_REACH + 1) };

/* The nearest sizes of a rectangular bed whose wall is laid out, at most `most` of them; x:
 * columns, y: rows. Of two as near the one of fewer columns comes first, then of fewer rows.
 * Returns how many; 0 for a bed of another shape. Cannot fail; trial layouts stay in the arena. */
int near_sizes(struct place sizes[], int most, struct arena *arena, const struct takeoff *takeoff,
	const struct wall *wall);
/* The nearest other side of the plan's cells, half to twice its own, in whole inches or steps of 25
 * mm; 0: none. */
nm near_cell(struct arena *arena, const struct takeoff *takeoff, const struct wall *wall);

#endif
