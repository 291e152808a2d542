#include "plot/fence.h"
#include "base/memory.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

void fence_fini(struct fence *fence)
{
	free(fence->name);
	block_fini(&fence->block);
	for (size_t i = 0; i < fence->run_count; i++)
		free(fence->runs[i].points);
	free(fence->runs);
	legs_fini(&fence->gates);
	*fence = (struct fence){ .block.kind = BLOCK_FENCE };
}

struct fence fence_copy(const struct fence *fence)
{
	struct fence copy = { .name = memory_string(fence->name),
		.block = block_copy(&fence->block) };

	for (size_t i = 0; i < fence->run_count; i++) {
		struct fence_run *run = fence_add_run(&copy);

		for (int j = 0; j < fence->runs[i].count; j++)
			fence_run_add(run, fence->runs[i].points[j]);
	}
	legs_add_all(&copy.gates, &fence->gates);
	return copy;
}

bool fence_equal(const struct fence *a, const struct fence *b)
{
	if (strcmp(a->name, b->name) != 0 || !block_equal(&a->block, &b->block) ||
		a->run_count != b->run_count || !legs_equal(&a->gates, &b->gates))
		return false;
	for (size_t i = 0; i < a->run_count; i++)
		if (a->runs[i].count != b->runs[i].count ||
			memcmp(a->runs[i].points, b->runs[i].points,
				(size_t)a->runs[i].count * sizeof(struct place)) != 0)
			return false;
	return true;
}

struct fence_run *fence_add_run(struct fence *fence)
{
	fence->runs = memory_grow(fence->runs, fence->run_count, &fence->run_capacity,
		sizeof *fence->runs);
	fence->runs[fence->run_count] = (struct fence_run){ .count = 0 };
	return &fence->runs[fence->run_count++];
}

void fence_run_add(struct fence_run *run, struct place point)
{
	assert(run->count < FENCE_POINTS_MOST);
	run->points = memory_grow(run->points, (size_t)run->count, &run->capacity,
		sizeof *run->points);
	run->points[run->count++] = point;
}

void fence_legs(const struct fence *fence, struct legs *out)
{
	for (size_t i = 0; i < fence->run_count; i++)
		for (int j = 1; j < fence->runs[i].count; j++)
			legs_add(out, (struct leg){ fence->runs[i].points[j - 1],
				fence->runs[i].points[j] });
}

size_t fence_first_stray(const struct fence *fence)
{
	struct legs legs = LEGS_EMPTY;
	size_t i = 0;

	fence_legs(fence, &legs);
	legs_sort(&legs);
	while (i < fence->gates.count && legs_cover(&legs, fence->gates.items[i]))
		i++;
	legs_fini(&legs);
	return i;
}
