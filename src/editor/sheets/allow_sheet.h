/* The sheets of what is allowed for in all of the plot, one for each few trades. Whoever calls ends
 * the stroke. */
#ifndef EDITOR_SHEETS_ALLOW_SHEET_H
#define EDITOR_SHEETS_ALLOW_SHEET_H

#include "editor/ask/block_sheet.h"
#include "editor/editor.h"

/* They share out the attributes of the block, in its order; the first has its notes. */
struct block_part allow_sheet_part(int sheet);
/* False where the sheet was left. */
bool allow_sheet_fill(struct editor *editor, int sheet);

#endif
