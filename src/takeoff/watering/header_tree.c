#include "base/number.h"
#include "base/stop.h"
#include "survey/outline.h"
#include "takeoff/watering/header.h"

#include <stdlib.h>

enum { LEVEL, UPRIGHT, DIRECTIONS };
enum { NO_NODE = -1, NO_BURDEN = -1 };

/* A grid point on a best way to the bed at hand, by the direction in which the way goes on. */
struct header_node {
	int point;
	int burdens[DIRECTIONS]; /* from here on; NO_BURDEN: no way goes on so */
	int next[DIRECTIONS];    /* node; NO_NODE: it ends here */
	int next_way[DIRECTIONS]; /* the direction in which it goes on from that */
};

struct header_tree header_begin(const struct header_ways *ways)
{
	size_t points = (size_t)ways->columns * (size_t)ways->rows;

	return (struct header_tree){ .from = memory_new(points, sizeof(int)),
		.met = memory_new(points, sizeof(int)) };
}

void header_fini(struct header_tree *tree)
{
	free(tree->from);
	free(tree->met);
	free(tree->nodes);
	cost_ring_fini(&tree->waiting);
	*tree = (struct header_tree){ .count = 0 };
}

/* The node of a point; a new one waits. */
static int node_of(struct header_tree *tree, const struct header_ways *ways, int point)
{
	if (tree->met[point] == 0) {
		tree->nodes = memory_grow(tree->nodes, tree->count, &tree->capacity,
			sizeof *tree->nodes);
		tree->nodes[tree->count++] = (struct header_node){ point, { NO_BURDEN, NO_BURDEN },
			{ NO_NODE, NO_NODE }, { LEVEL, LEVEL } };
		tree->met[point] = (int)tree->count;
		cost_ring_add(&tree->waiting, ways->costs[point], point);
	}
	return tree->met[point] - 1;
}

/* ---- Ends ------------------------------------------------------------------------------------ */

/* The best of the grid points that the header may end at. */
struct ends {
	struct header_tree *tree;
	const struct header_ways *ways;
	int cost;       /* of the way to the best; HEADER_NO_WAY: there is none */
	bool is_square; /* to a side */
	int clear;      /* of its corners, in sides of cells */
};

/* side: the direction of the bed's side. */
static void end_at(struct ends *ends, int point, int side)
{
	int at = node_of(ends->tree, ends->ways, point);
	struct header_node *node = &ends->tree->nodes[at];

	node->burdens[!side] = 0;
	if (!ends->is_square)
		node->burdens[side] = 0;
}

/* Of all points of a side, clear of its corners: finds what the best way to one costs, or takes
 * those that cost that. */
static void look_along(struct ends *ends, const struct corner *a, const struct corner *b,
	bool is_taking)
{
	int dx = sign(b->x - a->x), dy = sign(b->y - a->y), clear = ends->clear;
	int length = abs(b->x - a->x) + abs(b->y - a->y);

	for (int i = clear; i <= length - clear; i++) {
		int point = (a->y + i * dy) * ends->ways->columns + a->x + i * dx;
		int cost = ends->ways->costs[point];

		if (cost == HEADER_NO_WAY)
			continue;
		if (is_taking && cost == ends->cost)
			end_at(ends, point, dx == 0 ? UPRIGHT : LEVEL);
		else if (!is_taking && (ends->cost == HEADER_NO_WAY || cost < ends->cost))
			ends->cost = cost;
	}
}

static void look_round(struct ends *ends, const struct outline *outline, bool is_taking)
{
	for (int i = 0; i < outline->count && !stop_asked(); i++) {
		const struct loop *loop = &outline->loops[i];

		for (int side = 0; side < loop->count; side++)
			look_along(ends, &loop->corners[side],
				&loop->corners[(side + 1) % loop->count], is_taking);
	}
}

/* How many sides of cells from a corner on the header comes up clear of the wall round it. */
static int clear_of_corners(const struct survey *survey, int region)
{
	const struct block *bed = &survey->regions[region].entry->block;
	nm wall = block_value(bed, BED_BLOCK)->as.size.across + block_length(bed, BED_REACH_IN);

	return (int)quotient_up(wall, survey->cell);
}

/* Puts nodes at all ends that are as good as the best. Returns what the way to them costs. */
static int find_ends(struct header_tree *tree, const struct header_ways *ways,
	const struct basis *basis, int region)
{
	const bool is_raised = region_is_raised(&basis->survey->regions[region]);
	struct ends ends = { tree, ways, HEADER_NO_WAY, is_raised, 0 };
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	outline_trace(&outline, &arena, basis->plot, basis->survey, region);
	ends.clear = is_raised ? clear_of_corners(basis->survey, region) : 0;
	look_round(&ends, &outline, false);
	if (ends.cost == HEADER_NO_WAY) {
		ends.clear = 0;
		look_round(&ends, &outline, false);
	}
	if (ends.cost != HEADER_NO_WAY)
		look_round(&ends, &outline, true);
	arena_clear(&arena);
	return ends.cost;
}

