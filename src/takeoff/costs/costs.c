#include "takeoff/costs/costs.h"
#include "takeoff/costs/buying.h"

/* Sums over what comes by one supplier on one day, or over all that comes. */
struct pile {
	struct load load;
	int64_t bulk_drops;
	double weight, volume, packed_weight;
	bool is_there, is_packed, is_weighed;
};

/* Of one kind of pack, or all bulk of one good. */
static void pile_add(struct pile *pile, bool is_bulk, double weight, double volume)
{
	pile->is_there = true;
	pile->weight += weight;
	pile->volume += volume;
	if (is_bulk) {
		pile->bulk_drops += load_count(&pile->load, weight, volume);
	} else {
		pile->is_packed = true;
		pile->packed_weight += weight;
	}
}

static int64_t pile_drops(const struct pile *pile)
{
	return pile->bulk_drops +
		(pile->is_packed ? load_count(&pile->load, pile->packed_weight, 0) : 0);
}

enum { ANYBODY = -2 };

/* What of the purchase the supplier brings: all its bulk at once. */
static void pile_purchase(struct pile *pile, const struct purchase *purchase, int supplier)
{
	double weight = 0, volume = 0;
	bool is_bulk = false;

	for (int i = 0; i < purchase->count; i++) {
		const struct bought *bought = &purchase->list[i];

		if (supplier != ANYBODY && bought->pack->supplier != supplier)
			continue;
		pile->is_weighed = pile->is_weighed && bought->weight > 0;
		if (bought->volume <= 0) {
			pile_add(pile, false, bought->weight, 0);
			continue;
		}
		is_bulk = true;
		weight += bought->weight;
		volume += bought->volume;
	}
	if (is_bulk)
		pile_add(pile, true, weight, volume);
}

static struct pile pile_of(const struct item_list *items, struct load load, int day, int supplier)
{
	struct pile pile = { .load = load, .is_weighed = true };

	for (size_t i = 0; i < items->count; i++) {
		const struct purchase *purchase = items->list[i].purchase;

		if (purchase && purchase->day == day)
			pile_purchase(&pile, purchase, supplier);
	}
	return pile;
}

static void count_loads(struct costs *costs, const struct item_list *items)
{
	const struct load pickup = { block_amount(items->allow, ALLOW_PICKUP_WEIGHT), 0 };
	const struct load truck = { block_amount(items->allow, ALLOW_TRUCK_WEIGHT),
		block_amount(items->allow, ALLOW_TRUCK_VOLUME) };

	costs->is_weighed = true;
	for (int day = 0; day < DAYS; day++) {
		struct day_cost *of_day = &costs->days[day];
		struct pile pile = pile_of(items, truck, day, ANYBODY);

		of_day->weight = pile.weight;
		of_day->is_weighed = pile.is_weighed;
		costs->weight += pile.weight;
		costs->brought += day == DAY_DIG ? 0 : pile.weight;
		costs->is_weighed = costs->is_weighed && pile.is_weighed;
		if (!pile.is_there)
			continue;
		of_day->pickups = load_count(&pickup, pile.weight, 0);
		of_day->trucks = pile_drops(&pile);
	}
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
		const struct purchase *purchase = items->list[i].purchase;

		for (int j = 0; purchase && j < purchase->count; j++) {
			const struct bought *bought = &purchase->list[j];

			add_sum(&summing->costs->days[purchase->day].sum, bought->cost, 0);
			add_sum(supplier_sum(summing, bought->pack->supplier), bought->cost, 0);
			summing->costs->goods += bought->cost;
		}
	}
}

static void ship(const struct summing *summing, const struct item_list *items, int day,
	int supplier)
{
	struct costs *costs = summing->costs;
	struct pile pile = pile_of(items, load_of(summing->pricing, supplier), day, supplier);
	struct shipment *shipment = &summing->shipments[costs->shipment_count];
	const struct supplier *from = supplier == NO_SUPPLIER ? NULL :
		&summing->pricing->book->suppliers[supplier];

	if (!pile.is_there)
		return;
	/* Collected goods share one vehicle, loose or not. */
	*shipment = (struct shipment){ .day = (enum day)day, .section = costs->days[day].section,
		.supplier = supplier, .name = from ? from->name : NULL,
		.drops = from ? pile_drops(&pile) :
			load_count(&pile.load, pile.weight, pile.volume),
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
		arena_new(items->arena, DAYS * (size_t)all, sizeof *summing.shipments) };

	costs->suppliers = summing.suppliers;
	costs->supplier_count = all;
	costs->shipments = summing.shipments;
	for (int i = 0; i < all; i++)
		summing.suppliers[i].name = i + 1 < all ? book->suppliers[i].name : "Collected";
	sum_goods(&summing, items);
	for (int day = 0; day < DAYS; day++) {
		for (int i = 0; i < book->supplier_count; i++)
			ship(&summing, items, day, i);
		ship(&summing, items, day, NO_SUPPLIER);
	}
}

