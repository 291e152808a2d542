/* Every table of declared figures that a takeoff is shown by, and rows of any table. */
#ifndef SUPPORT_TABLES_H
#define SUPPORT_TABLES_H

#include "takeoff/takeoff.h"

struct named_table {
	const struct figure_table *table;
	const char *name;
};

/* Each table once, *count of them: those of takeoff_shown, those that a view asks for by hand, and
 * the tables within them. */
const struct named_table *tables_all(int *count);
bool table_is_declared(const struct figure_table *table);

/* A row in which no figure is none; what figures point to is there and is the row's own. Entries
 * and cuts are left as NULL. Two such rows are equal. */
char *row_filled(struct arena *arena, const struct figure_table *table);

#endif
