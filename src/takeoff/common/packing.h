/* Cutting pieces from blocks: longest first, each from the fullest block with room for it, of
 * equally full ones from the one cut first. Equal pieces are cut together, with the same result
 * as one by one. */
#ifndef TAKEOFF_COMMON_PACKING_H
#define TAKEOFF_COMMON_PACKING_H

#include "base/length.h"
#include "base/memory.h"

/* One way of cutting a block, a panel or a piece of edging, and how many are cut so. */
struct cut {
	const nm *pieces; /* their places, longest first */
	int piece_count;
	int64_t blocks;
};

/* Pieces of one length, shorter than a block. */
struct batch {
	nm place; /* length of wall that one fills */
	int64_t count;
};

struct saw {
	nm block; /* what of a block can be cut up */
	nm kerf;  /* width of a cut */
	/* how much shorter than its place a piece may be; counted as half a place at most */
	nm fit;
};

/* How long the piece for a place is. */
nm saw_piece(const struct saw *saw, nm place);

/* Sorts the batches longest first and merges equal lengths, in place; returns how many are left. */
size_t batches_join(struct batch *batches, size_t count);
/* Joins the batches, then cuts them. Returns the ways of cutting in the arena, in the order in
 * which their first block is cut; *count of them. */
const struct cut *packing_cut(struct arena *arena, const struct saw *saw, struct batch *batches,
	size_t batch_count, int *count);

/* Pieces to be cut, of several lengths. */
struct pieces {
	struct batch *batches;
	size_t count;
};

/* The same for the needed pieces; then cuts as many extras as the rest of those blocks gives,
 * longest first again. Extras are longest first, each length once, and may be longer than a
 * block; afterwards their counts say how many were not cut. */
const struct cut *packing_cut_with(struct arena *arena, const struct saw *saw,
	const struct pieces *needed, const struct pieces *extras, int *count);

#endif
