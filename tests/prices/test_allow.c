/* Which allowances hold: the plot's own, else the price book's, else the defaults. */
#include "prices/allow.h"

#include "support/book.h"
#include "support/plots.h"
#include "support/runner.h"

static struct plot plot;
static struct book book;
static struct arena arena;

static void setup(void)
{
	plot_from_rows(&plot, (const char *const[]){ "b", NULL });
	book_of(&book, "'allow': {'kerf': '3 mm', 'breakage': '9 %', "
		"'density-soil': '1000 kg/m3'}");
}

static void teardown(void)
{
	plot_fini(&plot);
	book_fini(&book);
	arena_clear(&arena);
}

START_TEST(what_the_plot_sets_goes_before_the_book)
{
	const struct block *allow;

	plot_set(&plot, 0, ALLOW_KERF, "4 mm");
	allow = allow_in_force(&arena, &plot, &book);
	ck_assert(block_value(allow, ALLOW_KERF)->set);
	ck_assert_int_eq(block_length(allow, ALLOW_KERF), 4 * NM_PER_MM);
	/* Also where it sets what is the default. */
	plot_set(&plot, 0, ALLOW_BREAKAGE, "5 %");
	allow = allow_in_force(&arena, &plot, &book);
	ck_assert(block_value(allow, ALLOW_BREAKAGE)->set);
	ck_assert_int_eq(block_number(allow, ALLOW_BREAKAGE), 5 * MILLION);
}
END_TEST

START_TEST(what_the_plot_leaves_open_is_the_books)
{
	const struct block *allow = allow_in_force(&arena, &plot, &book);

	ck_assert_int_eq(block_length(allow, ALLOW_KERF), 3 * NM_PER_MM);
	ck_assert_int_eq(block_number(allow, ALLOW_BREAKAGE), 9 * MILLION);
	ck_assert_double_eq_tol(amount_si(&block_effective(allow, ALLOW_DENSITY_SOIL)->as.amount),
		1000, 1e-9);
}
END_TEST

START_TEST(what_neither_sets_is_not_set_and_has_its_default)
{
	const struct block *allow = allow_in_force(&arena, &plot, &book);
	const struct block none = { .kind = BLOCK_ALLOW };

	ck_assert(!block_value(allow, ALLOW_SETTLEMENT)->set);
	ck_assert_int_eq(block_number(allow, ALLOW_SETTLEMENT),
		block_number(&none, ALLOW_SETTLEMENT));
}
END_TEST

START_TEST(without_a_book_the_plots_own_hold_alone)
{
	const struct block *allow;

	plot_set(&plot, 0, ALLOW_KERF, "4 mm");
	allow = allow_in_force(&arena, &plot, NULL);
	for (enum attribute a = block_first(BLOCK_ALLOW); a <= block_last(BLOCK_ALLOW); a++)
		ck_assert_int_eq(block_value(allow, a)->set, a == ALLOW_KERF);
	ck_assert_int_eq(block_length(allow, ALLOW_KERF), 4 * NM_PER_MM);
}
END_TEST

START_TEST(plot_and_book_stay_as_they_are)
{
	plot_set(&plot, 0, ALLOW_KERF, "4 mm");
	allow_in_force(&arena, &plot, &book);
	for (enum attribute a = block_first(BLOCK_ALLOW); a <= block_last(BLOCK_ALLOW); a++)
		ck_assert_int_eq(block_value(&plot.details.allow, a)->set, a == ALLOW_KERF);
	ck_assert_int_eq(block_length(&book.allow, ALLOW_KERF), 3 * NM_PER_MM);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("allow");
	TCase *force = suite_case(suite, "in force");

	tcase_add_checked_fixture(force, setup, teardown);
	tcase_add_test(force, what_the_plot_sets_goes_before_the_book);
	tcase_add_test(force, what_the_plot_leaves_open_is_the_books);
	tcase_add_test(force, what_neither_sets_is_not_set_and_has_its_default);
	tcase_add_test(force, without_a_book_the_plots_own_hold_alone);
	tcase_add_test(force, plot_and_book_stay_as_they_are);
	return suite;
}
