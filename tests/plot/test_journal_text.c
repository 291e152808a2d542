/* What a journal holds: whatever was written whole is read again, and nothing else. */
#include "plot/history/journal_text.h"
#include "plot/format/format.h"
#include "plot/history/change.h"
#include "plot/history/history.h"
#include "support/changes.h"
#include "support/details.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

enum { STEPS_MOST = 64 };

/* A session's journal, and the plot after each of its steps; 0: at the start. */
struct told {
	struct text journal;
	size_t ends[STEPS_MOST + 1]; /* bytes of the journal so far */
	struct plot states[STEPS_MOST + 1];
	int count;
};

static const struct plot_stamp stamp = { .exists = true, .written = { 1764370000, 7 },
	.length = 123, .hash = 0x0123456789abcdef };

static struct plot plot_copy(const struct plot *plot)
{
	return (struct plot){ details_copy(&plot->details), ground_copy(&plot->ground) };
}

/* So many steps of any kind, some of them back or on again. */
static void tell(struct told *told, struct plot *plot, struct random *random, int steps)
{
	struct history *history = history_new(plot);
	uint64_t sum;

	*told = (struct told){ .journal = TEXT_EMPTY };
	sum = journal_text_begin(&told->journal, &stamp, plot);
	told->ends[0] = told->journal.length;
	told->states[0] = plot_copy(plot);
	while (told->count < steps) {
		int choice = random_below(random, 5);
		struct text words = TEXT_EMPTY;
		struct place at;

		if (choice > 1)
			change_at_random(plot, random);
		if (!(choice == 0 ? history_undo(history, plot, &at) : choice == 1 ?
			history_redo(history, plot, &at) : history_record(history, plot, "")))
			continue;
		change_write(history_last(history).step, plot, &words);
		sum = journal_text_step(&told->journal, sum, &words);
		text_fini(&words);
		told->ends[++told->count] = told->journal.length;
		told->states[told->count] = plot_copy(plot);
	}
	history_free(history);
}

/* So small that all its bytes can be tried. */
static void small_plot(struct plot *plot, struct random *random)
{
	plot_at_random(plot, random, 5, "bp.");
}

static void told_fini(struct told *told)
{
	for (int i = 0; i <= told->count; i++)
		plot_fini(&told->states[i]);
	text_fini(&told->journal);
}

/* Reads the bytes, in memory of exactly their size; -1: unreadable, else the step whose state was
 * found, which must be `most` or one before. */
static int read_back(const struct told *told, const struct text *bytes, enum journal_state *state)
{
	struct text exact = { malloc(bytes->length + 1), bytes->length, 0 };
	struct plot_stamp found;
	struct plot plot;
	const char *why = NULL;
	int step = -1;

	memcpy(exact.bytes, bytes->bytes, bytes->length);
	exact.bytes[exact.length] = '\0';
	plot_init(&plot);
	*state = journal_text_read(&exact, &plot, &found, &why);
	free(exact.bytes);
	ck_assert((*state != JOURNAL_UNREADABLE) == (plot.ground.cells != NULL));
	ck_assert_msg((*state == JOURNAL_WHOLE) || why != NULL, "no reason");
	if (*state != JOURNAL_UNREADABLE) {
		ck_assert(plot_stamp_equal(&found, &stamp));
		for (step = told->count; step >= 0; step--)
			if (plot_equal(&plot, &told->states[step]))
				break;
		ck_assert_msg(step >= 0, "a plot that never was");
	}
	plot_fini(&plot);
	return step;
}

static void check_read(const struct told *told, const struct text *bytes, int step)
{
	enum journal_state state;
	int found = read_back(told, bytes, &state);

	ck_assert_int_eq(state, JOURNAL_WHOLE);
	ck_assert_msg(plot_equal(&told->states[found], &told->states[step]), "%d, not %d", found,
		step);
}

