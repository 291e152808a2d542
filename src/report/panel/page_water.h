/* The page of the panel with the watering. */
#ifndef REPORT_PANEL_PAGE_WATER_H
#define REPORT_PANEL_PAGE_WATER_H

#include "report/panel/page_lines.h"

void page_water(struct page_maker *maker, const struct takeoff *takeoff);

#endif
