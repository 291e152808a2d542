/* What all that asks whether one can get about goes by. */
#ifndef TAKEOFF_WALKS_WALKING_H
#define TAKEOFF_WALKS_WALKING_H

#include "survey/fence_map.h"
#include "survey/house_map.h"

struct walking {
	const struct fence_map *fences;
	const struct house_map *houses; /* with a margin of a cell or more */
	const unsigned char *way;       /* cells one can walk to from outside (survey/way.h) */
};

#endif
