/* A takeoff that is stopped, at random asks of all that it has: it says so, nothing that is
 * half-made is read (under the sanitizers: nor lost), and the next takeoff is as if none had been
 * stopped. */

#include "plot/history/store.h"
#include "report/json/json.h"
#include "report/text/print.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/sample_gardens.h"
#include "support/shapes.h"
#include "support/stopper.h"
#include "takeoff/advice/advice.h"
#include "takeoff/advice/near.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { SIZE = 48 };

static struct plot plot;
static struct arena arena;
static struct takeoff takeoff;

static void teardown(void)
{
	stopper_end();
	arena_clear(&arena);
	plot_fini(&plot);
}

/* Computes the takeoff anew, stopped at that ask; returns how often it was asked. */
static int64_t compute(int64_t at, bool *is_done)
{
	struct stopper stopper;

	arena_clear(&arena);
	stopper_begin(&stopper, at);
	*is_done = takeoff_compute(&takeoff, &arena, &plot, NULL);
	stopper_end();
	return stopper.asks;
}

static void report(bool is_json, struct sink *out)
{
	if (is_json)
		report_json(out, &plot, &takeoff);
	else
		report_text(out, &plot, &takeoff, "any.plot", PARTS_ALL);
}

static char *printed(void)
{
	struct text text = TEXT_EMPTY;
	struct text_sink sink = text_sink(&text);

	report_json(&sink.sink, &plot, &takeoff);
	return text_take(&text);
}

/* That printing ends where it is stopped is seen by what is printed. */
static void check_printing_stops(struct random *random)
{
	for (int i = 0; i < runner_count(20, 500); i++) {
		struct counting_sink whole = counting_sink(), half = counting_sink();
		struct stopper stopper;
		bool is_json = i % 2;
		int64_t asks;

		stopper_begin(&stopper, 0);
		report(is_json, &whole.sink);
		asks = stopper.asks;
		stopper_begin(&stopper, 1 + (int64_t)(random_next(random) % (uint64_t)asks));
		report(is_json, &half.sink);
		stopper_end();
		ck_assert_uint_le(half.length, whole.length);
	}
}

static void check_stops(const char *name, struct random *random)
{
	bool is_done;
	int64_t asks = compute(0, &is_done);
	char *whole = printed(), *again;

	ck_assert_msg(is_done, "%s", name);
	ck_assert_int_gt(asks, 100);
	for (int i = 0; i < runner_count(40, 1000); i++) {
		int64_t at = 1 + (int64_t)(random_next(random) % (uint64_t)asks);

		ck_assert_msg(compute(at, &is_done) == at && !is_done, "%s, ask %lld of %lld",
			name, (long long)at, (long long)asks);
	}
	ck_assert_int_eq(compute(0, &is_done), asks);
	check_printing_stops(random);
	again = printed();
	ck_assert_msg(strcmp(whole, again) == 0, "%s", name);
	free(whole);
	free(again);
}

START_TEST(a_takeoff_of_the_hardest_plots_can_be_stopped_at_any_ask)
{
	struct random random = { (uint64_t)_i };

	shapes[_i].draw(&plot, SIZE);
	check_stops(shapes[_i].name, &random);
}
END_TEST

/* A house over a corner, one beyond an edge, and the drop beside it. */
START_TEST(with_houses_and_a_drop_they_can_be_stopped_too)
{
	static const struct rectangle houses[] = { { -4, -4, 9, 9 }, { SIZE, 3, SIZE + 9, 20 } };
	struct random random = { (uint64_t)_i };

	shapes[_i].draw(&plot, SIZE);
	for (int i = 0; i < 2; i++)
		obstacles_add(&plot.details.around.houses, memory_string("House"))->cells =
			houses[i];
	plot.details.around.has_drop = true;
	plot.details.around.drop = (struct place){ SIZE, SIZE };
	check_stops(shapes[_i].name, &random);
}
END_TEST

/* Every bed, from a tap in a corner. */
START_TEST(where_beds_are_watered_they_can_be_stopped_too)
{
	struct random random = { (uint64_t)_i };

	shapes[_i].draw(&plot, SIZE / 2);
	for (size_t i = 0; i < plot.details.legend_count; i++)
		if (plot.details.legend[i].class == CLASS_BED)
			block_set(&plot.details.legend[i].block, BED_WATER,
				(struct value){ .set = true, .as.number = WATER_DRIP });
	plot.details.around.has_tap = true;
	check_stops(shapes[_i].name, &random);
}
END_TEST

static void plot_read(const char *path)
{
	struct text message = TEXT_EMPTY;

	plot_init(&plot);
	ck_assert_msg(store_read(path, &plot, &message), "%s", message.bytes);
	text_fini(&message);
}

START_TEST(a_takeoff_of_the_samples_can_be_stopped_at_any_ask)
{
	char path[64];
	struct random random = { (uint64_t)_i };

	snprintf(path, sizeof path, "plots/%s.plot", sample_gardens[_i]);
	plot_read(path);
	check_stops(sample_gardens[_i], &random);
}
END_TEST

START_TEST(the_search_for_sizes_can_be_stopped_at_any_ask)
{
	struct place sizes[NEAR_SIZES_MOST];
	struct stopper stopper;
	int64_t at = 0;
	bool is_done;

	plot_read("plots/elbow.plot");
	compute(0, &is_done);
	do {
		struct arena trials = ARENA_EMPTY;

		stopper_begin(&stopper, ++at);
		near_sizes(sizes, NEAR_SIZES_MOST, &trials, &takeoff, &takeoff.walls.list[0]);
		near_cell(&trials, &takeoff, &takeoff.walls.list[0]);
		stopper_end();
		arena_clear(&trials);
	} while (stopper.asks >= at);
	ck_assert_int_gt(stopper.asks, 20);
}
END_TEST

/* All asks of it would take long: some at random. */
START_TEST(advice_can_be_stopped_at_any_ask)
{
	struct random random = { (uint64_t)_i };
	struct stopper stopper;
	struct advice advice;
	char path[64];
	bool is_done;
	int64_t asks;

	snprintf(path, sizeof path, "plots/%s.plot", sample_gardens[_i]);
	plot_read(path);
	compute(0, &is_done);
	stopper_begin(&stopper, 0);
	advice_make(&advice, &plot, &takeoff);
	asks = stopper.asks;
	ck_assert_int_gt(asks, 100);
	for (int i = 0; i < runner_count(20, 500); i++) {
		int64_t at = 1 + (int64_t)(random_next(&random) % (uint64_t)asks);

		stopper_begin(&stopper, at);
		advice_make(&advice, &plot, &takeoff);
		ck_assert_int_eq(stopper.asks, at);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("stopped");
	TCase *all = suite_case(suite, "stopped");

	tcase_add_checked_fixture(all, NULL, teardown);
	tcase_add_loop_test(all, a_takeoff_of_the_hardest_plots_can_be_stopped_at_any_ask, 0,
		shape_count);
	tcase_add_loop_test(all, with_houses_and_a_drop_they_can_be_stopped_too, 0, shape_count);
	tcase_add_loop_test(all, where_beds_are_watered_they_can_be_stopped_too, 0, shape_count);
	tcase_add_loop_test(all, a_takeoff_of_the_samples_can_be_stopped_at_any_ask, 0,
		SAMPLE_GARDENS);
	tcase_add_test(all, the_search_for_sizes_can_be_stopped_at_any_ask);
	tcase_add_loop_test(all, advice_can_be_stopped_at_any_ask, 0, SAMPLE_GARDENS);
	return suite;
}
