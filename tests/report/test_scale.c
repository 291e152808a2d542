#include "report/drawing/scale.h"
#include "support/runner.h"

/* A bearing of 90 degrees: the plan's top looks east, so north is left. */
START_TEST(north_is_where_it_is_on_the_plan)
{
	static const int bearings[][2] = { { 0, 0 }, { 22, 0 }, { 23, 7 }, { 45, 7 }, { 90, 6 },
		{ 180, 4 }, { 270, 2 }, { 315, 1 }, { 359, 0 } };

	for (size_t i = 0; i < sizeof bearings / sizeof *bearings; i++)
		ck_assert_int_eq(scale_north(bearings[i][0] * INT64_C(1000000)), bearings[i][1]);
	ck_assert_str_eq(scale_ways[scale_north(90 * INT64_C(1000000))], "left");
	/* The top looks north-west: what falls to the south-east falls down the plan. */
	ck_assert_str_eq(scale_ways[scale_towards(315 * INT64_C(1000000),
		135 * INT64_C(1000000))], "down");
	ck_assert_str_eq(scale_ways[scale_towards(359 * INT64_C(1000000), 0)], "up");
	ck_assert_str_eq(scale_ways[scale_towards(0, 359 * INT64_C(1000000))], "up");
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

	tcase_add_test(scale, north_is_where_it_is_on_the_plan);
	tcase_add_test(scale, marks_are_whole_feet_or_metres_by_ones_twos_and_fives);
	return suite;
}
