/* What is proposed of each kind: tried, and kept where it is one to tell of (attempt.h). Each can
 * be stopped (base/stop.h). */
#ifndef TAKEOFF_ADVICE_PROPOSE_H
#define TAKEOFF_ADVICE_PROPOSE_H

#include "takeoff/advice/attempt.h"

/* Of one bed at most so many sizes. */
enum { SIZES_TOLD = 2 };

/* For each letter of raised beds a course less. */
void propose_courses(struct attempts *attempts);
/* For each of them each wall block of the price book of which whole courses are as high. */
void propose_blocks(struct attempts *attempts);
/* For each two beds that could be one, with their images: by the letter of the first. */
void propose_joinings(struct attempts *attempts);
/* For each leg of a fence, with its images, the way within FENCE_REACH cells, to either side, that
 * leaves the fewest panels to saw; of ways as good the shortest, to the left or up before to the
 * right or down. */
void propose_fences(struct attempts *attempts);
enum { FENCE_REACH = 4 };
/* For each rectangular bed with cut pieces, with its images, the nearest sizes whose wall needs no
 * cut (near.h) that there is ground for. It keeps its left and its top edge where it can, else its
 * right and its bottom one, else its middle. */
void propose_sizes(struct attempts *attempts);

#endif
