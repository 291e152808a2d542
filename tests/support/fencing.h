/* Fences for tests: drawn point by point, and at random. */
#ifndef SUPPORT_FENCING_H
#define SUPPORT_FENCING_H

#include "plot/plot.h"
#include "support/random.h"

/* Open ground of so many cells of one foot, imperial. plot_fini frees it. */
void fences_ground(struct plot *plot, int columns, int rows);
/* Adds a run "0,8 14,8 14,0"; a plot without a fence gets one named "Pickets" first. Runs and
 * gates go to the last fence. */
void fences_run(struct plot *plot, const char *points);
void fences_gate(struct plot *plot, const char *ends);
/* Sets an attribute of the last fence as the plot format spells it. */
void fences_set(struct plot *plot, enum attribute attribute, const char *value);

/* Adds a fence of 1 to 5 runs that wander over the grid, no leg over another, with gates here
 * and there. The plot has its ground. */
void fences_at_random(struct plot *plot, struct random *random);

#endif
