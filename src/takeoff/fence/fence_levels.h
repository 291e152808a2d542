/* How fences stand where the plot tells how its ground lies.
 *
 * The panels of a leg hang level, and so do the leaves of a gate. Heights are drops below the level
 * string line, as what is read on a staff held there (survey/surface.h), negative above it:
 *
 *	panels' bottom = highest finished ground along the leg or gate - the fence's gap
 *	panels' top    = bottom - height
 *
 * and at each post on it, with the finished ground at its middle:
 *
 *	gap    = ground - bottom
 *	height = ground - top
 *
 * A post reaches the highest of the tops of all legs and gates that it is on. Gaps wider than
 * allow's fence-gap are to be filled up, or the panels to be stepped: posts that are long enough
 * for panels that hang level are so for panels that step. Common practice, no published source. */
#ifndef TAKEOFF_FENCE_FENCE_LEVELS_H
#define TAKEOFF_FENCE_FENCE_LEVELS_H

#include "survey/surface.h"
#include "takeoff/common/basis.h"
#include "takeoff/fence/fencing.h"

struct fence_level_post {
	int post; /* its number, from 1 */
	struct spot at;
	nm ground, gap, height;
};

enum fence_part { FENCE_PART_LEG, FENCE_PART_GATE };

/* A leg or a gate that has a length. */
struct fence_level {
	const char *fence;    /* its name */
	enum fence_part part;
	int number;           /* from 1 among the fence's legs, or among its gates */
	struct spot from, to;
	nm bottom, top;       /* of the panels */
	nm widest;            /* gap below them, to the lowest ground along it */
	bool is_wide;         /* to be filled, or stepped */
	const struct fence_level_post *posts; /* from its first to its last */
	int post_count;
};

/* Of fence after fence, each as legs and gates follow each other. Start with
 * fence_levels_begin. */
struct fence_levels {
	struct fence_level *list;
	int count; /* 0 where nothing is told of how the ground lies */
	size_t capacity;
	struct surface surface;
	nm widest_allowed;
};

void fence_levels_begin(struct fence_levels *levels, const struct basis *basis);
/* Adds those of a fence, notes which they are, and makes its posts, which are `posts`, as high as
 * they need be. */
void fence_levels_add(struct fence_levels *levels, struct fencing *fencing,
	struct fence_post *posts, struct arena *arena);

extern const struct word fence_part_words[];
extern const struct figure_table fence_level_table, fence_level_post_table;

#endif
