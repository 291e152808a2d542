/* Sides of beds on a plan to scale: their numbers, of beds that have a laying sheet of their own,
 * as that counts them; and how long they are, of the first bed of each shape. And how large the
 * plan is. */
#ifndef REPORT_SVG_DIMENSIONS_H
#define REPORT_SVG_DIMENSIONS_H

#include "report/svg/sheet.h"

/* They can be stopped. */
void dimensions_draw(struct sheet *sheet);
void dimensions_draw_plan(struct sheet *sheet);

#endif
