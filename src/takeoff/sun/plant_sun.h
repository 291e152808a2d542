/* Plants that have less sun where they stand than they need: the snag plant-sun, of each kind in
 * each region at the plant that has least. Hours are the mean of the usual days (sun_hours.h), at
 * the cell that a plant stands in; how many a plant needs is where the class begins that the plot
 * names. */
#ifndef TAKEOFF_SUN_PLANT_SUN_H
#define TAKEOFF_SUN_PLANT_SUN_H

#include "takeoff/takeoff.h"

/* Adds them to the snags of a takeoff, in their order. Hours are counted only where the plot tells
 * its latitude and what some plant needs. False where it was stopped (base/stop.h). */
bool plant_sun_check(struct takeoff *takeoff);

#endif
