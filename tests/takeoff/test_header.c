/* The header from the tap to the beds: cases on small plans; laws are test_header_tree.c. */
#include "takeoff/watering/header.h"
#include "base/measure.h"
#include "support/around.h"
#include "support/garden.h"
#include "support/runner.h"

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static const struct watering *header_of(const char *const *rows, const char *lines)
{
	garden_rows(&garden, rows);
	around_add(&garden.plot, lines);
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	garden_count(&garden);
	return &garden.takeoff.watering;
}

static bool has_leg(const struct watering *watering, int x1, int y1, int x2, int y2)
{
	return legs_cover(&watering->legs, (struct leg){ { x1, y1 }, { x2, y2 } });
}

START_TEST(it_goes_the_shortest_way_to_each_bed_and_shares_what_it_can)
{
	const struct watering *watering = header_of((const char *const[]){ "..........",
		"......bb..", "..........", "......bb..", "..........", NULL }, "tap 0,2\n");

	ck_assert_int_eq(watering->count, 2);
	/* six sides to the first bed, one more to the second */
	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert(has_leg(watering, 0, 2, 6, 2));
	ck_assert(has_leg(watering, 6, 2, 6, 3));
	ck_assert_int_eq(watering->sleeve_count, 0);
}
END_TEST

START_TEST(it_goes_round_fixtures_houses_and_beds)
{
	const struct watering *watering = header_of((const char *const[]){ "......", "..SS..",
		"..SS..", "..SSbb", "..SSSS", NULL }, "tap 1,4\n");

	/* hard by the fixture it would be 3 + 3 + 2 sides, 6 of them along it: it keeps a foot off,
	 * 4 + 4 + 3 sides */
	ck_assert_int_eq(watering->trench, 11 * NM_PER_FOOT);
	ck_assert(has_leg(watering, 2, 0, 4, 0));
	garden_fini(&garden);
	watering = header_of((const char *const[]){ "........", "........", "......bb", NULL },
		"house \"H\"\n  from 2,0 to 4,2\ntap 0,1\n");
	/* level through the house would be 6 sides and 1 down; it goes below it */
	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert(!has_leg(watering, 2, 1, 3, 1));
}
END_TEST

/* Of ways as long it is the one on open ground. */
START_TEST(it_keeps_off_paths_and_walls_where_that_is_no_longer)
{
	const struct watering *watering = header_of((const char *const[]){ "......", ".pppp.",
		".pppp.", ".pppp.", "....bb", NULL }, "tap 0,1\n");

	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert_int_eq(watering->sleeve_count, 0);
}
END_TEST

/* 3 ft of path, and 12 in past either side. */
START_TEST(under_a_path_it_lies_in_a_sleeve)
{
	const struct watering *watering = header_of((const char *const[]){ "..ppp....", "..ppp..bb",
		"..ppp..bb", NULL }, "tap 0,2\n");

	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert_int_eq(watering->sleeve_count, 1);
	ck_assert_int_eq(watering->sleeves[0].length, 5 * NM_PER_FOOT);
	ck_assert_double_eq_tol(garden_item(&garden, "water.sleeve")->order, 5 * 0.3048, 1e-9);
}
END_TEST

START_TEST(a_bed_that_it_cannot_get_to_is_a_snag)
{
	const struct watering *watering = header_of((const char *const[]){ "......", ".SSSS.",
		".SbbS.", ".SSSS.", "......", NULL }, "tap 0,0\n");
	const struct snag *snag = garden_snag(&garden, SNAG_WATER_CUT_OFF, 0);

	ck_assert(!watering->list[0].is_reached);
	ck_assert_int_eq(watering->trench, 0);
	ck_assert_ptr_nonnull(snag);
	ck_assert_int_eq(snag->region, watering->list[0].region);
	garden_fini(&garden);
	watering = header_of((const char *const[]){ "..bb", NULL }, "tap 0,0\n");
	ck_assert(watering->list[0].is_reached);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_CUT_OFF, 0));
	garden_fini(&garden);
	/* at the bed's own corner */
	watering = header_of((const char *const[]){ "bb..", NULL }, "tap 0,0\n");
	ck_assert(watering->list[0].is_reached);
	ck_assert_int_eq(watering->trench, 0);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_CUT_OFF, 0));
}
END_TEST

