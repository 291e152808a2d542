/* Whether a ring of blocks has room along a bed's outline. */
#ifndef TAKEOFF_WALLS_ROOM_H
#define TAKEOFF_WALLS_ROOM_H

#include "plot/mirror.h"
#include "takeoff/walls/ring.h"

/* A bed. */
struct room {
	const struct survey *survey;
	int region;
	const struct outline *outline;
};

/* The least width of a bed with a wall of that depth on either side: some ground is between them,
 * and `inside` at least. */
nm room_width(nm depth, nm inside);

/* Moves *place on to the first side shorter than `least`; false where none is left. */
bool room_short_side(const struct outline *outline, nm cell, nm least, struct side_place *place);
/* The first cell of the bed, in reading order, along a side. */
struct place room_side_cell(const struct outline *outline, struct side_place place);
/* All cells of the bed along it. */
struct rectangle room_side_cells(const struct outline *outline, struct side_place place);

/* True where the bed is everywhere at least `width` wide: the union of squares of that side.
 * Else *at is its first cell outside all of them. A square fits among whole cells wherever the
 * smallest block of cells that holds it does. */
bool room_is_wide(const struct room *room, nm width, struct place *at);

/* True where two walls of that depth fit side by side everywhere, with ground between them.
 * Else *at is a cell of a place where they do not: it is no wider than twice the depth, or two
 * reflex corners face each other across it, closer than that both ways, so that the squares in
 * which their runs lap overlap. Every side must be longer than the depth, which keeps the
 * search for corners short. */
bool room_for_walls(const struct room *room, nm depth, struct place *at);

#endif
