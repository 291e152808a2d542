#include "support/runner.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/plots.h"
#include "base/show.h"
#include "report/text/print.h"

#include <stdlib.h>
#include <string.h>

static struct garden garden;
static struct text page;

static void setup(void)
{
	page = TEXT_EMPTY;
	garden.arena = ARENA_EMPTY;
}

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

static void print(void)
{
	struct text_sink out = text_sink(&page);
	struct report report;

	garden_count(&garden);
	report = garden_report(&garden, &out.sink);
	print_fence(&report);
}

/* Pickets round three sides and across, with two gates; boards that stand alone. */
static void draw(void)
{
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, "0,0 0,24 40,24 40,0");
	fences_run(&garden.plot, "0,10 16,10");
	fences_gate(&garden.plot, "10,24 14,24");
	fences_gate(&garden.plot, "40,10 40,16");
	fences_set(&garden.plot, FENCE_LEAF_FROM, "offcut");
	details_add_fence(&garden.plot.details, memory_string("Boards"));
	fences_run(&garden.plot, "5,5 12,5");
	fences_set(&garden.plot, FENCE_HEIGHT, "6 ft");
}

START_TEST(legs_gates_panels_and_posts_print_as_they_did)
{
	draw();
	print();
	golden_check("fence.txt", page.bytes);
}
END_TEST

START_TEST(a_metric_plot_has_them_in_metric)
{
	draw();
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "300 mm");
	print();
	golden_check("fence-metric.txt", page.bytes);
}
END_TEST

static void has(const char *words)
{
	ck_assert_msg(strstr(page.bytes, words), "%s is not in\n%s", words, page.bytes);
}

/* ---- Setting out ----------------------------------------------------------------------------- */

/* Adds the words with one blank between, wherever the page breaks its lines. */
static void add_words(struct text *out, const char *from, size_t length)
{
	for (size_t at = 0; at < length;) {
		size_t word = strcspn(from + at, " \n");

		if (word == 0) {
			at++;
			continue;
		}
		word = word < length - at ? word : length - at;
		text_add(out, out->length ? " " : "");
		text_add_bytes(out, from + at, word);
		at += word;
	}
}

/* What is printed has the words, wherever lines are broken. */
static void has_words(const char *words)
{
	struct text all = TEXT_EMPTY;

	add_words(&all, page.bytes, page.length);
	ck_assert_msg(strstr(all.bytes, words), "%s is not in\n%s", words, all.bytes);
	text_fini(&all);
}

/* What is set out of the fence that is printed in that place, from 0: its legs, gates and posts as
 * one line of words. The caller frees. */
static struct text set_out(int fence)
{
	const char *start = page.bytes, *end;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i <= fence; i++) {
		start = strstr(start, "  Leg ");
		ck_assert_ptr_nonnull(start);
		start = strchr(start, '\n');
	}
	end = strstr(start, "\n\n");
	ck_assert_ptr_nonnull(end);
	add_words(&words, start, (size_t)(end - start));
	return words;
}

static void set_out_is(int fence, const char *expected)
{
	struct text words = set_out(fence);

	ck_assert_str_eq(words.bytes, expected);
	text_fini(&words);
}

/* Down the left side, with a panel and a narrower one; along the bottom with a gate in the middle;
 * and from the corner of the string up to an end. */
START_TEST(one_walks_along_the_fence_from_post_to_post)
{
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, "2,3 2,16 22,16 22,8");
	fences_gate(&garden.plot, "10,16 14,16");
	print();
	set_out_is(0,
		"1 down 2 ft 1 end, 3 ft down: whole, 2 line at 8 ft, sawn to 56 3/8 in, "
		"3 corner at 13 ft "
		"2 right 16 ft 3: whole, 4 gate at 8 ft "
		"G1 right 16 ft 4: 44 1/2 in clear, 1 leaf of 43 1/4 in, 5 gate at 4 ft "
		"3 right 16 ft 5: whole, 6 corner at 8 ft "
		"4 up 22 ft 6: whole, 7 end at 8 ft");
}
END_TEST

