/* A rectangle of ground lifted off a plot, or one region, with the names and plants
 * on it: to be turned, flipped and stamped elsewhere. */
#ifndef PLOT_EDIT_PATCH_H
#define PLOT_EDIT_PATCH_H

#include "plot/edit/lay.h"

/* In place of a letter: what lies in the rectangle around a region and is not of it. */
#define PATCH_NOTHING '\0'

struct patch {
	struct ground ground; /* its letters, open ground included, or PATCH_NOTHING */
	struct names names;   /* by cells of the patch */
	struct plants plants; /* the same: specimens, and drifts of single beds */
};

struct patch patch_of(const struct plot *plot, struct rectangle r);
/* The region, or patch of open ground, around a cell; *r is the rectangle around it. */
struct patch patch_of_region(struct plot *plot, struct place at, struct rectangle *r);
void patch_fini(struct patch *patch);
/* A quarter turn clockwise. */
void patch_turn(struct patch *patch);
/* Left becomes right; or top becomes bottom. */
void patch_flip(struct patch *patch, bool across);

/* Lays every cell of the patch, its top left cell at x, y, with all images. What falls outside
 * the plan is left out. Where the patch meets its own image, the letter from the side of x, y
 * stays. Names come along, but to no image; those that it covers stay with what is left of their
 * region, or go. Plants come with their images; specimens that those cover go, drifts stay with
 * what is left of their bed. */
struct laid patch_stamp(struct plot *plot, const struct patch *patch, int x, int y);
/* Lifts what lies where `shape`, its top left cell at x, y, has letters, to open ground: with its
 * images and the plants on all of it, and without the names on it. All of that must
 * lie inside the plan. */
struct laid patch_lift(struct plot *plot, const struct ground *shape, int x, int y);
/* Lays `to` there in place of one letter, with all images. */
struct laid patch_reletter(struct plot *plot, const struct ground *shape, int x, int y, char letter,
	char to);

#endif
