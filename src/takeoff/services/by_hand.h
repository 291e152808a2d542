/* What is dug by hand: whatever is worked near an existing service, or within something that is
 * kept. *
 * Near is nearer than allowed for to the line of a service (`service-near`), on all sides of it
 * and round its ends; of what is kept, within its circle or its rectangle. Ground is dug by hand by
 * whole cells, those of which some is near: so it is on the safe side and stands on the plan.
 * Holes and spikes are near by themselves, a hole by its edge; where the pins of fabric stand is
 * not known, so the ground is told that they hold it on. What is near several things is told of
 * each. */
#ifndef TAKEOFF_SERVICES_BY_HAND_H
#define TAKEOFF_SERVICES_BY_HAND_H

#include "takeoff/fence/fences.h"
#include "takeoff/services/worked.h"

/* What of some work lies on the cells that are dug by hand. */
struct hand_dig {
	enum hand_kind kind;     /* as in worked.h */
	int place;               /* index into those of worked.h */
	int region;              /* NO_REGION: a trench, or ground that is graded */
	const char *part, *words, *line; /* as in worked.h; line: in the plot */
	double area;             /* m2, over 0 */
	struct spot from, to;    /* around it: left and top, right and bottom */
	struct place first;      /* the first cell in reading order that has some of it */
};

struct hand_post {
	int fence;               /* of the takeoff's fences */
	int64_t number;          /* along it, from 1 */
	const char *name;        /* of the fence */
	struct spot at;
};

struct hand_plant {
	int kind;                /* in the plot's order of plants */
	int region;              /* NO_REGION: on open ground */
	char letter;
	const char *name;
	struct spot at;
};

struct hand {
	double area;             /* m2 of all cells that are near */
	const struct hand_dig *digs; /* in the order of worked.h */
	int dig_count;
	const struct hand_post *posts; /* whose holes are near; fence by fence */
	int post_count;
	const struct hand_plant *plants; /* whose holes are near; by region, then kind */
	int plant_count;
	int64_t spikes;          /* of edging; they stand evenly along each straight run */
	double fabric;           /* m2 under which fabric is pinned */
};

/* What the works around have in common. */
struct hand_ground {
	const struct basis *basis;
	const struct worked *worked;
	const struct fences *fences;
	const struct legs *edging; /* its straight runs */
	const struct plant_holes *holes;
	int holes_count;
};

/* Of one service or thing that is kept, described by `things`; in the basis' arena. cells: none in
 * them; they have those that are near afterwards. It can be stopped. */
struct hand hand_find(const struct hand_ground *ground, struct near_cells *cells,
	const struct near_thing *things, size_t count);

extern const struct figure_table by_hand_table;

#endif
