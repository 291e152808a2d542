/* The page of the panel with services and what is kept. */
#ifndef REPORT_PANEL_PAGE_SERVICES_H
#define REPORT_PANEL_PAGE_SERVICES_H

#include "report/panel/page_lines.h"

void page_services(struct page_maker *maker, const struct takeoff *takeoff);

#endif
