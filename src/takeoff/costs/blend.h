/* The cheapest way of buying several goods that share lanes, of the menu of each. */
#ifndef TAKEOFF_COSTS_BLEND_H
#define TAKEOFF_COSTS_BLEND_H

#include "takeoff/costs/menu.h"

/* Goods that share the lanes of a kitchen, of which each comes by one of them at least. */
struct blend {
	struct kitchen kitchen;
	const struct want **wants;
	int count;
};

/* Replaces the steps of the wants by those of the best mix, on a tie the one with more of the
 * earlier offers. True where no other is better; else it is one that is no worse than before. */
bool blend_find(const struct blend *blend);

#endif
