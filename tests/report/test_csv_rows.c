/* The table for spreadsheets says of any plot what its JSON says. */
#include "support/runner.h"
#include "support/beds.h"
#include "support/book.h"
#include "support/csv.h"
#include "support/details.h"
#include "support/json.h"

#include <math.h>
#include <string.h>

static struct garden garden;
static struct text csv, json;
static int several; /* items that were bought in packs of several kinds */
static cJSON *rows, *root;

static void setup(void)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	csv = json = TEXT_EMPTY;
	rows = root = NULL;
}

static void teardown(void)
{
	cJSON_Delete(rows);
	cJSON_Delete(root);
	text_fini(&csv);
	text_fini(&json);
	garden_fini(&garden);
}

static const cJSON *row_at(int index)
{
	const cJSON *row = cJSON_GetArrayItem(rows, index);

	ck_assert_msg(row, "no row %d", index);
	return row;
}

/* Six places are printed, and nine in JSON, where all is in units of `size`. */
static void number_is(const cJSON *row, const char *column, double in_json, double size)
{
	double found = csv_number(row, column), expected = in_json / size;

	ck_assert_msg(fabs(found - expected) <= 5.1e-7 + 5.1e-10 / size + fabs(expected) * 1e-12,
		"%s %s: found %.9f, expected %.9f", csv_get(row, "item"), column, found, expected);
}

/* In m, m2, m3 and kg: by definition of the foot and the pound, of 16 oz. */
static double size_of_unit(const char *unit)
{
	static const struct { const char *word; double size; } units[] = {
		{ "each", 1 }, { "m", 1 }, { "m2", 1 }, { "m3", 1 }, { "kg", 1 }, { "L", 1e-3 },
		{ "g", 1e-3 }, { "ft", 0.3048 }, { "sq ft", SQUARE_FOOT }, { "cu ft", CUBIC_FOOT },
		{ "cu yd", CUBIC_YARD }, { "lb", 0.45359237 }, { "oz", 0.45359237 / 16 },
	};

	for (size_t i = 0; i < sizeof units / sizeof *units; i++)
		if (strcmp(units[i].word, unit) == 0)
			return units[i].size;
	ck_abort_msg("no unit %s", unit);
}

static const cJSON *found(const cJSON *object, const char *key)
{
	return cJSON_GetObjectItemCaseSensitive(object, key);
}

static double json_or_0(const cJSON *object, const char *key)
{
	return found(object, key) ? found(object, key)->valuedouble : 0;
}

static void text_is(const cJSON *row, const char *column, const cJSON *expected)
{
	csv_is(row, column, cJSON_IsString(expected) ? expected->valuestring : "");
}

static void quantities_are(const cJSON *row, const cJSON *item)
{
	double size = size_of_unit(csv_get(row, "unit"));

	number_is(row, "laid", json_get(item, "laid")->valuedouble, size);
	number_is(row, "spare", json_get(item, "spare")->valuedouble, size);
	number_is(row, "order", json_get(item, "order")->valuedouble, size);
	number_is(row, "reused", json_or_0(item, "reused"), size);
}

static void quantities_are_none(const cJSON *row)
{
	static const char *const columns[] = { "laid", "spare", "reused", "order", "unit" };

	for (int i = 0; i < 5; i++)
		csv_is(row, columns[i], "");
}

static void bought_is(const cJSON *row, const cJSON *bought)
{
	const cJSON *supplier = json_get(bought, "supplier");

	number_is(row, "packs", json_get(bought, "packs")->valuedouble, 1);
	text_is(row, "pack", json_get(bought, "pack"));
	if (!garden.has_book)
		csv_is(row, "supplier", "");
	else
		csv_is(row, "supplier",
			cJSON_IsNull(supplier) ? "collected" : supplier->valuestring);
	if (cJSON_IsNull(json_get(bought, "cost"))) {
		csv_is(row, "price", "");
		csv_is(row, "cost", "");
		csv_is(row, "currency", "");
		return;
	}
	number_is(row, "price", json_get(bought, "unit_price")->valuedouble, 1);
	number_is(row, "cost", json_get(bought, "cost")->valuedouble, 1);
	csv_is(row, "currency", "USD");
	ck_assert_double_eq_tol(csv_number(row, "packs") * csv_number(row, "price"),
		csv_number(row, "cost"), 0.0051 + csv_number(row, "price") * 5.1e-7);
}

