#include "support/fencing.h"
#include "support/plots.h"
#include "base/memory.h"

#include <assert.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

void fences_ground(struct plot *plot, int columns, int rows)
{
	plot_init(plot);
	plot_set(plot, 0, HEAD_UNITS, "imperial");
	plot_set(plot, 0, HEAD_CELL, "1 ft");
	ground_init(&plot->ground, columns, rows);
}

static struct fence *last_fence(struct plot *plot)
{
	struct details *details = &plot->details;

	return details->fence_count ? &details->fences[details->fence_count - 1] :
		details_add_fence(details, memory_string("Pickets"));
}

/* Reads "X,Y" and the blank behind it; NULL at the end. */
static const char *next_point(const char *points, struct place *point)
{
	int taken = 0;

	if (sscanf(points, "%d,%d %n", &point->x, &point->y, &taken) != 2)
		return NULL;
	return points + taken;
}

void fences_run(struct plot *plot, const char *points)
{
	struct route *run = fence_add_run(last_fence(plot));
	struct place point;

	while ((points = next_point(points, &point)))
		route_add(run, point);
	assert(run->count >= ROUTE_POINTS_LEAST);
}

void fences_gate(struct plot *plot, const char *ends)
{
	struct leg gate;

	ends = next_point(ends, &gate.from);
	ends = ends ? next_point(ends, &gate.to) : NULL;
	assert(ends);
	legs_add(&last_fence(plot)->gates, gate);
}

void fences_set(struct plot *plot, enum attribute attribute, const char *value)
{
	struct scan s = scan_start(value, strlen(value), 1);
	struct value read;
	struct diag d;
	bool done = value_scan(&s, &attribute_row(attribute)->rule, UNITS_IMPERIAL, &read, &d);

	assert(done && scan_is_done(&s));
	(void)done;
	block_set(&last_fence(plot)->block, attribute, read);
}

/* ---- At random ------------------------------------------------------------------------------- */

enum { RUNS_MOST = 5, LEGS_MOST = 8, LEG_MOST = 9 };

/* Which sides of cells have a fence: [0] from a point to the right, [1] down. */
struct taken {
	int columns, rows;
	bool *sides[2];
};

static bool *side_of(const struct taken *taken, struct place at, bool upright)
{
	return &taken->sides[upright][at.y * (taken->columns + 1) + at.x];
}

/* Goes from a point as far as nothing is in the way, `most` sides at most; marks them. */
static struct place go(const struct taken *taken, struct place at, struct place way, int most)
{
	for (int i = 0; i < most; i++) {
		struct place next = { at.x + way.x, at.y + way.y };
		struct place first = way.x + way.y > 0 ? at : next;
		bool *side;

		if (next.x < 0 || next.y < 0 || next.x > taken->columns || next.y > taken->rows)
			break;
		side = side_of(taken, first, way.y != 0);
		if (*side)
			break;
		*side = true;
		at = next;
	}
	return at;
}

static void wander(struct fence *fence, const struct taken *taken, struct random *random)
{
	static const struct place ways[] = { { 1, 0 }, { 0, 1 }, { -1, 0 }, { 0, -1 } };
	struct place at = { random_between(random, 0, taken->columns),
		random_between(random, 0, taken->rows) };
	struct place points[LEGS_MOST + 1] = { at };
	int count = 1, legs = random_between(random, 1, LEGS_MOST);

	for (int i = 0; i < legs; i++) {
		at = go(taken, at, ways[random_below(random, 4)],
			random_between(random, 1, LEG_MOST));
		if (at.x != points[count - 1].x || at.y != points[count - 1].y)
			points[count++] = at;
	}
	if (count < ROUTE_POINTS_LEAST)
		return;
	struct route *run = fence_add_run(fence);

	for (int i = 0; i < count; i++)
		route_add(run, points[i]);
}

static struct place between(struct place from, struct place to, int at)
{
	int length = abs(to.x - from.x) + abs(to.y - from.y);

	return (struct place){ from.x + (to.x - from.x) / length * at,
		from.y + (to.y - from.y) / length * at };
}

/* At most one gate to a leg, so that none overlap. */
static void open_gates(struct fence *fence, struct random *random)
{
	for (size_t i = 0; i < fence->run_count; i++) {
		const struct route *run = &fence->runs[i];

		for (int j = 1; j < run->count; j++) {
			struct place from = run->points[j - 1], to = run->points[j];
			int length = abs(to.x - from.x) + abs(to.y - from.y);
			int start = random_below(random, length);
			int end = random_between(random, start + 1, length);
			bool turned = random_below(random, 2);

			if (random_below(random, 4) == 0)
				legs_add(&fence->gates, (struct leg){
					between(from, to, turned ? end : start),
					between(from, to, turned ? start : end) });
		}
	}
}

void fences_at_random(struct plot *plot, struct random *random)
{
	struct taken taken = { plot->ground.columns, plot->ground.rows, { NULL, NULL } };
	size_t points = (size_t)(taken.columns + 1) * (size_t)(taken.rows + 1);
	struct fence *fence = details_add_fence(&plot->details, memory_string("Pickets"));
	int runs = random_between(random, 1, RUNS_MOST);

	for (int i = 0; i < 2; i++)
		taken.sides[i] = memory_new(points, sizeof(bool));
	while (fence->run_count == 0)
		for (int i = 0; i < runs; i++)
			wander(fence, &taken, random);
	for (int i = 0; i < 2; i++)
		free(taken.sides[i]);
	open_gates(fence, random);
}
