/* Lines along one side of a way over cells. The expected points were drawn by hand on squared
 * paper. */
#include "plot/edit/route_beside.h"
#include "base/text.h"
#include "support/runner.h"

#include <string.h>

static const struct {
	const char *what;
	struct place cells[6];
	int count;
	struct beside beside;
	const char *points;
} rows[] = {
	{ "one cell, above", { { 3, 2 } }, 1, { .is_level = true }, "3,2 4,2" },
	{ "one cell, right", { { 3, 2 } }, 1, { .is_right = true }, "4,2 4,3" },
	{ "to the right, below", { { 1, 1 }, { 4, 1 } }, 2, { .is_below = true }, "1,2 5,2" },
	{ "to the left, below", { { 4, 1 }, { 1, 1 } }, 2, { .is_below = true }, "5,2 1,2" },
	{ "up, left", { { 2, 5 }, { 2, 0 } }, 2, { .is_below = false }, "2,6 2,0" },
	{ "down, right", { { 2, 0 }, { 2, 5 } }, 2, { .is_right = true }, "3,0 3,6" },
	{ "right then down, outside", { { 0, 0 }, { 3, 0 }, { 3, 3 } }, 3, { .is_right = true },
		"0,0 4,0 4,4" },
	{ "right then down, inside", { { 0, 0 }, { 3, 0 }, { 3, 3 } }, 3, { .is_below = true },
		"0,1 3,1 3,4" },
	{ "left then up, by neighbours", { { 1, 1 }, { 0, 1 }, { 0, 0 } }, 3,
		{ .is_below = true, .is_right = true }, "2,2 1,2 1,0" },
	{ "straight on over a bend", { { 0, 0 }, { 2, 0 }, { 5, 0 } }, 3, { .is_below = false },
		"0,0 6,0" },
	{ "there and back", { { 0, 0 }, { 3, 0 }, { 1, 0 } }, 3, { .is_below = true },
		"0,1 4,1 1,1" },
	{ "five pieces", { { 0, 0 }, { 2, 0 }, { 2, 2 }, { 5, 2 }, { 5, 0 }, { 8, 0 } }, 6,
		{ .is_below = false }, "0,0 2,0 2,2 5,2 5,0 9,0" },
};

START_TEST(the_line_covers_the_end_cells_and_keeps_to_its_side)
{
	struct route route = { .count = 0 };
	struct text text = TEXT_EMPTY;

	route_beside(&route, rows[_i].cells, rows[_i].count, rows[_i].beside);
	for (int i = 0; i < route.count; i++)
		text_print(&text, "%s%d,%d", i ? " " : "", route.points[i].x, route.points[i].y);
	ck_assert_msg(strcmp(text.bytes, rows[_i].points) == 0, "%s: %s, not %s", rows[_i].what,
		text.bytes, rows[_i].points);
	for (int i = 1; i < route.count; i++)
		ck_assert(leg_is_straight((struct leg){ route.points[i - 1], route.points[i] }));
	text_fini(&text);
	route_fini(&route);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("route_beside");
	TCase *lines = suite_case(suite, "lines");

	tcase_add_loop_test(lines, the_line_covers_the_end_cells_and_keeps_to_its_side, 0,
		sizeof rows / sizeof *rows);
	return suite;
}
