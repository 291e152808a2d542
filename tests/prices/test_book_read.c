#include "support/runner.h"
#include "support/book.h"

#include <string.h>

static const double EXACT = 1e-9;
static const double POUND = 0.45359237; /* kg: NIST Special Publication 811, appendix B.8 */
static const double CUBIC_YARD = 0.9144 * 0.9144 * 0.9144;

#define HEAD "'format': 'parterre-prices', 'version': 1, 'currency': 'USD'"

START_TEST(a_book_needs_its_format_version_and_currency_alone)
{
	struct book book;

	book_of(&book, "");
	ck_assert_str_eq(book.currency, "USD");
	ck_assert_str_eq(book.note, "");
	ck_assert_int_eq(book.goods_count, 0);
	ck_assert_int_eq(book.supplier_count, 0);
	ck_assert_ptr_null(book.vehicle.name);
	ck_assert(block_is_empty(&book.allow));
	book_fini(&book);
}
END_TEST

START_TEST(suppliers_and_the_vehicle_are_read_in_si_units)
{
	struct book book;

	book_of(&book, "'note': 'Invented.', 'suppliers': [{'name': 'North yard', 'delivery': "
		"65.5, 'carries': '20000 lb', 'holds': '10 cu yd'}, {'delivery': 0, 'name': "
		"'Depot'}], 'vehicle': {'name': 'Van', 'carries': '680 kg', 'holds': '1.5 m3'}");
	ck_assert_str_eq(book.note, "Invented.");
	ck_assert_int_eq(book.supplier_count, 2);
	ck_assert_str_eq(book.suppliers[0].name, "North yard");
	ck_assert_int_eq(book.suppliers[0].delivery, 6550);
	ck_assert_double_eq_tol(book.suppliers[0].carries, 20000 * POUND, EXACT);
	ck_assert_double_eq_tol(book.suppliers[0].holds, 10 * CUBIC_YARD, EXACT);
	ck_assert_double_eq(book.suppliers[1].carries, 0);
	ck_assert_double_eq(book.suppliers[1].holds, 0);
	ck_assert_str_eq(book.vehicle.name, "Van");
	ck_assert_double_eq_tol(book.vehicle.carries, 680, EXACT);
	ck_assert_double_eq_tol(book.vehicle.holds, 1.5, EXACT);
	book_fini(&book);
}
END_TEST

START_TEST(what_a_book_allows_is_read_as_a_plot_spells_it)
{
	struct book book;

	book_of(&book, "'allow': {'swell-clay': '36 %', 'density-stone': '1600 kg/m3', "
		"'fabric-width': '2 m', 'subsoil': 'clay', 'beads': '3', 'compaction-fines': "
		"'1.15'}");
	ck_assert_int_eq(block_number(&book.allow, ALLOW_SWELL_CLAY), 36 * MILLION);
	ck_assert_double_eq_tol(amount_si(&block_value(&book.allow,
		ALLOW_DENSITY_STONE)->as.amount), 1600, EXACT);
	ck_assert_int_eq(block_length(&book.allow, ALLOW_FABRIC_WIDTH), 2 * NM_PER_M);
	ck_assert_int_eq(block_number(&book.allow, ALLOW_SUBSOIL), SUBSOIL_CLAY);
	ck_assert_int_eq(block_number(&book.allow, ALLOW_BEADS), 3);
	ck_assert_int_eq(block_number(&book.allow, ALLOW_COMPACTION_FINES), MILLION * 115 / 100);
	ck_assert(!block_value(&book.allow, ALLOW_KERF)->set);
	book_fini(&book);
}
END_TEST

START_TEST(rates_are_read_as_a_plot_spells_them)
{
	struct book book;
	struct book_fault fault;

	ck_assert(book_try(&book, "{" HEAD ", 'rates': {'block': '0.05 h per each', "
		"'dig': '0.5 h per cu-ft'}}", &fault));
	ck_assert_double_eq_tol(block_amount(&book.rates, RATE_BLOCK), 0.05, 1e-12);
	/* A cubic foot is 0.028316846592 m3. */
	ck_assert_double_eq_tol(block_amount(&book.rates, RATE_DIG), 0.5 / 0.028316846592, 1e-9);
	ck_assert(!block_value(&book.rates, RATE_CUT)->set);
	book_fini(&book);
}
END_TEST

