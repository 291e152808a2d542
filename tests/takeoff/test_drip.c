/* Drip lines and their emitters: by hand, and by law on random beds, whose inner areas GEOS finds:
 * lines lie within, no point is too far from an emitter, images have images. */
#include "takeoff/watering/drip.h"
#include "base/measure.h"
#include "base/number.h"
#include "support/beds.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>

enum { RANDOM_BEDS = 200, POINTS = 300 };

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct watered *watered(int index)
{
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden_count(&garden);
	ck_assert_int_lt(index, garden.takeoff.watering.count);
	return &garden.takeoff.watering.list[index];
}

static void line_is(const struct drip *drip, int index, double across, double from, double to,
	int64_t emitters)
{
	const struct drip_line *line = &drip->lines[index];

	ck_assert_int_lt(index, drip->count);
	ck_assert_double_eq_tol(metres(line->across) / 0.0254, across, 1e-6);
	ck_assert_double_eq_tol(metres(line->chord.from) / 0.0254, from, 1e-6);
	ck_assert_double_eq_tol(metres(line->chord.to) / 0.0254, to, 1e-6);
	ck_assert_int_eq(line->emitters, emitters);
}

/* 8 x 4 ft within blocks 8 in deep: 80 x 32 in; three lines 10 2/3 in apart, 7 emitters on each. */
START_TEST(lines_lie_along_a_bed_half_a_gap_from_its_sides)
{
	garden_rectangle(&garden, 'b', 8, 4);

	const struct drip *drip = &watered(0)->drip;

	ck_assert_int_eq(drip->count, 3);
	ck_assert(!drip->ground.is_upright);
	line_is(drip, 0, 8 + 16.0 / 3, 8, 88, 7);
	line_is(drip, 1, 8 + 16, 8, 88, 7);
	line_is(drip, 2, 40 - 16.0 / 3, 8, 88, 7);
	ck_assert_int_eq(drip->emitters, 21);
	ck_assert_int_eq(drip->length, 240 * NM_PER_INCH);
}
END_TEST

START_TEST(they_go_down_a_bed_that_is_longer_so)
{
	garden_rectangle(&garden, 'b', 4, 8);
	ck_assert(watered(0)->drip.ground.is_upright);
	ck_assert_int_eq(garden.takeoff.watering.list[0].drip.count, 3);
}
END_TEST

/* At ground level there is no wall. */
START_TEST(a_bed_at_ground_level_is_watered_to_its_edge)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");

	const struct drip *drip = &watered(0)->drip;

	ck_assert_int_eq(drip->count, 4);
	line_is(drip, 0, 6, 0, 96, 8);
	line_is(drip, 3, 42, 0, 96, 8);
}
END_TEST

/* A frame of 8 x 6 ft, 2 ft wide: a line that crosses the hole is two. */
START_TEST(what_cuts_a_line_makes_two_of_it)
{
	garden_rows(&garden, (const char *const[]){ "bbbbbbbb", "bbbbbbbb", "bb....bb", "bb....bb",
		"bbbbbbbb", "bbbbbbbb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");

	const struct drip *drip = &watered(0)->drip;

	ck_assert_int_eq(drip->count, 8);
	line_is(drip, 2, 30, 0, 24, 2);
	line_is(drip, 3, 30, 72, 96, 2);
	ck_assert_int_eq(drip->emitters, 4 * 8 + 4 * 2);
}
END_TEST

/* Two rows in 5 ft, 15 and 45 in down: an arm above the first is within its reach. An arm between
 * two rows is not, unless one goes through it. */
START_TEST(an_arm_that_no_line_reaches_gets_one)
{
	static const char *const rows[] = { "bb......", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb",
		"bbbbbbbb", NULL };

	garden_rows(&garden, rows);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, "3 ft");
	ck_assert_int_eq(watered(0)->drip.count, 2);
	garden_fini(&garden);
	garden_rows(&garden, (const char *const[]){ "b.......", "b.......", "bbbbbbbb", "b.......",
		"b.......", "b.......", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, "20 in");

	const struct drip *drip = &watered(0)->drip;

	/* four rows 18 in apart from 9 in down: none goes through the arm from 24 to 36 in but
	 * that at 27 in */
	ck_assert_int_eq(drip->count, 4);
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, "36 in");
	/* two, 18 and 54 in down; the arm's far end is 3 in from its middle at 30 in */
	drip = &watered(0)->drip;
	ck_assert_int_eq(drip->count, 3);
	ck_assert(drip->lines[2].is_added);
	line_is(drip, 2, 30, 0, 96, 8);
}
END_TEST

