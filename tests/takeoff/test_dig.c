/* What is dug, how it swells, what is used again: published examples, cases by hand, GEOS. */
#include "takeoff/ground/dig.h"

#include "takeoff/ground/fill.h"

#include "support/digging.h"
#include "support/garden.h"
#include "support/runner.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { RANDOM_PLOTS = 120 };

static const double EXACT = 1e-9, GEOS_NEAR = 1e-7;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct earthwork *work(void)
{
	return &garden.takeoff.earthwork;
}

static const struct dig *row(int region, enum dig_part part)
{
	for (int i = 0; i < work()->count; i++)
		if (work()->rows[i].region == region && work()->rows[i].part == part)
			return &work()->rows[i];
	return NULL;
}

static void check_depth(int region, enum dig_part part, double inches)
{
	const struct dig *dig = row(region, part);

	ck_assert_msg(dig, "region %d has no row of part %d", region, (int)part);
	ck_assert_double_eq((double)dig->depth, inches * (double)NM_PER_INCH);
}

/* ---- Published values ------------------------------------------------------------------------ */

/* By arithmetic topsoil stripped from 4,464 sq ft, 8 in deep, is 2,976 cu ft, 110 cu yd in the
 * bank. */
START_TEST(a_strip_of_4464_sq_ft_8_in_deep_is_2976_cu_ft)
{
	garden_rectangle(&garden, 'l', 62, 72);
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "8 in");
	plot_set(&garden.plot, 'l', LAWN_COVER, "seed");
	plot_set(&garden.plot, 'l', LAWN_TOPSOIL, "8 in");
	garden_count(&garden);
	ck_assert_double_eq_tol(work()->bank.topsoil / CUBIC_FOOT, 2976, 1e-6);
	ck_assert_double_eq(round(work()->bank.topsoil / CUBIC_YARD), 110);
	ck_assert_double_eq_tol(earth_sum(&work()->bank) / CUBIC_FOOT, 2976, 1e-6);
}
END_TEST

/* Pearson, Estimating in Building Construction, its edition not noted, example 9-8: cuts of 1.4,
 * 1.4, 1.2 and 1.3 ft at the corners of 2,500 sq ft, 1.325 ft on average, are 3,313 cu ft, 123
 * cu yd. */
START_TEST(a_published_cut_of_2500_sq_ft_is_3313_cu_ft)
{
	garden_rectangle(&garden, 'p', 50, 50);
	plot_set(&garden.plot, 'p', PATH_BASE, "15.9 in");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "0 in");
	garden_count(&garden);
	ck_assert_double_eq(round(work()->bank_all / CUBIC_FOOT), 3313);
	ck_assert_double_eq(round(work()->bank_all / CUBIC_YARD), 123);
}
END_TEST

/* Orange Judd & Company, Draining for Profit, and Draining for Health, 1867 (publisher and year
 * from memory), its table of what a yard of trench 4 ft deep holds by its width: cubic yards and
 * cubic feet. */
static const struct { int inches, yards, feet; } trenches[] = {
	{ 12, 0, 12 }, { 18, 0, 18 }, { 24, 0, 24 }, { 30, 1, 3 }, { 36, 1, 9 },
};

START_TEST(a_yard_of_trench_4_ft_deep_holds_what_the_table_says)
{
	garden_rectangle(&garden, 'p', trenches[_i].inches / 6, 6);
	plot_set(&garden.plot, 0, HEAD_CELL, "6 in");
	plot_set(&garden.plot, 'p', PATH_BASE, "4 ft");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "0 in");
	garden_count(&garden);
	ck_assert_double_eq_tol(work()->bank_all / CUBIC_FOOT,
		27 * trenches[_i].yards + trenches[_i].feet, EXACT);
}
END_TEST

/* 90 x 30 ft, one foot deep in a bed that is replaced: 100 cu yd in the bank. */
static void hundred_yards_of(const char *subsoil)
{
	garden_rectangle(&garden, 'b', 90, 30);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_REPLACE, "yes");
	plot_set(&garden.plot, 'b', BED_PREPARE, "1 ft");
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_SUBSOIL, subsoil);
}

