#include "takeoff/planting/planting_holes.h"
#include "base/stop.h"

/* Root balls to a hole. */
enum { HOLE_OF_POT = 3 };

static bool is_planted_by_holes(const struct survey *survey, int number)
{
	const struct region *region = number == NO_REGION ? NULL : &survey->regions[number];

	if (!region || region->entry->class == CLASS_LAWN)
		return true;
	return region->entry->class == CLASS_BED && !region_is_raised(region) &&
		block_number(&region->entry->block, BED_REPLACE) != CHOICE_YES &&
		block_length(&region->entry->block, BED_PREPARE) == 0;
}

static struct plant_holes holes_of(const struct planting_row *row, const struct plant_sum *sum,
	struct arena *arena)
{
	struct spot *spots = arena_new(arena, (size_t)row->spot_count, sizeof *spots);

	for (int i = 0; i < row->spot_count && !stop_asked(); i++)
		spots[i] = row->spots[i].at;
	return (struct plant_holes){ row->kind, row->region, row->letter, row->name,
		sum->pot > 0 ? HOLE_OF_POT * sum->pot : sum->spacing, spots, row->spot_count };
}

const struct plant_holes *planting_holes(const struct planting *planting,
	const struct basis *basis, struct arena *arena, int *count)
{
	struct plant_holes *list = arena_new(arena, (size_t)planting->count, sizeof *list);

	*count = 0;
	for (int i = 0; i < planting->count && !stop_asked(); i++) {
		const struct planting_row *row = &planting->list[i];

		if (is_planted_by_holes(basis->survey, row->region))
			list[(*count)++] = holes_of(row, &planting->plants[row->kind], arena);
	}
	return list;
}
