/* How deep walls and fixtures stand in the ground. */
#include "takeoff/common/embed.h"

#include "base/number.h"
#include "support/garden.h"
#include "support/runner.h"

#include <stdio.h>

enum { RANDOM_PLOTS = 200 };

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct block *bed(void)
{
	return &plot_entry(&garden.plot, 'b')->block;
}

static void set(char letter, enum attribute attribute, const char *value)
{
	plot_set(&garden.plot, letter, attribute, value);
}

/* Of the first raised bed. */
static double embed_inches(void)
{
	garden_count(&garden);
	for (int i = 0; i < garden.takeoff.survey.region_count; i++)
		if (region_is_raised(&garden.takeoff.survey.regions[i]))
			return (double)embed_of(&garden.takeoff.embeds, i) / (double)NM_PER_INCH;
	ck_abort_msg("no raised bed");
	return 0;
}

/* ---- Each of its grounds by itself ----------------------------------------------------------- */

START_TEST(the_wall_is_as_high_as_its_courses)
{
	garden_rectangle(&garden, 'b', 8, 4);
	set('b', BED_COURSES, "5");
	set('b', BED_BLOCK, "16 in x 8 in x 4 in");
	set('b', BED_CAP, "16 in x 8 in x 2 in");
	ck_assert_int_eq(wall_height(bed()), 20 * NM_PER_INCH);
}
END_TEST

START_TEST(the_beds_own_embed_holds_whatever_lies_beside_it)
{
	garden_rows(&garden, (const char *[]){ "bbbbp", "bbbbp", "bbbbl", "bbbbl", NULL });
	set('b', BED_EMBED, "0 in");
	ck_assert_double_eq(embed_inches(), 0);
	set('b', BED_EMBED, "1 1/4 in");
	ck_assert_double_eq(embed_inches(), 1.25);
}
END_TEST

START_TEST(embed_follows_the_deepest_path_that_has_a_cell)
{
	garden_rows(&garden, (const char *[]){ "bbbbp", "bbbbq", "bbbbr", "bbbbr", NULL });
	set('p', PATH_SURFACE, "2 in");
	set('q', PATH_SURFACE, "4 in");
	set('r', PATH_SURFACE, "3 in");
	ck_assert_double_eq(embed_inches(), 4);
	garden.plot.ground.cells[5 + 4] = 'p';
	ck_assert_double_eq(embed_inches(), 3);
}
END_TEST

/* Common practice, no published source. */
START_TEST(the_surface_is_2_in_or_50_mm_without_paths)
{
	garden_rectangle(&garden, 'b', 8, 4);
	set('b', BED_COURSES, "1");
	ck_assert_double_eq(embed_inches(), 2);
	ck_assert_int_eq(garden.takeoff.embeds.surface, 2 * NM_PER_INCH);
	set(0, HEAD_UNITS, "metric");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.embeds.surface, 50 * NM_PER_MM);
	ck_assert_int_eq(embed_of(&garden.takeoff.embeds, 0), 50 * NM_PER_MM);
}
END_TEST

/* A tenth of the height: common practice, no published source. Walls of 18, 20, 21, 24, 25 and 30
 * in beside a path without a surface: 1.8, 2, 2.1, 2.4, 2.5, 3 in, up to the next half inch. */
static const struct { const char *block, *courses; double inches; } tenths[] = {
	{ "16 in x 8 in x 6 in", "3", 2 }, { "16 in x 8 in x 5 in", "4", 2 },
	{ "16 in x 8 in x 7 in", "3", 2.5 }, { "16 in x 8 in x 6 in", "4", 2.5 },
	{ "16 in x 8 in x 5 in", "5", 2.5 }, { "16 in x 8 in x 6 in", "5", 3 },
	/* 20 in and 5 nm: half a nanometre over 2 in. */
	{ "16 in x 8 in x 508.000005 mm", "1", 2.5 },
	{ "16 in x 8 in x 5 1/64 in", "5", 3 }, { "16 in x 8 in x 3 in", "1", 0.5 },
};

START_TEST(at_least_a_tenth_of_the_wall_is_below_ground_up_to_the_next_half_inch)
{
	garden_rows(&garden, (const char *[]){ "bbbbp", "bbbbp", "bbbbp", "bbbbp", NULL });
	set('p', PATH_SURFACE, "0 in");
	set('b', BED_BLOCK, tenths[_i].block);
	set('b', BED_COURSES, tenths[_i].courses);
	ck_assert_double_eq(embed_inches(), tenths[_i].inches);
}
END_TEST

