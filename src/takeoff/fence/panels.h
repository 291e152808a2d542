/* Panels between the posts of a fence, and which panel each narrower one is cut from. */
#ifndef TAKEOFF_FENCE_PANELS_H
#define TAKEOFF_FENCE_PANELS_H

#include "takeoff/fence/fencing.h"

/* A rest narrower than this is shared: common practice, no published source. */
#define PANEL_REST_LEAST NM_PER_FOOT

/* Divides leg->length: whole sections, then the rest cut from one more. A rest under
 * PANEL_REST_LEAST is shared with the last whole section, halves to the nanometre. No panels where
 * posts `post` across leave no room between them. */
void panels_divide(struct fence_leg *leg, nm section, nm post);

/* Counts the panels of all legs and plans their cutting: longest first, then leaves of gates
 * from the offcuts that are long enough. Fills panel .. leaves_count; needs fencing->kerf and
 * fencing->fit. */
void panels_cut(struct fencing *fencing, struct arena *arena);

#endif
