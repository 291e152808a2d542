/* Where the runs of a side start and end, and the book of bonds. */

#include "takeoff/walls/side.h"

#include "support/random.h"
#include "support/runner.h"

#include <string.h>

#define INCH NM_PER_INCH

static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

/* A side of 10 ft in walls 8 in deep. At its first corner a run starts: convex through 0, convex
 * butt w, reflex through -w, reflex butt 0; at its last it ends at L, L - w, L + w, L. */
static const struct {
	bool is_reflex, is_through;
	nm start, end;
	bool is_open;
} corners[] = {
	{ false, true, 0, 120, false },
	{ false, false, 8, 112, true },
	{ true, true, -8, 128, true },
	{ true, false, 0, 120, true },
};

static void check_run(const struct side *side, int first, int last)
{
	struct bond_run run = side_run(side, 8 * INCH, false);

	ck_assert_int_eq(run.from, corners[first].start * INCH);
	ck_assert_int_eq(run.from + run.length, corners[last].end * INCH);
	ck_assert_int_eq(run.first_open, corners[first].is_open);
	ck_assert_int_eq(run.last_open, corners[last].is_open);
}

START_TEST(a_run_starts_and_ends_by_its_corners_and_who_goes_through)
{
	for (int i = 0; i < 4; i++) {
		for (int j = 0; j < 4; j++) {
			struct side side = { 120 * INCH, corners[i].is_reflex, corners[j].is_reflex,
				corners[i].is_through, corners[j].is_through, false };

			check_run(&side, i, j);
		}
	}
}
END_TEST

START_TEST(in_course_2_every_corner_is_swapped)
{
	for (int i = 0; i < 16; i++) {
		struct side side = { 120 * INCH, i & 1, i & 2, i & 4, i & 8, false };
		struct side other = { 120 * INCH, i & 1, i & 2, !(i & 4), !(i & 8), false };
		struct bond_run even = side_run(&side, 8 * INCH, true);
		struct bond_run odd = side_run(&other, 8 * INCH, false);

		ck_assert_int_eq(even.from, odd.from);
		ck_assert_int_eq(even.length, odd.length);
		ck_assert_int_eq(even.first_open, odd.first_open);
		ck_assert_int_eq(even.last_open, odd.last_open);
	}
}
END_TEST

static bool courses_equal(const struct bond_course *a, const struct bond_course *b)
{
	return a->count == b->count && a->cut == b->cut &&
		(a->count == 0 || memcmp(a->pieces, b->pieces, (size_t)a->count * sizeof(nm)) == 0);
}

START_TEST(the_book_holds_for_each_side_the_bond_it_has_by_itself)
{
	struct side_book *book = side_book_new(&arena);
	struct random random = { 51 };

	for (int i = 0; i < 4000; i++) {
		int bits = random_below(&random, 16);
		struct masonry masonry = { random_between(&random, 12, 14) * INCH,
			random_between(&random, 6, 7) * INCH, 0, random_between(&random, 1, 3) };
		struct side side = { 6 * INCH * random_between(&random, 10, 40), bits & 1, bits & 2,
			bits & 4, bits & 8, false };
		struct bond_run odd = side_run(&side, masonry.depth, false);
		struct bond_run even = side_run(&side, masonry.depth, true);
		struct bond_rule rule = { .block = masonry.length,
			.corner = bond_corner(masonry.length, masonry.depth),
			.enough = bond_enough(masonry.length, masonry.depth),
			.odd_courses = (masonry.courses + 1) / 2,
			.even_courses = masonry.courses / 2 };
		const struct bond *noted;
		struct bond own;

		masonry.shortest = rule.shortest = bond_shortest(masonry.length,
			random_between(&random, 3, 4) * INCH);
		ck_assert(bond_lay(&own, &arena, &odd, masonry.courses > 1 ? &even : NULL, &rule));
		noted = side_bond(book, &side, &masonry);
		ck_assert_int_eq(noted->holds, own.holds);
		ck_assert_int_eq(noted->odd.cut, own.odd.cut);
		ck_assert_int_eq(noted->even.cut, own.even.cut);
		noted = side_lay(book, &side, &masonry);
		ck_assert(courses_equal(&noted->odd, &own.odd));
		ck_assert(courses_equal(&noted->even, &own.even));
		ck_assert_int_eq(noted->holds, own.holds);
	}
}
END_TEST

START_TEST(sides_alike_are_bonded_once)
{
	struct side_book *book = side_book_new(&arena);
	struct masonry masonry = { 16 * INCH, 8 * INCH, 4 * INCH, 3 };
	struct side side = { 120 * INCH, false, false, true, false, false };
	const struct bond *first = side_lay(book, &side, &masonry);
	const nm *pieces = first->odd.pieces;

	ck_assert_ptr_nonnull(pieces);
	ck_assert_ptr_eq(side_bond(book, &side, &masonry), first);
	ck_assert_ptr_eq(side_lay(book, &side, &masonry)->odd.pieces, pieces);
	side.last_reflex = true;
	ck_assert_ptr_ne(side_bond(book, &side, &masonry), first);
	ck_assert_ptr_null(side_bond(book, &side, &masonry)->odd.pieces);
}
END_TEST