/* In a metric plot in steps of 10 mm: a tenth of 600 mm, of 601, of 609 and of 610. */
static const struct { const char *block; int mm; } metric_tenths[] = {
	{ "400 mm x 200 mm x 600 mm", 60 }, { "400 mm x 200 mm x 601 mm", 70 },
	{ "400 mm x 200 mm x 609 mm", 70 }, { "400 mm x 200 mm x 700 mm", 70 },
};

START_TEST(metric_embeds_go_up_to_the_next_10_mm)
{
	garden_rectangle(&garden, 'b', 8, 4);
	set(0, HEAD_UNITS, "metric");
	set('b', BED_COURSES, "1");
	set('b', BED_BLOCK, metric_tenths[_i].block);
	garden_count(&garden);
	ck_assert_int_eq(embed_of(&garden.takeoff.embeds, 0), metric_tenths[_i].mm * NM_PER_MM);
}
END_TEST

/* 2 in of soil and 3/4 in of turf are 2 3/4 in, up to 3; seed has no thickness. */
static const struct { const char *cover, *thickness; double inches; } covers[] = {
	{ "turf", "3/4 in", 3 }, { "turf", "1 in", 3 }, { "turf", "1 1/4 in", 3.5 },
	{ "seed", "1 1/4 in", 2 }, { "none", "1 1/4 in", 2 },
};

START_TEST(under_a_lawn_there_is_room_for_its_turf_and_2_in_of_soil)
{
	garden_rows(&garden, (const char *[]){ "bbbbl", "bbbbl", "bbbbl", "bbbbl", NULL });
	set('l', LAWN_COVER, covers[_i].cover);
	set('l', LAWN_THICKNESS, covers[_i].thickness);
	ck_assert_double_eq(embed_inches(), covers[_i].inches);
}
END_TEST

/* ---- Which lawns touch ----------------------------------------------------------------------- */

static const struct { const char *rows[8]; bool touches; } places[] = {
	{ { "bbbb.", "bbbb.", "bbbb.", "bbbb.", "..l..", NULL }, true },
	{ { "..l..", "bbbb.", "bbbb.", "bbbb.", "bbbb.", NULL }, true },
	{ { "lbbbb", ".bbbb", ".bbbb", ".bbbb", NULL }, true },
	{ { "bbbb.", "bbbb.", "bbbb.", "bbbb.", "....l", NULL }, true },
	{ { ".bbbb", ".bbbb", ".bbbb", ".bbbb", "l....", NULL }, true },
	{ { "l....", ".bbbb", ".bbbb", ".bbbb", ".bbbb", NULL }, true },
	{ { "....l", "bbbb.", "bbbb.", "bbbb.", "bbbb.", NULL }, true },
	{ { "bbbb.l", "bbbb.l", "bbbb.l", "bbbb.l", NULL }, false },
	{ { "bbbb..", "bbbb..", "bbbb..", "bbbb..", ".....l", NULL }, false },
	{ { "bbbb..", "bbbb..", "bbbb..", "bbbb..", "......", "l.....", NULL }, false },
};

START_TEST(a_lawn_touches_by_a_side_or_a_corner)
{
	garden_rows(&garden, places[_i].rows);
	set('b', BED_COURSES, "1");
	ck_assert_double_eq(embed_inches(), places[_i].touches ? 3 : 2);
}
END_TEST

START_TEST(of_several_lawns_that_with_the_thickest_turf_counts)
{
	garden_rows(&garden, (const char *[]){ "mmmmn", "bbbbl", "bbbbl", "bbbbl", "bbbbl", NULL });
	set('n', LAWN_THICKNESS, "2 in");
	set('m', LAWN_COVER, "seed");
	set('m', LAWN_THICKNESS, "4 in");
	ck_assert_double_eq(embed_inches(), 4);
}
END_TEST

