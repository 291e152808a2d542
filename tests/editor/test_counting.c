/* Figures that are given up for the next key: what is drawn and said meanwhile, and that they are
 * the right ones when they are there. */

#include "editor/here.h"
#include "editor/marks.h"
#include "support/desk.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/stopper.h"

#include <stdio.h>
#include <unistd.h>

#define ROWS (const char *[])

static struct desk *garden(void)
{
	return desk_new(ROWS { "bb.bb", "..p..", "lll.S", NULL });
}

/* Presses keys, and gives up the counting after each at its first ask. */
static void press_counting(struct desk *b, const char *keys)
{
	struct stopper stopper;

	for (; *keys; keys++) {
		acts_press(&b->editor, *keys);
		editor_draw(&b->editor);
		stopper_begin(&stopper, 1);
		editor_refresh(&b->editor);
		stopper_end();
	}
}

static const char *here_said(const struct desk *b, char *said, size_t size)
{
	struct text out = TEXT_EMPTY;

	here_words(&b->editor, &out);
	snprintf(said, size, "%s", out.bytes);
	text_fini(&out);
	return said;
}

static void check_here(const struct desk *b, const char *words)
{
	char said[500];

	ck_assert_str_eq(here_said(b, said, sizeof said), words);
}

static enum mark mark_here(const struct desk *b)
{
	struct mirror mirror = mirror_of(b->editor.plot);

	return mark_at(&b->editor, &mirror, 3, 0);
}

START_TEST(while_it_counts_nothing_is_shown_of_the_figures_before)
{
	struct desk *b = garden();

	ck_assert_int_eq(mark_here(b), MARK_SNAG);
	press_counting(b, "p ");
	ck_assert(!editor_is_counted(&b->editor));
	ck_assert_int_eq(mark_here(b), MARK_NONE);
	check_here(b, "0 in across, 0 in down\np p\ncounting ...\n");
	b->editor.cursor = (struct place){ 2, 0 };
	check_here(b, "2 ft across, 0 in down\n. open ground\n");
	desk_refresh(b);
	ck_assert_int_eq(mark_here(b), MARK_SNAG);
	b->editor.cursor = (struct place){ 0, 0 };
	check_here(b, "0 in across, 0 in down\nP1 p p\n1 ft x 1 ft, "
		"1.0\302\240sq\302\240ft\n"
		"Snag: Less than 2 ft of clear width: no barrow gets through. "
		"Cure: change the plan.\n");
	desk_free(b);
}
END_TEST

START_TEST(stars_compare_with_the_last_figures_that_were_there)
{
	struct desk *b = garden();

	press_counting(b, "p ");
	b->editor.cursor = (struct place){ 4, 2 };
	press_counting(b, "l ");
	desk_refresh(b);
	ck_assert(desk_line(b, "Areas", "", "p p")->is_changed);
	ck_assert(desk_line(b, "Areas", "", "S S")->is_changed);
	ck_assert(!desk_line(b, "Areas", "", ". Open ground")->is_changed);
	desk_free(b);
}
END_TEST

START_TEST(what_was_taken_back_before_it_was_counted_has_no_star)
{
	struct desk *b = garden();
	struct stopper stopper;

	press_counting(b, "p ");
	acts_press(&b->editor, PRESS_BACKSPACE);
	stopper_begin(&stopper, 5);
	ck_assert(!editor_refresh(&b->editor));
	stopper_end();
	desk_refresh(b);
	ck_assert(!desk_line(b, "Areas", "", "p p")->is_changed);
	ck_assert(!desk_line(b, "Areas", "", "b b")->is_changed);
	desk_free(b);
}
END_TEST

START_TEST(faults_are_said_right_by_the_act_that_makes_them)
{
	struct desk *b = garden();

	press_counting(b, "|");
	desk_says_whole(b, "Mirror left-right: 2 cells differ from their images. Press & to copy "
		"this side over.");
	press_counting(b, "'");
	desk_says_whole(b, "2 faults. Here is l l; its image at 4 ft across, 2 ft down is S S.");
	desk_free(b);
}
END_TEST

