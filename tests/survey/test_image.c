/* Images of outlines, held against turning their cells one by one. */
#include "support/beds.h"
#include "support/plots.h"
#include "support/runner.h"
#include "survey/image.h"
#include "survey/shape.h"

#include <stdlib.h>

enum { RANDOM_PLOTS = 60, SIDE_OF_RANDOM = 12 };

static struct plot plot;
static struct arena arena;
static struct survey survey;

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

/* Where a cell of a box so wide and high goes: the eight turns, written out. */
static struct place turned(enum turn turn, struct place at, struct place size)
{
	int right = size.x - 1 - at.x, up = size.y - 1 - at.y;

	switch (turn) {
	case TURN_LEFT_RIGHT:
		return (struct place){ right, at.y };
	case TURN_TOP_BOTTOM:
		return (struct place){ at.x, up };
	case TURN_HALF:
		return (struct place){ right, up };
	case TURN_QUARTER: /* the top row becomes the right column */
		return (struct place){ up, at.x };
	case TURN_QUARTER_BACK: /* the top row becomes the left column, from below */
		return (struct place){ at.y, right };
	case TURN_FALLING:
		return (struct place){ at.y, at.x };
	case TURN_RISING:
		return (struct place){ up, right };
	case TURN_NONE:
	case TURNS:
		break;
	}
	return at;
}

static struct place size_of(int region)
{
	const struct region *r = &survey.regions[region];

	return (struct place){ r->most.x - r->left + 1, r->most.y - r->first_cell.y + 1 };
}

static bool holds(int region, int x, int y)
{
	const struct region *r = &survey.regions[region];

	return ground_holds(&plot.ground, r->left + x, r->first_cell.y + y) &&
		survey_region_at(&survey, r->left + x, r->first_cell.y + y) == region;
}

/* Cell by cell. */
static bool is_image(int a, int b, enum turn turn)
{
	struct place size = size_of(a);

	if (survey.regions[a].cells != survey.regions[b].cells)
		return false;
	for (int y = 0; y < size.y; y++) {
		for (int x = 0; x < size.x; x++) {
			struct place to = turned(turn, (struct place){ x, y }, size);

			if (holds(a, x, y) && !holds(b, to.x, to.y))
				return false;
		}
	}
	return true;
}

/* The cell inside at the middle of a side, from the box; and which way the side runs. */
struct beside {
	struct place cell;
	int x, y, length;
};

static struct beside beside(int region, const struct loop *loop, int side)
{
	const struct corner *a = &loop->corners[side];
	const struct corner *b = &loop->corners[(side + 1) % loop->count];
	int x = (b->x > a->x) - (b->x < a->x), y = (b->y > a->y) - (b->y < a->y);
	/* The region is on the right hand. */
	struct place cell = { x > 0 || y > 0 ? a->x - (y > 0) : a->x - (x < 0),
		x > 0 || y > 0 ? a->y : a->y - 1 };

	return (struct beside){ { cell.x - survey.regions[region].left,
		cell.y - survey.regions[region].first_cell.y }, x, y,
		abs(b->x - a->x + b->y - a->y) };
}

/* The two ends' cells of a side in the one go to those of its image, in turned order where it is a
 * flip. */
static void check_sides(int a, int b, const struct image *image, const struct outline *from,
	const struct outline *to)
{
	struct place size = size_of(a);

	for (int l = 0; l < from->count; l++) {
		const struct loop *loop = &from->loops[l];
		const struct loop *other = &to->loops[image->loops[l].loop];

		ck_assert_int_eq(loop->count, other->count);
		for (int i = 0; i < loop->count; i++) {
			int j = image_side(image, l, i, loop->count);
			struct beside one = beside(a, loop, i), two = beside(b, other, j);
			struct place first = turned(image->turn, one.cell, size);
			int off = turn_is_flip(image->turn) ? two.length - 1 : 0;

			ck_assert_int_eq(one.length, two.length);
			ck_assert_int_eq(first.x, two.cell.x + off * two.x);
			ck_assert_int_eq(first.y, two.cell.y + off * two.y);
			j = image_corner(image, l, i, loop->count);
			ck_assert_int_eq(loop->corners[i].reflex, other->corners[j].reflex);
		}
	}
}

/* Pairs of regions that are no images of one another, and those of them with one hash. */
static int others, mistaken;

/* Both ways: what is found, and how. Returns how many images there are that are turned. */
static int check_pair(int a, int b)
{
	struct outline from, to;
	bool is_any = false;
	int found = 0;

	outline_trace(&from, &arena, &plot, &survey, a);
	outline_trace(&to, &arena, &plot, &survey, b);
	for (int turn = 0; turn < TURNS; turn++) {
		struct image image;
		bool expected = is_image(a, b, (enum turn)turn);

		ck_assert_msg(image_find(&image, &arena, &from, &to, (enum turn)turn) == expected,
			"regions %d and %d, turn %d", a, b, turn);
		if (!expected)
			continue;
		is_any = true;
		found += turn != TURN_NONE;
		check_sides(a, b, &image, &from, &to);
	}
	ck_assert(shape_is_image(&plot, &survey, a, b) == is_any);
	bool has_one_hash = shape_image_hash(&plot, &survey, a) ==
		shape_image_hash(&plot, &survey, b);

	ck_assert(has_one_hash || !is_any);
	others += !is_any;
	mistaken += has_one_hash && !is_any;
	return found;
}

