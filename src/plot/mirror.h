/* The mirror: where the images of a cell, a grid point and a rectangle are. The one place for
 * it. */
#ifndef PLOT_MIRROR_H
#define PLOT_MIRROR_H

#include "plot/plot.h"

/* The kind, and the axes' place in half cells: cell x and cell across-1-x, point x and point
 * across-x are images of each other. */
struct mirror {
	enum mirror_kind kind;
	int across, down; /* upright axis at across/2, level axis at down/2 */
};

enum { IMAGES_MOST = 4 };

/* The plot's mirror; an unset axis is in the middle. */
struct mirror mirror_of(const struct plot *plot);
/* The cell and its images, the cell first, each once; they may lie outside the plan. Returns how
 * many, 1 to 4. */
int mirror_cells(const struct mirror *mirror, int x, int y, struct place images[IMAGES_MOST]);
/* The same for a rectangle of cells. */
int mirror_rectangles(const struct mirror *mirror, struct rectangle r,
	struct rectangle images[IMAGES_MOST]);

/* The same for a leg, all forward. */
int mirror_legs(const struct mirror *mirror, struct leg leg, struct leg images[IMAGES_MOST]);
/* Which end of a leg leads, so that the image of the end that leads is the one that leads of the
 * leg's image, whichever way each of them was drawn: 1 the first, -1 the last; 0 where the mirror
 * turns the leg end for end onto itself. Where the mirror turns legs of its direction at all, the
 * end farther from the axis leads, else the left or upper one; with the mirror off the first. */
int mirror_leg_lead(const struct mirror *mirror, struct leg leg);

/* Whether rows, or columns, are mirrored at an axis: the level, or the upright one; and where that
 * one is, in half cells. */
bool mirror_has_axis(const struct mirror *mirror, bool is_level);
int mirror_axis(const struct mirror *mirror, bool is_level);

/* True where the cell and its images inside the plan do not all have one letter. */
bool mirror_is_broken(const struct mirror *mirror, const struct ground *ground, int x, int y);
/* Orbits with more than one letter, each counted once. */
int64_t mirror_faults(const struct mirror *mirror, const struct ground *ground);
/* The first broken cell, in reading order, that is the first of its orbit and is at or after
 * *from; false where there is none. */
bool mirror_next_fault(const struct mirror *mirror, const struct ground *ground, struct place from,
	struct place *fault);

/* Whether a cell is on neither axis that the kind has (for half-turn: not the very centre), so
 * that it is clearly on one side. True where the mirror is off. */
bool mirror_has_side(const struct mirror *mirror, int x, int y);
/* Whether a cell is on the same side as `from` (with four-way: in the same quarter). A cell on
 * an axis is on both its sides; half-turn has a left and a right side, and on the upright axis
 * above is left, below right. A `from` on an axis counts as left of it and above it. */
bool mirror_is_beside(const struct mirror *mirror, struct place from, int x, int y);
/* The same for the middle of a leg as long as a cell's side. `from` is a cell. */
bool mirror_is_leg_beside(const struct mirror *mirror, struct place from, struct leg leg);

/* Turns a mirror key: left-right and top-bottom toggle their own part (both: four-way); half-turn
 * toggles itself and clears the others. */
enum mirror_kind mirror_toggled(enum mirror_kind now, enum mirror_kind pressed);
const char *mirror_word(enum mirror_kind kind);

#endif