START_TEST(the_first_of_a_hundred_sides_is_still_bonded)
{
	struct side_book *book = side_book_new(&arena);
	struct masonry masonry = { 16 * INCH, 8 * INCH, 4 * INCH, 3 };
	struct side side = { 120 * INCH, false, false, true, false, false };
	const nm *pieces = side_lay(book, &side, &masonry)->odd.pieces;

	for (; side.length < 220 * INCH; side.length += INCH)
		side_lay(book, &side, &masonry);
	side.length = 120 * INCH;
	ck_assert_ptr_eq(side_lay(book, &side, &masonry)->odd.pieces, pieces);
}
END_TEST

START_TEST(mirrored_sides_have_bonds_of_their_own)
{
	struct side_book *book = side_book_new(&arena);
	struct masonry masonry = { 16 * INCH, 8 * INCH, 4 * INCH, 1 };
	struct side side = { 60 * INCH, false, false, true, true, false };

	ck_assert_int_eq(side_lay(book, &side, &masonry)->odd.cut, 1);
	side.mirrored = true;
	ck_assert_int_eq(side_lay(book, &side, &masonry)->odd.cut, 2);
}
END_TEST

/* A cap upon a wall of so many courses, both 8 in deep and 16 in long. */
static const struct bond *cap_on(struct side_book *book, int courses, struct bond_run *run)
{
	/* In course 1 of 64 in through at both ends, so in course 2 butting at both. */
	struct capped capped = { .wall = { 64 * INCH, false, false, true, true, false },
		.masonry = { 16 * INCH, 8 * INCH, 4 * INCH, courses },
		.cap = { 16 * INCH, 8 * INCH, 8 * INCH, 1 },
		.first_through = courses % 2 == 0, .last_through = courses % 2 == 0 };

	*run = side_cap_run(&capped);
	return side_cap(book, &capped);
}

START_TEST(a_cap_follows_the_last_course)
{
	/* Joints of course 1 at 16, 32, 48 in; of course 2, from 8 in on, at 24 and 40. */
	struct side_book *book = side_book_new(&arena);

	for (int courses = 1; courses <= 4; courses++) {
		bool goes_through = courses % 2 == 0;
		struct bond_run run;
		const struct bond *cap = cap_on(book, courses, &run);

		ck_assert(cap->holds && cap->corners_hold);
		ck_assert_int_eq(run.from, goes_through ? 0 : 8 * INCH);
		ck_assert_int_eq(cap->odd.count, goes_through ? 4 : 3);
		ck_assert_int_eq(cap->odd.cut, 0);
		ck_assert_ptr_eq(cap_on(book, courses, &run), cap);
	}
}
END_TEST

/* Over course 1 the cap keeps off other joints than over course 2. */
START_TEST(caps_alike_on_walls_of_other_courses_have_bonds_of_their_own)
{
	struct side_book *book = side_book_new(&arena);
	struct capped capped = { .wall = { 64 * INCH, false, false, true, true, false },
		.masonry = { 16 * INCH, 8 * INCH, 4 * INCH, 1 },
		.cap = { 16 * INCH, 8 * INCH, 8 * INCH, 1 } };
	const struct bond *on_one = side_cap(book, &capped);

	ck_assert_ptr_eq(side_cap(book, &capped), on_one);
	capped.masonry.courses = 2;
	ck_assert_ptr_ne(side_cap(book, &capped), on_one);
}
END_TEST

START_TEST(a_side_with_a_run_too_short_has_no_bond)
{
	struct side_book *book = side_book_new(&arena);
	struct masonry masonry = { 16 * INCH, 8 * INCH, 4 * INCH, 2 };
	struct side side = { 20 * INCH, false, false, true, true, false };

	ck_assert_ptr_nonnull(side_bond(book, &side, &masonry));
	side.length -= 1; /* course 2 butts at both ends: 4 in less a nanometre */
	ck_assert_ptr_null(side_bond(book, &side, &masonry));
	masonry.courses = 1;
	ck_assert_ptr_nonnull(side_bond(book, &side, &masonry));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("side");
	TCase *runs = suite_case(suite, "runs");
	TCase *book = suite_case(suite, "book");

	tcase_add_test(runs, a_run_starts_and_ends_by_its_corners_and_who_goes_through);
	tcase_add_test(runs, in_course_2_every_corner_is_swapped);
	tcase_add_checked_fixture(book, NULL, teardown);
	tcase_add_test(book, the_book_holds_for_each_side_the_bond_it_has_by_itself);
	tcase_add_test(book, sides_alike_are_bonded_once);
	tcase_add_test(book, the_first_of_a_hundred_sides_is_still_bonded);
	tcase_add_test(book, mirrored_sides_have_bonds_of_their_own);
	tcase_add_test(book, a_cap_follows_the_last_course);
	tcase_add_test(book, caps_alike_on_walls_of_other_courses_have_bonds_of_their_own);
	tcase_add_test(book, a_side_with_a_run_too_short_has_no_bond);
	return suite;
}