/* Two sections of 8 ft; one and a rest of 5 ft; a rest alone. */
static const struct { const char *run, *words; } panels[] = {
	{ "2,3 2,19", "Panels 92 1/2 in wide between posts: 2 whole; bought 2. 3 posts " },
	{ "2,3 2,16", "between posts: 1 whole and 1 narrower cut from 1; bought 2. Each piece " },
	{ "2,3 2,8", "between posts: 1 narrower cut from 1; bought 1. Each piece is sawn 1/8 in "
		"shorter than its place; a saw cut takes 1/8 in: 1 into 1 of 56 3/8 in. 2 posts " },
};

START_TEST(panels_are_whole_or_narrower_and_none_is_not_counted)
{
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, panels[_i].run);
	print();
	has_words(panels[_i].words);
}
END_TEST

/* The second fence meets itself in a tee and comes back to its first post. */
START_TEST(a_post_has_the_number_it_has_on_the_plan_and_its_kind_where_one_first_comes_to_it)
{
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, "1,1 9,1");
	details_add_fence(&garden.plot.details, memory_string("Boards"));
	fences_run(&garden.plot, "10,5 18,5 18,13 10,13 10,5");
	fences_run(&garden.plot, "26,13 18,13");
	fences_gate(&garden.plot, "22,13 26,13");
	print();
	set_out_is(0, "1 right 1 ft 1 end, 1 ft across: whole, 2 end at 8 ft");
	set_out_is(1,
		"1 right 5 ft 2.1 corner, 10 ft across: whole, 2.2 corner at 8 ft "
		"2 down 18 ft 2.2: whole, 2.3 tee at 8 ft "
		"3 left 13 ft 2.3: whole, 2.4 corner at 8 ft "
		"4 up 10 ft 2.4: whole, 2.1 at 8 ft "
		"G2.1 left 13 ft 2.5 gate, 26 ft across: 44 1/2 in clear, 1 leaf of 43 1/4 in, "
		"2.6 gate at 4 ft "
		"5 left 13 ft 2.6: sawn to 44 3/8 in, 2.3 at 4 ft");
}
END_TEST

/* A leg of 20 ft that the mirror turns onto itself, legs of 21 ft on both sides of a gate. */
START_TEST(panels_stand_in_the_order_of_their_leg)
{
	fences_ground(&garden.plot, 48, 24);
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	fences_run(&garden.plot, "14,10 34,10");
	fences_run(&garden.plot, "1,20 47,20");
	fences_gate(&garden.plot, "22,20 26,20");
	print();
	set_out_is(0,
		"1 right 10 ft 1 end, 14 ft across: whole, 2 line at 8 ft, sawn to 44 3/8 in, "
		"3 line at 12 ft, whole, 4 end at 20 ft "
		"2 right 20 ft 5 end, 1 ft across: whole, 6 line at 8 ft, whole, "
		"7 line at 16 ft, sawn to 56 3/8 in, 8 gate at 21 ft "
		"G1 right 20 ft 8: 44 1/2 in clear, 1 leaf of 43 1/4 in, 9 gate at 4 ft "
		"3 right 20 ft 9: sawn to 56 3/8 in, 10 line at 5 ft, whole, "
		"11 line at 13 ft, whole, 12 end at 21 ft");
}
END_TEST

/* Sections of 2.4 m, posts of 90 mm square. */
START_TEST(in_a_metric_plot_it_is_told_in_metres)
{
	fences_ground(&garden.plot, 60, 20);
	plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
	plot_set(&garden.plot, 0, HEAD_CELL, "300 mm");
	fences_run(&garden.plot, "2,3 12,3 12,11");
	fences_gate(&garden.plot, "8,3 12,3");
	print();
	set_out_is(0, "1 right 900 mm 1 end, 600 mm across: sawn to 1.707 m, 2 gate at 1.8 m "
		"G1 right 900 mm 2: 1.11 m clear, 1 leaf of 1.08 m, 3 gate at 1.2 m "
		"2 down 3.6 m 3: whole, 4 end at 2.4 m");
	has_words("bought 1.8 m long: sink it 250 mm deeper or saw the top");
}
END_TEST

