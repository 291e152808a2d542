/* Columns of text, line breaks, and the locale's encoding. */

#include "screen/encode.h"
#include "screen/width.h"
#include "support/runner.h"

#include <locale.h>
#include <stdlib.h>
#include <string.h>

static void check_lines(const char *text, int columns, const char *const *lines)
{
	int count = 0;

	for (const char *at = text; *at; count++) {
		size_t next, length = width_line(at, columns, &next);

		ck_assert_ptr_nonnull(lines[count]);
		ck_assert_msg(strlen(lines[count]) == length && !strncmp(at, lines[count], length),
			"line %d is \"%.*s\"", count, (int)length, at);
		ck_assert_uint_gt(next, 0);
		at += next;
	}
	ck_assert_ptr_null(lines[count]);
	ck_assert_int_eq(width_lines(text, columns), count);
}

START_TEST(lines_break_between_words_and_at_newlines)
{
	setlocale(LC_CTYPE, "C.UTF-8");
	check_lines("one two three", 7, (const char *[]){ "one two", "three", NULL });
	check_lines("one two three", 6, (const char *[]){ "one", "two", "three", NULL });
	check_lines("one\n\ntwo\n", 9, (const char *[]){ "one", "", "two", NULL });
	check_lines("one 4\302\240ft", 6, (const char *[]){ "one", "4\302\240ft", NULL });
	check_lines("onetwothree", 4, (const char *[]){ "onet", "woth", "ree", NULL });
	check_lines("", 4, (const char *[]){ NULL });
	check_lines("four\nfive", 4, (const char *[]){ "four", "five", NULL });
}
END_TEST

/* Two columns each for 庭園 and one for m², by East Asian Width (Unicode Standard Annex 11). */
START_TEST(wide_characters_take_two_columns_and_are_never_halved)
{
	setlocale(LC_CTYPE, "C.UTF-8");
	ck_assert_int_eq(width_of("m\302\262"), 2);
	ck_assert_int_eq(width_of("\345\272\255\345\234\222"), 4);
	ck_assert_uint_eq(width_cut("\345\272\255\345\234\222", 3), 3);
	ck_assert_uint_eq(width_cut("abc", 2), 2);
	ck_assert_uint_eq(width_cut("abc", 0), 0);
	ck_assert_int_eq(width_of("e\314\201"), 1);
	ck_assert_int_eq(width_of("4\302\240ft"), 4);
}
END_TEST

START_TEST(what_the_locale_cannot_show_is_a_question_mark)
{
	wchar_t shown;
	int columns;

	setlocale(LC_CTYPE, "C");
	ck_assert_int_eq(width_of("caf\303\251"), 4);
	ck_assert_uint_eq(width_character("\345\272\255", 3, &shown, &columns), 3);
	ck_assert(shown == L'?' && columns == 1);
}
END_TEST

START_TEST(a_cluster_is_as_wide_as_what_is_in_it_and_never_cut)
{
	static const struct {
		const char *text;
		int columns;
		size_t length;
	} clusters[] = {
		{ "ab", 1, 1 }, { u8"e\u0301x", 1, 3 }, { u8"\u0301x", 1, 2 },
		{ u8"\u0E17\u0E35\u0E48", 1, 9 }, { u8"\u1100\u1161\u11A8", 2, 9 },
		{ u8"\U0001F469\u200D\U0001F33E!", 4, 11 }, { u8"\u2764\uFE0F ", 1, 6 },
		{ u8"a\u200B", 1, 1 }, { u8"\u200B", 1, 3 }, { "\377a", 1, 1 },
	};

	setlocale(LC_CTYPE, "C.UTF-8");
	for (size_t i = 0; i < sizeof clusters / sizeof *clusters; i++) {
		const char *text = clusters[i].text;
		int columns;

		ck_assert_uint_eq(width_cluster(text, strlen(text), &columns), clusters[i].length);
		ck_assert_int_eq(columns, clusters[i].columns);
		ck_assert_uint_eq(width_cut(text, columns - 1), 0);
	}
}
END_TEST

START_TEST(what_hides_is_a_question_mark)
{
	static const char *const hidden[] = { u8"\u202E", u8"\u2066", u8"\u061C", u8"\u200B",
		u8"\uFEFF", u8"\u00AD", u8"\uE000", u8"\U000E0041", u8"\uFFF9", "\033" };
	wchar_t shown;
	int columns;

	setlocale(LC_CTYPE, "C.UTF-8");
	for (size_t i = 0; i < sizeof hidden / sizeof *hidden; i++) {
		width_character(hidden[i], strlen(hidden[i]), &shown, &columns);
		ck_assert_int_eq((int)shown, '?');
		ck_assert_int_eq(columns, 1);
	}
}
END_TEST

