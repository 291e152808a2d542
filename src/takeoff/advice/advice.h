/* Other sizes for a bed: with each the wall was laid out, block by block, and needs no cut. */
#ifndef TAKEOFF_ADVICE_ADVICE_H
#define TAKEOFF_ADVICE_ADVICE_H

#include "takeoff/takeoff.h"

enum { ADVICE_SIZES = 2, ADVICE_REACH = 4 };

struct advice {
	/* Of a rectangular bed: the nearest sizes, at most ADVICE_REACH cells off in all; of
	 * two as near, the one of fewer columns first, then of fewer rows. */
	struct place sizes[ADVICE_SIZES]; /* x: columns, y: rows */
	int size_count;
	/* the nearest other side of the plan's cells, half to twice its own; 0: none */
	nm cell;
};

/* Advice for a bed whose wall is laid out. Cannot fail; trial layouts stay in the arena. */
void advice_find(struct advice *out, struct arena *arena, const struct plot *plot,
	const struct takeoff *takeoff, const struct wall *wall);

/* Two raised beds of the same block that stand wall to wall. */
struct joining {
	int region, other;
	int64_t blocks; /* about how many fewer they would take as one bed, 1 or more */
};
enum { JOININGS_MOST = 16 };

/* The first such pairs in reading order of where they meet; returns how many. Joined, they save
 * both runs along what they share, less a block's depth at each of four corners. */
int advice_joinings(struct joining joinings[JOININGS_MOST], const struct takeoff *takeoff);

#endif
