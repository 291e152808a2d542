#include "support/runner.h"
#include "support/book.h"
#include "support/garden.h"
#include "takeoff/costs/quote.h"

#include <math.h>
#include <string.h>

static const double EXACT = 1e-9;
static const double POUND = 0.45359237; /* kg: NIST Special Publication 811, appendix B.8 */

/* An item to be bought by a book, without a plot. */
static struct block allow = { .kind = BLOCK_ALLOW };
static struct book book;
static struct pricing pricing;

static void teardown(void)
{
	book_fini(&book);
	block_fini(&allow);
}

static void open_book(const char *rest)
{
	book_of(&book, rest);
	pricing = (struct pricing){ .book = &book, .allow = &allow };
}

/* By the values then in force. */
static struct item item_of(const char *id, double order)
{
	struct arena arena = ARENA_EMPTY;
	struct item_list items = { .arena = &arena, .allow = pricing.allow };
	struct item item = { .order = order };

	ck_assert(good_find(id, &item.good, &item.name));
	item = *item_add(&items, &item);
	arena_clear(&arena);
	return item;
}

#define MULCH(packs) "'suppliers': [{'name': 'Yard', 'delivery': 60, 'holds': '5 cu yd', " \
	"'carries': '6000 lb'}], 'goods': [{'item': 'mulch', 'packs': [" packs "]}]"
#define BAG "{'pack': 'bag', 'size': '2 cu ft', 'price': 4}"
#define BULK \
	"{'pack': 'bulk', 'size': '1 cu yd', 'step': '0.5 cu yd', 'price': 36, 'supplier': 'Yard'}"

/* 20 x 30 ft at 3 in: 150 cu ft, 75 bags of 2 cu ft (an extension service's column of 2002).
 * 13.5 bags of 2 cu ft are a cubic yard, by the definition of the yard. */
static const struct { double cubic_feet, bags; } bags[] = {
	{ 150, 75 }, { 150.001, 76 }, { 149.999, 75 }, { 27, 14 }, { 2, 1 }, { 0.01, 1 },
	{ 148, 74 },
};

START_TEST(whole_bags_cover_the_order_and_no_more)
{
	struct quote quote;

	open_book(MULCH(BAG));
	struct item mulch = item_of("mulch", bags[_i].cubic_feet * CUBIC_FOOT);

	ck_assert(quote_best(&quote, &pricing, &mulch));
	ck_assert_double_eq(quote.packs, bags[_i].bags);
	ck_assert_int_eq(quote.cost, (money)bags[_i].bags * 400);
	ck_assert_int_eq(quote.drops, 0);
	ck_assert_int_eq(quote.delivery, 0);
}
END_TEST

static const struct { double cubic_yards, packs; money cost; } loose[] = {
	{ 2, 2, 7200 }, { 2.01, 2.5, 9000 }, { 0.1, 0.5, 1800 }, { 5.5, 5.5, 19800 },
};

START_TEST(bulk_is_bought_in_whole_steps)
{
	struct quote quote;

	open_book(MULCH(BULK));
	struct item mulch = item_of("mulch", loose[_i].cubic_yards * CUBIC_YARD);

	ck_assert(quote_best(&quote, &pricing, &mulch));
	ck_assert_double_eq_tol(quote.packs, loose[_i].packs, EXACT);
	ck_assert_int_eq(quote.cost, loose[_i].cost);
	ck_assert_double_eq_tol(quote.volume, loose[_i].packs * CUBIC_YARD, EXACT);
}
END_TEST

