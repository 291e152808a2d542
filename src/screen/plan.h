/* The picture of the plot: two columns a cell, its letter and its mark. */
#ifndef SCREEN_PLAN_H
#define SCREEN_PLAN_H

#include "screen/editor.h"
#include "screen/layout.h"

/* first: the cell at the plan's top left. The editor is refreshed. */
void plan_draw(const struct editor *editor, const struct layout *layout, struct place first);
/* Puts the terminal's cursor on the editor's. */
void plan_point(const struct editor *editor, const struct layout *layout, struct place first);

#endif
