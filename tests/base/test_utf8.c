/* Decoding UTF-8, the characters that texts may hold, and how wide they are. */
#include "base/utf8.h"
#include "support/runner.h"

#include <locale.h>
#include <stdlib.h>
#include <string.h>
#include <wchar.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

/* Encodes by the table of RFC 3629, section 3. */
static size_t encode(uint32_t code, char bytes[4])
{
	if (code < 0x80) {
		bytes[0] = (char)code;
		return 1;
	}
	if (code < 0x800) {
		bytes[0] = (char)(0xC0 | code >> 6);
		bytes[1] = (char)(0x80 | (code & 0x3F));
		return 2;
	}
	if (code < 0x10000) {
		bytes[0] = (char)(0xE0 | code >> 12);
		bytes[1] = (char)(0x80 | (code >> 6 & 0x3F));
		bytes[2] = (char)(0x80 | (code & 0x3F));
		return 3;
	}
	bytes[0] = (char)(0xF0 | code >> 18);
	bytes[1] = (char)(0x80 | (code >> 12 & 0x3F));
	bytes[2] = (char)(0x80 | (code >> 6 & 0x3F));
	bytes[3] = (char)(0x80 | (code & 0x3F));
	return 4;
}

START_TEST(every_character_is_decoded_and_surrogates_are_none)
{
	for (uint32_t code = 0; code <= 0x10FFFF; code++) {
		char bytes[4];
		size_t length = encode(code, bytes);
		uint32_t decoded = 1;
		bool is_surrogate = code >= 0xD800 && code <= 0xDFFF;
		size_t step = utf8_decode(bytes, length, &decoded);

		ck_assert_msg(step == (is_surrogate ? 0 : length), "U+%04X: %zu", code, step);
		ck_assert_msg(is_surrogate || decoded == code, "U+%04X is U+%04X", code, decoded);
	}
}
END_TEST

START_TEST(more_bytes_behind_a_character_do_not_matter)
{
	uint32_t code;

	ck_assert_uint_eq(utf8_decode("\xC3\xA4\xFF", 3, &code), 2);
	ck_assert_uint_eq(code, 0xE4);
}
END_TEST

static const struct {
	const char *bytes;
	size_t length;
} broken[] = {
	{ "\x80", 1 }, { "\xBF", 1 }, { "\xFE", 1 }, { "\xFF", 1 },
	{ "\xC0\x80", 2 }, { "\xC1\xBF", 2 },                      /* overlong */
	{ "\xE0\x80\x80", 3 }, { "\xE0\x9F\xBF", 3 },
	{ "\xF0\x80\x80\x80", 4 }, { "\xF0\x8F\xBF\xBF", 4 },
	{ "\xED\xA0\x80", 3 }, { "\xED\xBF\xBF", 3 },              /* surrogates */
	{ "\xF4\x90\x80\x80", 4 }, { "\xF5\x80\x80\x80", 4 },      /* over 10FFFF */
	{ "\xC3", 1 }, { "\xE2\x82", 2 }, { "\xF0\x9F\x8C", 3 },   /* cut short */
	{ "\xC3x", 2 }, { "\xE2\x82x", 3 }, { "\xE2x\x82", 3 }, { "\xF0\x9F\x8Cx", 4 },
	{ "\xC3\xC3", 2 },
};

START_TEST(broken_bytes_are_no_character)
{
	char *exact = malloc(broken[_i].length);
	uint32_t code = 77;

	memcpy(exact, broken[_i].bytes, broken[_i].length);
	ck_assert_uint_eq(utf8_decode(exact, broken[_i].length, &code), 0);
	ck_assert_uint_eq(code, 77);
	free(exact);
}
END_TEST

