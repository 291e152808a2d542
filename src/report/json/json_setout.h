/* The set-out as JSON. */
#ifndef REPORT_JSON_JSON_SETOUT_H
#define REPORT_JSON_JSON_SETOUT_H

#include "report/words/report.h"

/* Prints the key "setout" with its object, string by string and point by point. */
void json_setout(const struct report *report);

#endif
