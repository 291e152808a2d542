/* What would not work along a fence: each snag, and just inside its rule none. */

#include "base/memory.h"
#include "takeoff/fence/fence_snags.h"

#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

static void run(const char *points)
{
	fences_run(&garden.plot, points);
}

static void gate(const char *ends)
{
	fences_gate(&garden.plot, ends);
}

/* How many there are of a code, counted anew. */
static int count(enum snag_code code)
{
	int number = 0;

	garden_count(&garden);
	while (garden_snag(&garden, code, number))
		number++;
	return number;
}

static void snag_is(enum snag_code code, int index, int x, int y, const char *sentence)
{
	const struct snag *snag = garden_snag(&garden, code, index);

	ck_assert_ptr_nonnull(snag);
	ck_assert_int_eq(snag->cell.x, x);
	ck_assert_int_eq(snag->cell.y, y);
	ck_assert_str_eq(garden_sentence(&garden, snag), sentence);
}

/* ---- Height ---------------------------------------------------------------------------------- */

static const struct { const char *units, *height; int snags; } heights[] = {
	{ "imperial", "6 ft", 0 }, { "imperial", "72 1/64 in", 1 },
	{ "metric", "1800 mm", 0 }, { "metric", "1801 mm", 1 },
};

START_TEST(a_fence_over_six_feet_asks_for_a_permit)
{
	fences_ground(&garden.plot, 20, 20);
	plot_set(&garden.plot, 0, HEAD_UNITS, heights[_i].units);
	run("3,7 3,2 10,2");
	fences_set(&garden.plot, FENCE_HEIGHT, heights[_i].height);
	ck_assert_int_eq(count(SNAG_FENCE_HIGH), heights[_i].snags);
	plot_set(&garden.plot, 0, ALLOW_FENCE_HIGH, "7 ft");
	ck_assert_int_eq(count(SNAG_FENCE_HIGH), 0);
	plot_set(&garden.plot, 0, ALLOW_FENCE_HIGH, "5 ft");
	ck_assert_int_eq(count(SNAG_FENCE_HIGH), 1);
}
END_TEST

START_TEST(a_high_fence_is_said_once_where_it_begins)
{
	fences_ground(&garden.plot, 20, 20);
	run("3,7 3,2 10,2");
	fences_set(&garden.plot, FENCE_HEIGHT, "7 ft");
	ck_assert_int_eq(count(SNAG_FENCE_HIGH), 1);
	snag_is(SNAG_FENCE_HIGH, 0, 2, 2,
		"The fence is 7 ft high, over 6 ft: ask whether it takes a permit.");
}
END_TEST

/* ---- Gates: how wide ------------------------------------------------------------------------- */

static const struct { const char *clear; int snags; } clears[] = {
	/* A gate of 4 ft between posts of 3 1/2 in is 44 1/2 in clear. */
	{ "44 1/2 in", 0 }, { "44 33/64 in", 1 },
};

START_TEST(a_gate_less_clear_than_allowed_for_is_narrow)
{
	fences_ground(&garden.plot, 20, 20);
	run("1,5 19,5");
	gate("8,5 4,5");
	plot_set(&garden.plot, 0, ALLOW_GATE_CLEAR, clears[_i].clear);
	ck_assert_int_eq(count(SNAG_GATE_NARROW), clears[_i].snags);
}
END_TEST

/* 3 ft less a post are 32 1/2 in; 4 ft less one of 12 in just the 36 in. */
START_TEST(three_feet_from_post_to_post_are_narrow_and_four_are_not)
{
	fences_ground(&garden.plot, 20, 20);
	run("1,5 19,5");
	gate("2,5 5,5");
	gate("8,5 12,5");
	ck_assert_int_eq(count(SNAG_GATE_NARROW), 1);
	snag_is(SNAG_GATE_NARROW, 0, 2, 4, "The gate is 2 ft 8 1/2 in clear, under 3 ft.");
	fences_set(&garden.plot, FENCE_GATE_POST, "12 in");
	ck_assert_int_eq(count(SNAG_GATE_NARROW), 1);
}
END_TEST

