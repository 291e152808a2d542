#include "support/runner.h"
#include "support/book.h"
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

/* Pieces, whole or part of a pack that holds several. */
static const struct { double amount; const char *words; } pieces[] = {
	{ 0, "0" }, { 1, "1" }, { 2.5, "2.50" }, { 0.25, "0.25" }, { 1240, "1,240" },
};

START_TEST(pieces_are_whole_or_told_to_the_hundredth)
{
	struct arena words = ARENA_EMPTY;
	const struct report report = { .words = &words };
	const struct item item = { .good = GOOD_BLOCK_WALL };

	ck_assert_int_eq(item_unit(&item), UNIT_EACH);
	ck_assert_str_eq(plain_item_amount(&report, &item, pieces[_i].amount), pieces[_i].words);
	arena_clear(&words);
}
END_TEST

#define POUND 0.45359237 /* kg: NIST Special Publication 811, appendix B.8 */

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
	{ { .kind = PACK_BOX, .unit = UNIT_EACH, .size = 12, .words = "12" }, 2, UNITS_METRIC,
		"2 boxes of 12" },
	{ { .kind = PACK_BUNDLE, .unit = UNIT_EACH, .size = 5, .words = "5" }, 1, UNITS_METRIC,
		"1 bundle of 5" },
	{ { .kind = PACK_BAG, .unit = UNIT_EACH, .size = 1, .words = "80 lb" }, 7, UNITS_IMPERIAL,
		"7 bags of 80 lb" },
	{ { .kind = PACK_ROLL, .unit = UNIT_M, .size = 25, .words = "25 m" }, 2, UNITS_METRIC,
		"2 rolls of 25 m" },
	{ { .kind = PACK_BULK, .unit = UNIT_M3, .size = 1, .words = "1 m3" }, 2.25, UNITS_METRIC,
		"2 1/4 m3" },
	{ { .kind = PACK_BULK, .unit = UNIT_M3, .size = 1, .words = "1 m3" }, 0.75, UNITS_METRIC,
		"3/4 m3" },
	{ { .kind = PACK_BULK, .unit = UNIT_M3, .size = 1, .words = "1 m3" }, 0.3, UNITS_METRIC,
		"0.30 m3" },
	{ { .kind = PACK_BULK, .unit = UNIT_M3, .size = CUBIC_YARD, .words = "1 cu yd" }, 2.5,
		UNITS_IMPERIAL, "2 1/2 cu yd" },
	{ { .kind = PACK_BULK, .unit = UNIT_M3, .size = CUBIC_YARD, .words = "1 cu yd" }, 3,
		UNITS_IMPERIAL, "3 cu yd" },
	{ { .kind = PACK_BULK, .unit = UNIT_KG, .size = 1000, .words = "1000 kg" }, 2.25,
		UNITS_METRIC, "2 1/4 t" },
	{ { .kind = PACK_BULK, .unit = UNIT_KG, .size = 1000, .words = "1000 kg" }, 1.2,
		UNITS_METRIC, "1,200 kg" },
	/* A ton is 2,000 lb, the short ton: National Institute of Standards and Technology,
	 * Handbook 44, of any year, Appendix C, General Tables of Units of Measurement. */
	{ { .kind = PACK_BULK, .unit = UNIT_KG, .size = 2000 * POUND, .words = "1 ton" }, 8,
		UNITS_IMPERIAL, "8 tons" },
	{ { .kind = PACK_BULK, .unit = UNIT_KG, .size = 2000 * POUND, .words = "1 ton" }, 1,
		UNITS_IMPERIAL, "1 ton" },
	{ { .kind = PACK_BULK, .unit = UNIT_KG, .size = 2000 * POUND, .words = "1 ton" }, 0.25,
		UNITS_IMPERIAL, "1/4 ton" },
	{ { .kind = PACK_BULK, .unit = UNIT_M2, .size = SQUARE_FOOT, .words = "1 sq ft" }, 168,
		UNITS_IMPERIAL, "168 sq ft" },
	{ { .kind = PACK_BULK, .unit = UNIT_M2, .size = 1, .words = "1 m2" }, 16, UNITS_METRIC,
		"16 m2" },
	{ { .kind = PACK_BULK, .unit = UNIT_M2, .size = 10 * SQUARE_FOOT, .words = "10 sq ft" },
		1.25, UNITS_IMPERIAL, "12.50 sq ft" },
	{ { .kind = PACK_BULK, .unit = UNIT_M, .size = 0.3048, .words = "1 ft" }, 24,
		UNITS_IMPERIAL, "24 ft" },
};

START_TEST(packs_are_named_as_one_asks_for_them)
{
	const struct bought of = { .pack = &bought[_i].pack, .packs = bought[_i].packs };
	struct arena words = ARENA_EMPTY;
	const struct report report = { .words = &words, .units = bought[_i].units };

	ck_assert_str_eq(bought_words(&report, &of), bought[_i].words);
	arena_clear(&words);
}
END_TEST

/* ---- Of a takeoff ---------------------------------------------------------------------------- */

static struct garden garden;
static struct arena words;

static void setup(void)
{
	words = ARENA_EMPTY;
	garden_rows(&garden, (const char *[]){ "bbbbbbbb.ll", "bbbbbbbb.ll", "bbbbbbbb.ll",
		"bbbbbbbb.ll", NULL });
}

static void teardown(void)
{
	arena_clear(&words);
	garden_fini(&garden);
}

