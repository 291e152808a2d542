/* A plan as text: what stands on it, sheet by sheet. In ASCII, but for own names of regions. */
#ifndef REPORT_DRAWING_DRAWING_H
#define REPORT_DRAWING_DRAWING_H

#include "report/drawing/fence_lines.h"
#include "report/drawing/ids.h"
#include "takeoff/setout/setout.h"
#include "takeoff/takeoff.h"

struct drawing {
	struct points points;
	struct ids ids;
	struct fence_lines fences;
	int unnumbered; /* set-out points whose number has no room */
};

/* Draws all of it: a character for each point, in the arena. It points into the takeoff. setout:
 * that has its points numbered, or NULL, that has the sides of beds numbered. It can be stopped
 * (base/stop.h). */
void drawing_make(struct drawing *out, struct arena *arena, const struct takeoff *takeoff,
	const struct cuts *cuts, const struct setout *setout);
/* The points of a sheet, its edges included. */
struct rectangle drawing_sheet(const struct drawing *drawing, struct place sheet);
/* Adds a row of points from `left` to `right`. */
void drawing_row(const struct drawing *drawing, int row, int left, int right, struct text *out);

#endif
