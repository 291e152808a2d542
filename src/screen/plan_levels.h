/* How the ground lies, over the plan, where that is switched on and measured: but for the scale,
 * only while levels are shown. */
#ifndef SCREEN_PLAN_LEVELS_H
#define SCREEN_PLAN_LEVELS_H

#include "screen/layout.h"
#include "screen/scene.h"

/* For views in which a cell has characters of its own: each drop at its point, as a tape is read,
 * or a dot where it has no room. */
void plan_levels_draw_points(const struct scene *scene, const struct area *plan,
	struct place blocks);
/* What digits and shades mean, in the area's first row: "0 in 0123456789 9 in below the string".
 * False: there are none to explain, or there is no room. */
bool plan_levels_draw_scale(const struct scene *scene, const struct area *area);

#endif
