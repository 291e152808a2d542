/* What casts shade on a plan, and what the sun falls on there.
 *
 * The ground is taken as level. Shade is cast by fixtures, whole cells up to their height; by
 * fences and their gates, thin sheets along the sides of cells from the ground up to the gap and
 * the height; by the walls of raised beds with their caps, whether they are laid out or not; by
 * houses whose height is told; by what the plot calls shade. What is hollow or has gaps is taken
 * as solid.
 *
 * Looked at are the middles of cells, at what is seen from above there: in raised beds the mulch's
 * top, or the wall's where the wall is under the middle; finished ground elsewhere. Cells of
 * fixtures and houses have no figure. */
#ifndef TAKEOFF_SUN_SUN_SCENE_H
#define TAKEOFF_SUN_SUN_SCENE_H

#include "survey/shade.h"
#include "takeoff/takeoff.h"

/* All lives in the arena. Time: O(cells). It can be stopped. */
void sun_scene_make(struct shade_scene *out, struct arena *arena, const struct takeoff *takeoff);

#endif
