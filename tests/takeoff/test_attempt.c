/* How much is tried of a plot, and what one attempt takes of that. */
#include "support/book.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"
#include "plot/edit/lay.h"
#include "takeoff/advice/joining.h"
#include "takeoff/advice/propose.h"
#include "takeoff/sun/sun_usual.h"

#include <stdio.h>
#include <string.h>

#define ROWS (const char *const[])

static struct garden garden;
static struct arena arena;
static struct attempts attempts;

static void teardown(void)
{
	garden_fini(&garden);
	arena_clear(&arena);
}

static void begin(void)
{
	garden_count(&garden);
	ck_assert(attempts_begin(&attempts, &arena, &garden.plot, &garden.takeoff));
}

/* ---- Work ------------------------------------------------------------------------------------ */

/* As attempt.c guesses it: 400, one for 25 cells, one for a region, 4 for each side of a cell that
 * has a fence; 25,000 at most. */
START_TEST(a_takeoff_is_as_much_work_as_there_are_cells_regions_and_fences)
{
	static const struct {
		int columns, rows, regions;
		const char *one, *other; /* fences */
		int64_t work;
		bool is_tried;
	} plots[] = {
		{ 10, 10, 0, NULL, NULL, 404, true },
		{ 10, 9, 0, NULL, NULL, 403, true },
		{ 10, 10, 7, NULL, NULL, 411, true },
		{ 10, 10, 0, "0,0 4,0 4,3", NULL, 432, true },
		{ 10, 10, 1, "0,0 4,0 4,3", "0,5 6,5", 457, true },
		{ 820, 750, 0, NULL, NULL, 25000, true },
		{ 820, 750, 1, NULL, NULL, 25001, false },
	};

	for (size_t i = 0; i < sizeof plots / sizeof *plots; i++) {
		struct takeoff takeoff;

		memset(&takeoff, 0, sizeof takeoff);
		takeoff.survey.region_count = plots[i].regions;
		fences_ground(&garden.plot, plots[i].columns, plots[i].rows);
		if (plots[i].one)
			fences_run(&garden.plot, plots[i].one);
		if (plots[i].other) {
			details_add_fence(&garden.plot.details, memory_string("Other"));
			fences_run(&garden.plot, plots[i].other);
		}
		ck_assert(attempts_begin(&attempts, &arena, &garden.plot, &takeoff) ==
			plots[i].is_tried);
		ck_assert_int_eq(attempts.work_each, plots[i].work);
		ck_assert_int_eq(attempts.work_left, 500000);
		plot_fini(&garden.plot);
	}
}
END_TEST

static const char *const lone[] = { "..........", ".bbbbbbbb.", ".bbbbbbbb.", ".bbbbbbbb.",
	".bbbbbbbb.", "..........", NULL };

static bool try_courses(int courses)
{
	struct proposal proposal = { .kind = PROPOSE_COURSES, .letter = 'b', .courses = courses };

	return attempt(&attempts, &proposal);
}

/* 60 cells, one region: 403. */
START_TEST(what_can_be_made_takes_all_of_it_and_what_cannot_a_quarter)
{
	struct proposal off_the_plan = { .kind = PROPOSE_SIZE, .letter = 'b',
		.from = { 1, 1, 8, 4 }, .to = { 1, 1, 10, 4 } };

	garden_rows(&garden, lone);
	plot_set(&garden.plot, 'b', BED_COURSES, "4");
	begin();
	ck_assert_int_eq(attempts.work_each, 403);
	ck_assert(try_courses(3));
	ck_assert_int_eq(attempts.work_left, 500000 - 403);
	ck_assert(!try_courses(5)); /* no block is spared */
	ck_assert_int_eq(attempts.work_left, 500000 - 806);
	ck_assert(!attempt(&attempts, &off_the_plan));
	ck_assert_int_eq(attempts.work_left, 500000 - 906);
	ck_assert(!attempts.is_short);
}
END_TEST

START_TEST(nothing_is_tried_that_there_is_no_work_left_for)
{
	garden_rows(&garden, lone);
	plot_set(&garden.plot, 'b', BED_COURSES, "4");
	begin();
	attempts.work_left = 403;
	ck_assert(try_courses(3));
	ck_assert(!attempts.is_short);
	ck_assert_int_eq(attempts.work_left, 0);
	attempts.work_left = 402;
	ck_assert(!try_courses(3));
	ck_assert(attempts.is_short);
	ck_assert_int_eq(attempts.work_left, 402);
	attempts.work_left = 403;
	ck_assert(try_courses(3));
	ck_assert(attempts.is_short); /* something was not tried */
}
END_TEST

