/* One way of buying a good: what a step of a pack holds, costs and weighs, and what it comes by. */
#ifndef TAKEOFF_COSTS_OFFER_H
#define TAKEOFF_COSTS_OFFER_H

#include "takeoff/common/items.h"
#include "takeoff/costs/lane.h"

/* What purchases depend on. */
struct pricing {
	const struct book *book;   /* NULL: none */
	const struct block *allow; /* in force */
	enum units units;          /* of the plot: what is not in the book is sold by them */
};

/* A pack as it is bought: in whole steps. */
struct offer {
	const struct pack *pack;
	double size;           /* of a step, in the unit of the good; over 0 */
	double packs;          /* in a step: 1, but of bulk a part of one */
	money price;           /* of a pack; 0 where it has none */
	double weight, volume; /* of a step: kg, 0 where not known; m3 of bulk, else 0 */
	int lane;              /* that it comes by, of a list of them; NO_LANE: it is collected */
};
enum { NO_LANE = -1 };
enum { COST_MOST = 1000000000 }; /* of whole currency, for one good */

/* The pack as one way to buy so much of a good, in its unit, of which one weighs unit_weight (kg;
 * 0: not known). Sets no lane. False where the pack's unit cannot be turned into the good's, or it
 * would take over 10^12 steps or COST_MOST. */
bool offer_of(struct offer *offer, const struct pricing *pricing, const struct pack *pack,
	enum item_unit unit, double unit_weight, double order);
/* What so many steps cost, rounded to the hundredth. */
money offer_cost(const struct offer *offer, double steps);
/* The fewest steps that hold so much; 0 for 0 or less. */
double offer_steps(const struct offer *offer, double amount);

/* Of a supplier, or of the vehicle for NO_SUPPLIER: as the book says, else as allowed for. */
struct load load_of(const struct pricing *pricing, int supplier);

#endif
