#include "takeoff/watering/header.h"
#include "base/stop.h"
#include "survey/outline.h"
#include "survey/way.h"

#include <stdlib.h>

/* What is at one side of a side of a cell. */
enum ground_kind { GROUND_OPEN, GROUND_PATH, GROUND_SHUT };
enum { UNREACHED = -1, STEPS = 1024 }; /* points walked on from between two looks at the flag */

struct walk {
	int columns, rows; /* of grid points */
	unsigned char *ground; /* enum ground_kind by cell */
	struct header_step *steps;
	int *waiting;
	size_t at, count;
};

/* The bed that all four cells about a grid point are of. */
static int bed_around(const struct survey *survey, struct place at)
{
	int region = at.x > 0 && at.y > 0 && at.x < survey->columns && at.y < survey->rows ?
		survey_region_at(survey, at.x, at.y) : NO_REGION;

	if (region == NO_REGION || survey->regions[region].entry->class != CLASS_BED ||
		survey_region_at(survey, at.x - 1, at.y - 1) != region ||
		survey_region_at(survey, at.x, at.y - 1) != region ||
		survey_region_at(survey, at.x - 1, at.y) != region)
		return NO_REGION;
	return region;
}

/* through: a bed that is gone through all the same. */
static void read_ground(struct walk *walk, const struct survey *survey,
	const struct house_map *houses, int through)
{
	for (int y = 0; y < survey->rows && !stop_asked(); y++) {
		unsigned char *row = walk->ground + (size_t)y * (size_t)survey->columns;

		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];

			for (int x = run->left; x < run->right; x++)
				row[x] = house_map_at(houses, x, y) || (!way_is_over(run->class) &&
					(through == NO_REGION || run->region != through)) ?
					GROUND_SHUT : run->class == CLASS_PATH ? GROUND_PATH :
					GROUND_OPEN;
		}
	}
}

/* Outside the plan is somebody else's. */
static enum ground_kind ground_at_cell(const struct walk *walk, int x, int y)
{
	int columns = walk->columns - 1;

	if (x < 0 || y < 0 || x >= columns || y >= walk->rows - 1)
		return GROUND_SHUT;
	return (enum ground_kind)walk->ground[(size_t)y * (size_t)columns + (size_t)x];
}

/* What a side between two cells costs where ways are as long; UNREACHED: no way goes there. */
static int cost_of(const struct walk *walk, struct place one, struct place other)
{
	enum ground_kind a = ground_at_cell(walk, one.x, one.y);
	enum ground_kind b = ground_at_cell(walk, other.x, other.y);

	if (a == GROUND_SHUT || b == GROUND_SHUT)
		return a == b ? UNREACHED : 2;
	return a == GROUND_PATH && b == GROUND_PATH;
}

/* Goes from one grid point to one beside it. All points of a length are walked on from before any
 * of the next, so the cost of the one is settled. */
static void go(struct walk *walk, int from, int to, int cost)
{
	const struct header_step *before = &walk->steps[from];
	struct header_step *step = &walk->steps[to];
	struct header_step next = { before->sides + 1, before->beside + cost, from };

	if (cost == UNREACHED)
		return;
	if (step->from == UNREACHED) {
		walk->waiting[walk->count++] = to;
		*step = next;
	} else if (step->sides == next.sides && next.beside < step->beside) {
		*step = next;
	}
}

static void walk_on(struct walk *walk, int from)
{
	int x = from % walk->columns, y = from / walk->columns;
	const struct place above_left = { x - 1, y - 1 }, above = { x, y - 1 }, left = { x - 1, y },
		here = { x, y };

	if (x > 0)
		go(walk, from, from - 1, cost_of(walk, above_left, left));
	if (x + 1 < walk->columns)
		go(walk, from, from + 1, cost_of(walk, above, here));
	if (y > 0)
		go(walk, from, from - walk->columns, cost_of(walk, above_left, above));
	if (y + 1 < walk->rows)
		go(walk, from, from + walk->columns, cost_of(walk, left, here));
}

