/* Hours of sun by day, cell and bed. */
#include "takeoff/sun/sun_hours.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/stopper.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static struct arena arena;
static struct plot plot;
static struct takeoff takeoff;
static struct sun_hours sun;

static void teardown(void)
{
	stopper_end();
	arena_clear(&arena);
	plot_fini(&plot);
}

#define ROWS (const char *const[])

static void given(const char *const *rows, const char *latitude)
{
	plot_from_rows(&plot, rows);
	plot_set(&plot, 0, HEAD_SITE, latitude);
}

static bool count(void)
{
	struct date days[SUN_USUAL_DAYS];

	sun_usual_days(sun_latitude(&takeoff), days);
	sun_begin(&sun, &arena, &takeoff, days, SUN_USUAL_DAYS);
	for (int i = 0; i < SUN_USUAL_DAYS; i++)
		if (!sun_count(&sun))
			return false;
	return sun_finish(&sun);
}

static void make(void)
{
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
	ck_assert(sun_has_site(&takeoff));
	ck_assert(count());
}

static double mean_at(int x, int y)
{
	return sun_mean(&sun, (struct place){ x, y });
}

START_TEST(a_plot_without_a_latitude_has_no_hours)
{
	plot_from_rows(&plot, ROWS { "b", NULL });
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
	ck_assert(!sun_has_site(&takeoff));
}
END_TEST

START_TEST(the_usual_days_are_the_21st_from_equinox_to_equinox)
{
	static const int months[][SUN_USUAL_DAYS] = { { 3, 4, 5, 6, 7, 8, 9 },
		{ 9, 10, 11, 12, 1, 2, 3 } };
	struct date days[SUN_USUAL_DAYS];

	for (int i = 0; i < 4; i++) {
		bool is_south = i == 3;

		sun_usual_days((double[]){ 66, 45, 0, -0.000001 }[i], days);
		for (int j = 0; j < SUN_USUAL_DAYS; j++) {
			ck_assert_int_eq(days[j].month, months[is_south][j]);
			ck_assert_int_eq(days[j].day, 21);
			ck_assert_int_eq(days[j].year, days[j].month < months[is_south][0] ?
				2027 : 2026);
			ck_assert(j == 0 || date_julian(days[j - 1]) < date_julian(days[j]));
		}
	}
}
END_TEST

START_TEST(the_longest_day_is_in_june_or_in_december)
{
	static const struct { double latitude; int month; } places[] = { { 66, 6 }, { 0, 6 },
		{ -0.000001, 12 }, { -45, 12 } };

	for (int i = 0; i < 4; i++) {
		struct date day = sun_longest_day(places[i].latitude);

		ck_assert_int_eq(day.year, 2026);
		ck_assert_int_eq(day.month, places[i].month);
		ck_assert_int_eq(day.day, 21);
	}
}
END_TEST

/* On open ground the sun shines from rise to set by geometry, to a step at each end. */
START_TEST(open_ground_has_all_the_hours_of_a_day)
{
	static const char *const latitudes[] = { "0", "28", "45", "51.5", "66", "-34", "-66" };
	double all = 0;

	given(ROWS { "....", "....", NULL }, latitudes[_i]);
	make();
	for (int i = 0; i < SUN_USUAL_DAYS; i++) {
		struct sun_day day = sun_day_of(sun.latitude, sun.days[i].date);
		struct sun_times times = sun_times(&day, 0);

		all += times.set - times.rise;
		ck_assert_double_ge(sun.days[i].length, times.set - times.rise);
		times = sun_times(&day, SUN_SET_HEIGHT);
		ck_assert_double_eq(sun.days[i].times.rise, times.rise);
		ck_assert_double_eq(sun.days[i].length, times.set - times.rise);
	}
	ck_assert_double_eq_tol(mean_at(3, 1), all / SUN_USUAL_DAYS, 1.0 / SUN_STEPS_AN_HOUR);
	ck_assert_int_eq(sun.class_cells[SUN_FULL], 8);
}
END_TEST

