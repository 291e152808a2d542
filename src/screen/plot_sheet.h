/* The sheet of the plot itself. Whoever calls ends the stroke. */
#ifndef SCREEN_PLOT_SHEET_H
#define SCREEN_PLOT_SHEET_H

#include "screen/editor.h"

/* False where the sheet was left; else the editor may have said what became of the ground. */
bool plot_sheet_fill(struct editor *editor);

#endif
