/* What to ask for where a book says nothing of it. Halves of a cubic yard, quarters of a ton and
 * the bags: common practice, no published source. */
#include "support/runner.h"
#include "support/garden.h"
#include "takeoff/costs/counter.h"

#define POUND 0.45359237 /* kg: NIST Special Publication 811, appendix B.8 */

static const struct row {
	const char *id;
	double order;
	enum units units;
	enum pack_kind kind;
	const char *words;
	double steps;
} rows[] = {
	/* 21.9 cu ft of soil are over 13.5, half a yard: 2 halves. 13.4 are 27 bags. */
	{ "soil.topsoil", 21.9 * CUBIC_FOOT, UNITS_IMPERIAL, PACK_BULK, "1 cu yd", 2 },
	{ "soil.topsoil", 13.5 * CUBIC_FOOT, UNITS_IMPERIAL, PACK_BULK, "1 cu yd", 1 },
	{ "soil.topsoil", 13.4 * CUBIC_FOOT, UNITS_IMPERIAL, PACK_BAG, "1/2 cu ft", 27 },
	{ "mulch", 3.4 * CUBIC_FOOT, UNITS_IMPERIAL, PACK_BAG, "2 cu ft", 2 },
	/* Stone at 2,700 lb/cu yd, the default: 21.8 cu ft are 2,180 lb, 5 quarters of a ton. */
	{ "stone.base", 21.8 * CUBIC_FOOT, UNITS_IMPERIAL, PACK_BULK, "1 ton", 5 },
	{ "stone.base", 3.6 * CUBIC_FOOT, UNITS_IMPERIAL, PACK_BAG, "1/2 cu ft", 8 },
	{ "fence.gravel", 1.8 * CUBIC_FOOT, UNITS_IMPERIAL, PACK_BAG, "1/2 cu ft", 4 },
	/* Nobody hauls away spoil by the bag, nor more of it than there is: one step is all of
	 * it. */
	{ "spoil", 3 * CUBIC_FOOT, UNITS_IMPERIAL, PACK_BULK, "1 cu yd", 1 },
	{ "soil.compost", 0.33, UNITS_METRIC, PACK_BULK, "1 m3", 2 },
	{ "soil.compost", 0.22, UNITS_METRIC, PACK_BAG, "12.5 L", 18 },
	{ "mulch", 0.2, UNITS_METRIC, PACK_BAG, "50 L", 4 },
	{ "mulch", 0.201, UNITS_METRIC, PACK_BAG, "50 L", 5 },
	/* 1,600 kg/m3: 2,080 kg. */
	{ "stone.surface.clean", 1.3, UNITS_METRIC, PACK_BULK, "1 t", 9 },
	{ "turf", 37.8 * SQUARE_FOOT, UNITS_IMPERIAL, PACK_BULK, "1 sq ft", 38 },
	{ "turf", 15.2, UNITS_METRIC, PACK_BULK, "1 m2", 16 },
	{ "seed", 2.2 * POUND, UNITS_IMPERIAL, PACK_BULK, "1 lb", 3 },
	{ "seed", 10, UNITS_METRIC, PACK_BULK, "500 g", 20 },
	{ "seed", 10.1, UNITS_METRIC, PACK_BULK, "500 g", 21 },
	{ "edging.piece", 31, UNITS_METRIC, PACK_PIECE, "1", 31 },
};

START_TEST(goods_are_sold_as_at_a_counter)
{
	const struct row *row = &rows[_i];
	struct garden garden;
	struct offer offer;
	struct item item = { .order = row->order };

	garden_rectangle(&garden, 'b', 8, 4);
	if (row->units == UNITS_METRIC)
		plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	garden_count(&garden);
	const struct pricing pricing = { NULL, garden.takeoff.allow, row->units };
	struct item_list items = { .arena = &garden.arena, .allow = pricing.allow };

	ck_assert(good_find(row->id, &item.good, &item.name));
	item = *item_add(&items, &item);
	struct pack pack = counter_pack(&garden.arena, &pricing, &item, row->order);

	ck_assert_int_eq(pack.kind, row->kind);
	ck_assert_str_eq(pack.words, row->words);
	ck_assert_int_eq(pack.price, NO_PRICE);
	ck_assert_int_eq(pack.supplier, NO_SUPPLIER);
	ck_assert(offer_of(&offer, &pricing, &pack, item_unit(&item), item.unit_weight,
		row->order));
	ck_assert_double_eq(offer_steps(&offer, row->order), row->steps);
	garden_fini(&garden);
}
END_TEST

