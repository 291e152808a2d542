#include "report/drawing/scale.h"
#include "support/runner.h"

/* Of a plan whose top has the first bearing, where the other is. A top of 90 degrees looks east, so
 * north is left. */
START_TEST(a_bearing_is_where_it_is_on_the_plan)
{
	static const struct {
		int64_t top, bearing;
		const char *words;
	} ways[] = {
		{ 0, 0, "up" }, { 90000000, 0, "left" }, { 180000000, 0, "down" },
		{ 270000000, 0, "right" }, { 20000000, 0, "20 degrees left of up" },
		{ 1000000, 0, "1 degree left of up" }, { 359500000, 0, "0.5 degrees right of up" },
		{ 45000000, 0, "45 degrees left of up" },
		{ 100000000, 0, "10 degrees below left" },
		{ 190000000, 0, "10 degrees right of down" },
		{ 280000000, 0, "10 degrees above right" },
		{ 135000000, 0, "45 degrees left of down" },
		{ 225000000, 0, "45 degrees right of down" },
		/* the top looks north-west: the south-east is down the plan */
		{ 315000000, 135000000, "down" }, { 0, 359000000, "1 degree left of up" },
	};
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < sizeof ways / sizeof *ways; i++) {
		text_clear(&words);
		scale_way_words(&words, ways[i].top, ways[i].bearing);
		ck_assert_str_eq(words.bytes, ways[i].words);
	}
	text_fini(&words);
}
END_TEST

START_TEST(marks_are_whole_feet_or_metres_by_ones_twos_and_fives)
{
	static const int steps[][2] = { { 0, 1 }, { 1, 1 }, { 2, 2 }, { 3, 5 }, { 5, 5 }, { 6, 10 },
		{ 11, 20 }, { 41, 50 }, { 100, 100 }, { 101, 200 } };
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < sizeof steps / sizeof *steps; i++) {
		ck_assert_int_eq(scale_step(UNITS_IMPERIAL, steps[i][0] * NM_PER_FOOT),
			steps[i][1] * NM_PER_FOOT);
		ck_assert_int_eq(scale_step(UNITS_METRIC, steps[i][0] * NM_PER_M),
			steps[i][1] * NM_PER_M);
	}
	ck_assert_int_eq(scale_step(UNITS_IMPERIAL, NM_PER_FOOT + 1), 2 * NM_PER_FOOT);
	scale_words(&words, 20 * NM_PER_FOOT, UNITS_IMPERIAL);
	scale_words(&words, 5 * NM_PER_M, UNITS_METRIC);
	ck_assert_str_eq(words.bytes, "20'5 m");
	text_fini(&words);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("scale");
	TCase *scale = suite_case(suite, "scale");

	tcase_add_test(scale, a_bearing_is_where_it_is_on_the_plan);
	tcase_add_test(scale, marks_are_whole_feet_or_metres_by_ones_twos_and_fives);
	return suite;
}
