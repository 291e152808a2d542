/* How a session starts: reading, rescued work, a new plot. */

#include "support/desk.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/scratch.h"

#include "editor/acts/opening.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#define ROWS (const char *[])

/* The court, copied to a folder of its own. */
static struct desk *court(void)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	char *folder = scratch_new(), path[4200];
	struct desk *b;

	snprintf(path, sizeof path, "%s/court.plot", folder);
	ck_assert(file_read("plots/court.plot", 1 << 20, &bytes, &error));
	ck_assert(file_write(path, bytes.bytes, bytes.length, &error));
	text_fini(&bytes);
	b = desk_open(path);
	b->folder = folder;
	return b;
}

static struct desk *nothing(void)
{
	char *folder = scratch_new(), path[4200];
	struct desk *b;

	snprintf(path, sizeof path, "%s/new.plot", folder);
	b = desk_open(path);
	b->folder = folder;
	return b;
}

static void read_it(struct desk *b)
{
	struct text message = TEXT_EMPTY;

	ck_assert_msg(opening_read(&b->editor, &message), "%s", message.bytes);
	text_fini(&message);
}

/* Leaves a rescue file that has a lawn where the court has a bed. */
static void rescue_leave(struct desk *b)
{
	struct file_error error;

	read_it(b);
	lay_rectangle(editor_edit(&b->editor), rectangle_between(1, 1, 1, 1), 'l');
	ck_assert(store_rescue(&b->editor.store, b->editor.plot, &error));
}

static char cell(const struct desk *b, int x, int y)
{
	return ground_cell(&b->editor.plot->ground, x, y);
}

START_TEST(a_plot_is_opened_without_a_question)
{
	struct desk *b = court();

	read_it(b);
	opening_ask(&b->editor);
	ck_assert_int_eq(b->editor.plot->ground.columns, 14);
	ck_assert_int_eq(b->editor.hand, 'b');
	ck_assert(editor_is_saved(&b->editor) && b->editor.has_begun && !b->editor.is_over);
	desk_free(b);
}
END_TEST

START_TEST(a_plot_with_an_error_is_not_opened)
{
	struct desk *b = court();
	struct text message = TEXT_EMPTY;
	struct file_error error;

	ck_assert(file_write(b->path, "parterre-plot 1\ncell 1\n", 23, &error));
	ck_assert(!opening_read(&b->editor, &message));
	ck_assert_ptr_nonnull(strstr(message.bytes, "court.plot:2:6: found 1, expected "));
	text_fini(&message);
	desk_free(b);
}
END_TEST

START_TEST(rescued_work_is_taken_up)
{
	struct desk *b = court();
	struct plot plot;
	struct timespec when;

	rescue_leave(b);
	read_it(b);
	desk_answer(b, ROWS { "Take up the rescued work", NULL });
	opening_ask(&b->editor);
	ck_assert_ptr_nonnull(strstr(b->asked, "was rescued"));
	ck_assert_int_eq(cell(b, 1, 1), 'l');
	ck_assert(!editor_is_saved(&b->editor));

	/* Until it is saved, it stays rescued. */
	plot_init(&plot);
	ck_assert(store_rescued(&b->editor.store, &plot, &when));
	plot_fini(&plot);
	desk_type(b, "$");
	ck_assert(!store_rescued(&b->editor.store, &plot, &when));
	desk_free(b);
}
END_TEST

START_TEST(rescued_work_is_set_aside_and_kept)
{
	struct desk *b = court();
	char kept[5000];

	rescue_leave(b);
	read_it(b);
	desk_answer(b, ROWS { "Set it aside", NULL });
	opening_ask(&b->editor);
	ck_assert_int_eq(cell(b, 1, 1), 'b');
	ck_assert(editor_is_saved(&b->editor) && !b->editor.is_looking);
	snprintf(kept, sizeof kept, "%s.rescued", b->path);
	ck_assert_int_eq(access(kept, R_OK), 0);
	desk_says(b, kept);
	desk_free(b);
}
END_TEST

