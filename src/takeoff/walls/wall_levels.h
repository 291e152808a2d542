/* How high the walls of raised beds stand, where the plot tells how its ground lies.
 *
 * Walls are level, ground falls. Heights are drops below the level string line, as what is read on
 * a staff held there (survey/surface.h), negative above it. For each wall that is laid out:
 *
 *	base's top  = lowest finished ground along the bed's outline, holes included, + embed
 *	formation   = base's top + base
 *	course 1    = base's top - a block's height
 *	wall's top  = base's top - courses x a block's height - the cap's, where one is laid
 *	exposed     = finished ground at a corner - wall's top; negative where ground stands over it
 *
 * So the whole embed is in the ground where that is lowest, and the wall stands deeper where it
 * rises: more is dug there, more goes back outside and less soil inside, as far as levels are
 * measured; blocks stay the same. Where the ground along it falls by a block's height or more the
 * wall has to step: snag wall-step. Common practice, no published source. */
#ifndef TAKEOFF_WALLS_WALL_LEVELS_H
#define TAKEOFF_WALLS_WALL_LEVELS_H

#include "takeoff/common/embed.h"
#include "takeoff/common/spot.h"
#include "takeoff/walls/wall.h"

/* A corner of a bed's outline. */
struct bed_corner {
	int region;
	struct place on; /* its grid point */
	struct spot at;
	nm ground;       /* finished, there */
	nm exposed;      /* wall above the ground, cap included */
};

struct wall_level {
	int region;
	nm highest, lowest; /* finished ground along the outline: highest <= lowest */
	nm formation;
	nm base, first;     /* the base's top; the top of course 1 */
	nm top;             /* of the wall, cap included */
	/* How much higher the finished ground lies within the bed than where it is lowest along
	 * the outline, on the mean of the middles of its cells; in a hollow under 0. */
	nm rise;
	const struct bed_corner *corners; /* loop by loop, in the outline's order */
	int corner_count;
};

struct wall_levels {
	const struct wall_level *list; /* in region order */
	int count;                     /* 0 where nothing is told of how the ground lies */
	const struct bed_corner *corners; /* of all, wall by wall */
	int corner_count;
};

extern const struct figure_table wall_level_table, bed_corner_table;

/* Adds the snag wall-step. */
void wall_levels_find(struct wall_levels *out, const struct basis *basis,
	const struct walls *walls, const struct embeds *embeds);
/* That of a region; NULL where it has none. */
const struct wall_level *wall_level_of(const struct wall_levels *levels, int region);

#endif
