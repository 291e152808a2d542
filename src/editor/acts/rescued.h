/* Rescued work is offered when a session starts. */
#ifndef EDITOR_ACTS_RESCUED_H
#define EDITOR_ACTS_RESCUED_H

#include "editor/editor.h"

/* Whether there is work that could be taken up in place of a plot that cannot be read. */
bool rescued_is_there(const struct editor *editor);
/* Asks about each file that sessions before have left, until the work of one is taken up: the
 * editor has read the plot. May end the session, or leave it looking. What holds nothing new is
 * dropped, what cannot be read is set aside. What there is to say is added to *said. */
void rescued_ask(struct editor *editor, struct text *said);

#endif
