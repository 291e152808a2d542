/* The sun on a plan for programs. */
#ifndef REPORT_JSON_JSON_SUN_H
#define REPORT_JSON_JSON_SUN_H

#include "report/words/report.h"
#include "takeoff/sun/sun_hours.h"

/* Prints one JSON object, keys in a fixed order, hours of 1 to SUN_DAYS_MOST days as they are
 * counted; the plot has a latitude. Pure. */
void report_sun_json(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const struct date *days, int count);

#endif
