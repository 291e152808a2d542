/* What was found, made fit to be shown. */
#include "base/diag.h"
#include "support/runner.h"

#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

START_TEST(a_diag_has_place_found_and_expected)
{
	struct diag d = { 0 };

	ck_assert(!diag_set(&d, 3, 7, "abcdef", 3, "%d of %s", 5, "these"));
	ck_assert_int_eq(d.line, 3);
	ck_assert_int_eq(d.column, 7);
	ck_assert_str_eq(d.found, "abc");
	ck_assert_str_eq(d.expected, "5 of these");
}
END_TEST

static const struct {
	const char *bytes;
	size_t length;
	const char *shown;
} finds[] = {
	{ "", 0, "nothing" },
	{ "plain words", 11, "plain words" },
	{ "\xC3\xA4\xE2\x82\xAC\xF0\x9F\x8C\xB1", 9, "\xC3\xA4\xE2\x82\xAC\xF0\x9F\x8C\xB1" },
	{ "a\tb", 3, "a<09>b" },
	{ "\x1B[2J", 4, "<1B>[2J" },
	{ "\0x", 2, "<00>x" },
	{ "\x7F", 1, "<7F>" },
	{ "\xFF\xFE", 2, "<FF><FE>" },
	{ "\xC3", 1, "<C3>" },
	{ "\xE2\x80\xAE", 3, "<E2><80><AE>" },      /* turns the direction of text */
	{ "\xC2\x9B", 2, "<C2><9B>" },              /* a control sequence in one character */
};

START_TEST(bytes_that_would_harm_a_terminal_are_shown_as_numbers)
{
	struct diag d;

	diag_set(&d, 1, 1, finds[_i].bytes, finds[_i].length, "x");
	ck_assert_str_eq(d.found, finds[_i].shown);
}
END_TEST

START_TEST(what_just_fits_is_whole_and_what_does_not_ends_in_dots)
{
	char long_text[sizeof ((struct diag *)0)->found + 10];
	size_t room = sizeof ((struct diag *)0)->found - 1;
	struct diag d;

	memset(long_text, 'a', sizeof long_text);
	diag_set(&d, 1, 1, long_text, room, "x");
	ck_assert_uint_eq(strlen(d.found), room);
	ck_assert_ptr_null(strstr(d.found, "..."));
	diag_set(&d, 1, 1, long_text, room + 1, "x");
	ck_assert_uint_eq(strlen(d.found), room);
	ck_assert_str_eq(d.found + room - 4, "a...");
}
END_TEST

START_TEST(no_character_is_cut_in_half)
{
	static const char *const characters[] = { "\xC3\xA4", "\xE2\x82\xAC", "\xF0\x9F\x8C\xB1",
		"\x01" };

	for (int lead = 0; lead < 8; lead++) {
		const char *character = characters[_i];
		size_t step = strlen(character), shown = _i == 3 ? 4 : step;
		char text[200];
		size_t length = (size_t)lead;
		struct diag d;

		memset(text, 'a', (size_t)lead);
		for (int i = 0; i < 40; i++, length += step)
			memcpy(text + length, character, step);
		diag_set(&d, 1, 1, text, length, "x");
		size_t kept = strlen(d.found) - 3;
		ck_assert_str_eq(d.found + kept, "...");
		ck_assert_uint_eq((kept - (size_t)lead) % shown, 0);
		ck_assert_uint_ge(kept + 3 + shown, sizeof d.found);
	}
}
END_TEST

START_TEST(an_expectation_too_long_is_cut_to_its_room)
{
	struct diag d;

	diag_set(&d, 1, 1, "x", 1, "%0500d", 0);
	ck_assert_uint_eq(strlen(d.expected), sizeof d.expected - 1);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("diag");
	TCase *shown = suite_case(suite, "shown");

	tcase_add_test(shown, a_diag_has_place_found_and_expected);
	tcase_add_loop_test(shown, bytes_that_would_harm_a_terminal_are_shown_as_numbers, 0,
		COUNT(finds));
	tcase_add_test(shown, what_just_fits_is_whole_and_what_does_not_ends_in_dots);
	tcase_add_loop_test(shown, no_character_is_cut_in_half, 0, 4);
	tcase_add_test(shown, an_expectation_too_long_is_cut_to_its_room);
	return suite;
}