START_TEST(a_gate_without_room_for_a_leaf_is_tight_not_narrow)
{
	fences_ground(&garden.plot, 60, 60);
	plot_set(&garden.plot, 0, HEAD_CELL, "4 in");
	run("30,20 30,50");
	gate("30,22 30,23");
	ck_assert_int_eq(count(SNAG_GATE_NARROW), 0);
	ck_assert_int_eq(count(SNAG_FENCE_TIGHT), 1);
}
END_TEST

/* ---- Gates: what is in front ----------------------------------------------------------------- */

static const struct {
	char above, below; /* of the middle one of the gate's four cells */
	bool is_blocked;
} fronts[] = {
	{ '.', '.', false }, { 'p', 'p', false }, { 'l', '.', false }, { 'p', 'l', false },
	{ 'b', '.', true }, { '.', 'b', true }, { 'S', 'p', true }, { 'p', 'S', true },
};

START_TEST(a_gate_opens_to_path_lawn_and_open_ground_only)
{
	char above[] = "............", below[] = "............";

	above[6] = fronts[_i].above;
	below[6] = fronts[_i].below;
	garden_rows(&garden, (const char *const[]){ "............", above, below, "............",
		NULL });
	run("1,2 11,2");
	gate("4,2 8,2");
	ck_assert_int_eq(count(SNAG_GATE_BLOCKED), fronts[_i].is_blocked);
	if (!fronts[_i].is_blocked)
		return;
	snag_is(SNAG_GATE_BLOCKED, 0, 6, fronts[_i].above == 'b' || fronts[_i].above == 'S' ? 1 : 2,
		"A bed or a fixture stands in front of the gate, nearer than 2 ft: no barrow "
		"turns there.");
	ck_assert_int_ne(garden_snag(&garden, SNAG_GATE_BLOCKED, 0)->region, NO_REGION);
}
END_TEST

/* Common practice, no published source: a barrow is 24 in wide. In cells of 1 ft, from the gate's
 * line at y = 3. */
static const struct { int y; bool is_blocked; } distances[] = {
	{ 0, false }, { 1, true }, { 2, true }, { 3, true }, { 4, true }, { 5, false },
};

START_TEST(what_stands_as_near_as_a_barrow_is_wide_blocks_the_gate)
{
	garden_rows(&garden, (const char *const[]){ "............", "............",
		"............", "............", "............", "............", NULL });
	details_add_entry(&garden.plot.details, CLASS_BED, 'b', memory_string("b"));
	garden.plot.ground.cells[distances[_i].y * 12 + 6] = 'b';
	run("1,3 11,3");
	gate("4,3 8,3");
	ck_assert_int_eq(count(SNAG_GATE_BLOCKED), distances[_i].is_blocked);
	plot_set(&garden.plot, 0, ALLOW_BARROW_CLEAR, "37 in");
	ck_assert_int_eq(count(SNAG_GATE_BLOCKED), 1);
}
END_TEST

/* On the boundary the gate stands half a hole, 5 1/4 in, within it: of two cells of 1 ft there are
 * 18 3/4 in left, of three 30 3/4. */
START_TEST(a_gate_on_the_boundary_stands_within_it)
{
	garden_rows(&garden, (const char *const[]){ "............", "..bbbb......",
		"............", "............", NULL });
	run("0,4 12,4");
	gate("2,4 6,4");
	ck_assert_int_eq(count(SNAG_GATE_BLOCKED), 1);
	plot_set(&garden.plot, 0, ALLOW_BARROW_CLEAR, "18 3/4 in");
	ck_assert_int_eq(count(SNAG_GATE_BLOCKED), 0);
	plot_set(&garden.plot, 0, ALLOW_BARROW_CLEAR, "18 49/64 in");
	ck_assert_int_eq(count(SNAG_GATE_BLOCKED), 1);
}
END_TEST

