/* The sheet of the plot itself. The caller ends the stroke. */
#ifndef EDITOR_SHEETS_PLOT_SHEET_H
#define EDITOR_SHEETS_PLOT_SHEET_H

#include "editor/editor.h"

/* False where the sheet was left; else the editor may have said what became of the ground. */
bool plot_sheet_fill(struct editor *editor);

#endif
