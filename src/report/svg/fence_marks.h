/* Fences on a plan to scale: their legs, gates and posts where they stand, with the numbers that
 * the papers have. */
#ifndef REPORT_SVG_FENCE_MARKS_H
#define REPORT_SVG_FENCE_MARKS_H

#include "report/svg/sheet.h"

/* Lines and posts; they can be stopped. */
void fence_marks_draw(struct sheet *sheet);
void fence_marks_name_gates(struct sheet *sheet);
void fence_marks_number(struct sheet *sheet);

#endif
