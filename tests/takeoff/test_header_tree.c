/* Laws of the header on random plots: what its ways cost, and which of those that cost the same it
 * takes, against ways that are relaxed until none gets better. */
#include "takeoff/watering/header.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"
#include "takeoff/watering/cost_ring.h"

#include <stdlib.h>
#include <string.h>

enum { RANDOM_PLOTS = 120, FAR = 1 << 20, LINES_MOST = 30 };

static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
}

/* A plan at random, and what is found of it. */
struct trial {
	const struct plot *plot; /* in force */
	const struct survey *survey;
	int columns, rows;       /* of grid points */
	nm trench;
	int tap_bed;
	struct post_holes holes;
	struct header_ways ways;
	struct header_tree tree;
	bool *in;                /* by grid point: in the tree before the bed at hand */
};

/* ---- Sides, cell by cell --------------------------------------------------------------------- */

static int region_at(const struct trial *t, int x, int y)
{
	return ground_holds(&t->plot->ground, x, y) ? survey_region_at(t->survey, x, y) :
		NO_REGION;
}

static enum plot_class class_at(const struct trial *t, int x, int y)
{
	return plot_class_of(t->plot, ground_cell(&t->plot->ground, x, y));
}

static bool is_in_house(const struct trial *t, int x, int y)
{
	const struct obstacles *houses = &t->plot->details.around.houses;

	for (size_t i = 0; i < houses->count; i++) {
		const struct rectangle *r = &houses->items[i].cells;

		if (x >= r->left && x <= r->right && y >= r->top && y <= r->bottom)
			return true;
	}
	return false;
}

/* The bed that all cells of the plan about the tap are of, but those in a house; NO_REGION: there
 * is none. */
static int bed_of_tap(const struct trial *t)
{
	struct place tap = t->plot->details.around.tap;
	int bed = NO_REGION;

	for (int y = tap.y - 1; y <= tap.y; y++)
		for (int x = tap.x - 1; x <= tap.x; x++) {
			if (!ground_holds(&t->plot->ground, x, y) || is_in_house(t, x, y))
				continue;
			if (class_at(t, x, y) != CLASS_BED ||
				(bed != NO_REGION && bed != region_at(t, x, y)))
				return NO_REGION;
			bed = region_at(t, x, y);
		}
	return bed;
}

static bool is_tap_bed(const struct trial *t, int x, int y)
{
	return t->tap_bed != NO_REGION && region_at(t, x, y) == t->tap_bed &&
		!is_in_house(t, x, y);
}

static bool is_open(const struct trial *t, int x, int y)
{
	enum plot_class class;

	if (!ground_holds(&t->plot->ground, x, y) || is_in_house(t, x, y))
		return false;
	class = class_at(t, x, y);
	return class == CLASS_PATH || class == CLASS_LAWN || class == CLASS_OPEN ||
		is_tap_bed(t, x, y);
}

/* How far the base of what stands on a cell reaches; below 0: nothing does. */
static nm base_at(const struct trial *t, int x, int y)
{
	const struct region *region = region_at(t, x, y) == NO_REGION ? NULL :
		&t->survey->regions[region_at(t, x, y)];

	return !region ? -1 : region->entry->class == CLASS_FIXTURE ? 0 : region_is_raised(region) ?
		block_length(&region->entry->block, BED_REACH) : -1;
}

/* A side of a cell: from a grid point to the right or down, and between two cells. */
struct cell_side {
	int x, y, dx, dy;
	struct place one, other;
};

static struct cell_side side_from(int x, int y, bool is_upright)
{
	return (struct cell_side){ x, y, !is_upright, is_upright, { x, y },
		{ x - is_upright, y - !is_upright } };
}

