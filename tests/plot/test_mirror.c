/* Where images lie, and where the ground breaks the mirror. */
#include "plot/mirror.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { KINDS = MIRROR_HALF_TURN + 1 };

/* The images by the rule itself: a cell x goes to across - 1 - x, a point to across - x, and so
 * does y. What is found is sorted, so that two lists can be compared. */
static int images_expected(const struct mirror *m, struct place p, int back, struct place *images)
{
	bool across = m->kind == MIRROR_LEFT_RIGHT || m->kind == MIRROR_FOUR_WAY;
	bool down = m->kind == MIRROR_TOP_BOTTOM || m->kind == MIRROR_FOUR_WAY;
	bool turned = m->kind == MIRROR_HALF_TURN || m->kind == MIRROR_FOUR_WAY;
	int x = m->across - back - p.x, y = m->down - back - p.y, count = 0;
	const struct place all[] = { p, { x, p.y }, { p.x, y }, { x, y } };
	const bool there[] = { true, across, down, turned };

	for (int i = 0; i < 4; i++) {
		bool is_new = there[i];

		for (int j = 0; j < count; j++)
			is_new = is_new && (images[j].x != all[i].x || images[j].y != all[i].y);
		if (is_new)
			images[count++] = all[i];
	}
	return count;
}

/* As legs without length. */
static int images_of_point(const struct mirror *mirror, struct place p, struct place *images)
{
	struct leg legs[IMAGES_MOST];
	int count = mirror_legs(mirror, (struct leg){ p, p }, legs);

	for (int i = 0; i < count; i++) {
		ck_assert(place_equal(legs[i].from, legs[i].to));
		images[i] = legs[i].from;
	}
	return count;
}

static int place_compare(const void *a, const void *b)
{
	const struct place *one = a, *other = b;

	return one->y != other->y ? (one->y > other->y) - (one->y < other->y) :
		(one->x > other->x) - (one->x < other->x);
}

static void check_same(struct place *one, struct place *other, int count)
{
	qsort(one, (size_t)count, sizeof *one, place_compare);
	qsort(other, (size_t)count, sizeof *other, place_compare);
	for (int i = 0; i < count; i++)
		ck_assert_int_eq(place_compare(&one[i], &other[i]), 0);
}

static struct mirror mirror_at_random(struct random *random, enum mirror_kind kind)
{
	return (struct mirror){ kind, random_between(random, 1, 15),
		random_between(random, 1, 15) };
}

/* ---- Where images lie ------------------------------------------------------------------------ */

START_TEST(images_lie_where_the_rule_says_each_once_the_thing_first)
{
	struct random random = { (uint64_t)_i };

	for (int i = 0; i < 3000; i++) {
		struct mirror mirror = mirror_at_random(&random, (enum mirror_kind)_i);
		struct place p = { random_between(&random, -3, 12),
			random_between(&random, -3, 12) };
		struct place found[IMAGES_MOST], expected[IMAGES_MOST] = { p };
		int count = mirror_cells(&mirror, p.x, p.y, found);

		ck_assert_int_eq(count, images_expected(&mirror, p, 1, expected));
		ck_assert_int_eq(found[0].x, p.x);
		ck_assert_int_eq(found[0].y, p.y);
		check_same(found, expected, count);
		count = images_of_point(&mirror, p, found);
		ck_assert_int_eq(count, images_expected(&mirror, p, 0, expected));
		check_same(found, expected, count);
	}
}
END_TEST

START_TEST(an_image_has_the_same_images)
{
	struct random random = { (uint64_t)_i };

	for (int i = 0; i < 1000; i++) {
		struct mirror mirror = mirror_at_random(&random, (enum mirror_kind)_i);
		struct place first[IMAGES_MOST], again[IMAGES_MOST];
		int count = mirror_cells(&mirror, random_below(&random, 9),
			random_below(&random, 9), first);

		for (int j = 0; j < count; j++) {
			struct place of_image[IMAGES_MOST];

			ck_assert_int_eq(mirror_cells(&mirror, first[j].x, first[j].y, of_image),
				count);
			memcpy(again, first, sizeof again);
			check_same(again, of_image, count);
		}
	}
}
END_TEST

