/* Drops from a level string line, and what lies between them. */
#include "plot/levels.h"
#include "support/random.h"
#include "support/runner.h"

#include <math.h>

#define FT NM_PER_FOOT
#define IN NM_PER_INCH
#define CASES runner_count(200, 20000)

START_TEST(so_many_drops_cover_the_plan)
{
	ck_assert_int_eq(levels_count(14, FT, 8 * FT), 3);
	ck_assert_int_eq(levels_count(16, FT, 8 * FT), 3);
	ck_assert_int_eq(levels_count(17, FT, 8 * FT), 4);
	ck_assert_int_eq(levels_count(1, IN, 1000 * NM_PER_M), 2);
	ck_assert_int_eq(levels_count(2048, 10 * FT, IN), 2048 * 120 + 1);
}
END_TEST

/* 0 in, 1 in, 2 1/2 in over 1 in, 1 in, 3 in, 8 ft apart. */
static struct levels sample(void)
{
	static const nm drops[] = { 0, IN, IN * 5 / 2, IN, IN, 3 * IN };
	struct levels levels;

	levels_init(&levels, 8 * FT, 3, 2);
	for (int i = 0; i < 6; i++)
		levels.drops[i] = drops[i];
	return levels;
}

START_TEST(a_drop_is_what_was_measured_there)
{
	struct levels levels = sample();

	ck_assert_int_eq(levels_drop(&levels, 0, 0), 0);
	ck_assert_int_eq(levels_drop(&levels, 8 * FT, 0), IN);
	ck_assert_int_eq(levels_drop(&levels, 16 * FT, 0), IN * 5 / 2);
	ck_assert_int_eq(levels_drop(&levels, 0, 8 * FT), IN);
	ck_assert_int_eq(levels_drop(&levels, 16 * FT, 8 * FT), 3 * IN);
	levels_fini(&levels);
}
END_TEST

START_TEST(between_drops_it_is_bilinear_and_beyond_them_the_nearest)
{
	struct levels levels = sample();

	ck_assert_int_eq(levels_drop(&levels, 4 * FT, 0), IN / 2);
	ck_assert_int_eq(levels_drop(&levels, 0, 2 * FT), IN / 4);
	/* the middle of 1, 2 1/2, 1 and 3 in */
	ck_assert_int_eq(levels_drop(&levels, 12 * FT, 4 * FT), IN * 15 / 8);
	ck_assert_int_eq(levels_drop(&levels, -FT, -FT), 0);
	ck_assert_int_eq(levels_drop(&levels, 99 * FT, 4 * FT), IN * 11 / 4);
	ck_assert_int_eq(levels_drop(&levels, 8 * FT, 99 * FT), IN);
	levels_fini(&levels);
}
END_TEST

/* Weighed by the area of the part opposite, which is the same rule in other words. */
START_TEST(a_drop_is_its_four_corners_weighed_by_area)
{
	for (uint64_t seed = 0; seed < (uint64_t)CASES; seed++) {
		struct random random = { seed };
		struct levels levels;
		nm step = random_between(&random, 1, 100) * IN;
		int columns = random_between(&random, 2, 6), rows = random_between(&random, 2, 6);
		int x = random_below(&random, columns - 1), y = random_below(&random, rows - 1);
		nm right = (nm)(random_next(&random) % (uint64_t)(step + 1));
		nm down = (nm)(random_next(&random) % (uint64_t)(step + 1));
		long double sum = 0;

		levels_init(&levels, step, columns, rows);
		for (int i = 0; i < columns * rows; i++)
			levels.drops[i] = (nm)(random_next(&random) % (uint64_t)(drop_rule.most));
		for (int corner = 0; corner < 4; corner++) {
			nm across = corner % 2 ? right : step - right;
			nm along = corner / 2 ? down : step - down;

			int row = y + corner / 2;

			sum += (long double)across * (long double)along *
				(long double)levels.drops[row * columns + x + corner % 2];
		}
		sum /= (long double)step * (long double)step;
		ck_assert_msg(fabsl((long double)levels_drop(&levels, x * step + right,
			y * step + down) - sum) <= 0.51L, "seed %d", (int)seed);
		levels_fini(&levels);
	}
}
END_TEST

START_TEST(levels_that_differ_anywhere_are_not_equal)
{
	struct levels levels = sample(), copy = levels_copy(&levels), none = LEVELS_NONE;
	struct levels empty = levels_copy(&none);

	ck_assert(levels_equal(&none, &empty));
	ck_assert(!levels_equal(&none, &levels));
	ck_assert(!levels_equal(&levels, &none));
	ck_assert(levels_equal(&levels, &copy));
	for (int i = 0; i < 6; i++) {
		copy.drops[i]++;
		ck_assert(!levels_equal(&levels, &copy));
		copy.drops[i]--;
	}
	copy.step++;
	ck_assert(!levels_equal(&levels, &copy));
	copy.step--;
	copy.columns = 2, copy.rows = 3;
	ck_assert(!levels_equal(&levels, &copy));
	levels_fini(&copy);
	levels_fini(&levels);
	ck_assert_int_eq(levels.step, 0);
}
END_TEST

START_TEST(what_the_finished_ground_is_to_be_is_compared_as_far_as_it_is_said)
{
	const struct finish whole = { true, true, { 1, 2 }, IN, false, 2 * MILLION, MILLION };
	struct finish none = { .has_level = false }, other = whole;

	ck_assert(finish_equal(&whole, &other));
	ck_assert(!finish_equal(&whole, &none));
	none.at.x = 5;
	ck_assert(finish_equal(&none, &(struct finish){ .percent = 1 }));
	other.at.y = 3;
	ck_assert(!finish_equal(&whole, &other));
	other = whole, other.drop = 0;
	ck_assert(!finish_equal(&whole, &other));
	other = whole, other.is_away = true;
	ck_assert(!finish_equal(&whole, &other));
	other = whole, other.percent = 0;
	ck_assert(!finish_equal(&whole, &other));
	other = whole, other.bearing = 0;
	ck_assert(!finish_equal(&whole, &other));
	other = whole, other.has_fall = false;
	ck_assert(!finish_equal(&whole, &other));
	other = whole, other.has_level = false;
	ck_assert(!finish_equal(&whole, &other));
}
END_TEST

START_TEST(the_range_is_from_the_highest_to_the_lowest)
{
	struct levels levels;

	levels_init(&levels, NM_PER_M, 3, 2);
	for (int i = 0; i < 6; i++)
		levels.drops[i] = (i * 5 + 3) % 6 + 7; /* 10 9 8 7 12 11 */
	ck_assert_int_eq(levels_range(&levels).least, 7);
	ck_assert_int_eq(levels_range(&levels).most, 12);
	levels_fini(&levels);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("levels");
	TCase *drops = suite_case(suite, "drops");

	tcase_add_test(drops, so_many_drops_cover_the_plan);
	tcase_add_test(drops, a_drop_is_what_was_measured_there);
	tcase_add_test(drops, between_drops_it_is_bilinear_and_beyond_them_the_nearest);
	tcase_add_test(drops, a_drop_is_its_four_corners_weighed_by_area);
	tcase_add_test(drops, the_range_is_from_the_highest_to_the_lowest);
	tcase_add_test(drops, levels_that_differ_anywhere_are_not_equal);
	tcase_add_test(drops, what_the_finished_ground_is_to_be_is_compared_as_far_as_it_is_said);
	return suite;
}
