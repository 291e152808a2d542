/* Levels when the plan changes: drops that are measured again where they were stay to the
 * nanometre, a plane stays that plane. */
#include "base/number.h"
#include "plot/edit/levels_move.h"
#include "plot/edit/rescale.h"
#include "plot/edit/resize.h"
#include "plot/edit/strip.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/random.h"
#include "support/runner.h"

#include <stdlib.h>

#define FT NM_PER_FOOT
#define IN NM_PER_INCH
#define CASES runner_count(200, 5000)

/* Open ground in cells of a foot, with drops at random. */
static void plot_begin(struct plot *plot, struct random *random, int columns, int rows, nm step)
{
	struct levels *levels = &plot->details.levels;
	const char *const one[] = { ".", NULL };

	plot_from_rows(plot, one);
	resize_plot(plot, &(struct margins){ 0, 0, columns - 1, rows - 1 });
	levels_init(levels, step, (int)levels_count(columns, FT, step),
		(int)levels_count(rows, FT, step));
	for (int i = 0; i < levels->columns * levels->rows; i++)
		levels->drops[i] = (nm)(random_next(random) % (uint64_t)drop_rule.most);
}

static nm drop_at(const struct levels *levels, int x, int y)
{
	return levels->drops[y * levels->columns + x];
}

START_TEST(a_crop_by_whole_steps_keeps_every_drop_that_is_left)
{
	struct random random = { 1 };
	struct plot plot;
	struct levels old;

	plot_begin(&plot, &random, 16, 12, 2 * FT);
	old = levels_copy(&plot.details.levels);
	resize_plot(&plot, &(struct margins){ -4, -2, -3, -1 });
	plot_check(&plot);
	ck_assert_int_eq(plot.details.levels.step, 2 * FT);
	ck_assert_int_eq(plot.details.levels.columns, 6);
	ck_assert_int_eq(plot.details.levels.rows, 6);
	for (int y = 0; y < 6; y++)
		for (int x = 0; x < 6; x++)
			ck_assert_int_eq(drop_at(&plot.details.levels, x, y),
				drop_at(&old, x + 2, y + 1));
	levels_fini(&old);
	plot_fini(&plot);
}
END_TEST

START_TEST(new_ground_has_the_drop_that_is_nearest)
{
	struct random random = { 2 };
	struct plot plot;
	struct levels old;

	plot_begin(&plot, &random, 4, 4, 4 * FT);
	old = levels_copy(&plot.details.levels);
	resize_plot(&plot, &(struct margins){ 4, 0, 4, 8 });
	plot_check(&plot);
	for (int y = 0; y < 4; y++)
		for (int x = 0; x < 4; x++)
			ck_assert_int_eq(drop_at(&plot.details.levels, x, y),
				drop_at(&old, x < 2 ? 0 : 1, y < 1 ? 0 : 1));
	levels_fini(&old);
	plot_fini(&plot);
}
END_TEST

/* So many columns that the drops would be too many for a line; every other one is left. */
START_TEST(a_step_is_doubled_where_there_would_be_too_many_drops)
{
	struct random random = { 3 };
	struct plot plot;
	struct levels old;

	plot_begin(&plot, &random, 199, 5, FT);
	ck_assert_int_eq(plot.details.levels.columns, 200);
	old = levels_copy(&plot.details.levels);
	resize_plot(&plot, &(struct margins){ 0, 0, 1, 0 });
	plot_check(&plot);
	ck_assert_int_eq(plot.details.levels.step, 2 * FT);
	ck_assert_int_eq(plot.details.levels.columns, 101);
	ck_assert_int_eq(plot.details.levels.rows, 4);
	for (int x = 0; x < 100; x++)
		ck_assert_int_eq(drop_at(&plot.details.levels, x, 1), drop_at(&old, 2 * x, 2));
	ck_assert_int_eq(drop_at(&plot.details.levels, 100, 1), drop_at(&old, 199, 2));
	levels_fini(&old);
	plot_fini(&plot);
}
END_TEST

/* A slope of whole nanometres, whatever the datum is: inside what was measured it stays itself. */
START_TEST(a_plane_stays_that_plane_after_any_crop)
{
	for (uint64_t seed = 0; seed < (uint64_t)CASES; seed++) {
		struct random random = { seed };
		int columns = random_between(&random, 4, 30), rows = random_between(&random, 4, 30);
		nm step = random_between(&random, 7, 60) * IN;
		int across = random_between(&random, 0, 40), down = random_between(&random, 0, 40);
		int left = random_below(&random, columns), top = random_below(&random, rows);
		struct plot plot;
		struct levels *levels = &plot.details.levels;
		nm right, bottom;

		plot_begin(&plot, &random, columns, rows, step);
		right = (levels->columns - 1) * step, bottom = (levels->rows - 1) * step;
		for (int i = 0; i < levels->columns * levels->rows; i++)
			levels->drops[i] = i % levels->columns * step / 100 * across +
				i / levels->columns * step / 100 * down;
		resize_plot(&plot, &(struct margins){ -left, -top, 0, 0 });
		plot_check(&plot);
		for (int i = 0; i < levels->columns * levels->rows; i++) {
			nm x = nm_least(i % levels->columns * step + left * FT, right);
			nm y = nm_least(i / levels->columns * step + top * FT, bottom);

			ck_assert_msg(llabs(levels->drops[i] - x / 100 * across -
				y / 100 * down) <= 1, "seed %d", (int)seed);
		}
		plot_fini(&plot);
	}
}
END_TEST

