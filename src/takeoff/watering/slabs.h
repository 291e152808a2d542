/* The ground of a bed within its wall's inner face, cut into slabs in which nothing begins or ends.
 *
 * Along is the longer direction of the box around it, from left to right where both are as long;
 * across is square to it. All lengths are measured as one tapes them at the bed: from the upper
 * left corner of the box around its cells, to the right and down; along an upright bed that is
 * down the plan. */
#ifndef TAKEOFF_WATERING_SLABS_H
#define TAKEOFF_WATERING_SLABS_H

#include "survey/outline.h"
#include "takeoff/common/basis.h"

/* Along, from < to. */
struct chord {
	nm from, to;
};

/* What of it is nearest to a point along. */
nm chord_nearest(const struct chord *chord, nm along);

/* Across, from < to. */
struct slab {
	nm from, to;
	const struct chord *chords; /* in order; none touch */
	int count;                /* 1 or more */
};

struct slabs {
	bool is_upright;  /* along is down the plan */
	struct chord box;  /* along */
	nm near, far;     /* across, near < far */
	const struct slab *list; /* in order, each begins where the last one ends */
	int count;
};

/* The ground of a region that is `depth` or more from its outline, 0 or more; the walls must have
 * room. In the arena. Time: O(sides, times the logarithm of those that cross a slab, for each
 * slab). It can be stopped. */
void slabs_find(struct slabs *out, struct arena *arena, const struct basis *basis, int region,
	nm depth);
/* The chords along a line across at `at`; on the line between two slabs those of both, joined. In
 * the arena; *count of them. */
const struct chord *slabs_at(const struct slabs *slabs, struct arena *arena, nm at, int *count);
/* The number of the first slab that does not end before `at`; the last one where all do. */
int slab_at(const struct slabs *slabs, nm at);
/* The number of a slab's last chord that begins no later than that; 0 where none does. */
int slab_chord_before(const struct slab *slab, nm along);
/* The chord of a slab that holds all of this one; NULL: none does. */
const struct chord *slab_holding(const struct slab *slab, const struct chord *chord);

#endif
