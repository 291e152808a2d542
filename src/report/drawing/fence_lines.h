/* Fences on a plan that is drawn: `=` and `#` along their legs, gaps for gates, `o` for posts. What
 * they are called is as in the fence part: posts "7", gates "G1"; of the second fence "2.7",
 * "G2.1". */
#ifndef REPORT_DRAWING_FENCE_LINES_H
#define REPORT_DRAWING_FENCE_LINES_H

#include "base/memory.h"
#include "report/drawing/points.h"
#include "takeoff/fence/fences.h"

enum { FENCE_NAME_MOST = 32 };

/* Of the post or gate with this index (from 0) of the fence with that index. */
void fence_gate_name(int fence, int gate, char name[FENCE_NAME_MOST]);
void fence_post_name(int fence, int post, char name[FENCE_NAME_MOST]);

/* A gate that has no room for its name. */
struct nameless_gate {
	int fence, gate;
};

struct fence_lines {
	const struct nameless_gate *nameless;
	size_t nameless_count, nameless_capacity;
};

/* Draws legs, gates and posts over the lines of the ground, and names gates. A post that is moved
 * in from the plan's boundary stays on the line of its fence. In the arena; it can be stopped. */
void fence_lines_draw(struct fence_lines *out, struct points *points, const struct plot *plot,
	const struct fences *fences, struct arena *arena);
/* Numbers the posts that have room beside them. It can be stopped. */
void fence_lines_number(struct points *points, const struct plot *plot,
	const struct fences *fences);

#endif
