/* Holes of posts that would be dug through what was laid before: trenches are put back by then. */
#ifndef TAKEOFF_SERVICES_TRENCH_HOLES_H
#define TAKEOFF_SERVICES_TRENCH_HOLES_H

#include "takeoff/fence/post_holes.h"
#include "takeoff/services/worked.h"

/* Adds the snag trench-hole for each post and each line to lay whose trench its hole overlaps, and
 * for each whose hole overlaps the trench of the header; a hole may touch a trench's edge. Its last
 * figure is how far the post's middle and the line have to be apart for that: half the hole and
 * half the trench. It can be stopped. */
void trench_holes_warn(const struct basis *basis, const struct fences *fences,
	const struct work_ground *ground);

#endif
