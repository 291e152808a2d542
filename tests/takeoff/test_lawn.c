/* Lawns: turf, seed and topsoil. */
#include "support/garden.h"
#include "support/runner.h"

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* With nothing set: 3 to 5 % more for trimming, Maryland Turfgrass Council, title and year not
 * noted. By arithmetic 40 x 24 ft are 960 sq ft. */
START_TEST(turf_is_the_lawn_and_3_to_5_percent_for_trimming)
{
	for (const char *units = "imperial"; units; units = *units == 'i' ? "metric" : NULL) {
		garden_rectangle(&garden, 'l', 40, 24);
		plot_set(&garden.plot, 0, HEAD_UNITS, units);
		garden_count(&garden);
		const struct item *turf = garden_item(&garden, "turf");

		ck_assert_double_eq_tol(turf->laid / SQUARE_FOOT, 960, EXACT);
		ck_assert(turf->order >= turf->laid * 1.03 - EXACT);
		ck_assert(turf->order <= turf->laid * 1.05 + EXACT);
		ck_assert_double_eq_tol(turf->laid + turf->spare, turf->order, EXACT);
		ck_assert_int_eq(item_unit(turf), UNIT_M2);
		ck_assert_int_eq(turf->section, SECTION_LAWN);
		if (*units == 'i')
			garden_fini(&garden);
	}
}
END_TEST

START_TEST(a_plot_may_allow_for_no_trimming)
{
	garden_rectangle(&garden, 'l', 24, 12);
	plot_set(&garden.plot, 0, ALLOW_TURF_SPARE, "0 %");
	garden_count(&garden);
	ck_assert_double_eq_tol(garden_item(&garden, "turf")->order / SQUARE_FOOT, 288, EXACT);
}
END_TEST

/* Under 500 sq ft 10 %: common practice, no published source. */
static const struct { int columns, rows; double share; } sizes[] = {
	{ 25, 20, 0.05 }, { 24, 20, 0.1 }, { 499, 1, 0.1 }, { 50, 20, 0.05 },
};

START_TEST(small_lawns_take_twice_the_trimming)
{
	garden_rectangle(&garden, 'l', sizes[_i].columns, sizes[_i].rows);
	garden_count(&garden);
	const struct item *turf = garden_item(&garden, "turf");

	ck_assert_double_eq_tol(turf->spare, turf->laid * sizes[_i].share, EXACT);
}
END_TEST

/* Two lawns of 260 sq ft are one order of 520. */
START_TEST(all_turf_together_is_small_or_not)
{
	garden_rectangle(&garden, 'l', 53, 10);
	for (int y = 0; y < 10; y++)
		garden.plot.ground.cells[y * 53 + 26] = OPEN_GROUND;
	garden_count(&garden);
	const struct item *turf = garden_item(&garden, "turf");

	ck_assert_int_eq(garden.takeoff.lawns.count, 2);
	ck_assert_double_eq_tol(turf->laid / SQUARE_FOOT, 520, EXACT);
	ck_assert_double_eq_tol(turf->spare, turf->laid * 0.05, EXACT);
}
END_TEST

/* 6 lb for each 1,000 sq ft: common practice, no published source. */
START_TEST(seed_goes_by_its_rate)
{
	garden_rectangle(&garden, 'l', 50, 20);
	plot_set(&garden.plot, 'l', LAWN_COVER, "seed");
	garden_count(&garden);
	ck_assert_double_eq_tol(garden_item(&garden, "seed")->order / 0.45359237, 6, EXACT);
	ck_assert_int_eq(item_unit(garden_item(&garden, "seed")), UNIT_KG);
	ck_assert_ptr_null(garden_item(&garden, "turf"));
	plot_set(&garden.plot, 0, ALLOW_SEED, "30 g/m2");
	garden_count(&garden);
	ck_assert_double_eq_tol(garden_item(&garden, "seed")->order, 1000 * SQUARE_FOOT * 0.030,
		EXACT);
}
END_TEST

/* By arithmetic 1 cu yd covers 324/d sq ft at d inches. */
static const double covered[] = { 324, 162, 108, 81, 64.8, 54 };

