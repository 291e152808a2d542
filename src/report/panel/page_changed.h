/* The page of what has changed since the plot was saved. */
#ifndef REPORT_PANEL_PAGE_CHANGED_H
#define REPORT_PANEL_PAGE_CHANGED_H

#include "report/panel/page_lines.h"

/* So many figures at the most. */
enum { CHANGED_MOST = 200 };

/* Compares the takeoff with maker->saved: what more is to be bought, what is left over, the sums
 * that differ, what became of regions, then the first CHANGED_MOST figures that differ, part by
 * part; where nothing differs a sentence. It can be stopped (base/stop.h). */
void page_changed(struct page_maker *maker, const struct takeoff *takeoff);

#endif
