#include "support/runner.h"
#include "support/book.h"

#include <string.h>

static const double EXACT = 1e-9;
static const double POUND = 0.45359237;
static const double FOOT = 0.3048;

static const struct {
	const char *item, *pack;
	enum pack_kind kind;
	enum item_unit unit;
	double size, step, weight;
	const char *words;
} packs[] = {
	{ "mulch", "'pack': 'bag', 'size': '2 cu ft', 'price': 4", PACK_BAG, UNIT_M3,
		2 * FOOT * FOOT * FOOT, 0, 0, "2 cu ft" },
	{ "mulch", "'pack': 'bulk', 'size': '1 cu yd', 'step': '0.5 cu yd', 'price': 4", PACK_BULK,
		UNIT_M3, 27 * FOOT * FOOT * FOOT, 13.5 * FOOT * FOOT * FOOT, 0, "1 cu yd" },
	{ "soil.topsoil", "'pack': 'bag', 'size': ' 40  lb ', 'weight': '41 lb', 'price': 4",
		PACK_BAG, UNIT_KG, 40 * POUND, 0, 41 * POUND, "40 lb" },
	{ "soil.sharp-sand", "'pack': 'bulk', 'size': '1000kg', 'step': '250 kg', 'price': 30",
		PACK_BULK, UNIT_KG, 1000, 250, 0, "1000kg" },
	{ "soil.compost", "'pack': 'bulk', 'size': '1 m3', 'price': 4", PACK_BULK, UNIT_M3, 1, 0, 0,
		"1 m3" },
	{ "turf", "'pack': 'bulk', 'size': '10 sq ft', 'step': '2.5 sq ft', 'price': 4", PACK_BULK,
		UNIT_M2, 10 * FOOT * FOOT, 2.5 * FOOT * FOOT, 0, "10 sq ft" },
	{ "adhesive.cartridge", "'pack': 'piece', 'size': 12, 'price': 70, 'weight': '5 kg'",
		PACK_PIECE, UNIT_EACH, 12, 0, 5, "12" },
};

START_TEST(a_pack_is_read_in_what_its_item_is_counted_in)
{
	struct text text = TEXT_EMPTY;
	struct book book;

	text_print(&text, "'goods': [{'item': '%s', 'packs': [{%s}]}]", packs[_i].item,
		packs[_i].pack);
	book_of(&book, text.bytes);
	const struct pack *pack = &book.goods[0].packs[0];

	ck_assert_int_eq(pack->kind, packs[_i].kind);
	ck_assert_int_eq(pack->unit, packs[_i].unit);
	ck_assert_double_eq_tol(pack->size, packs[_i].size, EXACT);
	ck_assert_double_eq_tol(pack->step, packs[_i].step, EXACT);
	ck_assert_double_eq_tol(pack->weight, packs[_i].weight, EXACT);
	ck_assert_str_eq(pack->words, packs[_i].words);
	ck_assert_int_eq(pack->supplier, NO_SUPPLIER);
	book_fini(&book);
	text_fini(&text);
}
END_TEST

static const struct goods *goods_of(const struct book *book, const char *id,
	const struct size *block, nm length)
{
	struct wanted_goods wanted = { .block = *block, .length = length };

	return good_find(id, &wanted.good, &wanted.name) ? book_goods(book, &wanted) : NULL;
}

START_TEST(goods_of_blocks_are_found_by_the_size_of_the_block)
{
	struct book book;
	struct size wall = { 16 * NM_PER_INCH, 8 * NM_PER_INCH, 6 * NM_PER_INCH };
	struct size other = { 12 * NM_PER_INCH, 4 * NM_PER_INCH, 4 * NM_PER_INCH },
		none = { 0, 0, 0 };

	book_of(&book, "'goods': [{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 3.1}]}, {'item': 'block.wall', 'block': "
		"'1 ft x 4 in x 4 in', 'packs': [{'pack': 'pallet', 'size': 90, 'price': 200}]}, "
		"{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': '50 L', 'price': 6}]}]");
	ck_assert_ptr_eq(goods_of(&book, "block.wall", &wall, 0), &book.goods[0]);
	ck_assert_ptr_eq(goods_of(&book, "block.wall", &other, 0), &book.goods[1]);
	ck_assert_ptr_null(goods_of(&book, "block.cap", &wall, 0));
	ck_assert_ptr_null(goods_of(&book, "block.wall", &none, 0));
	ck_assert_ptr_eq(goods_of(&book, "mulch", &none, 0), &book.goods[2]);
	ck_assert_ptr_null(goods_of(&book, "mulc", &none, 0));
	book_fini(&book);
}
END_TEST

