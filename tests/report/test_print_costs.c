#include "support/runner.h"
#include "support/book.h"
#include "support/garden.h"
#include "report/text/print.h"

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

	report_text(&sink_page.sink, &garden.plot, &garden.takeoff, "garden.plot");
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
	ck_assert(shows("collected  1 trip       ?         -\n"));
	ck_assert(shows("\n?: a weight is not known, so loads may be more. Days"));
	ck_assert(shows("Trips of a pickup, payload 1,500 lb"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_costs");
	TCase *costs = suite_case(suite, "costs");

	tcase_add_checked_fixture(costs, setup, teardown);
	tcase_add_test(costs, without_a_book_nothing_is_said_of_costs);
	tcase_add_test(costs, what_has_no_price_is_named_and_the_total_says_so);
	tcase_add_test(costs, what_weighs_over_50_lb_is_lifted_by_two);
	tcase_add_test(costs, nobody_lifts_a_pallet_or_what_is_loose);
	tcase_add_test(costs, a_weight_that_is_not_known_is_owned_up_to);
	return suite;
}
