/* The editor's state: what is saved, what is rescued, what random keys may never do. */

#include "support/desk.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/random.h"
#include "support/runner.h"

#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <unistd.h>

#define ROWS (const char *[])

static bool has_journal(const struct desk *b)
{
	char path[4200];

	snprintf(path, sizeof path, "%s/.garden.plot.journal", b->folder);
	return access(path, F_OK) == 0;
}

/* What the journal says the plot is. */
static void check_journal(const struct desk *b)
{
	struct text text = TEXT_EMPTY;
	struct file_error error;
	struct plot_stamp stamp;
	struct plot plot;
	const char *why;

	ck_assert_ptr_nonnull(b->editor.store.journal.path);
	ck_assert(file_read(b->editor.store.journal.path, 1 << 20, &text, &error));
	plot_init(&plot);
	ck_assert_int_eq(journal_text_read(&text, &plot, &stamp, &why), JOURNAL_WHOLE);
	ck_assert(plot_equal(&plot, b->editor.plot));
	plot_fini(&plot);
	text_fini(&text);
}

START_TEST(each_stroke_and_step_back_is_in_the_journal_before_the_next_key)
{
	struct desk *b = desk_new(ROWS { "bbbbbbbb", NULL });

	desk_press(b, PRESS_RIGHT);
	ck_assert(!has_journal(b));
	for (int i = 0; i < 5; i++) {
		desk_press(b, PRESS_DELETE);
		check_journal(b);
		desk_press(b, PRESS_RIGHT);
	}
	for (int i = 0; i < 5; i++) {
		desk_press(b, PRESS_BACKSPACE);
		check_journal(b);
	}
	desk_type(b, "+");
	check_journal(b);
	ck_assert(editor_has_rescue(&b->editor));
	desk_free(b);
}
END_TEST

START_TEST(an_end_by_choice_leaves_no_journal)
{
	static const char *const answers[][2] = { { "Leave without saving" },
		{ "Save and leave" } };
	struct desk *b = desk_new(ROWS { "bb", NULL });

	desk_press(b, PRESS_DELETE);
	if (_i < 2)
		desk_answer(b, answers[_i]);
	else
		desk_press(b, PRESS_BACKSPACE); /* nothing is unsaved, but there is a journal */
	ck_assert(has_journal(b));
	desk_type(b, "<");
	ck_assert(b->editor.is_over);
	ck_assert(!has_journal(b));
	desk_free(b);
}
END_TEST

static void check_end(struct desk *b, const char *words)
{
	struct text said = TEXT_EMPTY;

	editor_rescue(&b->editor, &said);
	ck_assert_msg(*words ? strstr(said.bytes, words) != NULL : said.length == 0, "%s",
		said.bytes);
	text_fini(&said);
}

START_TEST(a_session_that_is_cut_off_says_where_its_work_is)
{
	struct desk *b = desk_new(ROWS { "bb", NULL });

	check_end(b, "");
	desk_press(b, PRESS_DELETE);
	check_end(b, "The plot is not saved: its work is kept in ");
	check_end(b, "/.garden.plot.journal and offered at the next start.");
	check_journal(b);
	desk_press(b, PRESS_BACKSPACE);
	check_end(b, "");
	ck_assert(!has_journal(b));
	b->editor.has_begun = false;
	check_end(b, "");
	desk_free(b);
}
END_TEST

/* Strokes that no journal takes; then there is room again, for a stroke, for saving or for the end
 * alone. */
