/* Running bond of one side: the pieces of its odd and its even courses, or of a cap.
 *
 * Joints are measured along the outer face: between pieces, and at run ends, except those that
 * go through a convex corner. No joint is closer than a quarter block to one of the course
 * below; two run ends are never measured against each other. No piece is shorter than
 * bond_shortest. A piece that shows its head at an outer corner is bond_corner long or longer and
 * shows an end of its block, not a sawn one: common practice, no published source.
 *
 * A quarter of a unit is running bond as these are quoted to define it: The Masonry Society,
 * TMS 402/602, Building Code Requirements and Specification for Masonry Structures, 2016;
 * International Code Council, International Residential Code, 2021. */
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
	bool holds;         /* no joint too close to one of the course below */
	bool corners_hold;  /* no piece that shows its head too short */
};

/* min(max(l/4, shortest), l/2), for blocks of length l. */
nm bond_shortest(nm block, nm shortest);
/* max(l/2, depth), but l at most. */
nm bond_corner(nm block, nm depth);
/* The same, but of blocks deeper than 3/4 of their length l/2: the joint behind a corner piece that
 * long would stand less than a quarter from the end of the run below. */
nm bond_enough(nm block, nm depth);

/* Lays both courses of a side so that they bond, with the fewest cuts over the courses really
 * laid, and of equal cuts with the fewest cut pieces at outer corners. The order of trial is
 * fixed, so the same side is always laid alike: whole blocks with the cut piece last, first,
 * second, next to last; the last block and the rest as two shared pieces, last and next to last;
 * first pieces of l/2, l/4, 3l/4, which where the run shows its head there may also stand behind
 * a block. Of the pairs that bond and have their corner pieces, the best, the earliest on a tie,
 * by odd course first. Only where none is: first pieces from the shortest up in steps of 1/2 in,
 * with the cut or the pair at any position; the first pair without a fault. Only where none is
 * and no candidate bonds: of all these the one that bonds and has the longest corner pieces.
 * Where nothing bonds, the candidate with the fewest kinds of fault, then the fewest joints too
 * close, then the longest corner pieces, then the fewest cuts.
 *
 * rule->mirrored: each course its own image, both runs with ends alike: all whole, the rest in
 * the middle, or the last block and the rest as two pieces in the middle, at the ends, or behind
 * a block from each end; nothing else is tried.
 *
 * even: NULL where there is one course; then the odd one holds. False, and nothing laid, where a
 * run is shorter than the shortest piece or, mirrored, nothing can be laid. */
bool bond_lay(struct bond *out, struct arena *arena, const struct bond_run *odd,
	const struct bond_run *even, const struct bond_rule *rule);

/* Lays the run of a course upon another, by the same rules, as out->odd. */
bool bond_lay_upon(struct bond *out, struct arena *arena, const struct bond_run *run,
	const struct bond_rule *rule, const struct bond_below *below);
/* The joints of a course, to lay upon; in the arena. apart: see there. */
struct bond_below bond_below(struct arena *arena, const struct bond_run *run,
	const struct bond_course *course, nm apart);

#endif
