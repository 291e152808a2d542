/* Where one can walk: over path, lawn and open ground, from side to side of cells, and through the
 * gates of fences but not over fences. */
#ifndef SURVEY_WAY_H
#define SURVEY_WAY_H

#include "survey/fence_map.h"
#include "survey/survey.h"

/* Whether one walks over ground of an enum plot_class. */
bool way_is_over(unsigned int class);
/* One byte a cell, row by row: 1 for cells that one can walk to from outside the plan. The caller
 * frees. It can be stopped (base/stop.h). */
unsigned char *way_from_outside(const struct survey *survey, const struct fence_map *fences);

#endif
