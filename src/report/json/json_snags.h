/* The snags as JSON: in the takeoff, and by themselves. */
#ifndef REPORT_JSON_JSON_SNAGS_H
#define REPORT_JSON_JSON_SNAGS_H

#include "report/words/report.h"

/* Prints the key "snags" with its array, behind other keys. */
void json_snags(const struct report *report);

/* Prints one JSON object: which plot it is, and its snags. Pure. */
void report_snags_json(struct sink *out, const struct plot *plot, const struct takeoff *takeoff);

#endif
