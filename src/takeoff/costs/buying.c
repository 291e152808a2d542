#include "takeoff/costs/buying.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/costs/counter.h"
#include "takeoff/costs/days.h"
#include "takeoff/costs/mix.h"

#include <string.h>

/* A purchase in the making. */
struct order {
	const struct item *first;
	struct wanted_goods goods;  /* what it is, the same for all items of the order */
	double amount;
	struct purchase *purchase;
	struct offer *offers;       /* OFFERS_MOST of them */
	double *steps;
	int count;
};

struct buying {
	struct item_list *items;
	const struct pricing *pricing;
	struct order *orders;
	int count;
	struct lane *lanes;         /* of one day; with room for one an offer */
	int *suppliers, *owners;    /* by lane; owner: the order whose bulk it is, -1: none */
	int lane_count;
};

/* ---- What is the same thing ------------------------------------------------------------------ */

static bool is_same_pack(const struct pack *a, const struct pack *b)
{
	return a->kind == b->kind && a->unit == b->unit && a->price == b->price &&
		a->supplier == b->supplier && !(a->size < b->size || a->size > b->size) &&
		!(a->step < b->step || a->step > b->step) &&
		!(a->weight < b->weight || a->weight > b->weight);
}

static bool are_alike(const struct goods *a, const struct goods *b)
{
	if (a->pack_count != b->pack_count || strcmp(a->spec, b->spec) != 0)
		return false;
	for (int i = 0; i < a->pack_count; i++)
		if (!is_same_pack(&a->packs[i], &b->packs[i]))
			return false;
	return true;
}

static const struct wanted_goods topsoil = { .good = GOOD_SOIL, .name = "topsoil" };
static const struct wanted_goods lawn_topsoil = { .good = GOOD_LAWN_TOPSOIL, .name = "" };

static bool is_good(const struct wanted_goods *a, const struct wanted_goods *b)
{
	return a->good == b->good && strcmp(a->name, b->name) == 0 &&
		size_equal(&a->block, &b->block) && a->length == b->length &&
		a->height == b->height && a->across == b->across;
}

static struct wanted_goods thing_of(const struct book *book, const struct item *item)
{
	struct wanted_goods wanted = item_wanted(item);
	const struct goods *own, *other;

	if (item->good != GOOD_LAWN_TOPSOIL)
		return wanted;
	own = book ? book_goods(book, &wanted) : NULL;
	other = book ? book_goods(book, &topsoil) : NULL;
	return own && other && !are_alike(own, other) ? wanted : topsoil;
}

static const struct goods *goods_of(const struct book *book, const struct wanted_goods *thing)
{
	const struct goods *goods = book ? book_goods(book, thing) : NULL;

	return goods || !book || !is_good(thing, &topsoil) ? goods :
		book_goods(book, &lawn_topsoil);
}

static bool is_told_same(const struct own_price *a, const struct own_price *b)
{
	return a->is_told == b->is_told && a->each == b->each;
}

static struct order *order_for(struct buying *buying, const struct wanted_goods *thing,
	const struct own_price *price)
{
	for (int i = 0; i < buying->count; i++)
		if (is_good(&buying->orders[i].goods, thing) &&
			is_told_same(&buying->orders[i].first->own_price, price))
			return &buying->orders[i];
	return NULL;
}

static void add_item(struct buying *buying, struct item *item)
{
	struct wanted_goods thing = thing_of(buying->pricing->book, item);
	struct order *order = order_for(buying, &thing, &item->own_price);
	int day = (int)day_of(item);

	if (!order) {
		order = &buying->orders[buying->count++];
		order->first = item;
		order->goods = thing;
		order->purchase = arena_new(buying->items->arena, 1, sizeof *order->purchase);
		order->purchase->day = day;
		item->purchase = order->purchase;
	}
	item->with = order->first->with;
	order->amount += item->order;
	order->purchase->day = least(order->purchase->day, day);
}

/* ---- Ways to buy ----------------------------------------------------------------------------- */

static void add_offers(const struct buying *buying, struct order *order, const struct pack *packs,
	int count, bool priced)
{
	for (int i = 0; i < count; i++)
		if ((packs[i].price != NO_PRICE) == priced &&
			offer_of(&order->offers[order->count], buying->pricing, &packs[i],
			item_unit(order->first), order->first->unit_weight, order->amount))
			order->count++;
}

/* One of the item as it is sold without a quote, at the price. */
static struct pack *single_pack(const struct buying *buying, const struct order *order,
	money price)
{
	struct arena *arena = buying->items->arena;
	struct pack *pack = arena_new(arena, 1, sizeof *pack);

	*pack = counter_pack(arena, buying->pricing, order->first, order->amount);
	pack->price = price;
	return pack;
}

static void find_offers(const struct buying *buying, struct order *order)
{
	const struct goods *goods = goods_of(buying->pricing->book, &order->goods);
	const struct own_price *own = &order->first->own_price;
	struct arena *arena = buying->items->arena;

	order->purchase->goods = goods;
	order->purchase->spec = goods ? goods->spec : "";
	order->purchase->is_priced = true;
	order->offers = arena_new(arena, OFFERS_MOST, sizeof *order->offers);
	order->steps = arena_new(arena, OFFERS_MOST, sizeof *order->steps);
	order->purchase->is_own_price = buying->pricing->book && own->is_told;
	if (order->purchase->is_own_price)
		add_offers(buying, order, single_pack(buying, order, own->each), 1, true);
	else if (goods)
		add_offers(buying, order, goods->packs, goods->pack_count, true);
	if (order->count > 0)
		return;
	order->purchase->is_own_price = false;
	order->purchase->is_priced = false;
	if (goods)
		add_offers(buying, order, goods->packs, goods->pack_count, false);
	if (order->count > 0)
		return;
	add_offers(buying, order, single_pack(buying, order, NO_PRICE), 1, false);
}

