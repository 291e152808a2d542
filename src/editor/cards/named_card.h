/* The card of what has a name and a block: an entry of the legend, a fence, a plant. Its fields are
 * the name, the letter of what has one, the block's, and what else is to be seen there and can be
 * taken away. */
#ifndef EDITOR_CARDS_NAMED_CARD_H
#define EDITOR_CARDS_NAMED_CARD_H

#include "editor/cards/card_ask.h"

/* The card's owner. name and block point into the plot. */
struct named_card {
	struct editor *editor;
	const char *title;
	enum block_kind kind;
	const char *name;          /* so far; NULL: it is a new one */
	const struct block *block; /* so far; NULL: it is a new one */
	char letter;               /* in its field beforehand; NUL: there is no such field */
	char letter_so_far;        /* that it has; NUL: it is a new one */
	enum plot_class letter_class; /* it takes letters as entries of that class do */
	const char *letter_of;     /* whose it is, in a word: "bed" */
	/* Puts into the plot what was typed; name and *block are its own then. */
	void (*take)(struct named_card *named, char letter, char *name, const struct block *block);
	/* Fields behind the block's that are as they are, or emptied. */
	const struct field_spec *parts;
	int part_count;
	/* That was emptied; after all is taken. */
	void (*remove)(struct named_card *named, int part);
};

/* False where the card was left. */
bool named_card_ask(struct named_card *named);

#endif
