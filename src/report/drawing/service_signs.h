/* Services on a plan that is drawn, and the ground that is dug by hand near them: `*` along a line
 * that is there, `~` along one to lay, `/` strewn over what is dug by hand. */
#ifndef REPORT_DRAWING_SERVICE_SIGNS_H
#define REPORT_DRAWING_SERVICE_SIGNS_H

#include "report/drawing/points.h"
#include "takeoff/takeoff.h"

/* Draws over what is still free; lines over the dots along edges too. It can be stopped
 * (base/stop.h). */
void service_signs_draw(struct points *points, const struct takeoff *takeoff);

#endif
