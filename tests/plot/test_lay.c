/* Laying rectangles, frames and floods with their images, and folding: against the plain way,
 * cell by cell. */
#include "plot/edit/lay.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { KINDS = MIRROR_HALF_TURN + 1, SIDE = 14, CELLS = SIDE * SIDE };

/* What laying must bring about. */
struct expectation {
	char cells[CELLS];
	int64_t changed;
	bool outside;
};

/* Cells of the ground that somebody chose. */
struct choice {
	bool has[CELLS];
};

static int index_of(const struct ground *ground, int x, int y)
{
	return y * ground->columns + x;
}

static void start(struct plot *plot, struct random *random, int kind)
{
	plot_at_random(plot, random, SIDE, "..bpS");
	if (!plot_entry(plot, 'b'))
		details_add_entry(&plot->details, CLASS_BED, 'b', strdup("b"));
	block_set(&plot->details.head, HEAD_MIRROR,
		(struct value){ .set = true, .as.number = kind });
	if (random_below(random, 2))
		block_set(&plot->details.head, HEAD_AXIS, (struct value){ .set = true, .as.place = {
			random_between(random, 1, 2 * plot->ground.columns - 1),
			random_between(random, 1, 2 * plot->ground.rows - 1) } });
}

/* Every chosen cell and each of its images gets the letter. */
static struct expectation laid_expected(const struct plot *plot, const struct choice *choice,
	char letter)
{
	const struct ground *ground = &plot->ground;
	struct mirror mirror = mirror_of(plot);
	int count = ground->columns * ground->rows;
	struct expectation e = { .changed = 0 };

	memcpy(e.cells, ground->cells, (size_t)count);
	for (int i = 0; i < count; i++) {
		struct place images[IMAGES_MOST];

		if (!choice->has[i])
			continue;
		int n = mirror_cells(&mirror, i % ground->columns, i / ground->columns, images);

		for (; n > 0; n--) {
			if (ground_holds(ground, images[n - 1].x, images[n - 1].y))
				e.cells[index_of(ground, images[n - 1].x,
					images[n - 1].y)] = letter;
			else
				e.outside = true;
		}
	}
	for (int i = 0; i < count; i++)
		e.changed += e.cells[i] != ground->cells[i];
	return e;
}

static void check_laid(struct plot *plot, struct laid laid, const struct expectation *e)
{
	const struct ground *ground = &plot->ground;

	ck_assert_mem_eq(ground->cells, e->cells, (size_t)ground->columns * (size_t)ground->rows);
	ck_assert_int_eq(laid.changed, e->changed);
	ck_assert_int_eq(laid.outside, e->outside);
	plot_check(plot);
	plot_fini(plot);
}

static struct rectangle rectangle_at_random(const struct ground *ground, struct random *random)
{
	return rectangle_between(random_below(random, ground->columns),
		random_below(random, ground->rows), random_below(random, ground->columns),
		random_below(random, ground->rows));
}

static char letter_at_random(struct random *random)
{
	return ".b"[random_below(random, 2)];
}

START_TEST(a_rectangle_is_given_by_any_two_opposite_corners)
{
	struct rectangle r = rectangle_between(5, 1, 2, 7);

	ck_assert_int_eq(r.left, 2);
	ck_assert_int_eq(r.top, 1);
	ck_assert_int_eq(r.right, 5);
	ck_assert_int_eq(r.bottom, 7);
	r = rectangle_between(2, 7, 5, 1);
	ck_assert_int_eq(r.left, 2);
	ck_assert_int_eq(r.bottom, 7);
}
END_TEST

/* A rectangle, or its rim: the cells less than so many away from a side. */
static void check_rectangles(int kind, bool is_frame)
{
	for (uint64_t seed = 0; seed < 800; seed++) {
		struct random random = { seed * KINDS + (uint64_t)kind };
		struct choice choice = { { false } };
		struct expectation e;
		struct plot plot;
		char letter = letter_at_random(&random);
		int thickness = random_between(&random, 1, 4);

		start(&plot, &random, kind);
		struct rectangle r = rectangle_at_random(&plot.ground, &random);
		for (int y = r.top; y <= r.bottom; y++)
			for (int x = r.left; x <= r.right; x++)
				choice.has[index_of(&plot.ground, x, y)] = !is_frame ||
					x - r.left < thickness || r.right - x < thickness ||
					y - r.top < thickness || r.bottom - y < thickness;
		e = laid_expected(&plot, &choice, letter);
		check_laid(&plot, is_frame ? lay_frame(&plot, r, thickness, letter) :
			lay_rectangle(&plot, r, letter), &e);
	}
}

START_TEST(a_rectangle_and_its_images_are_laid)
{
	check_rectangles(_i, false);
}
END_TEST

START_TEST(a_frame_and_its_images_are_laid_as_thick_as_asked_and_nothing_within)
{
	check_rectangles(_i, true);
}
END_TEST

