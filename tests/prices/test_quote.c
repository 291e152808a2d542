/* A pack in words: as a book spells it, and as a book has it. */
#include "prices/quote.h"
#include "support/runner.h"

#include <string.h>

/* By definition of the foot and the pound: NIST Special Publication 811, 2008, appendix B. */
static const double POUND = 0.45359237, FOOT = 0.3048, CUBIC_FOOT = 0.028316846592;

START_TEST(a_pack_is_spelled_in_units_of_its_plot)
{
	const struct {
		struct pack pack;
		enum units units;
		const char *kind, *size, *step, *weight;
	} rows[] = {
		{ { .kind = PACK_BAG, .unit = UNIT_M3, .size = 2 * CUBIC_FOOT }, UNITS_IMPERIAL,
			"bag", "2 cu ft", "", "" },
		{ { .kind = PACK_BULK, .unit = UNIT_M3, .size = 27 * CUBIC_FOOT,
			.step = 13.5 * CUBIC_FOOT }, UNITS_IMPERIAL, "bulk", "1 cu yd",
			"13.5 cu ft", "" },
		{ { .kind = PACK_BULK, .unit = UNIT_M3, .size = 1, .step = 0.25 }, UNITS_METRIC,
			"bulk", "1 m3", "250 L", "" },
		{ { .kind = PACK_BULK, .unit = UNIT_KG, .size = 2000 * POUND, .step = 500 * POUND },
			UNITS_IMPERIAL, "bulk", "2000 lb", "500 lb", "" },
		{ { .kind = PACK_BAG, .unit = UNIT_EACH, .size = 1, .weight = 80 * POUND },
			UNITS_IMPERIAL, "bag", "1", "", "80 lb" },
		{ { .kind = PACK_ROLL, .unit = UNIT_M2, .size = 50 * 4 * FOOT * FOOT },
			UNITS_IMPERIAL, "roll", "200 sq ft", "", "" },
		{ { .kind = PACK_ROLL, .unit = UNIT_M2, .size = 18, .weight = 7 }, UNITS_METRIC,
			"roll", "18 m2", "", "7 kg" },
		{ { .kind = PACK_PIECE, .unit = UNIT_M, .size = 8 * FOOT }, UNITS_IMPERIAL,
			"piece", "8 ft", "", "" },
		{ { .kind = PACK_PIECE, .unit = UNIT_M, .size = 2.4 }, UNITS_METRIC, "piece",
			"2400 mm", "", "" },
		/* A third of a square foot: up, so that no pack more is needed. */
		{ { .kind = PACK_ROLL, .unit = UNIT_M2, .size = FOOT * FOOT / 3 }, UNITS_IMPERIAL,
			"roll", "0.333334 sq ft", "", "" },
	};
	struct arena arena = ARENA_EMPTY;

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct quote quote = quote_of_pack(&arena, &rows[i].pack, rows[i].units);

		ck_assert_str_eq(quote.words[QUOTE_PACK], rows[i].kind);
		ck_assert_str_eq(quote.words[QUOTE_SIZE], rows[i].size);
		ck_assert_str_eq(quote.words[QUOTE_STEP], rows[i].step);
		ck_assert_str_eq(quote.words[QUOTE_WEIGHT], rows[i].weight);
		for (int key = QUOTE_SUPPLIER; key < QUOTE_KEYS; key++)
			ck_assert_str_eq(quote.words[key], "");
		ck_assert_str_eq(quote.words[QUOTE_PRICE], "");
	}
	arena_clear(&arena);
}
END_TEST