/* Whether its trench is under a base square to it. */
static bool is_under(const struct trial *t, const struct cell_side *side)
{
	nm cell = t->survey->cell, half = t->trench / 2;

	if (is_tap_bed(t, side->one.x, side->one.y) && is_tap_bed(t, side->other.x, side->other.y))
		return false;
	for (int far = 0; far < LINES_MOST; far++) {
		nm one = base_at(t, side->one.x + far * side->dy, side->one.y + far * side->dx);
		nm other = base_at(t, side->other.x - far * side->dy,
			side->other.y - far * side->dx);

		if ((one >= 0 && far * cell < one + half) ||
			(other >= 0 && far * cell < other + half))
			return true;
	}
	return false;
}

/* Or a hole meets it. */
static bool is_dear(const struct trial *t, const struct cell_side *side)
{
	nm cell = t->survey->cell, half = t->trench / 2;
	const struct near_thing box = { side->x * cell - half, side->y * cell - half,
		(side->x + side->dx) * cell + half, (side->y + side->dy) * cell + half, 0 };

	for (size_t i = 0; i < t->holes.count; i++)
		if (near_disc(&box, t->holes.list[i].at.x, t->holes.list[i].at.y,
			t->holes.list[i].across))
			return true;
	return is_under(t, side);
}

/* 0: no way goes there. */
static int cost_of(const struct trial *t, const struct cell_side *side)
{
	return !is_open(t, side->one.x, side->one.y) && !is_open(t, side->other.x, side->other.y) ?
		0 : is_dear(t, side) ? HEADER_DEAR : 1;
}

/* Whether a side straight before or behind it goes under a base. */
static bool meets_corner(const struct trial *t, const struct cell_side *side)
{
	for (int way = -1; way <= 1; way += 2) {
		struct cell_side next = side_from(side->x + way * side->dx,
			side->y + way * side->dy, side->dy == 1);

		if (cost_of(t, &next) > 0 && is_under(t, &next))
			return true;
	}
	return false;
}

/* Of a side that a way goes along: but for bends. */
static int burden_of(const struct trial *t, const struct cell_side *side)
{
	bool one = ground_holds(&t->plot->ground, side->one.x, side->one.y);
	bool other = ground_holds(&t->plot->ground, side->other.x, side->other.y);

	if (is_dear(t, side) || (one && !is_open(t, side->one.x, side->one.y)) ||
		(other && !is_open(t, side->other.x, side->other.y)))
		return 2;
	return !one || !other || meets_corner(t, side) || (class_at(t, side->one.x,
		side->one.y) == CLASS_PATH && class_at(t, side->other.x, side->other.y) ==
		CLASS_PATH);
}

/* ---- Ways ------------------------------------------------------------------------------------ */

/* How good a way is, each of these before the next: what it costs; what that was where it left the
 * tree, the more the better; what a burden it is from there. */
struct worth {
	int64_t cost, left, burden;
};

static bool is_better(const struct worth *a, const struct worth *b)
{
	const int64_t ones[] = { a->cost, -a->left, a->burden };
	const int64_t others[] = { b->cost, -b->left, b->burden };

	for (int i = 0; i < 3; i++)
		if (ones[i] != others[i])
			return ones[i] < others[i];
	return false;
}

/* The way by a side on from one that came level or upright. Out of the tree no bend counts. */
static struct worth gone_on(const struct trial *t, const struct worth *value,
	const struct cell_side *side, int came, int from)
{
	return (struct worth){ value->cost + cost_of(t, side), value->left,
		value->burden + burden_of(t, side) + (came != side->dy && !t->in[from]) };
}

/* Goes along a side one way and the other. Returns whether some way got better. */
static bool relax(const struct trial *t, struct worth *values, const struct cell_side *side)
{
	int one = side->y * t->columns + side->x;
	int other = one + side->dx + side->dy * t->columns;
	bool has_changed = false;

	if (cost_of(t, side) == 0)
		return false;
	for (int i = 0; i < 4; i++) {
		int from = i < 2 ? one : other, to = i < 2 ? other : one;
		struct worth next = gone_on(t, &values[from * 2 + i % 2], side, i % 2, from);
		struct worth *there = &values[to * 2 + side->dy];

		if (!t->in[to] && values[from * 2 + i % 2].cost < FAR &&
			is_better(&next, there))
			*there = next, has_changed = true;
	}
	return has_changed;
}

