/* Specimens on the plan: the plant's letter in its cell, and round it the edge of what it covers
 * when it is grown; in the nearest view the plants of drifts too, where each stands. From afar:
 * plan_far.h. */
#ifndef SCREEN_PLAN_PLANTS_H
#define SCREEN_PLAN_PLANTS_H

#include "screen/layout.h"
#include "screen/scene.h"

/* On cells drawn already, so many in view; each has a character or more. */
void plan_plants_draw(const struct scene *scene, const struct area *plan, struct place blocks);

#endif
