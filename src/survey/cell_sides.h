/* Maps of which cells have something at their right side or below, for whatever lies along the
 * grid: a byte for each cell, and for those left of the plan and above it, whose sides are its
 * edges. */
#ifndef SURVEY_CELL_SIDES_H
#define SURVEY_CELL_SIDES_H

#include "plot/leg.h"

static inline size_t cell_sides_size(int columns, int rows)
{
	return (size_t)(columns + 1) * (size_t)(rows + 1);
}

/* x, y: -1 and more. */
static inline size_t cell_sides_index(int columns, int x, int y)
{
	return (size_t)(y + 1) * (size_t)(columns + 1) + (size_t)(x + 1);
}

/* Adds the bits `right` to the cells left of an upright leg, `below` to those above a level one. */
void cell_sides_mark(unsigned char *sides, int columns, struct leg leg, int right, int below);

#endif
