#include "plot/cell_set.h"
#include "base/memory.h"

#include <stdlib.h>

struct cell_set cell_set_of(const struct ground *size)
{
	return (struct cell_set){ size->columns, ground_count(size), NULL };
}

void cell_set_fini(struct cell_set *set)
{
	free(set->has);
	set->has = NULL;
}

static bool *cell_of(const struct cell_set *set, struct place at)
{
	return &set->has[(size_t)at.y * (size_t)set->columns + (size_t)at.x];
}

bool cell_set_add(struct cell_set *set, struct place at)
{
	bool *has;

	if (!set->has)
		set->has = memory_new(set->cells, sizeof *set->has);
	has = cell_of(set, at);
	if (*has)
		return false;
	*has = true;
	return true;
}

bool cell_set_take(struct cell_set *set, struct place at)
{
	bool had = set->has && *cell_of(set, at);

	if (had)
		*cell_of(set, at) = false;
	return had;
}
