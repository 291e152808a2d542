#include "support/runner.h"
#include "support/beds.h"
#include "support/book.h"
#include "support/planting.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const double POUND = 0.45359237;
static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* ---- By hand --------------------------------------------------------------------------------- */

#define SUPPLIERS "'suppliers': [{'name': 'North', 'delivery': 50, 'carries': '4000 lb'}, " \
	"{'name': 'South', 'delivery': 80, 'holds': '0.5 cu yd'}]"

static void price(const char *rest)
{
	book_of(&garden.book, rest);
	garden.has_book = true;
	garden_count(&garden);
}

static const struct shipment *shipment(enum day day, int supplier)
{
	const struct costs *costs = &garden.takeoff.costs;

	for (int i = 0; i < costs->shipment_count; i++)
		if (costs->shipments[i].day == day && costs->shipments[i].supplier == supplier)
			return &costs->shipments[i];
	return NULL;
}

static const struct cost_sum *sum_of(enum day day)
{
	return &garden.takeoff.costs.days[day].sum;
}

/* 51 blocks of 16 x 8 x 6 in at 135 lb/cu ft, 60 lb each (768 cu in = 0.4444 cu ft): 3,060 lb in
 * one drop of 4,000 lb; three cartridges share it. Blocks and adhesive at 2 and 7. */
START_TEST(what_one_supplier_brings_on_a_day_shares_drops)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 0, ALLOW_ADHESIVE_SPARE, "0 %");
	price(SUPPLIERS ", 'goods': [{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', "
		"'packs': [{'pack': 'piece', 'size': 1, 'price': 2, 'supplier': 'North'}]}, "
		"{'item': 'adhesive.cartridge', 'packs': [{'pack': 'piece', 'size': 1, 'price': 7, "
		"'weight': '3 lb', 'supplier': 'North'}]}]");
	const struct costs *costs = &garden.takeoff.costs;
	const struct shipment *walls = shipment(DAY_WALLS, 0);

	ck_assert_ptr_null(shipment(DAY_WALLS, NO_SUPPLIER));
	ck_assert_ptr_null(shipment(DAY_FILL, 0));
	ck_assert_int_eq(walls->drops, 1);
	ck_assert_double_eq_tol(walls->weight, (51 * 60 + 3 * 3) * POUND, 1e-6);
	ck_assert(walls->is_weighed);
	ck_assert_int_eq(costs->goods, 51 * 200 + 3 * 700);
	ck_assert_int_eq(costs->delivery, 5000);
	ck_assert_int_eq(costs->total, costs->goods + 5000);
	ck_assert_int_eq(sum_of(DAY_WALLS)->goods, costs->goods);
	ck_assert_int_eq(sum_of(DAY_WALLS)->delivery, 5000);
	ck_assert_int_eq(sum_of(DAY_FILL)->goods, 0);
}
END_TEST

START_TEST(packed_goods_over_a_load_take_more_drops)
{
	garden_rectangle(&garden, 'b', 8, 4);
	price(SUPPLIERS ", 'goods': [{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', "
		"'packs': [{'pack': 'pallet', 'size': 60, 'price': 120, 'weight': '4001 lb', "
		"'supplier': 'North'}]}]");
	ck_assert_int_eq(shipment(DAY_WALLS, 0)->drops, 2);
	ck_assert_int_eq(garden.takeoff.costs.delivery, 10000);
	ck_assert_double_eq(garden_item(&garden, "block.wall")->purchase->list[0].packs, 1);
	ck_assert_double_eq_tol(garden_item(&garden, "block.wall")->weight, 4001 * POUND, 1e-6);
}
END_TEST

