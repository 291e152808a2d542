/* How far a barrow goes to regions and fences, by hand; and what it does not get to: for each snag
 * a plot that has it and one just inside its rule that has not. */
#include "takeoff/walks/barrow_ways.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"
#include "survey/way.h"
#include "survey/way_lengths.h"

#include <stdlib.h>

enum { MOST = 9 };

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

#define ROWS (const char *const[])
#define FEET(n) ((nm)((n) * (double)NM_PER_FOOT))

static void given(const char *const *rows, int x, int y)
{
	garden_fini(&garden);
	garden_rows(&garden, rows);
	garden.plot.details.around.has_drop = true;
	garden.plot.details.around.drop = (struct place){ x, y };
}

static struct fence *put_fence(const char *name, const struct place *points, int count)
{
	struct fence *fence = details_add_fence(&garden.plot.details, memory_string(name));
	struct route *run = fence_add_run(fence);

	for (int i = 0; i < count; i++)
		route_add(run, points[i]);
	return fence;
}

static int count(enum snag_code code)
{
	int found = 0;

	garden_count(&garden);
	while (garden_snag(&garden, code, found))
		found++;
	return found;
}

static const struct barrow_ways *ways(void)
{
	return &garden.takeoff.barrow_ways;
}

/* ---- Ways ------------------------------------------------------------------------------------ */

/* 1, 2, 3, 4 and 5 cells from the drop. */
START_TEST(to_a_path_it_is_the_average_of_its_cells)
{
	given(ROWS { "bbbbb", "ppppp", NULL }, 0, 2);
	garden_count(&garden);
	ck_assert_int_eq(ways()->count, 2);
	ck_assert_int_eq(ways()->list[1].region, 1);
	ck_assert_int_eq(ways()->list[1].length, FEET(3));
	ck_assert_int_eq(ways()->regions[1], FEET(3));
}
END_TEST

START_TEST(to_a_bed_it_is_the_average_of_the_sides_where_it_can_stand)
{
	given(ROWS { ".....", ".bb..", ".pp..", NULL }, 1, 2);
	garden_count(&garden);
	/* Above 3 and 4, below 1 and 2, at the left 1, at the right 4. */
	ck_assert_int_eq(ways()->regions[0], FEET(15) / 6);
	/* A fence between is in the way; the nearer sides are left. */
	put_fence("Fence", (const struct place[]){ { 1, 1 }, { 3, 1 } }, 2);
	garden_count(&garden);
	ck_assert_int_eq(ways()->regions[0], FEET(8) / 4);
}
END_TEST

START_TEST(to_a_fence_it_is_the_average_of_its_nearer_sides)
{
	given(ROWS { "....", "....", "....", NULL }, 1, 2);
	put_fence("One", (const struct place[]){ { 0, 1 }, { 3, 1 } }, 2);
	put_fence("Other", (const struct place[]){ { 4, 0 }, { 4, 3 } }, 2);
	garden_count(&garden);
	/* Below the first 1, 1, 2; above it nothing but by way of the fourth cell, farther. At the
	 * left of the other 4, 3, 3. */
	ck_assert_int_eq(ways()->count, 0);
	ck_assert_int_eq(ways()->fence_count, 2);
	ck_assert_str_eq(ways()->fence_list[0].name, "One");
	ck_assert_int_eq(ways()->fence_list[0].length, FEET(4) / 3);
	ck_assert_str_eq(ways()->fence_list[1].name, "Other");
	ck_assert_int_eq(ways()->fence_list[1].length, FEET(10) / 3);
	ck_assert_int_eq(ways()->fences, FEET(14) / 6);
}
END_TEST

/* Above it 1, 1 and 2; below, by way of the fourth cell, 6, 5 and 4. */
START_TEST(the_nearer_side_of_a_fence_may_be_the_upper_one)
{
	given(ROWS { "....", "....", "....", NULL }, 1, 1);
	put_fence("One", (const struct place[]){ { 0, 2 }, { 3, 2 } }, 2);
	garden_count(&garden);
	ck_assert_int_eq(ways()->fence_list[0].length, FEET(4) / 3);
}
END_TEST

