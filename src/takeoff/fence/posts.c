#include "takeoff/fence/posts.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"
#include "takeoff/fence/fence_values.h"
#include "takeoff/fence/panels.h"
#include "takeoff/fence/stand.h"

#include <math.h>
#include <assert.h>
#include <stdlib.h>
#include <string.h>

/* Directions in which the fence continues from a post, added up. */
#define WAY(heading) (1U << (heading))
enum { WAY_RIGHT = WAY(HEADING_RIGHT), WAY_DOWN = WAY(HEADING_DOWN), WAY_LEFT = WAY(HEADING_LEFT),
	WAY_UP = WAY(HEADING_UP), ALL_WAYS = WAY_RIGHT | WAY_DOWN | WAY_LEFT | WAY_UP };

/* A post that one leg or gate needs. There may be millions: kept small. */
struct wanted {
	struct spot at;
	int turn; /* when it is come to along the fence */
	unsigned int ways : 4;
	bool of_gate;
};

struct wants {
	struct wanted *list;
	size_t count, capacity;
};

static void want(struct wants *wants, struct spot at, unsigned int ways, bool of_gate)
{
	wants->list = memory_grow(wants->list, wants->count, &wants->capacity, sizeof *wants->list);
	wants->list[wants->count] = (struct wanted){ .at = at, .turn = (int)wants->count,
		.ways = ways & ALL_WAYS, .of_gate = of_gate };
	wants->count++;
}

static unsigned int opposite_way(enum heading heading)
{
	return WAY((heading + 2) % 4);
}

static void want_between(struct wants *wants, const struct fence_leg *leg,
	const struct fencing *fencing)
{
	struct panel_group groups[PANEL_GROUPS_MOST];
	int count = panels_in_order(leg, fencing->section, groups);
	int dx = sign(leg->to.x - leg->from.x), dy = sign(leg->to.y - leg->from.y);
	nm off = fencing_ease(fencing, leg->at_gate[0]);

	for (int i = 0; i < count; i++)
		for (int64_t j = 1; j <= groups[i].count; j++) {
			off += groups[i].place;
			if (i < count - 1 || j < groups[i].count)
				want(wants, (struct spot){ leg->from.x + dx * off,
					leg->from.y + dy * off }, WAY(leg->heading) |
					opposite_way(leg->heading), false);
		}
}

/* None where moving in from the boundary leaves no length. */
static void want_leg(struct wants *wants, const struct fence_leg *leg,
	const struct fencing *fencing)
{
	if (leg->length == 0)
		return;
	want(wants, leg->from, WAY(leg->heading), false);
	want_between(wants, leg, fencing);
	want(wants, leg->to, opposite_way(leg->heading), false);
}

static void want_gate(struct wants *wants, const struct fence_gate *gate)
{
	if (gate->length == 0)
		return;
	want(wants, gate->from, WAY(gate->heading), true);
	want(wants, gate->to, opposite_way(gate->heading), true);
}

static void want_all(struct wants *wants, const struct fencing *fencing)
{
	int gate = 0;

	for (int leg = 0; leg <= fencing->leg_count && !stop_asked(); leg++) {
		while (gate < fencing->gate_count && fencing->gates[gate].legs_before == leg)
			want_gate(wants, &fencing->gates[gate++]);
		if (leg < fencing->leg_count)
			want_leg(wants, &fencing->legs[leg], fencing);
	}
}

static int compare_turns(const void *a, const void *b)
{
	return compare(((const struct wanted *)a)->turn, ((const struct wanted *)b)->turn);
}

static int compare_spots(const void *a, const void *b)
{
	return spot_compare(&((const struct wanted *)a)->at, &((const struct wanted *)b)->at);
}

/* One for each spot, in the order in which they are come to first. Sets of each turn the first one
 * at its spot. */
static size_t join_wanted(struct wanted *list, size_t count, int *first_turns)
{
	size_t joined = 0;

	sort(list, count, sizeof *list, compare_spots);
	for (size_t i = 0; i < count && !stop_asked(); i++) {
		int turn = list[i].turn;

		if (joined > 0 && spot_compare(&list[joined - 1].at, &list[i].at) == 0) {
			list[joined - 1].ways |= list[i].ways;
			list[joined - 1].of_gate |= list[i].of_gate;
		} else {
			list[joined++] = list[i];
		}
		first_turns[turn] = list[joined - 1].turn;
	}
	if (joined > 1)
		sort(list, joined, sizeof *list, compare_turns);
	return joined;
}

/* Makes the first turn at each spot the post's index: posts are numbered as they are come to. */
static void number_turns(int *first_turns, size_t count)
{
	int posts = 0;

	for (size_t turn = 0; turn < count && !stop_asked(); turn++)
		first_turns[turn] = first_turns[turn] == (int)turn ? posts++ :
			first_turns[first_turns[turn]];
}

