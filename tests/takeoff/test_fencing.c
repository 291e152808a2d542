/* Fences as a whole: where they stand, gates, what is bought, snags. */

#include "takeoff/fence/fences.h"
#include "prices/good.h"

#include "support/fencing.h"
#include "support/garden.h"
#include "takeoff/fence/fence_values.h"
#include "support/runner.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#define INCH NM_PER_INCH
#define FOOT NM_PER_FOOT

static const double EXACT = 1e-9;

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static void ground(int columns, int rows)
{
	fences_ground(&garden.plot, columns, rows);
	garden.arena = ARENA_EMPTY;
}

static void run(const char *points)
{
	fences_run(&garden.plot, points);
}

static void gate(const char *ends)
{
	fences_gate(&garden.plot, ends);
}

static void set(enum attribute attribute, const char *value)
{
	fences_set(&garden.plot, attribute, value);
}

static const struct fencing *only_fence(void)
{
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fences.count, 1);
	return &garden.takeoff.fences.list[0];
}

static const struct item *item(const char *id)
{
	const struct item *found = garden_item(&garden, id);

	ck_assert_msg(found, "no row %s", id);
	return found;
}

static void spot_is(struct spot spot, nm x, nm y)
{
	ck_assert_int_eq(spot.x, x);
	ck_assert_int_eq(spot.y, y);
}

/* ---- On the ground --------------------------------------------------------------------------- */

START_TEST(on_the_boundary_a_fence_is_moved_in_by_half_a_hole)
{
	const nm in = 21 * INCH / 4;

	ground(14, 8);
	run("0,8 14,8 14,0");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->leg_count, 2);
	spot_is(fencing->legs[0].from, in, 8 * FOOT - in);
	spot_is(fencing->legs[0].to, 14 * FOOT - in, 8 * FOOT - in);
	spot_is(fencing->legs[1].to, 14 * FOOT - in, in);
	ck_assert_int_eq(fencing->legs[0].length, 14 * FOOT - 2 * in);
	ck_assert_int_eq(fencing->length, 22 * FOOT - 4 * in);
}
END_TEST

START_TEST(within_the_plan_a_fence_stands_where_it_is_drawn)
{
	ground(14, 8);
	run("1,7 13,7");
	const struct fencing *fencing = only_fence();

	spot_is(fencing->legs[0].from, FOOT, 7 * FOOT);
	spot_is(fencing->legs[0].to, 13 * FOOT, 7 * FOOT);
}
END_TEST

START_TEST(where_cells_are_small_nothing_within_the_inset_stays_there)
{
	/* Else the second point would stand nearer to the boundary than the first. */
	ground(60, 60);
	plot_set(&garden.plot, 0, HEAD_CELL, "3 in");
	run("0,30 1,30 40,30");
	spot_is(only_fence()->legs[0].from, 21 * INCH / 4, 90 * INCH);
	ck_assert_int_eq(garden.takeoff.fences.list[0].leg_count, 1);
}
END_TEST

START_TEST(a_plan_narrower_than_two_insets_has_its_fence_in_the_middle)
{
	ground(1, 20);
	plot_set(&garden.plot, 0, HEAD_CELL, "6 in");
	run("0,2 0,18");
	spot_is(only_fence()->legs[0].from, 3 * INCH, 12 * INCH);
}
END_TEST

/* Both ends of its first leg are moved to the middle of the plan's one row. */
START_TEST(a_leg_that_has_no_length_left_goes_as_it_is_drawn)
{
	ground(20, 1);
	plot_set(&garden.plot, 0, HEAD_CELL, "7 in");
	run("1,0 1,1 9,1");
	ck_assert_int_eq(only_fence()->legs[0].length, 0);
	ck_assert_int_eq(only_fence()->legs[0].heading, HEADING_DOWN);
	ck_assert_int_eq(only_fence()->legs[1].heading, HEADING_RIGHT);
}
END_TEST

