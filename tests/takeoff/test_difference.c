/* What a plot's takeoff has more than another's, told of takeoffs made by hand. */
#include "support/runner.h"
#include "takeoff/advice/attempt.h"

#include <string.h>

enum { ITEMS = 3 };

static const struct purchase with_price = { .is_priced = true }, without = { .is_priced = false };
static const struct book book;

/* A takeoff with a list of goods. */
struct goods_of {
	struct takeoff takeoff;
	struct item items[ITEMS];
};

/* A block of 16 in without a price, so many of them. */
static struct item unpriced_block(double order)
{
	return (struct item){ .good = GOOD_BLOCK_WALL, .name = "", .order = order,
		.block = { 16, 8, 6 }, .length = 4, .height = 3, .across = 2,
		.purchase = &without };
}

static void set_items(struct goods_of *of, const struct item *items, size_t count)
{
	*of = (struct goods_of){ .takeoff.book = &book };
	for (size_t i = 0; i < count; i++) {
		of->items[i] = items[i];
		of->items[i].with = (int)i;
	}
	of->takeoff.items = (struct item_list){ .list = of->items, .count = count };
}

static bool has_cost(struct goods_of *before, struct goods_of *after)
{
	return difference_of(&before->takeoff, &after->takeoff).has_cost;
}

/* ---- Money ----------------------------------------------------------------------------------- */

START_TEST(what_has_no_price_may_differ_in_nothing)
{
	struct item other[9];
	struct goods_of before, after;

	for (int i = 0; i < 9; i++)
		other[i] = unpriced_block(20);
	other[1].good = GOOD_BLOCK_CAP;
	other[2].name = "Trough";
	other[3].block.along++;
	other[4].block.up++;
	other[5].length = 5;
	other[6].height = 4;
	other[7].across = 3;
	other[8].order = 21;
	for (int i = 0; i < 9; i++) {
		set_items(&before, &other[0], 1);
		set_items(&after, &other[i], 1);
		ck_assert_msg(has_cost(&before, &after) == (i == 0), "row %d", i);
		ck_assert_msg(has_cost(&after, &before) == (i == 0), "row %d", i);
	}
}
END_TEST

/* Letters of items in their order: p priced, n not to be bought, a b without a price; u comes with
 * the item before, and so with its purchase. */
static void set_list(struct goods_of *of, const char *letters)
{
	struct item items[ITEMS] = { 0 };
	size_t count = strlen(letters);

	for (size_t i = 0; i < count; i++) {
		items[i] = unpriced_block(letters[i] == 'b' ? 8 : 7);
		items[i].purchase = letters[i] == 'p' ? &with_price :
			letters[i] == 'a' || letters[i] == 'b' ? &without : NULL;
	}
	set_items(of, items, count);
	for (size_t i = 1; i < count; i++)
		of->items[i].with -= letters[i] == 'u';
}

START_TEST(money_is_told_where_all_that_differs_has_a_price)
{
	static const struct {
		const char *before, *after;
		bool has_cost;
	} rows[] = {
		{ "", "", true }, { "", "p", true }, { "ppp", "", true }, { "p", "n", true },
		{ "a", "a", true }, { "a", "pa", true }, { "pap", "a", true },
		{ "npa", "an", true }, { "ab", "ab", true }, { "ab", "apb", true },
		{ "a", "", false }, { "", "b", false }, { "p", "a", false }, { "a", "b", false },
		{ "ab", "a", false }, { "a", "ab", false }, { "ab", "ba", false },
		{ "aab", "aa", false }, { "ab", "aa", false }, { "pab", "pap", false },
		{ "pu", "p", true }, { "au", "a", false }, { "au", "aa", true },
		{ "a", "au", false },
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct goods_of before, after;

		set_list(&before, rows[i].before);
		set_list(&after, rows[i].after);
		ck_assert_msg(has_cost(&before, &after) == rows[i].has_cost, "%s, %s",
			rows[i].before, rows[i].after);
	}
}
END_TEST

START_TEST(money_is_that_of_the_costs_and_none_without_a_book)
{
	struct goods_of before, after;

	set_list(&before, "p");
	set_list(&after, "p");
	before.takeoff.costs.total = 1250;
	after.takeoff.costs.total = 1100;
	ck_assert_int_eq(difference_of(&before.takeoff, &after.takeoff).cost, -150);
	before.takeoff.book = after.takeoff.book = NULL;
	ck_assert(!has_cost(&before, &after));
	ck_assert_int_eq(difference_of(&before.takeoff, &after.takeoff).cost, 0);
}
END_TEST

/* ---- Sums ------------------------------------------------------------------------------------ */

/* 2 blocks of 3 pieces, 5 of 1 and 4 of 2: 19 pieces; 30 and 12 blocks. */
START_TEST(blocks_pieces_and_panels_are_those_of_all_beds_and_fences)
{
	const struct cut one[] = { { .piece_count = 3, .blocks = 2 },
		{ .piece_count = 1, .blocks = 5 } };
	const struct cut two[] = { { .piece_count = 2, .blocks = 4 } };
	const struct cutting cuttings[] = { { .order = 30, .cuts = one, .cut_count = 2 },
		{ .order = 12, .cuts = two, .cut_count = 1 } };
	const struct fencing fences[] = { { .panels_bought = 9, .panel_pieces = 4 },
		{ .panels_bought = 5, .panel_pieces = 2 } };
	struct takeoff none, some;
	struct difference more, less;

	memset(&none, 0, sizeof none);
	memset(&some, 0, sizeof some);
	some.cuttings = (struct cuttings){ cuttings, 2 };
	some.fences.list = fences;
	some.fences.count = 2;
	more = difference_of(&none, &some);
	less = difference_of(&some, &none);
	ck_assert_int_eq(more.blocks, 42);
	ck_assert_int_eq(more.cuts, 19);
	ck_assert_int_eq(more.panels, 14);
	ck_assert_int_eq(more.panel_pieces, 6);
	ck_assert_int_eq(less.blocks, -42);
	ck_assert_int_eq(less.cuts, -19);
	ck_assert_int_eq(less.panels, -14);
	ck_assert_int_eq(less.panel_pieces, -6);
}
END_TEST

START_TEST(weight_is_told_from_a_gram_on)
{
	static const struct {
		double before, after, told;
	} rows[] = {
		{ 0, 0.001, 0.001 }, { 0.001, 0, -0.001 }, { 0, 0.00095, 0 }, { 0.00095, 0, 0 },
		{ 1000, 250, -750 }, { 250, 1000, 750 },
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct takeoff before, after;

		memset(&before, 0, sizeof before);
		memset(&after, 0, sizeof after);
		before.costs.weight = rows[i].before;
		after.costs.weight = rows[i].after;
		ck_assert_double_eq(difference_of(&before, &after).weight, rows[i].told);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("difference");
	TCase *costs = suite_case(suite, "money"), *sums = suite_case(suite, "sums");

	tcase_add_test(costs, what_has_no_price_may_differ_in_nothing);
	tcase_add_test(costs, money_is_told_where_all_that_differs_has_a_price);
	tcase_add_test(costs, money_is_that_of_the_costs_and_none_without_a_book);
	tcase_add_test(sums, blocks_pieces_and_panels_are_those_of_all_beds_and_fences);
	tcase_add_test(sums, weight_is_told_from_a_gram_on);
	return suite;
}
