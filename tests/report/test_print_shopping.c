#include "support/runner.h"
#include "support/book.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/quantity.h"
#include "support/sample_gardens.h"
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

static void print_parts(unsigned parts)
{
	text_clear(&page);
	garden_print(&garden, &page, "garden.plot", parts);
}

/* All of the takeoff, by the book. */
static void print(const char *book)
{
	if (book) {
		book_of(&garden.book, book);
		garden.has_book = true;
	}
	garden_count(&garden);
	print_parts(PARTS_ALL);
}

static bool shows(const char *words)
{
	return strstr(page.bytes, words) != NULL;
}

#define BLOCK(pack) "{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', 'packs': [{" pack "}]}"

/* Said in the list, and beside the item. */
START_TEST(a_price_by_the_plot_is_marked_and_explained)
{
	plot_add_lines(&garden.plot, "plant r \"Rose\"\n  price 4.5\n  at 3,1\n");
	print("'goods': [" BLOCK("'pack': 'piece', 'size': 1, 'price': 3.15") "]");
	ck_assert(shows(" 4.50 * ") && shows(" 3.15 "));
	ck_assert(shows(" * : price of one"));
	ck_assert_str_eq(garden_note(&garden, garden_item(&garden, "plant")),
		"none to spare; price by the plot");
	book_fini(&garden.book);
	garden.has_book = false;
	print(NULL);
	ck_assert(!shows(" * : price of one"));
	ck_assert_str_eq(garden_note(&garden, garden_item(&garden, "plant")), "none to spare");
}
END_TEST

START_TEST(without_a_book_nothing_is_said_of_costs)
{
	print(NULL);
	ck_assert(!shows("\nCost ") && !shows("  Cost\n") && !shows("Price"));
	ck_assert(!shows("as in the price book") && !shows("no price"));
	ck_assert(!shows("\nBy day ") && !shows("\nBy supplier "));
	ck_assert(!shows("\nCollected") && !shows("\nFrom "));
	ck_assert(shows("\n"
		"Block and adhesive, 3,060 lb and ?: 3+ pickup loads or 1+ truck loads\n"
		"[ ]  51                      Wall block 16 in x 8 in x 6 in          3,060 lb\n"
		"[ ]  4                       Adhesive, cartridge, for 30 ft of bead         ?\n"));
	ck_assert(shows("[ ]  2 bags of 2 cu ft       Mulch                                    "
		"88.9 lb\n"));
	ck_assert(!shows("A pickup carries"));
	/* Of the days; 5,219 and 957 lb. */
	ck_assert(shows("\nLoads   6 pickup loads or 4 truck loads or more, each day's goods by "));
	print_parts(1u << PART_SHOPPING);
	ck_assert(shows("A pickup carries 1,500 lb, a truck 10.00 cu yd or 20,000 lb; each loose\n"
		"good rides by itself in a truck.\n"));
}
END_TEST

START_TEST(what_has_no_price_is_named_and_the_total_says_so)
{
	print("'goods': [" BLOCK("'pack': 'piece', 'size': 1, 'price': 2") "]");
	ck_assert(shows(" Topsoil                       852 lb      -       -\n"));
	ck_assert(shows(" 3,060 lb   2.00  102.00\n"));
	ck_assert(shows("- : no price in the book, and in no sum."));
	ck_assert(shows("9 items have no price in the book and are in no sum\n"));
	ck_assert(shows("Total of what has a price, USD  102.00      0.00  102.00\n"));
	ck_assert_int_eq(garden.takeoff.costs.unpriced, 9);
	ck_assert(shows("\nLoads   6 trips of a pickup that carries 1,500 lb; more where a weight "
		"is not\n        known\n"));
}
END_TEST

/* The notes follow at once, without the table of the suppliers. */
START_TEST(where_nothing_has_a_price_the_total_is_0_and_no_supplier_is_named)
{
	print("'goods': []");
	ck_assert(shows("\nTotal of what has a price, USD   0.00      0.00    0.00\n"
		"Orders include "));
	ck_assert_int_eq(garden.takeoff.costs.unpriced, 10);
}
END_TEST

