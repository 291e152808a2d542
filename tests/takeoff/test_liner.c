/* Liner inside raised beds. */
#include "support/garden.h"
#include "support/runner.h"

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* Blocks 16 x 8 x 6 in leave 6 2/3 x 2 2/3 ft inside 8 x 4 ft, 18 2/3 ft round. Soil: 18 in less
 * 1 1/2, 2 and 1 1/2 in; 6 in turned under. */
START_TEST(a_liner_goes_round_the_inner_face_as_high_as_the_soil_and_its_turn)
{
	garden_rectangle(&garden, 'b', 8, 4);
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.liners.count, 1);
	const struct liner *liner = &garden.takeoff.liners.list[0];

	ck_assert_int_eq(liner->length, 224 * NM_PER_INCH);
	ck_assert_int_eq(liner->height, 19 * NM_PER_INCH);
	ck_assert_double_eq_tol(liner->area / SQUARE_FOOT, 224.0 * 19 / 144, EXACT);
	const struct item *item = garden_item(&garden, "liner");

	ck_assert_double_eq_tol(item->order / SQUARE_FOOT, 224.0 * 19 / 144, EXACT);
	ck_assert_int_eq(item_unit(item), UNIT_M2);
	ck_assert_str_eq(garden_note(&garden, item), "with 6 in turned under");
	plot_set(&garden.plot, 0, ALLOW_LINER_TURN, "0 in");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.liners.list[0].height, 13 * NM_PER_INCH);
}
END_TEST

START_TEST(a_ring_is_lined_along_both_its_walls)
{
	garden_rows(&garden, (const char *const[]){ "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb",
		"bbb...bbb", "bbb...bbb", "bbb...bbb", "bbbbbbbbb", "bbbbbbbbb", "bbbbbbbbb",
		NULL });
	garden_count(&garden);
	/* Outer 36 ft less 8 x 8 in, inner 12 ft and 8 x 8 in. */
	ck_assert_int_eq(garden.takeoff.liners.list[0].length, 48 * NM_PER_FOOT);
}
END_TEST

START_TEST(beds_that_say_no_have_no_soil_or_no_wall_have_no_liner)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_LINER, "no");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.liners.count, 0);
	plot_set(&garden.plot, 'b', BED_LINER, "yes");
	plot_set(&garden.plot, 'b', BED_FREEBOARD, "20 in");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.liners.count, 0);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.liners.count, 0);
	ck_assert_ptr_null(garden_item(&garden, "liner"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("liner");
	TCase *liners = suite_case(suite, "liners");

	tcase_add_checked_fixture(liners, NULL, teardown);
	tcase_add_test(liners, a_liner_goes_round_the_inner_face_as_high_as_the_soil_and_its_turn);
	tcase_add_test(liners, a_ring_is_lined_along_both_its_walls);
	tcase_add_test(liners, beds_that_say_no_have_no_soil_or_no_wall_have_no_liner);
	return suite;
}
