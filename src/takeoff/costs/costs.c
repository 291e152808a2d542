#include "takeoff/costs/costs.h"
#include "takeoff/costs/quote.h"
#include "takeoff/common/weight.h"

static const struct {
	enum section section;
	const char *words;
} days[DAYS] = {
	{ SECTION_DIG, "Digging" },
	{ SECTION_STONE, "Stone and fabric" },
	{ SECTION_WALLS, "Block and adhesive" },
	{ SECTION_FENCE, "Fence and concrete" },
	{ SECTION_FILL, "Soil and mulch" },
	{ SECTION_LAWN, "Lawn" },
};

int day_section(int day)
{
	return (int)days[day].section;
}

const char *day_words(int day)
{
	return days[day].words;
}

/* What is met of one shipment, item by item. */
struct pile {
	struct load load;
	int64_t bulk_drops;
	double weight, volume, packed_weight;
	bool is_there, is_packed, is_weighed;
};

static void pile_add(struct pile *pile, const struct quote *quote)
{
	bool is_bulk = quote->pack->kind == PACK_BULK;

	pile->is_there = true;
	pile->is_weighed = pile->is_weighed && quote->weight > 0;
	pile->weight += quote->weight;
	pile->volume += quote->volume;
	if (is_bulk) {
		pile->bulk_drops += load_count(&pile->load, quote->weight, quote->volume);
	} else {
		pile->is_packed = true;
		pile->packed_weight += quote->weight;
	}
}

/* Collected goods all go into one vehicle, loose or not. */
static int64_t pile_drops(const struct pile *pile, int supplier)
{
	if (supplier == NO_SUPPLIER)
		return load_count(&pile->load, pile->weight, pile->volume);
	return pile->bulk_drops +
		(pile->is_packed ? load_count(&pile->load, pile->packed_weight, 0) : 0);
}

static struct pile pile_of(const struct takeoff *takeoff, int day, int supplier)
{
	struct pile pile = { .load = load_of(takeoff, supplier), .is_weighed = true };

	for (int i = 0; i < takeoff->item_count; i++) {
		const struct item *item = &takeoff->items[i];
		struct quote quote;

		if (item->pack && item->packs > 0 && item->section == days[day].section &&
			item->pack->supplier == supplier &&
			quote_pack(&quote, takeoff, item, item->pack))
			pile_add(&pile, &quote);
	}
	return pile;
}

static void shipment_add(struct takeoff *takeoff, struct shipment *into, int day, int supplier)
{
	struct pile pile = pile_of(takeoff, day, supplier);
	struct costs *costs = &takeoff->costs;
	struct shipment shipment = { .day = day, .supplier = supplier, .weight = pile.weight,
		.is_weighed = pile.is_weighed };

	if (!pile.is_there)
		return;
	shipment.drops = pile_drops(&pile, supplier);
	if (supplier != NO_SUPPLIER)
		shipment.cost = shipment.drops * takeoff->book->suppliers[supplier].delivery;
	costs->delivery += shipment.cost;
	into[costs->shipment_count++] = shipment;
}

static void price_item(struct takeoff *takeoff, struct item *item)
{
	struct quote quote;

	item->weight = item->order * item_unit_weight(takeoff, item);
	if (!takeoff->book || item->order <= 0)
		return;
	if (!quote_best(&quote, takeoff, item)) {
		takeoff->costs.unpriced++;
		return;
	}
	item->pack = quote.pack;
	item->packs = quote.packs;
	item->cost = quote.cost;
	item->weight = quote.weight;
	takeoff->costs.goods += quote.cost;
}

static const struct item *items_priced(struct takeoff *takeoff, struct arena *arena)
{
	struct item *items = arena_new(arena, (size_t)takeoff->item_count, sizeof *items);

	for (int i = 0; i < takeoff->item_count; i++) {
		items[i] = takeoff->items[i];
		price_item(takeoff, &items[i]);
	}
	return items;
}

void costs_compute(struct takeoff *takeoff, struct arena *arena)
{
	int suppliers = takeoff->book ? takeoff->book->supplier_count : 0;
	struct shipment *shipments;

	takeoff->costs = (struct costs){ .shipments = NULL };
	takeoff->items = items_priced(takeoff, arena);
	if (!takeoff->book)
		return;
	shipments = arena_new(arena, (size_t)DAYS * (size_t)(suppliers + 1), sizeof *shipments);
	takeoff->costs.shipments = shipments;
	for (int day = 0; day < DAYS; day++) {
		for (int supplier = 0; supplier < suppliers; supplier++)
			shipment_add(takeoff, shipments, day, supplier);
		shipment_add(takeoff, shipments, day, NO_SUPPLIER);
	}
	takeoff->costs.total = takeoff->costs.goods + takeoff->costs.delivery;
}

struct cost_sum costs_of_day(const struct takeoff *takeoff, int day)
{
	struct cost_sum sum = { 0, 0 };

	for (int i = 0; i < takeoff->item_count; i++)
		if (takeoff->items[i].section == days[day].section)
			sum.goods += takeoff->items[i].cost;
	for (int i = 0; i < takeoff->costs.shipment_count; i++)
		if (takeoff->costs.shipments[i].day == day)
			sum.delivery += takeoff->costs.shipments[i].cost;
	return sum;
}

struct cost_sum costs_of_supplier(const struct takeoff *takeoff, int supplier)
{
	struct cost_sum sum = { 0, 0 };

	for (int i = 0; i < takeoff->item_count; i++)
		if (takeoff->items[i].pack && takeoff->items[i].pack->supplier == supplier)
			sum.goods += takeoff->items[i].cost;
	for (int i = 0; i < takeoff->costs.shipment_count; i++)
		if (takeoff->costs.shipments[i].supplier == supplier)
			sum.delivery += takeoff->costs.shipments[i].cost;
	return sum;
}
