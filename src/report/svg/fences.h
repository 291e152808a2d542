/* Fences on a plan to scale: their legs, gates and posts where they stand, with the numbers that
 * the papers have. */
#ifndef REPORT_SVG_FENCES_H
#define REPORT_SVG_FENCES_H

#include "report/svg/page.h"

/* Lines and posts; they can be stopped. */
void fences_draw(struct page *page);
void fences_name_gates(struct page *page);
void fences_number(struct page *page);

#endif
