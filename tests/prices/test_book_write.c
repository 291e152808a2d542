/* Books made, and quotes put into books: what was asked for is there, all else as it was. */
#include "prices/book_write.h"
#include "base/file.h"
#include "prices/book_json.h"
#include "support/random.h"
#include "support/runner.h"

#include <string.h>

static void check_read(struct book *book, const struct text *bytes)
{
	struct book_fault fault;

	ck_assert_msg(book_read(bytes->bytes, bytes->length, book, &fault), "%s: found %s, "
		"expected %s", fault.path, fault.diag.found, fault.diag.expected);
}

/* ---- New books ------------------------------------------------------------------------------- */

static const struct quote piece = { { "piece", "1", "", "", "", "", "", "" } };

static const struct new_goods news[] = {
	{ { .good = GOOD_BLOCK_WALL, .name = "", .block = { 16 * NM_PER_INCH, 8 * NM_PER_INCH,
		6 * NM_PER_INCH } }, { { "piece", "1", "", "", "", "", "", "" } } },
	{ { .good = GOOD_FENCE_POST, .name = "", .length = 6 * NM_PER_FOOT,
		.across = 4 * NM_PER_INCH }, { { "piece", "1", "", "", "", "", "", "" } } },
	{ { .good = GOOD_FENCE_GATE, .name = "", .length = 1090 * NM_PER_MM,
		.height = 3 * NM_PER_FOOT }, { { "piece", "1", "", "", "", "", "", "" } } },
	{ { .good = GOOD_SOIL, .name = "sharp-sand" }, { { "bag", "0.5 cu ft", "", "", "40 lb",
		"", "washed", "EUR" } } },
	{ { .good = GOOD_EXTRA, .name = "Batter \"boards\"" }, { { "piece", "8 ft", "", "", "",
		"", "", "" } } },
	{ { .good = GOOD_TURF, .name = "" }, { { "bulk", "1 sq ft", "2.5", "0.5 sq ft", "", "",
		"", "" } } },
};
enum { NEWS = sizeof news / sizeof *news };

START_TEST(a_new_book_has_its_goods_as_a_book_spells_them)
{
	static const char lines[] = "{\n"
		"  \"format\": \"parterre-prices\",\n"
		"  \"version\": 1,\n"
		"  \"note\": \"To be filled in: each pack needs a price, the book its "
		"currency.\",\n"
		"  \"currency\": \"USD\",\n"
		"  \"goods\": [\n"
		"    {\n"
		"      \"item\": \"block.wall\",\n"
		"      \"block\": \"16 in x 8 in x 6 in\",\n"
		"      \"packs\": [ { \"pack\": \"piece\", \"size\": 1 } ]\n"
		"    },\n"
		"    {\n"
		"      \"item\": \"fence.post\",\n"
		"      \"length\": \"6 ft\",\n"
		"      \"post\": \"4 in\",\n"
		"      \"packs\": [ { \"pack\": \"piece\", \"size\": 1 } ]\n"
		"    },\n"
		"    {\n"
		"      \"item\": \"fence.gate\",\n"
		"      \"length\": \"1090 mm\",\n"
		"      \"height\": \"3 ft\",\n"
		"      \"packs\": [ { \"pack\": \"piece\", \"size\": 1 } ]\n"
		"    },\n"
		"    {\n"
		"      \"item\": \"soil.sharp-sand\",\n"
		"      \"spec\": \"washed\",\n"
		"      \"packs\": [ { \"pack\": \"bag\", \"size\": \"0.5 cu ft\", \"weight\": "
		"\"40 lb\" } ]\n"
		"    },\n"
		"    {\n"
		"      \"item\": \"extra\",\n"
		"      \"name\": \"Batter \\\"boards\\\"\",\n"
		"      \"packs\": [ { \"pack\": \"piece\", \"size\": \"8 ft\" } ]\n"
		"    },\n"
		"    {\n"
		"      \"item\": \"turf\",\n"
		"      \"packs\": [ { \"pack\": \"bulk\", \"size\": \"1 sq ft\", \"price\": "
		"2.50, \"step\": \"0.5 sq ft\" } ]\n"
		"    }\n"
		"  ]\n"
		"}\n";
	struct text out = TEXT_EMPTY;
	struct book_fault fault;

	ck_assert(book_make(&out, "USD", news, NEWS, UNITS_IMPERIAL, &fault));
	ck_assert_msg(strcmp(out.bytes, lines) == 0, "%.3000s", out.bytes);
	text_fini(&out);
}
END_TEST

