/* Which of the sun's rays of a day come to the middles of cells, past all that casts shade. Exact
 * but for the rounding of doubles: each thing's shadow at a height is the outline that it has from
 * above, drawn along the ray for as long as the ray is below its top, a convex shape, and what lies
 * in it is found row by row.
 *
 * Time of a ray: O(cells / 64), and the rows of the shadows, for each height at which cells lie. On
 * plans of 200 x 200 cells that is half of a pass that adds 1 to a count of 16 bits for each cell,
 * one after the other, in gardens of some 300 things that cast shade; of several such passes from
 * some 2,000 things on (tests/bench/sun.c). */
#ifndef SURVEY_SHADE_H
#define SURVEY_SHADE_H

#include "base/length.h"
#include "base/memory.h"

#include <stddef.h>
#include <stdint.h>

/* On which cells an occluder casts shade. A raised bed is seen from elsewhere as if it were solid,
 * one rectangle; from within as its wall, four. */
enum casting { CAST_ON_ALL, CAST_ON_LEVEL, CAST_ON_OTHERS };

/* Something solid from the ground up to its height: a rectangle, or a thin sheet where left is
 * right or top is bottom. From the datum, right and down; it may lie beyond the plan. */
struct occluder {
	nm left, top, right, bottom;
	nm height;
	enum casting casting;
	int level; /* on cells of this level alone, or on all but those; of CAST_ON_ALL any */
};

enum { SHADE_NO_LEVEL = 0xFFFF };

struct shade_scene {
	nm cell;
	int columns, rows;
	/* By cell, row by row: its level; SHADE_NO_LEVEL: no ray is looked for. NULL: all are at
	 * the first. */
	const uint16_t *levels;
	const nm *heights; /* of each level: how high above the ground the middles of cells are */
	int level_count;   /* 1 to SHADE_NO_LEVEL */
	const struct occluder *occluders;
	size_t occluder_count;
};

/* Where from a ray comes: the way towards the sun on the plan, of length 1, and how much the ray
 * goes up along it, over 0. */
struct ray {
	double right, down, rise;
};

/* A ray from where the sun stands, height over 0 degrees, on a plan whose up has that bearing. */
struct ray ray_from(double height, double azimuth, double north);

enum { RAYS_MOST = 511 };

/* A scene made ready; all lives in the arena. */
struct shade;
struct shade *shade_new(struct arena *arena, const struct shade_scene *scene);
/* How many of the rays come to the middle of each cell, row by row; RAYS_MOST rays at the most.
 * What cells without a level get means nothing. It can be stopped (base/stop.h), as can
 * shade_new. */
void shade_count(struct shade *shade, const struct ray *rays, int count, uint16_t *lit);

#endif
