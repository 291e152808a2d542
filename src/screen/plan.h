/* The picture of the plot. At two columns a cell: its letter, and beside it its mark or the line
 * along its right side; one column; nearer, four columns and two rows; or from afar in dots
 * (plan_far.h). */
#ifndef SCREEN_PLAN_H
#define SCREEN_PLAN_H

#include "editor/editor.h"
#include "screen/layout.h"

/* The editor is drawn (editor_draw). */
void plan_draw(const struct editor *editor, const struct layout *layout);
/* Puts the terminal's cursor on the editor's. */
void plan_point(const struct editor *editor, const struct layout *layout);

#endif
