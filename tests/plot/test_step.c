/* The record of one edit. */
#include "plot/history/step.h"
#include "support/details.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <string.h>

static const char *const court[] = { "bb..", "b..p", "....", NULL };

static struct plot one, other;

static void plots_start(void)
{
	plot_from_rows(&one, court);
	plot_from_rows(&other, court);
}

static void plots_end(void)
{
	plot_fini(&one);
	plot_fini(&other);
}

START_TEST(equal_plots_have_no_step_between_them)
{
	ck_assert_ptr_null(step_between(&one, &other));
}
END_TEST

START_TEST(spans_hold_what_changed_and_nothing_else)
{
	static const struct changed expected[] = { { 1, 0, 2 }, { 1, 1, 2 } };
	struct step *step;

	memcpy(other.ground.cells, "b.b.bppp....", 12);
	step = step_between(&one, &other);
	ck_assert_uint_eq(step->changed_count, 2);
	for (int i = 0; i < 2; i++) {
		ck_assert_int_eq(step->changed[i].x, expected[i].x);
		ck_assert_int_eq(step->changed[i].y, expected[i].y);
		ck_assert_int_eq(step->changed[i].length, expected[i].length);
	}
	ck_assert_mem_eq(step->letters, "b." ".b" ".." "pp", 8);
	ck_assert_ptr_null(step->details);
	ck_assert_ptr_null(step->grounds);
	ck_assert_int_eq(step_place(step).x, 1);
	ck_assert_int_eq(step_place(step).y, 0);
	step_put(step, &one, STEP_AFTER);
	ck_assert(plot_equal(&one, &other));
	step_put(step, &other, STEP_BEFORE);
	ck_assert_mem_eq(other.ground.cells, "bb..b..p....", 12);
	step_free(step);
}
END_TEST

START_TEST(a_row_that_changed_to_its_end_ends_its_span)
{
	struct step *step;

	memcpy(other.ground.cells, "bbpp" "pppb" "pppp", 12);
	step = step_between(&one, &other);
	ck_assert_uint_eq(step->changed_count, 3);
	ck_assert_int_eq(step->changed[0].length, 2);
	ck_assert_int_eq(step->changed[1].length, 4);
	ck_assert_int_eq(step->changed[2].x, 0);
	ck_assert_int_eq(step->changed[2].y, 2);
	step_free(step);
}
END_TEST

START_TEST(details_are_kept_only_where_they_changed)
{
	struct step *step;

	plot_set(&other, 0, HEAD_NORTH, "90");
	step = step_between(&one, &other);
	ck_assert_uint_eq(step->changed_count, 0);
	ck_assert(details_equal(&step->details[STEP_BEFORE], &one.details));
	ck_assert(details_equal(&step->details[STEP_AFTER], &other.details));
	ck_assert_ptr_null(step->grounds);
	ck_assert_int_eq(step_place(step).x, -1);
	ck_assert_int_eq(step_place(step).y, -1);
	step_free(step);
}
END_TEST

START_TEST(ground_of_another_size_is_kept_whole)
{
	struct step *step;

	ground_fini(&other.ground);
	ground_init(&other.ground, 3, 4); /* as many cells */
	step = step_between(&one, &other);
	ck_assert_int_eq(step->grounds[STEP_BEFORE].columns, 4);
	ck_assert_int_eq(step->grounds[STEP_AFTER].rows, 4);
	ck_assert_ptr_null(step->details);
	ck_assert_int_eq(step_place(step).x, -1);
	step_put(step, &one, STEP_AFTER);
	ck_assert(plot_equal(&one, &other));
	step_free(step);
}
END_TEST

/* More of anything takes more bytes; how many in all is held against the heap by the history's
 * tests. */
START_TEST(all_that_a_step_keeps_is_counted)
{
	struct step *cell, *cells, *details, *noted, *mixed;
	struct random random = { 1 };

	other.ground.cells[0] = 'p';
	cell = step_between(&one, &other);
	memset(other.ground.cells, 'p', 12);
	cells = step_between(&one, &other);
	plot_set(&other, 0, HEAD_NORTH, "90");
	details = step_between(&one, &other);
	notes_add(&other.details.head.notes, text_at_random(&random, 500, 500));
	noted = step_between(&one, &other);
	plot_set(&other, 'b', BED_MIX, "topsoil 1");
	mixed = step_between(&one, &other);
	ck_assert_uint_ge(cell->bytes, sizeof *cell + sizeof(struct changed) + 2);
	ck_assert_uint_gt(cells->bytes, cell->bytes);
	ck_assert_uint_ge(details->bytes, cells->bytes + 2 * sizeof(struct details));
	ck_assert_uint_ge(noted->bytes, details->bytes + 501);
	ck_assert_uint_ge(mixed->bytes, noted->bytes + sizeof(struct mix));
	step_free(cell);
	step_free(cells);
	step_free(details);
	step_free(noted);
	step_free(mixed);
}
END_TEST

START_TEST(a_step_leads_from_any_plot_to_any_other_and_back)
{
	for (uint64_t seed = 0; seed < 150; seed++) {
		struct random random = { seed };
		struct plot from, to, at;

		whole_plot_at_random(&from, &random, 10);
		whole_plot_at_random(&to, &random, 10);
		struct step *step = step_between(&from, &to);
		ck_assert_ptr_nonnull(step);
		at = (struct plot){ details_copy(&from.details), ground_copy(&from.ground) };
		step_put(step, &at, STEP_AFTER);
		ck_assert(plot_equal(&at, &to));
		step_put(step, &at, STEP_BEFORE);
		ck_assert(plot_equal(&at, &from));
		step_free(step);
		plot_fini(&from);
		plot_fini(&to);
		plot_fini(&at);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("step");
	TCase *finding = suite_case(suite, "finding");

	tcase_add_checked_fixture(finding, plots_start, plots_end);
	tcase_add_test(finding, equal_plots_have_no_step_between_them);
	tcase_add_test(finding, spans_hold_what_changed_and_nothing_else);
	tcase_add_test(finding, a_row_that_changed_to_its_end_ends_its_span);
	tcase_add_test(finding, details_are_kept_only_where_they_changed);
	tcase_add_test(finding, ground_of_another_size_is_kept_whole);
	tcase_add_test(finding, all_that_a_step_keeps_is_counted);
	tcase_add_test(finding, a_step_leads_from_any_plot_to_any_other_and_back);
	return suite;
}
