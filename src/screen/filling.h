/* A sheet while it is filled in: what the screen shows of it, and what keys do to it. form.c opens
 * and closes it. */
#ifndef SCREEN_FILLING_H
#define SCREEN_FILLING_H

#include "editor/field/typing.h"
#include "screen/stage.h"

enum { ROW_COLUMNS = 44 }; /* a label and its field */
enum { LACKING_NONE = -1 };

struct filling {
	struct front front; /* first */
	const char *keys[9];  /* the front's: it is drawn anew while a key is waited for */
	struct sheet *sheet;
	int at;               /* the field that the cursor is in */
	struct typing typing; /* what that field says, while it is typed */
	/* The locale cannot show all of that field: it is left as it is until it is emptied. */
	bool is_held;
	/* The field that did not take all that was typed, LACKING_NONE: none. That is said before
	 * the sheet goes on. */
	int lacking;
	struct text said;     /* about what was typed last; empty: nothing */
	struct fault fault;   /* what is wrong, on the message row; no words: nothing */
};

const struct field *filling_field(const struct filling *filling);
/* Whether the cursor's field takes one of a few words. */
bool filling_is_choice(const struct filling *filling);

/* filling_draw.c: draws the sheet: a front's draw. */
void filling_draw(const struct front *front, const struct layout *layout);

/* filling_keys.c */
/* Goes to a field; typing then begins afresh. */
void filling_go(struct filling *filling, int field);
/* Goes to what is wrong, to be mended rather than typed anew. */
void filling_go_to(struct filling *filling, int field);
/* All keys but those that end the sheet or take it. */
void filling_key(struct filling *filling, const struct keys *keys, int key);

/* filling_type.c */
/* Puts one character in, or all that was pasted; says so where it does not go in. */
void filling_type(struct filling *filling, uint32_t character);
void filling_paste(struct filling *filling, const struct text *pasted);
/* Says that something came that is no character. */
void filling_miss(struct filling *filling);
/* Takes a change of the typing over into the sheet. */
void filling_take(struct filling *filling);

#endif
