/* What is bought of all items, and how: the cheapest mix of each good's packs, deliveries of a day
 * shared.
 *
 * Items that are the same thing are bought together, on the day of the first that needs them: equal
 * goods of several rows; topsoil of beds and of lawns, unless the book has other packs for the one
 * than for the other. What the plot tells the price of itself is collected by the piece at that
 * price, in the currency of the book, whatever packs the book has; without a book there is no
 * currency, and so no price. Packs with a price are taken alone where any can meet the order; where
 * none has a price, those with the least surplus, of these the fewest. What the book has no packs
 * for is bought as at the counter (counter.h). */
#ifndef TAKEOFF_COSTS_BUYING_H
#define TAKEOFF_COSTS_BUYING_H

#include "takeoff/costs/offer.h"

/* Gives all items their purchases, in the arena of the list. True where nothing can be bought for
 * less; false where there were too many ways to look at them all, see mix.h. */
bool buying_plan(struct item_list *items, const struct pricing *pricing);

#endif
