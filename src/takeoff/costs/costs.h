/* What the items cost by the price book: packs for each, deliveries, what is to be collected; and
 * what is to be carried, with a book or without.
 *
 * Goods come on the days of days.h. Each good in bulk fills drops of its own; a supplier's other
 * goods of the day share drops, by weight. Tax is not counted. */
#ifndef TAKEOFF_COSTS_COSTS_H
#define TAKEOFF_COSTS_COSTS_H

#include "takeoff/costs/days.h"

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
	enum day day;
	enum section section; /* whose goods come on the day */
	int supplier;   /* NO_SUPPLIER: collected */
	const char *name; /* of the supplier; NULL: collected */
	int64_t drops;  /* or trips of the vehicle */
	double weight;  /* kg, of goods whose weight is known */
	bool is_weighed; /* all weights are known */
	money cost;     /* 0 where collected */
};

/* All goods of a day, whoever brings them, priced or not. */
struct day_cost {
	enum day day;
	enum section section;
	const char *name; /* "Digging" */
	struct cost_sum sum;
	bool is_any;    /* its sum is over 0 */
	double weight;  /* kg, of goods whose weight is known */
	bool is_weighed; /* all weights are known */
	int64_t pickups; /* loads, if all came in the pickup that is allowed for; 0: no goods */
	int64_t trucks;  /* the same in trucks, each loose good by itself */
};

struct costs {
	/* by day, then suppliers as in the book, collected last; none without a book */
	const struct shipment *shipments;
	int shipment_count;
	struct day_cost days[DAYS]; /* in the order in which things are brought */
	int day_count;
	const struct supplier_cost *suppliers; /* as in the book, then what is collected */
	int supplier_count;
	const char *currency;
	money goods, delivery, total; /* total: the sum of both */
	int unpriced; /* items to order that the book has no price for */
	bool complete; /* all is counted, and has a price */
	bool cheapest; /* no other mix of packs costs less; false: not all were looked at */
	double weight; /* kg, of all goods whose weight is known */
	double brought; /* of that, what is not taken away: all but the spoil, as it is ordered */
	bool is_weighed; /* all weights are known */
	double vehicle_carries; /* kg, by the vehicle for collected goods */
};

/* "dig", "Digging". */
extern const struct word section_words[SECTIONS];
extern const struct figure_table costs_table, day_cost_table, supplier_cost_table, day_load_table;

/* Buys all items, weighs them and sums up. Without a book nothing has a price. units: of the plot.
 * is_counted: no item is missing. */
void costs_compute(struct costs *out, struct item_list *items, const struct book *book,
	enum units units, bool is_counted);

#endif
