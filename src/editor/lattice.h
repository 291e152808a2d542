/* Cells of one direction taken together, so many at a time, counted from a mirror's axis both ways:
 * what is symmetric about the axis stays so. Where the axis goes through the middle of a cell, that
 * cell is a piece of its own. Pure. */
#ifndef EDITOR_LATTICE_H
#define EDITOR_LATTICE_H

struct lattice {
	int axis; /* in half cells, 0 or more */
	int size; /* cells of a piece, 1 or more */
};

/* The piece that holds a cell: 0 begins at the axis, those before it are below 0. */
int lattice_piece(const struct lattice *lattice, int cell);
/* The first cell of a piece; that of the next one is the first beyond it. */
int lattice_first(const struct lattice *lattice, int piece);

#endif
