/* Laying ground: each act changes cells and all their mirror images, to one letter. Images outside
 * the plan are left out. */
#ifndef PLOT_EDIT_LAY_H
#define PLOT_EDIT_LAY_H

#include "plot/mirror.h"

/* What an act did. */
struct laid {
	int64_t changed; /* cells whose letter is another now, names and plants that came or went */
	bool outside;    /* some image fell outside the plan, and was left out */
};

/* One cell and its images, added up in *laid; the cell may lie outside the plan. */
void lay_cell(struct plot *plot, const struct mirror *mirror, struct place at, char letter,
	struct laid *laid);

/* The same for a rectangle. */
void lay_piece(struct plot *plot, const struct mirror *mirror, struct rectangle r, char letter,
	struct laid *laid);

/* letter: OPEN_GROUND or a legend letter. The rectangle, given by any two opposite corners' cells,
 * must lie inside the plan; so must x, y. */
struct laid lay_rectangle(struct plot *plot, struct rectangle r, char letter);
/* Only the rim of the rectangle, so many cells thick, 1 or more; all of it where nothing is left
 * within. */
struct laid lay_frame(struct plot *plot, struct rectangle r, int thickness, char letter);
/* The 4-connected patch of one letter around x, y, and the images of that patch. */
struct laid lay_flood(struct plot *plot, int x, int y, char letter);

/* Folds the plan: every cell on the side of x, y is laid with its images over the others. x, y
 * must have a side (mirror_has_side). Fences are folded by fence_fold. */
struct laid lay_fold(struct plot *plot, int x, int y);

/* The 4-connected patch of one letter around a cell of the ground, row by row, each one a rectangle
 * one cell high; the caller frees them. The ground is as it was. */
struct rectangle *lay_patch(struct ground *ground, struct place at, size_t *count);

bool rectangle_holds(struct rectangle r, struct place at);
/* The least that has both. */
struct rectangle rectangle_around(struct rectangle a, struct rectangle b);
struct rectangle rectangle_between(int x0, int y0, int x1, int y1);
/* A straight run `width` cells wide from one cell as far as the other, level or upright,
 * whichever way is longer (level where they are alike). It is centred on the cell it starts at;
 * of an even width the odd cell lies on the side of the other cell, or else right or below. It
 * may reach beyond the plan. */
struct rectangle rectangle_run(struct place from, struct place to, int width);
/* The same, but where it starts at an axis that it goes along its middle is on that axis; it is a
 * cell wider then where its width cannot lie evenly about it. */
struct rectangle rectangle_run_mirrored(const struct mirror *mirror, struct place from,
	struct place to, int width);
/* How wide it is together with an image that it meets, of a level one: down; its own width where
 * there is none such. */
int rectangle_mirrored_width(const struct mirror *mirror, struct rectangle r, bool is_level);
/* What of it lies within the ground. */
struct rectangle rectangle_within(struct rectangle r, const struct ground *ground);

#endif
