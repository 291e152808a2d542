/* What lies on the stone that reaches past raised walls.
 *
 * The ground over a wall's base is dug to its formation, so between the stone's top and finished
 * ground, as deep as that wall's embed, something goes back. (Here that is called the embed; where
 * walls stand level on ground that falls, it is from the base's top up to the finished ground in
 * the middle of each part of a row of cells.)
 *
 *	inside a bed              its soil (fill.h)
 *	lawn with a cover         turf, under it topsoil = min(topsoil, max(0, embed - turf)),
 *	                          under that backfill
 *	bed whose soil is replaced   that soil, as deep as it is replaced, under it backfill
 *	all other ground          backfill
 *
 * Ground under another bed's wall has that wall on it. */
#ifndef TAKEOFF_GROUND_OVER_BASE_H
#define TAKEOFF_GROUND_OVER_BASE_H

#include "takeoff/common/embed.h"
#include "takeoff/ground/zones.h"
#include "takeoff/walls/wall_levels.h"

struct over_base {
	int region;      /* NO_REGION: open ground */
	double area;     /* m2 on stone; of a raised bed, between its walls */
	double topsoil;  /* m3 in place, of a lawn's own */
	double backfill; /* m3 in place */
	nm least;        /* of a lawn: from the stone up to the turf, where that is least */
};

struct over_bases {
	const struct over_base *list; /* open ground first, then in region order; none without
	                                 area */
	int count;
	double backfill; /* m3 in place, of them all */
	double loosened; /* m2 within beds whose inside stays undug, where there is no stone */
};

/* What stands on the zones. */
struct over_ground {
	const struct walls *walls;
	const struct embeds *embeds;
	const struct wall_levels *levels; /* none: on level ground */
};
void over_bases_find(struct over_bases *out, const struct basis *basis, const struct zones *zones,
	const struct cover *cover, const struct over_ground *ground);
/* That of a region; all 0 where none of it lies on stone. */
struct over_base over_base_of(const struct over_bases *over, int region);

#endif
