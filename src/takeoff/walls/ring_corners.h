/* Who goes through at the corners of a ring: for the lowest cost, or as a symmetry or the wall
 * below has it. And what its sides are by that. */
#ifndef TAKEOFF_WALLS_RING_CORNERS_H
#define TAKEOFF_WALLS_RING_CORNERS_H

#include "takeoff/walls/ring.h"

/* Corners of a plan, by run: the loops one after another. */
struct ring_corners {
	const struct ring_plan *plan;
	const int *first_runs; /* by loop; one past the last run at the end */
	const int *first_sides; /* by loop: from there on sides are laid, the rest as images */
	bool *through;         /* a side goes through at its first corner in course 1 */
};

/* The number of each loop's first run, and how many there are, in the arena. */
const int *ring_first_runs(struct arena *arena, const struct outline *outline);
/* A side with what goes through at its corners now. */
struct side ring_side(const struct ring_corners *corners, struct side_place place);
/* Its bond; NULL where it cannot be laid so. A wall's has its pieces if asked for, a cap's always
 * does. */
const struct bond *ring_bond(const struct ring_corners *corners, struct side_place place,
	const struct side *side, bool with_pieces);
/* True where the side, of a cap, has at both corners the other one through than the course below;
 * of a wall always. */
bool ring_is_swapped(const struct ring_corners *corners, struct side_place place);
/* Faults, then cut pieces. */
int64_t ring_side_cost(const struct ring_corners *corners, struct side_place place,
	const struct bond *bond);

/* Chooses for all loops; all in the arena. False where the symmetry leaves no choice that can be
 * laid. */
bool ring_choose(struct ring_corners *out, const struct ring_plan *plan);

#endif
