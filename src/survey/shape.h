/* Which regions have one shape: the same cells, wherever they lie on the plan. */
#ifndef SURVEY_SHAPE_H
#define SURVEY_SHAPE_H

#include "base/groups.h"
#include "survey/survey.h"

bool shape_is_equal(const struct plot *plot, const struct survey *survey, int a, int b);
/* The same of regions of one shape. */
uint64_t shape_hash(const struct plot *plot, const struct survey *survey, int region);

/* Groups regions that have one shape and one entry of the legend. */
struct groups shape_groups(const struct plot *plot, const struct survey *survey,
	const int *regions, int count);

#endif