static const struct { const char *ends; int leaves; nm clear, leaf; } gates[] = {
	/* A post of 3 1/2 in off the centres, 1 1/4 in of gaps; two leaves over 4 ft clear: common
	 * practice, no published source. */
	{ "2,5 6,5", 1, 89 * INCH / 2, 173 * INCH / 4 },
	{ "2,5 3,5", 1, 17 * INCH / 2, 29 * INCH / 4 },
	{ "2,5 7,5", 2, 113 * INCH / 2, 221 * INCH / 8 },
	{ "12,5 2,5", 2, 233 * INCH / 2, 461 * INCH / 8 },
};

START_TEST(a_gate_is_clear_between_its_posts_and_has_two_leaves_over_four_feet)
{
	ground(20, 10);
	run("1,5 19,5");
	gate(gates[_i].ends);
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->gate_count, 1);
	ck_assert_int_eq(fencing->gates[0].clear, gates[_i].clear);
	ck_assert_int_eq(fencing->gates[0].leaf, gates[_i].leaf);
	ck_assert_int_eq(fencing->gates[0].leaves, gates[_i].leaves);
}
END_TEST

START_TEST(a_gate_just_four_feet_clear_has_one_leaf)
{
	ground(20, 10);
	run("1,5 19,5");
	gate("2,5 6,5");
	set(FENCE_LEAF, "44 1/2 in");
	ck_assert_int_eq(only_fence()->gates[0].leaves, 1);
	set(FENCE_LEAF, "44 31/64 in");
	ck_assert_int_eq(only_fence()->gates[0].leaves, 2);
}
END_TEST