/* By grid point and direction of the last side. To be freed. */
static struct worth *values_of(const struct trial *t)
{
	size_t states = (size_t)t->columns * (size_t)t->rows * 2;
	struct worth *values = memory_new(states, sizeof *values);
	bool has_changed = true;

	for (size_t i = 0; i < states; i++)
		values[i] = t->in[i / 2] ? (struct worth){ t->ways.costs[i / 2],
			t->ways.costs[i / 2], 0 } : (struct worth){ .cost = FAR };
	while (has_changed) {
		has_changed = false;
		for (int y = 0; y < t->rows; y++)
			for (int x = 0; x < t->columns; x++) {
				struct cell_side right = side_from(x, y, false);
				struct cell_side down = side_from(x, y, true);

				has_changed |= x + 1 < t->columns && relax(t, values, &right);
				has_changed |= y + 1 < t->rows && relax(t, values, &down);
			}
	}
	return values;
}

/* ---- Ends ------------------------------------------------------------------------------------ */

/* Whether a side of a cell is of the region's outline. */
static bool is_outline(const struct trial *t, int region, int x, int y, bool is_upright)
{
	struct cell_side side = side_from(x, y, is_upright);

	return x >= 0 && y >= 0 && (region_at(t, side.one.x, side.one.y) == region) !=
		(region_at(t, side.other.x, side.other.y) == region);
}

/* Whether a grid point lies on a straight part of the outline that goes on for so many sides of
 * cells to either side of it, none meeting it between. */
static bool is_on_side(const struct trial *t, int region, int point, bool is_upright, int clear)
{
	int x = point % t->columns, y = point / t->columns, dx = !is_upright, dy = is_upright;

	if (clear == 0)
		return is_outline(t, region, x, y, is_upright) ||
			is_outline(t, region, x - dx, y - dy, is_upright);
	for (int i = -clear; i < clear; i++) {
		int at_x = x + i * dx, at_y = y + i * dy;

		if (!is_outline(t, region, at_x, at_y, is_upright))
			return false;
		if (i > -clear && (is_outline(t, region, at_x, at_y, !is_upright) ||
			is_outline(t, region, at_x - dy, at_y - dx, !is_upright)))
			return false;
	}
	return true;
}

/* The best way to the bed, by values. cost FAR: there is none. */
static struct worth best_of(const struct trial *t, const struct worth *values, int region)
{
	const struct region *bed = &t->survey->regions[region];
	bool is_raised = region_is_raised(bed);
	nm wall = block_value(&bed->entry->block, BED_BLOCK)->as.size.across +
		block_length(&bed->entry->block, BED_REACH_IN);
	struct worth best = { .cost = FAR };
	int clear = 0;

	while (is_raised && clear * t->survey->cell < wall)
		clear++;
	for (; best.cost == FAR && clear >= 0; clear = clear > 0 ? 0 : -1)
		for (int i = 0; i < t->columns * t->rows * 4; i++) {
			int point = i / 4, came = i / 2 % 2, side = i % 2;
			struct worth value = values[point * 2 + came];

			if (value.cost == FAR || !is_on_side(t, region, point, side, clear))
				continue;
			value.burden += is_raised && came == side && !t->in[point];
			if (is_better(&value, &best))
				best = value;
		}
	return best;
}

/* Of the way that was taken, walked back to what was in the tree. */
static struct worth value_taken(const struct trial *t, int region, int end, int64_t *sides)
{
	struct worth value = { t->ways.costs[end], t->ways.costs[end], 0 };
	int way = is_on_side(t, region, end, true, 1) ? 0 : 1, cost = 0;
	bool counts = region_is_raised(&t->survey->regions[region]) &&
		is_on_side(t, region, end, !way, 1);