START_TEST(without_a_drop_there_is_no_way)
{
	given(ROWS { "bbbbb", "ppppp", NULL }, 0, 2);
	garden.plot.details.around.has_drop = false;
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 0);
	ck_assert_int_eq(ways()->count + ways()->fence_count, 0);
	ck_assert_ptr_null(ways()->regions);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_DROP_CUT_OFF, 0));
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

/* Lengths that are added up, and how many. */
struct sum {
	int64_t length;
	int count;
};

/* By region, and of the one fence. */
struct sums {
	struct sum regions[MOST * MOST], fence;
};

struct looking {
	struct fence_map fences;
	struct house_map houses;
	struct way_lengths lengths;
};

static void add(struct sum *sum, int length)
{
	sum->length += length;
	sum->count += length > 0;
}

/* The nearer one that a barrow gets to; 0: it gets to neither. */
static int nearer(int one, int other)
{
	return one > 0 && (other == 0 || one < other) ? one : other;
}

static bool is_walked(int region)
{
	return way_is_over(garden.takeoff.survey.regions[region].entry->class);
}

/* Between two cells side by side, or one and what is beyond the plan. */
static void add_side(const struct looking *l, struct sums *sums, struct place one, bool is_below)
{
	const struct survey *survey = &garden.takeoff.survey;
	struct place cells[] = { one, { one.x + !is_below, one.y + is_below } };
	bool is_shut = fence_map_is_shut(&l->fences, one, is_below);
	int lengths[2];

	for (int i = 0; i < 2; i++)
		lengths[i] = way_length_at(&l->lengths, cells[i].x, cells[i].y);
	for (int i = 0; i < 2; i++) {
		int region = ground_holds(&garden.plot.ground, cells[i].x, cells[i].y) ?
			survey_region_at(survey, cells[i].x, cells[i].y) : NO_REGION;

		if (region != NO_REGION && !is_walked(region) && !is_shut)
			add(&sums->regions[region], lengths[1 - i]);
	}
	if (fence_map_at(&l->fences, one.x, one.y) & (is_below ? FENCE_BELOW | GATE_BELOW :
		FENCE_RIGHT | GATE_RIGHT))
		add(&sums->fence, nearer(lengths[0], lengths[1]));
}

static void add_all(const struct looking *l, struct sums *sums)
{
	const struct survey *survey = &garden.takeoff.survey;

	for (int y = -1; y < survey->rows; y++)
		for (int x = -1; x < survey->columns; x++) {
			int region = x < 0 || y < 0 ? NO_REGION : survey_region_at(survey, x, y);

			if (region != NO_REGION && is_walked(region))
				add(&sums->regions[region], way_length_at(&l->lengths, x, y));
			if (y >= 0)
				add_side(l, sums, (struct place){ x, y }, false);
			if (x >= 0)
				add_side(l, sums, (struct place){ x, y }, true);
		}
}

/* Cells are of a foot. */
static nm average(const struct sum *sum)
{
	return sum->count == 0 ? 0 : sum->length * NM_PER_FOOT / sum->count;
}

static void garden_at_random(struct random *random)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_at_random(&garden.plot, random, MOST, "bbSpl..");
	if (random_below(random, 3))
		fences_at_random(&garden.plot, random);
	if (random_below(random, 3) == 0) {
		int left = random_between(random, -2, MOST), top = random_between(random, -2, MOST);

		obstacles_add(&garden.plot.details.around.houses, memory_string("House"))->cells =
			(struct rectangle){ left, top, left + random_below(random, 4),
			top + random_below(random, 4) };
	}
	garden.plot.details.around.has_drop = true;
	garden.plot.details.around.drop = (struct place){
		random_between(random, 0, garden.plot.ground.columns),
		random_between(random, 0, garden.plot.ground.rows) };
	garden_count(&garden);
}

/* In region order, with those left out that none gets to. */
static void check_ways(const struct sums *sums, int seed)
{
	int listed = 0;

	for (int i = 0; i < garden.takeoff.survey.region_count; i++) {
		nm length = average(&sums->regions[i]);

		ck_assert_msg(ways()->regions[i] == length, "seed %d, region %d", seed, i);
		if (length == 0)
			continue;
		ck_assert_int_lt(listed, ways()->count);
		ck_assert_int_eq(ways()->list[listed].region, i);
		ck_assert_int_eq(ways()->list[listed++].length, length);
	}
	ck_assert_int_eq(ways()->count, listed);
	ck_assert_msg(ways()->fences == average(&sums->fence), "seed %d", seed);
	ck_assert_int_eq(ways()->fence_count, sums->fence.count > 0);
}

