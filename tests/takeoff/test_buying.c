/* What is bought and how: each rule by hand, and all ways to buy on small books. All prices are
 * invented. */
#include "support/runner.h"
#include "support/book.h"
#include "support/garden.h"
#include "takeoff/costs/buying.h"

#include <stdio.h>
#include <string.h>

static const double EXACT = 1e-9;
static const double POUND = 0.45359237; /* kg: NIST Special Publication 811, appendix B.8 */

/* Items to be bought by a book, without a plot. */
static struct block allow = { .kind = BLOCK_ALLOW };
static struct book book;
static struct arena arena;
static struct item_list items;
static struct costs costs;
static struct plot plot;
static bool has_plot, has_book;

static void setup(void)
{
	arena = ARENA_EMPTY;
	items = (struct item_list){ .arena = &arena, .allow = &allow };
	has_plot = has_book = false;
}

static void teardown(void)
{
	if (has_book)
		book_fini(&book);
	if (has_plot)
		plot_fini(&plot);
	arena_clear(&arena);
}

static void open_book(const char *rest)
{
	book_of(&book, rest);
	has_book = true;
}

static void allow_set(enum attribute a, const char *value)
{
	if (!has_plot)
		plot_from_rows(&plot, (const char *[]){ "b", NULL });
	has_plot = true;
	plot_set(&plot, 0, a, value);
	items.allow = &plot.details.allow;
}

static struct item *add(const char *id, double order)
{
	struct item item = { .order = order, .laid = order };

	ck_assert(good_find(id, &item.good, &item.name));
	return item_add(&items, &item);
}

static void buy(void)
{
	costs_compute(&costs, &items, has_book ? &book : NULL, UNITS_IMPERIAL, true);
}

/* How an item is bought: "2 box 12, 1 piece 1"; packs of what is loose to the hundredth. */
static const char *bought(int item)
{
	static char words[200];
	const struct purchase *purchase = item_purchase(&items, &items.list[item]);

	words[0] = '\0';
	for (int i = 0; purchase && i < purchase->count; i++)
		snprintf(words + strlen(words), sizeof words - strlen(words), "%s%.4g %s %s",
			i ? ", " : "", purchase->list[i].packs,
			pack_word(purchase->list[i].pack->kind), purchase->list[i].pack->words);
	return words;
}

#define GOODS(list) "'goods': [" list "]"
#define MULCH(packs) "'suppliers': [{'name': 'Yard', 'delivery': 60, 'holds': '5 cu yd', " \
	"'carries': '6000 lb'}], 'goods': [{'item': 'mulch', 'packs': [" packs "]}]"
#define BAG "{'pack': 'bag', 'size': '2 cu ft', 'price': 4}"
#define BULK \
	"{'pack': 'bulk', 'size': '1 cu yd', 'step': '0.5 cu yd', 'price': 36, 'supplier': 'Yard'}"

/* ---- One good -------------------------------------------------------------------------------- */

/* By arithmetic: 20 x 30 ft at 3 in are 150 cu ft, 75 bags of 2 cu ft; 13.5 of them are a cubic
 * yard. */
static const struct { double cubic_feet; const char *bags; money cost; } bags[] = {
	{ 150, "75 bag 2 cu ft", 30000 }, { 150.001, "76 bag 2 cu ft", 30400 },
	{ 149.999, "75 bag 2 cu ft", 30000 }, { 27, "14 bag 2 cu ft", 5600 },
	{ 2, "1 bag 2 cu ft", 400 }, { 0.01, "1 bag 2 cu ft", 400 },
};

START_TEST(whole_bags_cover_the_order_and_no_more)
{
	open_book(MULCH(BAG));
	add("mulch", bags[_i].cubic_feet * CUBIC_FOOT);
	buy();
	ck_assert_str_eq(bought(0), bags[_i].bags);
	ck_assert_int_eq(costs.total, bags[_i].cost);
	ck_assert(costs.cheapest && costs.complete);
}
END_TEST

static const struct { double cubic_yards, packs; money cost; } loose[] = {
	{ 2, 2, 7200 }, { 2.01, 2.5, 9000 }, { 0.1, 0.5, 1800 }, { 5.5, 5.5, 19800 },
};

START_TEST(bulk_is_bought_in_whole_steps)
{
	open_book(MULCH(BULK));
	add("mulch", loose[_i].cubic_yards * CUBIC_YARD);
	buy();
	const struct bought *of = items.list[0].purchase->list;

	ck_assert_int_eq(items.list[0].purchase->count, 1);
	ck_assert_double_eq_tol(of->packs, loose[_i].packs, EXACT);
	ck_assert_int_eq(of->cost, loose[_i].cost);
	ck_assert_double_eq_tol(of->volume, loose[_i].packs * CUBIC_YARD, EXACT);
}
END_TEST

