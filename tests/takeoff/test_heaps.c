/* What ground heaps and pallets take: by hand, and heaps against their height added up spot by
 * spot. */
#include "takeoff/costs/heaps.h"
#include "support/book.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <string.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const double slope = 0.70020753820970977; /* the tangent of 35 degrees */

/* A cone of 1 m3: its radius is the third root of 3 / (pi x 0.7002), 1.1090 m. */
START_TEST(a_little_is_a_cone)
{
	nm height;

	ck_assert_double_eq_tol(heap_area(1, &height), 3.14159265 * 1.10896 * 1.10896, 1e-3);
	ck_assert_double_eq_tol((double)height / 1e9, 1.10896 * slope, 1e-4);
}
END_TEST

/* A radius of 1.5 m / 0.7002 is 2.1422 m: 7.2086 m3 on 14.417 m2. */
START_TEST(what_would_be_higher_than_1500_mm_is_a_ridge)
{
	nm height;

	ck_assert_double_eq_tol(heap_area(7.2086, &height), 14.417, 2e-3);
	ck_assert_int_le(height, 1500 * NM_PER_MM);
	/* 10 m long it holds 1.5 m x 2.1422 m for each metre more. */
	ck_assert_double_eq_tol(heap_area(7.2086 + 10 * 1.5 * 2.1422, &height),
		14.417 + 10 * 2 * 2.1422, 5e-3);
	ck_assert_int_eq(height, 1500 * NM_PER_MM);
}
END_TEST

/* How high a heap is at a spot from its middle, in m: by how far its edge is. */
static double height_at(double x, double y, double radius, double ridge)
{
	double beyond = fmax(fabs(x) - ridge / 2, 0);

	return fmax(slope * (radius - sqrt(beyond * beyond + y * y)), 0);
}

START_TEST(a_heap_holds_what_its_height_adds_up_to)
{
	static const double volumes[] = { 0.01, 0.5, 3, 7, 8, 15, 60 }, pi = 3.14159265358979;
	enum { SPOTS = 800 };

	for (size_t i = 0; i < sizeof volumes / sizeof *volumes; i++) {
		nm height;
		double area = heap_area(volumes[i], &height);
		double radius = (double)height / 1e9 / slope;
		double ridge = (area - pi * radius * radius) / (2 * radius);
		double across = 2 * radius + ridge, sum = 0;

		for (int x = 0; x < SPOTS; x++)
			for (int y = 0; y < SPOTS; y++)
				sum += height_at((x + 0.5) / SPOTS * across - across / 2,
					(y + 0.5) / SPOTS * 2 * radius - radius, radius, ridge);
		sum *= across / SPOTS * 2 * radius / SPOTS;
		ck_assert_msg(fabs(sum - volumes[i]) < 1e-3 * volumes[i], "%g m3: %g", volumes[i],
			sum);
	}
}
END_TEST

static const struct heap *heap_of(enum day day, const char *id)
{
	const struct heaps *heaps = &garden.takeoff.heaps;

	for (int i = 0; i < heaps->count; i++)
		if (heaps->list[i].day == day && strcmp(heaps->list[i].id, id) == 0)
			return &heaps->list[i];
	return NULL;
}

static const struct heap *need(enum day day, const char *id)
{
	const struct heap *heap = heap_of(day, id);

	if (!heap)
		ck_abort_msg("nothing of %s", id);
	return heap;
}

static void given_bed(int columns, int rows)
{
	garden_fini(&garden);
	garden_rectangle(&garden, 'b', columns, rows);
	garden.plot.details.around.has_drop = true;
}

/* 51 blocks of 60 lb are 3,060 lb: more than one tonne, 2,205 lb. */
START_TEST(blocks_lie_on_pallets_of_a_tonne)
{
	given_bed(8, 4);
	garden_count(&garden);
	ck_assert_int_eq(need(DAY_WALLS, "pallets")->pallets, 2);
	ck_assert_double_eq_tol(need(DAY_WALLS, "pallets")->area, 2 * 16 * SQUARE_FOOT, 1e-9);
	ck_assert_int_eq(need(DAY_WALLS, "pallets")->item, NO_ITEM);
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "300 mm");
	garden_count(&garden);
	ck_assert_double_eq_tol(need(DAY_WALLS, "pallets")->area,
		(double)need(DAY_WALLS, "pallets")->pallets * 1.2, 1e-9);
}
END_TEST

START_TEST(caps_lie_on_pallets_with_the_blocks)
{
	double blocks;

	given_bed(16, 8);
	garden_count(&garden);
	blocks = garden_item(&garden, "block.wall")->weight;
	plot_set(&garden.plot, 'b', BED_CAP, "12 in x 8 in x 4 in");
	garden_count(&garden);
	ck_assert_int_eq(need(DAY_WALLS, "pallets")->pallets, (int64_t)ceil((blocks +
		garden_item(&garden, "block.cap")->weight) / 1000));
}
END_TEST

