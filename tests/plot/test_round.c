/* Discs and rounded corners in whole cells, and runs along an axis. Cells are checked one by one
 * against circles in doubles; the number of cells in a disc against Gauss's bound for the circle
 * problem: of the points of a grid in a circle of radius r there are no more than 2 sqrt(2) pi r
 * more or fewer than its area (from memory; Hardy and Wright, An Introduction to the Theory of
 * Numbers, on the circle problem). */
#include "plot/edit/round.h"
#include "support/plots.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static void open_plot(struct plot *plot, int columns, int rows, const char *mirror)
{
	static const char *const one[] = { "b", NULL };

	plot_from_rows(plot, one);
	ground_fini(&plot->ground);
	ground_init(&plot->ground, columns, rows);
	plot_set(plot, 0, HEAD_MIRROR, mirror);
}

static int64_t cells_of(const struct plot *plot)
{
	int64_t cells = 0;

	for (size_t i = 0; i < ground_count(&plot->ground); i++)
		cells += plot->ground.cells[i] == 'b';
	return cells;
}

static void check_rows(const struct plot *plot, const char *expected)
{
	ck_assert_uint_eq(strlen(expected), ground_count(&plot->ground));
	ck_assert_msg(memcmp(plot->ground.cells, expected, strlen(expected)) == 0, "%.*s is not %s",
		(int)strlen(expected), plot->ground.cells, expected);
}

START_TEST(small_discs_by_hand)
{
	static const char *const expected[] = {
		"......." "......." "......." "...b..." "......." "......." ".......",
		"......." "......." "......." "...bb.." "...bb.." "......." ".......",
		"......." "......." "..bbb.." "..bbb.." "..bbb.." "......." ".......",
		"......." "......." "...bb.." "..bbbb." "..bbbb." "...bb.." ".......",
		"......." "..bbb.." ".bbbbb." ".bbbbb." ".bbbbb." "..bbb.." ".......",
	};
	struct plot plot;
	struct disc disc;
	struct mirror mirror;
	struct laid laid;

	open_plot(&plot, 7, 7, "off");
	mirror = mirror_of(&plot);
	disc = disc_at(&mirror, (struct place){ 3, 3 }, _i + 1);
	laid = lay_disc(&plot, &disc, 'b');
	check_rows(&plot, expected[_i]);
	ck_assert_int_eq(laid.changed, cells_of(&plot));
	ck_assert(!laid.outside);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_cell_is_of_a_disc_where_its_middle_is)
{
	struct random random = { (uint64_t)_i };
	struct plot plot;
	struct rectangle r;
	struct disc disc = { { random_between(&random, -10, 90), random_between(&random, -10, 90) },
		random_between(&random, 1, 50) };
	double x0 = disc.middle.x / 2.0, y0 = disc.middle.y / 2.0, radius = disc.diameter / 2.0;

	open_plot(&plot, 40, 40, "off");
	lay_disc(&plot, &disc, 'b');
	r = disc_cells(&disc);
	for (int y = 0; y < 40; y++)
		for (int x = 0; x < 40; x++) {
			bool is_in = hypot(x + 0.5 - x0, y + 0.5 - y0) < radius - 1e-9;

			ck_assert_msg((ground_cell(&plot.ground, x, y) == 'b') == is_in,
				"seed %d: %d,%d", _i, x, y);
			ck_assert(!is_in || (x >= r.left && x <= r.right && y >= r.top &&
				y <= r.bottom));
		}
	plot_fini(&plot);
}
END_TEST

START_TEST(a_disc_has_about_the_area_of_its_circle_and_its_own_width)
{
	struct plot plot;
	struct mirror mirror;

	for (int diameter = 1; diameter < 120; diameter++) {
		double radius = diameter / 2.0;
		struct disc disc;
		struct rectangle r;

		open_plot(&plot, 130, 130, "off");
		mirror = mirror_of(&plot);
		disc = disc_at(&mirror, (struct place){ 64, 64 }, diameter);
		lay_disc(&plot, &disc, 'b');
		ck_assert_double_le(fabs((double)cells_of(&plot) - M_PI * radius * radius),
			2 * sqrt(2) * M_PI * radius);
		r = disc_cells(&disc);
		ck_assert_int_eq(r.right - r.left + 1, diameter);
		ck_assert_int_eq(r.bottom - r.top + 1, diameter);
		plot_fini(&plot);
	}
}
END_TEST

