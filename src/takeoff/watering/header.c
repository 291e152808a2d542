#include "takeoff/watering/header.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/way.h"

#include <stdlib.h>

/* What a cell is. Outside the plan is somebody else's. Within: the bed that the tap stands in. */
enum ground_kind { GROUND_OUTSIDE, GROUND_SHUT, GROUND_OPEN, GROUND_PATH, GROUND_WITHIN };
enum { STEPS = 1024 }; /* points walked on from between two looks at the flag */

struct walk {
	int columns, rows; /* of grid points */
	unsigned char *ground; /* enum ground_kind by cell */
	/* By cell: from how many grid lines on, its own edge the first, a trench beside it takes
	 * ground from under what stands there. */
	unsigned char *under;
	unsigned char *level, *upright; /* as in header_ways */
	int *costs;
};

/* ---- Ground ---------------------------------------------------------------------------------- */

/* The bed that all cells about a grid point are of, but those outside the plan or in a house. */
static int bed_around(const struct survey *survey, const struct house_map *houses, struct place at)
{
	int bed = NO_REGION;

	for (int i = 0; i < 4; i++) {
		int x = at.x - i % 2, y = at.y - i / 2, region;

		if (x < 0 || y < 0 || x >= survey->columns || y >= survey->rows ||
			house_map_at(houses, x, y))
			continue;
		region = survey_region_at(survey, x, y);
		if (region == NO_REGION || survey->regions[region].entry->class != CLASS_BED ||
			(bed != NO_REGION && region != bed))
			return NO_REGION;
		bed = region;
	}
	return bed;
}

/* Grid lines beside a region, its outline the first, whose trench comes under the base of what
 * stands on it. */
static int lines_under(const struct survey *survey, const struct run *run, nm trench)
{
	const struct region *region = run->region == NO_REGION ? NULL :
		&survey->regions[run->region];
	nm reach = trench / 2;

	if (!region || (run->class != CLASS_FIXTURE && !region_is_raised(region)))
		return 0;
	if (run->class == CLASS_BED)
		reach += block_length(&region->entry->block, BED_REACH);
	return (int)nm_least((reach + survey->cell - 1) / survey->cell, UINT8_MAX);
}

/* through: a bed that is gone through all the same. */
static enum ground_kind kind_of(const struct run *run, int through)
{
	if (through != NO_REGION && run->region == through)
		return GROUND_WITHIN;
	return !way_is_over(run->class) ? GROUND_SHUT : run->class == CLASS_PATH ? GROUND_PATH :
		GROUND_OPEN;
}

static void read_ground(struct walk *walk, const struct survey *survey,
	const struct header_ground *ground, int through)
{
	for (int y = 0; y < survey->rows && !stop_asked(); y++) {
		size_t row = (size_t)y * (size_t)survey->columns;

		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];
			enum ground_kind kind = kind_of(run, through);
			int under = lines_under(survey, run, ground->trench);

			for (int x = run->left; x < run->right; x++) {
				walk->ground[row + (size_t)x] = house_map_at(ground->houses, x,
					y) ? GROUND_SHUT : (unsigned char)kind;
				walk->under[row + (size_t)x] = (unsigned char)under;
			}
		}
	}
}

/* ---- Sides of cells -------------------------------------------------------------------------- */

static enum ground_kind ground_at_cell(const struct walk *walk, int x, int y)
{
	int columns = walk->columns - 1;

	if (x < 0 || y < 0 || x >= columns || y >= walk->rows - 1)
		return GROUND_OUTSIDE;
	return (enum ground_kind)walk->ground[(size_t)y * (size_t)columns + (size_t)x];
}

static int under_at_cell(const struct walk *walk, int x, int y)
{
	int columns = walk->columns - 1;

	if (x < 0 || y < 0 || x >= columns || y >= walk->rows - 1)
		return 0;
	return walk->under[(size_t)y * (size_t)columns + (size_t)x];
}

static unsigned char side_between(enum ground_kind a, enum ground_kind b)
{
	if (a <= GROUND_SHUT && b <= GROUND_SHUT)
		return WAY_SHUT;
	if (a == GROUND_SHUT || b == GROUND_SHUT)
		return WAY_BESIDE;
	if (a == GROUND_OUTSIDE || b == GROUND_OUTSIDE)
		return WAY_EDGE;
	return a == GROUND_PATH && b == GROUND_PATH ? WAY_PATH : WAY_OPEN;
}

