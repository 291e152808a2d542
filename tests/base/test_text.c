/* Texts that grow, and numbers written into them. */
#include "base/text.h"
#include "support/random.h"
#include "support/runner.h"

#include <inttypes.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

START_TEST(a_text_grows_and_always_ends_in_nul)
{
	struct text t = TEXT_EMPTY;
	char expected[4000];

	for (int i = 0; i < 3000; i++) {
		char c = (char)('a' + i % 26);

		text_add_bytes(&t, &c, 1);
		expected[i] = c;
		expected[i + 1] = '\0';
		ck_assert_int_eq((int)t.length, i + 1);
		ck_assert_int_eq(t.bytes[t.length], '\0');
	}
	ck_assert_str_eq(t.bytes, expected);
	text_fini(&t);
	ck_assert_str_eq(t.bytes, "");
	ck_assert_uint_eq(t.length, 0);
	ck_assert_uint_eq(t.capacity, 0);
}
END_TEST

START_TEST(nothing_added_still_makes_a_string)
{
	struct text t = TEXT_EMPTY;
	char *taken;

	ck_assert_str_eq(t.bytes, "");
	text_cut(&t, 0);
	ck_assert_str_eq(t.bytes, "");
	taken = text_take(&t);
	ck_assert_str_eq(taken, "");
	free(taken);
	text_add_bytes(&t, NULL, 0);
	ck_assert_str_eq(t.bytes, "");
	text_fini(&t);
	text_add_repeat(&t, 'x', 0);
	ck_assert_str_eq(t.bytes, "");
	text_fini(&t);
	text_clear(&t);
	ck_assert_str_eq(t.bytes, "");
	text_fini(&t);
}
END_TEST

START_TEST(what_is_taken_is_left_out_of_the_text)
{
	struct text t = TEXT_EMPTY;
	char *taken;

	text_add(&t, "bed and path");
	text_cut(&t, 3);
	ck_assert_str_eq(t.bytes, "bed");
	taken = text_take(&t);
	ck_assert_str_eq(t.bytes, "");
	text_add(&t, "lawn");
	ck_assert_str_eq(taken, "bed");
	ck_assert_str_eq(t.bytes, "lawn");
	free(taken);
	text_fini(&t);
}
END_TEST

START_TEST(what_is_cleared_may_be_filled_again)
{
	struct text t = TEXT_EMPTY;

	text_add(&t, "long enough to be seen");
	text_clear(&t);
	ck_assert_str_eq(t.bytes, "");
	text_add(&t, "a");
	text_add_repeat(&t, 'b', 3);
	text_print(&t, "%d-%s", 12, "c");
	ck_assert_str_eq(t.bytes, "abbb12-c");
	ck_assert_uint_eq(t.length, 8);
	text_fini(&t);
}
END_TEST

START_TEST(a_nul_is_added_like_any_byte)
{
	struct text t = TEXT_EMPTY;

	text_add_bytes(&t, "a\0b", 3);
	text_add(&t, "c");
	ck_assert_uint_eq(t.length, 4);
	ck_assert_mem_eq(t.bytes, "a\0bc", 5);
	text_fini(&t);
}
END_TEST

START_TEST(quotes_and_backslashes_are_escaped)
{
	struct text t = TEXT_EMPTY;

	text_add_quoted(&t, "a \"b\" \\ \xC3\xA4'");
	ck_assert_str_eq(t.bytes, "\"a \\\"b\\\" \\\\ \xC3\xA4'\"");
	text_clear(&t);
	text_add_quoted(&t, "");
	ck_assert_str_eq(t.bytes, "\"\"");
	text_fini(&t);
}
END_TEST

START_TEST(a_list_has_commas_and_an_or)
{
	struct text t = TEXT_EMPTY;

	text_add_listed(&t, "one", true);
	ck_assert_str_eq(t.bytes, "one");
	text_clear(&t);
	text_add_listed(&t, "one", false);
	text_add_listed(&t, "two", false);
	ck_assert_str_eq(t.bytes, "one, two");
	text_add_listed(&t, "three", true);
	ck_assert_str_eq(t.bytes, "one, two or three");
	text_fini(&t);
}
END_TEST

START_TEST(sentences_have_a_blank_between_them)
{
	struct text t = TEXT_EMPTY;

	text_add_sentence(&t, "%d cells differ.", 12);
	ck_assert_str_eq(t.bytes, "12 cells differ.");
	text_add_sentence(&t, "So does the %s.", "title");
	ck_assert_str_eq(t.bytes, "12 cells differ. So does the title.");
	text_fini(&t);
}
END_TEST

