/* Drops of one supplier that goods may share: its packed goods of one day; or what it brings of one
 * good in bulk, which nobody mixes with another on one truck. */
#ifndef TAKEOFF_COSTS_LANE_H
#define TAKEOFF_COSTS_LANE_H

#include "prices/book.h"

/* What a drop, or the vehicle, takes: kg, and m3 of bulk (0: any). */
struct load {
	double carries, holds;
};

/* kg, of what has a known weight, and m3 of bulk. */
struct aboard {
	double weight, volume;
	bool is_used; /* something is aboard, of whatever weight */
};
#define NOTHING_ABOARD ((struct aboard){ 0, 0, false })

struct lane {
	money delivery;       /* of a drop */
	struct load load;     /* what a drop takes */
	struct aboard before; /* what comes by it in any case */
};

/* Loads for a weight and a volume, whichever needs more; at least 1. */
int64_t load_count(const struct load *load, double weight, double volume);
/* Loads so many steps of goods; nothing for 0. */
void aboard_add(struct aboard *aboard, double weight, double volume, double steps);
/* The drops for what is aboard; 0 for nothing. */
int64_t lane_drops(const struct lane *lane, const struct aboard *aboard);
/* What they cost. */
money lane_cost(const struct lane *lane, const struct aboard *aboard);

#endif
