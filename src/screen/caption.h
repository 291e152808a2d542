/* Below the plan, where there is room: a scale, where north is if the plot says so, its title. */
#ifndef SCREEN_CAPTION_H
#define SCREEN_CAPTION_H

#include "editor/editor.h"
#include "screen/layout.h"

/* In this area, of a row at least. A title takes more of them where it has no room beside the rest;
 * where there are no more it stands before the scale, which rulers have too. */
void caption_draw(const struct editor *editor, const struct area *area);

#endif
