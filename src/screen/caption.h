/* Below the plan, where there is room: a scale, where north is if the plot says so, its title. */
#ifndef SCREEN_CAPTION_H
#define SCREEN_CAPTION_H

#include "editor/editor.h"
#include "screen/layout.h"

/* On this row of the plan's area. */
void caption_draw(const struct editor *editor, const struct area *plan, int row);

/* Which way north is on a plan whose top has this bearing, in millionths of a degree: 0 up, then
 * clockwise by eighths of a turn. */
int caption_north(int64_t bearing);

#endif