START_TEST(keys_may_stand_in_any_order)
{
	struct book book;
	struct book_fault fault;

	ck_assert(book_try(&book, "{'goods': [{'packs': [{'supplier': 'Yard', 'price': 38, "
		"'size': '1 cu yd', 'pack': 'bulk'}], 'item': 'mulch'}], 'suppliers': "
		"[{'delivery': 1, 'name': 'Yard'}], 'currency': 'EUR', 'version': 1, 'format': "
		"'parterre-prices'}", &fault));
	ck_assert_int_eq(book.goods[0].packs[0].supplier, 0);
	ck_assert_int_eq(book.goods[0].packs[0].price, 3800);
	book_fini(&book);
}
END_TEST

#define SUPPLIER "'suppliers': [{'name': 'Yard', 'delivery': 60}]"
#define MULCH(packs) HEAD ", 'goods': [{'item': 'mulch', 'packs': [" packs "]}]"
#define BAG "'pack': 'bag', 'size': '2 cu ft', 'price': 4"

static const struct { const char *text, *path, *found, *expected; } refused[] = {
	{ "[]", "", "a list", "an object, { ... }" },
	{ "3", "", "3", "an object, { ... }" },
	{ "{}", "format", "nothing", "\"parterre-prices\"" },
	{ "{'format': 'prices'}", "format", "\"prices\"", "\"parterre-prices\"" },
	{ "{'format': 'parterre-prices', 'version': 2, 'later': 1}", "version", "2",
		"1, the version that can be read here" },
	{ "{'format': 'parterre-prices', 'version': '1', 'currency': 'USD'}", "version", "\"1\"",
		"1, the version that can be read here" },
	{ "{'format': 'parterre-prices', 'version': 1}", "currency", "nothing",
		"the currency, such as \"USD\"" },
	{ "{'format': 'parterre-prices', 'version': 1, 'currency': ''}", "currency", "\"\"",
		"text of 1 to 8 characters that can be shown" },
	{ "{'format': 'parterre-prices', 'version': 1, 'currency': 'ABCDEFGHI'}", "currency",
		"\"ABCDEFGHI\"", "text of 1 to 8 characters that can be shown" },
	{ "{'format': 'parterre-prices', 'version': 1, 'currency': 'U\\u202eD'}", "currency",
		"\"U<E2><80><AE>D\"", "text of 1 to 8 characters that can be shown" },
	{ "{'format': 'parterre-prices', 'version': 1, 'currency': 'U\\u200d'}", "currency",
		"\"U<E2><80><8D>\"", "text of 1 to 8 characters that can be shown" },
	{ "{" HEAD ", 'prices': []}", "", "prices",
		"format, version, note, currency, allow, rates, suppliers, goods or vehicle" },
	{ "{" HEAD ", 'Currency': 'USD'}", "", "Currency",
		"format, version, note, currency, allow, rates, suppliers, goods or vehicle" },
	{ "{" HEAD ", 'currency': 'EUR'}", "currency", "it twice", "each key once" },
	{ "{" HEAD ", 'note': 5}", "note", "5", "text of 1 to 500 characters that can be shown" },
	{ "{" HEAD ", 'allow': []}", "allow", "a list", "an object, { ... }" },
	{ "{" HEAD ", 'allow': {'swell-mud': '10 %'}}", "allow", "swell-mud",
		"a keyword of a plot's allow block" },
	{ "{" HEAD ", 'allow': {'kerf': '3 mm', 'kerf': '4 mm'}}", "allow.kerf", "it twice",
		"each keyword once" },
	{ "{" HEAD ", 'allow': {'swell-clay': 40}}", "allow.swell-clay", "40",
		"a percentage such as 5 %" },
	{ "{" HEAD ", 'allow': {'swell-clay': '40'}}", "allow.swell-clay", "\"40\"",
		"a percentage such as 5 %" },
	{ "{" HEAD ", 'allow': {'swell-clay': '40 % 3'}}", "allow.swell-clay", "\"40 % 3\"",
		"nothing behind the value" },
	{ "{" HEAD ", 'allow': {'swell-clay': '140 %'}}", "allow.swell-clay", "\"140 %\"",
		"0 % to 100 %" },
	{ "{" HEAD ", 'allow': {'kerf': '3'}}", "allow.kerf", "\"3\"",
		"a length with its unit, such as 3 in" },
	{ "{" HEAD ", 'rates': []}", "rates", "a list", "an object, { ... }" },
	{ "{" HEAD ", 'rates': {'plaster': '1 h per m2'}}", "rates", "plaster",
		"a kind of work that a plot has rates for" },
	{ "{" HEAD ", 'rates': {'block': 2}}", "rates.block", "2",
		"hours such as 0.05 h per each" },
	{ "{" HEAD ", 'rates': {'block': '0.05 h per ft'}}", "rates.block", "\"0.05 h per ft\"",
		"hours such as 0.05 h per each" },
	{ "{" HEAD ", 'rates': {'dig': '1 h per m3', 'dig': '2 h per m3'}}", "rates.dig", "it "
	"twice",
		"each keyword once" },
	{ "{" HEAD ", 'suppliers': {}}", "suppliers", "an object",
		"a list, [ ... ], of at most 100" },
	{ "{" HEAD ", 'suppliers': ['Yard']}", "suppliers[0]", "\"Yard\"", "an object, { ... }" },
	{ "{" HEAD ", 'suppliers': [{'name': 'Yard'}]}", "suppliers[0].delivery", "nothing",
		"what a delivery costs, such as 65.00" },
	{ "{" HEAD ", 'suppliers': [{'name': 'Yard', 'delivery': 60, 'carries': '9 cu yd'}]}",
		"suppliers[0].carries", "\"9 cu yd\"", "a weight such as 300 lb or 130 kg" },
	{ "{" HEAD ", 'suppliers': [{'name': 'Yard', 'delivery': 60, 'holds': '9 lb'}]}",
		"suppliers[0].holds", "\"9 lb\"", "a volume such as 6 cu ft, 10 cu yd, 100 L or 6 "
		"m3" },
	{ "{" HEAD ", 'suppliers': [{'name': 'Yard', 'delivery': 60}, {'name': 'Yard', "
		"'delivery': 0}]}", "suppliers[1].name", "Yard",
			"another name: suppliers[0] has it" },
	{ "{" HEAD ", 'vehicle': {'name': 'Van'}}", "vehicle.carries", "nothing",
		"the weight it may carry, such as 1500 lb" },
	{ "{" HEAD ", 'vehicle': {'carries': '500 kg'}}", "vehicle.name", "nothing",
		"what it is called" },
	{ "{" MULCH("{" BAG ", 'supplier': 'Yard'}") "}", "goods[0].packs[0].supplier", "\"Yard\"",
		"the name of one of the suppliers listed" },
	{ "{" SUPPLIER "," MULCH("{" BAG "}, {" BAG ", 'supplier': 'yard'}") "}",
		"goods[0].packs[1].supplier", "\"yard\"",
		"the name of one of the suppliers listed" },
	{ "{" HEAD ", 'goods': [{'item': 'mulch', 'packs': [{" BAG "}]}, {'item': 'mulch', "
		"'packs': [{" BAG "}]}]}", "goods[1]", "mulch", "another item: goods[0] has it" },
};

