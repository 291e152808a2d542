/* Lawns: turf or seed, and the topsoil under it. */
#ifndef TAKEOFF_GROUND_LAWN_H
#define TAKEOFF_GROUND_LAWN_H

#include "takeoff/common/basis.h"
#include "takeoff/common/figure.h"
#include "takeoff/common/items.h"

/* One lawn region that has a cover. */
struct lawn {
	int region;
	enum lawn_cover cover; /* COVER_TURF or COVER_SEED */
	double area;           /* m2 */
	double seed;           /* kg; 0 where turf is laid */
	nm topsoil_depth;
	double topsoil;        /* m3 = area x depth, without settlement */
};

struct lawns {
	const struct lawn *list; /* in region order */
	int count;
};

extern const struct figure_table lawn_table;

/* How much more turf than lawn, m2 in all, millionths of a percent: as allowed for, else 5 %, 10 %
 * under 500 sq ft. */
int64_t lawn_turf_spare(const struct block *allow, double area);
void lawn_compute(struct lawns *out, const struct basis *basis);
/* Adds topsoil.lawn, turf (trimming spare) and seed. */
void lawn_items(struct item_list *items, const struct lawns *lawns);

#endif
