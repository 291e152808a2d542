/* Plants that have less sun where they stand than they need: the snag plant-sun, of each kind in
 * each region at the plant that has least. Hours are the mean of the usual days (sun_usual.h), at
 * the cell that a plant stands in; how many a plant needs is where the class begins that the plot
 * names. */
#ifndef TAKEOFF_SUN_PLANT_SUN_H
#define TAKEOFF_SUN_PLANT_SUN_H

#include "takeoff/takeoff.h"

/* Counts the hours of sun of a takeoff, which it has from then on, and puts these snags among its
 * own, in their order. Nothing is done where the plot does not tell its latitude, or of no plant
 * that it needs sun. False where it was stopped (base/stop.h). */
bool takeoff_add_sun(struct takeoff *takeoff, struct arena *arena);

/* takeoff_compute (takeoff.h), and takeoff_add_sun: for whoever shows snags or compares them. */
bool takeoff_with_sun(struct takeoff *out, struct arena *arena, const struct plot *plot,
	const struct book *book);

#endif
