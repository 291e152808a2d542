/* The rulers above and left of the plan, in feet and inches or metres, with the cursor's place. */
#ifndef SCREEN_RULER_H
#define SCREEN_RULER_H

#include "editor/editor.h"
#include "screen/layout.h"

void ruler_draw(const struct editor *editor, const struct layout *layout);

#endif
