/* How a takeoff begins, so that report_is_takeoff knows it again. */
#ifndef REPORT_MARK_H
#define REPORT_MARK_H

#include <stdbool.h>
#include <stddef.h>

#define MARK_TEXT "parterre takeoff" /* and after a blank the version: the whole first line */
#define MARK_JSON "parterre-takeoff" /* the value of "format", the first key */

/* True where bytes begin like a takeoff, text or JSON, that a new one may overwrite. */
bool report_is_takeoff(const char *bytes, size_t length);

enum { MARK_VERSION = 1, MARK_JSON_WITHIN = 64 /* bytes */ };

#endif
