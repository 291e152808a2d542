/* What is bought, in rows that panel, text and JSON all print alike.
 *
 * spoil                   loose, what is hauled away; nothing spare
 * block.wall, block.cap   a row per size: laid as bought by the cut list, breakage spare
 * adhesive.cartridge      laid: length of bead over that of a cartridge; whole ones ordered
 * soil.NAME               a row per part of the mixes: in place, settlement spare; topsoil that was dug on
 *                         the plot is reused
 * mulch                   in place, nothing spare
 * fence.post, .panel, .gate, .concrete, .gravel, .bracket, .hinge, .latch, .bolt   as fencing_items says
 *
 * and those that other trades add from files of their own: stone.h, fabric.h, liner.h, edging.h, lawn.h. */
#ifndef TAKEOFF_ITEMS_H
#define TAKEOFF_ITEMS_H

#include "takeoff/takeoff.h"

/* Fills items of *takeoff from what its trades have counted. */
void items_compute(struct takeoff *takeoff, struct arena *arena, const struct plot *plot);

#endif