/* A wall on the equator's side of the plan, three quarters of whose height away the row is. */
START_TEST(a_wall_to_the_south_takes_sun_in_spring_and_none_in_summer)
{
	given(ROWS { ".........", NULL }, "45");
	obstacles_add(&plot.details.around.shades, memory_string("Wall"))->cells =
		(struct rectangle){ -400, 2, 400, 2 };
	plot.details.around.shades.items[0].height = 2 * NM_PER_FOOT;
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
	sun_begin(&sun, &arena, &takeoff, (struct date[]){ { 2026, 3, 21 }, { 2026, 6, 21 } }, 2);
	ck_assert(sun_count(&sun));
	ck_assert_int_lt(sun.lit[4], 3 * SUN_STEPS_AN_HOUR);
	ck_assert(sun_count(&sun));
	ck_assert_int_gt(sun.lit[4], 15 * SUN_STEPS_AN_HOUR);
}
END_TEST

START_TEST(beds_and_lawns_have_the_means_of_their_cells)
{
	given(ROWS { "bbb.lll.SS", "bbb.lll.SS", "bbb.pll.SS", "....ll....", NULL }, "51.5");
	plot_set(&plot, 'S', FIXTURE_HEIGHT, "12 ft");
	make();
	ck_assert_int_eq(sun.region_count, 2);
	for (int i = 0; i < sun.region_count; i++) {
		const struct sun_region *region = &sun.regions[i];
		double all = 0, days = 0;
		int cells = 0;

		for (int y = 0; y < 4; y++)
			for (int x = 0; x < 10; x++)
				if (survey_region_at(&takeoff.survey, x, y) == region->region)
					all += mean_at(x, y), cells++;
		for (int day = 0; day < SUN_USUAL_DAYS; day++)
			days += region->hours[day];
		ck_assert_int_eq(region->cells, cells);
		ck_assert_double_eq_tol(region->mean, all / cells, 1e-9);
		ck_assert_double_eq_tol(region->mean, days / SUN_USUAL_DAYS, 1e-9);
		ck_assert_int_eq((int)region->class, SUN_FULL);
	}
	ck_assert(!sun_has_cell(&sun, (struct place){ 8, 0 }));
	ck_assert_int_eq(sun.class_cells[SUN_FULL] + sun.class_cells[SUN_PART] +
		sun.class_cells[SUN_PART_SHADE] + sun.class_cells[SUN_SHADE], 34);
}
END_TEST

/* Beds, lawns and what casts shade, a house over some of it, north anywhere. */
static void garden_at_random(struct random *random)
{
	char north[20], lines[200];
	int left = random_between(random, -2, 7), top = random_between(random, -2, 7);

	snprintf(north, sizeof north, "%d", random_below(random, 360));
	snprintf(lines, sizeof lines, "house \"House\" 12 ft\n  from %d,%d to %d,%d\n", left, top,
		left + random_between(random, 1, 6), top + random_between(random, 1, 6));
	plot_at_random(&plot, random, 9, "bbllSp.");
	plot_set(&plot, 0, HEAD_SITE, (const char *const[]){ "51.5", "-34", "60" }[
		random_below(random, 3)]);
	plot_set(&plot, 0, HEAD_NORTH, north);
	plot_set(&plot, 'S', FIXTURE_HEIGHT, "9 ft");
	plot_add_lines(&plot, lines);
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
}

/* Of so many hours: 6, 4 and 2 are the least of each. */
static enum sun_class class_at_hours(double hours)
{
	return hours >= 6 ? SUN_FULL : hours >= 4 ? SUN_PART : hours >= 2 ? SUN_PART_SHADE :
		SUN_SHADE;
}

enum { SOME_DAYS = 3, SIDE = 9 };

