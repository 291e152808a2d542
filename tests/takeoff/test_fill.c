#include "support/runner.h"
#include "support/garden.h"
#include "takeoff/ground/fill.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

static const double EXACT = 1e-9;

static struct garden garden;

/* A bed of so many feet that fills the plan. */
static void bed_of_feet(int columns, int rows)
{
	garden_rectangle(&garden, 'b', columns, rows);
}

static void level_bed(int columns, int rows)
{
	bed_of_feet(columns, rows);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
}

static void set(enum attribute attribute, const char *value)
{
	plot_set(&garden.plot, 'b', attribute, value);
}

static void set_inches(enum attribute attribute, int inches)
{
	char value[16];

	snprintf(value, sizeof value, "%d in", inches);
	set(attribute, value);
}

static const struct fill *only_fill(void)
{
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fills.count, 1);
	return &garden.takeoff.fills.list[0];
}

static void teardown(void)
{
	garden_fini(&garden);
}

/* ---- Published values ------------------------------------------------------------------------ */

/* By arithmetic: a wall of 8 in blocks leaves 6 2/3 x 2 2/3 ft inside 8 x 4 ft. */
START_TEST(a_4_by_8_ft_bed_in_8_in_block_has_17_78_sq_ft_inside_and_takes_17_78_cu_ft_a_foot)
{
	bed_of_feet(8, 4);
	set(BED_INSIDE, "filled");
	set(BED_FREEBOARD, "4 in");
	set(BED_MULCH, "2 in");
	const struct fill *fill = only_fill();

	ck_assert_int_eq(fill->soil_depth, 12 * NM_PER_INCH);
	ck_assert_double_eq_tol(garden.takeoff.walls.list[0].inner_area / SQUARE_FOOT, 17.78,
		0.005);
	ck_assert_double_eq_tol(fill->soil / CUBIC_FOOT, 17.78, 0.005);
	ck_assert_double_eq_tol(fill->mulch / CUBIC_FOOT, 17.78 / 6, 0.005);
}
END_TEST

/* By arithmetic: 32 sq ft times the depth. */
static const struct { int inches; double cubic_feet; } inside_4_by_8[] = {
	{ 6, 16 }, { 12, 32 }, { 24, 64 },
};

START_TEST(ground_of_4_by_8_ft_refilled_6_12_and_24_in_deep_takes_16_32_and_64_cu_ft)
{
	level_bed(8, 4);
	set(BED_REPLACE, "yes");
	set_inches(BED_PREPARE, inside_4_by_8[_i].inches);

	ck_assert_double_eq_tol(only_fill()->soil / CUBIC_FOOT, inside_4_by_8[_i].cubic_feet,
		EXACT);
}
END_TEST

/* Typical supplier data: 60 % topsoil, 30 % compost, 10 % soilless mix; 15 cu ft in 3 x 6 ft, 10
 * in. */
START_TEST(a_3_by_6_ft_bed_filled_10_in_with_60_30_10_takes_9_and_4_5_and_1_5_cu_ft)
{
	static const struct { const char *name; double volume; } parts[] = {
		{ "topsoil", 9 }, { "compost", 4.5 }, { "soilless", 1.5 },
	};

	level_bed(3, 6);
	set(BED_REPLACE, "yes");
	set(BED_PREPARE, "10 in");
	set(BED_MIX, "topsoil 60, compost 30, soilless 10");
	plot_set(&garden.plot, 0, ALLOW_SETTLEMENT, "0 %");
	const struct fill *fill = only_fill();

	ck_assert_int_eq(fill->part_count, 3);
	for (int i = 0; i < 3; i++) {
		ck_assert_str_eq(fill->parts[i].name, parts[i].name);
		ck_assert_double_eq_tol(fill->parts[i].volume / CUBIC_FOOT, parts[i].volume, EXACT);
	}
}
END_TEST

/* By arithmetic 1 cu yd covers 324/d sq ft at d inches. */
static const double covered[] = { 324, 162, 108, 81, 64.8, 54 };

