#include "takeoff/fence/fence_spans.h"
#include "base/number.h"

#include <assert.h>
#include <stdlib.h>

/* A leg by the line it lies on. */
struct stretch {
	int line;     /* y of a level one, x of an upright one */
	int low, high; /* along it, low < high */
	int leg;      /* index into lines.legs */
};

/* Stretches of one direction, by line and along it. No two overlap. */
struct stretches {
	struct stretch *list;
	int count;
};

/* Where a leg is divided. */
struct divide {
	int leg;
	int at;   /* from the leg's first end */
	int gate; /* 1: a gate begins here, -1: it ends here */
};

struct lines {
	struct leg *legs; /* run by run, as long as they go straight on */
	size_t leg_count, leg_capacity;
	struct stretches level, upright;
	struct divide *divides;
	size_t divide_count, divide_capacity;
};

static bool is_upright(const struct leg *leg)
{
	return leg->from.x == leg->to.x;
}

/* No leg lies over another, so none turns back. */
static bool goes_on_to(const struct leg *leg, struct place next)
{
	return is_upright(leg) == (next.x == leg->to.x);
}

static void add_run(struct lines *lines, const struct fence_run *run)
{
	for (int i = 1; i < run->count; i++) {
		struct place from = run->points[i - 1], to = run->points[i];

		if (i > 1 && goes_on_to(&lines->legs[lines->leg_count - 1], to)) {
			lines->legs[lines->leg_count - 1].to = to;
			continue;
		}
		lines->legs = memory_grow(lines->legs, lines->leg_count, &lines->leg_capacity,
			sizeof *lines->legs);
		lines->legs[lines->leg_count++] = (struct leg){ from, to };
	}
}

static struct stretch stretch_of(const struct leg *leg)
{
	bool upright = is_upright(leg);
	int a = upright ? leg->from.y : leg->from.x, b = upright ? leg->to.y : leg->to.x;

	return (struct stretch){ .line = upright ? leg->from.x : leg->from.y,
		.low = a < b ? a : b, .high = a < b ? b : a };
}

static int compare_stretches(const void *a, const void *b)
{
	const struct stretch *one = a, *other = b;
	int order = compare(one->line, other->line);

	return order ? order : compare(one->low, other->low);
}

static struct stretches collect(const struct lines *lines, bool upright)
{
	struct stretches all = { memory_new(lines->leg_count, sizeof *all.list), 0 };

	for (size_t i = 0; i < lines->leg_count; i++) {
		if (is_upright(&lines->legs[i]) != upright)
			continue;
		all.list[all.count] = stretch_of(&lines->legs[i]);
		all.list[all.count++].leg = (int)i;
	}
	if (all.count > 1)
		qsort(all.list, (size_t)all.count, sizeof *all.list, compare_stretches);
	return all;
}

/* The stretch on the line that holds the point `at`; of two that meet there the one that begins
 * there. NULL where there is none. */
static const struct stretch *find(const struct stretches *all, int line, int at)
{
	const struct stretch wanted = { .line = line, .low = at };
	int low = 0, high = all->count;

	while (low < high) {
		int middle = low + (high - low) / 2;

		if (compare_stretches(&all->list[middle], &wanted) <= 0)
			low = middle + 1;
		else
			high = middle;
	}
	if (low == 0 || all->list[low - 1].line != line || all->list[low - 1].high < at)
		return NULL;
	return &all->list[low - 1];
}

/* at: along the line that the leg lies on. */
static void divide(struct lines *lines, int leg, int at, int gate)
{
	const struct leg *whole = &lines->legs[leg];
	int start = is_upright(whole) ? whole->from.y : whole->from.x;

	lines->divides = memory_grow(lines->divides, lines->divide_count, &lines->divide_capacity,
		sizeof *lines->divides);
	lines->divides[lines->divide_count++] = (struct divide){ leg, abs(at - start), gate };
}

/* Tees and crossings. Where two legs of one direction meet, both end. */
static void divide_by_runs(struct lines *lines)
{
	for (int i = 0; i < lines->upright.count; i++) {
		const struct stretch *upright = &lines->upright.list[i];

		for (int y = upright->low; y <= upright->high; y++) {
			const struct stretch *level = find(&lines->level, y, upright->line);

			if (!level)
				continue;
			divide(lines, level->leg, upright->line, 0);
			divide(lines, upright->leg, y, 0);
		}
	}
}

static void divide_by_gate(struct lines *lines, const struct leg *gate)
{
	struct stretch part = stretch_of(gate);
	const struct stretch *whole = find(is_upright(gate) ? &lines->upright : &lines->level,
		part.line, part.low);
	bool is_along;

	assert(whole && part.high <= whole->high);
	is_along = is_upright(gate) ? lines->legs[whole->leg].from.y == whole->low :
		lines->legs[whole->leg].from.x == whole->low;
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

	for (size_t i = 1; i < lines->divide_count; i++) {
		const struct divide *a = &lines->divides[i - 1], *b = &lines->divides[i];
		const struct leg *leg = &lines->legs[a->leg];

		gates += a->gate;
		if (a->leg == b->leg && a->at < b->at)
			spans[count++] = (struct fence_span){
				{ along(leg, a->at), along(leg, b->at) }, gates > 0 };
	}
	return count;
}

static void divide_all(struct lines *lines, const struct fence *fence)
{
	for (size_t i = 0; i < lines->leg_count; i++) {
		struct stretch whole = stretch_of(&lines->legs[i]);

		divide(lines, (int)i, whole.low, 0);
		divide(lines, (int)i, whole.high, 0);
	}
	divide_by_runs(lines);
	for (size_t i = 0; i < fence->gates.count; i++)
		divide_by_gate(lines, &fence->gates.items[i]);
	if (lines->divide_count > 1)
		qsort(lines->divides, lines->divide_count, sizeof *lines->divides, compare_divides);
}

const struct fence_span *fence_spans(struct arena *arena, const struct fence *fence, int *count)
{
	struct lines lines = { .legs = NULL };
	struct fence_span *spans;

	for (size_t i = 0; i < fence->run_count; i++)
		add_run(&lines, &fence->runs[i]);
	lines.level = collect(&lines, false);
	lines.upright = collect(&lines, true);
	divide_all(&lines, fence);
	spans = arena_new(arena, lines.divide_count, sizeof *spans);
	*count = add_spans(&lines, spans);
	free(lines.legs);
	free(lines.level.list);
	free(lines.upright.list);
	free(lines.divides);
	return spans;
}
