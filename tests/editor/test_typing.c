/* A text while it is typed: what goes in comes out as it was, and keys do what they say. */
#include "base/memory.h"
#include "base/utf8.h"
#include "editor/field/typing.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/samples.h"

#include <locale.h>
#include <stdlib.h>
#include <string.h>

#define COUNT(a) ((int)(sizeof(a) / sizeof *(a)))

static void check_says(const struct typing *typing, const char *expected)
{
	struct text words = TEXT_EMPTY;

	typing_add_all(typing, &words);
	ck_assert_str_eq(words.bytes, expected);
	text_fini(&words);
}

static void type(struct typing *typing, const char *text)
{
	for (size_t left = strlen(text), step; left; text += step, left -= step) {
		uint32_t code;

		step = utf8_decode(text, left, &code);
		ck_assert(typing_insert(typing, &code, 1));
	}
}

/* ---- As typed -------------------------------------------------------------------------------- */

START_TEST(a_text_is_kept_byte_for_byte)
{
	const char *text = samples[_i].text;
	struct typing typing = TYPING_EMPTY;
	struct text twice = TEXT_EMPTY;

	setlocale(LC_CTYPE, "C.UTF-8");
	typing_set(&typing, text, 100);
	check_says(&typing, text);
	typing_set(&typing, "", 200);
	type(&typing, text);
	check_says(&typing, text);
	typing_edit(&typing, TYPING_START);
	type(&typing, text); /* in front of what there is */
	text_print(&twice, "%s%s", text, text);
	check_says(&typing, twice.bytes);
	text_fini(&twice);
	typing_fini(&typing);
}
END_TEST

/* At every place where the cursor stops. */
START_TEST(a_letter_goes_in_at_the_cursor_and_out_again)
{
	const char *text = samples[_i].text;
	struct typing typing = TYPING_EMPTY;
	struct text words = TEXT_EMPTY;

	setlocale(LC_CTYPE, "C.UTF-8");
	typing_set(&typing, text, 100);
	typing_edit(&typing, TYPING_START);
	do {
		text_clear(&words);
		typing_add_before(&typing, &words);
		text_add(&words, "x");
		text_add(&words, text + words.length - 1);
		type(&typing, "x");
		check_says(&typing, words.bytes);
		typing_edit(&typing, TYPING_BACKSPACE);
		check_says(&typing, text);
		typing_edit(&typing, TYPING_RIGHT);
	} while (typing.at < typing.count);
	text_fini(&words);
	typing_fini(&typing);
}
END_TEST

START_TEST(the_cursor_stops_at_the_same_places_both_ways)
{
	struct typing typing = TYPING_EMPTY;
	size_t stops[128];
	int count = 0;

	setlocale(LC_CTYPE, "C.UTF-8");
	typing_set(&typing, samples[_i].text, 100);
	while (typing.at < typing.count) {
		stops[count++] = typing.at;
		typing_edit(&typing, TYPING_RIGHT);
	}
	typing_edit(&typing, TYPING_RIGHT);
	ck_assert_uint_eq(typing.at, typing.count);
	while (count) {
		typing_edit(&typing, TYPING_LEFT);
		ck_assert_uint_eq(typing.at, stops[--count]);
	}
	typing_edit(&typing, TYPING_LEFT);
	ck_assert_uint_eq(typing.at, 0);
	typing_fini(&typing);
}
END_TEST

/* One Delete for each step of the cursor. */
START_TEST(delete_takes_what_the_cursor_steps_over)
{
	struct typing typing = TYPING_EMPTY;
	int steps = 0, deletes = 0;

	setlocale(LC_CTYPE, "C.UTF-8");
	typing_set(&typing, samples[_i].text, 100);
	for (; typing.at < typing.count; steps++)
		typing_edit(&typing, TYPING_RIGHT);
	typing_edit(&typing, TYPING_START);
	for (; typing.count; deletes++)
		typing_edit(&typing, TYPING_DELETE);
	ck_assert_int_eq(deletes, steps);
	typing_fini(&typing);
}
END_TEST

