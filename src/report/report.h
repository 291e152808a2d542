/* The takeoff for people and for programs. Both are pure: same takeoff, same bytes. */
#ifndef REPORT_REPORT_H
#define REPORT_REPORT_H

#include "takeoff/takeoff.h"

/* 80 columns of text to take to the yard, in the plot's own units. Its first line is
 * "parterre takeoff 1". name is the plot file's, for the heading. */
void report_text(struct text *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name);
/* One JSON object in SI units, keys in a fixed order. */
void report_json(struct text *out, const struct plot *plot, const struct takeoff *takeoff);

/* True where bytes begin like a takeoff, text or JSON, that a new one may overwrite. */
bool report_is_takeoff(const char *bytes, size_t length);

#endif
