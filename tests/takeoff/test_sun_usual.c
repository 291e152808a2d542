/* Hours of sun of the usual days, counted once and kept with the takeoff. */
#include "takeoff/sun/sun_usual.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/stopper.h"
#include "takeoff/sun/plant_sun.h"

static struct garden garden;
static struct arena arena;

static void teardown(void)
{
	stopper_end();
	arena_clear(&arena);
	garden_fini(&garden);
}

/* Beds, a lawn and a fixture, with a wall to the south; counted. */
static void given(const char *plants)
{
	garden_rows(&garden, (const char *const[]){ "bbb.lll.SS", "bbb.lll.SS", "bbb.pll.SS",
		"....ll....", NULL });
	plot_set(&garden.plot, 0, HEAD_SITE, "51.5");
	plot_set(&garden.plot, 'S', FIXTURE_HEIGHT, "12 ft");
	plot_add_lines(&garden.plot, plants);
	plot_add_lines(&garden.plot, "shade \"Wall\" 9 ft\n  from -20,4 to 25,5\n");
	garden_count(&garden);
}

/* By the days themselves, one after the other. */
START_TEST(they_are_those_of_the_days)
{
	const struct sun_usual *usual;
	struct date days[SUN_USUAL_DAYS];
	struct sun_hours sun;

	given("");
	usual = sun_usual(&garden.takeoff, &arena);
	sun_usual_days(51.5, days);
	sun_begin(&sun, &arena, &garden.takeoff, days, SUN_USUAL_DAYS);
	while (sun.counted < SUN_USUAL_DAYS)
		ck_assert(sun_count(&sun));
	ck_assert(sun_finish(&sun));
	ck_assert_uint_eq(usual->cells, 40);
	for (int i = 0; i < 40; i++) {
		struct place cell = { i % 10, i / 10 };

		ck_assert_int_eq(usual->steps[i] != SUN_NO_STEPS, sun_has_cell(&sun, cell));
		if (sun_has_cell(&sun, cell))
			ck_assert_double_eq(sun_usual_mean(usual->steps[i]), sun_mean(&sun, cell));
	}
	ck_assert_int_eq(usual->region_count, sun.region_count);
	for (int i = 0; i < sun.region_count; i++) {
		ck_assert_int_eq(usual->regions[i].region, sun.regions[i].region);
		ck_assert_int_eq(usual->regions[i].cells, sun.regions[i].cells);
		ck_assert_double_eq(usual->regions[i].mean, sun.regions[i].mean);
	}
	for (int i = 0; i < SUN_CLASSES; i++)
		ck_assert_int_eq(usual->class_cells[i], sun.class_cells[i]);
}
END_TEST

/* What a takeoff has is taken; where no plant asks for sun it has none until somebody else does. */
START_TEST(a_takeoff_whose_plants_need_sun_has_them)
{
	given("plant z \"Rose\"\n  at 0,0\n");
	ck_assert_ptr_null(garden.takeoff.sun);
	garden_fini(&garden);
	given("plant z \"Rose\"\n  sun full\n  at 0,0\n");
	ck_assert_ptr_nonnull(garden.takeoff.sun);
	ck_assert_ptr_eq(sun_usual(&garden.takeoff, &arena), garden.takeoff.sun);
}
END_TEST

START_TEST(counting_them_for_plants_can_be_stopped_anywhere)
{
	struct stopper stopper;
	struct takeoff takeoff;
	int64_t asks;

	given("plant z \"Rose\"\n  sun full\n  at 0,0\n");
	ck_assert(takeoff_compute(&takeoff, &arena, &garden.plot, NULL));
	stopper_begin(&stopper, 0);
	ck_assert(takeoff_add_sun(&takeoff, &arena));
	asks = stopper.asks;
	for (int64_t at = 1; at <= asks; at += 1 + asks / 60) {
		ck_assert(takeoff_compute(&takeoff, &arena, &garden.plot, NULL));
		stopper_begin(&stopper, at);
		ck_assert_msg(!takeoff_add_sun(&takeoff, &arena), "stopped at %d", (int)at);
		stopper_end();
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("usual hours of sun");
	TCase *usual = suite_case(suite, "usual");

	tcase_add_checked_fixture(usual, NULL, teardown);
	tcase_add_test(usual, they_are_those_of_the_days);
	tcase_add_test(usual, a_takeoff_whose_plants_need_sun_has_them);
	tcase_add_test(usual, counting_them_for_plants_can_be_stopped_anywhere);
	return suite;
}
