#include "support/runner.h"
#include "support/book.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "report/text/print.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

static struct garden garden;
static struct text page;

static void setup(void)
{
	page = TEXT_EMPTY;
	garden_rectangle(&garden, 'b', 8, 4);
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

static void print(const char *book)
{
	if (book) {
		book_of(&garden.book, book);
		garden.has_book = true;
	}
	garden_count(&garden);
	struct text_sink sink_page = text_sink(&page);

	report_text(&sink_page.sink, &garden.plot, &garden.takeoff, "garden.plot", PARTS_ALL);
}

static bool shows(const char *words)
{
	return strstr(page.bytes, words) != NULL;
}

#define BLOCK(pack) "{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', 'packs': [{" pack "}]}"

START_TEST(without_a_book_nothing_is_said_of_costs)
{
	print(NULL);
	ck_assert(!shows("Costs"));
	ck_assert(!shows("price book"));
	ck_assert(shows("\nBlock and adhesive  3,060 lb + ?     3 or more       1 or more\n"));
	ck_assert(shows(" 2 bags of 2 cu "));
}
END_TEST

START_TEST(what_has_no_price_is_named_and_the_total_says_so)
{
	print("'goods': [" BLOCK("'pack': 'piece', 'size': 1, 'price': 2") "]");
	ck_assert(shows("\nNo price in the book, and not in any sum here: "));
	ck_assert(shows("Topsoil;"));
	ck_assert(shows("Total of what has a price, USD  102.00      0.00  102.00\n"));
}
END_TEST

START_TEST(what_weighs_over_50_lb_is_lifted_by_two)
{
	print("'goods': [" BLOCK("'pack': 'piece', 'size': 1, 'price': 2")
		", {'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '2 cu ft', 'price': 4, "
		"'weight': '50 lb'}]}]");
	ck_assert(shows("block 16 in x 8 in x 6 in 60.0 lb.\n"));
	ck_assert(!shows("Here: Mulch") && !shows("; Mulch"));
}
END_TEST

/* A pallet stays on its fork, and its blocks are taken off one by one. */
START_TEST(nobody_lifts_a_pallet_or_what_is_loose)
{
	print("'goods': [" BLOCK("'pack': 'pallet', 'size': 60, 'price': 200, 'weight': '3000 lb'")
		", {'item': 'mulch', 'packs': [{'pack': 'bulk', 'size': '1 cu yd', 'price': "
		"30}]}]");
	ck_assert(shows("block 16 in x 8 in x 6 in 60.0 lb.\n"));
	ck_assert(!shows("3,000 lb."));
	ck_assert(shows("1 pallet of 60"));
	ck_assert(shows(" 30.00 for 1 cu yd "));
}
END_TEST

START_TEST(a_weight_that_is_not_known_is_owned_up_to)
{
	print("'goods': [{'item': 'adhesive.cartridge', 'packs': [{'pack': 'piece', 'size': 1, "
		"'price': 7}]}]");
	ck_assert(shows("Block and adhesive  collected  3 trips  3,060 lb + ?         -\n"));
	ck_assert(shows("\n?: a weight is not known, so loads may be more. Days"));
	ck_assert(shows("Trips of a pickup, payload 1,500 lb"));
}
END_TEST

/* 51 blocks: a pallet of 40 and 11 pieces. The pallet comes from the yard. */
START_TEST(each_supplier_has_its_order_with_the_spec_and_the_day)
{
	print("'suppliers': [{'name': 'Yard', 'delivery': 5}], 'goods': [{'item': 'block.wall', "
		"'block': '16 in x 8 in x 6 in', 'spec': 'split face', 'packs': [{'pack': "
		"'piece', 'size': 1, 'price': 3}, {'pack': 'pallet', 'size': 40, 'price': 80, "
		"'supplier': 'Yard'}]}]");
	ck_assert(shows("\nFrom Yard:\n"));
	ck_assert(shows("\nCollected:\n"));
	ck_assert(shows("1 pallet of 40  80.00  80.00\n"));
	ck_assert(shows("11 pieces"));
	ck_assert(shows("split face"));
	ck_assert(!shows("There are too many ways"));
	garden.takeoff.costs.cheapest = false;
	text_clear(&page);
	struct text_sink sink_page = text_sink(&page);

	report_text(&sink_page.sink, &garden.plot, &garden.takeoff, "garden.plot", PARTS_ALL);
	ck_assert(shows("There are too many ways to buy all this"));
}
END_TEST

START_TEST(who_works_alone_is_told_of_lighter_bags)
{
	garden_fini(&garden);
	garden_file(&garden, "plots/court.plot");
	print(NULL);
	/* 15 bags of 0.6 cu ft; 0.375 cu ft a bag of 50 lb. */
	ck_assert(shows("Who works alone takes lighter bags of concrete: 24 of 50 lb.\n"));
	ck_assert(shows("Here:\n           Concrete, bags 80.0 lb.\n"));
	plot_set(&garden.plot, 0, ALLOW_CREW, "2");
	text_clear(&page);
	print(NULL);
	ck_assert(!shows("Who works alone"));
	ck_assert(shows("Concrete, bags 80.0 lb.\n"));
}
END_TEST

/* Whether the costs have these words one after another, whatever cells stand between them. */
static bool costs_say(const char *const words[])
{
	const char *at = strstr(page.bytes, "\nCosts\n");

	for (int i = 0; at && words[i]; i++)
		at = strstr(at, words[i]);
	return at;
}

/* A panel is narrower than its section by a post of 3 1/2 in. */
START_TEST(a_supplier_is_asked_for_panels_that_fit_between_the_posts)
{
	garden_fini(&garden);
	garden_rectangle(&garden, 'b', 12, 8);
	fences_run(&garden.plot, "0,0 12,0");
	fences_gate(&garden.plot, "8,0 12,0");
	print("'suppliers': [{'name': 'Yard', 'delivery': 5}], 'goods': [{'item': 'fence.panel', "
		"'length': '8 ft', 'height': '3 ft', 'spec': 'oak', 'packs': [{'pack': 'piece', "
		"'size': 1, 'supplier': 'Yard'}]}]");
	ck_assert(costs_say((const char *const[]){ "Fence", "panel", "8 ft", "x", "3 ft,", "8",
		"ft", "centre", "to", "centre,", "92", "1/2", "in", "wide", "between", "posts:",
		"oak", "Gate", "leaf", "made", "to", "size", NULL }));
}
END_TEST

/* 25 kg are more than 23. 12 L of concrete a bag, 9.5 L one of 20 kg: as bags are sold, common
 * practice, no published source. */
START_TEST(in_metres_lighter_bags_are_of_whole_kilograms)
{
	char words[80];

	garden_fini(&garden);
	garden_file(&garden, "plots/court.plot");
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	print(NULL);
	ck_assert(!shows("Who works alone"));
	plot_set(&garden.plot, 0, ALLOW_CONCRETE_BAG, "12 L");
	text_clear(&page);
	print(NULL);
	snprintf(words, sizeof words, "Who works alone takes lighter bags of concrete: %.0f of "
		"20 kg.\n", ceil(garden_item(&garden, "fence.concrete")->order * 12 / 9.5));
	ck_assert(shows(words));
}
END_TEST

START_TEST(where_the_book_has_bags_no_others_are_offered)
{
	garden_fini(&garden);
	garden_file(&garden, "plots/court.plot");
	print("'goods': [{'item': 'fence.gravel', 'packs': [{'pack': 'bag', 'size': "
		"'0.5 cu ft'}]}]");
	ck_assert(shows("Who works alone"));
	garden_fini(&garden);
	garden_file(&garden, "plots/court.plot");
	text_clear(&page);
	print("'goods': [{'item': 'fence.concrete', 'packs': [{'pack': 'bag', 'size': 1, "
		"'weight': '80 lb'}]}]");
	ck_assert(!shows("Who works alone"));
	ck_assert(shows("Concrete, bags 80.0 lb.\n"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_shopping");
	TCase *costs = suite_case(suite, "costs");

	tcase_add_checked_fixture(costs, setup, teardown);
	tcase_add_test(costs, without_a_book_nothing_is_said_of_costs);
	tcase_add_test(costs, what_has_no_price_is_named_and_the_total_says_so);
	tcase_add_test(costs, what_weighs_over_50_lb_is_lifted_by_two);
	tcase_add_test(costs, nobody_lifts_a_pallet_or_what_is_loose);
	tcase_add_test(costs, a_weight_that_is_not_known_is_owned_up_to);
	tcase_add_test(costs, each_supplier_has_its_order_with_the_spec_and_the_day);
	tcase_add_test(costs, who_works_alone_is_told_of_lighter_bags);
	tcase_add_test(costs, a_supplier_is_asked_for_panels_that_fit_between_the_posts);
	tcase_add_test(costs, in_metres_lighter_bags_are_of_whole_kilograms);
	tcase_add_test(costs, where_the_book_has_bags_no_others_are_offered);
	return suite;
}
