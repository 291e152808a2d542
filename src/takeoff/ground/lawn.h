/* Lawns: turf or seed, and the topsoil under it.
 *
 * Topsoil in place = area x depth; over a wall's base only what there is room for (over_base.h).
 * The order is with what settles, which is common practice, no published source. */
#ifndef TAKEOFF_GROUND_LAWN_H
#define TAKEOFF_GROUND_LAWN_H

#include "takeoff/ground/over_base.h"

/* One lawn region that has a cover. */
struct lawn {
	int region;
	enum lawn_cover cover; /* COVER_TURF or COVER_SEED */
	double area;           /* m2 */
	double seed;           /* kg; 0 where turf is laid */
	nm topsoil_depth;
	double topsoil;        /* m3 in place */
	double order;          /* m3 with settlement */
	double reused, buy;    /* of it: dug on the plot; bought */
};

struct lawns {
	struct lawn *list; /* in region order */
	int count;
	int64_t settlement; /* of topsoil, millionths of a percent */
};

extern const struct figure_table lawn_table;

/* How much more turf than lawn, m2 in all, millionths of a percent: as allowed for, else 5 %, 10 %
 * under 500 sq ft. 3 to 5 % for trimming: Maryland Turfgrass Council, title and year not noted;
 * more of small lawns is common practice, no published source. */
int64_t lawn_turf_spare(const struct block *allow, double area);
/* Also adds the snag lawn-thin, where there is less room for soil over a base than is allowed
 * for. Nothing is reused before lawn_reuse. */
void lawn_compute(struct lawns *out, const struct basis *basis, const struct over_bases *over);
/* The topsoil that lawns take, m3, loose. */
double lawn_topsoil(const struct lawns *lawns);
/* Takes a share, 0 to 1, of it from what was dug. */
void lawn_reuse(struct lawns *lawns, double share);
/* Adds topsoil.lawn, turf (trimming spare) and seed. */
void lawn_items(struct item_list *items, const struct lawns *lawns);

#endif
