/* The cards of fences: name, attributes, notes. The caller ends the stroke. */
#ifndef EDITOR_CARDS_FENCE_CARD_H
#define EDITOR_CARDS_FENCE_CARD_H

#include "editor/editor.h"

/* Adds a fence with nothing drawn yet, by a plain name; in a metric plot with its rounder values.
 * It is the last one. */
void fence_card_begin(struct editor *editor);
/* False where the card, or a question, was left. */
bool fence_card_change(struct editor *editor, int fence);
/* The new fence is the last one. */
bool fence_card_add(struct editor *editor);
bool fence_card_remove(struct editor *editor);

#endif
