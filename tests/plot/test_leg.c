/* Legs, against the sides of cells that they go along, one by one. */
#include "plot/leg.h"
#include "support/random.h"
#include "support/runner.h"

#include <string.h>

enum { SIDE = 9, TURNS = 3000 };

/* Sides of cells: level or upright, from a grid point; how many legs go along each. */
struct sides {
	int along[2][SIDE + 1][SIDE + 1];
};

static void sides_add(struct sides *sides, struct leg leg, int by)
{
	bool upright = leg.from.x == leg.to.x;
	int x = leg.from.x < leg.to.x ? leg.from.x : leg.to.x;
	int y = leg.from.y < leg.to.y ? leg.from.y : leg.to.y;
	int xs = leg.from.x + leg.to.x - x, ys = leg.from.y + leg.to.y - y;

	for (; x < xs || y < ys; x += !upright, y += upright)
		sides->along[upright][y][x] += by;
}

static int sides_most(const struct sides *sides)
{
	int most = 0;

	for (int i = 0; i < 2 * (SIDE + 1) * (SIDE + 1); i++)
		if ((&sides->along[0][0][0])[i] > most)
			most = (&sides->along[0][0][0])[i];
	return most;
}

/* Each side once, however many legs go along it. */
static void sides_once(struct sides *sides)
{
	for (int i = 0; i < 2 * (SIDE + 1) * (SIDE + 1); i++)
		(&sides->along[0][0][0])[i] = (&sides->along[0][0][0])[i] > 0;
}

static struct leg leg_at_random(struct random *random)
{
	struct leg leg;

	do {
		leg.from = (struct place){ random_between(random, 0, SIDE),
			random_between(random, 0, SIDE) };
		leg.to = leg.from;
		*(random_below(random, 2) ? &leg.to.x : &leg.to.y) =
			random_between(random, 0, SIDE);
	} while (!leg_is_straight(leg));
	return leg;
}

START_TEST(a_leg_is_level_or_upright_and_has_a_length)
{
	ck_assert(leg_is_straight((struct leg){ { 1, 2 }, { 5, 2 } }));
	ck_assert(leg_is_straight((struct leg){ { 1, 2 }, { 1, 0 } }));
	ck_assert(!leg_is_straight((struct leg){ { 1, 2 }, { 1, 2 } }));
	ck_assert(!leg_is_straight((struct leg){ { 1, 2 }, { 2, 3 } }));
	ck_assert(leg_is_upright((struct leg){ { 1, 2 }, { 1, 0 } }));
	ck_assert(!leg_is_upright((struct leg){ { 1, 2 }, { 5, 2 } }));
	ck_assert_int_eq(leg_length((struct leg){ { 5, 2 }, { 1, 2 } }), 4);
	ck_assert_int_eq(leg_length((struct leg){ { 5, 2 }, { 5, 9 } }), 7);
}
END_TEST

START_TEST(two_legs_overlap_by_the_sides_that_both_go_along)
{
	struct random random = { 1 };

	for (int turn = 0; turn < TURNS; turn++) {
		struct leg a = leg_at_random(&random), b = leg_at_random(&random);
		struct sides sides = { 0 };
		int both = 0;

		sides_add(&sides, a, 1);
		sides_add(&sides, b, 1);
		for (int i = 0; i < 2 * (SIDE + 1) * (SIDE + 1); i++)
			both += (&sides.along[0][0][0])[i] == 2;
		ck_assert_int_eq(leg_overlap(a, b), both);
		ck_assert_int_eq(leg_covers(a, b), both == leg_length(b));
		ck_assert(leg_equal(leg_forward(a), leg_forward((struct leg){ a.to, a.from })));
		ck_assert_int_le(leg_forward(a).from.x, leg_forward(a).to.x);
		ck_assert_int_le(leg_forward(a).from.y, leg_forward(a).to.y);
	}
}
END_TEST

START_TEST(what_a_plan_has_of_a_leg_is_the_sides_within_it)
{
	struct random random = { 2 };

	for (int turn = 0; turn < TURNS; turn++) {
		struct leg leg = leg_at_random(&random), within;
		int columns = random_between(&random, 1, SIDE),
			rows = random_between(&random, 1, SIDE);
		struct sides expected = { 0 }, sides = { 0 };

		sides_add(&expected, leg, 1);
		for (int upright = 0; upright < 2; upright++)
			for (int y = 0; y <= SIDE; y++)
				for (int x = 0; x <= SIDE; x++)
					if (x + !upright > columns || y + upright > rows)
						expected.along[upright][y][x] = 0;
		if (leg_clip(leg, columns, rows, &within))
			sides_add(&sides, within, 1);
		ck_assert_mem_eq(&sides, &expected, sizeof sides);
	}
	struct leg within;
	ck_assert(leg_clip((struct leg){ { -3, 1 }, { 9, 1 } }, 4, 4, &within));
	ck_assert(leg_equal(within, (struct leg){ { 0, 1 }, { 4, 1 } }));
	ck_assert(!leg_clip((struct leg){ { -3, 1 }, { 0, 1 } }, 4, 4, &within));
	ck_assert(!leg_clip((struct leg){ { -3, -1 }, { 4, -1 } }, 4, 4, &within));
}
END_TEST

