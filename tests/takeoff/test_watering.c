/* What watering takes: published worked examples, what is arithmetic, and what goes with it. */
#include "takeoff/watering/watering.h"
#include "base/measure.h"
#include "support/around.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static void allow(enum attribute attribute, const char *value)
{
	plot_set(&garden.plot, 0, attribute, value);
}

/* A bed at ground level that fills the plan: cells of a foot. */
static void level_bed(int columns, int rows)
{
	garden_rectangle(&garden, 'b', columns, rows);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
}

static const struct watering *watering(void)
{
	garden_count(&garden);
	return &garden.takeoff.watering;
}

static double gallons(double m3)
{
	return m3 / 0.003785411784; /* of 231 cu in, by definition */
}

START_TEST(a_plot_that_says_nothing_has_no_watering)
{
	garden_rectangle(&garden, 'b', 8, 4);
	ck_assert_int_eq(watering()->count, 0);
	ck_assert(!takeoff_has(&garden.takeoff, SUBJECT_WATER));
	for (size_t i = 0; i < garden.takeoff.items.count; i++)
		ck_assert_int_ne(garden.takeoff.items.list[i].section, SECTION_WATER);
}
END_TEST

/* 144/231 U.S. gallons: New Mexico State University Extension, and University of California Santa
 * Cruz, Teaching Organic Farming and Gardening, Unit 1.5. */
START_TEST(an_inch_on_a_square_foot_is_0_6234_gallons)
{
	level_bed(1, 1);
	ck_assert_double_eq_tol(gallons(watering()->asked), 0.6234, 0.00005);
	garden_fini(&garden);
	level_bed(10, 10);
	ck_assert_double_eq_tol(gallons(watering()->asked), 62.3, 0.05);
}
END_TEST

/* In an hour 231 x gal/h over row x emitter spacing, inches: arithmetic of the gallon. */
START_TEST(how_fast_water_comes_is_flow_over_spacings)
{
	static const struct { const char *rate, *emitter; double inches; } rows[] = {
		{ "0.6 gal/h", "12 in", 0.9625 }, { "0.9 gal/h", "18 in", 0.9625 },
		{ "0.5 gal/h", "18 in", 0.5347 },
	};

	level_bed(12, 6);
	allow(ALLOW_EMITTER_RATE, rows[_i].rate);
	plot_set(&garden.plot, 'b', BED_DRIP_EMITTER, rows[_i].emitter);
	ck_assert_double_eq_tol(60 / watering()->list[0].minutes, rows[_i].inches, 0.0001);
}
END_TEST

/* A bed 30 in wide, one line of so many gal/h by 100 ft: hours for an inch. Penn State Extension,
 * 2013, as quoted, title not noted. */
START_TEST(a_narrow_bed_takes_the_hours_of_the_published_table)
{
	static const struct { const char *rate; double hours; } rows[] = {
		{ "0.132 gal/h", 11.8 }, { "0.204 gal/h", 7.6 }, { "0.27 gal/h", 5.8 },
		{ "0.402 gal/h", 3.9 }, { "0.804 gal/h", 1.9 },
	};

	level_bed(40, 1);
	plot_set(&garden.plot, 0, HEAD_CELL, "30 in");
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, "30 in");
	allow(ALLOW_EMITTER_RATE, rows[_i].rate);
	ck_assert_int_eq(watering()->emitters, 100);
	ck_assert_double_eq_tol(watering()->list[0].minutes / 60, rows[_i].hours, 0.05);
}
END_TEST

/* Four rows of 25 ft, an emitter of 0.334 gal/h every 8 in: 150 of them, 50.1 gal/h, 62.31 gal in
 * 1.24 h. University of California Santa Cruz, Teaching Organic Farming and Gardening, Unit 1.5. It
 * counts 37 1/2 to a row; a row here has 38. */
START_TEST(a_bed_of_100_square_feet_takes_what_was_published)
{
	level_bed(25, 4);
	allow(ALLOW_EMITTER_RATE, "0.334 gal/h");
	plot_set(&garden.plot, 'b', BED_DRIP_EMITTER, "8 in");
	ck_assert_int_eq(watering()->lines, 4);
	ck_assert_int_eq(garden.takeoff.watering.emitters, 4 * 38);
	ck_assert_double_eq_tol(gallons(garden.takeoff.watering.flow), 50.1 * 38 / 37.5, 0.01);
	ck_assert_double_eq_tol(gallons(garden.takeoff.watering.asked), 62.31, 0.05);
	ck_assert_double_eq_tol(garden.takeoff.watering.list[0].minutes / 60, 1.24 * 37.5 / 38,
		0.01);
}
END_TEST

