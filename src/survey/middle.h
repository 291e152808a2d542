/* Where a region's name stands best: in a run of its own cells that has room for a few characters,
 * as near as there is to the middle of its bounding box. */
#ifndef SURVEY_MIDDLE_H
#define SURVEY_MIDDLE_H

#include "survey/survey.h"

struct middle {
	struct place first; /* the run's first cell */
	int length;         /* of the run, in cells */
};

/* One for each region, in one pass over the runs; in the arena. It can be stopped. */
const struct middle *survey_middles(const struct survey *survey, struct arena *arena);

#endif