START_TEST(bulk_has_drops_of_its_own_and_each_day_its_own_delivery)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_INSIDE, "filled");
	price(SUPPLIERS ", 'goods': [{'item': 'soil.topsoil', 'packs': [{'pack': 'bulk', "
		"'size': '0.5 cu yd', 'step': '0.5 cu yd', 'price': 20, 'supplier': 'South'}]}, "
		"{'item': 'soil.compost', 'packs': [{'pack': 'bulk', 'size': '0.5 cu yd', "
		"'step': '0.5 cu yd', 'price': 25, 'supplier': 'South'}]}, {'item': 'mulch', "
		"'packs': [{'pack': 'bag', 'size': '2 cu ft', 'price': 4, 'supplier': 'South'}]}, "
		"{'item': 'adhesive.cartridge', 'packs': [{'pack': 'piece', 'size': 1, 'price': 7, "
		"'supplier': 'South'}]}]");
	/* 18 in less 3 1/2 in deep, 17.78 sq ft, half each, 15 % more: 12.4 cu ft a part, one
	 * step of 13.5 cu ft, half a yard: a drop each; bags of mulch come in a third one, two
	 * days before that the adhesive in its own. */
	const struct shipment *fill = shipment(DAY_FILL, 1);
	const struct shipment *walls = shipment(DAY_WALLS, 1);

	ck_assert_double_eq(garden_item(&garden, "soil.topsoil")->purchase->list[0].packs, 1);
	ck_assert_int_eq(fill->drops, 3);
	ck_assert_int_eq(fill->cost, 24000);
	ck_assert(fill->is_weighed);
	ck_assert_int_eq(walls->drops, 1);
	ck_assert(!walls->is_weighed);
	ck_assert(walls < fill);
	ck_assert_int_eq(garden.takeoff.costs.unpriced, (int)garden.takeoff.items.count - 4);
}
END_TEST

START_TEST(collected_goods_take_trips_of_the_vehicle_by_weight)
{
	garden_rectangle(&garden, 'b', 8, 4);
	price("'vehicle': {'name': 'Van', 'carries': '1000 lb'}, 'goods': [{'item': 'block.wall', "
		"'block': '16 in x 8 in x 6 in', 'packs': [{'pack': 'piece', 'size': 1, 'price': "
		"2}]}]");
	const struct shipment *walls = shipment(DAY_WALLS, NO_SUPPLIER);

	ck_assert_int_eq(walls->drops, 4); /* 3,060 lb */
	ck_assert_int_eq(walls->cost, 0);
	ck_assert_int_eq(garden.takeoff.costs.delivery, 0);
}
END_TEST

START_TEST(what_has_no_price_is_told_apart_and_never_costs_nothing)
{
	garden_rectangle(&garden, 'b', 8, 4);
	price("'goods': [{'item': 'block.wall', 'block': '1 ft x 8 in x 6 in', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 2}]}]");
	ck_assert_int_eq(garden.takeoff.costs.unpriced, (int)garden.takeoff.items.count);
	ck_assert_int_eq(garden.takeoff.costs.total, 0);
	for (size_t i = 0; i < garden.takeoff.items.count; i++)
		ck_assert(!garden.takeoff.items.list[i].purchase->is_priced);
}
END_TEST

#define NURSERY "'suppliers': [{'name': 'Nursery', 'delivery': 50}], 'goods': [{'item': 'plant', " \
	"'name': 'Plant', 'spec': 'bare root', 'packs': [{'pack': 'box', 'size': 5, 'price': 20, " \
	"'supplier': 'Nursery'}]}]"

/* A row of ten in a bed of 10 ft, none to spare. */
static void plant_ten(const char *price)
{
	char lines[100];

	planting_bed(&garden, 10, 1, "1 ft");
	plot_set(&garden.plot, 0, ALLOW_PLANT_SPARE, "0 %");
	snprintf(lines, sizeof lines, "spacing 1 ft%s%s\n  drift b whole",
		*price ? "\n  price " : "", price);
	planting_add(&garden, lines);
}

/* By the book two boxes of five at 20, brought for 50. By the plot each at its price, to the
 * hundredth, collected; what one gets for nothing has a price too. */
static const struct { const char *price; money goods, delivery; } planted[] = {
	{ "", 4000, 5000 }, { "4.5", 4500, 0 }, { "0", 0, 0 }, { "2.005", 2010, 0 },
	{ "1000000", 1000000000, 0 },
};

START_TEST(the_price_that_the_plot_tells_of_a_plant_goes_before_the_book)
{
	const struct item *item;

	plant_ten(planted[_i].price);
	price(NURSERY);
	item = garden_item(&garden, "plant");
	ck_assert(item->purchase->is_priced);
	ck_assert_int_eq(item->purchase->is_own_price, *planted[_i].price != '\0');
	ck_assert_int_eq(item->purchase->cost, planted[_i].goods);
	ck_assert_int_eq(garden.takeoff.costs.delivery, planted[_i].delivery);
	ck_assert_int_eq(garden.takeoff.costs.goods, planted[_i].goods);
	ck_assert_str_eq(item->purchase->spec, "bare root");
}
END_TEST

