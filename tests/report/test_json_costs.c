#include "support/runner.h"
#include "support/book.h"
#include "support/json.h"

#include <string.h>

static struct garden garden;
static struct text text;
static cJSON *root;

static void setup(void)
{
	text = TEXT_EMPTY;
	root = NULL;
	garden_rectangle(&garden, 'b', 8, 4);
}

static void teardown(void)
{
	cJSON_Delete(root);
	text_fini(&text);
	garden_fini(&garden);
}

static const cJSON *item(const char *id)
{
	const cJSON *row;

	cJSON_ArrayForEach(row, json_get(root, "items"))
		if (strcmp(json_get(row, "id")->valuestring, id) == 0)
			return row;
	ck_abort_msg("no row %s", id);
}

/* As it stands in the text, not as a double: "3.15" for money. */
static bool shows(const char *words)
{
	return strstr(text.bytes, words) != NULL;
}

START_TEST(whose_price_the_plot_tells_is_said)
{
	const cJSON *plant;

	plot_add_lines(&garden.plot, "plant r \"Rose\"\n  price 4.5\n  at 3,1\n");
	book_of(&garden.book, "'goods': [{'item': 'mulch', 'packs': [{'pack': 'bag', 'size': "
		"'2 cu ft', 'price': 3}]}]");
	garden.has_book = true;
	root = json_of(&garden, &text);
	plant = item("plant");
	ck_assert_str_eq(json_get(plant, "price_from")->valuestring, "plot");
	ck_assert_double_eq(json_get(plant, "unit_price")->valuedouble, 4.5);
	ck_assert_ptr_null(cJSON_GetObjectItemCaseSensitive(item("mulch"), "price_from"));
}
END_TEST

START_TEST(without_a_book_there_are_no_costs)
{
	root = json_of(&garden, &text);
	ck_assert(cJSON_IsNull(json_get(root, "costs")));
	ck_assert_ptr_null(cJSON_GetObjectItemCaseSensitive(item("block.wall"), "cost"));
}
END_TEST

/* 51 blocks at 3.15 are 160.65; with a delivery at 45.5 206.15. */
START_TEST(money_is_spelt_from_hundredths)
{
	book_of(&garden.book, "'suppliers': [{'name': 'Yard', 'delivery': 45.5}], 'goods': "
		"[{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', 'packs': [{'pack': "
		"'piece', 'size': 1, 'price': 3.15, 'supplier': 'Yard'}]}, {'item': 'mulch', "
		"'packs': [{'pack': 'bag', 'size': '2 cu ft', 'price': 0}]}]");
	garden.has_book = true;
	root = json_of(&garden, &text);
	const cJSON *costs = json_get(root, "costs"), *block = item("block.wall");

	ck_assert(shows("\"packs\":51,\"pack\":\"piece 1\",\"unit_price\":3.15,\"cost\":160.65,"
		"\"supplier\":\"Yard\""));
	ck_assert(shows("\"costs\": {\"currency\":\"USD\",\"complete\":false,\"cheapest\":true,"
		"\"goods\":160.65,"
		"\"delivery\":45.5,\"total\":206.15,"));
	ck_assert(shows("{\"section\":\"walls\",\"day\":\"walls\",\"goods\":160.65,"
		"\"delivery\":45.5}"));
	ck_assert(cJSON_IsString(json_get(block, "supplier")));
	ck_assert(cJSON_IsNull(json_get(item("mulch"), "supplier")));
	/* Days of spoil, stone, block of the yard and adhesive, soil and mulch. */
	ck_assert_int_eq(cJSON_GetArraySize(json_get(costs, "shipments")), 5);
	ck_assert_str_eq(json_get(cJSON_GetArrayItem(json_get(costs, "shipments"), 2), "supplier")->
		valuestring, "Yard");
	ck_assert(cJSON_IsNull(json_get(cJSON_GetArrayItem(json_get(costs, "shipments"), 3),
		"supplier")));
}
END_TEST

START_TEST(what_has_no_price_is_listed_with_the_size_of_its_block)
{
	book_of(&garden.book, "");
	garden.has_book = true;
	root = json_of(&garden, &text);
	const cJSON *unpriced = json_get(json_get(root, "costs"), "unpriced");

	ck_assert_int_eq(cJSON_GetArraySize(unpriced), (int)garden.takeoff.items.count);
	for (int i = 0; i < (int)garden.takeoff.items.count; i++) {
		const struct item *at = &garden.takeoff.items.list[i];
		const cJSON *row = cJSON_GetArrayItem(unpriced, i);

		ck_assert_str_eq(json_get(row, "id")->valuestring, garden_id(&garden, at));
		ck_assert_int_eq(cJSON_GetObjectItemCaseSensitive(row, "block_m") != NULL,
			!size_is_none(&at->block));
	}
	ck_assert(cJSON_IsFalse(json_get(json_get(root, "costs"), "complete")));
	ck_assert_int_eq(cJSON_GetArraySize(json_get(json_get(root, "costs"), "shipments")), 4);
}
END_TEST

/* 51 are a pallet of 40 and 11 pieces, 80 + 33. */
START_TEST(packs_of_several_kinds_are_listed)
{
	book_of(&garden.book, "'goods': [{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', "
		"'spec': 'grey', 'packs': [{'pack': 'piece', 'size': 1, 'price': 3}, {'pack': "
		"'pallet', 'size': 40, 'price': 80}]}]");
	garden.has_book = true;
	root = json_of(&garden, &text);
	ck_assert(shows("\"cost\":113,\"purchase\":[{\"packs\":11,\"pack\":\"piece 1\","
		"\"unit_price\":3,\"cost\":33,\"supplier\":null},{\"packs\":1,\"pack\":"
		"\"pallet 40\",\"unit_price\":80,\"cost\":80,\"supplier\":null}],\"spec\":"
		"\"grey\"}"));
	ck_assert_ptr_null(cJSON_GetObjectItemCaseSensitive(item("block.wall"), "packs"));
}
END_TEST

/* 2.96 cu ft: 2 bags of 2 cu ft, 600 lb a cubic yard, the default. */
START_TEST(without_a_book_packs_have_no_price_and_loads_are_there)
{
	root = json_of(&garden, &text);
	ck_assert(shows("\"purchase\":[{\"packs\":2,\"pack\":\"bag 2 cu ft\",\"unit_price\":"
		"null,\"cost\":null,\"supplier\":null}]"));
	ck_assert(shows("\"loads\": ["));
	ck_assert(shows("{\"section\":\"walls\",\"day\":\"walls\",\"weight_kg\":1387.9926522,"
		"\"weight_known\":false,\"pickup\":3,\"truck\":1}"));
	ck_assert_ptr_null(cJSON_GetObjectItemCaseSensitive(item("mulch"), "cost"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("json_costs");
	TCase *costs = suite_case(suite, "costs");

	tcase_add_checked_fixture(costs, setup, teardown);
	tcase_add_test(costs, without_a_book_there_are_no_costs);
	tcase_add_test(costs, whose_price_the_plot_tells_is_said);
	tcase_add_test(costs, money_is_spelt_from_hundredths);
	tcase_add_test(costs, what_has_no_price_is_listed_with_the_size_of_its_block);
	tcase_add_test(costs, packs_of_several_kinds_are_listed);
	tcase_add_test(costs, without_a_book_packs_have_no_price_and_loads_are_there);
	return suite;
}
