/* The ground's surface: as it is, as it is to be, what it is dug to. */
#include "survey/surface.h"
#include "support/plots.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define FT NM_PER_FOOT
#define IN NM_PER_INCH
#define CASES runner_count(300, 20000)

static struct plot plot;

static void setup(void)
{
	plot_init(&plot);
}

static void teardown(void)
{
	plot_fini(&plot);
}

/* 16 x 8 ft in cells of 1 ft, with more lines in front of the ground and behind it. */
static struct surface surface_with(const char *head, const char *lines)
{
	char text[1024];

	plot_fini(&plot);
	snprintf(text, sizeof text, "parterre-plot 1\nunits imperial\ncell 1 ft\n%s"
		"ground 16 x 8\n%s%s%s%s%s%s%s%s%s", head,
		"  ................\n", "  ................\n", "  ................\n",
		"  ................\n", "  ................\n", "  ................\n",
		"  ................\n", "  ................\n", lines);
	plot_from_text(&plot, text);
	return surface_of(&plot);
}

#define LEVELS "levels 8 ft\n  0 in, 1 in, 3 in\n  1 in, 1 in, 3 in\n"
#define HOUSE "house \"Number 4\"\n  from 4,-12 to 12,-2\n"

#define drop_is(actual, inches) \
	ck_assert_int_eq(actual, llround((inches) * (double)NM_PER_INCH))

START_TEST(a_plot_without_levels_is_level_ground)
{
	struct surface surface = surface_with("", "");

	ck_assert(!surface.has_levels && !surface.has_finish && !surface_is_graded(&surface));
	drop_is(surface_existing(&surface, 3 * FT, 2 * FT), 0);
	drop_is(surface_finished(&surface, 3 * FT, 2 * FT), 0);
	drop_is(surface_formation(&surface, 3 * FT, 2 * FT, 6 * IN), 6);
}
END_TEST

START_TEST(without_a_finish_the_ground_is_finished_as_it_is)
{
	struct surface surface = surface_with("", LEVELS);

	ck_assert(surface.has_levels && !surface.has_finish && !surface_is_graded(&surface));
	drop_is(surface_existing(&surface, 4 * FT, 0), 0.5);
	drop_is(surface_finished(&surface, 12 * FT, 4 * FT), 2);
	drop_is(surface_formation(&surface, 12 * FT, 4 * FT, 6 * IN), 8);
}
END_TEST

START_TEST(a_level_alone_is_level_ground)
{
	struct surface surface = surface_with("", LEVELS "finish 3,3 2 in\n");

	ck_assert(surface_is_graded(&surface));
	drop_is(surface_finished(&surface, 0, 0), 2);
	drop_is(surface_finished(&surface, 16 * FT, 8 * FT), 2);
	drop_is(surface_existing(&surface, 16 * FT, 8 * FT), 3);
	drop_is(surface_formation(&surface, 0, 0, 4 * IN), 6);
}
END_TEST

START_TEST(ground_nobody_measured_is_as_the_finished_one)
{
	struct surface surface = surface_with("", "finish 0,0 2 in\nfall 5 % towards 90\n");

	ck_assert(!surface.has_levels && surface.has_finish && !surface_is_graded(&surface));
	drop_is(surface_existing(&surface, 10 * FT, 0), 8);
	drop_is(surface_finished(&surface, 10 * FT, 0), 8);
}
END_TEST

/* 1 % over 10 ft is 1.2 in. */
START_TEST(it_falls_towards_a_bearing_by_the_way_that_goes_there)
{
	struct surface surface = surface_with("", "finish 2,2 1 in\nfall 1 % towards 90\n");

	drop_is(surface_finished(&surface, 12 * FT, 2 * FT), 2.2);
	drop_is(surface_finished(&surface, 12 * FT, 8 * FT), 2.2);
	drop_is(surface_finished(&surface, 0, 0), 1 - 0.24);
	surface = surface_with("", "finish 2,2 1 in\nfall 1 % towards 0\n");
	drop_is(surface_finished(&surface, 2 * FT, 0), 1.24);
	surface = surface_with("", "finish 2,2 1 in\nfall 1 % towards 180\n");
	drop_is(surface_finished(&surface, 9 * FT, 7 * FT), 1.6);
	surface = surface_with("", "finish 2,2 1 in\nfall 1 % towards 270\n");
	drop_is(surface_finished(&surface, 12 * FT, 0), -0.2);
	/* north-east: 3 ft right and 3 ft up are 3 ft x root of 2 that way */
	surface = surface_with("", "finish 2,4 1 in\nfall 1 % towards 45\n");
	drop_is(surface_finished(&surface, 5 * FT, FT), 1 + 0.36 * sqrt(2));
}
END_TEST

