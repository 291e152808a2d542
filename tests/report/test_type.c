/* How wide words are: never less than a wide sans-serif typeface has them, so that words keep to
 * their room. Advance widths of DejaVu Sans in thousandths of the size (DejaVu Fonts 2.37, by the
 * typeface's own tables, from memory): a 613, i 278, m 974, W 989, M 863, 0 636, blank 318, A 684,
 * e 615, t 392, r 411, f 352, @ 1000, % 950. */
#include "report/svg/type.h"
#include "support/runner.h"

#include <string.h>

static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

static const struct type thousand = { .size = 1000 };

START_TEST(no_letter_is_wider_than_it_is_taken_for)
{
	static const struct {
		const char *word;
		nm width;
	} rows[] = { { "a", 613 }, { "i", 278 }, { "m", 974 }, { "W", 989 }, { "M", 863 },
		{ "0", 636 }, { " ", 318 }, { "A", 684 }, { "e", 615 }, { "t", 392 }, { "r", 411 },
		{ "f", 352 }, { "@", 1000 }, { "%", 950 } };
	nm width = type_width(rows[_i].word, thousand);

	ck_assert_msg(width >= rows[_i].width, "%s: %d", rows[_i].word, (int)width);
	ck_assert_msg(width < rows[_i].width * 3 / 2, "%s: %d", rows[_i].word, (int)width);
}
END_TEST

START_TEST(widths_add_up_and_grow_with_the_size)
{
	struct type bold = { .size = 1000, .is_bold = true }, twice = { .size = 2000 };

	ck_assert_int_eq(type_width("", thousand), 0);
	ck_assert_int_eq(type_width("abab", thousand), 2 * type_width("ab", thousand));
	ck_assert_int_eq(type_width("ab", twice), 2 * type_width("ab", thousand));
	ck_assert_int_gt(type_width("ab", bold), type_width("ab", thousand));
	ck_assert_int_ge(type_width("\xe6\xa2\xa8", thousand), 1000); /* a full square */
	ck_assert_int_gt(type_width("\xff", thousand), 0);
}
END_TEST

START_TEST(what_is_too_long_is_set_smaller)
{
	const struct type most = { .size = 5 * NM_PER_MM };
	const char *words = "A title that is rather long for where it is to stand";
	struct type fitted = type_fitted(words, most, 60 * NM_PER_MM);

	ck_assert_int_eq(type_fitted("short", most, 60 * NM_PER_MM).size, most.size);
	ck_assert_int_lt(fitted.size, most.size);
	ck_assert_int_le(type_width(words, fitted), 60 * NM_PER_MM);
	ck_assert_int_eq(type_fitted("", most, 60 * NM_PER_MM).size, most.size);
}
END_TEST

static void check_lines(const char *words, nm width, const char *const *lines)
{
	const char *line;

	for (; (line = type_line(&words, 1000, width, &arena)); lines++) {
		ck_assert(*lines);
		ck_assert_str_eq(line, *lines);
		ck_assert_int_le(type_width(line, thousand), width);
	}
	ck_assert_ptr_null(*lines);
}

START_TEST(lines_are_broken_at_blanks_else_within_a_word)
{
	check_lines("bed b, Raised bed", 6200,
		(const char *const[]){ "bed b,", "Raised bed", NULL });
	check_lines("abcdefgh", 2000, (const char *const[]){ "abc", "def", "gh", NULL });
	check_lines("  a  ", 6000, (const char *const[]){ "a", NULL });
	check_lines("", 6000, (const char *const[]){ NULL });
	check_lines("\xe6\xa2\xa8\xe6\xa2\xa8", 1400,
		(const char *const[]){ "\xe6\xa2\xa8", "\xe6\xa2\xa8", NULL });
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("type");
	TCase *type = suite_case(suite, "type");

	tcase_add_checked_fixture(type, NULL, teardown);
	tcase_add_loop_test(type, no_letter_is_wider_than_it_is_taken_for, 0, 14);
	tcase_add_test(type, widths_add_up_and_grow_with_the_size);
	tcase_add_test(type, what_is_too_long_is_set_smaller);
	tcase_add_test(type, lines_are_broken_at_blanks_else_within_a_word);
	return suite;
}
