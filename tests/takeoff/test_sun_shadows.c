/* The shadows of single moments. */
#include "takeoff/sun/sun_shadows.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/stopper.h"
#include "takeoff/sun/sun_hours.h"

#include <math.h>

static struct arena arena;
static struct plot plot;
static struct takeoff takeoff;

static void teardown(void)
{
	stopper_end();
	arena_clear(&arena);
	plot_fini(&plot);
}

/* north: how far up is from it. */
static void given(const char *latitude, const char *north, const char *lines)
{
	plot_from_rows(&plot, (const char *const[]){ "..........", "..bb......", "..bb...S..",
		"..........", "....ll....", "..........", "..........", "..........", "..........",
		"..........", "..........", "..........", NULL });
	plot_set(&plot, 0, HEAD_SITE, latitude);
	plot_set(&plot, 0, HEAD_NORTH, north);
	plot_set(&plot, 'S', FIXTURE_HEIGHT, "6 ft");
	plot_add_lines(&plot, lines);
	ck_assert(takeoff_compute(&takeoff, &arena, &plot, NULL));
}

/* Hours are counted at the middles of steps of 5 minutes: so many shadows, added up. */
START_TEST(the_shadows_of_all_steps_of_a_day_come_to_its_hours)
{
	static const char *const latitudes[] = { "51.5", "0", "-34", "66" };
	const struct date date = { 2026, 6, 21 };
	struct sun_hours hours;
	struct sun_shadows shadows;
	int lit[12][10] = { { 0 } };

	given(latitudes[_i], _i % 2 ? "0" : "70.5", "fence \"Hurdle\"\n  height 5 ft\n"
		"  run 0,6 5,6\nhouse \"Number 4\" 20 ft\n  from -9,3 to -2,9\n"
		"shade \"Lime\" 30 ft\n  from 12,5 to 14,8\n");
	sun_begin(&hours, &arena, &takeoff, &date, 1);
	ck_assert(sun_count(&hours));
	ck_assert(sun_shadows_begin(&shadows, &arena, &takeoff, date));
	for (int i = 0; i < 24 * SUN_STEPS_AN_HOUR; i++) {
		double hour = (i + 0.5) / SUN_STEPS_AN_HOUR;

		if (sun_place(&shadows.day, hour).height <= 0)
			continue;
		ck_assert(sun_shadows_cast(&shadows, hour));
		for (int y = 0; y < 12; y++)
			for (int x = 0; x < 10; x++)
				lit[y][x] += sun_shadows_is_lit(&shadows, (struct place){ x, y });
	}
	for (int y = 0; y < 12; y++)
		for (int x = 0; x < 10; x++) {
			struct place cell = { x, y };

			ck_assert(sun_shadows_has_cell(&shadows, cell) == sun_has_cell(&hours,
				cell));
			if (sun_has_cell(&hours, cell))
				ck_assert_int_eq(lit[y][x], hours.lit[y * 10 + x]);
		}
}
END_TEST

/* At noon the shadow of a wall lies straight north of it, as long as it is high times the cotangent
 * of the sun's height (elementary geometry). At 45 degrees of latitude on 2026-03-20, close to the
 * equinox, that is 45 degrees, within the third of a degree that the sun moves in a day: a wall of
 * 5 ft 6 in shades the middles 0.5 to 4.5 ft from it, and 5.5 ft off by a hair it may be either. */
START_TEST(at_noon_of_an_equinox_at_45_degrees_a_shadow_is_as_long_as_its_wall_is_high)
{
	struct sun_shadows shadows;

	given("45", "0", "fence \"Wall\"\n  height 5 ft 6 in\n  gap 0 in\n  run 0,12 10,12\n");
	ck_assert(sun_shadows_begin(&shadows, &arena, &takeoff, (struct date){ 2026, 3, 20 }));
	ck_assert(sun_shadows_cast(&shadows, 12));
	ck_assert_double_lt(fabs(shadows.sun.height - 45), 0.35);
	ck_assert_double_lt(fabs(shadows.sun.azimuth - 180), 0.1);
	for (int y = 3; y < 12; y++)
		if (y != 6)
			ck_assert_msg(sun_shadows_is_lit(&shadows, (struct place){ 9, y }) ==
				(y < 6), "row %d", y);
	ck_assert(!sun_shadows_has_cell(&shadows, (struct place){ 7, 2 }));
}
END_TEST

START_TEST(it_can_be_stopped_at_any_time)
{
	const struct date date = { 2026, 6, 21 };
	struct stopper stopper;
	struct sun_shadows shadows;
	bool is_done = false;

	given("51.5", "0", "shade \"Lime\" 30 ft\n  from 12,5 to 14,8\n");
	for (int64_t at = 0; !is_done; at++) {
		stopper_begin(&stopper, at);
		is_done = sun_shadows_begin(&shadows, &arena, &takeoff, date) &&
			sun_shadows_cast(&shadows, 9);
		stopper_end();
		ck_assert_int_lt(at, 1000);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("sun_shadows");
	TCase *shadows = suite_case(suite, "shadows");

	tcase_add_checked_fixture(shadows, NULL, teardown);
	tcase_add_loop_test(shadows, the_shadows_of_all_steps_of_a_day_come_to_its_hours, 0, 4);
	tcase_add_test(shadows,
		at_noon_of_an_equinox_at_45_degrees_a_shadow_is_as_long_as_its_wall_is_high);
	tcase_add_test(shadows, it_can_be_stopped_at_any_time);
	return suite;
}
