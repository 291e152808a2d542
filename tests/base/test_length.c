/* Reading lengths in every spelling, refusing the rest with a reason, writing them exactly. */
#include "base/length.h"
#include "support/random.h"
#include "support/runner.h"

#include <inttypes.h>
#include <stdio.h>
#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

START_TEST(an_inch_is_25_400_000_nm)
{
	/* 1 in = 25.4 mm and 1 ft = 0.3048 m, exactly: NIST Special Publication 811, appendix
	 * B.8. */
	ck_assert_int_eq(NM_PER_INCH, 25400000);
	ck_assert_int_eq(NM_PER_FOOT, 304800000);
	ck_assert_int_eq(NM_PER_MM, 1000000);
	ck_assert_int_eq(NM_PER_CM, 10000000);
	ck_assert_int_eq(NM_PER_M, 1000000000);
	ck_assert_int_eq(NM_PER_64TH, 396875);
	ck_assert_int_eq(LENGTH_MOST, INT64_C(10000000000000));
}
END_TEST

static const struct {
	const char *text;
	nm length;
} lengths[] = {
	/* each unit */
	{ "1 ft", 304800000 }, { "1 in", 25400000 }, { "1'", 304800000 }, { "1\"", 25400000 },
	{ "1 m", 1000000000 }, { "1 cm", 10000000 }, { "1 mm", 1000000 },
	/* nought */
	{ "0 in", 0 }, { "0 mm", 0 }, { "0/2 in", 0 }, { "0.000000 m", 0 },
	/* blanks before a word unit, and before the whole */
	{ "6in", 152400000 }, { "6   in", 152400000 }, { "6\tin", 152400000 },
	{ "150mm", 150000000 },
	{ "  6 in", 152400000 }, { "\t6 in", 152400000 },
	/* parts */
	{ "1 ft 6 in", 457200000 }, { "1ft6in", 457200000 }, { "1'6\"", 457200000 },
	{ "1' 6\"", 457200000 }, { "1 ft 6\"", 457200000 }, { "1' 6 in", 457200000 },
	{ "1 m 20 cm", 1200000000 }, { "1 m 20 cm 5 mm", 1205000000 }, { "1m5mm", 1005000000 },
	{ "2 cm 3 mm", 23000000 }, { "0 ft 6 in", 152400000 }, { "1 ft 0 in", 304800000 },
	{ "1 ft 20 in", 812800000 },
	/* fractions */
	{ "1/2 in", 12700000 }, { "1/4 in", 6350000 }, { "1/8 in", 3175000 },
	{ "1/16 in", 1587500 },
	{ "1/32 in", 793750 }, { "1/64 in", 396875 }, { "63/64 in", 25003125 },
	{ "6 1/2 in", 165100000 }, { "6 1/2in", 165100000 }, { "6 1/2\"", 165100000 },
	{ "6  1/2 in", 165100000 }, { "2' 7 1/2\"", 800100000 }, { "1 ft 1/2 in", 317500000 },
	{ "1/2 ft", 152400000 }, { "1 1/2 ft", 457200000 }, { "1/2 m", 500000000 },
	{ "1/64 mm", 15625 }, { "3/2 in", 38100000 }, { "2 3/4 cm", 27500000 },
	/* decimals */
	{ "6.5 in", 165100000 }, { "1.5 ft", 457200000 }, { "0.1 in", 2540000 },
	{ "0.123456 m", 123456000 }, { "1 ft 2.5 in", 368300000 }, { "0.000001 mm", 1 },
	{ "12.345678 mm", 12345678 }, { "1 m 2.5 cm", 1025000000 },
	{ "1 m 2 cm 3.5 mm", 1023500000 }, { "10000/2 m", INT64_C(5000000000000) },
	{ "1.50 m", 1500000000 },
	/* what is between two nanometres goes to the nearer: 25.4, 50.8, 304.8 nm */
	{ "0.000001 in", 25 }, { "0.000002 in", 51 }, { "0.000001 ft", 305 },
	/* leading zeros, and the longest */
	{ "007 in", 177800000 }, { "10000 m", INT64_C(10000000000000) },
	{ "9999 m 100 cm", INT64_C(10000000000000) },
	{ "9999999.999999 mm", INT64_C(9999999999999) },
};

