/* Running bond of one side: the pieces of its odd and its even courses.
 *
 * Joints are measured along the outer face: between pieces, and at run ends, except those that
 * go through a convex corner. No joint is closer than a quarter block to one of the course
 * below; two run ends are never measured against each other. (A quarter of a unit: running bond
 * as TMS 402 and the IRC define it.) No piece is shorter than bond_shortest. */
#ifndef TAKEOFF_WALLS_BOND_H
#define TAKEOFF_WALLS_BOND_H

#include "takeoff/walls/bond_layout.h"

struct bond_course {
	const nm *pieces;
	int count;
	int cut; /* pieces shorter than a block */
};

struct bond {
	struct bond_course odd, even;
	bool holds; /* no joint too close to one of the course below */
};

/* min(max(l/4, shortest), l/2), for blocks of length l. */
nm bond_shortest(nm block, nm shortest);

/* Lays both courses of a side so that they bond, with the fewest cuts over the courses really
 * laid. The order of trial is fixed, so the same side is always laid alike: whole blocks with
 * the cut piece last, first, second; the last block and the rest as two shared pieces; first
 * pieces of l/2, l/4, 3l/4. Of the pairs that bond, the one with the fewest cuts; of those the
 * earliest, by odd course first. Only where none bonds: first pieces from the shortest up in
 * steps of 1/2 in, with the cut or the pair at any position; the first that bonds. Where
 * nothing does, the pair with the fewest joints too close, then the fewest cuts, and holds is
 * false.
 *
 * even: NULL where there is one course; then the odd one has the fewest cuts and holds. False,
 * and nothing laid, where a run is shorter than the shortest piece. */
bool bond_lay(struct bond *out, struct arena *arena, const struct bond_run *odd,
	const struct bond_run *even, const struct bond_rule *rule);

#endif
