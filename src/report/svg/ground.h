/* The ground of a plan to scale: the shape of each region, its outline, and the walls of raised
 * beds. Shapes are paths in cells from the datum, exact whole numbers, within a group that scales
 * them; a path's id is what the region is called. */
#ifndef REPORT_SVG_GROUND_H
#define REPORT_SVG_GROUND_H

#include "report/svg/sheet.h"
#include "survey/outline.h"

/* It can be stopped. */
void ground_draw(struct sheet *sheet);

/* Where a corner of a loop is in an outline moved inwards by so much, on the ground. */
struct spot ground_inset(const struct loop *loop, int corner, nm cell, nm by);

#endif
