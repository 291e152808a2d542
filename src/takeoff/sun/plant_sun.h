/* Plants that have less sun where they stand than they need: the snag plant-sun, of each kind in
 * each region at the plant that has least. Hours are the mean of the usual days (sun_hours.h), at
 * the cell that a plant stands in; how many a plant needs is where the class begins that the plot
 * names. */
#ifndef TAKEOFF_SUN_PLANT_SUN_H
#define TAKEOFF_SUN_PLANT_SUN_H

#include "takeoff/takeoff.h"

/* takeoff_compute (takeoff.h), and these snags among its own, in their order: for whoever shows
 * snags or compares them. Hours are counted only where the plot tells its latitude and what some
 * plant needs. False where it was stopped (base/stop.h). */
bool takeoff_with_sun(struct takeoff *out, struct arena *arena, const struct plot *plot,
	const struct book *book);

#endif