START_TEST(images_are_found_where_all_cells_are_turned_so)
{
	int found = 0;

	for (int seed = 0; seed < RANDOM_PLOTS; seed++) {
		struct random random = { (uint64_t)seed };

		plot_at_random(&plot, &random, SIDE_OF_RANDOM, "bp.");
		survey_plot(&survey, &arena, &plot);
		for (int a = 0; a < survey.region_count; a++)
			for (int b = 0; b < survey.region_count; b++)
				found += check_pair(a, b);
		teardown();
	}
	ck_assert_int_gt(found, 1000);
	/* What has one hash is compared corner by corner: nearly all is told apart by it. */
	ck_assert_int_lt(mistaken * 100, others);
	plot_from_rows(&plot, (const char *const[]){ "b", NULL });
}
END_TEST

START_TEST(all_eight_turns_of_a_bed_are_told_apart)
{
	/* An ell with an arm, by itself and turned in each way, holes and all. */
	plot_from_rows(&plot, (const char *const[]){
		"bbbb.bbbb.b....", "b.b...b.b.bb...", "bbbb.bbbb.b.b..", "b.......b.bbb..",
		"..........b....", "b.......b......", "bbbb.bbbb......", "b.b...b.b......",
		"bbbb.bbbb......", NULL });
	survey_plot(&survey, &arena, &plot);
	ck_assert_int_eq(survey.region_count, 5);
	for (int a = 0; a < 5; a++)
		for (int b = 0; b < 5; b++)
			check_pair(a, b);
	ck_assert(shape_is_image(&plot, &survey, 0, 1));
	ck_assert(!shape_is_equal(&plot, &survey, 0, 1));
}
END_TEST

enum { HOLED = 11 };

/* A square bed with holes of a cell here and there, and where each comes to lie by a turn. */
static void bed_with_holes(struct random *random, enum turn turn)
{
	beds_rectangle(&plot, HOLED, HOLED);
	for (int i = 0; i < 8; i++) {
		struct place at = { 1 + 2 * random_below(random, HOLED / 2),
			1 + 2 * random_below(random, HOLED / 2) };

		for (int quarter = 0; quarter < 4; quarter++) {
			plot.ground.cells[at.y * HOLED + at.x] = OPEN_GROUND;
			at = turned(turn, at, (struct place){ HOLED, HOLED });
		}
	}
	survey_plot(&survey, &arena, &plot);
}

START_TEST(each_of_many_holes_is_found_where_it_is_turned_to)
{
	struct random random = { 31 };
	int found = 0;

	for (int i = 0; i < 4 * TURNS; i++) {
		enum turn turn = (enum turn)(i % TURNS);

		bed_with_holes(&random, turn);
		ck_assert_int_eq(survey.region_count, 1);
		ck_assert(is_image(0, 0, turn));
		found += check_pair(0, 0);
		teardown();
	}
	ck_assert_int_ge(found, 4 * (TURNS - 1));
	plot_from_rows(&plot, (const char *const[]){ "b", NULL });
}
END_TEST

START_TEST(one_turn_after_another_is_a_turn)
{
	struct place size = { 5, 3 }, at = { 1, 0 };

	for (int a = 0; a < TURNS; a++) {
		bool swaps = a >= TURN_QUARTER;
		struct place half = turned((enum turn)a, at, size);
		struct place between = swaps ? (struct place){ size.y, size.x } : size;

		for (int b = 0; b < TURNS; b++) {
			enum turn both = turn_then((enum turn)a, (enum turn)b);
			struct place there = turned((enum turn)b, half, between);

			ck_assert(place_equal(turned(both, at, size), there));
			ck_assert(turn_is_flip(both) ==
				(turn_is_flip((enum turn)a) != turn_is_flip((enum turn)b)));
		}
	}
}
END_TEST

START_TEST(regions_are_grouped_by_kind_and_image)
{
	static const struct shaped regions[] = { { 0, 7 }, { 1, 7 }, { 2, 8 }, { 3, 7 }, { 4, 7 } };
	struct groups groups;

	plot_from_rows(&plot, (const char *const[]){
		"bb.bb.bb.b.bbb", "b...b.b..b...b", ".........b....", NULL });
	survey_plot(&survey, &arena, &plot);
	ck_assert_int_eq(survey.region_count, 5);
	groups = shape_images(&plot, &survey, regions, 5);
	ck_assert_int_eq(groups.count, 4);
	ck_assert_int_eq(groups.list[0].count, 2); /* the second is flipped */
	ck_assert_int_eq(groups.list[0].members[1], 1);
	ck_assert_int_eq(groups.list[1].members[0], 2); /* of another kind */
	groups_fini(&groups);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("image");
	TCase *images = suite_case(suite, "images");

	tcase_add_checked_fixture(images, NULL, teardown);
	tcase_add_test(images, all_eight_turns_of_a_bed_are_told_apart);
	tcase_add_test(images, each_of_many_holes_is_found_where_it_is_turned_to);
	tcase_add_test(images, one_turn_after_another_is_a_turn);
	tcase_add_test(images, regions_are_grouped_by_kind_and_image);
	tcase_add_test(images, images_are_found_where_all_cells_are_turned_so);
	return suite;
}