/* 4 x 8 ft at an inch: 32 x 0.6234 gal; 24 emitters of 0.6 gal/h. Arithmetic. */
START_TEST(three_lines_water_four_by_eight_feet_in_83_minutes)
{
	level_bed(8, 4);
	plot_set(&garden.plot, 'b', BED_DRIP_ROW, "16 in");
	ck_assert_int_eq(watering()->lines, 3);
	ck_assert_int_eq(garden.takeoff.watering.emitters, 24);
	ck_assert_double_eq_tol(gallons(garden.takeoff.watering.asked), 19.95, 0.005);
	ck_assert_double_eq_tol(garden.takeoff.watering.list[0].minutes, 83, 0.5);
	ck_assert_int_eq(garden.takeoff.watering.zones[0].run, 42);
	ck_assert_int_eq(garden.takeoff.watering.zones[0].minutes, 84);
}
END_TEST

/* 25 mm on 1 m2 are 25 L, by definition of the litre. */
START_TEST(a_metric_plot_is_watered_in_litres)
{
	level_bed(2, 1);
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "1 m");
	ck_assert_double_eq_tol(watering()->asked, 0.050, 1e-12);
	/* rows of 300 mm: four; seven emitters of 2.3 L/h on each */
	ck_assert_int_eq(garden.takeoff.watering.emitters, 28);
	ck_assert_double_eq_tol(garden.takeoff.watering.flow, 28 * 0.0023, 1e-12);
	ck_assert_double_eq_tol(garden.takeoff.watering.supply, 0.9, 1e-12);
}
END_TEST

START_TEST(each_month_has_its_own_depth_or_that_of_any_week)
{
	const struct watering *found;

	level_bed(10, 10);
	allow(ALLOW_WATER_JULY, "1 1/2 in");
	allow(ALLOW_WATER_JANUARY, "0 in");
	found = watering();
	ck_assert_int_eq(found->month_count, MONTHS);
	ck_assert_int_eq(found->week_count, MONTHS);
	/* 100 emitters of 0.6 gal/h: 62.34 minutes, so 2 x 32; half as much again 2 x 47 */
	ck_assert_double_eq_tol(gallons(found->weeks[6].water), 93.5, 0.05);
	ck_assert_double_eq_tol(gallons(found->weeks[5].water), 62.3, 0.05);
	ck_assert_double_eq(found->months[0].water, 0);
	ck_assert_int_eq(found->zone_week_count, MONTHS);
	ck_assert_int_eq(found->zone_weeks[5].run, 32);
	ck_assert_int_eq(found->zone_weeks[6].run, 47);
	ck_assert_int_eq(found->months[6].minutes, 94);
	ck_assert_double_eq_tol(gallons(found->months[6].water), 94, 1e-9);
	ck_assert_double_eq_tol(gallons(found->weeks[6].gets), 94, 1e-9);
}
END_TEST

START_TEST(the_supply_is_assumed_until_it_is_measured)
{
	level_bed(10, 10);
	ck_assert(!watering()->is_measured);
	ck_assert_double_eq_tol(gallons(garden.takeoff.watering.supply), 240, 1e-9);
	ck_assert_double_eq_tol(gallons(garden.takeoff.watering.most), 180, 1e-9);
	allow(ALLOW_SUPPLY, "240 gal/h");
	ck_assert(watering()->is_measured);
}
END_TEST

/* Three beds of 10 emitters, one of 6. */
START_TEST(a_zone_takes_three_quarters_of_the_supply_and_runs_as_long_as_its_slowest_bed)
{
	const struct watering *found;

	garden_rows(&garden, (const char *const[]){ "bbbbb.bbbbb.bbbbb.aaaaa",
		"bbbbb.bbbbb.bbbbb.aaaaa", NULL });
	for (const char *letter = "ab"; *letter; letter++) {
		plot_set(&garden.plot, *letter, BED_BUILD, "level");
		plot_set(&garden.plot, *letter, BED_WATER, "drip");
	}
	plot_set(&garden.plot, 'a', BED_DRIP_EMITTER, "24 in");
	allow(ALLOW_SUPPLY, "24 gal/h");
	found = watering();
	/* 18 gal/h are 30 emitters; beds have 10, 10, 10 and 6 */
	ck_assert_int_eq(found->zone_count, 2);
	ck_assert_int_eq(found->zones[0].emitters, 30);
	ck_assert_int_eq(found->zones[1].emitters, 6);
	/* 6.234 gal of each bed at 6 and 3.6 gal/h: 62.3 and 103.9 minutes */
	ck_assert_int_eq(found->zones[0].minutes, 64);
	ck_assert_int_eq(found->zones[1].minutes, 104);
	ck_assert_int_eq(found->minutes, 64 + 104);
	ck_assert_double_eq(found->list[0].over, 0);
	allow(ALLOW_SUPPLY, "48 gal/h");
	found = watering();
	ck_assert_int_eq(found->zone_count, 1);
	ck_assert_int_eq(found->zones[0].minutes, 104);
	/* 21.6 gal/h flow as long; three beds of 6 gal/h get 40 minutes too much */
	ck_assert_double_eq_tol(gallons(found->water), 21.6 * 104 / 60, 1e-9);
	ck_assert_double_eq_tol(gallons(found->asked), 40 * 144.0 / 231, 1e-9);
	for (int i = 0; i < 3; i++) {
		ck_assert_double_eq_tol(gallons(found->list[i].gets), 6.0 * 104 / 60, 1e-9);
		ck_assert_double_eq_tol(gallons(found->list[i].over), 6.0 * 40 / 60, 1e-9);
	}
	ck_assert_double_eq_tol(gallons(found->list[3].gets), 3.6 * 104 / 60, 1e-9);
	ck_assert_double_eq(found->list[3].over, 0);
}
END_TEST

