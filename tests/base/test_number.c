/* Small arithmetic, against what it says it is. */
#include "base/number.h"
#include "support/random.h"
#include "support/runner.h"

#include <stdlib.h>

/* Below 100 each; beyond that what is near a multiple, up to what the largest plans have. */
START_TEST(what_is_rounded_up_holds_the_number_and_no_less_does)
{
	struct random random = { 1 };

	for (int64_t by = 1; by < 100; by++)
		for (int64_t number = 0; number < 100; number++) {
			int64_t parts = quotient_up(number, by);

			ck_assert_int_ge(parts * by, number);
			ck_assert_int_lt((parts - 1) * by, number);
			ck_assert_int_eq(multiple_up(number, by), parts * by);
		}
	for (int i = 0; i < 1000; i++) {
		int64_t by = 1 + random_below(&random, 2000000000), parts = random_below(&random,
			2000000000);

		ck_assert_int_eq(quotient_up(parts * by, by), parts);
		ck_assert_int_eq(quotient_up(parts * by + 1, by), parts + 1);
		ck_assert_int_eq(multiple_up(parts * by, by), parts * by);
		ck_assert_int_eq(multiple_up(parts * by + 1, by), (parts + 1) * by);
	}
}
END_TEST

START_TEST(a_length_times_millionths_is_short_by_less_than_a_nanometre)
{
	struct random random = { 2 };

	for (int i = 0; i < 1000; i++) {
		nm length = random_below(&random, 2000000000);
		int64_t times = random_below(&random, 4000000);

		ck_assert_int_eq(nm_times(length, times), length * times / 1000000);
	}
	/* longer than its product with millionths would fit */
	ck_assert_int_eq(nm_times(INT64_C(9000000000000000), 2000000), INT64_C(18000000000000000));
	ck_assert_int_eq(nm_times(INT64_C(9000000000000001), 500000), INT64_C(4500000000000000));
}
END_TEST

START_TEST(what_is_held_is_the_nearest_within_the_limits)
{
	for (int lowest = -3; lowest <= 3; lowest++)
		for (int highest = lowest; highest <= 3; highest++)
			for (int at = -5; at <= 5; at++) {
				int inside = held(at, lowest, highest);

				ck_assert(inside >= lowest && inside <= highest);
				for (int other = lowest; other <= highest; other++)
					ck_assert_int_le(abs(inside - at), abs(other - at));
			}
	ck_assert_int_eq(held(INT64_MAX, 0, 7), 7);
	ck_assert_int_eq(held(INT64_MIN, 0, 7), 0);
}
END_TEST

START_TEST(numbers_are_compared_by_their_difference)
{
	for (int a = -3; a <= 3; a++) {
		ck_assert_int_eq(sign(a), a < 0 ? -1 : a == 0 ? 0 : 1);
		for (int b = -3; b <= 3; b++) {
			ck_assert_int_eq(compare(a, b), sign(a - b));
			ck_assert(least(a, b) == a || least(a, b) == b);
			ck_assert(most(a, b) == a || most(a, b) == b);
			ck_assert(least(a, b) <= a && least(a, b) <= b);
			ck_assert(most(a, b) >= a && most(a, b) >= b);
			ck_assert_int_eq(nm_least(a, b), least(a, b));
			ck_assert_int_eq(nm_most(a, b), most(a, b));
		}
	}
	ck_assert_int_eq(compare(INT64_MAX, INT64_MIN), 1);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("number");
	TCase *all = suite_case(suite, "all");

	tcase_add_test(all, what_is_rounded_up_holds_the_number_and_no_less_does);
	tcase_add_test(all, a_length_times_millionths_is_short_by_less_than_a_nanometre);
	tcase_add_test(all, what_is_held_is_the_nearest_within_the_limits);
	tcase_add_test(all, numbers_are_compared_by_their_difference);
	return suite;
}