START_TEST(a_journal_is_laid_out_as_the_manual_says)
{
	static const char expected[] = "parterre-journal 1\n"
		"stamp 1764370000 7 123 0123456789abcdef\n"
		"plot 91 %s\n"
		"parterre-plot 1\nunits imperial\ncell 1 ft\n\nbed b \"b\"\npath p \"p\"\n\n"
		"ground 4 x 2\n  bb..\n  b..p\n"
		"step 25 %s\ncells 2 0 bb\ncells 1 1 p\n"
		"step 103 %s\nparterre-plot 1\ntitle \"Court\"\n";
	struct plot plot;
	struct text text = TEXT_EMPTY, words = TEXT_EMPTY;
	struct history *history;
	uint64_t sum;

	plot_from_rows(&plot, (const char *const[]){ "bb..", "b..p", NULL });
	history = history_new(&plot);
	sum = journal_text_begin(&text, &stamp, &plot);
	memcpy(plot.ground.cells + 2, "bbbp", 4);
	ck_assert(history_record(history, &plot, ""));
	change_write(history_last(history).step, &plot, &words);
	sum = journal_text_step(&text, sum, &words);
	text_clear(&words);
	plot_set(&plot, 0, HEAD_TITLE, "\"Court\"");
	plot.ground.cells[0] = '.';
	ck_assert(history_record(history, &plot, ""));
	change_write(history_last(history).step, &plot, &words);
	journal_text_step(&text, sum, &words);
	ck_assert_ptr_nonnull(strstr(words.bytes, "\n\nground 4 x 2\ncells 0 0 .\n"));

	/* The checksums apart. */
	const char *at = text.bytes, *part = expected;
	for (const char *gap; (gap = strstr(part, "%s")); part = gap + 2, at += 16) {
		ck_assert_msg(strncmp(at, part, (size_t)(gap - part)) == 0, "%s", text.bytes);
		at += gap - part;
		ck_assert_uint_eq(strspn(at, "0123456789abcdef"), 16);
	}
	ck_assert_msg(strncmp(at, part, strlen(part)) == 0, "%s", text.bytes);
	text_fini(&text);
	text_fini(&words);
	history_free(history);
	plot_fini(&plot);
}
END_TEST

START_TEST(after_every_step_the_plot_is_read_as_it_is)
{
	struct random random = { (uint64_t)_i };
	struct told told;
	struct plot plot;

	whole_plot_at_random(&plot, &random, 12);
	tell(&told, &plot, &random, STEPS_MOST);
	for (int i = 0; i <= told.count; i++) {
		struct text part = { told.journal.bytes, told.ends[i], 0 };

		check_read(&told, &part, i);
	}
	told_fini(&told);
	plot_fini(&plot);
}
END_TEST

START_TEST(cut_at_any_byte_it_is_read_to_the_last_whole_step)
{
	struct random random = { (uint64_t)_i };
	struct told told;
	struct plot plot;
	int step = 0;

	small_plot(&plot, &random);
	tell(&told, &plot, &random, 8);
	for (size_t length = 0; length <= told.journal.length; length++) {
		struct text part = { told.journal.bytes, length, 0 };
		enum journal_state state;

		if (length < told.ends[0]) {
			ck_assert_int_eq(read_back(&told, &part, &state), -1);
			ck_assert_int_eq(state, JOURNAL_UNREADABLE);
			continue;
		}
		while (step < told.count && told.ends[step + 1] <= length)
			step++;
		check_read(&told, &part, step);
	}
	told_fini(&told);
	plot_fini(&plot);
}
END_TEST

/* The step that a byte is in, 0: the beginning. */
static int step_of(const struct told *told, size_t at)
{
	int step = 0;

	while (told->ends[step] <= at)
		step++;
	return step;
}

/* What comes before it is still read, and that there is more after it is seen. */
static void check_changed(const struct told *told, size_t at)
{
	int broken = step_of(told, at), found;
	enum journal_state state;

	found = read_back(told, &told->journal, &state);
	if (broken == 0) {
		ck_assert_int_eq(state, JOURNAL_UNREADABLE);
		return;
	}
	ck_assert_msg(plot_equal(&told->states[found], &told->states[broken - 1]),
		"byte %zu of step %d: found %d", at, broken, found);
	ck_assert_int_eq(state, broken < told->count ? JOURNAL_DAMAGED : JOURNAL_WHOLE);
}

START_TEST(a_changed_byte_anywhere_is_never_taken_for_good)
{
	struct random random = { (uint64_t)_i };
	struct told told;
	struct plot plot;

	small_plot(&plot, &random);
	tell(&told, &plot, &random, 8);
	for (size_t at = 0; at < told.journal.length; at++) {
		char was = told.journal.bytes[at];
		const char others[] = { (char)(was ^ 1), (char)(was ^ 0x20), '\n', '0' };

		for (size_t i = 0; i < sizeof others; i++) {
			told.journal.bytes[at] = others[i];
			if (others[i] != was)
				check_changed(&told, at);
		}
		told.journal.bytes[at] = was;
	}
	told_fini(&told);
	plot_fini(&plot);
}
END_TEST

