/* Raised beds that would not do on the ground: each limit, and just inside it. */
#include "takeoff/ground/bed_snags.h"

#include "support/garden.h"
#include "support/runner.h"

#include <stdio.h>
#include <string.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static void set(enum attribute attribute, const char *value)
{
	plot_set(&garden.plot, 'b', attribute, value);
}

static void allow(enum attribute attribute, const char *value)
{
	plot_set(&garden.plot, 0, attribute, value);
}

/* Of blocks 16 x 8 x 6 in, as all here where nothing else is said. */
static void bed_of_8_by_4_ft(void)
{
	garden_rectangle(&garden, 'b', 8, 4);
}

static bool has(enum snag_code code)
{
	garden_count(&garden);
	return garden_snag(&garden, code, 0) != NULL;
}

static void says(enum snag_code code, const char *sentence)
{
	ck_assert_str_eq(garden_sentence(&garden, garden_snag(&garden, code, 0)), sentence);
}

START_TEST(a_bed_as_it_is_offered_has_no_snag)
{
	static const char *const units[] = { "imperial", "metric" };

	for (int i = 0; i < 2; i++) {
		/* With ground to stand on. */
		garden_rows(&garden, (const char *const[]){ "..........", ".bbbbbbbb.",
			".bbbbbbbb.", ".bbbbbbbb.", ".bbbbbbbb.", "..........", NULL });
		allow(HEAD_UNITS, units[i]);
		garden_count(&garden);
		ck_assert_uint_eq(garden.takeoff.snags.count, 0);
		if (i == 0)
			garden_fini(&garden);
	}
}
END_TEST

/* A tenth of the height below ground: common practice, no published source. */
static const struct { const char *embed; bool is_snag; } embeds[] = {
	{ "2 in", false }, { "1 63/64 in", true }, { "0 in", true }, { "3 in", false },
};

START_TEST(less_than_a_tenth_of_the_wall_below_ground_is_a_snag)
{
	bed_of_8_by_4_ft();
	set(BED_BLOCK, "16 in x 8 in x 5 in");
	set(BED_COURSES, "4");
	set(BED_EMBED, embeds[_i].embed);
	ck_assert_int_eq(has(SNAG_WALL_EMBED), embeds[_i].is_snag);
}
END_TEST

START_TEST(an_embed_that_is_not_set_is_always_deep_enough)
{
	bed_of_8_by_4_ft();
	for (int courses = 1; courses <= 40; courses++) {
		char words[8];

		snprintf(words, sizeof words, "%d", courses);
		set(BED_COURSES, words);
		ck_assert(!has(SNAG_WALL_EMBED));
	}
}
END_TEST

/* Over 24 in above ground: common practice, no published source. Over 4 ft from the footing's
 * bottom: International Code Council, International Residential Code, 2021, R105.2. */
static const struct { const char *courses, *base, *cap, *embed; bool care, permit; } heights[] = {
	{ "4", "4 in", "none", "0 in", false, false },
	{ "4", "24 in", "none", "0 in", false, false },
	{ "4", "24 1/64 in", "none", "0 in", false, true },
	{ "4", "22 in", "16 in x 8 in x 2 in", "2 in", false, false },
	{ "4", "22 in", "16 in x 8 in x 2 in", "1 63/64 in", true, false },
	{ "4", "23 in", "16 in x 8 in x 2 in", "2 in", false, true },
	{ "5", "4 in", "none", "6 in", false, false },
	{ "5", "4 in", "none", "5 63/64 in", true, false },
	{ "8", "0 in", "none", "6 in", true, false },
	{ "8", "1/64 in", "none", "6 in", true, true },
};

START_TEST(a_high_wall_says_whether_it_asks_for_a_word_or_a_permit)
{
	bed_of_8_by_4_ft();
	set(BED_COURSES, heights[_i].courses);
	set(BED_BASE, heights[_i].base);
	set(BED_CAP, heights[_i].cap);
	set(BED_EMBED, heights[_i].embed);
	ck_assert_int_eq(has(SNAG_WALL_HIGH), heights[_i].care || heights[_i].permit);
	if (!heights[_i].care && !heights[_i].permit)
		return;
	const char *sentence = garden_sentence(&garden, garden_snag(&garden, SNAG_WALL_HIGH, 0));

	ck_assert_int_eq(strstr(sentence, "engineer") != NULL, heights[_i].care);
	ck_assert_int_eq(strstr(sentence, "permit (IRC R105.2") != NULL, heights[_i].permit);
}
END_TEST

START_TEST(heights_that_ask_for_care_can_be_set)
{
	bed_of_8_by_4_ft(); /* 18 in less 2 in above ground, 22 in from the base's bottom */
	allow(ALLOW_WALL_ABOVE, "16 in");
	allow(ALLOW_WALL_FOOTING, "22 in");
	ck_assert(!has(SNAG_WALL_HIGH));
	allow(ALLOW_WALL_ABOVE, "15 63/64 in");
	ck_assert(has(SNAG_WALL_HIGH));
	allow(ALLOW_WALL_ABOVE, "16 in");
	allow(ALLOW_WALL_FOOTING, "21 63/64 in");
	ck_assert(has(SNAG_WALL_HIGH));
}
END_TEST

