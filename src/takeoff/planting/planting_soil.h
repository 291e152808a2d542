/* How deep the soil of a bed is for what grows in it, and how deep that needs it: as deep as the
 * plant of the bed that needs most. */
#ifndef TAKEOFF_PLANTING_PLANTING_SOIL_H
#define TAKEOFF_PLANTING_PLANTING_SOIL_H

#include "takeoff/ground/fill.h"
#include "takeoff/planting/planting.h"

/* Fills in the soil of the rows. After planting_find. */
void planting_soil_find(struct planting *planting, const struct basis *basis,
	const struct fills *fills);

#endif