START_TEST(what_is_wrong_is_told_by_its_path)
{
	struct book book;
	struct book_fault fault;

	ck_assert_msg(!book_try(&book, refused[_i].text, &fault), "%s", refused[_i].text);
	ck_assert_str_eq(fault.path, refused[_i].path);
	ck_assert_str_eq(fault.diag.found, refused[_i].found);
	ck_assert_str_eq(fault.diag.expected, refused[_i].expected);
	ck_assert_int_eq(fault.diag.line, 0);
	ck_assert_int_eq(book.goods_count, 0);
	ck_assert_ptr_null(book.arena.newest);
	ck_assert_ptr_null(book.allow.values);
}
END_TEST

/* Counts, sizes and prices in bad spellings at one price's place. */
static const char *const not_money[] = { "-1", "-0.01", "4.855", "0.001", "0.0100000105", "1e7",
	"1000000.01", "1e999",
	"-1e999", "'4'", "true", "null", "[4]", "{}", "1e-3" };

START_TEST(a_price_is_0_to_a_million_in_hundredths)
{
	struct text text = TEXT_EMPTY;
	struct book book;
	struct book_fault fault;

	text_print(&text, "{" MULCH("{'pack': 'bag', 'size': '2 cu ft', 'price': %s}") "}",
		not_money[_i]);
	ck_assert_msg(!book_try(&book, text.bytes, &fault), "%s", not_money[_i]);
	ck_assert_str_eq(fault.path, "goods[0].packs[0].price");
	ck_assert_str_eq(fault.diag.expected,
		"a number from 0 to 1000000 with at most 2 decimal places");
	text_fini(&text);
}
END_TEST

