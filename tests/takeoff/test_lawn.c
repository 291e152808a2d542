/* Lawns: turf, seed and topsoil. */
#include "support/garden.h"
#include "support/runner.h"

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* By arithmetic 12 x 24 ft are 288 sq ft; 3 to 5 % more for trimming, Maryland Turfgrass
 * Council. */
START_TEST(turf_for_12_by_24_ft_is_288_sq_ft_and_trimming)
{
	static const struct { const char *spare; double order; } rows[] = {
		{ "3 %", 296.64 }, { "5 %", 302.4 }, { "0 %", 288 },
	};

	garden_rectangle(&garden, 'l', 24, 12);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		plot_set(&garden.plot, 0, ALLOW_TURF_SPARE, rows[i].spare);
		garden_count(&garden);
		const struct item *turf = garden_item(&garden, "turf");

		ck_assert_double_eq_tol(turf->laid / SQUARE_FOOT, 288, EXACT);
		ck_assert_double_eq_tol(turf->order / SQUARE_FOOT, rows[i].order, EXACT);
		ck_assert_double_eq_tol(turf->laid + turf->spare, turf->order, EXACT);
		ck_assert_int_eq(item_unit(turf), UNIT_M2);
		ck_assert_int_eq(turf->section, SECTION_LAWN);
	}
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

/* Coverage tables of extension services: 1 cu yd covers 324/d sq ft at d inches. */
static const double covered[] = { 324, 162, 108, 81, 64.8, 54 };

START_TEST(a_cubic_yard_of_topsoil_covers_324_sq_ft_over_its_inches)
{
	char depth[] = "1 in";

	garden_rectangle(&garden, 'l', 18, 18);
	depth[0] = (char)('1' + _i);
	plot_set(&garden.plot, 'l', LAWN_TOPSOIL, depth);
	garden_count(&garden);
	const struct item *topsoil = garden_item(&garden, "topsoil.lawn");

	ck_assert_double_eq_tol(324 / (topsoil->order / CUBIC_YARD), covered[_i], EXACT);
	ck_assert_double_eq(topsoil->spare, 0);
}
END_TEST

/* 350 x 200 ft at 2 in are 434 cu yd by the factor 0.0031 an inch and square foot: Cornell
 * Composting. The factor is 1/324 rounded up; exactly it is 432.1. */
START_TEST(topsoil_of_350_by_200_ft_at_2_in_is_that_of_the_published_factor)
{
	garden_rectangle(&garden, 'l', 350, 200);
	garden_count(&garden);
	double yards = garden_item(&garden, "topsoil.lawn")->order / CUBIC_YARD;

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
	/* Topsoil under turf and seed alike, 2 in deep. */
	ck_assert_double_eq_tol(garden_item(&garden, "topsoil.lawn")->order / CUBIC_FOOT, 5.0 / 6,
		EXACT);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("lawn");
	TCase *lawns = suite_case(suite, "lawns");

	tcase_add_checked_fixture(lawns, NULL, teardown);
	tcase_add_test(lawns, turf_for_12_by_24_ft_is_288_sq_ft_and_trimming);
	tcase_add_test(lawns, seed_goes_by_its_rate);
	tcase_add_loop_test(lawns, a_cubic_yard_of_topsoil_covers_324_sq_ft_over_its_inches, 0, 6);
	tcase_add_test(lawns, topsoil_of_350_by_200_ft_at_2_in_is_that_of_the_published_factor);
	tcase_add_test(lawns, a_lawn_without_cover_needs_nothing);
	tcase_add_test(lawns, each_lawn_has_its_row_in_order);
	return suite;
}