START_TEST(every_spelling_of_a_length_is_read)
{
	struct scan s = scan_start(lengths[_i].text, strlen(lengths[_i].text), 1);
	struct diag d;
	nm length = -1;

	ck_assert_msg(length_scan(&s, UNITS_IMPERIAL, &length, &d), "%s: expected %s",
		lengths[_i].text, d.expected);
	ck_assert_msg(length == lengths[_i].length, "%s is %" PRId64, lengths[_i].text, length);
	ck_assert_uint_eq(s.at, s.length);
}
END_TEST

static const struct {
	const char *text;
	int column;
	const char *found, *expected; /* expected: part of it */
} refused[] = {
	/* a bare number, with the good form shown */
	{ "6", 1, "6", "a length with its unit, such as 6 in" },
	{ "  6", 3, "6", "such as 6 in" },
	{ "6.5", 1, "6.5", "such as 6.5 in" },
	{ "6 1/2", 1, "6", "such as 6 1/2 in" },
	{ "1/2", 1, "1/2", "such as 1/2 in" },
	{ "1 ft 6", 6, "6", "such as 6 in" },
	{ "6 x 4", 1, "6", "such as 6 in" },
	/* no length at all */
	{ "", 1, "the end of the line", "a length with its unit, such as 6 1/2 in" },
	{ "   ", 4, "the end of the line", "a length with its unit" },
	{ "in", 1, "in", "a length with its unit" },
	{ "six in", 1, "six", "a length with its unit" },
	{ ".5 in", 1, ".5", "a length with its unit" },
	{ "/2 in", 1, "/2", "a length with its unit" },
	/* no sign */
	{ "-1 in", 1, "-1", "a length with its unit" },
	{ "+1 in", 1, "+1", "a length with its unit" },
	/* units that are none, or are part of a longer word */
	{ "6 yd", 1, "6", "such as 6 in" },
	{ "6 inch", 1, "6", "such as 6 in" },
	{ "6 mmm", 1, "6", "such as 6 in" },
	{ "6 ina", 1, "6", "such as 6 in" },
	{ "6 inz", 1, "6", "such as 6 in" },
	{ "6 inA", 1, "6", "such as 6 in" },
	{ "6 inZ", 1, "6", "such as 6 in" },
	{ "6 IN", 1, "6", "such as 6 in" },
	{ "6 km", 1, "6", "such as 6 in" },
	/* ' and " touch their number */
	{ "6 '", 1, "6", "such as 6 in" },
	{ "6 \"", 1, "6", "such as 6 in" },
	{ "1' 6 1/2 \"", 4, "6", "such as 6 1/2 in" },
	/* one system */
	{ "1 ft 20 mm", 6, "20", "one system of units" },
	{ "1 m 6 in", 5, "6", "one system of units" },
	{ "1' 2 cm", 4, "2", "one system of units" },
	/* larger first, each once */
	{ "6 in 1 ft", 6, "1", "a smaller unit" },
	{ "1 ft 2 ft", 6, "2", "a smaller unit" },
	{ "1 ft 2'", 6, "2'", "a smaller unit" },
	{ "1 in 2\"", 6, "2\"", "a smaller unit" },
	{ "1 cm 1 m", 6, "1", "a smaller unit" },
	{ "1 mm 2 mm", 6, "2", "a smaller unit" },
	/* decimals and fractions only in the last part */
	{ "1.5 ft 2 in", 1, "1.5", "only before the last unit" },
	{ "1.0 ft 2 in", 1, "1.0", "only before the last unit" },
	{ "1/2 ft 2 in", 1, "1/2", "only before the last unit" },
	{ "1 m 1.5 cm 2 mm", 5, "1.5", "only before the last unit" },
	/* denominators */
	{ "1/3 in", 1, "1/3", "2, 4, 8, 16, 32 or 64" },
	{ "1/1 in", 1, "1/1", "2, 4, 8, 16, 32 or 64" },
	{ "1/0 in", 1, "1/0", "2, 4, 8, 16, 32 or 64" },
	{ "1/128 in", 1, "1/128", "2, 4, 8, 16, 32 or 64" },
	{ "1/ in", 1, "1/", "2, 4, 8, 16, 32 or 64" },
	{ "6 1/6 in", 3, "1/6", "2, 4, 8, 16, 32 or 64" },
	/* a decimal is not part of a fraction */
	{ "6.0/2 in", 1, "6.0/2", "a length with its unit" },
	{ "1.5 1/2 in", 1, "1.5", "a length with its unit" },
	/* too fine, too long */
	{ "0.1234567 in", 1, "0.1234567", "at most 6 decimal places" },
	{ "6. in", 1, "6.", "at most 6 decimal places" },
	{ "10000.000001 m", 1, "10000.000001", "at most 10 km" },
	{ "10001 m", 1, "10001", "at most 10 km" },
	{ "9999 m 101 cm", 8, "101", "at most 10 km" },
	{ "99999999999999999999 m", 1, "99999999999999999999", "at most 10 km" },
	{ "999999999999999999/2 ft", 1, "999999999999999999/2", "at most 10 km" },
	{ "900000000000 ft", 1, "900000000000", "at most 10 km" },
};

