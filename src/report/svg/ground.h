/* The ground of a plan to scale: the shape of each region, its outline, and the walls of raised
 * beds. Shapes are paths in cells from the datum, exact whole numbers, within a group that scales
 * them; a path's id is what the region is called. */
#ifndef REPORT_SVG_GROUND_H
#define REPORT_SVG_GROUND_H

#include "report/svg/sheet.h"

/* It can be stopped. */
void ground_draw(struct sheet *sheet);

#endif
