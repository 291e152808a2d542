#include "support/random.h"
#include "support/runner.h"
#include "takeoff/planting/lattice.h"

#include <math.h>

/* 304,800,000 nm x 0.8660254037844386 = 263,964,543.07. */
START_TEST(triangular_rows_are_half_the_root_of_three_apart_rounded_up)
{
	ck_assert_int_eq(lattice_pitch(12 * NM_PER_INCH, false), 263964544);
	ck_assert_int_eq(lattice_pitch(12 * NM_PER_INCH, true), 12 * NM_PER_INCH);
	ck_assert_int_eq(lattice_half(7), 4);
	for (nm spacing = 1; spacing < 2000; spacing++) {
		nm pitch = lattice_pitch(spacing, false), shift = spacing / 2;

		ck_assert_int_ge(pitch * pitch + shift * shift, spacing * spacing);
		ck_assert_int_lt((pitch - 1) * (pitch - 1) + shift * shift, spacing * spacing);
	}
}
END_TEST

static struct lattice_way way_of(nm low, nm high, enum lattice_start start)
{
	return (struct lattice_way){ low, high, low, high, start };
}

static void check_place(const struct lattice *lattice, int row, int place, nm x, nm y)
{
	struct spot spot = lattice_place(lattice, row, place);

	ck_assert_int_eq(spot.x, x);
	ck_assert_int_eq(spot.y, y);
}

/* 30 x 20 with places 8 apart: 3 a row, 4 from the edge, 6 left over. */
START_TEST(rows_begin_half_a_spacing_from_where_they_start)
{
	struct lattice_ground ground = { way_of(100, 130, START_LOW), way_of(0, 20, START_LOW), 8,
		true };
	struct lattice lattice;

	lattice_make(&lattice, &ground);
	ck_assert(!lattice.is_upright);
	ck_assert_int_eq(lattice.rows.count, 2);
	ck_assert_int_eq(lattice_count(&lattice, 1), 3);
	check_place(&lattice, 0, 0, 104, 4);
	check_place(&lattice, 1, 2, 120, 12);
	ground.across.start = START_HIGH;
	ground.down.start = START_MIDDLE_LOW;
	lattice_make(&lattice, &ground);
	check_place(&lattice, 0, 0, 126, 6);
	check_place(&lattice, 1, 2, 110, 14);
	ground.across.start = START_MIDDLE_HIGH;
	lattice_make(&lattice, &ground);
	check_place(&lattice, 0, 0, 123, 6);
	check_place(&lattice, 0, 2, 107, 6);
}
END_TEST

START_TEST(rows_run_along_the_longer_side)
{
	const struct lattice_ground ground = { way_of(0, 20, START_LOW), way_of(50, 80, START_LOW),
		8, false };
	struct lattice lattice;

	lattice_make(&lattice, &ground);
	ck_assert(lattice.is_upright);
	ck_assert_int_eq(lattice.rows.count, 2);
	ck_assert_int_eq(lattice_count(&lattice, 0), 3);
	ck_assert_int_eq(lattice_count(&lattice, 1), 3);
	check_place(&lattice, 0, 1, 4, 62);
	check_place(&lattice, 1, 0, 11, 58);
}
END_TEST

START_TEST(where_there_is_less_than_a_spacing_one_row_stands_in_what_is_clear)
{
	struct lattice_ground ground = { way_of(0, 40, START_LOW), { 0, 6, 4, 6, START_LOW }, 8,
		false };
	struct lattice lattice;

	lattice_make(&lattice, &ground);
	ck_assert_int_eq(lattice.rows.count, 1);
	ck_assert_int_eq(lattice_count(&lattice, 0), 5);
	check_place(&lattice, 0, 0, 4, 5);
	ground.down.clear_low = 7;
	lattice_make(&lattice, &ground);
	ck_assert_int_eq(lattice.rows.count, 0);
}
END_TEST

/* From the middle as much is left at both ends, and the same rows from either end. */
START_TEST(starts_at_both_ends_are_images)
{
	struct random random = { (uint64_t)_i };
	nm width = 2 * random_between(&random, 30, 300);
	nm spacing = 2 * random_between(&random, 3, 30);
	struct lattice_ground ground = { way_of(0, 2 * width, START_LOW),
		way_of(0, width, START_LOW), spacing, _i % 2 };
	struct lattice low, high;

	for (int middle = 0; middle <= 2; middle += 2) {
		ground.across.start = ground.down.start = (enum lattice_start)(START_LOW + middle);
		lattice_make(&low, &ground);
		ground.across.start = ground.down.start = (enum lattice_start)(START_HIGH + middle);
		lattice_make(&high, &ground);
		ck_assert_int_eq(low.rows.count, high.rows.count);
		for (int row = 0; row < low.rows.count; row++)
			for (int i = 0; i < lattice_count(&low, row); i++) {
				struct spot at = lattice_place(&low, row, i);

				check_place(&high, row, i, 2 * width - at.x, width - at.y);
				ck_assert_int_ge(at.x, spacing / 2);
				ck_assert_int_le(at.x, 2 * width - spacing / 2);
				ck_assert_int_ge(at.y, spacing / 2);
				ck_assert_int_le(at.y, width - spacing / 2);
			}
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("lattice");
	TCase *lattice = suite_case(suite, "lattice");

	tcase_add_test(lattice, triangular_rows_are_half_the_root_of_three_apart_rounded_up);
	tcase_add_test(lattice, rows_begin_half_a_spacing_from_where_they_start);
	tcase_add_test(lattice, rows_run_along_the_longer_side);
	tcase_add_test(lattice, where_there_is_less_than_a_spacing_one_row_stands_in_what_is_clear);
	tcase_add_loop_test(lattice, starts_at_both_ends_are_images, 0, 100);
	return suite;
}