START_TEST(a_cubic_yard_of_mulch_covers_324_sq_ft_over_its_inches)
{
	level_bed(18, 18);
	set_inches(BED_MULCH, _i + 1);

	ck_assert_double_eq_tol(324 / (only_fill()->mulch / CUBIC_YARD), covered[_i], EXACT);
}
END_TEST

/* University of Maine Cooperative Extension, Mulch, Soil, and Compost: Amounts Needed, its year not
 * noted: cubic yards by square feet and inches, rounded there to half or whole yards. So they are
 * off by less than a half, and small ones by less than a twentieth. */
static const int maine_inches[] = { 2, 3, 4, 6, 8, 12 };
static const struct { int columns, rows; double yards[6]; } maine[] = {
	{ 26, 25, { 4, 6, 8, 12, 16, 24 } },
	{ 34, 25, { 5, 8, 10.5, 15.5, 21, 31 } },
	{ 38, 25, { 6, 9, 12, 17.5, 23, 35 } },
	{ 40, 25, { 6, 9, 12, 18.5, 25, 37 } },
};

START_TEST(mulch_agrees_with_the_extension_table_within_half_a_yard)
{
	for (int i = 0; i < 6; i++) {
		double yards = maine[_i].yards[i];

		level_bed(maine[_i].columns, maine[_i].rows);
		set_inches(BED_MULCH, maine_inches[i]);
		ck_assert_double_eq_tol(only_fill()->mulch / CUBIC_YARD, yards,
			fmin(0.5, yards / 20));
		if (i < 5)
			garden_fini(&garden);
	}
}
END_TEST

/* By arithmetic 20 x 30 ft at 3 in are 150 cu ft, 5.56 cu yd. */
START_TEST(twenty_by_thirty_feet_at_3_in_is_150_cu_ft)
{
	level_bed(30, 20);
	set(BED_MULCH, "3 in");
	const struct fill *fill = only_fill();

	ck_assert_double_eq_tol(fill->mulch / CUBIC_FOOT, 150, 1e-6);
	ck_assert_double_eq_tol(fill->mulch / CUBIC_YARD, 5.56, 0.005);
}
END_TEST

/* Cornell Waste Management Institute (publisher from memory), Cornell Composting, year not noted:
 * 350 x 200 ft at 2 in is 434 cu yd by a factor rounded to 0.0031. The exact 1/324 is 0.44 %
 * less. */
START_TEST(a_field_of_350_by_200_ft_at_2_in_is_434_cu_yd_but_for_the_rounded_factor)
{
	level_bed(350, 200);
	set(BED_AMEND, "2 in");
	double yards = only_fill()->soil / CUBIC_YARD;

	ck_assert_double_eq_tol(yards * 0.0031 * 324, 434, 0.01);
}
END_TEST

/* ---- Depths ---------------------------------------------------------------------------------- */

/* 18 in of wall less 1 1/2 in freeboard, 2 in mulch and, where undug, 2 in embed. */
static const struct { const char *inside; int half_inches; } insides[] = {
	{ "undug", 25 }, { "filled", 29 }, { "base", 29 },
};

START_TEST(soil_starts_at_the_ground_where_undug_and_at_the_base_where_filled)
{
	bed_of_feet(8, 4);
	set(BED_INSIDE, insides[_i].inside);
	ck_assert_int_eq(only_fill()->soil_depth, insides[_i].half_inches * NM_PER_INCH / 2);
}
END_TEST

/* ---- Over the base inside the wall ----------------------------------------------------------- */

static void check_soil(const struct fill *fill, double square_inches, double inches,
	double cubic_feet)
{
	ck_assert_double_eq_tol(fill->strip_area / SQUARE_FOOT, square_inches / 144, EXACT);
	ck_assert_double_eq_tol((double)fill->strip_depth, inches * (double)NM_PER_INCH, EXACT);
	ck_assert_double_eq_tol(fill->soil / CUBIC_FOOT, cubic_feet, EXACT);
}

