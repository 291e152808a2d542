/* Block walls of raised beds, laid out block by block.
 *
 * The wall stands inside the bed's outline, outer face on it, l long, w deep, h high blocks. At each
 * corner one run goes through and the other butts against it; the next course swaps every corner. A run
 * starts, from its side's first corner: convex going through 0, convex butting w, reflex going through
 * -w, reflex butting 0; its end likewise. So the runs of an outer loop of perimeter P add up to
 * P - 4w in every course, of a hole's to P + 4w, and as rectangles they tile the wall exactly.
 *
 * Which run goes through at each corner is chosen so that the fewest pieces are cut over the courses
 * really laid; a side's cost depends only on its two corners, so the best choice is a shortest path
 * round the loop with two states a corner (corners.h); each run is laid by bond.h. */
#ifndef TAKEOFF_WALLS_WALL_H
#define TAKEOFF_WALLS_WALL_H

#include "takeoff/walls/side.h"
#include "takeoff/common/snags.h"
#include "takeoff/takeoff.h"

/* Lays the walls of all raised beds of a surveyed plot: fills walls, not_laid and complete of *takeoff
 * (whose survey is done) and adds the snags wall-jog, wall-narrow, wall-bond, bed-thin, cap-narrow. */
void wall_lay_all(struct takeoff *takeoff, struct arena *arena, const struct plot *plot,
	struct snag_list *snags);

/* What the wall of a bed is built of, by its entry and what the plot allows for. */
struct masonry wall_masonry(const struct takeoff *takeoff, const struct block *bed);
/* Cubic metres of so much of one course's runs in these blocks. */
double wall_volume(nm length, const struct size *block);
/* Kilograms a cubic metre of a bed's blocks and caps. */
double wall_density(const struct block *bed);

#endif
