/* How the plan is tied to what stays where it is. */
#ifndef TAKEOFF_SETOUT_TIES_H
#define TAKEOFF_SETOUT_TIES_H

#include "takeoff/setout/setout.h"

/* Finds the ties of the plot for the set-out; they point into the plot. */
void ties_find(struct setout *out, const struct plot *plot, struct arena *arena);

#endif
