/* What is different in the plan, in a paragraph. */
#ifndef REPORT_COMPARE_PLAN_WORDS_H
#define REPORT_COMPARE_PLAN_WORDS_H

#include "report/compare/comparison.h"

/* Size and cells, and no region changed, came, went or was renumbered. */
bool plan_is_same(const struct comparison *comparison);
/* In the words of the new version. */
const char *plan_words(const struct comparison *comparison);
/* "B1 Sage": by its own name, else by that of its letter; "" for NO_REGION. */
const char *region_title(const struct report *report, int region);

#endif
