/* Which declared rows are alike, and which are in no view. Of every table there is. */

#include "support/runner.h"
#include "support/tables.h"
#include "report/words/alike.h"

#include <string.h>

static struct arena arena;
static const struct named_table *tables;
static int table_count;

static void teardown(void)
{
	arena_clear(&arena);
}

/* ---- Alike ----------------------------------------------------------------------------------- */

static bool is_compared(const struct figure *figure)
{
	return figure->kind != FIGURE_REGION && figure->kind != FIGURE_ENTRY &&
		figure->kind != FIGURE_CUTS && !(figure->flags & ALIKE_ANYWAY);
}

static bool has_field(const struct figure *figure)
{
	return figure->kind != FIGURE_ALIKE && figure->kind != FIGURE_HEADING;
}

static const struct figure *first_compared(const struct figure_table *table)
{
	const struct figure *figure = table->figures;

	while (!has_field(figure) || !is_compared(figure))
		figure++;
	return figure;
}

/* Lengths or rows within a row, wherever they are. */
static char *array_within(const struct figure *figure, char *row)
{
	char *array;

	if (figure->size != sizeof array)
		return row + figure->at;
	memcpy(&array, row + figure->at, sizeof array);
	return array;
}

/* Makes one figure of a filled row another, with as little as there can be. */
static void alter(const struct figure *figure, char *row)
{
	char *field = row + figure->at;
	const char *other = "word";
	int count = 1;

	switch (figure->kind) {
	case FIGURE_TEXT:
		memcpy(field, &other, sizeof other);
		break;
	case FIGURE_OBJECT:
		alter(first_compared(figure->table), field);
		break;
	case FIGURE_CUTS:
		memcpy(row + figure->count_at, &count, sizeof count);
		break;
	case FIGURE_LENGTHS:
		array_within(figure, row)[sizeof(nm)] ^= 1;
		break;
	case FIGURE_ROWS:
		alter(first_compared(figure->table),
			array_within(figure, row) + figure->table->row_size);
		break;
	default:
		*field ^= 1;
	}
}

START_TEST(rows_are_alike_where_all_is_but_region_entry_and_cuts)
{
	const struct figure_table *table = tables[_i].table;

	for (int i = 0; i < table->count; i++) {
		const struct figure *figure = &table->figures[i];
		char *one = row_filled(&arena, table), *other = row_filled(&arena, table);
		bool are_alike;

		ck_assert_msg(rows_are_alike(one, other, table), "%s", tables[_i].name);
		if (!has_field(figure))
			continue;
		alter(figure, other);
		are_alike = rows_are_alike(one, other, table);
		ck_assert_msg(are_alike != is_compared(figure), "%s: figure %d",
			tables[_i].name, i);
		ck_assert_msg((rows_hash(one, table) == rows_hash(other, table)) == are_alike,
			"%s: figure %d", tables[_i].name, i);
		ck_assert(rows_are_alike(other, one, table) == are_alike);
	}
}
END_TEST

START_TEST(fewer_rows_or_lengths_within_a_row_are_not_alike)
{
	const struct figure_table *table = tables[_i].table;

	for (int i = 0; i < table->count; i++) {
		const struct figure *figure = &table->figures[i];
		char *one = row_filled(&arena, table), *other = row_filled(&arena, table);

		if (!is_compared(figure) ||
			(figure->kind != FIGURE_LENGTHS && figure->kind != FIGURE_ROWS))
			continue;
		memcpy(other + figure->count_at, &(int){ 1 }, sizeof(int));
		ck_assert_msg(!rows_are_alike(one, other, table), "%s: figure %d",
			tables[_i].name, i);
		ck_assert(!rows_are_alike(other, one, table));
		ck_assert(rows_hash(one, table) != rows_hash(other, table));
	}
}
END_TEST

START_TEST(a_zero_has_no_sign)
{
	const struct liner plain = { .area = 0.0 }, signed_one = { .area = -0.0 };

	ck_assert(rows_are_alike(&plain, &signed_one, &liner_table));
	ck_assert_uint_eq(rows_hash(&plain, &liner_table), rows_hash(&signed_one, &liner_table));
}
END_TEST

START_TEST(no_text_is_as_an_empty_one)
{
	static const struct figure_table *const area = &area_table;
	const struct area_row none = { .name = NULL }, empty = { .name = "" };

	ck_assert(rows_are_alike(&none, &empty, area));
	ck_assert_uint_eq(rows_hash(&none, area), rows_hash(&empty, area));
}
END_TEST