/* Two rows in 70 in, 17.5 and 52.5 in down, beside a wide part from 20 in on: 32.5 in to the
 * second. With emitters 12 in apart it reaches sqrt(36 x 36 - 6 x 6) = 35.5 in across, with those
 * 36 in apart sqrt(36 x 36 - 18 x 18) = 31.2 in. */
START_TEST(a_row_reaches_less_far_across_the_farther_its_emitters_are_apart)
{
	static const char *const rows[] = { "b.........", "b.........", "bbbbbbbbbb",
		"bbbbbbbbbb", "bbbbbbbbbb", "bbbbbbbbbb", "bbbbbbbbbb", NULL };
	const struct drip *drip;

	garden_rows(&garden, rows);
	beds_set_cell(&garden.plot, 10 * NM_PER_INCH);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, "36 in");
	plot_set(&garden.plot, 'b', BED_DRIP_EMITTER, "12 in");
	ck_assert_int_eq(watered(0)->drip.count, 2);
	plot_set(&garden.plot, 'b', BED_DRIP_EMITTER, "36 in");
	drip = &watered(0)->drip;
	ck_assert_int_eq(drip->count, 3);
	ck_assert(drip->lines[2].is_added);
	line_is(drip, 2, 36.25, 0, 100, 3);
}
END_TEST

START_TEST(they_are_spread_evenly_from_both_ends)
{
	static const struct { nm length; int64_t count, number; nm at; } rows[] = {
		{ 100, 1, 0, 50 }, { 101, 1, 0, 50 }, { 100, 2, 0, 25 }, { 100, 2, 1, 75 },
		{ 100, 3, 0, 16 }, { 100, 3, 1, 50 }, { 100, 3, 2, 84 }, { 7, 2, 0, 1 },
		{ 7, 2, 1, 6 },
	};

	ck_assert_int_eq(drip_place(rows[_i].length, rows[_i].count, rows[_i].number),
		rows[_i].at);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

struct emitter {
	double x, y;
};

/* Of all lines of a bed, in metres from the datum. To be freed. */
static struct emitter *emitters_of(const struct watered *bed)
{
	const struct region *region = &garden.takeoff.survey.regions[bed->region];
	nm cell = garden.takeoff.survey.cell;
	nm left = region->left * cell, top = region->first_cell.y * cell;
	struct emitter *list = memory_new((size_t)bed->drip.emitters, sizeof *list);
	size_t count = 0;

	for (int i = 0; i < bed->drip.count; i++) {
		const struct drip_line *line = &bed->drip.lines[i];

		for (int64_t j = 0; j < line->emitters; j++) {
			nm along = line->chord.from + drip_place(line->chord.to - line->chord.from,
				line->emitters, j);

			nm x = bed->drip.ground.is_upright ? line->across : along;
			nm y = bed->drip.ground.is_upright ? along : line->across;

			list[count++] = (struct emitter){ metres(left + x), metres(top + y) };
		}
	}
	ck_assert_int_eq((int64_t)count, bed->drip.emitters);
	return list;
}

static GEOSGeometry *point(GEOSContextHandle_t geos, double x, double y)
{
	return GEOSGeom_createPointFromXY_r(geos, x, y);
}

static double nearest(const struct emitter *emitters, int64_t count, double x, double y)
{
	double least_apart = INFINITY;

	for (int64_t i = 0; i < count; i++)
		least_apart = fmin(least_apart, hypot(emitters[i].x - x, emitters[i].y - y));
	return least_apart;
}

/* A wall, or none. */
static void plot_begin(struct random *random)
{
	char inches[16];

	beds_at_random(&garden.plot, random, 3, 3);
	beds_set_cell(&garden.plot, random_between(random, 6, 24) * NM_PER_INCH);
	beds_set_block(&garden.plot, 12 * NM_PER_INCH, 4 * NM_PER_INCH, 4 * NM_PER_INCH);
	if (random_below(random, 2))
		plot_set(&garden.plot, 'b', BED_BUILD, "level");
	snprintf(inches, sizeof inches, "%d in", random_between(random, 4, 40));
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, inches);
	snprintf(inches, sizeof inches, "%d in", random_between(random, 4, 40));
	plot_set(&garden.plot, 'b', BED_DRIP_EMITTER, inches);
}

static GEOSGeometry *inner_of(GEOSContextHandle_t geos, const struct watered *bed)
{
	const struct survey *survey = &garden.takeoff.survey;
	const struct wall *wall = walls_find(&garden.takeoff.walls, bed->region);
	GEOSGeometry *shape = beds_shape(geos, survey, bed->region), *inner;

	if (!wall)
		return shape;
	inner = geos_offset(geos, shape, -metres(wall->block.across));
	geos_free(geos, shape);
	return inner;
}