/* Loose over bank, with nothing set: clays as measured, Zanco Journal of Pure and Applied Sciences,
 * Swell and Shrinkage Percentages for Various Soil Types, year not noted. Loam and common earth:
 * Pearson, Estimating in Building Construction, its edition not noted, figure 9.1, and US Army, FM
 * 5-434, Earthmoving Operations, 2000, table 1-1, both from memory. Sand: US Navy training manual,
 * its number and year not noted, table Soil Conversion Factors; sand and gravel: Pearson's figure.
 * No kind lies within the range of another. */
static const struct { const char *subsoil; double least, most; } swells[] = {
	{ "clay", 1.36, 1.56 }, { "loam", 1.15, 1.25 }, { "sand", 1.11, 1.18 },
};

START_TEST(subsoil_swells_as_published_for_its_kind)
{
	double ratio;

	hundred_yards_of(swells[_i].subsoil);
	garden_count(&garden);
	ck_assert_double_eq_tol(work()->bank.subsoil / CUBIC_YARD, 100, 1e-6);
	ratio = work()->loose.subsoil / work()->bank.subsoil;
	ck_assert(ratio >= swells[_i].least - EXACT && ratio <= swells[_i].most + EXACT);
	ck_assert_double_eq_tol(work()->spoil, work()->loose.subsoil, EXACT);
}
END_TEST

/* What a swell is a percentage of: Pearson, example 9-2, 1,000 cu yd of dense clay in the bank are
 * 1,300 loose at 30 %. */
START_TEST(a_swell_is_a_share_of_the_bank)
{
	hundred_yards_of("clay");
	plot_set(&garden.plot, 0, ALLOW_SWELL_CLAY, "30 %");
	garden_count(&garden);
	ck_assert_double_eq_tol(work()->loose.subsoil / CUBIC_YARD, 130, 1e-6);
}
END_TEST

/* 12 sq ft, 3 in of each kind; by arithmetic 3 cu ft and a half more of sod and of topsoil, 3 cu ft
 * and a quarter more of loam, its default. */
START_TEST(sod_and_topsoil_swell_alike_and_subsoil_by_itself)
{
	garden_rectangle(&garden, 'p', 4, 3);
	plot_set(&garden.plot, 0, ALLOW_SOD, "3 in");
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, "3 in");
	plot_set(&garden.plot, 0, ALLOW_SWELL_TOPSOIL, "50 %");
	plot_set(&garden.plot, 'p', PATH_BASE, "9 in");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "0 in");
	garden_count(&garden);
	ck_assert_double_eq_tol(work()->loose.sod / CUBIC_FOOT, 4.5, EXACT);
	ck_assert_double_eq_tol(work()->loose.topsoil / CUBIC_FOOT, 4.5, EXACT);
	ck_assert_double_eq_tol(work()->loose.subsoil / CUBIC_FOOT, 3.75, EXACT);
}
END_TEST

/* By arithmetic 3,400 lb a cu yd in the bank, 2,700 loose, is a swell of 26 %. What is dug weighs
 * as much loose as it did in the bank. */
START_TEST(spoil_weighs_by_its_loose_density)
{
	garden_rectangle(&garden, 'p', 27, 24);
	plot_set(&garden.plot, 'p', PATH_BASE, "6 in");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "0 in");
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_SWELL_LOAM, "26 %");
	plot_set(&garden.plot, 0, ALLOW_DENSITY_SPOIL, "2700 lb/cu yd");
	garden_count(&garden);
	/* 12 cu yd in the bank; 26 % is rounded from 25.9. */
	ck_assert_double_eq_tol(work()->spoil_weight / 0.45359237, 12 * 3400, 12 * 3400 * 0.001);
	ck_assert_double_eq_tol(work()->spoil / CUBIC_YARD, 12 * 1.26, 1e-6);
	/* 40,824 lb: 137 barrows of 300 lb, 28 pickups of 1,500 lb, 3 trucks of 20,000 lb. */
	ck_assert_int_eq(work()->loads.barrow, 137);
	ck_assert_int_eq(work()->loads.pickup, 28);
	ck_assert_int_eq(work()->loads.truck, 3);
}
END_TEST

/* ---- Depths ---------------------------------------------------------------------------------- */

