/* Another side of the cells while the plot keeps its measure: the ground is sampled again.
 *
 * The new grid is laid over the old one, datum on datum; across an axis of the mirror, axis on
 * axis, to the nearest half cell. The new plan has every cell whose middle lies in the old plan,
 * at least one in each direction, and each takes the letter that lies under its middle. A middle
 * on a line between two old cells takes the one nearer to axis or datum; one on the axis itself
 * the one at its left or top (with half-turn, right or bottom for the half that is turned onto
 * it). So what matched its mirror image does so again, and an edge moves by half a new cell at
 * most, by three quarters across a mirror; by more only where an axis is less than a cell
 * from the plan's edge. Fences go to the nearest grid points, alike on both sides of an axis; what
 * then has no length is removed. Services and what else is around go there too; levels stay where
 * they were measured, at the same step. A name stays with its region, and a drift
 * with its bed, where any of it is left. A specimen goes to the middle of the new cell that it
 * stands in; of two of a kind in one the first is left. All in whole numbers. */
#ifndef PLOT_EDIT_RESCALE_H
#define PLOT_EDIT_RESCALE_H

#include "plot/mirror.h"

/* One direction of both grids. */
struct scale {
	nm old_cell, new_cell;
	int old_count, new_count; /* cells */
	int old_axis, new_axis;   /* what is laid on what, in half cells; 0 and 0: the datum */
};

struct rescale {
	struct scale across, down;
};

/* What cells of that side, more than 0, would make of the plot. */
struct rescale rescale_of(const struct plot *plot, nm cell);
/* True where both sides have at most SIDE_MOST cells. */
bool rescale_fits(const struct rescale *rescale);
/* New cells that cover ground of more than one letter, or reach over the plan's edge. Where
 * there are none and the plan keeps its size, all is exactly as it was. The ground is the one it
 * was made of. rescale_fits must hold. */
int64_t rescale_rounded(const struct rescale *rescale, const struct ground *ground);
/* True where each point of a fence lies on a point of the new grid. */
bool rescale_keeps_fences(const struct rescale *rescale, const struct plot *plot);
/* The same of what is around: services, houses, shade, things kept, ties, the drop and the level of
 * the finished ground. */
bool rescale_keeps_around(const struct rescale *rescale, const struct plot *plot);
/* The same of specimens, each of which is to stand in the middle of a new cell as it did of an old
 * one. */
bool rescale_keeps_plants(const struct rescale *rescale, const struct plot *plot);
/* Sets the cell and samples the ground; fences and a set axis move with it. rescale_fits must
 * hold. */
void rescale_plot(struct plot *plot, const struct rescale *rescale);
/* The new cell over the middle of an old one, or the nearest to it. */
struct place rescale_cell(const struct rescale *rescale, struct place old);

#endif