static bool has_snag(int region)
{
	const struct snag *snag;

	for (int i = 0; (snag = garden_snag(&garden, SNAG_DROP_CUT_OFF, i)); i++)
		if (snag->region == region)
			return true;
	return false;
}

/* Whether one gets to some of a region from outside the plan. */
static bool is_reached(int region, const unsigned char *way)
{
	const struct survey *survey = &garden.takeoff.survey;

	for (int i = 0; i < survey->columns * survey->rows; i++)
		if (way[i] && survey_region_at(survey, i % survey->columns, i / survey->columns) ==
			region)
			return true;
	return false;
}

/* Beds, lawns and paths that no barrow gets to, but paths that nobody does; all at once where it
 * gets nowhere. */
static void check_snags(const struct looking *l, int seed)
{
	const struct survey *survey = &garden.takeoff.survey;
	bool gets_somewhere = ways()->count + ways()->fence_count > 0;
	unsigned char *way = way_from_outside(survey, &l->fences);

	ck_assert_msg(has_snag(NO_REGION) == (!gets_somewhere && survey->region_count > 0),
		"seed %d", seed);
	for (int i = 0; i < survey->region_count; i++) {
		enum plot_class class = survey->regions[i].entry->class;

		ck_assert_msg(has_snag(i) == (gets_somewhere && ways()->regions[i] == 0 &&
			class != CLASS_FIXTURE && (class != CLASS_PATH || is_reached(i, way))),
			"seed %d, region %d", seed, i);
	}
	free(way);
}

START_TEST(all_cells_and_sides_that_it_gets_to_make_the_average)
{
	for (int seed = 0; seed < runner_count(1000, 10000); seed++) {
		struct random random = { (uint64_t)seed };
		struct arena arena = ARENA_EMPTY;
		struct sums sums = { .fence = { 0, 0 } };
		struct looking l;

		garden_at_random(&random);
		l.fences = fence_map_of(&garden.plot, &arena);
		l.houses = house_map_of(&garden.plot, 1, &arena);
		l.lengths = way_lengths_from(&garden.takeoff.survey, &l.fences, &l.houses,
			garden.plot.details.around.drop, &arena);
		add_all(&l, &sums);
		check_ways(&sums, seed);
		check_snags(&l, seed);
		arena_clear(&arena);
		teardown();
	}
}
END_TEST

/* ---- Cut off --------------------------------------------------------------------------------- */

static void check_first(int region, const char *sentence)
{
	const struct snag *snag = garden_snag(&garden, SNAG_DROP_CUT_OFF, 0);

	ck_assert_int_eq(snag->region, region);
	ck_assert_str_eq(garden_sentence(&garden, snag), sentence);
}

START_TEST(a_lawn_that_no_barrow_gets_to_is_cut_off)
{
	static const struct place across[] = { { 0, 2 }, { 4, 2 } };
	struct fence *fence;

	/* From within the plan it does not go round it. */
	given(ROWS { "llll", "llll", "....", "....", NULL }, 2, 3);
	fence = put_fence("Fence", across, 2);
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 1);
	check_first(0, "No barrow gets here from the drop: beds, fixtures, a house or a fence "
		"without a gate are in the way.");
	legs_add(&fence->gates, (struct leg){ { 1, 2 }, { 2, 2 } });
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 0);
	ck_assert_int_gt(ways()->regions[0], 0);
}
END_TEST

START_TEST(a_bed_within_beds_is_cut_off_and_a_fixture_is_not_told)
{
	given(ROWS { ".....", ".bbb.", ".bcb.", ".bbb.", ".....", NULL }, 0, 0);
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 1);
	ck_assert_int_eq(garden_snag(&garden, SNAG_DROP_CUT_OFF, 0)->region, 1);
	given(ROWS { ".....", ".bbb.", ".bSb.", ".bbb.", ".....", NULL }, 0, 0);
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 0);
	given(ROWS { ".....", ".b.b.", ".bcb.", ".bbb.", ".....", NULL }, 0, 0);
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 0);
}
END_TEST

