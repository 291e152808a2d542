/* A pack as one way to buy: what a step of it holds, costs and weighs, and when it is none. */
#include "support/book.h"
#include "support/garden.h"
#include "support/runner.h"
#include "takeoff/costs/offer.h"

static const double EXACT = 1e-12;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* In force: a step of 0.5 m3 in bulk, trucks of 3 t and 4 m3, a pickup of 700 kg. */
static struct pricing given(const char *book)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 0, ALLOW_TRUCK_STEP, "0.5 m3");
	plot_set(&garden.plot, 0, ALLOW_TRUCK_WEIGHT, "3000 kg");
	plot_set(&garden.plot, 0, ALLOW_TRUCK_VOLUME, "4 m3");
	plot_set(&garden.plot, 0, ALLOW_PICKUP_WEIGHT, "700 kg");
	garden.has_book = book != NULL;
	if (book)
		book_of(&garden.book, book);
	garden_count(&garden);
	return (struct pricing){ book ? &garden.book : NULL, garden.takeoff.allow, UNITS_METRIC };
}

#define PACK(kind_, unit_, size_, step_, weight_) { .kind = PACK_##kind_, .unit = UNIT_##unit_, \
	.size = (size_), .step = (step_), .weight = (weight_), .price = 700, \
	.supplier = NO_SUPPLIER, .words = "" }

/* Reckoned by hand, of goods of so many kg a unit: what a step holds, what part of a pack it is,
 * what it weighs, its volume in bulk. */
static const struct {
	struct pack pack;
	enum item_unit unit;
	double unit_weight, size, packs, weight, volume;
} offers[] = {
	{ PACK(BAG, M3, 0.05, 0, 0), UNIT_M3, 400, 0.05, 1, 20, 0 },
	{ PACK(BAG, M3, 0.05, 0, 25), UNIT_M3, 400, 0.05, 1, 25, 0 },
	{ PACK(BAG, M3, 0.05, 0, 0.5), UNIT_M3, 400, 0.05, 1, 0.5, 0 },
	{ PACK(BAG, M3, 0.05, 0.01, 0), UNIT_M3, 400, 0.05, 1, 20, 0 },
	{ PACK(BULK, M3, 2, 0, 0), UNIT_M3, 400, 0.5, 0.25, 200, 0.5 },
	{ PACK(BULK, M3, 2, 1, 0), UNIT_M3, 400, 1, 0.5, 400, 1 },
	{ PACK(BULK, M3, 2, 1, 1000), UNIT_M3, 400, 1, 0.5, 500, 1 },
	/* By weight: 1,000 kg are 2.5 m3, a step of 200 kg half a m3. */
	{ PACK(BULK, KG, 1000, 0, 0), UNIT_M3, 400, 2.5, 1, 1000, 2.5 },
	{ PACK(BULK, KG, 1000, 200, 0), UNIT_M3, 400, 0.5, 0.2, 200, 0.5 },
	{ PACK(BAG, KG, 20, 0, 0), UNIT_M3, 400, 0.05, 1, 20, 0 },
	{ PACK(BAG, KG, 20, 0, 0), UNIT_M3, 0.5, 40, 1, 20, 0 },
	/* Nothing else is loose, nor told in steps of a truck. */
	{ PACK(BULK, M2, 10, 0, 0), UNIT_M2, 3, 10, 1, 30, 0 },
	{ PACK(BULK, M2, 10, 2, 0), UNIT_M2, 3, 2, 0.2, 6, 0 },
	{ PACK(BULK, KG, 5, 0, 0), UNIT_KG, 1, 5, 1, 5, 0 },
	{ PACK(PIECE, EACH, 1, 0, 0), UNIT_EACH, 0, 1, 1, 0, 0 },
	{ PACK(BOX, EACH, 12, 0, 6), UNIT_EACH, 2, 12, 1, 6, 0 },
};

START_TEST(a_step_holds_costs_and_weighs_its_part_of_a_pack)
{
	const struct pricing pricing = given(NULL);
	struct offer offer;

	ck_assert(offer_of(&offer, &pricing, &offers[_i].pack, offers[_i].unit,
		offers[_i].unit_weight, 100));
	ck_assert_double_eq_tol(offer.size, offers[_i].size, EXACT);
	ck_assert_double_eq_tol(offer.packs, offers[_i].packs, EXACT);
	ck_assert_double_eq_tol(offer.weight, offers[_i].weight, EXACT);
	ck_assert_double_eq_tol(offer.volume, offers[_i].volume, EXACT);
	ck_assert_ptr_eq(offer.pack, &offers[_i].pack);
	ck_assert_int_eq(offer.price, 700);
	ck_assert_int_eq(offer.lane, NO_LANE);
	ck_assert_int_eq(offer_cost(&offer, 20), (money)(20 * 700 * offers[_i].packs + 0.5));
	ck_assert_double_eq(offer_steps(&offer, 2.5 * offers[_i].size), 3);
	ck_assert_double_eq(offer_steps(&offer, 2 * offers[_i].size), 2);
	ck_assert_double_eq(offer_steps(&offer, 0), 0);
	ck_assert_double_eq(offer_steps(&offer, -1), 0);
}
END_TEST

