#include "base/stop.h"
#include "support/runner.h"
#include "support/stopper.h"

#include <time.h>

/* Counts how often it is asked. */
struct counted {
	struct stop_watch watch; /* first */
	int asks;
};

static bool count(struct stop_watch *watch)
{
	((struct counted *)watch)->asks++;
	return false;
}

static void teardown(void)
{
	stop_watch_by(NULL);
}

static double now_ms(void)
{
	struct timespec now;

	clock_gettime(CLOCK_MONOTONIC, &now);
	return (double)now.tv_sec * 1e3 + (double)now.tv_nsec / 1e6;
}

START_TEST(nothing_is_stopped_where_nobody_watches)
{
	for (int i = 0; i < 100000; i++)
		ck_assert(!stop_asked());
}
END_TEST

START_TEST(a_stop_lasts_until_somebody_watches_anew)
{
	struct stopper stopper;

	stopper_begin(&stopper, 3);
	ck_assert(!stop_asked());
	ck_assert(!stop_asked());
	ck_assert(stop_asked());
	ck_assert(stop_asked());
	ck_assert_int_eq(stopper.asks, 3); /* it is not asked what is known */
	stopper_begin(&stopper, 3);
	ck_assert(!stop_asked());
}
END_TEST

START_TEST(a_watch_is_asked_no_more_often_than_it_says)
{
	struct counted counted = { .watch = { count, 20 } };
	double start = now_ms(), spent;

	stop_watch_by(&counted.watch);
	while (counted.asks < 3)
		stop_asked();
	spent = now_ms() - start;
	ck_assert_msg(spent > 3 * 19, "3 asks in %.1f ms", spent);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("stop");
	TCase *all = suite_case(suite, "stop");

	tcase_add_checked_fixture(all, NULL, teardown);
	tcase_add_test(all, nothing_is_stopped_where_nobody_watches);
	tcase_add_test(all, a_stop_lasts_until_somebody_watches_anew);
	tcase_add_test(all, a_watch_is_asked_no_more_often_than_it_says);
	return suite;
}
