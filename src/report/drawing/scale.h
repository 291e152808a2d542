/* What tells the size and the direction of a plan that is drawn: marks along its rulers, north. */
#ifndef REPORT_DRAWING_SCALE_H
#define REPORT_DRAWING_SCALE_H

#include "base/length.h"

/* From one mark to the next: 1, 2, 5, 10 ... whole feet or metres, so many that it is no less than
 * `least`. */
nm scale_step(enum units units, nm least);
/* "5'" or "5 m": whole feet or metres. */
void scale_words(struct text *out, nm at, enum units units);

/* Which way north is on a plan whose top has this bearing, in millionths of a degree: 0 up, then
 * clockwise by eighths of a turn; and in words. */
enum { SCALE_WAYS = 8 };
int scale_north(int64_t bearing);
/* Which way another bearing is there: 0 to under 360 degrees both. */
int scale_towards(int64_t top, int64_t bearing);
extern const char *const scale_ways[SCALE_WAYS];

#endif
