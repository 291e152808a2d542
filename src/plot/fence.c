#include "plot/fence.h"
#include "base/memory.h"

#include <stdlib.h>
#include <string.h>

void fence_fini(struct fence *fence)
{
	free(fence->name);
	block_fini(&fence->block);
	for (size_t i = 0; i < fence->run_count; i++)
		route_fini(&fence->runs[i]);
	free(fence->runs);
	legs_fini(&fence->gates);
	*fence = (struct fence){ .block.kind = BLOCK_FENCE };
}

struct fence fence_copy(const struct fence *fence)
{
	struct fence copy = { .name = memory_string(fence->name),
		.block = block_copy(&fence->block) };

	for (size_t i = 0; i < fence->run_count; i++)
		*fence_add_run(&copy) = route_copy(&fence->runs[i]);
	legs_add_all(&copy.gates, &fence->gates);
	return copy;
}

bool fence_equal(const struct fence *a, const struct fence *b)
{
	if (strcmp(a->name, b->name) != 0 || !block_equal(&a->block, &b->block) ||
		a->run_count != b->run_count || !legs_equal(&a->gates, &b->gates))
		return false;
	for (size_t i = 0; i < a->run_count; i++)
		if (!route_equal(&a->runs[i], &b->runs[i]))
			return false;
	return true;
}

struct route *fence_add_run(struct fence *fence)
{
	fence->runs = memory_grow(fence->runs, fence->run_count, &fence->run_capacity,
		sizeof *fence->runs);
	fence->runs[fence->run_count] = (struct route){ .count = 0 };
	return &fence->runs[fence->run_count++];
}

void fence_legs(const struct fence *fence, struct legs *out)
{
	for (size_t i = 0; i < fence->run_count; i++)
		route_legs(&fence->runs[i], out);
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
