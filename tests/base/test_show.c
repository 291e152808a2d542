/* Figures as people read them. */
#include "base/show.h"
#include "support/random.h"
#include "support/runner.h"

#include <inttypes.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))
#define INCHES(n) ((nm)((n) * 25400000))

static const struct {
	nm length;
	const char *imperial, *metric;
} lengths[] = {
	{ 0, "0 in", "0 mm" },
	{ INCHES(6), "6 in", "152 mm" },
	{ INCHES(12), "1 ft", "305 mm" },
	{ INCHES(12.5), "1 ft 1/2 in", "318 mm" },
	{ INCHES(95.3125), "7 ft 11 5/16 in", "2.421 m" },
	{ INCHES(95.34375), "7 ft 11 3/8 in", "2.422 m" },       /* a tie, 11/32: away from zero */
	{ INCHES(0.0625), "1/16 in", "2 mm" },
	{ INCHES(0.03125), "1/16 in", "1 mm" },
	{ INCHES(0.03125) - 1, "0 in", "1 mm" },
	{ INCHES(11.96875), "1 ft", "304 mm" },                  /* rounds up to the foot */
	{ INCHES(11.96875) - 1, "11 15/16 in", "304 mm" },
	{ INCHES(0.75), "3/4 in", "19 mm" },
	{ 150000000, "5 7/8 in", "150 mm" },
	{ 999499999, "3 ft 3 3/8 in", "999 mm" },
	{ 999500000, "3 ft 3 3/8 in", "1 m" },
	{ 1000000000, "3 ft 3 3/8 in", "1 m" },
	{ 2438400000, "8 ft", "2.438 m" },
	{ 2440000000, "8 ft 1/16 in", "2.44 m" },
	{ INT64_C(10000000000000), "32,808 ft 4 13/16 in", "10000 m" },
	{ -INCHES(4), "-4 in", "-102 mm" },
	{ -INCHES(13), "-1 ft 1 in", "-330 mm" },
	{ -1, "0 in", "0 mm" },
	{ -1200000000, "-3 ft 11 1/4 in", "-1.2 m" },
};

START_TEST(a_length_is_shown_to_a_sixteenth_or_a_millimetre)
{
	struct text t = TEXT_EMPTY;

	show_length(&t, lengths[_i].length, UNITS_IMPERIAL);
	ck_assert_str_eq(t.bytes, lengths[_i].imperial);
	text_clear(&t);
	show_length(&t, lengths[_i].length, UNITS_METRIC);
	ck_assert_str_eq(t.bytes, lengths[_i].metric);
	text_fini(&t);
}
END_TEST

static const struct {
	nm length;
	const char *imperial, *metric;
} stops[] = {
	{ 0, "0 in", "0 mm" }, { INCHES(13.875), "13 7/8 in", "352 mm" },
	{ INCHES(48), "48 in", "1.219 m" }, { INCHES(11.96875), "12 in", "304 mm" },
	{ INCHES(11.96875) - 1, "11 15/16 in", "304 mm" }, { -INCHES(0.5), "-1/2 in", "-13 mm" },
	{ -1, "0 in", "0 mm" }, { 1, "0 in", "0 mm" },
};

/* To the nearest sixteenth of an inch or millimetre; metres are never used. */
static const struct {
	nm length;
	const char *imperial, *metric;
} marks[] = {
	{ 0, "0", "0" }, { INCHES(13.875), "13 7/8", "352" }, { INCHES(1284.0), "1284", "32614" },
	{ INCHES(11.96875), "12", "304" }, { INCHES(11.96875) - 1, "11 15/16", "304" },
	{ -INCHES(8), "-8", "-203" }, { INCHES(0.5), "1/2", "13" }, { -1, "0", "0" },
};