START_TEST(a_cubic_yard_of_topsoil_covers_324_sq_ft_over_its_inches)
{
	char depth[] = "1 in";

	garden_rectangle(&garden, 'l', 18, 18);
	depth[0] = (char)('1' + _i);
	plot_set(&garden.plot, 'l', LAWN_TOPSOIL, depth);
	garden_count(&garden);
	const struct item *topsoil = garden_item(&garden, "topsoil.lawn");

	ck_assert_double_eq_tol(324 / (topsoil->laid / CUBIC_YARD), covered[_i], EXACT);
}
END_TEST

/* 350 x 200 ft at 2 in are 434 cu yd by the factor 0.0031 an inch and square foot: Cornell Waste
 * Management Institute (publisher from memory), Cornell Composting, year not noted. The factor is
 * 1/324 rounded up; exactly it is 432.1. */
START_TEST(topsoil_of_350_by_200_ft_at_2_in_is_that_of_the_published_factor)
{
	garden_rectangle(&garden, 'l', 350, 200);
	plot_set(&garden.plot, 'l', LAWN_TOPSOIL, "2 in");
	garden_count(&garden);
	double yards = garden_item(&garden, "topsoil.lawn")->laid / CUBIC_YARD;

	ck_assert_double_eq_tol(yards, 350.0 * 200 * 2 / 324, EXACT);
	ck_assert_double_eq_tol(yards, 434, 434 * 0.005);
}
END_TEST

START_TEST(a_lawn_without_cover_needs_nothing)
{
	garden_rectangle(&garden, 'l', 5, 5);
	plot_set(&garden.plot, 'l', LAWN_COVER, "none");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.lawns.count, 0);
	ck_assert_uint_eq(garden.takeoff.items.count, 0);
}
END_TEST

START_TEST(each_lawn_has_its_row_in_order)
{
	garden_rows(&garden, (const char *const[]){ "ll.m", "..lm", NULL });
	plot_set(&garden.plot, 'm', LAWN_COVER, "seed");
	garden_count(&garden);
	const struct lawn *lawns = garden.takeoff.lawns.list;

	ck_assert_int_eq(garden.takeoff.lawns.count, 3);
	ck_assert_double_eq_tol(lawns[0].area / SQUARE_FOOT, 2, EXACT);
	ck_assert_int_eq(lawns[0].cover, COVER_TURF);
	ck_assert_double_eq(lawns[0].seed, 0);
	ck_assert_double_eq_tol(lawns[1].area / SQUARE_FOOT, 2, EXACT);
	ck_assert_int_eq(lawns[1].cover, COVER_SEED);
	ck_assert(lawns[1].seed > 0);
	ck_assert_double_eq_tol(lawns[2].area / SQUARE_FOOT, 1, EXACT);
	ck_assert_int_eq(lawns[2].region, 2);
	/* Topsoil under turf and seed alike, 4 in deep. */
	ck_assert_double_eq_tol(garden_item(&garden, "topsoil.lawn")->laid / CUBIC_FOOT, 5.0 / 3,
		EXACT);
}
END_TEST

/* ---- Over a wall's base ---------------------------------------------------------------------- */

/* A bed of 8 x 4 ft within 1 ft of lawn all round, 10 x 6 ft: of its 28 sq ft the 13 that lie
 * within 6 in of the bed, its corners too, are over the base. */
static void lawn_round_a_bed(void)
{
	garden_rows(&garden, (const char *const[]){ "llllllllll", "lbbbbbbbbl", "lbbbbbbbbl",
		"lbbbbbbbbl", "lbbbbbbbbl", "llllllllll", NULL });
}

/* Embed, depth of topsoil, cover and turf; the depth of topsoil that there is room for, and what of
 * it lies under it, in inches. */
static const struct { const char *embed, *topsoil, *cover, *turf; double soil, under; } rooms[] = {
	{ "2 in", "4 in", "turf", "3/4 in", 1.25, 0 },
	{ "2 in", "4 in", "seed", "3/4 in", 2, 0 },
	{ "6 in", "4 in", "turf", "1 in", 4, 1 },
	{ "5 in", "4 in", "turf", "1 in", 4, 0 },
	{ "1/2 in", "4 in", "turf", "3/4 in", 0, 0 },
	{ "0 in", "4 in", "seed", "3/4 in", 0, 0 },
	{ "3 in", "0 in", "turf", "1 in", 0, 2 },
};