/* In bulk on a heap as it is bought, in bags on a pallet. */
START_TEST(loose_goods_lie_on_heaps_as_they_are_bought)
{
	const struct heap *heap;
	nm height;

	given_bed(16, 8);
	garden_count(&garden);
	heap = need(DAY_STONE, "stone.base");
	ck_assert_double_eq(heap->volume,
		garden_item(&garden, "stone.base")->purchase->list[0].volume);
	ck_assert_double_gt(heap->volume, garden_item(&garden, "stone.base")->order);
	ck_assert_double_eq(heap->area, heap_area(heap->volume, &height));
	ck_assert_int_eq(heap->height, height);
	ck_assert_ptr_nonnull(heap_of(DAY_DIG, "spoil"));
	ck_assert_ptr_null(heap_of(DAY_STONE, "pallets"));
	book_of(&garden.book, "'goods': [{ 'item': 'stone.base', 'packs': [{ 'pack': 'bag', "
		"'size': '1 cu ft', 'weight': '100 lb', 'price': 5 }] }]");
	garden.has_book = true;
	garden_count(&garden);
	ck_assert_ptr_null(heap_of(DAY_STONE, "stone.base"));
	ck_assert_int_eq(need(DAY_STONE, "pallets")->pallets,
		(int64_t)ceil(garden_item(&garden, "stone.base")->weight / 1000));
}
END_TEST

/* Bought in two ways: m3 in bulk, kg in bags. */
static const struct lot {
	double bulk[2], bags[2], volume;
	int pallets;
} lots[] = {
	{ { 2, 3 }, { 0, 0 }, 5, 0 }, { { 0.5, 0 }, { 0, 0 }, 0.5, 0 },
	{ { 0, 0 }, { 0.5, 0 }, 0, 1 }, { { 0, 0 }, { 400, 600 }, 0, 1 },
	{ { 0, 0 }, { 400, 600.5 }, 0, 2 }, { { 0, 0 }, { 999.5, 0 }, 0, 1 },
	{ { 0, 1 }, { 1100, 0 }, 1, 2 },
};

START_TEST(what_is_bought_in_several_ways_is_added_up)
{
	static const struct pack loose = { .kind = PACK_BULK }, bag = { .kind = PACK_BAG };
	const struct lot *lot = &lots[_i];
	struct bought list[] = {
		{ .pack = &loose, .volume = lot->bulk[0], .weight = 5000 },
		{ .pack = &loose, .volume = lot->bulk[1], .weight = 5000 },
		{ .pack = &bag, .weight = lot->bags[0] }, { .pack = &bag, .weight = lot->bags[1] },
	};
	struct purchase purchase = { .list = list, .count = 4, .day = DAY_FILL };
	struct item item = { .good = GOOD_MULCH, .name = "", .purchase = &purchase };
	const struct item_list items = { .arena = &garden.arena, .list = &item, .count = 1 };
	struct heaps heaps;
	int at = 0;

	given_bed(8, 4);
	heaps_find(&heaps, &items, &garden.plot);
	ck_assert_int_eq(heaps.count, (lot->volume > 0) + (lot->pallets > 0));
	if (lot->volume > 0) {
		ck_assert_str_eq(heaps.list[at].id, "mulch");
		ck_assert_int_eq(heaps.list[at].item, 0);
		ck_assert_double_eq_tol(heaps.list[at++].volume, lot->volume, 1e-12);
	}
	if (lot->pallets > 0)
		ck_assert_int_eq(heaps.list[at].pallets, lot->pallets);
}
END_TEST

START_TEST(without_a_drop_nothing_is_put_down)
{
	given_bed(8, 4);
	garden.plot.details.around.has_drop = false;
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.heaps.count, 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("heaps");
	TCase *heaps = suite_case(suite, "heaps");

	tcase_add_checked_fixture(heaps, NULL, teardown);
	tcase_add_test(heaps, a_little_is_a_cone);
	tcase_add_test(heaps, what_would_be_higher_than_1500_mm_is_a_ridge);
	tcase_add_test(heaps, a_heap_holds_what_its_height_adds_up_to);
	tcase_add_test(heaps, blocks_lie_on_pallets_of_a_tonne);
	tcase_add_test(heaps, caps_lie_on_pallets_with_the_blocks);
	tcase_add_test(heaps, loose_goods_lie_on_heaps_as_they_are_bought);
	tcase_add_loop_test(heaps, what_is_bought_in_several_ways_is_added_up, 0,
		sizeof lots / sizeof *lots);
	tcase_add_test(heaps, without_a_drop_nothing_is_put_down);
	return suite;
}
