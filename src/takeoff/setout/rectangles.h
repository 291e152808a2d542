/* Regions that are rectangles, by their size. */
#ifndef TAKEOFF_SETOUT_RECTANGLES_H
#define TAKEOFF_SETOUT_RECTANGLES_H

#include "takeoff/setout/setout.h"

/* Gives `out` its rectangles, in the arena. */
void rectangles_find(struct setout *out, struct arena *arena);
/* From one corner of a rectangle to the opposite one, to the nearest nanometre. */
nm diagonal_of(nm width, nm height);

#endif