START_TEST(the_step_that_is_allowed_for_holds_where_the_pack_has_none)
{
	open_book(MULCH("{'pack': 'bulk', 'size': '1 cu yd', 'price': 36}"));
	allow_set(ALLOW_TRUCK_STEP, "0.25 cu yd");
	add("mulch", 1.1 * CUBIC_YARD);
	buy();
	ck_assert_str_eq(bought(0), "1.25 bulk 1 cu yd");
	ck_assert_int_eq(costs.total, 4500);
}
END_TEST

/* Mulch at 600 lb/cu yd, an allowance of the default: 5 cu yd fill the truck, 10 cu yd 6,000 lb
 * would. */
static const struct { double cubic_yards; const char *density; int64_t drops; } loads[] = {
	{ 5, "600 lb/cu yd", 1 }, { 5.1, "600 lb/cu yd", 2 }, { 10, "600 lb/cu yd", 2 },
	{ 2, "3000 lb/cu yd", 1 }, { 2.5, "3000 lb/cu yd", 2 }, { 5, "3000 lb/cu yd", 3 },
};

START_TEST(the_load_that_is_full_first_decides_how_many_drops)
{
	open_book(MULCH(BULK));
	allow_set(ALLOW_DENSITY_MULCH, loads[_i].density);
	add("mulch", loads[_i].cubic_yards * CUBIC_YARD);
	buy();
	ck_assert_int_eq(costs.shipments[0].drops, loads[_i].drops);
	ck_assert_int_eq(costs.delivery, loads[_i].drops * 6000);
}
END_TEST

/* 36 a cubic yard and 60 for the delivery against 13.5 bags at 4. */
START_TEST(bags_win_until_the_delivery_is_worth_it)
{
	open_book(MULCH(BAG "," BULK));
	add("mulch", 2 * CUBIC_YARD);
	buy();
	ck_assert_str_eq(bought(0), "27 bag 2 cu ft");
	items.list[0].order = 4 * CUBIC_YARD;
	buy();
	ck_assert_str_eq(bought(0), "4 bulk 1 cu yd");
	ck_assert_int_eq(costs.total, 4 * 3600 + 6000);
}
END_TEST

/* 4.1 cu yd: 4 in bulk and 2.7 cu ft in 2 bags are 152, 4 1/2 in bulk 162; the delivery is 60 for
 * both. */
START_TEST(bulk_is_topped_up_with_bags)
{
	open_book(MULCH(BAG "," BULK));
	add("mulch", 4.1 * CUBIC_YARD);
	buy();
	ck_assert_str_eq(bought(0), "2 bag 2 cu ft, 4 bulk 1 cu yd");
	ck_assert_int_eq(costs.goods, 2 * 400 + 4 * 3600);
	ck_assert_int_eq(costs.delivery, 6000);
}
END_TEST

#define EDGING "{'item': 'edging.piece', 'packs': [{'pack': 'piece', 'size': 1, 'price': 11}, " \
	"{'pack': 'bundle', 'size': 6, 'price': 60}]}"
#define TUBES "{'item': 'adhesive.cartridge', 'packs': [{'pack': 'piece', 'size': 1, 'price': " \
	"8}, {'pack': 'box', 'size': 10, 'price': 70}]}"

/* 31 pieces: 5 bundles of 6 and one are 311, 31 pieces 341, 6 bundles 360. 21 cartridges: 2 boxes
 * of 10 and one are 148, 21 pieces 168, 3 boxes 210. 29: 3 boxes are 210, 2 and 9 pieces 212. */
START_TEST(bundles_and_pieces_boxes_and_tubes_are_mixed)
{
	open_book(GOODS(EDGING "," TUBES));
	add("edging.piece", 31);
	add("adhesive.cartridge", 21);
	buy();
	ck_assert_str_eq(bought(0), "1 piece 1, 5 bundle 6");
	ck_assert_int_eq(items.list[0].purchase->cost, 31100);
	ck_assert_str_eq(bought(1), "1 piece 1, 2 box 10");
	ck_assert_int_eq(items.list[1].purchase->cost, 14800);
	items.list[1].order = 29;
	buy();
	ck_assert_str_eq(bought(1), "3 box 10");
}
END_TEST

/* Of 12 pieces ten come in a box of 10 lb; what the other two weigh is not told. */
START_TEST(a_purchase_is_weighed_where_all_of_it_is)
{
	open_book(GOODS("{'item': 'fence.bracket', 'packs': [{'pack': 'piece', 'size': 1, "
		"'price': 1}, {'pack': 'box', 'size': 10, 'price': 8, 'weight': '10 lb'}]}"));
	add("fence.bracket", 12);
	buy();
	ck_assert_str_eq(bought(0), "2 piece 1, 1 box 10");
	ck_assert(!items.list[0].purchase->is_weighed);
	ck_assert_double_eq(items.list[0].weight, 0);
	items.list[0].order = 10;
	buy();
	ck_assert(items.list[0].purchase->is_weighed);
	ck_assert_double_eq_tol(items.list[0].weight, 10 * POUND, 1e-6);
}
END_TEST

