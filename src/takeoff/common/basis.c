#include "takeoff/common/basis.h"

bool region_is_raised(const struct region *region)
{
	return region->entry->class == CLASS_BED &&
		block_number(&region->entry->block, BED_BUILD) == BUILD_RAISED;
}
