/* A new plot: its form, the answers that stand in it, and the legend it starts with. */
#ifndef EDITOR_SHEETS_BEGIN_H
#define EDITOR_SHEETS_BEGIN_H

#include "editor/editor.h"

/* Open ground with the answers that stand in the form, to be seen behind questions. */
void begin_preview(struct plot *plot);
/* Asks for size, cell, units and title; the editor then has the new plot, not saved. False where the
 * form was left. */
bool begin_ask(struct editor *editor);

#endif
