/* What is drawn only where it is asked for: drops as measured, and strings and points of the
 * set-out. */
#ifndef REPORT_SVG_SURVEY_MARKS_H
#define REPORT_SVG_SURVEY_MARKS_H

#include "report/svg/page.h"

/* They can be stopped. */
void survey_marks_levels(struct page *page);
/* The strings of page->setout; their offsets, and the numbers of points. */
void survey_marks_strings(struct page *page);
void survey_marks_number(struct page *page);

#endif
