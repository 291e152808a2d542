/* Which pieces are cut from which block: per block size and use, over all beds of the plot.
 *
 * A piece may be `fit` shorter than its place and each saw cut takes `kerf`, so n pieces fit
 * one block of length l where places - n fit + (n - 1) kerf <= l. See packing.h for the order. */
#ifndef TAKEOFF_WALLS_CUTTING_H
#define TAKEOFF_WALLS_CUTTING_H

#include "takeoff/common/packing.h"
#include "takeoff/walls/wall.h"

enum block_use { USE_WALL, USE_CAP };

/* All pieces of one block size and use, over all beds. */
struct cutting {
	enum block_use use;
	struct size block;
	int64_t whole, cut_blocks;
	int64_t bought; /* both */
	int64_t floor, breakage;
	int64_t order;  /* bought and breakage */
	const struct cut *cuts;
	int cut_count;
	nm kerf, fit;
	double weight; /* kg of the blocks bought, without breakage */
};

struct cuttings {
	const struct cutting *list; /* walls, then caps; sizes in order of first bed */
	int count;
};

extern const struct figure_table cutting_table;

void cutting_plan(struct cuttings *out, const struct basis *basis, const struct walls *walls);
/* Adds blocks of walls and caps, a row for each size. */
void cutting_items(struct item_list *items, const struct cuttings *cuttings);

#endif