/* The cells of a rectangle's images are the images of its cells. */
START_TEST(a_rectangle_goes_where_its_cells_go)
{
	struct random random = { (uint64_t)_i };

	for (int i = 0; i < 500; i++) {
		struct mirror mirror = mirror_at_random(&random, (enum mirror_kind)_i);
		int left = random_below(&random, 8), top = random_below(&random, 8);
		struct rectangle r = { left, top, left + random_below(&random, 5),
			top + random_below(&random, 5) }, images[IMAGES_MOST] = { { 0, 0, 0, 0 } };
		bool by_cells[64][64] = { { false } }, by_images[64][64] = { { false } };
		int count = mirror_rectangles(&mirror, r, images);

		ck_assert_int_ge(count, 1);
		ck_assert(images[0].left == r.left && images[0].top == r.top &&
			images[0].right == r.right && images[0].bottom == r.bottom);
		for (int j = 0; j < count; j++)
			for (int y = images[j].top; y <= images[j].bottom; y++)
				for (int x = images[j].left; x <= images[j].right; x++)
					by_images[y + 32][x + 32] = true;
		for (int y = r.top; y <= r.bottom; y++)
			for (int x = r.left; x <= r.right; x++) {
				struct place cells[IMAGES_MOST];

				for (int n = mirror_cells(&mirror, x, y, cells); n > 0; n--)
					by_cells[cells[n - 1].y + 32][cells[n - 1].x + 32] = true;
			}
		ck_assert_mem_eq(by_cells, by_images, sizeof by_cells);
		for (int j = 0; j < count; j++)
			for (int k = 0; k < j; k++)
				ck_assert(memcmp(&images[j], &images[k], sizeof r) != 0);
	}
}
END_TEST

/* Where the image `how` of a point is: bit 1 across, bit 2 down. */
static struct place image_by(const struct mirror *m, struct place p, int how)
{
	return (struct place){ how & 1 ? m->across - p.x : p.x, how & 2 ? m->down - p.y : p.y };
}

static bool has_image(enum mirror_kind kind, int how)
{
	return how == 0 || kind == MIRROR_FOUR_WAY || (kind == MIRROR_LEFT_RIGHT && how == 1) ||
		(kind == MIRROR_TOP_BOTTOM && how == 2) || (kind == MIRROR_HALF_TURN && how == 3);
}

/* What leads of the leg leads of its image; nothing does just where an image is the leg turned. */
START_TEST(the_end_that_leads_has_as_its_image_the_end_that_leads)
{
	struct random random = { (uint64_t)_i };

	for (int i = 0; i < 3000; i++) {
		struct mirror mirror = mirror_at_random(&random, (enum mirror_kind)_i);
		struct leg leg = { .from = { random_between(&random, -3, 12),
			random_between(&random, -3, 12) } };
		int lead;
		bool is_turned = false;

		leg.to = leg.from;
		*(i % 2 ? &leg.to.x : &leg.to.y) += random_between(&random, 1, 9);
		lead = mirror_leg_lead(&mirror, leg);
		for (int how = 0; how <= 3; how++) {
			struct leg image = { image_by(&mirror, leg.from, how),
				image_by(&mirror, leg.to, how) };

			if (!has_image(mirror.kind, how))
				continue;
			ck_assert_int_eq(mirror_leg_lead(&mirror, image), lead);
			is_turned |= place_equal(image.from, leg.to);
		}
		ck_assert(is_turned == (lead == 0));
		if (mirror.kind != MIRROR_OFF)
			ck_assert_int_eq(mirror_leg_lead(&mirror,
				(struct leg){ leg.to, leg.from }), -lead);
	}
}
END_TEST

START_TEST(a_cell_on_the_axis_is_its_own_image)
{
	/* Seven columns: column 3 is the middle. Eight: none is, 3 and 4 are a pair. */
	struct mirror odd = { MIRROR_LEFT_RIGHT, 7, 7 }, even = { MIRROR_LEFT_RIGHT, 8, 8 };
	struct place images[IMAGES_MOST];

	ck_assert_int_eq(mirror_cells(&odd, 3, 5, images), 1);
	ck_assert_int_eq(mirror_cells(&even, 3, 5, images), 2);
	ck_assert_int_eq(images[1].x, 4);
	ck_assert_int_eq(images[1].y, 5);
	ck_assert_int_eq(images_of_point(&odd, (struct place){ 3, 5 }, images), 2);
	ck_assert_int_eq(images[1].x, 4);
	ck_assert_int_eq(images_of_point(&even, (struct place){ 4, 5 }, images), 1);
	odd.kind = MIRROR_HALF_TURN;
	ck_assert_int_eq(mirror_cells(&odd, 3, 3, images), 1);
	ck_assert_int_eq(mirror_cells(&odd, 3, 2, images), 2);
	ck_assert_int_eq(images[1].y, 4);
	odd.kind = MIRROR_FOUR_WAY;
	ck_assert_int_eq(mirror_cells(&odd, 3, 2, images), 2);
	ck_assert_int_eq(mirror_cells(&odd, 0, 0, images), 4);
}
END_TEST