/* 51 blocks of 60 lb: two pallets of a tonne. Without a drop nobody asks where they lie. */
START_TEST(with_a_drop_it_is_said_what_ground_the_goods_of_a_day_take)
{
	print(NULL);
	ck_assert(!shows("Ground at the drop"));
	garden.plot.details.around.has_drop = true;
	garden_count(&garden);
	print_parts(1u << PART_SHOPPING);
	ck_assert(shows("\nGround at the drop for each day's goods: Hauling: Spoil "));
	ck_assert(shows(" Block and adhesive: 2 pallets 32 sq ft; "));
	ck_assert(shows("\nLoose goods lie on heaps of 35 degrees, 5 ft high at the most"));
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "300 mm");
	garden_count(&garden);
	print_parts(1u << PART_SHOPPING);
	ck_assert(shows(" pallets 2.4 m2; "));
	ck_assert(shows(", 1.5 m high at the"));
}
END_TEST

START_TEST(what_weighs_over_50_lb_is_lifted_by_two)
{
	print("'goods': [" BLOCK("'pack': 'piece', 'size': 1, 'price': 2")
		", {'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '2 cu ft', 'price': 4, "
		"'weight': '50 lb'}]}]");
	ck_assert(shows("block 16 in x 8 in x\n  6 in 60.0 lb.\n"));
	ck_assert(!shows("Here: Mulch") && !shows("; Mulch"));
}
END_TEST

/* A pallet stays on its fork, and its blocks are taken off one by one. */
START_TEST(nobody_lifts_a_pallet_or_what_is_loose)
{
	print("'goods': [" BLOCK("'pack': 'pallet', 'size': 60, 'price': 200, 'weight': '3000 lb'")
		", {'item': 'mulch', 'packs': [{'pack': 'bulk', 'size': '1 cu yd', 'price': "
		"30}]}]");
	ck_assert(shows("block 16 in x 8 in x\n  6 in 60.0 lb.\n"));
	ck_assert(!shows("3,000 lb."));
	ck_assert(shows("1 pallet of 60"));
	ck_assert(shows(" 30.00 for 1 cu yd "));
}
END_TEST

START_TEST(a_weight_that_is_not_known_is_owned_up_to)
{
	print("'goods': [{'item': 'adhesive.cartridge', 'packs': [{'pack': 'piece', 'size': 1, "
		"'price': 7}]}]");
	ck_assert(shows("\nCollected, Block and adhesive, 3,060 lb and ?: 3+ trips\n"));
	ck_assert(shows(" ?: weight not known, so there may be more loads\n(+)."));
	ck_assert(shows(" to take away; more is not weighed\n"));
	ck_assert(shows("trips of a pickup that carries 1,500 lb; more where a weight is not"));
}
END_TEST

/* 51 blocks: a pallet of 40 and 11 pieces. The pallet comes from the yard. */
START_TEST(each_supplier_has_its_order_with_the_spec_and_the_day)
{
	print("'suppliers': [{'name': 'Yard', 'delivery': 5}], 'goods': [{'item': 'block.wall', "
		"'block': '16 in x 8 in x 6 in', 'spec': 'split face', 'packs': [{'pack': "
		"'piece', 'size': 1, 'price': 3}, {'pack': 'pallet', 'size': 40, 'price': 80, "
		"'supplier': 'Yard'}]}]");
	ck_assert(shows("\nFrom Yard, Block and adhesive, 2,400 lb: 1 drop, delivery 5.00\n"
		"[ ]  1 pallet of 40          Wall block 16 in x 8 in x    2,400 lb  80.00  80.00\n"
		"                             6 in: split face\n"));
	ck_assert(shows("\nCollected, Block and adhesive, 660 lb and ?: 1+ trips\n"
		"[ ]  11                      Wall block 16 in x 8 in x      660 lb   3.00  33.00\n"
		"                             6 in: split face\n"));
	ck_assert(shows("\nLoads   1 drop brought; 4 trips of a pickup that carries"));
	ck_assert(shows("\nYard         80.00      5.00   85.00\n"
		"Collected    33.00      0.00   33.00\n"));
	ck_assert(!shows("There are too many ways"));
	garden.takeoff.costs.cheapest = false;
	print_parts(PARTS_ALL);
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
	ck_assert(shows("Here: Concrete, bags 80.0 lb.\n"));
	plot_set(&garden.plot, 0, ALLOW_CREW, "2");
	text_clear(&page);
	print(NULL);
	ck_assert(!shows("Who works alone"));
	ck_assert(shows("Concrete, bags 80.0 lb.\n"));
}
END_TEST