START_TEST(at_an_axis_a_disc_is_round_about_it_and_matches_its_image)
{
	static const char *const kinds[] = { "left-right", "top-bottom", "four-way", "half-turn" };
	struct random random = { (uint64_t)_i };
	struct plot plot;
	struct mirror mirror;
	struct disc disc;
	int columns = random_between(&random, 1, 30), rows = random_between(&random, 1, 30);

	open_plot(&plot, columns, rows, kinds[_i % 4]);
	mirror = mirror_of(&plot);
	disc = disc_at(&mirror, (struct place){ (columns - 1) / 2, (rows - 1) / 2 },
		random_between(&random, 1, 12));
	if (mirror_has_axis(&mirror, false))
		ck_assert_int_eq(disc.middle.x, columns);
	if (mirror_has_axis(&mirror, true))
		ck_assert_int_eq(disc.middle.y, rows);
	lay_disc(&plot, &disc, 'b');
	ck_assert_int_eq(mirror_faults(&mirror, &plot.ground), 0);
	plot_fini(&plot);
}
END_TEST

START_TEST(corners_are_rounded_by_hand)
{
	struct plot plot;
	struct laid laid;

	open_plot(&plot, 8, 6, "off");
	laid = lay_rounded(&plot, (struct rectangle){ 0, 0, 7, 5 }, 3, 'b');
	ck_assert_int_eq(laid.changed, 8 * 6 - 4);
	ck_assert(!laid.outside);
	check_rows(&plot, ".bbbbbb." "bbbbbbbb" "bbbbbbbb" "bbbbbbbb" "bbbbbbbb" ".bbbbbb.");
	laid = lay_rounded(&plot, (struct rectangle){ 0, 0, 7, 5 }, 1, 'b');
	ck_assert_int_eq(laid.changed, 4);
	laid = lay_rounded(&plot, (struct rectangle){ 5, 0, 8, 5 }, 1, 'p');
	ck_assert_int_eq(laid.changed, 3 * 6);
	ck_assert(laid.outside);
	lay_rounded(&plot, (struct rectangle){ 0, 0, 7, 5 }, 1, 'b');
	check_rows(&plot, "bbbbbbbb" "bbbbbbbb" "bbbbbbbb" "bbbbbbbb" "bbbbbbbb" "bbbbbbbb");
	plot_fini(&plot);
}
END_TEST

/* Whether a point of a rectangle is in it when its corners are quarter circles. */
static bool is_rounded(double x, double y, double columns, double rows, double radius)
{
	double across = fmax(radius - x, x - (columns - radius));
	double down = fmax(radius - y, y - (rows - radius));

	return across <= 0 || down <= 0 || hypot(across, down) < radius - 1e-9;
}

START_TEST(a_cell_is_of_a_rounded_rectangle_where_its_middle_is)
{
	struct random random = { (uint64_t)_i };
	int columns = random_between(&random, 1, 30), rows = random_between(&random, 1, 30);
	int radius = random_between(&random, 0, (columns < rows ? columns : rows) / 2);
	struct plot plot;

	open_plot(&plot, columns + 2, rows + 3, "off");
	lay_rounded(&plot, (struct rectangle){ 1, 2, columns, rows + 1 }, radius, 'b');
	for (int y = 0; y < rows; y++)
		for (int x = 0; x < columns; x++)
			ck_assert_msg((ground_cell(&plot.ground, x + 1, y + 2) == 'b') ==
				is_rounded(x + 0.5, y + 0.5, columns, rows, radius),
				"seed %d: %d,%d", _i, x, y);
	plot_fini(&plot);
}
END_TEST

static void check_run(const char *kind, int columns, int from, int width, int left, int right,
	int mirrored)
{
	struct plot plot;
	struct mirror mirror;
	struct rectangle r;

	open_plot(&plot, columns, 9, kind);
	mirror = mirror_of(&plot);
	r = rectangle_run_mirrored(&mirror, (struct place){ from, 8 }, (struct place){ from, 0 },
		width);
	ck_assert_int_eq(r.left, left);
	ck_assert_int_eq(r.right, right);
	ck_assert(r.top == 0 && r.bottom == 8);
	ck_assert_int_eq(rectangle_mirrored_width(&mirror, r, false), mirrored);
	plot_fini(&plot);
}

START_TEST(a_run_along_an_axis_has_its_middle_there)
{
	check_run("off", 24, 12, 3, 11, 13, 3);
	check_run("left-right", 24, 12, 4, 10, 13, 4);
	check_run("left-right", 24, 11, 4, 10, 13, 4);
	check_run("left-right", 24, 11, 3, 10, 13, 4); /* 3 do not lie evenly about a line */
	check_run("left-right", 24, 13, 3, 12, 14, 6); /* it meets its image */
	check_run("left-right", 24, 14, 3, 13, 15, 3);
	check_run("left-right", 25, 12, 3, 11, 13, 3);
	check_run("left-right", 25, 12, 2, 11, 13, 3);
	check_run("top-bottom", 24, 12, 3, 11, 13, 3);
	check_run("half-turn", 24, 12, 2, 11, 12, 2);
}
END_TEST

