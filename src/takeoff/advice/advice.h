/* Advice: what a small change to a plot would spare, each computed by making it and counting the
 * whole takeoff anew. */
#ifndef TAKEOFF_ADVICE_ADVICE_H
#define TAKEOFF_ADVICE_ADVICE_H

#include "takeoff/advice/proposal.h"
#include "takeoff/takeoff.h"

enum { ADVICE_MOST = 8, ADVICE_OF_KIND_MOST = 3 };

struct advice {
	/* What spares most first: money where that is known, then pieces and panels to saw, then
	 * blocks, then weight; of those alike what was tried first. */
	struct proposal list[ADVICE_MOST];
	int count;
	bool is_tried; /* false: one takeoff of the plot takes so long that nothing was tried */
	bool is_all;   /* all there was has been tried; else it would have taken too long */
};

/* Advice on a plot with its takeoff, of each kind ADVICE_OF_KIND_MOST at most. Takes up to about
 * half a second. It can be stopped (base/stop.h): then *out is half-made, to be looked at by
 * nobody. */
void advice_make(struct advice *out, const struct plot *plot, const struct takeoff *takeoff);

#endif