/* A book without the plant has the currency at least; without any there is none. */
START_TEST(a_plant_s_own_price_needs_a_book_for_its_currency_alone)
{
	plant_ten("4.5");
	garden_count(&garden);
	ck_assert(!garden_item(&garden, "plant")->purchase->is_priced);
	ck_assert(!garden_item(&garden, "plant")->purchase->is_own_price);
	ck_assert_int_eq(garden.takeoff.costs.total, 0);
	price("'goods': []");
	ck_assert_int_eq(garden_item(&garden, "plant")->purchase->cost, 4500);
	ck_assert_int_eq(garden.takeoff.costs.unpriced, (int)garden.takeoff.items.count - 1);
}
END_TEST

/* 10 at 4.5 and 1 at 12. */
START_TEST(plants_of_one_name_at_two_prices_are_not_the_same_thing)
{
	plant_ten("4.5");
	plot_add_lines(&garden.plot, "plant y \"Plant\"\n  price 12\n  at 0,0\n");
	price(NURSERY);
	ck_assert_int_eq(garden.takeoff.planting.plants[0].count, 9);
	ck_assert_int_eq(garden.takeoff.costs.goods, 9 * 450 + 1200);
}
END_TEST

START_TEST(without_a_book_nothing_has_a_price_and_weights_are_still_known)
{
	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.costs.unpriced, 0);
	ck_assert_int_eq(garden.takeoff.costs.shipment_count, 0);
	ck_assert_ptr_null(garden.takeoff.book);
	ck_assert_double_eq_tol(garden_item(&garden, "block.wall")->weight, 51 * 60 * POUND, 1e-6);
	ck_assert_double_eq(garden_item(&garden, "adhesive.cartridge")->weight, 0);
	/* 2.96 cu ft, in two bags of 2 cu ft; 600 lb/cu yd: the default. */
	ck_assert_double_eq_tol(garden_item(&garden, "mulch")->weight,
		4.0 / 27 * 600 * POUND, 1e-6);
}
END_TEST

/* Concrete must be there before the walls are begun, soil when they have cured, panels after it. */
START_TEST(goods_come_in_the_order_of_the_work)
{
	static const struct { const char *id; enum day day; } goods[] = {
		{ "fence.post", DAY_POSTS }, { "fence.concrete", DAY_POSTS },
		{ "fence.gravel", DAY_POSTS }, { "spoil", DAY_DIG }, { "fill", DAY_DIG },
		{ "fabric.roll", DAY_STONE }, { "stone.base", DAY_STONE },
		{ "edging.piece", DAY_STONE }, { "stone.surface.fines", DAY_STONE },
		{ "block.wall", DAY_WALLS }, { "liner", DAY_FILL }, { "mulch", DAY_FILL },
		{ "fence.panel", DAY_PANELS }, { "fence.latch", DAY_PANELS },
		{ "plant", DAY_PLANTS }, { "topsoil.lawn", DAY_LAWN }, { "turf", DAY_LAWN },
	};
	int before = -1;

	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	for (size_t i = 0; i < sizeof goods / sizeof *goods; i++) {
		struct item item = { .laid = 0 };

		ck_assert(good_find(goods[i].id, &item.good, &item.name));
		ck_assert_msg(day_of(&item) == goods[i].day, "%s", goods[i].id);
		ck_assert_msg((int)goods[i].day >= before, "%s", goods[i].id);
		before = (int)goods[i].day;
	}
	ck_assert_int_eq(garden.takeoff.costs.day_count, DAYS);
	for (int day = 0; day < DAYS; day++)
		ck_assert_int_eq(garden.takeoff.costs.days[day].day, day);
}
END_TEST

/* The step that a day's goods come before. */
static const enum work_step day_steps[DAYS] = {
	[DAY_OTHER] = WORK_SERVICES, [DAY_POSTS] = WORK_POSTS, [DAY_DIG] = WORK_HAUL,
	[DAY_STONE] = WORK_FABRIC, [DAY_WALLS] = WORK_WALLS, [DAY_FILL] = WORK_FILL,
	[DAY_PANELS] = WORK_PANELS, [DAY_PLANTS] = WORK_PLANTS, [DAY_LAWN] = WORK_LAWN,
};