	*sides = 0;
	for (int at = end; !t->in[at]; at = t->tree.from[at] - 1, ++*sides) {
		int from = t->tree.from[at] - 1, first = from < at ? from : at;
		bool is_upright = abs(from - at) == t->columns;
		struct cell_side side = side_from(first % t->columns, first / t->columns,
			is_upright);

		ck_assert(from >= 0 && (is_upright || abs(from - at) == 1));
		ck_assert_int_ne(cost_of(t, &side), 0);
		cost += cost_of(t, &side);
		value.burden += burden_of(t, &side) + (counts && is_upright != way);
		way = is_upright;
		counts = true;
		value.left = t->ways.costs[from];
	}
	ck_assert_int_eq(value.left + cost, value.cost);
	return value;
}

/* ---- Trials ---------------------------------------------------------------------------------- */

static void check_bed(struct trial *t, int region)
{
	struct basis basis = { .plot = t->plot, .survey = t->survey };
	struct worth *values = values_of(t), best = best_of(t, values, region), taken;
	int64_t sides = 0, walked;
	int end = header_reach(&t->tree, &t->ways, &basis, region, &sides);

	if (region == t->tap_bed) {
		ck_assert_int_eq(end, t->ways.tap);
	} else if (best.cost == FAR) {
		ck_assert_int_eq(end, HEADER_NO_WAY);
	} else {
		ck_assert_int_ne(end, HEADER_NO_WAY);
		taken = value_taken(t, region, end, &walked);
		ck_assert_int_eq(walked, sides);
		ck_assert_int_eq(taken.cost, best.cost);
		ck_assert_int_eq(taken.left, best.left);
		ck_assert_int_eq(taken.burden, best.burden);
	}
	for (int i = 0; i < t->columns * t->rows; i++)
		t->in[i] |= t->tree.from[i] != 0;
	free(values);
}

static void check_costs(const struct trial *t)
{
	struct worth *values = values_of(t);

	for (int i = 0; i < t->columns * t->rows; i++) {
		int64_t cost = values[i * 2].cost < values[i * 2 + 1].cost ? values[i * 2].cost :
			values[i * 2 + 1].cost;

		ck_assert_int_eq(cost, t->ways.costs[i] == HEADER_NO_WAY ? FAR :
			t->ways.costs[i]);
	}
	free(values);
}

static void plan_at_random(struct random *random)
{
	static const char *const cells[] = { "1 ft", "5 in", "2 ft" };

	plot_at_random(&garden.plot, random, 20, ".pl.bbeS");
	plot_set(&garden.plot, 0, HEAD_CELL, cells[random_below(random, 3)]);
	if (memchr(garden.plot.ground.cells, 'e', (size_t)(garden.plot.ground.columns *
		garden.plot.ground.rows)))
		plot_set(&garden.plot, 'e', BED_BUILD, "level");
	if (random_below(random, 2))
		fences_at_random(&garden.plot, random);
	if (random_below(random, 3) == 0) {
		int left = random_between(random, -3, 18), top = random_between(random, -3, 18);

		obstacles_add(&garden.plot.details.around.houses, memory_string("House"))->cells =
			(struct rectangle){ left, top, left + random_below(random, 6),
			top + random_below(random, 6) };
	}
	garden.plot.details.around.has_tap = true;
	garden.plot.details.around.tap = (struct place){
		random_below(random, 2) * random_below(random, garden.plot.ground.columns + 1),
		random_below(random, garden.plot.ground.rows + 1) };
}

static void trial_begin(struct trial *t, struct arena *arena, uint64_t seed)
{
	struct random random = { seed };
	struct house_map houses;

	*t = (struct trial){ .plot = &garden.takeoff.plot, .survey = &garden.takeoff.survey,
		.trench = 6 * NM_PER_INCH };
	plan_at_random(&random);
	garden_count(&garden);
	t->columns = t->survey->columns + 1;
	t->rows = t->survey->rows + 1;
	t->tap_bed = bed_of_tap(t);
	t->holes = post_holes_of(&garden.takeoff.fences, t->plot);
	houses = house_map_of(t->plot, 1, arena);
	header_ways_find(&t->ways, arena, &(struct basis){ .plot = t->plot,
		.survey = t->survey }, &(struct header_ground){ &houses, &t->holes, t->trench });
}

