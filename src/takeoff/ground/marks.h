/* Places along a line, each once, numbered from low to high. Time goes with the places added, and with the
 * different ones among them times the logarithm of how many those are. */
#ifndef TAKEOFF_GROUND_MARKS_H
#define TAKEOFF_GROUND_MARKS_H

#include "base/length.h"

#include <stddef.h>

struct mark {
	nm at;
	int number; /* from 1; 0: the slot is free */
};

struct marks {
	nm *list; /* once numbered: growing */
	int count;
	struct mark *slots; /* by a hash of the place */
	size_t slot_count;  /* a power of 2, at least twice the count */
};

/* Start zeroed. Adds a place, unless it is there. */
void marks_add(struct marks *marks, nm at);
/* Sorts the list; no more may be added. */
void marks_number(struct marks *marks);
/* The index in the list of a place that was added. */
int marks_find(const struct marks *marks, nm at);
void marks_fini(struct marks *marks);

#endif
