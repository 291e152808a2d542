/* A ring of blocks along all loops of a bed's outline: its runs in courses 1 and 2. Serves
 * walls and, as a single course upon one, caps. */
#ifndef TAKEOFF_WALLS_RING_H
#define TAKEOFF_WALLS_RING_H

#include "takeoff/common/figure.h"
#include "takeoff/walls/side.h"
#include "takeoff/walls/symmetry.h"

/* One straight piece of one course, along one side of a bed's outline. */
struct wall_run {
	int loop, side;   /* of the outline */
	nm from;          /* its start along the side's outer face, from the side's first corner:
	                     0 or the wall's depth w at a convex corner, -w or 0 at a reflex one */
	nm length;
	const nm *pieces; /* places, in order along the side; they add up to length */
	int piece_count;
	int butts;        /* of its ends: it has as many joints less one as it has pieces */
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

/* A side that is not laid as it should be. */
struct ring_fault {
	struct side_place place;
	bool is_unbonded; /* joints too close to those below, or corners not swapped */
	nm corner;        /* the shortest piece that shows its head, if too short; else 0 */
};

struct ring {
	struct wall_course odd, even; /* even: empty where there is one course */
	const bool *through; /* by run: its side goes through at its first corner in course 1 */
	const struct ring_fault *faults; /* side by side */
	int fault_count;
	int64_t cost; /* faults, then cut pieces over the courses really laid */
};

/* What is laid, and where. */
struct ring_plan {
	struct arena *arena;
	struct side_book *book;
	const struct outline *outline;
	nm cell; /* side of the outline's cells */
	struct masonry masonry;
	/* NULL: free. Else the layout must be its own image in all these ways. */
	const struct symmetry *symmetry;
	/* NULL: a wall. Else a cap, one course, laid upon this ring of that masonry: its corners
	 * are those of the course that would follow. Where a side cannot be laid so, the loop has
	 * those with the fewest faults. */
	const struct ring *wall;
	struct masonry wall_masonry;
};

/* Lays the ring so that the fewest pieces are cut over the courses really laid; a side that does
 * not bond, or whose corner pieces are too short, counts for more than any cuts. Every side must
 * be depth + shortest or longer: then some choice of corners can always be laid. False, and
 * nothing laid, where there is a symmetry and no such layout. */
bool ring_lay(struct ring *out, const struct ring_plan *plan);

/* What was laid on an outline as its image lies on the plan's, its corners (through) left out. */
void ring_image(struct ring *out, const struct ring_plan *plan, const struct ring *ring,
	const struct outline *from, const struct image *image);

#endif
