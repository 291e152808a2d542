/* Plants that stand somewhere, to be asked what is near a spot without going over all of them. */
#ifndef TAKEOFF_PLANTING_PLACED_H
#define TAKEOFF_PLANTING_PLACED_H

#include "base/memory.h"
#include "plot/plants.h"
#include "takeoff/common/spot.h"

#include <stdint.h>

/* More are neither placed nor counted. */
enum { PLACED_MOST = 5000000 };

struct placed_plant {
	struct spot at; /* 0 or more */
	int kind;       /* in the plot's order of plants */
	int row;        /* of the planting (planting.h) */
	int next;       /* in the same chain of its kind's table; -1: none */
	bool is_specimen;
};

/* How much ground a plant of a kind takes, from one to the next and grown, both over 0. */
struct placed_size {
	nm spacing, spread;
};

/* Plants by squares of the ground, in a table of chains; made when it is asked. */
struct placed_table {
	nm side;            /* of a square */
	size_t count;
	int *chains;        /* NULL: none is in it yet */
	size_t chain_count; /* a power of 2 */
	size_t seen;        /* of all plants the first so many have been looked at */
};

/* Specimens are few and ask for room as they will be; so they have a table of their own. */
enum { PLACED_DRIFTS, PLACED_SPECIMENS, PLACED_TABLES };

struct placed_kind {
	struct placed_size size;
	struct placed_table tables[PLACED_TABLES];
};

struct placed {
	struct placed_plant *list; /* as they were placed */
	size_t count, capacity;
	struct placed_kind *kinds;
	int kind_count;
	bool is_full;  /* more were to be added than PLACED_MOST */
};

/* Nothing stands. sizes: of each kind. placed_end frees it. */
void placed_begin(struct placed *placed, const struct placed_size *sizes, int kinds);
void placed_end(struct placed *placed);
/* False where there are too many already. */
bool placed_add(struct placed *placed, const struct placed_plant *plant);
/* Whether a plant of this kind, of a drift, would be nearer to one that stands than half of both
 * spacings; to a specimen also than half of both spreads. */
bool placed_is_near(struct placed *placed, struct spot at, int kind);

/* left <= right, top <= bottom; may lie beyond the ground. */
struct placed_ground {
	nm left, top, right, bottom;
};
/* Goes over the plants of a kind in a rectangle of ground and some elsewhere: square by square, or
 * over all of them where they are fewer than the squares. */
struct placed_walk {
	struct placed *placed;
	struct placed_ground ground;
	int kind;
	int table, last; /* of its tables */
	bool is_of_all;
	int64_t left, top, right, bottom; /* squares; over all: chains, in one row */
	int64_t x, y;
	int next;
};
void placed_walk_begin(struct placed_walk *walk, struct placed *placed, int kind,
	const struct placed_ground *ground);
/* NULL: no more. Nothing may be added meanwhile. */
const struct placed_plant *placed_walk_next(struct placed_walk *walk);

/* Whether two spots are nearer to each other than half of `twice`. Exact. */
bool spots_are_nearer(struct spot a, struct spot b, nm twice);

#endif
