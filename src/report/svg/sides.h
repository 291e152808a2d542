/* Sides of beds on a plan to scale: their numbers, of beds that have a laying sheet of their own,
 * as that counts them; and how long they are, of the first bed of each shape. And how large the
 * plan is. */
#ifndef REPORT_SVG_SIDES_H
#define REPORT_SVG_SIDES_H

#include "report/svg/page.h"

/* They can be stopped. */
void sides_draw(struct page *page);
void sides_draw_plan(struct page *page);

#endif
