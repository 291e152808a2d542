/* The panel: one page of figures, and what is under the cursor. */
#ifndef SCREEN_PANEL_H
#define SCREEN_PANEL_H

#include "editor/editor.h"
#include "screen/layout.h"

/* Hidden, only what is under the cursor is drawn, below the plan. What is not counted yet is
 * said to be. */
void panel_draw(const struct editor *editor, const struct layout *layout);
/* How far down the page can be turned so that its end is just seen; hidden, it stays as it is. */
int panel_top_most(const struct editor *editor, const struct layout *layout);

#endif
