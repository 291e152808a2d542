/* The header: the tube that brings water from the tap to the beds, in a trench along sides of
 * cells.
 *
 * It goes over path, lawn and open ground, along the outlines of beds, fixtures and houses but not
 * through them, and not off the plan; under fences. To each bed it goes the shortest way from the
 * tap; of ways as short, the one with the fewest sides along raised beds, fixtures and houses and
 * under paths. The ways to several beds are one as far as they go together. It ends at the bed's
 * outline. A tap within a bed is at that bed already; from there the ways go out through it. Where
 * it runs under a path or the base of a wall it lies in a sleeve (sleeves.h).
 *
 * Common practice, no published source. */
#ifndef TAKEOFF_WATERING_HEADER_H
#define TAKEOFF_WATERING_HEADER_H

#include "survey/house_map.h"
#include "takeoff/common/basis.h"

/* Of one grid point: where the shortest way to it comes from. */
struct header_step {
	int sides;    /* on the way from the tap */
	int beside;   /* the less, the better of ways as long */
	int from;     /* index of the grid point before; of the tap its own; -1: no way gets here */
};

struct header_ways {
	int columns; /* grid points in a row: one more than cells */
	int rows;
	const struct header_step *steps; /* row by row */
	int tap;     /* index of the tap's grid point */
	int inside;  /* region of the bed that the tap stands in; NO_REGION: none */
};

/* From the tap of the plot to every grid point, in the arena. Time: O(cells). It can be stopped. */
void header_ways_find(struct header_ways *out, struct arena *arena, const struct basis *basis,
	const struct house_map *houses);
/* The grid point on the region's outline with the best way to it, the first in reading order of
 * equals; -1: none has one. */
int header_end(const struct header_ways *ways, const struct basis *basis, int region);

/* Ways put together. Start from header_begin, end with header_fini. */
struct header_tree {
	unsigned char *taken; /* by grid point: the side before it is in; owned */
};
struct header_tree header_begin(const struct header_ways *ways);
/* Adds the way to a grid point. Returns how many sides it has that were not in yet. */
int64_t header_add(struct header_tree *tree, const struct header_ways *ways, int end);
/* All legs of it, joined. */
void header_legs(const struct header_tree *tree, const struct header_ways *ways,
	struct legs *legs);
void header_fini(struct header_tree *tree);

#endif
