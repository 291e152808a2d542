#include "takeoff/fence/fence_spans.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <assert.h>
#include <limits.h>
#include <stdlib.h>

/* Where a leg is divided. */
struct divide {
	int leg;
	int at;   /* in cells from the leg's first end */
	int gate; /* 1: a gate begins here, -1: it ends here */
};

/* A leg on its line. No two overlap. */
struct leg_at {
	struct stretch at;
	int leg; /* index into lines.legs */
};

struct lines {
	struct legs legs;    /* run by run, joined where they run straight on */
	struct leg_at *list; /* of all legs, sorted by their stretches */
	struct divide *divides;
	size_t divide_count, divide_capacity;
};

/* No leg lies over another, so none doubles back. */
static bool is_straight_on(struct leg leg, struct place next)
{
	return leg_is_upright(leg) == (next.x == leg.to.x);
}

static void add_run(struct legs *legs, const struct route *run)
{
	for (int i = 1; i < run->count && !stop_asked(); i++) {
		struct place from = run->points[i - 1], to = run->points[i];

		if (i > 1 && is_straight_on(legs->items[legs->count - 1], to))
			legs->items[legs->count - 1].to = to;
		else
			legs_add(legs, (struct leg){ from, to });
	}
}

static int compare_places(const void *a, const void *b)
{
	return stretch_compare(&((const struct leg_at *)a)->at, &((const struct leg_at *)b)->at);
}

static void sort_legs(struct lines *lines)
{
	lines->list = memory_new(lines->legs.count, sizeof *lines->list);
	for (size_t i = 0; i < lines->legs.count && !stop_asked(); i++)
		lines->list[i] = (struct leg_at){ leg_stretch(lines->legs.items[i]), (int)i };
	sort(lines->list, lines->legs.count, sizeof *lines->list, compare_places);
}

/* The leg of the line that holds the point `at`; where two meet there, the one that begins
 * there. NULL where there is none. */
static const struct leg_at *find(const struct lines *lines, bool is_upright, int line, int at)
{
	const struct stretch wanted = { is_upright, line, at, INT_MAX };
	const struct leg_at *last = NULL;
	size_t low = 0, high = lines->legs.count;

	while (low < high) {
		size_t middle = low + (high - low) / 2;

		if (stretch_compare(&lines->list[middle].at, &wanted) <= 0) {
			last = &lines->list[middle];
			low = middle + 1;
		} else {
			high = middle;
		}
	}
	return last && last->at.is_upright == is_upright && last->at.line == line &&
		last->at.high >= at ? last : NULL;
}

/* at: along the line that the leg lies on. */
static void divide(struct lines *lines, int leg, int at, int gate)
{
	struct place from = lines->legs.items[leg].from;
	int start = leg_is_upright(lines->legs.items[leg]) ? from.y : from.x;

	lines->divides = memory_grow(lines->divides, lines->divide_count, &lines->divide_capacity,
		sizeof *lines->divides);
	lines->divides[lines->divide_count++] = (struct divide){ leg, abs(at - start), gate };
}

/* Divides at tees and crossings. Where two legs of one direction meet, both end anyway. */
static void divide_by_runs(struct lines *lines)
{
	for (size_t i = 0; i < lines->legs.count && !stop_asked(); i++) {
		const struct stretch *upright = &lines->list[i].at;

		for (int y = upright->low; upright->is_upright && y <= upright->high; y++) {
			const struct leg_at *level = find(lines, false, y, upright->line);

			if (!level)
				continue;
			divide(lines, level->leg, upright->line, 0);
			divide(lines, lines->list[i].leg, y, 0);
		}
	}
}

static void divide_by_gate(struct lines *lines, struct leg gate)
{
	struct stretch part = leg_stretch(gate);
	const struct leg_at *whole = find(lines, part.is_upright, part.line, part.low);
	bool is_along;

	assert(whole && part.high <= whole->at.high);
	is_along = leg_equal(lines->legs.items[whole->leg],
		leg_forward(lines->legs.items[whole->leg]));
	divide(lines, whole->leg, part.low, is_along ? 1 : -1);
	divide(lines, whole->leg, part.high, is_along ? -1 : 1);
}

static int compare_divides(const void *a, const void *b)
{
	const struct divide *one = a, *other = b;
	int order = compare(one->leg, other->leg);

	return order ? order : compare(one->at, other->at);
}

static struct place along(const struct leg *leg, int at)
{
	return (struct place){ leg->from.x + at * sign(leg->to.x - leg->from.x),
		leg->from.y + at * sign(leg->to.y - leg->from.y) };
}

static int add_spans(const struct lines *lines, struct fence_span *spans)
{
	int count = 0, gates = 0;

	for (size_t i = 1; i < lines->divide_count && !stop_asked(); i++) {
		const struct divide *a = &lines->divides[i - 1], *b = &lines->divides[i];
		const struct leg *leg = &lines->legs.items[a->leg];

		gates += a->gate;
		if (a->leg == b->leg && a->at < b->at)
			spans[count++] = (struct fence_span){
				{ along(leg, a->at), along(leg, b->at) }, gates > 0 };
	}
	return count;
}

static void divide_all(struct lines *lines, const struct fence *fence)
{
	for (size_t i = 0; i < lines->legs.count && !stop_asked(); i++) {
		divide(lines, lines->list[i].leg, lines->list[i].at.low, 0);
		divide(lines, lines->list[i].leg, lines->list[i].at.high, 0);
	}
	divide_by_runs(lines);
	for (size_t i = 0; i < fence->gates.count && !stop_asked(); i++)
		divide_by_gate(lines, fence->gates.items[i]);
	sort(lines->divides, lines->divide_count, sizeof *lines->divides, compare_divides);
}

const struct fence_span *fence_spans(struct arena *arena, const struct fence *fence, int *count)
{
	struct lines lines = { .legs = LEGS_EMPTY };
	struct fence_span *spans;

	for (size_t i = 0; i < fence->run_count; i++)
		add_run(&lines.legs, &fence->runs[i]);
	sort_legs(&lines);
	divide_all(&lines, fence);
	spans = arena_new(arena, lines.divide_count, sizeof *spans);
	*count = add_spans(&lines, spans);
	legs_fini(&lines.legs);
	free(lines.list);
	free(lines.divides);
	return spans;
}
