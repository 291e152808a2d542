#include "takeoff/walls/cutting.h"
#include "takeoff/common/packing.h"
#include "takeoff/walls/wall.h"

#include <stdlib.h>

/* What the walls need of one block, gathered before it is cut. */
struct need {
	enum block_use use;
	struct size block;
	int64_t whole, pieces;
	nm length;     /* of all runs */
	double weight; /* kg, as laid */
	struct batch *batches;
	size_t batch_count, batch_capacity;
};

struct needs {
	struct need *list;
	size_t count, capacity;
};

static struct need *need_of(struct needs *needs, enum block_use use, const struct size *block)
{
	for (size_t i = 0; i < needs->count; i++)
		if (needs->list[i].use == use && size_equal(&needs->list[i].block, block))
			return &needs->list[i];
	needs->list = memory_grow(needs->list, needs->count, &needs->capacity, sizeof *needs->list);
	needs->list[needs->count] = (struct need){ .use = use, .block = *block };
	return &needs->list[needs->count++];
}

static void add_batch(struct need *need, nm place, int64_t count)
{
	need->batches = memory_grow(need->batches, need->batch_count, &need->batch_capacity,
		sizeof *need->batches);
	need->batches[need->batch_count++] = (struct batch){ place, count };
}

static void add_course(struct need *need, const struct wall_course *course, int64_t times,
	double density)
{
	need->whole += times * course->whole;
	need->pieces += times * course->cut;
	need->length += times * course->length;
	need->weight += density * wall_volume(times * course->length, &need->block);
	if (course->cut == 0 || times == 0)
		return;
	for (int i = 0; i < course->run_count; i++) {
		const struct wall_run *run = &course->runs[i];

		for (int j = 0; j < run->piece_count; j++)
			if (run->pieces[j] < need->block.along)
				add_batch(need, run->pieces[j], times);
	}
}

static void gather(struct needs *needs, const struct takeoff *takeoff)
{
	for (int i = 0; i < takeoff->wall_count; i++) {
		const struct wall *wall = &takeoff->walls[i];
		struct need *need = need_of(needs, USE_WALL, &wall->block);
		double density = wall_density(wall->bed);

		add_course(need, &wall->odd, (wall->courses + 1) / 2, density);
		add_course(need, &wall->even, wall->courses / 2, density);
	}
	for (int i = 0; i < takeoff->wall_count; i++) {
		const struct wall *wall = &takeoff->walls[i];

		if (wall->has_cap)
			add_course(need_of(needs, USE_CAP, &wall->cap_block), &wall->cap, 1,
				wall_density(wall->bed));
	}
}

/* The fewest blocks that the runs could be laid of, cut pieces as short as they may be. */
static int64_t floor_of(const struct need *need, nm fit)
{
	nm least = need->length - need->pieces * fit;

	return least > 0 ? (least + need->block.along - 1) / need->block.along : 0;
}

static struct cutting cut_need(struct arena *arena, const struct need *need,
	const struct block *allow)
{
	struct cutting cutting = { .use = need->use, .block = need->block, .whole = need->whole,
		.kerf = block_length(allow, ALLOW_KERF), .fit = block_length(allow, ALLOW_FIT) };
	struct saw saw = { need->block.along, cutting.kerf, cutting.fit };
	int64_t hundred = 100 * MILLION;

	cutting.cuts = packing_cut(arena, &saw, need->batches, need->batch_count,
		&cutting.cut_count);
	for (int i = 0; i < cutting.cut_count; i++)
		cutting.cut_blocks += cutting.cuts[i].blocks;
	cutting.bought = cutting.whole + cutting.cut_blocks;
	cutting.floor = floor_of(need, cutting.fit);
	cutting.breakage = (cutting.bought * block_number(allow, ALLOW_BREAKAGE) + hundred - 1) /
		hundred;
	/* Beds may differ in density: each counts by the length laid in it. */
	cutting.weight = need->weight * (double)cutting.bought * (double)need->block.along /
		(double)need->length;
	return cutting;
}

void cutting_plan(struct takeoff *takeoff, struct arena *arena)
{
	struct needs needs = { NULL, 0, 0 };
	struct cutting *cuttings;

	gather(&needs, takeoff);
	cuttings = arena_new(arena, needs.count, sizeof *cuttings);
	for (size_t i = 0; i < needs.count; i++) {
		cuttings[i] = cut_need(arena, &needs.list[i], takeoff->allow);
		free(needs.list[i].batches);
	}
	takeoff->cuttings = cuttings;
	takeoff->cutting_count = (int)needs.count;
	free(needs.list);
}
