/* What is around the plot at the cursor, in words: the panel's foot. Pure. */
#ifndef EDITOR_HERE_AROUND_H
#define EDITOR_HERE_AROUND_H

#include "editor/editor.h"

/* Adds a line for each thing, and one for the lie of the ground. The editor is drawn
 * (editor_draw). */
void here_around_words(const struct editor *editor, const struct report *report, struct text *out);

/* Adds "left, below": those sides of the cell that one of the legs covers. */
void here_sides(const struct leg *legs, size_t count, struct place cell, struct text *out);

#endif