static const struct {
	uint32_t code;
	bool is_text;
} characters[] = {
	{ ' ', true }, { 'A', true }, { '~', true }, { 0xA0, true }, { 0xE9, true },
	{ 0x3B1, true },
	{ 0x4E2D, true }, { 0x1F331, true }, { 0x301, true }, { 0xFFFD, true }, { 0x10000, true },
	{ 0x00, false }, { 0x09, false }, { 0x0A, false }, { 0x0D, false }, { 0x1B, false },
	{ 0x1F, false }, { 0x7F, false }, { 0x80, false }, { 0x85, false }, { 0x9B, false },
	{ 0x9F, false },                                           /* controls */
	{ 0xAD, false }, { 0x200B, false }, { 0x200C, false }, { 0x200D, false }, { 0x2060, false },
	{ 0xFEFF, false },                                         /* no width */
	{ 0x061C, false }, { 0x200E, false }, { 0x200F, false }, { 0x202A, false },
	{ 0x202E, false }, { 0x2066, false }, { 0x2069, false },   /* direction */
	{ 0x2028, false }, { 0x2029, false },                      /* separators */
	{ 0xE000, false }, { 0xF8FF, false }, { 0xF0000, false }, { 0x10FFFD, false }, /* private */
	{ 0xFDD0, false }, { 0xFDEF, false }, { 0xFFFE, false }, { 0xFFFF, false },
	{ 0x1FFFE, false }, { 0x10FFFF, false },                   /* noncharacters */
	{ 0xE0001, false }, { 0xE0061, false },                    /* tags */
	{ 0x2027, true }, { 0x202F, true }, { 0x2010, true }, { 0xFDCF, true }, { 0xFDF0, true },
	{ 0xF900, true }, { 0xAC, true }, { 0xAE, true }, { 0xD7FF, true }, { 0xEFFFD, true },
};

START_TEST(text_holds_what_is_seen_and_nothing_that_hides)
{
	ck_assert_msg(utf8_is_text(characters[_i].code) == characters[_i].is_text, "U+%04X",
		characters[_i].code);
}
END_TEST

static const struct {
	const char *text;
	bool fits[3]; /* each character of three */
} joined[] = {
	{ "a\342\200\215b", { true, true, true } },
	{ "\340\244\225\342\200\214\340\244\267", { true, true, true } },
	{ "\360\237\221\251\342\200\215\360\237\214\276", { true, true, true } },
	{ "\342\200\215ab", { false, true, true } },
	{ "ab\342\200\215", { true, true, false } },
	{ "a\342\200\215\342\200\214", { true, false, false } },
	{ "\033\342\200\215a", { false, false, true } },
	{ "a\342\200\215\342\200\256", { true, false, false } },
	{ "a\342\200\256b", { true, false, true } },
};

START_TEST(a_joiner_is_text_between_two_characters)
{
	const char *text = joined[_i].text;
	size_t at = 0, step;

	for (int i = 0; i < 3; i++, at += step)
		ck_assert_msg(utf8_fits_text(text, strlen(text), at, &step) == joined[_i].fits[i],
			"character %d", i);
	ck_assert_uint_eq(at, strlen(text));
}
END_TEST

/* The Unicode Character Database 15.0 (UnicodeData.txt): 65 code points of general category Cc,
 * 170 of Cf, 1 of Zl, 1 of Zp, 137,468 of Co; and 66 noncharacters. */
START_TEST(as_many_are_refused_as_the_standard_has)
{
	int refused = 0;

	for (uint32_t code = 0; code <= 0x10FFFF; code++)
		refused += !utf8_is_text(code) && !(code >= 0xD800 && code <= 0xDFFF);
	ck_assert_int_eq(refused, 65 + 170 + 1 + 1 + 137468 + 66);
}
END_TEST

/* The C library's table of widths, that of the Unicode Standard, is the reference. */
START_TEST(a_character_is_never_wider_than_reckoned)
{
	int same = 0, known = 0;

	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C.UTF-8"));
	for (uint32_t code = 0x20; code <= 0x10FFFF; code++) {
		int columns = wcwidth((wchar_t)code);

		if (columns < 0 || !utf8_is_text(code) || (code >= 0xD800 && code <= 0xDFFF))
			continue;
		ck_assert_msg(utf8_columns(code) >= columns, "U+%04X: %d, not %d", code,
			utf8_columns(code), columns);
		known++;
		same += utf8_columns(code) == columns;
	}
	/* More is reckoned for rare marks and for what terminals differ on. */
	ck_assert_msg(same > known / 100 * 95, "%d of %d", same, known);
}
END_TEST