START_TEST(a_bearing_is_from_true_north_wherever_the_plans_top_is)
{
	/* its top is east, so east is up, south right */
	struct surface surface = surface_with("north 90\n",
		"finish 0,8 1 in\nfall 1 % towards 90\n");

	drop_is(surface_finished(&surface, 5 * FT, 3 * FT), 1.6);
	surface = surface_with("north 90\n", "finish 0,8 1 in\nfall 1 % towards 180\n");
	drop_is(surface_finished(&surface, 5 * FT, 3 * FT), 1.6);
	surface = surface_with("north 350\n", "finish 0,8 1 in\nfall 1 % towards 80\n");
	drop_is(surface_finished(&surface, 5 * FT, 3 * FT), 1.6);
}
END_TEST

START_TEST(it_falls_away_from_the_nearest_point_of_the_house)
{
	struct surface surface = surface_with("", HOUSE "finish 8,0 1 in\nfall 5 % away\n");

	/* before the house 5 % of 1 ft is 0.6 in */
	drop_is(surface_finished(&surface, 5 * FT, 0), 1);
	drop_is(surface_finished(&surface, 11 * FT, 3 * FT), 2.8);
	/* beside it: 4 ft across and 3 ft down from its corner are 5 ft, 3 more than 2 */
	drop_is(surface_finished(&surface, 16 * FT, FT), 2.8);
	drop_is(surface_finished(&surface, 8 * FT, -5 * FT), 1 - 1.2);
}
END_TEST

START_TEST(of_several_houses_the_nearest_counts)
{
	struct surface surface = surface_with("", HOUSE
		"house \"Shed\"\n  from 6,10 to 8,12\nfinish 8,0 1 in\nfall 5 % away\n");
	struct from_house from;

	drop_is(surface_finished(&surface, 7 * FT, 8 * FT), 1);
	drop_is(surface_finished(&surface, 7 * FT, 7 * FT), 1.6);
	ck_assert(surface_from_house(&surface, 7 * FT, 7 * FT, &from));
	ck_assert_int_eq(from.house, 1);
	ck_assert_int_eq(from.distance, 3 * FT);
	ck_assert(from.right == 0 && from.down == -1);
	ck_assert(surface_from_house(&surface, 16 * FT, FT, &from));
	ck_assert_int_eq(from.house, 0);
	ck_assert_int_eq(from.distance, 5 * FT);
	ck_assert_double_eq_tol(from.right, 0.8, 1e-12);
	ck_assert_double_eq_tol(from.down, 0.6, 1e-12);
	ck_assert(surface_from_house(&surface, 7 * FT, 11 * FT, &from));
	ck_assert(from.distance == 0 && from.right == 0 && from.down == 0);
}
END_TEST

START_TEST(of_houses_as_near_the_first_counts)
{
	struct surface surface = surface_with("", "house \"Right\"\n  from 10,0 to 12,4\n"
		"house \"Left\"\n  from 0,0 to 2,4\nfinish 0,0 0 in\nfall 5 % away\n");
	struct from_house from;

	ck_assert(surface_from_house(&surface, 6 * FT, FT, &from));
	ck_assert_int_eq(from.house, 0);
	ck_assert(from.distance == 4 * FT && from.right == -1);
}
END_TEST

START_TEST(without_a_level_it_starts_as_the_ground_at_the_datum_or_house)
{
	struct surface surface = surface_with("", LEVELS "fall 1 % towards 90\n");

	drop_is(surface_finished(&surface, 0, 0), 0);
	drop_is(surface_finished(&surface, 10 * FT, 0), 1.2);
	/* before the middle of the house, 8,0, the ground is 1 in down */
	surface = surface_with("", LEVELS HOUSE "fall 5 % away\n");
	drop_is(surface_finished(&surface, 8 * FT, 0), 1);
	drop_is(surface_finished(&surface, 8 * FT, 5 * FT), 4);
	/* of one that reaches past the plan the part beside it: 12,0, where it is 2 in down */
	surface = surface_with("", LEVELS "house \"Barn\"\n  from 8,-9 to 40,0\nfall 5 % away\n");
	drop_is(surface_finished(&surface, 12 * FT, 0), 2);
	/* at a corner of the plan: 16,8 */
	surface = surface_with("", LEVELS "house \"Barn\"\n  from 20,11 to 40,19\nfall 5 % away\n");
	drop_is(surface_finished(&surface, 16 * FT, 8 * FT), 3);
	ck_assert(surface_is_told(&surface) && surface_is_graded(&surface));
	ck_assert(surface.right == 16 * FT && surface.down == 8 * FT);
	surface = surface_with("", LEVELS "house \"Barn\"\n  from -9,-7 to -2,-3\nfall 5 % away\n");
	ck_assert(surface.right == 0 && surface.down == 0);
	/* before a house across all of it the middle */
	surface = surface_with("", LEVELS "house \"Barn\"\n  from -9,-7 to 40,0\nfall 5 % away\n");
	ck_assert(surface.right == 8 * FT && surface.down == 0);
	/* where the ground is not told either, at the string itself */
	surface = surface_with("", "fall 1 % towards 90\n");
	ck_assert_int_eq(surface_finished(&surface, 0, 0), 0);
	ck_assert(surface_is_told(&surface) && !surface_is_graded(&surface));
}
END_TEST

