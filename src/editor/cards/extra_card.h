/* The cards of extra goods. Whoever calls ends the stroke. */
#ifndef EDITOR_CARDS_EXTRA_CARD_H
#define EDITOR_CARDS_EXTRA_CARD_H

#include "editor/editor.h"

/* Each is false where it was left. */
bool extra_card_change(struct editor *editor, int which);
bool extra_card_add(struct editor *editor);
/* Asks which to remove. */
bool extra_card_remove(struct editor *editor);

#endif
