/* How deep the soil of a bed is for what grows in it, and how deep that needs it: as deep as the
 * plant of the bed that needs most. */
#ifndef TAKEOFF_PLANTING_PLANTING_SOIL_H
#define TAKEOFF_PLANTING_PLANTING_SOIL_H

#include "takeoff/planting/planting.h"

/* Fills in the soil of so many rows, by region, whose plants are counted. */
void planting_soil_find(struct planting_row *rows, int count, const struct basis *basis,
	const struct fills *fills);

#endif
