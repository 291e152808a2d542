/* What the plot being drawn is compared with: its file as it is now. */

#include "editor/saved.h"
#include "base/memory.h"
#include "support/desk.h"
#include "support/runner.h"
#include "support/stopper.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#define ROWS (const char *[])

static struct desk *desk;

static int page_of(const char *name)
{
	for (int i = 0; i < pages_count(); i++)
		if (strcmp(page_name(i), name) == 0)
			return i;
	ck_abort_msg("no page %s", name);
}

/* The page is in the panel, the plot saved with a bed of two cells. */
static void setup(void)
{
	desk = desk_new(ROWS { "bb..", "....", NULL });
	desk->editor.page = page_of("Changed");
	desk_refresh(desk);
}

static void teardown(void)
{
	desk_free(desk);
}

static const struct page *page(void)
{
	return desk_page(desk, "Changed");
}

static void check_only(const char *sentence)
{
	desk_refresh(desk);
	ck_assert_uint_eq(page()->count, 1);
	ck_assert_str_eq(page()->lines[0].label, sentence);
}

/* How much the bed's area differs by. */
static void check_area(const char *difference)
{
	desk_refresh(desk);
	ck_assert_str_eq(desk_line(desk, "Changed", "Areas: b b", "Area")->value, difference);
}

static void check_above(const char *sentence)
{
	desk_refresh(desk);
	ck_assert_uint_gt(page()->count, 1);
	ck_assert_str_eq(page()->lines[0].label, sentence);
}

static void file_put(const char *name, const char *text)
{
	char path[4500];
	FILE *file;

	snprintf(path, sizeof path, "%s/%s", desk->folder, name);
	file = fopen(path, "w");
	ck_assert_ptr_nonnull(file);
	fputs(text, file);
	ck_assert_int_eq(fclose(file), 0);
}

static void lay_one_more(void)
{
	desk->editor.cursor = (struct place){ 2, 0 };
	desk_type(desk, "b ");
}

START_TEST(what_is_in_no_file_yet_is_compared_with_nothing)
{
	check_only("It is not saved yet: there is nothing to compare with.");
	lay_one_more();
	check_only("It is not saved yet: there is nothing to compare with.");
}
END_TEST

START_TEST(strokes_since_saving_are_told_and_those_taken_back_are_not)
{
	desk_do(desk, ACT_SAVE);
	check_only("Nothing has changed since it was saved.");
	lay_one_more();
	check_area("+1.0 sq ft");
	desk_press(desk, PRESS_RIGHT);
	desk_type(desk, " ");
	check_area("+2.0 sq ft");
	ck_assert(desk_line(desk, "Changed", "Areas: b b", "Area")->is_changed);
	desk_press(desk, PRESS_BACKSPACE);
	check_area("+1.0 sq ft");
	desk_press(desk, PRESS_BACKSPACE);
	check_only("Nothing has changed since it was saved.");
}
END_TEST

/* The other pages keep what the last stroke gave stars to. */
START_TEST(saving_begins_anew)
{
	desk_do(desk, ACT_SAVE);
	lay_one_more();
	check_area("+1.0 sq ft");
	desk_do(desk, ACT_SAVE);
	check_only("Nothing has changed since it was saved.");
	ck_assert(desk_line(desk, "Areas", "", "b b")->is_changed);
	desk_press(desk, PRESS_BACKSPACE);
	check_area("-1.0 sq ft");
}
END_TEST

START_TEST(another_file_is_what_it_is_saved_as)
{
	char typed[4600];

	snprintf(typed, sizeof typed, "File: %s/other.plot", desk->folder);
	desk_do(desk, ACT_SAVE);
	lay_one_more();
	desk_answer(desk, ROWS { typed, NULL });
	desk_do(desk, ACT_SAVE_AS);
	desk_answered(desk);
	check_only("Nothing has changed since it was saved.");
	desk_press(desk, PRESS_BACKSPACE);
	check_area("-1.0 sq ft");
}
END_TEST

START_TEST(a_change_without_a_figure_is_none_of_the_figures)
{
	desk_do(desk, ACT_SAVE);
	block_set(&editor_edit(&desk->editor)->details.head, HEAD_TITLE,
		(struct value){ .set = true, .as.text = memory_string("Court") });
	editor_stroke(&desk->editor);
	check_only("No figure has changed since it was saved.");
}
END_TEST

START_TEST(a_file_that_is_gone_or_spoilt_or_another_now_is_said)
{
	const struct page *changed = page();

	desk_do(desk, ACT_SAVE);
	lay_one_more();
	check_area("+1.0 sq ft");
	file_put("garden.plot", "no plot at all\n");
	desk_type(desk, ".");
	desk_press(desk, PRESS_DELETE);
	desk_refresh(desk);
	ck_assert_uint_eq(changed->count, 1);
	ck_assert_ptr_eq(strstr(changed->lines[0].label, "The file cannot be read: "),
		changed->lines[0].label);
	ck_assert_ptr_nonnull(strstr(changed->lines[0].label, "garden.plot:1:1: found"));
	ck_assert_int_eq(unlink(desk->path), 0);
	lay_one_more();
	check_only("Somebody else has taken the file away: there is nothing to compare with.");
}
END_TEST

START_TEST(a_file_that_somebody_else_has_changed_is_compared_as_it_is_now)
{
	char line[9000];

	desk_do(desk, ACT_SAVE);
	snprintf(line, sizeof line, "sed -i 's/bb[.][.]$/bbbb/' '%s'", desk->path);
	ck_assert_int_eq(system(line), 0);
	lay_one_more();
	check_above("Compared with the file as it is now: somebody else has changed it since it "
		"was read here.");
	check_area("-1.0 sq ft");
}
END_TEST