START_TEST(what_is_no_length_is_refused_with_its_column_and_a_reason)
{
	const char *text = refused[_i].text;
	struct scan s = scan_start(text, strlen(text), 7);
	struct diag d = { 0 };
	nm length = -1;

	ck_assert_msg(!length_scan(&s, UNITS_IMPERIAL, &length, &d), "%s was read", text);
	ck_assert_int_eq(length, -1);
	ck_assert_int_eq(d.line, 7);
	ck_assert_msg(d.column == refused[_i].column, "%s: column %d", text, d.column);
	ck_assert_msg(strcmp(d.found, refused[_i].found) == 0, "%s: found %s", text, d.found);
	ck_assert_msg(strstr(d.expected, refused[_i].expected), "%s: expected %s", text,
		d.expected);
}
END_TEST

START_TEST(a_metric_plot_offers_a_bare_number_in_millimetres)
{
	struct scan s = scan_start("150", 3, 1);
	struct diag d = { 0 };
	nm length;

	ck_assert(!length_scan(&s, UNITS_METRIC, &length, &d));
	ck_assert_str_eq(d.expected, "a length with its unit, such as 150 mm");
	s = scan_start("x", 1, 1);
	ck_assert(!length_scan(&s, UNITS_METRIC, &length, &d));
	ck_assert_str_eq(d.expected, "a length with its unit, such as 150 mm");
}
END_TEST

/* It has to fit into a message, of which 80 bytes are kept. */
START_TEST(a_bare_number_is_offered_with_its_unit_where_it_is_not_too_long)
{
	static const char digits[] = "0000000000000000000000000000000000000006";

	for (size_t length = 39; length <= 40; length++) {
		const char *number = digits + 40 - length;
		struct scan s = scan_start(number, length, 1);
		struct diag d = { 0 };
		char expected[80];
		nm read;

		ck_assert(!length_scan(&s, UNITS_IMPERIAL, &read, &d));
		snprintf(expected, sizeof expected, "a length with its unit, such as %s in",
			length < 40 ? number : "6 1/2");
		ck_assert_str_eq(d.expected, expected);
	}
}
END_TEST

/* The text, and how much of it is taken. */
static const struct {
	const char *text;
	size_t taken;
} longer[] = {
	{ "16 in x 8 in", 5 }, { "6 in, 7 in", 4 }, { "6\"x4\"", 2 }, { "1 ft  ", 4 },
	{ "1 m x", 3 }, { "6 in topsoil", 4 },
};

START_TEST(no_more_than_the_length_is_taken)
{
	struct scan s = scan_start(longer[_i].text, strlen(longer[_i].text), 1);
	struct diag d;
	nm length;

	ck_assert(length_scan(&s, UNITS_IMPERIAL, &length, &d));
	ck_assert_uint_eq(s.at, longer[_i].taken);
}
END_TEST

static const struct {
	nm length;
	const char *imperial, *metric;
} written[] = {
	{ 0, "0 in", "0 mm" },
	{ 304800000, "1 ft", "304.8 mm" },
	{ 3048000000, "10 ft", "3048 mm" },
	{ 25400000, "1 in", "25.4 mm" },
	{ 279400000, "11 in", "279.4 mm" },
	{ 330200000, "13 in", "330.2 mm" },
	{ 12700000, "1/2 in", "12.7 mm" },
	{ 165100000, "6 1/2 in", "165.1 mm" },
	{ 396875, "1/64 in", "0.396875 mm" },
	{ 25003125, "63/64 in", "25.003125 mm" },
	{ 9525000, "3/8 in", "9.525 mm" },
	{ 1000000000, "1000 mm", "1 m" },
	{ 25000000000, "25000 mm", "25 m" },
	{ 1500000000, "1500 mm", "1500 mm" },
	{ 150000000, "150 mm", "150 mm" },
	{ 1, "0.000001 mm", "0.000001 mm" },
	{ 396876, "0.396876 mm", "0.396876 mm" },
	{ INT64_C(10000000000000), "10000000 mm", "10000 m" },
	{ -304800000, "-1 ft", "-304.8 mm" },
	{ -12700000, "-1/2 in", "-12.7 mm" },
	{ -1000000000, "-1000 mm", "-1 m" },
};

