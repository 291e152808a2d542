/* Rows of declared figures (takeoff/common/figure.h) that are alike: equal in all figures but
 * region, entry, cuts and those that are ALIKE_ANYWAY. */
#ifndef REPORT_WORDS_ALIKE_H
#define REPORT_WORDS_ALIKE_H

#include "base/groups.h"
#include "takeoff/common/figure.h"

/* context: the table. */
groups_alike rows_are_alike;
groups_hash rows_hash;
struct groups rows_groups(const struct figure_table *table, const void *rows, int count);

#endif
