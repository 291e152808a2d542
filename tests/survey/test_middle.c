/* Where regions' names stand: exact small cases, and by law at random. */

#include "support/plots.h"
#include "support/runner.h"
#include "survey/middle.h"

#include <math.h>

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

/* How far the middle of a run is from that of the box around its region, across and down. */
static double off_middle(const struct region *r, const struct run *run, int y)
{
	double across = (run->left + run->right) / 2.0 - (r->left + r->most.x + 1) / 2.0;
	double down = y - (r->first_cell.y + r->most.y) / 2.0;

	return fabs(across) + fabs(down);
}

/* The run that has more room, up to 4 cells, than all others, else is nearer to the middle, else is
 * earlier. */
static struct middle best_of_all(int region)
{
	const struct region *r = &survey.regions[region];
	struct middle best = { { -1, -1 }, 0 };
	double off = 0;

	for (int y = 0; y < survey.rows; y++)
		for (size_t i = survey.row_runs[y]; i < survey.row_runs[y + 1]; i++) {
			const struct run *run = &survey.runs[i];
			int length = run->right - run->left, room = length < 4 ? length : 4;
			int had = best.length < 4 ? best.length : 4;

			if (run->region != region || room < had ||
				(room == had && off_middle(r, run, y) >= off))
				continue;
			best = (struct middle){ { run->left, y }, length };
			off = off_middle(r, run, y);
		}
	return best;
}

START_TEST(each_region_has_the_best_of_its_runs)
{
	struct random random = { 71 };

	for (int i = 0; i < RANDOM_PLOTS; i++) {
		const struct middle *middles;

		plot_at_random(&plot, &random, 20, "bpl.");
		survey_plot(&survey, &arena, &plot);
		middles = survey_middles(&survey, &arena);
		for (int r = 0; r < survey.region_count; r++) {
			struct middle best = best_of_all(r);

			check_middle(&middles[r], best.first.x, best.first.y, best.length);
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
	tcase_add_test(middles, each_region_has_the_best_of_its_runs);
	return suite;
}