void header_ways_find(struct header_ways *out, struct arena *arena, const struct basis *basis,
	const struct house_map *houses)
{
	const struct survey *survey = basis->survey;
	struct place tap = basis->plot->details.around.tap;
	struct walk walk = { .columns = survey->columns + 1, .rows = survey->rows + 1 };
	size_t points = (size_t)walk.columns * (size_t)walk.rows;
	int start = tap.y * walk.columns + tap.x, inside = bed_around(survey, tap);

	walk.steps = arena_new(arena, points, sizeof *walk.steps);
	walk.ground = memory_new((size_t)survey->columns * (size_t)survey->rows, 1);
	walk.waiting = memory_new(points, sizeof *walk.waiting);
	for (size_t i = 0; i < points; i++)
		walk.steps[i].from = UNREACHED;
	read_ground(&walk, survey, houses, inside);
	walk.steps[start].from = start;
	walk.waiting[walk.count++] = start;
	while (walk.at < walk.count && !stop_asked())
		for (int i = 0; i < STEPS && walk.at < walk.count; i++)
			walk_on(&walk, walk.waiting[walk.at++]);
	free(walk.ground);
	free(walk.waiting);
	*out = (struct header_ways){ walk.columns, walk.rows, walk.steps, start, inside };
}

/* ---- Ends ------------------------------------------------------------------------------------ */

/* Whether the way to `point` is better than that to `best`. */
static bool is_better(const struct header_ways *ways, int point, int best)
{
	const struct header_step *a = &ways->steps[point], *b;

	if (a->from == UNREACHED || best == UNREACHED)
		return a->from != UNREACHED;
	b = &ways->steps[best];
	if (a->sides != b->sides)
		return a->sides < b->sides;
	return a->beside != b->beside ? a->beside < b->beside : point < best;
}

static int better_of_side(const struct header_ways *ways, const struct loop *loop, int side,
	int best)
{
	const struct corner *a = &loop->corners[side];
	const struct corner *b = &loop->corners[(side + 1) % loop->count];
	int dx = (b->x > a->x) - (b->x < a->x), dy = (b->y > a->y) - (b->y < a->y);

	for (int x = a->x, y = a->y; x != b->x || y != b->y; x += dx, y += dy) {
		int point = y * ways->columns + x;

		if (is_better(ways, point, best))
			best = point;
	}
	return best;
}

int header_end(const struct header_ways *ways, const struct basis *basis, int region)
{
	struct arena arena = ARENA_EMPTY;
	struct outline outline;
	int best = UNREACHED;

	if (region == ways->inside)
		return ways->tap;
	outline_trace(&outline, &arena, basis->plot, basis->survey, region);
	for (int i = 0; i < outline.count && !stop_asked(); i++)
		for (int side = 0; side < outline.loops[i].count; side++)
			best = better_of_side(ways, &outline.loops[i], side, best);
	arena_clear(&arena);
	return best;
}

/* ---- Ways together --------------------------------------------------------------------------- */

struct header_tree header_begin(const struct header_ways *ways)
{
	return (struct header_tree){
		memory_new((size_t)ways->columns * (size_t)ways->rows, 1) };
}

int64_t header_add(struct header_tree *tree, const struct header_ways *ways, int end)
{
	int64_t sides = 0;

	for (int at = end; ways->steps[at].from != at && !tree->taken[at];
		at = ways->steps[at].from) {
		tree->taken[at] = 1;
		sides++;
	}
	return sides;
}

void header_legs(const struct header_tree *tree, const struct header_ways *ways,
	struct legs *legs)
{
	for (int at = 0; at < ways->columns * ways->rows && !stop_asked(); at++) {
		int from = ways->steps[at].from;

		if (tree->taken[at])
			legs_add(legs, (struct leg){
				{ from % ways->columns, from / ways->columns },
				{ at % ways->columns, at / ways->columns } });
	}
	legs_join(legs);
}

void header_fini(struct header_tree *tree)
{
	free(tree->taken);
	tree->taken = NULL;
}
