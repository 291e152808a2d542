/* The straight spans of a fence, between points where a post must stand whatever the panels
 * measure: ends and corners of its runs, tees (where runs meet or cross) and gates. */
#ifndef TAKEOFF_FENCE_FENCE_SPANS_H
#define TAKEOFF_FENCE_FENCE_SPANS_H

#include "base/memory.h"
#include "plot/plot.h"

/* In the direction of its run; a point at which a run continues straight does not end a span. */
struct fence_span {
	struct leg leg;
	bool is_gate;
};

/* All spans, run by run and along each, in the arena; *count of them. Where another run meets a
 * gate between its posts, there is a post and the gate becomes two. Takes time proportional to
 * the fence's length in cells, however many runs cross. */
const struct fence_span *fence_spans(struct arena *arena, const struct fence *fence, int *count);

#endif
