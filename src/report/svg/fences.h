/* Fences on a plan to scale: their legs, gates and posts where they stand, with the numbers that
 * the papers have. */
#ifndef REPORT_SVG_FENCES_H
#define REPORT_SVG_FENCES_H

#include "report/svg/page.h"

/* Lines, posts and names of gates. It can be stopped, as can the next. */
void fences_draw(struct page *page);
void fences_number(struct page *page);

#endif
