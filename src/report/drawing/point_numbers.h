/* Numbers of set-out points on a plan that is drawn. */
#ifndef REPORT_DRAWING_POINT_NUMBERS_H
#define REPORT_DRAWING_POINT_NUMBERS_H

#include "report/drawing/points.h"
#include "takeoff/setout/setout.h"

/* Writes the number of each corner where it is, its first or its last digit on it, over lines of
 * the ground; fences stay. Returns how many have no room. It can be stopped. */
int point_numbers_write(struct points *points, const struct setout *setout);

#endif
