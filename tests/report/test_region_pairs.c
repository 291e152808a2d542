/* Which region of a plan is which of the plan as it was. */

#include "report/compare/region_pairs.h"
#include "support/plots.h"
#include "support/runner.h"

#include <string.h>

static struct plot plots[2];
static struct arena arena;
static struct survey old, new;
static struct region_pairs pairs;

static void teardown(void)
{
	arena_clear(&arena);
	plot_fini(&plots[0]);
	plot_fini(&plots[1]);
}

#define ROWS(...) ((const char *const[]){ __VA_ARGS__, NULL })

static void plan(const char *const *before, const char *const *now)
{
	plot_from_rows(&plots[0], before);
	plot_from_rows(&plots[1], now);
}

static void find(void)
{
	survey_plot(&old, &arena, &plots[0]);
	survey_plot(&new, &arena, &plots[1]);
	region_pairs_find(&pairs, &arena, &old, &new);
}

static int region_called(const struct survey *survey, const char *wanted)
{
	for (int i = 0; i < survey->region_count; i++) {
		char name[REGION_NAME_MOST];

		survey_region_name(&survey->regions[i], name);
		if (strcmp(name, wanted) == 0)
			return i;
	}
	return NO_REGION;
}

/* "" for none. */
static void check(const char *before, const char *now, enum region_change change)
{
	int one = region_called(&old, before), other = region_called(&new, now);

	if (one != NO_REGION)
		ck_assert_msg(pairs.new_of[one] == other, "%s goes with %d", before,
			pairs.new_of[one]);
	if (other == NO_REGION)
		return;
	ck_assert_msg(pairs.old_of[other] == one, "%s goes with %d", now, pairs.old_of[other]);
	ck_assert_int_eq(region_change(&pairs, other), change);
}

START_TEST(a_bed_that_is_gone_leaves_the_others_their_own_with_other_numbers)
{
	plan(ROWS("bb.bb.bb", "bb.bb.bb"), ROWS("...bb.bb", "...bb.bb"));
	find();
	check("B1", "", REGION_WENT);
	check("B2", "B1", REGION_RENUMBERED);
	check("B3", "B2", REGION_RENUMBERED);
}
END_TEST

START_TEST(a_plan_that_grew_at_its_left_and_top_is_laid_on_itself)
{
	plan(ROWS("bb.b", "bb.b", "ppp."), ROWS("......", "..bb.b", "..bb.b", "..ppp."));
	find();
	check("B1", "B1", REGION_SAME);
	check("B2", "B2", REGION_SAME);
	check("P1", "P1", REGION_SAME);
}
END_TEST

START_TEST(a_plan_that_grew_on_both_sides_is_laid_on_its_middle)
{
	plan(ROWS("bb.b", "ppp."), ROWS("..bb.b..", "..ppp..."));
	find();
	check("B1", "B1", REGION_SAME);
	check("P1", "P1", REGION_SAME);
}
END_TEST

START_TEST(where_several_share_ground_most_of_it_counts)
{
	plan(ROWS("bbbbbb"), ROWS("b.bbbb"));
	find();
	check("B1", "B2", REGION_CHANGED);
	check("", "B1", REGION_CAME);
}
END_TEST

START_TEST(what_is_of_one_letter_and_shape_elsewhere_was_moved)
{
	plan(ROWS("bb....", "......", "....cc"), ROWS("....cc", "......", "..bb.."));
	find();
	check("B1", "B2", REGION_CHANGED);
	check("B2", "B1", REGION_CHANGED);
}
END_TEST

START_TEST(what_has_another_letter_or_other_ground_of_one_size_is_changed)
{
	plan(ROWS("bb.bb", "b...b"), ROWS("bb.cc", ".b..c"));
	find();
	check("B1", "B1", REGION_CHANGED);
	check("B2", "B2", REGION_CHANGED);
}
END_TEST

START_TEST(its_own_name_goes_before_the_ground)
{
	plan(ROWS("bb.bb"), ROWS("bb.bb"));
	names_add(&plots[0].details.names, (struct place){ 0, 0 }, memory_string("Sage"));
	names_add(&plots[1].details.names, (struct place){ 3, 0 }, memory_string("Sage"));
	find();
	check("B1", "B2", REGION_CHANGED);
	check("B2", "B1", REGION_CHANGED);
}
END_TEST

START_TEST(with_cells_of_another_size_letters_go_together_in_their_order)
{
	plan(ROWS("bb.b"), ROWS("bb.b"));
	plot_set(&plots[1], 0, HEAD_CELL, "2 ft");
	find();
	check("B1", "B1", REGION_CHANGED);
	check("B2", "B2", REGION_CHANGED);
}
END_TEST

/* Few letters on little ground: many share as much of it. */
START_TEST(it_is_the_same_whichever_plan_is_the_old_one)
{
	for (int seed = 1; seed <= runner_count(300, 5000); seed++) {
		struct random random = { (uint64_t)seed };
		struct region_pairs back;

		plot_at_random(&plots[0], &random, 9, "bbp.");
		plot_at_random(&plots[1], &random, 9, "bbp.");
		find();
		region_pairs_find(&back, &arena, &new, &old);
		for (int i = 0; i < old.region_count; i++)
			ck_assert_msg(pairs.new_of[i] == back.old_of[i], "seed %d", seed);
		for (int i = 0; i < new.region_count; i++)
			ck_assert_msg(pairs.old_of[i] == back.new_of[i], "seed %d", seed);
		teardown();
	}
	plan(ROWS("b"), ROWS("b"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("region_pairs");
	TCase *all = suite_case(suite, "region_pairs");

	tcase_add_checked_fixture(all, NULL, teardown);
	tcase_add_test(all, a_bed_that_is_gone_leaves_the_others_their_own_with_other_numbers);
	tcase_add_test(all, a_plan_that_grew_at_its_left_and_top_is_laid_on_itself);
	tcase_add_test(all, a_plan_that_grew_on_both_sides_is_laid_on_its_middle);
	tcase_add_test(all, where_several_share_ground_most_of_it_counts);
	tcase_add_test(all, what_is_of_one_letter_and_shape_elsewhere_was_moved);
	tcase_add_test(all, what_has_another_letter_or_other_ground_of_one_size_is_changed);
	tcase_add_test(all, its_own_name_goes_before_the_ground);
	tcase_add_test(all, it_is_the_same_whichever_plan_is_the_old_one);
	tcase_add_test(all, with_cells_of_another_size_letters_go_together_in_their_order);
	return suite;
}
