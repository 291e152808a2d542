/* The sheets of extra goods. Whoever calls ends the stroke. */
#ifndef EDITOR_SHEETS_EXTRA_SHEET_H
#define EDITOR_SHEETS_EXTRA_SHEET_H

#include "editor/editor.h"

/* Each is false where it was left. */
bool extra_sheet_change(struct editor *editor, int which);
bool extra_sheet_add(struct editor *editor);
/* Asks which to remove. */
bool extra_sheet_remove(struct editor *editor);

#endif
