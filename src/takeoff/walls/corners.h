/* Which side goes through at each corner of a loop.
 *
 * At each corner one of its two sides goes through in course 1 and the other in course 2. What
 * a side costs depends on its two corners alone, so the cheapest choice is a shortest path
 * round the loop with two states a corner. */
#ifndef TAKEOFF_WALLS_CORNERS_H
#define TAKEOFF_WALLS_CORNERS_H

#include <stdbool.h>
#include <stdint.h>

/* Of a side in course 1. of[a][b]: a is 1 if it goes through at its first corner, b if it does at
 * its last. Each 0 or more; a loop's sum must be below COST_EXCLUDED. */
struct side_cost {
	int64_t of[2][2];
};

#define COST_EXCLUDED INT64_MAX /* cannot be laid so */

/* Chooses for a loop of so many sides, side i from corner i to the next: through[i] is true
 * where side i goes through at its first corner in course 1, false where the side before it
 * does. Of equal costs, the choice in which side 0 goes through there, then side 1, and so on.
 * Returns the cost, COST_EXCLUDED (through untouched) where no choice can be laid. */
int64_t corners_choose(bool *through, const struct side_cost *costs, int sides);

#endif
