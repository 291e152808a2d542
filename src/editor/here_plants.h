/* What grows at the cursor, in words: the panel's foot. Pure. */
#ifndef EDITOR_HERE_PLANTS_H
#define EDITOR_HERE_PLANTS_H

#include "editor/editor.h"

/* Adds a line for each specimen in the cell, then one for each drift that fills the bed there; of
 * drifts of single beds only while the plot is counted. */
void here_plants_words(const struct editor *editor, const struct report *report, struct text *out);

#endif