START_TEST(a_tape_is_read_without_a_unit)
{
	struct text t = TEXT_EMPTY;

	text_add(&t, "at ");
	show_tape(&t, marks[_i].length, UNITS_IMPERIAL);
	ck_assert_str_eq(t.bytes + 3, marks[_i].imperial);
	text_cut(&t, 3);
	show_tape(&t, marks[_i].length, UNITS_METRIC);
	ck_assert_str_eq(t.bytes + 3, marks[_i].metric);
	text_fini(&t);
}
END_TEST

START_TEST(a_saws_stop_is_set_in_inches_alone)
{
	struct text t = TEXT_EMPTY;

	show_inches(&t, stops[_i].length, UNITS_IMPERIAL);
	ck_assert_str_eq(t.bytes, stops[_i].imperial);
	text_clear(&t);
	show_inches(&t, stops[_i].length, UNITS_METRIC);
	ck_assert_str_eq(t.bytes, stops[_i].metric);
	text_fini(&t);
}
END_TEST

/* To the nearest 64th of an inch, or hundredth of a millimetre; in metres from one on. */
static const struct {
	nm length;
	const char *imperial, *metric;
	nm rounded[2];
} pieces[] = {
	{ 0, "0 in", "0 mm", { 0, 0 } },
	{ INCHES(48), "48 in", "1.2192 m", { INCHES(48), INCHES(48) } },
	{ 198438, "1/64 in", "0.2 mm", { NM_PER_64TH, 200000 } },
	{ 198437, "0 in", "0.2 mm", { 0, 200000 } },
	{ 12344999, "31/64 in", "12.34 mm", { 31 * NM_PER_64TH, 12340000 } },
	{ 12345000, "31/64 in", "12.35 mm", { 31 * NM_PER_64TH, 12350000 } },
	{ 999994999, "39 3/8 in", "999.99 mm", { 2520 * NM_PER_64TH, 999990000 } },
	{ 999995000, "39 3/8 in", "1 m", { 2520 * NM_PER_64TH, NM_PER_M } },
	{ 1000010000, "39 3/8 in", "1.00001 m", { 2520 * NM_PER_64TH, 1000010000 } },
	{ -12345000, "-31/64 in", "-12.35 mm", { -31 * NM_PER_64TH, -12350000 } },
	{ -4999, "0 in", "0 mm", { 0, 0 } },
};

START_TEST(a_piece_is_shown_to_a_64th_or_a_hundredth_and_goes_by_that)
{
	struct text t = TEXT_EMPTY;

	for (enum units units = UNITS_IMPERIAL; units <= UNITS_METRIC; units++) {
		text_clear(&t);
		show_piece(&t, pieces[_i].length, units);
		ck_assert_str_eq(t.bytes, units == UNITS_METRIC ? pieces[_i].metric :
			pieces[_i].imperial);
		ck_assert_int_eq(show_piece_rounded(pieces[_i].length, units),
			pieces[_i].rounded[units]);
	}
	text_fini(&t);
}
END_TEST

START_TEST(an_area_is_shown_in_square_feet_or_metres)
{
	struct text t = TEXT_EMPTY;

	/* 84 cells of one foot. 1 sq ft = 0.09290304 m2, exactly: NIST Special Publication 811,
	 * appendix B.8. */
	show_area(&t, 84 * 0.3048 * 0.3048, UNITS_IMPERIAL);
	text_add(&t, "; ");
	show_area(&t, 84 * 0.3048 * 0.3048, UNITS_METRIC);
	text_add(&t, "; ");
	show_area(&t, 0, UNITS_METRIC);
	text_add(&t, "; ");
	show_area(&t, 12345.678, UNITS_METRIC);
	ck_assert_str_eq(t.bytes, "84.0 sq ft; 7.80 m2; 0.00 m2; 12,345.68 m2");
	text_clear(&t);
	show_area_bare(&t, 84 * 0.3048 * 0.3048, UNITS_IMPERIAL);
	text_print(&t, " %s; ", show_area_unit(UNITS_IMPERIAL)->word);
	show_area_bare(&t, 12345.678, UNITS_METRIC);
	text_print(&t, " %s", show_area_unit(UNITS_METRIC)->word);
	ck_assert_str_eq(t.bytes, "84.0 sq ft; 12,345.68 m2");
	text_fini(&t);
}
END_TEST

