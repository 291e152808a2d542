/* Lifting, turning, flipping and stamping a rectangle of ground. */
#include "plot/edit/patch.h"
#include "base/memory.h"
#include "base/text.h"
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

static struct patch lifted(struct plot *plot, const char *const *rows, struct rectangle r)
{
	plot_from_rows(plot, rows);
	return patch_of(plot, r);
}

START_TEST(a_patch_is_what_lies_in_the_rectangle)
{
	struct plot plot;
	struct patch patch = lifted(&plot, six, (struct rectangle){ 1, 0, 2, 1 });

	check_cells(&patch.ground, 2, 2, "b." "qS");
	patch_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_turn_is_clockwise_and_four_of_them_are_none)
{
	struct plot plot;
	struct patch patch = lifted(&plot, six, (struct rectangle){ 0, 0, 2, 1 });

	patch_turn(&patch);
	check_cells(&patch.ground, 2, 3, "pa" "qb" "S.");
	for (int i = 0; i < 3; i++)
		patch_turn(&patch);
	check_cells(&patch.ground, 3, 2, "ab." "pqS");
	patch_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_flip_swaps_left_and_right_or_top_and_bottom)
{
	struct plot plot;
	struct patch patch = lifted(&plot, six, (struct rectangle){ 0, 0, 2, 1 });

	patch_flip(&patch, true);
	check_cells(&patch.ground, 3, 2, ".ba" "Sqp");
	patch_flip(&patch, false);
	check_cells(&patch.ground, 3, 2, "Sqp" ".ba");
	patch_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_stamp_lays_open_ground_too_and_says_what_falls_outside)
{
	static const char *const rows[] = { "b.p", "ppp", NULL };
	struct plot plot;
	struct patch patch = lifted(&plot, rows, (struct rectangle){ 0, 0, 1, 0 });
	struct laid laid = patch_stamp(&plot, &patch, 2, 1);

	check_cells(&plot.ground, 3, 2, "b.p" "ppb");
	ck_assert_int_eq(laid.changed, 1);
	ck_assert(laid.outside);
	patch_stamp(&plot, &patch, -1, 1);
	check_cells(&plot.ground, 3, 2, "b.p" ".pb");
	patch_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_stamp_that_meets_its_image_keeps_the_letters_beside_its_corner)
{
	static const char *const rows[] = { "abc...", "......", NULL };
	struct plot plot;
	struct patch patch = lifted(&plot, rows, (struct rectangle){ 0, 0, 2, 0 });

	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	patch_stamp(&plot, &patch, 2, 1);
	/* c lands on column 4, whose image is column 1; a and b meet across the axis: a's side
	 * stays. */
	check_cells(&plot.ground, 6, 2, "abc..." ".caac.");
	patch_stamp(&plot, &patch, 3, 1);
	check_cells(&plot.ground, 6, 2, "abc..." "cbaabc");
	patch_fini(&patch);
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
	struct patch patch;

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
	patch_fini(&patch);
	plot_fini(&plot);
}
END_TEST

/* Of a shape at 1,0 the cells that it has, and of those the ones of a letter; images with them. */
START_TEST(a_shape_is_relettered_or_lifted_where_it_has_cells)
{
	static const char *const shape_rows[] = { "b.", "bb", NULL };
	static const char *const rows[] = { "apbp..", "bbbb..", "a.....", NULL };
	struct plot plot, of_shape;
	struct laid laid;

	plot_from_rows(&of_shape, shape_rows);
	*ground_at(&of_shape.ground, 1, 0) = PATCH_NOTHING;
	plot_from_rows(&plot, rows);
	laid = patch_reletter(&plot, &of_shape.ground, 1, 0, 'b', 'a');
	check_cells(&plot.ground, 6, 3, "apbp.." "baab.." "a.....");
	ck_assert_int_eq(laid.changed, 2);
	ck_assert(!laid.outside);
	laid = patch_lift(&plot, &of_shape.ground, 1, 0);
	check_cells(&plot.ground, 6, 3, "a.bp.." "b..b.." "a.....");
	ck_assert_int_eq(laid.changed, 3);
	ck_assert(!laid.outside);
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	laid = patch_reletter(&plot, &of_shape.ground, 2, 0, 'b', 'p');
	check_cells(&plot.ground, 6, 3, "a.pp.." "b.pp.." "a.....");
	ck_assert_int_eq(laid.changed, 3);
	ck_assert(!laid.outside);
	plot_set(&plot, 0, HEAD_AXIS, "3,3");
	laid = patch_reletter(&plot, &of_shape.ground, 3, 0, 'p', 'a');
	check_cells(&plot.ground, 6, 3, "a.pa.." "b.pa.." "a.....");
	ck_assert_int_eq(laid.changed, 2);
	ck_assert(laid.outside);
	plot_fini(&plot);
	plot_fini(&of_shape);
}
END_TEST

/* ---- Names ----------------------------------------------------------------------------------- */

static void name_put(struct plot *plot, int x, int y, const char *text)
{
	names_add(&plot->details.names, (struct place){ x, y }, memory_string(text));
}

