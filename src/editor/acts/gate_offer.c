#include "editor/acts/gate_offer.h"
#include "base/number.h"
#include "plot/mirror.h"
#include "takeoff/fence/fence_values.h"
#include "takeoff/fence/stand.h"

#include <stdlib.h>

struct offer {
	struct mirror mirror;
	struct stand stand;
	nm post, clear; /* of a gate; the least that shall be clear */
	struct leg whole, side; /* both forward: as far as the fence goes on, and the side meant */
	struct leg best;
	int length, off; /* of the best: in sides of cells; how far the side is off its middle */
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

static void try_gate(struct offer *offer, struct leg gate)
{
	struct leg set = with_images(&offer->mirror, gate);
	int length = leg_length(set);
	int off = abs(gate.from.x + gate.to.x - offer->side.from.x - offer->side.to.x) +
		abs(gate.from.y + gate.to.y - offer->side.from.y - offer->side.to.y);

	if (!leg_covers(offer->whole, set) ||
		stand_clear(&offer->stand, set, offer->post) < offer->clear)
		return;
	if (length < offer->length || (length == offer->length && off < offer->off)) {
		offer->best = set;
		offer->length = length;
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
		.best = whole, .length = leg_length(whole) + 1,
	};

	for (int length = 1; length <= leg_length(whole) && length < offer.length; length++)
		try_length(&offer, length);
	return offer.best;
}
