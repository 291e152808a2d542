/* The plan as it is printed: a page as a whole, and by law on random plots. */
#include "report/text/print.h"
#include "base/utf8.h"
#include "report/words/first_line.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/runner.h"

#include <string.h>

enum { TRIES = 60, MOST = 170 };

static struct garden garden;
static struct text page;

static void setup(void)
{
	page = TEXT_EMPTY;
	garden = (struct garden){ .arena = ARENA_EMPTY };
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

static void print(void)
{
	struct text_sink out = text_sink(&page);

	garden_count(&garden);
	report_plan(&out.sink, &garden.plot, &garden.takeoff, "sheets.plot");
}

/* The plan's part of a takeoff. */
static void print_part(void)
{
	struct text_sink out = text_sink(&page);
	struct report report;

	garden_count(&garden);
	report = garden_report(&garden, &out.sink);
	print_plan(&report);
}

static void has(const char *words)
{
	ck_assert_msg(strstr(page.bytes, words), "%s is not in\n%s", words, page.bytes);
}

START_TEST(two_sheets_print_as_they_did)
{
	garden_file(&garden, "tests/plots/sheets.plot");
	print();
	golden_check("sheets-plan.txt", page.bytes);
	ck_assert(report_is_takeoff(page.bytes, page.length));
}
END_TEST

static void check_lines(int seed)
{
	for (const char *line = page.bytes; *line;) {
		size_t length = strcspn(line, "\n");

		ck_assert_msg(utf8_count(line, length) <= PAGE_COLUMNS, "seed %d: %.*s", seed,
			(int)length, line);
		ck_assert_msg(length == 0 || line[length - 1] != ' ', "seed %d: ends in a blank: "
			"%.*s", seed, (int)length, line);
		line += length + 1;
	}
}

START_TEST(lines_are_ascii_within_80_columns_without_blanks_at_their_end)
{
	static const char *const cells[] = { "1 ft", "6 in", "7 in", "9 ft", "400 mm", "35 mm" };
	struct random random = { (uint64_t)_i };

	plot_at_random(&garden.plot, &random, MOST, "bcpl.FG");
	plot_set(&garden.plot, 0, HEAD_UNITS, _i % 6 < 4 ? "imperial" : "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, cells[_i % 6]);
	fences_at_random(&garden.plot, &random);
	print();
	check_lines(_i);
	for (const char *c = page.bytes; *c; c++)
		ck_assert_msg((*c >= ' ' && *c <= '~') || *c == '\n', "seed %d: %.20s", _i, c);
}
END_TEST

/* The columns and rows of labels are where their lengths are. */
START_TEST(rulers_count_from_the_plans_corner)
{
	garden_rectangle(&garden, 'b', 36, 22);
	print();
	has("\n    0'        5'        10'       15'       20'       25'       30'       35'\n"
		"    |         |         |         |         |         |         |         |\n"
		" 0'-+-");
	has("\n20'-|");
	ck_assert_ptr_null(strstr(page.bytes, "\n25'-"));
	has("A character is 6 in across and 1 ft down.");
}
END_TEST

/* 9.9 m: 10 m would be nearest to the last row, but is beyond the plan. */
START_TEST(no_label_is_beyond_the_plan)
{
	garden_rectangle(&garden, 'b', 30, 33);
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "300 mm");
	print();
	has("\n8 m-");
	ck_assert_ptr_null(strstr(page.bytes, "10 m-"));
}
END_TEST

START_TEST(nine_sheets_are_in_a_takeoff_and_of_more_only_their_number)
{
	garden_rectangle(&garden, 'p', 222, 159);
	print_part();
	has("\nSheet C3: ");
	text_clear(&page);
	garden_fini(&garden);
	garden_rectangle(&garden, 'p', 222, 160);
	print_part();
	ck_assert_str_eq(page.bytes, "\n"
		"The plan takes 12 sheets: parterre plan FILE prints them.\n");
	text_clear(&page);
	print();
	has("\nSheet D3: ");
}
END_TEST

/* 102 beds of a cell, on a plan of one character a cell: 49 to a row. */
static void garden_many(void)
{
	garden_rectangle(&garden, '.', 98, 8);
	for (int i = 0; i < 102; i++)
		*ground_at(&garden.plot.ground, i % 49 * 2, i / 49 * 3) = 'b';
	details_add_entry(&garden.plot.details, CLASS_BED, 'b', memory_string("Bed"));
}

START_TEST(what_has_no_room_is_listed_up_to_a_hundred)
{
	const char *rows[] = { "pppppppppppppppppppppppppppppppppppppppp",
		"b.b.b.b.b.b.b.b.b.b.b.b.b.b.b.b.b.b.b.b.",
		"........................................", NULL };

	garden_rows(&garden, rows);
	print();
	has("No room on the plan: P1 at 0 in across, 0 in down; B1 at 0 in across, 1 ft down;\n");
	has("B20 at\n38 ft across, 1 ft down.\n");
	garden_fini(&garden);
	text_clear(&page);
	garden_many();
	print();
	has("B100 at 2 ft across, 6 ft down; and 2 more.\n");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_plan");
	TCase *pages = suite_case(suite, "pages");

	tcase_add_checked_fixture(pages, setup, teardown);
	tcase_add_test(pages, two_sheets_print_as_they_did);
	tcase_add_loop_test(pages, lines_are_ascii_within_80_columns_without_blanks_at_their_end, 0,
		TRIES);
	tcase_add_test(pages, rulers_count_from_the_plans_corner);
	tcase_add_test(pages, no_label_is_beyond_the_plan);
	tcase_add_test(pages, nine_sheets_are_in_a_takeoff_and_of_more_only_their_number);
	tcase_add_test(pages, what_has_no_room_is_listed_up_to_a_hundred);
	return suite;
}