/* A leg's images have the images of its points for their ends. */
START_TEST(images_of_legs_end_at_the_images_of_their_points)
{
	struct random random = { 12 };

	for (int turn = 0; turn < 3000; turn++) {
		struct mirror mirror = { (enum mirror_kind)random_below(&random,
			MIRROR_HALF_TURN + 1),
			random_between(&random, 1, 19), random_between(&random, 1, 19) };
		struct place from = { random_below(&random, 10), random_below(&random, 10) },
			to = from;
		struct place froms[IMAGES_MOST], tos[IMAGES_MOST];
		struct leg images[IMAGES_MOST];
		int count;

		*(turn % 2 ? &to.x : &to.y) += random_between(&random, 1, 5);
		count = mirror_legs(&mirror, (struct leg){ to, from }, images);
		ck_assert(leg_equal(images[0], (struct leg){ from, to }));
		for (int i = 0; i < count; i++) {
			bool is_found = false;

			ck_assert_int_eq(leg_length(images[i]), leg_length(images[0]));
			for (int a = images_expected(&mirror, from, 0, froms); a > 0; a--)
				for (int b = images_expected(&mirror, to, 0, tos); b > 0; b--)
					is_found = is_found || leg_equal(images[i],
						leg_forward((struct leg){ froms[a - 1],
						tos[b - 1] }));
			ck_assert(is_found);
			for (int j = 0; j < i; j++)
				ck_assert(!leg_equal(images[i], images[j]));
		}
		for (int a = images_expected(&mirror, from, 0, froms); a > 0; a--) {
			bool is_found = false;

			for (int i = 0; i < count; i++)
				is_found = is_found || place_equal(images[i].from, froms[a - 1]) ||
					place_equal(images[i].to, froms[a - 1]);
			ck_assert(is_found);
		}
	}
}
END_TEST

START_TEST(a_plots_mirror_stands_in_the_middle_until_an_axis_is_set)
{
	static const char *const rows[] = { ".....", ".....", "....." , ".....", NULL };
	struct plot plot;
	struct mirror mirror;

	plot_from_rows(&plot, rows);
	mirror = mirror_of(&plot);
	ck_assert_int_eq(mirror.kind, MIRROR_OFF);
	ck_assert_int_eq(mirror.across, 5);
	ck_assert_int_eq(mirror.down, 4);
	plot_set(&plot, 0, HEAD_MIRROR, "top-bottom");
	plot_set(&plot, 0, HEAD_AXIS, "3,7");
	mirror = mirror_of(&plot);
	ck_assert_int_eq(mirror.kind, MIRROR_TOP_BOTTOM);
	ck_assert_int_eq(mirror.across, 3);
	ck_assert_int_eq(mirror.down, 7);
	ck_assert_str_eq(mirror_word(mirror.kind), "top-bottom");
	plot_fini(&plot);
}
END_TEST

/* ---- Faults ---------------------------------------------------------------------------------- */

static int place_index(const struct ground *ground, struct place p)
{
	return ground_holds(ground, p.x, p.y) ? p.y * ground->columns + p.x : -1;
}

/* Orbits are found by joining each cell with its images inside; whoever has the least index
 * speaks for the orbit. */
static int64_t faults_expected(const struct mirror *mirror, const struct ground *ground,
	bool *firsts)
{
	int cells = ground->columns * ground->rows;
	int64_t faults = 0;

	memset(firsts, 0, (size_t)cells);
	for (int i = 0; i < cells; i++) {
		struct place images[IMAGES_MOST], p = { i % ground->columns, i / ground->columns };
		int count = images_expected(mirror, p, 1, images);
		bool is_first = true, differs = false;

		for (int j = 0; j < count; j++) {
			int at = place_index(ground, images[j]);

			is_first = is_first && (at < 0 || at >= i);
			differs = differs || (at >= 0 && ground->cells[at] != ground->cells[i]);
		}
		ck_assert_int_eq(mirror_is_broken(mirror, ground, p.x, p.y), differs);
		firsts[i] = is_first && differs;
		faults += firsts[i];
	}
	return faults;
}

