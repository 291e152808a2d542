/* Holes that are dug for plants where nobody else works the ground to plant it: on open ground, in
 * lawns, and in beds at ground level that are neither dug over nor replaced. On paths, on fixtures
 * and in houses nothing is planted (planting_snags.h). */
#ifndef TAKEOFF_PLANTING_PLANTING_HOLES_H
#define TAKEOFF_PLANTING_PLANTING_HOLES_H

#include "takeoff/planting/planting.h"
#include "takeoff/services/worked.h"

/* In the order of the planting, in the arena; *count of them. It can be stopped.
 *
 * A hole is two to three times as wide as the root ball (common practice, no published source), so
 * three times the pot: on the safe side. Where no pot is told, as wide as the plants stand
 * apart. */
const struct plant_holes *planting_holes(const struct planting *planting,
	const struct basis *basis, struct arena *arena, int *count);

#endif
