/* From a plot to its takeoff: every trade in turn. */
#ifndef TAKEOFF_COMPUTE_H
#define TAKEOFF_COMPUTE_H

#include "takeoff/takeoff.h"

/* Computes the takeoff into the arena; it points into the plot and the book (NULL: none) too, which must
 * outlive it unchanged. */
void takeoff_compute(struct takeoff *out, struct arena *arena, const struct plot *plot,
	const struct book *book);

#endif