START_TEST(no_good_comes_after_the_step_that_takes_it)
{
	bool is_first_taken[DAYS] = { false };

	for (int good = 0; good < GOODS; good++) {
		struct item item = { .good = (enum good)good };
		enum work_step taken = work_step_of_good(item.good);
		enum day day = day_of(&item);

		ck_assert_msg(day_steps[day] <= taken, "%s", good_row(item.good)->id);
		is_first_taken[day] = is_first_taken[day] || day_steps[day] == taken;
	}
	for (int day = 0; day < DAYS; day++) {
		ck_assert_msg(is_first_taken[day], "%s", day_words[day].key);
		ck_assert(day == 0 || day_steps[day - 1] < day_steps[day]);
	}
}
END_TEST

/* 51 blocks of 60 lb are 3 loads of 1,500 lb; one truck of 20,000 lb. The bed's topsoil and compost
 * are 11.2 cu ft each: 23 bags of 1/2 cu ft; at 2,000 and 1,100 lb a yard 852 and 469 lb. With 2
 * bags of mulch, 89 lb, that is one load. What the liner weighs is not known. */
START_TEST(all_goods_are_carried_with_a_price_or_without)
{
	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	const struct day_cost *walls = &garden.takeoff.costs.days[DAY_WALLS];
	const struct day_cost *fill = &garden.takeoff.costs.days[DAY_FILL];

	ck_assert_double_eq_tol(walls->weight, 51 * 60 * POUND, 1e-6);
	ck_assert(!walls->is_weighed); /* nor is adhesive */
	ck_assert_int_eq(walls->pickups, 3);
	ck_assert_int_eq(walls->trucks, 1);
	ck_assert_double_eq_tol(fill->weight, (23 * (2000 + 1100) / 54.0 + 4 * 600 / 27.0) * POUND,
		1e-6);
	ck_assert(!fill->is_weighed);
	ck_assert_int_eq(fill->pickups, 1);
	ck_assert_int_eq(garden.takeoff.costs.days[DAY_LAWN].trucks, 0);
	plot_set(&garden.plot, 'b', BED_LINER, "no");
	garden_count(&garden);
	ck_assert(fill->is_weighed);
	price("'goods': [{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '2 cu ft', 'price': "
		"4}]}], 'vehicle': {'name': 'Van', 'carries': '1000 lb'}");
	const struct shipment *collected = shipment(DAY_WALLS, NO_SUPPLIER);

	ck_assert_int_eq(collected->drops, 4);
	ck_assert(!collected->is_weighed);
	ck_assert_int_eq(shipment(DAY_FILL, NO_SUPPLIER)->drops, 2);
}
END_TEST

/* The spoil of an 8 ft x 4 ft bed goes by 2 cu yd at a time, more than there is: what is brought is
 * no less for that. */
START_TEST(how_spoil_is_ordered_changes_nothing_of_what_is_brought)
{
	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	const struct costs *costs = &garden.takeoff.costs;
	double brought = costs->brought;

	ck_assert_double_eq_tol(brought, (51 * 60 + 23 * (2000 + 1100) / 54.0 + 4 * 600 / 27.0) *
		POUND + garden_item(&garden, "stone.base")->weight, 1e-6);
	ck_assert_double_eq_tol(costs->weight - brought, garden_item(&garden, "spoil")->weight,
		1e-6);
	price("'goods': [{'item': 'spoil', 'packs': [{'pack': 'bulk', 'size': '2 cu yd', 'step': "
		"'2 cu yd', 'price': 9}]}]");
	ck_assert_double_eq_tol(costs->brought, brought, 1e-6);
	ck_assert_double_eq_tol(costs->weight - brought, 2 * 2400 * POUND, 1e-6);
}
END_TEST

/* The yields printed on bags: 80 lb 0.60, 60 lb 0.45, 50 lb 0.375 cu ft (common practice, no
 * published source). */
static const struct { const char *yield; double pounds; } concrete[] = {
	{ "0.6 cu ft", 80 }, { "0.45 cu ft", 60 }, { "0.375 cu ft", 50 },
	{ "1.2 cu ft", 160 }, { "12 L", 25 / 0.45359237 },
};

