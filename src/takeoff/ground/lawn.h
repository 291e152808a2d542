/* Lawns: turf or seed, and the topsoil under it. */
#ifndef TAKEOFF_GROUND_LAWN_H
#define TAKEOFF_GROUND_LAWN_H

#include "survey/survey.h"

struct takeoff;
struct items;

/* One lawn region that has a cover. */
struct lawn {
	int region;
	enum lawn_cover cover; /* COVER_TURF or COVER_SEED */
	double area;           /* m2 */
	double seed;           /* kg; 0 where turf is laid */
	nm topsoil_depth;
	double topsoil;        /* m3 = area x depth: settlement is not allowed for */
};

/* Fills lawns of *takeoff, whose survey is done, in region order. */
void lawn_compute(struct takeoff *takeoff, struct arena *arena);
/* Adds topsoil.lawn, turf (trimming spare) and seed. */
void lawn_items(struct items *items, const struct takeoff *takeoff);

#endif