START_TEST(each_part_is_dug_to_its_own_depth)
{
	garden_rows(&garden, (const char *const[]){ "pppppppppppp", "aaaabbbbccll", "aaaabbbbccmm",
		"aaaabbbbSSnn", "aaaabbbbSSnn", NULL });
	plot_set(&garden.plot, 'p', PATH_BASE, "5 in");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "2 in");
	plot_set(&garden.plot, 'a', BED_EMBED, "3 in");
	plot_set(&garden.plot, 'a', BED_INSIDE, "filled");
	plot_set(&garden.plot, 'b', BED_BASE, "6 in");
	plot_set(&garden.plot, 'b', BED_INSIDE, "base");
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	plot_set(&garden.plot, 'c', BED_REPLACE, "yes");
	plot_set(&garden.plot, 'c', BED_PREPARE, "10 in");
	plot_set(&garden.plot, 'm', LAWN_COVER, "seed");
	plot_set(&garden.plot, 'n', LAWN_COVER, "none");
	plot_set(&garden.plot, 'l', LAWN_TOPSOIL, "3 in");
	garden_count(&garden);
	check_depth(0, DIG_PATH, 7);
	check_depth(1, DIG_WALL, 4 + 3);
	check_depth(1, DIG_INSIDE, 3);
	check_depth(2, DIG_WALL, 6 + 2); /* its embed is the path's surface */
	check_depth(2, DIG_INSIDE, 6 + 2);
	check_depth(3, DIG_BED, 10);
	check_depth(4, DIG_LAWN, 3.75);
	check_depth(5, DIG_LAWN, 4);
	check_depth(6, DIG_PAD, 4 + 2);
	ck_assert_ptr_null(row(7, DIG_LAWN));
	ck_assert_int_eq(work()->count, 9);
}
END_TEST

START_TEST(without_a_path_fixtures_are_dug_2_in_below_their_base)
{
	garden_rectangle(&garden, 'S', 2, 2);
	garden_count(&garden);
	check_depth(0, DIG_PAD, 6);
}
END_TEST

/* Inches of sod, topsoil and depth, and what each kind has of 12 sq ft, in cu ft. */
static const struct { const char *sod, *topsoil, *depth; struct earth bank; } layers[] = {
	{ "2 in", "0 in", "9 in", { 2, 0, 7 } },
	{ "2 in", "5 in", "9 in", { 2, 5, 2 } },
	{ "2 in", "12 in", "9 in", { 2, 7, 0 } },
	{ "10 in", "5 in", "9 in", { 9, 0, 0 } },
	{ "0 in", "9 in", "9 in", { 0, 9, 0 } },
};

START_TEST(sod_lies_on_topsoil_and_topsoil_on_subsoil)
{
	garden_rectangle(&garden, 'p', 4, 3);
	plot_set(&garden.plot, 0, ALLOW_SOD, layers[_i].sod);
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, layers[_i].topsoil);
	plot_set(&garden.plot, 'p', PATH_BASE, layers[_i].depth);
	plot_set(&garden.plot, 'p', PATH_SURFACE, "0 in");
	garden_count(&garden);
	ck_assert_double_eq_tol(work()->bank.sod / CUBIC_FOOT, layers[_i].bank.sod, EXACT);
	ck_assert_double_eq_tol(work()->bank.topsoil / CUBIC_FOOT, layers[_i].bank.topsoil, EXACT);
	ck_assert_double_eq_tol(work()->bank.subsoil / CUBIC_FOOT, layers[_i].bank.subsoil, EXACT);
}
END_TEST

START_TEST(what_has_no_depth_has_no_row)
{
	garden_rectangle(&garden, 'p', 4, 3);
	plot_set(&garden.plot, 'p', PATH_BASE, "0 in");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "0 in");
	garden_count(&garden);
	ck_assert_int_eq(work()->count, 0);
	ck_assert_ptr_null(garden_item(&garden, "spoil"));
}
END_TEST

START_TEST(what_others_have_all_dug_has_no_row)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_INSIDE, "base");
	plot_set(&garden.plot, 'b', BED_REACH_IN, "3 ft");
	garden_count(&garden);
	ck_assert_int_eq(work()->count, 1);
	ck_assert_int_eq(work()->rows[0].part, DIG_WALL);
}
END_TEST

