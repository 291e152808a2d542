/* The sheet of the hours that work takes. Whoever calls ends the stroke. */
#ifndef EDITOR_SHEETS_RATES_SHEET_H
#define EDITOR_SHEETS_RATES_SHEET_H

#include "editor/editor.h"

/* False where the sheet was left. */
bool rates_sheet_fill(struct editor *editor);

#endif
