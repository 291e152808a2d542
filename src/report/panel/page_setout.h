/* The page of the set-out: boards, strings and the points along them. */
#ifndef REPORT_PANEL_PAGE_SETOUT_H
#define REPORT_PANEL_PAGE_SETOUT_H

#include "report/panel/page_lines.h"

void page_setout(struct page_maker *maker, const struct takeoff *takeoff);

#endif
