/* The gate that is offered where one cell is meant. */
#ifndef EDITOR_ACTS_GATE_OFFER_H
#define EDITOR_ACTS_GATE_OFFER_H

#include "plot/plot.h"

/* A gate with the side of a cell in it that the fence covers: of the fewest cells that leave as
 * much clear as is allowed for a gate, images in the mirror that it overlaps counted in; one gate
 * about the axis rather than two beside it, where that takes a cell more at most. Of such gates the
 * one with the side nearest to its middle, then the first. Where the fence does not go on for so
 * long, all of it. Of a fence of a plot in force (prices/in_force.h). */
struct leg gate_offer(const struct plot *plot, const struct fence *fence, struct leg side);

#endif