struct run {
	struct place from, to;
	int width;
	struct rectangle r;
};

/* By hand: the longer way decides, a tie is level; the odd cell lies towards the other end. */
static const struct run runs[] = {
	{ { 2, 3 }, { 9, 3 }, 1, { 2, 3, 9, 3 } },
	{ { 9, 3 }, { 2, 4 }, 1, { 2, 3, 9, 3 } },
	{ { 2, 3 }, { 3, 9 }, 1, { 2, 3, 2, 9 } },
	{ { 2, 9 }, { 2, 3 }, 3, { 1, 3, 3, 9 } },
	{ { 2, 3 }, { 9, 3 }, 3, { 2, 2, 9, 4 } },
	{ { 2, 3 }, { 9, 3 }, 2, { 2, 3, 9, 4 } },
	{ { 2, 3 }, { 9, 5 }, 2, { 2, 3, 9, 4 } },
	{ { 2, 3 }, { 9, 1 }, 2, { 2, 2, 9, 3 } },
	{ { 2, 3 }, { 1, 9 }, 4, { 0, 3, 3, 9 } },
	{ { 2, 3 }, { 3, 9 }, 4, { 1, 3, 4, 9 } },
	{ { 2, 3 }, { 5, 6 }, 1, { 2, 3, 5, 3 } },
	{ { 2, 3 }, { 2, 3 }, 5, { 2, 1, 2, 5 } },
	{ { 0, 0 }, { 4, 0 }, 3, { 0, -1, 4, 1 } },
};

START_TEST(a_run_follows_the_longer_way_centred_on_where_it_starts)
{
	const struct run *run = &runs[_i];
	struct rectangle r = rectangle_run(run->from, run->to, run->width);

	ck_assert_int_eq(r.left, run->r.left);
	ck_assert_int_eq(r.top, run->r.top);
	ck_assert_int_eq(r.right, run->r.right);
	ck_assert_int_eq(r.bottom, run->r.bottom);
}
END_TEST

START_TEST(a_cell_and_its_images_are_laid_though_it_lies_outside)
{
	for (uint64_t seed = 0; seed < 800; seed++) {
		struct random random = { seed * KINDS + (uint64_t)_i };
		struct place at = { random_between(&random, -2, SIDE + 1),
			random_between(&random, -2, SIDE + 1) }, images[IMAGES_MOST];
		struct laid laid = { 7, false };
		struct expectation e = { .changed = 7 };
		struct plot plot;

		start(&plot, &random, _i);
		struct mirror mirror = mirror_of(&plot);
		memcpy(e.cells, plot.ground.cells,
			(size_t)plot.ground.columns * (size_t)plot.ground.rows);
		for (int n = mirror_cells(&mirror, at.x, at.y, images); n > 0; n--) {
			struct place p = images[n - 1];

			if (!ground_holds(&plot.ground, p.x, p.y)) {
				e.outside = true;
				continue;
			}
			e.changed += e.cells[index_of(&plot.ground, p.x, p.y)] != 'b';
			e.cells[index_of(&plot.ground, p.x, p.y)] = 'b';
		}
		lay_cell(&plot, &mirror, at, 'b', &laid);
		check_laid(&plot, laid, &e);
	}
}
END_TEST

/* The patch, found by going from each cell to its four neighbours. */
static void patch_choose(const struct ground *ground, int x, int y, char letter,
	struct choice *choice)
{
	static const int steps[4][2] = { { 1, 0 }, { -1, 0 }, { 0, 1 }, { 0, -1 } };

	if (!ground_holds(ground, x, y) || ground_cell(ground, x, y) != letter ||
		choice->has[index_of(ground, x, y)])
		return;
	choice->has[index_of(ground, x, y)] = true;
	for (int i = 0; i < 4; i++)
		patch_choose(ground, x + steps[i][0], y + steps[i][1], letter, choice);
}

START_TEST(a_flood_lays_its_patch_and_the_patchs_images)
{
	for (uint64_t seed = 0; seed < 1500; seed++) {
		struct random random = { seed * KINDS + (uint64_t)_i };
		struct choice choice = { { false } };
		struct expectation e;
		struct plot plot;
		char letter = letter_at_random(&random);

		start(&plot, &random, _i);
		int x = random_below(&random, plot.ground.columns),
			y = random_below(&random, plot.ground.rows);
		patch_choose(&plot.ground, x, y, ground_cell(&plot.ground, x, y), &choice);
		e = laid_expected(&plot, &choice, letter);
		check_laid(&plot, lay_flood(&plot, x, y, letter), &e);
	}
}
END_TEST

