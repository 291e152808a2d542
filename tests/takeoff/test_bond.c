/* Running bond of one side, held against a plain check of its joints and against trying
 * everything. */

#include "takeoff/walls/bond.h"

#include "support/random.h"
#include "support/runner.h"
#include "takeoff/walls/side.h"

#include <stdlib.h>
#include <string.h>

#define INCH NM_PER_INCH

enum { PIECES_MOST = 400, CANDIDATES = 18 };

/* A course piece by piece. */
struct row {
	nm pieces[PIECES_MOST];
	int count, cut;
};

static struct bond_rule rule_of(nm block, nm shortest, int odd_courses, int even_courses)
{
	return (struct bond_rule){ .block = block, .shortest = shortest, .corner = block / 2,
		.enough = block / 2, .odd_courses = odd_courses, .even_courses = even_courses };
}

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

/* Running bond where joints are at least a quarter unit apart: The Masonry Society, TMS 402/602,
 * Building Code Requirements and Specification for Masonry Structures, 2016; International Code
 * Council, International Residential Code, 2021; both as quoted. */
static bool bonds(const struct given *given, const nm *odd, int odd_count, const nm *even,
	int even_count)
{
	nm a[PIECES_MOST] = { 0 }, b[PIECES_MOST] = { 0 }, a_ends[2] = { 0 }, b_ends[2] = { 0 };
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

/* A piece that shows its head at an outer corner is max(l/2, w) long or longer; where it shows
 * both, it is a whole block: common practice, no published source. */
static nm short_of(const struct bond_run *run, nm block, nm corner, const struct row *row)
{
	nm first = run->first_open ? block : row->pieces[0];
	nm last = run->last_open ? block : row->pieces[row->count - 1];
	nm short_by = (first < corner ? corner - first : 0) + (last < corner ? corner - last : 0);

	if (row->count == 1 && !run->first_open && !run->last_open)
		short_by += block - first;
	return short_by;
}

static nm head_short(const struct bond_run *run, const struct bond_rule *rule,
	const struct row *row)
{
	return short_of(run, rule->block, rule->corner, row);
}

static bool is_weak(const struct bond_run *run, const struct bond_rule *rule, const struct row *row)
{
	return short_of(run, rule->block, rule->enough, row) > 0;
}

static struct row row_of(const struct bond_course *course)
{
	struct row row = { .count = course->count, .cut = course->cut };

	memcpy(row.pieces, course->pieces, (size_t)course->count * sizeof *row.pieces);
	return row;
}

static int cut_heads(const struct bond_run *run, const struct bond_rule *rule,
	const struct row *row)
{
	return (!run->first_open && row->pieces[0] < rule->block) +
		(!run->last_open && row->pieces[row->count - 1] < rule->block);
}

/* ---- Laying piece by piece ------------------------------------------------------------------- */

static void put(struct row *row, nm piece, nm block)
{
	ck_assert_int_lt(row->count, PIECES_MOST);
	row->pieces[row->count++] = piece;
	row->cut += piece < block;
}

/* `lead` blocks and a first piece (0: neither), then whole blocks; behind `before` of them (from
 * the end where under 0: -1 behind all) what is left over, or, where it is too short or shared,
 * half of it and a block, twice. False where that cannot be. */
struct course {
	nm first;
	int lead, before;
	bool shared;
};

static bool lay_row(struct row *row, nm length, const struct bond_rule *rule, struct course how)
{
	nm left = length - how.first - (how.first > 0 ? how.lead * rule->block : 0);
	nm rest = left % rule->block;
	int whole = (int)(left / rule->block);
	bool shared = how.shared || (rest > 0 && rest < rule->shortest);
	int before;

	*row = (struct row){ .count = 0 };
	if (left < 0 || (how.first > 0 && how.first < rule->shortest) || (shared && whole == 0))
		return false;
	whole -= shared;
	before = how.before < 0 ? whole + 1 + how.before : how.before;
	if (before > whole || before < 0)
		return false;
	for (int i = 0; how.first > 0 && i < how.lead; i++)
		put(row, rule->block, rule->block);
	if (how.first > 0)
		put(row, how.first, rule->block);
	for (int i = 0; i <= whole; i++) {
		if (i == before && shared) {
			nm both = rest + rule->block;

			put(row, both - both / 2, rule->block);
			put(row, both / 2, rule->block);
		} else if (i == before && rest > 0) {
			put(row, rest, rule->block);
		}
		if (i < whole)
			put(row, rule->block, rule->block);
	}
	return true;
}

/* The fixed candidates: cut last, first, second, next to last; shared; first pieces of l/2, l/4
 * and 3l/4, where a quarter of an odd number of nanometres goes to the side of safety; these
 * behind a block, and the rest before the last, where the run shows its head there. */
static int lay_candidates(struct row rows[CANDIDATES], const struct bond_run *run,
	const struct bond_rule *rule)
{
	nm quarter = (rule->block + 3) / 4;
	const nm firsts[] = { rule->block / 2, quarter, rule->block - quarter };
	const struct course without[] = { { 0, 0, -1, false }, { 0, 0, 0, false },
		{ 0, 0, 1, false }, { 0, 0, -2, false }, { 0, 0, -1, true }, { 0, 0, -2, true } };
	int count = 0;

	for (size_t i = 0; i < 6; i++)
		if (without[i].before != -2 || !run->last_open)
			count += lay_row(&rows[count], run->length, rule, without[i]);
	for (int lead = 0; lead < (run->first_open ? 1 : 2); lead++)
		for (int last = -1; last >= (run->last_open ? -1 : -2); last--)
			for (int i = 0; i < 3; i++)
				count += lay_row(&rows[count], run->length, rule,
					(struct course){ firsts[i], lead, last, false });
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
	given.rule = rule_of(block, bond_shortest(block, 3 * INCH), random_between(random, 1, 3),
		0);
	given.rule.corner = bond_corner(block, depth);
	given.rule.enough = bond_enough(block, depth);
	given.rule.even_courses = given.rule.odd_courses - random_below(random, 2);
	side = (struct side){ 0, random_below(random, 3) == 0, random_below(random, 3) == 0,
		random_below(random, 2), random_below(random, 2), false };
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
	int laid = 0;

	for (int i = 0; i < 3000; i++) {
		struct given given = given_at_random(&random);
		struct bond bond;

		if (!lay(&given, &bond))
			continue;
		check_course(&bond.odd, given.odd.length, &given.rule);
		check_course(&bond.even, given.even.length, &given.rule);
		laid++;
	}
	ck_assert_int_gt(laid, 2000);
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

/* Whether a pair bonds and, unless they may be weak, has its corner pieces; if so what it costs. */
static bool is_good(const struct given *given, const struct row *odd, const struct row *even,
	bool may_be_weak, nm cost[3])
{
	const struct bond_rule *rule = &given->rule;

	cost[0] = head_short(&given->odd, rule, odd) + head_short(&given->even, rule, even);
	cost[1] = rule->odd_courses * odd->cut + rule->even_courses * even->cut;
	cost[2] = rule->odd_courses * cut_heads(&given->odd, rule, odd) +
		rule->even_courses * cut_heads(&given->even, rule, even);
	return rows_bond(given, odd, even) && (may_be_weak || (!is_weak(&given->odd, rule, odd) &&
		!is_weak(&given->even, rule, even)));
}

static bool is_cheaper(const nm a[3], const nm b[3])
{
	int at = 0;

	while (at < 2 && a[at] == b[at])
		at++;
	return a[at] < b[at];
}

/* The cheapest good pair of fixed candidates, the earliest on a tie. False where none is good. */
static bool best_candidates(const struct given *given, bool may_be_weak, struct row best[2])
{
	struct row odd[CANDIDATES], even[CANDIDATES];
	int odds = lay_candidates(odd, &given->odd, &given->rule);
	int evens = lay_candidates(even, &given->even, &given->rule);
	nm least[3] = { 0, 0, 0 }, cost[3];
	bool found = false;

	for (int i = 0; i < odds; i++)
		for (int j = 0; j < evens; j++) {
			if (!is_good(given, &odd[i], &even[j], may_be_weak, cost) ||
				(found && !is_cheaper(cost, least)))
				continue;
			best[0] = odd[i];
			best[1] = even[j];
			memcpy(least, cost, sizeof least);
			found = true;
		}
	return found;
}

START_TEST(of_candidates_without_a_fault_the_one_with_fewest_cuts_the_earliest_is_laid)
{
	struct random random = { 13 };
	int found = 0;

	for (int n = 0; n < 2000; n++) {
		struct given given = given_at_random(&random);
		struct row best[2];
		struct bond bond;

		if (!lay(&given, &bond) || !best_candidates(&given, false, best))
			continue;
		found++;
		ck_assert_msg(bond.holds && same(&bond.odd, &best[0]) &&
			same(&bond.even, &best[1]), "side %d of seed 13", n);
	}
	ck_assert_int_gt(found, 1200);
}
END_TEST

START_TEST(corner_pieces_hold_exactly_where_none_that_shows_its_head_is_too_short)
{
	struct random random = { 16 };
	int held = 0, bad = 0;

	for (int i = 0; i < 3000; i++) {
		struct given given = given_at_random(&random);
		struct row odd, even;
		struct bond bond;
		bool holds;

		if (!lay(&given, &bond))
			continue;
		odd = row_of(&bond.odd);
		even = row_of(&bond.even);
		holds = head_short(&given.odd, &given.rule, &odd) == 0 &&
			head_short(&given.even, &given.rule, &even) == 0;
		ck_assert_msg(bond.corners_hold == holds, "side %d of seed 16", i);
		held += holds;
		bad += !holds;
	}
	ck_assert_int_gt(held, 2000);
	ck_assert_int_gt(bad, 5);
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

static bool is_good_alone(const struct row *row, const struct bond_run *run,
	const struct bond_run *other, const struct bond_rule *rule, bool may_be_weak)
{
	nm joints[PIECES_MOST] = { 0 }, ends[2] = { 0 };
	int count = joints_of(row->pieces, row->count, run->from, joints);

	return (may_be_weak || !is_weak(run, rule, row)) &&
		!any_close(joints, count, ends, open_ends(other, ends), rule->block);
}

/* First pieces from none and the shortest up in half inches, at the start or behind a block where
 * the run shows its head there, the rest or its halves at any place; without faults of its own,
 * but for weak corner pieces where they may be. */
static void lay_all(struct rows *rows, const struct bond_run *run, const struct bond_run *other,
	const struct bond_rule *rule, bool may_be_weak)
{
	for (nm first = 0; first < rule->block; first = first ? first + INCH / 2 : rule->shortest) {
		for (int kind = 0; kind < (first && !run->first_open ? 4 : 2); kind++) {
			struct course how = { first, kind / 2, 0, kind % 2 };
			struct row row;

			for (; lay_row(&row, run->length, rule, how); how.before++)
				if (is_good_alone(&row, run, other, rule, may_be_weak))
					keep(rows, &row);
		}
	}
}

/* Bonds, and has no weak corner pieces unless they may be. */
static bool any_pair_is_good(const struct given *given, bool may_be_weak)
{
	struct rows odd = { NULL, 0, 0 }, even = { NULL, 0, 0 };
	bool found = false;

	lay_all(&odd, &given->odd, &given->even, &given->rule, may_be_weak);
	lay_all(&even, &given->even, &given->odd, &given->rule, may_be_weak);
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
		random_below(random, 2), random_below(random, 2), false };
	struct given given;

	given.rule = rule_of(block, bond_shortest(block, 3 * INCH), 2, 1);
	given.rule.corner = bond_corner(block, depth);
	given.rule.enough = bond_enough(block, depth);
	side.length = depth + given.rule.shortest + random_between(random, 0, 40) * INCH;
	given.odd = side_run(&side, depth, false);
	given.even = side_run(&side, depth, true);
	return given;
}

static bool has_fault(const struct given *given, const struct bond *bond)
{
	struct row odd = row_of(&bond->odd), even = row_of(&bond->even);

	return !bond->holds || is_weak(&given->odd, &given->rule, &odd) ||
		is_weak(&given->even, &given->rule, &even);
}

START_TEST(a_side_has_a_fault_only_where_everything_that_may_be_tried_has_one)
{
	struct random random = { 14 };
	int without = 0;

	for (int i = 0; i < 1500; i++) {
		struct given given = awkward_at_random(&random);
		struct bond bond;

		if (!lay(&given, &bond) || !has_fault(&given, &bond))
			continue;
		without++;
		ck_assert_msg(!any_pair_is_good(&given, false), "side %d of seed 14", i);
	}
	ck_assert_int_gt(without, 10);
}
END_TEST

START_TEST(joints_stand_too_close_only_where_weak_corner_pieces_would_not_spare_it_either)
{
	struct random random = { 17 };
	int spared = 0, without = 0;

	for (int i = 0; i < 1500; i++) {
		struct given given = awkward_at_random(&random);
		struct bond bond;

		if (!lay(&given, &bond) || !has_fault(&given, &bond))
			continue;
		spared += bond.holds;
		without += !bond.holds;
		ck_assert_msg(bond.holds == any_pair_is_good(&given, true), "side %d of seed 17",
			i);
	}
	ck_assert_int_gt(spared, 5);
	ck_assert_int_gt(without, 5);
}
END_TEST

START_TEST(of_candidates_that_bond_the_best_is_laid_where_corner_pieces_are_weak_at_best)
{
	struct random random = { 18 };
	int weak = 0;

	for (int i = 0; i < 1500; i++) {
		struct given given = awkward_at_random(&random);
		struct row best[2];
		struct bond bond;

		if (!lay(&given, &bond) || !has_fault(&given, &bond) ||
			!best_candidates(&given, true, best))
			continue;
		weak++;
		ck_assert_msg(bond.holds && same(&bond.odd, &best[0]) &&
			same(&bond.even, &best[1]), "side %d of seed 18", i);
	}
	ck_assert_int_gt(weak, 5);
}
END_TEST

START_TEST(on_a_long_side_too_nothing_is_missed_by_trying_places_near_the_ends_alone)
{
	struct random random = { 15 };
	int without = 0;

	for (int i = 0; i < 1200 && without < 8; i++) {
		struct given given = given_at_random(&random);
		struct bond bond;

		if (given.odd.length < 14 * given.rule.block || !lay(&given, &bond) ||
			!has_fault(&given, &bond))
			continue;
		without++;
		ck_assert_msg(!any_pair_is_good(&given, false), "side %d of seed 15", i);
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
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 2, 1);
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
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 0);
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
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 0);
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
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 1);
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
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 1);
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
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 1);
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
	struct bond_rule rule = rule_of(16 * INCH, 6 * INCH, 1, 1);
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
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 1);
	struct bond bond;

	ck_assert(!bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert(!bond_lay(&bond, &arena, &even, &odd, &rule));
	ck_assert(!bond_lay(&bond, &arena, &odd, NULL, &rule));
	odd.length++;
	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
}
END_TEST