static struct text bytes_of_book(void)
{
	static const char book[] = "{\"format\": \"parterre-prices\", \"version\": 1, "
		"\"currency\": \"USD\", \"suppliers\": [{\"name\": \"Yard\", \"delivery\": 5}], "
		"\"goods\": [{\"item\": \"adhesive.cartridge\", \"spec\": \"grey\", \"packs\": "
		"[{\"size\": 12, \"pack\": \"box\", \"price\": 96, \"supplier\": \"Yard\"}]}, "
		"{\"item\": \"mulch\", \"spec\": \"bark\"}, {\"item\": \"soil.topsoil\", "
		"\"packs\": [{\"pack\": \"bag\", \"size\": \" 40  lb\"}, {\"pack\": \"bulk\", "
		"\"size\": \"1 cu yd\", \"step\": \"0.5 cu yd\", \"weight\": \"1 lb\", "
		"\"price\": 3.4}]}]}";
	struct text bytes = TEXT_EMPTY;

	text_add(&bytes, book);
	return bytes;
}

START_TEST(a_pack_of_a_book_is_in_the_words_of_the_book)
{
	static const struct {
		int row, pack;
		struct quote quote;
	} rows[] = {
		/* pack, size, price, step, weight, supplier, spec, currency */
		{ 0, 0, { { "box", "12", "96.00", "", "", "Yard", "grey", "USD" } } },
		{ 0, 1, { { "", "", "", "", "", "", "grey", "USD" } } },
		{ 1, 0, { { "", "", "", "", "", "", "bark", "USD" } } },
		{ 2, 0, { { "bag", " 40  lb", "", "", "", "", "", "USD" } } },
		{ 2, 1, { { "bulk", "1 cu yd", "3.40", "0.5 cu yd", "1 lb", "", "", "USD" } } },
		{ ROW_NEW, 0, { { "", "", "", "", "", "", "", "USD" } } },
	};
	struct text bytes = bytes_of_book();
	struct arena arena = ARENA_EMPTY;

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct quote quote = quote_of_book(&arena, &bytes, rows[i].row, rows[i].pack);

		for (int key = 0; key < QUOTE_KEYS; key++)
			ck_assert_str_eq(quote.words[key], rows[i].quote.words[key]);
		ck_assert(quote_equal(&quote, &rows[i].quote));
	}
	arena_clear(&arena);
	text_fini(&bytes);
}
END_TEST

START_TEST(quotes_differ_where_any_word_does)
{
	for (int key = 0; key < QUOTE_KEYS; key++) {
		struct quote a = { { "a", "b", "c", "d", "e", "f", "g", "h" } }, b = a;

		ck_assert(quote_equal(&a, &b));
		b.words[key] = "";
		ck_assert(!quote_equal(&a, &b));
	}
}
END_TEST

START_TEST(a_fault_tells_which_key_it_is_of)
{
	static const struct { const char *path; int key; } rows[] = {
		{ "goods[2].packs[0].price", QUOTE_PRICE },
		{ "goods[0].packs[1].pack", QUOTE_PACK },
		{ "goods[0].packs[1].size", QUOTE_SIZE }, { "goods[0].packs[1].step", QUOTE_STEP },
		{ "goods[0].packs[1].weight", QUOTE_WEIGHT },
		{ "goods[0].packs[1].supplier", QUOTE_SUPPLIER }, { "goods[9].spec", QUOTE_SPEC },
		{ "currency", QUOTE_CURRENCY }, { "goods", QUOTE_NONE }, { "", QUOTE_NONE },
		{ "goods[3]", QUOTE_NONE }, { "suppliers[0].name", QUOTE_NONE },
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct book_fault fault = { .path = "" };

		strcpy(fault.path, rows[i].path);
		ck_assert_int_eq(quote_key_of(&fault), rows[i].key);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("quote");
	TCase *words = suite_case(suite, "words");

	tcase_add_test(words, a_pack_is_spelled_in_units_of_its_plot);
	tcase_add_test(words, a_pack_of_a_book_is_in_the_words_of_the_book);
	tcase_add_test(words, quotes_differ_where_any_word_does);
	tcase_add_test(words, a_fault_tells_which_key_it_is_of);
	return suite;
}
