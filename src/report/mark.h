/* How a takeoff begins: written at its head, known again by report_is_takeoff. */
#ifndef REPORT_MARK_H
#define REPORT_MARK_H

#define MARK_TEXT "parterre takeoff" /* and the version behind a blank: the whole first line */
#define MARK_JSON "parterre-takeoff" /* the value of "format", the first key */

enum { MARK_VERSION = 1, MARK_JSON_WITHIN = 64 /* bytes */ };

#endif