START_TEST(strokes_that_cannot_be_written_down_are_counted_and_said)
{
	struct desk *b = desk_new(ROWS { "bbbb", NULL });
	struct rlimit was, none;

	signal(SIGXFSZ, SIG_IGN);
	getrlimit(RLIMIT_FSIZE, &was);
	none = (struct rlimit){ 0, was.rlim_max };
	desk_press(b, PRESS_DELETE);
	ck_assert_int_eq(setrlimit(RLIMIT_FSIZE, &none), 0);
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_DELETE);
	desk_says(b, "No rescue: cannot write ");
	ck_assert(!editor_has_rescue(&b->editor));
	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_DELETE);
	check_end(b, "2 strokes are lost: cannot write ");
	check_end(b, "File too large. What came before is kept in ");
	ck_assert_int_eq(setrlimit(RLIMIT_FSIZE, &was), 0);
	if (_i == 1) {
		desk_press(b, PRESS_RIGHT);
		desk_press(b, PRESS_DELETE);
		ck_assert(editor_has_rescue(&b->editor));
		check_journal(b);
	}
	if (_i == 2) {
		desk_do(b, ACT_SAVE);
		ck_assert(editor_has_rescue(&b->editor));
		desk_press(b, PRESS_BACKSPACE);
	}
	check_end(b, "The plot is not saved: its work is kept in ");
	ck_assert(editor_has_rescue(&b->editor));
	check_journal(b);
	desk_free(b);
}
END_TEST

START_TEST(plain_moves_compute_nothing_anew)
{
	struct desk *b = desk_new(ROWS { "bbb", "bbb", NULL });
	const struct region *regions = b->editor.takeoff.survey.regions;

	desk_press(b, PRESS_RIGHT);
	desk_press(b, PRESS_TAB);
	desk_type(b, "3.");
	ck_assert(!b->editor.is_stale);
	ck_assert_ptr_eq(b->editor.takeoff.survey.regions, regions);
	acts_press(&b->editor, ' ');
	ck_assert(b->editor.is_stale);
	desk_free(b);
}
END_TEST

/* ---- The way to the plot --------------------------------------------------------------------- */

START_TEST(from_an_edit_on_nothing_is_shown_that_was_computed_before)
{
	struct desk *b = desk_new(ROWS { "bb.", NULL });
	struct plot *plot = editor_edit(&b->editor);

	ck_assert(b->editor.is_stale);
	plot->ground.cells[1] = OPEN_GROUND;
	desk_refresh(b); /* as where an act asks a question before its stroke */
	ck_assert_int_eq(b->editor.takeoff.survey.regions[0].cells, 1);
	plot->ground.cells[2] = 'b';
	editor_stroke(&b->editor);
	desk_refresh(b);
	ck_assert_int_eq(b->editor.takeoff.survey.region_count, 2);
	desk_free(b);
}
END_TEST

START_TEST(a_plot_changed_by_no_edit_makes_its_stroke_abort)
{
	struct desk *b = desk_new(ROWS { "bb.", NULL });

	b->editor.plot->ground.cells[2] = 'b'; /* const does not reach so deep */
	editor_stroke(&b->editor);
	desk_free(b);
}
END_TEST

/* On the page that is shown. */
static int stars(const struct desk *b)
{
	const struct page *page = &b->editor.pages.pages[b->editor.page];
	int count = 0;

	for (size_t i = 0; i < page->count; i++)
		count += page->lines[i].is_changed;
	return count;
}

START_TEST(an_edit_that_changes_nothing_leaves_the_stars_of_the_last_stroke)
{
	struct desk *b = desk_new(ROWS { "bb.", NULL });
	int shown;

	desk_press(b, PRESS_DELETE);
	shown = stars(b);
	ck_assert_int_gt(shown, 0);
	desk_press(b, PRESS_DELETE);
	ck_assert_uint_eq(history_undo_count(b->editor.history), 1);
	ck_assert_int_eq(stars(b), shown);
	desk_type(b, " ");
	ck_assert_int_gt(stars(b), 0);
	desk_free(b);
}
END_TEST