static void check_points(GEOSContextHandle_t geos, const struct watered *bed,
	const GEOSGeometry *inner, struct random *random)
{
	const struct block *block = &garden.takeoff.survey.regions[bed->region].entry->block;
	const struct region *region = &garden.takeoff.survey.regions[bed->region];
	double cell = metres(garden.takeoff.survey.cell);
	double most_apart = metres(nm_most(block_length(block, BED_DRIP_ROW),
		block_length(block, BED_DRIP_EMITTER)));
	struct emitter *emitters = emitters_of(bed);

	for (int i = 0; i < POINTS; i++) {
		double x = cell * (region->left + random_between(random, 0, 10000) / 1e4 *
			(region->most.x + 1 - region->left));
		double y = cell * (region->first_cell.y + random_between(random, 0, 10000) / 1e4 *
			(region->most.y + 1 - region->first_cell.y));
		GEOSGeometry *at = point(geos, x, y);

		if (geos_apart_by(geos, inner, at) <= 0)
			ck_assert_double_le(nearest(emitters, bed->drip.emitters, x, y),
				most_apart + 1e-9);
		geos_free(geos, at);
	}
	for (int64_t i = 0; i < bed->drip.emitters; i++) {
		GEOSGeometry *at = point(geos, emitters[i].x, emitters[i].y);

		ck_assert_double_le(geos_apart_by(geos, inner, at), 1e-8);
		geos_free(geos, at);
	}
	free(emitters);
}

START_TEST(no_point_of_a_bed_is_farther_from_an_emitter_than_the_larger_spacing)
{
	struct random random = { (uint64_t)_i };
	GEOSContextHandle_t geos = geos_start();

	plot_begin(&random);
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden_count(&garden);
	for (int i = 0; i < garden.takeoff.watering.count; i++) {
		const struct watered *bed = &garden.takeoff.watering.list[i];
		GEOSGeometry *inner = inner_of(geos, bed);

		ck_assert_double_eq_tol(bed->area, geos_area(geos, inner), 1e-6);
		check_points(geos, bed, inner, &random);
		geos_free(geos, inner);
	}
	geos_end(geos);
}
END_TEST

/* Of the image of an emitter, where there is one: within a nanometre or two. */
START_TEST(images_of_beds_have_images_of_lines)
{
	struct random random = { (uint64_t)_i };
	const struct watering *watering = &garden.takeoff.watering;
	double width;

	beds_formal(&garden.plot, &random, 3);
	beds_set_block(&garden.plot, 12 * NM_PER_INCH, 4 * NM_PER_INCH, 4 * NM_PER_INCH);
	watered(0);
	width = metres(garden.plot.ground.columns * garden.takeoff.survey.cell);

	struct emitter *all = NULL;
	size_t count = 0, capacity = 0;

	for (int i = 0; i < watering->count; i++) {
		struct emitter *some = emitters_of(&watering->list[i]);

		for (int64_t j = 0; j < watering->list[i].drip.emitters; j++) {
			all = memory_grow(all, count, &capacity, sizeof *all);
			all[count++] = some[j];
		}
		free(some);
	}
	for (size_t i = 0; i < count; i++)
		ck_assert_double_le(nearest(all, (int64_t)count, width - all[i].x, all[i].y), 3e-9);
	free(all);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("drip");
	TCase *cases = suite_case(suite, "cases"), *random = suite_case(suite, "random");

	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, lines_lie_along_a_bed_half_a_gap_from_its_sides);
	tcase_add_test(cases, they_go_down_a_bed_that_is_longer_so);
	tcase_add_test(cases, a_bed_at_ground_level_is_watered_to_its_edge);
	tcase_add_test(cases, what_cuts_a_line_makes_two_of_it);
	tcase_add_test(cases, an_arm_that_no_line_reaches_gets_one);
	tcase_add_test(cases, a_row_reaches_less_far_across_the_farther_its_emitters_are_apart);
	tcase_add_loop_test(cases, they_are_spread_evenly_from_both_ends, 0, 9);
	tcase_add_checked_fixture(random, NULL, teardown);
	tcase_add_loop_test(random,
		no_point_of_a_bed_is_farther_from_an_emitter_than_the_larger_spacing, 0,
		runner_count(RANDOM_BEDS / 4, RANDOM_BEDS));
	tcase_add_loop_test(random, images_of_beds_have_images_of_lines, 0,
		runner_count(RANDOM_BEDS / 10, RANDOM_BEDS / 2));
	return suite;
}
