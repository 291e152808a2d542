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
	bool mirrored; /* each of its courses must be its own image */
};

/* A cap on a side of a wall. */
struct capped {
	struct side wall;
	struct masonry masonry; /* of the wall */
	struct masonry cap;     /* of one course */
	bool first_through, last_through; /* where the cap's run goes through */
};

/* The run of course 1 along the side; of course 2 where swapped. */
struct bond_run side_run(const struct side *side, nm depth, bool swapped);
/* The cap's run. */
struct bond_run side_cap_run(const struct capped *capped);

struct side_book;

/* An empty book; it and all bonds in it live in the arena. */
struct side_book *side_book_new(struct arena *arena);
/* How the side bonds, without its pieces: of all ways that are tried at its corners few are laid.
 * NULL where it cannot be laid so: a run of it is too short. */
const struct bond *side_bond(struct side_book *book, const struct side *side,
	const struct masonry *masonry);
/* The same with its pieces; the side must have a bond. */
const struct bond *side_lay(struct side_book *book, const struct side *side,
	const struct masonry *masonry);
/* How a cap bonds with the wall's last course, as `odd`, with its pieces. NULL where its run is too
 * short. The wall must have a bond. */
const struct bond *side_cap(struct side_book *book, const struct capped *capped);

#endif
