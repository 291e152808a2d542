/* Does the moves and acts of keys for what the mouse reports. It knows no terminal. */
#ifndef SCREEN_POINTER_H
#define SCREEN_POINTER_H

#include "editor/editor.h"
#include "editor/key.h"
#include "screen/layout.h"

bool area_holds(const struct area *area, const struct point *point);

/* On the plan: a press goes there; a press on the cursor's cell, let go there, is Space, or Enter
 * while pegged. A drag pegs where it began and is Enter where it ends; with the trail on it lays on
 * the way. The wheel scrolls. On the panel: its name lists the pages, the wheel turns the page up
 * and down. */
void pointer_take(struct editor *editor, const struct layout *layout, const struct point *point);

#endif
