/* What regions are called on a plan to scale: within them in letters as large as there is room for,
 * with their own names where they fit, else beside them at the end of a line. */
#ifndef REPORT_SVG_NAMES_H
#define REPORT_SVG_NAMES_H

#include "report/svg/sheet.h"

/* It can be stopped. */
void names_draw(struct sheet *sheet);

#endif
