/* The cheapest mix: against a search of every mix there is, and cases by hand. */
#include "support/random.h"
#include "support/runner.h"
#include "base/clock.h"
#include "base/stop.h"
#include "takeoff/costs/mix.h"

#include <math.h>
#include <string.h>

enum { WANTS = 4, OFFERS = 20, LANES = 16 };

/* What is wanted, with room for it. */
static struct want wants[WANTS];
static struct offer offers[WANTS][OFFERS];
static double steps[WANTS][OFFERS];
static struct lane lanes[LANES];
static struct mixing mixing;

static void start(int lane_count)
{
	memset(wants, 0, sizeof wants);
	memset(lanes, 0, sizeof lanes);
	mixing = (struct mixing){ wants, 0, lanes, lane_count };
	for (int i = 0; i < LANES; i++)
		lanes[i].load.carries = 1e9;
}

static void want(double order)
{
	int i = mixing.want_count++;

	wants[i] = (struct want){ order, offers[i], 0, steps[i] };
}

/* For the last good wanted. */
static struct offer *offer(double size, money price, int lane, double weight)
{
	int i = mixing.want_count - 1, j = wants[i].offer_count++;

	offers[i][j] = (struct offer){ .size = size, .packs = 1, .price = price,
		.weight = weight, .lane = lane };
	return &offers[i][j];
}

/* ---- Every mix there is ---------------------------------------------------------------------- */

static int64_t drops_of(const struct load *load, double weight, double volume)
{
	int64_t n = 1;

	while ((double)n * load->carries < weight ||
		(load->holds > 0 && (double)n * load->holds < volume))
		n++;
	return n;
}

/* Reckoned anew. False where too little is bought. */
static bool value_of(struct mix_value *value)
{
	*value = (struct mix_value){ 0, 0, 0 };
	for (int i = 0; i < mixing.want_count; i++) {
		double bought = 0;

		for (int j = 0; j < wants[i].offer_count; j++) {
			bought += steps[i][j] * offers[i][j].size;
			value->cost += (money)floor(steps[i][j] * offers[i][j].packs *
				(double)offers[i][j].price + 0.5);
			value->steps += steps[i][j];
		}
		if (bought < wants[i].order)
			return false;
		value->surplus += round((bought / wants[i].order - 1) * 1e9);
	}
	for (int lane = 0; lane < mixing.lane_count; lane++) {
		struct aboard aboard = lanes[lane].before;

		for (int i = 0; i < mixing.want_count; i++) {
			for (int j = 0; j < wants[i].offer_count; j++) {
				if (offers[i][j].lane != lane || steps[i][j] <= 0)
					continue;
				aboard.is_used = true;
				aboard.weight += steps[i][j] * offers[i][j].weight;
				aboard.volume += steps[i][j] * offers[i][j].volume;
			}
		}
		if (aboard.is_used)
			value->cost += lanes[lane].delivery *
				drops_of(&lanes[lane].load, aboard.weight, aboard.volume);
	}
	return true;
}

static int compare_values(const struct mix_value *a, const struct mix_value *b)
{
	if (a->cost != b->cost)
		return a->cost < b->cost ? -1 : 1;
	if (fabs(a->surplus - b->surplus) > 2)
		return a->surplus < b->surplus ? -1 : 1;
	return (a->steps > b->steps) - (a->steps < b->steps);
}

/* All steps of all offers, counted down from the most of each: of equal mixes the first found has
 * more of the earlier offers. */
static struct mix_value best_of_all(double best[WANTS][OFFERS])
{
	struct mix_value found = { INT64_MAX, 0, 0 }, value;
	int i, j;

	for (i = 0; i < mixing.want_count; i++)
		for (j = 0; j < wants[i].offer_count; j++)
			steps[i][j] = ceil(wants[i].order / offers[i][j].size);
	for (;;) {
		if (value_of(&value) && compare_values(&value, &found) < 0) {
			found = value;
			memcpy(best, steps, sizeof steps);
		}
		for (i = mixing.want_count - 1; i >= 0; i--) {
			for (j = wants[i].offer_count - 1; j >= 0 && steps[i][j] <= 0; j--)
				steps[i][j] = ceil(wants[i].order / offers[i][j].size);
			if (j >= 0)
				break;
		}
		if (i < 0)
			return found;
		steps[i][j]--;
	}
}

/* Bulk has a lane of its own. */
static void in_bulk(struct random *random, struct offer *o)
{
	o->packs = 0.5;
	o->price += random_below(random, 100);
	o->volume = random_below(random, 8);
	if (o->lane == NO_LANE)
		return;
	o->lane = mixing.lane_count++;
	lanes[o->lane] = (struct lane){ .delivery = random_below(random, 8) * 1000,
		.load = { random_between(random, 5, 60), random_between(random, 2, 20) } };
}