/* Of what shines on the cells of a region that are under no house, by day. */
static void check_region(const struct sun_region *region, uint16_t lit[SOME_DAYS][SIDE * SIDE])
{
	double all = 0;

	for (int day = 0; day < SOME_DAYS; day++) {
		int64_t steps = 0;
		int cells = 0;

		for (int i = 0; i < sun.scene.columns * sun.scene.rows; i++) {
			struct place cell = { i % sun.scene.columns, i / sun.scene.columns };

			if (survey_region_at(&takeoff.survey, cell.x, cell.y) == region->region &&
				sun_has_cell(&sun, cell))
				steps += lit[day][i], cells++;
		}
		ck_assert_int_eq(region->cells, cells);
		ck_assert_double_eq_tol(region->hours[day], cells == 0 ? 0 :
			(double)steps / cells / SUN_STEPS_AN_HOUR, 1e-9);
		all += region->hours[day];
	}
	ck_assert_double_eq_tol(region->mean, all / SOME_DAYS, 1e-9);
	ck_assert_int_eq((int)region->class, (int)class_at_hours(region->mean));
}

static void check_cells(uint16_t lit[SOME_DAYS][SIDE * SIDE])
{
	int classes[SUN_CLASSES] = { 0 };

	for (int i = 0; i < sun.scene.columns * sun.scene.rows; i++) {
		struct place cell = { i % sun.scene.columns, i / sun.scene.columns };
		double hours = (double)(lit[0][i] + lit[1][i] + lit[2][i]) / SOME_DAYS /
			SUN_STEPS_AN_HOUR;

		if (!sun_has_cell(&sun, cell))
			continue;
		ck_assert_double_eq_tol(sun_mean(&sun, cell), hours, 1e-9);
		classes[class_at_hours(sun_mean(&sun, cell))]++;
	}
	for (int i = 0; i < SUN_CLASSES; i++)
		ck_assert_int_eq(sun.class_cells[i], classes[i]);
}

START_TEST(regions_and_classes_are_made_of_their_cells_day_by_day)
{
	static const struct date days[SOME_DAYS] = { { 2026, 3, 21 }, { 2026, 6, 21 },
		{ 2026, 12, 21 } };
	struct random random = { (uint64_t)_i };
	uint16_t lit[SOME_DAYS][SIDE * SIDE];
	int regions = 0;

	garden_at_random(&random);
	sun_begin(&sun, &arena, &takeoff, days, SOME_DAYS);
	for (int day = 0; day < SOME_DAYS; day++) {
		ck_assert(sun_count(&sun));
		memcpy(lit[day], sun.lit, ground_count(&plot.ground) * sizeof *sun.lit);
	}
	ck_assert(sun_finish(&sun));
	for (int i = 0; i < sun.region_count; i++)
		check_region(&sun.regions[i], lit);
	for (int i = 0; i < takeoff.survey.region_count; i++) {
		enum plot_class class = takeoff.survey.regions[i].entry->class;

		if (class != CLASS_BED && class != CLASS_LAWN)
			continue;
		ck_assert_int_lt(regions, sun.region_count);
		ck_assert_int_eq(sun.regions[regions++].region, i);
	}
	ck_assert_int_eq(sun.region_count, regions);
	check_cells(lit);
}
END_TEST

/* Left and right by the middle of the day; the sun's own way is not quite the same before and after
 * it, which makes a step or so a day. */
START_TEST(a_garden_that_is_symmetric_has_symmetric_hours)
{
	given(ROWS { "bbb..SS..bbb", "bbb..SS..bbb", "b..........b", "....llll....", "TT........TT",
		NULL }, "45");
	plot_set(&plot, 'S', FIXTURE_HEIGHT, "6 ft");
	plot_set(&plot, 'T', FIXTURE_HEIGHT, "9 ft");
	make();
	for (int y = 0; y < 5; y++)
		for (int x = 0; x < 6; x++)
			if (sun_has_cell(&sun, (struct place){ x, y }))
				ck_assert_double_eq_tol(mean_at(x, y), mean_at(11 - x, y),
					2.0 / SUN_STEPS_AN_HOUR);
}
END_TEST

/* University of Nebraska Extension, as quoted, title and year not noted: full sun from 6 hours of
 * direct sun a day, part sun 4 to 6, part shade 2 to 4. */