START_TEST(a_fall_away_from_no_house_does_not_count)
{
	struct surface surface = surface_with("", LEVELS "fall 5 % away\n");
	struct from_house from;

	ck_assert(!surface.has_finish && !surface_is_graded(&surface));
	drop_is(surface_finished(&surface, 16 * FT, 0), 3);
	ck_assert(!surface_from_house(&surface, 0, 0, &from));
	surface = surface_with("", LEVELS "finish 1,1 2 in\nfall 5 % away\n");
	ck_assert(surface.has_finish && !surface.is_away);
	drop_is(surface_finished(&surface, 16 * FT, 0), 2);
}
END_TEST

/* Masonry and Concrete (McGraw-Hill): walks drain by 1/4 in per ft, and a patio of 12 ft falls
 * 3 in. */
START_TEST(a_patio_of_12_ft_that_falls_a_quarter_inch_per_foot_falls_3_in)
{
	struct surface surface = surface_with("",
		"house \"Home\"\n  from 0,-9 to 16,0\nfinish 0,0 0 in\nfall 2.083333 % away\n");

	ck_assert_double_eq_tol((double)surface_finished(&surface, 4 * FT, 12 * FT) / (double)IN,
		3, 1e-5);
	ck_assert_double_eq_tol((double)surface_fall(&surface, 4 * FT, 4 * FT, 0, 1) / 1e6,
		25.0 / 12, 1e-5);
}
END_TEST

START_TEST(a_fall_is_asked_of_a_spot_and_a_direction)
{
	struct surface surface = surface_with("", "finish 0,0 0 in\nfall 2 % towards 90\n");

	ck_assert_int_eq(surface_fall(&surface, FT, FT, 1, 0), 2000000);
	ck_assert_int_eq(surface_fall(&surface, FT, FT, -1, 0), -2000000);
	ck_assert_int_eq(surface_fall(&surface, FT, FT, 0, 1), 0);
	ck_assert_int_le(llabs(surface_fall(&surface, FT, FT, 0.6, 0.8) - 1200000), 2);
	/* as the ground is: 1 in over the first 8 ft */
	surface = surface_with("", LEVELS);
	ck_assert_int_le(llabs(surface_fall(&surface, 3 * FT, 0, 1, 0) -
		llround(1e8 / 96)), 2);
}
END_TEST

/* ---- Along a line ---------------------------------------------------------------------------- */

START_TEST(a_line_has_its_highest_and_lowest_where_the_ground_bends)
{
	struct surface surface = surface_with("", "levels 4 ft\n"
		"  2 in, 1 in, 3 in, 5 in, 2 in\n  2 in, 1 in, 3 in, 5 in, 2 in\n"
		"  9 in, 8 in, 3 in, 5 in, 2 in\n");
	struct surface_span span = surface_along(&surface, FT, 0, 15 * FT, 0);

	drop_is(span.highest, 1);
	drop_is(span.lowest, 5);
	span = surface_along(&surface, 0, 8 * FT, 0, 2 * FT);
	drop_is(span.highest, 2);
	drop_is(span.lowest, 9);
}
END_TEST

START_TEST(past_a_house_a_line_is_highest_where_it_is_nearest)
{
	struct surface surface = surface_with("", HOUSE "finish 8,0 1 in\nfall 5 % away\n");
	struct surface_span span = surface_along(&surface, 16 * FT, FT, 0, FT);

	drop_is(span.highest, 1.6);
	drop_is(span.lowest, 2.8);
}
END_TEST