START_TEST(a_new_book_without_goods_is_a_book)
{
	struct text out = TEXT_EMPTY;
	struct book_fault fault;
	struct book book;

	ck_assert(book_make(&out, BOOK_NO_CURRENCY, NULL, 0, UNITS_METRIC, &fault));
	check_read(&book, &out);
	ck_assert_int_eq(book.goods_count, 0);
	ck_assert_str_eq(book.currency, "XXX");
	book_fini(&book);
	text_fini(&out);
}
END_TEST

/* 500 are the most, as the manual says. */
START_TEST(a_book_that_nobody_could_read_is_not_made)
{
	enum { OVER = 501 };
	struct new_goods list[OVER];
	struct text out = TEXT_EMPTY;
	struct book_fault fault;

	for (int i = 0; i < OVER; i++)
		list[i] = (struct new_goods){ { .good = GOOD_FENCE_POST, .name = "",
			.length = (i + 1) * 2 * NM_PER_MM, .across = 4 * NM_PER_INCH }, piece };
	ck_assert(!book_make(&out, "USD", list, OVER, UNITS_METRIC, &fault));
	ck_assert_str_eq(fault.path, "goods");
	ck_assert_uint_eq(out.length, 0);
	ck_assert(book_make(&out, "USD", list, OVER - 1, UNITS_METRIC, &fault));
	text_fini(&out);
}
END_TEST

/* ---- Quotes ---------------------------------------------------------------------------------- */

static const char old[] = "{ \"vehicle\": {\"carries\": \"1500 lb\", \"name\": \"Van\"},\n"
	"\"format\": \"parterre-prices\", \"version\": 1, \"note\": \"Ours.\",\n"
	"\"suppliers\": [ {\"delivery\": 5, \"name\": \"Yard\"} ], \"currency\": \"USD\",\n"
	"\"goods\": [\n"
	"{\"packs\": [{\"size\": \"2 cu ft\", \"pack\": \"bag\", \"price\": 4.2}, {\"pack\": "
	"\"bulk\", \"size\": \"1 cu yd\", \"step\": \"0.5 cu yd\"}], \"item\": \"mulch\"},\n"
	"{\"item\": \"turf\", \"spec\": \"fescue\"} ], \"allow\": {\"kerf\": \"1/4 in\"} }";

static void check_put(struct quote_place place, struct quote quote, const char *lines)
{
	struct text bytes = TEXT_EMPTY, out = TEXT_EMPTY;
	struct book_fault fault;

	text_add(&bytes, old);
	ck_assert_msg(book_put(&out, &bytes, &place, &quote, UNITS_IMPERIAL, &fault), "%s: found "
		"%s, expected %s", fault.path, fault.diag.found, fault.diag.expected);
	ck_assert_str_eq(out.bytes, lines);
	text_fini(&out);
	text_fini(&bytes);
}

#define HEAD "{\n  \"vehicle\": { \"carries\": \"1500 lb\", \"name\": \"Van\" },\n" \
	"  \"format\": \"parterre-prices\",\n  \"version\": 1,\n  \"note\": \"Ours.\",\n" \
	"  \"suppliers\": [\n    { \"delivery\": 5.00, \"name\": \"Yard\" }\n  ],\n"
#define MULCH "    {\n      \"packs\": [\n" \
	"        { \"size\": \"2 cu ft\", \"pack\": \"bag\", \"price\": 4.20 },\n" \
	"        { \"pack\": \"bulk\", \"size\": \"1 cu yd\", \"step\": \"0.5 cu yd\" }\n" \
	"      ],\n      \"item\": \"mulch\"\n    },\n"
#define TURF "    { \"item\": \"turf\", \"spec\": \"fescue\" }\n"
#define TAIL "  ],\n  \"allow\": { \"kerf\": \"1/4 in\" }\n}\n"

START_TEST(a_quote_goes_to_its_place_and_the_rest_keeps_its_order)
{
	check_put((struct quote_place){ .row = 0, .pack = 0 },
		(struct quote){ { "bag", "3 cu ft", "5.05", "", "40 lb", "Yard", "bark", "CAD" } },
		HEAD "  \"currency\": \"CAD\",\n  \"goods\": [\n    {\n      \"packs\": [\n"
		"        {\n          \"size\": \"3 cu ft\",\n          \"pack\": \"bag\",\n"
		"          \"price\": 5.05,\n          \"weight\": \"40 lb\",\n"
		"          \"supplier\": \"Yard\"\n        },\n"
		"        { \"pack\": \"bulk\", \"size\": \"1 cu yd\", \"step\": \"0.5 cu yd\" }\n"
		"      ],\n      \"item\": \"mulch\",\n      \"spec\": \"bark\"\n    },\n" TURF
		TAIL);
}
END_TEST

