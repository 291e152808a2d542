/* Which cells houses stand on. */
#include "survey/house_map.h"
#include "support/plots.h"
#include "support/runner.h"

static struct arena arena;
static struct plot plot;

static void setup(void)
{
	static const char *const rows[] = { ".....", ".....", ".....", NULL };

	plot_from_rows(&plot, rows);
}

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

/* Between two corners, as the format has it. */
static void put_house(int left, int top, int right, int bottom)
{
	obstacles_add(&plot.details.around.houses, memory_string("House"))->cells =
		(struct rectangle){ left, top, right - 1, bottom - 1 };
}

/* '#' where a house stands, with the margin round the plan. */
static void check_map(int margin, const char *const *rows)
{
	struct house_map map = house_map_of(&plot, margin, &arena);

	for (int y = 0; rows[y]; y++)
		for (int x = 0; rows[y][x]; x++)
			ck_assert_msg(house_map_at(&map, x - margin, y - margin) ==
				(rows[y][x] == '#'), "%d,%d", x - margin, y - margin);
}

#define ROWS (const char *const[])

START_TEST(a_house_stands_on_the_cells_between_its_corners)
{
	put_house(1, 0, 3, 2);
	check_map(0, ROWS { " ##  ", " ##  ", "     ", NULL });
	check_map(1, ROWS { "       ", "  ##   ", "  ##   ", "       ", "       ", NULL });
}
END_TEST

START_TEST(houses_may_overlap_touch_and_fill_all)
{
	put_house(0, 0, 2, 2);
	put_house(1, 1, 3, 3);
	put_house(3, 0, 5, 1);
	check_map(0, ROWS { "## ##", "###  ", " ##  ", NULL });
	put_house(-CORNER_MOST, -CORNER_MOST, CORNER_MOST, CORNER_MOST);
	check_map(1, ROWS { "#######", "#######", "#######", "#######", "#######", NULL });
}
END_TEST

START_TEST(beyond_the_plan_only_the_margin_counts)
{
	put_house(-3, 1, 0, 2);
	put_house(5, 3, 9, 9);
	put_house(-9, -9, -2, -2);
	check_map(0, ROWS { "     ", "     ", "     ", NULL });
	check_map(1, ROWS { "       ", "       ", "#      ", "       ", "      #", NULL });
	check_map(2, ROWS { "         ", "         ", "         ", "##       ", "         ",
		"       ##", "       ##", NULL });
}
END_TEST

START_TEST(without_a_house_none_stands_anywhere)
{
	ck_assert_ptr_null(house_map_of(&plot, 4, &arena).cells);
	check_map(1, ROWS { "       ", "       ", "       ", "       ", "       ", NULL });
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("house map");
	TCase *map = suite_case(suite, "map");

	tcase_add_checked_fixture(map, setup, teardown);
	tcase_add_test(map, a_house_stands_on_the_cells_between_its_corners);
	tcase_add_test(map, houses_may_overlap_touch_and_fill_all);
	tcase_add_test(map, beyond_the_plan_only_the_margin_counts);
	tcase_add_test(map, without_a_house_none_stands_anywhere);
	return suite;
}
