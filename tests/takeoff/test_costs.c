#include "support/runner.h"
#include "support/beds.h"
#include "support/book.h"
#include "support/garden.h"

#include <math.h>
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

static const struct shipment *shipment(enum section section, int supplier)
{
	const struct costs *costs = &garden.takeoff.costs;

	for (int i = 0; i < costs->shipment_count; i++)
		if (costs->shipments[i].section == section &&
			costs->shipments[i].supplier == supplier)
			return &costs->shipments[i];
	return NULL;
}

static const struct cost_sum *sum_of(enum section section)
{
	for (int day = 0; day < SECTIONS; day++)
		if (garden.takeoff.costs.days[day].section == section)
			return &garden.takeoff.costs.days[day].sum;
	ck_abort_msg("no day");
}

/* 51 blocks of 16 x 8 x 6 in at 135 lb/cu ft, 60 lb each (768 cu in = 0.4444 cu ft): 3,060 lb in
 * one drop of 4,000 lb; three cartridges share it. Blocks and adhesive at 2 and 7. */
START_TEST(what_one_supplier_brings_on_a_day_shares_drops)
{
	garden_rectangle(&garden, 'b', 8, 4);
	price(SUPPLIERS ", 'goods': [{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', "
		"'packs': [{'pack': 'piece', 'size': 1, 'price': 2, 'supplier': 'North'}]}, "
		"{'item': 'adhesive.cartridge', 'packs': [{'pack': 'piece', 'size': 1, 'price': 7, "
		"'weight': '3 lb', 'supplier': 'North'}]}]");
	const struct costs *costs = &garden.takeoff.costs;
	const struct shipment *walls = shipment(SECTION_WALLS, 0);

	ck_assert_int_eq(costs->shipment_count, 1);
	ck_assert_int_eq(walls->drops, 1);
	ck_assert_double_eq_tol(walls->weight, (51 * 60 + 3 * 3) * POUND, 1e-6);
	ck_assert(walls->is_weighed);
	ck_assert_int_eq(costs->goods, 51 * 200 + 3 * 700);
	ck_assert_int_eq(costs->delivery, 5000);
	ck_assert_int_eq(costs->total, costs->goods + 5000);
	ck_assert_int_eq(sum_of(SECTION_WALLS)->goods, costs->goods);
	ck_assert_int_eq(sum_of(SECTION_WALLS)->delivery, 5000);
	ck_assert_int_eq(sum_of(SECTION_FILL)->goods, 0);
}
END_TEST

START_TEST(packed_goods_over_a_load_take_more_drops)
{
	garden_rectangle(&garden, 'b', 8, 4);
	price(SUPPLIERS ", 'goods': [{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', "
		"'packs': [{'pack': 'pallet', 'size': 60, 'price': 120, 'weight': '4001 lb', "
		"'supplier': 'North'}]}]");
	ck_assert_int_eq(shipment(SECTION_WALLS, 0)->drops, 2);
	ck_assert_int_eq(garden.takeoff.costs.delivery, 10000);
	ck_assert_double_eq(garden_item(&garden, "block.wall")->packs, 1);
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
	const struct shipment *fill = shipment(SECTION_FILL, 1);
	const struct shipment *walls = shipment(SECTION_WALLS, 1);

	ck_assert_double_eq(garden_item(&garden, "soil.topsoil")->packs, 1);
	ck_assert_int_eq(fill->drops, 3);
	ck_assert_int_eq(fill->cost, 24000);
	ck_assert(fill->is_weighed);
	ck_assert_int_eq(walls->drops, 1);
	ck_assert(!walls->is_weighed);
	ck_assert_ptr_eq(walls, &garden.takeoff.costs.shipments[0]);
	ck_assert_int_eq(garden.takeoff.costs.shipment_count, 2);
	ck_assert_int_eq(garden.takeoff.costs.unpriced, (int)garden.takeoff.items.count - 4);
}
END_TEST

START_TEST(collected_goods_take_trips_of_the_vehicle_by_weight)
{
	garden_rectangle(&garden, 'b', 8, 4);
	price("'vehicle': {'name': 'Van', 'carries': '1000 lb'}, 'goods': [{'item': 'block.wall', "
		"'block': '16 in x 8 in x 6 in', 'packs': [{'pack': 'piece', 'size': 1, 'price': "
		"2}]}]");
	const struct shipment *walls = shipment(SECTION_WALLS, NO_SUPPLIER);

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
		ck_assert_ptr_null(garden.takeoff.items.list[i].pack);
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
	/* 600 lb/cu yd: the default. */
	ck_assert_double_eq_tol(garden_item(&garden, "mulch")->weight,
		garden_item(&garden, "mulch")->order / CUBIC_YARD * 600 * POUND, 1e-6);
}
END_TEST