START_TEST(each_part_of_a_mix_has_goods_of_its_own)
{
	struct book book;
	struct size none = { 0, 0, 0 };

	book_of(&book, "'goods': [{'item': 'soil.topsoil', 'packs': "
		"[{'pack': 'bag', 'size': '50 L', 'price': 6}]}, {'item': 'soil.compost', 'packs': "
		"[{'pack': 'bag', 'size': '50 L', 'price': 7}]}, {'item': 'soil.sharp-sand', "
		"'packs': [{'pack': 'bag', 'size': '50 L', 'price': 8}]}]");
	ck_assert_ptr_eq(goods_of(&book, "soil.topsoil", &none, 0), &book.goods[0]);
	ck_assert_ptr_eq(goods_of(&book, "soil.compost", &none, 0), &book.goods[1]);
	ck_assert_ptr_eq(goods_of(&book, "soil.sharp-sand", &none, 0), &book.goods[2]);
	ck_assert_ptr_null(goods_of(&book, "soil.sharp", &none, 0));
	book_fini(&book);
}
END_TEST

#define POSTS(keys) \
	"{'item': 'fence.post', " keys "'packs': [{'pack': 'piece', 'size': 1, 'price': 9}]}"

START_TEST(goods_of_one_length_go_before_those_of_any)
{
	struct book book;
	struct size none = { 0, 0, 0 };

	book_of(&book, "'goods': [" POSTS("") ", " POSTS("'length': '6 ft', ") ", "
		POSTS("'length': '2.4 m', ") "]");
	ck_assert_ptr_eq(goods_of(&book, "fence.post", &none, 6 * NM_PER_FOOT), &book.goods[1]);
	ck_assert_ptr_eq(goods_of(&book, "fence.post", &none, 6 * NM_PER_FOOT + NM_PER_MM),
		&book.goods[1]);
	ck_assert_ptr_eq(goods_of(&book, "fence.post", &none, 6 * NM_PER_FOOT + NM_PER_MM + 1),
		&book.goods[0]);
	ck_assert_ptr_eq(goods_of(&book, "fence.post", &none, 2400 * NM_PER_MM), &book.goods[2]);
	ck_assert_ptr_eq(goods_of(&book, "fence.post", &none, 7 * NM_PER_FOOT), &book.goods[0]);
	book_fini(&book);
}
END_TEST

START_TEST(goods_of_one_length_are_for_no_other)
{
	struct book book;
	struct size none = { 0, 0, 0 };

	book_of(&book, "'goods': [" POSTS("'length': '6 ft', ") "]");
	ck_assert_ptr_null(goods_of(&book, "fence.post", &none, 7 * NM_PER_FOOT));
	book_fini(&book);
}
END_TEST

#define PANELS(keys) \
	"{'item': 'fence.panel', " keys "'packs': [{'pack': 'piece', 'size': 1, 'price': 9}]}"

static const struct goods *panels_of(const struct book *book, nm section, nm height)
{
	return book_goods(book, &(struct wanted_goods){ .good = GOOD_FENCE_PANEL, .name = "",
		.length = section, .height = height });
}

/* Of rows that fit the one that says most; a height that differs does not fit. */
START_TEST(panels_are_found_by_section_and_height)
{
	struct book book;
	nm section = 8 * NM_PER_FOOT;

	book_of(&book, "'goods': [" PANELS("") ", " PANELS("'length': '8 ft', ") ", "
		PANELS("'height': '3 ft', 'length': '8 ft', ") ", " PANELS("'height': '4 ft', ")
		"]");
	ck_assert_ptr_eq(panels_of(&book, section, 3 * NM_PER_FOOT), &book.goods[2]);
	ck_assert_ptr_eq(panels_of(&book, section, 3 * NM_PER_FOOT - NM_PER_MM), &book.goods[2]);
	ck_assert_ptr_eq(panels_of(&book, section, 3 * NM_PER_FOOT - NM_PER_MM - 1),
		&book.goods[1]);
	ck_assert_ptr_eq(panels_of(&book, section, 4 * NM_PER_FOOT), &book.goods[1]);
	ck_assert_ptr_eq(panels_of(&book, 6 * NM_PER_FOOT, 4 * NM_PER_FOOT), &book.goods[3]);
	ck_assert_ptr_eq(panels_of(&book, 6 * NM_PER_FOOT, 3 * NM_PER_FOOT), &book.goods[0]);
	book_fini(&book);
}
END_TEST

