/* How goods are sold where the price book says nothing of it: pieces whole; loose goods in the
 * steps that are allowed for, stone by quarter tons (of 2,000 lb) or tonnes; what is less than a
 * step in bags; spoil as it is; liner in whole rolls; other areas, lengths and weights in whole
 * units. Common practice, no published source. */
#ifndef TAKEOFF_COSTS_COUNTER_H
#define TAKEOFF_COSTS_COUNTER_H

#include "takeoff/costs/offer.h"

/* The pack, without a price, to ask for when so much of the item is wanted; its words may be in the
 * arena. */
struct pack counter_pack(struct arena *arena, const struct pricing *pricing,
	const struct item *item, double order);

#endif
