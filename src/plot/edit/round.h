/* Round shapes laid in whole cells: a cell is part of one where its middle is. */
#ifndef PLOT_EDIT_ROUND_H
#define PLOT_EDIT_ROUND_H

#include "plot/edit/lay.h"

/* A disc, by its middle in half cells and its diameter in cells. */
struct disc {
	struct place middle;
	int diameter; /* 1 or more */
};

/* The disc whose middle is the cell's, of an even diameter its right lower corner; where the cell
 * is at an axis that the mirror has, that axis. */
struct disc disc_at(const struct mirror *mirror, struct place cell, int diameter);
/* With its middle in the middle of the rectangle. */
struct disc disc_within(struct rectangle r, int diameter);
/* The cells that it lies in; across or down one fewer than its diameter where that is odd and the
 * middle on a line, or even and the middle not. No cell: right is before left. */
struct rectangle disc_cells(const struct disc *disc);
/* All of it, with its images; what falls outside the plan is left out. */
struct laid lay_disc(struct plot *plot, const struct disc *disc, char letter);

/* The rectangle without what is outside quarter circles in its corners, with its images. radius: in
 * cells, at most half of either side. The rectangle must lie inside the plan. */
struct laid lay_rounded(struct plot *plot, struct rectangle r, int radius, char letter);

#endif