/* Blocks 8 in deep leave 80 x 32 in inside 8 x 4 ft; base 2 in past the wall leaves 76 x 28 in of
 * them: 432 sq in. There soil is 2 in deeper, by the embed, than the 12 1/2 in above undug ground.
 * */
START_TEST(soil_goes_down_to_the_base_past_the_wall)
{
	bed_of_feet(8, 4);
	check_soil(only_fill(), 432, 2, (80 * 32 * 12.5 + 432 * 2) / 1728);
	ck_assert_int_eq(only_fill()->soil_depth, 25 * NM_PER_INCH / 2);
}
END_TEST

/* The same on ground that falls 1 in a foot to the right: on the mean it lies 4 in higher than
 * where it is lowest, so soil is 4 in less deep on it, and as much deeper over the base. */
START_TEST(on_ground_that_falls_soil_is_as_deep_as_on_the_mean)
{
	bed_of_feet(8, 4);
	plot_add_lines(&garden.plot, "levels 4 ft\n  0 in, 4 in, 8 in\n  0 in, 4 in, 8 in\n");
	check_soil(only_fill(), 432, 6, (80 * 32 * 8.5 + 432 * 6) / 1728);
	ck_assert_int_eq(only_fill()->soil_depth, 17 * NM_PER_INCH / 2);
	ck_assert_int_eq(only_fill()->deepest, 25 * NM_PER_INCH / 2);
	/* The liner goes as low as the base all round: 14 1/2 in and what is turned under. */
	ck_assert_int_eq(garden.takeoff.liners.list[0].height, 41 * NM_PER_INCH / 2);
	/* What is filled from the base's top does not mind. */
	set(BED_INSIDE, "filled");
	check_soil(only_fill(), 0, 0, 80 * 32 * 14.5 / 1728);
	ck_assert_int_eq(only_fill()->deepest, 0);
}
END_TEST

/* An L of 9 x 5 ft less 4 x 2 ft, 8 in blocks: 20.11 sq ft inside, of which 6 in along the wall are
 * 10.33 sq ft; 12 1/2 in of soil and 2 in there are 22.7 cu ft. */
START_TEST(round_a_reflex_corner_too)
{
	garden_rows(&garden, (const char *[]){ "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb", "bbbbb....",
		"bbbbb....", NULL });
	set(BED_REACH_IN, "6 in");
	const struct fill *fill = only_fill();

	check_soil(fill, 10.0 * 144 + 48, 2, (2896 * 12.5 + 1488 * 2) / 1728);
	ck_assert_double_eq_tol(garden.takeoff.walls.list[0].inner_area / SQUARE_FOOT, 20.11,
		0.005);
	ck_assert_double_eq_tol(fill->strip_area / SQUARE_FOOT, 10.33, 0.005);
	ck_assert_double_eq_tol(fill->soil / CUBIC_FOOT, 22.7, 0.05);
}
END_TEST

/* Filled from the base's top everywhere: 80 x 32 x 14 1/2 in. */
START_TEST(what_is_dug_out_all_over_is_no_deeper_there)
{
	bed_of_feet(8, 4);
	set(BED_INSIDE, "filled");
	check_soil(only_fill(), 0, 0, 80 * 32 * 14.5 / 1728);
	set(BED_INSIDE, "base");
	check_soil(only_fill(), 0, 0, 80 * 32 * 14.5 / 1728);
}
END_TEST

START_TEST(without_a_reach_inwards_there_is_no_strip)
{
	bed_of_feet(8, 4);
	set(BED_REACH_IN, "0 in");
	check_soil(only_fill(), 0, 0, 80 * 32 * 12.5 / 1728);
}
END_TEST

/* 3 ft wide, 1 ft 8 in inside: 1 ft past both walls takes all of it. */
START_TEST(a_base_all_over_is_counted_once)
{
	bed_of_feet(8, 3);
	set(BED_REACH_IN, "1 ft");
	check_soil(only_fill(), 80 * 20, 2, 80 * 20 * 14.5 / 1728);
}
END_TEST

