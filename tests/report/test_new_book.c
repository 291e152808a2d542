/* A price book made for a plot: it can be read, has a row for each thing that is bought, and buys
 * the same. */
#include "report/new_book.h"
#include "base/memory.h"
#include "prices/book_write.h"
#include "support/fences.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <string.h>

static struct garden garden;

/* The text of its book; the garden is counted without one. */
static struct text book_text(const char *currency)
{
	struct text text = TEXT_EMPTY, message = TEXT_EMPTY;

	if (garden.has_book)
		book_fini(&garden.book);
	garden.has_book = false;
	garden_count(&garden);
	ck_assert_msg(new_book(&text, &garden.takeoff, currency, &message), "%s", message.bytes);
	ck_assert_uint_eq(message.length, 0);
	text_fini(&message);
	return text;
}

/* How much is bought with a purchase, in the unit of its item. */
static double amount_of(const struct item *item)
{
	double sum = 0;

	for (int i = 0; i < item->purchase->count; i++) {
		const struct bought *bought = &item->purchase->list[i];
		bool is_weighed = bought->pack->unit == UNIT_KG && item_unit(item) == UNIT_M3;

		sum += bought->packs * bought->pack->size / (is_weighed ? item->unit_weight : 1);
	}
	return sum;
}

/* Spoil is hauled as it comes, and by the book in the steps of a truck: up to one more. */
static void check_amount(const struct item *item, double without)
{
	double with = amount_of(item), more = item->good != GOOD_SPOIL ? 0 :
		block_amount(garden.takeoff.allow, ALLOW_TRUCK_STEP);

	ck_assert_msg(with >= without * (1 - 1e-6) && with <= without * (1 + 1e-6) + more,
		"%s: %g, and %g with the book", garden_id(&garden, item), without, with);
}

/* What plants cost that the plot itself has a price of. */
static money told_by_the_plot(void)
{
	money told = 0;

	for (size_t i = 0; i < garden.takeoff.items.count; i++) {
		const struct item *item = &garden.takeoff.items.list[i];

		if (item->own_price.is_told)
			told += item->own_price.each * (money)item->order;
	}
	return told;
}

static void check_round_trip(void)
{
	struct text text = book_text(NULL);
	double without[200] = { 0 };
	struct book_fault fault;

	ck_assert_uint_le(garden.takeoff.items.count, 200);
	for (size_t i = 0; i < garden.takeoff.items.count; i++)
		without[i] = garden.takeoff.items.list[i].purchase ?
			amount_of(&garden.takeoff.items.list[i]) : -1;
	ck_assert_msg(book_read(text.bytes, text.length, &garden.book, &fault), "%s: found %s, "
		"expected %s", fault.path, fault.diag.found, fault.diag.expected);
	garden.has_book = true;
	garden_count(&garden);
	for (size_t i = 0; i < garden.takeoff.items.count; i++) {
		const struct item *item = &garden.takeoff.items.list[i];

		ck_assert((item->purchase != NULL) == (without[i] >= 0));
		if (!item->purchase)
			continue;
		ck_assert_msg(item->purchase->goods && item->purchase->goods->pack_count == 1,
			"%s has no row", garden_id(&garden, item));
		ck_assert_int_eq(item->purchase->goods->packs[0].price, NO_PRICE);
		ck_assert_int_eq(item->purchase->count, 1);
		check_amount(item, without[i]);
	}
	ck_assert_str_eq(garden.takeoff.costs.currency, BOOK_NO_CURRENCY);
	ck_assert_int_eq(garden.takeoff.costs.total, told_by_the_plot());
	text_fini(&text);
}

static const char *const samples[] = { "plots/court.plot", "plots/elbow.plot",
	"plots/great-court.plot", "plots/growing-court.plot", "plots/ring.plot",
	"plots/rope-walk.plot", "plots/slope.plot", "plots/snags.plot", "plots/well-yard.plot",
	"tests/plots/compare-new.plot", "tests/plots/compare-old.plot", "tests/plots/court.plot",
	"tests/plots/great-court.plot", "tests/plots/sheets.plot", "tests/plots/snags.plot" };
enum { SAMPLES_HERE = sizeof samples / sizeof *samples };

START_TEST(the_book_of_a_sample_can_be_read_and_buys_the_same)
{
	garden_file(&garden, samples[_i]);
	check_round_trip();
	garden_fini(&garden);
}
END_TEST

/* By the other units everything is sold otherwise. */
START_TEST(so_does_that_of_a_sample_in_other_units)
{
	garden_file(&garden, samples[_i]);
	plot_set(&garden.plot, 0, HEAD_UNITS, plot_units(&garden.plot) == UNITS_METRIC ?
		"imperial" : "metric");
	check_round_trip();
	garden_fini(&garden);
}
END_TEST

/* Allowances at random: packs change with steps and with rolls that are no round measure. */
START_TEST(so_does_that_of_a_plot_at_random)
{
	static const char *const steps[] = { "0.25 cu yd", "1 cu yd", "300 L", "2 m3" };
	static const char *const widths[] = { "5 ft 1 1/4 in", "1234 mm", "3 ft" };
	struct random random = { 77 };

	for (int i = runner_count(20, 200); i > 0; i--) {
		garden = (struct garden){ .arena = ARENA_EMPTY };
		plot_at_random(&garden.plot, &random, 24, "abpl.");
		plot_set(&garden.plot, 0, ALLOW_TRUCK_STEP, steps[random_below(&random, 4)]);
		plot_set(&garden.plot, 0, ALLOW_LINER_WIDTH, widths[random_below(&random, 3)]);
		if (random_below(&random, 2))
			plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
		check_round_trip();
		garden_fini(&garden);
	}
}
END_TEST

