/* The header of a whole garden, as watering.h tells it: from the tap to the beds, its trench and
 * sleeves, under their walls, and within them to their lines. */
#ifndef TAKEOFF_WATERING_WATER_HEADER_H
#define TAKEOFF_WATERING_WATER_HEADER_H

#include "takeoff/watering/watering.h"

/* Fills in all of it, of beds with their lines and of their zones, which are those of the watering;
 * adds the snag water-cut-off. It can be stopped. */
void water_header_find(struct watering *out, struct watered *beds, struct water_zone *zones,
	const struct basis *basis, const struct water_ground *ground);

#endif
