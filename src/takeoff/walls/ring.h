/* A ring of blocks along all loops of a bed's outline: its runs in courses 1 and 2. Serves
 * walls and, as a single course, caps. */
#ifndef TAKEOFF_WALLS_RING_H
#define TAKEOFF_WALLS_RING_H

#include "survey/outline.h"
#include "takeoff/common/figure.h"
#include "takeoff/walls/side.h"

/* One straight piece of one course, along one side of a bed's outline. */
struct wall_run {
	int loop, side;   /* of the outline */
	nm from;          /* its start along the side's outer face, from the side's first corner:
	                     0 or the wall's depth w at a convex corner, -w or 0 at a reflex one */
	nm length;
	const nm *pieces; /* places, in order along the side; they add up to length */
	int piece_count;
};

struct wall_course {
	const struct wall_run *runs; /* loop by loop, side by side: one each */
	int run_count;
	int64_t whole, cut; /* blocks in one such course */
	nm length;          /* of all runs */
};

extern const struct figure_table wall_course_table;

/* A side of an outline. */
struct side_place {
	int loop, side;
};

struct ring {
	struct wall_course odd, even; /* even: empty where there is one course */
	const struct side_place *unbonded; /* sides whose courses do not bond */
	int unbonded_count;
};

/* Lays the ring into the arena so that the fewest pieces are cut over the courses really laid;
 * a side that does not bond counts for more than any cuts. Every side must be depth + shortest
 * or longer: then some choice of corners can always be laid. cell: side of the outline's cells. */
void ring_lay(struct ring *out, struct arena *arena, struct side_book *book,
	const struct outline *outline, nm cell, const struct masonry *masonry);

#endif