/* 1 ft = 0.3048 m exactly, so 1 cu ft is its cube; 27 of them are a cubic yard. */
#define CU_FT 0.028316846592

static const struct {
	double volume;
	enum units units;
	const char *text;
} volumes[] = {
	{ 0, UNITS_IMPERIAL, "0.0 cu ft" }, { 9.5 * CU_FT, UNITS_IMPERIAL, "9.5 cu ft" },
	{ 26.9 * CU_FT, UNITS_IMPERIAL, "26.9 cu ft" },
	{ 26.96 * CU_FT, UNITS_IMPERIAL, "1.00 cu yd" },
	{ -9.5 * CU_FT, UNITS_IMPERIAL, "-9.5 cu ft" },
	{ -36 * CU_FT, UNITS_IMPERIAL, "-1.33 cu yd" }, { -0.516, UNITS_METRIC, "-0.52 m3" },
	{ 27 * CU_FT, UNITS_IMPERIAL, "1.00 cu yd" }, { 36 * CU_FT, UNITS_IMPERIAL, "1.33 cu yd" },
	{ 0, UNITS_METRIC, "0 L" }, { 0.052, UNITS_METRIC, "52 L" },
	{ 0.0994, UNITS_METRIC, "99 L" },
	{ 0.0996, UNITS_METRIC, "0.10 m3" }, { 0.1, UNITS_METRIC, "0.10 m3" },
	{ 0.516, UNITS_METRIC, "0.52 m3" },
};

START_TEST(a_small_volume_is_shown_in_the_smaller_unit)
{
	struct text t = TEXT_EMPTY;

	show_volume(&t, volumes[_i].volume, volumes[_i].units);
	ck_assert_str_eq(t.bytes, volumes[_i].text);
	text_fini(&t);
}
END_TEST

/* 1 lb = 0.45359237 kg, exactly: NIST Special Publication 811, appendix B.8. */
static const struct {
	double weight;
	enum units units;
	const char *text;
} weights[] = {
	{ 0, UNITS_METRIC, "0.0 kg" }, { 0.0324, UNITS_METRIC, "32 g" },
	{ 0.94, UNITS_METRIC, "940 g" }, { 0.96, UNITS_METRIC, "1.0 kg" },
	{ 0.2 * 0.45359237, UNITS_IMPERIAL, "3.2 oz" }, { 0.45359237, UNITS_IMPERIAL, "1.0 lb" },
	{ 23.6, UNITS_METRIC, "23.6 kg" },
	{ 52 * 0.45359237, UNITS_IMPERIAL, "52.0 lb" }, { 99.94, UNITS_METRIC, "99.9 kg" },
	{ 99.96, UNITS_METRIC, "100 kg" }, { 100.4, UNITS_METRIC, "100 kg" },
	{ 100.5, UNITS_METRIC, "101 kg" }, { 1250 * 0.45359237, UNITS_IMPERIAL, "1,250 lb" },
	{ 12345678, UNITS_METRIC, "12,345,678 kg" }, { -0.5, UNITS_METRIC, "-0.5 kg" },
	{ 0.0001, UNITS_METRIC, "0 g" }, { 0.949, UNITS_METRIC, "949 g" },
	{ 0.951, UNITS_METRIC, "1.0 kg" }, { 0.94 * 0.45359237, UNITS_IMPERIAL, "15.0 oz" },
};

