/* The header: the tube that brings water from the tap to the beds, in a trench along sides of
 * cells.
 *
 * It goes over path, lawn and open ground, along the outlines of beds, fixtures and houses but not
 * through them, and not off the plan; under fences. To each bed it goes the way from the tap that
 * costs least: a side costs 1, but HEADER_DEAR where its trench would take ground from under the
 * wall of a raised bed or from under a fixture that it runs along, or where a post's hole goes
 * through it. So it goes round for up to three feet more for each foot that spares, and along a
 * wall only where that is much longer, or there is no other way.
 *
 * Bed after bed, it takes of ways that cost the same the one that leaves the trench of beds before
 * it last; of those the one that is the least burden from there: its bends, a side under a path,
 * along the plan's edge or to a corner of a raised bed or fixture like a bend, one along a bed, a
 * fixture or a house like two. The ways to several beds are one as far as they go together.
 *
 * It ends at the bed's outline: of a raised bed on a side of it, clear of its corners by the
 * depth of a wall and what of its base is inside, and square to it, so that the sleeve under the
 * wall is straight and the tube comes up in soil; nearer to a corner only where it gets to no other
 * point. A tap within a bed is at that bed already; from there the ways go out through it. Within
 * is where all ground about the tap is of that bed, but for what is outside the plan or in a house:
 * a tap on a house's wall or the plan's edge beside a bed is within it too, and comes down inside
 * the wall of a raised one. Where it runs under a path or the base of a wall it lies in a sleeve
 * (sleeves.h).
 *
 * Common practice, no published source. */
#ifndef TAKEOFF_WATERING_HEADER_H
#define TAKEOFF_WATERING_HEADER_H

#include "survey/house_map.h"
#include "takeoff/common/basis.h"
#include "takeoff/fence/post_holes.h"
#include "takeoff/watering/cost_ring.h"

enum { HEADER_DEAR = 4, HEADER_NO_WAY = -1 };
_Static_assert((int)HEADER_DEAR < (int)RING_SIZE, "a ring holds all that wait");

/* What lies at a side of a cell. */
enum way_kind { WAY_SHUT, WAY_OPEN, WAY_PATH, WAY_EDGE, WAY_CORNER, WAY_BESIDE, WAY_DEAR };

struct header_ways {
	int columns; /* grid points in a row: one more than cells */
	int rows;
	/* Of the best way to each grid point, row by row; HEADER_NO_WAY: none gets there. */
	const int *costs;
	/* enum way_kind of the sides from each grid point to the right and down. */
	const unsigned char *level, *upright;
	int tap;     /* index of the tap's grid point */
	int inside;  /* region of the bed that the tap is within; NO_REGION: none */
};

struct header_ground {
	const struct house_map *houses;
	const struct post_holes *holes;
	nm trench;   /* how wide it is */
};

/* From the tap of the plot to every grid point, in the arena. Time: O(cells + holes). It can be
 * stopped. */
void header_ways_find(struct header_ways *out, struct arena *arena, const struct basis *basis,
	const struct header_ground *ground);

/* A side that leads from a grid point. */
struct header_lead {
	int to;            /* grid point */
	bool is_upright;
	int cost, burden;
};
enum { HEADER_LEADS = 4 };
/* Returns how many sides there are that the header may go along. */
int header_leads(const struct header_ways *ways, int point,
	struct header_lead leads[static HEADER_LEADS]);

/* Ways put together. Start from header_begin, end with header_fini. */
struct header_tree {
	int *from;          /* by grid point: the one before it, 1 added; 0: not in it; owned */
	int *met;           /* while a way is sought: by grid point; owned */
	struct header_node *nodes; /* owned */
	size_t count, capacity;
	struct cost_ring waiting;
};
struct header_tree header_begin(const struct header_ways *ways);
/* Adds the way to a bed. Returns the grid point that it ends at; HEADER_NO_WAY: there is none.
 * Adds to *sides how many it has that were not in yet. Time: O(cells about what is added), at most
 * O(cells). It can be stopped. */
int header_reach(struct header_tree *tree, const struct header_ways *ways,
	const struct basis *basis, int region, int64_t *sides);
/* All legs of it, joined. */
void header_legs(const struct header_tree *tree, const struct header_ways *ways,
	struct legs *legs);
void header_fini(struct header_tree *tree);

#endif