START_TEST(bytes_that_are_no_character_are_kept)
{
	struct typing typing = TYPING_EMPTY;

	setlocale(LC_CTYPE, "C.UTF-8");
	typing_set(&typing, "a\377b\303", 10);
	ck_assert_uint_eq(typing.count, 4);
	typing_edit(&typing, TYPING_END);
	type(&typing, "c");
	check_says(&typing, "a\377b\303c");
	typing_fini(&typing);
}
END_TEST

/* ---- Keys ------------------------------------------------------------------------------------ */

enum { FRESH = -1 };

/* A text, where the cursor is in it by characters, what is done, what it says then and where the
 * cursor is. */
static const struct {
	const char *text;
	int at;
	enum typing_edit edit;
	const char *after;
	size_t then;
} edits[] = {
	{ "abc", 2, TYPING_LEFT, "abc", 1 }, { "abc", 0, TYPING_LEFT, "abc", 0 },
	{ "abc", 3, TYPING_RIGHT, "abc", 3 }, { "abc", 2, TYPING_START, "abc", 0 },
	{ "abc", 1, TYPING_END, "abc", 3 },
	{ "abc", 2, TYPING_BACKSPACE, "ac", 1 }, { "abc", 0, TYPING_BACKSPACE, "abc", 0 },
	{ "abc", 1, TYPING_DELETE, "ac", 1 }, { "abc", 3, TYPING_DELETE, "abc", 3 },
	{ "one two", 5, TYPING_ERASE_BEFORE, "wo", 0 }, { "one", 0, TYPING_ERASE_BEFORE, "one", 0 },
	{ "one two", 3, TYPING_ERASE_REST, "one", 3 }, { "one", 3, TYPING_ERASE_REST, "one", 3 },
	{ "one two", 7, TYPING_ERASE_WORD, "one ", 4 },
	{ "one  two", 5, TYPING_ERASE_WORD, "two", 0 },
	{ "one", 0, TYPING_ERASE_WORD, "one", 0 }, { "   ", 2, TYPING_ERASE_WORD, " ", 0 },
	{ u8"\u5EAD \u5712\u3000", 4, TYPING_ERASE_WORD, u8"\u5EAD ", 2 },
	/* A mark is taken off its letter, and a part off a syllable. */
	{ u8"cafe\u0301", 5, TYPING_BACKSPACE, "cafe", 4 },
	{ u8"\u0E19\u0E49\u0E33", 2, TYPING_BACKSPACE, u8"\u0E19\u0E33", 1 },
	{ u8"\u1100\u1161\u11A8", 3, TYPING_BACKSPACE, u8"\u1100\u1161", 2 },
	/* What is held together goes together. */
	{ u8"a\U0001F469\u200D\U0001F33E", 4, TYPING_BACKSPACE, "a", 1 },
	{ u8"a\u2764\uFE0F", 3, TYPING_BACKSPACE, "a", 1 },
	{ u8"a\U0001F469\U0001F3FD", 3, TYPING_BACKSPACE, "a", 1 },
	{ u8"e\u0301x", 0, TYPING_DELETE, "x", 0 },
	{ u8"e\u0301x", 0, TYPING_RIGHT, u8"e\u0301x", 2 },
	{ u8"e\u0301x", 2, TYPING_LEFT, u8"e\u0301x", 0 },
	/* Within what a joiner has just bound. */
	{ u8"\U0001F469\u200D\U0001F33E", 2, TYPING_LEFT, u8"\U0001F469\u200D\U0001F33E", 0 },
	{ u8"\U0001F469\u200D\U0001F33E", 2, TYPING_RIGHT, u8"\U0001F469\u200D\U0001F33E", 3 },
	{ u8"\U0001F469\u200D\U0001F33Ex", 2, TYPING_DELETE, "x", 0 },
	/* Just come to: erasing takes all, moving leaves all. */
	{ "abc", FRESH, TYPING_BACKSPACE, "", 0 }, { "abc", FRESH, TYPING_DELETE, "", 0 },
	{ "abc", FRESH, TYPING_ERASE_BEFORE, "", 0 }, { "abc", FRESH, TYPING_ERASE_REST, "", 0 },
	{ "abc", FRESH, TYPING_ERASE_WORD, "", 0 }, { "abc", FRESH, TYPING_END, "abc", 3 },
	{ "abc", FRESH, TYPING_RIGHT, "abc", 1 }, { "", FRESH, TYPING_BACKSPACE, "", 0 },
};

