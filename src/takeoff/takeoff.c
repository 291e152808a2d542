#include "takeoff/takeoff.h"

#include <stdlib.h>

const char *item_unit_word(enum item_unit unit)
{
	static const char *const words[] = {
		[UNIT_EACH] = "each", [UNIT_M] = "m", [UNIT_M2] = "m2", [UNIT_M3] = "m3",
		[UNIT_KG] = "kg",
	};

	return words[unit];
}

const char *section_word(enum section section)
{
	static const char *const words[] = {
		[SECTION_DIG] = "dig", [SECTION_STONE] = "stone", [SECTION_WALLS] = "walls",
		[SECTION_FILL] = "fill", [SECTION_LAWN] = "lawn", [SECTION_FENCE] = "fence",
	};

	return words[section];
}

static int wall_by_region(const void *region, const void *wall)
{
	return *(const int *)region - ((const struct wall *)wall)->region;
}

static int fill_by_region(const void *region, const void *fill)
{
	return *(const int *)region - ((const struct fill *)fill)->region;
}

const struct wall *takeoff_wall(const struct takeoff *takeoff, int region)
{
	if (takeoff->wall_count == 0)
		return NULL;
	return bsearch(&region, takeoff->walls, (size_t)takeoff->wall_count, sizeof *takeoff->walls,
		wall_by_region);
}

const struct fill *takeoff_fill(const struct takeoff *takeoff, int region)
{
	if (takeoff->fill_count == 0)
		return NULL;
	return bsearch(&region, takeoff->fills, (size_t)takeoff->fill_count, sizeof *takeoff->fills,
		fill_by_region);
}

bool takeoff_is_raised(const struct region *region)
{
	return region->entry->class == CLASS_BED &&
		block_number(&region->entry->block, BED_BUILD) == BUILD_RAISED;
}
