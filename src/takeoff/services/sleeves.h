/* Where a line to lay runs under paths, fixtures and the bases of walls: a sleeve is laid there, so
 * that nothing is taken up again. */
#ifndef TAKEOFF_SERVICES_SLEEVES_H
#define TAKEOFF_SERVICES_SLEEVES_H

#include "survey/cover.h"
#include "takeoff/common/basis.h"
#include "takeoff/common/figure.h"
#include "takeoff/ground/zones.h"

/* A straight one, from its left or upper end. */
struct sleeve {
	struct spot from, to;
	nm length;
};

/* The sleeves along the legs of one line, leg by leg, in the basis' arena; *count of them. The line
 * runs under what is built where that lies on both sides of it: along the edge of a path it runs
 * beside it. A sleeve goes on past either side as far as is allowed for, but not past the end of
 * its leg; where two would meet there is one. legs: joined (legs_join). Time: O(pieces of ground,
 * and for each the rows and columns with legs that it reaches, all times the logarithm of legs; and
 * what lies along the legs, to be sorted). It can be stopped. */
const struct sleeve *sleeves_find(const struct basis *basis, const struct zones *zones,
	const struct cover *ground, const struct legs *legs, int *count);

extern const struct figure_table sleeve_table;

#endif