START_TEST(what_stands_beside_a_gate_does_not_block_it)
{
	garden_rows(&garden, (const char *const[]){ "...S....S...", "...S....S...", NULL });
	run("1,1 11,1");
	gate("4,1 8,1");
	ck_assert_int_eq(count(SNAG_GATE_BLOCKED), 0);
}
END_TEST

/* On the boundary there is one side only within the plan. */
START_TEST(a_gate_on_the_boundary_is_blocked_from_within)
{
	garden_rows(&garden, (const char *const[]){ "........", "p.......", "S.......",
		"l.......", "........", NULL });
	run("0,0 0,5");
	gate("0,1 0,4");
	ck_assert_int_eq(count(SNAG_GATE_BLOCKED), 1);
	snag_is(SNAG_GATE_BLOCKED, 0, 0, 2,
		"A bed or a fixture stands in front of the gate, nearer than 2 ft: no barrow "
		"turns there.");
	garden.plot.ground.cells[2 * 8] = '.';
	ck_assert_int_eq(count(SNAG_GATE_BLOCKED), 0);
}
END_TEST

/* ---- Paths ----------------------------------------------------------------------------------- */

static void crossing(void)
{
	garden_rows(&garden, (const char *const[]){ ".....ppp....", ".....ppp....", ".....ppp....",
		".....ppp....", NULL });
}

START_TEST(a_fence_across_a_path_needs_a_gate_there)
{
	crossing();
	run("11,2 1,2");
	ck_assert_int_eq(count(SNAG_FENCE_PATH), 1);
	snag_is(SNAG_FENCE_PATH, 0, 5, 1,
		"The fence stands across the path for 3 ft and has no gate there.");
	ck_assert_int_eq(garden_snag(&garden, SNAG_FENCE_PATH, 0)->region,
		survey_region_at(&garden.takeoff.survey, 5, 1));
	gate("5,2 9,2");
	ck_assert_int_eq(count(SNAG_FENCE_PATH), 0);
}
END_TEST

START_TEST(one_gate_anywhere_in_the_path_will_do)
{
	crossing();
	run("1,2 11,2");
	gate("7,2 10,2");
	ck_assert_int_eq(count(SNAG_FENCE_PATH), 0);
	gate("1,2 5,2");
	ck_assert_int_eq(count(SNAG_FENCE_PATH), 0);
}
END_TEST

START_TEST(a_gate_just_beside_the_path_will_not)
{
	crossing();
	run("1,2 11,2");
	gate("8,2 11,2");
	gate("1,2 5,2");
	ck_assert_int_eq(count(SNAG_FENCE_PATH), 1);
}
END_TEST

START_TEST(a_gate_in_another_path_will_not)
{
	garden_rows(&garden, (const char *const[]){ ".ppp.ppp.ppp.", ".ppp.ppp.ppp.", NULL });
	run("0,1 13,1");
	gate("4,1 8,1");
	ck_assert_int_eq(count(SNAG_FENCE_PATH), 2);
	snag_is(SNAG_FENCE_PATH, 0, 1, 0,
		"The fence stands across the path for 3 ft and has no gate there.");
	snag_is(SNAG_FENCE_PATH, 1, 9, 0,
		"The fence stands across the path for 3 ft and has no gate there.");
}
END_TEST

/* Told from right to left, the gates in the outer two. */
START_TEST(gates_may_be_in_any_order)
{
	garden_rows(&garden, (const char *const[]){ ".ppp.ppp.ppp.", ".ppp.ppp.ppp.", NULL });
	run("13,1 0,1");
	gate("13,1 9,1");
	gate("4,1 0,1");
	ck_assert_int_eq(count(SNAG_FENCE_PATH), 1);
	snag_is(SNAG_FENCE_PATH, 0, 5, 0,
		"The fence stands across the path for 3 ft and has no gate there.");
}
END_TEST