START_TEST(a_bag_of_concrete_weighs_by_its_yield)
{
	struct garden *g = &garden;

	garden_file(g, "plots/court.plot");
	plot_set(&g->plot, 0, ALLOW_CONCRETE_BAG, concrete[_i].yield);
	garden_count(g);
	const struct item *bags = garden_item(g, "fence.concrete");

	ck_assert_double_eq_tol(bags->unit_weight, concrete[_i].pounds * POUND, 1e-6);
	ck_assert_double_eq_tol(bags->weight, bags->order * bags->unit_weight, 1e-6);
}
END_TEST

/* ---- On random plots and books --------------------------------------------------------------- */

/* Kilograms of a unit of the item, reckoned anew from what holds. */
static double unit_weight(const struct takeoff *takeoff, const struct item *item)
{
	static const struct { const char *id; enum attribute density; } densities[] = {
		{ "soil.topsoil", ALLOW_DENSITY_SOIL }, { "soil.compost", ALLOW_DENSITY_COMPOST },
		{ "mulch", ALLOW_DENSITY_MULCH },
	};
	double cubic_metres = (double)item->block.along * (double)item->block.across *
		(double)item->block.up / 1e27;

	for (int i = 0; i < 3; i++)
		if (strcmp(garden_id(&garden, item), densities[i].id) == 0)
			return amount_si(&block_effective(takeoff->allow,
				densities[i].density)->as.amount);
	return cubic_metres * 135 * POUND / CUBIC_FOOT;
}

static int64_t loads(double carried, double carries)
{
	int64_t n = (int64_t)floor(carried / carries) - 1;

	for (n = n < 0 ? 0 : n; (double)n * carries < carried * (1 - 1e-9); n++)
		;
	return n;
}

static double allowed(const struct takeoff *takeoff, enum attribute a)
{
	return amount_si(&block_effective(takeoff->allow, a)->as.amount);
}

static int64_t drops(const struct takeoff *takeoff, int supplier, double weight, double volume)
{
	const struct supplier *s = &takeoff->book->suppliers[supplier];
	int64_t by_weight = loads(weight, s->carries > 0 ? s->carries :
		allowed(takeoff, ALLOW_TRUCK_WEIGHT));
	int64_t by_volume = loads(volume, s->holds > 0 ? s->holds :
		allowed(takeoff, ALLOW_TRUCK_VOLUME));
	int64_t most = by_weight > by_volume ? by_weight : by_volume;

	return most > 1 ? most : 1;
}

/* Packs of one kind, reckoned anew. */
struct way {
	double amount, step, weight, volume; /* amount, step: in the item's unit */
	int64_t cost;
};

static struct way way_of(const struct takeoff *takeoff, const struct item *item,
	const struct pack *pack, double packs)
{
	double unit = unit_weight(takeoff, item);
	double each = pack->unit == item_unit(item) ? 1 : 1 / unit;
	double step = pack->kind != PACK_BULK ? pack->size : pack->step > 0 ? pack->step :
		pack->unit == UNIT_M3 ? allowed(takeoff, ALLOW_TRUCK_STEP) : pack->size;
	struct way way = { packs * pack->size * each, step * each, 0, 0, 0 };

	way.cost = llround((double)pack->price * packs);
	way.weight = packs * (pack->weight > 0 ? pack->weight :
		pack->unit == UNIT_KG ? pack->size : pack->size * unit);
	if (pack->kind == PACK_BULK)
		way.volume = packs * (pack->unit == UNIT_KG ? pack->size / unit : pack->size);
	return way;
}

/* The drops of a supplier on a day; of one item so many packs of one kind, where pack is given, in
 * place of those it has. */
static int64_t drops_of(const struct takeoff *takeoff, int day, int supplier, size_t other,
	const struct pack *pack, double packs)
{
	double packed = 0;
	int64_t count = 0;
	bool is_packed = false;

	for (size_t i = 0; i < takeoff->items.count; i++) {
		const struct item *item = &takeoff->items.list[i];
		const struct purchase *purchase = item->purchase;
		const struct bought instead = { .pack = pack, .packs = packs };
		bool is_other = pack && i == other, is_bulk = false;
		double weight = 0, volume = 0;

		for (int j = 0; j < (is_other ? 1 : purchase->count); j++) {
			const struct bought *bought = is_other ? &instead : &purchase->list[j];
			struct way way = way_of(takeoff, item, bought->pack, bought->packs);

			if (purchase->day != day || bought->pack->supplier != supplier)
				continue;
			if (bought->pack->kind != PACK_BULK) {
				packed += way.weight;
				is_packed = true;
				continue;
			}
			is_bulk = true;
			weight += way.weight;
			volume += way.volume;
		}
		count += is_bulk ? drops(takeoff, supplier, weight, volume) : 0;
	}
	return count + (is_packed ? drops(takeoff, supplier, packed, 0) : 0);
}

