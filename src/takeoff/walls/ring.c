#include "takeoff/walls/ring.h"
#include "base/stop.h"
#include "takeoff/walls/corners.h"

#include <assert.h>
#include <stdlib.h>

/* More than the cuts of any loop: 4 million sides of 40 courses with 3 cuts each are 5e8. */
#define COST_UNBONDED INT64_C(1000000000)

/* What laying a ring needs. */
struct laying {
	struct arena *arena;
	struct side_book *book;
	const struct outline *outline;
	nm cell;
	const struct masonry *masonry;
	struct wall_run *odd, *even; /* even: NULL where there is one course */
	struct side_place *unbonded;
	int unbonded_count;
	size_t unbonded_capacity;
};

static struct side side_of(const struct laying *laying, const struct loop *loop, int at)
{
	return (struct side){
		.length = outline_side(loop, at) * laying->cell,
		.first_reflex = loop->corners[at].reflex,
		.last_reflex = loop->corners[(at + 1) % loop->count].reflex,
	};
}

static int64_t side_cost(const struct laying *laying, const struct side *side)
{
	const struct masonry *masonry = laying->masonry;
	const struct bond *bond = side_bond(laying->book, side, masonry);
	int64_t odd = (masonry->courses + 1) / 2, even = masonry->courses / 2;

	if (!bond)
		return COST_EXCLUDED;
	return odd * bond->odd.cut + even * bond->even.cut + (bond->holds ? 0 : COST_UNBONDED);
}

static void choose_corners(const struct laying *laying, const struct loop *loop, bool *through)
{
	struct side_cost *costs = memory_new((size_t)loop->count, sizeof *costs);
	int64_t cost;

	for (int i = 0; i < loop->count && !stop_asked(); i++) {
		struct side side = side_of(laying, loop, i);

		for (int first = 0; first < 2; first++) {
			for (int last = 0; last < 2; last++) {
				side.first_through = first;
				side.last_through = last;
				costs[i].of[first][last] = side_cost(laying, &side);
			}
		}
	}
	cost = corners_choose(through, costs, loop->count);
	assert(cost != COST_EXCLUDED);
	(void)cost;
	free(costs);
}

/* Adds a side's run to a course. */
static void add_run(struct wall_course *course, struct wall_run *runs, struct side_place place,
	const struct bond_run *run, const struct bond_course *bond)
{
	runs[course->run_count++] = (struct wall_run){ place.loop, place.side, run->from,
		run->length, bond->pieces, bond->count };
	course->cut += bond->cut;
	course->whole += bond->count - bond->cut;
	course->length += run->length;
}

static void lay_side(struct ring *ring, struct laying *laying, struct side_place place,
	const struct side *side)
{
	nm depth = laying->masonry->depth;
	const struct bond *bond = side_lay(laying->book, side, laying->masonry);
	struct bond_run odd = side_run(side, depth, false), even = side_run(side, depth, true);

	add_run(&ring->odd, laying->odd, place, &odd, &bond->odd);
	if (laying->even)
		add_run(&ring->even, laying->even, place, &even, &bond->even);
	if (bond->holds)
		return;
	laying->unbonded = arena_grow(laying->arena, laying->unbonded,
		(size_t)laying->unbonded_count, &laying->unbonded_capacity,
		sizeof *laying->unbonded);
	laying->unbonded[laying->unbonded_count++] = place;
}

static void lay_loop(struct ring *ring, struct laying *laying, int at)
{
	const struct loop *loop = &laying->outline->loops[at];
	bool *through = memory_new((size_t)loop->count, sizeof *through);

	choose_corners(laying, loop, through);
	for (int i = 0; i < loop->count && !stop_asked(); i++) {
		struct side side = side_of(laying, loop, i);

		side.first_through = through[i];
		side.last_through = !through[(i + 1) % loop->count];
		lay_side(ring, laying, (struct side_place){ at, i }, &side);
	}
	free(through);
}

static struct wall_run *runs_for(struct arena *arena, const struct outline *outline)
{
	size_t sides = 0;

	for (int i = 0; i < outline->count; i++)
		sides += (size_t)outline->loops[i].count;
	return arena_new(arena, sides, sizeof(struct wall_run));
}

void ring_lay(struct ring *out, struct arena *arena, struct side_book *book,
	const struct outline *outline, nm cell, const struct masonry *masonry)
{
	struct laying laying = {
		.arena = arena, .book = book, .outline = outline, .cell = cell, .masonry = masonry,
		.odd = runs_for(arena, outline),
		.even = masonry->courses > 1 ? runs_for(arena, outline) : NULL,
	};

	*out = (struct ring){ .odd.runs = laying.odd, .even.runs = laying.even };
	for (int i = 0; i < outline->count; i++)
		lay_loop(out, &laying, i);
	out->unbonded = laying.unbonded;
	out->unbonded_count = laying.unbonded_count;
}

static const struct figure run_figures[] = {
	{ "loop", NULL, NULL, FIELD(COUNT, wall_run, loop) },
	{ "side", NULL, NULL, FIELD(COUNT, wall_run, side) },
	{ "from_m", NULL, NULL, FIELD(LENGTH, wall_run, from) },
	{ "length_m", NULL, NULL, FIELD(LENGTH, wall_run, length) },
	{ "pieces_m", NULL, NULL, FIELDS(LENGTHS, wall_run, pieces, piece_count) },
};
static const struct figure_table run_table = FIGURE_TABLE(wall_run, run_figures);

static const struct figure course_figures[] = {
	{ "runs", NULL, NULL, FIELDS(ROWS, wall_course, runs, run_count), .table = &run_table,
		.flags = JSON_SPACED },
};
const struct figure_table wall_course_table = FIGURE_TABLE(wall_course, course_figures);
