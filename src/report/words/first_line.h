/* How a takeoff, a plan, a set-out sheet, hours of sun, a drawing, snags and a comparison begin, so
 * that report_is_takeoff knows them again. */
#ifndef REPORT_WORDS_FIRST_LINE_H
#define REPORT_WORDS_FIRST_LINE_H

#include <stdbool.h>
#include <stddef.h>

#define FIRST_LINE_TEXT "parterre takeoff" /* and after a blank the version: the whole first line */
#define FIRST_LINE_PLAN "parterre plan"    /* the same of a plan */
#define FIRST_LINE_SETOUT "parterre setout" /* and of a set-out sheet */
#define FIRST_LINE_SNAGS "parterre snags"  /* and of snags */
#define FIRST_LINE_SUN "parterre sun"      /* and of hours of sun */
#define FIRST_LINE_JSON "parterre-takeoff" /* the value of "format", the first key */

#define FIRST_LINE_CSV "section,id,item,size," /* the first columns, whatever comes after them */
/* The same of a comparison of two; where nothing differs a colon and the sentence come after the
 * version. */
#define FIRST_LINE_COMPARE "parterre compare"
#define FIRST_LINE_COMPARE_JSON "parterre-compare"
#define FIRST_LINE_SNAGS_JSON "parterre-snags"
#define FIRST_LINE_SUN_JSON "parterre-sun"
/* The same of a drawing, of which it is two lines: the version comes after them. */
#define FIRST_LINE_DRAWING "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- parterre drawing "

/* True where bytes begin like a takeoff, a comparison, hours of sun or snags, text or JSON, a plan,
 * a set-out sheet or a drawing, that a new one may overwrite. */
bool report_is_takeoff(const char *bytes, size_t length);
/* True where bytes begin like one for a spreadsheet: people fill such tables in, so that a new one
 * may not. */
bool report_is_table(const char *bytes, size_t length);

enum { FIRST_LINE_VERSION = 1, FIRST_LINE_WITHIN = 64 /* bytes */ };

#endif
