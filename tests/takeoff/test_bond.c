/* Running bond of one side, held against a plain check of its joints and against trying
 * everything. */

#include "takeoff/walls/bond.h"

#include "support/random.h"
#include "support/runner.h"
#include "takeoff/walls/side.h"

#include <stdlib.h>
#include <string.h>

#define INCH NM_PER_INCH

enum { PIECES_MOST = 400, CANDIDATES = 7 };

/* A course piece by piece. */
struct row {
	nm pieces[PIECES_MOST];
	int count, cut;
};

/* A side to be bonded. */
struct given {
	struct bond_run odd, even;
	struct bond_rule rule;
};

static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

/* ---- A plain check --------------------------------------------------------------------------- */

/* A joint a quarter away is not too close. */
static bool too_close(nm a, nm b, nm block)
{
	return 4 * llabs(a - b) < block;
}

static int joints_of(const nm *pieces, int count, nm from, nm joints[PIECES_MOST])
{
	nm at = from;

	for (int i = 0; i < count; i++)
		joints[i] = at += pieces[i];
	return count - 1;
}

static int open_ends(const struct bond_run *run, nm ends[2])
{
	int count = 0;

	if (run->first_open)
		ends[count++] = run->from;
	if (run->last_open)
		ends[count++] = run->from + run->length;
	return count;
}

static bool any_close(const nm *a, int a_count, const nm *b, int b_count, nm block)
{
	for (int i = 0; i < a_count; i++)
		for (int j = 0; j < b_count; j++)
			if (too_close(a[i], b[j], block))
				return true;
	return false;
}

/* TMS 402 and the IRC call it running bond where joints are at least a quarter unit apart. */
static bool bonds(const struct given *given, const nm *odd, int odd_count, const nm *even,
	int even_count)
{
	nm a[PIECES_MOST] = { 0 }, b[PIECES_MOST] = { 0 }, a_ends[2], b_ends[2];
	nm block = given->rule.block;
	int a_count = joints_of(odd, odd_count, given->odd.from, a);
	int b_count = joints_of(even, even_count, given->even.from, b);
	int a_end_count = open_ends(&given->odd, a_ends),
		b_end_count = open_ends(&given->even, b_ends);

	return !any_close(a, a_count, b, b_count, block) &&
		!any_close(a, a_count, b_ends, b_end_count, block) &&
		!any_close(a_ends, a_end_count, b, b_count, block);
}

static bool rows_bond(const struct given *given, const struct row *odd, const struct row *even)
{
	return bonds(given, odd->pieces, odd->count, even->pieces, even->count);
}

/* ---- Laying piece by piece ------------------------------------------------------------------- */

static void put(struct row *row, nm piece, nm block)
{
	ck_assert_int_lt(row->count, PIECES_MOST);
	row->pieces[row->count++] = piece;
	row->cut += piece < block;
}

/* A first piece (0: none), then whole blocks; behind `before` of them (-1: all) what is left
 * over, or, where it is too short or shared, half of it and a block, twice. False where that
 * cannot be. */
static bool lay_row(struct row *row, nm length, const struct bond_rule *rule, nm first, int before,
	bool shared)
{
	nm left = length - first, rest = left % rule->block;
	int whole = (int)(left / rule->block);

	*row = (struct row){ .count = 0 };
	if (left < 0 || (first > 0 && first < rule->shortest))
		return false;
	shared = shared || (rest > 0 && rest < rule->shortest);
	if (shared && whole-- == 0)
		return false;
	if (before > whole)
		return false;
	if (first > 0)
		put(row, first, rule->block);
	for (int i = 0; i <= whole; i++) {
		if (i == (before < 0 ? whole : before)) {
			nm both = rest + rule->block;

			if (shared) {
				put(row, both - both / 2, rule->block);
				put(row, both / 2, rule->block);
			} else if (rest > 0) {
				put(row, rest, rule->block);
			}
		}
		if (i < whole)
			put(row, rule->block, rule->block);
	}
	return true;
}