START_TEST(steps_that_are_missing_doubled_or_in_another_order_are_not_taken)
{
	struct random random = { 5 };
	struct told told;
	struct plot plot;

	whole_plot_at_random(&plot, &random, 6);
	tell(&told, &plot, &random, 4);
	for (int i = 1; i < 4; i++) {
		struct text text = TEXT_EMPTY;
		size_t start = told.ends[i - 1], end = told.ends[i];
		enum journal_state state;
		int found;

		text_add_bytes(&text, told.journal.bytes, start);
		text_add_bytes(&text, told.journal.bytes + end, told.journal.length - end);
		found = read_back(&told, &text, &state);
		ck_assert(plot_equal(&told.states[found], &told.states[i - 1]));
		text_clear(&text);
		text_add_bytes(&text, told.journal.bytes, end);
		text_add_bytes(&text, told.journal.bytes + start, told.journal.length - start);
		found = read_back(&told, &text, &state);
		ck_assert(plot_equal(&told.states[found], &told.states[i]));
		ck_assert_int_eq(state, JOURNAL_DAMAGED);
		text_fini(&text);
	}
	told_fini(&told);
	plot_fini(&plot);
}
END_TEST

static const struct {
	const char *bytes, *why;
} strange[] = {
	{ "", "it is empty" },
	{ "parterre-plot 1\n", "it is no journal" },
	{ "parterre", "it is no journal" },
	{ "parterre-journal 2\nstamp none\n", "another version of the program wrote it" },
	{ "parterre-journal 10\nstamp none\n", "another version of the program wrote it" },
	{ "parterre-journal 1\n", "its beginning is damaged" },
	{ "parterre-journal 1\nstamp none\nplot 5 0123456789abcdef\n12345", "its beginning is "
		"damaged" },
	{ "parterre-journal 1\nstamp none\nplot 99999999999999999999 0123456789abcdef\n",
		"its beginning is damaged" },
};

START_TEST(what_is_no_journal_of_this_version_is_said)
{
	struct text text = TEXT_EMPTY;
	struct plot_stamp found;
	struct plot plot;
	const char *why;

	plot_init(&plot);
	text_add(&text, strange[_i].bytes);
	ck_assert_int_eq(journal_text_read(&text, &plot, &found, &why), JOURNAL_UNREADABLE);
	ck_assert_str_eq(why, strange[_i].why);
	ck_assert_ptr_null(plot.ground.cells);
	text_fini(&text);
}
END_TEST

START_TEST(stamps_of_any_time_come_back_and_are_told_apart)
{
	static const struct plot_stamp stamps[] = {
		{ .exists = false }, { .exists = true },
		{ true, { 1764370000, 999999999 }, 5, 1 },
		{ true, { 1764370000, 999999998 }, 5, 1 },
		{ true, { -5, 5 }, 5, 1 }, { true, { 4102444800, 0 }, 5, 1 },
		{ true, { 1764370000, 0 }, 6, 1 }, { true, { 1764370000, 0 }, 6, UINT64_MAX },
	};
	enum { COUNT = sizeof stamps / sizeof *stamps };
	struct plot plot, read;

	plot_from_rows(&plot, (const char *const[]){ "b", NULL });
	for (int i = 0; i < COUNT; i++) {
		struct text text = TEXT_EMPTY;
		struct plot_stamp found;
		const char *why;

		journal_text_begin(&text, &stamps[i], &plot);
		plot_init(&read);
		ck_assert_int_eq(journal_text_read(&text, &read, &found, &why), JOURNAL_WHOLE);
		for (int j = 0; j < COUNT; j++)
			ck_assert_msg(plot_stamp_equal(&found, &stamps[j]) == (i == j), "%d, %d", i,
				j);
		plot_fini(&read);
		text_fini(&text);
	}
	plot_fini(&plot);
}
END_TEST

/* ---- How much is written --------------------------------------------------------------------- */

static size_t words_length(struct history *history, const struct plot *plot)
{
	struct text words = TEXT_EMPTY;
	size_t length;

	ck_assert(history_record(history, plot, ""));
	change_write(history_last(history).step, plot, &words);
	length = words.length;
	text_fini(&words);
	return length;
}

