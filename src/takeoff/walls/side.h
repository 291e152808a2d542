/* One side of a bed's outline as masonry: its runs, by which sides go through at its corners,
 * and their bond, remembered so that equal sides are bonded once. */
#ifndef TAKEOFF_WALLS_SIDE_H
#define TAKEOFF_WALLS_SIDE_H

#include "takeoff/walls/bond.h"

/* What a ring is built of. */
struct masonry {
	nm length, depth; /* of its blocks, as laid */
	nm shortest;      /* the shortest piece, from bond_shortest */
	int courses;      /* 1: no second course is laid or bonded with */
};

struct side {
	nm length; /* of the outer face */
	bool first_reflex, last_reflex;     /* its corners */
	bool first_through, last_through;   /* where it goes through in course 1 */
};

/* The run of course 1 along the side; of course 2 where swapped. */
struct bond_run side_run(const struct side *side, nm depth, bool swapped);

struct side_book;

/* An empty book; it and all bonds in it live in the arena. */
struct side_book *side_book_new(struct arena *arena);
/* How the side bonds, without its pieces: of all ways that are tried at its corners few are laid.
 * NULL where a run of it is too short to be laid. */
const struct bond *side_bond(struct side_book *book, const struct side *side,
	const struct masonry *masonry);
/* The same with its pieces; the side must have a bond. */
const struct bond *side_lay(struct side_book *book, const struct side *side,
	const struct masonry *masonry);

#endif