START_TEST(posts_are_found_by_their_thickness)
{
	struct wanted_goods post = { .good = GOOD_FENCE_POST, .name = "",
		.length = 6 * NM_PER_FOOT, .across = 4 * NM_PER_INCH };
	struct book book;

	book_of(&book, "'goods': [" POSTS("'post': '3 1/2 in', 'length': '6 ft', ") ", "
		POSTS("'length': '6 ft', 'post': '4 in', ") "]");
	ck_assert_ptr_eq(book_goods(&book, &post), &book.goods[1]);
	post.across = 5 * NM_PER_INCH;
	ck_assert_ptr_null(book_goods(&book, &post));
	book_fini(&book);
}
END_TEST

START_TEST(packs_need_no_price_and_a_spec_needs_no_packs)
{
	struct book book;

	book_of(&book, "'goods': [{'item': 'mulch', 'spec': 'shredded bark', 'packs': [{'pack': "
		"'bag', 'size': '2 cu ft'}, {'pack': 'bag', 'size': '3 cu ft', 'price': 0}]}, "
		"{'item': 'turf', 'spec': 'fescue'}, {'item': 'seed', 'packs': [{'pack': 'box', "
		"'size': '1 lb'}]}]");
	ck_assert_str_eq(book.goods[0].spec, "shredded bark");
	ck_assert_int_eq(book.goods[0].packs[0].price, NO_PRICE);
	ck_assert_int_eq(book.goods[0].packs[1].price, 0);
	ck_assert_str_eq(book.goods[1].spec, "fescue");
	ck_assert_int_eq(book.goods[1].pack_count, 0);
	ck_assert_str_eq(book.goods[2].spec, "");
	ck_assert_int_eq(book.goods[2].packs[0].kind, PACK_BOX);
	book_fini(&book);
}
END_TEST

static const struct { const char *size; enum item_unit unit; double si; } sizes[] = {
	{ "6", UNIT_EACH, 6 }, { "'8 ft'", UNIT_M, 8 * 0.3048 }, { "'10 m2'", UNIT_M2, 10 },
	{ "'40 L'", UNIT_M3, 0.04 }, { "'25 kg'", UNIT_KG, 25 },
};

START_TEST(goods_of_the_plots_own_are_sold_in_whatever_the_size_is_in)
{
	struct text text = TEXT_EMPTY;
	struct book book;

	text_print(&text, "'goods': [{'item': 'extra', 'name': 'String', 'packs': [{'pack': "
		"'roll', 'size': %s}]}, {'item': 'extra', 'name': 'Paint', 'spec': 'white'}]",
		sizes[_i].size);
	book_of(&book, text.bytes);
	ck_assert_str_eq(book.goods[0].name, "String");
	ck_assert_int_eq(book.goods[0].packs[0].unit, sizes[_i].unit);
	ck_assert_double_eq_tol(book.goods[0].packs[0].size, sizes[_i].si, EXACT);
	text_fini(&text);
	book_fini(&book);
}
END_TEST

#define PACK(words) "{'item': 'mulch', 'packs': [{" words "}]}"
#define PIECE(item, words) "{'item': '" item "', 'packs': [{'pack': 'piece', " words "}]}"

