/* Levels of set-out points, where the plot tells how its ground lies: drops below the level string
 * line, as what is read on a staff held there (survey/surface.h). */
#ifndef TAKEOFF_SETOUT_POINT_LEVELS_H
#define TAKEOFF_SETOUT_POINT_LEVELS_H

#include "survey/surface.h"
#include "takeoff/setout/setout.h"
#include "takeoff/walls/wall_levels.h"

struct point_levels {
	nm ground; /* finished, at the point; of a gate at its first post */
	/* Of a corner: those of the walls that turn there, in the point's order of regions. */
	const struct wall_level *walls[4];
	int wall_count;
};

void point_levels_find(struct point_levels *out, const struct setout_point *point,
	const struct surface *surface, const struct wall_levels *walls);

#endif
