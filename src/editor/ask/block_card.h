/* The part of a card that every block of a plot has: a field for each attribute of its kind, or
 * some of them, straight from the attribute table, then its notes, then an empty one for one note
 * more. */
#ifndef EDITOR_ASK_BLOCK_CARD_H
#define EDITOR_ASK_BLOCK_CARD_H

#include "plot/block.h"
#include "editor/ask/card.h"

/* Notes that can be changed in a card; later ones stay as they are. */
enum { CARD_NOTES_MOST = 100 };

/* Which attributes of a block one card has, from one to the other, and whether its notes. */
struct block_part {
	enum attribute first, last;
	bool has_notes;
	const struct block *held; /* what holds where the block sets nothing; NULL: the defaults */
};

/* All of it. */
struct block_part block_whole(enum block_kind kind);
/* None of its attributes: for what has notes and no block of its own. */
struct block_part block_notes_alone(void);
/* How many fields that makes. */
int block_fields(const struct block *block, const struct block_part *part);
/* Labels the fields from `first` on and types what the block says, in the card's units. */
void block_fields_set(struct card *card, int first, const struct block *block,
	const struct block_part *part);
/* Has the fields say what holds while they are unset, after part->held has changed. */
void block_fields_unset(struct card *card, int first, const struct block_part *part);
/* Reads the fields into a block that they were set from; what nobody touched stays as it is.
 * False, fault filled, the block as it was, where one is wrong. */
bool block_fields_read(const struct card *card, int first, struct block *block,
	const struct block_part *part, struct fault *fault);

#endif
