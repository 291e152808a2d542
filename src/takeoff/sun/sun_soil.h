/* Cells of raised beds whose middle is over the wall. What grows in them stands on the soil beside
 * it, so their hours of sun are those of the soil that is nearest: of the cells of their bed whose
 * middle is over soil, the nearest one; of several as near, the one that has least. Where there
 * is none as far as the wall is wide, what comes to the wall's top is kept. */
#ifndef TAKEOFF_SUN_SUN_SOIL_H
#define TAKEOFF_SUN_SUN_SOIL_H

#include "survey/shade.h"
#include "survey/survey.h"

/* A cell over a wall and one of the cells of soil that are nearest to it, by index, row by row. */
struct over_wall {
	size_t wall, soil;
};

struct sun_soil {
	struct over_wall *items; /* those of one cell one after the other; in the arena */
	size_t count, capacity;
};

/* Time: for each cell over a wall the square of how many cells the wall is wide. It can be
 * stopped, as can what made the scene. */
void sun_soil_find(struct sun_soil *out, struct arena *arena, const struct survey *survey,
	const struct shade_scene *scene);

/* Gives each of them what its soil has. */
void sun_soil_take(const struct sun_soil *soil, uint16_t *lit);

#endif
