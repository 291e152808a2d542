/* The sheets of fences: name, attributes, notes. The caller ends the stroke. */
#ifndef EDITOR_SHEETS_FENCE_SHEET_H
#define EDITOR_SHEETS_FENCE_SHEET_H

#include "editor/editor.h"

/* Adds a fence with nothing drawn yet, by a plain name; in a metric plot with its rounder values.
 * It is the last one. */
void fence_sheet_begin(struct editor *editor);
/* False where the sheet, or a question, was left. */
bool fence_sheet_change(struct editor *editor, int fence);
/* The new fence is the last one. */
bool fence_sheet_add(struct editor *editor);
bool fence_sheet_remove(struct editor *editor);

#endif
