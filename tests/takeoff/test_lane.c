/* Drops: how many there are of what is aboard, and what they cost. */
#include "support/runner.h"
#include "takeoff/costs/lane.h"

/* Drops that carry 100 kg and hold 2 m3; 0: any volume. Reckoned by hand. */
static const struct {
	double carries, holds, weight, volume;
	int64_t loads;
} loads[] = {
	{ 100, 2, 0, 0, 1 }, { 100, 2, 100, 2, 1 }, { 100, 2, 101, 0, 2 }, { 100, 2, 0, 2.1, 2 },
	{ 100, 2, 250, 2.1, 3 }, { 100, 2, 101, 7, 4 }, { 100, 0, 101, 7, 2 },
	{ 100, 1, 0, 3, 3 }, { 100, 2, 0, 1.9e6, 950000 },
	/* No more than a million. */
	{ 100, 2, 0, 2e6, 1000000 }, { 100, 1e-9, 0, 7, 1000000 }, { 1e-9, 0, 7, 0, 1000000 },
};

START_TEST(loads_go_by_weight_or_by_volume_whichever_needs_more)
{
	const struct load load = { loads[_i].carries, loads[_i].holds };

	ck_assert_int_eq(load_count(&load, loads[_i].weight, loads[_i].volume), loads[_i].loads);
}
END_TEST

START_TEST(what_is_aboard_adds_up_and_is_dropped_at_a_price)
{
	const struct lane lane = { .delivery = 700, .load = { 100, 2 } };
	struct aboard aboard = NOTHING_ABOARD;

	aboard_add(&aboard, 30, 1, 0);
	ck_assert(!aboard.is_used);
	ck_assert_int_eq(lane_drops(&lane, &aboard), 0);
	ck_assert_int_eq(lane_cost(&lane, &aboard), 0);
	aboard_add(&aboard, 0, 0, 1); /* of unknown weight */
	ck_assert_int_eq(lane_cost(&lane, &aboard), 700);
	aboard_add(&aboard, 30, 0.5, 3);
	ck_assert_double_eq(aboard.weight, 90);
	ck_assert_double_eq(aboard.volume, 1.5);
	ck_assert_int_eq(lane_drops(&lane, &aboard), 1);
	aboard_add(&aboard, 20, 0.5, 2);
	ck_assert_double_eq(aboard.weight, 130);
	ck_assert_double_eq(aboard.volume, 2.5);
	ck_assert_int_eq(lane_drops(&lane, &aboard), 2);
	ck_assert_int_eq(lane_cost(&lane, &aboard), 1400);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("lane");
	TCase *drops = suite_case(suite, "drops");

	tcase_add_loop_test(drops, loads_go_by_weight_or_by_volume_whichever_needs_more, 0,
		sizeof loads / sizeof *loads);
	tcase_add_test(drops, what_is_aboard_adds_up_and_is_dropped_at_a_price);
	return suite;
}
