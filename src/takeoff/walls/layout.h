/* One way of laying a run: a first cut piece or none, then whole blocks with the rest among them.
 *
 * The rest is what whole blocks leave over. Where it would be too short, and wherever that is asked
 * for, one whole block and the rest become two halves. A layout is held by its figures alone, so that
 * making and comparing layouts costs the same however long the run. */
#ifndef TAKEOFF_WALLS_LAYOUT_H
#define TAKEOFF_WALLS_LAYOUT_H

#include "takeoff/walls/bond.h"

/* Joints a block apart. */
struct stretch {
	nm first;
	int64_t count;
};

enum { STRETCHES_MOST = 3 };

struct layout {
	nm first;              /* 0: none */
	int64_t before, after; /* whole blocks before and after the rest */
	nm rest[2];            /* its pieces; 0: none */
	int cut;               /* pieces shorter than a block */
	struct stretch joints[STRETCHES_MOST]; /* inside the run, without its ends */
	int joint_count;
};

/* Lays a run with the first piece given (0, or from the shortest to less than a block) and the rest
 * last; shared: the rest as two halves even where it is long enough. False where it cannot be laid
 * so. */
bool layout_make(struct layout *out, const struct bond_run *run, const struct bond_rule *rule,
	nm first, bool shared);
/* Moves the rest behind so many whole blocks, 0 to before + after. */
void layout_move(struct layout *layout, const struct bond_run *run, nm block, int64_t before);

/* How many joints inside a run stand closer than a quarter block to one inside the other's run. */
int64_t layout_close_joints(const struct layout *a, const struct layout *b, nm block);
/* How many joints inside a run stand closer than a quarter block to an end of another run. */
int64_t layout_close_ends(const struct layout *layout, const struct bond_run *other, nm block);

/* The pieces, in order, in the arena; *count of them. */
const nm *layout_pieces(const struct layout *layout, nm block, struct arena *arena, int *count);

#endif
