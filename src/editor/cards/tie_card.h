/* The cards of ties, of the drop and of the tap. The caller ends the stroke. Each is false where
 * the card was left. */
#ifndef EDITOR_CARDS_TIE_CARD_H
#define EDITOR_CARDS_TIE_CARD_H

#include "editor/editor.h"

bool tie_card_change(struct editor *editor, int which);
/* Offers where it is; the new one is the last. */
bool tie_card_add(struct editor *editor, struct place at);
/* Where deliveries are put down; it must be there. */
bool drop_card_change(struct editor *editor);
/* Where water comes from; it must be there. */
bool tap_card_change(struct editor *editor);

#endif
