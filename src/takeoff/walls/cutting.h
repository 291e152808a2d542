/* Which pieces are cut from which block: per block size and use, over all beds of the plot.
 *
 * A piece may be `fit` shorter than its place and each saw cut takes `kerf`, so n pieces fit one block
 * where places - n fit + (n - 1) kerf <= l. Longest first, into the fullest block that still takes it. */
#ifndef TAKEOFF_WALLS_CUTTING_H
#define TAKEOFF_WALLS_CUTTING_H

#include "takeoff/takeoff.h"

/* Fills cuttings of *takeoff from its walls. */
void cutting_plan(struct takeoff *takeoff, struct arena *arena);

#endif