static const struct {
	int64_t units;
	int places;
	const char *text;
} decimals[] = {
	{ 0, 0, "0" }, { 0, 6, "0" }, { 1500000, 6, "1.5" }, { 1000000, 6, "1" },
	{ 1, 6, "0.000001" },
	{ 10, 6, "0.00001" }, { 100, 0, "100" }, { 1000, 1, "100" }, { 123456789, 3, "123456.789" },
	{ -1500, 3, "-1.5" }, { -1, 3, "-0.001" }, { -20, 1, "-2" },
	{ INT64_MAX, 0, "9223372036854775807" }, { INT64_MAX, 9, "9223372036.854775807" },
	{ INT64_MIN, 9, "-9223372036.854775808" },
};

START_TEST(a_decimal_has_no_trailing_zeros)
{
	struct text t = TEXT_EMPTY;

	text_add(&t, "=10.00");
	text_add_decimal(&t, decimals[_i].units, decimals[_i].places);
	ck_assert_str_eq(t.bytes + 6, decimals[_i].text);
	ck_assert_uint_eq(t.length, strlen(t.bytes));
	text_fini(&t);
}
END_TEST

static const struct {
	double value;
	int places;
	const char *text;
} numbers[] = {
	{ 0, 0, "0" }, { 0, 9, "0" }, { -0.0, 0, "0" }, { -0.0, 3, "0" }, { -0.0004, 3, "0" },
	{ -0.4, 0, "0" }, { -0.0006, 3, "-0.001" }, { 1.5, 9, "1.5" }, { 1.25, 1, "1.2" },
	{ 2.675, 2, "2.67" }, { 100, 2, "100" }, { 1e14, 3, "100000000000000" },
	{ 1e-9, 9, "0.000000001" }, { 1e-10, 9, "0" }, { 7.803856, 9, "7.803856" },
	{ 9.9999, 3, "10" }, { -12.5, 1, "-12.5" },
};

START_TEST(a_number_is_rounded_and_never_minus_nought)
{
	struct text t = TEXT_EMPTY;

	text_add(&t, "-0");
	text_add_number(&t, numbers[_i].value, numbers[_i].places);
	ck_assert_str_eq(t.bytes + 2, numbers[_i].text);
	ck_assert_uint_eq(t.length, strlen(t.bytes));
	text_fini(&t);
}
END_TEST

START_TEST(a_number_is_read_back_to_within_half_of_its_last_place)
{
	struct random random = { 3 };

	for (int i = 0; i < 20000; i++) {
		int places = random_below(&random, 10);
		double value = (double)((int64_t)(random_next(&random) >> 14) - (1LL << 49)) /
			pow(10, random_below(&random, 10));
		struct text t = TEXT_EMPTY;

		text_add_number(&t, value, places);
		ck_assert_ptr_null(strchr(t.bytes, 'e'));
		ck_assert_msg(!strchr(t.bytes, '.') || t.bytes[t.length - 1] != '0', "%s", t.bytes);
		/* The double itself is known to one part in 2^53 only. */
		ck_assert_msg(fabs(strtod(t.bytes, NULL) - value) <=
			0.5 * pow(10, -places) + fabs(value) / 4e15, "%s for %.17g", t.bytes,
			value);
		text_fini(&t);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("text");
	TCase *growing = suite_case(suite, "growing"), *number = suite_case(suite, "numbers");

	tcase_add_test(growing, a_text_grows_and_always_ends_in_nul);
	tcase_add_test(growing, nothing_added_still_makes_a_string);
	tcase_add_test(growing, what_is_taken_is_left_out_of_the_text);
	tcase_add_test(growing, what_is_cleared_may_be_filled_again);
	tcase_add_test(growing, a_nul_is_added_like_any_byte);
	tcase_add_test(growing, quotes_and_backslashes_are_escaped);
	tcase_add_test(growing, a_list_has_commas_and_an_or);
	tcase_add_test(growing, sentences_have_a_blank_between_them);
	tcase_add_loop_test(number, a_decimal_has_no_trailing_zeros, 0, COUNT(decimals));
	tcase_add_loop_test(number, a_number_is_rounded_and_never_minus_nought, 0, COUNT(numbers));
	tcase_add_test(number, a_number_is_read_back_to_within_half_of_its_last_place);
	return suite;
}
