/* Words, numbers and quoted texts of one line. */
#include "base/scan.h"
#include "base/text.h"
#include "support/runner.h"

#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

static struct scan start(const char *text)
{
	return scan_start(text, strlen(text), 4);
}

START_TEST(words_end_at_blanks_and_commas)
{
	struct scan s = start("  bed\tb, \"x y\"");
	size_t length;
	const char *word = scan_word(&s, &length);

	ck_assert(scan_word_is(word, length, "bed"));
	ck_assert(!scan_word_is(word, length, "be"));
	ck_assert(!scan_word_is(word, length, "beds"));
	word = scan_word(&s, &length);
	ck_assert(scan_word_is(word, length, "b"));
	scan_word(&s, &length);
	ck_assert_uint_eq(length, 0);
	ck_assert(scan_take(&s, ','));
	ck_assert(!scan_take(&s, ','));
	word = scan_word(&s, &length);
	ck_assert(scan_word_is(word, length, "\"x"));
	ck_assert(!scan_is_done(&s));
	ck_assert_int_eq(scan_peek(&s), 'y');
	s.at += 2;
	ck_assert(scan_is_done(&s));
	ck_assert_int_eq(scan_peek(&s), '\0');
	scan_word(&s, &length);
	ck_assert_uint_eq(length, 0);
}
END_TEST

START_TEST(several_words_are_taken_together_or_not_at_all)
{
	struct scan s = start(" water  july 1 in");

	ck_assert(!scan_take_words(&s, "water june"));
	ck_assert(!scan_take_words(&s, "water jul"));
	ck_assert_uint_eq(s.at, 0);
	ck_assert(scan_take_words(&s, "water july"));
	ck_assert(scan_take_words(&s, "1"));
	ck_assert(!scan_take_words(&s, "in x"));
	ck_assert(scan_take_words(&s, "in"));
	ck_assert(scan_is_done(&s));
}
END_TEST

START_TEST(only_blanks_left_is_done)
{
	struct scan s = start(" \t ");

	ck_assert(scan_is_done(&s));
	ck_assert_uint_eq(s.at, s.length);
	ck_assert(!scan_take(&s, ' '));
}
END_TEST

static const struct {
	const char *text;
	size_t at;
	int column;
	const char *found;
} words[] = {
	{ "bed b", 0, 1, "bed" }, { "bed b", 3, 5, "b" }, { "bed   ", 3, 7, "the end of the line" },
	{ "topsoil 5,compost", 8, 9, "5" }, { "a,b", 1, 2, "," },
	{ "", 0, 1, "the end of the line" },
	{ " \t\x01", 0, 3, "<01>" },
};

START_TEST(a_failure_points_at_the_next_word)
{
	struct scan s = start(words[_i].text);
	struct diag d;

	ck_assert(!scan_fail(&s, words[_i].at, &d, "%d %s", 1, "thing"));
	ck_assert_int_eq(d.line, 4);
	ck_assert_int_eq(d.column, words[_i].column);
	ck_assert_str_eq(d.found, words[_i].found);
	ck_assert_str_eq(d.expected, "1 thing");
}
END_TEST

static const struct {
	const char *text;
	size_t at;
	const char *found;
} characters[] = {
	{ "ab", 0, "a" }, { "ab", 1, "b" }, { "ab", 2, "the end of the line" },
	{ "a b", 1, "a blank" },
	{ "a\tb", 1, "<09>" }, { "a\xE2\x82\xACz", 1, "\xE2\x82\xAC" }, { "a\xFFz", 1, "<FF>" },
	{ "a,b", 1, "," },
};

START_TEST(a_failure_here_points_at_one_character)
{
	struct scan s = start(characters[_i].text);
	struct diag d;

	s.at = characters[_i].at;
	ck_assert(!scan_fail_here(&s, &d, "%s", "other"));
	ck_assert_int_eq(d.column, (int)s.at + 1);
	ck_assert_str_eq(d.found, characters[_i].found);
	ck_assert_str_eq(d.expected, "other");
}
END_TEST

static const struct {
	const char *text;
	int places;
	int64_t units;
	size_t taken; /* 0: refused */
} decimals[] = {
	{ "0", 0, 0, 1 }, { "7", 0, 7, 1 }, { "42 x", 0, 42, 2 }, { "007", 0, 7, 3 },
	{ "1.5", 0, 1, 1 }, { "1.", 0, 1, 1 },
	{ "1", 6, 1000000, 1 }, { "1.5", 6, 1500000, 3 }, { "1.500000", 6, 1500000, 8 },
	{ "0.000001", 6, 1, 8 }, { "1.25,", 2, 125, 4 }, { "1.2.3", 2, 120, 3 },
	{ "12ab", 3, 12000, 2 },
	{ "", 6, 0, 0 }, { "x", 6, 0, 0 }, { ".5", 6, 0, 0 }, { "1.", 6, 0, 0 }, { "-1", 6, 0, 0 },
	{ "+1", 6, 0, 0 }, { " 1", 6, 0, 0 }, { "1.1234567", 6, 0, 0 }, { "1.234", 2, 0, 0 },
	{ "900000000000000000", 0, INT64_C(900000000000000000), 18 },
	{ "900000000000000001", 0, 0, 0 },
	{ "900000000000", 6, INT64_C(900000000000000000), 12 },
	{ "900000000000.000001", 6, 0, 0 }, { "900000000001", 6, 0, 0 },
	{ "99999999999999999999999999999999", 0, 0, 0 },
	{ "18446744073709551617", 0, 0, 0 }, /* 2^64 + 1 */
};

