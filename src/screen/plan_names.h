/* Regions' names in their middles, as far as they are counted and there is room: B1, or with what
 * the legend calls it. */
#ifndef SCREEN_PLAN_NAMES_H
#define SCREEN_PLAN_NAMES_H

#include "screen/layout.h"
#include "screen/scene.h"

/* On cells drawn already, so many in view; each has a character or more. */
void plan_names_draw(const struct scene *scene, const struct area *plan, struct place blocks);

#endif