/* The second, 2 ft from the line, is nearer to it than the first. */
START_TEST(past_several_houses_a_line_is_highest_where_it_is_nearest_to_one)
{
	struct surface surface = surface_with("", "house \"Home\"\n  from -40,-9 to -30,9\n"
		"house \"Shed\"\n  from 6,-3 to 8,-1\nfinish 8,0 1 in\nfall 5 % away\n");
	struct surface_span span = surface_along(&surface, 0, FT, 16 * FT, FT);

	drop_is(span.highest, 1.6);
	span = surface_along(&surface, 7 * FT, 8 * FT, 7 * FT, 0);
	drop_is(span.highest, 1);
	drop_is(span.lowest, 5.8);
}
END_TEST

static void plot_of(struct random *random)
{
	static const char *const ways[] = { "", "finish 3,5 1 m\n", "fall 2.5 % towards 33.5\n",
		"finish 16,0 20 in\nfall 7 % towards 270\n",
		"finish 1,1 10 in\nfall 3 % away\n" };
	char lines[512];
	int x = random_between(random, -9, 20), y = random_between(random, -9, 12), n;

	n = snprintf(lines, sizeof lines, "levels 3 ft\n");
	for (int row = 0; row < 4; row++) {
		for (int i = 0; i < 7; i++)
			n += snprintf(lines + n, sizeof lines - (size_t)n, "%s%d mm",
				i ? ", " : "  ", random_below(random, 1000));
		n += snprintf(lines + n, sizeof lines - (size_t)n, "\n");
	}
	n += snprintf(lines + n, sizeof lines - (size_t)n,
		"house \"A\"\n  from %d,%d to %d,%d\n", x, y, x + random_between(random, 1, 9),
		y + random_between(random, 1, 9));
	snprintf(lines + n, sizeof lines - (size_t)n, "%s", ways[random_below(random, 5)]);
	surface_with("", lines);
}

START_TEST(no_spot_of_a_line_is_higher_or_lower_than_it_says)
{
	struct random random = { 21 };

	for (int i = 0; i < CASES; i++) {
		struct surface surface;
		nm x = random_between(&random, -5, 25) * FT / 2;
		nm y = random_between(&random, -5, 25) * FT / 3, to_x = x, to_y = y;
		struct surface_span span;

		plot_of(&random);
		surface = surface_of(&plot);
		*(i % 2 ? &to_x : &to_y) += random_between(&random, -30, 30) * FT / 4;
		span = surface_along(&surface, x, y, to_x, to_y);
		for (int k = 0; k <= 60; k++) {
			nm drop = surface_finished(&surface, x + (to_x - x) / 60 * k,
				y + (to_y - y) / 60 * k);

			ck_assert_msg(drop >= span.highest - 1 && drop <= span.lowest + 1,
				"case %d: %jd", i, (intmax_t)drop);
		}
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("surface");
	TCase *ground = suite_case(suite, "ground");
	TCase *line = suite_case(suite, "line");

	tcase_add_checked_fixture(ground, setup, teardown);
	tcase_add_test(ground, a_plot_without_levels_is_level_ground);
	tcase_add_test(ground, without_a_finish_the_ground_is_finished_as_it_is);
	tcase_add_test(ground, a_level_alone_is_level_ground);
	tcase_add_test(ground, ground_nobody_measured_is_as_the_finished_one);
	tcase_add_test(ground, it_falls_towards_a_bearing_by_the_way_that_goes_there);
	tcase_add_test(ground, a_bearing_is_from_true_north_wherever_the_plans_top_is);
	tcase_add_test(ground, it_falls_away_from_the_nearest_point_of_the_house);
	tcase_add_test(ground, of_several_houses_the_nearest_counts);
	tcase_add_test(ground, of_houses_as_near_the_first_counts);
	tcase_add_test(ground, without_a_level_it_starts_as_the_ground_at_the_datum_or_house);
	tcase_add_test(ground, a_fall_away_from_no_house_does_not_count);
	tcase_add_test(ground, a_patio_of_12_ft_that_falls_a_quarter_inch_per_foot_falls_3_in);
	tcase_add_test(ground, a_fall_is_asked_of_a_spot_and_a_direction);
	tcase_add_checked_fixture(line, setup, teardown);
	tcase_add_test(line, a_line_has_its_highest_and_lowest_where_the_ground_bends);
	tcase_add_test(line, past_a_house_a_line_is_highest_where_it_is_nearest);
	tcase_add_test(line,
		past_several_houses_a_line_is_highest_where_it_is_nearest_to_one);
	tcase_add_test(line, no_spot_of_a_line_is_higher_or_lower_than_it_says);
	return suite;
}