/* The fixed candidates: cut last, first, second; shared; first pieces of l/2, l/4 and 3l/4, where a
 * quarter of an odd number of nanometres goes to the side of safety. */
static int lay_candidates(struct row rows[CANDIDATES], nm length, const struct bond_rule *rule)
{
	nm block = rule->block, quarter = (block + 3) / 4;
	int count = 0;

	count += lay_row(&rows[count], length, rule, 0, -1, false);
	count += lay_row(&rows[count], length, rule, 0, 0, false);
	count += lay_row(&rows[count], length, rule, 0, 1, false);
	count += lay_row(&rows[count], length, rule, 0, -1, true);
	count += lay_row(&rows[count], length, rule, block / 2, -1, false);
	count += lay_row(&rows[count], length, rule, quarter, -1, false);
	count += lay_row(&rows[count], length, rule, block - quarter, -1, false);
	return count;
}

/* ---- Sides at random ------------------------------------------------------------------------- */

static struct given given_at_random(struct random *random)
{
	static const int blocks[][2] = { { 16, 8 }, { 12, 4 }, { 16, 6 }, { 11, 7 }, { 18, 6 },
		{ 10, 8 } };
	int kind = random_below(random, 6);
	nm block = blocks[kind][0] * INCH, depth = blocks[kind][1] * INCH;
	struct side side;
	struct given given;

	if (random_below(random, 2)) {
		block = random_between(random, 100, 700) * NM_PER_MM + random_below(random, 4);
		depth = block * random_between(random, 20, 100) / 100;
	}
	given.rule = (struct bond_rule){ .block = block,
		.shortest = bond_shortest(block, 3 * INCH),
		.odd_courses = random_between(random, 1, 3) };
	given.rule.even_courses = given.rule.odd_courses - random_below(random, 2);
	side = (struct side){ 0, random_below(random, 3) == 0, random_below(random, 3) == 0,
		random_below(random, 2), random_below(random, 2) };
	side.length = depth + given.rule.shortest + 2 * INCH * random_between(random, 0, 120);
	given.odd = side_run(&side, depth, false);
	given.even = side_run(&side, depth, true);
	return given;
}

static bool lay(const struct given *given, struct bond *bond)
{
	return bond_lay(bond, &arena, &given->odd, &given->even, &given->rule);
}

static void check_course(const struct bond_course *course, nm length, const struct bond_rule *rule)
{
	nm sum = 0;
	int cut = 0;

	for (int i = 0; i < course->count; i++) {
		ck_assert_int_ge(course->pieces[i], rule->shortest);
		ck_assert_int_le(course->pieces[i], rule->block);
		sum += course->pieces[i];
		cut += course->pieces[i] < rule->block;
	}
	ck_assert_int_eq(sum, length);
	ck_assert_int_eq(cut, course->cut);
}

static bool same(const struct bond_course *course, const struct row *row)
{
	return course->count == row->count && memcmp(course->pieces, row->pieces,
		(size_t)row->count * sizeof *row->pieces) == 0;
}

START_TEST(pieces_fill_their_run_and_none_is_shorter_than_the_shortest)
{
	struct random random = { 11 };

	for (int i = 0; i < 3000; i++) {
		struct given given = given_at_random(&random);
		struct bond bond;

		if (!lay(&given, &bond))
			continue;
		check_course(&bond.odd, given.odd.length, &given.rule);
		check_course(&bond.even, given.even.length, &given.rule);
	}
}
END_TEST

START_TEST(a_bond_holds_exactly_where_no_joint_is_nearer_than_a_quarter_block)
{
	struct random random = { 12 };
	int held = 0;

	for (int i = 0; i < 3000; i++) {
		struct given given = given_at_random(&random);
		struct bond bond;

		if (!lay(&given, &bond))
			continue;
		ck_assert_msg(bond.holds == bonds(&given, bond.odd.pieces, bond.odd.count,
			bond.even.pieces, bond.even.count), "side %d of seed 12", i);
		held += bond.holds;
	}
	ck_assert_int_gt(held, 2000);
}
END_TEST