/* Two beds of 20 x 2 ft in one zone, the one of 40 emitters; the other's 42 take 5 % less long, its
 * 46 take 13 % less. */
START_TEST(up_to_a_tenth_more_than_asked_for_is_not_told)
{
	const struct watering *found;

	garden_rows(&garden, (const char *const[]){ "aaaaaaaaaaaaaaaaaaaa", "aaaaaaaaaaaaaaaaaaaa",
		"....................", "bbbbbbbbbbbbbbbbbbbb", "bbbbbbbbbbbbbbbbbbbb", NULL });
	for (const char *letter = "ab"; *letter; letter++) {
		plot_set(&garden.plot, *letter, BED_BUILD, "level");
		plot_set(&garden.plot, *letter, BED_WATER, "drip");
	}
	plot_set(&garden.plot, 'b', BED_DRIP_EMITTER, "11 1/2 in");
	allow(ALLOW_SUPPLY, "200 gal/h");
	found = watering();
	ck_assert_int_eq(found->zone_count, 1);
	ck_assert_int_eq(found->list[1].drip.emitters, 42);
	ck_assert_double_gt(found->list[1].gets, found->list[1].water);
	ck_assert_double_eq(found->list[1].over, 0);
	plot_set(&garden.plot, 'b', BED_DRIP_EMITTER, "10 1/2 in");
	found = watering();
	ck_assert_int_eq(found->list[1].drip.emitters, 46);
	ck_assert_double_gt(found->list[1].over, 0);
}
END_TEST

/* The lines of a bed in two zones water it together. */
START_TEST(a_bed_of_two_zones_gets_what_both_bring)
{
	const struct watering *found;

	level_bed(6, 2);
	allow(ALLOW_SUPPLY, "6 gal/h");
	found = watering();
	ck_assert_int_eq(found->zone_count, 2);
	/* 7.48 gal at 7.2 gal/h: 62.3 minutes */
	ck_assert_double_eq_tol(gallons(found->list[0].gets), 7.2 * 64 / 60, 1e-9);
	ck_assert_double_eq_tol(found->water, found->list[0].gets, 1e-12);
	ck_assert_int_eq(found->minutes, 2 * 64);
}
END_TEST

/* What all beds, or zones, have in a month together. */
struct month_sum {
	int64_t minutes;
	double water;
};

static const double rate = 0.6 * 0.003785411784; /* of an emitter, m3/h */

/* In months of 1/4 to 3 in. */
static nm depth_of(int month)
{
	return (month + 1) * NM_PER_INCH / 4;
}

/* Three times a week so many whole minutes as the bed needs that takes longest. */
static void check_zone_week(const struct watering *found, int zone, int month,
	struct month_sum *sum)
{
	const struct zone_week *week = &found->zone_weeks[zone * MONTHS + month];
	const struct water_zone *of = &found->zones[zone];
	double slowest = 0;

	for (int i = 0; i < of->bed_count; i++) {
		const struct watered *bed = &found->list[of->beds[i].bed];

		slowest = fmax(slowest, 60 * bed->area * metres(depth_of(month)) /
			((double)bed->drip.emitters * rate));
	}
	ck_assert_int_eq(week->zone, zone + 1);
	ck_assert_int_eq((int)week->month, month);
	ck_assert_int_eq(week->depth, depth_of(month));
	ck_assert_int_eq(week->run, (int64_t)ceil(slowest / 3 - 1e-9));
	ck_assert_int_eq(week->minutes, 3 * week->run);
	ck_assert_double_eq_tol(week->water, (double)of->emitters * rate *
		(double)week->minutes / 60, 1e-12);
	sum->minutes += week->minutes;
	sum->water += week->water;
}

static double check_bed_week(const struct watering *found, int bed, int month)
{
	const struct water_week *week = &found->weeks[bed * MONTHS + month];

	ck_assert_int_eq(week->region, found->list[bed].region);
	ck_assert_int_eq((int)week->month, month);
	ck_assert_int_eq(week->depth, depth_of(month));
	ck_assert_double_eq_tol(week->water, found->list[bed].area * metres(depth_of(month)),
		1e-12);
	ck_assert_double_ge(week->gets, week->water - 1e-12);
	return week->gets;
}

