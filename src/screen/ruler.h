/* The rulers above and left of the plan, in feet and inches or metres, with the cursor's place. */
#ifndef SCREEN_RULER_H
#define SCREEN_RULER_H

#include "screen/editor.h"
#include "screen/layout.h"

void ruler_draw(const struct editor *editor, const struct layout *layout);
/* Adds the distance of a cell's near edge from the datum, as short as it can be said: 5', 2'6", 1.5. */
void ruler_words(struct text *out, nm length, enum units units);

#endif
