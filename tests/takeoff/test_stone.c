/* Crushed stone: layers, loose volume, weight, lifts. */
#include "support/garden.h"
#include "support/runner.h"

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct stone *row(int i)
{
	ck_assert_int_lt(i, garden.takeoff.stones.count);
	return &garden.takeoff.stones.list[i];
}

static void set(char letter, enum attribute attribute, const char *value)
{
	plot_set(&garden.plot, letter, attribute, value);
}

/* By arithmetic 1 cu yd covers 324/d sq ft at d inches. */
static const double covered[] = { 324, 162, 108, 81, 64.8, 54 };

START_TEST(a_cubic_yard_of_base_covers_324_sq_ft_over_its_inches)
{
	char depth[] = "1 in";

	garden_rectangle(&garden, 'p', 18, 18);
	depth[0] = (char)('1' + _i);
	set('p', PATH_BASE, depth);
	garden_count(&garden);
	ck_assert_double_eq_tol(324 / (row(0)->compacted / CUBIC_YARD), covered[_i], EXACT);
}
END_TEST

/* By arithmetic 20 x 30 ft at 3 in are 150 cu ft, 5.56 cu yd, 75 bags of 2 cu ft. */
START_TEST(a_surface_of_20_by_30_ft_3_in_deep_is_150_cu_ft_or_75_bags_of_2)
{
	garden_rectangle(&garden, 'p', 30, 20);
	set('p', PATH_SURFACE, "3 in");
	garden_count(&garden);
	ck_assert_int_eq(row(1)->layer, STONE_SURFACE);
	ck_assert_double_eq_tol(row(1)->compacted / CUBIC_FOOT, 150, EXACT);
	ck_assert_double_eq_tol(row(1)->compacted / CUBIC_YARD, 5.56, 0.005);
	ck_assert_double_eq_tol(row(1)->compacted / (2 * CUBIC_FOOT), 75, EXACT);
}
END_TEST

/* Dense-graded base is ordered at 1.15 to 1.25 of its compacted volume: common practice; the
 * default lies between. Clean stone settles less: common practice, no published source. */
START_TEST(loose_is_compacted_times_the_factor_of_the_stone)
{
	garden_rectangle(&garden, 'p', 9, 9);
	set('p', PATH_STONE, "clean");
	garden_count(&garden);
	double base = row(0)->loose / row(0)->compacted;

	ck_assert(base >= 1.15 && base <= 1.25);
	ck_assert_double_eq_tol(base, 1.2, EXACT);
	ck_assert_double_eq_tol(row(1)->loose / row(1)->compacted, 1.05, EXACT);
	set('p', PATH_STONE, "fines");
	set(0, ALLOW_COMPACTION_FINES, "1.15");
	garden_count(&garden);
	ck_assert_double_eq_tol(row(0)->loose / row(0)->compacted, 1.15, EXACT);
	ck_assert_double_eq_tol(row(1)->loose / row(1)->compacted, 1.15, EXACT);
}
END_TEST

/* 27 sq ft, 4 in: 9 cu ft compacted, 10.8 loose, 5 % spare: 11.34 cu ft, at 2,700 lb/cu yd 1,134
 * lb. */
START_TEST(the_order_is_loose_with_spare_and_weighs_by_its_density)
{
	garden_rectangle(&garden, 'p', 27, 1);
	set('p', PATH_SURFACE, "0 in");
	garden_count(&garden);
	const struct stone_total *total = &garden.takeoff.stones.totals[STONE_KIND_BASE];
	const struct item *item = garden_item(&garden, "stone.base");

	ck_assert_double_eq_tol(total->compacted / CUBIC_FOOT, 9, EXACT);
	ck_assert_double_eq_tol(item->laid / CUBIC_FOOT, 10.8, EXACT);
	ck_assert_double_eq_tol(item->spare / CUBIC_FOOT, 0.54, EXACT);
	ck_assert_double_eq_tol(item->order / CUBIC_FOOT, 11.34, EXACT);
	ck_assert_str_eq(garden_note(&garden, item), "loose, 1.2 x compacted; 5 % spare");
	ck_assert_double_eq_tol(total->weight / 0.45359237, 1134, 1e-6);
	/* At 300 lb, 1,500 lb and 20,000 lb a load. */
	ck_assert_int_eq(total->loads.barrow, 4);
	ck_assert_int_eq(total->loads.pickup, 1);
	ck_assert_int_eq(total->loads.truck, 1);
	ck_assert_ptr_null(garden_item(&garden, "stone.surface.fines"));
	ck_assert_ptr_null(garden_item(&garden, "stone.surface.clean"));
}
END_TEST

START_TEST(surfaces_of_either_stone_are_ordered_apart)
{
	garden_rows(&garden, (const char *const[]){ "pppq", NULL });
	set('q', PATH_STONE, "clean");
	garden_count(&garden);
	/* 2 in over 3 sq ft and 1 sq ft. */
	ck_assert_double_eq_tol(garden_item(&garden, "stone.surface.fines")->laid / CUBIC_FOOT,
		3.0 / 6 * 1.2, EXACT);
	ck_assert_double_eq_tol(garden_item(&garden, "stone.surface.clean")->laid / CUBIC_FOOT,
		1.0 / 6 * 1.05, EXACT);
	ck_assert_double_eq_tol(garden_item(&garden, "stone.base")->laid / CUBIC_FOOT,
		4.0 / 3 * 1.2, EXACT);
}
END_TEST

