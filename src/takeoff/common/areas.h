/* How much of the plan each entry of the legend covers. */
#ifndef TAKEOFF_COMMON_AREAS_H
#define TAKEOFF_COMMON_AREAS_H

#include "takeoff/common/basis.h"
#include "takeoff/common/figure.h"

struct area_row {
	const struct entry *entry; /* NULL: open ground */
	const char *class; /* its word */
	char letter;
	const char *name, *remark; /* remark: the name, and of open ground what becomes of it */
	int64_t cells;
	double area; /* m2 */
};

struct areas {
	const struct area_row *list; /* in legend order, also those without a cell; then open
	                                ground */
	int count;
};

extern const struct figure_table area_table;

void areas_count(struct areas *out, const struct basis *basis);

#endif