/* All cost 16: 8 bags of 1 cu ft, 4 of 2, and 2 of 4.5 cu ft, which is too much. */
START_TEST(of_ways_that_cost_the_same_the_least_surplus_then_the_fewest_packs)
{
	open_book(MULCH("{'pack': 'bag', 'size': '4.5 cu ft', 'price': 8}, {'pack': 'bag', "
		"'size': '1 cu ft', 'price': 2}," BAG));
	add("mulch", 8 * CUBIC_FOOT);
	buy();
	ck_assert_str_eq(bought(0), "4 bag 2 cu ft");
	ck_assert_int_eq(costs.total, 1600);
}
END_TEST

START_TEST(of_packs_that_are_alike_the_earlier_is_taken)
{
	open_book(MULCH("{'pack': 'box', 'size': '2 cu ft', 'price': 4}," BAG));
	add("mulch", 8 * CUBIC_FOOT);
	buy();
	ck_assert_str_eq(bought(0), "4 box 2 cu ft");
}
END_TEST

/* 40 lb bags of topsoil at 2,000 lb/cu yd, the default: 50 bags to the yard. */
START_TEST(what_goes_by_volume_may_be_sold_by_weight)
{
	open_book(GOODS("{'item': 'soil.topsoil', 'packs': [{'pack': 'bag', 'size': '40 lb', "
		"'price': 3.15}]}"));
	add("soil.topsoil", CUBIC_YARD);
	buy();
	ck_assert_str_eq(bought(0), "50 bag 40 lb");
	ck_assert_int_eq(costs.total, 15750);
	ck_assert_double_eq_tol(items.list[0].weight, 2000 * POUND, 1e-6);
	ck_assert_double_eq(items.list[0].purchase->list[0].volume, 0);
}
END_TEST

START_TEST(bulk_by_weight_fills_a_truck_by_its_volume_too)
{
	open_book("'suppliers': [{'name': 'Yard', 'delivery': 10, 'holds': '1 cu yd', "
		"'carries': '90000 lb'}], 'goods': [{'item': 'soil.topsoil', 'packs': [{'pack': "
		"'bulk', 'size': '2000 lb', 'price': 30, 'supplier': 'Yard'}]}]");
	add("soil.topsoil", 2.2 * CUBIC_YARD);
	buy();
	ck_assert_double_eq_tol(items.list[0].purchase->list[0].volume, 3 * CUBIC_YARD, EXACT);
	ck_assert_int_eq(costs.shipments[0].drops, 3);
}
END_TEST

START_TEST(half_a_hundredth_is_rounded_up)
{
	open_book(GOODS("{'item': 'mulch', 'packs': [{'pack': 'bulk', 'size': '1 m3', "
		"'step': '0.5 m3', 'price': 42.25}]}"));
	add("mulch", 1.5);
	buy();
	ck_assert_int_eq(costs.total, 6338); /* 63.375 */
}
END_TEST

START_TEST(a_cost_past_all_reckoning_is_no_way_to_buy)
{
	open_book(GOODS("{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '0.001 L', "
		"'price': 1000000}]}"));
	add("mulch", 1e6);
	buy();
	ck_assert(!items.list[0].purchase->is_priced);
	ck_assert_int_eq(costs.unpriced, 1);
	items.list[0].order = 1e-6;
	buy();
	ck_assert_int_eq(costs.total, 100000000);
	ck_assert_int_eq(costs.unpriced, 0);
}
END_TEST

START_TEST(free_goods_have_a_price_of_nothing)
{
	open_book(GOODS("{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '50 L', 'price': "
		"0}]}"));
	add("mulch", 1);
	buy();
	ck_assert_str_eq(bought(0), "20 bag 50 L");
	ck_assert(items.list[0].purchase->is_priced && costs.complete);
	ck_assert_int_eq(costs.total, 0);
}
END_TEST

/* ---- Packs without a price ------------------------------------------------------------------- */

/* 40 cu ft: of bags of 3 and 1.5 cu ft the least surplus is that of 40.5: 13 of 3 and one of 1.5
 * are the fewest. 14 of 3 would be 42. */
START_TEST(without_any_price_the_least_surplus_then_the_fewest_packs)
{
	open_book(GOODS("{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '1.5 cu ft'}, "
		"{'pack': 'bag', 'size': '3 cu ft'}]}"));
	add("mulch", 40 * CUBIC_FOOT);
	buy();
	ck_assert_str_eq(bought(0), "1 bag 1.5 cu ft, 13 bag 3 cu ft");
	ck_assert(!items.list[0].purchase->is_priced);
	ck_assert_int_eq(costs.unpriced, 1);
	ck_assert(!costs.complete);
	ck_assert_int_eq(costs.goods, 0);
}
END_TEST

START_TEST(packs_with_a_price_are_taken_alone)
{
	open_book(GOODS("{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '1 cu ft'}, "
		"{'pack': 'bag', 'size': '3 cu ft', 'price': 9}]}"));
	add("mulch", 4 * CUBIC_FOOT);
	buy();
	ck_assert_str_eq(bought(0), "2 bag 3 cu ft");
	ck_assert_int_eq(costs.total, 1800);
}
END_TEST