START_TEST(the_saved_plot_can_be_looked_at_and_nothing_touches_the_rescued_work)
{
	struct desk *b = court();
	struct plot plot;
	struct timespec when;

	rescue_leave(b);
	read_it(b);
	desk_answer(b, ROWS { "Look at the saved plot", NULL });
	opening_ask(&b->editor);
	ck_assert_int_eq(cell(b, 1, 1), 'b');
	desk_type(b, " $");
	desk_says(b, "rescued work waits");
	desk_type(b, "<");
	ck_assert(b->editor.is_over);
	plot_init(&plot);
	ck_assert(store_rescued(&b->editor.store, &plot, &when));
	plot_fini(&plot);
	desk_free(b);
}
END_TEST

START_TEST(a_question_about_rescued_work_that_is_left_ends_the_session)
{
	struct desk *b = court();
	struct plot plot;
	struct timespec when;

	rescue_leave(b);
	read_it(b);
	desk_answer(b, ROWS { "", NULL });
	opening_ask(&b->editor);
	ck_assert(b->editor.is_over);
	editor_rescue(&b->editor);
	plot_init(&plot);
	ck_assert(store_rescued(&b->editor.store, &plot, &when));
	ck_assert_int_eq(ground_cell(&plot.ground, 1, 1), 'l');
	plot_fini(&plot);
	desk_free(b);
}
END_TEST

START_TEST(who_looks_on_is_not_asked_about_the_others_rescue_file)
{
	struct desk *b = court(), *other;

	rescue_leave(b);
	other = desk_open(b->path);
	read_it(other);
	opening_ask(&other->editor);
	ck_assert(other->editor.is_looking && !other->editor.is_over);
	ck_assert_int_eq(other->editor.store.holder, getpid());
	desk_free(other);
	desk_free(b);
}
END_TEST

START_TEST(a_new_plot_is_being_begun_by_one_session_only)
{
	struct desk *b = nothing(), *other = desk_open(b->path);
	struct text message = TEXT_EMPTY;

	ck_assert(!opening_read(&other->editor, &message));
	ck_assert_ptr_nonnull(strstr(message.bytes, "another session is creating"));
	text_fini(&message);
	desk_free(other);
	desk_free(b);
}
END_TEST

static void check_written(const struct desk *b, const char *words)
{
	struct text written = TEXT_EMPTY;

	plot_check(b->editor.plot);
	format_write(b->editor.plot, &written);
	ck_assert_msg(strstr(written.bytes, words) != NULL, "not \"%s\" in:\n%s", words,
		written.bytes);
	text_fini(&written);
}

/* Of four entries without a line of their own: nothing is set. */
START_TEST(a_new_plot_starts_from_the_answers_in_the_form_and_with_nothing_set)
{
	struct desk *b = nothing();

	read_it(b);
	desk_answer(b, ROWS { "Title: Herb court", NULL });
	opening_ask(&b->editor);
	check_written(b, "parterre-plot 1\ntitle \"Herb court\"\nunits imperial\ncell 1 ft\n\n"
		"bed b \"Raised bed\"\npath p \"Crushed stone\"\nlawn l \"Turf\"\n"
		"fixture S \"Sundial\"\n\nground 24 x 20\n  ........................\n");
	ck_assert(!editor_is_saved(&b->editor) && b->editor.has_begun);
	desk_type(b, "$");
	ck_assert_int_eq(access(b->path, R_OK), 0);
	desk_free(b);
}
END_TEST

