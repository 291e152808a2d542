/* A sheet while it is filled in: what curses' form holds of it, what the screen shows of it, what
 * keys do to it. form.c opens and closes it. */
#ifndef SCREEN_FILLING_H
#define SCREEN_FILLING_H

#include "screen/curses.h"
#include "screen/stage.h"

enum { ROW_COLUMNS = 44 }; /* a label and its field */

struct filling {
	struct front front; /* first */
	struct sheet *sheet;
	FIELD **fields;
	char **seen;        /* what curses had in each field when it was last looked at */
	FORM *form;
	WINDOW *pad;        /* one row a field; what is in view is copied, then labelled */
	bool is_fresh;      /* the field was just come to: typing replaces what it says */
	struct fault fault; /* what is wrong, on the message row; no words: nothing */
};

/* The index of the field that the cursor is in. */
int filling_at(const struct filling *filling);
/* Whether it takes one of a few words. */
bool filling_is_choice(const struct filling *filling);

/* filling_draw.c */
/* Where a field begins, after its label. */
int filling_column(const struct field *field);
/* Draws the sheet: a front's draw. */
void filling_draw(const struct front *front, const struct layout *layout);

/* filling_keys.c */
/* Puts what is typed in the sheet into curses' field. */
void filling_show_field(struct filling *filling, int at);
/* Goes on by one of curses' requests; typing then begins afresh. */
void filling_go(struct filling *filling, int request);
/* Goes to what is wrong, to be mended rather than typed anew. */
void filling_go_to(struct filling *filling, int field);
/* All keys but those that end the sheet or take it. */
void filling_key(struct filling *filling, const struct keys *keys, int key);

#endif