START_TEST(holes_dug_by_the_piece_belong_to_no_region)
{
	struct dig_list list = { .arena = &garden.arena };

	garden_rectangle(&garden, 'p', 4, 3);
	garden_count(&garden);
	list.allow = garden.takeoff.allow;
	dig_zones(&list, &garden.takeoff.zones, &garden.takeoff.embeds,
		&garden.takeoff.levelling.volumes);
	dig_add(&list, (struct dig){ .region = NO_REGION, .part = DIG_HOLES, .area = SQUARE_FOOT,
		.depth = 3 * NM_PER_FOOT });
	dig_finish(&garden.takeoff.earthwork, &list, &(struct earth_wanted){ 0, 0, 0, 0 });
	ck_assert_double_eq_tol(earth_sum(&row(NO_REGION, DIG_HOLES)->bank) / CUBIC_FOOT, 3, EXACT);
	ck_assert_double_eq_tol(earth_sum(&work()->bank) / CUBIC_FOOT, 12 * 6.0 / 12 + 3, EXACT);
}
END_TEST

/* ---- Reuse ----------------------------------------------------------------------------------- */

/* A path of 12 sq ft dug 12 in, and beds that take topsoil. */
static void garden_to_reuse(const char *topsoil)
{
	garden_rows(&garden, (const char *const[]){ "pppp..........", "pppp.aaaa.bbbb",
		"pppp.aaaa.bbbb",
		".....aaaa.bbbb", ".....aaaa.bbbb", NULL });
	plot_set(&garden.plot, 'p', PATH_BASE, "12 in");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "0 in");
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, topsoil);
	plot_set(&garden.plot, 'a', BED_MIX, "topsoil 3, compost 1");
	plot_set(&garden.plot, 'b', BED_MIX, "compost 1, topsoil 1");
	plot_set(&garden.plot, 'a', BED_BASE, "0 in");
	plot_set(&garden.plot, 'b', BED_BASE, "0 in");
	plot_set(&garden.plot, 'a', BED_EMBED, "0 in");
	plot_set(&garden.plot, 'b', BED_EMBED, "0 in");
	garden_count(&garden);
}

START_TEST(little_topsoil_is_shared_by_the_mixes_in_proportion)
{
	const struct fill *fills;
	double share;

	garden_to_reuse("1 in");
	fills = garden.takeoff.fills.list;
	/* 1 cu ft in the bank is 1.25 loose. */
	ck_assert_double_eq_tol(work()->reused / CUBIC_FOOT, 1.25, EXACT);
	ck_assert_double_eq_tol(work()->spoil / CUBIC_FOOT, 11 * 1.25, EXACT);
	share = work()->reused / (fills[0].parts[0].volume + fills[1].parts[1].volume);
	ck_assert_double_lt(share, 1);
	ck_assert_double_eq_tol(fills[0].parts[0].reused,
		share * fills[0].parts[0].volume, EXACT);
	ck_assert_double_eq_tol(fills[1].parts[1].reused,
		share * fills[1].parts[1].volume, EXACT);
	ck_assert_double_eq(fills[0].parts[1].reused, 0);
	ck_assert_double_eq_tol(garden_item(&garden, "soil.topsoil")->reused, work()->reused,
		EXACT);
	ck_assert_double_eq(garden_item(&garden, "soil.compost")->reused, 0);
}
END_TEST

START_TEST(no_more_is_reused_than_the_mixes_take)
{
	const struct item *topsoil;

	garden_to_reuse("12 in");
	plot_set(&garden.plot, 'a', BED_COURSES, "1");
	plot_set(&garden.plot, 'b', BED_COURSES, "1");
	garden_count(&garden);
	topsoil = garden_item(&garden, "soil.topsoil");
	ck_assert_double_eq_tol(work()->reused, topsoil->laid + topsoil->spare, EXACT);
	ck_assert_double_eq(topsoil->order, 0);
	ck_assert_double_eq_tol(work()->spoil / CUBIC_FOOT, 15 - work()->reused / CUBIC_FOOT,
		EXACT);
	ck_assert_double_gt(work()->spoil, 0);
}
END_TEST

