/* The header within a bed: from where it comes in along a side of the watered ground to that end of
 * the drip lines which is nearer, and there straight across all that have ground between them,
 * with a tee for each. What lies beyond a hole or a notch has a branch: it leaves as soon as the
 * ground is wide enough for it, goes along to the nearest place from where it meets the rest, and
 * across from there. So all of it lies in ground of the bed. Common practice, no published source.
 * It is led first to one side or to the other from where it comes in, whichever needs less tube.
 *
 * Where nobody knows where it comes in, that is taken to be the beginning of the first line. */
#ifndef TAKEOFF_WATERING_BED_HEADER_H
#define TAKEOFF_WATERING_BED_HEADER_H

#include "takeoff/common/spot.h"
#include "takeoff/watering/drip.h"

/* As slabs.h has it. */
struct bed_point {
	nm along, across;
};

struct header_branch {
	int from;            /* the branch that it leaves, one before it in the list; that of the
	                        first is -1: it begins where the header comes onto the ground */
	struct bed_point leaves; /* where it does: where that goes across, or along on this line */
	nm at;               /* along: how far it goes along; there it goes across */
	struct chord across; /* from where to where; with what leaves it there */
};

struct bed_header {
	struct bed_point comes_in;  /* on the bed's outline */
	const struct header_branch *branches;
	int count;                  /* 1 or more where the bed has lines */
	const int *of_lines;        /* by line: the branch that meets it */
};

/* comes_in: where on the bed's outline, taped as slabs.h has it; NULL: nobody knows. In the arena.
 * Time: O(chords of all slabs, times the logarithm of those of a slab). It can be stopped. */
void bed_header_find(struct bed_header *out, struct arena *arena, const struct drip *drip,
	const struct spot *comes_in);
/* Calls back for each straight stretch of it: from the outline onto the ground, then branch by
 * branch along and across. Some have no length. */
void bed_header_stretches(const struct bed_header *header, void (*each)(void *data,
	struct bed_point from, struct bed_point to), void *data);

/* A tube for so many of the lines one after the other. */
struct bed_tube {
	nm length; /* from where the header comes onto the ground */
	int tees;  /* one where each branch leaves another, one for each line and one more for those
	              that are met between their ends */
	int ends;  /* of lines, that nothing meets */
};
struct bed_tube bed_header_tube(const struct bed_header *header, const struct drip *drip, int first,
	int lines);

#endif
