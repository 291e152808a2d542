/* The holes of all posts, for whoever asks which of them some ground meets. */
#ifndef TAKEOFF_FENCE_POST_HOLES_H
#define TAKEOFF_FENCE_POST_HOLES_H

#include "survey/near.h"
#include "takeoff/fence/fences.h"

enum { HOLE_UNMARKED = -1 };

struct post_hole_at {
	struct spot at;
	nm across;
	int fence;    /* of the plot */
	int post;     /* along it, from 0 */
	int mark;     /* of whoever asks; HOLE_UNMARKED to begin with */
	int64_t band; /* of the plan, from top to bottom, each as high as the widest hole, or a
	                 cell where that is more */
};

/* By band, each from left to right. */
struct post_holes {
	struct post_hole_at *list; /* owned: free */
	size_t count;
	nm widest; /* at least a cell */
};

struct post_holes post_holes_of(const struct fences *fences, const struct plot *plot);
/* Calls back for each hole that overlaps the box with more than its edge. Time: O(log holes) for
 * each band the box meets, and that of the holes near it. It can be stopped. */
void post_holes_meeting(const struct post_holes *holes, const struct cover_box *box,
	void (*meet)(void *data, struct post_hole_at *hole), void *data);
/* Puts a snag at the cells that the middle of a hole touches. */
void post_hole_put(struct snag *snag, const struct survey *survey,
	const struct post_hole_at *hole);

#endif