static const char *order(const char *id)
{
	const struct report report = { .words = &words, .units = plot_units(&garden.plot),
		.takeoff = &garden.takeoff, .plot = &garden.plot };

	return item_order(&report, garden_item(&garden, id));
}

/* 48 blocks and 3 spare; 17.78 cu ft of soil in place, half of it compost, 20 % more: 10.67 cu ft;
 * 2.96 cu ft of mulch; turf of 8 sq ft, 10 % more. */
START_TEST(without_a_book_all_is_asked_for_as_it_is_sold)
{
	plot_set(&garden.plot, 'b', BED_INSIDE, "filled");
	plot_set(&garden.plot, 'b', BED_FREEBOARD, "4 in");
	garden_count(&garden);
	ck_assert_str_eq(order("block.wall"), "51");
	ck_assert_str_eq(order("soil.compost"), "22 bags of 1/2 cu ft");
	ck_assert_str_eq(order("mulch"), "2 bags of 2 cu ft");
	ck_assert_str_eq(order("turf"), "9 sq ft");
	ck_assert_str_eq(order("topsoil.lawn"), "with Topsoil");
}
END_TEST

/* 80 sq ft of path dug 3 in into topsoil: 20 cu ft and more for half of a bed of 16 sq ft. */
START_TEST(what_is_all_reused_is_not_asked_for)
{
	garden_fini(&garden);
	garden_rows(&garden, (const char *const[]){ "pppppppppp.bbbb", "pppppppppp.bbbb",
		"pppppppppp.bbbb", "pppppppppp.bbbb", "pppppppppp.....", "pppppppppp.....",
		"pppppppppp.....", "pppppppppp.....", NULL });
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "6 in");
	plot_set(&garden.plot, 'p', PATH_BASE, "3 in");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "0 in");
	garden_count(&garden);
	ck_assert_double_gt(garden_item(&garden, "soil.topsoil")->reused, 0);
	ck_assert_str_eq(order("soil.topsoil"), "-");
}
END_TEST

/* 17.78 cu ft in place and 15 % more, three parts of four sand: 15.33 cu ft, at 100 lb a cubic foot
 * 1,533 lb; four steps of a quarter ton. */
START_TEST(sand_is_sold_as_stone_is)
{
	plot_set(&garden.plot, 'b', BED_INSIDE, "filled");
	plot_set(&garden.plot, 'b', BED_FREEBOARD, "4 in");
	plot_set(&garden.plot, 'b', BED_MIX, "compost 1, sharp-sand 3");
	garden_count(&garden);
	ck_assert_str_eq(order("soil.sharp-sand"), "1 ton");
}
END_TEST

/* The order and the note beside it. */
static const struct { const char *units, *width, *words; } rolls[] = {
	{ "imperial", "4 ft", "1 roll of 4 ft x 50 ft" },
	{ "imperial", "54 in", "1 roll of 4 ft 6 in x 50 ft" },
	{ "metric", "1200 mm", "1 roll of 1.2 m x 15 m" },
};

START_TEST(a_roll_is_as_wide_in_the_order_as_in_its_note)
{
	plot_set(&garden.plot, 0, HEAD_UNITS, rolls[_i].units);
	plot_set(&garden.plot, 0, ALLOW_LINER_WIDTH, rolls[_i].width);
	garden_count(&garden);
	ck_assert_str_eq(garden_note(&garden, garden_item(&garden, "liner")), rolls[_i].words);
	ck_assert_str_eq(order("liner"), rolls[_i].words);
}
END_TEST

START_TEST(packs_of_several_kinds_are_named_with_who_has_them)
{
	const struct report report = { .words = &words, .takeoff = &garden.takeoff,
		.plot = &garden.plot };

	book_of(&garden.book, "'suppliers': [{'name': 'Yard', 'delivery': 1}], 'goods': [{'item': "
		"'block.wall', 'block': '16 in x 8 in x 6 in', 'spec': 'split face', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 4}, {'pack': 'pallet', 'size': 50, "
		"'price': 150, 'supplier': 'Yard'}]}]");
	garden.has_book = true;
	garden_count(&garden);
	const struct item *block = garden_item(&garden, "block.wall");

	ck_assert_str_eq(item_order(&report, block), "1 piece + 1 pallet of 50");
	ck_assert_str_eq(item_packs(&report, block),
		"1 piece, collected; 1 pallet of 50, Yard");
	ck_assert_str_eq(item_spec(&report, block), "split face");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("item_words");
	TCase *plain = suite_case(suite, "words");

	tcase_add_loop_test(plain, pieces_are_whole_or_told_to_the_hundredth, 0,
		sizeof pieces / sizeof *pieces);
	tcase_add_loop_test(plain, money_is_shown_to_the_hundredth, 0, sizeof sums / sizeof *sums);
	tcase_add_loop_test(plain, packs_are_named_as_one_asks_for_them, 0,
		sizeof bought / sizeof *bought);

	TCase *takeoff = suite_case(suite, "takeoff");

	tcase_add_checked_fixture(takeoff, setup, teardown);
	tcase_add_test(takeoff, without_a_book_all_is_asked_for_as_it_is_sold);
	tcase_add_test(takeoff, what_is_all_reused_is_not_asked_for);
	tcase_add_test(takeoff, sand_is_sold_as_stone_is);
	tcase_add_loop_test(takeoff, a_roll_is_as_wide_in_the_order_as_in_its_note, 0,
		sizeof rolls / sizeof *rolls);
	tcase_add_test(takeoff, packs_of_several_kinds_are_named_with_who_has_them);
	return suite;
}
