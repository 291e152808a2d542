/* Liner that keeps soil off the inner face of raised walls.
 *
 * Area = inner perimeter x (soil depth + what is turned under at the bottom). */
#ifndef TAKEOFF_GROUND_LINER_H
#define TAKEOFF_GROUND_LINER_H

#include "survey/survey.h"

struct takeoff;
struct items;

/* The liner of one raised bed. */
struct liner {
	int region;
	nm length; /* along the wall's inner face, holes included */
	nm height; /* as cut */
	double area; /* m2 */
};

/* Fills liners of *takeoff, whose walls and fills are done, in region order. Beds without liner, without
 * soil or whose wall is not laid out have none. */
void liner_compute(struct takeoff *takeoff, struct arena *arena);
/* Adds liner. */
void liner_items(struct items *items, const struct takeoff *takeoff, const struct plot *plot);

#endif
