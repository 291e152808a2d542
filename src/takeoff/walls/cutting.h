/* Which pieces are cut from which block: per block size, joint and use, over all beds of the plot.
 *
 * A block l long as laid has l - joint of stone (counted as half of l at least). A piece is its
 * place less fit or joint, whichever is more (half the place at most), and each saw cut takes
 * kerf: n pieces come out of a block where their lengths and (n - 1) kerfs add up to its stone at
 * most. So two halves come out of one where kerf <= 2 max(fit, joint) - joint. See packing.h for
 * the order. */
#ifndef TAKEOFF_WALLS_CUTTING_H
#define TAKEOFF_WALLS_CUTTING_H

#include "takeoff/common/packing.h"
#include "takeoff/walls/wall.h"

enum block_use { USE_WALL, USE_CAP };
enum { BREAKAGE_LEAST = 2 };

/* All pieces of one block size, joint and use, over all beds. */
struct cutting {
	enum block_use use;
	struct size block;
	nm joint;
	int64_t whole, cut_blocks;
	int64_t bought; /* both */
	int64_t floor;  /* as many as the stone of all pieces would take, if none were wasted */
	/* The share allowed for, rounded up, and 2 at least: common practice, no published
	 * source. Where 0 % is allowed for, it is 0. */
	int64_t breakage;
	int64_t order;  /* bought and breakage */
	const struct cut *cuts;
	int cut_count;
	nm kerf;
	nm gap; /* how much shorter than its place a piece is: the fit allowed for or the joint */
	double weight; /* kg of the blocks bought, without breakage */
};

struct cuttings {
	const struct cutting *list; /* walls, then caps; in order of first bed */
	int count;
};

extern const struct figure_table cutting_table;

void cutting_plan(struct cuttings *out, const struct basis *basis, const struct walls *walls);
/* Adds blocks of walls and caps, a row for each size. */
void cutting_items(struct item_list *items, const struct cuttings *cuttings);

#endif