START_TEST(a_takeoff_is_written_only_with_figures_that_are_counted)
{
	struct desk *b = garden();
	char path[4200], answer[4300];

	snprintf(path, sizeof path, "%s/out.txt", b->folder);
	snprintf(answer, sizeof answer, "File: %s", path);
	press_counting(b, "p ");
	b->gives_up = true;
	desk_answer(b, ROWS { "Write the takeoff: what to buy and do", "All of it",
		answer, "", NULL });
	press_counting(b, ">");
	ck_assert_str_eq(b->fault, "Given up: nothing is written.");
	ck_assert_int_ne(access(path, F_OK), 0);
	b->gives_up = false;
	desk_answer(b, ROWS { "Write the takeoff: what to buy and do", "All of it",
		answer, NULL });
	press_counting(b, ">");
	desk_says_whole(b, "Takeoff written to FOLDER/out.txt. It is incomplete: see the snags.");
	ck_assert(editor_is_counted(&b->editor));
	ck_assert_int_eq(access(path, F_OK), 0);
	desk_free(b);
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

enum { SESSIONS = 40, KEYS = 60 };

/* All figures of the panel and of each cell, as they would be for somebody who opens the plot. */
static void check_as_if_opened(struct desk *b, int seed)
{
	struct plot copy = { details_copy(&b->editor.plot->details),
		ground_copy(&b->editor.plot->ground) };
	struct desk *other = desk_new(ROWS { ".", NULL });

	editor_take(&other->editor, &copy, true);
	b->editor.page = other->editor.page = pages_count() - 1; /* made only where it is shown */
	desk_refresh(other);
	desk_refresh(b);
	ck_assert_int_eq(b->editor.faults, other->editor.faults);
	for (int i = 0; i < pages_count(); i++) {
		const struct page *page = &b->editor.pages.pages[i];
		const struct page *right = &other->editor.pages.pages[i];

		ck_assert_msg(page->count == right->count, "seed %d, %s", seed, page_name(i));
		for (size_t j = 0; j < page->count; j++) {
			ck_assert_str_eq(page->lines[j].label, right->lines[j].label);
			ck_assert_str_eq(page->lines[j].value, right->lines[j].value);
		}
	}
	for (int x = 0; x < b->editor.plot->ground.columns; x++) {
		char said[500], right[500];

		b->editor.cursor = other->editor.cursor = (struct place){ x, 1 };
		ck_assert_str_eq(here_said(b, said, sizeof said),
			here_said(other, right, sizeof right));
	}
	desk_free(other);
}

START_TEST(however_often_it_was_given_up_the_figures_are_right_at_last)
{
	static const int keys[] = { PRESS_LEFT, PRESS_RIGHT, PRESS_UP, PRESS_DOWN, ' ', ' ', 'b',
		'p', 'l', 'S', '.', '=', '*', '|', '-', '&', PRESS_BACKSPACE, '+', PRESS_TAB,
		PRESS_DELETE, '\'' };

	for (int seed = 0; seed < runner_count(SESSIONS, 10 * SESSIONS); seed++) {
		struct random random = { (uint64_t)seed };
		struct desk *b = garden();

		for (int i = 0; i < KEYS; i++) {
			struct stopper stopper;
			bool is_done;

			acts_press(&b->editor, keys[random_below(&random,
				sizeof keys / sizeof *keys)]);
			stopper_begin(&stopper, 1 + random_below(&random, 1500));
			is_done = editor_refresh(&b->editor);
			ck_assert_int_eq(editor_is_counted(&b->editor), is_done);
			if (is_done && i % 3)
				editor_refresh_pages(&b->editor);
			stopper_end();
		}
		check_as_if_opened(b, seed);
		desk_free(b);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("counting");
	TCase *all = suite_case(suite, "counting");

	tcase_add_test(all, while_it_counts_nothing_is_shown_of_the_figures_before);
	tcase_add_test(all, stars_compare_with_the_last_figures_that_were_there);
	tcase_add_test(all, what_was_taken_back_before_it_was_counted_has_no_star);
	tcase_add_test(all, faults_are_said_right_by_the_act_that_makes_them);
	tcase_add_test(all, a_takeoff_is_written_only_with_figures_that_are_counted);
	tcase_add_test(all, however_often_it_was_given_up_the_figures_are_right_at_last);
	return suite;
}
