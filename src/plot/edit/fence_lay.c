#include "plot/edit/fence_lay.h"
#include "base/memory.h"
#include "base/number.h"

#include <stdlib.h>

/* ---- Runs from legs -------------------------------------------------------------------------- */

/* One end of a leg. Its other end stands beside it: of leg i, ends 2i and 2i + 1. */
struct end {
	struct place at;
	size_t met; /* the end of another leg that is there too; NONE where none is */
};

#define NONE SIZE_MAX

static const struct end *end_of(const void *index, const void *ends)
{
	return &((const struct end *)ends)[*(const size_t *)index];
}

/* In reading order; of two at one point the one whose leg comes first, which is the level one. */
static int end_compare(const void *a, const void *b, void *ends)
{
	const struct end *one = end_of(a, ends), *other = end_of(b, ends);
	int order = compare(one->at.y, other->at.y);

	order = order ? order : compare(one->at.x, other->at.x);
	return order ? order : compare(one - other, 0);
}

/* Joined legs meet end to end in pairs at most, one level and one upright. */
static void ends_meet(struct end *ends, const size_t *order, size_t count)
{
	for (size_t i = 1; i < count; i++) {
		struct end *one = &ends[order[i - 1]], *other = &ends[order[i]];

		if (!place_equal(one->at, other->at))
			continue;
		one->met = order[i];
		other->met = order[i - 1];
	}
}

static struct end *ends_of(const struct legs *legs)
{
	struct end *ends = memory_new(2 * legs->count, sizeof *ends);

	for (size_t i = 0; i < legs->count; i++) {
		ends[2 * i] = (struct end){ legs->items[i].from, NONE };
		ends[2 * i + 1] = (struct end){ legs->items[i].to, NONE };
	}
	return ends;
}

/* From an end along all that meets, into one run or more; marks what it has been along. */
static void follow(struct fence *fence, const struct end *ends, size_t end, bool *is_done)
{
	struct fence_run *run = fence_add_run(fence);

	fence_run_add(run, ends[end].at);
	while (end != NONE && !is_done[end / 2]) {
		struct place last = run->points[run->count - 1];

		if (run->count == FENCE_POINTS_MOST) {
			run = fence_add_run(fence);
			fence_run_add(run, last);
		}
		is_done[end / 2] = true;
		fence_run_add(run, ends[end ^ 1].at);
		end = ends[end ^ 1].met;
	}
}

/* Open runs first, each from the end that is read first; then closed ones. */
static void follow_all(struct fence *fence, const struct legs *legs)
{
	size_t count = 2 * legs->count;
	struct end *ends = ends_of(legs);
	size_t *order = memory_new(count, sizeof *order);
	bool *is_done = memory_new(legs->count, sizeof *is_done);

	for (size_t i = 0; i < count; i++)
		order[i] = i;
	qsort_r(order, count, sizeof *order, end_compare, ends);
	ends_meet(ends, order, count);
	for (int closed = 0; closed <= 1; closed++)
		for (size_t i = 0; i < count; i++)
			if (!is_done[order[i] / 2] && (closed || ends[order[i]].met == NONE))
				follow(fence, ends, order[i], is_done);
	free(ends);
	free(order);
	free(is_done);
}

static void runs_drop(struct fence *fence)
{
	for (size_t i = 0; i < fence->run_count; i++)
		free(fence->runs[i].points);
	fence->run_count = 0;
}

void fence_remake(struct fence *fence, struct legs *legs, struct legs *gates)
{
	legs_join(legs);
	legs_sort(gates);
	runs_drop(fence);
	if (legs->count)
		follow_all(fence, legs);
	fence->gate_count = 0;
	for (size_t i = 0; i < gates->count; i++) {
		size_t kept = fence->gate_count;

		if (legs_cover(legs, gates->items[i]) &&
			(!kept || !leg_overlap(fence->gates[kept - 1], gates->items[i])))
			fence_add_gate(fence, gates->items[i]);
	}
	legs_fini(legs);
	legs_fini(gates);
}

/* ---- Acts ------------------------------------------------------------------------------------ */