START_TEST(a_metric_plot_starts_with_rounder_values_set)
{
	struct desk *b = nothing();

	read_it(b);
	desk_answer(b, ROWS { "Units: metric", NULL });
	opening_ask(&b->editor);
	check_written(b, "\ncell 300 mm\n");
	check_written(b, "\nground 24 x 20\n");
	/* The block, base and depths in common metric sizes: common practice, no published
	 * source. */
	check_written(b, "\nbed b \"Raised bed\"\n"
		"  block 400 mm x 200 mm x 150 mm\n  density 2150 kg/m3\n  embed 40 mm\n"
		"  base 100 mm\n  reach 150 mm\n  freeboard 40 mm\n  mulch 50 mm\n  prepare 200 "
		"mm\n  amend 50 mm\n");
	check_written(b, "\nallow\n  kerf 3 mm\n  fit 3 mm\n  shortest 75 mm\n"
		"  inside 200 mm\n  cartridge 9 m\n  sod 50 mm\n  seed 30 g/m2\n");
	check_written(b, "\n  base 100 mm\n  surface 40 mm\n");
	desk_free(b);
}
END_TEST

START_TEST(turning_to_other_units_leaves_what_was_typed)
{
	struct desk *b = nothing();

	read_it(b);
	desk_answer(b, ROWS { "Width, left to right: 12 m; Units: metric; Units: imperial; "
		"Units: metric", NULL });
	opening_ask(&b->editor);
	ck_assert_int_eq(b->editor.plot->ground.columns, 40);
	ck_assert_int_eq(b->editor.plot->ground.rows, 20);
	desk_free(b);
}
END_TEST

struct refusal {
	const char *typed, *fault;
};

static const struct refusal refusals[] = {
	{ "Width, left to right: 6", "Width, left to right: 6 has no unit. 6 ft?" },
	{ "Width, left to right: 10 ft 6 in", "Width, left to right: 126 in is no whole number of "
		"cells of 1 ft, but 10 ft is, and 11 ft is" },
	{ "Depth, top to bottom: 6 in", "Depth, top to bottom: 6 in is no whole number of cells of "
		"1 ft, but 1 ft is" },
	{ "Depth, top to bottom: 2049 ft", "Depth, top to bottom: 2049 cells, expected at most "
		"2048" },
	{ "Depth, top to bottom:", "Depth, top to bottom: needed here" },
	{ "Side of a cell: 11 ft", "Side of a cell: found 11, expected 1 in to 10 ft" },
	{ "Units: ells", "Units: found ells, expected imperial or metric" },
};

START_TEST(what_is_wrong_with_a_new_plot_is_said_and_asked_for_again)
{
	struct desk *b = nothing();

	read_it(b);
	desk_answer(b, (const char *[]){ refusals[_i].typed, "", NULL });
	opening_ask(&b->editor);
	ck_assert_msg(strncmp(b->fault, refusals[_i].fault, strlen(refusals[_i].fault)) == 0,
		"said \"%s\"", b->fault);
	ck_assert(b->editor.is_over);
	ck_assert_int_ne(access(b->path, F_OK), 0);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("opening");
	TCase *rescue = suite_case(suite, "rescue"), *begin = suite_case(suite, "begin");

	tcase_add_test(rescue, a_plot_is_opened_without_a_question);
	tcase_add_test(rescue, a_plot_with_an_error_is_not_opened);
	tcase_add_test(rescue, rescued_work_is_taken_up);
	tcase_add_test(rescue, rescued_work_is_set_aside_and_kept);
	tcase_add_test(rescue,
		the_saved_plot_can_be_looked_at_and_nothing_touches_the_rescued_work);
	tcase_add_test(rescue, a_question_about_rescued_work_that_is_left_ends_the_session);
	tcase_add_test(rescue, who_looks_on_is_not_asked_about_the_others_rescue_file);
	tcase_add_test(begin, a_new_plot_is_being_begun_by_one_session_only);
	tcase_add_test(begin, a_new_plot_starts_from_the_answers_in_the_form_and_with_nothing_set);
	tcase_add_test(begin, a_metric_plot_starts_with_rounder_values_set);
	tcase_add_test(begin, turning_to_other_units_leaves_what_was_typed);
	tcase_add_loop_test(begin, what_is_wrong_with_a_new_plot_is_said_and_asked_for_again, 0,
		(int)(sizeof refusals / sizeof *refusals));
	return suite;
}
