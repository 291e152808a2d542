#include "support/runner.h"
#include "support/garden.h"
#include "takeoff/common/items.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

enum { ROWS_MOST = 20 };

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct item *item(const char *id)
{
	const struct item *found = garden_item(&garden, id);

	ck_assert_msg(found, "no row %s", id);
	return found;
}

/* The rows of walls and fill, in order; how many. */
static int beds_rows(const struct item *rows[ROWS_MOST])
{
	int count = 0;

	for (size_t i = 0; i < garden.takeoff.items.count; i++) {
		const struct item *row = &garden.takeoff.items.list[i];

		if (row->section == SECTION_WALLS || row->section == SECTION_FILL)
			rows[count++] = row;
	}
	return count;
}

/* 16 blocks a course by arithmetic: (24 ft - 4 x 8 in) / 16 in; 5 % of 48 is 2.4. */
START_TEST(blocks_are_laid_as_bought_with_breakage_spare)
{
	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	const struct item *block = item("block.wall");

	ck_assert_double_eq(block->laid, 48);
	ck_assert_double_eq(block->spare, 3);
	ck_assert_double_eq(block->order, 51);
	ck_assert_int_eq(item_unit(block), UNIT_EACH);
	ck_assert_int_eq(block->section, SECTION_WALLS);
	ck_assert_int_eq(block->block.along, 16 * NM_PER_INCH);
	ck_assert_int_eq(block->block.across, 8 * NM_PER_INCH);
	ck_assert_int_eq(block->block.up, 6 * NM_PER_INCH);
	ck_assert_str_eq(garden_note(&garden, block), "long x deep x high; 5 % breakage");
}
END_TEST

START_TEST(each_size_of_block_and_cap_has_its_row)
{
	static const char *const ids[] = { "block.wall", "block.wall", "block.cap",
		"adhesive.cartridge", "soil.topsoil", "soil.compost", "mulch" };
	const struct item *rows[ROWS_MOST];

	garden_rows(&garden, (const char *[]){ "aaaaaa.bbbbbb", "aaaaaa.bbbbbb", "aaaaaa.bbbbbb",
		"aaaaaa.bbbbbb", NULL });
	plot_set(&garden.plot, 'a', BED_BLOCK, "1 ft x 6 in x 4 in");
	plot_set(&garden.plot, 'b', BED_CAP, "1 ft x 6 in x 2 in");
	garden_count(&garden);
	ck_assert_int_eq(beds_rows(rows), 7);
	for (int i = 0; i < 7; i++)
		ck_assert_str_eq(garden_id(&garden, rows[i]), ids[i]);
	ck_assert_int_eq(rows[0]->block.along, 12 * NM_PER_INCH);
	ck_assert_int_eq(rows[1]->block.along, 16 * NM_PER_INCH);
	ck_assert_int_eq(rows[2]->block.up, 2 * NM_PER_INCH);
	ck_assert_int_eq(rows[3]->block.along, 0);
}
END_TEST

/* Two beads under each of courses 2 and 3, 16 blocks of 16 in each: 2 x 2 x 21 ft 4 in. 2.84
 * cartridges and a tenth are 3.13. Without a value the spare is a tenth; common practice, no
 * published source. */
static const struct { const char *cartridge, *spare; double laid, part, order; } cartridges[] = {
	{ "30 ft", "0 %", 1024.0 / 360, 0, 3 },
	{ "30 ft", NULL, 1024.0 / 360, 0.1, 4 },
	{ "30 ft", "5 %", 1024.0 / 360, 0.05, 3 },
	{ "1024 in", "0 %", 1, 0, 1 },
	{ "1024 in", NULL, 1, 0.1, 2 },
	{ "512 in", "0 %", 2, 0, 2 },
	{ "512 in", "50 %", 2, 0.5, 3 },
	{ "512 in", "51 %", 2, 0.51, 4 },
	{ "1023 63/64 in", "0 %", 1024 / (1023 + 63.0 / 64), 0, 2 },
};

