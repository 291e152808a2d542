#include "takeoff/costs/costs.h"
#include "takeoff/costs/quote.h"

/* The sections in the order in which their goods are brought. */
static const enum section days[] = { SECTION_OTHER, SECTION_DIG, SECTION_STONE, SECTION_WALLS,
	SECTION_FENCE, SECTION_FILL, SECTION_LAWN };
_Static_assert(sizeof days / sizeof *days == SECTIONS, "each section has its day");

/* Sums over the items of one shipment. */
struct pile {
	struct load load;
	int64_t bulk_drops;
	double weight, volume, packed_weight;
	bool is_there, is_packed, is_weighed;
};

static void pile_add(struct pile *pile, const struct quote *quote)
{
	pile->is_there = true;
	pile->is_weighed = pile->is_weighed && quote->weight > 0;
	pile->weight += quote->weight;
	pile->volume += quote->volume;
	if (quote->pack->kind == PACK_BULK) {
		pile->bulk_drops += load_count(&pile->load, quote->weight, quote->volume);
	} else {
		pile->is_packed = true;
		pile->packed_weight += quote->weight;
	}
}

/* Collected goods share one vehicle, loose or not. */
static int64_t pile_drops(const struct pile *pile, int supplier)
{
	if (supplier == NO_SUPPLIER)
		return load_count(&pile->load, pile->weight, pile->volume);
	return pile->bulk_drops +
		(pile->is_packed ? load_count(&pile->load, pile->packed_weight, 0) : 0);
}

static struct pile pile_of(const struct item_list *items, const struct pricing *pricing,
	enum section section, int supplier)
{
	struct pile pile = { .load = load_of(pricing, supplier), .is_weighed = true };

	for (size_t i = 0; i < items->count; i++) {
		const struct item *item = &items->list[i];
		struct quote quote;

		if (item->pack && item->packs > 0 && item->section == section &&
			item->pack->supplier == supplier &&
			quote_pack(&quote, pricing, item, item->pack))
			pile_add(&pile, &quote);
	}
	return pile;
}

static void price_item(struct costs *costs, const struct pricing *pricing, struct item *item)
{
	struct quote quote;

	item->weight = item->order * item->unit_weight;
	if (!pricing->book || item->order <= 0)
		return;
	if (!quote_best(&quote, pricing, item)) {
		costs->unpriced++;
		return;
	}
	item->pack = quote.pack;
	item->packs = quote.packs;
	item->cost = quote.cost;
	item->weight = quote.weight;
	costs->goods += quote.cost;
}

static int day_of(enum section section)
{
	int day = 0;

	while (days[day] != section)
		day++;
	return day;
}

/* What sums are added to: suppliers as in the book, then what is collected. */
struct summing {
	struct costs *costs;
	const struct pricing *pricing;
	struct supplier_cost *suppliers;
	struct shipment *shipments;
};

static struct cost_sum *supplier_sum(const struct summing *summing, int supplier)
{
	int collected = summing->costs->supplier_count - 1;

	return &summing->suppliers[supplier == NO_SUPPLIER ? collected : supplier].sum;
}

static void add_sum(struct cost_sum *sum, money goods, money delivery)
{
	sum->goods += goods;
	sum->delivery += delivery;
	sum->all += goods + delivery;
}

static void sum_goods(const struct summing *summing, const struct item_list *items)
{
	for (size_t i = 0; i < items->count; i++) {
		const struct item *item = &items->list[i];

		if (!item->pack)
			continue;
		add_sum(&summing->costs->days[day_of(item->section)].sum, item->cost, 0);
		add_sum(supplier_sum(summing, item->pack->supplier), item->cost, 0);
	}
}

static void ship(const struct summing *summing, const struct item_list *items, int day,
	int supplier)
{
	struct costs *costs = summing->costs;
	struct pile pile = pile_of(items, summing->pricing, days[day], supplier);
	struct shipment *shipment = &summing->shipments[costs->shipment_count];
	const struct supplier *from = supplier == NO_SUPPLIER ? NULL :
		&summing->pricing->book->suppliers[supplier];

	if (!pile.is_there)
		return;
	*shipment = (struct shipment){ .section = days[day], .supplier = supplier,
		.name = from ? from->name : NULL, .drops = pile_drops(&pile, supplier),
		.weight = pile.weight, .is_weighed = pile.is_weighed };
	shipment->cost = from ? shipment->drops * from->delivery : 0;
	costs->shipment_count++;
	costs->delivery += shipment->cost;
	add_sum(&costs->days[day].sum, 0, shipment->cost);
	add_sum(supplier_sum(summing, supplier), 0, shipment->cost);
}

