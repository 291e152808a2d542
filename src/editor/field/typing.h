/* A text while it is typed: its characters, and the cursor among them. What is typed is kept as it
 * is, code by code; nothing is composed, taken apart or put in another order. A byte that is no
 * part of a character is kept too. */
#ifndef EDITOR_FIELD_TYPING_H
#define EDITOR_FIELD_TYPING_H

#include "base/text.h"

struct typing {
	uint32_t *codes; /* owned */
	size_t count, capacity;
	size_t most;     /* characters that can be typed; a text that was set may have more */
	/* The cursor: the characters before it. Moves end between clusters; typing may leave it
	 * within one that is not whole yet. */
	size_t at;
	bool is_fresh;   /* just come to: what is typed or erased first takes all of it away */
};
#define TYPING_EMPTY ((struct typing){ .codes = NULL })

void typing_fini(struct typing *typing);

/* Says this text, of whatever length, and takes `most` characters. It is fresh, the cursor at its
 * start. */
void typing_set(struct typing *typing, const char *text, size_t most);
/* Adds to *out what it says, up to the cursor or all of it: byte for byte as it was set and
 * typed. */
void typing_add_before(const struct typing *typing, struct text *out);
void typing_add_all(const struct typing *typing, struct text *out);

/* How many characters can be typed now. */
size_t typing_room(const struct typing *typing);
/* Puts characters in at the cursor, which goes after them; all of them, or none and false where
 * there is no room for all. */
bool typing_insert(struct typing *typing, const uint32_t *codes, size_t count);

enum typing_edit {
	TYPING_LEFT, TYPING_RIGHT, /* by a cluster */
	TYPING_START, TYPING_END,
	/* What follows erases. */
	/* One character back: a mark is taken off its letter. All of the cluster where it is held
	 * together by a joiner, a variation selector or the colour of a skin. */
	TYPING_BACKSPACE,
	TYPING_DELETE,           /* the cluster that the cursor is on or in */
	TYPING_ERASE_BEFORE,     /* from the start up to the cursor */
	TYPING_ERASE_WORD,       /* the word before the cursor, and blanks between */
	TYPING_ERASE_REST        /* from the cursor to the end */
};

/* Does one of these. Of a fresh typing, erasing takes all. */
void typing_edit(struct typing *typing, enum typing_edit edit);

#endif