START_TEST(what_a_quote_leaves_out_is_taken_out)
{
	check_put((struct quote_place){ .row = 0, .pack = 0 },
		(struct quote){ { "bag", "2 cu ft", "", "", "", "", "", "USD" } },
		HEAD "  \"currency\": \"USD\",\n  \"goods\": [\n    {\n      \"packs\": [\n"
		"        { \"size\": \"2 cu ft\", \"pack\": \"bag\" },\n"
		"        { \"pack\": \"bulk\", \"size\": \"1 cu yd\", \"step\": \"0.5 cu yd\" }\n"
		"      ],\n      \"item\": \"mulch\"\n    },\n" TURF TAIL);
}
END_TEST

START_TEST(a_pack_more_goes_behind_those_that_are_there)
{
	check_put((struct quote_place){ .row = 1, .pack = 0 },
		(struct quote){ { "roll", "10 sq ft", "6.8", "", "", "", "fescue", "USD" } },
		HEAD "  \"currency\": \"USD\",\n  \"goods\": [\n" MULCH
		"    {\n      \"item\": \"turf\",\n      \"spec\": \"fescue\",\n"
		"      \"packs\": [ { \"pack\": \"roll\", \"size\": \"10 sq ft\", \"price\": "
		"6.80 } ]\n    }\n" TAIL);
}
END_TEST

START_TEST(goods_that_are_new_to_the_book_get_a_row)
{
	check_put((struct quote_place){ .row = ROW_NEW,
		.goods = { .good = GOOD_FENCE_POST, .name = "", .length = 6 * NM_PER_FOOT } },
		(struct quote){ { "piece", "1", "12", "", "", "", "", "USD" } },
		HEAD "  \"currency\": \"USD\",\n  \"goods\": [\n" MULCH
		"    { \"item\": \"turf\", \"spec\": \"fescue\" },\n    {\n"
		"      \"item\": \"fence.post\",\n      \"length\": \"6 ft\",\n"
		"      \"packs\": [ { \"pack\": \"piece\", \"size\": 1, \"price\": 12.00 } ]\n"
		"    }\n" TAIL);
}
END_TEST

START_TEST(a_quote_that_is_wrong_is_told_by_its_key_and_nothing_comes_out)
{
	static const struct {
		struct quote quote;
		int key;
		const char *found, *expected;
	} rows[] = {
		{ { { "bag", "2 cu ft", "4.205", "", "", "", "", "USD" } }, QUOTE_PRICE, "4.205",
			"a number from 0 to 1000000 with at most 2 decimal places" },
		{ { { "bag", "2 cu ft", "dear", "", "", "", "", "USD" } }, QUOTE_PRICE,
			"\"dear\"", "a number from 0 to 1000000 with at most 2 decimal places" },
		{ { { "bag", "2 cu ft", "1000001", "", "", "", "", "USD" } }, QUOTE_PRICE,
			"1000001", "a number from 0 to 1000000 with at most 2 decimal places" },
		{ { { "bag", "2", "4", "", "", "", "", "USD" } }, QUOTE_SIZE, "2", NULL },
		{ { { "bag", "", "4", "", "", "", "", "USD" } }, QUOTE_SIZE, "nothing",
			"how much a pack holds, such as \"2 cu ft\" or 90" },
		{ { { "sack", "2 cu ft", "4", "", "", "", "", "USD" } }, QUOTE_PACK, "\"sack\"",
			NULL },
		{ { { "bag", "2 cu ft", "4", "1 cu ft", "", "", "", "USD" } }, QUOTE_STEP, NULL,
			"no step: only bulk is sold in steps" },
		{ { { "bag", "2 cu ft", "4", "", "heavy", "", "", "USD" } }, QUOTE_WEIGHT,
			"\"heavy\"", NULL },
		{ { { "bag", "2 cu ft", "4", "", "", "yard", "", "USD" } }, QUOTE_SUPPLIER,
			"\"yard\"", "the name of one of the suppliers listed" },
		{ { { "bag", "2 cu ft", "4", "", "", "", "", "" } }, QUOTE_CURRENCY, "nothing",
			NULL },
		{ { { "bag", "2 cu ft", "4", "", "", "", "", "Shillings" } }, QUOTE_CURRENCY, NULL,
			"text of 1 to 8 characters that can be shown" },
	};
	struct text bytes = TEXT_EMPTY, out = TEXT_EMPTY;

	text_add(&bytes, old);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct book_fault fault;

		ck_assert(!book_put(&out, &bytes, &(struct quote_place){ .row = 0 },
			&rows[i].quote, UNITS_IMPERIAL, &fault));
		ck_assert_int_eq(quote_key_of(&fault), rows[i].key);
		if (rows[i].found)
			ck_assert_str_eq(fault.diag.found, rows[i].found);
		if (rows[i].expected)
			ck_assert_str_eq(fault.diag.expected, rows[i].expected);
		ck_assert_uint_eq(out.length, 0);
	}
	text_fini(&bytes);
}
END_TEST