/* The same units, and the international foot of 0.3048 m. */
START_TEST(a_figure_alone_is_in_the_unit_that_it_would_be_shown_in)
{
	const struct show_unit *cubic = show_volume_unit(36 * CU_FT, UNITS_IMPERIAL);
	const struct show_unit *grams = show_weight_unit(0.94, UNITS_METRIC);
	const struct show_unit *ounces = show_weight_unit(0.2 * 0.45359237, UNITS_IMPERIAL);
	const struct show_unit *feet = show_length_unit(UNITS_IMPERIAL);

	ck_assert_str_eq(cubic->word, "cu yd");
	ck_assert_double_eq_tol(show_number(cubic, 36 * CU_FT), 36.0 / 27, 1e-12);
	ck_assert_str_eq(grams->word, "g");
	ck_assert_double_eq_tol(show_number(grams, 0.94), 940, 1e-9);
	ck_assert_str_eq(ounces->word, "oz");
	ck_assert_double_eq_tol(show_number(ounces, 0.45359237), 16, 1e-12);
	ck_assert_str_eq(feet->word, "ft");
	ck_assert_double_eq_tol(show_number(feet, 0.3048 * 2.5), 2.5, 1e-12);
	ck_assert_str_eq(show_length_unit(UNITS_METRIC)->word, "m");
}
END_TEST

/* A U.S. gallon is 231 cu in. */
START_TEST(water_is_in_gallons_or_litres_whole_from_100_on)
{
	static const struct { double m3; enum units units; const char *text; } waters[] = {
		{ 231 * 0.0254 * 0.0254 * 0.0254, UNITS_IMPERIAL, "1.0 gal" },
		{ 0.0755, UNITS_METRIC, "75.5 L" }, { 0.09994, UNITS_METRIC, "99.9 L" },
		{ 0.09996, UNITS_METRIC, "100 L" }, { 1.2345, UNITS_METRIC, "1,235 L" },
		{ 0, UNITS_METRIC, "0.0 L" }, { -0.0755, UNITS_METRIC, "-75.5 L" },
		{ -0.09996, UNITS_METRIC, "-100 L" },
	};
	struct text t = TEXT_EMPTY;

	show_water(&t, waters[_i].m3, waters[_i].units);
	ck_assert_str_eq(t.bytes, waters[_i].text);
	text_clear(&t);
	show_flow(&t, 0.9, UNITS_METRIC);
	ck_assert_str_eq(t.bytes, "900 L/h");
	text_fini(&t);
}
END_TEST

START_TEST(a_weight_is_whole_from_100_on_and_in_small_units_below_1)
{
	struct text t = TEXT_EMPTY;

	show_weight(&t, weights[_i].weight, weights[_i].units);
	ck_assert_str_eq(t.bytes, weights[_i].text);
	text_fini(&t);
}
END_TEST

static const struct {
	int64_t count;
	const char *text;
} counts[] = {
	{ 0, "0" }, { 7, "7" }, { 999, "999" }, { 1000, "1,000" }, { 12345, "12,345" },
	{ 1000001, "1,000,001" }, { 100020003004, "100,020,003,004" }, { -1, "-1" },
	{ -1000, "-1,000" }, { INT64_MAX, "9,223,372,036,854,775,807" },
};

START_TEST(a_count_has_a_comma_every_three_digits)
{
	struct text t = TEXT_EMPTY;

	show_count(&t, counts[_i].count);
	ck_assert_str_eq(t.bytes, counts[_i].text);
	text_fini(&t);
}
END_TEST

static const struct {
	double value;
	int places;
	const char *text;
} decimals[] = {
	{ 0, 0, "0" }, { 0, 2, "0.00" }, { 0.5, 0, "1" }, { 1234.5, 1, "1,234.5" },
	{ 0.05, 1, "0.1" }, { 0.995, 1, "1.0" }, { 999.96, 1, "1,000.0" },
	{ 1.000001, 6, "1.000001" },
	{ 12345678.25, 2, "12,345,678.25" }, { -1234.56, 1, "-1,234.6" }, { -0.04, 1, "0.0" },
};

START_TEST(a_decimal_keeps_its_places_and_its_commas)
{
	struct text t = TEXT_EMPTY;

	show_decimal(&t, decimals[_i].value, decimals[_i].places);
	ck_assert_str_eq(t.bytes, decimals[_i].text);
	text_fini(&t);
}
END_TEST