static const struct { const char *written; money hundredths; } prices[] = {
	{ "0", 0 }, { "4", 400 }, { "4.5", 450 }, { "4.85", 485 }, { "0.01", 1 }, { "0.29", 29 },
	{ "1.15", 115 }, { "999999.99", 99999999 }, { "1000000", 100000000 }, { "1e3", 100000 },
	{ "4.850", 485 },
};

START_TEST(a_price_is_read_to_the_hundredth)
{
	struct text text = TEXT_EMPTY;
	struct book book;

	text_print(&text, "'goods': [{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '2 cu "
		"ft', 'price': %s}]}]", prices[_i].written);
	book_of(&book, text.bytes);
	ck_assert_int_eq(book.goods[0].packs[0].price, prices[_i].hundredths);
	book_fini(&book);
	text_fini(&text);
}
END_TEST

START_TEST(a_book_over_a_mebibyte_is_refused)
{
	struct text text = TEXT_EMPTY;
	struct book book;
	struct book_fault fault;

	text_print(&text, "{" HEAD "}");
	text_add_repeat(&text, ' ', BOOK_BYTES_MOST - text.length);
	ck_assert(book_try(&book, text.bytes, &fault));
	book_fini(&book);
	text_add(&text, " ");
	ck_assert(!book_try(&book, text.bytes, &fault));
	ck_assert_str_eq(fault.diag.expected, "at most 1 MiB");
	text_fini(&text);
}
END_TEST

START_TEST(a_hundred_suppliers_are_read_and_no_more)
{
	struct text text = TEXT_EMPTY;
	struct book book;
	struct book_fault fault;

	for (int most = 100; most <= 101; most++) {
		text_clear(&text);
		text_print(&text, "{" HEAD ", 'suppliers': [");
		for (int i = 0; i < most; i++)
			text_print(&text, "%s{'name': 'Yard %d', 'delivery': 1}", i ? "," : "", i);
		text_add(&text, "]}");
		ck_assert_int_eq(book_try(&book, text.bytes, &fault), most == 100);
		ck_assert_int_eq(book.supplier_count, most == 100 ? 100 : 0);
		book_fini(&book);
	}
	ck_assert_str_eq(fault.path, "suppliers");
	text_fini(&text);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("book_read");
	TCase *reading = suite_case(suite, "reading");
	TCase *refusing = suite_case(suite, "refusing");

	tcase_add_test(reading, a_book_needs_its_format_version_and_currency_alone);
	tcase_add_test(reading, suppliers_and_the_vehicle_are_read_in_si_units);
	tcase_add_test(reading, what_a_book_allows_is_read_as_a_plot_spells_it);
	tcase_add_test(reading, rates_are_read_as_a_plot_spells_them);
	tcase_add_test(reading, keys_may_stand_in_any_order);
	tcase_add_loop_test(reading, a_price_is_read_to_the_hundredth, 0,
		sizeof prices / sizeof *prices);

	tcase_add_loop_test(refusing, what_is_wrong_is_told_by_its_path, 0,
		sizeof refused / sizeof *refused);
	tcase_add_loop_test(refusing, a_price_is_0_to_a_million_in_hundredths, 0,
		sizeof not_money / sizeof *not_money);
	tcase_add_test(refusing, a_book_over_a_mebibyte_is_refused);
	tcase_add_test(refusing, a_hundred_suppliers_are_read_and_no_more);
	return suite;
}
