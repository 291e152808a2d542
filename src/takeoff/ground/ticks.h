/* Places along a line, each once, numbered from low to high. Takes O(places added + n log n)
 * time, n being the different ones. */
#ifndef TAKEOFF_GROUND_TICKS_H
#define TAKEOFF_GROUND_TICKS_H

#include "base/length.h"

#include <stddef.h>

struct tick {
	nm at;
	int number; /* from 1; 0: the slot is free */
};

struct ticks {
	nm *list; /* ascending once numbered */
	int count;
	struct tick *slots; /* by a hash of the place */
	size_t slot_count;  /* a power of 2, at least twice the count */
};

/* Adds a place unless it is there. Start zeroed. */
void ticks_add(struct ticks *ticks, nm at);
/* Sorts the list; no more may be added. */
void ticks_number(struct ticks *ticks);
/* The index in the list of a place that was added. */
int ticks_find(const struct ticks *ticks, nm at);
void ticks_fini(struct ticks *ticks);

#endif
