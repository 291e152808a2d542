/* A line of text while it is typed: its characters, and the cursor among them. What is typed is
 * kept as it is, code by code; nothing is composed, taken apart or put in another order. A byte
 * that is no part of a character is kept too. */
#ifndef EDITOR_FIELD_LINE_H
#define EDITOR_FIELD_LINE_H

#include "base/text.h"

struct line {
	uint32_t *codes; /* owned */
	size_t count, capacity;
	size_t most;     /* characters that can be typed; a text that was set may have more */
	/* The cursor: the characters before it. Moves end between clusters; typing may leave it
	 * within one that is not whole yet. */
	size_t at;
	bool is_fresh;   /* just come to: what is typed or erased first takes all of it away */
};
#define LINE_EMPTY ((struct line){ .codes = NULL })

void line_fini(struct line *line);

/* The line says this text, of whatever length, and may hold `most` characters. Fresh, the cursor
 * at its start. */
void line_set(struct line *line, const char *text, size_t most);
/* Adds to *out what it says, up to the cursor or all of it: byte for byte as it was set and typed. */
void line_add_before(const struct line *line, struct text *out);
void line_add_all(const struct line *line, struct text *out);

/* How many characters can be typed now. */
size_t line_room(const struct line *line);
/* Puts characters in at the cursor, which goes behind them; all of them, or none and false where
 * there is no room for all. */
bool line_insert(struct line *line, const uint32_t *codes, size_t count);

enum line_edit {
	LINE_LEFT, LINE_RIGHT, /* by a cluster */
	LINE_START, LINE_END,
	/* What follows erases. */
	/* One character back: a mark is taken off its letter. All of the cluster where it is held
	 * together by a joiner, a variation selector or the colour of a skin. */
	LINE_BACKSPACE,
	LINE_DELETE,           /* the cluster that the cursor is on or in */
	LINE_ERASE_BEFORE,     /* from the start up to the cursor */
	LINE_ERASE_WORD,       /* the word before the cursor, and blanks between */
	LINE_ERASE_REST        /* from the cursor to the end */
};

/* Does one of these. Of a fresh line, erasing takes all. */
void line_edit(struct line *line, enum line_edit edit);

#endif