START_TEST(of_the_fixed_candidates_that_bond_the_one_with_fewest_cuts_the_earliest_is_laid)
{
	struct random random = { 13 };
	int found = 0;

	for (int n = 0; n < 2000; n++) {
		struct given given = given_at_random(&random);
		struct row odd[CANDIDATES], even[CANDIDATES];
		const struct row *best_odd = NULL, *best_even = NULL;
		int odds = lay_candidates(odd, given.odd.length, &given.rule);
		int evens = lay_candidates(even, given.even.length, &given.rule);
		int least = 0;
		struct bond bond;

		if (!lay(&given, &bond))
			continue;
		for (int i = 0; i < odds; i++) {
			for (int j = 0; j < evens; j++) {
				int cuts = given.rule.odd_courses * odd[i].cut +
					given.rule.even_courses * even[j].cut;

				if (!rows_bond(&given, &odd[i], &even[j]) ||
					(best_odd && cuts >= least))
					continue;
				best_odd = &odd[i];
				best_even = &even[j];
				least = cuts;
			}
		}
		if (!best_odd)
			continue;
		found++;
		ck_assert_msg(bond.holds && same(&bond.odd, best_odd) &&
			same(&bond.even, best_even),
			"side %d of seed 13", n);
	}
	ck_assert_int_gt(found, 1400);
}
END_TEST

/* ---- The search behind the candidates -------------------------------------------------------- */

struct rows {
	struct row *list;
	int count, capacity;
};

static void keep(struct rows *rows, const struct row *row)
{
	if (rows->count == rows->capacity) {
		rows->capacity = rows->capacity ? 2 * rows->capacity : 64;
		rows->list = realloc(rows->list, (size_t)rows->capacity * sizeof *rows->list);
	}
	rows->list[rows->count++] = *row;
}

/* First pieces from none and the shortest up in half inches, the rest or its halves at any
 * place. */
static void lay_all(struct rows *rows, nm length, const struct bond_rule *rule)
{
	for (nm first = 0; first < rule->block; first = first ? first + INCH / 2 : rule->shortest) {
		for (int shared = 0; shared < 2; shared++) {
			struct row row;

			for (int before = 0; lay_row(&row, length, rule, first, before, shared);
				before++) keep(rows, &row);
		}
	}
}

static bool any_pair_bonds(const struct given *given)
{
	struct rows odd = { NULL, 0, 0 }, even = { NULL, 0, 0 };
	bool found = false;

	lay_all(&odd, given->odd.length, &given->rule);
	lay_all(&even, given->even.length, &given->rule);
	for (int i = 0; i < odd.count && !found; i++)
		for (int j = 0; j < even.count && !found; j++)
			found = rows_bond(given, &odd.list[i], &even.list[j]);
	free(odd.list);
	free(even.list);
	return found;
}

/* Blocks nearly as deep as long bond worst. */
static struct given awkward_at_random(struct random *random)
{
	nm block = random_between(random, 8, 16) * INCH,
		depth = block * 3 / 4 + random_below(random, 3) * INCH / 2;
	struct side side = { 0, random_below(random, 3) == 0, random_below(random, 3) == 0,
		random_below(random, 2), random_below(random, 2) };
	struct given given;

	given.rule = (struct bond_rule){ block, bond_shortest(block, 3 * INCH), 2, 1 };
	side.length = depth + given.rule.shortest + random_between(random, 0, 40) * INCH;
	given.odd = side_run(&side, depth, false);
	given.even = side_run(&side, depth, true);
	return given;
}

START_TEST(a_side_is_left_without_bond_only_where_nothing_that_may_be_tried_bonds)
{
	struct random random = { 14 };
	int without = 0;

	for (int i = 0; i < 1500; i++) {
		struct given given = awkward_at_random(&random);
		struct bond bond;

		if (!lay(&given, &bond) || bond.holds)
			continue;
		without++;
		ck_assert_msg(!any_pair_bonds(&given), "side %d of seed 14", i);
	}
	ck_assert_int_gt(without, 10);
}
END_TEST