/* The boundary moves both its posts to one spot: there is none, and none to make way for. */
START_TEST(a_gate_that_shrinks_to_a_point_takes_nothing_of_the_leg_beside_it)
{
	ground(60, 60);
	plot_set(&garden.plot, 0, HEAD_CELL, "3 in");
	run("0,30 40,30");
	gate("0,30 1,30");
	set(FENCE_GATE_POST, "5 1/2 in");
	ck_assert_int_eq(only_fence()->gates[0].length, 0);
	ck_assert(!only_fence()->legs[0].at_gate[0]);
	ck_assert_int_eq(only_fence()->of_kind[POST_GATE], 0);
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

static void randomize(struct random *random)
{
	static const struct { enum attribute a; const char *values[3]; } rows[] = {
		{ FENCE_SECTION, { "8 ft", "6 ft", "2.4 m" } },
		{ FENCE_POST, { "3 1/2 in", "5 1/2 in", "90 mm" } },
		{ FENCE_INSET, { "0 in", "12 in", "150 mm" } },
		{ FENCE_RAILS, { "2", "3", "1" } },
		{ FENCE_GATE_POST, { "5 1/2 in", "4 in", "120 mm" } },
	};

	ground(random_between(random, 2, 60), random_between(random, 2, 60));
	fences_at_random(&garden.plot, random);
	plot_set(&garden.plot, 0, HEAD_CELL, (const char *[]){ "1 ft", "6 in", "500 mm" }[
		random_below(random, 3)]);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
		if (random_below(random, 2))
			set(rows[i].a, rows[i].values[random_below(random, 3)]);
}

static nm moved(int at, int side, nm inset)
{
	nm cell = garden.takeoff.survey.cell, spot = at * cell;

	inset = 2 * inset > side * cell ? side * cell / 2 : inset;
	spot = spot < inset ? inset : spot;
	return spot > side * cell - inset ? side * cell - inset : spot;
}

/* What all runs measure, leg by leg as they are drawn. */
static nm length_drawn(const struct fence *fence, nm inset)
{
	const struct ground *plan = &garden.plot.ground;
	nm sum = 0;

	for (size_t i = 0; i < fence->run_count; i++)
		for (int j = 1; j < fence->runs[i].count; j++) {
			struct place a = fence->runs[i].points[j - 1], b = fence->runs[i].points[j];

			sum += llabs(moved(a.x, plan->columns, inset) -
				moved(b.x, plan->columns, inset)) +
				llabs(moved(a.y, plan->rows, inset) - moved(b.y, plan->rows,
				inset));
		}
	return sum;
}

/* What is clear and a gate's post; with nothing clear between them, posts are no farther apart,
 * centre to centre, than one is wide. */
static nm gate_built(const struct fence_gate *gate, nm post)
{
	if (gate->clear > 0)
		return gate->clear + post;
	ck_assert_int_eq(gate->clear, 0);
	ck_assert_int_le(gate->length, post);
	return gate->length;
}

/* The clear widths of all panels: whole ones, and those that are cut, as the cut list has them. */
static nm panels_clear(const struct fencing *fencing)
{
	nm sum = fencing->panels_whole * fencing->panel;

	for (int i = 0; i < fencing->cut_count; i++)
		for (int j = 0; j < fencing->cuts[i].piece_count; j++)
			sum += fencing->cuts[i].blocks * fencing->cuts[i].pieces[j];
	return sum;
}

/* What stands from one end of each leg and gate to the other, a post beside each panel and gate. */
static nm length_built(const struct fencing *fencing, nm post)
{
	nm sum = panels_clear(fencing), more = (fencing->gate_post - post) / 2;

	sum += (fencing->panels_whole + fencing->panel_pieces) * post;
	for (int i = 0; i < fencing->leg_count; i++) {
		const struct fence_leg *leg = &fencing->legs[i];

		sum += leg->whole + leg->cut_count == 0 ? leg->length :
			(leg->at_gate[0] + leg->at_gate[1]) * more;
	}
	for (int i = 0; i < fencing->gate_count; i++)
		sum += gate_built(&fencing->gates[i], fencing->gate_post);
	return sum;
}

static void check_gates(const struct fencing *fencing, nm gaps, nm most)
{
	for (int i = 0; i < fencing->gate_count; i++) {
		const struct fence_gate *own = &fencing->gates[i];
		nm left = own->clear - own->leaves * own->leaf - gaps;

		if (own->leaves == 0) {
			ck_assert_int_le(own->clear, gaps);
			continue;
		}
		ck_assert(left == 0 || left == 1);
		ck_assert_int_eq(own->leaves, own->clear > most ? 2 : 1);
	}
}

static enum heading heading_between(struct place from, struct place to)
{
	return to.x > from.x ? HEADING_RIGHT : to.x < from.x ? HEADING_LEFT :
		to.y > from.y ? HEADING_DOWN : HEADING_UP;
}

/* Each leg and gate goes the way in which its run is drawn. */
static void check_headings(const struct fencing *fencing)
{
	for (int i = 0; i < fencing->leg_count; i++)
		ck_assert_int_eq(fencing->legs[i].heading,
			heading_between(fencing->legs[i].on.from, fencing->legs[i].on.to));
	for (int i = 0; i < fencing->gate_count; i++)
		ck_assert_int_eq(fencing->gates[i].heading,
			heading_between(fencing->gates[i].on.from, fencing->gates[i].on.to));
}

/* Posts by the ends of legs and gates, each place once, and one less than panels between. */
static void check_posts(const struct fencing *fencing)
{
	int64_t between = 0, all = 0;

	for (int i = 0; i < fencing->leg_count; i++) {
		int64_t panels = fencing->legs[i].whole + fencing->legs[i].cut_count;

		between += panels > 0 ? panels - 1 : 0;
	}
	for (int i = 0; i < fencing->post_count; i++) {
		struct spot at = fencing->posts[i].at;
		bool ends_here = false;

		for (int j = 0; j < fencing->leg_count + fencing->gate_count; j++) {
			bool is_leg = j < fencing->leg_count;
			int k = is_leg ? j : j - fencing->leg_count;
			struct spot a = is_leg ? fencing->legs[k].from : fencing->gates[k].from;
			struct spot b = is_leg ? fencing->legs[k].to : fencing->gates[k].to;

			ends_here |= (a.x == at.x && a.y == at.y) || (b.x == at.x && b.y == at.y);
		}
		between -= !ends_here;
		for (int j = 0; j < i; j++)
			ck_assert(fencing->posts[j].at.x != at.x || fencing->posts[j].at.y != at.y);
	}
	ck_assert_int_eq(between, 0);
	for (int kind = 0; kind < POST_KINDS; kind++)
		all += fencing->of_kind[kind];
	ck_assert_int_eq(all, fencing->post_count);
}

START_TEST(panels_gates_and_posts_add_up_to_the_fence_that_is_drawn)
{
	struct random random = { 17 };

	for (int round = 0; round < 400; round++) {
		const struct fencing *fencing;
		const struct block *fence;

		randomize(&random);
		fencing = only_fence();
		fence = &fencing->fence->block;
		ck_assert_int_eq(fencing->length, length_drawn(fencing->fence,
			fence_derived(&garden.takeoff.plot, fence, FENCE_INSET)));
		ck_assert_int_eq(fencing->length, length_built(fencing,
			block_length(fence, FENCE_POST)));
		check_gates(fencing, block_length(fence, FENCE_GATE_GAPS),
			block_length(fence, FENCE_LEAF));
		check_headings(fencing);
		check_posts(fencing);
		garden_fini(&garden);
	}
	ground(1, 1);
}
END_TEST

static double laid(const char *id)
{
	double sum = 0;

	for (size_t i = 0; i < garden.takeoff.items.count; i++)
		if (strcmp(garden_id(&garden, &garden.takeoff.items.list[i]), id) == 0)
			sum += garden.takeoff.items.list[i].laid;
	return sum;
}

/* A price book may name it. */
static void check_priceable(const struct item *item)
{
	const char *id = garden_id(&garden, item), *name;
	enum good good;

	ck_assert_msg(good_find(id, &good, &name) && good == item->good, "%s", id);
}

START_TEST(rows_of_items_are_what_the_fence_is_made_of)
{
	struct random random = { 19 };

	for (int round = 0; round < 200; round++) {
		const struct fencing *fencing;
		int64_t leaves = 0, doubles = 0, whole = 0;

		randomize(&random);
		fencing = only_fence();
		for (int i = 0; i < fencing->gate_count; i++) {
			leaves += fencing->gates[i].leaves;
			doubles += fencing->gates[i].leaves == 2;
			whole += fencing->gates[i].leaves > 0;
		}
		for (size_t i = 0; i < garden.takeoff.items.count; i++)
			check_priceable(&garden.takeoff.items.list[i]);
		ck_assert_double_eq(laid("fence.hinge"), (double)(2 * leaves));
		for (int i = 0; i < fencing->leaves_count; i++)
			leaves -= fencing->leaves[i].from_offcuts;
		ck_assert_double_eq(laid("fence.gate"), (double)leaves);
		ck_assert_double_eq(laid("fence.latch"), (double)whole);
		ck_assert_double_eq(laid("fence.bolt"), (double)doubles);
		ck_assert_double_eq(laid("fence.post"), fencing->post_count);
		ck_assert_double_eq(laid("fence.panel"),
			(double)(fencing->panels_whole + fencing->panels_cut));
		ck_assert_double_eq(laid("fence.bracket"),
			(double)(2 * fencing->rails * (fencing->panels_whole +
			fencing->panel_pieces)));
		garden_fini(&garden);
	}
	ground(1, 1);
}
END_TEST

/* ---- Items ----------------------------------------------------------------------------------- */

/* 14 posts, holes of 10 1/2 in: (86.59 - 12.25) x 24 in3 is 1.03 cu ft, 1.72 bags; in all 24.1. */
START_TEST(concrete_is_ordered_for_the_job_in_whole_bags_and_one_more)
{
	const double bags = 14 * (acos(-1) * 5.25 * 5.25 - 3.5 * 3.5) * 24 / 1728 / 0.6;

	ground(102, 20);
	run("1,5 101,5");
	only_fence();
	ck_assert_double_eq_tol(item("fence.concrete")->laid, bags, EXACT);
	ck_assert_double_eq(item("fence.concrete")->spare, 1);
	ck_assert_double_eq(item("fence.concrete")->order, 26);
	ck_assert_int_eq(item_unit(item("fence.concrete")), UNIT_EACH);
	ck_assert_int_eq(item("fence.concrete")->section, SECTION_FENCE);
	ck_assert_str_eq(garden_note(&garden, item("fence.concrete")),
		"whole; 0.6 cu ft each when mixed");
}
END_TEST

START_TEST(gravel_is_all_holes_together)
{
	ground(102, 20);
	run("1,5 101,5");
	only_fence();
	ck_assert_double_eq_tol(item("fence.gravel")->laid / CUBIC_FOOT,
		14 * acos(-1) * 5.25 * 5.25 * 6 / 1728, EXACT);
	ck_assert_double_eq(item("fence.gravel")->order, item("fence.gravel")->laid);
	ck_assert_int_eq(item_unit(item("fence.gravel")), UNIT_M3);
	set(FENCE_GRAVEL, "0 in");
	only_fence();
	ck_assert_ptr_null(garden_item(&garden, "fence.gravel"));
}
END_TEST

START_TEST(notes_tell_sizes_and_what_is_cut)
{
	ground(40, 20);
	run("1,5 21,5");
	gate("7,5 10,5");
	only_fence();
	ck_assert_str_eq(garden_sized(&garden, item("fence.post")), "Fence post 6 ft x 3 1/2 in");
	ck_assert_str_eq(garden_sized(&garden, item("fence.panel")), "Fence panel 8 ft x 3 ft");
	ck_assert_str_eq(garden_note(&garden, item("fence.panel")),
		"Pickets: 8 ft centre to centre, 92 1/2 in wide between posts; 3 of them cut up");
	ck_assert_str_eq(garden_sized(&garden, item("fence.gate")),
		"Gate leaf 2 ft 7 1/4 in x 3 ft");
	ck_assert_str_eq(garden_note(&garden, item("fence.gate")), "Pickets: made to size");
	ck_assert_ptr_null(garden_item(&garden, "fence.bolt"));
}
END_TEST

/* Legs of 6, 8 and 3 ft: 68 1/2 in is cut from one panel, 32 1/2 in from another, where the 60
 * in left give a leaf of 43 1/4 in and then none of 31 1/4 in. */
START_TEST(leaves_of_offcuts_are_not_bought)
{
	ground(60, 20);
	run("1,5 28,5");
	gate("7,5 10,5");
	gate("18,5 21,5");
	gate("24,5 28,5");
	set(FENCE_LEAF_FROM, "offcut");
	const struct fencing *fencing = only_fence();

	ck_assert_int_eq(fencing->leaves_count, 2);
	ck_assert_int_eq(fencing->leaves[0].width, 173 * INCH / 4);
	ck_assert_int_eq(fencing->leaves[0].from_offcuts, 1);
	ck_assert_int_eq(fencing->leaves[1].from_offcuts, 0);
	ck_assert_double_eq(laid("fence.gate"), 2);
	ck_assert_double_eq(laid("fence.hinge"), 6);
	set(FENCE_LEAF_FROM, "bought");
	ck_assert_int_eq(only_fence()->leaves[0].from_offcuts, 0);
	ck_assert_double_eq(laid("fence.gate"), 3);
}
END_TEST

START_TEST(where_offcuts_give_all_leaves_no_gate_is_bought)
{
	ground(20, 20);
	run("1,5 9,5");
	gate("6,5 9,5");
	set(FENCE_LEAF_FROM, "offcut");
	ck_assert_int_eq(only_fence()->leaves[0].from_offcuts, 1);
	ck_assert_ptr_null(garden_item(&garden, "fence.gate"));
	ck_assert_ptr_nonnull(garden_item(&garden, "fence.latch"));
}
END_TEST

START_TEST(posts_of_two_fences_are_one_row_where_alike_and_panels_are_not)
{
	ground(60, 60);
	run("1,5 9,5");
	details_add_fence(&garden.plot.details, memory_string("Boards"));
	run("1,20 9,20");
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fences.count, 2);
	ck_assert_double_eq(item("fence.post")->laid, 4);
	ck_assert_double_eq(item("fence.panel")->laid, 1);
	ck_assert_double_eq(laid("fence.panel"), 2);
	set(FENCE_HEIGHT, "6 ft");
	garden_count(&garden);
	ck_assert_double_eq(item("fence.post")->laid, 2);
	ck_assert_double_eq(laid("fence.post"), 4);
}
END_TEST

