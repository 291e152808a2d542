/* Liner that keeps soil off the inner face of raised walls.
 *
 * Area = inner perimeter x (soil depth + the edge turned under at the bottom). */
#ifndef TAKEOFF_GROUND_LINER_H
#define TAKEOFF_GROUND_LINER_H

#include "takeoff/ground/fill.h"

/* The liner of one raised bed. */
struct liner {
	int region;
	nm length; /* along the wall's inner face, holes included */
	nm height; /* as cut */
	double area; /* m2 */
};

struct liners {
	const struct liner *list; /* in region order */
	int count;
};

extern const struct figure_table liner_table;

/* No row for beds without liner, without soil or with a wall that is not laid out. */
void liner_compute(struct liners *out, const struct basis *basis, const struct walls *walls,
	const struct fills *fills);
/* Adds liner. */
void liner_items(struct item_list *items, const struct liners *liners);

#endif