static void check_month(const struct watering *found, int month)
{
	struct month_sum sum = { 0, 0 };
	double gets = 0;

	for (int i = 0; i < found->zone_count; i++)
		check_zone_week(found, i, month, &sum);
	for (int i = 0; i < found->count; i++)
		gets += check_bed_week(found, i, month);
	ck_assert_int_eq((int)found->months[month].month, month);
	ck_assert_int_eq(found->months[month].depth, depth_of(month));
	ck_assert_int_eq(found->months[month].minutes, sum.minutes);
	ck_assert_double_eq_tol(found->months[month].water, sum.water, 1e-12);
	ck_assert_double_eq_tol(gets, sum.water, 1e-12);
}

/* Beds of 12, 10 and 6 sq ft, the second with 2 ft from emitter to emitter, in one zone or more. */
START_TEST(weeks_of_beds_zones_and_months_have_the_same_water)
{
	static const char *const supplies[] = { "240 gal/h", "12 gal/h", "6 gal/h" };
	const struct watering *found;
	double gets = 0;

	garden_rows(&garden, (const char *const[]){ "bbbbbb.aaaaa.ccc", "bbbbbb.aaaaa.ccc", NULL });
	for (const char *letter = "abc"; *letter; letter++) {
		plot_set(&garden.plot, *letter, BED_BUILD, "level");
		plot_set(&garden.plot, *letter, BED_WATER, "drip");
	}
	plot_set(&garden.plot, 'a', BED_DRIP_EMITTER, "24 in");
	allow(ALLOW_SUPPLY, supplies[_i]);
	allow(ALLOW_WATER_RUNS, "3");
	for (int month = 0; month < MONTHS; month++) {
		char depth[20];

		snprintf(depth, sizeof depth, "%d/4 in", month + 1);
		allow((enum attribute)(ALLOW_WATER_JANUARY + month), depth);
	}
	found = watering();
	ck_assert_int_eq(found->count, 3);
	ck_assert_int_eq(found->week_count, 3 * MONTHS);
	ck_assert_int_eq(found->zone_week_count, found->zone_count * MONTHS);
	for (int month = 0; month < MONTHS; month++)
		check_month(found, month);
	for (int i = 0; i < 3; i++)
		gets += found->list[i].gets;
	ck_assert_double_eq_tol(found->water, gets, 1e-12);
	ck_assert_double_eq_tol(found->flow, (double)found->emitters * rate, 1e-12);
}
END_TEST

/* ---- Parts ----------------------------------------------------------------------------------- */

static double order(const char *id)
{
	const struct item *item = garden_item(&garden, id);

	return item ? item->order : 0;
}