START_TEST(a_decimal_is_read_exactly_or_nothing_is_taken)
{
	struct scan s = start(decimals[_i].text);
	int64_t units = -5;
	bool done = scan_decimal(&s, decimals[_i].places, &units);

	ck_assert_msg(done == (decimals[_i].taken > 0), "%s", decimals[_i].text);
	ck_assert_uint_eq(s.at, decimals[_i].taken);
	ck_assert_int_eq(units, done ? decimals[_i].units : -5);
}
END_TEST

static const struct {
	const char *line, *text;
} quoted[] = {
	{ "\"\"", "" }, { "  \"a b\"", "a b" }, { "\"a\\\"b\"", "a\"b" }, { "\"a\\\\b\"", "a\\b" },
	{ "\"\\\\\\\"\"", "\\\"" }, { "\"caf\xC3\xA9 \xF0\x9F\x8C\xB1\"",
		"caf\xC3\xA9 \xF0\x9F\x8C\xB1" },
	{ "\"a\xE2\x80\x8D" "b\"", "a\xE2\x80\x8D" "b" },
	{ "\"\\\"\xE2\x80\x8C\\\"\"", "\"\xE2\x80\x8C\"" },
	{ "\"'\"", "'" }, { "\"a, b\"", "a, b" }, { "\"12345\"", "12345" },
	{ "\"\xC3\xA4\xC3\xA4\xC3\xA4\xC3\xA4\xC3\xA4\"",
		"\xC3\xA4\xC3\xA4\xC3\xA4\xC3\xA4\xC3\xA4" },
};

START_TEST(a_quoted_text_is_read_without_its_escapes)
{
	struct scan s = start(quoted[_i].line);
	char *text = NULL;
	struct diag d;

	ck_assert_msg(scan_quoted(&s, 0, 7, &text, &d), "%s", quoted[_i].line);
	ck_assert_str_eq(text, quoted[_i].text);
	ck_assert_uint_eq(s.at, s.length);
	free(text);
}
END_TEST

static const struct {
	const char *line;
	int column;
	const char *found, *expected;
} unquoted[] = {
	{ "", 1, "the end of the line", "text in double quotes" },
	{ "  Rose", 3, "Rose", "text in double quotes" },
	{ "'Rose'", 1, "'Rose'", "text in double quotes" },
	{ "\"Rose", 6, "the end of the line", "a closing double quote" },
	{ "\"", 2, "the end of the line", "a closing double quote" },
	{ "\"a\\\"", 5, "the end of the line", "a closing double quote" },
	{ "\"a\\nb\"", 3, "\\", "a printable character, \\\" or \\\\" },
	{ "\"a\\", 3, "\\", "a printable character, \\\" or \\\\" },
	{ "\"a\\\xC3\xA4\"", 3, "\\", "a printable character" },
	{ "\"a\tb\"", 3, "<09>", "a printable character" },
	{ "\"a\x1B[0m\"", 3, "<1B>", "a printable character" },
	{ "\"a\xE2\x80\xAE" "b\"", 3, "<E2><80><AE>", "a printable character" },
	{ "\"a\xE2\x80\x8B\"", 3, "<E2><80><8B>", "a printable character" },
	{ "\"a\xEE\x80\x80\"", 3, "<EE><80><80>", "a printable character" },
	{ "\"a\xFF\"", 3, "<FF>", "a printable character" },
	{ "\"\xE2\x80\x8D" "a\"", 2, "<E2><80><8D>", "a printable character" },
	{ "\"a\xE2\x80\x8D\"", 3, "<E2><80><8D>", "a printable character" },
	{ "\"a\xE2\x80\x8D", 3, "<E2><80><8D>", "a printable character" },
	{ "\"a\xE2\x80\x8D\xE2\x80\x8D" "b\"", 3, "<E2><80><8D>", "a printable character" },
	{ "\"a\\\xE2\x80\x8D" "b\"", 3, "\\", "a printable character" },
	{ "\"\"", 1, "\"\"", "1 to 5 characters in the quotes" },
	{ "  \"123456\"", 3, "\"123456\"", "1 to 5 characters in the quotes" },
	{ "\"\xC3\xA4\xC3\xA4\xC3\xA4\xC3\xA4\xC3\xA4\xC3\xA4\"", 1,
		"\"\xC3\xA4\xC3\xA4\xC3\xA4\xC3\xA4"
		"\xC3\xA4\xC3\xA4\"", "1 to 5 characters in the quotes" },
};

