/* The ground of a plan that is drawn: lines along edges, letters within them. */
#ifndef REPORT_DRAWING_LINES_H
#define REPORT_DRAWING_LINES_H

#include "report/drawing/points.h"

/* Of lines between letters: round beds and fixtures they are `-`, `|` and `+`, all others, the
 * plan's edge among them, rows of dots. All else is POINT_FREE. It can be stopped. */
void lines_draw(struct points *points, const struct plot *plot);
/* Strews the letters of paths, lawns and beds thinly over what is still free, alike on both sides
 * of the mirror's axes; a fixture's all over it. Open ground stays empty, and so does what is
 * beside a word. It can be stopped. */
void lines_fill(struct points *points, const struct plot *plot);

#endif