/* ---- Corner pieces --------------------------------------------------------------------------- */

static void check_pieces(const struct bond_course *course, const int *inches)
{
	int count = 0;

	for (; inches[count]; count++) {
		ck_assert_int_lt(count, course->count);
		ck_assert_int_eq(course->pieces[count], inches[count] * INCH);
	}
	ck_assert_int_eq(course->count, count);
}

START_TEST(the_least_corner_piece_is_half_a_block_or_its_depth_but_no_more_than_a_block)
{
	ck_assert_int_eq(bond_corner(16 * INCH, 8 * INCH), 8 * INCH);
	ck_assert_int_eq(bond_corner(12 * INCH, 4 * INCH), 6 * INCH);
	ck_assert_int_eq(bond_corner(16 * INCH, 12 * INCH), 12 * INCH);
	ck_assert_int_eq(bond_corner(8 * INCH, 12 * INCH), 8 * INCH);
	ck_assert_int_eq(bond_enough(16 * INCH, 12 * INCH), 12 * INCH);
	ck_assert_int_eq(bond_enough(16 * INCH, 12 * INCH + 1), 8 * INCH);
}
END_TEST

START_TEST(a_short_rest_stands_where_the_run_butts_and_never_at_the_corner)
{
	/* 9 ft of 16 x 8 in block, through at one end in each course: 100 or 108 in less 8 in
	 * are 6 blocks and 4 in. */
	struct bond_run odd = { 0, 100 * INCH, false, true },
		even = { 8 * INCH, 100 * INCH, true, false };
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 2, 1);
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert(bond.holds && bond.corners_hold);
	check_pieces(&bond.odd, (const int[]){ 16, 16, 16, 16, 16, 16, 4, 0 });
	check_pieces(&bond.even, (const int[]){ 4, 16, 16, 16, 16, 16, 16, 0 });
}
END_TEST

