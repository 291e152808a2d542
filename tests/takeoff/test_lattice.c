#include "support/random.h"
#include "support/runner.h"
#include "takeoff/planting/lattice.h"

#include <math.h>
#include <stdlib.h>

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

static int count_of(const struct lattice *lattice)
{
	int count = 0;

	for (int row = 0; row < lattice->rows.count; row++)
		count += (int)lattice_count(lattice, row);
	return count;
}

/* 30 x 20 with places 8 apart: 3 a row, 4 from the edge, 6 left over. */
START_TEST(rows_begin_half_a_spacing_from_where_they_start)
{
	struct lattice_ground ground = { .across = way_of(100, 130, START_LOW),
		.down = way_of(0, 20, START_LOW), .spacing = 8, .is_square = true };
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
	const struct lattice_ground ground = { .across = way_of(0, 20, START_LOW),
		.down = way_of(50, 80, START_LOW), .spacing = 8 };
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
	struct lattice_ground ground = { .across = way_of(0, 40, START_LOW),
		.down = { 0, 6, 4, 6, START_LOW }, .spacing = 8 };
	struct lattice lattice;

	lattice_make(&lattice, &ground);
	ck_assert_int_eq(lattice.rows.count, 1);
	ck_assert_int_eq(lattice_count(&lattice, 0), 5);
	check_place(&lattice, 0, 0, 4, 5);
	ground.down.clear_low = 7;
	lattice_make(&lattice, &ground);
	ck_assert_int_eq(lattice.rows.count, 0);
	ground.down = way_of(0, 10, START_LOW); /* a spacing and 2 more */
	lattice_make(&lattice, &ground);
	ck_assert_int_eq(lattice.rows.count, 1);
	check_place(&lattice, 0, 0, 4, 4);
}
END_TEST

/* 30 less half a spacing at either end are 22: three places take 16 of them. */
START_TEST(a_single_row_stands_in_the_middle_of_its_length)
{
	const struct lattice_ground ground = { .across = way_of(0, 30, START_MIDDLE_LOW),
		.down = way_of(0, 8, START_LOW), .spacing = 8 };
	struct lattice lattice;

	lattice_make(&lattice, &ground);
	ck_assert_int_eq(count_of(&lattice), 3);
	check_place(&lattice, 0, 0, 7, 4);
	check_place(&lattice, 0, 2, 23, 4);
}
END_TEST