START_TEST(a_flood_does_not_pass_where_cells_touch_by_their_corners)
{
	static const char *const rows[] = { "b.b", ".b.", "b.b", NULL };
	struct plot plot;

	plot_from_rows(&plot, rows);
	details_add_entry(&plot.details, CLASS_PATH, 'p', strdup("p"));
	struct laid laid = lay_flood(&plot, 1, 1, 'p');
	ck_assert_int_eq(laid.changed, 1);
	ck_assert_mem_eq(plot.ground.cells, "b.b" ".p." "b.b", 9);
	plot_fini(&plot);
}
END_TEST

/* A path that winds through the whole of the largest plan, and one patch of all of it. */
START_TEST(a_flood_of_the_largest_plan_is_laid_at_once)
{
	struct plot plot;

	plot_init(&plot);
	ground_init(&plot.ground, SIDE_MOST, SIDE_MOST);
	for (int y = 1; y < SIDE_MOST; y += 2)
		memset(plot.ground.cells + y * SIDE_MOST + (y % 4 == 1), 'h', SIDE_MOST - 1);
	struct laid laid = lay_flood(&plot, 0, 0, 'p');
	ck_assert_int_eq(laid.changed, SIDE_MOST * SIDE_MOST / 2 + SIDE_MOST / 2);
	memset(plot.ground.cells, '.', SIDE_MOST * SIDE_MOST);
	laid = lay_flood(&plot, SIDE_MOST / 2, SIDE_MOST / 2, 'p');
	ck_assert_int_eq(laid.changed, SIDE_MOST * SIDE_MOST);
	plot_fini(&plot);
}
END_TEST

/* Every cell with an image on the source's side, inside the plan, takes its letter; all others
 * stay. */
START_TEST(a_fold_copies_one_side_over_the_others)
{
	for (uint64_t seed = 0; seed < 800; seed++) {
		struct random random = { seed * KINDS + (uint64_t)_i };
		struct expectation e = { .changed = 0 };
		struct plot plot;

		start(&plot, &random, _i);
		struct ground *ground = &plot.ground;
		struct mirror mirror = mirror_of(&plot);
		struct place from = { random_below(&random, ground->columns),
			random_below(&random, ground->rows) };
		if (!mirror_has_side(&mirror, from.x, from.y)) {
			plot_fini(&plot);
			continue;
		}
		for (int i = 0; i < ground->columns * ground->rows; i++) {
			struct place images[IMAGES_MOST];
			int x = i % ground->columns, y = i / ground->columns;

			e.cells[i] = ground->cells[i];
			for (int n = mirror_cells(&mirror, x, y, images); n > 0; n--) {
				struct place p = images[n - 1];
				bool is_inside = ground_holds(ground, p.x, p.y);

				if (is_inside && mirror_is_beside(&mirror, from, p.x, p.y))
					e.cells[i] = ground_cell(ground, p.x, p.y);
				if (!is_inside && mirror_is_beside(&mirror, from, x, y))
					e.outside = true;
			}
			e.changed += e.cells[i] != ground->cells[i];
		}
		check_laid(&plot, lay_fold(&plot, from.x, from.y), &e);
	}
}
END_TEST

START_TEST(a_plan_folded_about_its_middle_has_no_fault)
{
	for (uint64_t seed = 0; seed < 300; seed++) {
		struct random random = { seed };
		struct plot plot;

		plot_at_random(&plot, &random, SIDE, ".bpS");
		block_set(&plot.details.head, HEAD_MIRROR,
			(struct value){ .set = true, .as.number = _i });
		struct mirror mirror = mirror_of(&plot);
		if (mirror_has_side(&mirror, 0, 0)) {
			lay_fold(&plot, 0, 0);
			ck_assert_int_eq(mirror_faults(&mirror, &plot.ground), 0);
		}
		plot_fini(&plot);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("lay");
	TCase *shape = suite_case(suite, "shapes"), *flood = suite_case(suite, "floods"),
		*fold = suite_case(suite, "folds");

	tcase_add_test(shape, a_rectangle_is_given_by_any_two_opposite_corners);
	tcase_add_loop_test(shape, a_rectangle_and_its_images_are_laid, 0, KINDS);
	tcase_add_loop_test(shape,
		a_frame_and_its_images_are_laid_as_thick_as_asked_and_nothing_within, 0, KINDS);
	tcase_add_loop_test(shape, a_run_follows_the_longer_way_centred_on_where_it_starts, 0,
		sizeof runs / sizeof *runs);
	tcase_add_loop_test(shape, a_cell_and_its_images_are_laid_though_it_lies_outside, 0, KINDS);
	tcase_add_loop_test(flood, a_flood_lays_its_patch_and_the_patchs_images, 0, KINDS);
	tcase_add_test(flood, a_flood_does_not_pass_where_cells_touch_by_their_corners);
	tcase_add_test(flood, a_flood_of_the_largest_plan_is_laid_at_once);
	tcase_add_loop_test(fold, a_fold_copies_one_side_over_the_others, 0, KINDS);
	tcase_add_loop_test(fold, a_plan_folded_about_its_middle_has_no_fault, 0, KINDS);
	return suite;
}
