/* Sections of walls: one for each way in which walls are built, by entry of the legend and embed. A
 * cut square through the wall seen from its end, the ground around at the left, the bed at the
 * right, to a scale of its own, with what it is made of in words at its side. */
#ifndef REPORT_SVG_SECTION_H
#define REPORT_SVG_SECTION_H

#include "report/svg/remarks.h"

/* Adds a remark for each; it can be stopped. */
void sections_add(struct remark_list *list, const struct report *report);

#endif
