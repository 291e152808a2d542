/* The straight spans of a fence, between points where a post must stand whatever the panels
 * measure: ends and corners of its runs, tees (where runs meet or cross) and gates. */
#ifndef TAKEOFF_FENCE_FENCE_SPANS_H
#define TAKEOFF_FENCE_FENCE_SPANS_H

#include "base/memory.h"
#include "plot/plot.h"

/* In the direction of its run. A run that goes straight on at one of its points is one span
 * there. */
struct fence_span {
	struct leg leg;
	bool is_gate;
};

/* All spans in the arena, run by run and along each; *count of them. Where another run meets a
 * gate between its posts, a post stands there too and the gate is two. Takes time by the fence's
 * length in cells, not by how many runs may cross. */
const struct fence_span *fence_spans(struct arena *arena, const struct fence *fence, int *count);

#endif