START_TEST(classes_go_by_hours_and_by_what_the_plot_allows)
{
	given(ROWS { "b", NULL }, "45");
	make();
	ck_assert_int_eq(sun_class_of(&takeoff, 6), SUN_FULL);
	ck_assert_int_eq(sun_class_of(&takeoff, 5.99), SUN_PART);
	ck_assert_int_eq(sun_class_of(&takeoff, 4), SUN_PART);
	ck_assert_int_eq(sun_class_of(&takeoff, 3.99), SUN_PART_SHADE);
	ck_assert_int_eq(sun_class_of(&takeoff, 2), SUN_PART_SHADE);
	ck_assert_int_eq(sun_class_of(&takeoff, 1.99), SUN_SHADE);
	ck_assert_int_eq(sun_class_of(&takeoff, 0), SUN_SHADE);
	arena_clear(&arena);
	plot_set(&plot, 0, ALLOW_SUN_FULL, "8");
	plot_set(&plot, 0, ALLOW_SUN_PART, "7.5");
	plot_set(&plot, 0, ALLOW_SUN_LEAST, "3");
	make();
	ck_assert_int_eq(sun_class_of(&takeoff, 7.9), SUN_PART);
	ck_assert_int_eq(sun_class_of(&takeoff, 7.4), SUN_PART_SHADE);
	ck_assert_int_eq(sun_class_of(&takeoff, 2.9), SUN_SHADE);
}
END_TEST

START_TEST(houses_without_a_height_are_counted_and_cast_no_shade)
{
	given(ROWS { "....", NULL }, "45");
	obstacles_add(&plot.details.around.houses, memory_string("A"))->cells =
		(struct rectangle){ -9, 1, 9, 4 };
	obstacles_add(&plot.details.around.houses, memory_string("B"))->cells =
		(struct rectangle){ -9, -99, 9, -98 };
	plot.details.around.houses.items[1].height = NM_PER_M;
	obstacles_add(&plot.details.around.houses, memory_string("C"))->cells =
		(struct rectangle){ -9, 9, 9, 12 };
	make();
	ck_assert_int_eq(sun.untold, 2);
	ck_assert_double_gt(mean_at(2, 0), 12);
}
END_TEST

/* Wherever it is stopped it says so, and does no more than it must. */
START_TEST(counting_can_be_stopped_anywhere)
{
	struct stopper stopper;
	int64_t asks;

	given(ROWS { "bbb.lll.SS", "bbb.lll.SS", "bbb.pll.SS", "....ll....", NULL }, "45");
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
	stopper_begin(&stopper, 0);
	ck_assert(count());
	asks = stopper.asks;
	for (int64_t at = 1; at <= asks; at += 1 + asks / 60) {
		stopper_begin(&stopper, at);
		ck_assert_msg(!count(), "stopped at %d", (int)at);
		ck_assert_int_eq(stopper.asks, at);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sun hours");
	TCase *hours = suite_case(suite, "hours");

	tcase_add_checked_fixture(hours, NULL, teardown);
	tcase_add_test(hours, a_plot_without_a_latitude_has_no_hours);
	tcase_add_test(hours, the_usual_days_are_the_21st_from_equinox_to_equinox);
	tcase_add_test(hours, the_longest_day_is_in_june_or_in_december);
	tcase_add_loop_test(hours, regions_and_classes_are_made_of_their_cells_day_by_day, 0, 20);
	tcase_add_loop_test(hours, open_ground_has_all_the_hours_of_a_day, 0, 7);
	tcase_add_test(hours, a_wall_to_the_south_takes_sun_in_spring_and_none_in_summer);
	tcase_add_test(hours, beds_and_lawns_have_the_means_of_their_cells);
	tcase_add_test(hours, a_garden_that_is_symmetric_has_symmetric_hours);
	tcase_add_test(hours, classes_go_by_hours_and_by_what_the_plot_allows);
	tcase_add_test(hours, houses_without_a_height_are_counted_and_cast_no_shade);
	tcase_add_test(hours, counting_can_be_stopped_anywhere);
	return suite;
}
