/* The outline of a region: loop 0 is the outer one, then its holes in reading order of their
 * topmost, then leftmost, corner. Side 0 of a loop leaves that corner with the region on the
 * right hand (outer: along the top to the right; hole: down its left edge). Where two of
 * its cells meet only at a point, the outline turns there twice, once at each cell, and does not
 * cross itself. */
#ifndef SURVEY_OUTLINE_H
#define SURVEY_OUTLINE_H

#include "survey/cover.h"
#include "survey/survey.h"

/* A corner of a loop, a grid point. Side i runs from corner i to corner i+1 (the last to corner
 * 0). */
struct corner {
	int x, y;
	bool reflex; /* the region fills three quarters around it */
};

struct loop {
	const struct corner *corners;
	int count;         /* even, at least 4 */
	int64_t perimeter; /* sides of cells */
};

struct outline {
	const struct loop *loops;
	int count;
};

/* Traces the region's outline into the arena. */
void outline_trace(struct outline *out, struct arena *arena, const struct plot *plot,
	const struct survey *survey, int region);
/* Sides of cells from corner `side` to the next. */
int64_t outline_side(const struct loop *loop, int side);

/* A strip along a side. */
struct outline_strip {
	nm past;  /* how far it runs past the side's last corner */
	nm depth; /* to the right hand, where the region is; negative: outwards */
};
/* The strip as a box, of no owner. */
struct cover_box outline_strip_box(const struct survey *survey, const struct loop *loop, int side,
	const struct outline_strip *strip);

/* True where the region is everywhere at least `side` cells wide: where squares of that side, all
 * inside it, cover it. *narrow is the first cell that is
 * not covered. */
bool outline_is_wide(const struct survey *survey, int region, int side, struct place *narrow);

#endif
