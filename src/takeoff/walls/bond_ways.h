/* The layouts that are tried for a course of a side, in their order. */
#ifndef TAKEOFF_WALLS_BOND_WAYS_H
#define TAKEOFF_WALLS_BOND_WAYS_H

#include "takeoff/walls/bond_layout.h"

/* A layout and what of its faults the run alone tells. */
struct way {
	struct bond_layout layout;
	int64_t close; /* joints too close to the other course's ends, or to the course below */
	nm short_by;   /* of its corner pieces */
	bool is_weak;  /* one is less than enough */
	int cut_heads;
};

/* At most one of other and below; neither for a course by itself. */
struct ways {
	const struct bond_run *run;
	const struct bond_run *other;   /* of the course that it is laid with */
	const struct bond_below *below; /* the course that it is laid upon */
	const struct bond_rule *rule;
	struct way *list; /* to be freed */
	size_t count, capacity;
};

/* Adds the few that are tried first. */
void ways_add_candidates(struct ways *ways);
/* Adds first pieces from the shortest up with the rest at every place near an end: of these only
 * layouts without joints too close and, unless weak ones may be, without weak corner pieces. */
void ways_add_search(struct ways *ways, bool may_be_weak);

#endif