static void make_dear(unsigned char *side)
{
	if (*side != WAY_SHUT)
		*side = WAY_DEAR;
}

/* Ground of the bed that the tap stands in is dug within its walls. */
static void make_dear_between(unsigned char *side, enum ground_kind a, enum ground_kind b)
{
	if (a != GROUND_WITHIN || b != GROUND_WITHIN)
		make_dear(side);
}

static void read_sides(struct walk *walk)
{
	for (int y = 0; y < walk->rows && !stop_asked(); y++)
		for (int x = 0; x < walk->columns; x++) {
			size_t at = (size_t)y * (size_t)walk->columns + (size_t)x;
			enum ground_kind here = ground_at_cell(walk, x, y);

			walk->level[at] = side_between(ground_at_cell(walk, x, y - 1), here);
			walk->upright[at] = side_between(ground_at_cell(walk, x - 1, y), here);
		}
}

/* Level sides below what stands, from the top down, or above it, from the bottom up. until: of each
 * column the side before which the trench comes under what was met last. */
static void under_level(struct walk *walk, bool is_down, int *until)
{
	for (int x = 0; x < walk->columns - 1; x++)
		until[x] = 0;
	for (int i = 0; i < walk->rows && !stop_asked(); i++) {
		int y = is_down ? i : walk->rows - 1 - i;

		for (int x = 0; x < walk->columns - 1; x++) {
			int under = under_at_cell(walk, x, is_down ? y - 1 : y);

			if (under > 0 && i + under > until[x])
				until[x] = i + under;
			if (i < until[x])
				make_dear_between(&walk->level[y * walk->columns + x],
					ground_at_cell(walk, x, y - 1),
					ground_at_cell(walk, x, y));
		}
	}
}

/* The same of upright sides, row by row. */
static void under_upright(struct walk *walk, bool is_right)
{
	for (int y = 0; y < walk->rows - 1 && !stop_asked(); y++)
		for (int i = 0, until = 0; i < walk->columns; i++) {
			int x = is_right ? i : walk->columns - 1 - i;
			int under = under_at_cell(walk, is_right ? x - 1 : x, y);

			if (under > 0 && i + under > until)
				until = i + under;
			if (i < until)
				make_dear_between(&walk->upright[y * walk->columns + x],
					ground_at_cell(walk, x - 1, y),
					ground_at_cell(walk, x, y));
		}
}

/* Open sides that go straight on to one whose trench comes under a base: about the point between
 * them, at a corner of what stands there, theirs does too. */
static void meet_corners(struct walk *walk)
{
	for (int y = 0; y < walk->rows && !stop_asked(); y++)
		for (int x = 0; x < walk->columns; x++) {
			int at = y * walk->columns + x, above = at - walk->columns;
			int below = at + walk->columns;

			if (walk->level[at] == WAY_OPEN &&
				((x > 0 && walk->level[at - 1] == WAY_DEAR) ||
				walk->level[at + 1] == WAY_DEAR))
				walk->level[at] = WAY_CORNER;
			if (walk->upright[at] == WAY_OPEN &&
				((y > 0 && walk->upright[above] == WAY_DEAR) ||
				walk->upright[below] == WAY_DEAR))
				walk->upright[at] = WAY_CORNER;
		}
}

/* Sides whose trench a post's hole goes through. */
static void dig_hole(struct walk *walk, const struct post_hole_at *hole, nm cell, nm half)
{
	nm reach = hole->across / 2 + half + 1;
	int left = (int)nm_most(0, (hole->at.x - reach) / cell - 1);
	int right = (int)nm_least(walk->columns - 1, (hole->at.x + reach) / cell);
	int top = (int)nm_most(0, (hole->at.y - reach) / cell - 1);
	int bottom = (int)nm_least(walk->rows - 1, (hole->at.y + reach) / cell);

	for (int y = top; y <= bottom; y++)
		for (int x = left; x <= right; x++) {
			const struct near_thing level = { x * cell - half, y * cell - half,
				(x + 1) * cell + half, y * cell + half, 0 };
			const struct near_thing upright = { x * cell - half, y * cell - half,
				x * cell + half, (y + 1) * cell + half, 0 };

			if (near_disc(&level, hole->at.x, hole->at.y, hole->across))
				make_dear(&walk->level[y * walk->columns + x]);
			if (near_disc(&upright, hole->at.x, hole->at.y, hole->across))
				make_dear(&walk->upright[y * walk->columns + x]);
		}
}