/* Two beds of 8 x 4 ft, four lines each of 8 ft. */
START_TEST(parts_go_by_lines_beds_and_zones)
{
	garden_rows(&garden, (const char *const[]){ "bbbbbbbb..bbbbbbbb", "bbbbbbbb..bbbbbbbb",
		"bbbbbbbb..bbbbbbbb", "bbbbbbbb..bbbbbbbb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden_count(&garden);
	ck_assert_double_eq_tol(order("water.drip"), 8 * 8 * 0.3048, 1e-9);
	/* along the lines' ends, 3 ft in each */
	ck_assert_double_eq_tol(order("water.header"), 6 * 0.3048, 1e-9);
	ck_assert_double_eq(order("water.tee"), 8 + 1);
	ck_assert_double_eq(order("water.end"), 8);
	ck_assert_double_eq(order("water.stake"), 8 * 4);
	ck_assert_double_eq(order("water.valve"), 1);
	ck_assert_double_eq(order("water.timer"), 1);
	ck_assert_double_eq(order("water.filter"), 1);
	ck_assert_double_eq(order("water.regulator"), 1);
	ck_assert_double_eq(order("water.backflow"), 1);
	ck_assert_double_eq(order("water.sleeve"), 0);
	allow(ALLOW_SUPPLY, "30 gal/h");
	garden_count(&garden);
	ck_assert_double_eq(order("water.valve"), 2);
	ck_assert_double_eq(order("water.tee"), 8);
}
END_TEST

/* A plus, fed at its left or right end: 2 of its 4 lines are crossed by the header, the others are
 * met at their ends. A frame has a branch. */
START_TEST(a_line_that_is_crossed_takes_a_tee_and_an_end_cap_more)
{
	static const char *const taps[] = { "tap 0,2\n", "tap 6,2\n" };

	garden_rows(&garden, (const char *const[]){ "..bb..", "bbbbbb", "bbbbbb", "..bb..", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	around_add(&garden.plot, taps[_i]);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.watering.lines, 4);
	ck_assert_double_eq(order("water.tee"), 4 + 2);
	ck_assert_double_eq(order("water.end"), 4 + 2);
	garden_fini(&garden);
	garden_rows(&garden, (const char *const[]){ "bbbbb", "b...b", "bbbbb", NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden_count(&garden);
	ck_assert_double_eq(order("water.tee"), 4 + 1);
	ck_assert_double_eq(order("water.end"), 4);
}
END_TEST

/* Each zone has a tube of its own in the trench. */
/* 60 ft by 60 ft: farther than a look at the flag lasts. */
START_TEST(a_bed_in_the_far_corner_is_reached)
{
	level_bed(60, 60);
	for (int i = 0; i < 60 * 60; i++)
		if (i % 60 < 56 || i / 60 < 56)
			garden.plot.ground.cells[i] = OPEN_GROUND;
	garden.plot.details.around.has_tap = true;
	garden.plot.details.around.tap = (struct place){ 0, 0 };
	ck_assert(watering()->list[0].is_reached);
	ck_assert_int_eq(garden.takeoff.watering.trench, (56 + 56) * NM_PER_FOOT);
}
END_TEST

START_TEST(each_zone_has_a_tube_from_the_tap)
{
	garden_rows(&garden, (const char *const[]){ "...bb.bb", "........", NULL });
	around_add(&garden.plot, "tap 0,1\n");
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.watering.trench, 6 * NM_PER_FOOT);
	/* and 6 in to the line within each bed */
	ck_assert_int_eq(garden.takeoff.watering.header, 7 * NM_PER_FOOT);
	allow(ALLOW_SUPPLY, "2 gal/h");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.watering.zone_count, 2);
	ck_assert_int_eq(garden.takeoff.watering.trench, 6 * NM_PER_FOOT);
	ck_assert_int_eq(garden.takeoff.watering.header, (3 + 6 + 1) * NM_PER_FOOT);
}
END_TEST

/* As that of a line of water: 18 in to its top, and 4 in below; 6 in wide. Frost goes deeper.
 * Digging loam by hand 2.20 hours a cubic metre, backfilling 1.00 (labour.h). */
START_TEST(the_trench_is_that_of_a_line_of_water_and_is_work)
{
	const double dug = 6 * 0.5 * 22 / 12 * 0.028316846592;

	garden_rows(&garden, (const char *const[]){ "......bb", "........", NULL });
	around_add(&garden.plot, "tap 0,1\n");
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.watering.trench_width, 6 * NM_PER_INCH);
	ck_assert_int_eq(garden.takeoff.watering.trench_depth, 22 * NM_PER_INCH);
	ck_assert_double_eq_tol(garden.takeoff.watering.trench_dug, dug, 1e-9);
	for (int i = 0; i < garden.takeoff.work.count; i++)
		if (garden.takeoff.work.list[i].step == WORK_SLEEVES)
			ck_assert_double_eq_tol(garden.takeoff.work.list[i].hours,
				dug * (2.20 + 1.00), 1e-9);
	allow(ALLOW_FROST, "30 in");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.watering.trench_depth, 34 * NM_PER_INCH);
	ck_assert_int_eq(garden.takeoff.work.facts & FACT(DEEP), 0);
	allow(ALLOW_FROST, "45 in");
	garden_count(&garden);
	ck_assert_int_ne(garden.takeoff.work.facts & FACT(DEEP), 0);
	plot_set(&garden.plot, 'b', BED_WATER, "none");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.watering.trench_depth, 0);
}
END_TEST

/* Under the wall: 8 in of block, 6 in and 2 in of base past it and 12 in at either end. What the
 * trench's own sleeve has of that, up to the outline, is there once. */
START_TEST(a_sleeve_at_a_raised_bed_is_counted_once)
{
	static const char *const taps[] = { "tap 4,5\n", "tap 4,8\n" };

	garden_rows(&garden, (const char *const[]){ "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb",
		"........", "........", "........", "........", NULL });
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	around_add(&garden.plot, taps[_i]);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.watering.walls, 1);
	ck_assert_int_eq(garden.takeoff.watering.sleeve_count, 1);
	ck_assert_int_eq(garden.takeoff.watering.sleeves[0].length,
		(_i == 0 ? 12 : 18) * NM_PER_INCH);
	ck_assert_int_eq(garden.takeoff.watering.sleeve_length, (8 + 6 + 2 + 2 * 12) * NM_PER_INCH);
}
END_TEST

static void check_sleeve(int at, int region, int64_t sleeves, int64_t inches, int64_t tubes)
{
	const struct header_sleeve *sleeve = &garden.takeoff.watering.header_sleeves[at];

	ck_assert_int_eq(sleeve->region, region);
	ck_assert_int_eq(sleeve->sleeves, sleeves);
	ck_assert_int_eq(sleeve->place.length, inches * NM_PER_INCH);
	ck_assert_int_eq(sleeve->tubes, tubes);
}

/* From a tap at the wall there is no trench, and so no sleeve of one that has some of theirs. */
START_TEST(sleeves_under_a_wall_are_one_row)
{
	const struct watering *found = &garden.takeoff.watering;

	garden_rows(&garden, (const char *const[]){ "bbbb.", "bbbb.", "bbbb.", "bbbb.", NULL });
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	around_add(&garden.plot, "tap 4,2\n");
	allow(ALLOW_SUPPLY, "3 gal/h");
	garden_count(&garden);
	ck_assert_int_eq(found->header_sleeve_count, 1);
	check_sleeve(0, 0, 3, 40, 1);
	ck_assert_int_eq(found->sleeve_length, 3 * 40 * NM_PER_INCH);
}
END_TEST

