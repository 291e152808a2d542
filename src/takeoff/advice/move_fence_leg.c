#include "takeoff/advice/proposal.h"
#include "base/number.h"
#include "plot/edit/fence_lay.h"
#include "plot/edit/fence_remake.h"

/* The leg and its images, as far as the fence has them, with the way of each. */
struct moves {
	struct leg legs[IMAGES_MOST];
	struct place ways[IMAGES_MOST];
	int count;
};

static struct place shifted(struct place at, struct place way)
{
	return (struct place){ at.x + way.x, at.y + way.y };
}

static struct leg leg_shifted(struct leg leg, struct place way)
{
	return (struct leg){ shifted(leg.from, way), shifted(leg.to, way) };
}

static bool is_of(const struct legs *legs, struct leg leg)
{
	for (size_t i = 0; i < legs->count; i++)
		if (leg_equal(legs->items[i], leg))
			return true;
	return false;
}

/* False where the leg is its own image in a way in which it is none where it goes. */
static bool find_moves(struct moves *out, const struct plot *plot, const struct legs *legs,
	const struct proposal *proposal)
{
	struct mirror mirror = mirror_of(plot);
	struct leg from[IMAGES_MOST], to[IMAGES_MOST];
	int count = mirror_legs(&mirror, proposal->leg, from);

	if (mirror_legs(&mirror, leg_shifted(proposal->leg,
		(struct place){ proposal->right, proposal->down }), to) != count)
		return false;
	out->count = 0;
	for (int i = 0; i < count; i++) {
		if (!is_of(legs, from[i]))
			continue;
		out->legs[out->count] = from[i];
		out->ways[out->count++] = (struct place){ to[i].from.x - from[i].from.x,
			to[i].from.y - from[i].from.y };
	}
	return out->count > 0;
}

/* Whether two legs meet at a point that is not an end of both. */
static bool meet_amid(struct leg a, struct leg b)
{
	struct stretch one = leg_stretch(a), other = leg_stretch(b);
	bool meet = one.is_upright != other.is_upright && one.line >= other.low &&
		one.line <= other.high && other.line >= one.low && other.line <= one.high;
	bool at_ends = (one.line == other.low || one.line == other.high) &&
		(other.line == one.low || other.line == one.high);

	return meet && !at_ends;
}

/* Whether no leg meets the one but at its ends. */
static bool is_met_at_ends(const struct legs *legs, struct leg leg)
{
	bool is = true;

	for (size_t i = 0; i < legs->count; i++)
		is = is && !meet_amid(legs->items[i], leg);
	return is;
}

/* Where a point of the fence goes: with the leg that it is an end of. */
static struct place moved(const struct moves *moves, struct place at)
{
	for (int i = 0; i < moves->count; i++)
		if (place_equal(moves->legs[i].from, at) || place_equal(moves->legs[i].to, at))
			return shifted(at, moves->ways[i]);
	return at;
}

/* The cells that a leg goes over. */
static struct rectangle swept(struct leg leg, struct place way)
{
	struct leg f = leg_forward(leg), to = leg_shifted(f, way);

	return (struct rectangle){ least(f.from.x, to.from.x), least(f.from.y, to.from.y),
		most(f.to.x, to.to.x) - 1, most(f.to.y, to.to.y) - 1 };
}

static bool is_way_free(const struct plot *plot, const struct moves *moves)
{
	for (int i = 0; i < moves->count; i++)
		if (!ground_is_free(plot, swept(moves->legs[i], moves->ways[i])))
			return false;
	return true;
}

/* Whether a leg still leads the same way, within the plan. */
static bool still_leads(struct leg before, struct leg now, const struct ground *ground)
{
	struct leg within;

	return leg_is_straight(now) &&
		sign(now.to.x - now.from.x) == sign(before.to.x - before.from.x) &&
		sign(now.to.y - now.from.y) == sign(before.to.y - before.from.y) &&
		leg_clip(now, ground->columns, ground->rows, &within) && leg_equal(within, now);
}

static bool move_legs(struct legs *legs, const struct moves *moves, const struct ground *ground)
{
	for (int i = 0; i < moves->count; i++)
		if (!is_met_at_ends(legs, moves->legs[i]))
			return false;
	for (size_t i = 0; i < legs->count; i++) {
		struct leg before = legs->items[i];
		struct leg now = { moved(moves, before.from), moved(moves, before.to) };

		if (!still_leads(before, now, ground))
			return false;
		legs->items[i] = now;
	}
	for (int i = 0; i < moves->count; i++)
		if (!is_met_at_ends(legs, leg_shifted(moves->legs[i], moves->ways[i])))
			return false;
	return true;
}

static void move_gates(struct legs *gates, const struct moves *moves)
{
	for (size_t i = 0; i < gates->count; i++)
		for (int j = 0; j < moves->count; j++)
			if (leg_covers(moves->legs[j], gates->items[i])) {
				gates->items[i] = leg_shifted(gates->items[i], moves->ways[j]);
				break;
			}
}

bool move_fence_leg(struct plot *plot, const struct proposal *proposal)
{
	struct fence *fence = &plot->details.fences[proposal->fence];
	struct legs legs = LEGS_EMPTY, gates = LEGS_EMPTY;
	size_t gate_count = fence->gates.count, leg_count;
	struct moves moves;
	bool can;

	fence_legs(fence, &legs);
	legs_join(&legs);
	legs_add_all(&gates, &fence->gates);
	leg_count = legs.count;
	can = find_moves(&moves, plot, &legs, proposal) && is_way_free(plot, &moves) &&
		move_legs(&legs, &moves, &plot->ground);
	if (can) {
		int64_t length = legs_length(&legs);

		move_gates(&gates, &moves);
		legs_join(&legs);
		can = legs.count == leg_count && legs_length(&legs) == length;
		fence_remake(fence, &legs, &gates);
		can = can && fence->gates.count == gate_count;
	}
	legs_fini(&legs);
	legs_fini(&gates);
	return can;
}
