/* A new plot: its form, the answers it offers, and the legend it starts with. */
#ifndef EDITOR_CARDS_BEGIN_H
#define EDITOR_CARDS_BEGIN_H

#include "editor/editor.h"

/* Open ground as the form offers it, to be seen while a question is asked. */
void begin_preview(struct plot *plot);
/* Asks for size, cell, units and title; the editor then has the new plot, not saved. False where
 * the form was left. */
bool begin_ask(struct editor *editor);

#endif
