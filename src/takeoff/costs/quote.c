#include "takeoff/costs/quote.h"
#include "base/measure.h"

#include <math.h>

static const double PACKS_MOST = 1e12;
/* Keeps a truck that holds next to nothing from overflowing the count. */
static const double LOADS_MOST = 1e6;

struct load load_of(const struct pricing *pricing, int supplier)
{
	const struct book *book = pricing->book;
	struct load load;

	if (supplier == NO_SUPPLIER) {
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

int64_t load_count(const struct load *load, double weight, double volume)
{
	double by_weight = whole(weight / load->carries);
	double by_volume = load->holds > 0 ? whole(volume / load->holds) : 0;

	return (int64_t)fmin(fmax(1, fmax(by_weight, by_volume)), LOADS_MOST);
}

/* The order in the pack's unit; below 0 where it cannot be converted. */
static double order_in(const struct item *item, const struct pack *pack, double unit_weight)
{
	if (pack->unit == item_unit(item))
		return item->order;
	if (pack->unit == UNIT_KG && item_unit(item) == UNIT_M3 && unit_weight > 0)
		return item->order * unit_weight;
	return -1;
}

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

static double pack_volume(const struct pack *pack, double unit_weight)
{
	if (pack->kind != PACK_BULK)
		return 0;
	if (pack->unit == UNIT_M3)
		return pack->size;
	return unit_weight > 0 ? pack->size / unit_weight : 0;
}

bool quote_pack(struct quote *quote, const struct pricing *pricing, const struct item *item,
	const struct pack *pack)
{
	double unit_weight = item->unit_weight;
	double order = order_in(item, pack, unit_weight);
	double step = step_of(pricing, pack);
	double packs = fmax(whole(order / step), 0) * (step / pack->size);

	if (order < 0 || packs > PACKS_MOST || packs * (double)pack->price > 100.0 * COST_MOST)
		return false;
	*quote = (struct quote){ .pack = pack, .packs = packs,
		.cost = llround(packs * (double)pack->price),
		.weight = packs * pack_weight(pack, unit_weight),
		.volume = packs * pack_volume(pack, unit_weight) };
	if (pack->supplier != NO_SUPPLIER && packs > 0) {
		struct load load = load_of(pricing, pack->supplier);

		quote->drops = load_count(&load, quote->weight, quote->volume);
		quote->delivery = quote->drops * pricing->book->suppliers[pack->supplier].delivery;
	}
	return true;
}

bool quote_best(struct quote *quote, const struct pricing *pricing, const struct item *item)
{
	const struct goods *goods = book_goods(pricing->book, &(struct wanted_goods){
		item->good, item->name, item->block, item->length });
	bool is_found = false;

	for (int i = 0; goods && i < goods->pack_count; i++) {
		struct quote next;

		if (!quote_pack(&next, pricing, item, &goods->packs[i]) ||
			(is_found && next.cost + next.delivery >= quote->cost + quote->delivery))
			continue;
		*quote = next;
		is_found = true;
	}
	return is_found;
}