/* Of posts that are wider at a gate the leg ends an inch sooner: 95 in are no whole section. */
START_TEST(beside_a_wider_post_of_a_gate_a_panel_is_sawn_to_what_is_left)
{
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, "2,10 14,10");
	fences_gate(&garden.plot, "10,10 14,10");
	fences_set(&garden.plot, FENCE_GATE_POST, "5 1/2 in");
	print();
	set_out_is(0, "1 right 10 ft 1 end, 2 ft across: sawn to 91 3/8 in, 2 gate at 8 ft "
		"G1 right 10 ft 2: 42 1/2 in clear, 1 leaf of 41 1/4 in, 3 gate at 4 ft");
}
END_TEST

/* ---- By a look at all posts ------------------------------------------------------------------ */

static struct text expected;
static bool is_met[4096];

static void expect_length(nm length)
{
	show_length(&expected, length, UNITS_IMPERIAL);
}

static nm distance(struct spot a, struct spot b)
{
	return llabs(a.x - b.x) + llabs(a.y - b.y);
}

/* The nearest post on the line to the spot from a distance on; they are one foot apart at least. */
static int next_post(const struct fencing *fencing, struct spot from, struct spot to, nm least)
{
	int next = -1;
	nm nearest = distance(from, to) + 1;

	for (int i = 0; i < fencing->post_count; i++) {
		struct spot at = fencing->posts[i].at;
		nm along = distance(from, at);

		if (along + distance(at, to) == distance(from, to) && along >= least &&
		    along < nearest) {
			nearest = along;
			next = i;
		}
	}
	return next;
}

static void expect_post(const struct fencing *fencing, int fence, int post)
{
	static const char *const kinds[] = { "end", "corner", "tee", "gate", "line" };

	if (fence > 0)
		text_print(&expected, "%d.", fence + 1);
	text_print(&expected, "%d", post + 1);
	if (!is_met[post])
		text_print(&expected, " %s", kinds[fencing->posts[post].kind]);
}

static int expect_start(const struct fencing *fencing, int fence, struct spot from, struct spot to)
{
	int post = next_post(fencing, from, to, 0);
	bool is_upright = from.x == to.x;

	text_add(&expected, is_upright ? from.y < to.y ? "down " : "up " :
		from.x < to.x ? "right " : "left ");
	expect_length(is_upright ? from.x : from.y);
	text_add(&expected, " ");
	expect_post(fencing, fence, post);
	if (!is_met[post]) {
		text_add(&expected, ", ");
		expect_length(is_upright ? from.y : from.x);
		text_add(&expected, is_upright ? " down" : " across");
	}
	is_met[post] = true;
	text_add(&expected, ": ");
	return post;
}

static void expect_next(const struct fencing *fencing, int fence, struct spot from, int post)
{
	text_add(&expected, ", ");
	expect_post(fencing, fence, post);
	text_add(&expected, " at ");
	expect_length(distance(from, fencing->posts[post].at));
	is_met[post] = true;
}

static void expect_gate(const struct fencing *fencing, int fence, int i)
{
	const struct fence_gate *gate = &fencing->gates[i];

	text_print(&expected, "%sG", expected.length ? " " : "");
	if (fence > 0)
		text_print(&expected, "%d.", fence + 1);
	text_print(&expected, "%d ", i + 1);
	expect_start(fencing, fence, gate->from, gate->to);
	show_inches(&expected, gate->clear, UNITS_IMPERIAL);
	text_print(&expected, " clear, %d %s of ", gate->leaves,
		gate->leaves == 1 ? "leaf" : "leaves");
	show_inches(&expected, gate->leaf, UNITS_IMPERIAL);
	expect_next(fencing, fence, gate->from, next_post(fencing, gate->from, gate->to, 1));
}

