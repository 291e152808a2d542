/* The legend's entries: adding, changing and removing them. The caller ends the stroke. */
#ifndef EDITOR_SHEETS_ENTRY_SHEET_H
#define EDITOR_SHEETS_ENTRY_SHEET_H

#include "editor/editor.h"

/* Name, letter, attributes and notes of an entry; another letter is put on the ground as well.
 * False where the sheet was left. */
bool entry_sheet_change(struct editor *editor, char letter);
/* Asks for the class, then for all of a new entry, and takes it in hand. False where it was
 * left, or, said so, all letters of the class are taken. */
bool entry_sheet_add(struct editor *editor);
/* Asks which entry is removed and what its cells become. False where that was left. */
bool entry_sheet_remove(struct editor *editor);

#endif
