/* The page of the sun: classes of ground, beds and lawns by their hours. */
#ifndef REPORT_PANEL_PAGE_SUN_H
#define REPORT_PANEL_PAGE_SUN_H

#include "report/panel/page_lines.h"

/* The page keeps the minutes of each cell too. */
void page_sun(struct page_maker *maker, const struct takeoff *takeoff);

#endif
