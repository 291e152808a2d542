/* The reader's part for places: cells, grid points, and what goes from one to the next. Each fails
 * at all of the X,Y that is wrong. */
#ifndef PLOT_FORMAT_READ_PLACE_H
#define PLOT_FORMAT_READ_PLACE_H

#include "base/scan.h"
#include "plot/plot.h"

/* Where each of some legs was read, for faults of legs that show late. */
struct leg_places {
	struct scan *items; /* owned */
	size_t count, capacity;
};
void leg_places_add(struct leg_places *places, const struct scan *s);

/* Fails at the word that the scan is at. */
bool fail_point(const struct scan *s, struct diag *d, const char *expected);

/* X,Y of a cell of the ground; of a grid point, the plan's edges among them. */
bool read_cell(const struct ground *ground, struct scan *s, struct place *cell, struct diag *d);
bool read_point(const struct ground *ground, struct scan *s, struct place *point, struct diag *d);
/* The end of a leg that begins at `from`. */
bool read_leg(const struct ground *ground, struct scan *s, struct place from, struct leg *leg,
	struct diag *d);
/* All grid points to the end of the line, into an empty route; what it has until it fails is there.
 * Adds where each leg was read to places, where those are not NULL. */
bool read_route(const struct ground *ground, struct scan *s, struct route *route,
	struct leg_places *places, struct diag *d);
/* "X,Y to X,Y": corners of a rectangle, at most CORNER_MOST from the datum, on either side of
 * it. */
bool read_rectangle(struct scan *s, struct rectangle *cells, struct diag *d);

#endif