START_TEST(through_at_both_ends_the_rest_stands_inside)
{
	struct bond_run run = { 0, 100 * INCH, false, false };
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 0);
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &run, NULL, &rule));
	ck_assert(bond.corners_hold);
	check_pieces(&bond.odd, (const int[]){ 16, 4, 16, 16, 16, 16, 16, 0 });
}
END_TEST

START_TEST(of_equal_cuts_whole_blocks_stand_at_the_corners)
{
	/* 12 in would do at the corner, yet it stands inside. */
	struct bond_run run = { 0, 60 * INCH, true, false };
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 0);
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &run, NULL, &rule));
	check_pieces(&bond.odd, (const int[]){ 12, 16, 16, 16, 0 });
}
END_TEST

START_TEST(where_no_corner_piece_is_long_enough_the_longest_is_laid)
{
	/* 20 in of block 16 x 12 in: two of 10 in are the best, one of 16 and one of 4 in is
	 * not. */
	struct bond_run run = { 0, 20 * INCH, false, false };
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 0);
	struct bond bond;

	rule.corner = rule.enough = 12 * INCH;
	ck_assert(bond_lay(&bond, &arena, &run, NULL, &rule));
	ck_assert(bond.holds && !bond.corners_hold);
	check_pieces(&bond.odd, (const int[]){ 10, 10, 0 });
}
END_TEST