START_TEST(beds_of_one_entry_stand_as_deep_as_each_has_to)
{
	garden_rows(&garden, (const char *[]){ "bbbb.bbbbl", "bbbb.bbbbl", "bbbb.bbbbl",
		"bbbb.bbbbl", NULL });
	garden_count(&garden);
	const struct embeds *embeds = &garden.takeoff.embeds;
	struct embed_range range = embed_range(embeds, garden.takeoff.survey.regions[0].entry);

	ck_assert_int_eq(embed_of(embeds, 0), 2 * NM_PER_INCH);
	ck_assert_int_eq(embed_of(embeds, 1), 3 * NM_PER_INCH);
	ck_assert_int_eq(range.least, 2 * NM_PER_INCH);
	ck_assert_int_eq(range.most, 3 * NM_PER_INCH);
	set('b', BED_EMBED, "5 in");
	garden_count(&garden);
	range = embed_range(embeds, garden.takeoff.survey.regions[0].entry);
	ck_assert_int_eq(range.least, 5 * NM_PER_INCH);
	ck_assert_int_eq(range.most, 5 * NM_PER_INCH);
}
END_TEST

/* ---- Random plots, cell by cell -------------------------------------------------------------- */

/* Eighths of an inch of turf and soil of the lawns that touch the region; 0: none does. */
static int eighths_beside(int region)
{
	static const int turf[] = { ['l'] = 6, ['m'] = 0, ['n'] = 11 };
	const struct survey *survey = &garden.takeoff.survey;
	int deepest = 0;

	for (int y = 0; y < survey->rows; y++) {
		for (int x = 0; x < survey->columns; x++) {
			if (survey_region_at(survey, x, y) != region)
				continue;
			for (int i = 0; i < 9; i++) {
				int nx = x - 1 + i % 3, ny = y - 1 + i / 3;
				char letter = ground_holds(&garden.plot.ground, nx, ny) ?
					ground_cell(&garden.plot.ground, nx, ny) : '.';

				if (letter >= 'l' && letter <= 'n')
					deepest = most(deepest, 16 + turf[(int)letter]);
			}
		}
	}
	return deepest;
}

START_TEST(embeds_are_those_found_cell_by_cell)
{
	struct random random = { (uint64_t)_i + 500 };

	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_at_random(&garden.plot, &random, 16, "bclmn..");
	if (plot_entry(&garden.plot, 'm'))
		set('m', LAWN_COVER, "seed");
	if (plot_entry(&garden.plot, 'n'))
		set('n', LAWN_THICKNESS, "1 3/8 in");
	garden_count(&garden);
	for (int i = 0; i < garden.takeoff.survey.region_count; i++) {
		int beside;

		if (!region_is_raised(&garden.takeoff.survey.regions[i]))
			continue;
		/* The surface is 2 in, a tenth of 18 in less. */
		beside = eighths_beside(i);
		beside = beside > 16 ? (beside + 3) / 4 * 4 : 16;
		ck_assert_int_eq(embed_of(&garden.takeoff.embeds, i), beside * NM_PER_INCH / 8);
	}
}
END_TEST

#define ROWS(table) (int)(sizeof(table) / sizeof *(table))

Suite *test_suite(void)
{
	Suite *suite = suite_create("embed");
	TCase *grounds = suite_case(suite, "grounds"), *touching = suite_case(suite, "touching");
	TCase *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(grounds, NULL, teardown);
	tcase_add_test(grounds, the_wall_is_as_high_as_its_courses);
	tcase_add_test(grounds, the_beds_own_embed_holds_whatever_lies_beside_it);
	tcase_add_test(grounds, embed_follows_the_deepest_path_that_has_a_cell);
	tcase_add_test(grounds, the_surface_is_2_in_or_50_mm_without_paths);
	tcase_add_loop_test(grounds,
		at_least_a_tenth_of_the_wall_is_below_ground_up_to_the_next_half_inch, 0,
		ROWS(tenths));
	tcase_add_loop_test(grounds, metric_embeds_go_up_to_the_next_10_mm, 0,
		ROWS(metric_tenths));
	tcase_add_loop_test(grounds, under_a_lawn_there_is_room_for_its_turf_and_2_in_of_soil, 0,
		ROWS(covers));
	tcase_add_checked_fixture(touching, NULL, teardown);
	tcase_add_loop_test(touching, a_lawn_touches_by_a_side_or_a_corner, 0, ROWS(places));
	tcase_add_test(touching, of_several_lawns_that_with_the_thickest_turf_counts);
	tcase_add_test(touching, beds_of_one_entry_stand_as_deep_as_each_has_to);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, embeds_are_those_found_cell_by_cell, 0, RANDOM_PLOTS);
	return suite;
}