/* Path on one side only, ends at it, along the boundary. */
START_TEST(a_fence_beside_a_path_is_no_snag)
{
	crossing();
	run("5,0 5,4");
	run("1,2 5,2");
	run("8,2 11,2");
	run("0,0 5,0");
	run("5,4 12,4");
	ck_assert_int_eq(count(SNAG_FENCE_PATH), 0);
}
END_TEST

/* Two runs that meet in the path, and a corner in it. */
START_TEST(a_crossing_is_one_where_runs_go_straight_on_and_two_round_a_corner)
{
	crossing();
	run("1,2 6,2");
	run("6,2 11,2");
	ck_assert_int_eq(count(SNAG_FENCE_PATH), 1);
	run("6,2 6,4");
	ck_assert_int_eq(count(SNAG_FENCE_PATH), 2);
	snag_is(SNAG_FENCE_PATH, 1, 5, 2,
		"The fence stands across the path for 2 ft and has no gate there.");
}
END_TEST

/* ---- Laws ------------------------------------------------------------------------------------ */

static bool is_path(int x, int y)
{
	const struct ground *plan = &garden.plot.ground;

	return x >= 0 && y >= 0 && x < plan->columns && y < plan->rows &&
		plan->cells[y * plan->columns + x] == 'p';
}

/* Sides of cells with path on both sides, in legs and in gates, as they are drawn. */
static int sides_on_path(struct leg leg)
{
	struct leg f = leg_forward(leg);
	bool is_upright = leg_is_upright(leg);
	int sides = 0;

	for (int i = 0; i < leg_length(leg); i++) {
		int x = f.from.x + (is_upright ? 0 : i), y = f.from.y + (is_upright ? i : 0);

		sides += is_path(x, y) && is_path(x - is_upright, y - !is_upright);
	}
	return sides;
}

/* Without gates all that stands across path is told, side by side; a gate can only take away. */
START_TEST(all_that_stands_across_path_is_told)
{
	struct random random = { 23 };
	int told = 0;

	for (int round = 0; round < 300; round++) {
		struct fence *fence;
		struct legs legs = LEGS_EMPTY;
		nm sides = 0, said = 0;
		int without;

		plot_at_random(&garden.plot, &random, 30, ".pb");
		garden.arena = ARENA_EMPTY;
		fences_at_random(&garden.plot, &random);
		fence = &garden.plot.details.fences[0];
		fence->gates.count = 0;
		fence_legs(fence, &legs);
		for (size_t i = 0; i < legs.count; i++)
			sides += sides_on_path(legs.items[i]);
		legs_fini(&legs);
		without = count(SNAG_FENCE_PATH);
		for (int i = 0; i < without; i++)
			said += garden_snag(&garden, SNAG_FENCE_PATH, i)->figures[0];
		ck_assert_int_eq(said, sides * NM_PER_FOOT);
		told += without;
		gate("0,0 0,0");
		fence->gates.items[0] = (struct leg){ fence->runs[0].points[0],
			fence->runs[0].points[1] };
		ck_assert_int_le(count(SNAG_FENCE_PATH), without);
		garden_fini(&garden);
	}
	ck_assert_int_gt(told, 100);
	fences_ground(&garden.plot, 1, 1);
}
END_TEST

/* Whether somebody can stand on a cell, by the letters that are drawn below. */
static bool can_stand_on(struct place cell)
{
	const struct ground *plan = &garden.plot.ground;

	return strchr(".pl", plan->cells[cell.y * plan->columns + cell.x]) != NULL;
}

/* How far a cell is from a gate's line straight across, in nm; below 0: it is not in front. */
static nm before_gate(const struct fence_gate *gate, struct place cell)
{
	nm side = garden.takeoff.survey.cell;
	bool is_upright = leg_is_upright(gate->on);
	struct leg f = leg_forward(gate->on);
	int along = is_upright ? cell.y : cell.x;
	nm near = (is_upright ? cell.x : cell.y) * side;
	nm line = is_upright ? gate->from.x : gate->from.y;

	if (along < (is_upright ? f.from.y : f.from.x) || along >= (is_upright ? f.to.y : f.to.x))
		return -1;
	return line < near ? near - line : line > near + side ? line - near - side : 0;
}

