#include "support/runner.h"
#include "support/book.h"

#include <string.h>

static const struct { const char *text; int line, column; const char *found, *expected; }
	broken[] = {
	{ "", 1, 1, "nothing", "a price book in JSON" },
	{ "{", 1, 2, "nothing", "a price book in JSON" },
	{ "{\n  'format': }", 2, 13, "}", "a price book in JSON" },
	{ "{'a' 1}", 1, 6, "1}", "a price book in JSON" },
	{ "[1,\n2\n3]", 3, 1, "3]", "a price book in JSON" },
	{ "{} x", 1, 4, "x", "a price book in JSON" },
	{ "{'a': 1,}", 1, 9, "}", "a price book in JSON" },
	{ "{,}", 1, 2, ",}", "a price book in JSON" },
	{ "{'a': 1,\n  b: 2}", 2, 3, "b:", "a price book in JSON" },
	{ "[1,[,1]]", 1, 5, ",1]]", "a price book in JSON" },
	{ "[1, tru]", 1, 5, "tru]", "a price book in JSON" },
	{ "{'a': 'b", 1, 8, "b", "a price book in JSON" },
	{ "/* no */ {}", 1, 1, "/*", "a price book in JSON" },
	{ "{'a': NaN}", 1, 7, "NaN}", "a price book in JSON" },
	{ "{'a': Infinity}", 1, 7, "Infinity}", "a price book in JSON" },
	{ "{'a': 'x\xff'}", 1, 9, "<FF>\"}", "text in UTF-8" },
	{ "{'a':\n'\xc0\x80'}", 2, 2, "<C0><80>\"}", "text in UTF-8" },
	{ "{'a': 'x\\u0000y'}", 1, 9, "\\u0000y\"}", "a character that can be shown" },
	{ "[[[[[[[[[]]]]]]]]]", 1, 9, "[]]]]]]]]]", "at most 8 levels" },
	{ "{'a':[{'a':[{'a':[{'a':[{}]}]}]}]}", 1, 25, "{}]}]}]}]}", "at most 8 levels" },
};

START_TEST(text_that_is_no_json_is_refused_with_its_line_and_column)
{
	struct book book;
	struct book_fault fault;

	ck_assert(!book_try(&book, broken[_i].text, &fault));
	ck_assert_msg(fault.diag.line == broken[_i].line && fault.diag.column == broken[_i].column,
		"%s: %d:%d", broken[_i].text, fault.diag.line, fault.diag.column);
	ck_assert_str_eq(fault.diag.found, broken[_i].found);
	ck_assert_str_eq(fault.diag.expected, broken[_i].expected);
	ck_assert_str_eq(fault.path, "");
}
END_TEST

START_TEST(a_nul_within_the_text_is_refused)
{
	static const char bytes[] = "{\"format\": \"parterre-prices\0\"}";
	struct book book;
	struct book_fault fault;

	ck_assert(!book_read(bytes, sizeof bytes - 1, &book, &fault));
	ck_assert_int_eq(fault.diag.line, 1);
	ck_assert_int_eq(fault.diag.column, 28);
	ck_assert_str_eq(fault.diag.expected, "text in UTF-8");
}
END_TEST

START_TEST(braces_quotes_and_backslashes_within_texts_are_no_structure)
{
	static const char bytes[] = "{\"format\": \"parterre-prices\", \"version\": 1, "
		"\"currency\": \"USD\","
		"\"note\": \"[[[[[[[[[[ {{{{ \\\" ]]]] \\\\u0000 \\\\\"}";
	struct book book;
	struct book_fault fault;

	ck_assert_msg(book_read(bytes, sizeof bytes - 1, &book, &fault), "%s %s", fault.path,
		fault.diag.expected);
	ck_assert_str_eq(book.note, "[[[[[[[[[[ {{{{ \" ]]]] \\u0000 \\");
	book_fini(&book);
}
END_TEST

START_TEST(a_text_keeps_its_escaped_characters)
{
	struct book book;

	book_of(&book, "'note': 'caf\\u00e9 \\u00a3 \xc3\xbc'");
	ck_assert_str_eq(book.note, "caf\xc3\xa9 \xc2\xa3 \xc3\xbc");
	book_fini(&book);
}
END_TEST

/* Control and format characters, and half of a pair. */
static const char *const no_text[] = { "a\\nb", "a\\tb", "\\u200b", "\\u2028", "\\ufeff", "\\ue000",
	"a\nb" };

START_TEST(a_text_of_characters_that_cannot_be_shown_is_refused)
{
	struct text text = TEXT_EMPTY;
	struct book book;
	struct book_fault fault;

	text_print(&text, "{'format': 'parterre-prices', 'version': 1, 'currency': 'USD', 'note': "
		"'%s'}",
		no_text[_i]);
	ck_assert_msg(!book_try(&book, text.bytes, &fault), "%s", no_text[_i]);
	ck_assert_str_eq(fault.path, "note");
	text_fini(&text);
}
END_TEST

START_TEST(eight_levels_are_let_through_to_what_the_keys_ask_for)
{
	struct book book;
	struct book_fault fault;

	ck_assert(!book_try(&book, "[[[[[[[[]]]]]]]]", &fault));
	ck_assert_str_eq(fault.diag.expected, "an object, { ... }");
}
END_TEST

START_TEST(a_long_thing_found_is_cut)
{
	struct text text = TEXT_EMPTY;
	struct book book;
	struct book_fault fault;

	text_add(&text, "{'");
	text_add_repeat(&text, 'k', 5000);
	text_add(&text, "': 1}");
	ck_assert(!book_try(&book, text.bytes, &fault));
	ck_assert_uint_lt(strlen(fault.diag.found), sizeof fault.diag.found);
	ck_assert_str_eq(fault.path, "");
	text_fini(&text);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("book_json");
	TCase *text = suite_case(suite, "text");

	tcase_add_loop_test(text, text_that_is_no_json_is_refused_with_its_line_and_column, 0,
		sizeof broken / sizeof *broken);
	tcase_add_test(text, a_nul_within_the_text_is_refused);
	tcase_add_test(text, braces_quotes_and_backslashes_within_texts_are_no_structure);
	tcase_add_test(text, a_text_keeps_its_escaped_characters);
	tcase_add_loop_test(text, a_text_of_characters_that_cannot_be_shown_is_refused, 0,
		sizeof no_text / sizeof *no_text);
	tcase_add_test(text, eight_levels_are_let_through_to_what_the_keys_ask_for);
	tcase_add_test(text, a_long_thing_found_is_cut);
	return suite;
}
