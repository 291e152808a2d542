/* The panel: one page of figures, and what is under the cursor. */
#ifndef SCREEN_PANEL_H
#define SCREEN_PANEL_H

#include "editor/editor.h"
#include "screen/layout.h"

/* here: the words of what is under the cursor (editor/here.h). Hidden, only these are drawn, below
 * the plan. What is not counted yet is said to be. */
void panel_draw(const struct editor *editor, const struct layout *layout, const struct text *here);
/* How many rows these words take in the panel's foot, as wide as that is. */
int panel_here_rows(const struct layout *layout, const struct text *here);
/* Lines of a page in view. */
int panel_page_rows(const struct layout *layout);
/* How far down the page can be turned so that its end is just seen; hidden, it stays as it is. */
int panel_top_most(const struct editor *editor, const struct layout *layout);

#endif
