#include "support/runner.h"
#include "base/utf8.h"
#include "report/words/page.h"

#include <locale.h>
#include <string.h>
#include <wchar.h>

static struct text out;
static struct text_sink sink;

static void setup(void)
{
	out = TEXT_EMPTY;
	sink = text_sink(&out);
}

static void teardown(void)
{
	text_fini(&out);
}

static void prints(const char *expected)
{
	ck_assert_str_eq(out.bytes, expected);
}

/* ---- Paragraphs ------------------------------------------------------------------------------ */

START_TEST(a_heading_is_underlined_over_its_whole_width)
{
	page_heading(&sink.sink, "Edges");
	prints("\nEdges\n-----\n");
}
END_TEST

/* 80 columns: the title, the rule, the name. */
START_TEST(the_head_of_a_part_is_as_wide_as_the_page)
{
	page_rule(&sink.sink, "Walls", "Herb court, court.plot");
	prints("\nWalls ---------------------------------------------------"
		" Herb court, court.plot\n");
	text_clear(&out);
	page_rule(&sink.sink, "A title of 37 columns: as it stands..",
		"a name of 38 columns, as it stands too");
	prints("\nA title of 37 columns: as it stands.. --- a name of 38 columns, as it stands "
		"too\n");
	text_clear(&out);
	page_rule(&sink.sink, "A title of fifty columns, which is as long as it is",
		"a name of twenty-six columns");
	prints("\nA title of fifty columns, which is as long as it is  a name of twenty-six\n"
		"  columns\n");
}
END_TEST

START_TEST(a_line_of_80_columns_stays_whole)
{
	static const char words[] = "123456789 123456789 123456789 123456789 "
		"123456789 123456789 123456789 1234567890";

	ck_assert_uint_eq(strlen(words), 80);
	page_paragraph(&sink.sink, 0, 0, words);
	text_add(&out, "|");
	ck_assert_uint_eq(strcspn(out.bytes, "\n"), 80);
	ck_assert_str_eq(out.bytes + 81, "|");
}
END_TEST

START_TEST(a_line_of_81_columns_is_broken_at_its_last_blank)
{
	page_paragraph(&sink.sink, 0, 4, "123456789 123456789 123456789 123456789 "
		"123456789 123456789 123456789 12345678901");
	prints("123456789 123456789 123456789 123456789 123456789 123456789 123456789\n"
		"    12345678901\n");
}
END_TEST

START_TEST(a_word_too_long_for_a_line_is_broken_anywhere)
{
	char words[120];

	memset(words, 'x', sizeof words - 1);
	words[sizeof words - 1] = '\0';
	page_paragraph(&sink.sink, 2, 2, words);
	ck_assert_uint_eq(strcspn(out.bytes, "\n"), 80);
	ck_assert_uint_eq(out.length, 119 + 2 * 3);
}
END_TEST

START_TEST(a_tie_keeps_a_figure_together)
{
	text_add_repeat(&out, 'x', 74);
	text_add(&out, " 10\t5/8\tin");
	struct text page = TEXT_EMPTY;
	struct text_sink to_page = text_sink(&page);

	page_paragraph(&to_page.sink, 0, 0, out.bytes);
	ck_assert_str_eq(page.bytes + 74, "\n10 5/8 in\n");
	text_fini(&page);
}
END_TEST

/* 27 x 3 columns would be 81; the last character goes to the next line. */
START_TEST(wide_characters_count_double_and_marks_nothing)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < 27; i++)
		text_add(&words, "\xE8\x8A\xB1" "e\xCC\x81"); /* U+82B1; e with U+0301 */
	page_paragraph(&sink.sink, 0, 0, words.bytes);
	ck_assert_uint_eq(strcspn(out.bytes, "\n"), 26 * 6 + 3);
	text_fini(&words);
}
END_TEST

/* wcwidth of the C library: its table is Unicode's own. A code it does not know is -1. */
START_TEST(no_character_is_measured_narrower_than_the_c_library_does)
{
	int exact = 0, all = 0;

	ck_assert_ptr_nonnull(setlocale(LC_CTYPE, "C.UTF-8"));
	for (uint32_t code = 0x20; code < 0x110000; code++) {
		int width = wcwidth((wchar_t)code);

		if (!utf8_is_text(code) || width < 0)
			continue;
		ck_assert_msg(utf8_columns(code) >= width, "U+%04X", code);
		all++;
		exact += utf8_columns(code) == width;
	}
	/* Where they differ are marks of scripts without a case of their own here, and symbols. */
	ck_assert_int_gt(exact, all - all / 40);
}
END_TEST

/* ---- Tables ---------------------------------------------------------------------------------- */

static const struct table_column three[] = {
	{ "Bed", COLUMN_LEFT }, { "Area", COLUMN_RIGHT }, { "Name", COLUMN_WRAPS },
};

START_TEST(columns_are_aligned_under_their_headings)
{
	struct hand_table table = hand_table(three, 3, 2);

	TABLE_ROW(&table, "B1", "7", "Rose bed");
	TABLE_ROW(&table, "B12345", "123.5", "");
	hand_table_print(&table, &sink.sink);
	prints("  Bed      Area  Name\n"
		"  B1          7  Rose bed\n"
		"  B12345  123.5\n");
}
END_TEST

START_TEST(a_table_without_rows_prints_nothing)
{
	struct hand_table table = hand_table(three, 3, 0);

	hand_table_print(&table, &sink.sink);
	prints("");
}
END_TEST

START_TEST(a_table_without_headings_has_no_heading_line)
{
	static const struct table_column bare[] = { { NULL, COLUMN_LEFT }, { NULL, COLUMN_RIGHT } };
	struct hand_table table = hand_table(bare, 2, 0);

	TABLE_ROW(&table, "a", "b");
	hand_table_print(&table, &sink.sink);
	prints("a  b\n");
}
END_TEST

