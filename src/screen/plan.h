/* The picture of the plot: two columns a cell, its letter and its mark; or smaller, one letter for
 * one or more cells. */
#ifndef SCREEN_PLAN_H
#define SCREEN_PLAN_H

#include "editor/editor.h"
#include "screen/layout.h"

/* The editor is refreshed. */
void plan_draw(const struct editor *editor, const struct layout *layout);
/* Puts the terminal's cursor on the editor's. */
void plan_point(const struct editor *editor, const struct layout *layout);

#endif