START_TEST(a_message_of_any_length_is_said_whole_and_may_have_the_last_one_in_it)
{
	struct desk *b = desk_new(ROWS { "b", NULL });
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < 1000; i++)
		text_add(&words, "\303\251"); /* of two bytes */
	editor_say(&b->editor, "x%s", words.bytes);
	ck_assert_uint_eq(b->editor.message.length, 2001);
	editor_say(&b->editor, "%s.", b->editor.message.bytes);
	ck_assert_uint_eq(b->editor.message.length, 2002);
	ck_assert_str_eq(b->editor.message.bytes + 1999, "\303\251.");
	text_fini(&words);
	desk_free(b);
}
END_TEST

START_TEST(what_is_in_hand_falls_to_open_ground_with_its_entry)
{
	struct desk *b = desk_new(ROWS { "bb", NULL });

	details_add_entry(&editor_edit(&b->editor)->details, CLASS_PATH, 'q', strdup("Gravel"));
	editor_stroke(&b->editor);
	desk_type(b, "q");
	desk_press(b, PRESS_BACKSPACE);
	ck_assert_int_eq(b->editor.hand, OPEN_GROUND);
	desk_type(b, " ");
	desk_check(b, ROWS { ".b", NULL });
	desk_free(b);
}
END_TEST

/* Keys that need no answer. */
static int random_key(struct random *r)
{
	static const int keys[] = { PRESS_LEFT, PRESS_RIGHT, PRESS_UP, PRESS_DOWN, PRESS_LEFT,
		PRESS_RIGHT, PRESS_UP, PRESS_DOWN, PRESS_HOME, PRESS_END, PRESS_PAGE_UP,
		PRESS_PAGE_DOWN, PRESS_DELETE, PRESS_ESCAPE, PRESS_BACKSPACE, '+', ' ', ' ', '=',
		'*',
		'|', '-', '%', '&', '1', '2', '3', '5', 'b', 'p', 'l', 'S', '.', 'q', 'Z', ')',
		'(' };

	return keys[random_below(r, sizeof keys / sizeof *keys)];
}

/* Images must agree right after a stroke that laid something while both cells were alike before:
 * so a plot without faults stays without as long as the mirror is not turned. */
static bool keeps_mirror(const struct desk *b, int key, enum mirror_kind before, int64_t faults)
{
	bool is_step = key == PRESS_BACKSPACE || key == '+';

	return is_step || faults || mirror_of(b->editor.plot).kind != before || !b->editor.faults;
}

START_TEST(random_keys_keep_the_plot_whole_and_can_all_be_taken_back)
{
	struct random r = { (uint64_t)_i + 1 };
	struct desk *b = desk_new(ROWS { "bbppl..", "b.p.lSS", "bbppl..", "......l", NULL });
	struct plot start = { .details = details_copy(&b->editor.plot->details) };

	ground_init(&start.ground, 7, 4);
	memcpy(start.ground.cells, b->editor.plot->ground.cells, 28);
	for (int i = 0; i < 400; i++) {
		enum mirror_kind kind = mirror_of(b->editor.plot).kind;
		int64_t faults = b->editor.faults;
		int key = random_key(&r);

		desk_press(b, key);
		plot_check(b->editor.plot);
		ck_assert(ground_holds(&b->editor.plot->ground, b->editor.cursor.x,
			b->editor.cursor.y));
		ck_assert_msg(keeps_mirror(b, key, kind, faults), "seed %d, key %d", _i + 1, i);
	}
	while (editor_take_back(&b->editor))
		;
	ck_assert(plot_equal(b->editor.plot, &start));
	ck_assert(editor_is_saved(&b->editor) || b->editor.saved_position < 0);
	plot_fini(&start);
	desk_free(b);
}
END_TEST

static void put(struct desk *b, const char *name, const char *bytes)
{
	char path[4096];
	FILE *file;

	snprintf(path, sizeof path, "%s/%s", b->folder, name);
	file = fopen(path, "w");
	ck_assert(file && fputs(bytes, file) >= 0);
	fclose(file);
}

static void name_book(struct desk *b, const char *name)
{
	plot_set(editor_edit(&b->editor), 0, HEAD_PRICES, name);
	editor_stroke(&b->editor);
	desk_refresh(b);
}

