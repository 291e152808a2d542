/* The picture from afar: each character stands for many cells, with colours and Unicode as two dots
 * of ground, one above the other, else as the commonest letter. */
#ifndef SCREEN_PLAN_FAR_H
#define SCREEN_PLAN_FAR_H

#include "screen/layout.h"
#include "screen/scene.h"

/* So many characters of the plan. */
void plan_far_draw(const struct scene *scene, const struct area *plan, struct place blocks);
/* The same while levels or the sun are shown: of the middle of a character's ground how deep it
 * lies, from 0, the highest, to 9, the lowest, or the sign of what sun it has, in its shade. */
void plan_far_draw_layer(const struct scene *scene, const struct area *plan, struct place blocks);

#endif
