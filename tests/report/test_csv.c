/* The table for spreadsheets, by hand. */
#include "support/runner.h"
#include "support/book.h"
#include "support/csv.h"
#include "support/golden.h"
#include "support/samples.h"
#include "report/words/first_line.h"

#include <string.h>

static struct garden garden;
static struct text csv;
static cJSON *rows;

static void setup(void)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	csv = TEXT_EMPTY;
	rows = NULL;
}

static void teardown(void)
{
	cJSON_Delete(rows);
	text_fini(&csv);
	garden_fini(&garden);
}

static void again(void)
{
	teardown();
	setup();
}

static const cJSON *row_at(int index)
{
	const cJSON *row = cJSON_GetArrayItem(rows, index);

	ck_assert_msg(row, "no row %d", index);
	return row;
}

/* The first row with that in the column. */
static const cJSON *row_with(const char *column, const char *field)
{
	const cJSON *row;

	cJSON_ArrayForEach(row, rows)
		if (strcmp(csv_get(row, column), field) == 0)
			return row;
	ck_abort_msg("no row with %s %s", column, field);
}

/* 51 blocks are a pallet of 40 and 11 pieces, 80 + 33; the yard's drop is 5. */
START_TEST(a_row_for_each_kind_of_pack_and_one_for_each_delivery_sum_to_the_total)
{
	const cJSON *first, *second, *delivery;

	garden_rectangle(&garden, 'b', 8, 4);
	book_of(&garden.book, "'suppliers': [{'name': 'Yard', 'delivery': 5}], 'goods': [{'item': "
		"'block.wall', 'block': '16 in x 8 in x 6 in', 'spec': 'grey', 'packs': [{'pack': "
		"'piece', 'size': 1, 'price': 3.5}, {'pack': 'pallet', 'size': 40, 'price': 80, "
		"'supplier': 'Yard'}]}]");
	garden.has_book = true;
	rows = csv_of(&garden, &csv);
	first = row_with("id", "block.wall");
	second = first->next;
	delivery = row_with("item", "Delivery");
	csv_is(first, "size", "16 in x 8 in x 6 in");
	csv_is(first, "order", "51");
	csv_is(first, "packs", "11");
	csv_is(first, "pack", "piece 1");
	csv_is(first, "supplier", "collected");
	csv_is(first, "price", "3.5");
	csv_is(first, "cost", "38.5");
	csv_is(second, "size", "16 in x 8 in x 6 in");
	csv_is(second, "spec", "grey");
	csv_is(second, "packs", "1");
	csv_is(second, "pack", "pallet 40");
	csv_is(second, "supplier", "Yard");
	csv_is(delivery, "section", "Block and adhesive");
	csv_is(delivery, "supplier", "Yard");
	csv_is(delivery, "packs", "1");
	csv_is(delivery, "pack", "drop");
	csv_is(delivery, "cost", "5");
	ck_assert_double_eq(csv_sum(rows, "cost"), 38.5 + 80 + 5);
	/* 5 % breakage, and nothing twice. */
	ck_assert_double_eq(csv_number(first, "laid") + csv_number(first, "spare"), 51);
	csv_is(second, "laid", "");
	csv_is(second, "order", "");
}
END_TEST

START_TEST(without_a_book_packs_are_told_and_prices_left_to_be_filled_in)
{
	garden_rectangle(&garden, 'b', 8, 4);
	rows = csv_of(&garden, &csv);
	csv_is(row_with("id", "mulch"), "packs", "2");
	csv_is(row_with("id", "mulch"), "pack", "bag 2 cu ft");
	csv_is(row_with("id", "mulch"), "unit", "cu ft");
	csv_is(row_with("id", "mulch"), "supplier", "");
	csv_is(row_with("id", "mulch"), "price", "");
	csv_is(row_with("id", "mulch"), "weight unit", "lb");
	ck_assert_double_eq(csv_sum(rows, "cost"), 0);
}
END_TEST

/* 1,234.5 m and more of the plot's own: no separators, all along in one unit. */
START_TEST(numbers_are_plain)
{
	garden_rows(&garden, (const char *const[]){ "..", NULL });
	details_add_extra(&garden.plot.details, memory_string("Rope"),
		(struct amount){ 1234567 * MILLION + 500000, AMOUNT_GOODS_FT });
	rows = csv_of(&garden, &csv);
	csv_is(row_at(0), "section", "Other goods");
	csv_is(row_at(0), "laid", "1234567.5");
	csv_is(row_at(0), "spare", "0");
	csv_is(row_at(0), "order", "1234567.5");
	csv_is(row_at(0), "unit", "ft");
}
END_TEST