static void mixing_at_random(struct random *random)
{
	start(random_between(random, 0, 3));
	for (int i = 0; i < mixing.lane_count; i++) {
		lanes[i] = (struct lane){ .delivery = random_below(random, 8) * 1000,
			.load = { random_between(random, 5, 60), 0 } };
		if (random_below(random, 5) == 0)
			lanes[i].before = (struct aboard){ random_below(random, 20), 0, true };
	}
	int shared = mixing.lane_count, goods = random_between(random, 1, 3);

	for (int i = 0; i < goods; i++) {
		want(random_between(random, 1, 24) / 2.0);
		for (int j = random_between(random, 1, goods == 3 ? 2 : 3); j > 0; j--) {
			double least = wants[i].order / (goods == 1 ? 12 : 5);
			double size = ceil(least * 2 + random_below(random, 12)) / 2;
			int lane = random_below(random, shared + 1) - 1;
			struct offer *o = offer(size, random_below(random, 60) * 50, lane,
				random_below(random, 12));

			o->volume = random_below(random, 5); /* lanes hold any */
			if (random_below(random, 4) == 0)
				in_bulk(random, o);
		}
	}
}

/* Few sizes, each at the same price for as much, in deliveries that cost the same. */
static void alike_at_random(struct random *random)
{
	start(2);
	for (int i = 0; i < 2; i++)
		lanes[i] = (struct lane){ .delivery = 1000, .load = { 12, 0 } };
	for (int i = random_between(random, 1, 2); i > 0; i--) {
		want(random_between(random, 1, 8));
		for (int j = random_between(random, 2, 4); j > 0; j--) {
			int size = random_between(random, 1, 3);

			offer(size, size * 100, random_below(random, 3) - 1, size);
		}
	}
}

static void check_no_better_mix(int seed, void (*make)(struct random *random))
{
	struct random random = { (uint64_t)seed };
	double best[WANTS][OFFERS] = { { 0 } };
	struct mix_value value, expected;

	make(&random);
	expected = best_of_all(best);
	memset(steps, 0, sizeof steps);
	ck_assert_msg(mix_find(&mixing), "seed %d", seed);
	ck_assert_msg(value_of(&value), "seed %d: too little", seed);
	ck_assert_msg(value.cost == expected.cost, "seed %d: %lld, not %lld", seed,
		(long long)value.cost, (long long)expected.cost);
	ck_assert_msg(compare_values(&value, &expected) == 0, "seed %d: surplus %f steps %f, "
		"not %f %f", seed, value.surplus, value.steps, expected.surplus, expected.steps);
	for (int i = 0; i < mixing.want_count; i++)
		for (int j = 0; j < wants[i].offer_count; j++)
			ck_assert_msg(fabs(steps[i][j] - best[i][j]) < 0.5,
				"seed %d: %d of offer %d.%d, not %d", seed, (int)steps[i][j], i, j,
				(int)best[i][j]);
}

START_TEST(no_mix_of_all_there_are_is_better)
{
	int count = runner_count(60, 2000);

	for (int seed = _i * count; seed < (_i + 1) * count; seed++)
		check_no_better_mix(seed, mixing_at_random);
}
END_TEST

START_TEST(of_mixes_that_are_as_good_the_one_with_more_of_the_earlier_offers_is_found)
{
	for (int seed = 0; seed < runner_count(300, 3000); seed++)
		check_no_better_mix(seed, alike_at_random);
}
END_TEST

/* Goods that share lanes, where the best cost is met before the least surplus at that cost. */
START_TEST(of_mixes_that_cost_the_same_the_one_with_less_over_is_found)
{
	static const int seeds[] = { 3732, 10656, 16910 };

	check_no_better_mix(seeds[_i], mixing_at_random);
}
END_TEST

/* ---- Larger orders --------------------------------------------------------------------------- */

enum { ORDER_MOST = 400 };

/* The least for which at least so many can be bought, by adding up; sizes are whole. */
static money least_by_adding_up(int order)
{
	static money least[ORDER_MOST + 1];

	for (int n = 1; n <= order; n++) {
		least[n] = INT64_MAX;
		for (int j = 0; j < wants[0].offer_count; j++) {
			int rest = n - (int)offers[0][j].size;
			money cost = offers[0][j].price + least[rest > 0 ? rest : 0];

			if (cost < least[n])
				least[n] = cost;
		}
	}
	return least[order];
}

