/* What a page has that the one before it had not. */
#ifndef REPORT_PANEL_PAGE_COMPARE_H
#define REPORT_PANEL_PAGE_COMPARE_H

#include "report/panel/pages.h"

/* Marks the figures of a page that are not on the page before, or have another value there. Figures
 * are found by their labels and headings; of several alike the first goes with the first. */
void page_compare(struct page *page, const struct page *before);

#endif