/* A base is laid in lifts of 4 in or less, by hand of 2 in: common practice, no published
 * source. */
START_TEST(a_base_is_tamped_in_lifts_of_4_in_or_2_in_by_hand)
{
	static const struct { int inches, plate, hand; } depths[] = {
		{ 1, 1, 1 }, { 2, 1, 1 }, { 3, 1, 2 }, { 4, 1, 2 }, { 5, 2, 3 }, { 8, 2, 4 },
		{ 9, 3, 5 },
	};

	for (size_t i = 0; i < sizeof depths / sizeof *depths; i++) {
		nm depth = depths[i].inches * NM_PER_INCH;

		ck_assert_int_eq(stone_lifts(depth, TAMPER_PLATE, UNITS_IMPERIAL), depths[i].plate);
		ck_assert_int_eq(stone_lifts(depth, TAMPER_HAND, UNITS_IMPERIAL), depths[i].hand);
	}
	garden_rectangle(&garden, 'p', 3, 3);
	set(0, ALLOW_TAMPER, "hand");
	garden_count(&garden);
	ck_assert_int_eq(row(0)->lifts, 2);
	ck_assert_int_eq(row(1)->lifts, 0);
}
END_TEST

/* The same in a metric plot, of 100 mm or 50: common practice, no published source. */
START_TEST(a_metric_base_is_tamped_in_layers_of_100_mm_or_50_by_hand)
{
	static const struct { nm mm; int plate, hand; } depths[] = {
		{ 50, 1, 1 }, { 51, 1, 2 }, { 100, 1, 2 }, { 101, 2, 3 }, { 102, 2, 3 },
		{ 200, 2, 4 }, { 203, 3, 5 },
	};

	for (size_t i = 0; i < sizeof depths / sizeof *depths; i++) {
		nm depth = depths[i].mm * NM_PER_MM;

		ck_assert_int_eq(stone_lifts(depth, TAMPER_PLATE, UNITS_METRIC), depths[i].plate);
		ck_assert_int_eq(stone_lifts(depth, TAMPER_HAND, UNITS_METRIC), depths[i].hand);
	}
	garden_rectangle(&garden, 'p', 3, 3);
	set(0, HEAD_UNITS, "metric");
	set('p', PATH_BASE, "101 mm");
	garden_count(&garden);
	ck_assert_int_eq(row(0)->lifts, 2);
}
END_TEST

START_TEST(a_fixture_stands_on_a_pad_unless_its_base_is_0)
{
	garden_rows(&garden, (const char *const[]){ "SS.TT", "SS.TT", NULL });
	set('T', FIXTURE_BASE, "0 in");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.stones.count, 1);
	ck_assert_int_eq(row(0)->place, STONE_PAD);
	ck_assert_int_eq(row(0)->region, 0);
	ck_assert_double_eq_tol(row(0)->area / SQUARE_FOOT, 4, EXACT);
	ck_assert_double_eq_tol(row(0)->compacted / CUBIC_FOOT, 4.0 / 3, EXACT);
}
END_TEST

/* Outside 8 x 4 ft, blocks 8 in deep, reach 6 in and 2 in: 9 x 5 ft less the 6 1/3 x 2 1/3 ft
 * between. */
START_TEST(the_base_of_a_wall_reaches_past_it_and_that_inside_fills_what_is_left)
{
	garden_rows(&garden, (const char *const[]){ "..........", ".bbbbbbbb.", ".bbbbbbbb.",
		".bbbbbbbb.", ".bbbbbbbb.", "..........", NULL });
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.stones.count, 1);
	ck_assert_int_eq(row(0)->place, STONE_WALL);
	ck_assert_double_eq_tol(row(0)->area / SQUARE_FOOT, 45 - 19.0 / 3 * 7 / 3, EXACT);
	ck_assert_int_eq(row(0)->depth, 4 * NM_PER_INCH);
	set('b', BED_INSIDE, "filled");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.stones.count, 1);
	set('b', BED_INSIDE, "base");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.stones.count, 2);
	ck_assert_int_eq(row(1)->place, STONE_INSIDE);
	ck_assert_double_eq_tol(row(1)->area / SQUARE_FOOT, 19.0 / 3 * 7 / 3, EXACT);
	ck_assert_double_eq_tol(garden_item(&garden, "stone.base")->laid / CUBIC_FOOT,
		45.0 / 3 * 1.2, EXACT);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("stone");
	TCase *layers = suite_case(suite, "layers");

	tcase_add_checked_fixture(layers, NULL, teardown);
	tcase_add_loop_test(layers, a_cubic_yard_of_base_covers_324_sq_ft_over_its_inches, 0, 6);
	tcase_add_test(layers, a_surface_of_20_by_30_ft_3_in_deep_is_150_cu_ft_or_75_bags_of_2);
	tcase_add_test(layers, loose_is_compacted_times_the_factor_of_the_stone);
	tcase_add_test(layers, the_order_is_loose_with_spare_and_weighs_by_its_density);
	tcase_add_test(layers, surfaces_of_either_stone_are_ordered_apart);
	tcase_add_test(layers, a_base_is_tamped_in_lifts_of_4_in_or_2_in_by_hand);
	tcase_add_test(layers, a_metric_base_is_tamped_in_layers_of_100_mm_or_50_by_hand);
	tcase_add_test(layers, a_fixture_stands_on_a_pad_unless_its_base_is_0);
	tcase_add_test(layers,
		the_base_of_a_wall_reaches_past_it_and_that_inside_fills_what_is_left);
	return suite;
}
