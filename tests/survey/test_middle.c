/* Where regions' names stand: exact small cases, and by law at random. */

#include "support/plots.h"
#include "support/runner.h"
#include "survey/middle.h"

enum { RANDOM_PLOTS = 300 };

static struct plot plot;
static struct survey survey;
static struct arena arena;

static const struct middle *middles_of_rows(const char *const *rows)
{
	plot_from_rows(&plot, rows);
	survey_plot(&survey, &arena, &plot);
	return survey_middles(&survey, &arena);
}

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plot);
}

static void check_middle(const struct middle *middle, int x, int y, int length)
{
	ck_assert_int_eq(middle->first.x, x);
	ck_assert_int_eq(middle->first.y, y);
	ck_assert_int_eq(middle->length, length);
}

START_TEST(a_name_stands_in_the_middle_row)
{
	check_middle(middles_of_rows((const char *[]){ "......", ".bbbb.", ".bbbb.", ".bbbb.",
		"......", NULL }), 1, 2, 4);
}
END_TEST

START_TEST(a_ring_has_its_name_where_there_is_room)
{
	const struct middle *middles = middles_of_rows((const char *[]){
		"pppppp", "p....p", "p....p", "p....p", "pppppp", NULL });

	check_middle(middles, 0, 0, 6);
}
END_TEST

START_TEST(of_runs_with_room_the_one_nearest_the_middle_is_taken)
{
	check_middle(middles_of_rows((const char *[]){ "llllllll", "llllllll", "llll....",
		"llll....", "llll....", NULL }), 0, 1, 8);
}
END_TEST

START_TEST(each_region_has_a_run_of_its_own)
{
	struct random random = { 71 };

	for (int i = 0; i < RANDOM_PLOTS; i++) {
		const struct middle *middles;

		plot_at_random(&plot, &random, 20, "bpl.");
		survey_plot(&survey, &arena, &plot);
		middles = survey_middles(&survey, &arena);
		for (int r = 0; r < survey.region_count; r++) {
			struct place first = middles[r].first;
			const struct run *run = &survey.runs[survey_run_at(&survey, first.x,
				first.y)];

			ck_assert_int_eq(run->region, r);
			ck_assert_int_eq(run->left, first.x);
			ck_assert_int_eq(run->right - run->left, middles[r].length);
		}
		if (i + 1 < RANDOM_PLOTS)
			teardown();
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("middle");
	TCase *middles = suite_case(suite, "middles");

	tcase_add_checked_fixture(middles, NULL, teardown);
	tcase_add_test(middles, a_name_stands_in_the_middle_row);
	tcase_add_test(middles, a_ring_has_its_name_where_there_is_room);
	tcase_add_test(middles, of_runs_with_room_the_one_nearest_the_middle_is_taken);
	tcase_add_test(middles, each_region_has_a_run_of_its_own);
	return suite;
}