static const struct { const char *goods, *path, *found, *expected; } refused[] = {
	{ "{'packs': []}", "goods[0].item", "nothing", "the id of an item, such as \"mulch\"" },
	{ "{'item': 'mulch'}", "goods[0].packs", "nothing", "a list of packs, or a spec" },
	{ "{'item': 'mulch', 'packs': []}", "goods[0].packs", "a list", "at least one pack" },
	{ "{'item': 'mulch', 'packs': {}}", "goods[0].packs", "an object",
		"a list, [ ... ], of at most 20" },
	{ "{'item': 'mulch', 'packs': [1]}", "goods[0].packs[0]", "1", "an object, { ... }" },
	{ "{'item': 'mulch', 'block': '4 in x 4 in x 4 in', 'packs': []}", "goods[0].block",
		"\"4 in x 4 in x 4 in\"", "no block: this item has none" },
	{ "{'item': 'mulch', 'length': '6 ft', 'packs': []}", "goods[0].length", "\"6 ft\"",
		"no length: this item is sold in one" },
	{ PIECE("block.cap", "'size': 1, 'price': 1"), "goods[0].block", "nothing",
		"the block's size, such as \"16 in x 8 in x 6 in\"" },
	{ "{'item': 'block.wall', 'block': '8 in x 16 in x 6 in', 'packs': []}", "goods[0].block",
		"\"8 in x 16 in x 6 in\"", "a depth across the wall of at most the length along "
		"it" },
	{ PACK("'size': '2 cu ft', 'price': 4"), "goods[0].packs[0].pack", "nothing",
		"\"bulk\", \"bag\", \"box\", \"bundle\", \"pallet\", \"roll\" or \"piece\"" },
	{ PACK("'pack': 'sack', 'size': '2 cu ft', 'price': 4"), "goods[0].packs[0].pack",
		"\"sack\"",
		"\"bulk\", \"bag\", \"box\", \"bundle\", \"pallet\", \"roll\" or \"piece\"" },
	{ PACK("'pack': 'bag', 'price': 4"), "goods[0].packs[0].size", "nothing",
		"how much a pack holds, such as \"2 cu ft\" or 90" },
	{ "{'item': 'fence.post', 'height': '3 ft', 'packs': []}", "goods[0].height", "\"3 ft\"",
		"no height: only panels and gates have one" },
	{ "{'item': 'fence.gate', 'post': '4 in', 'packs': []}", "goods[0].post", "\"4 in\"",
		"no post: only posts have a thickness" },
	{ "{'item': 'fence.panel', 'height': '3', 'packs': []}", "goods[0].height", "\"3\"",
		"a length with its unit, such as 3 in" },
	{ "{'item': 'mulch', 'name': 'Bark', 'packs': []}", "goods[0].name", "\"Bark\"",
		"no name: this item has its own" },
	{ "{'item': 'extra', 'packs': [{'pack': 'piece', 'size': 1}]}", "goods[0].name", "nothing",
		"the name that the plot gives it" },
	{ "{'item': 'mulch', 'spec': ''}", "goods[0].spec", "\"\"",
		"text of 1 to 80 characters that can be shown" },
	{ "{'item': 'mulch', 'spec': 1}", "goods[0].spec", "1",
		"text of 1 to 80 characters that can be shown" },
	{ PACK("'pack': 'bag', 'size': '2 cu ft', 'price': null"), "goods[0].packs[0].price",
		"null", "a number from 0 to 1000000 with at most 2 decimal places" },
	{ PACK("'pack': 'bag', 'size': '2 ft', 'price': 4"), "goods[0].packs[0].size", "\"2 ft\"",
		"a volume such as 6 cu ft, 10 cu yd, 100 L or 6 m3" },
	{ PACK("'pack': 'bag', 'size': '0 cu ft', 'price': 4"), "goods[0].packs[0].size",
		"\"0 cu ft\"", "0.001 to 100000 cu ft, cu yd, L or m3" },
	{ PACK("'pack': 'bag', 'size': '-2 cu ft', 'price': 4"), "goods[0].packs[0].size",
		"\"-2 cu ft\"", "a volume such as 6 cu ft, 10 cu yd, 100 L or 6 m3" },
	{ PACK("'pack': 'bag', 'size': 2, 'price': 4"), "goods[0].packs[0].size", "2",
		"a volume such as 6 cu ft, 10 cu yd, 100 L or 6 m3" },
	{ PACK("'pack': 'bag', 'size': '2 cu ft', 'price': 4, 'step': '1 cu ft'"),
		"goods[0].packs[0].step", "\"1 cu ft\"", "no step: only bulk is sold in steps" },
	{ PACK("'pack': 'bulk', 'size': '2 cu ft', 'price': 4, 'step': '3 cu ft'"),
		"goods[0].packs[0].step", "\"3 cu ft\"",
		"a step of at most the size, 2 cu ft, in units of that kind" },
	{ PACK("'pack': 'bulk', 'size': '2 cu ft', 'price': 4, 'step': '3 lb'"),
		"goods[0].packs[0].step", "\"3 lb\"",
		"a step of at most the size, 2 cu ft, in units of that kind" },
	{ PACK("'pack': 'bag', 'size': '2 cu ft', 'price': 4, 'weight': 40"),
		"goods[0].packs[0].weight", "40", "a weight such as 300 lb or 130 kg" },
	{ PACK("'pack': 'bag', 'size': '2 cu ft', 'price': 4, 'colour': 'red'"),
		"goods[0].packs[0]",
		"colour", "pack, size, price, step, weight or supplier" },
	{ PIECE("adhesive.cartridge", "'size': 0, 'price': 1"), "goods[0].packs[0].size", "0",
		"a whole number from 1 to 1000000" },
	{ PIECE("adhesive.cartridge", "'size': 1.5, 'price': 1"), "goods[0].packs[0].size", "1.5",
		"a whole number from 1 to 1000000" },
	{ PIECE("adhesive.cartridge", "'size': '12', 'price': 1"), "goods[0].packs[0].size",
		"\"12\"",
		"a whole number from 1 to 1000000" },
	{ PIECE("adhesive.cartridge", "'size': 1e999, 'price': 1"), "goods[0].packs[0].size", "inf",
		"a whole number from 1 to 1000000" },
	{ "{'item': 'adhesive.cartridge', 'packs': [{'pack': 'bulk', 'size': 5, 'price': 1}]}",
		"goods[0].packs[0].size", "5",
		"another pack: what is counted is not sold in bulk" },
};

