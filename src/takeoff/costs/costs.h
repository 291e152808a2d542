/* What the items cost by the price book: packs for each, deliveries, what has to be fetched.
 *
 * Goods come day by day, as the work goes on; a day's goods are those of one section. Bulk fills drops of
 * its own; what else one supplier brings on a day shares drops, by weight. Tax is not reckoned. */
#ifndef TAKEOFF_COSTS_COSTS_H
#define TAKEOFF_COSTS_COSTS_H

#include "prices/book.h"

struct takeoff;

/* What one supplier brings on one day, or what is collected for it. */
struct shipment {
	int day;        /* 0..DAYS - 1 */
	int supplier;   /* NO_SUPPLIER: collected */
	int64_t drops;  /* or trips of the vehicle */
	double weight;  /* kg, of what has a known one */
	bool is_weighed; /* all of it has */
	money cost;     /* 0 where collected */
};

struct costs {
	const struct shipment *shipments; /* by day, then suppliers as in the book, collected last */
	int shipment_count;
	money goods, delivery, total; /* total: the sum of both */
	int unpriced; /* items to order that the book has no price for */
};

/* In the order in which things are brought. */
enum { DAYS = 6 };

/* Chooses the packs of all items and sums up. Without a book nothing has a price. */
void costs_compute(struct takeoff *takeoff, struct arena *arena);

/* The section (enum section) whose goods come on the day. */
int day_section(int day);
/* "Stone and fabric", "Block and adhesive" ... */
const char *day_words(int day);
/* Of what comes on a day, and of what a supplier brings (NO_SUPPLIER: of what is collected). */
struct cost_sum {
	money goods, delivery;
};
struct cost_sum costs_of_day(const struct takeoff *takeoff, int day);
struct cost_sum costs_of_supplier(const struct takeoff *takeoff, int supplier);

#endif
