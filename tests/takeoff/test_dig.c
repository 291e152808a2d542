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

/* A construction estimating textbook: topsoil stripped from 4,464 sq ft, 8 in deep, is 2,976 cu ft,
 * 110 cu yd in the bank. */
START_TEST(a_published_strip_of_4464_sq_ft_8_in_deep_is_2976_cu_ft)
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

/* Loose over bank. Estimating in Building Construction (Pearson): example 9-2, 1,000 cu yd of
 * dense clay at 30 % are 1,300 loose; chapter 9, 100 cu yd at 15 % are 115. US Army FM 5-434,
 * table 1-1: 1.25 for common earth, 1.43 for clay. US Navy, Soil Conversion Factors table: sand
 * 1.11. */
static const struct { const char *subsoil; enum attribute swell; const char *percent; double bank,
	loose; } swells[] = {
	{ "clay", ALLOW_SWELL_CLAY, "30 %", 1000, 1300 },
	{ "loam", ALLOW_SWELL_LOAM, "15 %", 100, 115 },
	{ "loam", ALLOW_SWELL_LOAM, "25 %", 100, 125 },
	{ "clay", ALLOW_SWELL_CLAY, "43 %", 100, 143 },
	{ "sand", ALLOW_SWELL_SAND, "11 %", 100, 111 },
};

START_TEST(subsoil_swells_as_published_for_its_kind)
{
	/* 90 x 30 ft, one foot deep in a bed that is replaced: 100 cu yd in the bank. */
	garden_rectangle(&garden, 'b', 90, 30);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_REPLACE, "yes");
	plot_set(&garden.plot, 'b', BED_PREPARE, "1 ft");
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	plot_set(&garden.plot, 0, ALLOW_SUBSOIL, swells[_i].subsoil);
	plot_set(&garden.plot, 0, swells[_i].swell, swells[_i].percent);
	garden_count(&garden);
	ck_assert_double_eq_tol(work()->bank.subsoil / CUBIC_YARD, 100, 1e-6);
	ck_assert_double_eq_tol(work()->loose.subsoil / CUBIC_YARD,
		100 * swells[_i].loose / swells[_i].bank, 1e-6);
	ck_assert_double_eq_tol(work()->spoil, work()->loose.subsoil, EXACT);
}
END_TEST

/* Topsoil 1.25 to 1.5 loose over bank: handbooks, quoted from memory. 12 sq ft, 3 in of each
 * kind. */
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

/* A textbook's problem: 3,400 lb a cu yd in the bank, 2,700 loose, so the swell is 26 %. What is
 * dug weighs as much loose as it did in the bank. */
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
	dig_zones(&list, &garden.takeoff.zones, &garden.takeoff.embeds);
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
	double embed = surface;

	if (block->kind == BLOCK_BED && block_value(block, BED_EMBED)->set)
		embed = metres_of(block, BED_EMBED);
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
	return deepest < 0 ? 0.0381 : deepest;
}

START_TEST(all_that_is_dug_leaves_or_is_reused_and_geos_digs_the_same)
{
	struct random random = { (uint64_t)_i + 1000 };
	GEOSContextHandle_t geos = geos_start();
	struct earth bank = { 0, 0, 0 }, sum = { 0, 0, 0 };
	struct diggings expected;
	double sod, topsoil, wanted = 0, surface;

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
	ck_assert_double_eq_tol(work()->reused, fmin(bank.topsoil * 1.25, wanted), GEOS_NEAR);
	ck_assert_double_eq_tol(earth_sum(&work()->loose), work()->reused + work()->spoil, EXACT);
	diggings_free(&expected);
	geos_end(geos);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("dig");
	TCase *published = suite_case(suite, "published"), *depths = suite_case(suite, "depths");
	TCase *reuse = suite_case(suite, "reuse"), *laws = suite_case(suite, "laws");

	tcase_add_checked_fixture(published, NULL, teardown);
	tcase_add_test(published, a_published_strip_of_4464_sq_ft_8_in_deep_is_2976_cu_ft);
	tcase_add_loop_test(published, subsoil_swells_as_published_for_its_kind, 0,
		sizeof swells / sizeof *swells);
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
	tcase_add_test(reuse, spoil_is_an_item_of_the_dig_in_loose_volume);
	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_loop_test(laws, all_that_is_dug_leaves_or_is_reused_and_geos_digs_the_same, 0,
		RANDOM_PLOTS);
	return suite;
}
