/* What of the beds is out of an arm's reach. One stands on path, lawn or open ground, at a side
 * that a cell of it and a cell of a bed have in common and that no fence has, and reaches as far
 * as to the middle of a cell, over whatever lies between. Nobody stands where a house does. */
#ifndef SURVEY_REACH_H
#define SURVEY_REACH_H

#include "survey/fence_map.h"
#include "survey/house_map.h"
#include "survey/survey.h"

/* One byte a cell, row by row: 1 for cells of beds whose middle is farther than `arm` from every
 * side one can stand at. Exact. The caller frees. Time: O(cells). It can be stopped
 * (base/stop.h). */
unsigned char *reach_beyond(const struct survey *survey, const struct fence_map *fences,
	const struct house_map *houses, nm arm);

#endif
