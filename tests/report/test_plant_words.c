/* The first year of plants, by the season. The months of each care are common practice, no
 * published source. */
#include "report/words/plant_words.h"
#include "base/date.h"
#include "support/runner.h"

/* P planted, W weekly, S in summer, R rest, N new growth in spring; how many months after that of
 * planting, from - until. */
static const char *const years[2][MONTHS] = {
	{
		"P0-0 R1-1 N2-2 W2-5 S6-8 R9-11", /* January */
		"P0-0 N1-1 W1-4 S5-7 R8-11",
		"P0-0 W1-3 S4-6 R7-11 N12-12",
		"P0-0 W1-2 S3-5 R6-10 N11-11 W11-11",
		"P0-0 W1-1 S2-4 R5-9 N10-10 W10-11",
		"P0-0 W1-1 S2-3 R4-8 N9-9 W9-11",
		"P0-0 W1-1 S2-2 R3-7 N8-8 W8-11",
		"P0-0 W1-1 R2-6 N7-7 W7-10 S11-11",
		"P0-0 R1-5 N6-6 W6-9 S10-11",
		"P0-0 R1-4 N5-5 W5-8 S9-11",
		"P0-0 R1-3 N4-4 W4-7 S8-10 R11-11",
		"P0-0 R1-2 N3-3 W3-6 S7-9 R10-11",
	}, {
		"P0-0 W1-1 S2-2 R3-7 N8-8 W8-11", /* January: as July in the north */
		"P0-0 W1-1 R2-6 N7-7 W7-10 S11-11",
		"P0-0 R1-5 N6-6 W6-9 S10-11",
		"P0-0 R1-4 N5-5 W5-8 S9-11",
		"P0-0 R1-3 N4-4 W4-7 S8-10 R11-11",
		"P0-0 R1-2 N3-3 W3-6 S7-9 R10-11",
		"P0-0 R1-1 N2-2 W2-5 S6-8 R9-11",
		"P0-0 N1-1 W1-4 S5-7 R8-11",
		"P0-0 W1-3 S4-6 R7-11 N12-12",
		"P0-0 W1-2 S3-5 R6-10 N11-11 W11-11",
		"P0-0 W1-1 S2-4 R5-9 N10-10 W10-11",
		"P0-0 W1-1 S2-3 R4-8 N9-9 W9-11",
	}
};

START_TEST(the_first_year_follows_the_season_north_and_south)
{
	static const char signs[CARES] = { [CARE_PLANTED] = 'P', [CARE_WEEKLY] = 'W',
		[CARE_SUMMER] = 'S', [CARE_REST] = 'R', [CARE_SPRING] = 'N' };
	struct care_span spans[CARE_SPANS_MOST];
	int month = _i % MONTHS + 1, is_south = _i / MONTHS, count;
	struct text words = TEXT_EMPTY;

	count = first_year(month, is_south, spans);
	for (int i = 0; i < count; i++)
		text_print(&words, "%s%c%d-%d", i ? " " : "", signs[spans[i].care], spans[i].from,
			spans[i].until);
	ck_assert_str_eq(words.bytes, years[is_south][month - 1]);
	text_fini(&words);
}
END_TEST

/* The months of the calendar in which each care makes sense, north of the equator. */
START_TEST(nothing_is_watered_for_summer_in_winter_nor_left_unfed_in_spring)
{
	static const struct {
		int from, until;
	} fit[CARES] = { [CARE_PLANTED] = { 1, 12 }, [CARE_WEEKLY] = { 3, 9 },
		[CARE_SUMMER] = { 7, 9 }, [CARE_REST] = { 10, 2 }, [CARE_SPRING] = { 3, 3 } };
	struct care_span spans[CARE_SPANS_MOST];
	int month = _i % MONTHS + 1, is_south = _i / MONTHS;
	int count = first_year(month, is_south, spans), after_last = 0;

	for (int i = 0; i < count; i++) {
		ck_assert_int_ge(spans[i].from, after_last);
		ck_assert_int_ge(spans[i].until, spans[i].from);
		after_last = spans[i].from;
		for (int after = spans[i].from; after <= spans[i].until; after++) {
			int north = (month - 1 + after + (is_south ? 6 : 0)) % MONTHS + 1;
			int from = fit[spans[i].care].from, until = fit[spans[i].care].until;

			ck_assert_msg(from <= until ? north >= from && north <= until :
				north >= from || north <= until, "planted in %d, care %d in %d",
				month, (int)spans[i].care, north);
		}
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("plant words");
	TCase *year = suite_case(suite, "first year");

	tcase_add_loop_test(year, the_first_year_follows_the_season_north_and_south, 0, 2 * MONTHS);
	tcase_add_loop_test(year,
		nothing_is_watered_for_summer_in_winter_nor_left_unfed_in_spring, 0, 2 * MONTHS);
	return suite;
}