/* The first row is of the posts of 3 1/2 in, the second of those of 5 1/2 in. */
START_TEST(posts_of_two_sizes_are_different_goods_and_so_are_panels_of_two_heights)
{
	ground(60, 60);
	run("1,5 17,5");
	gate("5,5 9,5");
	set(FENCE_GATE_POST, "5 1/2 in");
	garden_count(&garden);
	ck_assert_double_eq(laid("fence.post"), 4);
	ck_assert_double_eq(item("fence.post")->laid, 2);
	ck_assert_int_eq(item("fence.post")->across, 7 * INCH / 2);
	ck_assert_int_eq(item("fence.post")[1].good, GOOD_FENCE_POST);
	ck_assert_double_eq(item("fence.post")[1].order, 2);
	ck_assert_int_eq(item("fence.post")[1].across, 11 * INCH / 2);
	ck_assert_int_eq(item("fence.post")[1].length, item("fence.post")->length);
	ck_assert_int_eq(item("fence.panel")->height, 3 * FOOT);
	ck_assert_int_eq(item("fence.panel")->length, 8 * FOOT);
	ck_assert_int_eq(item("fence.gate")->height, 3 * FOOT);
	ck_assert_int_eq(item("fence.gate")->across, 0);
	set(FENCE_HEIGHT, "6 ft");
	garden_count(&garden);
	ck_assert_int_eq(item("fence.panel")->height, 6 * FOOT);
	ck_assert_int_eq(item("fence.gate")->height, 6 * FOOT);
}
END_TEST

