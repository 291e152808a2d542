/* What the items cost by the price book: packs for each, deliveries, what is to be collected.
 *
 * The goods of each section come on a day of their own, in the order of the work. Each bulk
 * item fills drops of its own; a supplier's other goods of the day share drops, by weight. Tax
 * is not counted. */
#ifndef TAKEOFF_COSTS_COSTS_H
#define TAKEOFF_COSTS_COSTS_H

#include "takeoff/common/figure.h"
#include "takeoff/common/items.h"

struct cost_sum {
	money goods, delivery, all; /* all: both */
};

/* Of one supplier, or of what is collected: then named "Collected". */
struct supplier_cost {
	const char *name;
	struct cost_sum sum;
};

/* What one supplier brings on one day, or what is collected for it. */
struct shipment {
	enum section section; /* whose goods come on the day */
	int supplier;   /* NO_SUPPLIER: collected */
	const char *name; /* of the supplier; NULL: collected */
	int64_t drops;  /* or trips of the vehicle */
	double weight;  /* kg, of goods whose weight is known */
	bool is_weighed; /* all weights are known */
	money cost;     /* 0 where collected */
};

struct day_cost {
	enum section section;
	const char *name; /* "Digging" */
	struct cost_sum sum;
	bool is_any; /* its sum is over 0 */
};

struct costs {
	/* by day, then suppliers as in the book, collected last */
	const struct shipment *shipments;
	int shipment_count;
	struct day_cost days[SECTIONS]; /* in the order in which things are brought */
	int day_count;
	const struct supplier_cost *suppliers; /* as in the book, then what is collected */
	int supplier_count;
	const char *currency;
	money goods, delivery, total; /* total: the sum of both */
	int unpriced; /* items to order that the book has no price for */
	bool complete; /* all is counted, and has a price */
	double vehicle_carries; /* kg, by the vehicle for collected goods */
};

/* "dig", "Digging". */
extern const struct word section_words[SECTIONS];
extern const struct figure_table costs_table, day_cost_table, supplier_cost_table;

/* Chooses the packs of all items, weighs them and sums up. Without a book nothing has a price.
 * is_counted: no item is missing. */
void costs_compute(struct costs *out, struct item_list *items, const struct book *book,
	bool is_counted);

#endif
