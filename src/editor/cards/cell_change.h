/* Cells of another side under ground that is drawn already. */
#ifndef EDITOR_CARDS_CELL_CHANGE_H
#define EDITOR_CARDS_CELL_CHANGE_H

#include "editor/editor.h"

/* Where a new head of the plot has another cell: asks whether the ground keeps its cells or its
 * measure, samples it anew for the latter, and says what was rounded. The mirror and its axis
 * are the new head's; a set axis moves with the ground. False, nothing changed, where the
 * question was left or, fault filled, where there would be too many cells. */
bool cell_change(struct editor *editor, struct block *head, struct fault *fault);

#endif
