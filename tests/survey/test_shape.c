/* Which regions have one shape. */
#include "support/plots.h"
#include "support/runner.h"
#include "survey/shape.h"

enum { RANDOM_PLOTS = 60, SIDE_OF_RANDOM = 14 };

static struct plot plot;
static struct arena arena;
static struct survey survey;

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

static void given(const char *const *rows)
{
	plot_from_rows(&plot, rows);
	survey_plot(&survey, &arena, &plot);
}

static bool is_one_shape(int a, int b)
{
	bool is_equal = shape_is_equal(&plot, &survey, a, b);

	ck_assert(is_equal == shape_is_equal(&plot, &survey, b, a));
	/* All of a shape is in its hash: no other has the same, or they were found slowly. */
	ck_assert(is_equal == (shape_hash(&plot, &survey, a) == shape_hash(&plot, &survey, b)));
	return is_equal;
}

START_TEST(a_shape_is_one_wherever_it_lies_and_whatever_its_letter)
{
	given((const char *const[]){ "bb..p..", "b..pp..", "..b..bb", "......b", NULL });
	ck_assert_int_eq(survey.region_count, 4);
	ck_assert(!is_one_shape(0, 1)); /* mirrored */
	ck_assert(!is_one_shape(0, 2));
	ck_assert(!is_one_shape(0, 3)); /* turned */
	plot_fini(&plot);
	given((const char *const[]){ "bb...", "b.p..", "..ppp", "..p..", ".cc..", ".c...", NULL });
	ck_assert(is_one_shape(0, 2));
	ck_assert(!is_one_shape(0, 1));
}
END_TEST

START_TEST(rectangles_are_one_shape_by_their_size)
{
	given((const char *const[]){ "bbb.c", "bbb.c", "....c", "ppp..", "ppp.q", NULL });
	ck_assert(is_one_shape(0, 2));
	ck_assert(!is_one_shape(0, 1));
	ck_assert(!is_one_shape(1, 3));
}
END_TEST

START_TEST(holes_belong_to_the_shape)
{
	given((const char *const[]){ "bbbb.cccc.dddd", "b..b.c.cc.d..d", "bbbb.cccc.dddd", NULL });
	ck_assert(!is_one_shape(0, 1));
	ck_assert(is_one_shape(0, 2));
}
END_TEST

/* The same cells from the upper left corner of the box on. */
static bool are_cells_equal(int a, int b)
{
	const struct region *one = &survey.regions[a], *other = &survey.regions[b];
	int right = other->left - one->left, down = other->first_cell.y - one->first_cell.y;

	if (one->cells != other->cells)
		return false;
	for (int y = one->first_cell.y; y <= one->most.y; y++)
		for (int x = one->left; x <= one->most.x; x++)
			if (survey_region_at(&survey, x, y) == a &&
				(!ground_holds(&plot.ground, x + right, y + down) ||
				survey_region_at(&survey, x + right, y + down) != b))
				return false;
	return true;
}

START_TEST(regions_are_of_one_shape_where_all_cells_are)
{
	struct random random = { (uint64_t)_i };

	plot_at_random(&plot, &random, SIDE_OF_RANDOM, "bp.");
	survey_plot(&survey, &arena, &plot);
	for (int a = 0; a < survey.region_count; a++)
		for (int b = 0; b < survey.region_count; b++)
			ck_assert_msg(is_one_shape(a, b) == are_cells_equal(a, b),
				"seed %d, regions %d and %d", _i, a, b);
}
END_TEST

START_TEST(regions_are_grouped_by_letter_and_shape)
{
	static const int regions[] = { 0, 1, 2, 3, 4 };
	struct groups groups;

	given((const char *const[]){ "bb.cc.bb", "........", "bb.b.bbb", NULL });
	ck_assert_int_eq(survey.region_count, 6);
	groups = shape_groups(&plot, &survey, regions, 5);
	ck_assert_int_eq(groups.count, 3);
	ck_assert_int_eq(groups.list[0].count, 3); /* bb */
	ck_assert_int_eq(groups.list[0].members[1], 2);
	ck_assert_int_eq(groups.list[0].members[2], 3);
	ck_assert_int_eq(groups.list[1].members[0], 1); /* cc */
	ck_assert_int_eq(groups.list[2].members[0], 4); /* b */
	groups_fini(&groups);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("shape");
	TCase *shapes = suite_case(suite, "shapes");

	tcase_add_checked_fixture(shapes, NULL, teardown);
	tcase_add_test(shapes, a_shape_is_one_wherever_it_lies_and_whatever_its_letter);
	tcase_add_test(shapes, rectangles_are_one_shape_by_their_size);
	tcase_add_test(shapes, holes_belong_to_the_shape);
	tcase_add_test(shapes, regions_are_grouped_by_letter_and_shape);
	tcase_add_loop_test(shapes, regions_are_of_one_shape_where_all_cells_are, 0, RANDOM_PLOTS);
	return suite;
}
