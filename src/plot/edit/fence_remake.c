#include "plot/edit/fence_remake.h"
#include "base/memory.h"
#include "base/sort.h"

#include <assert.h>
#include <stdint.h>
#include <stdlib.h>

/* One end of a leg. Leg i has ends 2i and 2i + 1. */
struct end {
	struct place at;
	size_t met; /* the end of another leg that is there too; NONE where none is */
};

#define NONE SIZE_MAX

/* Where an end is and which it is, in one number; those are in reading order, and of two at one
 * point the one whose leg comes first, which is the level one. */
static uint64_t end_number(const struct end *ends, size_t i)
{
	assert(i <= UINT32_MAX);
	return (uint64_t)ends[i].at.y << 48 | (uint64_t)ends[i].at.x << 32 | i;
}

/* The ends in order. */
static void ends_sort(const struct end *ends, uint64_t *order, size_t count)
{
	for (size_t i = 0; i < count; i++)
		order[i] = end_number(ends, i);
	sort_numbers(order, count);
	for (size_t i = 0; i < count; i++)
		order[i] &= UINT32_MAX;
}

/* Joined legs meet end to end in pairs at most, one level and one upright. */
static void ends_meet(struct end *ends, const uint64_t *order, size_t count)
{
	for (size_t i = 1; i < count; i++) {
		struct end *one = &ends[order[i - 1]], *other = &ends[order[i]];

		if (!place_equal(one->at, other->at))
			continue;
		one->met = order[i];
		other->met = order[i - 1];
	}
}

/* From an end along all that meets, into one run or more; marks what it has been along. */
static void follow(struct fence *fence, const struct end *ends, size_t end, bool *is_done)
{
	struct route *run = fence_add_run(fence);

	route_add(run, ends[end].at);
	while (end != NONE && !is_done[end / 2]) {
		struct place last = run->points[run->count - 1];

		if (run->count == ROUTE_POINTS_MOST) {
			run = fence_add_run(fence);
			route_add(run, last);
		}
		is_done[end / 2] = true;
		route_add(run, ends[end ^ 1].at);
		end = ends[end ^ 1].met;
	}
}

/* Open runs first, each from the end that is read first; then closed ones. */
static void follow_all(struct fence *fence, const struct legs *legs)
{
	size_t count = 2 * legs->count;
	struct end *ends = memory_new(count, sizeof *ends);
	uint64_t *order = memory_new(count, sizeof *order);
	bool *is_done = memory_new(legs->count, sizeof *is_done);

	for (size_t i = 0; i < count; i++) {
		const struct leg *leg = &legs->items[i / 2];

		ends[i] = (struct end){ i % 2 ? leg->to : leg->from, NONE };
	}
	ends_sort(ends, order, count);
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
		route_fini(&fence->runs[i]);
	fence->run_count = 0;
}

/* Leaves out gates that no leg covers, and of gates that overlap the later ones. */
static void gates_keep(struct legs *gates, const struct legs *legs)
{
	size_t kept = 0;

	legs_sort(gates);
	for (size_t i = 0; i < gates->count; i++)
		if (legs_cover(legs, gates->items[i]) &&
			(!kept || !leg_overlap(gates->items[kept - 1], gates->items[i])))
			gates->items[kept++] = gates->items[i];
	gates->count = kept;
}

void fence_remake(struct fence *fence, struct legs *legs, struct legs *gates)
{
	legs_join(legs);
	runs_drop(fence);
	if (legs->count)
		follow_all(fence, legs);
	gates_keep(gates, legs);
	legs_fini(&fence->gates);
	fence->gates = *gates;
	*gates = LEGS_EMPTY;
	legs_fini(legs);
}
