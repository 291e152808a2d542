/* Plants with less sun than they need. */
#include "support/planting.h"
#include "support/runner.h"

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
	tcase_add_test(sun, what_thrives_in_shade_or_tells_nothing_is_not);
	tcase_add_test(sun, without_a_latitude_nothing_is_known_of_sun);
	tcase_add_test(sun, so_much_as_it_needs_is_enough);
	return suite;
}
