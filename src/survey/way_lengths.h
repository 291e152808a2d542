/* How far a barrow goes from where deliveries are put down: along rows and columns of cells, over
 * path, lawn and open ground and through the gates of fences, not through houses. How wide the way
 * is, nothing is asked.
 *
 * A drop on the plan's edge lies outside it: from there a barrow may go round the plan too, but
 * where a house is in the way. */
#ifndef SURVEY_WAY_LENGTHS_H
#define SURVEY_WAY_LENGTHS_H

#include "survey/fence_map.h"
#include "survey/house_map.h"
#include "survey/survey.h"

struct way_lengths {
	int columns, rows;
	const int *cells; /* of the plan, with a ring of cells round it */
};

/* From a grid point of the plan. houses: with a margin of a cell or more. Lives as long as the
 * arena is not cleared. Time: O(cells). It can be stopped (base/stop.h). */
struct way_lengths way_lengths_from(const struct survey *survey, const struct fence_map *fences,
	const struct house_map *houses, struct place drop, struct arena *arena);
/* How many cells it is from the drop to the middle of this one, -1,-1 to columns,rows, down and
 * across: half ones at either end add up to one. 0: no barrow gets there. */
int way_length_at(const struct way_lengths *lengths, int x, int y);

#endif
