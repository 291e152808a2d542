/* The choice of corners, held against trying them all. */

#include "takeoff/walls/corners.h"

#include "support/random.h"
#include "support/runner.h"

enum { SIDES_MOST = 10 };

static int64_t cost_of(const struct side_cost *costs, int sides, const bool *through)
{
	int64_t cost = 0;

	for (int i = 0; i < sides; i++) {
		int64_t side = costs[i].of[through[i]][!through[(i + 1) % sides]];

		if (side == COST_EXCLUDED)
			return COST_EXCLUDED;
		cost += side;
	}
	return cost;
}

/* Bit i of the choice, from the top: side i butts at its first corner. So the choices come in
 * the order in which they are preferred. */
static void spread(int choice, int sides, bool *through)
{
	for (int i = 0; i < sides; i++)
		through[i] = !(choice >> (sides - 1 - i) & 1);
}

static int first_of_the_cheapest(const struct side_cost *costs, int sides, int64_t *least)
{
	int best = 0;

	*least = COST_EXCLUDED;
	for (int choice = 0; choice < 1 << sides; choice++) {
		bool through[SIDES_MOST];
		int64_t cost;

		spread(choice, sides, through);
		cost = cost_of(costs, sides, through);
		if (cost < *least) {
			*least = cost;
			best = choice;
		}
	}
	return best;
}

/* Few different costs, so that many choices cost the same. */
static void costs_at_random(struct side_cost *costs, int sides, struct random *random)
{
	for (int i = 0; i < sides; i++)
		for (int n = 0; n < 4; n++)
			costs[i].of[n / 2][n % 2] = random_below(random, 6) == 0 ? COST_EXCLUDED :
				random_below(random, 3);
}

START_TEST(no_choice_is_cheaper_and_the_first_of_the_cheapest_is_taken)
{
	struct random random = { 21 };
	int excluded = 0;

	for (int i = 0; i < 3000; i++) {
		struct side_cost costs[SIDES_MOST];
		int sides = 2 * random_between(&random, 2, SIDES_MOST / 2);
		bool through[SIDES_MOST], expected[SIDES_MOST];
		int64_t least;

		costs_at_random(costs, sides, &random);
		spread(first_of_the_cheapest(costs, sides, &least), sides, expected);
		ck_assert_int_eq(corners_choose(through, costs, sides), least);
		excluded += least == COST_EXCLUDED;
		for (int n = 0; n < sides && least != COST_EXCLUDED; n++)
			ck_assert_msg(through[n] == expected[n], "loop %d of seed 21", i);
	}
	ck_assert_int_gt(excluded, 10);
	ck_assert_int_lt(excluded, 1500);
}
END_TEST

START_TEST(where_all_choices_cost_the_same_each_side_goes_through_at_its_first_corner)
{
	struct side_cost costs[4] = { 0 };
	bool through[4] = { false };

	ck_assert_int_eq(corners_choose(through, costs, 4), 0);
	for (int i = 0; i < 4; i++)
		ck_assert(through[i]);
}
END_TEST

START_TEST(a_side_that_must_butt_at_both_ends_makes_its_neighbours_go_through)
{
	struct side_cost costs[4] = { { .of = { { 0, 5 }, { 5, 5 } } } };
	bool through[4];

	ck_assert_int_eq(corners_choose(through, costs, 4), 0);
	ck_assert(!through[0]);
	ck_assert(through[1]);
}
END_TEST

START_TEST(where_no_choice_can_be_laid_nothing_is_chosen)
{
	struct side_cost costs[4] = { 0 };
	bool through[4] = { true, false, true, false };

	for (int n = 0; n < 4; n++)
		costs[2].of[n / 2][n % 2] = COST_EXCLUDED;
	ck_assert_int_eq(corners_choose(through, costs, 4), COST_EXCLUDED);
	ck_assert(through[0] && !through[1] && through[2] && !through[3]);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("corners");
	TCase *choice = suite_case(suite, "choice");

	tcase_add_test(choice, no_choice_is_cheaper_and_the_first_of_the_cheapest_is_taken);
	tcase_add_test(choice,
		where_all_choices_cost_the_same_each_side_goes_through_at_its_first_corner);
	tcase_add_test(choice, a_side_that_must_butt_at_both_ends_makes_its_neighbours_go_through);
	tcase_add_test(choice, where_no_choice_can_be_laid_nothing_is_chosen);
	return suite;
}
