/* Of which plot a report for programs is. */
#ifndef REPORT_JSON_JSON_PLOT_H
#define REPORT_JSON_JSON_PLOT_H

#include "report/words/report.h"

/* Prints the key "plot" with its object, behind other keys. */
void json_plot(const struct report *report);

#endif
