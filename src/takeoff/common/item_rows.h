/* The rows of what is bought, while each trade adds its own. */
#ifndef TAKEOFF_COMMON_ITEM_ROWS_H
#define TAKEOFF_COMMON_ITEM_ROWS_H

#include "takeoff/takeoff.h"

/* Rows so far, while the trades add theirs. */
struct items {
	struct arena *arena;
	struct item *rows;
	size_t count, capacity;
};

/* Adds a copy of the row. Returns it for more to be added up in it; valid until the next is added. */
struct item *item_add(struct items *items, const struct item *item);
/* Adds the row, if anything is laid, with so many millionths of a percent of that as spare. */
void item_add_spare(struct items *items, const struct item *item, int64_t spare);
/* "5 % breakage" from millionths of a percent, in the arena. */
const char *item_percent(struct arena *arena, int64_t millionths, const char *what);

#endif