/* 300 sq ft of turf and 2 lb of seed come on one truck: neither is loose. */
START_TEST(what_is_not_counted_by_volume_is_not_loose)
{
	struct garden garden;
	struct costs costs;

	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	struct item_list items = { .arena = &garden.arena, .allow = garden.takeoff.allow };

	item_add(&items, &(struct item){ .good = GOOD_TURF, .section = SECTION_LAWN,
		.order = 300 * SQUARE_FOOT });
	item_add(&items, &(struct item){ .good = GOOD_SEED, .section = SECTION_LAWN,
		.order = 2 * POUND });
	costs_compute(&costs, &items, NULL, UNITS_IMPERIAL, true);
	ck_assert_int_eq(costs.days[DAY_LAWN].trucks, 1);
	ck_assert_int_eq(costs.days[DAY_LAWN].pickups, 1);
	ck_assert_double_eq_tol(costs.weight, 2 * POUND, 1e-9);
	ck_assert(!costs.is_weighed);
	garden_fini(&garden);
}
END_TEST

/* 300 sq ft are 2 rolls of 4 x 50 ft. */
START_TEST(liner_is_sold_by_its_roll)
{
	struct garden garden;
	struct item item = { .good = GOOD_LINER, .name = "", .note = { .kind = NOTE_LINER,
		.lengths = { 4 * NM_PER_FOOT, 50 * NM_PER_FOOT } } };
	struct offer offer;

	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	const struct pricing pricing = { NULL, garden.takeoff.allow, UNITS_IMPERIAL };
	struct pack pack = counter_pack(&garden.arena, &pricing, &item, 300 * SQUARE_FOOT);

	ck_assert_int_eq(pack.kind, PACK_ROLL);
	ck_assert_str_eq(pack.words, "4 ft x 50 ft");
	ck_assert(offer_of(&offer, &pricing, &pack, UNIT_M2, 0, 300 * SQUARE_FOOT));
	ck_assert_double_eq(offer_steps(&offer, 300 * SQUARE_FOOT), 2);
	garden_fini(&garden);
}
END_TEST

/* A yield of no bag that is sold has no weight to be asked for by. */
static const struct { const char *yield; enum units units; const char *words; } concrete[] = {
	{ "0.6 cu ft", UNITS_IMPERIAL, "80 lb" }, { "0.45 cu ft", UNITS_IMPERIAL, "60 lb" },
	{ "0.375 cu ft", UNITS_IMPERIAL, "50 lb" }, { "12 L", UNITS_METRIC, "25 kg" },
	{ "9.5 L", UNITS_METRIC, "20 kg" }, { "0.7 cu ft", UNITS_IMPERIAL, "1" },
};

START_TEST(concrete_is_sold_by_the_bag_that_yields_as_much)
{
	struct garden garden;
	struct item item = { .good = GOOD_FENCE_CONCRETE, .name = "",
		.note = { .kind = NOTE_CONCRETE } };

	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 0, ALLOW_CONCRETE_BAG, concrete[_i].yield);
	garden_count(&garden);
	const struct pricing pricing = { NULL, garden.takeoff.allow, concrete[_i].units };

	item.note.amount = block_effective(pricing.allow, ALLOW_CONCRETE_BAG)->as.amount;
	struct pack pack = counter_pack(&garden.arena, &pricing, &item, 7);

	ck_assert_int_eq(pack.kind, PACK_BAG);
	ck_assert_str_eq(pack.words, concrete[_i].words);
	ck_assert_double_eq(pack.size, 1);
	garden_fini(&garden);
}
END_TEST

START_TEST(the_step_that_is_allowed_for_is_where_bags_end)
{
	struct garden garden;
	struct item item = { .good = GOOD_SOIL, .name = "topsoil" };

	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 0, ALLOW_TRUCK_STEP, "1 cu yd");
	garden_count(&garden);
	const struct pricing pricing = { NULL, garden.takeoff.allow, UNITS_IMPERIAL };

	ck_assert_int_eq(counter_pack(&garden.arena, &pricing, &item,
		26.9 * CUBIC_FOOT).kind, PACK_BAG);
	ck_assert_int_eq(counter_pack(&garden.arena, &pricing, &item,
		27 * CUBIC_FOOT).kind, PACK_BULK);
	garden_fini(&garden);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("counter");
	TCase *packs = suite_case(suite, "packs");

	tcase_add_loop_test(packs, goods_are_sold_as_at_a_counter, 0, sizeof rows / sizeof *rows);
	tcase_add_test(packs, what_is_not_counted_by_volume_is_not_loose);
	tcase_add_test(packs, liner_is_sold_by_its_roll);
	tcase_add_loop_test(packs, concrete_is_sold_by_the_bag_that_yields_as_much, 0,
		sizeof concrete / sizeof *concrete);
	tcase_add_test(packs, the_step_that_is_allowed_for_is_where_bags_end);
	return suite;
}
