/* Numbers of sides on a plan that is drawn: of beds that have a laying sheet of their own, as that
 * and survey/outline.h count them. */
#ifndef REPORT_DRAWING_SIDE_NUMBERS_H
#define REPORT_DRAWING_SIDE_NUMBERS_H

#include "report/drawing/points.h"
#include "takeoff/walls/wall.h"

/* Writes each number into the line of its side, as near its middle as there is no other bed on the
 * other side of the line; none where there is no room. It can be stopped. */
void side_numbers_write(struct points *points, const struct plot *plot,
	const struct survey *survey, const struct walls *walls);

#endif