/* On the plan's edge, at its corner, on a house's wall, and at the corner of a house in a bed: out
 * of that bed to the other. */
START_TEST(from_a_tap_at_an_edge_or_a_house_beside_a_bed_it_goes_through_it)
{
	static const struct { const char *lines; int sides; } taps[] = { { "tap 0,2\n", 6 },
		{ "tap 0,4\n", 7 }, { "house \"H\"\n  from -4,0 to 0,4\ntap 0,2\n", 6 },
		{ "house \"H\"\n  from 0,0 to 2,4\ntap 2,2\n", 4 },
		{ "house \"H\"\n  from 0,0 to 2,2\ntap 2,2\n", 4 } };
	const struct watering *watering = header_of((const char *const[]){ "bbbb......",
		"bbbb..bbbb", "bbbb..bbbb", "bbbb......", NULL }, taps[_i].lines);

	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_CUT_OFF, 0));
	ck_assert_int_eq(watering->trench, taps[_i].sides * NM_PER_FOOT);
}
END_TEST

/* From between two beds there is no way out; beside one and open ground it goes along the bed. */
START_TEST(a_tap_at_an_edge_is_within_a_bed_only_where_nothing_else_is)
{
	const struct watering *watering = header_of((const char *const[]){ "bbbb..bb", "eeee....",
		NULL }, "tap 0,1\n");

	ck_assert_int_eq(watering->count, 2);
	ck_assert(watering->list[0].is_reached);
	ck_assert(!watering->list[1].is_reached);
	garden_fini(&garden);
	watering = header_of((const char *const[]){ "........", "bbbb..bb", "bbbb..bb", NULL },
		"tap 0,1\n");
	ck_assert_int_eq(watering->trench, 6 * NM_PER_FOOT);
	ck_assert(has_leg(watering, 0, 1, 6, 1));
}
END_TEST

START_TEST(without_a_tap_there_is_none)
{
	const struct watering *watering = header_of((const char *const[]){ "..ppbb", NULL }, "");

	ck_assert(!watering->has_tap);
	ck_assert_int_eq(watering->trench, 0);
	ck_assert_int_eq((int64_t)watering->legs.count, 0);
	ck_assert_ptr_null(garden_item(&garden, "water.sleeve"));
	ck_assert_ptr_null(garden_snag(&garden, SNAG_WATER_CUT_OFF, 0));
}
END_TEST

/* Blocks 8 in deep; the base goes 6 in past them outside and 2 in inside: 16 in, and 12 in past
 * either side. */
START_TEST(it_comes_into_a_raised_bed_under_its_wall)
{
	const struct watering *watering;

	garden_rows(&garden, (const char *const[]){ "......bbbb", "......bbbb", "......bbbb",
		"......bbbb", NULL });
	around_add(&garden.plot, "tap 0,2\n");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden_count(&garden);
	watering = &garden.takeoff.watering;
	ck_assert_int_eq(watering->walls, 1);
	/* it comes square to the wall, and ends at its outer face, over 6 in of the base */
	ck_assert_int_eq(watering->trench, 6 * NM_PER_FOOT);
	/* what it has of a sleeve there is a part of the wall's */
	ck_assert_int_eq(watering->sleeves[0].length, 18 * NM_PER_INCH);
	ck_assert_int_eq(watering->sleeve_length, 40 * NM_PER_INCH);
	/* under 8 in of wall, up three courses of 6 in, along three lines 10 2/3 in apart */
	ck_assert_int_eq(watering->list[0].drip.count, 3);
	ck_assert_double_eq_tol(metres(watering->list[0].within) / 0.0254,
		8 + 18 + 2 * 32.0 / 3, 1e-6);
}
END_TEST

