/* The legend's entries: adding, changing and removing them. The caller ends the stroke. */
#ifndef EDITOR_CARDS_ENTRY_CARD_H
#define EDITOR_CARDS_ENTRY_CARD_H

#include "editor/editor.h"

/* Name, letter, attributes and notes of an entry; another letter is put on the ground as well.
 * False where the card was left. */
bool entry_card_change(struct editor *editor, char letter);
/* Asks for the class, then for all of a new entry, and takes it in hand. False where it was
 * left, or, said so, all letters of the class are taken. */
bool entry_card_add(struct editor *editor);
/* Asks which entry is removed and what its cells become. False where that was left. */
bool entry_card_remove(struct editor *editor);

#endif