/* Packs of one kind in place of those an item has would cost less in all by so much. */
static money saved(const struct takeoff *takeoff, size_t item, const struct pack *pack,
	double packs)
{
	const struct purchase *purchase = takeoff->items.list[item].purchase;
	money saved = purchase->cost -
		way_of(takeoff, &takeoff->items.list[item], pack, packs).cost;

	for (int s = 0; s < takeoff->book->supplier_count; s++)
		saved += takeoff->book->suppliers[s].delivery *
			(drops_of(takeoff, purchase->day, s, item, NULL, 0) -
			drops_of(takeoff, purchase->day, s, item, pack, packs));
	return saved;
}

static void check_item(const struct takeoff *takeoff, size_t index, int seed)
{
	const struct item *item = &takeoff->items.list[index];
	const struct wanted_goods wanted = item_wanted(item);
	const struct goods *goods = book_goods(takeoff->book, &wanted);
	const char *id = garden_id(&garden, item);
	double held = 0;

	ck_assert_msg(day_steps[item->purchase->day] <= work_step_of_good(item->good),
		"seed %d: %s comes too late", seed, id);
	ck_assert_msg(item->purchase->is_priced == (goods != NULL), "seed %d: %s", seed, id);
	if (!goods)
		return;
	for (int i = 0; i < item->purchase->count; i++) {
		const struct bought *bought = &item->purchase->list[i];
		struct way way = way_of(takeoff, item, bought->pack, bought->packs);
		double steps = way.amount / way.step;

		held += way.amount;
		ck_assert_msg(fabs(steps - round(steps)) < 1e-6, "seed %d: %s", seed, id);
		/* A step of bulk may be an odd part of its size: a hair decides on half a
		 * hundredth. */
		ck_assert_msg(llabs(bought->cost - way.cost) <= (bought->pack->kind == PACK_BULK),
			"seed %d: %s", seed, id);
	}
	ck_assert_msg(held >= item->order * (1 - 1e-9), "seed %d: %s is too little", seed, id);
	for (int i = 0; i < item->purchase->count; i++)
		ck_assert_msg(held - way_of(takeoff, item, item->purchase->list[i].pack, 1).step <
			item->order, "seed %d: a pack of %s is too many", seed, id);
	for (int i = 0; i < goods->pack_count; i++) {
		const struct pack *pack = &goods->packs[i];
		struct way one = way_of(takeoff, item, pack, 1);
		double packs = ceil(item->order / one.step - 1e-9) * one.step / one.amount;

		ck_assert_msg(saved(takeoff, index, pack, packs) <= 1, "seed %d: %s for less", seed,
			id);
	}
}

static void add_sum(struct cost_sum *to, const struct cost_sum *sum)
{
	to->goods += sum->goods;
	to->delivery += sum->delivery;
	to->all += sum->all;
}

static void check_sums(const struct takeoff *takeoff, int seed)
{
	const struct costs *costs = &takeoff->costs;
	money goods = 0, delivery = 0;
	struct cost_sum by_day = { 0, 0, 0 }, by_supplier = { 0, 0, 0 };
	int unpriced = 0;

	for (size_t i = 0; i < takeoff->items.count; i++) {
		goods += takeoff->items.list[i].purchase->cost;
		unpriced += !takeoff->items.list[i].purchase->is_priced;
	}
	for (int day = 0; day < DAYS; day++)
		add_sum(&by_day, &costs->days[day].sum);
	ck_assert_int_eq(costs->supplier_count, takeoff->book->supplier_count + 1);
	for (int i = 0; i < costs->supplier_count; i++)
		add_sum(&by_supplier, &costs->suppliers[i].sum);
	for (int i = 0; i < costs->shipment_count; i++)
		delivery += costs->shipments[i].cost;
	ck_assert_msg(goods == costs->goods && by_day.goods == goods && by_supplier.goods == goods,
		"seed %d", seed);
	ck_assert_msg(delivery == costs->delivery && by_day.delivery == delivery &&
		by_supplier.delivery == delivery, "seed %d", seed);
	ck_assert_msg(costs->total == goods + delivery && by_day.all == costs->total &&
		by_supplier.all == costs->total, "seed %d", seed);
	ck_assert_msg(costs->unpriced == unpriced, "seed %d", seed);
}