/* ---- Walls and posts ------------------------------------------------------------------------- */

/* Raised beds, of which those of b are watered. */
static const struct watering *raised_of(const char *const *rows, const char *lines)
{
	garden_rows(&garden, rows);
	around_add(&garden.plot, lines);
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	garden_count(&garden);
	return &garden.takeoff.watering;
}

/* Past a bed's wall to another bed behind it. */
START_TEST(it_keeps_a_foot_off_a_wall_that_it_passes)
{
	const struct watering *watering = raised_of((const char *const[]){ "..........",
		"..aaaa....", "..aaaa....", "..aaaa....", "..aaaa....", "..........",
		"bbbbbbbbbb", "bbbbbbbbbb", "bbbbbbbbbb", "bbbbbbbbbb", NULL }, "tap 2,0\n");

	/* down along the wall it would be 6 sides */
	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert(has_leg(watering, 1, 1, 1, 6));
}
END_TEST

/* Between two walls 1 ft apart: there is no other way. */
START_TEST(along_a_wall_it_goes_where_there_is_no_other_way)
{
	static const char *const narrow[] = { "SSSSS.SSSSS", "aaaaa.aaaaa", "aaaaa.aaaaa",
		"aaaaa.aaaaa", "...........", "bbbbbbbbbbb", "bbbbbbbbbbb", "bbbbbbbbbbb",
		"bbbbbbbbbbb", NULL };
	const struct watering *watering = raised_of(narrow, "tap 5,0\n");

	ck_assert(watering->list[0].is_reached);
	ck_assert(has_leg(watering, 5, 0, 5, 5));
	ck_assert_int_eq(watering->trench, 5 * NM_PER_FOOT);
}
END_TEST

/* 6 in cells: the base reaches 6 in past the wall, and the trench is 6 in wide. */
START_TEST(off_a_wall_is_off_its_base)
{
	static const char *const rows[] = { "................", "................",
		"...aaaaaaaa.....", "...aaaaaaaa.....", "...aaaaaaaa.....", "...aaaaaaaa.....",
		"...aaaaaaaa.....", "...aaaaaaaa.....", "................", "................",
		"................", "eeeeeeeeeeeeeeee", NULL };
	static const struct { const char *reach; int x; } rows_of[] = { { "6 in", 1 },
		{ "3 in", 2 }, { "2 in", 2 }, { "3 3/64 in", 1 } };

	garden_rows(&garden, rows);
	around_add(&garden.plot, "tap 3,0\n");
	plot_set(&garden.plot, 0, HEAD_CELL, "6 in");
	plot_set(&garden.plot, 'e', BED_BUILD, "level");
	plot_set(&garden.plot, 'e', BED_WATER, "drip");
	plot_set(&garden.plot, 'a', BED_REACH, rows_of[_i].reach);
	garden_count(&garden);
	ck_assert(has_leg(&garden.takeoff.watering, rows_of[_i].x, 2, rows_of[_i].x, 8));
}
END_TEST

/* Of two ways with one bend, that whose trench does not come to the wall's lower left corner. */
START_TEST(it_keeps_off_a_corner_where_that_is_no_longer)
{
	const struct watering *watering = header_of((const char *const[]){ "........", "..aaaa..",
		"..aaaa..", "..aaaa..", "..aaaa..", "........", "........", "..bbbb..", NULL },
		"tap 1,5\n");

	ck_assert_int_eq(watering->trench, 3 * NM_PER_FOOT);
	ck_assert(has_leg(watering, 1, 5, 1, 7));
}
END_TEST