START_TEST(each_bed_gets_the_best_of_all_ways)
{
	struct arena arena = ARENA_EMPTY;
	struct trial t;

	trial_begin(&t, &arena, (uint64_t)_i);
	t.tree = header_begin(&t.ways);
	t.in = memory_new((size_t)(t.columns * t.rows), sizeof *t.in);
	t.in[t.ways.tap] = true;
	check_costs(&t);
	for (int i = 0; i < t.survey->region_count; i++)
		if (t.survey->regions[i].entry->class == CLASS_BED)
			check_bed(&t, i);
	header_fini(&t.tree);
	free(t.in);
	free(t.holes.list);
	arena_clear(&arena);
}
END_TEST

/* Those that lead from a grid point, in any order. */
static void check_leads(const struct trial *t, int x, int y)
{
	struct header_lead leads[HEADER_LEADS];
	int count = header_leads(&t->ways, y * t->columns + x, leads), expected = 0;

	for (int i = 0; i < 4; i++) {
		bool is_upright = i % 2;
		int back = i / 2, from_x = x - back * !is_upright, from_y = y - back * is_upright;
		int to = (from_y + (is_upright && !back)) * t->columns + from_x +
			(!is_upright && !back);
		struct cell_side side = side_from(from_x, from_y, is_upright);
		const struct header_lead *lead = leads;

		if (cost_of(t, &side) == 0)
			continue;
		expected++;
		while (lead < leads + count && (lead->to != to || lead->is_upright != is_upright))
			lead++;
		ck_assert(lead < leads + count);
		ck_assert_int_eq(lead->cost, cost_of(t, &side));
		ck_assert_int_eq(lead->burden, burden_of(t, &side));
	}
	ck_assert_int_eq(count, expected);
}

START_TEST(each_side_costs_what_lies_at_it)
{
	for (int seed = 0; seed < runner_count(100, 1000); seed++) {
		struct arena arena = ARENA_EMPTY;
		struct trial t;

		trial_begin(&t, &arena, 1000 + (uint64_t)seed);
		ck_assert_int_eq(t.ways.inside, t.tap_bed);
		for (int y = 0; y < t.rows; y++)
			for (int x = 0; x < t.columns; x++)
				check_leads(&t, x, y);
		free(t.holes.list);
		arena_clear(&arena);
		teardown();
	}
}
END_TEST

/* ---- What waits ------------------------------------------------------------------------------ */

START_TEST(points_wait_by_cost_until_they_are_taken_or_cleared)
{
	struct cost_ring ring = { .count = 0 };
	int point;

	for (int cost = 3; cost < 3 + RING_SIZE; cost++)
		cost_ring_add(&ring, cost, 10 * cost);
	ck_assert(cost_ring_take(&ring, 4, &point));
	ck_assert_int_eq(point, 40);
	ck_assert(!cost_ring_take(&ring, 4, &point));
	ck_assert_uint_eq(ring.count, RING_SIZE - 1);
	cost_ring_clear(&ring);
	ck_assert_uint_eq(ring.count, 0);
	for (int cost = 3; cost < 3 + RING_SIZE; cost++)
		ck_assert(!cost_ring_take(&ring, cost, &point));
	cost_ring_add(&ring, 9, 90);
	ck_assert(cost_ring_take(&ring, 9, &point));
	ck_assert_int_eq(point, 90);
	cost_ring_fini(&ring);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("header tree");
	TCase *random = suite_case(suite, "random");

	tcase_add_checked_fixture(random, NULL, teardown);
	tcase_add_test(random, points_wait_by_cost_until_they_are_taken_or_cleared);
	tcase_add_test(random, each_side_costs_what_lies_at_it);
	tcase_add_loop_test(random, each_bed_gets_the_best_of_all_ways, 0,
		runner_count(RANDOM_PLOTS / 4, RANDOM_PLOTS));
	return suite;
}
