/* The page of advice. */
#ifndef REPORT_PANEL_PAGE_ADVICE_H
#define REPORT_PANEL_PAGE_ADVICE_H

#include "report/panel/page_lines.h"

void page_advice(struct page_maker *maker, const struct takeoff *takeoff);

#endif