/* Across the run: as many cells as it and its image take together, where they meet or lie side by
 * side. Half a turn takes a run that is not on the axis to one that goes the other way. */
static int width_expected(int axis, int low, int high, bool is_half_turn)
{
	bool has[200] = { false };
	int first = 200, last = 0, gaps = 0;

	for (int cell = low; cell <= high; cell++)
		has[cell + 100] = has[axis - 1 - cell + 100] = true;
	for (int i = 0; i < 200; i++)
		if (has[i]) {
			first = first < i ? first : i;
			last = i;
		}
	for (int i = first; i <= last; i++)
		gaps += !has[i];
	if (gaps || (is_half_turn && low + high != axis - 1))
		return high - low + 1;
	return last - first + 1;
}

START_TEST(a_run_and_an_image_that_it_meets_are_as_wide_as_both)
{
	struct random random = { 6 };

	for (int i = 0; i < 2000; i++) {
		struct mirror m = { (enum mirror_kind)random_below(&random, 5),
			random_between(&random, 1, 23), random_between(&random, 1, 23) };
		bool is_level = random_below(&random, 2);
		int left = random_between(&random, -3, 12), top = random_between(&random, -3, 12);
		struct rectangle r = { left, top, left + random_below(&random, 6),
			top + random_below(&random, 6) };
		int low = is_level ? top : left, high = is_level ? r.bottom : r.right;
		int axis = is_level ? m.down : m.across;

		ck_assert_int_eq(rectangle_mirrored_width(&m, r, is_level),
			mirror_has_axis(&m, is_level) ? width_expected(axis, low, high,
				m.kind == MIRROR_HALF_TURN) : high - low + 1);
	}
}
END_TEST

static struct rectangle transposed(struct rectangle r)
{
	return (struct rectangle){ r.top, r.left, r.bottom, r.right };
}

/* Across and down change places: a level run is laid as an upright one, but where both ways are as
 * long. */
START_TEST(a_level_run_is_laid_as_an_upright_one)
{
	static const enum mirror_kind turned[] = { MIRROR_OFF, MIRROR_TOP_BOTTOM,
		MIRROR_LEFT_RIGHT, MIRROR_FOUR_WAY, MIRROR_HALF_TURN };
	struct random random = { 7 };

	for (int i = 0; i < 3000; i++) {
		struct mirror m = { (enum mirror_kind)random_below(&random, 5),
			random_between(&random, 1, 23), random_between(&random, 1, 23) };
		struct mirror other = { turned[m.kind], m.down, m.across };
		struct place from = { random_below(&random, 12), random_below(&random, 12) };
		struct place to = { random_below(&random, 12), random_below(&random, 12) };
		int width = random_between(&random, 1, 6);
		struct rectangle one = rectangle_run_mirrored(&m, from, to, width);
		struct rectangle two = transposed(rectangle_run_mirrored(&other,
			(struct place){ from.y, from.x }, (struct place){ to.y, to.x }, width));

		if (abs(from.x - to.x) != abs(from.y - to.y))
			ck_assert_mem_eq(&one, &two, sizeof one);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("round");
	TCase *discs = suite_case(suite, "discs"), *corners = suite_case(suite, "corners"),
		*runs = suite_case(suite, "runs");

	tcase_add_loop_test(discs, small_discs_by_hand, 0, 5);
	tcase_add_loop_test(discs, a_cell_is_of_a_disc_where_its_middle_is, 0, 100);
	tcase_add_test(discs, a_disc_has_about_the_area_of_its_circle_and_its_own_width);
	tcase_add_loop_test(discs, at_an_axis_a_disc_is_round_about_it_and_matches_its_image, 0,
		200);
	tcase_add_test(corners, corners_are_rounded_by_hand);
	tcase_add_loop_test(corners, a_cell_is_of_a_rounded_rectangle_where_its_middle_is, 0, 100);
	tcase_add_test(runs, a_run_along_an_axis_has_its_middle_there);
	tcase_add_test(runs, a_run_and_an_image_that_it_meets_are_as_wide_as_both);
	tcase_add_test(runs, a_level_run_is_laid_as_an_upright_one);
	return suite;
}
