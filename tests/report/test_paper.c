/* Sheets and scales. ISO 216 (International Organization for Standardization, Writing paper and
 * certain classes of printed matter, 2007): A4 is 210 mm x 297 mm, A3 297 mm x 420 mm; ASME Y14.1
 * (American Society of Mechanical Engineers, Decimal Inch Drawing Sheet Size and Format, 2005):
 * size A is 8.5 in x 11 in, size B 11 in x 17 in. Both from memory. */
#include "report/svg/paper.h"
#include "support/runner.h"

START_TEST(sheets_are_those_of_the_standards)
{
	static const struct {
		enum paper paper;
		nm width, height;
	} rows[] = { { PAPER_A4, 210 * NM_PER_MM, 297 * NM_PER_MM },
		{ PAPER_A3, 297 * NM_PER_MM, 420 * NM_PER_MM },
		{ PAPER_LETTER, 215900000, 279400000 }, { PAPER_TABLOID, 279400000, 431800000 } };

	ck_assert_int_eq(papers[rows[_i].paper].width, rows[_i].width);
	ck_assert_int_eq(papers[rows[_i].paper].height, rows[_i].height);
	ck_assert_str_eq(papers[rows[_i].paper].word, paper_words[rows[_i].paper]);
}
END_TEST

/* ISO 5455 (International Organization for Standardization, Technical drawings: Scales, 1979):
 * reductions 1:2, 1:5, 1:10 and their tens; from memory. */
START_TEST(scales_get_smaller_and_metric_ones_are_standard)
{
	static const int standard[] = { 10, 20, 50, 100, 200, 500 };
	const int *metric = scales_of(UNITS_METRIC), *imperial = scales_of(UNITS_IMPERIAL);
	size_t found = 0;

	for (const int *scale = metric; *scale; scale++) {
		found += found < 6 && *scale == standard[found];
		ck_assert(!scale[1] || scale[1] > *scale);
	}
	ck_assert_uint_eq(found, 6);
	for (const int *scale = imperial; *scale; scale++) {
		ck_assert_int_eq(*scale % 12, 0); /* inches to whole feet */
		ck_assert(!scale[1] || scale[1] > *scale);
	}
}
END_TEST

START_TEST(a_scale_is_read_as_a_ratio_or_as_what_an_inch_is)
{
	static const struct {
		const char *word;
		int scale; /* 0: refused */
	} rows[] = { { "1:50", 50 }, { "1:10", 10 }, { "1:10000", 10000 }, { "4 ft", 48 },
		{ "4'", 48 }, { "1 ft 6 in", 18 }, { "10 in", 10 }, { "1 m", 0 }, { "1:9", 0 },
		{ "1:10001", 0 }, { "1:99999999999", 0 }, { "1:", 0 }, { "1:50x", 0 },
		{ "50", 0 }, { "2:1", 0 }, { "", 0 }, { "4 ft 1/2 in", 0 }, { "4 ft,", 0 },
		{ "9 in", 0 }, { "900 ft", 0 } };
	int scale;
	bool is_read = scale_read(rows[_i].word, &scale);

	ck_assert_msg(is_read == (rows[_i].scale > 0), "\"%s\"", rows[_i].word);
	if (is_read)
		ck_assert_int_eq(scale, rows[_i].scale);
}
END_TEST

START_TEST(a_scale_is_told_in_the_units_of_the_plot)
{
	struct text words = TEXT_EMPTY;

	scale_write(&words, 48, UNITS_IMPERIAL);
	text_add(&words, "; ");
	scale_write(&words, 50, UNITS_IMPERIAL);
	text_add(&words, "; ");
	scale_write(&words, 48, UNITS_METRIC);
	ck_assert_str_eq(words.bytes, "1 in = 4 ft (1:48); 1:50; 1:48");
	text_fini(&words);
}
END_TEST

START_TEST(lengths_are_scaled_to_the_nearest_nanometre)
{
	ck_assert_int_eq(scaled(4 * NM_PER_FOOT, 48), NM_PER_INCH);
	ck_assert_int_eq(scaled(-4 * NM_PER_FOOT, 48), -NM_PER_INCH);
	ck_assert_int_eq(scaled(29, 10), 3);
	ck_assert_int_eq(scaled(-29, 10), -3);
	ck_assert_int_eq(scaled(24, 10), 2);
	ck_assert_int_eq(scaled(0, 50), 0);
}
END_TEST

START_TEST(boxes_are_around_their_middles)
{
	struct box box = box_around((struct at){ 10, 20 }, 6, 8);
	struct box grown = box_grown(box, 1), apart = { 100, 100, 110, 110 };

	ck_assert_int_eq(box_width(box), 6);
	ck_assert_int_eq(box_height(box), 8);
	ck_assert_int_eq(box_middle(box).x, 10);
	ck_assert_int_eq(box_middle(box).y, 20);
	ck_assert_int_eq(box_width(grown), 8);
	ck_assert_int_eq(box_width(box_common(grown, box)), 6);
	ck_assert_int_lt(box_width(box_common(apart, box)), 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("paper");
	TCase *sheets = suite_case(suite, "sheets"), *scales = suite_case(suite, "scales");

	tcase_add_loop_test(sheets, sheets_are_those_of_the_standards, 0, PAPERS);
	tcase_add_test(sheets, boxes_are_around_their_middles);
	tcase_add_test(scales, scales_get_smaller_and_metric_ones_are_standard);
	tcase_add_loop_test(scales, a_scale_is_read_as_a_ratio_or_as_what_an_inch_is, 0, 20);
	tcase_add_test(scales, a_scale_is_told_in_the_units_of_the_plot);
	tcase_add_test(scales, lengths_are_scaled_to_the_nearest_nanometre);
	return suite;
}
