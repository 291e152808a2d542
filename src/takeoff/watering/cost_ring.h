/* Grid points that wait to be walked on from, by what the ways to them cost: all that wait are
 * less than RING_SIZE apart. */
#ifndef TAKEOFF_WATERING_COST_RING_H
#define TAKEOFF_WATERING_COST_RING_H

#include "base/memory.h"

#include <stdbool.h>

enum { RING_SIZE = 5 };

/* Start zeroed. */
struct cost_ring {
	struct {
		int *points; /* owned */
		size_t count, capacity;
	} of[RING_SIZE];
	size_t count; /* of all */
};

void cost_ring_add(struct cost_ring *ring, int cost, int point);
/* Takes one of that cost out; false: there is none. */
bool cost_ring_take(struct cost_ring *ring, int cost, int *point);
void cost_ring_clear(struct cost_ring *ring);
void cost_ring_fini(struct cost_ring *ring);

#endif