static void legs_at_random(struct legs *legs, struct sides *sides, struct random *random, int most)
{
	for (int i = random_below(random, most); i > 0; i--) {
		struct leg leg = leg_at_random(random);

		legs_add(legs, leg);
		sides_add(sides, leg, 1);
	}
}

/* Joined legs go along the same sides, each once, and none can be longer. */
START_TEST(joined_legs_are_as_long_as_can_be)
{
	struct random random = { 3 };

	for (int turn = 0; turn < TURNS; turn++) {
		struct legs legs = LEGS_EMPTY;
		struct sides expected = { 0 }, sides = { 0 };
		bool goes_on = false;

		legs_at_random(&legs, &expected, &random, 12);
		legs_join(&legs);
		for (size_t i = 0; i < legs.count; i++)
			sides_add(&sides, legs.items[i], 1);
		sides_once(&expected);
		ck_assert_mem_eq(&sides, &expected, sizeof sides);
		for (size_t i = 0; i < legs.count; i++)
			for (size_t j = 0; j < legs.count; j++)
				goes_on = goes_on ||
					(place_equal(legs.items[i].to, legs.items[j].from) &&
					leg_is_upright(legs.items[i]) ==
						leg_is_upright(legs.items[j]));
		ck_assert(!goes_on);
		legs_fini(&legs);
	}
}
END_TEST

START_TEST(cutting_takes_off_just_the_sides_of_the_other_leg)
{
	struct random random = { 4 };

	for (int turn = 0; turn < TURNS; turn++) {
		struct legs legs = LEGS_EMPTY;
		struct sides expected = { 0 }, off = { 0 }, sides = { 0 };
		struct leg cut = leg_at_random(&random);

		legs_at_random(&legs, &expected, &random, 6);
		sides_add(&off, cut, 1);
		legs_cut(&legs, cut);
		for (size_t i = 0; i < legs.count; i++)
			sides_add(&sides, legs.items[i], 1);
		for (int i = 0; i < 2 * (SIDE + 1) * (SIDE + 1); i++)
			if ((&off.along[0][0][0])[i])
				(&expected.along[0][0][0])[i] = 0;
		ck_assert_mem_eq(&sides, &expected, sizeof sides);
		legs_fini(&legs);
	}
}
END_TEST

START_TEST(a_leg_is_covered_where_one_of_the_others_does)
{
	struct random random = { 5 };
	int covered = 0;

	for (int turn = 0; turn < TURNS; turn++) {
		struct legs legs = LEGS_EMPTY;
		struct sides ignored = { 0 };
		struct leg part = leg_at_random(&random);
		bool is_covered = false;

		legs_at_random(&legs, &ignored, &random, 20);
		legs_join(&legs);
		for (size_t i = 0; i < legs.count; i++)
			is_covered = is_covered || leg_covers(legs.items[i], part);
		ck_assert_int_eq(legs_cover(&legs, part), is_covered);
		covered += is_covered;
		legs_fini(&legs);
	}
	ck_assert_int_gt(covered, TURNS / 20);
}
END_TEST

START_TEST(the_first_leg_that_overlaps_one_before_is_found)
{
	struct random random = { 6 };

	for (int turn = 0; turn < TURNS; turn++) {
		struct legs legs = LEGS_EMPTY;
		struct sides sides = { 0 }, first = { 0 };
		size_t expected = 0;

		legs_at_random(&legs, &sides, &random, 15);
		while (expected < legs.count) {
			sides_add(&first, legs.items[expected], 1);
			if (sides_most(&first) > 1)
				break;
			expected++;
		}
		ck_assert_uint_eq(legs_first_overlap(&legs), expected);
		legs_fini(&legs);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("leg");
	TCase *one = suite_case(suite, "one"), *many = suite_case(suite, "many");

	tcase_add_test(one, a_leg_is_level_or_upright_and_has_a_length);
	tcase_add_test(one, two_legs_overlap_by_the_sides_that_both_go_along);
	tcase_add_test(one, what_a_plan_has_of_a_leg_is_the_sides_within_it);
	tcase_add_test(many, joined_legs_are_as_long_as_can_be);
	tcase_add_test(many, cutting_takes_off_just_the_sides_of_the_other_leg);
	tcase_add_test(many, a_leg_is_covered_where_one_of_the_others_does);
	tcase_add_test(many, the_first_leg_that_overlaps_one_before_is_found);
	return suite;
}