START_TEST(topsoil_over_a_base_is_what_there_is_room_for_under_the_turf)
{
	lawn_round_a_bed();
	plot_set(&garden.plot, 'b', BED_EMBED, rooms[_i].embed);
	plot_set(&garden.plot, 'l', LAWN_TOPSOIL, rooms[_i].topsoil);
	plot_set(&garden.plot, 'l', LAWN_COVER, rooms[_i].cover);
	plot_set(&garden.plot, 'l', LAWN_THICKNESS, rooms[_i].turf);
	garden_count(&garden);
	const struct lawn *lawn = &garden.takeoff.lawns.list[0];
	double depth = (double)lawn->topsoil_depth / (double)NM_PER_INCH;

	ck_assert_double_eq_tol(over_base_of(&garden.takeoff.over_bases, 0).area / SQUARE_FOOT, 13,
		EXACT);
	ck_assert_double_eq_tol(lawn->topsoil / CUBIC_FOOT,
		15 * depth / 12 + 13 * rooms[_i].soil / 12, EXACT);
	ck_assert_double_eq_tol(garden.takeoff.over_bases.backfill / CUBIC_FOOT,
		13 * rooms[_i].under / 12, EXACT);
	ck_assert_double_eq_tol(lawn->order, lawn->topsoil * 1.15, EXACT);
}
END_TEST

/* Four L-shaped beds of 9 x 5 ft less 4 x 2 ft, each in a frame of turf 1 ft wide, 160 sq ft in
 * all: 60 sq ft of it lie on the bases, where 1 1/4 in fit and not 4. */
START_TEST(frames_round_four_beds_take_39_6_cu_ft)
{
	garden_rows(&garden, (const char *const[]){
		"lllllllllll.lllllllllll.lllllllllll.lllllllllll",
		"lbbbbbbbbbl.lbbbbbbbbbl.lbbbbbbbbbl.lbbbbbbbbbl",
		"lbbbbbbbbbl.lbbbbbbbbbl.lbbbbbbbbbl.lbbbbbbbbbl",
		"lbbbbbbbbbl.lbbbbbbbbbl.lbbbbbbbbbl.lbbbbbbbbbl",
		"lbbbbblllll.lbbbbblllll.lbbbbblllll.lbbbbblllll",
		"lbbbbblllll.lbbbbblllll.lbbbbblllll.lbbbbblllll",
		"lllllllllll.lllllllllll.lllllllllll.lllllllllll", NULL });
	plot_set(&garden.plot, 'b', BED_EMBED, "2 in");
	garden_count(&garden);
	ck_assert_double_eq_tol(garden_item(&garden, "topsoil.lawn")->laid / CUBIC_FOOT,
		100 * 4.0 / 12 + 60 * 1.25 / 12, EXACT);
}
END_TEST

/* Common practice, no published source. */
START_TEST(lawn_soil_settles_as_allowed_for)
{
	garden_rectangle(&garden, 'l', 30, 1);
	garden_count(&garden);
	const struct item *topsoil = garden_item(&garden, "topsoil.lawn");

	ck_assert_double_eq_tol(topsoil->laid / CUBIC_FOOT, 10, EXACT);
	ck_assert_double_eq_tol(topsoil->spare / CUBIC_FOOT, 1.5, EXACT);
	ck_assert_str_eq(garden_note(&garden, topsoil), "15 % settlement");
	plot_set(&garden.plot, 0, ALLOW_SETTLEMENT, "25 %");
	garden_count(&garden);
	topsoil = garden_item(&garden, "topsoil.lawn");
	ck_assert_double_eq_tol(topsoil->order / CUBIC_FOOT, 12.5, EXACT);
	ck_assert_str_eq(garden_note(&garden, topsoil), "25 % settlement");
}
END_TEST

/* Under turf 3/4 in thick 2 in of soil take an embed of 2 3/4 in. Common practice, no published
 * source. */