static void section_is(const cJSON *row, const char *key)
{
	int section = 0;

	while (strcmp(section_words[section].key, key) != 0)
		section++;
	csv_is(row, "section", section_words[section].heading);
}

/* The rows of one item, from there on; returns how many. */
static int item_is(int at, const cJSON *item)
{
	const cJSON *purchase = found(item, "purchase");
	int packs = purchase ? cJSON_GetArraySize(purchase) : 0;
	double weight = 0;

	several += packs > 1;
	for (int i = 0; i < (packs ? packs : 1); i++) {
		const cJSON *row = row_at(at + i);

		text_is(row, "id", json_get(item, "id"));
		text_is(row, "item", json_get(item, "name"));
		section_is(row, json_get(item, "section")->valuestring);
		text_is(row, "spec", found(item, "spec"));
		if (i == 0)
			quantities_are(row, item);
		else
			quantities_are_none(row);
		if (i < packs)
			bought_is(row, cJSON_GetArrayItem(purchase, i));
		else
			csv_is(row, "packs", "");
		if (*csv_get(row, "weight"))
			weight += csv_number(row, "weight") *
				size_of_unit(csv_get(row, "weight unit"));
	}
	if (found(item, "weight_kg"))
		ck_assert_double_eq_tol(weight, found(item, "weight_kg")->valuedouble, 1e-5);
	ck_assert_int_eq(strncmp(csv_get(row_at(at), "pack"), "with ", 5) == 0,
		found(item, "bought_with") != NULL);
	return packs ? packs : 1;
}

static void sums_are_those_of_the_takeoff(void)
{
	const struct costs *costs = &garden.takeoff.costs;
	const cJSON *row;
	double weight = 0;

	cJSON_ArrayForEach(row, rows)
		if (*csv_get(row, "weight"))
			weight += csv_number(row, "weight") *
				size_of_unit(csv_get(row, "weight unit"));
	ck_assert_double_eq_tol(weight, costs->weight, 1e-4);
	ck_assert_double_eq_tol(csv_sum(rows, "cost"), (double)costs->total / 100, 1e-3);
}

/* No text of a plot or a book has an end of line. */
static void lines_end_as_they_must(void)
{
	int lines = 0;

	for (const char *end = csv.bytes; (end = strchr(end, '\n')); end++, lines++)
		ck_assert(end > csv.bytes && end[-1] == '\r');
	ck_assert_int_eq(lines, 1 + cJSON_GetArraySize(rows));
	ck_assert_int_eq(csv.bytes[csv.length - 1], '\n');
}

static void check(void)
{
	const cJSON *item;
	int at;

	rows = csv_of(&garden, &csv);
	root = json_of(&garden, &json);
	at = !garden.takeoff.complete;
	cJSON_ArrayForEach(item, json_get(root, "items"))
		at += item_is(at, item);
	for (; at < cJSON_GetArraySize(rows); at++)
		csv_is(row_at(at), "item", "Delivery");
	sums_are_those_of_the_takeoff();
	lines_end_as_they_must();
}

enum { ROUNDS = 40 };

/* By turns all that a plot may have, and beds whose block the book has. */
static void plot_of_round(struct random *random, int round)
{
	if (round % 2) {
		whole_plot_at_random(&garden.plot, random, 12);
		return;
	}
	beds_at_random(&garden.plot, random, 4, 2);
	plot_set(&garden.plot, 'b', BED_BLOCK, "16 in x 8 in x 6 in");
}

START_TEST(items_are_those_of_the_json_on_any_plot_with_a_book_and_without)
{
	struct random random = { 43 };

	for (int round = 0; round < ROUNDS; round++) {
		plot_of_round(&random, round);
		garden.has_book = random_below(&random, 4) > 0;
		if (garden.has_book)
			book_at_random(&garden.book, &random, "16 in x 8 in x 6 in");
		check();
		teardown();
		setup();
	}
	ck_assert_int_gt(several, 0);
	plot_init(&garden.plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("csv_rows");
	TCase *items = suite_case(suite, "items");

	tcase_add_checked_fixture(items, setup, teardown);
	tcase_add_test(items, items_are_those_of_the_json_on_any_plot_with_a_book_and_without);
	return suite;
}
