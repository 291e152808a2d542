/* Lines of the picture: along a side of a cell, within a character and below it. */
#ifndef SCREEN_BORDERS_H
#define SCREEN_BORDERS_H

#include "screen/brush.h"
#include "screen/scene.h"

/* An upright line; there must be one. Fence is thicker than wall, a service is broken or double. */
void borders_upright(const struct area *area, int row, int column, enum border line,
	struct paint paint);
/* What a service is drawn with, upright or level. */
wchar_t borders_service(enum border line, bool is_upright);
/* Fences in the middle of a character: one from above, one from the left, or both. */
void borders_fences(const struct area *area, int row, int column, bool is_upright, bool is_level,
	struct paint paint);
/* Has a letter or pattern drawn in this paint stand on a line, as far as the terminal can and bytes
 * allow. */
void borders_below(struct paint *paint, enum border line);
/* Whether a line below takes a letter's place. */
bool borders_has_foot(enum border line);
/* A line at the foot of a character that has nothing else in it; there must be one. */
void borders_foot(const struct area *area, int row, int column, enum border line,
	struct paint paint);

#endif