static void sum_up(struct costs *costs, const struct item_list *items,
	const struct pricing *pricing)
{
	const struct book *book = pricing->book;
	int all = book->supplier_count + 1;
	struct summing summing = { costs, pricing,
		arena_new(items->arena, (size_t)all, sizeof *summing.suppliers),
		arena_new(items->arena, SECTIONS * (size_t)all, sizeof *summing.shipments) };

	costs->suppliers = summing.suppliers;
	costs->supplier_count = all;
	costs->shipments = summing.shipments;
	for (int i = 0; i < all; i++)
		summing.suppliers[i].name = i + 1 < all ? book->suppliers[i].name : "Collected";
	sum_goods(&summing, items);
	for (int day = 0; day < SECTIONS; day++) {
		for (int i = 0; i < book->supplier_count; i++)
			ship(&summing, items, day, i);
		ship(&summing, items, day, NO_SUPPLIER);
	}
}

void costs_compute(struct costs *out, struct item_list *items, const struct book *book,
	bool is_counted)
{
	const struct pricing pricing = { book, items->allow };

	*out = (struct costs){ .day_count = SECTIONS };
	for (int day = 0; day < SECTIONS; day++)
		out->days[day] = (struct day_cost){ .section = days[day],
			.name = section_words[days[day]].heading };
	for (size_t i = 0; i < items->count; i++)
		price_item(out, &pricing, &items->list[i]);
	if (!book)
		return;
	sum_up(out, items, &pricing);
	for (int day = 0; day < SECTIONS; day++)
		out->days[day].is_any = out->days[day].sum.all > 0;
	out->total = out->goods + out->delivery;
	out->currency = book->currency;
	out->complete = is_counted && out->unpriced == 0;
	out->vehicle_carries = load_of(&pricing, NO_SUPPLIER).carries;
}

/* ---- Figures --------------------------------------------------------------------------------- */

const struct word section_words[] = {
	[SECTION_DIG] = { "dig", "Digging", NULL },
	[SECTION_STONE] = { "stone", "Stone and fabric", NULL },
	[SECTION_WALLS] = { "walls", "Block and adhesive", NULL },
	[SECTION_FILL] = { "fill", "Soil and mulch", NULL },
	[SECTION_LAWN] = { "lawn", "Lawn", NULL },
	[SECTION_FENCE] = { "fence", "Fence and concrete", NULL },
	[SECTION_OTHER] = { "other", "Other goods", NULL },
};
_Static_assert(sizeof section_words / sizeof *section_words == SECTIONS, "each has words");

static const struct figure day_figures[] = {
	{ "section", NULL, NULL, FIELD(WORD, day_cost, section), .words = section_words },
	{ NULL, "By day", NULL, FIELD(TEXT, day_cost, name), .flags = TEXT_WRAPS },
	{ NULL, NULL, NULL, FIELD(TRUTH, day_cost, is_any), .flags = ROW_NEEDED },
	{ "goods", "Goods", NULL, FIELD(MONEY, day_cost, sum.goods) },
	{ "delivery", "Delivery", NULL, FIELD(MONEY, day_cost, sum.delivery) },
	{ NULL, "In all", NULL, FIELD(MONEY, day_cost, sum.all) },
};
const struct figure_table day_cost_table = FIGURE_TABLE(day_cost, day_figures);

static const struct figure supplier_figures[] = {
	{ NULL, "By supplier", NULL, FIELD(TEXT, supplier_cost, name), .flags = TEXT_WRAPS },
	{ NULL, "Goods", NULL, FIELD(MONEY, supplier_cost, sum.goods) },
	{ NULL, "Delivery", NULL, FIELD(MONEY, supplier_cost, sum.delivery) },
	{ NULL, "In all", NULL, FIELD(MONEY, supplier_cost, sum.all), .flags = ROW_NEEDED },
};
const struct figure_table supplier_cost_table = FIGURE_TABLE(supplier_cost, supplier_figures);

static const struct figure shipment_figures[] = {
	{ "section", NULL, NULL, FIELD(WORD, shipment, section), .words = section_words },
	{ "supplier", NULL, NULL, FIELD(TEXT, shipment, name) },
	{ "loads", NULL, NULL, FIELD(COUNT, shipment, drops) },
	{ "weight_kg", NULL, NULL, FIELD(WEIGHT, shipment, weight) },
	{ "weight_known", NULL, NULL, FIELD(TRUTH, shipment, is_weighed) },
	{ "cost", NULL, NULL, FIELD(MONEY, shipment, cost) },
};
static const struct figure_table shipment_table = FIGURE_TABLE(shipment, shipment_figures);

static const struct figure figures[] = {
	{ "currency", NULL, NULL, FIELD(TEXT, costs, currency) },
	{ "complete", NULL, NULL, FIELD(TRUTH, costs, complete) },
	{ "goods", NULL, NULL, FIELD(MONEY, costs, goods) },
	{ "delivery", NULL, NULL, FIELD(MONEY, costs, delivery) },
	{ "total", NULL, NULL, FIELD(MONEY, costs, total) },
	{ "sections", NULL, NULL, FIELDS(ROWS, costs, days, day_count), .table = &day_cost_table },
	{ "shipments", NULL, NULL, FIELDS(ROWS, costs, shipments, shipment_count),
		.table = &shipment_table },
};
const struct figure_table costs_table = FIGURE_TABLE(costs, figures);
