/* A card while it is filled in: what the screen shows of it, and what keys do to it. form.c opens
 * and closes it. */
#ifndef SCREEN_FILLING_H
#define SCREEN_FILLING_H

#include "editor/field/typing.h"
#include "screen/stage.h"

enum {
	LACKING_NONE = -1,
	VALUE_MOST = 1000 /* characters of what is no text: more than any value is written in */
};

struct filling {
	struct front front; /* first */
	const char *keys[9];  /* the front's: it is drawn anew while a key is waited for */
	struct card *card;
	int at;               /* the field that the cursor is in; after the last: the card's end */
	char **opened;        /* what the fields said at first, owned */
	struct typing typing; /* what that field says, while it is typed */
	/* How the word was begun that is being typed into a field that takes one of a few: as the
	 * words are written, in small letters. */
	struct text begun;
	/* The locale cannot show all of that field: it is left as it is until it is emptied. */
	bool is_held;
	/* The field that did not take all that was typed, LACKING_NONE: none. That is said before
	 * the card goes on. */
	int lacking;
	struct text said;     /* about what was typed or taken last; empty: nothing */
	struct fault fault;   /* what is wrong, on the message row; no words: nothing */
};

/* Whether the cursor is on the row below the fields, of a card that has one. */
bool filling_is_end(const struct filling *filling);
/* The last place that the cursor goes to. */
int filling_last(const struct filling *filling);
/* The cursor's field. */
const struct field *filling_field(const struct filling *filling);
/* Whether the cursor's field takes one of a few words. */
bool filling_is_choice(const struct filling *filling);

/* filling_draw.c: the card with all its fields (struct front). */
void filling_draw(const struct front *front, const struct layout *layout);
struct area filling_leaves(const struct front *front, const struct layout *layout);
/* The cursor's field alone, in an area of one row; leaves the terminal's cursor in it. */
void filling_draw_typing(const struct filling *filling, const struct area *area);

/* filling_words.c: what there is to say about where the cursor is, added to *words.
 *
 * What is wrong; or what was not taken, or was taken otherwise; or why nothing is taken. */
void filling_add_said(const struct filling *filling, struct text *words);
void filling_add_meaning(const struct filling *filling, struct text *words);
/* What the cursor's field says, where it is so many columns wide and that has no room for it. */
void filling_add_whole(const struct filling *filling, int columns, struct text *words);
/* The words that field takes, where they are more than two. */
void filling_add_choices(const struct filling *filling, struct text *words);
/* What holds while that field is unset. */
void filling_add_unset(const struct filling *filling, struct text *words);
/* What a number alone is in. */
void filling_add_unit(const struct filling *filling, struct text *words);

/* filling_keys.c */
/* Goes to a field; what is typed first then takes the place of what it says. */
void filling_go(struct filling *filling, int field);
/* The same, and leaves standing what is said. */
void filling_go_on(struct filling *filling, int field);
/* Puts the field right as it is left: what was typed gets the words it is taken in, which is said.
 * False, the fault filled, where it is wrong. */
bool filling_settle(struct filling *filling);
/* Whether a field says something else than when the card was opened. */
bool filling_has_changed(const struct filling *filling, int field);
/* All keys but those that end the card or take it. */
void filling_key(struct filling *filling, const struct keys *keys, int key);

/* filling_choose.c: a key in a field that takes one of a few words. Letters typed one after the
 * other begin a word; what begins none is said, and leaves the field as it is. */
void filling_choose(struct filling *filling, int key);

/* filling_type.c */
/* The field did not take what was typed: begins to say so, for the rest of the sentence to be
 * added. */
void filling_lack(struct filling *filling);
/* Puts one character in, or all that was pasted; says so where it does not go in. */
void filling_type(struct filling *filling, uint32_t character);
void filling_paste(struct filling *filling, const struct text *pasted);
/* Says that something came that is no character. */
void filling_miss(struct filling *filling);
/* Takes a change of the typing over into the card. */
void filling_take(struct filling *filling);

#endif