START_TEST(a_fence_without_a_run_and_a_plot_without_a_fence_have_no_rows)
{
	ground(20, 20);
	details_add_fence(&garden.plot.details, memory_string("Boards"));
	garden_count(&garden);
	ck_assert_int_eq(garden.takeoff.fences.count, 0);
	ck_assert_uint_eq(garden.takeoff.items.count, 0);
}
END_TEST

/* 14 holes of 10 1/2 in, 30 in deep, the top 2 in of them sod; all swells by a quarter. */
START_TEST(holes_are_dug_and_what_comes_out_is_spoil)
{
	const double circle = acos(-1) * 5.25 * 5.25 / 144;

	ground(102, 20);
	run("1,5 101,5");
	only_fence();
	const struct earthwork *work = &garden.takeoff.earthwork;

	ck_assert_int_eq(work->count, 1);
	ck_assert_int_eq(work->rows[0].region, NO_REGION);
	ck_assert_int_eq(work->rows[0].part, DIG_HOLES);
	ck_assert_int_eq(work->rows[0].depth, 30 * INCH);
	ck_assert_double_eq_tol(work->bank.sod / CUBIC_FOOT, 14 * circle / 6, EXACT);
	ck_assert_double_eq_tol(earth_sum(&work->bank) / CUBIC_FOOT, 14 * circle * 2.5, EXACT);
	ck_assert_double_eq_tol(item("spoil")->laid / CUBIC_FOOT, 14 * circle * 2.5 * 1.25, EXACT);
}
END_TEST

