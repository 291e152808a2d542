#include "support/runner.h"
#include "support/garden.h"
#include "report/words/item_words.h"

static const struct { money amount; const char *words; } sums[] = {
	{ 0, "0.00" }, { 5, "0.05" }, { 99, "0.99" }, { 100, "1.00" }, { 123450, "1,234.50" },
	{ INT64_C(100000000000), "1,000,000,000.00" },
};

START_TEST(money_is_shown_to_the_hundredth)
{
	struct arena words = ARENA_EMPTY;
	const struct report report = { .words = &words };

	ck_assert_str_eq(plain_money(&report, sums[_i].amount), sums[_i].words);
	arena_clear(&words);
}
END_TEST

static const struct { struct pack pack; double packs; enum units units; const char *words; }
	bought[] = {
	{ { .kind = PACK_BAG, .unit = UNIT_M3, .words = "2 cu ft" }, 14, UNITS_IMPERIAL,
		"14 bags of 2 cu ft" },
	{ { .kind = PACK_BAG, .unit = UNIT_M3, .words = "2 cu ft" }, 1, UNITS_IMPERIAL,
		"1 bag of 2 cu ft" },
	{ { .kind = PACK_PIECE, .unit = UNIT_EACH, .size = 1, .words = "1" }, 1240, UNITS_IMPERIAL,
		"1,240 pieces" },
	{ { .kind = PACK_PIECE, .unit = UNIT_EACH, .size = 1, .words = "1" }, 1, UNITS_IMPERIAL,
		"1 piece" },
	{ { .kind = PACK_PALLET, .unit = UNIT_EACH, .size = 60, .words = "60" }, 4, UNITS_METRIC,
		"4 pallets of 60" },
	{ { .kind = PACK_ROLL, .unit = UNIT_M, .size = 25, .words = "25 m" }, 2, UNITS_METRIC,
		"2 rolls of 25 m" },
	{ { .kind = PACK_BULK, .unit = UNIT_M3, .size = 1, .words = "1 m3" }, 2.25, UNITS_METRIC,
		"2.25 m3 in bulk" },
	{ { .kind = PACK_BULK, .unit = UNIT_M3, .size = CUBIC_YARD, .words = "1 cu yd" }, 2.5,
		UNITS_IMPERIAL, "2.50 cu yd in bulk" },
	{ { .kind = PACK_BULK, .unit = UNIT_KG, .size = 1000, .words = "1000 kg" }, 1.25,
		UNITS_METRIC,
		"1,250 kg in bulk" },
};

START_TEST(packs_are_named_as_one_asks_for_them)
{
	struct item item = { .pack = &bought[_i].pack, .packs = bought[_i].packs };
	struct arena words = ARENA_EMPTY;
	const struct report report = { .words = &words, .units = bought[_i].units };

	ck_assert_str_eq(item_packs(&report, &item), bought[_i].words);
	arena_clear(&words);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("item_words");
	TCase *words = suite_case(suite, "words");

	tcase_add_loop_test(words, money_is_shown_to_the_hundredth, 0, sizeof sums / sizeof *sums);
	tcase_add_loop_test(words, packs_are_named_as_one_asks_for_them, 0,
		sizeof bought / sizeof *bought);
	return suite;
}