/* Sawn 1/8 in shorter than what is clear between two posts of 3 1/2 in, down to a sixteenth. */
static void expect_leg(const struct fencing *fencing, int fence, int i)
{
	const struct fence_leg *leg = &fencing->legs[i];
	struct spot from = leg->from;
	nm sixteenth = NM_PER_INCH / 16, at = 0;

	text_print(&expected, "%s%d ", expected.length ? " " : "", i + 1);
	expect_start(fencing, fence, from, leg->to);
	for (int panel = 0; at < leg->length; panel++) {
		int post = next_post(fencing, from, leg->to, at + 1);
		nm place = distance(from, fencing->posts[post].at) - at;

		text_add(&expected, panel > 0 ? ", " : "");
		if (place == 8 * NM_PER_FOOT) {
			text_add(&expected, "whole");
		} else {
			text_add(&expected, "sawn to ");
			show_inches(&expected, (place - 29 * NM_PER_INCH / 8) / sixteenth *
				sixteenth, UNITS_IMPERIAL);
		}
		expect_next(fencing, fence, from, post);
		at += place;
	}
}

START_TEST(what_is_set_out_is_what_a_look_at_all_posts_finds)
{
	struct random random = { (uint64_t)_i };

	fences_ground(&garden.plot, random_between(&random, 4, 40),
		random_between(&random, 4, 40));
	fences_at_random(&garden.plot, &random);
	fences_at_random(&garden.plot, &random);
	print();
	for (int fence = 0; fence < garden.takeoff.fences.count; fence++) {
		const struct fencing *fencing = &garden.takeoff.fences.list[fence];
		int gate = 0;

		ck_assert_int_lt(fencing->post_count, (int)sizeof is_met);
		memset(is_met, false, sizeof is_met);
		text_clear(&expected);
		for (int leg = 0; leg <= fencing->leg_count; leg++) {
			while (gate < fencing->gate_count &&
				fencing->gates[gate].legs_before == leg)
				expect_gate(fencing, fence, gate++);
			if (leg < fencing->leg_count)
				expect_leg(fencing, fence, leg);
		}
		set_out_is(fence, expected.bytes);
	}
	text_fini(&expected);
}
END_TEST

/* ---- How long it is -------------------------------------------------------------------------- */

static int lines(void)
{
	int count = 0;

	for (const char *c = page.bytes; *c; c++)
		count += *c == '\n';
	return count - 1; /* the blank one before the heading */
}

START_TEST(a_fence_is_told_on_part_of_a_page)
{
	fences_ground(&garden.plot, 16, 13);
	fences_run(&garden.plot, "0,0 0,13 16,13 16,0");
	fences_gate(&garden.plot, "6,13 10,13");
	print();
	ck_assert_int_le(lines(), 28);
	garden_fini(&garden);
	text_clear(&page);
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, "2,2 34,2 34,18 2,18 2,2");
	print();
	ck_assert_int_le(lines(), 23);
}
END_TEST

/* ---- Panels, posts --------------------------------------------------------------------------- */

/* Posts of 5 ft 2 in come of 6 ft, in multiples of 2 in of 5 ft 2 in. */
START_TEST(what_a_post_is_too_long_is_sunk_or_sawn_off_its_top)
{
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, "2,10 22,10");
	print();
	has_words("bought 6 ft long: sink it 10 in deeper or saw the top, never the buried end. "
		"Holes");
	text_clear(&page);
	plot_set(&garden.plot, 0, ALLOW_POST_STOCK, "2 in");
	print();
	has_words("bought 5 ft 2 in long. Holes");
}
END_TEST

START_TEST(posts_of_gates_of_another_size_are_told_with_their_holes)
{
	fences_ground(&garden.plot, 40, 24);
	fences_run(&garden.plot, "2,10 22,10");
	fences_gate(&garden.plot, "10,10 14,10");
	print();
	ck_assert_ptr_null(strstr(page.bytes, "those at gates"));
	ck_assert_ptr_null(strstr(page.bytes, "Holes at gates"));
	text_clear(&page);
	fences_set(&garden.plot, FENCE_GATE_POST, "5 1/2 in");
	print();
	has("4 posts 3 1/2 in square, those at gates 5 1/2 in: 2 at ends, 2 at gates.");
	has("Holes 10 1/2 in across and 30 in deep");
	has("Holes at gates 16 1/2 in across and 30 in deep");
}
END_TEST

