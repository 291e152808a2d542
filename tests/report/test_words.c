#include "support/runner.h"
#include "support/garden.h"
#include "base/show.h"
#include "report/text/print.h"
#include "report/words/advice_words.h"
#include "report/words/labour_words.h"
#include "report/words/sun_words.h"

#include <string.h>

static struct garden garden;
static struct text text;
static struct arena words;
static struct report report;

/* Five beds, B1 to B5, two of which want a cap that has no room. */
static void setup(void)
{
	text = TEXT_EMPTY;
	garden_rows(&garden, (const char *[]){ "bbbb.bbbb.bbbb.cccc.cccc",
		"bbbb.bbbb.bbbb.cccc.cccc",
		"bbbb.bbbb.bbbb.cccc.cccc", NULL });
	plot_set(&garden.plot, 'c', BED_CAP, "2 ft x 2 ft x 2 in");
	garden_count(&garden);
	words = ARENA_EMPTY;
	report = (struct report){ .words = &words, .plot = &garden.plot,
		.takeoff = &garden.takeoff, .units = UNITS_IMPERIAL };
}

static void teardown(void)
{
	text_fini(&text);
	arena_clear(&words);
	garden_fini(&garden);
}

/* The text with its ties shown as underscores. */
static void says(const char *expected)
{
	for (size_t i = 0; i < text.length; i++)
		if (text.bytes[i] == PAGE_TIE)
			text.bytes[i] = '_';
	ck_assert_str_eq(text.bytes, expected);
}

START_TEST(a_length_is_tied_together)
{
	text_add(&text, "a b ");
	text_add(&text, word_length(&report, 14 * NM_PER_INCH + NM_PER_INCH / 2));
	says("a b 1_ft_2_1/2_in");
}
END_TEST

START_TEST(inches_go_on_beyond_a_foot)
{
	text_add(&text, word_inches(&report, 14 * NM_PER_INCH + NM_PER_INCH / 2));
	says("14_1/2_in");
}
END_TEST

START_TEST(inches_in_a_metric_plot_are_millimetres)
{
	report.units = UNITS_METRIC;
	text_add(&text, word_inches(&report, 390 * NM_PER_MM));
	says("390_mm");
}
END_TEST

static const struct { nm length; const char *words; } inches[] = {
	{ 0, "0 in" }, { NM_PER_INCH / 32, "1/16 in" }, { NM_PER_INCH / 32 - 1, "0 in" },
	{ -8 * NM_PER_INCH, "-8 in" }, { -1, "0 in" }, { 120 * NM_PER_FOOT, "1440 in" },
	{ 24 * NM_PER_INCH - 1, "24 in" },
};

START_TEST(inches_are_shown_to_the_nearest_sixteenth)
{
	show_inches(&text, inches[_i].length, UNITS_IMPERIAL);
	says(inches[_i].words);
}
END_TEST

static const struct { double value; int places; const char *words; } decimals[] = {
	{ 0, 2, "0.00" }, { 1141.333, 2, "1,141.33" }, { 999.999, 2, "1,000.00" },
	{ 7.05, 1, "7.1" },
	{ 12345678, 0, "12,345,678" }, { 1000.04, 1, "1,000.0" },
};

START_TEST(decimals_have_their_thousands_apart)
{
	show_decimal(&text, decimals[_i].value, decimals[_i].places);
	says(decimals[_i].words);
}
END_TEST

START_TEST(a_size_may_break_between_its_lengths_only)
{
	const struct size size = { 16 * NM_PER_INCH, 8 * NM_PER_INCH, 23 * NM_PER_INCH / 4 };

	text_add(&text, word_size(&report, &size));
	says("16_in x 8_in x 5_3/4_in");
}
END_TEST

START_TEST(a_count_takes_the_singular_for_one)
{
	text_add(&text, word_count(&report, 1, "bed", "beds"));
	text_add(&text, " ");
	text_add(&text, word_count(&report, 0, "bed", "beds"));
	text_add(&text, " ");
	text_add(&text, word_count(&report, 1234, "cut piece", "cut pieces"));
	says("1_bed 0_beds 1,234_cut_pieces");
}
END_TEST

static const struct { int count; const char *words; } groups[] = {
	{ 1, "B1" }, { 2, "B1 and B3" }, { 3, "B1, B3 and B4" },
};

START_TEST(a_group_is_named_bed_by_bed)
{
	static const int members[] = { 0, 2, 3 };

	/* The rows of the regions themselves. */
	static const struct wall_not_laid rows[] = { { .region = 0 }, { .region = 1 },
		{ .region = 2 },
		{ .region = 3 } };

	text_add(&text, group_words(&report, &wall_not_laid_table, rows,
		&(struct group){ members, groups[_i].count }));
	says(groups[_i].words);
}
END_TEST

START_TEST(caps_that_are_wanted_but_not_laid_out_are_counted)
{
	ck_assert_int_eq(garden.takeoff.walls.caps_not_laid, 2);
}
END_TEST

/* Under half of a tenth there would be none. */
static const struct { double hours; const char *words; } hours[] = {
	{ 0, "0_hours" }, { 0.01, "under 0.1_hours" }, { 0.048, "under 0.1_hours" },
	{ 0.052, "0.1_hours" }, { 0.94, "0.9_hours" }, { 0.96, "1_hour" }, { 1, "1_hour" },
	{ 1.04, "1_hour" }, { 1.06, "1.1_hours" }, { 12, "12_hours" }, { 1234.5, "1,234.5_hours" },
};