START_TEST(goods_come_in_the_order_of_the_work_soil_when_walls_have_cured)
{
	static const enum section order[] = { SECTION_OTHER, SECTION_DIG, SECTION_STONE,
		SECTION_WALLS, SECTION_FENCE, SECTION_FILL, SECTION_LAWN };

	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	ck_assert_uint_eq(sizeof order / sizeof *order, SECTIONS);
	ck_assert_int_eq(garden.takeoff.costs.day_count, SECTIONS);
	for (int day = 0; day < SECTIONS; day++)
		ck_assert_int_eq(garden.takeoff.costs.days[day].section, order[day]);
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

/* One way to buy, found by counting up from too few. */
struct way {
	double packs, weight, volume;
	int64_t cost, delivery;
};

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

static struct way way_of(const struct takeoff *takeoff, const struct item *item,
	const struct pack *pack)
{
	double unit = unit_weight(takeoff, item);
	double need = pack->unit == item_unit(item) ? item->order : item->order * unit;
	double step = pack->kind != PACK_BULK ? pack->size : pack->step > 0 ? pack->step :
		pack->unit == UNIT_M3 ? allowed(takeoff, ALLOW_TRUCK_STEP) : pack->size;
	struct way way = { 0 };
	int64_t n = (int64_t)floor(need / step) - 1;

	for (n = n < 0 ? 0 : n; (double)n * step < need * (1 - 1e-9); n++)
		;
	way.packs = (double)n * step / pack->size;
	way.cost = llround((double)pack->price * way.packs);
	way.weight = way.packs * (pack->weight > 0 ? pack->weight :
		pack->unit == UNIT_KG ? pack->size : pack->size * unit);
	if (pack->kind == PACK_BULK)
		way.volume = way.packs * (pack->unit == UNIT_KG ? pack->size / unit : pack->size);
	if (pack->supplier != NO_SUPPLIER && n > 0)
		way.delivery = drops(takeoff, pack->supplier, way.weight, way.volume) *
			takeoff->book->suppliers[pack->supplier].delivery;
	return way;
}

static void check_item(const struct takeoff *takeoff, const struct item *item, int seed)
{
	const char *id = garden_id(&garden, item);
	const struct goods *goods = book_goods(takeoff->book,
		&(struct wanted_goods){ item->good, item->name, item->block, item->length });
	const struct pack *best = NULL;
	struct way way, best_way = { 0 };

	for (int i = 0; goods && i < goods->pack_count; i++) {
		way = way_of(takeoff, item, &goods->packs[i]);
		if (!best || way.cost + way.delivery < best_way.cost + best_way.delivery) {
			best = &goods->packs[i];
			best_way = way;
		}
	}
	ck_assert_msg(item->pack == best, "seed %d: %s is bought otherwise", seed, id);
	if (!best)
		return;
	ck_assert_msg(fabs(item->packs - best_way.packs) < 1e-6, "seed %d: %s", seed, id);
	/* A step of bulk may be an odd part of its size: a hair decides on half a hundredth. */
	ck_assert_msg(llabs(item->cost - best_way.cost) <= (best->kind == PACK_BULK),
		"seed %d: %s", seed, id);
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
		goods += takeoff->items.list[i].cost;
		unpriced += !takeoff->items.list[i].pack;
	}
	for (int day = 0; day < SECTIONS; day++)
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

	for (int day = 0; day < SECTIONS; day++) {
		enum section section = takeoff->costs.days[day].section;

		for (int supplier = 0; supplier < takeoff->book->supplier_count; supplier++) {
			double packed = 0;
			int64_t expected = 0;
			bool is_packed = false;

			for (size_t i = 0; i < takeoff->items.count; i++) {
				const struct item *item = &takeoff->items.list[i];
				struct way way;

				if (item->section != section || !item->pack ||
					item->pack->supplier != supplier)
					continue;
				way = way_of(takeoff, item, item->pack);
				if (item->pack->kind == PACK_BULK) {
					expected += drops(takeoff, supplier, way.weight,
						way.volume);
				} else {
					packed += way.weight;
					is_packed = true;
				}
			}
			expected += is_packed ? drops(takeoff, supplier, packed, 0) : 0;
			if (expected == 0)
				continue;
			ck_assert_msg(next < end && next->section == section &&
				next->supplier == supplier && next->drops == expected,
				"seed %d, day %d, supplier %d", seed, day, supplier);
			ck_assert_int_eq(next->cost,
				expected * takeoff->book->suppliers[supplier].delivery);
			next++;
		}
		next += next < end && next->section == section &&
			next->supplier == NO_SUPPLIER;
	}
	ck_assert_msg(next == end, "seed %d", seed);
}

START_TEST(packs_cover_the_cheapest_is_chosen_and_sums_add_up)
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
			check_item(&garden.takeoff, &garden.takeoff.items.list[i], seed);
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
	tcase_add_test(hand, without_a_book_nothing_has_a_price_and_weights_are_still_known);
	tcase_add_test(hand, goods_come_in_the_order_of_the_work_soil_when_walls_have_cured);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, packs_cover_the_cheapest_is_chosen_and_sums_add_up, 0, 10);
	return suite;
}