static const struct { const char *embed, *cover, *least; bool is_snag; } thin[] = {
	{ "2 3/4 in", "turf", "2 in", false }, { "2 47/64 in", "turf", "2 in", true },
	{ "2 in", "seed", "2 in", false }, { "1 63/64 in", "seed", "2 in", true },
	{ "2 in", "none", "2 in", false }, { "1 63/64 in", "none", "2 in", true },
	{ "2 in", "turf", "1 1/4 in", false }, { "2 in", "turf", "1 17/64 in", true },
};

START_TEST(less_than_2_in_of_soil_over_a_base_is_a_snag_of_the_lawn)
{
	lawn_round_a_bed();
	plot_set(&garden.plot, 'b', BED_EMBED, thin[_i].embed);
	plot_set(&garden.plot, 'l', LAWN_COVER, thin[_i].cover);
	plot_set(&garden.plot, 0, ALLOW_LAWN_SOIL, thin[_i].least);
	garden_count(&garden);
	const struct snag *snag = garden_snag(&garden, SNAG_LAWN_THIN, 0);

	ck_assert_int_eq(snag != NULL, thin[_i].is_snag);
	ck_assert(!snag || snag->region == 0);
}
END_TEST

START_TEST(a_thin_lawn_says_what_room_there_is)
{
	lawn_round_a_bed();
	plot_set(&garden.plot, 'b', BED_EMBED, "2 in");
	garden_count(&garden);
	ck_assert_str_eq(garden_sentence(&garden, garden_snag(&garden, SNAG_LAWN_THIN, 0)),
		"Over a wall's base there is room for 1 1/4 in of soil under the grass, less than "
		"2 in: it dries out.");
}
END_TEST

/* Nor is there another snag of it where a mower as wide as the lawn will do. */
START_TEST(an_embed_that_is_not_set_leaves_room_for_the_lawn)
{
	lawn_round_a_bed();
	plot_set(&garden.plot, 0, ALLOW_LAWN_CLEAR, "1 ft");
	garden_count(&garden);
	ck_assert_uint_eq(garden.takeoff.snags.count, 0);
	ck_assert_double_eq_tol(garden.takeoff.lawns.list[0].topsoil / CUBIC_FOOT,
		15 * 4.0 / 12 + 13 * 2.25 / 12, EXACT);
}
END_TEST

#define ROWS(table) (int)(sizeof(table) / sizeof *(table))

Suite *test_suite(void)
{
	Suite *suite = suite_create("lawn");
	TCase *lawns = suite_case(suite, "lawns"), *over = suite_case(suite, "over a base");

	tcase_add_checked_fixture(lawns, NULL, teardown);
	tcase_add_test(lawns, turf_is_the_lawn_and_3_to_5_percent_for_trimming);
	tcase_add_test(lawns, a_plot_may_allow_for_no_trimming);
	tcase_add_loop_test(lawns, small_lawns_take_twice_the_trimming, 0, ROWS(sizes));
	tcase_add_test(lawns, all_turf_together_is_small_or_not);
	tcase_add_test(lawns, seed_goes_by_its_rate);
	tcase_add_loop_test(lawns, a_cubic_yard_of_topsoil_covers_324_sq_ft_over_its_inches, 0, 6);
	tcase_add_test(lawns, topsoil_of_350_by_200_ft_at_2_in_is_that_of_the_published_factor);
	tcase_add_test(lawns, a_lawn_without_cover_needs_nothing);
	tcase_add_test(lawns, each_lawn_has_its_row_in_order);
	tcase_add_test(lawns, lawn_soil_settles_as_allowed_for);
	tcase_add_checked_fixture(over, NULL, teardown);
	tcase_add_loop_test(over, topsoil_over_a_base_is_what_there_is_room_for_under_the_turf, 0,
		ROWS(rooms));
	tcase_add_test(over, frames_round_four_beds_take_39_6_cu_ft);
	tcase_add_loop_test(over, less_than_2_in_of_soil_over_a_base_is_a_snag_of_the_lawn, 0,
		ROWS(thin));
	tcase_add_test(over, a_thin_lawn_says_what_room_there_is);
	tcase_add_test(over, an_embed_that_is_not_set_leaves_room_for_the_lawn);
	return suite;
}
