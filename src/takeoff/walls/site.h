/* A bed whose wall is to be laid: whether it fits, and snags where it does not. */
#ifndef TAKEOFF_WALLS_SITE_H
#define TAKEOFF_WALLS_SITE_H

#include "takeoff/walls/room.h"
#include "takeoff/walls/wall.h"

/* What walling the beds of a plot one by one needs. */
struct job {
	const struct basis *basis;
	struct walls *walls;
	struct side_book *book;
	nm inside; /* least ground between walls, as allowed for */
	int64_t beads;
};

/* One bed. */
struct site {
	const struct job *job;
	struct room room;
	const struct block *bed;
};

/* True where a wall of this masonry fits along the bed; else adds wall-jog and wall-narrow. */
bool site_takes_wall(const struct site *site, const struct masonry *masonry);
/* True where a cap of this masonry fits; else adds cap-narrow. */
bool site_takes_cap(const struct site *site, const struct masonry *masonry);
/* Adds wall-bond, of a cap cap-bond, and wall-corner for the sides of a ring with such faults. */
void site_check_ring(const struct site *site, const struct ring *ring,
	const struct masonry *masonry, bool is_cap);
/* Adds bed-thin where the ground between walls of that depth is less than allowed for. */
void site_check_inside(const struct site *site, nm depth);

#endif