/* Units that cannot be turned into each other, and what nobody can count or pay: over 10 to the
 * twelfth pieces that cost nothing, and of those that cost 1 over 10 to the ninth. */
static const struct {
	struct pack pack;
	enum item_unit unit;
	double unit_weight, order;
	money price;
	bool is_offer;
} ways[] = {
	{ PACK(BAG, KG, 20, 0, 0), UNIT_M3, 0, 1, 700, false },
	{ PACK(BAG, KG, 20, 0, 0), UNIT_M3, 0, 0, 700, false },
	{ PACK(BAG, M3, 1, 0, 0), UNIT_KG, 1, 1, 700, false },
	{ PACK(BAG, KG, 20, 0, 0), UNIT_EACH, 2, 1, 700, false },
	{ PACK(PIECE, EACH, 1, 0, 0), UNIT_M2, 2, 1, 700, false },
	{ PACK(PIECE, EACH, 1, 0, 0), UNIT_EACH, 2, 1, 700, true },
	{ PACK(PIECE, EACH, 1, 0, 0), UNIT_EACH, 2, 1e12, 0, true },
	{ PACK(PIECE, EACH, 1, 0, 0), UNIT_EACH, 2, 1e12 + 1, 0, false },
	{ PACK(PIECE, EACH, 1, 0, 0), UNIT_EACH, 2, 1e9, 100, true },
	{ PACK(PIECE, EACH, 1, 0, 0), UNIT_EACH, 2, 1e9 + 1, 100, false },
	{ PACK(PIECE, EACH, 1, 0, 0), UNIT_EACH, 2, 1e9 + 1, NO_PRICE, true },
	/* Half a pack a step: twice as many steps. */
	{ PACK(BULK, M3, 1, 0.5, 0), UNIT_M3, 2, 1e9, 100, true },
	{ PACK(BULK, M3, 1, 0.5, 0), UNIT_M3, 2, 1e9 + 0.5, 100, false },
};

START_TEST(what_cannot_be_turned_counted_or_paid_is_no_offer)
{
	const struct pricing pricing = given(NULL);
	struct pack pack = ways[_i].pack;
	struct offer offer;

	pack.price = ways[_i].price;
	ck_assert(offer_of(&offer, &pricing, &pack, ways[_i].unit, ways[_i].unit_weight,
		ways[_i].order) == ways[_i].is_offer);
	ck_assert_int_eq(offer.price, ways[_i].price == NO_PRICE ? 0 : ways[_i].price);
}
END_TEST

static void load_is(const struct pricing *pricing, int supplier, double carries, double holds)
{
	struct load load = load_of(pricing, supplier);

	ck_assert_double_eq_tol(load.carries, carries, 1e-9);
	ck_assert_double_eq_tol(load.holds, holds, 1e-9);
}

START_TEST(loads_are_those_of_the_book_or_those_allowed_for)
{
	const struct pricing told = given("'vehicle': {'name': 'Car', 'carries': '500 kg', "
		"'holds': '1 m3'}, 'suppliers': [{'name': 'A', 'delivery': 1}, {'name': 'B', "
		"'delivery': 1, 'carries': '900 kg'}, {'name': 'C', 'delivery': 1, 'holds': "
		"'2 m3'}], 'goods': []");

	load_is(&told, NO_SUPPLIER, 500, 1);
	load_is(&told, 0, 3000, 4);
	load_is(&told, 1, 900, 4);
	load_is(&told, 2, 3000, 2);
}
END_TEST

START_TEST(without_a_vehicle_of_the_book_a_pickup_carries_any_volume)
{
	const struct pricing without = given(NULL);

	load_is(&without, NO_SUPPLIER, 700, 0);
	garden_fini(&garden);
	const struct pricing untold = given("'goods': []");

	load_is(&untold, NO_SUPPLIER, 700, 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("offer");
	TCase *offer = suite_case(suite, "offer");

	tcase_add_checked_fixture(offer, NULL, teardown);
	tcase_add_loop_test(offer, a_step_holds_costs_and_weighs_its_part_of_a_pack, 0,
		sizeof offers / sizeof *offers);
	tcase_add_loop_test(offer, what_cannot_be_turned_counted_or_paid_is_no_offer, 0,
		sizeof ways / sizeof *ways);
	tcase_add_test(offer, loads_are_those_of_the_book_or_those_allowed_for);
	tcase_add_test(offer, without_a_vehicle_of_the_book_a_pickup_carries_any_volume);
	return suite;
}
