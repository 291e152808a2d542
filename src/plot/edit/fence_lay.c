#include "plot/edit/fence_lay.h"
#include "plot/edit/fence_remake.h"

static struct legs legs_of(const struct fence *fence)
{
	struct legs legs = LEGS_EMPTY;

	fence_legs(fence, &legs);
	return legs;
}

static struct legs gates_of(const struct fence *fence)
{
	struct legs gates = LEGS_EMPTY;

	legs_add_all(&gates, &fence->gates);
	return gates;
}

int64_t fence_length(const struct fence *fence)
{
	struct legs legs = legs_of(fence);
	int64_t length = legs_length(&legs);

	legs_fini(&legs);
	return length;
}

/* The leg and its images, as far as they lie within the plan. */
static struct legs images_of(const struct plot *plot, struct leg leg, bool *outside)
{
	struct mirror mirror = mirror_of(plot);
	struct leg images[IMAGES_MOST], within;
	struct legs legs = LEGS_EMPTY;
	int count = mirror_legs(&mirror, leg, images);

	for (int i = 0; i < count; i++) {
		bool is_in = leg_clip(images[i], plot->ground.columns, plot->ground.rows, &within);

		*outside = *outside || !is_in || !leg_equal(within, images[i]);
		if (is_in)
			legs_add(&legs, within);
	}
	return legs;
}

struct laid fence_lay(struct plot *plot, struct fence *fence, struct leg leg)
{
	struct laid laid = { 0, false };
	struct legs images = images_of(plot, leg, &laid.outside), legs = legs_of(fence), gates;
	int64_t before = fence_length(fence);

	legs_join(&legs);
	for (size_t i = 0; i < images.count; i++)
		laid.changed += !legs_cover(&legs, images.items[i]);
	if (laid.changed) {
		legs_add_all(&legs, &images);
		gates = gates_of(fence);
		fence_remake(fence, &legs, &gates);
		laid.changed = fence_length(fence) - before;
	}
	legs_fini(&images);
	legs_fini(&legs);
	return laid;
}

struct laid fence_take_out(struct plot *plot, struct fence *fence, struct leg leg)
{
	struct laid laid = { 0, false };
	struct legs images = images_of(plot, leg, &laid.outside), legs = legs_of(fence);
	struct legs gates = gates_of(fence);
	int64_t before = fence_length(fence);

	for (size_t i = 0; i < images.count; i++)
		legs_cut(&legs, images.items[i]);
	laid.changed = before - legs_length(&legs);
	if (laid.changed)
		fence_remake(fence, &legs, &gates);
	legs_fini(&images);
	legs_fini(&legs);
	legs_fini(&gates);
	return laid;
}

/* One where two overlap. */
static void merge_overlapping(struct legs *gates)
{
	size_t kept = 0;

	legs_sort(gates);
	for (size_t i = 0; i < gates->count; i++) {
		struct leg *last = kept ? &gates->items[kept - 1] : NULL, next = gates->items[i];

		if (!last || !leg_overlap(*last, next))
			gates->items[kept++] = next;
		else if (!leg_covers(*last, next))
			last->to = next.to;
	}
	gates->count = kept;
}

/* Adds those that are wanted, the covered ones, before what they are in the way of. */
static int64_t gates_put(struct legs *gates, const struct legs *wanted, const struct legs *legs)
{
	int64_t put = 0;

	for (size_t i = 0; i < wanted->count; i++) {
		struct leg gate = wanted->items[i];
		size_t kept = 0;
		bool is_there = false;

		if (!legs_cover(legs, gate))
			continue;
		for (size_t j = 0; j < gates->count; j++) {
			is_there = is_there || leg_equal(leg_forward(gates->items[j]), gate);
			if (!leg_overlap(gates->items[j], gate))
				gates->items[kept++] = gates->items[j];
		}
		gates->count = kept;
		legs_add(gates, gate);
		put += !is_there;
	}
	return put;
}

struct laid fence_set_gate(struct plot *plot, struct fence *fence, struct leg gate)
{
	struct laid laid = { 0, false };
	struct legs images = images_of(plot, gate, &laid.outside), gates = gates_of(fence);
	struct legs legs = legs_of(fence);

	legs_join(&legs);
	merge_overlapping(&images);
	laid.changed = gates_put(&gates, &images, &legs);
	if (laid.changed)
		fence_remake(fence, &legs, &gates);
	legs_fini(&images);
	legs_fini(&legs);
	legs_fini(&gates);
	return laid;
}

struct laid fence_take_out_gate(struct plot *plot, struct fence *fence, struct leg leg)
{
	struct laid laid = { 0, false };
	struct legs images = images_of(plot, leg, &laid.outside);
	struct legs *gates = &fence->gates;
	size_t kept = 0;