/* As attempt.c guesses it: one for 10 cells, 8 for each thing that casts shade. */
START_TEST(sun_is_counted_as_long_as_there_is_work_left_for_it)
{
	struct proposal leg = { .kind = PROPOSE_FENCE, .leg = { { 5, 5 }, { 5, 13 } },
		.right = 1 };
	int64_t each, sun;

	fences_ground(&garden.plot, 28, 18);
	fences_run(&garden.plot, "5,5 23,5 23,13 5,13 5,5");
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	plot_set(&garden.plot, 0, HEAD_SITE, "45");
	plot_set(&garden.plot, 0, ALLOW_SUN_FULL, "2");
	plot_add_lines(&garden.plot, "plant z \"Rose\"\n  sun full\n  at 8,9\n  at 19,9\n");
	begin();
	each = attempts.work_each;
	ck_assert_uint_ge(garden.takeoff.sun->boxes, 4);
	sun = 50 + 8 * (int64_t)garden.takeoff.sun->boxes; /* of 504 cells */
	ck_assert(attempt(&attempts, &leg));
	ck_assert_int_eq(attempts.work_left, 500000 - each - sun);
	attempts.work_left = each + sun;
	ck_assert(attempt(&attempts, &leg));
	ck_assert_int_eq(attempts.work_left, 0);
	ck_assert(!attempts.is_short);
	attempts.work_left = each + sun - 1;
	ck_assert(!attempt(&attempts, &leg));
	ck_assert_int_eq(attempts.work_left, sun - 1);
	ck_assert(attempts.is_short);
}
END_TEST

/* ---- How many are looked at ------------------------------------------------------------------ */

/* Legs down, one beside another, that are left as they are: each is as long as a panel. */
START_TEST(legs_are_tried_up_to_32)
{
	for (int legs = 31; legs <= 33; legs++) {
		fences_ground(&garden.plot, 70, 8);
		for (int i = 0; i < legs; i++) {
			char run[32];

			snprintf(run, sizeof run, "%d,0 %d,8", 2 * i + 1, 2 * i + 1);
			fences_run(&garden.plot, run);
		}
		begin();
		propose_fences(&attempts);
		ck_assert(attempts.is_short == (legs > 32));
		garden_fini(&garden);
	}
}
END_TEST

/* In columns of five, each with cuts, and no size near that is without (test_near.c). */
START_TEST(beds_are_looked_at_up_to_64)
{
	for (int beds = 63; beds <= 65; beds++) {
		fences_ground(&garden.plot, 6 * 13, 4 * 5);
		details_add_entry(&garden.plot.details, CLASS_BED, 'b', memory_string("Bed"));
		plot_set(&garden.plot, 'b', BED_BLOCK, "1 ft x 4 in x 4 in");
		for (int i = 0; i < beds; i++)
			for (int y = 0; y < 3; y++)
				memset(ground_at(&garden.plot.ground, i / 5 * 6, i % 5 * 4 + y),
					'b', 5);
		begin();
		ck_assert_int_eq(garden.takeoff.walls.count, beds);
		propose_sizes(&attempts);
		ck_assert(attempts.is_short == (beds > 64));
		garden_fini(&garden);
	}
}
END_TEST

/* ---- Beds wall to wall ----------------------------------------------------------------------- */

struct pairs {
	struct joining list[1000];
	int count;
};

static bool could_be_one(int a, int b)
{
	const struct takeoff *takeoff = &garden.takeoff;
	const char *letters = "ab"; /* built alike */

	return a != b && a != NO_REGION && b != NO_REGION &&
		strchr(letters, takeoff->survey.regions[a].entry->letter) &&
		strchr(letters, takeoff->survey.regions[b].entry->letter) &&
		walls_find(&takeoff->walls, a) && walls_find(&takeoff->walls, b);
}

static void meet(struct pairs *pairs, int x, int y, int to_x, int to_y)
{
	const struct survey *survey = &garden.takeoff.survey;
	int a = survey_region_at(survey, x, y), b = survey_region_at(survey, to_x, to_y);
	int one = a < b ? a : b, other = a < b ? b : a;

	for (int i = 0; i < pairs->count; i++)
		if (pairs->list[i].region == one && pairs->list[i].other == other)
			return;
	if (could_be_one(a, b))
		pairs->list[pairs->count++] = (struct joining){ one, other, { 0, 0, 0, 0 } };
}

/* Cell by cell: beside one another in a row, then below it. */
static void pairs_find(struct pairs *pairs)
{
	const struct survey *survey = &garden.takeoff.survey;

	pairs->count = 0;
	for (int y = 0; y < survey->rows; y++) {
		for (int x = 1; x < survey->columns; x++)
			meet(pairs, x - 1, y, x, y);
		for (int x = 0; x < survey->columns && y + 1 < survey->rows; x++)
			meet(pairs, x, y, x, y + 1);
	}
}

static struct rectangle box_of(int a, int b)
{
	const struct survey *survey = &garden.takeoff.survey;
	struct rectangle box = { survey->columns, survey->rows, 0, 0 };

	for (int y = 0; y < survey->rows; y++)
		for (int x = 0; x < survey->columns; x++) {
			int region = survey_region_at(survey, x, y);

			if (region != a && region != b)
				continue;
			box.left = x < box.left ? x : box.left;
			box.right = x > box.right ? x : box.right;
			box.top = y < box.top ? y : box.top;
			box.bottom = y > box.bottom ? y : box.bottom;
		}
	return box;
}

