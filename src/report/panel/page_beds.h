/* The page of the beds, with sizes near whose walls need no cut. */
#ifndef REPORT_PANEL_PAGE_BEDS_H
#define REPORT_PANEL_PAGE_BEDS_H

#include "report/panel/page_lines.h"

void page_beds(struct page_maker *maker, const struct takeoff *takeoff);

#endif
