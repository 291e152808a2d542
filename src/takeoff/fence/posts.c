#include "takeoff/fence/posts.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"
#include "takeoff/fence/fence_values.h"

#include <math.h>
#include <assert.h>
#include <stdlib.h>

/* Directions in which the fence continues from a post, added up. */
#define WAY(heading) (1 << (heading))
enum { WAY_RIGHT = WAY(HEADING_RIGHT), WAY_DOWN = WAY(HEADING_DOWN), WAY_LEFT = WAY(HEADING_LEFT),
	WAY_UP = WAY(HEADING_UP) };

/* A post that one leg or gate needs. */
struct wanted {
	struct spot at;
	int ways;
	bool of_gate;
};

struct wants {
	struct wanted *list;
	size_t count, capacity;
};

static void want(struct wants *wants, struct spot at, int ways, bool of_gate)
{
	wants->list = memory_grow(wants->list, wants->count, &wants->capacity, sizeof *wants->list);
	wants->list[wants->count++] = (struct wanted){ at, ways, of_gate };
}

static int opposite_way(enum heading heading)
{
	return WAY((heading + 2) % 4);
}

/* None where moving in from the boundary leaves no length. */
static void want_ends(struct wants *wants, struct spot from, struct spot to, enum heading heading,
	bool of_gate)
{
	if (from.x == to.x && from.y == to.y)
		return;
	want(wants, from, WAY(heading), of_gate);
	want(wants, to, opposite_way(heading), of_gate);
}

static void want_leg(struct wants *wants, const struct fence_leg *leg, nm section)
{
	int64_t panels = leg->whole + leg->cut_count;
	int dx = sign(leg->to.x - leg->from.x), dy = sign(leg->to.y - leg->from.y);

	want_ends(wants, leg->from, leg->to, leg->heading, false);
	for (int64_t i = 1; i < panels; i++) {
		nm off = i <= leg->whole ? i * section : leg->whole * section + leg->cut[0];

		want(wants, (struct spot){ leg->from.x + dx * off, leg->from.y + dy * off },
			WAY(leg->heading) | opposite_way(leg->heading), false);
	}
}

static int compare_wanted(const void *a, const void *b)
{
	const struct wanted *one = a, *other = b;
	int order = compare(one->at.y, other->at.y);

	return order ? order : compare(one->at.x, other->at.x);
}

static size_t join_wanted(struct wanted *list, size_t count)
{
	size_t joined = 0;

	if (count > 1)
		sort(list, count, sizeof *list, compare_wanted);
	for (size_t i = 0; i < count && !stop_asked(); i++) {
		if (joined > 0 && compare_wanted(&list[joined - 1], &list[i]) == 0) {
			list[joined - 1].ways |= list[i].ways;
			list[joined - 1].of_gate |= list[i].of_gate;
		} else {
			list[joined++] = list[i];
		}
	}
	return joined;
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

void posts_place(struct fencing *fencing, struct arena *arena)
{
	struct wants wants = { NULL, 0, 0 };
	nm section = block_length(&fencing->fence->block, FENCE_SECTION);
	struct fence_post *posts;

	for (int i = 0; i < fencing->leg_count && !stop_asked(); i++)
		want_leg(&wants, &fencing->legs[i], section);
	for (int i = 0; i < fencing->gate_count && !stop_asked(); i++)
		want_ends(&wants, fencing->gates[i].from, fencing->gates[i].to,
			fencing->gates[i].heading, true);
	wants.count = join_wanted(wants.list, wants.count);
	assert(wants.list || wants.count == 0);
	posts = arena_new(arena, wants.count, sizeof *posts);
	for (size_t i = 0; i < wants.count && !stop_asked(); i++) {
		posts[i] = (struct fence_post){ wants.list[i].at, kind_of(&wants.list[i]) };
		fencing->of_kind[posts[i].kind]++;
	}
	free(wants.list);
	fencing->posts = posts;
	fencing->post_count = (int)wants.count;
}

/* ---- Holes ----------------------------------------------------------------------------------- */

static struct post_hole dig(const struct block *allow, const struct block *fence)
{
	struct post_hole hole = { .across = fence_derived(allow, fence, FENCE_HOLE),
		.in_ground = fence_derived(allow, fence, FENCE_DEPTH) };
	nm gravel = block_length(fence, FENCE_GRAVEL);
	double radius = metres(hole.across) / 2, post = metres(block_length(fence, FENCE_POST));
	double circle = acos(-1) * radius * radius;

	hole.area = circle;
	hole.depth = hole.in_ground + gravel;
	hole.concrete = fmax(0, circle - post * post) * metres(hole.in_ground);
	hole.gravel = circle * metres(gravel);
	hole.spoil = circle * metres(hole.depth);
	hole.bags = hole.concrete / block_amount(allow, ALLOW_CONCRETE_BAG);
	return hole;
}

void posts_dig(struct fencing *fencing, const struct block *allow)
{
	const struct block *fence = &fencing->fence->block;
	nm stock = block_length(allow, ALLOW_POST_STOCK);

	fencing->hole = dig(allow, fence);
	fencing->concrete_bags = fencing->post_count * fencing->hole.bags;
	fencing->gravel = fencing->post_count * fencing->hole.gravel;
	fencing->post_length = block_length(fence, FENCE_HEIGHT) + block_length(fence, FENCE_GAP) +
		fencing->hole.in_ground;
	fencing->post_stock = (fencing->post_length + stock - 1) / stock * stock;
}
