/* Sorting, beside the C library's, of random items: as many as fit in one go, and many more. */

#include "base/sort.h"
#include "support/random.h"
#include "support/runner.h"
#include "support/stopper.h"

#include <stdlib.h>
#include <string.h>

enum { MOST = 5000, TRIALS = 60 };

struct item {
	int key, place; /* place: where it was */
	char more[5];   /* an odd size */
};

static struct item items[MOST];

static int by_key(const void *a, const void *b)
{
	return ((const struct item *)a)->key - ((const struct item *)b)->key;
}

/* Few keys: many items are equal. */
static void items_make(struct random *random, int count)
{
	for (int i = 0; i < count; i++)
		items[i] = (struct item){ random_below(random, 1 + count / 3), i, "more" };
}

static void check_sorted(int count, int seed)
{
	for (int i = 1; i < count; i++) {
		const struct item *a = &items[i - 1], *b = &items[i];

		ck_assert_msg(a->key < b->key || (a->key == b->key && a->place < b->place),
			"seed %d, %d items: item %d", seed, count, i);
		ck_assert_str_eq(b->more, "more");
	}
}

START_TEST(items_come_in_order_and_equal_ones_stay_in_theirs)
{
	for (int seed = 0; seed < TRIALS; seed++) {
		struct random random = { (uint64_t)seed };
		int count = random_below(&random, seed % 2 ? 600 : MOST);

		items_make(&random, count);
		sort(items, (size_t)count, sizeof *items, by_key);
		check_sorted(count, seed);
	}
}
END_TEST

START_TEST(what_is_sorted_stays_and_what_is_turned_round_is_sorted)
{
	for (int i = 0; i < MOST; i++)
		items[i] = (struct item){ i, i, "more" };
	sort(items, MOST, sizeof *items, by_key);
	check_sorted(MOST, 0);
	for (int i = 0; i < MOST; i++)
		items[i] = (struct item){ MOST - i, i, "more" };
	sort(items, MOST, sizeof *items, by_key);
	check_sorted(MOST, 0);
}
END_TEST

START_TEST(sorting_can_be_stopped_at_every_ask_and_leaves_items_of_those_that_were_there)
{
	struct random random = { 7 };
	int asks = 0;

	for (bool is_done = false; !is_done; asks++) {
		struct stopper stopper;

		items_make(&random, MOST);
		stopper_begin(&stopper, asks + 1);
		sort(items, MOST, sizeof *items, by_key);
		is_done = stopper.asks <= asks;
		stopper_end();
		for (int i = 0; i < MOST; i++)
			ck_assert_str_eq(items[i].more, "more");
	}
	check_sorted(MOST, 0);
	ck_assert_int_gt(asks, 20);
}
END_TEST

/* Few and many, of few bits and of all, with equal ones among them. */
START_TEST(numbers_come_in_order_and_none_is_lost)
{
	static const size_t counts[] = { 0, 1, 2, 2047, 2048, 5000 };
	static const int bits[] = { 0, 1, 11, 12, 33, 64 };
	struct random random = { (uint64_t)_i };
	size_t count = counts[_i % 6];
	int shift = 64 - bits[_i / 6];
	uint64_t *numbers = calloc(count + 1, sizeof *numbers), sum = 0, sorted = 0;

	for (size_t i = 0; i < count; i++) {
		numbers[i] = shift == 64 ? 7 : random_next(&random) >> shift;
		sum += numbers[i] * numbers[i];
	}
	sort_numbers(numbers, count);
	for (size_t i = 0; i < count; i++) {
		ck_assert(i == 0 || numbers[i - 1] <= numbers[i]);
		sorted += numbers[i] * numbers[i];
	}
	ck_assert_uint_eq(sorted, sum);
	free(numbers);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sort");
	TCase *all = suite_case(suite, "sort");

	tcase_add_test(all, items_come_in_order_and_equal_ones_stay_in_theirs);
	tcase_add_test(all, what_is_sorted_stays_and_what_is_turned_round_is_sorted);
	tcase_add_test(all,
		sorting_can_be_stopped_at_every_ask_and_leaves_items_of_those_that_were_there);
	tcase_add_loop_test(all, numbers_come_in_order_and_none_is_lost, 0, 36);
	return suite;
}