/* Nor has one some of theirs that leads on to another bed: 6 in of base and 12 in past. */
START_TEST(a_sleeve_that_leads_away_from_a_wall_has_none_of_those_under_it)
{
	const struct watering *found = &garden.takeoff.watering;

	garden_rows(&garden, (const char *const[]){ "bbbb....ee", "bbbb....ee", "bbbb....ee",
		"bbbb....ee", NULL });
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_set(&garden.plot, 'e', BED_WATER, "drip");
	plot_set(&garden.plot, 'e', BED_BUILD, "level");
	around_add(&garden.plot, "tap 4,2\n");
	garden_count(&garden);
	ck_assert_int_eq(found->header_sleeve_count, 2);
	check_sleeve(0, NO_REGION, 1, 18, 1);
	check_sleeve(1, 0, 1, 40, 1);
	ck_assert_int_eq(found->sleeve_length, (18 + 40) * NM_PER_INCH);
}
END_TEST

/* Two beds, each a zone, beyond a path from the tap or one on either side of it; 3 ft of path and
 * 12 in past either side. */
START_TEST(a_sleeve_holds_the_tubes_of_all_zones_that_go_through_it)
{
	static const struct {
		const char *above, *row, *tap;
		int tubes;
	} plans[] = {
		{ "..ppp........", "..ppp..bb..bb", "tap 0,1\n", 2 },
		{ "....ppp......", "bb..ppp..bb..", "tap 3,1\n", 1 },
		{ "........ppp..", "bb..bb..ppp..", "tap 13,1\n", 2 },
	};

	garden_rows(&garden, (const char *const[]){ plans[_i].above, plans[_i].row, plans[_i].row,
		NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_set(&garden.plot, 'p', PATH_EDGING, "no");
	around_add(&garden.plot, plans[_i].tap);
	allow(ALLOW_SUPPLY, "4 gal/h");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.watering.zone_count, 2);
	ck_assert_int_eq(garden.takeoff.watering.header_sleeve_count, 1);
	check_sleeve(0, NO_REGION, 1, 60, plans[_i].tubes);
}
END_TEST

/* Three lines, each a zone of its own: two further tubes go under the wall and up, along the lower
 * side of what is within it, 40 in down, from its middle to its corner, 16 in, and on to their
 * lines. */
START_TEST(each_tube_to_a_split_bed_goes_under_the_wall_and_up)
{
	const struct watering *found = &garden.takeoff.watering;
	nm one, way, to_lines[3];

	garden_rows(&garden, (const char *const[]){ "bbbb", "bbbb", "bbbb", "bbbb", "....", "....",
		"....", NULL });
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	around_add(&garden.plot, "tap 2,7\n");
	garden_count(&garden);
	ck_assert_int_eq(found->zone_count, 1);
	ck_assert_int_eq(found->walls, 1);
	one = found->list[0].within;
	for (int i = 0; i < 3; i++)
		to_lines[i] = (16 + 40) * NM_PER_INCH - found->list[0].drip.lines[i].across;
	way = one - to_lines[0];
	allow(ALLOW_SUPPLY, "3 gal/h");
	garden_count(&garden);
	ck_assert_int_eq(found->zone_count, 3);
	ck_assert_int_eq(found->walls, 3);
	/* all three in the trench's, those under the wall as much shorter */
	ck_assert_int_eq(found->header_sleeve_count, 2);
	check_sleeve(0, NO_REGION, 1, 18, 3);
	check_sleeve(1, 0, 3, 22, 1);
	ck_assert_int_eq(found->sleeve_length, (18 + 3 * 22) * NM_PER_INCH);
	ck_assert_int_eq(found->header_sleeves[1].place.to.x, 2 * NM_PER_FOOT);
	ck_assert_int_eq(found->header_sleeves[1].place.to.y, 4 * NM_PER_FOOT);
	ck_assert_int_eq(found->list[0].within - one, 2 * way + to_lines[1] + to_lines[2]);
	/* from the tap to the wall three times, 3 ft each */
	ck_assert_int_eq(found->header, 9 * NM_PER_FOOT + found->list[0].within);
}
END_TEST

/* It is at that bed already, and goes out of it to the other. */
START_TEST(from_a_tap_within_a_bed_the_header_begins_there)
{
	garden_rows(&garden, (const char *const[]){ "bbbb....bb", "bbbb....bb", "bbbb....bb",
		"..........", NULL });
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	around_add(&garden.plot, "tap 2,1\n");
	garden_count(&garden);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_CUT_OFF, 0));
	ck_assert(garden.takeoff.watering.list[0].is_reached);
	ck_assert(garden.takeoff.watering.list[1].is_reached);
	ck_assert_int_eq(garden.takeoff.watering.trench, 6 * NM_PER_FOOT);
	ck_assert_int_eq(garden.takeoff.watering.walls, 0);
}
END_TEST

/* From the middle of the bed 16 in along to where its lines begin, and across them: under no
 * wall. */