START_TEST(adhesive_is_ordered_in_whole_cartridges)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 0, ALLOW_CARTRIDGE, cartridges[_i].cartridge);
	if (cartridges[_i].spare)
		plot_set(&garden.plot, 0, ALLOW_ADHESIVE_SPARE, cartridges[_i].spare);
	garden_count(&garden);
	ck_assert_double_eq_tol(item("adhesive.cartridge")->laid, cartridges[_i].laid, EXACT);
	ck_assert_double_eq_tol(item("adhesive.cartridge")->spare,
		cartridges[_i].laid * cartridges[_i].part, EXACT);
	ck_assert_double_eq(item("adhesive.cartridge")->order, cartridges[_i].order);
}
END_TEST

START_TEST(a_single_course_without_cap_needs_no_adhesive)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_COURSES, "1");
	garden_count(&garden);
	ck_assert_ptr_null(garden_item(&garden, "adhesive.cartridge"));
	ck_assert_ptr_nonnull(garden_item(&garden, "block.wall"));
}
END_TEST

/* A raised bed of 17.78 cu ft in place, half topsoil, and 12 cu ft of amendment. */
START_TEST(a_part_is_one_row_over_raised_and_level_beds)
{
	garden_rows(&garden, (const char *[]){ "bbbbbbbb.cccccc", "bbbbbbbb.cccccc",
		"bbbbbbbb.cccccc", "bbbbbbbb.cccccc", NULL });
	plot_set(&garden.plot, 'b', BED_INSIDE, "filled");
	plot_set(&garden.plot, 'b', BED_FREEBOARD, "4 in");
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	plot_set(&garden.plot, 'c', BED_AMEND, "6 in");
	garden_count(&garden);
	const double in_place = 17.0 + 7.0 / 9;

	ck_assert_double_eq_tol(item("soil.topsoil")->laid / CUBIC_FOOT, in_place / 2, EXACT);
	ck_assert_double_eq_tol(item("soil.topsoil")->spare / CUBIC_FOOT, in_place / 2 * 0.2,
		EXACT);
	ck_assert_double_eq_tol(item("soil.compost")->laid / CUBIC_FOOT, in_place / 2 + 12, EXACT);
	ck_assert_double_eq_tol(item("soil.compost")->spare / CUBIC_FOOT, in_place / 2 * 0.2,
		EXACT);
	ck_assert_double_eq_tol(item("soil.compost")->order / CUBIC_FOOT,
		in_place / 2 * 1.2 + 12, EXACT);
	ck_assert_str_eq(garden_note(&garden, item("soil.compost")), "20 % settlement");
	ck_assert_double_eq_tol(item("mulch")->laid / CUBIC_FOOT, (in_place + 24) / 6, EXACT);
	ck_assert_double_eq(item("mulch")->order, item("mulch")->laid);
	ck_assert_double_eq(item("mulch")->spare, 0);
}
END_TEST

START_TEST(a_part_is_labelled_in_plain_words)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_MIX, "well-rotted-manure 1");
	garden_count(&garden);
	ck_assert_str_eq(garden_label(&garden, item("soil.well-rotted-manure")),
		"Well rotted manure");
	ck_assert_int_eq(item_unit(item("soil.well-rotted-manure")), UNIT_M3);
	ck_assert_int_eq(item("soil.well-rotted-manure")->section, SECTION_FILL);
}
END_TEST

/* 2,700 lb of stone, 2,000 lb of soil and 1,100 lb of compost to a cubic yard, the defaults: common
 * practice, no published source. */
static const struct { const char *part; double pounds; } parts[] = {
	{ "sand", 2700 }, { "sharp-sand", 2700 }, { "grit", 2700 }, { "coarse-grit", 2700 },
	{ "gravel", 2700 }, { "pea-gravel", 2700 }, { "topsoil", 2000 }, { "sand-loam", 2000 },
	{ "thousand", 2000 }, { "leaf-mould", 2000 }, { "compost", 1100 },
};