/* What is shown, read as people read it, is within half a sixteenth of what it was. */
START_TEST(a_length_shown_is_the_nearest_there_is)
{
	struct random random = { 5 };

	for (int i = 0; i < 20000; i++) {
		nm length = (nm)(random_next(&random) % 3000000000U), again = -1;
		enum units units = i % 2 ? UNITS_METRIC : UNITS_IMPERIAL;
		struct text t = TEXT_EMPTY;
		struct diag d;

		show_length(&t, length, units);
		struct scan s = scan_start(t.bytes, t.length, 1);
		ck_assert_msg(length_scan(&s, units, &again, &d) && scan_is_done(&s), "%s",
			t.bytes);
		nm half = units == UNITS_METRIC ? 500000 : 25400000 / 32;
		ck_assert_msg(again - length <= half && length - again <= half, "%s for %" PRId64,
			t.bytes, length);
		text_fini(&t);
	}
}
END_TEST

START_TEST(rulers_speak_in_feet_and_inches_or_metres)
{
	static const struct {
		nm length;
		enum units units;
		const char *words;
	} rows[] = {
		{ 0, UNITS_IMPERIAL, "0'" },
		{ 5 * NM_PER_FOOT, UNITS_IMPERIAL, "5'" },
		{ 30 * NM_PER_INCH, UNITS_IMPERIAL, "2'6\"" },
		{ 6 * NM_PER_INCH, UNITS_IMPERIAL, "6\"" },
		{ 15 * NM_PER_INCH / 2, UNITS_IMPERIAL, "7.5\"" },
		{ 0, UNITS_METRIC, "0" },
		{ NM_PER_INCH / 3, UNITS_IMPERIAL, "0.33\"" },
		{ 1500 * NM_PER_MM, UNITS_METRIC, "1.5" },
		{ 1500 * NM_PER_MM - NM_PER_MM / 2, UNITS_METRIC, "1.5" },
		{ 1500 * NM_PER_MM - NM_PER_MM / 2 - 1, UNITS_METRIC, "1.499" },
		{ 12 * NM_PER_M, UNITS_METRIC, "12" },
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct text out = TEXT_EMPTY;

		show_short(&out, rows[i].length, rows[i].units);
		ck_assert_str_eq(out.bytes, rows[i].words);
		text_fini(&out);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("show");
	TCase *figure = suite_case(suite, "figures");

	tcase_add_loop_test(figure, a_length_is_shown_to_a_sixteenth_or_a_millimetre, 0,
		COUNT(lengths));
	tcase_add_loop_test(figure, a_saws_stop_is_set_in_inches_alone, 0, COUNT(stops));
	tcase_add_loop_test(figure, a_tape_is_read_without_a_unit, 0, COUNT(marks));
	tcase_add_loop_test(figure, a_piece_is_shown_to_a_64th_or_a_hundredth_and_goes_by_that, 0,
		COUNT(pieces));
	tcase_add_test(figure, an_area_is_shown_in_square_feet_or_metres);
	tcase_add_loop_test(figure, a_small_volume_is_shown_in_the_smaller_unit, 0, COUNT(volumes));
	tcase_add_test(figure, a_figure_alone_is_in_the_unit_that_it_would_be_shown_in);
	tcase_add_loop_test(figure, water_is_in_gallons_or_litres_whole_from_100_on, 0, 8);
	tcase_add_loop_test(figure, a_weight_is_whole_from_100_on_and_in_small_units_below_1, 0,
		COUNT(weights));
	tcase_add_loop_test(figure, a_count_has_a_comma_every_three_digits, 0, COUNT(counts));
	tcase_add_loop_test(figure, a_decimal_keeps_its_places_and_its_commas, 0, COUNT(decimals));
	tcase_add_test(figure, a_length_shown_is_the_nearest_there_is);
	tcase_add_test(figure, rulers_speak_in_feet_and_inches_or_metres);
	return suite;
}