START_TEST(on_a_long_side_too_nothing_is_missed_by_trying_places_near_the_ends_alone)
{
	struct random random = { 15 };
	int without = 0;

	for (int i = 0; i < 1200; i++) {
		struct given given = given_at_random(&random);
		struct bond bond;

		if (given.odd.length < 14 * given.rule.block || !lay(&given, &bond) || bond.holds)
			continue;
		without++;
		ck_assert_msg(!any_pair_bonds(&given), "side %d of seed 15", i);
	}
	ck_assert_int_gt(without, 5);
}
END_TEST

/* ---- Single sides ---------------------------------------------------------------------------- */

START_TEST(the_shortest_piece_is_a_quarter_or_as_allowed_but_never_over_a_half)
{
	ck_assert_int_eq(bond_shortest(16 * INCH, 3 * INCH), 4 * INCH);
	ck_assert_int_eq(bond_shortest(8 * INCH, 3 * INCH), 3 * INCH);
	ck_assert_int_eq(bond_shortest(16 * INCH, 12 * INCH), 8 * INCH);
	ck_assert_int_eq(bond_shortest(16 * INCH, 0), 4 * INCH);
	ck_assert_int_eq(bond_shortest(17, 0), 5); /* a quarter is never less than one */
}
END_TEST

START_TEST(whole_blocks_are_laid_where_they_fit_both_courses)
{
	/* 8 ft of 16 x 8 in block, through at both ends in course 1: six blocks, then five. */
	struct bond_run odd = { 0, 96 * INCH, false, false },
		even = { 8 * INCH, 80 * INCH, true, true };
	struct bond_rule rule = { 16 * INCH, 4 * INCH, 2, 1 };
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert(bond.holds);
	ck_assert_int_eq(bond.odd.count, 6);
	ck_assert_int_eq(bond.even.count, 5);
	ck_assert_int_eq(bond.odd.cut + bond.even.cut, 0);
}
END_TEST

START_TEST(a_rest_too_short_and_the_last_block_become_two_halves)
{
	struct bond_run run = { 0, 50 * INCH, false, true };
	struct bond_rule rule = { 16 * INCH, 4 * INCH, 1, 0 };
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &run, NULL, &rule));
	ck_assert_int_eq(bond.odd.count, 4);
	ck_assert_int_eq(bond.odd.pieces[1], 16 * INCH);
	ck_assert_int_eq(bond.odd.pieces[2], 9 * INCH);
	ck_assert_int_eq(bond.odd.pieces[3], 9 * INCH);
	ck_assert_int_eq(bond.odd.cut, 2);
}
END_TEST

START_TEST(a_course_that_is_never_laid_does_not_matter)
{
	/* Nothing bonds these two, yet a single course of whole blocks is fine. */
	struct bond_run odd = { 0, 48 * INCH, true, true },
		even = { 2 * INCH, 44 * INCH, true, true };
	struct bond_rule rule = { 16 * INCH, 4 * INCH, 1, 0 };
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &odd, NULL, &rule));
	ck_assert(bond.holds);
	ck_assert_int_eq(bond.odd.cut, 0);
	ck_assert_int_eq(bond.even.count, 0);
	rule.even_courses = 1;
	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert_int_gt(bond.odd.cut + bond.even.cut, 0);
}
END_TEST

START_TEST(two_run_ends_are_never_measured_against_each_other)
{
	/* Both runs are one block whose ends stand an inch apart. */
	struct bond_run odd = { 0, 16 * INCH, true, true }, even = { INCH, 16 * INCH, true, true };
	struct bond_rule rule = { 16 * INCH, 4 * INCH, 1, 1 };
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert(bond.holds);
	ck_assert_int_eq(bond.odd.count + bond.even.count, 2);
}
END_TEST

