/* Plants with less sun than they need. */
#include "support/planting.h"
#include "support/runner.h"
#include "takeoff/sun/sun_usual.h"

#include <math.h>
#include <stdio.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* Open ground with a plant in its middle, and a wall right to its south. */
static void shaded(const char *needs)
{
	char lines[200];

	garden_rows(&garden, (const char *const[]){ ".....", ".....", ".....", NULL });
	plot_set(&garden.plot, 0, HEAD_SITE, "45");
	snprintf(lines, sizeof lines, "plant z \"Rose\"\n%s  at 2,1\n"
		"shade \"Wall\" 30 ft\n  from -20,2 to 25,3\n", needs);
	plot_add_lines(&garden.plot, lines);
	garden_count(&garden);
}

START_TEST(what_needs_full_sun_is_told_of_behind_a_wall)
{
	shaded("  sun full\n");
	const struct snag *snag = planting_snag(&garden, SNAG_PLANT_SUN);

	ck_assert_int_eq(snag->cell.x, 2);
	ck_assert_int_eq(snag->cell.y, 1);
	ck_assert_int_eq(snag->figures[2], 6 * 60);
	ck_assert_int_lt(snag->figures[1], 6 * 60);
}
END_TEST

/* Each class from the least hours of it on. */
START_TEST(what_needs_less_sun_is_told_of_where_it_has_less)
{
	static const struct { const char *needs; int minutes; } classes[] = {
		{ "  sun full\n", 540 }, { "  sun part\n", 480 }, { "  sun part-shade\n", 360 },
	};

	shaded(classes[_i].needs);
	plot_set(&garden.plot, 0, ALLOW_SUN_FULL, "9");
	plot_set(&garden.plot, 0, ALLOW_SUN_PART, "8");
	plot_set(&garden.plot, 0, ALLOW_SUN_LEAST, "6");
	garden_count(&garden);
	ck_assert_int_eq(planting_snag(&garden, SNAG_PLANT_SUN)->figures[0], 0);
	ck_assert_int_eq(planting_snag(&garden, SNAG_PLANT_SUN)->figures[2], classes[_i].minutes);
}
END_TEST

/* Of several the one with the least sun, the first of those with as much; not what is in a house.
 * Right at the wall's ends and behind its middle. */
START_TEST(of_a_kind_in_a_bed_the_one_with_the_least_sun_is_told)
{
	static const struct place at[] = { { 0, 0 }, { 1, 2 }, { 5, 2 }, { 7, 2 }, { 3, 1 },
		{ 8, 0 } };
	const struct snag *snag;
	int least = 0;

	garden_rows(&garden, (const char *const[]){ ".........", ".........", ".........", NULL });
	plot_set(&garden.plot, 0, HEAD_SITE, "45");
	plot_add_lines(&garden.plot, "plant y \"Fern\"\n  sun shade\n  at 5,2\n"
		"plant z \"Rose\"\n  sun full\n  at 0,0\n  at 1,2\n  at 5,2\n  at 7,2\n"
		"  at 3,1\n  at 8,0\n"
		"house \"Shed\" 8 ft\n  from 7,2 to 8,3\nshade \"Wall\" 20 ft\n"
		"  from 2,3 to 8,4\n");
	garden_count(&garden);
	for (int i = 1; i < 6; i++) {
		uint16_t steps = garden.takeoff.sun->steps[at[i].y * 9 + at[i].x];

		if (i != 3 && steps < garden.takeoff.sun->steps[at[least].y * 9 + at[least].x])
			least = i;
	}
	snag = planting_snag(&garden, SNAG_PLANT_SUN);
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_SUN), 1);
	ck_assert_int_eq(snag->cell.x, at[least].x);
	ck_assert_int_eq(snag->cell.y, at[least].y);
	ck_assert_int_eq(snag->region, NO_REGION);
	ck_assert_int_eq(snag->figures[0], 1);
	ck_assert_int_eq(snag->figures[1], llround(60 * sun_usual_mean(
		garden.takeoff.sun->steps[at[least].y * 9 + at[least].x])));
}
END_TEST

START_TEST(what_thrives_in_shade_or_tells_nothing_is_not)
{
	shaded("  sun shade\n");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_SUN), 0);
	garden_fini(&garden);
	shaded("");
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_SUN), 0);
}
END_TEST

START_TEST(without_a_latitude_nothing_is_known_of_sun)
{
	shaded("  sun full\n");
	block_set(&garden.plot.details.head, HEAD_SITE, (struct value){ .set = false });
	garden_count(&garden);
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_SUN), 0);
}
END_TEST

/* Just as many minutes as it needs are enough, one less is not. */
START_TEST(so_much_as_it_needs_is_enough)
{
	char hours[40];
	int64_t has;

	shaded("  sun full\n");
	has = planting_snag(&garden, SNAG_PLANT_SUN)->figures[1];
	snprintf(hours, sizeof hours, "%.6f", (double)has / 60);
	plot_set(&garden.plot, 0, ALLOW_SUN_FULL, hours);
	plot_set(&garden.plot, 0, ALLOW_SUN_PART, "0");
	plot_set(&garden.plot, 0, ALLOW_SUN_LEAST, "0");
	garden_count(&garden);
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_SUN), 0);
	snprintf(hours, sizeof hours, "%.6f", (double)(has + 1) / 60);
	plot_set(&garden.plot, 0, ALLOW_SUN_FULL, hours);
	garden_count(&garden);
	ck_assert_int_eq(planting_snags(&garden, SNAG_PLANT_SUN), 1);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("plant sun");
	TCase *sun = suite_case(suite, "sun");

	tcase_add_checked_fixture(sun, NULL, teardown);
	tcase_add_test(sun, what_needs_full_sun_is_told_of_behind_a_wall);
	tcase_add_loop_test(sun, what_needs_less_sun_is_told_of_where_it_has_less, 0, 3);
	tcase_add_test(sun, of_a_kind_in_a_bed_the_one_with_the_least_sun_is_told);
	tcase_add_test(sun, what_thrives_in_shade_or_tells_nothing_is_not);
	tcase_add_test(sun, without_a_latitude_nothing_is_known_of_sun);
	tcase_add_test(sun, so_much_as_it_needs_is_enough);
	return suite;
}
