/* The cards of the lie of the ground: the step that levels are measured at, and one drop after the
 * other. The caller ends the stroke. */
#ifndef EDITOR_CARDS_LEVELS_CARD_H
#define EDITOR_CARDS_LEVELS_CARD_H

#include "editor/editor.h"

/* Where drops are not measured yet all of them are 0 then. False where the card was left. */
bool levels_card_step(struct editor *editor);
/* Asks for the drop at a point of the levels; *onward says where it goes on. False where it was
 * left. */
bool levels_card_drop(struct editor *editor, struct place point, struct onward *onward);
/* The cell that such a point is in, or at the upper left corner of; the nearest where it lies
 * beyond the plan. */
struct place levels_point_cell(const struct editor *editor, struct place point);

#endif
