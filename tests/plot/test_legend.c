/* The legend and the ground under its letters. */
#include "plot/edit/legend.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <string.h>

static const char *const rows[] = { "ab.", "bbS", NULL };

START_TEST(a_free_letter_is_the_first_of_its_class_that_nobody_has)
{
	struct plot plot;

	plot_from_rows(&plot, rows);
	ck_assert_int_eq(legend_free_letter(&plot.details, CLASS_PATH), 'c');
	ck_assert_int_eq(legend_free_letter(&plot.details, CLASS_FIXTURE), 'A');
	plot_add_lines(&plot, "plant c \"Sedge\"\nplant d \"Rose\"\n");
	ck_assert_int_eq(legend_free_letter(&plot.details, CLASS_BED), 'e');
	ck_assert(!legend_is_free(&plot.details, 'd') && !legend_is_free(&plot.details, 'b'));
	ck_assert(legend_is_free(&plot.details, 'e') && legend_is_free(&plot.details, 'A'));
	for (const char *c = "ABCDEFGHIJKLMNOPQRTUVWXY"; *c; c++)
		details_add_entry(&plot.details, CLASS_FIXTURE, *c, strdup("Stone"));
	ck_assert_int_eq(legend_free_letter(&plot.details, CLASS_FIXTURE), 'Z');
	details_add_entry(&plot.details, CLASS_FIXTURE, 'Z', strdup("Stone"));
	ck_assert_int_eq(legend_free_letter(&plot.details, CLASS_FIXTURE), '\0');
	plot_fini(&plot);
}
END_TEST

START_TEST(a_new_letter_goes_on_the_ground_too)
{
	struct plot plot;

	plot_from_rows(&plot, rows);
	ck_assert_int_eq(legend_cells(&plot, 'b'), 3);
	legend_reletter(&plot, 'b', 'k');
	plot_check(&plot);
	ck_assert_int_eq(strncmp(plot.ground.cells, "ak." "kkS", 6), 0);
	ck_assert_int_eq(legend_index(&plot.details, 'k'), 1);
	ck_assert_int_eq(legend_index(&plot.details, 'b'), -1);
	plot_fini(&plot);
}
END_TEST

START_TEST(a_removed_entry_leaves_its_cells_to_another_or_open)
{
	struct plot plot;

	plot_from_rows(&plot, rows);
	legend_remove(&plot, 'a', 'b');
	plot_check(&plot);
	ck_assert_int_eq(strncmp(plot.ground.cells, "bb." "bbS", 6), 0);
	legend_remove(&plot, 'b', '.');
	plot_check(&plot);
	ck_assert_int_eq(strncmp(plot.ground.cells, "..." "..S", 6), 0);
	ck_assert_uint_eq(plot.details.legend_count, 1);
	plot_fini(&plot);
}
END_TEST

#define SEDGE "plant s \"Sedge\"\n"
#define ROSE "plant r \"Rose\"\n"

/* Of all beds of the letter; those of one bed stay with it. */
START_TEST(drifts_go_with_the_letter_of_their_beds)
{
	struct plot plot;

	plot_from_rows(&plot, rows);
	plot_add_lines(&plot, SEDGE "  drift b front\n  drift b back\n  drift a whole\n"
		"  drift 0,1 middle\n" ROSE "  drift a back\n  drift b whole\n");
	legend_reletter(&plot, 'b', 'k');
	plot_check_later(&plot, SEDGE "  drift k front\n  drift k back\n  drift a whole\n"
		"  drift 0,1 middle\n" ROSE "  drift a back\n  drift k whole\n");
	legend_remove(&plot, 'k', 'a');
	plot_check_later(&plot, SEDGE "  drift a whole\n  drift 0,1 middle\n" ROSE
		"  drift a back\n");
	plot_fini(&plot);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("legend");
	TCase *letters = suite_case(suite, "letters");

	tcase_add_test(letters, a_free_letter_is_the_first_of_its_class_that_nobody_has);
	tcase_add_test(letters, a_new_letter_goes_on_the_ground_too);
	tcase_add_test(letters, a_removed_entry_leaves_its_cells_to_another_or_open);
	tcase_add_test(letters, drifts_go_with_the_letter_of_their_beds);
	return suite;
}