START_TEST(a_step_takes_no_more_than_it_changed_and_never_much_more_than_the_plot)
{
	struct text whole = TEXT_EMPTY;
	struct history *history;
	struct plot plot;

	plot_from_rows(&plot, (const char *const[]){ "b", "p", NULL });
	ground_fini(&plot.ground);
	ground_init(&plot.ground, SIDE_MOST, SIDE_MOST);
	history = history_new(&plot);
	*ground_at(&plot.ground, 2000, 2000) = 'b';
	ck_assert_uint_eq(words_length(history, &plot), strlen("cells 2000 2000 b\n"));
	plot_set(&plot, 0, HEAD_TITLE, "\"Court\"");
	ck_assert_uint_lt(words_length(history, &plot), 200);
	for (int y = 0; y < SIDE_MOST; y++)
		for (int x = y % 2; x < SIDE_MOST; x += 2)
			*ground_at(&plot.ground, x, y) = 'p';
	format_write(&plot, &whole);
	ck_assert_uint_eq(words_length(history, &plot), whole.length);
	text_fini(&whole);
	history_free(history);
	plot_fini(&plot);
}
END_TEST

static const char *const bad_words[] = {
	"", "cells", "cells 0 0 b", "cells 0 0\n", "cells 4 0 b\n", "cells 3 0 bb\n",
	"cells 0 2 b\n", "cells -1 0 b\n", "cells 0 0 x\n", "cells 0 0 b b\n", "cell 0 0 b\n",
	"cells 0 0 b\ncells 0 9 b\n", "cells 0 0 p\ncell 1 0 p\n", "cells 0 0 p\n\n",
	"cells 0 0 p\ncells 1 0 p", "cells 0 0 p\ncells 1 0 x\n", "cells 0 -1 b\n",
	"cells 1.5 0 b\n", "cells 0 1.5 b\n", "cells 0 0 p, p\n",
	"cells 99999999999 0 b\n", "nothing\n",
	"parterre-plot 1\nunits imperial\ncell 1 ft\nbed b \"b\"\nground 4 x 2\n",
	"parterre-plot 1\nunits imperial\ncell 1 ft\nbed b \"b\"\npath p \"p\"\nground 5 x 2\n",
	("parterre-plot 1\nunits imperial\ncell 1 ft\nbed b \"b\"\npath p \"p\"\nground 4 x 2\n"
		"cells 0 0 x\n"),
};

/* The last details lack an entry that lies on the ground, have another ground, another letter. */
START_TEST(words_that_make_no_plot_leave_it_as_it_was)
{
	struct plot plot, was;

	plot_from_rows(&plot, (const char *const[]){ "bb..", "b..p", NULL });
	was = plot_copy(&plot);
	if (change_read(bad_words[_i], strlen(bad_words[_i]), &plot))
		ck_assert_str_eq(bad_words[_i], "");
	ck_assert(plot_equal(&plot, &was));
	plot_fini(&plot);
	plot_fini(&was);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("journal text");
	TCase *reading = suite_case(suite, "reading"), *size = suite_case(suite, "size");

	tcase_add_test(reading, a_journal_is_laid_out_as_the_manual_says);
	tcase_add_loop_test(reading, after_every_step_the_plot_is_read_as_it_is, 0,
		runner_count(40, 1000));
	tcase_add_loop_test(reading, cut_at_any_byte_it_is_read_to_the_last_whole_step, 0,
		runner_count(3, 50));
	tcase_add_loop_test(reading, a_changed_byte_anywhere_is_never_taken_for_good, 0,
		runner_count(3, 50));
	tcase_add_test(reading, steps_that_are_missing_doubled_or_in_another_order_are_not_taken);
	tcase_add_loop_test(reading, what_is_no_journal_of_this_version_is_said, 0,
		(int)(sizeof strange / sizeof *strange));
	tcase_add_test(reading, stamps_of_any_time_come_back_and_are_told_apart);
	tcase_add_test(size,
		a_step_takes_no_more_than_it_changed_and_never_much_more_than_the_plot);
	tcase_add_loop_test(size, words_that_make_no_plot_leave_it_as_it_was, 0,
		(int)(sizeof bad_words / sizeof *bad_words));
	return suite;
}
