/* Plants on the plan to scale: a circle as wide as each grows, and its letter in it. */
#ifndef REPORT_SVG_PLANT_MARKS_H
#define REPORT_SVG_PLANT_MARKS_H

#include "report/svg/remarks.h"
#include "report/svg/sheet.h"

/* What is beyond the field is cut off. */
void plant_marks_draw(struct sheet *sheet);
/* Those that have no room are counted. */
void plant_marks_name(struct sheet *sheet);
/* Adds the kinds that stand somewhere. */
void plant_marks_signs(struct remark_list *list, const struct report *report);

#endif