START_TEST(a_mineral_part_of_a_mix_weighs_as_stone)
{
	char mix[32], id[32];

	garden_rectangle(&garden, 'b', 8, 4);
	snprintf(mix, sizeof mix, "%s 1", parts[_i].part);
	snprintf(id, sizeof id, "soil.%s", parts[_i].part);
	plot_set(&garden.plot, 'b', BED_MIX, mix);
	garden_count(&garden);
	ck_assert_double_eq_tol(item(id)->unit_weight, parts[_i].pounds * 0.45359237 / CUBIC_YARD,
		1e-6);
}
END_TEST

START_TEST(an_amendment_has_no_spare_and_no_word_of_settlement)
{
	garden_rectangle(&garden, 'c', 8, 4);
	plot_set(&garden.plot, 'c', BED_BUILD, "level");
	garden_count(&garden);
	const struct item *rows[ROWS_MOST];

	ck_assert_double_eq(item("soil.compost")->spare, 0);
	ck_assert_ptr_null(garden_note(&garden, item("soil.compost")));
	ck_assert_int_eq(beds_rows(rows), 2);
}
END_TEST

START_TEST(what_the_plot_allows_is_named_in_the_note)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 0, ALLOW_BREAKAGE, "12.5 %");
	plot_set(&garden.plot, 0, ALLOW_SETTLEMENT, "20 %");
	garden_count(&garden);
	ck_assert_str_eq(garden_note(&garden, item("block.wall")),
		"long x deep x high; 12.5 % breakage");
	ck_assert_double_eq(item("block.wall")->spare, 6);
	ck_assert_str_eq(garden_note(&garden, item("soil.topsoil")), "20 % settlement");
	ck_assert_double_eq_tol(item("soil.topsoil")->order, item("soil.topsoil")->laid * 1.2,
		EXACT);
}
END_TEST

START_TEST(a_plot_without_beds_needs_nothing_for_them)
{
	const struct item *rows[ROWS_MOST];

	garden_rows(&garden, (const char *[]){ "ppllS.", NULL });
	garden_count(&garden);
	ck_assert_int_eq(beds_rows(rows), 0);
}
END_TEST

/* Of what is bought by weight a unit is a kilogram; liner is never weighed. */
START_TEST(a_unit_weighs_what_its_good_is_allowed_for)
{
	garden_rows(&garden, (const char *[]){ "bbbbbbbb.llll", "bbbbbbbb.llll", "bbbbbbbb.llll",
		"bbbbbbbb.llll", NULL });
	plot_set(&garden.plot, 'l', LAWN_COVER, "seed");
	plot_set(&garden.plot, 0, ALLOW_DENSITY_MULCH, "300 kg/m3");
	garden_count(&garden);
	ck_assert_double_eq(item("seed")->unit_weight, 1);
	ck_assert_double_eq_tol(item("mulch")->unit_weight, 300, 1e-6);
	ck_assert_double_eq(item("liner")->unit_weight, 0);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("items");
	TCase *walls = suite_case(suite, "walls");
	TCase *fill = suite_case(suite, "fill");

	tcase_add_checked_fixture(walls, NULL, teardown);
	tcase_add_test(walls, blocks_are_laid_as_bought_with_breakage_spare);
	tcase_add_test(walls, each_size_of_block_and_cap_has_its_row);
	tcase_add_loop_test(walls, adhesive_is_ordered_in_whole_cartridges, 0,
		sizeof cartridges / sizeof *cartridges);
	tcase_add_test(walls, a_single_course_without_cap_needs_no_adhesive);

	tcase_add_checked_fixture(fill, NULL, teardown);
	tcase_add_test(fill, a_part_is_one_row_over_raised_and_level_beds);
	tcase_add_test(fill, a_part_is_labelled_in_plain_words);
	tcase_add_loop_test(fill, a_mineral_part_of_a_mix_weighs_as_stone, 0,
		sizeof parts / sizeof *parts);
	tcase_add_test(fill, an_amendment_has_no_spare_and_no_word_of_settlement);
	tcase_add_test(fill, what_the_plot_allows_is_named_in_the_note);
	tcase_add_test(fill, a_unit_weighs_what_its_good_is_allowed_for);
	tcase_add_test(fill, a_plot_without_beds_needs_nothing_for_them);
	return suite;
}
