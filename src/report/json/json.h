/* The takeoff for programs. */
#ifndef REPORT_JSON_JSON_H
#define REPORT_JSON_JSON_H

#include "report/words/report.h"

/* Prints one JSON object in SI units, keys in a fixed order. Pure. */
void report_json(struct sink *out, const struct plot *plot, const struct takeoff *takeoff);

#endif