/* The first cell in front of a gate that is nearer than `far` and cannot be stood on. */
static bool find_in_front(const struct fence_gate *gate, nm far, struct place *found)
{
	const struct ground *plan = &garden.plot.ground;

	for (int i = 0; i < plan->columns * plan->rows; i++) {
		struct place cell = { i % plan->columns, i / plan->columns };
		nm off = before_gate(gate, cell);

		if (off < 0 || off >= far || can_stand_on(cell))
			continue;
		*found = cell;
		return true;
	}
	return false;
}

/* The cells that share a part of a gate as a side. */
static struct snag_box beside_gate(struct leg gate)
{
	const struct ground *plan = &garden.plot.ground;
	struct leg f = leg_forward(gate);
	struct snag_box box = { INT16_MAX, INT16_MAX, -1, -1 };

	for (int y = 0; y < plan->rows; y++)
		for (int x = 0; x < plan->columns; x++) {
			bool is_upright = leg_is_upright(gate);
			bool is_beside = is_upright ? (x == f.from.x || x == f.from.x - 1) &&
				y >= f.from.y && y < f.to.y : (y == f.from.y ||
				y == f.from.y - 1) && x >= f.from.x && x < f.to.x;

			if (!is_beside)
				continue;
			box.left = (int16_t)(x < box.left ? x : box.left);
			box.top = (int16_t)(y < box.top ? y : box.top);
			box.right = (int16_t)(x > box.right ? x : box.right);
			box.bottom = (int16_t)(y > box.bottom ? y : box.bottom);
		}
	return box;
}

static bool has_gate_snag(enum snag_code code, struct place at, const struct snag_box *box)
{
	const struct snag *snag;

	for (int i = 0; (snag = garden_snag(&garden, code, i)); i++)
		if (place_equal(snag->cell, at) && snag_box_equal(&snag->box, box))
			return true;
	return false;
}

struct gates_told {
	int blocked, narrow, tight;
};

/* Adds what is to be told of a gate. */
static void check_gate(struct gates_told *told, const struct fence_gate *gate, nm clear, nm far)
{
	struct snag_box box = beside_gate(gate->on);
	struct place at, first = { box.left, box.top };
	bool is_blocked = find_in_front(gate, far, &at), is_tight = gate->leaves == 0;
	bool is_narrow = !is_tight && gate->clear < clear;

	ck_assert(!is_blocked || has_gate_snag(SNAG_GATE_BLOCKED, at, &box));
	ck_assert(!is_narrow || has_gate_snag(SNAG_GATE_NARROW, first, &box));
	ck_assert(!is_tight || has_gate_snag(SNAG_FENCE_TIGHT, first, &box));
	told->blocked += is_blocked;
	told->narrow += is_narrow;
	told->tight += is_tight;
}

static struct gates_told check_gates(const struct fencing *fencing, nm clear, nm far)
{
	struct gates_told told = { 0, 0, 0 };

	for (int i = 0; i < fencing->gate_count; i++)
		check_gate(&told, &fencing->gates[i], clear, far);
	for (int i = 0; i < fencing->leg_count; i++)
		told.tight += fencing->legs[i].whole + fencing->legs[i].cut_count == 0;
	ck_assert_int_eq(count(SNAG_GATE_BLOCKED), told.blocked);
	ck_assert_int_eq(count(SNAG_GATE_NARROW), told.narrow);
	ck_assert_int_eq(count(SNAG_FENCE_TIGHT), told.tight);
	return told;
}

