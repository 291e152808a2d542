#include "takeoff/costs/offer.h"
#include "base/measure.h"

#include <math.h>

static const double STEPS_MOST = 1e12;

struct load load_of(const struct pricing *pricing, int supplier)
{
	const struct book *book = pricing->book;
	struct load load = { 0, 0 };

	if (supplier == NO_SUPPLIER) {
		if (book)
			load = (struct load){ book->vehicle.carries, book->vehicle.holds };
		if (load.carries <= 0)
			load.carries = block_amount(pricing->allow, ALLOW_PICKUP_WEIGHT);
		return load;
	}
	load = (struct load){ book->suppliers[supplier].carries, book->suppliers[supplier].holds };
	if (load.carries <= 0)
		load.carries = block_amount(pricing->allow, ALLOW_TRUCK_WEIGHT);
	if (load.holds <= 0)
		load.holds = block_amount(pricing->allow, ALLOW_TRUCK_VOLUME);
	return load;
}

/* How many of the good's units a unit of the pack is; 0 where that cannot be known. */
static double units_in(const struct pack *pack, enum item_unit unit, double unit_weight)
{
	if (pack->unit == unit)
		return 1;
	return pack->unit == UNIT_KG && unit == UNIT_M3 && unit_weight > 0 ? 1 / unit_weight : 0;
}

/* In the pack's unit. */
static double step_of(const struct pricing *pricing, const struct pack *pack)
{
	if (pack->kind != PACK_BULK)
		return pack->size;
	if (pack->step > 0)
		return pack->step;
	return pack->unit == UNIT_M3 ? block_amount(pricing->allow, ALLOW_TRUCK_STEP) : pack->size;
}

static double pack_weight(const struct pack *pack, double unit_weight)
{
	if (pack->weight > 0)
		return pack->weight;
	return pack->unit == UNIT_KG ? pack->size : pack->size * unit_weight;
}

/* Of what is loose. */
static double pack_volume(const struct pack *pack, enum item_unit unit, double unit_weight)
{
	if (pack->kind != PACK_BULK || unit != UNIT_M3)
		return 0;
	return pack->size * units_in(pack, unit, unit_weight);
}

double offer_steps(const struct offer *offer, double amount)
{
	return fmax(whole(amount / offer->size), 0);
}

money offer_cost(const struct offer *offer, double steps)
{
	return llround(steps * offer->packs * (double)offer->price);
}

bool offer_of(struct offer *offer, const struct pricing *pricing, const struct pack *pack,
	enum item_unit unit, double unit_weight, double order)
{
	double step = step_of(pricing, pack), packs = step / pack->size, steps;

	*offer = (struct offer){ .pack = pack, .size = step * units_in(pack, unit, unit_weight),
		.packs = packs, .price = pack->price == NO_PRICE ? 0 : pack->price,
		.weight = packs * pack_weight(pack, unit_weight),
		.volume = packs * pack_volume(pack, unit, unit_weight), .lane = NO_LANE };
	if (offer->size <= 0)
		return false;
	steps = offer_steps(offer, order);
	return steps <= STEPS_MOST &&
		steps * packs * (double)offer->price <= 100.0 * COST_MOST;
}