/* As the sizes of blocks and ranges add up: of no width the combining marks of 0300,
 * 1AB0, 1DC0, 20D0 and FE20, variation selectors and two joiners; of two columns Jamo, clocks,
 * angles, squares, symbols and Dingbats, arrows, the Han planes and what is between, Hangul,
 * ideographs and forms, full width, Tangut to Kana, pictures. */
START_TEST(as_many_characters_as_are_told_have_no_width_or_two_columns)
{
	int columns[3] = { 0 };

	for (uint32_t code = 0; code <= 0x10FFFF; code++)
		columns[utf8_columns(code)]++;
	ck_assert_int_eq(columns[0], 112 + 80 + 64 + 2 + 33 + 16 + 16);
	ck_assert_int_eq(columns[2], 96 + 2 + 2 + 11 + 2 + 448 + 59 + 447 + 29839 + 32 + 11172 +
		512 + 16 + 64 + 96 + 7 + 17184 + 2816 + 131070);
}
END_TEST

START_TEST(letters_have_one_column_and_pictures_two)
{
	ck_assert_int_eq(utf8_columns('a'), 1);
	ck_assert_int_eq(utf8_columns(0xE9), 1);
	ck_assert_int_eq(utf8_columns(0x301), 0);
	ck_assert_int_eq(utf8_columns(0x4E2D), 2);
	ck_assert_int_eq(utf8_columns(0x1F331), 2);
	ck_assert_int_eq(utf8_columns(0xAC00), 2);
}
END_TEST

START_TEST(characters_are_counted_not_bytes)
{
	ck_assert_uint_eq(utf8_count("", 0), 0);
	ck_assert_uint_eq(utf8_count("abc", 3), 3);
	ck_assert_uint_eq(utf8_count("a\xC3\xA4\xE2\x82\xAC\xF0\x9F\x8C\xB1", 10), 4);
	ck_assert_uint_eq(utf8_count("a\xC3\xA4", 1), 1);
}
END_TEST

START_TEST(every_character_is_encoded_as_it_was_decoded)
{
	for (uint32_t code = 0; code <= 0x10FFFF; code++) {
		char bytes[UTF8_MOST];
		uint32_t back;
		size_t length = utf8_encode(code, bytes);

		if (code >= 0xD800 && code <= 0xDFFF)
			continue;
		ck_assert_uint_eq(utf8_decode(bytes, length, &back), length);
		ck_assert_uint_eq(back, code);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("utf8");
	TCase *decoding = suite_case(suite, "decoding"), *text = suite_case(suite, "text");

	tcase_add_test(decoding, every_character_is_decoded_and_surrogates_are_none);
	tcase_add_test(decoding, every_character_is_encoded_as_it_was_decoded);
	tcase_add_test(decoding, more_bytes_behind_a_character_do_not_matter);
	tcase_add_loop_test(decoding, broken_bytes_are_no_character, 0, COUNT(broken));
	tcase_add_loop_test(text, text_holds_what_is_seen_and_nothing_that_hides, 0,
		COUNT(characters));
	tcase_add_loop_test(text, a_joiner_is_text_between_two_characters, 0, COUNT(joined));
	tcase_add_test(text, as_many_are_refused_as_the_standard_has);
	tcase_add_test(text, a_character_is_never_wider_than_reckoned);
	tcase_add_test(text, as_many_characters_as_are_told_have_no_width_or_two_columns);
	tcase_add_test(text, letters_have_one_column_and_pictures_two);
	tcase_add_test(text, characters_are_counted_not_bytes);
	return suite;
}