START_TEST(the_step_that_is_allowed_for_holds_where_the_pack_has_none)
{
	struct quote quote;
	struct plot plot;

	open_book(MULCH("{'pack': 'bulk', 'size': '1 cu yd', 'price': 36}"));
	struct item mulch = item_of("mulch", 1.1 * CUBIC_YARD);

	ck_assert(quote_best(&quote, &pricing, &mulch));
	ck_assert_double_eq_tol(quote.packs, 1.5, EXACT);
	plot_from_rows(&plot, (const char *[]){ "b", NULL });
	plot_set(&plot, 0, ALLOW_TRUCK_STEP, "0.25 cu yd");
	pricing.allow = &plot.details.allow;
	ck_assert(quote_best(&quote, &pricing, &mulch));
	ck_assert_double_eq_tol(quote.packs, 1.25, EXACT);
	ck_assert_int_eq(quote.cost, 4500);
	plot_fini(&plot);
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
	struct quote quote;
	struct plot plot;

	open_book(MULCH(BULK));
	plot_from_rows(&plot, (const char *[]){ "b", NULL });
	plot_set(&plot, 0, ALLOW_DENSITY_MULCH, loads[_i].density);
	pricing.allow = &plot.details.allow;
	struct item mulch = item_of("mulch", loads[_i].cubic_yards * CUBIC_YARD);

	ck_assert(quote_best(&quote, &pricing, &mulch));
	ck_assert_int_eq(quote.drops, loads[_i].drops);
	ck_assert_int_eq(quote.delivery, loads[_i].drops * 6000);
	plot_fini(&plot);
}
END_TEST

/* 36 a cubic yard and 60 for the delivery against 13.5 bags at 4. */
START_TEST(bags_win_until_the_delivery_is_worth_it)
{
	struct quote quote;

	open_book(MULCH(BAG "," BULK));
	struct item little = item_of("mulch", 2 * CUBIC_YARD);
	struct item much = item_of("mulch", 4 * CUBIC_YARD);

	ck_assert(quote_best(&quote, &pricing, &little));
	ck_assert_int_eq(quote.pack->kind, PACK_BAG);
	ck_assert_int_eq(quote.cost, 27 * 400);
	ck_assert(quote_best(&quote, &pricing, &much));
	ck_assert_int_eq(quote.pack->kind, PACK_BULK);
	ck_assert_int_eq(quote.cost, 4 * 3600);
	ck_assert_int_eq(quote.delivery, 6000);
}
END_TEST

START_TEST(of_two_ways_that_cost_the_same_the_earlier_is_taken)
{
	struct quote quote;

	open_book(MULCH("{'pack': 'bag', 'size': '1 cu ft', 'price': 2}," BAG));
	struct item mulch = item_of("mulch", 8 * CUBIC_FOOT);

	ck_assert(quote_best(&quote, &pricing, &mulch));
	ck_assert_ptr_eq(quote.pack, &book.goods[0].packs[0]);
	ck_assert_double_eq(quote.packs, 8);
}
END_TEST

/* 40 lb bags of topsoil at 2,000 lb/cu yd, the default: 50 bags to the yard. */
START_TEST(what_goes_by_volume_may_be_sold_by_weight)
{
	struct quote quote;

	open_book("'goods': [{'item': 'soil.topsoil', 'packs': [{'pack': 'bag', 'size': '40 lb', "
		"'price': 3.15}]}]");
	struct item soil = item_of("soil.topsoil", CUBIC_YARD);

	ck_assert(quote_best(&quote, &pricing, &soil));
	ck_assert_double_eq(quote.packs, 50);
	ck_assert_int_eq(quote.cost, 15750);
	ck_assert_double_eq_tol(quote.weight, 2000 * POUND, 1e-6);
	ck_assert_double_eq(quote.volume, 0);
}
END_TEST

START_TEST(bulk_by_weight_fills_a_truck_by_its_volume_too)
{
	struct quote quote;

	open_book("'suppliers': [{'name': 'Yard', 'delivery': 10, 'holds': '1 cu yd', "
		"'carries': '90000 lb'}], 'goods': [{'item': 'soil.topsoil', 'packs': [{'pack': "
		"'bulk', 'size': '2000 lb', 'price': 30, 'supplier': 'Yard'}]}]");
	struct item soil = item_of("soil.topsoil", 2.2 * CUBIC_YARD);

	ck_assert(quote_best(&quote, &pricing, &soil));
	ck_assert_double_eq(quote.packs, 3);
	ck_assert_double_eq_tol(quote.volume, 3 * CUBIC_YARD, EXACT);
	ck_assert_int_eq(quote.drops, 3);
}
END_TEST