START_TEST(a_metric_plot_is_told_of_metric_units_alone)
{
	const struct quote quote = { { "bag", "2 buckets", "4", "", "", "", "", "EUR" } };
	struct text bytes = TEXT_EMPTY, out = TEXT_EMPTY;
	struct book_fault fault;

	text_add(&bytes, old);
	ck_assert(!book_put(&out, &bytes, &(struct quote_place){ .row = 0 }, &quote, UNITS_METRIC,
		&fault));
	ck_assert(!strstr(fault.diag.expected, "cu"));
	ck_assert_msg(strstr(fault.diag.expected, " L"), "%s", fault.diag.expected);
	text_fini(&bytes);
}
END_TEST

/* ---- Any quote ------------------------------------------------------------------------------- */

/* What the test puts in by its own hand, for the same of the tree that was put into. */
static void put_by_hand(cJSON *tree, int row, int pack, const char *key, cJSON *value)
{
	cJSON *packs = cJSON_GetObjectItem(cJSON_GetArrayItem(cJSON_GetObjectItem(tree, "goods"),
		row), "packs");
	cJSON *at = cJSON_GetArrayItem(packs, pack);

	cJSON_DeleteItemFromObject(at, key);
	if (value)
		cJSON_AddItemToObject(at, key, value);
}

static cJSON *tree_of(const struct text *bytes)
{
	cJSON *tree = cJSON_ParseWithLength(bytes->bytes, bytes->length);

	ck_assert_ptr_nonnull(tree);
	return tree;
}

static int packs_of(const struct text *bytes, int row)
{
	struct book book;
	int count;

	check_read(&book, bytes);
	count = row < book.goods_count ? book.goods[row].pack_count : -1;
	book_fini(&book);
	return count;
}

/* A price at random, or none; 0.00 to 999.99. */
static void check_price(struct random *random, const struct text *bytes, int row, int pack)
{
	int cents = random_below(random, 100000);
	bool has = random_below(random, 4) > 0;
	struct arena arena = ARENA_EMPTY;
	struct quote quote = quote_of_book(&arena, bytes, row, pack);
	const struct quote_place place = { .row = row, .pack = pack };
	struct text out = TEXT_EMPTY;
	cJSON *expected = tree_of(bytes), *got;
	struct book_fault fault;

	quote.words[QUOTE_PRICE] = has ? arena_print(&arena, "%d.%02d", cents / 100, cents % 100) :
		"";
	ck_assert(book_put(&out, bytes, &place, &quote, UNITS_IMPERIAL, &fault));
	put_by_hand(expected, row, pack, "price", has ? cJSON_CreateNumber(cents / 100.0) : NULL);
	got = tree_of(&out);
	ck_assert_msg(cJSON_Compare(expected, got, true), "row %d, pack %d: %s", row, pack,
		out.bytes);
	cJSON_Delete(got);
	cJSON_Delete(expected);
	arena_clear(&arena);
	text_fini(&out);
}

START_TEST(a_price_changes_nothing_else_in_the_sample_books)
{
	static const char *const books[] = { "plots/prices.json", "plots/prices-metric.json" };
	struct random random = { 5 };
	struct text bytes = TEXT_EMPTY;
	struct file_error error;

	ck_assert(file_read(books[_i], BOOK_BYTES_MOST, &bytes, &error));
	for (int row = 0, packs; (packs = packs_of(&bytes, row)) >= 0; row++)
		for (int pack = 0; pack < packs; pack++)
			check_price(&random, &bytes, row, pack);
	text_fini(&bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("book_write");
	TCase *making = suite_case(suite, "making");
	TCase *putting = suite_case(suite, "putting");

	tcase_add_test(making, a_new_book_has_its_goods_as_a_book_spells_them);
	tcase_add_test(making, a_new_book_without_goods_is_a_book);
	tcase_add_test(making, a_book_that_nobody_could_read_is_not_made);
	tcase_add_test(putting, a_quote_goes_to_its_place_and_the_rest_keeps_its_order);
	tcase_add_test(putting, what_a_quote_leaves_out_is_taken_out);
	tcase_add_test(putting, a_pack_more_goes_behind_those_that_are_there);
	tcase_add_test(putting, goods_that_are_new_to_the_book_get_a_row);
	tcase_add_test(putting, a_quote_that_is_wrong_is_told_by_its_key_and_nothing_comes_out);
	tcase_add_test(putting, a_metric_plot_is_told_of_metric_units_alone);
	tcase_add_loop_test(putting, a_price_changes_nothing_else_in_the_sample_books, 0, 2);
	return suite;
}
