/* Bands of a bed: thirds of the greatest distance that the middle of one of its cells has from the
 * nearest side of it that one can walk up to. One walks up over path, lawn or open ground, where no
 * house stands and no fence is between; gates count as fence, nobody plants in them. A bed that
 * nobody can walk up to is back as a whole. Cells under a house are in no band. Exact: distances
 * are compared by their squares, in halves of a cell. */
#ifndef TAKEOFF_PLANTING_BANDS_H
#define TAKEOFF_PLANTING_BANDS_H

#include "survey/fence_map.h"
#include "survey/house_map.h"
#include "survey/survey.h"

/* A point in halves of a cell, by columns and rows of the plan: lines of the grid are even. */
struct half_point {
	int16_t x, y;
};

struct bands {
	const struct region *region;
	int columns, rows;          /* of the box around it */
	struct half_point *nearest; /* by cell of the box: see bands_nearest */
	int64_t farthest;           /* the greatest distance, squared, in halves */
};

/* Frees with bands_end. Time: O(cells of the box around the region). It can be stopped
 * (base/stop.h). */
void bands_find(struct bands *out, const struct survey *survey, const struct fence_map *fences,
	const struct house_map *houses, int region);
void bands_end(struct bands *bands);

/* Whether a cell of the plan is of the bed, under no house, and in the band. */
bool bands_hold(const struct bands *bands, enum band band, int x, int y);
/* The point one can walk up to that is nearest to the middle of a cell of the bed; false where
 * there is none. */
bool bands_nearest(const struct bands *bands, int x, int y, struct half_point *point);

#endif
