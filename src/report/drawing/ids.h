/* What regions are called, on a plan that is drawn: B1, P2, with their own names where there is
 * room. */
#ifndef REPORT_DRAWING_IDS_H
#define REPORT_DRAWING_IDS_H

#include "base/memory.h"
#include "report/drawing/points.h"
#include "survey/survey.h"

/* How much of what a region is called stands on the plan: nothing for want of room, "B1", or
 * "B1 Sage"; without an own name the first two. */
enum named { NAMED_NOT, NAMED_ID, NAMED_ALL };

/* A text that has a point for each of its columns: POINT_NAME. */
struct drawn_name {
	int column, row;
	const char *text;
};

struct ids {
	const unsigned char *named;      /* enum named, by region */
	const struct drawn_name *names;  /* in reading order */
	size_t name_count;
};

/* Writes each id once, on what is free of its region, within one sheet, as near as can be to the
 * middle of the region's box. In the arena. One pass over the points; it can be stopped. */
void ids_write(struct ids *out, struct points *points, const struct survey *survey,
	struct arena *arena);

#endif