START_TEST(a_length_is_written_in_the_plots_units_and_exactly)
{
	struct text text = TEXT_EMPTY;

	length_write(&text, written[_i].length, UNITS_IMPERIAL);
	ck_assert_str_eq(text.bytes, written[_i].imperial);
	text_clear(&text);
	length_write(&text, written[_i].length, UNITS_METRIC);
	ck_assert_str_eq(text.bytes, written[_i].metric);
	text_fini(&text);
}
END_TEST

/* A length of any fineness; every other one of those that people mean. */
static nm length_at_random(struct random *random)
{
	static const nm steps[] = { 1, 1000, NM_PER_64TH, NM_PER_MM, NM_PER_INCH, NM_PER_FOOT,
		NM_PER_CM, NM_PER_M };
	nm step = steps[random_below(random, COUNT(steps))];

	return (nm)(random_next(random) % (uint64_t)(LENGTH_MOST / step + 1)) * step;
}

START_TEST(what_is_written_is_read_as_the_same_length)
{
	struct random random = { 1 };
	struct text text = TEXT_EMPTY;

	for (int i = 0; i < 20000; i++) {
		nm length = length_at_random(&random), again = -1;
		enum units units = i % 2 ? UNITS_METRIC : UNITS_IMPERIAL;
		struct diag d;

		text_clear(&text);
		length_write(&text, length, units);
		struct scan s = scan_start(text.bytes, text.length, 1);
		ck_assert_msg(length_scan(&s, units, &again, &d), "%s", text.bytes);
		ck_assert_msg(again == length && scan_is_done(&s), "%s is read as %" PRId64,
			text.bytes, again);
	}
	text_fini(&text);
}
END_TEST

/* Every number of 64ths, reckoned here by its own way, up to 3 in. */
START_TEST(fractions_are_written_in_lowest_terms)
{
	for (int parts = 1; parts < 3 * 64; parts++) {
		struct text text = TEXT_EMPTY;
		int whole = 0, above = 0, below = 0;

		length_write_inches(&text, parts * NM_PER_64TH);
		if (sscanf(text.bytes, "%d %d/%d in", &whole, &above, &below) == 3)
			ck_assert_int_gt(whole, 0);
		else if (sscanf(text.bytes, "%d/%d in", &above, &below) == 2)
			whole = 0;
		else
			ck_assert_int_eq(sscanf(text.bytes, "%d in", &whole), 1);
		ck_assert_msg(!below || (above % 2 == 1 && above < below), "%s", text.bytes);
		ck_assert_int_eq(whole * 64 + (below ? above * (64 / below) : 0), parts);
		text_fini(&text);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("length");
	TCase *reading = suite_case(suite, "reading"), *writing = suite_case(suite, "writing");

	tcase_add_test(reading, an_inch_is_25_400_000_nm);
	tcase_add_loop_test(reading, every_spelling_of_a_length_is_read, 0, COUNT(lengths));
	tcase_add_loop_test(reading, what_is_no_length_is_refused_with_its_column_and_a_reason, 0,
		COUNT(refused));
	tcase_add_test(reading, a_metric_plot_offers_a_bare_number_in_millimetres);
	tcase_add_test(reading,
		a_bare_number_is_offered_with_its_unit_where_it_is_not_too_long);
	tcase_add_loop_test(reading, no_more_than_the_length_is_taken, 0, COUNT(longer));
	tcase_add_loop_test(writing, a_length_is_written_in_the_plots_units_and_exactly, 0,
		COUNT(written));
	tcase_add_test(writing, what_is_written_is_read_as_the_same_length);
	tcase_add_test(writing, fractions_are_written_in_lowest_terms);
	return suite;
}