/* 3 pallets of 1,000 lb on trucks of 2,000 lb are 2 drops at 50, with a price or not. The fourth
 * one rides along: 120 against 60 pieces at 2.30, 138, though a drop of its own would make it
 * 170. */
#define UNPRICED_BLOCK "'suppliers': [{'name': 'Yard', 'delivery': 50, 'carries': '2000 lb'}], " \
	"'goods': [{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', 'packs': [{'pack': " \
	"'pallet', 'size': 60, 'weight': '1000 lb', 'supplier': 'Yard'}]}, {'item': " \
	"'adhesive.cartridge', 'packs': [{'pack': 'piece', 'size': 1, 'price': 2.3}, {'pack': " \
	"'pallet', 'size': 60, 'price': 120, 'weight': '1000 lb', 'supplier': 'Yard'}]}]"

START_TEST(what_has_no_price_takes_drops_and_others_ride_along)
{
	static const struct size block = { 16 * NM_PER_INCH, 8 * NM_PER_INCH, 6 * NM_PER_INCH };

	open_book(UNPRICED_BLOCK);
	add("block.wall", 170)->block = block;
	add("adhesive.cartridge", 60);
	buy();
	ck_assert_str_eq(bought(0), "3 pallet 60");
	ck_assert_str_eq(bought(1), "1 pallet 60");
	ck_assert_int_eq(costs.shipments[0].drops, 2);
	ck_assert_int_eq(costs.delivery, 10000);
	ck_assert_double_eq_tol(costs.shipments[0].weight, 4000 * POUND, 1e-6);
	/* Four pallets fill both trucks: the fifth does not ride along any more. */
	items.list[0].order = 190;
	buy();
	ck_assert_str_eq(bought(0), "4 pallet 60");
	ck_assert_str_eq(bought(1), "60 piece 1");
}
END_TEST

/* Pallets without a price, on a truck that has room for the other good's: that comes on another
 * day, and 50 pieces at 3 are less than its pallet at 130 with a delivery of 90. */
START_TEST(what_has_no_price_takes_nothing_along_on_another_day)
{
	open_book("'suppliers': [{'name': 'Yard', 'delivery': 90, 'carries': '12000 lb'}], "
		"'goods': [{'item': 'edging.piece', 'packs': [{'pack': 'pallet', 'size': 60, "
		"'weight': '3000 lb', 'supplier': 'Yard'}]}, {'item': 'fence.bracket', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 3}, {'pack': 'pallet', 'size': 50, "
		"'price': 130, 'weight': '1600 lb', 'supplier': 'Yard'}]}]");
	add("edging.piece", 180);
	add("fence.bracket", 50);
	buy();
	ck_assert_str_eq(bought(0), "3 pallet 60");
	ck_assert_str_eq(bought(1), "50 piece 1");
}
END_TEST

/* ---- Shared deliveries ----------------------------------------------------------------------- */

/* 180 pieces of edging are 3 pallets at 200 of 3,000 lb. 50 of the other good: a pallet of 1,600 lb
 * at 130, or pieces at 3 that one collects, 150. By itself the pallet is dearer with its delivery,
 * 220. */
#define PALLETS(other, carries) "'suppliers': [{'name': 'Yard', 'delivery': 90, 'carries': '" \
	carries "'}], 'goods': [{'item': 'edging.piece', 'packs': [{'pack': 'pallet', 'size': " \
	"60, 'price': 200, 'weight': '3000 lb', 'supplier': 'Yard'}]}, {'item': '" other "', " \
	"'packs': [{'pack': 'piece', 'size': 1, 'price': 3}, {'pack': 'pallet', 'size': 50, " \
	"'price': 130, 'weight': '1600 lb', 'supplier': 'Yard'}]}]"

static void buy_pallets(const char *rest, double pieces)
{
	open_book(rest);
	add("edging.piece", pieces);
	add("edging.spike", 50);
	buy();
}

START_TEST(a_pallet_rides_free_on_a_drop_that_is_paid_for)
{
	buy_pallets(PALLETS("edging.spike", "12000 lb"), 180);
	ck_assert_str_eq(bought(1), "1 pallet 50");
	ck_assert_int_eq(costs.total, 3 * 20000 + 13000 + 9000);
	ck_assert_int_eq(costs.shipments[0].drops, 1);
}
END_TEST

START_TEST(a_pallet_that_needs_a_drop_more_is_collected_in_pieces)
{
	buy_pallets(PALLETS("edging.spike", "10000 lb"), 180);
	ck_assert_str_eq(bought(1), "50 piece 1");
	ck_assert_int_eq(costs.total, 3 * 20000 + 15000 + 9000);
}
END_TEST

START_TEST(nothing_rides_along_where_nothing_else_comes)
{
	open_book(PALLETS("edging.spike", "12000 lb"));
	add("edging.spike", 50);
	buy();
	ck_assert_str_eq(bought(0), "50 piece 1");
}
END_TEST

