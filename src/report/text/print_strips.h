/* The strips of a laying sheet: side by side, of each side the odd and the even courses and the
 * cap; sides that are laid alike once. */
#ifndef REPORT_TEXT_PRINT_STRIPS_H
#define REPORT_TEXT_PRINT_STRIPS_H

#include "report/text/sawn.h"
#include "report/words/report.h"

void print_strips(const struct report *report, const struct wall *wall,
	const struct all_sawn *all);

#endif
