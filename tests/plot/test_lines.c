/* A text file line by line. */
#include "plot/format/lines.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))
#define BYTES(text) text, sizeof(text) - 1

enum { MOST = 8 };

/* Lines joined by '|' as they are read, and how it ends: '$' at the end, '!' at a bad line. */
static void read_lines(const char *bytes, size_t length, char *read, struct diag *d)
{
	char *exact = malloc(length ? length : 1);
	struct lines lines = { exact, length, 0, 0 };
	struct scan s;
	enum line_result result;

	memcpy(exact, bytes, length);
	*read = '\0';
	while ((result = lines_next(&lines, MOST, &s, d)) == LINE_READ) {
		strncat(read, s.text, s.length);
		strcat(read, "|");
		ck_assert_int_eq(s.line, lines.number);
		ck_assert_uint_eq(s.at, 0);
	}
	strcat(read, result == LINE_END ? "$" : "!");
	free(exact);
}

static const struct {
	const char *bytes;
	size_t length;
	const char *read;
} files[] = {
	{ BYTES(""), "$" }, { BYTES("a"), "a|$" }, { BYTES("a\n"), "a|$" }, { BYTES("\n"), "|$" },
	{ BYTES("a\nb"), "a|b|$" }, { BYTES("a\n\nb\n"), "a||b|$" },
	{ BYTES("a\r\nb\r\n"), "a|b|$" },
	{ BYTES("\r\n"), "|$" }, { BYTES("  a \t \n"), "  a|$" }, { BYTES(" \t \nb"), "|b|$" },
	{ BYTES("a \r\n"), "a|$" }, { BYTES("12345678\n"), "12345678|$" },
	{ BYTES("12345678\r\n"), "12345678|$" }, { BYTES("12345678"), "12345678|$" },
	{ BYTES("1234567 "), "1234567|$" },
};

START_TEST(lines_are_read_without_their_ends_and_blanks_behind)
{
	char read[100];
	struct diag d;

	read_lines(files[_i].bytes, files[_i].length, read, &d);
	ck_assert_str_eq(read, files[_i].read);
}
END_TEST

static const struct {
	const char *bytes;
	size_t length;
	const char *read;
	int line, column;
	const char *found;
} bad[] = {
	{ BYTES("\xEF\xBB\xBF" "a\n"), "!", 1, 1, "a byte order mark" },
	{ BYTES("\xEF\xBB\xBF"), "!", 1, 1, "a byte order mark" },
	{ BYTES("a\nb\0c\n"), "a|!", 2, 2, "<00>" }, { BYTES("a\rb\n"), "!", 1, 2, "<0D>" },
	{ BYTES("a\r\r\n"), "!", 1, 2, "<0D>" }, { BYTES("a\r"), "!", 1, 2, "<0D>" },
	{ BYTES("\r"), "!", 1, 1, "<0D>" }, { BYTES("\n\xFF\n"), "|!", 2, 1, "<FF>" },
	{ BYTES("ab\xC3\n"), "!", 1, 3, "<C3>" },
	{ BYTES("123456789\n"), "!", 1, 9, "a longer line" },
	{ BYTES("12345678 \n"), "!", 1, 9, "a longer line" },
	{ BYTES("12345678\xFF\n"), "!", 1, 9, "a longer line" },
	{ BYTES("1234567\xC3\xA4\n"), "!", 1, 9, "a longer line" },
	{ BYTES("1234567\xFF\n"), "!", 1, 8, "<FF>" },
	{ BYTES("1234567\xFF" "9\n"), "!", 1, 8, "<FF>" },
	{ BYTES("a\n12345678\rbc\n"), "a|!", 2, 9, "a longer line" },
};

START_TEST(a_bad_line_is_refused_at_its_first_bad_byte)
{
	char read[100];
	struct diag d = { 0 };

	read_lines(bad[_i].bytes, bad[_i].length, read, &d);
	ck_assert_str_eq(read, bad[_i].read);
	ck_assert_int_eq(d.line, bad[_i].line);
	ck_assert_int_eq(d.column, bad[_i].column);
	ck_assert_str_eq(d.found, bad[_i].found);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("lines");
	TCase *reading = suite_case(suite, "reading");

	tcase_add_loop_test(reading, lines_are_read_without_their_ends_and_blanks_behind, 0,
		COUNT(files));
	tcase_add_loop_test(reading, a_bad_line_is_refused_at_its_first_bad_byte, 0, COUNT(bad));
	return suite;
}