START_TEST(nothing_rides_along_on_another_day)
{
	open_book(PALLETS("fence.bracket", "12000 lb"));
	add("edging.piece", 180);
	add("fence.bracket", 50);
	buy();
	ck_assert_str_eq(bought(1), "50 piece 1");
}
END_TEST

/* Two goods that each come by themselves at no gain share a drop at a gain: 12 pieces at 4 or a
 * box at 30, twice, and one delivery of 20. */
START_TEST(two_goods_share_a_drop_that_neither_would_pay_for)
{
	open_book("'suppliers': [{'name': 'Shop', 'delivery': 20}], 'goods': [{'item': "
		"'fabric.pin', 'packs': [{'pack': 'piece', 'size': 1, 'price': 4}, {'pack': "
		"'box', 'size': 12, 'price': 30, 'supplier': 'Shop'}]}, {'item': 'edging.spike', "
		"'packs': [{'pack': 'piece', 'size': 1, 'price': 4}, {'pack': 'box', 'size': 12, "
		"'price': 30, 'supplier': 'Shop'}]}]");
	add("fabric.pin", 12);
	buy();
	ck_assert_str_eq(bought(0), "12 piece 1");
	add("edging.spike", 12);
	buy();
	ck_assert_str_eq(bought(0), "1 box 12");
	ck_assert_str_eq(bought(1), "1 box 12");
	ck_assert_int_eq(costs.total, 8000);
}
END_TEST

#define SOIL_BULK "{'pack': 'bulk', 'size': '1 cu yd', 'step': '0.5 cu yd', 'price': 30, " \
	"'supplier': 'Yard'}"
#define YARD "'suppliers': [{'name': 'Yard', 'delivery': 70}]"

START_TEST(goods_in_bulk_share_no_truck)
{
	open_book(YARD ", 'goods': [{'item': 'soil.topsoil', 'packs': [" SOIL_BULK "]}, {'item': "
		"'soil.compost', 'packs': [" SOIL_BULK "]}]");
	add("soil.topsoil", CUBIC_YARD);
	add("soil.compost", CUBIC_YARD);
	buy();
	ck_assert_int_eq(costs.shipments[0].drops, 2);
	ck_assert_int_eq(costs.delivery, 14000);
}
END_TEST

/* ---- The same thing -------------------------------------------------------------------------- */

static const char *const one_topsoil[] = {
	/* one row, for beds or for lawns; two that are alike */
	"{'item': 'soil.topsoil', 'packs': [" SOIL_BULK "]}",
	"{'item': 'topsoil.lawn', 'packs': [" SOIL_BULK "]}",
	"{'item': 'topsoil.lawn', 'packs': [" SOIL_BULK "]}, "
	"{'item': 'soil.topsoil', 'packs': [" SOIL_BULK "]}",
};

/* 1.3 and 0.6 cu yd: apart 1 1/2 and 1 yd in two drops, together 2 yd in one. */
START_TEST(topsoil_of_beds_and_lawns_is_bought_at_once)
{
	struct text rest = TEXT_EMPTY;

	text_print(&rest, YARD ", 'goods': [%s]", one_topsoil[_i]);
	open_book(rest.bytes);
	text_fini(&rest);
	add("soil.topsoil", 1.3 * CUBIC_YARD);
	add("topsoil.lawn", 0.6 * CUBIC_YARD);
	buy();
	ck_assert_str_eq(bought(0), "2 bulk 1 cu yd");
	ck_assert_ptr_null(items.list[1].purchase);
	ck_assert_int_eq(items.list[1].with, 0);
	ck_assert_int_eq(costs.total, 6000 + 7000);
	ck_assert_int_eq(costs.unpriced, 0);
	ck_assert_int_eq(items.list[0].purchase->day, DAY_FILL);
	ck_assert_ptr_eq(items.list[0].purchase->goods, &book.goods[_i == 2]);
}
END_TEST

START_TEST(what_is_bought_at_once_comes_on_the_first_day_that_needs_it)
{
	open_book(YARD ", 'goods': [{'item': 'soil.topsoil', 'packs': [" SOIL_BULK "]}]");
	add("topsoil.lawn", 0.6 * CUBIC_YARD);
	add("soil.topsoil", 1.3 * CUBIC_YARD);
	buy();
	ck_assert_int_eq(items.list[1].with, 0);
	ck_assert_int_eq(items.list[0].purchase->day, DAY_FILL);
	ck_assert_int_eq(costs.shipments[0].day, DAY_FILL);
}
END_TEST