static void find_sides(struct walk *walk, const struct header_ground *ground, nm cell)
{
	int *until = memory_new((size_t)walk->columns, sizeof *until);

	read_sides(walk);
	under_level(walk, true, until);
	under_level(walk, false, until);
	under_upright(walk, true);
	under_upright(walk, false);
	free(until);
	meet_corners(walk);
	for (size_t i = 0; i < ground->holes->count && !stop_asked(); i++)
		dig_hole(walk, &ground->holes->list[i], cell, ground->trench / 2);
}

/* ---- Ways ------------------------------------------------------------------------------------ */

static int add_lead(struct header_lead *lead, int to, bool is_upright, unsigned char side)
{
	static const struct header_lead of_sides[] = {
		[WAY_OPEN] = { .cost = 1 }, [WAY_PATH] = { .cost = 1, .burden = 1 },
		[WAY_EDGE] = { .cost = 1, .burden = 1 },
		[WAY_CORNER] = { .cost = 1, .burden = 1 },
		[WAY_BESIDE] = { .cost = 1, .burden = 2 },
		[WAY_DEAR] = { .cost = HEADER_DEAR, .burden = 2 },
	};

	if (side == WAY_SHUT)
		return 0;
	*lead = of_sides[side];
	lead->to = to;
	lead->is_upright = is_upright;
	return 1;
}

int header_leads(const struct header_ways *ways, int point,
	struct header_lead leads[static HEADER_LEADS])
{
	int x = point % ways->columns, left = point - 1, above = point - ways->columns, count = 0;

	if (x > 0)
		count += add_lead(&leads[count], left, false, ways->level[left]);
	count += add_lead(&leads[count], point + 1, false, ways->level[point]);
	if (above >= 0)
		count += add_lead(&leads[count], above, true, ways->upright[above]);
	return count + add_lead(&leads[count], point + ways->columns, true,
		ways->upright[point]);
}

static void walk_on(const struct header_ways *ways, int *costs, struct cost_ring *waiting, int from)
{
	struct header_lead leads[HEADER_LEADS];
	int count = header_leads(ways, from, leads);

	for (int i = 0; i < count; i++) {
		int to = leads[i].to, cost = costs[from] + leads[i].cost;

		if (costs[to] != HEADER_NO_WAY && costs[to] <= cost)
			continue;
		costs[to] = cost;
		cost_ring_add(waiting, cost, to);
	}
}

static void find_ways(const struct header_ways *ways, int *costs)
{
	struct cost_ring waiting = { .count = 0 };
	int walked = 0;

	costs[ways->tap] = 0;
	cost_ring_add(&waiting, 0, ways->tap);
	for (int cost = 0, point; waiting.count > 0; cost++)
		while (cost_ring_take(&waiting, cost, &point)) {
			/* A point waits once more where a better way to it was found. */
			if (costs[point] == cost)
				walk_on(ways, costs, &waiting, point);
			if (++walked % STEPS == 0 && stop_asked())
				cost_ring_clear(&waiting);
		}
	cost_ring_fini(&waiting);
}

void header_ways_find(struct header_ways *out, struct arena *arena, const struct basis *basis,
	const struct header_ground *ground)
{
	const struct survey *survey = basis->survey;
	struct place tap = basis->plot->details.around.tap;
	struct walk walk = { .columns = survey->columns + 1, .rows = survey->rows + 1 };
	size_t points = (size_t)walk.columns * (size_t)walk.rows;
	size_t cells = (size_t)survey->columns * (size_t)survey->rows;
	int inside = bed_around(survey, ground->houses, tap);

	walk.costs = arena_new(arena, points, sizeof *walk.costs);
	walk.level = arena_new(arena, points, sizeof *walk.level);
	walk.upright = arena_new(arena, points, sizeof *walk.upright);
	walk.ground = memory_new(cells, sizeof *walk.ground);
	walk.under = memory_new(cells, sizeof *walk.under);
	for (size_t i = 0; i < points; i++)
		walk.costs[i] = HEADER_NO_WAY;
	read_ground(&walk, survey, ground, inside);
	find_sides(&walk, ground, survey->cell);
	free(walk.ground);
	free(walk.under);
	*out = (struct header_ways){ walk.columns, walk.rows, walk.costs, walk.level,
		walk.upright, tap.y * walk.columns + tap.x, inside };
	if (!stop_asked())
		find_ways(out, walk.costs);
}
