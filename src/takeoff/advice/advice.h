/* What another size would do for a bed's wall: every size named here was laid out, block by
 * block, and needs no cut. */
#ifndef TAKEOFF_ADVICE_ADVICE_H
#define TAKEOFF_ADVICE_ADVICE_H

#include "takeoff/takeoff.h"

enum { ADVICE_SIZES = 2, ADVICE_REACH = 4 };

struct advice {
	/* Of a rectangular bed: the nearest sizes in cells, at most ADVICE_REACH cells off in
	 * all, fewest first, the smaller bed first where two are as near. */
	struct place sizes[ADVICE_SIZES]; /* x: columns, y: rows */
	int size_count;
	/* the nearest other side of the plan's cells, from half to twice its own; 0: none */
	nm cell;
};

/* Looks for a bed whose wall is laid out. Cannot fail; the arena takes what is laid out
 * meanwhile. */
void advice_find(struct advice *out, struct arena *arena, const struct plot *plot,
	const struct takeoff *takeoff, const struct wall *wall);

/* Two raised beds of one block that stand wall to wall. */
struct joining {
	int region, other;
	int64_t blocks; /* about how many fewer they would take as one bed, 1 or more */
};
enum { JOININGS_MOST = 16 };

/* The first such pairs in reading order of where they meet; returns how many. As one bed they do
 * without the runs along what they share, twice, but for the four corners that one bed has less. */
int advice_joinings(struct joining joinings[JOININGS_MOST], const struct takeoff *takeoff);

#endif
