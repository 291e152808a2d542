/* A new plot: its form, the answers that stand in it, and the legend it starts with. */
#ifndef SCREEN_BEGIN_H
#define SCREEN_BEGIN_H

#include "screen/editor.h"

/* Open ground with the answers that stand in the form, to be seen behind questions. */
void begin_preview(struct plot *plot);
/* Asks for size, cell, units and title; the editor then has the new plot, not saved. False where the
 * form was left. */
bool begin_ask(struct editor *editor);

#endif
