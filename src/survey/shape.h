/* Which regions have one shape: the same cells, wherever they lie on the plan; and which are
 * images of one another, turned or flipped. */
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

/* A region, and what it has to have in common with its images besides. */
struct shaped {
	int region, kind;
};

/* True where the one is the other, turned or flipped in one of the eight ways (image.h). */
bool shape_is_image(const struct plot *plot, const struct survey *survey, int a, int b);
/* The same of regions that are images of one another. */
uint64_t shape_image_hash(const struct plot *plot, const struct survey *survey, int region);
/* Groups regions of one kind that are images of one another. */
struct groups shape_images(const struct plot *plot, const struct survey *survey,
	const struct shaped *regions, int count);

#endif