START_TEST(topsoil_that_is_sold_otherwise_for_lawns_is_another_good)
{
	open_book(YARD ", 'goods': [{'item': 'soil.topsoil', 'packs': [" SOIL_BULK "]}, {'item': "
		"'topsoil.lawn', 'spec': 'fine', 'packs': [" SOIL_BULK "]}]");
	add("soil.topsoil", 1.3 * CUBIC_YARD);
	add("topsoil.lawn", 0.6 * CUBIC_YARD);
	buy();
	ck_assert_str_eq(bought(0), "1.5 bulk 1 cu yd");
	ck_assert_str_eq(bought(1), "1 bulk 1 cu yd");
	ck_assert_int_eq(costs.delivery, 14000);
	ck_assert_str_eq(items.list[1].purchase->spec, "fine");
}
END_TEST

#define PANEL(keys, price) "{'item': 'fence.panel', " keys " 'packs': [{'pack': 'piece', " \
	"'size': 1, 'price': " price "}]}"

static struct item *add_panel(double count, nm section, nm height)
{
	struct item *panel = add("fence.panel", count);

	panel->length = section;
	panel->height = height;
	return panel;
}

START_TEST(panels_of_another_height_are_other_goods)
{
	open_book(GOODS(PANEL("'length': '8 ft', 'height': '3 ft',", "40") ","
		PANEL("'length': '8 ft', 'height': '6 ft',", "75")));
	add_panel(3, 8 * NM_PER_FOOT, 3 * NM_PER_FOOT);
	add_panel(2, 8 * NM_PER_FOOT, 6 * NM_PER_FOOT);
	add_panel(4, 8 * NM_PER_FOOT, 3 * NM_PER_FOOT);
	add_panel(1, 8 * NM_PER_FOOT, 4 * NM_PER_FOOT);
	buy();
	ck_assert_str_eq(bought(0), "7 piece 1");
	ck_assert_int_eq(items.list[2].with, 0);
	ck_assert_int_eq(items.list[0].purchase->cost, 28000);
	ck_assert_int_eq(items.list[1].purchase->cost, 15000);
	ck_assert(!items.list[3].purchase->is_priced);
}
END_TEST

START_TEST(goods_of_the_plots_own_are_bought_by_their_name)
{
	struct item *boards, *other;

	open_book(GOODS("{'item': 'extra', 'name': 'Batter boards', 'packs': [{'pack': 'bundle', "
		"'size': '40 ft', 'price': 18}]}"));
	boards = add("extra", 30 * 0.3048);
	boards->name = "Batter boards";
	boards->unit = UNIT_M;
	other = add("extra", 2);
	other->name = "String";
	buy();
	ck_assert_str_eq(bought(0), "1 bundle 40 ft");
	ck_assert_int_eq(costs.total, 1800);
	ck_assert_str_eq(bought(1), "2 piece 1");
	ck_assert_int_eq(costs.unpriced, 1);
	ck_assert_int_eq(items.list[0].purchase->day, DAY_OTHER);
}
END_TEST

/* ---- Much, and too much ---------------------------------------------------------------------- */

/* 1,000,000 pieces: 83,333 boxes of 12 at 49.20 and 4 pieces at 4.10 are what a million pieces at
 * 4.10 are. */
START_TEST(a_million_pieces_are_bought_at_once)
{
	open_book(GOODS("{'item': 'edging.spike', 'packs': [{'pack': 'piece', 'size': 1, "
		"'price': 4.1}, {'pack': 'box', 'size': 12, 'price': 49.2}]}"));
	add("edging.spike", 1e6);
	buy();
	ck_assert_int_eq(costs.total, 410000000);
	ck_assert(costs.cheapest);
	ck_assert_double_eq(items.list[0].purchase->list[0].packs, 4);
	ck_assert_double_eq(items.list[0].purchase->list[1].packs, 83333);
}
END_TEST

/* Two goods that all of so many suppliers have, at other prices: the cheapest are the last one's,
 * 20, and the first one's, 20. Any one of them brings both for 20 and 20 + count - 1. */
static void buy_from(int count)
{
	struct text rest = TEXT_EMPTY;

	text_add(&rest, "'suppliers': [");
	for (int i = 0; i < count; i++)
		text_print(&rest, "%s{'name': 'Yard %d', 'delivery': 40}", i ? ", " : "", i);
	text_add(&rest, "], 'goods': [");
	for (int i = 0; i < 2; i++) {
		text_print(&rest, "%s{'item': '%s', 'packs': [", i ? ", " : "",
			i ? "fence.hinge" : "fence.bolt");
		for (int j = 0; j < count; j++)
			text_print(&rest, "%s{'pack': 'box', 'size': 1, 'price': %d, 'supplier': "
				"'Yard %d'}", j ? ", " : "", i ? 20 + j : 19 + count - j, j);
		text_add(&rest, "]}");
	}
	text_add(&rest, "]");
	open_book(rest.bytes);
	text_fini(&rest);
	add("fence.bolt", 1);
	add("fence.hinge", 1);
	buy();
}

START_TEST(up_to_12_suppliers_of_a_day_are_weighed_against_each_other)
{
	buy_from(12);
	ck_assert(costs.cheapest);
	ck_assert_int_eq(costs.goods, 2000 + 3100);
	ck_assert_int_eq(costs.delivery, 4000);
}
END_TEST

