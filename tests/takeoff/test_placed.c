/* What is near a spot, against every plant there is. */
#include "support/random.h"
#include "support/runner.h"
#include "takeoff/planting/placed.h"

enum { KINDS = 3 };

static struct placed placed;

static void teardown(void)
{
	placed_end(&placed);
}

static struct spot spot_at_random(struct random *random)
{
	return (struct spot){ random_below(random, 5000), random_below(random, 3000) };
}

static bool is_near_any(struct spot at, const struct placed_size *size,
	const struct placed_size *sizes)
{
	for (size_t i = 0; i < placed.count; i++) {
		const struct placed_size *other = &sizes[placed.list[i].kind];
		nm x = placed.list[i].at.x - at.x, y = placed.list[i].at.y - at.y;
		nm both = size->spacing + other->spacing, grown = size->spread + other->spread;

		if (placed.list[i].is_specimen && grown > both)
			both = grown;
		if (4 * (x * x + y * y) < both * both)
			return true;
	}
	return false;
}

START_TEST(a_plant_is_near_where_half_of_both_spacings_or_to_a_specimen_spreads_is_more)
{
	struct random random = { (uint64_t)_i };
	const struct placed_size sizes[KINDS] = {
		{ random_between(&random, 1, 40), random_between(&random, 1, 300) },
		{ random_between(&random, 20, 200), random_between(&random, 1, 300) },
		{ random_between(&random, 100, 900), random_between(&random, 50, 1200) } };
	int near = 0;

	placed_begin(&placed, sizes, KINDS);
	for (int i = 0; i < 600; i++) {
		struct placed_plant next = { .at = spot_at_random(&random),
			.kind = random_below(&random, KINDS),
			.is_specimen = random_below(&random, 3) == 0 };
		bool is_near = placed_is_near(&placed, next.at, next.kind);

		ck_assert_int_eq(is_near, is_near_any(next.at, &sizes[next.kind], sizes));
		near += is_near;
		if (!is_near || random_below(&random, 10) == 0)
			ck_assert(placed_add(&placed, &next));
	}
	ck_assert_int_gt(near, 0);
	ck_assert_int_gt((int)placed.count, 5);
}
END_TEST

START_TEST(a_walk_meets_each_plant_in_its_ground_once)
{
	struct random random = { (uint64_t)_i };
	/* squares of the smallest are more than there are plants */
	const struct placed_size sizes[] = { { random_between(&random, 10, 900),
		random_between(&random, 10, 900) } };
	const struct placed_ground ground = { 1000, -50, 2000, 900 };
	struct placed_walk walk;
	const struct placed_plant *plant;
	int within = 0;

	placed_begin(&placed, sizes, 1);
	for (int i = 0; i < 300; i++)
		placed_add(&placed, &(struct placed_plant){ .at = spot_at_random(&random),
			.is_specimen = random_below(&random, 2) });
	placed_walk_begin(&walk, &placed, 0, &ground);
	while ((plant = placed_walk_next(&walk)))
		if (plant->at.x >= ground.left && plant->at.x <= ground.right &&
			plant->at.y <= ground.bottom) {
			ck_assert_int_eq(placed.list[plant - placed.list].row, 0);
			placed.list[plant - placed.list].row = 1;
			within++;
		}
	for (size_t i = 0; i < placed.count; i++)
		within -= placed.list[i].at.x >= ground.left &&
			placed.list[i].at.x <= ground.right &&
			placed.list[i].at.y <= ground.bottom;
	ck_assert_int_eq(within, 0);
}
END_TEST

/* Exactly half of both is far enough. */
START_TEST(just_so_far_is_not_nearer)
{
	ck_assert(!spots_are_nearer((struct spot){ 0, 0 }, (struct spot){ 3, 4 }, 10));
	ck_assert(spots_are_nearer((struct spot){ 0, 0 }, (struct spot){ 3, 4 }, 11));
	ck_assert(!spots_are_nearer((struct spot){ 0, 0 }, (struct spot){ 600 * NM_PER_M, 0 },
		1200 * NM_PER_M));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("placed");
	TCase *plants = suite_case(suite, "placed");

	tcase_add_checked_fixture(plants, NULL, teardown);
	tcase_add_loop_test(plants,
		a_plant_is_near_where_half_of_both_spacings_or_to_a_specimen_spreads_is_more, 0,
		40);
	tcase_add_loop_test(plants, a_walk_meets_each_plant_in_its_ground_once, 0, 40);
	tcase_add_test(plants, just_so_far_is_not_nearer);
	return suite;
}
