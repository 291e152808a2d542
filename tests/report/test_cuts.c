/* How plans are cut into sheets. */
#include "report/drawing/cuts.h"
#include "support/random.h"
#include "support/runner.h"

enum { RULER = 4, PAGE = 80, TRIES = 300 };

static void is_cut(int columns, int rows, int across, int down, int sheets_across, int sheets_down)
{
	struct cuts cuts = cuts_of(columns, rows, RULER);

	ck_assert_int_eq(cuts.across, across);
	ck_assert_int_eq(cuts.down, down);
	ck_assert_int_eq(cuts.sheets_across, sheets_across);
	ck_assert_int_eq(cuts.sheets_down, sheets_down);
}

/* 75 characters beside the ruler and the last grid point, 53 below the first. */
START_TEST(a_plan_is_drawn_as_large_as_one_sheet_takes_it)
{
	is_cut(1, 1, 4, 2, 1, 1);
	is_cut(18, 26, 4, 2, 1, 1);
	is_cut(19, 26, 2, 1, 1, 1);
	is_cut(18, 27, 2, 1, 1, 1);
	is_cut(37, 53, 2, 1, 1, 1);
	is_cut(37, 54, 2, 1, 1, 2);
	is_cut(38, 53, 1, 1, 1, 1);
	is_cut(75, 53, 1, 1, 1, 1);
	is_cut(76, 54, 1, 1, 2, 2);
	is_cut(2048, 2048, 1, 1, 28, 39);
}
END_TEST

/* Each row's and column's sheets follow each other without a gap. */
START_TEST(the_sheets_have_every_cell_once_and_stay_within_a_page)
{
	struct random random = { 5 };

	for (int i = 0; i < TRIES; i++) {
		int columns = random_between(&random, 1, i % 2 ? SIDE_MOST : 120);
		int rows = random_between(&random, 1, i % 2 ? SIDE_MOST : 120), next_x, next_y = 0;
		struct cuts cuts = cuts_of(columns, rows, RULER);

		for (int y = 0; y < cuts.sheets_down; y++) {
			struct rectangle cells = { 0, 0, 0, 0 };

			next_x = 0;
			for (int x = 0; x < cuts.sheets_across; x++) {
				cells = cuts_cells(&cuts, (struct place){ x, y });
				ck_assert_int_eq(cells.left, next_x);
				ck_assert_int_eq(cells.top, next_y);
				ck_assert_int_le(cells.left, cells.right);
				ck_assert_int_le(cells.top, cells.bottom);
				ck_assert_int_le((cells.right + 1 - cells.left) * cuts.across + 1 +
					RULER, PAGE);
				ck_assert_int_le((cells.bottom + 1 - cells.top) * cuts.down + 1,
					SHEET_ROWS);
				next_x = cells.right + 1;
			}
			ck_assert_int_eq(next_x, columns);
			next_y = cells.bottom + 1;
		}
		ck_assert_int_eq(next_y, rows);
	}
}
END_TEST

START_TEST(sheets_join_where_one_begins)
{
	struct cuts cuts = cuts_of(100, 100, RULER);

	ck_assert(cuts_join_column(&cuts, 50));
	ck_assert(!cuts_join_column(&cuts, 0));
	ck_assert(!cuts_join_column(&cuts, 49));
	ck_assert(!cuts_join_column(&cuts, 100));
	ck_assert(cuts_join_row(&cuts, 50));
	ck_assert(!cuts_join_row(&cuts, 51));
}
END_TEST

START_TEST(sheets_are_called_by_row_and_column)
{
	static const struct {
		struct place at;
		const char *name;
	} names[] = { { { 0, 0 }, "A1" }, { { 1, 0 }, "A2" }, { { 0, 25 }, "Z1" },
		{ { 9, 26 }, "AA10" }, { { 27, 38 }, "AM28" } };
	char name[SHEET_NAME_MOST];

	for (size_t i = 0; i < sizeof names / sizeof *names; i++) {
		cuts_name(names[i].at, name);
		ck_assert_str_eq(name, names[i].name);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("cuts");
	TCase *cuts = suite_case(suite, "cuts");

	tcase_add_test(cuts, a_plan_is_drawn_as_large_as_one_sheet_takes_it);
	tcase_add_test(cuts, the_sheets_have_every_cell_once_and_stay_within_a_page);
	tcase_add_test(cuts, sheets_join_where_one_begins);
	tcase_add_test(cuts, sheets_are_called_by_row_and_column);
	return suite;
}