START_TEST(a_good_that_is_collected_costs_what_adding_up_finds)
{
	int count = runner_count(30, 500);

	for (int seed = _i * count; seed < (_i + 1) * count; seed++) {
		struct random random = { (uint64_t)seed };
		int order = random_between(&random, 1, ORDER_MOST);
		struct mix_value value;

		start(0);
		want(order);
		for (int j = random_between(&random, 1, 6); j > 0; j--) {
			int size = random_between(&random, 1, 70);

			offer(size, size * random_between(&random, 80, 110), NO_LANE, 0);
		}
		ck_assert_msg(mix_find(&mixing), "seed %d", seed);
		ck_assert_msg(value_of(&value), "seed %d: too little", seed);
		ck_assert_msg(value.cost == least_by_adding_up(order), "seed %d", seed);
	}
}
END_TEST

/* As much as a garden takes: single pieces that are collected or brought, packs at a discount,
 * pallets of one of the suppliers. */
static void garden_at_random(struct random *random, int goods, int suppliers)
{
	start(suppliers);
	for (int i = 0; i < suppliers; i++)
		lanes[i] = (struct lane){ .delivery = random_between(random, 20, 180) * 100,
			.load = { random_between(random, 4000, 24000), 0 } };
	for (int i = 0; i < goods; i++) {
		int price = random_between(random, 100, 900);
		int weight = random_between(random, 1, 60);
		int pallet = random_between(random, 40, 90), box = random_between(random, 5, 20);

		want(random_between(random, 3, 300));
		offer(1, price, random_below(random, 4) ? NO_LANE :
			random_below(random, suppliers), weight);
		offer(box, price * box * random_between(random, 88, 96) / 100, NO_LANE,
			weight * box);
		offer(pallet, price * pallet * random_between(random, 80, 92) / 100,
			random_below(random, suppliers), weight * pallet);
	}
}

/* No good bought in packs of one kind instead makes the whole cheaper than it is. */
static void check_no_single_kind_is_better(int seed)
{
	struct mix_value found, other;

	ck_assert(value_of(&found));
	for (int i = 0; i < mixing.want_count; i++) {
		double kept[OFFERS];

		memcpy(kept, steps[i], sizeof kept);
		for (int j = 0; j < wants[i].offer_count; j++) {
			memset(steps[i], 0, sizeof steps[i]);
			steps[i][j] = ceil(wants[i].order / offers[i][j].size);
			ck_assert(value_of(&other));
			ck_assert_msg(other.cost >= found.cost, "seed %d", seed);
		}
		memcpy(steps[i], kept, sizeof kept);
	}
}

/* No time is lost: the bound is for a machine that is busy. */
START_TEST(a_days_goods_of_a_garden_are_weighed_against_each_other_in_no_time)
{
	for (int seed = _i * 10; seed < _i * 10 + 10; seed++) {
		struct random random = { (uint64_t)seed };
		int64_t began = clock_ms();

		garden_at_random(&random, WANTS, 2);
		ck_assert_msg(mix_find(&mixing), "seed %d", seed);
		ck_assert_msg(clock_ms() - began < 2000, "seed %d: %d ms", seed,
			(int)(clock_ms() - began));
		check_no_single_kind_is_better(seed);
	}
}
END_TEST

/* Four goods in packs of odd sizes at about the same price, most of them by one of four
 * suppliers. */
static void odd_at_random(struct random *random)
{
	start(4);
	for (int i = 0; i < 4; i++)
		lanes[i] = (struct lane){ .delivery = random_between(random, 20, 90) * 100,
			.load = { random_between(random, 300, 900), 0 } };
	for (int i = 0; i < WANTS; i++) {
		want(random_between(random, 150, 300));
		for (int j = 0; j < 4; j++) {
			int size = random_between(random, 5, 40);
			money price = size * random_between(random, 90, 110);

			offer(size, price, random_below(random, 5) - 1, size * 4);
		}
	}
}

/* Of all ways to buy these goods there are nearly as many as a search looks at, at the most: one
 * that saw much less of what leads nowhere would give up. */
static const int odd_seeds[] = { 20, 95, 100, 299 };

START_TEST(as_many_ways_as_can_be_looked_at_are_looked_at)
{
	int seed = odd_seeds[_i];
	struct random random = { (uint64_t)seed };

	odd_at_random(&random);
	ck_assert_msg(mix_find(&mixing), "seed %d", seed);
	check_no_single_kind_is_better(seed);
}
END_TEST

