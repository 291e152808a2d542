/* Raised beds that stand wall to wall and could be one. */
#ifndef TAKEOFF_ADVICE_JOINING_H
#define TAKEOFF_ADVICE_JOINING_H

#include "plot/mirror.h"
#include "takeoff/takeoff.h"

/* Two beds of different letters that are built and filled alike. */
struct joining {
	int region, other;
	struct rectangle box; /* the cells around both */
};
enum { JOININGS_MOST = 64 };

/* The first such pairs in reading order of where they meet; returns how many. */
int joinings_find(struct joining joinings[JOININGS_MOST], const struct takeoff *takeoff);

#endif
