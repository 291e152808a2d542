/* Lifting, turning, flipping and stamping a rectangle of ground. */
#include "plot/edit/patch.h"
#include "support/plots.h"
#include "support/runner.h"

#include <string.h>

static const char *const six[] = { "ab.", "pqS", NULL };

static void check_cells(const struct ground *ground, int columns, int rows, const char *expected)
{
	ck_assert_int_eq(ground->columns, columns);
	ck_assert_int_eq(ground->rows, rows);
	ck_assert_msg(strncmp(ground->cells, expected, strlen(expected)) == 0, "%.*s is not %s",
		columns * rows, ground->cells, expected);
}

static struct ground lifted(struct plot *plot, const char *const *rows, struct rectangle r)
{
	plot_from_rows(plot, rows);
	return patch_of(plot, r);
}

START_TEST(a_patch_is_what_lies_in_the_rectangle)
{
	struct plot plot;
	struct ground patch = lifted(&plot, six, (struct rectangle){ 1, 0, 2, 1 });

	check_cells(&patch, 2, 2, "b." "qS");
	ground_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_turn_is_clockwise_and_four_of_them_are_none)
{
	struct plot plot;
	struct ground patch = lifted(&plot, six, (struct rectangle){ 0, 0, 2, 1 });

	patch_turn(&patch);
	check_cells(&patch, 2, 3, "pa" "qb" "S.");
	for (int i = 0; i < 3; i++)
		patch_turn(&patch);
	check_cells(&patch, 3, 2, "ab." "pqS");
	ground_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_flip_swaps_left_and_right_or_top_and_bottom)
{
	struct plot plot;
	struct ground patch = lifted(&plot, six, (struct rectangle){ 0, 0, 2, 1 });

	patch_flip(&patch, true);
	check_cells(&patch, 3, 2, ".ba" "Sqp");
	patch_flip(&patch, false);
	check_cells(&patch, 3, 2, "Sqp" ".ba");
	ground_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_stamp_lays_open_ground_too_and_says_what_falls_outside)
{
	static const char *const rows[] = { "b.p", "ppp", NULL };
	struct plot plot;
	struct ground patch = lifted(&plot, rows, (struct rectangle){ 0, 0, 1, 0 });
	struct laid laid = patch_stamp(&plot, &patch, 2, 1);

	check_cells(&plot.ground, 3, 2, "b.p" "ppb");
	ck_assert_int_eq(laid.changed, 1);
	ck_assert(laid.outside);
	patch_stamp(&plot, &patch, -1, 1);
	check_cells(&plot.ground, 3, 2, "b.p" ".pb");
	ground_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_stamp_that_meets_its_image_keeps_the_letters_beside_its_corner)
{
	static const char *const rows[] = { "abc...", "......", NULL };
	struct plot plot;
	struct ground patch = lifted(&plot, rows, (struct rectangle){ 0, 0, 2, 0 });

	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	patch_stamp(&plot, &patch, 2, 1);
	/* c lands on column 4, whose image is column 1; a and b meet across the axis: a's side
	 * stays. */
	check_cells(&plot.ground, 6, 2, "abc..." ".caac.");
	patch_stamp(&plot, &patch, 3, 1);
	check_cells(&plot.ground, 6, 2, "abc..." "cbaabc");
	ground_fini(&patch);
	plot_fini(&plot);
}
END_TEST

/* Whatever is stamped wherever, a plot that was symmetric stays so. */
START_TEST(a_stamp_keeps_the_mirror)
{
	static const char *const kinds[] = { "left-right", "top-bottom", "four-way", "half-turn" };
	struct random random = { (uint64_t)_i };
	struct plot plot;
	struct mirror mirror;
	struct ground patch;

	plot_at_random(&plot, &random, 12, "abpS.");
	patch = patch_of(&plot, rectangle_between(random_below(&random, plot.ground.columns),
		random_below(&random, plot.ground.rows), random_below(&random, plot.ground.columns),
		random_below(&random, plot.ground.rows)));
	memset(plot.ground.cells, '.', (size_t)plot.ground.columns * (size_t)plot.ground.rows);
	plot_set(&plot, 0, HEAD_MIRROR, kinds[_i % 4]);
	patch_stamp(&plot, &patch, random_between(&random, -3, 12),
		random_between(&random, -3, 12));
	mirror = mirror_of(&plot);
	ck_assert_int_eq(mirror_faults(&mirror, &plot.ground), 0);
	ground_fini(&patch);
	plot_fini(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("patch");
	TCase *shape = suite_case(suite, "shape"), *stamp = suite_case(suite, "stamp");

	tcase_add_test(shape, a_patch_is_what_lies_in_the_rectangle);
	tcase_add_test(shape, a_turn_is_clockwise_and_four_of_them_are_none);
	tcase_add_test(shape, a_flip_swaps_left_and_right_or_top_and_bottom);
	tcase_add_test(stamp, a_stamp_lays_open_ground_too_and_says_what_falls_outside);
	tcase_add_test(stamp, a_stamp_that_meets_its_image_keeps_the_letters_beside_its_corner);
	tcase_add_loop_test(stamp, a_stamp_keeps_the_mirror, 0, 400);
	return suite;
}
