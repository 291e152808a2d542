/* Layouts held by their figures alone, against their pieces counted one by one. */

#include "takeoff/walls/bond_layout.h"

#include "support/random.h"
#include "support/runner.h"

#include <stdlib.h>

#define INCH NM_PER_INCH

static const struct bond_rule rule = { .block = 16 * INCH, .shortest = 4 * INCH,
	.corner = 8 * INCH, .odd_courses = 1, .even_courses = 1 };
static struct arena arena;

static void teardown(void)
{
	arena_clear(&arena);
}

/* A run at random and a layout of it. */
struct laid {
	struct bond_run run;
	struct bond_layout layout;
	const nm *pieces;
	int count;
};

static bool lay_at_random(struct laid *laid, struct random *random)
{
	nm first = random_below(random, 2) ? 0 : random_between(random, 8, 31) * INCH / 2;
	struct bond_start start = { first, first > 0 ? random_below(random, 2) : 0 };
	int64_t whole;

	laid->run = (struct bond_run){ random_between(random, -16, 16) * INCH / 2,
		random_between(random, 8, 400) * INCH / 2, random_below(random, 2),
		random_below(random, 2) };
	if (!bond_layout_make(&laid->layout, &laid->run, &rule, start, random_below(random, 2)))
		return false;
	whole = bond_layout_movable(&laid->layout);
	bond_layout_move(&laid->layout, &laid->run, rule.block,
		random_between(random, 0, (int)whole));
	laid->pieces = bond_layout_pieces(&laid->layout, rule.block, &arena, &laid->count);
	return true;
}

/* Joints of a that are closer than a quarter block to a joint at `to`. */
static int close_to(const struct laid *a, nm to)
{
	nm at = a->run.from;
	int close = 0;

	for (int i = 0; i + 1 < a->count; i++) {
		at += a->pieces[i];
		close += llabs(at - to) < rule.block / 4;
	}
	return close;
}

START_TEST(the_pieces_of_a_layout_add_up_to_its_run)
{
	struct random random = { 31 };

	for (int i = 0; i < 3000; i++) {
		struct laid laid;
		nm sum = 0;
		int cut = 0;

		if (!lay_at_random(&laid, &random))
			continue;
		for (int n = 0; n < laid.count; n++) {
			sum += laid.pieces[n];
			cut += laid.pieces[n] < rule.block;
			ck_assert_int_ge(laid.pieces[n], rule.shortest);
		}
		ck_assert_int_eq(sum, laid.run.length);
		ck_assert_int_eq(cut, laid.layout.cut);
	}
}
END_TEST

START_TEST(close_joints_are_counted_without_looking_at_each)
{
	struct random random = { 32 };
	int some = 0;

	for (int i = 0; i < 3000; i++) {
		struct laid a, b;
		nm at;
		int close = 0;

		if (!lay_at_random(&a, &random) || !lay_at_random(&b, &random))
			continue;
		at = b.run.from;
		for (int n = 0; n + 1 < b.count; n++)
			close += close_to(&a, at += b.pieces[n]);
		ck_assert_msg(bond_layout_close_joints(&a.layout, &b.layout, rule.block) == close,
			"pair %d of seed 32", i);
		ck_assert(bond_layout_bonds(&a.layout, &b.layout, rule.block) == (close == 0));
		some += close > 0;
	}
	ck_assert_int_gt(some, 100);
}
END_TEST

START_TEST(only_open_ends_are_joints)
{
	struct random random = { 33 };

	for (int i = 0; i < 3000; i++) {
		struct laid a, b;
		int close;

		if (!lay_at_random(&a, &random) || !lay_at_random(&b, &random))
			continue;
		close = (b.run.first_open ? close_to(&a, b.run.from) : 0) +
			(b.run.last_open ? close_to(&a, b.run.from + b.run.length) : 0);
		ck_assert_int_eq(bond_layout_close_ends(&a.layout, &b.run, rule.block), close);
	}
}
END_TEST

START_TEST(heads_that_show_are_measured_against_the_corner_piece)
{
	struct random random = { 34 };
	int bad = 0;

	for (int i = 0; i < 3000; i++) {
		struct laid a;
		nm first, last, short_by = 0;

		if (!lay_at_random(&a, &random))
			continue;
		first = a.run.first_open ? rule.block : a.pieces[0];
		last = a.run.last_open ? rule.block : a.pieces[a.count - 1];
		short_by += first < rule.corner ? rule.corner - first : 0;
		short_by += last < rule.corner ? rule.corner - last : 0;
		if (a.count == 1 && !a.run.first_open && !a.run.last_open)
			short_by += rule.block - first;
		ck_assert_int_eq(bond_layout_short(&a.layout, &a.run, rule.block,
			rule.corner), short_by);
		ck_assert_int_eq(bond_layout_cut_heads(&a.layout, &a.run),
			(first < rule.block) + (last < rule.block));
		bad += short_by > 0;
	}
	ck_assert_int_gt(bad, 100);
}
END_TEST

static bool make(struct bond_layout *layout, const struct bond_run *run, nm first, bool shared)
{
	return bond_layout_make(layout, run, &rule, (struct bond_start){ first, 0 }, shared);
}

START_TEST(what_has_no_whole_block_to_share_cannot_be_shared)
{
	struct bond_run run = { 0, 15 * INCH, true, true };
	struct bond_layout layout;

	ck_assert(!make(&layout, &run, 0, true));
	ck_assert(make(&layout, &run, 0, false));
	/* 12 in and the 3 in left over, too short: */
	ck_assert(!make(&layout, &run, 12 * INCH, false));
	ck_assert(!make(&layout, &run, 16 * INCH, false));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("layout");
	TCase *layouts = suite_case(suite, "layouts");

	tcase_add_checked_fixture(layouts, NULL, teardown);
	tcase_add_test(layouts, the_pieces_of_a_layout_add_up_to_its_run);
	tcase_add_test(layouts, close_joints_are_counted_without_looking_at_each);
	tcase_add_test(layouts, only_open_ends_are_joints);
	tcase_add_test(layouts, heads_that_show_are_measured_against_the_corner_piece);
	tcase_add_test(layouts, what_has_no_whole_block_to_share_cannot_be_shared);
	return suite;
}