START_TEST(a_block_deeper_than_three_quarters_bonds_with_half_blocks_at_its_corners)
{
	/* 12 x 10 in: a corner piece of 10 in or more would have its joint within 2 in of the
	 * run's end below, a quarter being 3 in. */
	struct bond_run odd = { 0, 62 * INCH, false, true },
		even = { 10 * INCH, 62 * INCH, true, false };
	struct bond_rule rule = rule_of(12 * INCH, 3 * INCH, 1, 1);
	struct bond bond;

	rule.corner = 10 * INCH;
	ck_assert(bond_lay(&bond, &arena, &odd, &even, &rule));
	ck_assert(bond.holds && !bond.corners_hold);
	ck_assert_int_ge(bond.odd.pieces[0], 6 * INCH);
	ck_assert_int_ge(bond.even.pieces[bond.even.count - 1], 6 * INCH);
}
END_TEST

START_TEST(a_cut_piece_that_shows_both_heads_has_a_sawn_one)
{
	struct bond_run run = { 0, 12 * INCH, false, false };
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 0);
	struct bond bond;

	ck_assert(bond_lay(&bond, &arena, &run, NULL, &rule));
	ck_assert(!bond.corners_hold);
	run.length = 16 * INCH;
	ck_assert(bond_lay(&bond, &arena, &run, NULL, &rule));
	ck_assert(bond.corners_hold);
	run.length = 12 * INCH;
	run.last_open = true;
	ck_assert(bond_lay(&bond, &arena, &run, NULL, &rule));
	ck_assert(bond.corners_hold);
}
END_TEST