START_TEST(a_text_that_is_none_is_refused_where_it_goes_wrong)
{
	struct scan s = start(unquoted[_i].line);
	char *text = NULL;
	struct diag d = { 0 };

	ck_assert_msg(!scan_quoted(&s, 1, 5, &text, &d), "%s", unquoted[_i].line);
	ck_assert_ptr_null(text);
	ck_assert_int_eq(d.line, 4);
	ck_assert_msg(d.column == unquoted[_i].column, "%s: column %d", unquoted[_i].line,
		d.column);
	ck_assert_str_eq(d.found, unquoted[_i].found);
	ck_assert_msg(strstr(d.expected, unquoted[_i].expected), "%s", d.expected);
}
END_TEST

/* In memory of exactly its size: a sanitizer or valgrind sees a byte read beyond it. */
START_TEST(nothing_behind_the_line_is_read)
{
	static const char *const lines[] = { "word", "\"text", "\"text\\", "12", "12.", "a,",
		"\"\xE2\x82" };
	size_t length = strlen(lines[_i]), word;
	char *exact = malloc(length), *text = NULL;
	int64_t units;
	struct diag d;

	memcpy(exact, lines[_i], length);
	struct scan s = scan_start(exact, length, 1), again = s;
	ck_assert(!scan_quoted(&s, 0, 9, &text, &d));
	scan_fail_here(&s, &d, "x");
	s = again;
	scan_decimal(&s, 6, &units);
	s = again;
	scan_word(&s, &word);
	ck_assert_int_eq(scan_peek(&s), length > word ? ',' : '\0');
	free(exact);
}
END_TEST

/* The line is part of a text: as much is taken of it whatever comes after it. */
START_TEST(what_stands_behind_the_line_does_not_matter)
{
	static const char *const behind[] = { "7", ".5", "x", ",", "\"", "\\", " 1", "\xBF",
		("\xE2\x80\x8D" "b\"") };
	static const char *const lines[] = { "12", "12.", "1.2", "word", "a,", "  ", "\"text",
		"\"text\\", "\"\xE2\x80\x8D", "\"a\xE2\x80\x8D", "\xE2\x82", "" };
	const char *line = lines[_i];
	size_t length = strlen(line);

	for (size_t i = 0; i < sizeof behind / sizeof *behind; i++) {
		struct scan alone = start(line), s;
		struct text text = TEXT_EMPTY;
		struct diag expected = { 0 }, d = { 0 };
		int64_t one = -1, other = -1;
		size_t word, same;
		char *read = NULL;

		text_print(&text, "%s%s", line, behind[i]);
		s = scan_start(text.bytes, length, 4);
		ck_assert_int_eq(scan_peek(&s), scan_peek(&alone));
		ck_assert_int_eq(scan_decimal(&s, 3, &one), scan_decimal(&alone, 3, &other));
		ck_assert_int_eq(one, other);
		ck_assert_uint_eq(s.at, alone.at);
		s.at = alone.at = 0;
		scan_word(&s, &word), scan_word(&alone, &same);
		ck_assert_uint_eq(word, same);
		ck_assert_int_eq(scan_is_done(&s), scan_is_done(&alone));
		s.at = alone.at = 0;
		ck_assert(!scan_quoted(&s, 0, 9, &read, &d));
		ck_assert(!scan_quoted(&alone, 0, 9, &read, &expected));
		ck_assert_int_eq(d.column, expected.column);
		ck_assert_str_eq(d.found, expected.found);
		ck_assert_str_eq(d.expected, expected.expected);
		s.at = length;
		ck_assert(!scan_take(&s, behind[i][0]));
		text_fini(&text);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("scan");
	TCase *word = suite_case(suite, "words"), *number = suite_case(suite, "numbers"),
		*text = suite_case(suite, "texts");

	tcase_add_test(word, words_end_at_blanks_and_commas);
	tcase_add_test(word, only_blanks_left_is_done);
	tcase_add_test(word, several_words_are_taken_together_or_not_at_all);
	tcase_add_loop_test(word, a_failure_points_at_the_next_word, 0, COUNT(words));
	tcase_add_loop_test(word, a_failure_here_points_at_one_character, 0, COUNT(characters));
	tcase_add_loop_test(number, a_decimal_is_read_exactly_or_nothing_is_taken, 0,
		COUNT(decimals));
	tcase_add_loop_test(text, a_quoted_text_is_read_without_its_escapes, 0, COUNT(quoted));
	tcase_add_loop_test(text, a_text_that_is_none_is_refused_where_it_goes_wrong, 0,
		COUNT(unquoted));
	tcase_add_loop_test(text, nothing_behind_the_line_is_read, 0, 7);
	tcase_add_loop_test(text, what_stands_behind_the_line_does_not_matter, 0, 12);
	return suite;
}
