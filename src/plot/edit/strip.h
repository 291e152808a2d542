/* Strips of whole cells, from edge to edge: put in, so that what stands there gets wider or deeper,
 * or taken out. All that lies beyond moves with its ground.
 *
 * A column that is put in has the letters of the one it stands beside. A leg of a fence that is
 * crossed gets longer or shorter, a gate keeps its width, a name stays in its region. Services
 * and what else is around move with the lines of the grid that they lie on, levels with their
 * ground. With the
 * mirror the strip's image is put in or taken out too, so that what matched does so again. */
#ifndef PLOT_EDIT_STRIP_H
#define PLOT_EDIT_STRIP_H

#include "plot/mirror.h"

struct strip {
	bool is_level; /* rows; else columns */
	bool is_out;   /* taken out; else put in */
	/* About the mirror's axis, half on each side of it; else at `cell` and at its image. The
	 * middle column, its own image, is on the axis in any case. */
	bool is_on_axis;
	int cell;      /* a column, or row, of the plan: that after which cells are put in, or the
	                * first that is taken out */
	int count;     /* columns or rows, 1 or more; an image has as many of its own */
};

enum strip_fault {
	STRIP_FITS,
	STRIP_TOO_LARGE, /* the plan would have more than SIDE_MOST */
	STRIP_TOO_FEW,   /* so many are not there, or none would be left */
	STRIP_UNEVEN     /* a half-turn about a line cannot part an odd number of cells */
};
enum strip_fault strip_check(const struct plot *plot, const struct strip *strip);
/* How many columns or rows the plan then has; 0 where so many are not there to be taken out. */
int strip_side(const struct plot *plot, const struct strip *strip);
/* Where the cell goes, or what is nearest to it then. */
struct place strip_cell(const struct plot *plot, const struct strip *strip, struct place cell);
/* Puts in or takes out; a set axis moves along, or is unset where none of its ground is left.
 * strip_check must find that it fits. */
void strip_do(struct plot *plot, const struct strip *strip);

#endif