START_TEST(the_row_of_topsoil_orders_less_by_what_is_reused)
{
	const struct item *topsoil;
	double order;

	garden_to_reuse("0 in");
	order = garden_item(&garden, "soil.topsoil")->order;
	garden_fini(&garden);
	garden_to_reuse("1 in");
	topsoil = garden_item(&garden, "soil.topsoil");
	ck_assert_double_eq_tol(topsoil->order, order - 1.25 * CUBIC_FOOT, EXACT);
	ck_assert_double_eq_tol(topsoil->order, topsoil->laid + topsoil->spare - topsoil->reused,
		EXACT);
}
END_TEST

/* A bed's topsoil comes first: what it leaves goes to the lawn, as far as that takes it. 12 sq ft
 * of path and 30 of lawn, 4 in of soil each; beds take none where the mix has none. */
static const struct { const char *mix, *topsoil; double beds, lawn; } shares[] = {
	{ "compost 1", "1 in", 0, 3.5 * 1.25 }, { "compost 1", "4 in", 0, 11.5 },
	{ "topsoil 1", "4 in", 14 * 1.25, 0 },
};

START_TEST(lawns_take_the_topsoil_that_mixes_leave)
{
	garden_rows(&garden, (const char *const[]){ "pppp..........", "pppp.aaaa.....",
		"pppp.aaaa.....", ".....aaaa.....", ".....aaaa.....", "..............",
		"llllllllll....", "llllllllll....", "llllllllll....", NULL });
	plot_set(&garden.plot, 'p', PATH_BASE, "4 in");
	plot_set(&garden.plot, 'p', PATH_SURFACE, "0 in");
	plot_set(&garden.plot, 'l', LAWN_COVER, "seed");
	plot_set(&garden.plot, 'a', BED_BASE, "0 in");
	plot_set(&garden.plot, 'a', BED_EMBED, "0 in");
	plot_set(&garden.plot, 'a', BED_COURSES, "5");
	plot_set(&garden.plot, 'a', BED_MIX, shares[_i].mix);
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, shares[_i].topsoil);
	garden_count(&garden);
	const struct lawn *lawn = &garden.takeoff.lawns.list[0];
	const struct item *topsoil = garden_item(&garden, "topsoil.lawn");

	/* 10 cu ft in place, 11.5 with what settles. */
	ck_assert_double_eq_tol(lawn->order / CUBIC_FOOT, 11.5, EXACT);
	ck_assert_double_eq_tol(garden.takeoff.fills.list[0].parts[0].reused / CUBIC_FOOT,
		shares[_i].beds, EXACT);
	ck_assert_double_eq_tol(lawn->reused / CUBIC_FOOT, shares[_i].lawn, EXACT);
	ck_assert_double_eq_tol(lawn->buy, lawn->order - lawn->reused, EXACT);
	ck_assert_double_eq_tol(topsoil->reused, lawn->reused, EXACT);
	ck_assert_double_eq_tol(topsoil->order, lawn->buy, EXACT);
	ck_assert_double_eq_tol(work()->reused / CUBIC_FOOT, shares[_i].beds + shares[_i].lawn,
		EXACT);
	ck_assert_double_eq_tol(earth_sum(&work()->loose), work()->spoil + work()->reused, EXACT);
}
END_TEST

/* ---- Backfill -------------------------------------------------------------------------------- */

/* A bed of 8 x 4 ft in the open, dug 6 in: 30 2/9 sq ft of wall and base; 13 sq ft x 2 in go back
 * over the base outside, 2 1/6 cu ft tamped. At 0.90 they take 2.407 cu ft of the bank. */
static void bed_in_the_open(const char *sod, const char *topsoil)
{
	garden_rows(&garden, (const char *const[]){ "..........", ".bbbbbbbb.", ".bbbbbbbb.",
		".bbbbbbbb.", ".bbbbbbbb.", "..........", NULL });
	plot_set(&garden.plot, 0, ALLOW_SOD, sod);
	plot_set(&garden.plot, 0, ALLOW_TOPSOIL, topsoil);
	plot_set(&garden.plot, 'b', BED_MIX, "compost 1");
	garden_count(&garden);
}