/* Each supplier's drops on a day, from the items again. */
static void check_shipments(const struct takeoff *takeoff, int seed)
{
	const struct shipment *next = takeoff->costs.shipments;
	const struct shipment *end = next + takeoff->costs.shipment_count;

	for (int day = 0; day < DAYS; day++) {
		for (int supplier = 0; supplier < takeoff->book->supplier_count; supplier++) {
			int64_t expected = drops_of(takeoff, day, supplier, 0, NULL, 0);

			if (expected == 0)
				continue;
			ck_assert_msg(next < end && (int)next->day == day &&
				next->supplier == supplier && next->drops == expected,
				"seed %d, day %d, supplier %d", seed, day, supplier);
			ck_assert_int_eq(next->cost,
				expected * takeoff->book->suppliers[supplier].delivery);
			next++;
		}
		next += next < end && (int)next->day == day && next->supplier == NO_SUPPLIER;
	}
	ck_assert_msg(next == end, "seed %d", seed);
}

START_TEST(packs_cover_no_good_is_had_for_less_and_sums_add_up)
{
	static const char *const blocks[] = { "16 in x 8 in x 6 in", "1 ft x 6 in x 4 in" };

	for (int seed = _i * 50; seed < _i * 50 + 50; seed++) {
		struct random random = { (uint64_t)seed };
		const char *block = blocks[random_below(&random, 2)];

		garden = (struct garden){ .arena = ARENA_EMPTY };
		beds_at_random(&garden.plot, &random, 4, 2);
		plot_set(&garden.plot, 'b', BED_BLOCK, block);
		if (random_below(&random, 2))
			plot_set(&garden.plot, 'b', BED_CAP, block);
		if (random_below(&random, 2))
			plot_set(&garden.plot, 0, ALLOW_TRUCK_STEP, "0.3 m3");
		if (random_below(&random, 2))
			plot_set(&garden.plot, 0, ALLOW_DENSITY_SOIL, "1100 kg/m3");
		book_at_random(&garden.book, &random, block);
		garden.has_book = true;
		garden_count(&garden);
		for (size_t i = 0; i < garden.takeoff.items.count; i++)
			check_item(&garden.takeoff, i, seed);
		check_sums(&garden.takeoff, seed);
		check_shipments(&garden.takeoff, seed);
		garden_fini(&garden);
	}
	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_init(&garden.plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("costs");
	TCase *hand = suite_case(suite, "by hand");
	TCase *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(hand, NULL, teardown);
	tcase_add_test(hand, what_one_supplier_brings_on_a_day_shares_drops);
	tcase_add_test(hand, packed_goods_over_a_load_take_more_drops);
	tcase_add_test(hand, bulk_has_drops_of_its_own_and_each_day_its_own_delivery);
	tcase_add_test(hand, collected_goods_take_trips_of_the_vehicle_by_weight);
	tcase_add_test(hand, what_has_no_price_is_told_apart_and_never_costs_nothing);
	tcase_add_loop_test(hand, the_price_that_the_plot_tells_of_a_plant_goes_before_the_book, 0,
		sizeof planted / sizeof *planted);
	tcase_add_test(hand, a_plant_s_own_price_needs_a_book_for_its_currency_alone);
	tcase_add_test(hand, plants_of_one_name_at_two_prices_are_not_the_same_thing);
	tcase_add_test(hand, without_a_book_nothing_has_a_price_and_weights_are_still_known);
	tcase_add_test(hand, goods_come_in_the_order_of_the_work);
	tcase_add_test(hand, no_good_comes_after_the_step_that_takes_it);
	tcase_add_test(hand, all_goods_are_carried_with_a_price_or_without);
	tcase_add_test(hand, how_spoil_is_ordered_changes_nothing_of_what_is_brought);
	tcase_add_loop_test(hand, a_bag_of_concrete_weighs_by_its_yield, 0,
		sizeof concrete / sizeof *concrete);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, packs_cover_no_good_is_had_for_less_and_sums_add_up, 0, 10);
	return suite;
}