START_TEST(hours_are_told_to_a_tenth)
{
	text_add(&text, word_hours(&report, hours[_i].hours));
	says(hours[_i].words);
}
END_TEST

START_TEST(days_are_told_to_a_tenth)
{
	text_print(&text, "%s; %s; %s; %s", word_days(&report, 0.5), word_days(&report, 1),
		word_days(&report, 1.1), word_days(&report, 2));
	says("0.5_days; 1_day; 1.1_days; 2_days");
}
END_TEST

/* Sixteenths of an inch, or millimetres: to the nearest foot or 100 mm, and one at least. */
static const struct { enum units units; int way; const char *words; } ways[] = {
	{ UNITS_IMPERIAL, 0, "1_ft" }, { UNITS_IMPERIAL, 17 * 16, "1_ft" },
	{ UNITS_IMPERIAL, 18 * 16 - 1, "1_ft" }, { UNITS_IMPERIAL, 18 * 16, "2_ft" },
	{ UNITS_IMPERIAL, 24 * 16, "2_ft" }, { UNITS_METRIC, 49, "100_mm" },
	{ UNITS_METRIC, 149, "100_mm" }, { UNITS_METRIC, 150, "200_mm" },
	{ UNITS_METRIC, 12 * 1000, "12_m" },
};

START_TEST(a_barrows_way_is_told_to_the_nearest_step)
{
	report.units = ways[_i].units;
	text_add(&text, word_way(&report, ways[_i].way *
		(report.units == UNITS_METRIC ? NM_PER_MM : NM_PER_INCH / 16)));
	says(ways[_i].words);
}
END_TEST

static const struct { double hours; char sign; const char *words; } suns[] = {
	{ 0, '0', "0.0" }, { 0.99, '0', "0.9" }, { 1, '1', "1.0" }, { 5.95, '5', "5.9" },
	{ 6 - 1e-9, '5', "6.0" }, { 9.99, '9', "9.9" }, { 10, '+', "10.0" }, { 16.5, '+', "16.5" },
};

START_TEST(hours_of_sun_are_rounded_down)
{
	ck_assert_int_eq(sun_sign(suns[_i].hours), suns[_i].sign);
	text_add(&text, sun_hours_words(&report, suns[_i].hours));
	says(suns[_i].words);
}
END_TEST

/* A day is as long as from one to the other as they are shown: 4:00 to 20:00 for 240.4 and 1199.6
 * minutes. */
START_TEST(times_of_the_sun_are_told_to_the_nearest_minute)
{
	const struct sun_times times = { 240.4 / 60, 1199.6 / 60 };

	text_print(&text, "%s %s %s %s", sun_time_words(&report, 4.5),
		sun_time_words(&report, times.rise), sun_time_words(&report, times.set),
		sun_length_words(&report, &times));
	says("4:30 4:00 20:00 16:00");
}
END_TEST

START_TEST(a_latitude_is_north_or_south_or_neither)
{
	text_print(&text, "%s; %s; %s", sun_latitude_words(&report, 51.5),
		sun_latitude_words(&report, -38), sun_latitude_words(&report, 0));
	says("51.5 north; 38 south; 0");
}
END_TEST

/* The corner is that of the first bed, not of its images. */
START_TEST(a_bed_that_is_moved_is_told_with_its_new_corner)
{
	const struct proposal proposal = { .kind = PROPOSE_SIZE, .regions = { 2, 1, 0 },
		.region_count = 3, .from = { 10, 0, 13, 2 }, .to = { 11, 1, 12, 2 },
		.difference = { .cuts = -1, .blocks = 2 } };

	text_add(&text, proposal_sentence(&report, &proposal));
	says("B3, B2 and B1 2_ft x 2_ft instead of 4_ft x 3_ft, B3 from 11_ft_across,_1_ft_down: "
		"1_piece fewer to saw, 2_blocks more to buy.");
}
END_TEST

#define ROWS(table) (int)(sizeof(table) / sizeof *(table))

Suite *test_suite(void)
{
	Suite *suite = suite_create("words");
	TCase *measures = suite_case(suite, "words");

	tcase_add_checked_fixture(measures, setup, teardown);
	tcase_add_test(measures, a_length_is_tied_together);
	tcase_add_test(measures, inches_go_on_beyond_a_foot);
	tcase_add_test(measures, inches_in_a_metric_plot_are_millimetres);
	tcase_add_loop_test(measures, inches_are_shown_to_the_nearest_sixteenth, 0, ROWS(inches));
	tcase_add_loop_test(measures, decimals_have_their_thousands_apart, 0, ROWS(decimals));
	tcase_add_test(measures, a_size_may_break_between_its_lengths_only);
	tcase_add_test(measures, a_count_takes_the_singular_for_one);
	tcase_add_loop_test(measures, a_group_is_named_bed_by_bed, 0, ROWS(groups));
	tcase_add_test(measures, caps_that_are_wanted_but_not_laid_out_are_counted);
	tcase_add_loop_test(measures, hours_are_told_to_a_tenth, 0, ROWS(hours));
	tcase_add_test(measures, days_are_told_to_a_tenth);
	tcase_add_loop_test(measures, a_barrows_way_is_told_to_the_nearest_step, 0, ROWS(ways));
	tcase_add_loop_test(measures, hours_of_sun_are_rounded_down, 0, ROWS(suns));
	tcase_add_test(measures, times_of_the_sun_are_told_to_the_nearest_minute);
	tcase_add_test(measures, a_bed_that_is_moved_is_told_with_its_new_corner);
	tcase_add_test(measures, a_latitude_is_north_or_south_or_neither);
	return suite;
}
