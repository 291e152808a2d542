/* The card of the finished ground: its level at a place, and its fall. */
#ifndef EDITOR_CARDS_FINISH_CARD_H
#define EDITOR_CARDS_FINISH_CARD_H

#include "editor/editor.h"

/* Either may be missing; what is emptied goes. False where the card was left; the caller ends the
 * stroke. */
bool finish_card_fill(struct editor *editor);

#endif