START_TEST(what_is_wrong_with_goods_is_told_by_its_path)
{
	struct text text = TEXT_EMPTY;
	struct book book;
	struct book_fault fault;

	text_print(&text, "{'format': 'parterre-prices', 'version': 1, 'currency': 'USD', "
		"'goods': [%s]}", refused[_i].goods);
	ck_assert_msg(!book_try(&book, text.bytes, &fault), "%s", refused[_i].goods);
	ck_assert_str_eq(fault.path, refused[_i].path);
	ck_assert_str_eq(fault.diag.found, refused[_i].found);
	ck_assert_str_eq(fault.diag.expected, refused[_i].expected);
	text_fini(&text);
}
END_TEST

static const char *const strangers[] = { "gnomes", "", "soil", "soil.", "soil.Topsoil", "soil.a--b",
	"soil.-a", "mulch.fine", "block", "Mulch" };

START_TEST(an_item_that_no_takeoff_has_is_refused)
{
	struct text text = TEXT_EMPTY;
	struct book book;
	struct book_fault fault;

	text_print(&text, "{'format': 'parterre-prices', 'version': 1, 'currency': 'USD', "
		"'goods': [{'item': '%s', 'packs': []}]}", strangers[_i]);
	ck_assert_msg(!book_try(&book, text.bytes, &fault), "%s", strangers[_i]);
	ck_assert_str_eq(fault.path, "goods[0].item");
	ck_assert_int_eq(strncmp(fault.diag.expected, "an item of the takeoff: block.wall, ", 36),
		0);
	text_fini(&text);
}
END_TEST

/* Right at what the manual allows, and just beyond. */
static const struct { const char *goods; bool is_read; } limits[] = {
	{ POSTS("'length': '1 mm', "), true }, { POSTS("'length': '0.999999 mm', "), false },
	{ POSTS("'post': '10000 m', "), true }, { POSTS("'post': '10000.001 m', "), false },
	{ PANELS("'height': '1 mm', "), true }, { PANELS("'height': '0.999999 mm', "), false },
	{ PACK("'pack': 'bag', 'size': '0.001 L'"), true },
	{ PACK("'pack': 'bag', 'size': '0.000999 L'"), false },
	{ PACK("'pack': 'bag', 'size': '100000 L'"), true },
	{ PACK("'pack': 'bag', 'size': '100000.000001 L'"), false },
	{ PIECE("adhesive.cartridge", "'size': 1"), true },
	{ PIECE("adhesive.cartridge", "'size': 1000000"), true },
	{ PIECE("adhesive.cartridge", "'size': 1000001"), false },
	{ PACK("'pack': 'bulk', 'size': '2 L', 'step': '2 L'"), true },
	{ PACK("'pack': 'bulk', 'size': '2 L', 'step': '2.000001 L'"), false },
};