/* Each at its cheapest, and a delivery for each. */
START_TEST(beyond_that_each_good_is_bought_by_itself_and_it_is_said)
{
	buy_from(13);
	ck_assert(!costs.cheapest);
	ck_assert_int_eq(costs.goods, 2000 + 2000);
	ck_assert_int_eq(costs.delivery, 8000);
}
END_TEST

/* ---- Every way to buy ------------------------------------------------------------------------ */

enum { KINDS = 3, PACKS = 3 };
static const char *const kinds[KINDS] = { "soil.compost", "mulch", "soil.topsoil" };

/* Packs of two or three goods of one day, two suppliers; order: in cubic feet. */
static int small_book(struct random *random, int order[KINDS])
{
	struct text rest = TEXT_EMPTY;
	int goods = random_between(random, 2, KINDS);

	text_print(&rest, "'suppliers': [{'name': 'A', 'delivery': %d, 'carries': '%d lb', "
		"'holds': '%d cu ft'}, {'name': 'B', 'delivery': %d, 'carries': '%d lb'}], "
		"'goods': [",
		random_below(random, 40), random_between(random, 100, 900),
		random_between(random, 4, 40), random_below(random, 40),
		random_between(random, 100, 900));
	for (int i = 0; i < goods; i++) {
		order[i] = random_between(random, 1, 14);
		text_print(&rest, "%s{'item': '%s', 'packs': [", i ? ", " : "", kinds[i]);
		for (int j = 0; j < (goods == 2 ? PACKS : 2); j++) {
			int size = random_between(random, (order[i] + 3) / 4, 9);
			bool is_bulk = random_below(random, 3) == 0;

			text_print(&rest, "%s{'pack': '%s', 'size': '%d cu ft', 'price': %d.%d0",
				j ? ", " : "", is_bulk ? "bulk" : "bag", size,
				random_below(random, 40), random_below(random, 10));
			if (is_bulk)
				text_print(&rest, ", 'step': '%d cu ft'", size);
			if (random_below(random, 2))
				text_print(&rest, ", 'weight': '%d lb'",
					random_between(random, 10, 400));
			if (random_below(random, 3))
				text_print(&rest, ", 'supplier': '%c'",
					'A' + random_below(random, 2));
			text_add(&rest, "}");
		}
		text_add(&rest, "]}");
	}
	text_add(&rest, "]");
	open_book(rest.bytes);
	text_fini(&rest);
	return goods;
}

static int64_t full_loads(double weight, double volume, const struct supplier *by)
{
	int64_t n = 1;

	while ((double)n * by->carries < weight * (1 - 1e-12) ||
		(double)n * (by->holds > 0 ? by->holds : 10 * CUBIC_YARD) < volume * (1 - 1e-12))
		n++;
	return n;
}

static double unit_weight(int kind)
{
	static const double pounds[KINDS] = { 1100, 600, 2000 }; /* a cubic yard, the defaults */

	return pounds[kind] * POUND / CUBIC_YARD;
}

/* What so many packs cost with their drops; below 0 where they are too few. */
static money cost_of(int goods, const int order[KINDS], int counts[KINDS][PACKS])
{
	money cost = 0;

	for (int i = 0; i < goods; i++) {
		double held = 0;

		for (int j = 0; j < book.goods[i].pack_count; j++) {
			held += counts[i][j] * book.goods[i].packs[j].size;
			cost += counts[i][j] * book.goods[i].packs[j].price;
		}
		if (held < order[i] * CUBIC_FOOT * (1 - 1e-9))
			return -1;
	}
	for (int s = 0; s < 2; s++) {
		double packed = 0;
		bool is_packed = false;
		int64_t drops = 0;

		for (int i = 0; i < goods; i++) {
			double weight = 0, volume = 0;
			bool is_bulk = false;

			for (int j = 0; j < book.goods[i].pack_count; j++) {
				const struct pack *pack = &book.goods[i].packs[j];
				double each = pack->weight > 0 ? pack->weight :
					pack->size * unit_weight(i);

				if (pack->supplier != s || counts[i][j] == 0)
					continue;
				if (pack->kind == PACK_BULK) {
					is_bulk = true;
					weight += counts[i][j] * each;
					volume += counts[i][j] * pack->size;
				} else {
					is_packed = true;
					packed += counts[i][j] * each;
				}
			}
			drops += is_bulk ? full_loads(weight, volume, &book.suppliers[s]) : 0;
		}
		drops += is_packed ? full_loads(packed, 0, &book.suppliers[s]) : 0;
		cost += drops * book.suppliers[s].delivery;
	}
	return cost;
}

static money cheapest_of_all(int goods, const int order[KINDS])
{
	int counts[KINDS][PACKS] = { { 0 } };
	money best = -1;

	for (;;) {
		money cost = cost_of(goods, order, counts);
		int at = 0;

		if (cost >= 0 && (best < 0 || cost < best))
			best = cost;
		for (; at < goods * PACKS; at++) {
			int i = at / PACKS, j = at % PACKS;

			if (j >= book.goods[i].pack_count)
				continue;
			if (counts[i][j] * book.goods[i].packs[j].size < order[i] * CUBIC_FOOT) {
				counts[i][j]++;
				break;
			}
			counts[i][j] = 0;
		}
		if (at == goods * PACKS)
			return best;
	}
}

