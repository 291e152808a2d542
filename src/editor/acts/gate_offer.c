#include "editor/acts/gate_offer.h"
#include "base/number.h"
#include "plot/mirror.h"
#include "takeoff/fence/fence_values.h"
#include "takeoff/fence/stand.h"

#include <stdlib.h>

/* A gate about an axis is as good as two beside it that are a cell shorter, and better. */
enum { PAIR_COST = 2 };

struct offer {
	struct mirror mirror;
	struct stand stand;
	nm post, clear; /* of a gate; the least that shall be clear */
	struct leg whole, side; /* both forward: as far as the fence goes on, and the side meant */
	struct leg best;
	/* Of the best: in sides of cells; how far the side is off its middle. */
	int cost, off;
};

/* The longest piece of the fence that covers the side; forward. */
static struct leg piece_of(const struct fence *fence, struct leg side)
{
	struct legs legs = LEGS_EMPTY;
	struct leg piece = leg_forward(side);

	fence_legs(fence, &legs);
	legs_join(&legs);
	for (size_t i = 0; i < legs.count; i++)
		if (leg_covers(legs.items[i], side))
			piece = legs.items[i];
	legs_fini(&legs);
	return piece;
}

/* As it is set: one gate with those of its images that it overlaps. */
static struct leg with_images(const struct mirror *mirror, struct leg gate)
{
	struct leg images[IMAGES_MOST];
	int count = mirror_legs(mirror, gate, images);

	for (int i = 1; i < count; i++)
		if (leg_overlap(images[i], gate)) {
			gate.from.x = least(gate.from.x, images[i].from.x);
			gate.from.y = least(gate.from.y, images[i].from.y);
			gate.to.x = most(gate.to.x, images[i].to.x);
			gate.to.y = most(gate.to.y, images[i].to.y);
		}
	return gate;
}

/* Whether it has an image beside it in the same fence. */
static bool is_pair(const struct offer *offer, struct leg gate)
{
	struct leg images[IMAGES_MOST];
	int count = mirror_legs(&offer->mirror, gate, images);

	for (int i = 1; i < count; i++)
		if (leg_covers(offer->whole, images[i]) && !leg_overlap(images[i], gate))
			return true;
	return false;
}

static void try_gate(struct offer *offer, struct leg gate)
{
	struct leg set = with_images(&offer->mirror, gate);
	int cost = leg_length(set) + (is_pair(offer, gate) ? PAIR_COST : 0);
	int off = abs(gate.from.x + gate.to.x - offer->side.from.x - offer->side.to.x) +
		abs(gate.from.y + gate.to.y - offer->side.from.y - offer->side.to.y);

	if (!leg_covers(offer->whole, set) ||
		stand_clear(&offer->stand, set, offer->post) < offer->clear)
		return;
	if (cost < offer->cost || (cost == offer->cost && off < offer->off)) {
		offer->best = set;
		offer->cost = cost;
		offer->off = off;
	}
}

/* All gates of so many sides of cells. */
static void try_length(struct offer *offer, int length)
{
	bool is_upright = leg_is_upright(offer->whole);
	struct leg whole = offer->whole;
	int low = is_upright ? whole.from.y : whole.from.x;
	int high = is_upright ? whole.to.y : whole.to.x;
	int at = is_upright ? offer->side.from.y : offer->side.from.x;

	for (int from = most(low, at + 1 - length); from <= least(at, high - length); from++) {
		struct leg gate = whole;

		*(is_upright ? &gate.from.y : &gate.from.x) = from;
		*(is_upright ? &gate.to.y : &gate.to.x) = from + length;
		try_gate(offer, gate);
	}
}

struct leg gate_offer(const struct plot *plot, const struct fence *fence, struct leg side)
{
	struct leg whole = piece_of(fence, side);
	struct offer offer = {
		.mirror = mirror_of(plot), .stand = stand_of(plot, &fence->block),
		.post = fence_derived(plot, &fence->block, FENCE_GATE_POST),
		.clear = block_length(&plot->details.allow, ALLOW_GATE_CLEAR),
		.whole = whole, .side = leg_forward(side),
		.best = whole, .cost = leg_length(whole) + PAIR_COST + 1,
	};

	for (int length = 1; length <= leg_length(whole) && length < offer.cost; length++)
		try_length(&offer, length);
	return offer.best;
}