START_TEST(a_tap_within_a_raised_bed_has_no_wall_to_pass)
{
	const struct watered *bed;

	garden_rows(&garden, (const char *const[]){ "bbbb.", "bbbb.", "bbbb.", "bbbb.", NULL });
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	around_add(&garden.plot, "tap 2,2\n");
	garden_count(&garden);
	bed = garden.takeoff.watering.list;
	ck_assert_int_eq(garden.takeoff.watering.walls, 0);
	ck_assert_int_eq(bed->within, 16 * NM_PER_INCH + bed->drip.lines[2].across -
		bed->drip.lines[0].across);
}
END_TEST

/* On the plan's edge or a house's wall, at the raised bed's own: it comes down inside that, on its
 * lines' beginnings. Out to the other bed it goes 8 ft, under the base at either side of the first
 * bed's walls, 8 in of block and 2 in within, 6 in outside, and under the other's wall. */
START_TEST(a_tap_at_the_outline_of_a_raised_bed_by_an_edge_or_house_comes_down_inside)
{
	static const char *const taps[] = { "tap 0,2\n",
		"house \"H\"\n  from -4,-2 to 0,9\ntap 0,2\n" };
	const struct watering *found = &garden.takeoff.watering;
	const struct watered *bed;

	garden_rows(&garden, (const char *const[]){ "bbbb....bbbb", "bbbb....bbbb", "bbbb....bbbb",
		"bbbb....bbbb", NULL });
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	around_add(&garden.plot, taps[_i]);
	garden_count(&garden);
	bed = found->list;
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_CUT_OFF, 0));
	ck_assert_int_eq(found->trench, 8 * NM_PER_FOOT);
	ck_assert_int_eq(bed->within, bed->drip.lines[2].across - bed->drip.lines[0].across);
	ck_assert_int_eq(found->walls, 1);
	ck_assert_int_eq(found->header_sleeve_count, 4);
	check_sleeve(0, NO_REGION, 1, 10 + 12, 1);
	check_sleeve(1, NO_REGION, 1, 12 + 2 + 8 + 6 + 12, 1);
	check_sleeve(2, NO_REGION, 1, 12 + 6, 1);
	check_sleeve(3, 1, 1, 8 + 2 + 12, 1);
}
END_TEST

/* ---- Snags ----------------------------------------------------------------------------------- */

/* Half-inch tube of 200 ft and 200 gal/h: common practice, no published source. */
START_TEST(a_line_that_is_too_long_or_takes_too_much_is_a_snag)
{
	level_bed(200, 1);
	garden_count(&garden);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_LINE, 0));
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_FLOW, 0));
	garden_fini(&garden);
	level_bed(201, 1);
	garden_count(&garden);
	ck_assert_int_eq(garden_snag(&garden, SNAG_WATER_LINE, 0)->kind, WATER_LINE_LONG);
	ck_assert_str_eq(garden_sentence(&garden, garden_snag(&garden, SNAG_WATER_LINE, 0)),
		"From where a drip line of this bed is fed it is 201 ft long, more than 200 ft: "
		"its far end gets less. Feed it in the middle.");
	garden_fini(&garden);
	level_bed(200, 1);
	allow(ALLOW_EMITTER_RATE, "1.01 gal/h");
	garden_count(&garden);
	ck_assert_int_eq(garden_snag(&garden, SNAG_WATER_LINE, 0)->kind, WATER_LINE_THIRSTY);
}
END_TEST

/* A bed of 300 ft with a stem below or above, from where the header comes in and meets its line:
 * as far as the stem from the left end. Emitters are 12 in apart. */
static void fed_bed(int stem, bool is_above)
{
	char rows[2][301] = { "", "" };

	memset(rows[is_above], 'b', 300);
	memset(rows[!is_above], '.', 300);
	rows[!is_above][stem] = 'b';
	garden_rows(&garden, (const char *const[]){ rows[0], rows[1], NULL });
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden.plot.details.around.has_tap = true;
	garden.plot.details.around.tap = (struct place){ stem, 2 };
	allow(ALLOW_SUPPLY, "1000 gal/h");
}

START_TEST(a_line_counts_from_where_it_is_fed)
{
	static const struct {
		int stem;
		const char *rate;
		bool is_snag;
		int kind;
		nm figure;
	} rows[] = {
		{ 100, "0.5 gal/h", false, 0, 0 }, { 200, "0.5 gal/h", false, 0, 0 },
		{ 99, "0.5 gal/h", true, WATER_LINE_LONG, 201 * NM_PER_FOOT },
		{ 201, "0.5 gal/h", true, WATER_LINE_LONG, 201 * NM_PER_FOOT },
		{ 100, "1 gal/h", false, 0, 0 }, /* 200 emitters: all that a line may take */
		{ 120, "1.11 gal/h", false, 0, 0 },
		{ 119, "1.11 gal/h", true, WATER_LINE_THIRSTY, 0 },
		{ 180, "1.11 gal/h", false, 0, 0 },
		{ 181, "1.11 gal/h", true, WATER_LINE_THIRSTY, 0 },
	};
	const struct snag *snag;

	fed_bed(rows[_i].stem, false);
	allow(ALLOW_EMITTER_RATE, rows[_i].rate);
	garden_count(&garden);
	snag = garden_snag(&garden, SNAG_WATER_LINE, 0);
	ck_assert(garden.takeoff.watering.list[0].is_reached);
	ck_assert_int_eq(snag != NULL, rows[_i].is_snag);
	if (snag) {
		ck_assert_int_eq(snag->kind, rows[_i].kind);
		ck_assert(rows[_i].figure == 0 || snag->figures[0] == rows[_i].figure);
	}
}
END_TEST

