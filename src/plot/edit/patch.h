/* A rectangle of ground lifted off a plot: to be turned, flipped and stamped elsewhere. */
#ifndef PLOT_EDIT_PATCH_H
#define PLOT_EDIT_PATCH_H

#include "plot/edit/lay.h"

/* Its letters, open ground included; ground_fini frees it. */
struct ground patch_of(const struct plot *plot, struct rectangle r);
/* A quarter turn clockwise. */
void patch_turn(struct ground *patch);
/* Left becomes right; or top becomes bottom. */
void patch_flip(struct ground *patch, bool across);

/* Lays every cell of the patch, its top left cell at x, y, with all images. What falls outside
 * the plan is left out. Where the patch meets its own image, the letter from the side of x, y
 * stays. */
struct laid patch_stamp(struct plot *plot, const struct ground *patch, int x, int y);

#endif
