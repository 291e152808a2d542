#include "support/random.h"
#include "support/runner.h"
#include "takeoff/ground/ticks.h"

#include <stdlib.h>

START_TEST(places_are_kept_once_and_numbered_from_low_to_high)
{
	static const nm places[] = { 5, -3, 5, 0, 12, -3, 7 };
	static const nm sorted[] = { -3, 0, 5, 7, 12 };
	struct ticks ticks = { NULL, 0, NULL, 0 };

	for (int i = 0; i < 7; i++)
		ticks_add(&ticks, places[i]);
	ticks_number(&ticks);
	ck_assert_int_eq(ticks.count, 5);
	for (int i = 0; i < 5; i++) {
		ck_assert_int_eq(ticks.list[i], sorted[i]);
		ck_assert_int_eq(ticks_find(&ticks, sorted[i]), i);
	}
	ticks_fini(&ticks);
	ck_assert_ptr_null(ticks.list);
}
END_TEST

static int compare(const void *a, const void *b)
{
	nm one = *(const nm *)a, other = *(const nm *)b;

	return (one > other) - (one < other);
}

/* A sorted list without what is in it twice. */
START_TEST(many_places_are_those_of_a_sorted_list)
{
	enum { PLACES = 3000 };
	struct random random = { (uint64_t)_i };
	struct ticks ticks = { NULL, 0, NULL, 0 };
	nm places[PLACES], step = _i % 2 ? NM_PER_FOOT : 1;
	int count = 0;

	for (int i = 0; i < PLACES; i++) {
		places[i] = step * (random_below(&random, 4000) - 2000);
		ticks_add(&ticks, places[i]);
	}
	ticks_number(&ticks);
	qsort(places, PLACES, sizeof *places, compare);
	for (int i = 0; i < PLACES; i++) {
		if (i > 0 && places[i] == places[i - 1])
			continue;
		ck_assert_int_lt(count, ticks.count);
		ck_assert_int_eq(ticks.list[count], places[i]);
		ck_assert_int_eq(ticks_find(&ticks, places[i]), count++);
	}
	ck_assert_int_eq(count, ticks.count);
	ticks_fini(&ticks);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("ticks");
	TCase *ticks = suite_case(suite, "ticks");

	tcase_add_test(ticks, places_are_kept_once_and_numbered_from_low_to_high);
	tcase_add_loop_test(ticks, many_places_are_those_of_a_sorted_list, 0, 10);
	return suite;
}