START_TEST(each_orbit_with_two_letters_is_one_fault)
{
	for (uint64_t seed = 0; seed < 400; seed++) {
		struct random random = { seed * KINDS + (uint64_t)_i };
		bool firsts[15 * 15];
		struct plot plot;

		plot_at_random(&plot, &random, 15, ".bp");
		struct mirror mirror = { (enum mirror_kind)_i,
			random_between(&random, 1, 2 * plot.ground.columns - 1),
			random_between(&random, 1, 2 * plot.ground.rows - 1) };
		int64_t expected = faults_expected(&mirror, &plot.ground, firsts);

		ck_assert_int_eq(mirror_faults(&mirror, &plot.ground), expected);
		/* Going from fault to fault meets every first cell in reading order. */
		struct place at = { 0, 0 };
		for (int i = 0; i < plot.ground.columns * plot.ground.rows; i++) {
			if (!firsts[i])
				continue;
			ck_assert(mirror_next_fault(&mirror, &plot.ground, at, &at));
			ck_assert_int_eq(place_index(&plot.ground, at), i);
			at.x++;
		}
		ck_assert(!mirror_next_fault(&mirror, &plot.ground, at, &at));
		plot_fini(&plot);
	}
}
END_TEST

START_TEST(what_has_no_image_inside_is_no_fault)
{
	static const char *const rows[] = { "bp....", NULL };
	struct mirror mirror = { MIRROR_LEFT_RIGHT, 1, 1 };
	struct plot plot;

	plot_from_rows(&plot, rows);
	ck_assert_int_eq(mirror_faults(&mirror, &plot.ground), 0);
	mirror.across = 2;
	ck_assert_int_eq(mirror_faults(&mirror, &plot.ground), 1);
	plot_fini(&plot);
}
END_TEST

/* ---- Sides ----------------------------------------------------------------------------------- */

/* Where the middle of a cell lies off an axis at `axis` half cells: less than 0 left or above. */
static int off_axis(int axis, int cell)
{
	return 2 * cell + 1 - axis;
}

START_TEST(a_cell_on_no_axis_has_a_side)
{
	struct mirror mirror = { (enum mirror_kind)_i, 7, 4 };

	for (int y = 0; y < 6; y++)
		for (int x = 0; x < 8; x++) {
			/* four half cells: between rows 1 and 2 */
			bool across = x == 3, down = false;
			const bool sided[KINDS] = { true, !across, !down, !across && !down, true };

			ck_assert_int_eq(mirror_has_side(&mirror, x, y), sided[_i]);
		}
	mirror.down = 3; /* now row 1 is the axis */
	ck_assert_int_eq(mirror_has_side(&mirror, 0, 1),
		_i != MIRROR_TOP_BOTTOM && _i != MIRROR_FOUR_WAY);
	ck_assert_int_eq(mirror_has_side(&mirror, 3, 1), _i == MIRROR_OFF);
	ck_assert_int_eq(mirror_has_side(&mirror, 3, 0),
		_i == MIRROR_OFF || _i == MIRROR_TOP_BOTTOM || _i == MIRROR_HALF_TURN);
}
END_TEST

/* Cells with a side of their own: on one side are those that lie alike off the axes. */
START_TEST(cells_are_beside_each_other_where_no_axis_parts_them)
{
	struct random random = { (uint64_t)_i };

	for (int i = 0; i < 5000; i++) {
		struct mirror m = mirror_at_random(&random, (enum mirror_kind)_i);
		struct place a = { random_below(&random, 8), random_below(&random, 8) },
			b = { random_below(&random, 8), random_below(&random, 8) };
		int64_t across = (int64_t)off_axis(m.across, a.x) * off_axis(m.across, b.x),
			down = (int64_t)off_axis(m.down, a.y) * off_axis(m.down, b.y);
		const bool beside[KINDS] = { true, across >= 0, down >= 0, across >= 0 && down >= 0,
			across > 0 };

		if (!mirror_has_side(&m, a.x, a.y) || (_i == MIRROR_HALF_TURN && across == 0))
			continue;
		ck_assert_int_eq(mirror_is_beside(&m, a, b.x, b.y), beside[_i]);
	}
}
END_TEST

