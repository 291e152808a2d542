/* The first row and the two last: what the session stands at, what there is to say, what the keys do. */
#ifndef SCREEN_STATUS_H
#define SCREEN_STATUS_H

#include "editor/editor.h"
#include "screen/layout.h"

/* File, state, what is in hand, mirror. The editor is refreshed. */
void status_draw(const struct editor *editor, const struct layout *layout, enum state state);
/* Words of any length: they take rows upwards from the message row as they need. */
void status_message(const struct layout *layout, const char *words);
/* What the keys do in one of the editor's own states, off the table of acts. */
void status_keys(const struct editor *editor, const struct layout *layout, enum state state);
/* The same for other states, said by who is in charge: "Enter pick" with its key standing out. Pairs of
 * key and word, ended by a NULL. */
void status_key_words(const struct layout *layout, const char *const *pairs);
/* What there is to say while nothing else has been said: the rectangle pegged
 * or marked. */
void status_standing(const struct editor *editor, struct text *out);

#endif