static void check_has(const struct text *text, const char *part)
{
	ck_assert_msg(strstr(text->bytes, part), "no %s in %.3000s", part, text->bytes);
}

/* Extra goods in all that they are counted in, of which a length and an area are sold by the foot.
 * Common practice, no published source. */
START_TEST(goods_of_the_plot_s_own_have_rows_by_their_names)
{
	static const struct { const char *name; int number; enum amount_unit unit; } extras[] = {
		{ "Bird bath", 1, AMOUNT_GOODS_EACH }, { "Drain \"pipe\"", 25, AMOUNT_GOODS_FT },
		{ "Netting", 60, AMOUNT_GOODS_SQ_FT }, { "Lime", 3, AMOUNT_GOODS_LB },
		{ "Grit", 2, AMOUNT_GOODS_CU_FT },
	};
	struct text text;

	garden_rectangle(&garden, 'p', 2, 2);
	for (size_t i = 0; i < sizeof extras / sizeof *extras; i++)
		details_add_extra(&garden.plot.details, memory_string(extras[i].name),
			(struct amount){ extras[i].number * MILLION, extras[i].unit });
	check_round_trip();
	text = book_text("USD");
	check_has(&text, "\"currency\": \"USD\"");
	check_has(&text, "{ \"item\": \"extra\", \"name\": \"Bird bath\", \"packs\": [ { \"pack\": "
		"\"piece\", \"size\": 1 } ] }");
	check_has(&text, "\"name\": \"Drain \\\"pipe\\\"\",");
	check_has(&text, "[ { \"pack\": \"bulk\", \"size\": \"1 ft\" } ]");
	check_has(&text, "[ { \"pack\": \"bulk\", \"size\": \"1 sq ft\" } ]");
	check_has(&text, "[ { \"pack\": \"bulk\", \"size\": \"1 lb\" } ]");
	text_fini(&text);
	garden_fini(&garden);
}
END_TEST

/* A book tells lengths apart to a millimetre: what differs by less has one row. */
START_TEST(what_a_book_cannot_tell_apart_has_one_row)
{
	struct text text;
	int rows = 0;

	fences_ground(&garden.plot, 30, 4);
	fences_run(&garden.plot, "0,0 8,0");
	fences_set(&garden.plot, FENCE_HEIGHT, "3 ft");
	fence_from(&garden.plot, "16,0 24,0", NULL);
	fences_set(&garden.plot, FENCE_HEIGHT, "914.9 mm");
	check_round_trip();
	text = book_text(NULL);
	for (const char *at = text.bytes; (at = strstr(at, "\"fence.panel\"")); at++)
		rows++;
	ck_assert_int_eq(rows, 1);
	text_fini(&text);
	garden_fini(&garden);
}
END_TEST

/* The bag of concrete that the plot mixes: nothing else tells which one to buy. */
START_TEST(a_bag_of_concrete_has_its_weight_and_nothing_else_has_one)
{
	struct text text;
	const char *at;

	garden_file(&garden, "tests/plots/court.plot");
	text = book_text(NULL);
	check_has(&text, "[ { \"pack\": \"bag\", \"size\": 1, \"weight\": \"80 lb\" } ]");
	at = strstr(text.bytes, "\"weight\"");
	ck_assert_ptr_null(strstr(at + 1, "\"weight\""));
	text_fini(&text);
	garden_fini(&garden);
}
END_TEST

START_TEST(more_goods_than_a_book_has_are_told)
{
	struct text text = TEXT_EMPTY, message = TEXT_EMPTY;

	garden_rectangle(&garden, '.', 2, 2);
	for (int i = 0; i < 501; i++) {
		struct text name = TEXT_EMPTY;

		text_print(&name, "Thing %d", i);
		details_add_extra(&garden.plot.details, text_take(&name),
			(struct amount){ MILLION, AMOUNT_GOODS_EACH });
	}
	garden_count(&garden);
	ck_assert(!new_book(&text, &garden.takeoff, NULL, &message));
	ck_assert_str_eq(message.bytes, "a price book for all that is bought: goods: found a list, "
		"expected a list, [ ... ], of at most 500");
	ck_assert_uint_eq(text.length, 0);
	text_fini(&message);
	garden_fini(&garden);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("new_book");
	TCase *books = suite_case(suite, "books");

	tcase_add_loop_test(books, the_book_of_a_sample_can_be_read_and_buys_the_same, 0,
		SAMPLES_HERE);
	tcase_add_loop_test(books, so_does_that_of_a_sample_in_other_units, 0, SAMPLES_HERE);
	tcase_add_test(books, so_does_that_of_a_plot_at_random);
	tcase_add_test(books, goods_of_the_plot_s_own_have_rows_by_their_names);
	tcase_add_test(books, what_a_book_cannot_tell_apart_has_one_row);
	tcase_add_test(books, a_bag_of_concrete_has_its_weight_and_nothing_else_has_one);
	tcase_add_test(books, more_goods_than_a_book_has_are_told);
	return suite;
}
