/* Drawing fences: legs are laid and taken out, gates set and taken out, each with all its mirror
 * images. What falls outside the plan is left out. The runs are then as fence_remake makes them. */
#ifndef PLOT_EDIT_FENCE_LAY_H
#define PLOT_EDIT_FENCE_LAY_H

#include "plot/edit/lay.h"

/* The fences must be of the plot; legs must be straight and lie within the plan. What an act
 * changed is counted in sides of cells, or in gates; 0 means that the fence is as it was. */
struct laid fence_lay(struct plot *plot, struct fence *fence, struct leg leg);
/* Gates that lose a part of their fence are removed. */
struct laid fence_take_out(struct plot *plot, struct fence *fence, struct leg leg);
/* One gate from end to end of the leg, in place of those that are in its way; only where the fence
 * covers it, and so with each image. Images that overlap make one gate. */
struct laid fence_set_gate(struct plot *plot, struct fence *fence, struct leg gate);
/* Takes out all gates that the leg overlaps; the fence stays. */
struct laid fence_take_out_gate(struct plot *plot, struct fence *fence, struct leg leg);

/* What is on the side of the cell `from` is laid with its images over the other sides. from must
 * have a side (mirror_has_side). Where both sides match the fence is as it was. */
void fence_fold(struct plot *plot, struct fence *fence, struct place from);

/* All of a fence, in sides of cells. */
int64_t fence_length(const struct fence *fence);
/* Moves all of a fence; what then lies outside a plan of so many cells is cut off, and a gate
 * that is partly outside is removed. */
void fence_move(struct fence *fence, int right, int down, const struct ground *ground);

#endif
