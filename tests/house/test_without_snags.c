/* What is given to people to begin with has no snags: the samples, but for the one that shows them,
 * one with lines in the ground and one row of another's mirror; and a new plot with a bed, as both
 * are offered. */
#include "editor/acts/opening.h"
#include "plot/edit/lay.h"
#include "report/words/snag_words.h"
#include "support/desk.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/sample_gardens.h"
#include "support/scratch.h"

#include <glob.h>
#include <stdio.h>
#include <string.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* ---- Samples --------------------------------------------------------------------------------- */

static void check_none(const char *path)
{
	garden_file(&garden, path);
	garden_count(&garden);
	if (garden.takeoff.snags.count > 0) {
		const struct snag *snag = &garden.takeoff.snags.list[0];

		ck_abort_msg("%s: %s at %d,%d: %s", path, snag_word(snag->code), snag->cell.x,
			snag->cell.y, garden_sentence(&garden, snag));
	}
	ck_assert(garden.takeoff.complete);
	garden_fini(&garden);
}

static bool ends_in(const char *text, const char *end)
{
	return strlen(text) > strlen(end) && strcmp(text + strlen(text) - strlen(end), end) == 0;
}

START_TEST(tests_of_the_samples_leave_none_out)
{
	glob_t found;
	char path[80];

	ck_assert_int_eq(glob("plots/*.plot", 0, NULL, &found), 0);
	ck_assert_uint_eq(found.gl_pathc, SAMPLE_GARDENS);
	for (size_t i = 0; i < found.gl_pathc; i++) {
		snprintf(path, sizeof path, "plots/%s.plot", sample_gardens[i]);
		ck_assert_str_eq(path, found.gl_pathv[i]);
	}
	globfree(&found);
}
END_TEST

START_TEST(no_sample_has_a_snag_but_those_that_are_to_show_them)
{
	glob_t found;
	int checked = 0;

	ck_assert_int_eq(glob("plots/*.plot", 0, NULL, &found), 0);
	for (size_t i = 0; i < found.gl_pathc; i++) {
		const char *path = found.gl_pathv[i];

		if (ends_in(path, "/court.plot") || ends_in(path, "/snags.plot") ||
			ends_in(path, "/well-yard.plot"))
			continue;
		check_none(path);
		checked++;
	}
	globfree(&found);
	ck_assert_int_ge(checked, 4);
}
END_TEST

START_TEST(the_first_sample_has_one_row_that_breaks_its_mirror_and_no_other_snag)
{
	const struct snag_list *snags = &garden.takeoff.snags;

	garden_file(&garden, "plots/court.plot");
	garden_count(&garden);
	ck_assert_uint_gt(snags->count, 0);
	for (size_t i = 0; i < snags->count; i++) {
		ck_assert_str_eq(snag_word(snags->list[i].code), "mirror-broken");
		ck_assert_int_eq(snags->list[i].cell.y, snags->list[0].cell.y);
	}
}
END_TEST

START_TEST(the_sample_of_lines_has_snags_of_what_is_dug_near_them_and_no_others)
{
	const struct snag_list *snags = &garden.takeoff.snags;
	int near = 0, kept = 0;

	garden_file(&garden, "plots/well-yard.plot");
	garden_count(&garden);
	for (size_t i = 0; i < snags->count; i++) {
		near += snags->list[i].code == SNAG_SERVICE_NEAR;
		kept += snags->list[i].code == SNAG_KEEP_DUG;
	}
	ck_assert_int_gt(near, 0);
	ck_assert_int_gt(kept, 0);
	ck_assert_uint_eq(snags->count, (size_t)(near + kept));
}
END_TEST

/* Those that a plan, its heights and its fences can be drawn to show. */
START_TEST(the_sample_of_snags_shows_many_kinds)
{
	const struct snag_list *snags = &garden.takeoff.snags;
	int kinds = 0;

	garden_file(&garden, "plots/snags.plot");
	garden_count(&garden);
	for (size_t i = 0; i < snags->count; i = snag_next_code(snags, i))
		kinds++;
	ck_assert_int_ge(kinds, 14);
}
END_TEST

/* ---- A new plot ------------------------------------------------------------------------------ */

static const struct {
	const char *answers[2];
	int columns, rows; /* of the bed; 0: none */
} begun[] = {
	{ { "Units: imperial", NULL }, 0, 0 }, { { "Units: metric", NULL }, 0, 0 },
	{ { "Units: imperial", NULL }, 4, 8 }, { { "Units: metric", NULL }, 4, 8 },
	{ { "Units: imperial", NULL }, 12, 4 }, { { "Units: metric", NULL }, 12, 4 },
};
enum { BEGUN = sizeof begun / sizeof *begun };

START_TEST(a_new_plot_and_a_bed_as_they_are_offered_have_none)
{
	struct text message = TEXT_EMPTY;
	char *folder = scratch_new(), path[4200];
	int columns = begun[_i].columns, rows = begun[_i].rows;
	struct desk *b;

	snprintf(path, sizeof path, "%s/new.plot", folder);
	b = desk_open(path);
	b->folder = folder;
	ck_assert_msg(opening_read(&b->editor, &message), "%s", message.bytes);
	desk_answer(b, begun[_i].answers);
	opening_ask(&b->editor);
	if (columns > 0)
		lay_rectangle(editor_edit(&b->editor),
			(struct rectangle){ 6, 6, 5 + columns, 5 + rows }, 'b');
	editor_stroke(&b->editor);
	desk_refresh(b);
	ck_assert_uint_eq(b->editor.takeoff.snags.count, 0);
	ck_assert_int_eq(b->editor.takeoff.walls.count, columns > 0);
	text_fini(&message);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("without snags");
	TCase *samples = suite_case(suite, "samples"), *new = suite_case(suite, "new");

	tcase_add_checked_fixture(samples, NULL, teardown);
	tcase_add_test(samples, tests_of_the_samples_leave_none_out);
	tcase_add_test(samples, no_sample_has_a_snag_but_those_that_are_to_show_them);
	tcase_add_test(samples,
		the_first_sample_has_one_row_that_breaks_its_mirror_and_no_other_snag);
	tcase_add_test(samples,
		the_sample_of_lines_has_snags_of_what_is_dug_near_them_and_no_others);
	tcase_add_test(samples, the_sample_of_snags_shows_many_kinds);
	tcase_add_loop_test(new, a_new_plot_and_a_bed_as_they_are_offered_have_none, 0, BEGUN);
	return suite;
}
