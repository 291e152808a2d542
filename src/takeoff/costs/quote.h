/* One way of buying one item: how many packs, at what cost, in how many drops. */
#ifndef TAKEOFF_COSTS_QUOTE_H
#define TAKEOFF_COSTS_QUOTE_H

#include "takeoff/common/items.h"

/* What prices depend on. */
struct pricing {
	const struct book *book;
	const struct block *allow; /* in force */
};

struct quote {
	const struct pack *pack;
	double packs;     /* whole; of bulk in pack sizes, in whole steps */
	money cost;       /* of the packs */
	double weight;    /* kg of the packs; 0: not known */
	double volume;    /* m3 of bulk, else 0 */
	int64_t drops;    /* if nothing else comes with it; 0: collected, or nothing to buy */
	money delivery;   /* of these drops */
};

/* What a drop, or the vehicle, takes: kg, and m3 of bulk (0: any). */
struct load {
	double carries, holds;
};

/* The fewest packs that cover the order: one fewer, or for bulk one step less, would not. False
 * where the pack's unit does not fit the item's, or the cost would exceed COST_MOST. */
bool quote_pack(struct quote *quote, const struct pricing *pricing, const struct item *item,
	const struct pack *pack);
/* The cheapest way with its delivery, on a tie the earlier in the book. False where there is
 * none. */
bool quote_best(struct quote *quote, const struct pricing *pricing, const struct item *item);

/* Of a supplier, or of the vehicle for NO_SUPPLIER: as the book says, else as allowed for. */
struct load load_of(const struct pricing *pricing, int supplier);
/* Loads for a weight and a volume, whichever needs more; at least 1. */
int64_t load_count(const struct load *load, double weight, double volume);

enum { COST_MOST = 1000000000 }; /* of whole currency, for one item */

#endif