/* Walls 4 in deep, 4 ft square beds side by side: the left one's base reaches 6 in past it, so 2 in
 * past the neighbour's wall, along 40 in. */
START_TEST(a_neighbours_base_past_the_wall_counts_as_well)
{
	garden_rows(&garden, (const char *[]){ "aaaabbbb", "aaaabbbb", "aaaabbbb", "aaaabbbb",
		NULL });
	for (const char *letter = "ab"; *letter; letter++) {
		plot_set(&garden.plot, *letter, BED_BLOCK, "1 ft x 4 in x 4 in");
		plot_set(&garden.plot, *letter, BED_COURSES, "4");
		plot_set(&garden.plot, *letter, BED_REACH_IN, "0 in");
	}
	set(BED_REACH, "0 in");
	garden_count(&garden);
	const struct fill *fills = garden.takeoff.fills.list;

	ck_assert_int_eq(garden.takeoff.fills.count, 2);
	/* 16 in less 1 1/2, 2 and 2 in. */
	check_soil(&fills[0], 0, 0, 40 * 40 * 10.5 / 1728);
	check_soil(&fills[1], 80, 2, (40 * 40 * 10.5 + 80 * 2) / 1728);
}
END_TEST

/* ---- Parts ----------------------------------------------------------------------------------- */

START_TEST(settlement_is_ordered_on_top_and_shared_by_the_parts)
{
	bed_of_feet(8, 4);
	set(BED_MIX, "topsoil 5, compost 4, sharp-sand 1");
	const struct fill *fill = only_fill();

	ck_assert_double_eq_tol(fill->order, fill->soil * 1.15, EXACT);
	ck_assert_int_eq(fill->part_count, 3);
	ck_assert_double_eq_tol(fill->parts[0].volume, fill->order * 0.5, EXACT);
	ck_assert_double_eq_tol(fill->parts[1].volume, fill->order * 0.4, EXACT);
	ck_assert_double_eq_tol(fill->parts[2].volume, fill->order * 0.1, EXACT);
}
END_TEST

/* Common practice, no published source. */
static const struct { const char *mix; double share; } settling[] = {
	{ "topsoil 1", 0.15 }, { "topsoil 3, compost 1", 0.15 },
	{ "topsoil 501, compost 499", 0.15 }, { "topsoil 1, compost 1", 0.2 },
	{ "compost 2, topsoil 1, grit 1", 0.2 }, { "compost 1", 0.2 },
	{ "leaf-compost 1", 0.15 },
};

START_TEST(a_mix_settles_by_15_or_from_half_compost_on_by_20_percent)
{
	bed_of_feet(8, 4);
	set(BED_MIX, settling[_i].mix);
	const struct fill *fill = only_fill();

	ck_assert_double_eq_tol(fill->order, fill->soil * (1 + settling[_i].share), EXACT);
	plot_set(&garden.plot, 0, ALLOW_SETTLEMENT, "12 %");
	fill = only_fill();
	ck_assert_double_eq_tol(fill->order, fill->soil * 1.12, EXACT);
}
END_TEST

START_TEST(the_note_says_the_percentage_where_it_is_one)
{
	garden_rows(&garden, (const char *[]){ "aaaa.bbbb", "aaaa.bbbb", "aaaa.bbbb", "aaaa.bbbb",
		NULL });
	garden_count(&garden);
	ck_assert_str_eq(garden_note(&garden, garden_item(&garden, "soil.topsoil")),
		"20 % settlement");
	set(BED_MIX, "topsoil 3, sharp-sand 1");
	garden_count(&garden);
	ck_assert_str_eq(garden_note(&garden, garden_item(&garden, "soil.topsoil")),
		"settlement by the mix");
	ck_assert_str_eq(garden_note(&garden, garden_item(&garden, "soil.compost")),
		"20 % settlement");
	ck_assert_str_eq(garden_note(&garden, garden_item(&garden, "soil.sharp-sand")),
		"15 % settlement");
}
END_TEST

