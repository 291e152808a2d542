/* Names of single regions, and where they go when the ground changes. */
#include "plot/edit/names.h"
#include "base/memory.h"
#include "base/text.h"
#include "plot/edit/lay.h"
#include "plot/edit/rescale.h"
#include "plot/edit/resize.h"
#include "plot/edit/strip.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"
#include "survey/survey.h"

static const char *const rows[] = { "bb.b", "b...", "pppp", NULL };

static struct plot plot;

static void setup(void)
{
	plot_from_rows(&plot, rows);
}

static void teardown(void)
{
	plot_fini(&plot);
}

static void put(int x, int y, const char *text)
{
	names_add(&plot.details.names, (struct place){ x, y }, memory_string(text));
}

/* "1,0 Sage; 2,0 Thyme". */
static void check(const char *expected)
{
	const struct names *names = &plot.details.names;
	struct text words = TEXT_EMPTY;

	plot_check(&plot);
	for (size_t i = 0; i < names->count; i++)
		text_print(&words, "%s%d,%d %s", i ? "; " : "", names->items[i].at.x,
			names->items[i].at.y, names->items[i].text);
	ck_assert_str_eq(words.bytes, expected);
	text_fini(&words);
}

static void set(int x, int y, const char *text)
{
	names_set(&plot, (struct place){ x, y }, text);
}

START_TEST(the_first_name_of_a_region_is_the_one_that_is_changed)
{
	put(3, 0, "East");
	put(1, 0, "Sage");
	put(0, 1, "Thyme");
	ck_assert_uint_eq(names_of_region(&plot, (struct place){ 0, 0 }), 1);
	ck_assert_uint_eq(names_of_region(&plot, (struct place){ 0, 2 }), 3);
	set(0, 0, "Mint");
	check("3,0 East; 1,0 Mint; 0,1 Thyme");
	set(2, 2, "Walk");
	check("3,0 East; 1,0 Mint; 0,1 Thyme; 2,2 Walk");
	set(0, 1, "");
	check("3,0 East; 2,2 Walk");
}
END_TEST

START_TEST(on_open_ground_a_name_is_of_its_cell_alone)
{
	put(2, 0, "Lost");
	ck_assert_uint_eq(names_of_region(&plot, (struct place){ 1, 1 }), 1);
	ck_assert_uint_eq(names_of_region(&plot, (struct place){ 2, 0 }), 0);
	set(2, 0, "");
	check("");
}
END_TEST

START_TEST(a_name_grows_and_is_cropped_with_its_ground)
{
	put(0, 1, "Sage");
	put(3, 0, "East");
	resize_plot(&plot, &(struct margins){ 2, 1, 0, 0 });
	check("2,2 Sage; 5,1 East");
	resize_plot(&plot, &(struct margins){ -3, 0, -1, 0 }); /* of the first bed 1,0 is left */
	check("0,1 Sage");
}
END_TEST

START_TEST(a_name_goes_with_a_strip_and_stays_in_its_region)
{
	const struct strip put_in = { .cell = 0, .count = 2 },
		out = { .is_out = true, .cell = 0, .count = 3 };

	put(1, 0, "Sage");
	put(0, 2, "Walk");
	put(3, 0, "East");
	strip_do(&plot, &put_in);
	check("3,0 Sage; 0,2 Walk; 5,0 East");
	strip_do(&plot, &out);
	check("0,0 Sage; 0,2 Walk; 2,0 East");
	strip_do(&plot, &(struct strip){ .is_out = true, .cell = 2, .count = 1 });
	check("0,0 Sage; 0,2 Walk");
}
END_TEST

START_TEST(a_name_stays_in_its_region_where_cells_are_changed)
{
	struct rescale finer = rescale_of(&plot, NM_PER_FOOT / 2), coarser;

	put(1, 0, "Sage");
	put(3, 0, "East");
	rescale_plot(&plot, &finer);
	check("3,1 Sage; 7,1 East");
	coarser = rescale_of(&plot, NM_PER_FOOT);
	rescale_plot(&plot, &coarser);
	check("1,0 Sage; 3,0 East");
}
END_TEST

START_TEST(a_name_stays_where_the_letter_changes_and_has_no_image)
{
	plot_set(&plot, 0, HEAD_MIRROR, "left-right");
	put(0, 1, "Sage");
	lay_rectangle(&plot, (struct rectangle){ 0, 1, 0, 1 }, 'p');
	check("0,1 Sage");
	ck_assert_uint_eq(names_of_region(&plot, (struct place){ 0, 2 }), 0);
	lay_fold(&plot, 0, 0);
	check("0,1 Sage");
}
END_TEST

START_TEST(a_survey_knows_the_first_name_of_each_region)
{
	struct arena arena = ARENA_EMPTY;
	struct survey survey;

	put(2, 0, "Lost");
	put(3, 2, "Walk");
	put(0, 1, "Sage");
	put(0, 0, "Thyme");
	survey_plot(&survey, &arena, &plot);
	ck_assert_int_eq(survey.name_count, 2);
	ck_assert_str_eq(survey_own_name(&survey, survey_region_at(&survey, 1, 0)), "Sage");
	ck_assert_str_eq(survey_own_name(&survey, survey_region_at(&survey, 0, 2)), "Walk");
	ck_assert_ptr_null(survey_own_name(&survey, survey_region_at(&survey, 3, 0)));
	arena_clear(&arena);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("names");
	TCase *names = suite_case(suite, "names");

	tcase_add_checked_fixture(names, setup, teardown);
	tcase_add_test(names, the_first_name_of_a_region_is_the_one_that_is_changed);
	tcase_add_test(names, on_open_ground_a_name_is_of_its_cell_alone);
	tcase_add_test(names, a_name_grows_and_is_cropped_with_its_ground);
	tcase_add_test(names, a_name_goes_with_a_strip_and_stays_in_its_region);
	tcase_add_test(names, a_name_stays_in_its_region_where_cells_are_changed);
	tcase_add_test(names, a_name_stays_where_the_letter_changes_and_has_no_image);
	tcase_add_test(names, a_survey_knows_the_first_name_of_each_region);
	return suite;
}