START_TEST(backfill_is_taken_off_the_bank_before_it_swells)
{
	bed_in_the_open("0 in", "0 in");
	ck_assert_double_eq_tol(work()->backfill / CUBIC_FOOT, 13.0 / 6, EXACT);
	ck_assert_double_eq_tol(work()->backfill_loose / CUBIC_FOOT, 13.0 / 6 / 0.9 * 1.25, EXACT);
	ck_assert_double_eq_tol(work()->spoil / CUBIC_FOOT,
		(272.0 / 9 / 2 - 13.0 / 6 / 0.9) * 1.25, EXACT);
	ck_assert_double_eq_tol(work()->loosened / SQUARE_FOOT, 76.0 * 28 / 144, EXACT);
}
END_TEST

/* Kind by kind, in inches of 6; what goes back takes subsoil while there is some, then topsoil.
 * Swells of 40 and 25 %. */
static const struct { const char *sod, *topsoil; double subsoil_back, topsoil_back; } kinds[] = {
	{ "2 in", "2 in", 13.0 / 6 / 0.9, 0 },
	{ "2 in", "4 in", 0, 13.0 / 6 / 0.9 },
	/* 30 2/9 sq ft, 1/2 in. */
	{ "2 in", "3 1/2 in", 272.0 / 9 / 24, 13.0 / 6 / 0.9 - 272.0 / 9 / 24 },
	{ "6 in", "0 in", 0, 0 },
};

START_TEST(backfill_takes_subsoil_first_then_topsoil_and_no_sod)
{
	bed_in_the_open(kinds[_i].sod, kinds[_i].topsoil);
	plot_set(&garden.plot, 0, ALLOW_SUBSOIL, "clay");
	plot_set(&garden.plot, 'b', BED_BASE, "4 in");
	garden_count(&garden);
	ck_assert_double_eq_tol(work()->backfill_loose / CUBIC_FOOT,
		kinds[_i].subsoil_back * 1.4 + kinds[_i].topsoil_back * 1.25, EXACT);
	ck_assert_double_eq_tol(work()->spoil + work()->backfill_loose, work()->loose_all, EXACT);
}
END_TEST

/* Topsoil that goes back cannot be reused: 4 in of 30 2/9 sq ft less 2.407 cu ft. */
START_TEST(topsoil_that_goes_back_is_not_reused)
{
	bed_in_the_open("2 in", "4 in");
	plot_set(&garden.plot, 'b', BED_MIX, "topsoil 1");
	garden_count(&garden);
	ck_assert_double_eq_tol(work()->reused / CUBIC_FOOT,
		(272.0 / 9 / 3 - 13.0 / 6 / 0.9) * 1.25, EXACT);
}
END_TEST

/* 500 cu yd compacted at a factor of 0.95 are 526 in the bank: Pearson, Estimating in Building
 * Construction, its edition not noted, example 9-3. */
START_TEST(published_earth_is_compacted_over_its_factor)
{
	struct dig_list list = { .arena = &garden.arena };
	struct earthwork earthwork;

	garden_rectangle(&garden, 'p', 4, 3);
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_SHRINK, "0.95");
	plot_set(&garden.plot, 0, ALLOW_SWELL_LOAM, "0 %");
	garden_count(&garden);
	list.allow = garden.takeoff.allow;
	dig_add(&list, (struct dig){ .region = NO_REGION, .part = DIG_HOLES,
		.area = 27 * 1000 * SQUARE_FOOT, .depth = NM_PER_FOOT });
	dig_finish(&earthwork, &list, &(struct earth_wanted){ 0, 0, 500 * CUBIC_YARD, 0 });
	ck_assert_double_eq(round(earthwork.backfill_loose / CUBIC_YARD), 526);
	ck_assert_double_eq(round(earthwork.spoil / CUBIC_YARD), 1000 - 526);
}
END_TEST

START_TEST(spoil_is_an_item_of_the_dig_in_loose_volume)
{
	const struct item *spoil;

	garden_rectangle(&garden, 'p', 4, 3);
	garden_count(&garden);
	spoil = garden_item(&garden, "spoil");
	ck_assert_int_eq(spoil->section, SECTION_DIG);
	ck_assert_int_eq(item_unit(spoil), UNIT_M3);
	ck_assert_double_eq_tol(spoil->order / CUBIC_FOOT, 6 * 1.25, EXACT);
	ck_assert_double_eq(spoil->laid, spoil->order);
}
END_TEST