/* ---- Courses that are their own images, and caps --------------------------------------------- */

static bool is_palindrome(const struct bond_course *course)
{
	for (int i = 0; i < course->count; i++)
		if (course->pieces[i] != course->pieces[course->count - 1 - i])
			return false;
	return true;
}

START_TEST(mirrored_courses_are_their_own_images)
{
	struct random random = { 17 };
	int held = 0;

	for (int i = 0; i < 3000; i++) {
		struct given given = given_at_random(&random);
		struct bond bond;

		given.rule.mirrored = true;
		if (given.odd.first_open != given.odd.last_open ||
			given.even.first_open != given.even.last_open || !lay(&given, &bond))
			continue;
		check_course(&bond.odd, given.odd.length, &given.rule);
		check_course(&bond.even, given.even.length, &given.rule);
		ck_assert(is_palindrome(&bond.odd) && is_palindrome(&bond.even));
		ck_assert(bond.holds == bonds(&given, bond.odd.pieces, bond.odd.count,
			bond.even.pieces, bond.even.count));
		held += bond.holds && bond.corners_hold;
	}
	ck_assert_int_gt(held, 200);
}
END_TEST

START_TEST(a_mirrored_rest_stands_in_the_middle_or_is_two_pieces)
{
	struct bond_rule rule = rule_of(16 * INCH, 4 * INCH, 1, 0);
	struct bond_run run = { 0, 76 * INCH, false, false };
	struct bond bond;

	rule.mirrored = true;
	ck_assert(bond_lay(&bond, &arena, &run, NULL, &rule)); /* four blocks and 12 in */
	check_pieces(&bond.odd, (const int[]){ 16, 16, 12, 16, 16, 0 });
	run.length = 60 * INCH; /* three and 12 in */
	ck_assert(bond_lay(&bond, &arena, &run, NULL, &rule));
	check_pieces(&bond.odd, (const int[]){ 16, 14, 14, 16, 0 });
	run.length = 66 * INCH; /* four and 2 in, too short */
	ck_assert(bond_lay(&bond, &arena, &run, NULL, &rule));
	check_pieces(&bond.odd, (const int[]){ 16, 9, 16, 9, 16, 0 });
	run.length++; /* two pieces would differ by a nanometre */
	ck_assert(!bond_lay(&bond, &arena, &run, NULL, &rule));
}
END_TEST

