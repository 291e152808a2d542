/* A line while it is typed: what goes in comes out as it was, and keys do what they say. */
#include "base/memory.h"
#include "base/utf8.h"
#include "editor/field/line.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/samples.h"

#include <locale.h>
#include <stdlib.h>
#include <string.h>

#define COUNT(a) ((int)(sizeof(a) / sizeof *(a)))

static void check_says(const struct line *line, const char *expected)
{
	struct text words = TEXT_EMPTY;

	line_add_all(line, &words);
	ck_assert_str_eq(words.bytes, expected);
	text_fini(&words);
}

static void type(struct line *line, const char *text)
{
	for (size_t left = strlen(text), step; left; text += step, left -= step) {
		uint32_t code;

		step = utf8_decode(text, left, &code);
		ck_assert(line_insert(line, &code, 1));
	}
}

/* ---- As typed -------------------------------------------------------------------------------- */

START_TEST(a_text_is_kept_byte_for_byte)
{
	const char *text = samples[_i].text;
	struct line line = LINE_EMPTY;
	struct text twice = TEXT_EMPTY;

	setlocale(LC_CTYPE, "C.UTF-8");
	line_set(&line, text, 100);
	check_says(&line, text);
	line_set(&line, "", 200);
	type(&line, text);
	check_says(&line, text);
	line_edit(&line, LINE_START);
	type(&line, text); /* in front of what there is */
	text_print(&twice, "%s%s", text, text);
	check_says(&line, twice.bytes);
	text_fini(&twice);
	line_fini(&line);
}
END_TEST

/* At every place where the cursor stops. */
START_TEST(a_letter_goes_in_at_the_cursor_and_out_again)
{
	const char *text = samples[_i].text;
	struct line line = LINE_EMPTY;
	struct text words = TEXT_EMPTY;

	setlocale(LC_CTYPE, "C.UTF-8");
	line_set(&line, text, 100);
	line_edit(&line, LINE_START);
	do {
		text_clear(&words);
		line_add_before(&line, &words);
		text_add(&words, "x");
		text_add(&words, text + words.length - 1);
		type(&line, "x");
		check_says(&line, words.bytes);
		line_edit(&line, LINE_BACKSPACE);
		check_says(&line, text);
		line_edit(&line, LINE_RIGHT);
	} while (line.at < line.count);
	text_fini(&words);
	line_fini(&line);
}
END_TEST

START_TEST(the_cursor_stops_at_the_same_places_both_ways)
{
	struct line line = LINE_EMPTY;
	size_t stops[128];
	int count = 0;

	setlocale(LC_CTYPE, "C.UTF-8");
	line_set(&line, samples[_i].text, 100);
	while (line.at < line.count) {
		stops[count++] = line.at;
		line_edit(&line, LINE_RIGHT);
	}
	line_edit(&line, LINE_RIGHT);
	ck_assert_uint_eq(line.at, line.count);
	while (count) {
		line_edit(&line, LINE_LEFT);
		ck_assert_uint_eq(line.at, stops[--count]);
	}
	line_edit(&line, LINE_LEFT);
	ck_assert_uint_eq(line.at, 0);
	line_fini(&line);
}
END_TEST

/* One Delete for each step of the cursor. */
START_TEST(delete_takes_what_the_cursor_steps_over)
{
	struct line line = LINE_EMPTY;
	int steps = 0, deletes = 0;

	setlocale(LC_CTYPE, "C.UTF-8");
	line_set(&line, samples[_i].text, 100);
	for (; line.at < line.count; steps++)
		line_edit(&line, LINE_RIGHT);
	line_edit(&line, LINE_START);
	for (; line.count; deletes++)
		line_edit(&line, LINE_DELETE);
	ck_assert_int_eq(deletes, steps);
	line_fini(&line);
}
END_TEST

START_TEST(bytes_that_are_no_character_are_kept)
{
	struct line line = LINE_EMPTY;

	setlocale(LC_CTYPE, "C.UTF-8");
	line_set(&line, "a\377b\303", 10);
	ck_assert_uint_eq(line.count, 4);
	line_edit(&line, LINE_END);
	type(&line, "c");
	check_says(&line, "a\377b\303c");
	line_fini(&line);
}
END_TEST

