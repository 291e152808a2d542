/* The sheet of one block of a plot: a field for each attribute of its kind, straight from the attribute
 * table. */
#ifndef SCREEN_BLOCK_SHEET_H
#define SCREEN_BLOCK_SHEET_H

#include "screen/editor.h"

/* Asks for the attributes of a block of the editor's plot and, when the sheet is filled in, sets them.
 * False where it was left. The caller ends the stroke. */
bool block_sheet_fill(struct editor *editor, struct block *block, const char *title);

#endif