/* "1,0 Sage; 2,0 Thyme". */
static void check_names(const struct names *names, const char *expected)
{
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < names->count; i++)
		text_print(&words, "%s%d,%d %s", i ? "; " : "", names->items[i].at.x,
			names->items[i].at.y, names->items[i].text);
	ck_assert_str_eq(words.bytes, expected);
	text_fini(&words);
}

START_TEST(names_are_turned_and_flipped_with_their_cells)
{
	struct plot plot;
	struct patch patch;

	plot_from_rows(&plot, six);
	name_put(&plot, 1, 0, "Sage");
	name_put(&plot, 0, 1, "Path");
	patch = patch_of(&plot, (struct rectangle){ 1, 0, 2, 1 });
	check_names(&patch.names, "0,0 Sage");
	patch_fini(&patch);
	patch = patch_of(&plot, (struct rectangle){ 0, 0, 2, 1 });
	patch_turn(&patch); /* pa qb S. */
	check_names(&patch.names, "1,1 Sage; 0,0 Path");
	patch_flip(&patch, true);
	check_names(&patch.names, "0,1 Sage; 1,0 Path");
	patch_flip(&patch, false);
	check_names(&patch.names, "0,1 Sage; 1,2 Path");
	patch_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_stamp_brings_its_names_and_moves_those_it_covers_aside)
{
	static const char *const rows[] = { "a..bb", "...bb", NULL };
	struct plot plot;
	struct patch patch;
	struct laid laid;

	plot_from_rows(&plot, rows);
	plot_set(&plot, 0, HEAD_MIRROR, "top-bottom");
	name_put(&plot, 0, 0, "Sage");
	name_put(&plot, 4, 0, "Thyme");
	patch = patch_of(&plot, (struct rectangle){ 0, 0, 0, 0 });
	plot_set(&plot, 0, HEAD_MIRROR, "off");
	laid = patch_stamp(&plot, &patch, 4, 0);
	ck_assert_int_eq(laid.changed, 2); /* the letter and the name */
	check_names(&plot.details.names, "0,0 Sage; 3,0 Thyme; 4,0 Sage");
	laid = patch_stamp(&plot, &patch, 4, 0);
	ck_assert_int_eq(laid.changed, 0);
	check_names(&plot.details.names, "0,0 Sage; 3,0 Thyme; 4,0 Sage");
	patch_stamp(&plot, &patch, 5, 0);
	patch_stamp(&plot, &patch, 0, -1);
	check_names(&plot.details.names, "0,0 Sage; 3,0 Thyme; 4,0 Sage");
	patch_fini(&patch);
	patch = patch_of(&plot, (struct rectangle){ 3, 0, 4, 0 });
	patch_lift(&plot, &patch.ground, 3, 0);
	check_names(&plot.details.names, "0,0 Sage");
	patch_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_stamp_that_is_there_already_changes_nothing_at_any_edge)
{
	static const char *const rows[] = { "a..", "...", NULL };
	const struct place places[] = { { 0, 0 }, { 2, 0 }, { 0, 1 }, { 2, 1 } };
	struct plot plot;
	struct patch patch;

	plot_from_rows(&plot, rows);
	name_put(&plot, 0, 0, "Sage");
	patch = patch_of(&plot, (struct rectangle){ 0, 0, 0, 0 });
	for (int i = 0; i < 4; i++) {
		patch_stamp(&plot, &patch, places[i].x, places[i].y);
		ck_assert_int_eq(patch_stamp(&plot, &patch, places[i].x, places[i].y).changed, 0);
	}
	patch_fini(&patch);
	plot_fini(&plot);
}
END_TEST

START_TEST(no_image_gets_a_name)
{
	static const char *const rows[] = { "a...", NULL };
	struct plot plot;
	struct patch patch;

	plot_from_rows(&plot, rows);
	name_put(&plot, 0, 0, "Sage");
	patch = patch_of(&plot, (struct rectangle){ 0, 0, 0, 0 });
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	patch_stamp(&plot, &patch, 1, 0);
	check_cells(&plot.ground, 4, 1, "aaa.");
	check_names(&plot.details.names, "0,0 Sage; 1,0 Sage");
	patch_fini(&patch);
	plot_fini(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("patch");
	TCase *shape = suite_case(suite, "shape"), *stamp = suite_case(suite, "stamp"),
		*names = suite_case(suite, "names");

	tcase_add_test(shape, a_patch_is_what_lies_in_the_rectangle);
	tcase_add_test(shape, a_turn_is_clockwise_and_four_of_them_are_none);
	tcase_add_test(shape, a_flip_swaps_left_and_right_or_top_and_bottom);
	tcase_add_test(stamp, a_stamp_lays_open_ground_too_and_says_what_falls_outside);
	tcase_add_test(stamp, a_stamp_that_meets_its_image_keeps_the_letters_beside_its_corner);
	tcase_add_test(stamp, a_shape_is_relettered_or_lifted_where_it_has_cells);
	tcase_add_loop_test(stamp, a_stamp_keeps_the_mirror, 0, 400);
	tcase_add_test(names, names_are_turned_and_flipped_with_their_cells);
	tcase_add_test(names, a_stamp_brings_its_names_and_moves_those_it_covers_aside);
	tcase_add_test(names, a_stamp_that_is_there_already_changes_nothing_at_any_edge);
	tcase_add_test(names, no_image_gets_a_name);
	return suite;
}