START_TEST(what_comes_with_another_item_says_so_and_has_no_pack_of_its_own)
{
	garden_file(&garden, "plots/court.plot");
	rows = csv_of(&garden, &csv);
	csv_is(row_with("id", "topsoil.lawn"), "pack", "with Topsoil");
	csv_is(row_with("id", "topsoil.lawn"), "packs", "");
	csv_is(row_with("id", "topsoil.lawn"), "weight", "");
}
END_TEST

START_TEST(a_takeoff_that_is_incomplete_says_so_first)
{
	garden_rows(&garden, (const char *const[]){ "b...", NULL });
	rows = csv_of(&garden, &csv);
	csv_is(row_at(0), "item", "INCOMPLETE");
	ck_assert_ptr_nonnull(strstr(csv_get(row_at(0), "note"), "snags"));
	again();
	garden_rows(&garden, (const char *const[]){ "....", NULL });
	rows = csv_of(&garden, &csv);
	ck_assert_int_eq(cJSON_GetArraySize(rows), 0);
}
END_TEST

/* What a spreadsheet would take for a formula too: it is what was typed. */
START_TEST(texts_are_as_they_were_typed)
{
	static const char *const formulas[] = { "=1+1", "+1", "-1", "@SUM(A1:A9)", "\"a\", b" };
	enum { FORMULAS = sizeof formulas / sizeof *formulas };
	int at = 0;

	garden_rows(&garden, (const char *const[]){ "..", NULL });
	for (int i = 0; i < FORMULAS; i++)
		details_add_extra(&garden.plot.details, memory_string(formulas[i]),
			(struct amount){ MILLION, AMOUNT_GOODS_EACH });
	for (int i = 0; i < SAMPLES; i++)
		if (samples[i].is_kept)
			details_add_extra(&garden.plot.details, memory_string(samples[i].text),
				(struct amount){ MILLION, AMOUNT_GOODS_EACH });
	rows = csv_of(&garden, &csv);
	for (; at < FORMULAS; at++)
		csv_is(row_at(at), "item", formulas[at]);
	for (int i = 0; i < SAMPLES; i++)
		if (samples[i].is_kept)
			csv_is(row_at(at++), "item", samples[i].text);
}
END_TEST

START_TEST(a_table_is_known_by_its_beginning_and_is_no_takeoff_to_be_written_over)
{
	garden_rows(&garden, (const char *const[]){ "..", NULL });
	rows = csv_of(&garden, &csv);
	ck_assert(report_is_table(csv.bytes, csv.length));
	ck_assert(!report_is_takeoff(csv.bytes, csv.length));
	ck_assert(!report_is_table(csv.bytes, 20));
	ck_assert(!report_is_table("section,id,items,size,", 22));
}
END_TEST

START_TEST(the_court_prints_as_it_did)
{
	garden_file(&garden, "plots/court.plot");
	garden_book(&garden, "plots/prices.json");
	rows = csv_of(&garden, &csv);
	golden_check("court.csv", csv.bytes);
}
END_TEST

START_TEST(plants_and_pipes_print_as_they_did)
{
	garden_file(&garden, "plots/growing-court.plot");
	rows = csv_of(&garden, &csv);
	golden_check("growing-court.csv", csv.bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("csv");
	TCase *items = suite_case(suite, "items");

	tcase_add_checked_fixture(items, setup, teardown);
	tcase_add_test(items,
		a_row_for_each_kind_of_pack_and_one_for_each_delivery_sum_to_the_total);
	tcase_add_test(items, without_a_book_packs_are_told_and_prices_left_to_be_filled_in);
	tcase_add_test(items, numbers_are_plain);
	tcase_add_test(items, what_comes_with_another_item_says_so_and_has_no_pack_of_its_own);
	tcase_add_test(items, a_takeoff_that_is_incomplete_says_so_first);
	tcase_add_test(items, texts_are_as_they_were_typed);
	tcase_add_test(items,
		a_table_is_known_by_its_beginning_and_is_no_takeoff_to_be_written_over);
	tcase_add_test(items, the_court_prints_as_it_did);
	tcase_add_test(items, plants_and_pipes_print_as_they_did);
	return suite;
}
