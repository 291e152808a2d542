/* What is drawn only where it is asked for: drops as measured, and strings and points of the
 * set-out. */
#ifndef REPORT_SVG_SURVEY_MARKS_H
#define REPORT_SVG_SURVEY_MARKS_H

#include "report/svg/sheet.h"

/* They can be stopped. */
void survey_marks_levels(struct sheet *sheet);
/* The strings of sheet->setout; their offsets, and the numbers of points. */
void survey_marks_strings(struct sheet *sheet);
void survey_marks_number(struct sheet *sheet);

/* The sign of a level, around a point. */
void survey_marks_cross(const struct sheet *sheet, struct at at);

#endif