START_TEST(a_measure_is_read_up_to_its_limits)
{
	struct text text = TEXT_EMPTY;
	struct book book;
	struct book_fault fault;

	text_print(&text, "{'format': 'parterre-prices', 'version': 1, 'currency': 'USD', "
		"'goods': [%s]}", limits[_i].goods);
	ck_assert_msg(book_try(&book, text.bytes, &fault) == limits[_i].is_read, "%s: expected %s",
		limits[_i].goods, fault.diag.expected);
	book_fini(&book);
	text_fini(&text);
}
END_TEST

/* Its words, its name and its note. */
START_TEST(a_text_has_so_many_characters_and_no_more)
{
	static const struct { const char *before, *after; int most; } texts[] = {
		{ "'goods': [{'item': 'mulch', 'spec': '", "'}]", 80 },
		{ "'goods': [{'item': 'extra', 'spec': 'x', 'name': '", "'}]", 60 },
		{ "'note': '", "'", 500 },
	};
	struct text text = TEXT_EMPTY;
	struct book book;
	struct book_fault fault;

	for (int i = 0; i < 6; i++) {
		text_clear(&text);
		text_print(&text, "{'format': 'parterre-prices', 'version': 1, 'currency': "
			"'USD', %s", texts[i / 2].before);
		for (int j = texts[i / 2].most + i % 2; j > 0; j--)
			text_add(&text, "\xC3\xA4");
		text_print(&text, "%s}", texts[i / 2].after);
		ck_assert_msg(book_try(&book, text.bytes, &fault) == (i % 2 == 0), "row %d: %s", i,
			fault.diag.expected);
		book_fini(&book);
	}
	text_fini(&text);
}
END_TEST

START_TEST(twenty_packs_are_read_and_no_more)
{
	struct text text = TEXT_EMPTY;
	struct book book;
	struct book_fault fault;

	for (int most = 20; most <= 21; most++) {
		text_clear(&text);
		text_print(&text, "{'format': 'parterre-prices', 'version': 1, 'currency': 'USD', "
			"'goods': [{'item': 'mulch', 'packs': [");
		for (int i = 0; i < most; i++)
			text_print(&text, "%s{'pack': 'bag', 'size': '%d L', 'price': 4}", i ? "," :
				"", i + 1);
		text_add(&text, "]}]}");
		ck_assert_int_eq(book_try(&book, text.bytes, &fault), most == 20);
		if (most == 20)
			ck_assert_int_eq(book.goods[0].pack_count, 20);
		book_fini(&book);
	}
	ck_assert_str_eq(fault.path, "goods[0].packs");
	text_fini(&text);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("book_goods");
	TCase *reading = suite_case(suite, "reading");
	TCase *refusing = suite_case(suite, "refusing");

	tcase_add_loop_test(reading, a_pack_is_read_in_what_its_item_is_counted_in, 0,
		sizeof packs / sizeof *packs);
	tcase_add_test(reading, goods_of_blocks_are_found_by_the_size_of_the_block);
	tcase_add_test(reading, each_part_of_a_mix_has_goods_of_its_own);
	tcase_add_test(reading, goods_of_one_length_go_before_those_of_any);
	tcase_add_test(reading, goods_of_one_length_are_for_no_other);
	tcase_add_test(reading, panels_are_found_by_section_and_height);
	tcase_add_test(reading, posts_are_found_by_their_thickness);
	tcase_add_test(reading, packs_need_no_price_and_a_spec_needs_no_packs);
	tcase_add_loop_test(reading, goods_of_the_plots_own_are_sold_in_whatever_the_size_is_in,
		0, sizeof sizes / sizeof *sizes);
	tcase_add_loop_test(refusing, what_is_wrong_with_goods_is_told_by_its_path, 0,
		sizeof refused / sizeof *refused);
	tcase_add_loop_test(refusing, an_item_that_no_takeoff_has_is_refused, 0,
		sizeof strangers / sizeof *strangers);
	tcase_add_loop_test(refusing, a_measure_is_read_up_to_its_limits, 0,
		sizeof limits / sizeof *limits);
	tcase_add_test(refusing, a_text_has_so_many_characters_and_no_more);
	tcase_add_test(refusing, twenty_packs_are_read_and_no_more);
	return suite;
}