static struct legs legs_of(const struct fence *fence)
{
	struct legs legs = LEGS_EMPTY;

	fence_legs(fence, &legs);
	return legs;
}

static struct legs gates_of(const struct fence *fence)
{
	struct legs gates = LEGS_EMPTY;

	for (size_t i = 0; i < fence->gate_count; i++)
		legs_add(&gates, fence->gates[i]);
	return gates;
}

int64_t fence_length(const struct fence *fence)
{
	int64_t length = 0;

	for (size_t i = 0; i < fence->run_count; i++)
		for (int j = 1; j < fence->runs[i].count; j++)
			length += leg_length((struct leg){ fence->runs[i].points[j - 1],
				fence->runs[i].points[j] });
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
		for (size_t i = 0; i < images.count; i++)
			legs_add(&legs, images.items[i]);
		gates = gates_of(fence);
		fence_remake(fence, &legs, &gates);
		laid.changed = fence_length(fence) - before;
	}
	legs_fini(&images);
	legs_fini(&legs);
	return laid;
}

/* Cuts off all images; what is left is LEGS_EMPTY where nothing is. */
static void cut_all(struct legs *legs, const struct legs *images)
{
	for (size_t i = 0; i < images->count; i++)
		legs_cut(legs, images->items[i]);
}

struct laid fence_lift(struct plot *plot, struct fence *fence, struct leg leg)
{
	struct laid laid = { 0, false };
	struct legs images = images_of(plot, leg, &laid.outside), legs = legs_of(fence);
	struct legs gates = gates_of(fence);
	int64_t before = fence_length(fence);

	cut_all(&legs, &images);
	for (size_t i = 0; i < legs.count; i++)
		laid.changed -= leg_length(legs.items[i]);
	laid.changed += before;
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

struct laid fence_lift_gate(struct plot *plot, struct fence *fence, struct leg leg)
{
	struct laid laid = { 0, false };
	struct legs images = images_of(plot, leg, &laid.outside);
	size_t kept = 0;

	for (size_t i = 0; i < fence->gate_count; i++) {
		bool goes = false;

		for (size_t j = 0; j < images.count; j++)
			goes = goes || leg_overlap(fence->gates[i], images.items[j]);
		laid.changed += goes;
		if (!goes)
			fence->gates[kept++] = fence->gates[i];
	}
	fence->gate_count = kept;
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
	int64_t before = fence_length(fence), within = 0;

	for (size_t i = 0; i < fence->run_count; i++)
		for (int j = 0; j < fence->runs[i].count; j++) {
			fence->runs[i].points[j].x += right;
			fence->runs[i].points[j].y += down;
		}
	for (size_t i = 0; i < fence->gate_count; i++)
		fence->gates[i] = leg_moved(fence->gates[i], right, down);
	legs = legs_of(fence);
	legs = legs_within(&legs, ground, false);
	for (size_t i = 0; i < legs.count; i++)
		within += leg_length(legs.items[i]);
	if (within < before) {
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
		for (size_t j = 0; j < images.count; j++)
			legs_add(out, images.items[j]);
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
		for (size_t j = 0; j < pieces.count; j++)
			legs_add(is_whole ? out : &halves, pieces.items[j]);
		legs_fini(&pieces);
	}
	legs_join(&halves);
	for (size_t i = 0; i < halves.count; i++)
		legs_add(out, halves.items[i]);
	legs_fini(&halves);
}

void fence_fold(struct plot *plot, struct fence *fence, struct place from)
{
	struct fence was = fence_copy(fence), folded = fence_copy(fence);
	struct legs old = legs_of(fence), old_gates = gates_of(fence);
	struct legs legs = LEGS_EMPTY, gates = LEGS_EMPTY;

	for (size_t i = 0; i < old.count; i++)
		fold_leg(plot, old.items[i], from, &legs);
	fold_gates(plot, &old_gates, from, &gates);
	fence_remake(&folded, &legs, &gates);
	fence_remake(&was, &old, &old_gates);
	if (!fence_equal(&was, &folded)) {
		fence_fini(fence);
		*fence = folded;
	} else {
		fence_fini(&folded);
	}
	fence_fini(&was);
}