START_TEST(a_key_does_what_it_says)
{
	struct typing typing = TYPING_EMPTY;

	setlocale(LC_CTYPE, "C.UTF-8");
	typing_set(&typing, edits[_i].text, 100);
	ck_assert(typing.is_fresh);
	if (edits[_i].at != FRESH) {
		typing.at = (size_t)edits[_i].at;
		typing.is_fresh = false;
	}
	typing_edit(&typing, edits[_i].edit);
	check_says(&typing, edits[_i].after);
	ck_assert_uint_eq(typing.at, edits[_i].then);
	ck_assert(!typing.is_fresh);
	typing_fini(&typing);
}
END_TEST

START_TEST(what_is_typed_first_takes_the_place_of_all)
{
	struct typing typing = TYPING_EMPTY;

	typing_set(&typing, "before", 10);
	type(&typing, "ab");
	check_says(&typing, "ab");
	typing_set(&typing, "before", 10);
	typing_edit(&typing, TYPING_END);
	type(&typing, "ab");
	check_says(&typing, "beforeab");
	typing_fini(&typing);
}
END_TEST

/* ---- Limits ---------------------------------------------------------------------------------- */

START_TEST(what_has_no_room_does_not_go_in_and_changes_nothing)
{
	static const uint32_t codes[] = { 'x', 'y', 'z', 'u' };
	struct typing typing = TYPING_EMPTY;

	typing_set(&typing, "abc", 3);
	ck_assert_uint_eq(typing_room(&typing), 3);
	ck_assert(!typing_insert(&typing, codes, 4));
	check_says(&typing, "abc");
	ck_assert(typing.is_fresh);
	ck_assert(typing_insert(&typing, codes, 3));
	check_says(&typing, "xyz");
	ck_assert_uint_eq(typing_room(&typing), 0);
	ck_assert(!typing_insert(&typing, codes, 1));
	check_says(&typing, "xyz");
	typing_edit(&typing, TYPING_BACKSPACE);
	ck_assert(typing_insert(&typing, codes, 1));
	check_says(&typing, "xyx");
	typing_set(&typing, "longer than that", 3); /* as it was found: kept, not added to */
	typing_edit(&typing, TYPING_END);
	ck_assert_uint_eq(typing_room(&typing), 0);
	ck_assert(!typing_insert(&typing, codes, 1));
	check_says(&typing, "longer than that");
	typing_fini(&typing);
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

/* The same done to a plain array, one character after the other. */
START_TEST(no_order_of_keys_loses_a_character)
{
	struct random r = { (uint64_t)_i };
	struct typing typing = TYPING_EMPTY;

	setlocale(LC_CTYPE, "C.UTF-8");
	typing_set(&typing, samples[random_below(&r, SAMPLES)].text, 60);
	for (int step = 0; step < 400; step++) {
		size_t count = typing.is_fresh ? 0 : typing.count;
		size_t at = typing.is_fresh ? 0 : typing.at;
		uint32_t before[256], codes[2] = { 'a', 0x301 };

		memcpy(before, typing.codes, typing.count * sizeof *before);
		if (random_below(&r, 2) == 0) {
			bool fits = count + 2 <= 60;

			ck_assert_int_eq(typing_insert(&typing, codes, 2), fits);
			if (fits) {
				ck_assert_uint_eq(typing.count, count + 2);
				ck_assert_mem_eq(typing.codes, before, at * sizeof *before);
				ck_assert_mem_eq(typing.codes + at + 2, before + at,
					(count - at) * sizeof *before);
			}
		} else {
			typing_edit(&typing,
				(enum typing_edit)random_below(&r, TYPING_ERASE_REST + 1));
			ck_assert_uint_le(typing.at, typing.count);
			ck_assert_mem_eq(typing.codes, before, typing.at * sizeof *before);
		}
	}
	typing_fini(&typing);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("typing");
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
