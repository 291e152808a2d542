/* What tells the size and the direction of a plan that is drawn: marks along its rulers, north. */
#ifndef REPORT_DRAWING_SCALE_H
#define REPORT_DRAWING_SCALE_H

#include "report/words/words.h"

/* From one mark to the next: 1, 2, 5, 10 ... whole feet or metres, so many that it is no less than
 * `least`. */
nm scale_step(enum units units, nm least);
/* "5'" or "5 m": whole feet or metres. */
void scale_words(struct text *out, nm at, enum units units);

/* Which way a bearing is on a plan whose top has another, both in millionths of a degree, 0 to
 * under 360 degrees: straight up, right, down or left, else so far to a side of the nearest of
 * them. North is 0. */
struct scale_way {
	const char *way;
	const char *side; /* "left of", "right of", "above", "below"; NULL: straight that way */
	int64_t off;      /* millionths of a degree, up to 45 degrees */
};
struct scale_way scale_way(int64_t top, int64_t bearing);
/* "up", "20 degrees left of up". */
void scale_way_words(struct text *out, int64_t top, int64_t bearing);
/* "North is 20 degrees left of up."; "" where the plot does not say. */
const char *north_words(const struct report *report);

#endif