START_TEST(no_way_to_buy_of_all_there_are_is_cheaper)
{
	int count = runner_count(12, 200);

	for (int seed = _i * count; seed < (_i + 1) * count; seed++) {
		struct random random = { (uint64_t)seed };
		int order[KINDS] = { 0 }, goods;

		setup();
		goods = small_book(&random, order);
		for (int i = 0; i < goods && i < KINDS; i++)
			add(kinds[i], order[i] * CUBIC_FOOT);
		buy();
		ck_assert_msg(costs.cheapest, "seed %d", seed);
		ck_assert_msg(costs.total == cheapest_of_all(goods, order), "seed %d: %lld, not "
			"%lld", seed, (long long)costs.total,
			(long long)cheapest_of_all(goods, order));
		teardown();
	}
	setup();
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("buying");
	TCase *one = suite_case(suite, "one good");
	TCase *unpriced = suite_case(suite, "without a price");
	TCase *shared = suite_case(suite, "shared");
	TCase *same = suite_case(suite, "the same thing");
	TCase *much = suite_case(suite, "much");
	TCase *all = suite_case(suite, "all ways");
	TCase *cases[] = { one, unpriced, shared, same, much, all };

	for (size_t i = 0; i < sizeof cases / sizeof *cases; i++)
		tcase_add_checked_fixture(cases[i], setup, teardown);
	tcase_add_loop_test(one, whole_bags_cover_the_order_and_no_more, 0,
		sizeof bags / sizeof *bags);
	tcase_add_loop_test(one, bulk_is_bought_in_whole_steps, 0, sizeof loose / sizeof *loose);
	tcase_add_test(one, the_step_that_is_allowed_for_holds_where_the_pack_has_none);
	tcase_add_loop_test(one, the_load_that_is_full_first_decides_how_many_drops, 0,
		sizeof loads / sizeof *loads);
	tcase_add_test(one, bags_win_until_the_delivery_is_worth_it);
	tcase_add_test(one, bulk_is_topped_up_with_bags);
	tcase_add_test(one, bundles_and_pieces_boxes_and_tubes_are_mixed);
	tcase_add_test(one, a_purchase_is_weighed_where_all_of_it_is);
	tcase_add_test(one, of_ways_that_cost_the_same_the_least_surplus_then_the_fewest_packs);
	tcase_add_test(one, of_packs_that_are_alike_the_earlier_is_taken);
	tcase_add_test(one, what_goes_by_volume_may_be_sold_by_weight);
	tcase_add_test(one, bulk_by_weight_fills_a_truck_by_its_volume_too);
	tcase_add_test(one, half_a_hundredth_is_rounded_up);
	tcase_add_test(one, a_cost_past_all_reckoning_is_no_way_to_buy);
	tcase_add_test(one, free_goods_have_a_price_of_nothing);

	tcase_add_test(unpriced, without_any_price_the_least_surplus_then_the_fewest_packs);
	tcase_add_test(unpriced, packs_with_a_price_are_taken_alone);
	tcase_add_test(unpriced, what_has_no_price_takes_drops_and_others_ride_along);
	tcase_add_test(unpriced, what_has_no_price_takes_nothing_along_on_another_day);

	tcase_add_test(shared, a_pallet_rides_free_on_a_drop_that_is_paid_for);
	tcase_add_test(shared, a_pallet_that_needs_a_drop_more_is_collected_in_pieces);
	tcase_add_test(shared, nothing_rides_along_where_nothing_else_comes);
	tcase_add_test(shared, nothing_rides_along_on_another_day);
	tcase_add_test(shared, two_goods_share_a_drop_that_neither_would_pay_for);
	tcase_add_test(shared, goods_in_bulk_share_no_truck);

	tcase_add_loop_test(same, topsoil_of_beds_and_lawns_is_bought_at_once, 0,
		sizeof one_topsoil / sizeof *one_topsoil);
	tcase_add_test(same, what_is_bought_at_once_comes_on_the_first_day_that_needs_it);
	tcase_add_test(same, topsoil_that_is_sold_otherwise_for_lawns_is_another_good);
	tcase_add_test(same, panels_of_another_height_are_other_goods);
	tcase_add_test(same, goods_of_the_plots_own_are_bought_by_their_name);

	tcase_add_test(much, a_million_pieces_are_bought_at_once);
	tcase_add_test(much, up_to_12_suppliers_of_a_day_are_weighed_against_each_other);
	tcase_add_test(much, beyond_that_each_good_is_bought_by_itself_and_it_is_said);

	tcase_add_loop_test(all, no_way_to_buy_of_all_there_are_is_cheaper, 0, 6);
	return suite;
}