/* ---- Day by day ------------------------------------------------------------------------------ */

static int lane_for(struct buying *buying, int supplier, int owner)
{
	const struct pricing *pricing = buying->pricing;
	int lane = 0;

	while (lane < buying->lane_count && (buying->suppliers[lane] != supplier ||
		buying->owners[lane] != owner))
		lane++;
	if (lane < buying->lane_count)
		return lane;
	buying->suppliers[lane] = supplier;
	buying->owners[lane] = owner;
	buying->lanes[lane] = (struct lane){ pricing->book->suppliers[supplier].delivery,
		load_of(pricing, supplier), NOTHING_ABOARD };
	return buying->lane_count++;
}

static void set_lanes(struct buying *buying, int at)
{
	struct order *order = &buying->orders[at];

	for (int i = 0; i < order->count; i++) {
		const struct pack *pack = order->offers[i].pack;

		if (pack->supplier != NO_SUPPLIER)
			order->offers[i].lane = lane_for(buying, pack->supplier,
				order->offers[i].volume > 0 ? at : -1);
	}
}

/* What has no price is bought whatever its delivery; others may ride along. */
static bool buy_unpriced(struct buying *buying, int at)
{
	struct order *order = &buying->orders[at];
	const struct want want = { order->amount, order->offers, order->count, order->steps };
	const struct mixing mixing = { &want, 1, NULL, 0 };
	bool is_best = order->count == 0 || mix_find(&mixing);

	set_lanes(buying, at);
	for (int i = 0; i < order->count; i++)
		if (order->offers[i].lane != NO_LANE)
			aboard_add(&buying->lanes[order->offers[i].lane].before,
				order->offers[i].weight, order->offers[i].volume, order->steps[i]);
	return is_best;
}

static bool buy_for_day(struct buying *buying, int day, struct want *wants)
{
	struct mixing mixing = { .wants = wants, .lanes = buying->lanes };
	bool is_best = true;

	buying->lane_count = 0;
	for (int i = 0; i < buying->count; i++) {
		const struct order *order = &buying->orders[i];

		if (order->purchase->day == day && !order->purchase->is_priced)
			is_best = buy_unpriced(buying, i) && is_best;
	}
	for (int i = 0; i < buying->count; i++) {
		const struct order *order = &buying->orders[i];

		if (order->purchase->day != day || !order->purchase->is_priced)
			continue;
		set_lanes(buying, i);
		wants[mixing.want_count++] = (struct want){ order->amount, order->offers,
			order->count, order->steps };
	}
	mixing.lane_count = buying->lane_count;
	return mix_find(&mixing) && is_best;
}

/* ---- What comes of it ------------------------------------------------------------------------ */

static void fill_in(const struct buying *buying, const struct order *order)
{
	struct purchase *purchase = order->purchase;
	struct bought *list = arena_new(buying->items->arena, (size_t)order->count, sizeof *list);

	purchase->list = list;
	purchase->is_weighed = true;
	for (int i = 0; i < order->count; i++) {
		const struct offer *offer = &order->offers[i];
		double steps = order->steps[i];

		if (steps <= 0)
			continue;
		list[purchase->count++] = (struct bought){ offer->pack, steps * offer->packs,
			offer_cost(offer, steps), steps * offer->weight, steps * offer->volume };
		purchase->cost += offer_cost(offer, steps);
		purchase->weight += steps * offer->weight;
		purchase->is_weighed = purchase->is_weighed && offer->weight > 0;
	}
}

bool buying_plan(struct item_list *items, const struct pricing *pricing)
{
	size_t count = items->count + 1, lanes = count * OFFERS_MOST;
	struct arena arena = ARENA_EMPTY;
	struct buying buying = { .items = items, .pricing = pricing,
		.orders = arena_new(&arena, count, sizeof *buying.orders) };
	struct want *wants = arena_new(&arena, count, sizeof *wants);
	bool is_best = true;

	for (size_t i = 0; i < items->count && !stop_asked(); i++)
		if (items->list[i].order > 0)
			add_item(&buying, &items->list[i]);
	for (int i = 0; i < buying.count && !stop_asked(); i++)
		find_offers(&buying, &buying.orders[i]);
	buying.lanes = arena_new(&arena, lanes, sizeof *buying.lanes);
	buying.suppliers = arena_new(&arena, lanes, sizeof *buying.suppliers);
	buying.owners = arena_new(&arena, lanes, sizeof *buying.owners);
	for (int day = 0; day < DAYS && !stop_asked(); day++)
		is_best = buy_for_day(&buying, day, wants) && is_best;
	for (int i = 0; i < buying.count && !stop_asked(); i++)
		fill_in(&buying, &buying.orders[i]);
	arena_clear(&arena);
	return is_best;
}