/* ---- Keys ------------------------------------------------------------------------------------ */

enum { FRESH = -1 };

/* A text, where the cursor is in it by characters, what is done, what it says then and where the
 * cursor is. */
static const struct {
	const char *text;
	int at;
	enum line_edit edit;
	const char *after;
	size_t then;
} edits[] = {
	{ "abc", 2, LINE_LEFT, "abc", 1 }, { "abc", 0, LINE_LEFT, "abc", 0 },
	{ "abc", 3, LINE_RIGHT, "abc", 3 }, { "abc", 2, LINE_START, "abc", 0 },
	{ "abc", 1, LINE_END, "abc", 3 },
	{ "abc", 2, LINE_BACKSPACE, "ac", 1 }, { "abc", 0, LINE_BACKSPACE, "abc", 0 },
	{ "abc", 1, LINE_DELETE, "ac", 1 }, { "abc", 3, LINE_DELETE, "abc", 3 },
	{ "one two", 5, LINE_ERASE_BEFORE, "wo", 0 }, { "one", 0, LINE_ERASE_BEFORE, "one", 0 },
	{ "one two", 3, LINE_ERASE_REST, "one", 3 }, { "one", 3, LINE_ERASE_REST, "one", 3 },
	{ "one two", 7, LINE_ERASE_WORD, "one ", 4 }, { "one  two", 5, LINE_ERASE_WORD, "two", 0 },
	{ "one", 0, LINE_ERASE_WORD, "one", 0 }, { "   ", 2, LINE_ERASE_WORD, " ", 0 },
	{ u8"\u5EAD \u5712\u3000", 4, LINE_ERASE_WORD, u8"\u5EAD ", 2 },
	/* A mark is taken off its letter, and a part off a syllable. */
	{ u8"cafe\u0301", 5, LINE_BACKSPACE, "cafe", 4 },
	{ u8"\u0E19\u0E49\u0E33", 2, LINE_BACKSPACE, u8"\u0E19\u0E33", 1 },
	{ u8"\u1100\u1161\u11A8", 3, LINE_BACKSPACE, u8"\u1100\u1161", 2 },
	/* What is held together goes together. */
	{ u8"a\U0001F469\u200D\U0001F33E", 4, LINE_BACKSPACE, "a", 1 },
	{ u8"a\u2764\uFE0F", 3, LINE_BACKSPACE, "a", 1 },
	{ u8"a\U0001F469\U0001F3FD", 3, LINE_BACKSPACE, "a", 1 },
	{ u8"e\u0301x", 0, LINE_DELETE, "x", 0 }, { u8"e\u0301x", 0, LINE_RIGHT, u8"e\u0301x", 2 },
	{ u8"e\u0301x", 2, LINE_LEFT, u8"e\u0301x", 0 },
	/* Within what a joiner has just bound. */
	{ u8"\U0001F469\u200D\U0001F33E", 2, LINE_LEFT, u8"\U0001F469\u200D\U0001F33E", 0 },
	{ u8"\U0001F469\u200D\U0001F33E", 2, LINE_RIGHT, u8"\U0001F469\u200D\U0001F33E", 3 },
	{ u8"\U0001F469\u200D\U0001F33Ex", 2, LINE_DELETE, "x", 0 },
	/* Just come to: erasing takes all, moving leaves all. */
	{ "abc", FRESH, LINE_BACKSPACE, "", 0 }, { "abc", FRESH, LINE_DELETE, "", 0 },
	{ "abc", FRESH, LINE_ERASE_BEFORE, "", 0 }, { "abc", FRESH, LINE_ERASE_REST, "", 0 },
	{ "abc", FRESH, LINE_ERASE_WORD, "", 0 }, { "abc", FRESH, LINE_END, "abc", 3 },
	{ "abc", FRESH, LINE_RIGHT, "abc", 1 }, { "", FRESH, LINE_BACKSPACE, "", 0 },
};

START_TEST(a_key_does_what_it_says)
{
	struct line line = LINE_EMPTY;

	setlocale(LC_CTYPE, "C.UTF-8");
	line_set(&line, edits[_i].text, 100);
	ck_assert(line.is_fresh);
	if (edits[_i].at != FRESH) {
		line.at = (size_t)edits[_i].at;
		line.is_fresh = false;
	}
	line_edit(&line, edits[_i].edit);
	check_says(&line, edits[_i].after);
	ck_assert_uint_eq(line.at, edits[_i].then);
	ck_assert(!line.is_fresh);
	line_fini(&line);
}
END_TEST

