/* The page of the panel with the levels. */
#ifndef REPORT_PANEL_PAGE_LEVELS_H
#define REPORT_PANEL_PAGE_LEVELS_H

#include "report/panel/page_lines.h"

void page_levels(struct page_maker *maker, const struct takeoff *takeoff);

#endif