START_TEST(an_end_that_goes_through_a_convex_corner_is_no_joint)
{
	/* The even run's joint at 16 in stands over the odd run's end: bonded only where that is
	 * closed. */
	struct bond_run odd = { 0, 16 * INCH, false, false }, even = { 0, 32 * INCH, false, false };
	struct bond_rule rule = { 16 * INCH, 4 * INCH, 1, 1 };
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert(bond.holds);
	ck_assert_int_eq(bond.odd.cut + bond.even.cut, 0);
	odd.last_open = true;
	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert_int_gt(bond.odd.cut + bond.even.cut, 0);
}
END_TEST

START_TEST(a_joint_a_quarter_away_bonds_and_one_a_nanometre_nearer_does_not)
{
	/* A course of one piece stands between 8 and 13 in. A joint over it may be at 4 in, a
	 * quarter from the one end, and nowhere else: from 17 in on the last piece would be too
	 * short. */
	struct bond_run odd = { 0, 20 * INCH, false, false },
		even = { 8 * INCH, 5 * INCH, true, true };
	struct bond_rule rule = { 16 * INCH, 4 * INCH, 1, 1 };
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert(bond.holds);
	ck_assert_int_eq(bond.odd.count, 2);
	ck_assert_int_eq(bond.odd.pieces[0], 4 * INCH);
	even.from -= 1;
	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert(!bond.holds);
}
END_TEST

START_TEST(where_nothing_bonds_the_fewest_joints_stand_too_close)
{
	/* A joint from 6 to 14 in is close to one of the ends at 7 and 13 in, or to both, as the
	 * halves' at 10 in is; the one at 8 in to the first alone. */
	struct bond_run odd = { 0, 20 * INCH, true, true },
		even = { 7 * INCH, 6 * INCH, true, true };
	struct bond_rule rule = { 16 * INCH, 6 * INCH, 1, 1 };
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert(!bond.holds);
	ck_assert_int_eq(bond.odd.count, 2);
	ck_assert_int_eq(bond.odd.pieces[0], 8 * INCH);
}
END_TEST

START_TEST(a_run_shorter_than_the_shortest_piece_is_refused)
{
	struct bond_run odd = { 0, 4 * INCH - 1, false, true },
		even = { 0, 40 * INCH, false, true };
	struct bond_rule rule = { 16 * INCH, 4 * INCH, 1, 1 };
	struct bond bond;

	ck_assert(!bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert(!bond_lay(&bond, &arena, &even, &odd, &rule));
	ck_assert(!bond_lay(&bond, &arena, &odd, NULL, &rule));
	odd.length++;
	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("bond");
	TCase *single = suite_case(suite, "single sides");
	TCase *random = suite_case(suite, "sides at random");

	tcase_add_checked_fixture(single, NULL, teardown);
	tcase_add_test(single, the_shortest_piece_is_a_quarter_or_as_allowed_but_never_over_a_half);
	tcase_add_test(single, whole_blocks_are_laid_where_they_fit_both_courses);
	tcase_add_test(single, a_rest_too_short_and_the_last_block_become_two_halves);
	tcase_add_test(single, a_course_that_is_never_laid_does_not_matter);
	tcase_add_test(single, two_run_ends_are_never_measured_against_each_other);
	tcase_add_test(single, an_end_that_goes_through_a_convex_corner_is_no_joint);
	tcase_add_test(single, a_joint_a_quarter_away_bonds_and_one_a_nanometre_nearer_does_not);
	tcase_add_test(single, where_nothing_bonds_the_fewest_joints_stand_too_close);
	tcase_add_test(single, a_run_shorter_than_the_shortest_piece_is_refused);

	tcase_add_checked_fixture(random, NULL, teardown);
	tcase_add_test(random, pieces_fill_their_run_and_none_is_shorter_than_the_shortest);
	tcase_add_test(random, a_bond_holds_exactly_where_no_joint_is_nearer_than_a_quarter_block);
	tcase_add_test(random,
		of_the_fixed_candidates_that_bond_the_one_with_fewest_cuts_the_earliest_is_laid);
	tcase_add_test(random,
		a_side_is_left_without_bond_only_where_nothing_that_may_be_tried_bonds);
	tcase_add_test(random,
		on_a_long_side_too_nothing_is_missed_by_trying_places_near_the_ends_alone);
	return suite;
}
