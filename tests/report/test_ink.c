/* Elements of a drawing, byte by byte. Which characters XML may have: W3C Recommendation,
 * Extensible Markup Language (XML) 1.0 (Fifth Edition), 2008, production [2] Char. */
#include "report/svg/ink.h"
#include "support/runner.h"

static struct text written;
static struct text_sink sink;

static void setup(void)
{
	written = TEXT_EMPTY;
	sink = text_sink(&written);
}

static void teardown(void)
{
	text_fini(&written);
}

START_TEST(what_xml_may_not_hold_is_escaped_or_replaced)
{
	static const char *const rows[][2] = {
		{ "a < b > c & \"d\" 'e'", "a &lt; b &gt; c &amp; &quot;d&quot; &#39;e&#39;" },
		{ "\xc3\xa9\xe6\xa2\xa8\xf0\x9f\x8c\xb3", "\xc3\xa9\xe6\xa2\xa8\xf0\x9f\x8c\xb3" },
		{ "\x01\x1f", "\xef\xbf\xbd\xef\xbf\xbd" },
		{ "a\xff" "b", "a\xef\xbf\xbd" "b" },
		{ "\xed\xa0\x80", "\xef\xbf\xbd\xef\xbf\xbd\xef\xbf\xbd" }, /* a surrogate */
		{ "\xef\xbf\xbe\xef\xbf\xbf", "\xef\xbf\xbd\xef\xbf\xbd" }, /* U+FFFE, U+FFFF */
		{ "\xef\xbf\xbd\xee\x80\x80\xf4\x8f\xbf\xbd",
			"\xef\xbf\xbd\xee\x80\x80\xf4\x8f\xbf\xbd" },
		{ "", "" },
	};

	ink_escaped(&sink.sink, rows[_i][0]);
	ck_assert_str_eq(written.bytes, rows[_i][1]);
}
END_TEST

START_TEST(lengths_are_millimetres_with_four_places)
{
	static const struct {
		nm length;
		const char *words;
	} rows[] = { { 0, "0" }, { NM_PER_INCH, "25.4" }, { -NM_PER_MM / 2, "-0.5" },
		{ 149, "0.0001" }, { 150, "0.0002" }, { -150, "-0.0002" }, { 49, "0" },
		{ 1234567890, "1234.5679" } };

	ink_length(&sink.sink, rows[_i].length);
	ck_assert_str_eq(written.bytes, rows[_i].words);
}
END_TEST

START_TEST(elements_are_written_one_a_line)
{
	const struct at at = { NM_PER_MM, 2 * NM_PER_MM }, to = { 3 * NM_PER_MM, 5 * NM_PER_MM };

	ink_open(&sink.sink, "fill=\"%s\"", "none");
	ink_line(&sink.sink, at, to);
	ink_box(&sink.sink, (struct box){ at.x, at.y, to.x, to.y });
	ink_circle(&sink.sink, at, NM_PER_MM / 2);
	ink_points(&sink.sink, (const struct at[]){ at, to }, 2, false);
	ink_points(&sink.sink, (const struct at[]){ at, to }, 2, true);
	ink_close(&sink.sink);
	ck_assert_str_eq(written.bytes, "<g fill=\"none\">\n"
		"<line x1=\"1\" y1=\"2\" x2=\"3\" y2=\"5\"/>\n"
		"<rect x=\"1\" y=\"2\" width=\"2\" height=\"3\"/>\n"
		"<circle cx=\"1\" cy=\"2\" r=\"0.5\"/>\n"
		"<polyline points=\"1,2 3,5\"/>\n<polygon points=\"1,2 3,5\"/>\n</g>\n");
}
END_TEST

START_TEST(words_stand_in_the_middle_of_their_height)
{
	const struct at at = { 10 * NM_PER_MM, 20 * NM_PER_MM };

	ink_words(&sink.sink, at, (struct type){ .size = 2 * NM_PER_MM }, "a & b");
	ink_words(&sink.sink, at, (struct type){ 2 * NM_PER_MM, ANCHOR_MIDDLE, true, true }, "up");
	ck_assert_str_eq(written.bytes,
		"<text x=\"10\" y=\"20.7\" font-size=\"2\">a &amp; b</text>\n"
		"<text x=\"10\" y=\"20.7\" font-size=\"2\" text-anchor=\"middle\" "
		"font-weight=\"bold\" transform=\"rotate(-90 10 20)\">up</text>\n");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("ink");
	TCase *ink = suite_case(suite, "ink");

	tcase_add_checked_fixture(ink, setup, teardown);
	tcase_add_loop_test(ink, what_xml_may_not_hold_is_escaped_or_replaced, 0, 8);
	tcase_add_loop_test(ink, lengths_are_millimetres_with_four_places, 0, 8);
	tcase_add_test(ink, elements_are_written_one_a_line);
	tcase_add_test(ink, words_stand_in_the_middle_of_their_height);
	return suite;
}