/* Of five liners three are alike, though round different beds. */
START_TEST(groups_are_of_rows_that_are_alike)
{
	static const struct liner liners[] = {
		{ .region = 0, .length = 10, .height = 2, .area = 20 },
		{ .region = 1, .length = 10, .height = 3, .area = 30 },
		{ .region = 2, .length = 10, .height = 2, .area = 20 },
		{ .region = 3, .length = 11, .height = 2, .area = 22 },
		{ .region = 4, .length = 10, .height = 2, .area = 20 },
	};
	struct groups groups = rows_groups(&liner_table, liners, 5);

	ck_assert_int_eq(groups.count, 3);
	ck_assert_int_eq(groups.list[0].count, 3);
	ck_assert_int_eq(groups.list[0].members[1], 2);
	ck_assert_int_eq(groups.list[0].members[2], 4);
	ck_assert_int_eq(groups.list[1].members[0], 1);
	ck_assert_int_eq(groups.list[2].members[0], 3);
	groups_fini(&groups);
}
END_TEST

/* ---- Left out -------------------------------------------------------------------------------- */

/* Whether a figure that the row needs lies within the field of this one. */
static bool is_needed(const struct figure_table *table, const struct figure *figure)
{
	for (int i = 0; i < table->count; i++) {
		const struct figure *other = &table->figures[i];

		if ((other->flags & ROW_NEEDED) && other->at >= figure->at &&
			other->at < figure->at + figure->size)
			return true;
	}
	return false;
}

START_TEST(a_row_is_left_out_just_where_a_figure_it_needs_is_none)
{
	const struct figure_table *table = tables[_i].table;

	for (int i = 0; i < table->count; i++) {
		const struct figure *figure = &table->figures[i];
		char *row = row_filled(&arena, table);

		ck_assert(!row_is_left_out(table, row));
		if (!has_field(figure))
			continue;
		memset(row + figure->at, 0, figure->size);
		ck_assert_msg(row_is_left_out(table, row) == is_needed(table, figure),
			"%s: figure %d", tables[_i].name, i);
	}
}
END_TEST

/* One of each kind that can be none. */
static const struct figure cells = { FIELD(COUNT, area_row, cells) };
static const struct figure area = { FIELD(AREA, area_row, area) };
static const struct figure name = { FIELD(TEXT, area_row, name) };
static const struct figure letter = { FIELD(LETTER, area_row, letter) };
static const struct figure block = { FIELD(SIZE, wall, block) };

START_TEST(a_figure_is_none_at_0_and_what_is_measured_below_it_too)
{
	const struct area_row none = { .cells = 0, .area = -1e-12 };
	const struct area_row some = { .cells = -1, .area = 1e-12, .name = "" };
	const struct wall bare = { .block = { 0, 0, 0 } }, built = { .block = { 1, 1, 1 } };

	ck_assert(figure_is_none(&cells, &none) && !figure_is_none(&cells, &some));
	ck_assert(figure_is_none(&area, &none) && !figure_is_none(&area, &some));
	ck_assert(figure_is_none(&name, &none) && !figure_is_none(&name, &some));
	ck_assert(!figure_is_none(&letter, &none));
	ck_assert(figure_is_none(&block, &bare) && !figure_is_none(&block, &built));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("alike");
	TCase *alike = suite_case(suite, "alike");
	TCase *left_out = suite_case(suite, "left out");

	tables = tables_all(&table_count);
	tcase_add_checked_fixture(alike, NULL, teardown);
	tcase_add_loop_test(alike, rows_are_alike_where_all_is_but_region_entry_and_cuts, 0,
		table_count);
	tcase_add_loop_test(alike, fewer_rows_or_lengths_within_a_row_are_not_alike, 0,
		table_count);
	tcase_add_test(alike, a_zero_has_no_sign);
	tcase_add_test(alike, no_text_is_as_an_empty_one);
	tcase_add_test(alike, groups_are_of_rows_that_are_alike);

	tcase_add_checked_fixture(left_out, NULL, teardown);
	tcase_add_loop_test(left_out, a_row_is_left_out_just_where_a_figure_it_needs_is_none, 0,
		table_count);
	tcase_add_test(left_out, a_figure_is_none_at_0_and_what_is_measured_below_it_too);
	return suite;
}
