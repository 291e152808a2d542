/* What differs of two takeoffs, for people and for programs. */
#ifndef REPORT_COMPARE_COMPARE_H
#define REPORT_COMPARE_COMPARE_H

#include "report/compare/comparison.h"

/* Whether no region and no figure differs. */
bool compare_is_same(struct comparison *comparison);
/* Prints 80 columns of text in the new plot's units: the plan in a paragraph, what more is to be
 * bought, what is left over, the sums, then all figures that differ; one line where none does. */
void compare_text(struct sink *out, struct comparison *comparison);
/* Prints one JSON object in SI units, keys in a fixed order. */
void compare_json(struct sink *out, struct comparison *comparison);

#endif
