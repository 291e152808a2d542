/* The sun on a plan as text: a map, tables of days, classes, beds and lawns, and hour lines of
 * dials. */
#ifndef REPORT_TEXT_PRINT_SUN_H
#define REPORT_TEXT_PRINT_SUN_H

#include "base/sink.h"
#include "takeoff/sun/sun_hours.h"

/* Prints it for 1 to SUN_DAYS_MOST days; the plot has a latitude. Its first line is
 * "parterre sun 1". name: the plot file's. Pure. */
void report_sun(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name, const struct date *days, int count);

#endif