	for (size_t i = 0; i < gates->count; i++) {
		bool is_hit = false;

		for (size_t j = 0; j < images.count; j++)
			is_hit = is_hit || leg_overlap(gates->items[i], images.items[j]);
		if (!is_hit)
			gates->items[kept++] = gates->items[i];
	}
	laid.changed = (int64_t)(gates->count - kept);
	gates->count = kept;
	legs_fini(&images);
	return laid;
}

/* ---- With the ground ------------------------------------------------------------------------- */

static struct leg leg_moved(struct leg leg, int right, int down)
{
	return (struct leg){ { leg.from.x + right, leg.from.y + down },
		{ leg.to.x + right, leg.to.y + down } };
}

/* Those of the legs that lie within, as far as they do; or only those that do wholly. */
static struct legs legs_within(struct legs *legs, const struct ground *ground, bool only_whole)
{
	struct legs kept = LEGS_EMPTY;
	struct leg within;

	for (size_t i = 0; i < legs->count; i++)
		if (leg_clip(legs->items[i], ground->columns, ground->rows, &within) &&
			(!only_whole || leg_equal(within, legs->items[i])))
			legs_add(&kept, within);
	legs_fini(legs);
	return kept;
}

void fence_move(struct fence *fence, int right, int down, const struct ground *ground)
{
	struct legs legs, gates;
	int64_t before = fence_length(fence);

	for (size_t i = 0; i < fence->run_count; i++)
		for (int j = 0; j < fence->runs[i].count; j++) {
			fence->runs[i].points[j].x += right;
			fence->runs[i].points[j].y += down;
		}
	for (size_t i = 0; i < fence->gates.count; i++)
		fence->gates.items[i] = leg_moved(fence->gates.items[i], right, down);
	legs = legs_of(fence);
	legs = legs_within(&legs, ground, false);
	if (legs_length(&legs) < before) {
		gates = gates_of(fence);
		gates = legs_within(&gates, ground, true);
		fence_remake(fence, &legs, &gates);
	}
	legs_fini(&legs);
}

/* ---- Folding --------------------------------------------------------------------------------- */

static struct leg leg_side(struct leg leg, int at)
{
	bool is_upright = leg_is_upright(leg);
	struct place from = { leg.from.x + (is_upright ? 0 : at),
		leg.from.y + (is_upright ? at : 0) };

	return (struct leg){ from, { from.x + !is_upright, from.y + is_upright } };
}

/* Adds the pieces of a leg that are beside the cell, with their images. */
static void fold_leg(const struct plot *plot, struct leg leg, struct place from, struct legs *out)
{
	struct mirror mirror = mirror_of(plot);
	struct leg f = leg_forward(leg);
	bool outside = false;

	for (int i = 0, length = leg_length(f); i < length; i++) {
		struct leg piece = leg_side(f, i);

		if (!mirror_is_leg_beside(&mirror, from, piece))
			continue;
		while (i + 1 < length && mirror_is_leg_beside(&mirror, from, leg_side(f, i + 1)))
			piece.to = leg_side(f, ++i).to;
		struct legs images = images_of(plot, piece, &outside);
		legs_add_all(out, &images);
		legs_fini(&images);
	}
}

/* Gates wholly beside the cell are copied one by one, though an image may reach into the cells
 * that the axis divides as far as they do; of gates across the axis the halves are joined again. */
static void fold_gates(const struct plot *plot, const struct legs *old, struct place from,
	struct legs *out)
{
	struct legs halves = LEGS_EMPTY;

	for (size_t i = 0; i < old->count; i++) {
		struct legs pieces = LEGS_EMPTY;
		bool is_whole = false;

		fold_leg(plot, old->items[i], from, &pieces);
		for (size_t j = 0; j < pieces.count; j++)
			is_whole = is_whole || leg_equal(pieces.items[j],
				leg_forward(old->items[i]));
		merge_overlapping(&pieces);
		legs_add_all(is_whole ? out : &halves, &pieces);
		legs_fini(&pieces);
	}
	legs_join(&halves);
	legs_add_all(out, &halves);
	legs_fini(&halves);
}

void fence_fold(struct plot *plot, struct fence *fence, struct place from)
{
	struct legs old = legs_of(fence), old_gates = gates_of(fence);
	struct legs legs = LEGS_EMPTY, gates = LEGS_EMPTY;

	for (size_t i = 0; i < old.count; i++)
		fold_leg(plot, old.items[i], from, &legs);
	fold_gates(plot, &old_gates, from, &gates);
	legs_sort(&gates);
	legs_sort(&old_gates);
	legs_join(&old);
	legs_join(&legs);
	if (!legs_equal(&old, &legs) || !legs_equal(&old_gates, &gates))
		fence_remake(fence, &legs, &gates);
	legs_fini(&old);
	legs_fini(&old_gates);
	legs_fini(&legs);
	legs_fini(&gates);
}
