/* What is under the cursor, in words: the panel's foot. Pure. */
#ifndef EDITOR_HERE_H
#define EDITOR_HERE_H

#include "editor/editor.h"

/* Adds lines, each ended by a newline: the place, the region, its size and area, what the cell's
 * mark means; without size and area where they are not counted yet. The editor is drawn
 * (editor_draw). */
void here_words(const struct editor *editor, struct text *out);

#endif