/* Marks that join, wide letters and those that some terminals take for wide are none. */
START_TEST(plain_characters_are_those_of_scripts_that_have_one_column)
{
	static const struct {
		uint32_t first, last;
	} plain[] = { { ' ', '~' }, { 0xa0, 0xac }, { 0xae, 0x2ff }, { 0x370, 0x482 },
		{ 0x48a, 0x58f }, { 0x1e00, 0x1fff }, { 0x2010, 0x2027 }, { 0x2030, 0x205e },
		{ 0x2070, 0x22ff }, { 0x2500, 0x25ff } };
	size_t at = 0;

	for (uint32_t code = 0; code < 0x3000; code++) {
		at += at < sizeof plain / sizeof *plain && code > plain[at].last;
		ck_assert_msg(width_is_plain(code) == (at < sizeof plain / sizeof *plain &&
			code >= plain[at].first), "U+%04X", (unsigned)code);
	}
}
END_TEST

START_TEST(a_blank_that_does_not_break_is_shown_as_a_blank)
{
	static const wchar_t codes[] = { 0xa0, 0xa1, 0x19e, 0 };
	static const char *const texts[] = { u8"\u00A0", u8"\u00A1", u8"\u019E", NULL };

	setlocale(LC_CTYPE, "C.UTF-8");
	for (int i = 0; texts[i]; i++) {
		wchar_t shown;
		int columns;

		ck_assert_uint_eq(width_character(texts[i], 2, &shown, &columns), 2);
		ck_assert_int_eq(shown, codes[i] == 0xa0 ? L' ' : codes[i]);
		ck_assert_int_eq(columns, 1);
	}
}
END_TEST

START_TEST(what_came_is_read_in_the_locale_or_not_at_all)
{
	static const uint32_t codes[] = { 'c', 0xE9, 0x5EAD, 0x1F333, 0 };
	static const char words[] = u8"c\u00E9\u5EAD\U0001F333";
	size_t count;
	uint32_t *read;

	setlocale(LC_CTYPE, "C.UTF-8");
	read = encode_read(words, sizeof words, &count); /* with its NUL */
	ck_assert_uint_eq(count, 5);
	ck_assert_mem_eq(read, codes, sizeof codes);
	free(read);
	ck_assert_ptr_null(encode_read("a\377b", 3, &count));
	ck_assert_ptr_null(encode_read("ab\303", 3, &count));
	ck_assert_ptr_null(encode_read("ab\303\251", 3, &count)); /* that is not all of it */
	ck_assert_uint_eq(count, 0);
	setlocale(LC_CTYPE, "C");
	ck_assert_ptr_null(encode_read("caf\303\251", 5, &count));
	read = encode_read("cafe", 4, &count);
	ck_assert_uint_eq(count, 4);
	free(read);
}
END_TEST

START_TEST(the_locale_can_show_what_it_has_letters_for)
{
	setlocale(LC_CTYPE, "C.UTF-8");
	ck_assert(encode_can_show(u8"caf\u00E9 \u5EAD \U0001FAE8"));
	ck_assert(!encode_can_show("a\377"));
	setlocale(LC_CTYPE, "C");
	ck_assert(encode_can_show("plain"));
	ck_assert(!encode_can_show(u8"caf\u00E9"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("width");
	TCase *lines = suite_case(suite, "lines"), *locale = suite_case(suite, "locale");

	tcase_add_test(lines, lines_break_between_words_and_at_newlines);
	tcase_add_test(lines, wide_characters_take_two_columns_and_are_never_halved);
	tcase_add_test(locale, what_the_locale_cannot_show_is_a_question_mark);
	tcase_add_test(lines, a_cluster_is_as_wide_as_what_is_in_it_and_never_cut);
	tcase_add_test(lines, plain_characters_are_those_of_scripts_that_have_one_column);
	tcase_add_test(locale, a_blank_that_does_not_break_is_shown_as_a_blank);
	tcase_add_test(locale, what_hides_is_a_question_mark);
	tcase_add_test(locale, what_came_is_read_in_the_locale_or_not_at_all);
	tcase_add_test(locale, the_locale_can_show_what_it_has_letters_for);
	return suite;
}