/* ---- Laws and GEOS --------------------------------------------------------------------------- */

static double random_metres(struct random *random, enum attribute a, int most)
{
	char words[32];
	int depth = random_between(random, 0, most);

	snprintf(words, sizeof words, "%d mm", depth);
	plot_set(&garden.plot, 0, a, words);
	return depth / 1000.0;
}

static double metres_of(const struct block *block, enum attribute a)
{
	return (double)block_length(block, a) / 1e9;
}

/* By the attributes; `surface` is the deepest of the paths'. */
static double depth_of(const struct digging *digging, double surface)
{
	const struct block *block = &garden.takeoff.survey.regions[digging->region].entry->block;
	double embed = block->kind != BLOCK_BED ? 0 :
		(double)embed_of(&garden.takeoff.embeds, digging->region) / 1e9;

	switch (digging->part) {
	case DIG_PATH:
		return metres_of(block, PATH_BASE) + metres_of(block, PATH_SURFACE);
	case DIG_WALL:
		return metres_of(block, BED_BASE) + embed;
	case DIG_INSIDE:
		return embed + (block_number(block, BED_INSIDE) == INSIDE_BASE ?
			metres_of(block, BED_BASE) : 0);
	case DIG_PAD:
		return metres_of(block, FIXTURE_BASE) + surface;
	case DIG_LAWN:
		return metres_of(block, LAWN_TOPSOIL) +
			(block_number(block, LAWN_COVER) == COVER_TURF ?
			metres_of(block, LAWN_THICKNESS) : 0);
	case DIG_BED:
		return metres_of(block, BED_PREPARE);
	case DIG_HOLES:
	case DIG_GRADED:
		break;
	}
	return 0;
}

static double deepest_surface(void)
{
	double deepest = -1;

	for (int i = 0; i < garden.takeoff.survey.region_count; i++) {
		const struct entry *entry = garden.takeoff.survey.regions[i].entry;

		if (entry->class == CLASS_PATH)
			deepest = fmax(deepest, metres_of(&entry->block, PATH_SURFACE));
	}
	return deepest < 0 ? 0.0508 : deepest;
}

