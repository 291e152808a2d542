/* What shades a plan to scale from beyond its edges, in words: on the sheet there is room for but
 * some of it, or for none. */
#ifndef REPORT_SVG_BEYOND_H
#define REPORT_SVG_BEYOND_H

#include "report/svg/remarks.h"

/* A remark for each house and shade that has a height and lies beyond the plan, with how high it
 * is, how far off and which way. It can be stopped. */
void beyond_add(struct remark_list *list, const struct report *report);
/* "Number 4, 22 ft high"; its name alone where its height is not told. In report->words. */
const char *beyond_thing(const struct report *report, const struct obstacle *thing);

#endif