START_TEST(an_amendment_leaves_topsoil_out_and_does_not_settle)
{
	level_bed(6, 3);
	set(BED_MIX, "compost 3, topsoil 5, grit 1");
	set(BED_AMEND, "4 in");
	const struct fill *fill = only_fill();

	ck_assert_int_eq(fill->soil_depth, 4 * NM_PER_INCH);
	ck_assert_double_eq_tol(fill->soil / CUBIC_FOOT, 6, EXACT);
	ck_assert_double_eq_tol(fill->order, fill->soil, EXACT);
	ck_assert_int_eq(fill->part_count, 2);
	ck_assert_str_eq(fill->parts[0].name, "compost");
	ck_assert_double_eq_tol(fill->parts[0].volume / CUBIC_FOOT, 4.5, EXACT);
	ck_assert_str_eq(fill->parts[1].name, "grit");
	ck_assert_double_eq_tol(fill->parts[1].volume / CUBIC_FOOT, 1.5, EXACT);
}
END_TEST

START_TEST(replaced_soil_is_the_whole_mix_and_settles)
{
	level_bed(6, 3);
	set(BED_REPLACE, "yes");
	set(BED_AMEND, "4 in");
	const struct fill *fill = only_fill();

	ck_assert_int_eq(fill->way, FILL_REPLACED);
	ck_assert_int_eq(fill->soil_depth, 8 * NM_PER_INCH);
	ck_assert_double_eq_tol(fill->soil / CUBIC_FOOT, 12, EXACT);
	/* Half of it is compost. */
	ck_assert_double_eq_tol(fill->order / CUBIC_FOOT, 14.4, EXACT);
	ck_assert_int_eq(fill->part_count, 2);
	ck_assert_str_eq(fill->parts[0].name, "topsoil");
}
END_TEST

/* ---- Snags ----------------------------------------------------------------------------------- */

START_TEST(a_wall_too_low_for_soil_has_no_fill_and_says_so)
{
	bed_of_feet(8, 4);
	set(BED_COURSES, "1");
	set(BED_FREEBOARD, "2 in"); /* with 2 in of mulch and 2 in of embed: all 6 in */
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fills.count, 0);
	ck_assert(garden.takeoff.complete);
	const struct snag *snag = garden_snag(&garden, SNAG_FILL_NONE, 0);

	ck_assert_ptr_nonnull(snag);
	ck_assert_str_eq(garden_sentence(&garden, snag), "No soil fits: of the wall's 6 in "
		"the top 2 in stay free, 2 in are mulch and 2 in ground inside.");
	set(BED_FREEBOARD, "1 63/64 in");
	ck_assert_int_eq(only_fill()->soil_depth, NM_PER_64TH);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_FILL_NONE, 0));
}
END_TEST

static const struct { enum attribute attribute; const char *value, *replace; } nothing_to_dig[] = {
	{ BED_MIX, "topsoil 1", "no" }, { BED_AMEND, "0 in", "no" }, { BED_PREPARE, "0 in", "yes" },
};

START_TEST(a_level_bed_with_nothing_to_dig_in_still_gets_its_mulch)
{
	level_bed(6, 2);
	set(nothing_to_dig[_i].attribute, nothing_to_dig[_i].value);
	set(BED_REPLACE, nothing_to_dig[_i].replace);
	const struct fill *fill = only_fill();

	ck_assert_double_eq(fill->soil, 0);
	ck_assert_double_eq(fill->order, 0);
	ck_assert_double_eq_tol(fill->mulch / CUBIC_FOOT, 2, EXACT);
	ck_assert_ptr_nonnull(garden_snag(&garden, SNAG_FILL_NONE, 0));
	ck_assert_ptr_null(garden_item(&garden, "soil.topsoil"));
	ck_assert_ptr_null(garden_item(&garden, "soil.compost"));
}
END_TEST

