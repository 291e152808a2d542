/* The rulers above and left of the plan: whole feet or metres, the lines along the plan's upper and
 * left edges, and in reverse where the cursor is. Nothing there hides anything else. */
#ifndef SCREEN_RULER_H
#define SCREEN_RULER_H

#include "editor/editor.h"
#include "screen/layout.h"

void ruler_draw(const struct editor *editor, const struct layout *layout);

/* "5'" or "5 m": whole feet or metres, so many at least that they take up so many characters, of
 * which a cell has `characters`, or one has `cells`. */
nm ruler_step(const struct editor *editor, int characters, int cells, int apart);
void ruler_words(const struct editor *editor, nm at, struct text *words);

#endif