/* The tap is level with the upper corner of the bed, 6 sides off it. */
START_TEST(it_comes_square_to_a_side_clear_of_the_corners)
{
	static const char *const rows[] = { "..........", "..........", "......bbbb",
		"......bbbb", "......bbbb", "......bbbb", NULL };
	const struct watering *watering = raised_of(rows, "tap 0,2\n");

	/* one side beyond the way to the corner, and the last one square to the wall */
	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert(has_leg(watering, 5, 3, 6, 3));
	garden_fini(&garden);
	/* Blocks 16 in deep and 2 in of base: 18 in are two sides. */
	garden_rows(&garden, rows);
	around_add(&garden.plot, "tap 0,2\n");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_set(&garden.plot, 'b', BED_BLOCK, "16 in x 11 in x 6 in");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.watering.trench, 8 * NM_PER_FOOT);
	ck_assert(has_leg(&garden.takeoff.watering, 5, 4, 6, 4));
}
END_TEST

START_TEST(of_ways_as_long_it_is_the_one_with_the_fewest_bends)
{
	const struct watering *watering = header_of((const char *const[]){ "........", "........",
		"........", "........", "........", "......bb", NULL }, "tap 1,1\n");

	ck_assert_int_eq(watering->trench, 9 * NM_PER_FOOT);
	ck_assert_uint_eq(watering->legs.count, 2);
}
END_TEST

/* The first bed has two ways as long; the second one shares more of the trench. */
START_TEST(of_ways_as_long_it_leaves_the_trench_of_others_last)
{
	const struct watering *watering = header_of((const char *const[]){ "..........",
		"..........", "....b.....", "..........", "....b.....", NULL }, "tap 0,2\n");

	ck_assert_int_eq(watering->trench, 6 * NM_PER_FOOT);
}
END_TEST

/* Posts at 2 ft and 6 ft across, 3 ft down, with holes 10 1/2 in across. */
START_TEST(it_goes_round_holes_of_posts)
{
	const struct watering *watering = header_of((const char *const[]){ "........", "........",
		"........", "........", "........", "........", "..bb....", NULL },
		"fence \"F\"\n  run 2,3 6,3\ntap 2,0\n");

	ck_assert_ptr_null(garden_snag(&garden, SNAG_TRENCH_HOLE, 0));
	/* to the bed's other corner */
	ck_assert_int_eq(watering->trench, 7 * NM_PER_FOOT);
	ck_assert(has_leg(watering, 3, 1, 3, 6));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("header");
	TCase *cases = suite_case(suite, "cases"), *walls = suite_case(suite, "walls");

	tcase_add_checked_fixture(cases, NULL, teardown);
	tcase_add_test(cases, it_goes_the_shortest_way_to_each_bed_and_shares_what_it_can);
	tcase_add_test(cases, it_goes_round_fixtures_houses_and_beds);
	tcase_add_test(cases, it_keeps_off_paths_and_walls_where_that_is_no_longer);
	tcase_add_test(cases, under_a_path_it_lies_in_a_sleeve);
	tcase_add_test(cases, a_bed_that_it_cannot_get_to_is_a_snag);
	tcase_add_loop_test(cases, from_a_tap_at_an_edge_or_a_house_beside_a_bed_it_goes_through_it,
		0, 5);
	tcase_add_test(cases, a_tap_at_an_edge_is_within_a_bed_only_where_nothing_else_is);
	tcase_add_test(cases, without_a_tap_there_is_none);
	tcase_add_test(cases, it_comes_into_a_raised_bed_under_its_wall);
	tcase_add_test(cases, of_ways_as_long_it_is_the_one_with_the_fewest_bends);
	tcase_add_test(cases, of_ways_as_long_it_leaves_the_trench_of_others_last);

	tcase_add_checked_fixture(walls, NULL, teardown);
	tcase_add_test(walls, it_keeps_a_foot_off_a_wall_that_it_passes);
	tcase_add_test(walls, along_a_wall_it_goes_where_there_is_no_other_way);
	tcase_add_loop_test(walls, off_a_wall_is_off_its_base, 0, 4);
	tcase_add_test(walls, it_keeps_off_a_corner_where_that_is_no_longer);
	tcase_add_test(walls, it_comes_square_to_a_side_clear_of_the_corners);
	tcase_add_test(walls, it_goes_round_holes_of_posts);
	return suite;
}