START_TEST(a_course_upon_another_keeps_away_from_its_joints)
{
	/* 64 in of whole blocks through at both ends: joints at 16, 32, 48. Upon it 48 in butt
	 * at both ends, from 8 in on: joints at 24 and 40. */
	struct bond_run under = { 0, 64 * INCH, false, false },
		run = { 8 * INCH, 48 * INCH, true, true };
	struct bond_rule rule = rule_of(16 * INCH, 8 * INCH, 1, 0);
	struct bond below, bond;
	struct bond_below joints;

	ck_assert(bond_lay(&below, &arena, &under, NULL, &rule));
	joints = bond_below(&arena, &under, &below.odd, 4 * INCH);
	ck_assert_int_eq(joints.count, 3);
	ck_assert(bond_lay_upon(&bond, &arena, &run, &rule, &joints));
	ck_assert(bond.holds);
	check_pieces(&bond.odd, (const int[]){ 16, 16, 16, 0 });
	/* 48 in from 16 in on: its ends stand on joints, which nothing can help. */
	run.from = 16 * INCH;
	run.length = 32 * INCH;
	ck_assert(bond_lay_upon(&bond, &arena, &run, &rule, &joints));
	ck_assert(!bond.holds);
	/* Where they show their heads they are no joints, and the one inside can be moved. */
	run.first_open = run.last_open = false;
	ck_assert(bond_lay_upon(&bond, &arena, &run, &rule, &joints));
	ck_assert(bond.holds && bond.corners_hold);
	check_pieces(&bond.odd, (const int[]){ 8, 16, 8, 0 });
}
END_TEST

/* A plain check of a course upon another, of blocks of another length. */
static bool bonds_upon(const struct bond_run *run, const struct bond_course *course,
	const struct bond_run *under, const struct bond_course *below, nm least)
{
	nm a[PIECES_MOST] = { 0 }, b[PIECES_MOST] = { 0 }, a_ends[2] = { 0 }, b_ends[2] = { 0 };
	int a_count = joints_of(course->pieces, course->count, run->from, a);
	int b_count = joints_of(below->pieces, below->count, under->from, b);

	return !any_close(a, a_count, b, b_count, least) &&
		!any_close(a, a_count, b_ends, open_ends(under, b_ends), least) &&
		!any_close(a_ends, open_ends(run, a_ends), b, b_count, least);
}

