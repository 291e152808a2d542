/* The sun over the plan, where that is shown (editor/light.h). Near views have its shades and signs
 * by the scene; this is the rest. */
#ifndef SCREEN_PLAN_LIGHT_H
#define SCREEN_PLAN_LIGHT_H

#include "screen/layout.h"
#include "screen/scene.h"

/* What shades and signs mean, in the area's one row; or why there are none yet: what is missing, or
 * that they are being counted. An area without rows gets nothing. */
void plan_light_draw_scale(const struct editor *editor, const struct area *area);

#endif