START_TEST(without_a_fence_nothing_is_printed)
{
	fences_ground(&garden.plot, 4, 4);
	print();
	ck_assert_str_eq(page.bytes, "");
}
END_TEST

/* Posts 3 in apart; a run within the inset of the boundary, which leaves it no length. */
START_TEST(where_nothing_fits_between_posts_it_says_so)
{
	fences_ground(&garden.plot, 40, 24);
	plot_set(&garden.plot, 0, HEAD_CELL, "3 in");
	fences_run(&garden.plot, "10,10 11,10 11,20");
	fences_gate(&garden.plot, "11,10 11,11");
	fences_run(&garden.plot, "0,15 1,15");
	print();
	set_out_is(0,
		"1 right 2 ft 6 in 1 end, 2 ft 6 in across: no room for a panel, "
		"2 gate at 3 in "
		"G1 down 2 ft 9 in 2: 0 in clear, no room for a leaf, 3 gate at 3 in "
		"2 down 2 ft 9 in 3: sawn to 23 3/8 in, 4 end at 2 ft 3 in "
		"3 right 3 ft 9 in no room for any");
}
END_TEST

/* The boundary moves both posts of the gate to one spot. From there 9 ft 6 3/4 in are two panels of
 * 57 3/8 in, less a post and an eighth. */
START_TEST(a_gate_that_has_no_length_says_so)
{
	fences_ground(&garden.plot, 60, 60);
	plot_set(&garden.plot, 0, HEAD_CELL, "3 in");
	fences_run(&garden.plot, "0,30 40,30");
	fences_gate(&garden.plot, "0,30 1,30");
	print();
	set_out_is(0,
		"G1 right 7 ft 6 in no room for any "
		"1 right 7 ft 6 in 1 end, 5 1/4 in across: sawn to 53 3/4 in, "
		"2 line at 4 ft 9 3/8 in, sawn to 53 3/4 in, 3 end at 9 ft 6 3/4 in");
}
END_TEST

START_TEST(lines_stay_within_80_columns_whatever_a_fence_is_called)
{
	char name[NAME_MOST + 1];

	memset(name, 'W', NAME_MOST);
	name[NAME_MOST] = '\0';
	draw();
	free(garden.plot.details.fences[0].name);
	garden.plot.details.fences[0].name = memory_string(name);
	print();
	for (const char *line = page.bytes; line; line = strchr(line, '\n')) {
		line += *line == '\n';
		ck_assert_msg(strcspn(line, "\n") <= 80, "%.100s", line);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_fence");
	TCase *section = suite_case(suite, "section");

	tcase_add_checked_fixture(section, setup, teardown);
	tcase_add_test(section, legs_gates_panels_and_posts_print_as_they_did);
	tcase_add_test(section, a_metric_plot_has_them_in_metric);
	tcase_add_test(section, one_walks_along_the_fence_from_post_to_post);
	tcase_add_loop_test(section, panels_are_whole_or_narrower_and_none_is_not_counted, 0,
		sizeof panels / sizeof *panels);
	tcase_add_test(section,
		a_post_has_the_number_it_has_on_the_plan_and_its_kind_where_one_first_comes_to_it);
	tcase_add_test(section, panels_stand_in_the_order_of_their_leg);
	tcase_add_test(section, in_a_metric_plot_it_is_told_in_metres);
	tcase_add_test(section, beside_a_wider_post_of_a_gate_a_panel_is_sawn_to_what_is_left);
	tcase_add_loop_test(section, what_is_set_out_is_what_a_look_at_all_posts_finds, 0, 100);
	tcase_add_test(section, a_fence_is_told_on_part_of_a_page);
	tcase_add_test(section, what_a_post_is_too_long_is_sunk_or_sawn_off_its_top);
	tcase_add_test(section, posts_of_gates_of_another_size_are_told_with_their_holes);
	tcase_add_test(section, without_a_fence_nothing_is_printed);
	tcase_add_test(section, where_nothing_fits_between_posts_it_says_so);
	tcase_add_test(section, a_gate_that_has_no_length_says_so);
	tcase_add_test(section, lines_stay_within_80_columns_whatever_a_fence_is_called);
	return suite;
}