/* ---- Snags ----------------------------------------------------------------------------------- */

START_TEST(posts_with_no_room_between_them_are_a_snag)
{
	ground(60, 60);
	plot_set(&garden.plot, 0, HEAD_CELL, "3 in");
	run("20,20 21,20 21,50");
	only_fence();
	const struct snag *snag = garden_snag(&garden, SNAG_FENCE_TIGHT, 0);

	ck_assert_ptr_nonnull(snag);
	ck_assert_str_eq(garden_sentence(&garden, snag),
		"These posts are 3 in apart, centre to centre: no room for a panel.");
	ck_assert_int_eq(snag->region, NO_REGION);
	ck_assert_int_eq(snag->cell.x, 20);
	ck_assert_int_eq(snag->cell.y, 19);
	ck_assert_ptr_null(garden_snag(&garden, SNAG_FENCE_TIGHT, 1));
}
END_TEST

START_TEST(a_gate_with_no_room_for_a_leaf_is_a_snag_and_takes_no_fixings)
{
	ground(60, 60);
	plot_set(&garden.plot, 0, HEAD_CELL, "4 in");
	run("30,20 30,50");
	gate("30,22 30,23");
	only_fence();
	const struct snag *snag = garden_snag(&garden, SNAG_FENCE_TIGHT, 0);

	ck_assert_ptr_nonnull(snag);
	ck_assert_ptr_nonnull(strstr(garden_sentence(&garden, snag), "no room for a gate"));
	ck_assert_int_eq(snag->cell.x, 29);
	ck_assert_int_eq(snag->cell.y, 22);
	ck_assert_ptr_null(garden_item(&garden, "fence.latch"));
	ck_assert_ptr_null(garden_item(&garden, "fence.gate"));
}
END_TEST