/* 20 packs of odd sizes at about the same price, a million pieces, 12 suppliers. */
static void hardest(struct random *random)
{
	start(12);
	for (int i = 0; i < 12; i++)
		lanes[i] = (struct lane){ .delivery = random_between(random, 20, 200) * 100,
			.load = { random_between(random, 300, 9000), 0 } };
	for (int i = 0; i < WANTS; i++) {
		want(1e6 + i);
		for (int j = 0; j < OFFERS; j++) {
			int size = random_between(random, 100, 20000);

			offer(size / 177.0, size * random_between(random, 90, 110),
				random_below(random, 13) - 1, size / 10.0);
		}
	}
}

START_TEST(too_many_ways_are_not_all_looked_at_and_what_is_found_will_do)
{
	struct random random = { 7 };
	struct mix_value value, alone;
	int64_t began = clock_ms();

	hardest(&random);
	ck_assert(!mix_find(&mixing));
	ck_assert_msg(clock_ms() - began < 25000, "%d ms", (int)(clock_ms() - began));
	value = mix_value(&mixing);
	for (int i = 0; i < WANTS; i++) {
		double bought = 0;
		int best = 0;

		for (int j = 0; j < OFFERS; j++) {
			bought += steps[i][j] * offers[i][j].size;
			if ((double)offers[i][j].price / offers[i][j].size <
				(double)offers[i][best].price / offers[i][best].size)
				best = j;
		}
		ck_assert(bought >= wants[i].order * (1 - 1e-9));
		memset(steps[i], 0, sizeof steps[i]);
		steps[i][best] = ceil(wants[i].order / offers[i][best].size);
	}
	alone = mix_value(&mixing);
	ck_assert_int_le(value.cost, alone.cost);
}
END_TEST

/* A million pieces, in packs of a few at much the same price, each by a supplier of its own. */
START_TEST(too_many_ways_of_buying_one_good_are_not_all_looked_at)
{
	struct random random = { 7 };

	start(LANES);
	want(1e6);
	for (int i = 0; i < LANES; i++) {
		int size = random_between(&random, 3, 40);

		lanes[i] = (struct lane){ .delivery = 500, .load = { 1000, 0 } };
		offer(size, size * random_between(&random, 995, 1005), i, size);
	}
	ck_assert(!mix_find(&mixing));
}
END_TEST

static bool at_once(struct stop_watch *watch)
{
	(void)watch;
	return true;
}

START_TEST(a_search_that_is_stopped_ends_at_once)
{
	struct stop_watch watch = { at_once, 0 };
	struct random random = { 7 };
	int64_t began;

	hardest(&random);
	began = clock_ms();
	stop_watch_by(&watch);
	mix_find(&mixing);
	stop_watch_by(NULL);
	ck_assert_int_lt(clock_ms() - began, 500);
}
END_TEST

/* What costs the least if nothing else is bought: 12 of 1 for 24, of 4 for 21, of 5 for 30. */
START_TEST(a_search_that_is_stopped_has_bought_each_good_by_itself)
{
	struct stop_watch watch = { at_once, 0 };

	start(1);
	lanes[0] = (struct lane){ .delivery = 0, .load = { 1e6, 0 } };
	want(12);
	offer(1, 2, 0, 1);
	offer(4, 7, 0, 1);
	offer(5, 10, 0, 1);
	stop_watch_by(&watch);
	mix_find(&mixing);
	stop_watch_by(NULL);
	ck_assert_double_eq(steps[0][0], 0);
	ck_assert_double_eq(steps[0][1], 3);
	ck_assert_double_eq(steps[0][2], 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("mix");
	TCase *all = suite_case(suite, "all");

	TCase *large = suite_case(suite, "large");

	tcase_add_loop_test(all, no_mix_of_all_there_are_is_better, 0, 10);
	tcase_add_test(all,
		of_mixes_that_are_as_good_the_one_with_more_of_the_earlier_offers_is_found);
	tcase_add_loop_test(all, of_mixes_that_cost_the_same_the_one_with_less_over_is_found, 0, 3);
	tcase_add_loop_test(large, a_good_that_is_collected_costs_what_adding_up_finds, 0, 4);
	tcase_add_loop_test(large,
		a_days_goods_of_a_garden_are_weighed_against_each_other_in_no_time, 0, 4);
	tcase_add_loop_test(large, as_many_ways_as_can_be_looked_at_are_looked_at, 0,
		sizeof odd_seeds / sizeof *odd_seeds);
	tcase_add_test(large, too_many_ways_are_not_all_looked_at_and_what_is_found_will_do);
	tcase_add_test(large, too_many_ways_of_buying_one_good_are_not_all_looked_at);
	tcase_add_test(large, a_search_that_is_stopped_ends_at_once);
	tcase_add_test(large, a_search_that_is_stopped_has_bought_each_good_by_itself);
	return suite;
}
