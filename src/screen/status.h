/* The first row and the two last: the state of the session, what there is to say, what keys do. */
#ifndef SCREEN_STATUS_H
#define SCREEN_STATUS_H

#include "editor/editor.h"
#include "screen/layout.h"

/* File, state, what is in hand, mirror. The editor is refreshed. */
void status_draw(const struct editor *editor, const struct layout *layout, enum state state);
/* Words of any length: they take rows upwards from the message row as they need. */
void status_message(const struct layout *layout, const char *words);
/* The first row that they take; the message row where there are none. */
int status_message_row(const struct layout *layout, const char *words);
/* What the keys do in one of the editor's own states, off the table of acts. */
void status_keys(const struct editor *editor, const struct layout *layout, enum state state);
/* The same in questions and forms, which say it themselves: pairs of key and word such as "Enter",
 * "pick", ended by a NULL. The keys are drawn strong. */
void status_key_words(const struct layout *layout, const char *const *pairs);
/* Instead of a message: the rectangle pegged or marked, if there is one. */
void status_rectangle(const struct editor *editor, const struct layout *layout);

#endif