START_TEST(a_paragraph_across_the_columns_widens_none)
{
	static const struct table_column bare[] =
		{ { NULL, COLUMN_LEFT }, { NULL, COLUMN_RIGHT } };
	struct hand_table table = hand_table(bare, 2, 0);

	table.table.across = 4;
	hand_table_across(&table, "Nothing said here makes a column any wider, however long it may "
		"be and however many lines it takes");
	TABLE_ROW(&table, "a", "1");
	hand_table_across(&table, "");
	TABLE_ROW(&table, "bc", "23");
	hand_table_print(&table, &sink.sink);
	prints("    Nothing said here makes a column any wider, however long it may be and\n"
		"    however many lines it takes\na    1\nbc  23\n");
}
END_TEST

START_TEST(a_cell_too_wide_goes_on_below_itself)
{
	struct hand_table table = hand_table(three, 3, 0);

	TABLE_ROW(&table, "B1", "7", "123456789 123456789 123456789 123456789 123456789 123456789 "
		"123456789 123456789");
	TABLE_ROW(&table, "B2", "8", "short");
	hand_table_print(&table, &sink.sink);
	prints("Bed  Area  Name\n"
		"B1      7  123456789 123456789 123456789 123456789 123456789 123456789 123456789\n"
		"           123456789\n"
		"B2      8  short\n");
}
END_TEST

START_TEST(columns_share_the_room_and_break_no_word_that_fits)
{
	static const struct table_column two[] = { { "A", COLUMN_WRAPS }, { "B", COLUMN_WRAPS } };
	struct hand_table table = hand_table(two, 2, 0);
	char word[61];

	memset(word, 'w', 60);
	word[60] = '\0';
	TABLE_ROW(&table, word, "one two three four five six seven eight nine ten");
	hand_table_print(&table, &sink.sink);
	ck_assert_uint_eq(strcspn(strstr(out.bytes, "ww"), " "), 60);
	ck_assert_ptr_nonnull(strstr(out.bytes, "one two three four"));
}
END_TEST

START_TEST(a_line_of_a_table_never_exceeds_80_columns)
{
	static const struct table_column two[] = { { "A", COLUMN_WRAPS }, { "B", COLUMN_WRAPS } };
	struct hand_table table = hand_table(two, 2, 3);
	char word[101];

	memset(word, 'w', 100);
	word[100] = '\0';
	TABLE_ROW(&table, word, word);
	hand_table_print(&table, &sink.sink);
	for (const char *line = out.bytes; *line; line += strcspn(line, "\n") + 1)
		ck_assert_uint_le(strcspn(line, "\n"), 80);
	int letters = 0;

	for (const char *c = out.bytes; *c; c++)
		letters += *c == 'w';
	ck_assert_int_eq(letters, 200);
}
END_TEST

/* 64 + 6 + 6 with two blanks between them are 80; beside 66 there would be room for 5 each. */
START_TEST(words_are_broken_down_to_six_columns_and_no_further)
{
	static const struct table_column wide[] = { { "A", COLUMN_LEFT }, { "B", COLUMN_WRAPS },
		{ "C", COLUMN_WRAPS } };

	for (int more = 0; more <= 2; more += 2) {
		struct hand_table table = hand_table(wide, 3, 0);
		struct text left = TEXT_EMPTY, expected = TEXT_EMPTY;

		text_add_repeat(&left, 'x', (size_t)(64 + more));
		TABLE_ROW(&table, left.bytes, "abcdefghijkl", "mnopqrstuvwx");
		text_print(&expected, "%-*s  B       C\n%s  abcdef  mnopqr\n%*s  ghijkl  stuvwx\n",
			64 + more, "A", left.bytes, 64 + more, "");
		text_clear(&out);
		hand_table_print(&table, &sink.sink);
		prints(expected.bytes);
		text_fini(&left);
		text_fini(&expected);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("page");
	TCase *paragraphs = suite_case(suite, "paragraphs");
	TCase *tables = suite_case(suite, "tables");

	tcase_add_checked_fixture(paragraphs, setup, teardown);
	tcase_add_test(paragraphs, a_heading_is_underlined_over_its_whole_width);
	tcase_add_test(paragraphs, the_head_of_a_part_is_as_wide_as_the_page);
	tcase_add_test(paragraphs, a_line_of_80_columns_stays_whole);
	tcase_add_test(paragraphs, a_line_of_81_columns_is_broken_at_its_last_blank);
	tcase_add_test(paragraphs, a_word_too_long_for_a_line_is_broken_anywhere);
	tcase_add_test(paragraphs, a_tie_keeps_a_figure_together);
	tcase_add_test(paragraphs, wide_characters_count_double_and_marks_nothing);
	tcase_add_test(paragraphs, no_character_is_measured_narrower_than_the_c_library_does);

	tcase_add_checked_fixture(tables, setup, teardown);
	tcase_add_test(tables, columns_are_aligned_under_their_headings);
	tcase_add_test(tables, a_table_without_rows_prints_nothing);
	tcase_add_test(tables, a_table_without_headings_has_no_heading_line);
	tcase_add_test(tables, a_paragraph_across_the_columns_widens_none);
	tcase_add_test(tables, a_cell_too_wide_goes_on_below_itself);
	tcase_add_test(tables, columns_share_the_room_and_break_no_word_that_fits);
	tcase_add_test(tables, a_line_of_a_table_never_exceeds_80_columns);
	tcase_add_test(tables, words_are_broken_down_to_six_columns_and_no_further);
	return suite;
}