START_TEST(a_hole_narrower_than_its_post_is_a_snag_and_takes_no_less_than_no_concrete)
{
	ground(20, 20);
	run("1,5 19,5");
	set(FENCE_HOLE, "4 15/16 in");
	only_fence();
	ck_assert_ptr_nonnull(garden_snag(&garden, SNAG_FENCE_HOLE, 0));
	set(FENCE_HOLE, "3 in");
	ck_assert_double_eq(only_fence()->hole.concrete, 0);
	ck_assert_ptr_null(garden_item(&garden, "fence.concrete"));
	set(FENCE_HOLE, "5 in");
	only_fence();
	ck_assert_ptr_null(garden_snag(&garden, SNAG_FENCE_HOLE, 0));
}
END_TEST

START_TEST(a_fence_that_shrinks_to_a_point_has_no_post_and_a_snag)
{
	ground(2, 20);
	plot_set(&garden.plot, 0, HEAD_CELL, "1 in");
	run("0,10 2,10");
	ck_assert_int_eq(only_fence()->post_count, 0);
	ck_assert_ptr_nonnull(garden_snag(&garden, SNAG_FENCE_TIGHT, 0));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("fencing");
	TCase *ground_case = suite_case(suite, "ground");
	TCase *laws = suite_case(suite, "laws");
	TCase *items = suite_case(suite, "items");
	TCase *snags = suite_case(suite, "snags");

	tcase_add_checked_fixture(ground_case, NULL, teardown);
	tcase_add_test(ground_case, on_the_boundary_a_fence_is_moved_in_by_half_a_hole);
	tcase_add_test(ground_case, within_the_plan_a_fence_stands_where_it_is_drawn);
	tcase_add_test(ground_case, where_cells_are_small_nothing_within_the_inset_stays_there);
	tcase_add_test(ground_case, a_plan_narrower_than_two_insets_has_its_fence_in_the_middle);
	tcase_add_test(ground_case, a_leg_that_has_no_length_left_goes_as_it_is_drawn);
	tcase_add_loop_test(ground_case,
		a_gate_is_clear_between_its_posts_and_has_two_leaves_over_four_feet, 0,
		sizeof gates / sizeof *gates);
	tcase_add_test(ground_case,
		a_gate_that_shrinks_to_a_point_takes_nothing_of_the_leg_beside_it);
	tcase_add_test(ground_case, a_gate_just_four_feet_clear_has_one_leaf);

	tcase_add_checked_fixture(laws, NULL, teardown);
	tcase_add_test(laws, panels_gates_and_posts_add_up_to_the_fence_that_is_drawn);
	tcase_add_test(laws, rows_of_items_are_what_the_fence_is_made_of);

	tcase_add_checked_fixture(items, NULL, teardown);
	tcase_add_test(items, concrete_is_ordered_for_the_job_in_whole_bags_and_one_more);
	tcase_add_test(items, gravel_is_all_holes_together);
	tcase_add_test(items, notes_tell_sizes_and_what_is_cut);
	tcase_add_test(items, leaves_of_offcuts_are_not_bought);
	tcase_add_test(items, where_offcuts_give_all_leaves_no_gate_is_bought);
	tcase_add_test(items, holes_are_dug_and_what_comes_out_is_spoil);
	tcase_add_test(items,
		posts_of_two_sizes_are_different_goods_and_so_are_panels_of_two_heights);
	tcase_add_test(items, posts_of_two_fences_are_one_row_where_alike_and_panels_are_not);
	tcase_add_test(items, a_fence_without_a_run_and_a_plot_without_a_fence_have_no_rows);

	tcase_add_checked_fixture(snags, NULL, teardown);
	tcase_add_test(snags, posts_with_no_room_between_them_are_a_snag);
	tcase_add_test(snags, a_gate_with_no_room_for_a_leaf_is_a_snag_and_takes_no_fixings);
	tcase_add_test(snags,
		a_hole_narrower_than_its_post_is_a_snag_and_takes_no_less_than_no_concrete);
	tcase_add_test(snags, a_fence_that_shrinks_to_a_point_has_no_post_and_a_snag);
	return suite;
}