START_TEST(all_that_is_dug_leaves_or_is_reused_and_geos_digs_the_same)
{
	struct random random = { (uint64_t)_i + 1000 };
	GEOSContextHandle_t geos = geos_start();
	struct earth bank = { 0, 0, 0 }, sum = { 0, 0, 0 };
	struct diggings expected;
	double sod, topsoil, wanted = 0, back, surface;

	garden = (struct garden){ .arena = ARENA_EMPTY };
	diggings_plot(&garden.plot, &random);
	sod = random_metres(&random, ALLOW_SOD, 80);
	topsoil = random_metres(&random, ALLOW_TOPSOIL, 200);
	garden_count(&garden);
	surface = deepest_surface();
	expected = diggings_find(geos, &garden.takeoff);
	for (int i = 0; i < expected.count; i++) {
		double area = geos_area(geos, expected.list[i].shape);
		double depth = depth_of(&expected.list[i], surface);
		const struct dig *dig = row(expected.list[i].region,
			(enum dig_part)expected.list[i].part);

		bank.sod += area * fmin(depth, sod);
		bank.topsoil += area * fmin(fmax(depth - sod, 0), topsoil);
		bank.subsoil += area * fmax(depth - sod - topsoil, 0);
		ck_assert_double_eq_tol(dig ? earth_sum(&dig->bank) : 0, area * depth, GEOS_NEAR);
	}
	for (int i = 0; i < work()->count; i++) {
		sum.sod += work()->rows[i].bank.sod;
		sum.topsoil += work()->rows[i].bank.topsoil;
		sum.subsoil += work()->rows[i].bank.subsoil;
	}
	ck_assert_double_eq_tol(work()->bank.sod, bank.sod, GEOS_NEAR);
	ck_assert_double_eq_tol(work()->bank.topsoil, bank.topsoil, GEOS_NEAR);
	ck_assert_double_eq_tol(work()->bank.subsoil, bank.subsoil, GEOS_NEAR);
	ck_assert_double_eq_tol(earth_sum(&work()->bank), earth_sum(&sum), EXACT);
	for (int i = 0; i < garden.takeoff.fills.count; i++)
		for (int j = 0; j < garden.takeoff.fills.list[i].part_count; j++)
			if (strcmp(garden.takeoff.fills.list[i].parts[j].name, "topsoil") == 0)
				wanted += garden.takeoff.fills.list[i].parts[j].volume;
	/* All defaults: 25 % for topsoil and loam. */
	ck_assert_double_eq_tol(earth_sum(&work()->loose), earth_sum(&bank) * 1.25, GEOS_NEAR);
	wanted += lawn_topsoil(&garden.takeoff.lawns);
	/* 0.90 of the bank goes back, topsoil after subsoil. */
	back = fmin(garden.takeoff.over_bases.backfill / 0.9, bank.topsoil + bank.subsoil);
	ck_assert_double_eq_tol(work()->reused, fmin((bank.topsoil - fmax(0, back -
		bank.subsoil)) * 1.25, wanted), GEOS_NEAR);
	ck_assert_double_eq_tol(work()->backfill_loose, back * 1.25, GEOS_NEAR);
	ck_assert_double_eq_tol(earth_sum(&work()->loose),
		work()->backfill_loose + work()->reused + work()->spoil, EXACT);
	diggings_free(&expected);
	geos_end(geos);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("dig");
	TCase *published = suite_case(suite, "published"), *depths = suite_case(suite, "depths");
	TCase *backfill = suite_case(suite, "backfill");
	TCase *reuse = suite_case(suite, "reuse"), *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(published, NULL, teardown);
	tcase_add_test(published, a_strip_of_4464_sq_ft_8_in_deep_is_2976_cu_ft);
	tcase_add_test(published, a_published_cut_of_2500_sq_ft_is_3313_cu_ft);
	tcase_add_loop_test(published, a_yard_of_trench_4_ft_deep_holds_what_the_table_says, 0,
		sizeof trenches / sizeof *trenches);
	tcase_add_loop_test(published, subsoil_swells_as_published_for_its_kind, 0,
		sizeof swells / sizeof *swells);
	tcase_add_test(published, a_swell_is_a_share_of_the_bank);
	tcase_add_test(published, sod_and_topsoil_swell_alike_and_subsoil_by_itself);
	tcase_add_test(published, spoil_weighs_by_its_loose_density);
	tcase_add_checked_fixture(depths, NULL, teardown);
	tcase_add_test(depths, each_part_is_dug_to_its_own_depth);
	tcase_add_test(depths, without_a_path_fixtures_are_dug_2_in_below_their_base);
	tcase_add_loop_test(depths, sod_lies_on_topsoil_and_topsoil_on_subsoil, 0,
		sizeof layers / sizeof *layers);
	tcase_add_test(depths, what_has_no_depth_has_no_row);
	tcase_add_test(depths, what_others_have_all_dug_has_no_row);
	tcase_add_test(depths, holes_dug_by_the_piece_belong_to_no_region);
	tcase_add_checked_fixture(reuse, NULL, teardown);
	tcase_add_test(reuse, little_topsoil_is_shared_by_the_mixes_in_proportion);
	tcase_add_test(reuse, no_more_is_reused_than_the_mixes_take);
	tcase_add_test(reuse, the_row_of_topsoil_orders_less_by_what_is_reused);
	tcase_add_loop_test(reuse, lawns_take_the_topsoil_that_mixes_leave, 0,
		sizeof shares / sizeof *shares);
	tcase_add_test(published, published_earth_is_compacted_over_its_factor);
	tcase_add_checked_fixture(backfill, NULL, teardown);
	tcase_add_test(backfill, backfill_is_taken_off_the_bank_before_it_swells);
	tcase_add_loop_test(backfill, backfill_takes_subsoil_first_then_topsoil_and_no_sod, 0,
		sizeof kinds / sizeof *kinds);
	tcase_add_test(backfill, topsoil_that_goes_back_is_not_reused);
	tcase_add_test(reuse, spoil_is_an_item_of_the_dig_in_loose_volume);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, all_that_is_dug_leaves_or_is_reused_and_geos_digs_the_same, 0,
		RANDOM_PLOTS);
	return suite;
}
