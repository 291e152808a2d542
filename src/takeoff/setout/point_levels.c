#include "takeoff/setout/point_levels.h"

void point_levels_find(struct point_levels *out, const struct setout_point *point,
	const struct surface *surface, const struct wall_levels *walls)
{
	*out = (struct point_levels){ .ground = surface_finished(surface, point->at.x,
		point->at.y) };
	for (int i = 0; point->kind == SETOUT_CORNER && i < point->region_count; i++) {
		const struct wall_level *wall = wall_level_of(walls, point->regions[i]);

		if (wall)
			out->walls[out->wall_count++] = wall;
	}
}
