/* What the cursor steps over at once, against the grapheme clusters of Unicode Standard Annex 29 as
 * another library has them. */
#include "base/utf8.h"
#include "editor/field/cluster.h"
#include "support/runner.h"
#include "support/samples.h"

#include <locale.h>
#include <string.h>
#include <unictype.h>
#include <unigbrk.h>
#include <wchar.h>

enum { JOINER = 0x200D, CODES_MOST = 64 };

static bool is_kept(uint32_t code)
{
	return utf8_is_text(code) || utf8_is_joiner(code);
}

/* A mark with a width of its own. */
static bool is_spacing(uint32_t code)
{
	return uc_is_general_category(code, UC_CATEGORY_Mc);
}

/* Where two characters may go together by the annex and not here, or the other way round. */
static bool may_differ(uint32_t before, uint32_t code)
{
	int first = uc_graphemeclusterbreak_property(before);
	int second = uc_graphemeclusterbreak_property(code);

	return first == GBP_PREPEND || first == GBP_L || first == GBP_RI || /* one more step */
		before == JOINER || /* the annex asks what stands before it */
		second == GBP_V || second == GBP_T || /* without width even alone */
		/* letters that the annex counts among the marks, and the other way round */
		second == GBP_SPACINGMARK || code == 0xFF9E || code == 0xFF9F || is_spacing(code);
}

static const uint32_t before[] = { ' ', 'a', 0xE9, 0x301, 0x3B1, 0x5D0, 0x628, 0x915, 0x94D, 0xE01,
	0x1100, 0x1161, 0x11A8, 0xAC00, 0xAC01, 0x5EAD, 0x200C, 0x200D, 0x2764, 0x1F1E6, 0x1F3FB,
	0x1F469 };

START_TEST(what_goes_together_is_what_the_standard_says)
{
	uint32_t first = before[_i];

	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C.UTF-8"));
	for (uint32_t code = 0x20; code < 0x110000; code++)
		if (is_kept(code) && wcwidth((wchar_t)code) >= 0 && !may_differ(first, code))
			ck_assert_msg(cluster_binds(first, code) !=
				uc_is_grapheme_break(first, code), "U+%04X U+%04X", first, code);
}
END_TEST

/* Whole texts: no cluster of ours reaches over a break of the annex's, but over some marks'. */
START_TEST(a_step_goes_no_further_than_a_letter)
{
	const uint8_t *text = (const uint8_t *)samples[_i].text;
	size_t length = strlen(samples[_i].text), step;
	char breaks[256];
	uint32_t last = 0, code;

	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C.UTF-8"));
	ck_assert_uint_lt(length, sizeof breaks);
	u8_grapheme_breaks(text, length, breaks);
	for (size_t at = 0; at < length; at += step, last = code) {
		step = utf8_decode(samples[_i].text + at, length - at, &code);
		if (at > 0 && breaks[at] && !is_spacing(code))
			ck_assert_msg(!cluster_binds(last, code), "%s: U+%04X U+%04X",
				samples[_i].text, last, code);
	}
}
END_TEST

/* Each as clusters, by the number of characters in them. */
static const struct {
	const char *text;
	int lengths[8];
} split[] = {
	{ u8"Ros\u00E9", { 1, 1, 1, 1 } },
	{ u8"Rose\u0301", { 1, 1, 1, 2 } },
	{ u8"\u0301a", { 1, 1 } },
	{ u8"Z\u0300\u0301\u0302a", { 4, 1 } },
	{ u8"\u0E17\u0E35\u0E48\u0E19", { 3, 1 } },                         /* Thai */
	{ u8"\u0915\u093F\u0924", { 2, 1 } },                               /* a vowel sign */
	{ u8"\u0915\u094D\u0937", { 2, 1 } },                               /* a conjunct: two */
	{ u8"\u1100\u1161\u11A8\u1100\u1161", { 3, 2 } },                   /* jamo */
	{ u8"\U0001F469\u200D\U0001F33E!", { 3, 1 } },                      /* joined */
	{ u8"\U0001F469\U0001F3FD\u200D\U0001F33E\U0001F333", { 4, 1 } },   /* and of a skin */
	{ u8"\u2764\uFE0F\u2764", { 2, 1 } },
	{ u8"1\uFE0F\u20E3", { 3 } },
	{ u8"\U0001F1E9\U0001F1EA", { 1, 1 } },                             /* a flag: two */
	{ u8"\u0645\u06CC\u200C\u062E", { 1, 2, 1 } },
	{ u8"a\u200Bb", { 1, 1, 1 } },                                      /* no text holds it */
};

START_TEST(a_letter_and_its_marks_are_one_step)
{
	const char *text = split[_i].text;
	size_t left = strlen(text);
	uint32_t last = 0, code;
	int lengths[8] = { 0 }, at = -1;

	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C.UTF-8"));
	for (size_t step; left; text += step, left -= step, last = code) {
		step = utf8_decode(text, left, &code);
		at += !cluster_binds(last, code);
		lengths[at]++;
	}
	for (int i = 0; i < 8; i++)
		ck_assert_msg(lengths[i] == split[_i].lengths[i], "%s: %d in %d", split[_i].text,
			lengths[i], i);
}
END_TEST

/* There no character is known but those of ASCII, so none is known to be a mark. */
START_TEST(without_the_letters_each_character_stands_alone)
{
	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C"));
	ck_assert(!cluster_binds('e', 0x301));
	ck_assert(!cluster_binds('e', 'x'));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("cluster");
	TCase *pairs = suite_case(suite, "pairs"), *texts = suite_case(suite, "texts");

	tcase_add_loop_test(pairs, what_goes_together_is_what_the_standard_says, 0,
		sizeof before / sizeof *before);
	tcase_add_test(pairs, without_the_letters_each_character_stands_alone);
	tcase_add_loop_test(texts, a_step_goes_no_further_than_a_letter, 0, SAMPLES);
	tcase_add_loop_test(texts, a_letter_and_its_marks_are_one_step, 0,
		sizeof split / sizeof *split);
	return suite;
}