START_TEST(a_half_turn_parts_its_upright_axis_above_and_below)
{
	struct mirror m = { MIRROR_HALF_TURN, 7, 7 };
	struct place left = { 0, 0 }, right = { 6, 0 }, above = { 3, 0 }, below = { 3, 6 };

	ck_assert(mirror_is_beside(&m, left, 3, 2) && !mirror_is_beside(&m, left, 3, 4));
	ck_assert(!mirror_is_beside(&m, right, 3, 2) && mirror_is_beside(&m, right, 3, 4));
	ck_assert(mirror_is_beside(&m, above, 2, 6) && !mirror_is_beside(&m, above, 4, 6));
	ck_assert(!mirror_is_beside(&m, below, 2, 6) && mirror_is_beside(&m, below, 4, 6));
	ck_assert(!mirror_has_side(&m, 3, 3));
}
END_TEST

/* ---- Keys ------------------------------------------------------------------------------------ */

/* By what each kind reflects: across, down, or both at once only. */
START_TEST(left_right_and_top_bottom_toggle_their_own_and_half_turn_stands_alone)
{
	static const enum mirror_kind expected[KINDS][3] = {
		/* now \ pressed       left-right          top-bottom          half-turn */
		[MIRROR_OFF] =        { MIRROR_LEFT_RIGHT, MIRROR_TOP_BOTTOM, MIRROR_HALF_TURN },
		[MIRROR_LEFT_RIGHT] = { MIRROR_OFF,        MIRROR_FOUR_WAY,   MIRROR_HALF_TURN },
		[MIRROR_TOP_BOTTOM] = { MIRROR_FOUR_WAY,   MIRROR_OFF,        MIRROR_HALF_TURN },
		[MIRROR_FOUR_WAY] =   { MIRROR_TOP_BOTTOM, MIRROR_LEFT_RIGHT, MIRROR_HALF_TURN },
		[MIRROR_HALF_TURN] =  { MIRROR_LEFT_RIGHT, MIRROR_TOP_BOTTOM, MIRROR_OFF },
	};
	enum mirror_kind now = (enum mirror_kind)_i;

	ck_assert_int_eq(mirror_toggled(now, MIRROR_LEFT_RIGHT), expected[now][0]);
	ck_assert_int_eq(mirror_toggled(now, MIRROR_TOP_BOTTOM), expected[now][1]);
	ck_assert_int_eq(mirror_toggled(now, MIRROR_HALF_TURN), expected[now][2]);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("mirror");
	TCase *image = suite_case(suite, "images"), *fault = suite_case(suite, "faults"),
		*side = suite_case(suite, "sides"), *key = suite_case(suite, "keys");

	tcase_add_loop_test(image, images_lie_where_the_rule_says_each_once_the_thing_first, 0,
		KINDS);
	tcase_add_loop_test(image, an_image_has_the_same_images, 0, KINDS);
	tcase_add_loop_test(image, a_rectangle_goes_where_its_cells_go, 0, KINDS);
	tcase_add_test(image, images_of_legs_end_at_the_images_of_their_points);
	tcase_add_loop_test(image, the_end_that_leads_has_as_its_image_the_end_that_leads, 0,
		KINDS);
	tcase_add_test(image, a_cell_on_the_axis_is_its_own_image);
	tcase_add_test(image, a_plots_mirror_stands_in_the_middle_until_an_axis_is_set);
	tcase_add_loop_test(fault, each_orbit_with_two_letters_is_one_fault, 0, KINDS);
	tcase_add_test(fault, what_has_no_image_inside_is_no_fault);
	tcase_add_loop_test(side, a_cell_on_no_axis_has_a_side, 0, KINDS);
	tcase_add_loop_test(side, cells_are_beside_each_other_where_no_axis_parts_them, 0, KINDS);
	tcase_add_test(side, a_half_turn_parts_its_upright_axis_above_and_below);
	tcase_add_loop_test(key,
		left_right_and_top_bottom_toggle_their_own_and_half_turn_stands_alone, 0, KINDS);
	return suite;
}