static int check_joinings(void)
{
	static struct pairs wanted;
	struct joining found[JOININGS_MOST];
	int count;

	garden_count(&garden);
	pairs_find(&wanted);
	count = joinings_find(found, &garden.takeoff);
	ck_assert_int_eq(count, wanted.count < JOININGS_MOST ? wanted.count : JOININGS_MOST);
	for (int i = 0; i < count; i++) {
		struct rectangle box = box_of(found[i].region, found[i].other);

		ck_assert_int_eq(found[i].region, wanted.list[i].region);
		ck_assert_int_eq(found[i].other, wanted.list[i].other);
		ck_assert_mem_eq(&found[i].box, &box, sizeof box);
	}
	return wanted.count;
}

/* Of a and b alike, c of other blocks, and d that is level. */
static void set_beds(void)
{
	for (const char *letter = "abcd"; *letter; letter++)
		plot_set(&garden.plot, *letter, BED_BLOCK, *letter == 'c' ? "8 in x 4 in x 3 in" :
			"6 in x 3 in x 3 in");
	plot_set(&garden.plot, 'd', BED_BUILD, "level");
}

/* Patches of 4 by 4 cells of a letter each: some cannot be told from their neighbours. */
START_TEST(neighbours_built_alike_are_found_in_reading_order)
{
	int found = 0;

	for (int i = 0; i < runner_count(40, 400); i++) {
		struct random random = { (uint64_t)i };
		struct ground *ground = &garden.plot.ground;

		garden_rows(&garden, ROWS { "abcdp.", NULL });
		set_beds();
		ground_fini(ground);
		ground_init(ground, random_between(&random, 5, 20),
			random_between(&random, 5, 20));
		for (int y = 0; y < ground->rows; y += 4)
			for (int x = 0; x < ground->columns; x += 4)
				lay_rectangle(&garden.plot, rectangle_within((struct rectangle){ x,
					y, x + random_between(&random, 1, 6),
					y + random_between(&random, 1, 6) }, ground),
					"aaabbbcdp."[random_below(&random, 10)]);
		found += check_joinings();
		garden_fini(&garden);
	}
	ck_assert_int_gt(found, 40);
}
END_TEST

/* Seven by six beds: 36 + 35 pairs, and 64 of them are listed. */
START_TEST(pairs_are_listed_up_to_64)
{
	garden_rows(&garden, ROWS { "abcd", NULL });
	set_beds();
	ground_fini(&garden.plot.ground);
	ground_init(&garden.plot.ground, 28, 24);
	for (int y = 0; y < 24; y++)
		for (int x = 0; x < 28; x++)
			*ground_at(&garden.plot.ground, x, y) = "ab"[(x / 4 + y / 4) % 2];
	ck_assert_int_eq(check_joinings(), 71);
}
END_TEST

/* ---- What spares ----------------------------------------------------------------------------- */

/* 8 ft by 4 ft: of 16 in by 8 in without a cut. */
START_TEST(a_dearer_block_is_told_where_fewer_are_sawn)
{
	struct proposal block = { .kind = PROPOSE_BLOCK, .letter = 'b', .courses = 3,
		.block = { 16 * NM_PER_INCH, 8 * NM_PER_INCH, 6 * NM_PER_INCH } };

	garden_rows(&garden, lone);
	plot_set(&garden.plot, 'b', BED_BLOCK, "11 in x 8 in x 6 in");
	book_of(&garden.book, "'goods': ["
		"{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 900}]}, "
		"{'item': 'block.wall', 'block': '11 in x 8 in x 6 in', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 1}]}, "
		"{'item': 'adhesive.cartridge', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 0}]}]");
	garden.has_book = true;
	begin();
	ck_assert(attempt(&attempts, &block));
	ck_assert_int_lt(block.difference.cuts, 0);
	ck_assert_int_gt(block.difference.cost, 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("attempt");
	TCase *work = suite_case(suite, "work"), *joined = suite_case(suite, "joined");

	tcase_add_checked_fixture(work, NULL, teardown);
	tcase_add_test(work, a_takeoff_is_as_much_work_as_there_are_cells_regions_and_fences);
	tcase_add_test(work, what_can_be_made_takes_all_of_it_and_what_cannot_a_quarter);
	tcase_add_test(work, nothing_is_tried_that_there_is_no_work_left_for);
	tcase_add_test(work, sun_is_counted_as_long_as_there_is_work_left_for_it);
	tcase_add_test(work, legs_are_tried_up_to_32);
	tcase_add_test(work, beds_are_looked_at_up_to_64);
	tcase_add_test(work, a_dearer_block_is_told_where_fewer_are_sawn);
	tcase_add_checked_fixture(joined, NULL, teardown);
	tcase_add_test(joined, neighbours_built_alike_are_found_in_reading_order);
	tcase_add_test(joined, pairs_are_listed_up_to_64);
	return suite;
}