START_TEST(a_bed_whose_wall_is_not_laid_out_has_no_fill)
{
	garden_rows(&garden, (const char *[]){ "bbbbbbbb", NULL });
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.walls.not_laid_count, 1);
	ck_assert_int_eq(garden.takeoff.fills.count, 0);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_FILL_NONE, 0));
}
END_TEST

#define ROWS(table) (int)(sizeof(table) / sizeof *(table))

Suite *test_suite(void)
{
	Suite *suite = suite_create("fill");
	TCase *published = suite_case(suite, "published values");
	TCase *depths = suite_case(suite, "depths");
	TCase *strips = suite_case(suite, "strips");
	TCase *parts = suite_case(suite, "parts");
	TCase *snags = suite_case(suite, "snags");

	tcase_add_checked_fixture(published, NULL, teardown);
	tcase_add_test(published,
		a_4_by_8_ft_bed_in_8_in_block_has_17_78_sq_ft_inside_and_takes_17_78_cu_ft_a_foot);
	tcase_add_loop_test(published,
		ground_of_4_by_8_ft_refilled_6_12_and_24_in_deep_takes_16_32_and_64_cu_ft, 0,
		ROWS(inside_4_by_8));
	tcase_add_test(published,
		a_3_by_6_ft_bed_filled_10_in_with_60_30_10_takes_9_and_4_5_and_1_5_cu_ft);
	tcase_add_loop_test(published, a_cubic_yard_of_mulch_covers_324_sq_ft_over_its_inches, 0,
		ROWS(covered));
	tcase_add_loop_test(published, mulch_agrees_with_the_extension_table_within_half_a_yard, 0,
		ROWS(maine));
	tcase_add_test(published, twenty_by_thirty_feet_at_3_in_is_150_cu_ft);
	tcase_add_test(published,
		a_field_of_350_by_200_ft_at_2_in_is_434_cu_yd_but_for_the_rounded_factor);

	tcase_add_checked_fixture(depths, NULL, teardown);
	tcase_add_loop_test(depths,
		soil_starts_at_the_ground_where_undug_and_at_the_base_where_filled, 0,
		ROWS(insides));
	tcase_add_checked_fixture(strips, NULL, teardown);
	tcase_add_test(strips, soil_goes_down_to_the_base_past_the_wall);
	tcase_add_test(strips, on_ground_that_falls_soil_is_as_deep_as_on_the_mean);
	tcase_add_test(strips, round_a_reflex_corner_too);
	tcase_add_test(strips, what_is_dug_out_all_over_is_no_deeper_there);
	tcase_add_test(strips, without_a_reach_inwards_there_is_no_strip);
	tcase_add_test(strips, a_base_all_over_is_counted_once);
	tcase_add_test(strips, a_neighbours_base_past_the_wall_counts_as_well);

	tcase_add_checked_fixture(parts, NULL, teardown);
	tcase_add_test(parts, settlement_is_ordered_on_top_and_shared_by_the_parts);
	tcase_add_loop_test(parts, a_mix_settles_by_15_or_from_half_compost_on_by_20_percent, 0,
		ROWS(settling));
	tcase_add_test(parts, the_note_says_the_percentage_where_it_is_one);
	tcase_add_test(parts, an_amendment_leaves_topsoil_out_and_does_not_settle);
	tcase_add_test(parts, replaced_soil_is_the_whole_mix_and_settles);

	tcase_add_checked_fixture(snags, NULL, teardown);
	tcase_add_test(snags, a_wall_too_low_for_soil_has_no_fill_and_says_so);
	tcase_add_loop_test(snags, a_level_bed_with_nothing_to_dig_in_still_gets_its_mulch, 0,
		ROWS(nothing_to_dig));
	tcase_add_test(snags, a_bed_whose_wall_is_not_laid_out_has_no_fill);
	return suite;
}