/* Cell by cell, upright gates and level ones, on the boundary and within, nearer and farther. */
START_TEST(a_gate_is_blocked_by_the_first_cell_before_it_that_is_too_near)
{
	static const char *const cells[] = { "1 ft", "5 in", "3 ft" };
	struct random random = { 31 };
	struct gates_told all = { 0, 0, 0 };
	int gates = 0;

	for (int round = 0; round < 400; round++) {
		nm far = random_between(&random, 1, 70) * NM_PER_INCH;
		nm clear = random_between(&random, 1, 70) * NM_PER_INCH;
		struct gates_told told;

		plot_at_random(&garden.plot, &random, 16, round % 2 ? "....pl.b" : ".pbS");
		garden.arena = ARENA_EMPTY;
		plot_set(&garden.plot, 0, HEAD_CELL, cells[random_below(&random, 3)]);
		fences_at_random(&garden.plot, &random);
		block_set(&garden.plot.details.allow, ALLOW_BARROW_CLEAR, (struct value){
			.set = true, .as.length = far });
		block_set(&garden.plot.details.allow, ALLOW_GATE_CLEAR, (struct value){
			.set = true, .as.length = clear });
		garden_count(&garden);
		gates += garden.takeoff.fences.list[0].gate_count;
		told = check_gates(&garden.takeoff.fences.list[0], clear, far);
		all.blocked += told.blocked;
		all.narrow += told.narrow;
		all.tight += told.tight;
		garden_fini(&garden);
	}
	ck_assert(all.blocked > 100 && gates - all.blocked > 100);
	ck_assert(all.narrow > 100 && all.tight > 20);
	fences_ground(&garden.plot, 1, 1);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("fence_snags");
	TCase *height = suite_case(suite, "height");
	TCase *gates = suite_case(suite, "gates");
	TCase *paths = suite_case(suite, "paths");

	tcase_add_checked_fixture(height, NULL, teardown);
	tcase_add_loop_test(height, a_fence_over_six_feet_asks_for_a_permit, 0,
		sizeof heights / sizeof *heights);
	tcase_add_test(height, a_high_fence_is_said_once_where_it_begins);

	tcase_add_checked_fixture(gates, NULL, teardown);
	tcase_add_loop_test(gates, a_gate_less_clear_than_allowed_for_is_narrow, 0,
		sizeof clears / sizeof *clears);
	tcase_add_test(gates, three_feet_from_post_to_post_are_narrow_and_four_are_not);
	tcase_add_test(gates, a_gate_without_room_for_a_leaf_is_tight_not_narrow);
	tcase_add_loop_test(gates, a_gate_opens_to_path_lawn_and_open_ground_only, 0,
		sizeof fronts / sizeof *fronts);
	tcase_add_test(gates, what_stands_beside_a_gate_does_not_block_it);
	tcase_add_loop_test(gates, what_stands_as_near_as_a_barrow_is_wide_blocks_the_gate, 0,
		sizeof distances / sizeof *distances);
	tcase_add_test(gates, a_gate_on_the_boundary_stands_within_it);
	tcase_add_test(gates, a_gate_on_the_boundary_is_blocked_from_within);

	tcase_add_test(gates, a_gate_is_blocked_by_the_first_cell_before_it_that_is_too_near);

	tcase_add_checked_fixture(paths, NULL, teardown);
	tcase_add_test(paths, a_fence_across_a_path_needs_a_gate_there);
	tcase_add_test(paths, one_gate_anywhere_in_the_path_will_do);
	tcase_add_test(paths, a_gate_just_beside_the_path_will_not);
	tcase_add_test(paths, a_gate_in_another_path_will_not);
	tcase_add_test(paths, gates_may_be_in_any_order);
	tcase_add_test(paths, a_fence_beside_a_path_is_no_snag);
	tcase_add_test(paths,
		a_crossing_is_one_where_runs_go_straight_on_and_two_round_a_corner);
	tcase_add_test(paths, all_that_stands_across_path_is_told);
	return suite;
}
