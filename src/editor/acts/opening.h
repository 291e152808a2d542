/* How a session starts: the plot is read, rescued work is offered, a new plot is begun. */
#ifndef EDITOR_ACTS_OPENING_H
#define EDITOR_ACTS_OPENING_H

#include "editor/editor.h"

/* Reads the plot's file, if there is one, into a new editor; else shows open ground. False, message
 * filled, where the file cannot be read. Asks nothing. */
bool opening_read(struct editor *editor, struct text *message);
/* Asks what there is to be asked before drawing: about rescued work, about a new plot. May end the
 * session. */
void opening_ask(struct editor *editor);

#endif