/* 8 x 2 ft, drops each foot; two columns after the third are put in, then taken out again. */
START_TEST(a_strip_draws_the_ground_out_and_gives_it_back)
{
	struct random random = { 5 };
	struct plot plot;
	struct levels old, *levels = &plot.details.levels;
	struct strip strip = { .cell = 2, .count = 2 };

	plot_begin(&plot, &random, 8, 2, FT);
	old = levels_copy(levels);
	strip_do(&plot, &strip);
	plot_check(&plot);
	ck_assert_int_eq(levels->columns, 11);
	for (int x = 0; x <= 10; x++) {
		nm a = drop_at(&old, 2, 1), b = drop_at(&old, 3, 1);

		if (x == 3 || x == 4)
			ck_assert_int_le(llabs(3 * drop_at(levels, x, 1) - 3 * a -
				(x - 2) * (b - a)), 2);
		else
			ck_assert_int_eq(drop_at(levels, x, 1),
				drop_at(&old, x < 3 ? x : x - 2, 1));
	}
	strip = (struct strip){ .is_out = true, .cell = 3, .count = 2 };
	strip_do(&plot, &strip);
	plot_check(&plot);
	ck_assert_int_eq(levels->columns, 9);
	for (int x = 0; x <= 8; x++)
		ck_assert_int_eq(x == 3 || drop_at(levels, x, 0) == drop_at(&old, x, 0), true);
	levels_fini(&old);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_level_strip_moves_rows)
{
	struct random random = { 6 };
	struct plot plot;
	struct levels old, *levels = &plot.details.levels;

	plot_begin(&plot, &random, 2, 6, FT);
	old = levels_copy(levels);
	strip_do(&plot, &(struct strip){ .is_level = true, .is_out = true, .cell = 1, .count = 2 });
	plot_check(&plot);
	ck_assert_int_eq(levels->rows, 5);
	for (int y = 0; y <= 4; y++)
		ck_assert_int_eq(drop_at(levels, 1, y), drop_at(&old, 1, y < 1 ? y : y + 2));
	levels_fini(&old);
	plot_fini(&plot);
}
END_TEST

/* The ground keeps its measure; and, next, its cells: then it ends elsewhere. */
START_TEST(other_cells_leave_drops_where_they_were_measured)
{
	struct random random = { 7 };
	struct plot plot;
	struct levels old, *levels = &plot.details.levels;
	struct rescale rescale;

	plot_begin(&plot, &random, 8, 6, 2 * FT);
	old = levels_copy(levels);
	rescale = rescale_of(&plot, FT / 2);
	rescale_plot(&plot, &rescale);
	plot_check(&plot);
	ck_assert(levels_equal(&old, levels));
	levels_cover(levels, &plot.ground, FT / 4);
	ck_assert_int_eq(levels->columns, 3);
	ck_assert_int_eq(levels->rows, 3);
	for (int i = 0; i < 9; i++)
		ck_assert_int_eq(levels->drops[i], drop_at(&old, i % 3, i / 3));
	levels_fini(&old);
	plot_fini(&plot);
}
END_TEST

START_TEST(across_a_mirror_drops_move_with_the_axis)
{
	struct random random = { 8 };
	struct plot plot;
	struct levels old, *levels = &plot.details.levels;
	struct rescale rescale;

	plot_begin(&plot, &random, 5, 4, FT / 2);
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	old = levels_copy(levels);
	rescale = rescale_of(&plot, 2 * FT);
	rescale_plot(&plot, &rescale);
	plot_check(&plot);
	/* the axis was at 2 1/2 ft and is at 3 ft: the new datum is half a foot before the old */
	ck_assert_int_eq(rescale.across.new_axis, 3);
	ck_assert_int_eq(drop_at(levels, 0, 2), drop_at(&old, 0, 2));
	for (int x = 1; x < old.columns; x++)
		ck_assert_int_eq(drop_at(levels, x, 2), drop_at(&old, x - 1, 2));
	levels_fini(&old);
	plot_fini(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("levels move");
	TCase *moves = suite_case(suite, "moves");

	tcase_add_test(moves, a_crop_by_whole_steps_keeps_every_drop_that_is_left);
	tcase_add_test(moves, new_ground_has_the_drop_that_is_nearest);
	tcase_add_test(moves, a_step_is_doubled_where_there_would_be_too_many_drops);
	tcase_add_test(moves, a_plane_stays_that_plane_after_any_crop);
	tcase_add_test(moves, a_strip_draws_the_ground_out_and_gives_it_back);
	tcase_add_test(moves, a_level_strip_moves_rows);
	tcase_add_test(moves, other_cells_leave_drops_where_they_were_measured);
	tcase_add_test(moves, across_a_mirror_drops_move_with_the_axis);
	return suite;
}