/* ---- The price book -------------------------------------------------------------------------- */

/* Turf at a price for each square foot, in cents. */
static void book_put(const char *name, int cents)
{
	char text[600];

	snprintf(text, sizeof text, "{\"format\": \"parterre-prices\", \"version\": 1, "
		"\"currency\": \"USD\", \"suppliers\": [], \"goods\": [{\"item\": \"turf\", "
		"\"packs\": [{\"pack\": \"roll\", \"size\": \"1 sq ft\", \"price\": %d.%02d}]}]}",
		cents / 100, cents % 100);
	file_put(name, text);
}

static void name_book(const char *name)
{
	block_set(&editor_edit(&desk->editor)->details.head, HEAD_PRICES,
		(struct value){ .set = true, .as.text = memory_string(name) });
	editor_stroke(&desk->editor);
	desk_refresh(desk);
}

static void lay_turf(void)
{
	desk->editor.cursor = (struct place){ 3, 1 };
	desk_type(desk, "l ");
}

static void setup_book(void)
{
	desk = desk_new(ROWS { "llll", "ll..", NULL });
	desk->editor.page = page_of("Changed");
	book_put("one.json", 100);
	book_put("two.json", 300);
	name_book("one.json");
	ck_assert(desk->editor.has_book);
	desk_do(desk, ACT_SAVE);
}

/* A price that changes in the book meanwhile is no change of the plot. */
START_TEST(both_are_priced_by_the_book_as_it_was_read)
{
	money before, now;

	lay_turf();
	before = desk->editor.takeoff.costs.total;
	ck_assert_int_gt(before, 0);
	desk_line(desk, "Changed", "In all", "Cost");
	book_put("one.json", 9900);
	desk_press(desk, PRESS_BACKSPACE);
	check_only("Nothing has changed since it was saved.");
	lay_turf();
	now = desk->editor.takeoff.costs.total;
	ck_assert_int_eq(now, before);
	/* 1 sq ft of turf and its spare: less than ten of it. */
	ck_assert_uint_lt(strlen(desk_line(desk, "Changed", "In all", "Cost")->value),
		sizeof "+9.99");
}
END_TEST

START_TEST(another_book_makes_another_cost)
{
	struct saved_plot saved;

	name_book("two.json");
	ck_assert(saved_read(&saved, &desk->editor));
	ck_assert(saved.has_book);
	ck_assert_int_gt(saved.takeoff.costs.total, 0);
	ck_assert_int_eq(desk->editor.takeoff.costs.total, 3 * saved.takeoff.costs.total);
	ck_assert_ptr_null(saved.saved.note);
	saved_fini(&saved);
	ck_assert_int_eq(desk_line(desk, "Changed", "In all", "Cost")->value[0], '+');
}
END_TEST

START_TEST(a_book_that_cannot_be_read_any_more_is_said)
{
	char path[4500];

	snprintf(path, sizeof path, "%s/one.json", desk->folder);
	ck_assert_int_eq(unlink(path), 0);
	name_book("two.json");
	ck_assert_ptr_eq(strstr(page()->lines[0].label, "The plot as saved has no prices: "),
		page()->lines[0].label);
}
END_TEST

/* ---- When it is made ------------------------------------------------------------------------- */

START_TEST(it_is_made_only_where_it_is_shown_or_comes_next)
{
	desk_do(desk, ACT_SAVE);
	for (int i = 0; i < pages_count(); i++) {
		desk->editor.page = i;
		lay_one_more();
		desk_press(desk, PRESS_BACKSPACE);
		ck_assert_int_eq(page()->is_made, i >= page_of("Snags"));
	}
}
END_TEST

START_TEST(it_can_be_stopped_at_any_ask)
{
	struct stopper stopper;
	int64_t asks;

	desk_do(desk, ACT_SAVE);
	lay_one_more();
	pages_drop_saved(&desk->editor.pages);
	stopper_begin(&stopper, 0);
	ck_assert(editor_refresh(&desk->editor));
	asks = stopper.asks;
	ck_assert_int_gt(asks, 100);
	for (int64_t at = 1; at <= asks; at++) {
		pages_drop_saved(&desk->editor.pages);
		stopper_begin(&stopper, at);
		ck_assert(!editor_refresh(&desk->editor));
		ck_assert(!page()->is_made);
		ck_assert(!editor_is_counted(&desk->editor));
	}
	stopper_end();
	check_area("+1.0 sq ft");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("saved");
	TCase *all = suite_case(suite, "saved"), *books = suite_case(suite, "price books");

	tcase_add_checked_fixture(all, setup, teardown);
	tcase_add_test(all, what_is_in_no_file_yet_is_compared_with_nothing);
	tcase_add_test(all, strokes_since_saving_are_told_and_those_taken_back_are_not);
	tcase_add_test(all, saving_begins_anew);
	tcase_add_test(all, another_file_is_what_it_is_saved_as);
	tcase_add_test(all, a_change_without_a_figure_is_none_of_the_figures);
	tcase_add_test(all, a_file_that_is_gone_or_spoilt_or_another_now_is_said);
	tcase_add_test(all, a_file_that_somebody_else_has_changed_is_compared_as_it_is_now);
	tcase_add_test(all, it_is_made_only_where_it_is_shown_or_comes_next);
	tcase_add_test(all, it_can_be_stopped_at_any_ask);
	tcase_add_checked_fixture(books, setup_book, teardown);
	tcase_add_test(books, both_are_priced_by_the_book_as_it_was_read);
	tcase_add_test(books, another_book_makes_another_cost);
	tcase_add_test(books, a_book_that_cannot_be_read_any_more_is_said);
	return suite;
}