static void weigh_items(struct costs *costs, struct item_list *items)
{
	for (size_t i = 0; i < items->count; i++) {
		struct item *item = &items->list[i];
		const struct purchase *purchase = item->purchase;

		if (purchase && purchase->is_weighed)
			item->weight = purchase->weight;
		purchase = item_purchase(items, item);
		costs->unpriced += purchase && !purchase->is_priced && item->order > 0;
	}
}

void costs_compute(struct costs *out, struct item_list *items, const struct book *book,
	enum units units, bool is_counted)
{
	const struct pricing pricing = { book, items->allow, units };

	*out = (struct costs){ .day_count = DAYS };
	for (int day = 0; day < DAYS; day++)
		out->days[day] = (struct day_cost){ .day = (enum day)day,
			.section = day_section((enum day)day), .name = day_words[day].heading };
	out->cheapest = buying_plan(items, &pricing);
	weigh_items(out, items);
	count_loads(out, items);
	if (!book) {
		out->unpriced = 0;
		return;
	}
	sum_up(out, items, &pricing);
	for (int day = 0; day < DAYS; day++)
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
	[SECTION_PLANTS] = { "plants", "Plants", NULL },
	[SECTION_OTHER] = { "other", "Other goods", NULL },
};
_Static_assert(sizeof section_words / sizeof *section_words == SECTIONS, "each has words");

static const struct figure day_figures[] = {
	{ "section", NULL, NULL, FIELD(WORD, day_cost, section), .words = section_words },
	{ "day", NULL, NULL, FIELD(WORD, day_cost, day), .words = day_words, .flags = ROW_KEY },
	{ NULL, "By day", NULL, FIELD(TEXT, day_cost, name), .flags = TEXT_WRAPS },
	{ NULL, NULL, NULL, FIELD(TRUTH, day_cost, is_any), .flags = ROW_NEEDED },
	{ "goods", "Goods", NULL, FIELD(MONEY, day_cost, sum.goods) },
	{ "delivery", "Delivery", NULL, FIELD(MONEY, day_cost, sum.delivery) },
	{ NULL, "In all", NULL, FIELD(MONEY, day_cost, sum.all) },
};
const struct figure_table day_cost_table = FIGURE_TABLE(day_cost, day_figures);

static const struct figure load_figures[] = {
	{ "section", NULL, NULL, FIELD(WORD, day_cost, section), .words = section_words },
	{ "day", NULL, NULL, FIELD(WORD, day_cost, day), .words = day_words, .flags = ROW_KEY },
	{ "weight_kg", NULL, NULL, FIELD(WEIGHT, day_cost, weight) },
	{ "weight_known", NULL, NULL, FIELD(TRUTH, day_cost, is_weighed) },
	{ "pickup", NULL, NULL, FIELD(COUNT, day_cost, pickups), .flags = ROW_NEEDED },
	{ "truck", NULL, NULL, FIELD(COUNT, day_cost, trucks) },
};
const struct figure_table day_load_table = FIGURE_TABLE(day_cost, load_figures);

static const struct figure supplier_figures[] = {
	{ NULL, "By supplier", NULL, FIELD(TEXT, supplier_cost, name), .flags = TEXT_WRAPS },
	{ NULL, "Goods", NULL, FIELD(MONEY, supplier_cost, sum.goods) },
	{ NULL, "Delivery", NULL, FIELD(MONEY, supplier_cost, sum.delivery) },
	{ NULL, "In all", NULL, FIELD(MONEY, supplier_cost, sum.all), .flags = ROW_NEEDED },
};
const struct figure_table supplier_cost_table = FIGURE_TABLE(supplier_cost, supplier_figures);

static const struct figure shipment_figures[] = {
	{ "section", NULL, NULL, FIELD(WORD, shipment, section), .words = section_words },
	{ "day", NULL, NULL, FIELD(WORD, shipment, day), .words = day_words, .flags = ROW_KEY },
	{ "supplier", NULL, NULL, FIELD(TEXT, shipment, name), .flags = ROW_KEY },
	{ "loads", NULL, NULL, FIELD(COUNT, shipment, drops) },
	{ "weight_kg", NULL, NULL, FIELD(WEIGHT, shipment, weight) },
	{ "weight_known", NULL, NULL, FIELD(TRUTH, shipment, is_weighed) },
	{ "cost", NULL, NULL, FIELD(MONEY, shipment, cost) },
};
static const struct figure_table shipment_table = FIGURE_TABLE(shipment, shipment_figures);

static const struct figure figures[] = {
	{ "currency", NULL, NULL, FIELD(TEXT, costs, currency) },
	{ "complete", NULL, NULL, FIELD(TRUTH, costs, complete) },
	{ "cheapest", NULL, NULL, FIELD(TRUTH, costs, cheapest) },
	{ "goods", NULL, NULL, FIELD(MONEY, costs, goods) },
	{ "delivery", NULL, NULL, FIELD(MONEY, costs, delivery) },
	{ "total", NULL, NULL, FIELD(MONEY, costs, total) },
	{ "sections", NULL, NULL, FIELDS(ROWS, costs, days, day_count), .table = &day_cost_table },
	{ "shipments", NULL, NULL, FIELDS(ROWS, costs, shipments, shipment_count),
		.table = &shipment_table },
};
const struct figure_table costs_table = FIGURE_TABLE(costs, figures);
