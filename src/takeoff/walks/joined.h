/* What paths join to: adds path-cut-off and fixture-no-path. */
#ifndef TAKEOFF_WALKS_JOINED_H
#define TAKEOFF_WALKS_JOINED_H

#include "survey/fence_map.h"
#include "survey/house_map.h"
#include "takeoff/common/basis.h"

/* houses: with a margin of a cell or more. */
void joined_check(const struct basis *basis, const struct fence_map *fences,
	const struct house_map *houses);

#endif
