/* Growing and cropping. */
#include "plot/edit/resize.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <string.h>

static const char *const corner[] = { "b..", "..p", NULL };

static void check_ground(const struct plot *plot, const char *expected)
{
	const struct ground *ground = &plot->ground;

	plot_check(plot);
	ck_assert_msg(strncmp(ground->cells, expected, strlen(expected)) == 0,
		"%.*s is not %s", ground->columns * ground->rows, ground->cells, expected);
	ck_assert_uint_eq(strlen(expected), (size_t)ground->columns * (size_t)ground->rows);
}

START_TEST(new_ground_is_open_and_the_old_keeps_its_place)
{
	struct plot plot;

	plot_from_rows(&plot, corner);
	resize_plot(&plot, &(struct margins){ 1, 1, 2, 0 });
	check_ground(&plot, "......" ".b...." "...p..");
	plot_fini(&plot);
}
END_TEST

START_TEST(cropping_cuts_on_the_side_it_is_told)
{
	struct plot plot;

	plot_from_rows(&plot, corner);
	resize_plot(&plot, &(struct margins){ -1, 0, 0, 1 });
	check_ground(&plot, ".." ".p" "..");
	resize_plot(&plot, &(struct margins){ 0, -1, -1, 0 });
	check_ground(&plot, "." ".");
	plot_fini(&plot);
}
END_TEST

/* Of a ground of two beds, a path and open cells, by hand. */
static void check_loss(struct margins margins, int bed, int path, int open)
{
	static const char *const rows[] = { "bp.", "c..", NULL };
	struct plot plot;
	int64_t lost[CLASSES];

	plot_from_rows(&plot, rows);
	ck_assert_int_eq(resize_loss(&plot, &margins, lost), bed + path);
	ck_assert_int_eq(lost[CLASS_BED], bed);
	ck_assert_int_eq(lost[CLASS_PATH], path);
	ck_assert_int_eq(lost[CLASS_LAWN] + lost[CLASS_FIXTURE], 0);
	ck_assert_int_eq(lost[CLASS_OPEN], open);
	plot_fini(&plot);
}

START_TEST(what_would_fall_outside_is_counted_by_its_class)
{
	check_loss((struct margins){ -1, 0, 0, 0 }, 2, 0, 0);
	check_loss((struct margins){ -1, 0, -1, 0 }, 2, 0, 2);
	check_loss((struct margins){ 0, -1, 0, 5 }, 1, 1, 1);
	check_loss((struct margins){ 0, 0, -2, 0 }, 0, 1, 3);
	check_loss((struct margins){ 0, 9, 0, -1 }, 1, 0, 2);
	check_loss((struct margins){ 3, 3, 3, 3 }, 0, 0, 0);
}
END_TEST

START_TEST(a_plan_keeps_at_least_a_cell_and_at_most_2048)
{
	struct plot plot;

	plot_from_rows(&plot, corner);
	ck_assert(resize_fits(&plot.ground, &(struct margins){ -2, -1, 0, 0 }));
	ck_assert(!resize_fits(&plot.ground, &(struct margins){ -2, 0, -1, 0 }));
	ck_assert(!resize_fits(&plot.ground, &(struct margins){ 0, -1, 0, -1 }));
	ck_assert(resize_fits(&plot.ground, &(struct margins){ 2045, 2046, 0, 0 }));
	ck_assert(!resize_fits(&plot.ground, &(struct margins){ 2045, 0, 1, 0 }));
	ck_assert(!resize_fits(&plot.ground, &(struct margins){ 0, 2046, 0, 1 }));
	plot_fini(&plot);
}
END_TEST

START_TEST(a_set_axis_moves_with_the_ground)
{
	struct plot plot;
	const struct value *axis;

	plot_from_rows(&plot, corner);
	plot_set(&plot, 0, HEAD_AXIS, "3,1");
	resize_plot(&plot, &(struct margins){ 2, 1, 0, 0 });
	axis = block_value(&plot.details.head, HEAD_AXIS);
	ck_assert(axis->set);
	ck_assert_int_eq(axis->as.place.x, 7);
	ck_assert_int_eq(axis->as.place.y, 3);
	resize_plot(&plot, &(struct margins){ -4, 0, 0, 0 });
	ck_assert(!block_value(&plot.details.head, HEAD_AXIS)->set);
	plot_fini(&plot);
}
END_TEST

/* Of 3 x 2 cells: up to half a cell from an edge it is on the plan. */
START_TEST(an_axis_stays_as_long_as_it_is_within_the_plan)
{
	static const struct {
		const char *axis;
		struct margins margins;
		bool stays;
	} axes[] = {
		{ "3,2", { -1, 0, 0, 0 }, true }, { "2,2", { -1, 0, 0, 0 }, false },
		{ "3,2", { 0, 0, -1, 0 }, true }, { "4,2", { 0, 0, -1, 0 }, false },
		{ "3,3", { 0, -1, 0, 0 }, true }, { "3,2", { 0, -1, 0, 0 }, false },
		{ "3,1", { 0, 0, 0, -1 }, true }, { "3,2", { 0, 0, 0, -1 }, false },
		{ "5,3", { 0, 0, 0, 0 }, true }, { "1,1", { 0, 0, 0, 0 }, true },
	};

	for (size_t i = 0; i < sizeof axes / sizeof *axes; i++) {
		struct plot plot;

		plot_from_rows(&plot, corner);
		plot_set(&plot, 0, HEAD_AXIS, axes[i].axis);
		resize_plot(&plot, &axes[i].margins);
		ck_assert_msg(block_value(&plot.details.head, HEAD_AXIS)->set == axes[i].stays,
			"row %zu", i);
		plot_fini(&plot);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("resize");
	TCase *sides = suite_case(suite, "sides");

	tcase_add_test(sides, new_ground_is_open_and_the_old_keeps_its_place);
	tcase_add_test(sides, cropping_cuts_on_the_side_it_is_told);
	tcase_add_test(sides, what_would_fall_outside_is_counted_by_its_class);
	tcase_add_test(sides, a_plan_keeps_at_least_a_cell_and_at_most_2048);
	tcase_add_test(sides, a_set_axis_moves_with_the_ground);
	tcase_add_test(sides, an_axis_stays_as_long_as_it_is_within_the_plan);
	return suite;
}