/* From the middle as much is left at both ends, and the same rows from either end. */
START_TEST(starts_at_both_ends_are_images)
{
	struct random random = { (uint64_t)_i };
	nm width = 2 * random_between(&random, 30, 300);
	nm spacing = 2 * random_between(&random, 3, 30);
	struct lattice_ground ground = { .across = way_of(0, 2 * width, START_LOW),
		.down = way_of(0, width, START_LOW), .spacing = spacing, .is_square = _i % 2 };
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

/* ---- Images ---------------------------------------------------------------------------------- */

static bool stands(const struct lattice *lattice, nm x, nm y)
{
	for (int row = 0; row < lattice->rows.count; row++)
		for (int i = 0; i < lattice_count(lattice, row); i++) {
			struct spot at = lattice_place(lattice, row, i);

			if (llabs(at.x - x) <= 1 && llabs(at.y - y) <= 1)
				return true;
		}
	return false;
}

static void check_images(const struct lattice *lattice, const struct lattice_images *images,
	nm width, nm height)
{
	for (int row = 0; row < lattice->rows.count; row++)
		for (int i = 0; i < lattice_count(lattice, row); i++) {
			struct spot at = lattice_place(lattice, row, i);

			ck_assert(!images->across || stands(lattice, width - at.x, at.y));
			ck_assert(!images->down || stands(lattice, at.x, height - at.y));
			ck_assert(!images->turned || stands(lattice, width - at.x, height - at.y));
		}
}

/* To a nanometre: middles are rounded. At most a row, and one place of each other row, is left out
 * for it; rows that are alike may have a place more than those that were not. */
START_TEST(places_have_the_images_that_are_asked_for)
{
	static const struct lattice_images asked[] = { { true, false, false },
		{ false, true, false }, { true, true, false }, { false, false, true } };
	struct random random = { (uint64_t)_i };
	nm width = 2 * random_between(&random, 10, 350);
	nm height = 2 * random_between(&random, 10, 350);
	struct lattice_ground ground = { .across = way_of(0, width, START_MIDDLE_LOW),
		.down = way_of(0, height, START_MIDDLE_HIGH),
		.spacing = 2 * random_between(&random, 2, 30),
		.is_square = random_below(&random, 4) == 0, .images = asked[_i % 4] };
	struct lattice with, without;
	struct spot a, b;

	lattice_make(&with, &ground);
	check_images(&with, &ground.images, width, height);
	for (int row = 1; row < with.rows.count; row++)
		for (int i = 0; i < lattice_count(&with, row); i++)
			for (int j = 0; j < lattice_count(&with, row - 1); j++) {
				a = lattice_place(&with, row, i);
				b = lattice_place(&with, row - 1, j);
				ck_assert((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y) >=
					ground.spacing * ground.spacing);
			}
	ground.images = (struct lattice_images){ .across = false };
	lattice_make(&without, &ground);
	ck_assert_int_le(count_of(&with), count_of(&without) + (int)without.rows.count);
	ck_assert_int_ge(count_of(&with), count_of(&without) - (int)without.places.count -
		(int)without.rows.count);
}
END_TEST

/* 47 x 24, 8 apart, rows 7 apart: three rows of 5, with images at the upright axis 5, 4 and 5. Two
 * rows need 15 across, two that are alike 16. */
/* Two rows of three, the second half a spacing on: each is the other turned. */
START_TEST(turned_rows_that_are_each_others_images_keep_all_places)
{
	const struct lattice_ground ground = { .across = way_of(0, 28, START_MIDDLE_LOW),
		.down = way_of(0, 15, START_MIDDLE_LOW), .spacing = 8,
		.images = { .turned = true } };
	struct lattice lattice;

	lattice_make(&lattice, &ground);
	ck_assert_int_eq(lattice.rows.count, 2);
	ck_assert_int_eq(count_of(&lattice), 6);
	check_images(&lattice, &ground.images, 28, 15);
}
END_TEST

START_TEST(shifted_rows_are_one_shorter_and_the_middle_two_of_an_even_number_alike)
{
	struct lattice_ground ground = { .across = way_of(0, 47, START_MIDDLE_LOW),
		.down = way_of(0, 24, START_MIDDLE_LOW), .spacing = 8 };
	struct lattice lattice;

	lattice_make(&lattice, &ground);
	ck_assert_int_eq(count_of(&lattice), 5 + 5 + 5);
	ground.images.across = true;
	lattice_make(&lattice, &ground);
	ck_assert_int_eq(count_of(&lattice), 5 + 4 + 5);
	ground.images = (struct lattice_images){ .down = true };
	ground.down.high = 15;
	ground.down.clear_high = 15;
	lattice_make(&lattice, &ground);
	ck_assert_int_eq(lattice.rows.count, 1);
	ground.down.high = 16;
	ground.down.clear_high = 16;
	lattice_make(&lattice, &ground);
	ck_assert_int_eq(count_of(&lattice), 5 + 5);
	check_place(&lattice, 0, 0, 5, 4);
	check_place(&lattice, 1, 0, 5, 12);
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
	tcase_add_test(lattice, a_single_row_stands_in_the_middle_of_its_length);
	tcase_add_loop_test(lattice, starts_at_both_ends_are_images, 0, 100);
	tcase_add_loop_test(lattice, places_have_the_images_that_are_asked_for, 0, 400);
	tcase_add_test(lattice, turned_rows_that_are_each_others_images_keep_all_places);
	tcase_add_test(lattice,
		shifted_rows_are_one_shorter_and_the_middle_two_of_an_even_number_alike);
	return suite;
}