/* ---- Back to the tap, or to what is in already ----------------------------------------------- */

/* A way to the node by a side, and on from it. */
static void lead_to(struct header_tree *tree, int at, int node, const struct header_lead *lead)
{
	struct header_node *before = &tree->nodes[at];
	const struct header_node *after = &tree->nodes[node];
	int way = lead->is_upright ? UPRIGHT : LEVEL;

	for (int on = LEVEL; on < DIRECTIONS; on++) {
		int burden = after->burdens[on] + lead->burden + (on != way);

		if (after->burdens[on] == NO_BURDEN ||
			(before->burdens[way] != NO_BURDEN && before->burdens[way] <= burden))
			continue;
		before->burdens[way] = burden;
		before->next[way] = node;
		before->next_way[way] = on;
	}
}

static void walk_back(struct header_tree *tree, const struct header_ways *ways, int point)
{
	struct header_lead leads[HEADER_LEADS];
	int count = header_leads(ways, point, leads);

	for (int i = 0; i < count; i++)
		if (ways->costs[leads[i].to] + leads[i].cost == ways->costs[point])
			lead_to(tree, node_of(tree, ways, leads[i].to), tree->met[point] - 1,
				&leads[i]);
}

static int better_way(const struct header_node *node)
{
	int level = node->burdens[LEVEL], upright = node->burdens[UPRIGHT];

	return level == NO_BURDEN || (upright != NO_BURDEN && upright < level) ? UPRIGHT : LEVEL;
}

/* Of two nodes the one with the better way from it on, else that whose point is first. */
static int better_node(const struct header_tree *tree, int a, int b)
{
	const struct header_node *one, *other;
	int of_one, of_other;

	if (a == NO_NODE || b == NO_NODE)
		return a == NO_NODE ? b : a;
	one = &tree->nodes[a];
	other = &tree->nodes[b];
	of_one = one->burdens[better_way(one)];
	of_other = other->burdens[better_way(other)];
	if (of_one != of_other)
		return of_one < of_other ? a : b;
	return one->point < other->point ? a : b;
}

/* Goes back from the ends, those first that cost most, to the first points that are in the tree.
 * Returns the node to go on from. */
static int find_joint(struct header_tree *tree, const struct header_ways *ways, int cost)
{
	int joint = NO_NODE;

	for (int point; joint == NO_NODE && tree->waiting.count > 0 && !stop_asked(); cost--)
		while (cost_ring_take(&tree->waiting, cost, &point)) {
			if (point == ways->tap || tree->from[point] != 0)
				joint = better_node(tree, joint, tree->met[point] - 1);
			else
				walk_back(tree, ways, point);
		}
	return joint;
}

/* Takes in what leads on from the joint. Returns the grid point it ends at. */
static int take_in(struct header_tree *tree, int joint, int64_t *sides)
{
	int node = joint, way = better_way(&tree->nodes[joint]);

	while (tree->nodes[node].next[way] != NO_NODE) {
		const struct header_node *here = &tree->nodes[node];

		node = here->next[way];
		way = here->next_way[way];
		tree->from[tree->nodes[node].point] = here->point + 1;
		++*sides;
	}
	return tree->nodes[node].point;
}

int header_reach(struct header_tree *tree, const struct header_ways *ways,
	const struct basis *basis, int region, int64_t *sides)
{
	int cost, joint, end = HEADER_NO_WAY;

	if (region == ways->inside)
		return ways->tap;
	cost = find_ends(tree, ways, basis, region);
	joint = find_joint(tree, ways, cost);
	if (joint != NO_NODE)
		end = take_in(tree, joint, sides);
	for (size_t i = 0; i < tree->count; i++)
		tree->met[tree->nodes[i].point] = 0;
	tree->count = 0;
	cost_ring_clear(&tree->waiting);
	return end;
}

/* ---- What is in ------------------------------------------------------------------------------ */

void header_legs(const struct header_tree *tree, const struct header_ways *ways,
	struct legs *legs)
{
	for (int at = 0; at < ways->columns * ways->rows && !stop_asked(); at++) {
		int from = tree->from[at] - 1;

		if (from >= 0)
			legs_add(legs, (struct leg){
				{ from % ways->columns, from / ways->columns },
				{ at % ways->columns, at / ways->columns } });
	}
	legs_join(legs);
}