/* Whether the list has these words one after another, whatever cells stand between them. */
static bool list_says(const char *const words[])
{
	const char *at = strstr(page.bytes, "\nShopping -");

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
	ck_assert(list_says((const char *const[]){ "Fence", "panel", "8 ft", "x", "3 ft,", "8",
		"ft", "centre", "to", "centre,", "92", "1/2", "in", "wide", "between", "posts:",
		"oak", "Gate", "leaf", "made", "to", "size", NULL }));
}
END_TEST

/* Two fences with panels alike, bought as one thing; the holes of each are told by its name. */
START_TEST(panels_of_two_fences_are_named_once_and_their_holes_apart)
{
	const char *row;

	garden_fini(&garden);
	garden_rectangle(&garden, 'p', 12, 8);
	plot_add_lines(&garden.plot, "fence \"North\"\n  run 0,0 12,0\n"
		"fence \"South\"\n  run 0,8 6,8\n");
	print(NULL);
	row = strstr(page.bytes, "Fence panel");
	ck_assert(row && !strstr(row + 1, "Fence panel 8 ft x 3 ft;"));
	ck_assert(!shows("Fences: post holes"));
	ck_assert(shows("\nNorth: post holes, 1.8 sq ft, 30 in deep, 4.5 cu ft\n"));
	ck_assert(shows("\nSouth: post holes, 1.2 sq ft, 30 in deep, 3.0 cu ft\n"));
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

/* ---- The list is what the takeoff buys ------------------------------------------------------- */

enum { ROWS_MOST = 100, CELL_MOST = 200 };

/* A row as it is read, what its cells have on several lines joined. */
struct row {
	char heading[CELL_MOST]; /* of the day it stands under */
	char order[CELL_MOST], item[CELL_MOST], weight[CELL_MOST], price[CELL_MOST];
	char cost[CELL_MOST];
	bool is_found;
};
static struct row rows[ROWS_MOST];
static int row_count;

/* Where the columns of the list stand: an order from its heading on, figures up to theirs. */
static size_t order_from, item_from, weight_to, price_to, cost_to;

static size_t end_of(const char *line, const char *heading)
{
	const char *found = strstr(line, heading);

	return found && found < line + strcspn(line, "\n") ?
		(size_t)(found - line) + strlen(heading) : 0;
}

static void add(char *cell, const char *from, const char *to)
{
	size_t used = strlen(cell);

	for (; from < to && *from == ' '; from++)
		;
	for (; to > from && to[-1] == ' '; to--)
		;
	if (from == to)
		return;
	snprintf(cell + used, CELL_MOST - used, "%s%.*s", used ? " " : "", (int)(to - from), from);
}

static const char *at_column(const char *line, size_t column)
{
	size_t length = strcspn(line, "\n");

	return line + (column < length ? column : length);
}

/* A weight has no two blanks in it, and two before it. */
static void add_item_and_weight(struct row *row, const char *line)
{
	const char *end = at_column(line, weight_to), *from = end;

	while (from > at_column(line, item_from) && strncmp(from - 2, "  ", 2) != 0)
		from--;
	add(row->item, at_column(line, item_from), from);
	add(row->weight, from, end);
}

static void read_row(const char *line)
{
	ck_assert_int_lt(row_count, ROWS_MOST);
	add(rows[row_count].order, at_column(line, order_from), at_column(line, item_from));
	add_item_and_weight(&rows[row_count], line);
	add(rows[row_count].price, at_column(line, weight_to), at_column(line, price_to));
	add(rows[row_count].cost, at_column(line, price_to), at_column(line, cost_to));
	row_count++;
}

/* What goes on from the line before: of a row its order and item, else the heading. */
static void read_more(const char *line, char *heading, bool is_row)
{
	if (is_row) {
		struct row *row = &rows[row_count - 1];

		add(row->order, at_column(line, order_from), at_column(line, item_from));
		add(row->item, at_column(line, item_from), line + strcspn(line, "\n"));
	} else {
		add(heading, line, line + strcspn(line, "\n"));
	}
}

/* Sums by a book follow after a blank line, else notes. */
static bool is_behind_list(const char *line)
{
	return *line == '\n' || strncmp(line, "Orders include ", strlen("Orders include ")) == 0;
}

static void read_list(void)
{
	const char *line = strstr(page.bytes, "\n     Order ") + 1;
	char heading[CELL_MOST] = "";
	bool is_row = false;

	order_from = end_of(line, "Order") - strlen("Order");
	item_from = end_of(line, "Item") - strlen("Item");
	weight_to = end_of(line, "Weight");
	price_to = end_of(line, "Price");
	cost_to = end_of(line, "Cost");
	memset(rows, 0, sizeof rows);
	row_count = 0;
	while (!is_behind_list(line += strcspn(line, "\n") + 1)) {
		if (*line == ' ') {
			read_more(line, heading, is_row);
			continue;
		}
		is_row = *line == '[';
		if (!is_row)
			*heading = '\0';
		if (is_row) {
			read_row(line);
			snprintf(rows[row_count - 1].heading, CELL_MOST, "%s", heading);
		} else {
			read_more(line, heading, false);
		}
	}
}

static bool begins(const char *words, const char *beginning)
{
	return strncmp(words, beginning, strlen(beginning)) == 0;
}

/* Loose goods in SI, exactly in whole steps, but what is shown with places or in kg to the last
 * place; packs by their number and what each holds. */
static bool is_order(const char *order, const struct bought *bought)
{
	const struct pack *pack = bought->pack;
	bool is_rounded = strchr(order, '.') || strstr(order, " kg");
	double half, shown = quantity_read(&order, &half), loose = bought->packs * pack->size;

	if (pack->kind == PACK_BULK)
		return fabs(shown - loose) <= (is_rounded ? half : loose * 1e-9);
	return shown == bought->packs &&
		(strcmp(pack->words, "1") == 0 || strstr(order, pack->words));
}

static bool is_weight(const char *weight, double expected)
{
	double half, shown = quantity_read(&weight, &half);

	return expected > 0 ? half > 0 && fabs(shown - expected) <= half * 1.0001 :
		strcmp(weight, "?") == 0;
}

static bool is_money(const char *words, money expected)
{
	double half;

	return expected == NO_PRICE ? strcmp(words, "-") == 0 :
		llround(quantity_read(&words, &half) * 100) == expected;
}

/* With a book by whoever brings it, and on its day. */
static bool is_heading(const char *heading, const struct item *item, const struct bought *bought)
{
	char words[CELL_MOST];
	const char *day = word_heading(&day_words[item->purchase->day]);
	int supplier = bought->pack->supplier;

	if (!garden.has_book)
		snprintf(words, sizeof words, "%s", day);
	else if (supplier == NO_SUPPLIER)
		snprintf(words, sizeof words, "Collected, %s", day);
	else
		snprintf(words, sizeof words, "From %s, %s", garden.book.suppliers[supplier].name,
			day);
	return begins(heading, words);
}

static bool is_row_of(const struct row *row, const struct item *item, const struct bought *bought)
{
	money price = bought->pack->price;

	return begins(row->item, garden_sized(&garden, item)) && is_order(row->order, bought) &&
		is_weight(row->weight, bought->weight) && is_heading(row->heading, item, bought) &&
		(!garden.has_book || (is_money(row->price, price) &&
		is_money(row->cost, price == NO_PRICE ? NO_PRICE : bought->cost)));
}

static void has_row(const struct item *item, const struct bought *bought)
{
	for (int i = 0; i < row_count; i++)
		if (!rows[i].is_found && is_row_of(&rows[i], item, bought)) {
			rows[i].is_found = true;
			return;
		}
	ck_abort_msg("no row of %g packs of %s, %g kg", bought->packs,
		garden_sized(&garden, item), bought->weight);
}

/* Each label that is bought with another stands in that one's row. */
static void is_named_with(const struct item *item)
{
	const struct item *first = &garden.takeoff.items.list[item->with];
	char label[CELL_MOST];

	snprintf(label, sizeof label, "; %s", garden_sized(&garden, item));
	for (int i = 0; i < row_count; i++)
		if (begins(rows[i].item, garden_sized(&garden, first)) &&
			strstr(rows[i].item, label))
			return;
	ck_abort_msg("%s is named with nothing", label);
}

START_TEST(all_that_is_bought_has_its_row_with_order_and_weight_and_nothing_else)
{
	char path[80];

	garden_fini(&garden);
	snprintf(path, sizeof path, "plots/%s.plot", sample_gardens[_i % SAMPLE_GARDENS]);
	garden_file(&garden, path);
	if (_i >= SAMPLE_GARDENS && !garden.has_book)
		garden_book(&garden, "plots/prices.json");
	garden_count(&garden);
	print_parts(1u << PART_SHOPPING);
	read_list();
	const struct item_list *items = &garden.takeoff.items;

	for (size_t i = 0; i < items->count; i++) {
		const struct item *item = &items->list[i];

		for (int j = 0; item->purchase && j < item->purchase->count; j++)
			has_row(item, &item->purchase->list[j]);
		if (!item->purchase && item_purchase(items, item))
			is_named_with(item);
	}
	for (int i = 0; i < row_count; i++)
		ck_assert_msg(rows[i].is_found, "a row of nothing: %s, %s", rows[i].order,
			rows[i].item);
}
END_TEST

/* Beds that are amended where they lie. */
START_TEST(where_nothing_is_hauled_away_all_is_brought)
{
	garden_fini(&garden);
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	print(NULL);
	ck_assert(shows("\nWeight  "));
	ck_assert(!shows("to take away"));
}
END_TEST

/* Half a yard of spoil is 1,200 lb; the haulier carries 400. */
START_TEST(what_is_hauled_away_is_not_said_to_be_brought)
{
	print("'suppliers': [{'name': 'Haulier', 'delivery': 5, 'carries': '400 lb'}], 'goods': ["
		"{'item': 'spoil', 'packs': [{'pack': 'bulk', 'size': '1 cu ft', 'price': 1, "
		"'supplier': 'Haulier'}]}, " BLOCK("'pack': 'piece', 'size': 1, 'price': 3, "
		"'supplier': 'Haulier'") "]");
	ck_assert(shows("\nLoads   8 drops brought; 3 loads hauled away; 3 trips of a pickup"));
	ck_assert(shows("\nWeight  5,219 lb to bring, 957 lb to take away; "));
	ck_assert(shows("\nFrom Haulier, Hauling, 1,200 lb: 3 drops, delivery 15.00\n"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_shopping");
	TCase *costs = suite_case(suite, "costs"), *list = suite_case(suite, "list");

	tcase_add_checked_fixture(costs, setup, teardown);
	tcase_add_checked_fixture(list, setup, teardown);
	tcase_add_loop_test(list,
		all_that_is_bought_has_its_row_with_order_and_weight_and_nothing_else, 0,
		2 * SAMPLE_GARDENS);
	tcase_add_test(costs, without_a_book_nothing_is_said_of_costs);
	tcase_add_test(costs, a_price_by_the_plot_is_marked_and_explained);
	tcase_add_test(costs, what_has_no_price_is_named_and_the_total_says_so);
	tcase_add_test(costs,
		where_nothing_has_a_price_the_total_is_0_and_no_supplier_is_named);
	tcase_add_test(costs,
		with_a_drop_it_is_said_what_ground_the_goods_of_a_day_take);
	tcase_add_test(costs, what_weighs_over_50_lb_is_lifted_by_two);
	tcase_add_test(costs, nobody_lifts_a_pallet_or_what_is_loose);
	tcase_add_test(costs, a_weight_that_is_not_known_is_owned_up_to);
	tcase_add_test(costs, each_supplier_has_its_order_with_the_spec_and_the_day);
	tcase_add_test(costs, what_is_hauled_away_is_not_said_to_be_brought);
	tcase_add_test(costs, where_nothing_is_hauled_away_all_is_brought);
	tcase_add_test(costs, who_works_alone_is_told_of_lighter_bags);
	tcase_add_test(costs, a_supplier_is_asked_for_panels_that_fit_between_the_posts);
	tcase_add_test(costs, panels_of_two_fences_are_named_once_and_their_holes_apart);
	tcase_add_test(costs, in_metres_lighter_bags_are_of_whole_kilograms);
	tcase_add_test(costs, where_the_book_has_bags_no_others_are_offered);
	return suite;
}