/* 18 in less 2 in of mulch and 2 in of embed leave 14 in for freeboard and soil. Common practice,
 * no published source. */
START_TEST(less_than_8_in_of_soil_is_a_snag)
{
	bed_of_8_by_4_ft();
	set(BED_FREEBOARD, "6 in");
	ck_assert(!has(SNAG_SOIL_THIN));
	set(BED_FREEBOARD, "6 1/16 in");
	ck_assert(has(SNAG_SOIL_THIN));
	says(SNAG_SOIL_THIN, "Only 7 15/16 in of soil, less than 8 in: little grows in that.");
	allow(ALLOW_SOIL_LEAST, "7 15/16 in");
	ck_assert(!has(SNAG_SOIL_THIN));
}
END_TEST

START_TEST(a_bed_without_any_soil_is_not_called_thin_as_well)
{
	bed_of_8_by_4_ft();
	set(BED_FREEBOARD, "14 in");
	ck_assert(has(SNAG_FILL_NONE));
	ck_assert(!has(SNAG_SOIL_THIN));
	set(BED_BUILD, "level");
	ck_assert(!has(SNAG_SOIL_THIN));
}
END_TEST

/* 80 x 32 in are inside, 70 x 22 in without 5 in along the wall: 39.8 % of it is base. 1/16 in more
 * takes 40.3 %. Common practice, no published source. */
START_TEST(a_floor_of_over_40_percent_base_is_a_snag)
{
	bed_of_8_by_4_ft();
	set(BED_REACH_IN, "5 in");
	ck_assert(!has(SNAG_FLOOR_STONE));
	set(BED_REACH_IN, "5 1/16 in");
	ck_assert(has(SNAG_FLOOR_STONE));
	says(SNAG_FLOOR_STONE, "The wall's base lies under 40.3 % of the ground between the walls, "
		"more than 40.0 %: roots stop there.");
	allow(ALLOW_FLOOR_STONE, "41 %");
	ck_assert(!has(SNAG_FLOOR_STONE));
}
END_TEST

START_TEST(a_floor_that_is_dug_out_may_be_stony_too_but_not_one_meant_to_be_of_stone)
{
	bed_of_8_by_4_ft();
	set(BED_REACH_IN, "8 in");
	set(BED_INSIDE, "filled");
	ck_assert(has(SNAG_FLOOR_STONE));
	set(BED_INSIDE, "base");
	ck_assert(!has(SNAG_FLOOR_STONE));
}
END_TEST

/* 40 in square inside, 32 in of it past 4 in along the wall: 36 %; exactly so much is allowed. */
START_TEST(just_as_much_as_is_allowed_is_no_snag)
{
	garden_rectangle(&garden, 'b', 4, 4);
	set(BED_BLOCK, "1 ft x 4 in x 6 in");
	set(BED_REACH_IN, "4 in");
	allow(ALLOW_FLOOR_STONE, "36 %");
	ck_assert(!has(SNAG_FLOOR_STONE));
	allow(ALLOW_FLOOR_STONE, "35.9 %");
	ck_assert(has(SNAG_FLOOR_STONE));
}
END_TEST

#define ROWS(table) (int)(sizeof(table) / sizeof *(table))

Suite *test_suite(void)
{
	Suite *suite = suite_create("bed snags");
	TCase *walls = suite_case(suite, "walls"), *soil = suite_case(suite, "soil");

	tcase_add_checked_fixture(walls, NULL, teardown);
	tcase_add_test(walls, a_bed_as_it_is_offered_has_no_snag);
	tcase_add_loop_test(walls, less_than_a_tenth_of_the_wall_below_ground_is_a_snag, 0,
		ROWS(embeds));
	tcase_add_test(walls, an_embed_that_is_not_set_is_always_deep_enough);
	tcase_add_loop_test(walls, a_high_wall_says_whether_it_asks_for_a_word_or_a_permit, 0,
		ROWS(heights));
	tcase_add_test(walls, heights_that_ask_for_care_can_be_set);
	tcase_add_checked_fixture(soil, NULL, teardown);
	tcase_add_test(soil, less_than_8_in_of_soil_is_a_snag);
	tcase_add_test(soil, a_bed_without_any_soil_is_not_called_thin_as_well);
	tcase_add_test(soil, a_floor_of_over_40_percent_base_is_a_snag);
	tcase_add_test(soil,
		a_floor_that_is_dug_out_may_be_stony_too_but_not_one_meant_to_be_of_stone);
	tcase_add_test(soil, just_as_much_as_is_allowed_is_no_snag);
	return suite;
}