START_TEST(whether_a_course_holds_upon_another_is_as_its_joints_lie)
{
	struct random random = { 18 };
	int held = 0, without = 0;

	for (int i = 0; i < 2000; i++) {
		struct given given = given_at_random(&random), upper = given_at_random(&random);
		nm least = given.rule.block < upper.rule.block ? given.rule.block :
			upper.rule.block;
		struct bond below, bond;
		struct bond_below joints;

		upper.odd.length = given.odd.length;
		upper.odd.from = given.odd.from + random_between(&random, -6, 6) * INCH;
		upper.rule.shortest = upper.rule.block / 2;
		if (upper.odd.length < upper.rule.shortest || !lay(&given, &below))
			continue;
		joints = bond_below(&arena, &given.odd, &below.odd, (least + 3) / 4);
		ck_assert(bond_lay_upon(&bond, &arena, &upper.odd, &upper.rule, &joints));
		check_course(&bond.odd, upper.odd.length, &upper.rule);
		ck_assert_msg(bond.holds == bonds_upon(&upper.odd, &bond.odd, &given.odd,
			&below.odd, least), "side %d of seed 18", i);
		held += bond.holds;
		without += !bond.holds;
	}
	ck_assert_int_gt(held, 500);
	ck_assert_int_gt(without, 20);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("bond");
	TCase *single = suite_case(suite, "single sides");
	TCase *corner = suite_case(suite, "corner pieces");
	TCase *upon = suite_case(suite, "images and caps");
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

	tcase_add_checked_fixture(corner, NULL, teardown);
	tcase_add_test(corner,
		the_least_corner_piece_is_half_a_block_or_its_depth_but_no_more_than_a_block);
	tcase_add_test(corner, a_short_rest_stands_where_the_run_butts_and_never_at_the_corner);
	tcase_add_test(corner, through_at_both_ends_the_rest_stands_inside);
	tcase_add_test(corner, of_equal_cuts_whole_blocks_stand_at_the_corners);
	tcase_add_test(corner, where_no_corner_piece_is_long_enough_the_longest_is_laid);
	tcase_add_test(corner,
		a_block_deeper_than_three_quarters_bonds_with_half_blocks_at_its_corners);
	tcase_add_test(corner, a_cut_piece_that_shows_both_heads_has_a_sawn_one);

	tcase_add_checked_fixture(upon, NULL, teardown);
	tcase_add_test(upon, mirrored_courses_are_their_own_images);
	tcase_add_test(upon, a_mirrored_rest_stands_in_the_middle_or_is_two_pieces);
	tcase_add_test(upon, a_course_upon_another_keeps_away_from_its_joints);
	tcase_add_test(upon, whether_a_course_holds_upon_another_is_as_its_joints_lie);

	tcase_add_checked_fixture(random, NULL, teardown);
	tcase_add_test(random, pieces_fill_their_run_and_none_is_shorter_than_the_shortest);
	tcase_add_test(random, a_bond_holds_exactly_where_no_joint_is_nearer_than_a_quarter_block);
	tcase_add_test(random,
		of_candidates_without_a_fault_the_one_with_fewest_cuts_the_earliest_is_laid);
	tcase_add_test(random,
		corner_pieces_hold_exactly_where_none_that_shows_its_head_is_too_short);
	tcase_add_test(random,
		a_side_has_a_fault_only_where_everything_that_may_be_tried_has_one);
	tcase_add_test(random,
		joints_stand_too_close_only_where_weak_corner_pieces_would_not_spare_it_either);
	tcase_add_test(random,
		of_candidates_that_bond_the_best_is_laid_where_corner_pieces_are_weak_at_best);
	tcase_add_test(random,
		on_a_long_side_too_nothing_is_missed_by_trying_places_near_the_ends_alone);
	return suite;
}
