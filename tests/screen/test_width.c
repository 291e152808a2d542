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
	setlocale(LC_CTYPE, "C");
	char *words = encode_for_locale("caf\303\251 \345\272\255");

	ck_assert_str_eq(words, "caf? ?");
	ck_assert_int_eq(width_of("caf\303\251"), 4);
	free(words);
}
END_TEST

START_TEST(words_come_back_from_the_locale_as_they_went)
{
	static const char *const words[] = { "", "plain", "caf\303\251", "\345\272\255",
		"\360\237\214\263" };

	setlocale(LC_CTYPE, "C.UTF-8");
	for (size_t i = 0; i < sizeof words / sizeof *words; i++) {
		char *local = encode_for_locale(words[i]), *back = encode_from_locale(local);

		ck_assert_str_eq(back, words[i]);
		free(local);
		free(back);
	}
}
END_TEST

START_TEST(bytes_that_are_no_character_are_left_out)
{
	setlocale(LC_CTYPE, "C.UTF-8");
	char *back = encode_from_locale("a\377b\302");

	ck_assert_str_eq(back, "ab");
	free(back);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("width");
	TCase *lines = suite_case(suite, "lines"), *locale = suite_case(suite, "locale");

	tcase_add_test(lines, lines_break_between_words_and_at_newlines);
	tcase_add_test(lines, wide_characters_take_two_columns_and_are_never_halved);
	tcase_add_test(locale, what_the_locale_cannot_show_is_a_question_mark);
	tcase_add_test(locale, words_come_back_from_the_locale_as_they_went);
	tcase_add_test(locale, bytes_that_are_no_character_are_left_out);
	return suite;
}