START_TEST(a_line_counts_whole_where_nobody_knows_how_it_is_fed)
{
	fed_bed(150, true);
	garden.plot.details.around.has_tap = false;
	garden_count(&garden);
	ck_assert_int_eq(garden_snag(&garden, SNAG_WATER_LINE, 0)->figures[0], 300 * NM_PER_FOOT);
}
END_TEST

START_TEST(a_line_that_takes_more_than_a_zone_may_is_a_snag)
{
	level_bed(20, 2);
	allow(ALLOW_SUPPLY, "16 gal/h");
	garden_count(&garden);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_FLOW, 0));
	ck_assert_int_eq(garden.takeoff.watering.zone_count, 2);
	allow(ALLOW_SUPPLY, "15 gal/h");
	garden_count(&garden);
	ck_assert_str_eq(garden_sentence(&garden, garden_snag(&garden, SNAG_WATER_FLOW, 0)),
		"One drip line of this bed takes 12.0 gal/h, more than 11.3 gal/h, the most of one "
		"zone.");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("watering");
	TCase *figures = suite_case(suite, "figures"), *parts = suite_case(suite, "parts");

	tcase_add_checked_fixture(figures, NULL, teardown);
	tcase_add_test(figures, a_plot_that_says_nothing_has_no_watering);
	tcase_add_test(figures, an_inch_on_a_square_foot_is_0_6234_gallons);
	tcase_add_loop_test(figures, how_fast_water_comes_is_flow_over_spacings, 0, 3);
	tcase_add_loop_test(figures, a_narrow_bed_takes_the_hours_of_the_published_table, 0, 5);
	tcase_add_test(figures, a_bed_of_100_square_feet_takes_what_was_published);
	tcase_add_test(figures, three_lines_water_four_by_eight_feet_in_83_minutes);
	tcase_add_test(figures, a_metric_plot_is_watered_in_litres);
	tcase_add_test(figures, each_month_has_its_own_depth_or_that_of_any_week);
	tcase_add_test(figures, the_supply_is_assumed_until_it_is_measured);
	tcase_add_test(figures,
		a_zone_takes_three_quarters_of_the_supply_and_runs_as_long_as_its_slowest_bed);
	tcase_add_test(figures, up_to_a_tenth_more_than_asked_for_is_not_told);
	tcase_add_loop_test(figures, weeks_of_beds_zones_and_months_have_the_same_water, 0, 3);
	tcase_add_test(figures, a_bed_of_two_zones_gets_what_both_bring);
	tcase_add_checked_fixture(parts, NULL, teardown);
	tcase_add_test(parts, parts_go_by_lines_beds_and_zones);
	tcase_add_loop_test(parts, a_line_that_is_crossed_takes_a_tee_and_an_end_cap_more, 0, 2);
	tcase_add_test(parts, a_bed_in_the_far_corner_is_reached);
	tcase_add_test(parts, each_zone_has_a_tube_from_the_tap);
	tcase_add_test(parts, the_trench_is_that_of_a_line_of_water_and_is_work);
	tcase_add_loop_test(parts, a_sleeve_at_a_raised_bed_is_counted_once, 0, 2);
	tcase_add_test(parts, sleeves_under_a_wall_are_one_row);
	tcase_add_test(parts, a_sleeve_that_leads_away_from_a_wall_has_none_of_those_under_it);
	tcase_add_loop_test(parts, a_sleeve_holds_the_tubes_of_all_zones_that_go_through_it, 0, 3);
	tcase_add_test(parts, each_tube_to_a_split_bed_goes_under_the_wall_and_up);
	tcase_add_test(parts, from_a_tap_within_a_bed_the_header_begins_there);
	tcase_add_test(parts, a_tap_within_a_raised_bed_has_no_wall_to_pass);
	tcase_add_loop_test(parts,
		a_tap_at_the_outline_of_a_raised_bed_by_an_edge_or_house_comes_down_inside, 0, 2);
	tcase_add_test(parts, a_line_that_is_too_long_or_takes_too_much_is_a_snag);
	tcase_add_test(parts, a_line_that_takes_more_than_a_zone_may_is_a_snag);
	tcase_add_loop_test(parts, a_line_counts_from_where_it_is_fed, 0, 9);
	tcase_add_test(parts, a_line_counts_whole_where_nobody_knows_how_it_is_fed);
	return suite;
}