static enum post_kind kind_of(const struct wanted *wanted)
{
	if (wanted->of_gate)
		return POST_GATE;
	switch (wanted->ways) {
	case WAY_RIGHT:
	case WAY_DOWN:
	case WAY_LEFT:
	case WAY_UP:
		return POST_END;
	case WAY_RIGHT | WAY_LEFT:
	case WAY_DOWN | WAY_UP:
		return POST_LINE;
	case WAY_RIGHT | WAY_DOWN:
	case WAY_DOWN | WAY_LEFT:
	case WAY_LEFT | WAY_UP:
	case WAY_UP | WAY_RIGHT:
		return POST_CORNER;
	default:
		return POST_TEE;
	}
}

struct fence_post *posts_place(struct fencing *fencing, struct arena *arena)
{
	nm height = fencing->height + block_length(&fencing->fence->block, FENCE_GAP);
	struct wants wants = { NULL, 0, 0 };
	struct fence_post *posts;
	int *along;
	size_t turns;

	want_all(&wants, fencing);
	turns = wants.count;
	along = arena_new(arena, turns, sizeof *along);
	wants.count = join_wanted(wants.list, turns, along);
	number_turns(along, turns);
	assert(wants.list || wants.count == 0);
	posts = arena_new(arena, wants.count, sizeof *posts);
	for (size_t i = 0; i < wants.count && !stop_asked(); i++) {
		posts[i] = (struct fence_post){ wants.list[i].at, kind_of(&wants.list[i]), height };
		fencing->of_kind[posts[i].kind]++;
	}
	free(wants.list);
	fencing->along = along;
	fencing->posts = posts;
	fencing->post_count = (int)wants.count;
	return posts;
}

/* ---- Lengths --------------------------------------------------------------------------------- */

struct stocks {
	struct post_stock *list;
	size_t capacity;
	int count;
};

static int compare_stocks(const struct post_stock *a, const struct post_stock *b)
{
	int order = compare(a->is_of_gates, b->is_of_gates);

	return order ? order : compare(a->length, b->length);
}

/* Few differ: their lengths are of one step. */
static void add_stock(struct stocks *stocks, const struct post_stock *stock, struct arena *arena)
{
	int at = 0;

	while (at < stocks->count && compare_stocks(&stocks->list[at], stock) < 0)
		at++;
	if (at < stocks->count && compare_stocks(&stocks->list[at], stock) == 0) {
		stocks->list[at].count++;
		return;
	}
	stocks->list = arena_grow(arena, stocks->list, (size_t)stocks->count, &stocks->capacity,
		sizeof *stocks->list);
	memmove(&stocks->list[at + 1], &stocks->list[at],
		(size_t)(stocks->count - at) * sizeof *stocks->list);
	stocks->list[at] = *stock;
	stocks->count++;
}

static void measure(struct fencing *fencing, nm step, struct arena *arena)
{
	struct stocks stocks = { .count = 0 };

	for (int i = 0; i < fencing->post_count && !stop_asked(); i++) {
		const struct fence_post *post = &fencing->posts[i];
		nm length = post->height + fencing->hole.in_ground;

		fencing->post_length = nm_most(fencing->post_length, length);
		fencing->post_shortest = i == 0 ? length :
			nm_least(fencing->post_shortest, length);
		add_stock(&stocks, &(struct post_stock){ post->kind == POST_GATE &&
			fencing->gate_post != fencing->post,
			multiple_up(length, step), 1 }, arena);
	}
	fencing->post_stock = multiple_up(fencing->post_length, step);
	fencing->stocks = stocks.list;
	fencing->stock_count = stocks.count;
}

/* ---- Holes ----------------------------------------------------------------------------------- */

static struct post_hole dig(const struct plot *plot, const struct block *fence, nm across, nm post)
{
	struct post_hole hole = { .across = across,
		.in_ground = fence_derived(plot, fence, FENCE_DEPTH) };
	nm gravel = block_length(fence, FENCE_GRAVEL);
	double radius = metres(across) / 2, square = metres(post) * metres(post);
	double circle = acos(-1) * radius * radius;

	hole.area = circle;
	hole.depth = hole.in_ground + gravel;
	hole.concrete = fmax(0, circle - square) * metres(hole.in_ground);
	hole.gravel = circle * metres(gravel);
	hole.spoil = circle * metres(hole.depth);
	hole.bags = hole.concrete / block_amount(&plot->details.allow, ALLOW_CONCRETE_BAG);
	return hole;
}

void posts_dig(struct fencing *fencing, const struct plot *plot, struct arena *arena)
{
	const struct block *fence = &fencing->fence->block;

	fencing->hole = dig(plot, fence, fence_derived(plot, fence, FENCE_HOLE), fencing->post);
	fencing->gate_hole = dig(plot, fence, fence_gate_hole(plot, fence), fencing->gate_post);
	for (int kind = 0; kind < POST_KINDS; kind++) {
		const struct post_hole *hole = fencing_hole(fencing, (enum post_kind)kind);

		fencing->concrete_bags += (double)fencing->of_kind[kind] * hole->bags;
		fencing->gravel += (double)fencing->of_kind[kind] * hole->gravel;
	}
	measure(fencing, block_length(&plot->details.allow, ALLOW_POST_STOCK), arena);
}