START_TEST(a_path_that_nobody_gets_to_is_told_once)
{
	given(ROWS { ".....", ".bbb.", ".bpb.", ".bbb.", ".....", NULL }, 0, 0);
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 0);
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 1);
	/* From outside one gets there, from the drop in a yard of its own none does. */
	given(ROWS { "bbbbbb", "b..bp.", "b..bpp", "bbbbbb", NULL }, 2, 2);
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 0);
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 1);
	ck_assert_int_eq(garden_snag(&garden, SNAG_DROP_CUT_OFF, 0)->region, 1);
	/* One gets to a part of it. */
	given(ROWS { "bbbbp.", "b..bpb", "bbbbbb", NULL }, 2, 1);
	put_fence("Fence", (const struct place[]){ { 4, 1 }, { 5, 1 } }, 2);
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 1);
	ck_assert_int_eq(garden_snag(&garden, SNAG_DROP_CUT_OFF, 0)->region, 1);
}
END_TEST

/* On the plan's left edge, with a fence all round, below a lawn that one gets to. */
START_TEST(ground_above_a_path_does_not_lead_to_it)
{
	given(ROWS { "ll..", "pp..", "....", NULL }, 3, 3);
	put_fence("Fence", (const struct place[]){ { 0, 1 }, { 2, 1 }, { 2, 2 }, { 0, 2 },
		{ 0, 1 } }, 5);
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 0);
	ck_assert_int_eq(count(SNAG_PATH_CUT_OFF), 1);
	ck_assert_int_gt(ways()->regions[0], 0);
}
END_TEST

START_TEST(a_drop_that_nothing_is_reached_from_is_told_once)
{
	given(ROWS { "cccc", "cccc", "cccc", "....", NULL }, 2, 1);
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 1);
	check_first(NO_REGION, "No barrow gets from the drop to anything: beds, fixtures, a house "
		"or a fence without a gate are in the way.");
	ck_assert_int_eq(garden_snag(&garden, SNAG_DROP_CUT_OFF, 0)->cell.x, 2);
	ck_assert_int_eq(garden_snag(&garden, SNAG_DROP_CUT_OFF, 0)->cell.y, 1);
	given(ROWS { "cccc", "cccc", "cccc", "....", NULL }, 2, 3);
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 0);
	/* With nothing to bring nothing is cut off. */
	given(ROWS { "....", NULL }, 2, 1);
	obstacles_add(&garden.plot.details.around.houses, memory_string("House"))->cells =
		(struct rectangle){ -9, -9, 9, 9 };
	ck_assert_int_eq(count(SNAG_DROP_CUT_OFF), 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("barrow ways");
	TCase *way = suite_case(suite, "ways"), *cut_off = suite_case(suite, "cut off");

	tcase_add_checked_fixture(way, NULL, teardown);
	tcase_add_test(way, to_a_path_it_is_the_average_of_its_cells);
	tcase_add_test(way, to_a_bed_it_is_the_average_of_the_sides_where_it_can_stand);
	tcase_add_test(way, to_a_fence_it_is_the_average_of_its_nearer_sides);
	tcase_add_test(way, the_nearer_side_of_a_fence_may_be_the_upper_one);
	tcase_add_test(way, all_cells_and_sides_that_it_gets_to_make_the_average);
	tcase_add_test(way, without_a_drop_there_is_no_way);
	tcase_add_checked_fixture(cut_off, NULL, teardown);
	tcase_add_test(cut_off, a_lawn_that_no_barrow_gets_to_is_cut_off);
	tcase_add_test(cut_off, a_bed_within_beds_is_cut_off_and_a_fixture_is_not_told);
	tcase_add_test(cut_off, a_path_that_nobody_gets_to_is_told_once);
	tcase_add_test(cut_off, ground_above_a_path_does_not_lead_to_it);
	tcase_add_test(cut_off, a_drop_that_nothing_is_reached_from_is_told_once);
	return suite;
}