START_TEST(what_is_typed_first_takes_the_place_of_all)
{
	struct line line = LINE_EMPTY;

	line_set(&line, "before", 10);
	type(&line, "ab");
	check_says(&line, "ab");
	line_set(&line, "before", 10);
	line_edit(&line, LINE_END);
	type(&line, "ab");
	check_says(&line, "beforeab");
	line_fini(&line);
}
END_TEST

/* ---- Limits ---------------------------------------------------------------------------------- */

START_TEST(what_has_no_room_does_not_go_in_and_changes_nothing)
{
	static const uint32_t codes[] = { 'x', 'y', 'z', 'u' };
	struct line line = LINE_EMPTY;

	line_set(&line, "abc", 3);
	ck_assert_uint_eq(line_room(&line), 3);
	ck_assert(!line_insert(&line, codes, 4));
	check_says(&line, "abc");
	ck_assert(line.is_fresh);
	ck_assert(line_insert(&line, codes, 3));
	check_says(&line, "xyz");
	ck_assert_uint_eq(line_room(&line), 0);
	ck_assert(!line_insert(&line, codes, 1));
	check_says(&line, "xyz");
	line_edit(&line, LINE_BACKSPACE);
	ck_assert(line_insert(&line, codes, 1));
	check_says(&line, "xyx");
	line_set(&line, "longer than that", 3); /* as it was found: kept, not added to */
	line_edit(&line, LINE_END);
	ck_assert_uint_eq(line_room(&line), 0);
	ck_assert(!line_insert(&line, codes, 1));
	check_says(&line, "longer than that");
	line_fini(&line);
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

/* The same done to a plain array, one character after the other. */
START_TEST(no_order_of_keys_loses_a_character)
{
	struct random r = { (uint64_t)_i };
	struct line line = LINE_EMPTY;

	setlocale(LC_CTYPE, "C.UTF-8");
	line_set(&line, samples[random_below(&r, SAMPLES)].text, 60);
	for (int step = 0; step < 400; step++) {
		size_t count = line.is_fresh ? 0 : line.count, at = line.is_fresh ? 0 : line.at;
		uint32_t before[256], codes[2] = { 'a', 0x301 };

		memcpy(before, line.codes, line.count * sizeof *before);
		if (random_below(&r, 2) == 0) {
			bool fits = count + 2 <= 60;

			ck_assert_int_eq(line_insert(&line, codes, 2), fits);
			if (fits) {
				ck_assert_uint_eq(line.count, count + 2);
				ck_assert_mem_eq(line.codes, before, at * sizeof *before);
				ck_assert_mem_eq(line.codes + at + 2, before + at,
					(count - at) * sizeof *before);
			}
		} else {
			line_edit(&line, (enum line_edit)random_below(&r, LINE_ERASE_REST + 1));
			ck_assert_uint_le(line.at, line.count);
			ck_assert_mem_eq(line.codes, before, line.at * sizeof *before);
		}
	}
	line_fini(&line);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("line");
	TCase *kept = suite_case(suite, "kept"), *keys = suite_case(suite, "keys");

	tcase_add_loop_test(kept, a_text_is_kept_byte_for_byte, 0, SAMPLES);
	tcase_add_loop_test(kept, a_letter_goes_in_at_the_cursor_and_out_again, 0, SAMPLES);
	tcase_add_loop_test(kept, the_cursor_stops_at_the_same_places_both_ways, 0, SAMPLES);
	tcase_add_loop_test(kept, delete_takes_what_the_cursor_steps_over, 0, SAMPLES);
	tcase_add_test(kept, bytes_that_are_no_character_are_kept);
	tcase_add_loop_test(keys, a_key_does_what_it_says, 0, COUNT(edits));
	tcase_add_test(keys, what_is_typed_first_takes_the_place_of_all);
	tcase_add_test(keys, what_has_no_room_does_not_go_in_and_changes_nothing);
	tcase_add_loop_test(keys, no_order_of_keys_loses_a_character, 0, runner_count(20, 1000));
	return suite;
}
