/* Hours of sun in the mean of the usual days (sun_hours.h), without the days themselves. A takeoff
 * has one: whoever asks for hours takes those that are there, so that all show the same. */
#ifndef TAKEOFF_SUN_SUN_USUAL_H
#define TAKEOFF_SUN_SUN_USUAL_H

#include "takeoff/sun/sun_hours.h"

enum { SUN_NO_STEPS = 0xFFFF };

struct sun_usual {
	/* By cell, row by row: the steps with sun of all those days; SUN_NO_STEPS where it has no
	 * figure. */
	const uint16_t *steps;
	size_t cells;
	const struct sun_region *regions; /* as sun_hours has them, without hours by day */
	int region_count;
	int64_t class_cells[SUN_CLASSES];
	size_t boxes; /* how many things cast shade: a measure of what counting takes */
};

/* Those that the takeoff has (plant_sun.h), else they are counted, into the arena. There is a
 * latitude. NULL where it was stopped. */
const struct sun_usual *sun_usual(const struct takeoff *takeoff, struct arena *arena);

/* The mean of a day that comes of the steps of a cell, in hours: as sun_mean. */
double sun_usual_mean(int steps);

#endif
