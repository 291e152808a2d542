/* One way of laying a run: whole blocks and a few cut pieces among them.
 *
 * A first cut piece may stand at the run's start or behind its first block. The rest is what
 * whole blocks leave over then. Where it would be too short, and where that is asked for, one
 * whole block and the rest become two halves. A layout is held as figures alone, so making and
 * comparing layouts takes O(1) time however long the run. */
#ifndef TAKEOFF_WALLS_BOND_LAYOUT_H
#define TAKEOFF_WALLS_BOND_LAYOUT_H

#include "base/length.h"
#include "base/memory.h"

#include <stdbool.h>

/* A run of one course along a side. */
struct bond_run {
	nm from, length;           /* from the side's first corner, along the outer face */
	bool first_open, last_open; /* an end is a joint on the outer face; else it shows its
	                               head at an outer corner */
};

struct bond_rule {
	nm block;    /* l, the block's length as laid */
	nm shortest; /* the shortest piece, from bond_shortest */
	nm corner;   /* the shortest piece that should show its head, from bond_corner */
	nm enough;   /* the shortest that may where nothing better bonds, from bond_enough */
	int odd_courses, even_courses; /* how often each is really laid */
	bool mirrored; /* each course must be its own image */
};

/* Joints a block apart. */
struct joint_row {
	nm first;
	int64_t count;
};

enum { CUTS_MOST = 3 };

struct bond_layout {
	int64_t wholes[CUTS_MOST + 1]; /* blocks before each cut piece, and behind the last */
	nm pieces[CUTS_MOST];
	int cut;  /* how many pieces are cut */
	int rest; /* which of them is the rest's first; cut where there is none */
	struct joint_row joints[CUTS_MOST + 1]; /* inside the run, without its ends */
	int joint_count;
};

/* How a run begins. */
struct bond_start {
	nm piece;     /* a cut piece, from the shortest to less than a block; 0: none */
	int64_t lead; /* blocks before it; 0 where there is none */
};

/* So many quarters of a block, rounded so that joints one or three quarters apart are never a
 * nanometre too close. */
nm bond_quarters(nm block, int count);
/* Lays a run with the start given and the rest last; shared: the rest as two halves even where
 * it is long enough. False where that cannot be. */
bool bond_layout_make(struct bond_layout *out, const struct bond_run *run,
	const struct bond_rule *rule, struct bond_start start, bool shared);
/* Whole blocks that stand before the rest and may stand behind it. */
int64_t bond_layout_movable(const struct bond_layout *layout);
/* Moves the rest to come after `before` of them. */
void bond_layout_move(struct bond_layout *layout, const struct bond_run *run, nm block,
	int64_t before);
/* Lays a run that is its own image: `outer` blocks at each end, next to them a piece each,
 * `inner` blocks between. One piece in the middle where `single`; without pieces where it is
 * 0. */
void bond_layout_mirrored(struct bond_layout *out, const struct bond_run *run, nm block,
	int64_t outer, nm piece, bool single);

/* How much the pieces that show their heads fall short of so much, in all. A cut piece that shows
 * both has a sawn one: it falls short of a block. */
nm bond_layout_short(const struct bond_layout *layout, const struct bond_run *run, nm block,
	nm corner);
/* How many of those pieces are cut. */
int bond_layout_cut_heads(const struct bond_layout *layout, const struct bond_run *run);

/* How many joints inside a run are closer than a quarter block to one inside the other. */
int64_t bond_layout_close_joints(const struct bond_layout *a, const struct bond_layout *b,
	nm block);
/* True where none is; sooner known. */
bool bond_layout_bonds(const struct bond_layout *a, const struct bond_layout *b, nm block);
/* How many joints inside a run are closer than a quarter block to an end of the other. */
int64_t bond_layout_close_ends(const struct bond_layout *layout, const struct bond_run *other,
	nm block);

/* Where joints of a course lie that another is laid upon. */
struct bond_below {
	const nm *joints; /* ascending, with the ends that are joints */
	int count;
	bool first_is_end, last_is_end;
	nm apart; /* the other's joints must be so far from them */
};
/* How many joints of a run upon it, blocks of that length, are too close: joints inside it to any,
 * its own ends to those inside. O(joints). */
int64_t bond_layout_close_below(const struct bond_layout *layout, const struct bond_run *run,
	nm block, const struct bond_below *below);

/* The pieces, in order, in the arena; *count of them. */
const nm *bond_layout_pieces(const struct bond_layout *layout, nm block, struct arena *arena,
	int *count);

#endif
