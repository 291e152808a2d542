/* One way of laying a run: a first cut piece or none, then whole blocks with the rest among
 * them.
 *
 * The rest is what whole blocks leave over. Where it would be too short, and where that is
 * asked for, one whole block and the rest become two halves. A layout is held as figures alone,
 * so making and comparing layouts takes O(1) time however long the run. */
#ifndef TAKEOFF_WALLS_BOND_LAYOUT_H
#define TAKEOFF_WALLS_BOND_LAYOUT_H

#include "base/length.h"
#include "base/memory.h"

#include <stdbool.h>

/* A run of one course along a side. */
struct bond_run {
	nm from, length;           /* from the side's first corner, along the outer face */
	bool first_open, last_open; /* an end is a joint on the outer face */
};

struct bond_rule {
	nm block;    /* l, the block's length as laid */
	nm shortest; /* the shortest piece, from bond_shortest */
	int odd_courses, even_courses; /* how often each is really laid */
};

/* Joints a block apart. */
struct joint_row {
	nm first;
	int64_t count;
};

enum { JOINT_ROWS_MOST = 3 };

struct bond_layout {
	nm first;              /* 0: none */
	int64_t before, after; /* whole blocks before and after the rest */
	nm rest[2];            /* its pieces; 0: none */
	int cut;               /* pieces shorter than a block */
	struct joint_row joints[JOINT_ROWS_MOST]; /* inside the run, without its ends */
	int joint_count;
};

/* Lays a run with the first piece given (0, or from the shortest to less than a block) and the
 * rest last; shared: the rest as two halves even where it is long enough. False where that
 * cannot be. */
bool bond_layout_make(struct bond_layout *out, const struct bond_run *run,
	const struct bond_rule *rule, nm first, bool shared);
/* Moves the rest to come after `before` whole blocks, 0 to before + after. */
void bond_layout_move(struct bond_layout *layout, const struct bond_run *run, nm block,
	int64_t before);

/* How many joints inside a run are closer than a quarter block to one inside the other. */
int64_t bond_layout_close_joints(const struct bond_layout *a, const struct bond_layout *b,
	nm block);
/* How many joints inside a run are closer than a quarter block to an end of the other. */
int64_t bond_layout_close_ends(const struct bond_layout *layout, const struct bond_run *other,
	nm block);

/* The pieces, in order, in the arena; *count of them. */
const nm *bond_layout_pieces(const struct bond_layout *layout, nm block, struct arena *arena,
	int *count);

#endif