static nm kerf(const struct desk *b)
{
	return block_length(b->editor.takeoff.allow, ALLOW_KERF);
}

#define BOOK_HEAD "{\"format\": \"parterre-prices\", \"version\": 1, \"currency\": \"USD\""

START_TEST(the_price_book_is_read_when_the_plot_names_another)
{
	struct desk *b = desk_new(ROWS { "bbbb", "bbbb", "bbbb", NULL });

	put(b, "one.json", BOOK_HEAD ", \"allow\": {\"kerf\": \"3 mm\"}}");
	put(b, "two.json", BOOK_HEAD ", \"allow\": {\"kerf\": \"4 mm\"}}");
	desk_refresh(b);
	ck_assert_int_eq(kerf(b), NM_PER_INCH / 8);
	name_book(b, "\"one.json\"");
	ck_assert_int_eq(kerf(b), 3 * NM_PER_MM);
	ck_assert_uint_eq(b->editor.message.length, 0);
	name_book(b, "\"two.json\"");
	ck_assert_int_eq(kerf(b), 4 * NM_PER_MM);
	editor_take_back(&b->editor);
	desk_refresh(b);
	ck_assert_int_eq(kerf(b), 3 * NM_PER_MM);
	editor_take_back(&b->editor);
	desk_refresh(b);
	ck_assert_int_eq(kerf(b), NM_PER_INCH / 8);
	ck_assert(!b->editor.has_book);
	desk_free(b);
}
END_TEST

START_TEST(a_price_book_that_cannot_be_read_is_told_once_and_quantities_still_come_out)
{
	struct desk *b = desk_new(ROWS { "bbbb", "bbbb", "bbbb", NULL });

	name_book(b, "\"none.json\"");
	desk_says_whole(b, "No prices: cannot open FOLDER/none.json: No such file or directory");
	ck_assert_uint_gt(b->editor.takeoff.items.count, 0);
	text_clear(&b->editor.message);
	desk_press(b, PRESS_DELETE);
	desk_refresh(b);
	ck_assert_uint_eq(b->editor.message.length, 0);
	put(b, "bad.json", BOOK_HEAD ", \"goods\": 3}");
	name_book(b, "\"bad.json\"");
	desk_says_whole(b, "No prices: FOLDER/bad.json: goods: found 3, expected a list, [ ... "
		"], of at most 500");
	ck_assert(!b->editor.has_book);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("editor");
	TCase *rescue = suite_case(suite, "rescue"), *state = suite_case(suite, "state");

	tcase_add_test(rescue, each_stroke_and_step_back_is_in_the_journal_before_the_next_key);
	tcase_add_loop_test(rescue, an_end_by_choice_leaves_no_journal, 0, 3);
	tcase_add_test(rescue, a_session_that_is_cut_off_says_where_its_work_is);
	tcase_add_loop_test(rescue,
		strokes_that_cannot_be_written_down_are_counted_and_said, 0, 3);
	tcase_add_test(state, from_an_edit_on_nothing_is_shown_that_was_computed_before);
	tcase_add_test_raise_signal(state, a_plot_changed_by_no_edit_makes_its_stroke_abort,
		SIGABRT);
	tcase_add_test(state, an_edit_that_changes_nothing_leaves_the_stars_of_the_last_stroke);
	tcase_add_test(state,
		a_message_of_any_length_is_said_whole_and_may_have_the_last_one_in_it);
	tcase_add_test(state, plain_moves_compute_nothing_anew);
	tcase_add_test(state, what_is_in_hand_falls_to_open_ground_with_its_entry);
	tcase_add_loop_test(state, random_keys_keep_the_plot_whole_and_can_all_be_taken_back, 0,
		40);
	tcase_add_test(state, the_price_book_is_read_when_the_plot_names_another);
	tcase_add_test(state,
		a_price_book_that_cannot_be_read_is_told_once_and_quantities_still_come_out);
	return suite;
}
