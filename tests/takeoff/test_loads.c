/* How many loads: published examples, and which of volume and weight decides. */
#include "takeoff/common/loads.h"

#include "support/garden.h"
#include "support/runner.h"

#define POUND 0.45359237 /* kg, by definition */

static struct plot plot;

static void setup(void)
{
	plot_init(&plot);
}

static void teardown(void)
{
	plot_fini(&plot);
}

static struct loads loads(double cubic_yards, double pounds_per_cubic_yard)
{
	return loads_of(&plot.details.allow, cubic_yards * CUBIC_YARD,
		pounds_per_cubic_yard * POUND / CUBIC_YARD);
}

/* Pearson, Estimating in Building Construction, its edition not noted, example 9-2: 1,000 cu yd of
 * dense clay in the bank swell by 30 % to 1,300 cu yd loose, 186 loads of 7 cu yd. */
START_TEST(a_published_1300_cu_yd_are_186_trucks_of_7)
{
	plot_set(&plot, 0, ALLOW_TRUCK_VOLUME, "7 cu yd");
	plot_set(&plot, 0, ALLOW_TRUCK_WEIGHT, "50000 lb");
	ck_assert_int_eq(loads(1000 * 1.30, 2100).truck, 186);
}
END_TEST

/* By arithmetic with the defaults: 6 cu ft or 300 lb, 1,500 lb, 10 cu yd or 20,000 lb. */
static const struct { double yards, density; struct loads expected; } cases[] = {
	/* 20,000 lb: weight decides for the barrow, both for the truck */
	{ 10, 2000, { 67, 14, 1 } },
	{ 10, 2001, { 67, 14, 2 } },     /* 10 lb too heavy for one truck */
	{ 10, 600, { 45, 4, 1 } },       /* 270 cu ft of 6: volume decides for the barrow */
	{ 10.01, 600, { 46, 5, 2 } },    /* volume decides for the truck: 6,006 lb are 5 pickups */
	{ 0, 2100, { 0, 0, 0 } },
	{ 0.001, 2100, { 1, 1, 1 } },
};

START_TEST(the_smaller_of_what_it_holds_and_what_it_carries_decides)
{
	struct loads found = loads(cases[_i].yards, cases[_i].density);

	ck_assert_int_eq(found.barrow, cases[_i].expected.barrow);
	ck_assert_int_eq(found.pickup, cases[_i].expected.pickup);
	ck_assert_int_eq(found.truck, cases[_i].expected.truck);
}
END_TEST

START_TEST(no_load_more_for_a_hair_of_rounding)
{
	/* In binary 0.1 and 0.2 make a hair more than 0.3. */
	plot_set(&plot, 0, ALLOW_BARROW_VOLUME, "0.3 m3");
	plot_set(&plot, 0, ALLOW_TRUCK_VOLUME, "0.1 m3");
	ck_assert_int_eq(loads_of(&plot.details.allow, 0.1 + 0.2, 1).barrow, 1);
	ck_assert_int_eq(loads_of(&plot.details.allow, 0.1 + 0.2, 1).truck, 3);
}
END_TEST

START_TEST(what_the_plot_says_of_a_vehicle_holds)
{
	plot_set(&plot, 0, ALLOW_BARROW_VOLUME, "100 L");
	plot_set(&plot, 0, ALLOW_BARROW_WEIGHT, "130 kg");
	plot_set(&plot, 0, ALLOW_PICKUP_WEIGHT, "680 kg");
	struct loads found = loads_of(&plot.details.allow, 2, 1250);

	ck_assert_int_eq(found.barrow, 20); /* 2,500 kg are 19.2 of 130 kg; 2 m3 are 20 of 100 L */
	ck_assert_int_eq(found.pickup, 4);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("loads");
	TCase *all = suite_case(suite, "loads");

	tcase_add_checked_fixture(all, setup, teardown);
	tcase_add_test(all, a_published_1300_cu_yd_are_186_trucks_of_7);
	tcase_add_loop_test(all, the_smaller_of_what_it_holds_and_what_it_carries_decides, 0,
		sizeof cases / sizeof *cases);
	tcase_add_test(all, no_load_more_for_a_hair_of_rounding);
	tcase_add_test(all, what_the_plot_says_of_a_vehicle_holds);
	return suite;
}
