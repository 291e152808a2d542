/* Panels between the posts of a fence, and which panel each narrower one is cut from. */
#ifndef TAKEOFF_FENCE_PANELS_H
#define TAKEOFF_FENCE_PANELS_H

#include "takeoff/fence/fencing.h"

/* Divides leg->length: whole sections, then the rest cut from one more. A rest under 1 ft (common
 * practice, no published source) is shared with the last whole section, halves to the nanometre. No
 * panel where the posts at the ends, `post` across, leave no room. */
void panels_divide(struct fence_leg *leg, nm section, nm post);

/* Counts the panels of all legs and plans their cutting: longest first, and then leaves of gates
 * from what is left of cut panels where one is long enough. Fills panel .. leaves_count;
 * fencing->kerf and fencing->fit say how is sawn. */
void panels_cut(struct fencing *fencing, struct arena *arena);

#endif