START_TEST(half_a_hundredth_is_rounded_up)
{
	struct quote quote;

	open_book("'goods': [{'item': 'mulch', 'packs': [{'pack': 'bulk', 'size': '1 m3', "
		"'step': '0.5 m3', 'price': 42.25}]}]");
	struct item mulch = item_of("mulch", 1.5);

	ck_assert(quote_best(&quote, &pricing, &mulch));
	ck_assert_int_eq(quote.cost, 6338); /* 63.375 */
}
END_TEST

START_TEST(a_cost_past_all_reckoning_is_no_quote)
{
	struct quote quote;

	open_book("'goods': [{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '0.001 L', "
		"'price': 1000000}]}]");
	struct item much = item_of("mulch", 1e6), little = item_of("mulch", 1e-6);

	ck_assert(!quote_best(&quote, &pricing, &much));
	ck_assert(quote_best(&quote, &pricing, &little));
	ck_assert_int_eq(quote.cost, 100000000);
}
END_TEST

START_TEST(free_goods_have_a_quote_of_nothing)
{
	struct quote quote;

	open_book("'goods': [{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '50 L', 'price': "
		"0}]}]");
	struct item mulch = item_of("mulch", 1);

	ck_assert(quote_best(&quote, &pricing, &mulch));
	ck_assert_double_eq(quote.packs, 20);
	ck_assert_int_eq(quote.cost, 0);
}
END_TEST

START_TEST(what_the_book_does_not_have_has_no_quote)
{
	struct quote quote;

	open_book(MULCH(BAG));
	struct item soil = item_of("soil.topsoil", 1);

	ck_assert(!quote_best(&quote, &pricing, &soil));
}
END_TEST

START_TEST(the_vehicle_is_the_books_else_the_pickup_that_is_allowed_for)
{
	open_book("");
	struct load load = load_of(&pricing, NO_SUPPLIER);

	ck_assert_double_eq_tol(load.carries, 1500 * POUND, EXACT);
	ck_assert_double_eq(load.holds, 0);
	book_fini(&book);
	open_book("'vehicle': {'name': 'Van', 'carries': '680 kg', 'holds': '2 m3'}, "
		"'suppliers': [{'name': 'Yard', 'delivery': 0}]");
	load = load_of(&pricing, NO_SUPPLIER);
	ck_assert_double_eq_tol(load.carries, 680, EXACT);
	ck_assert_double_eq_tol(load.holds, 2, EXACT);
	load = load_of(&pricing, 0);
	ck_assert_double_eq_tol(load.carries, 20000 * POUND, EXACT);
	ck_assert_double_eq_tol(load.holds, 10 * CUBIC_YARD, EXACT);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("quote");
	TCase *packs = suite_case(suite, "packs");
	TCase *choice = suite_case(suite, "choice");

	tcase_add_checked_fixture(packs, NULL, teardown);
	tcase_add_loop_test(packs, whole_bags_cover_the_order_and_no_more, 0,
		sizeof bags / sizeof *bags);
	tcase_add_loop_test(packs, bulk_is_bought_in_whole_steps, 0, sizeof loose / sizeof *loose);
	tcase_add_test(packs, the_step_that_is_allowed_for_holds_where_the_pack_has_none);
	tcase_add_loop_test(packs, the_load_that_is_full_first_decides_how_many_drops, 0,
		sizeof loads / sizeof *loads);
	tcase_add_test(packs, what_goes_by_volume_may_be_sold_by_weight);
	tcase_add_test(packs, bulk_by_weight_fills_a_truck_by_its_volume_too);
	tcase_add_test(packs, half_a_hundredth_is_rounded_up);
	tcase_add_test(packs, a_cost_past_all_reckoning_is_no_quote);
	tcase_add_test(packs, free_goods_have_a_quote_of_nothing);
	tcase_add_test(packs, the_vehicle_is_the_books_else_the_pickup_that_is_allowed_for);

	tcase_add_checked_fixture(choice, NULL, teardown);
	tcase_add_test(choice, bags_win_until_the_delivery_is_worth_it);
	tcase_add_test(choice, of_two_ways_that_cost_the_same_the_earlier_is_taken);
	tcase_add_test(choice, what_the_book_does_not_have_has_no_quote);
	return suite;
}
