/* The attributes and notes of one block of a plot. */
#ifndef PLOT_BLOCK_H
#define PLOT_BLOCK_H

#include "plot/attribute.h"

/* Notes: texts that are kept, in order. Start from NOTES_EMPTY, end with notes_fini. */
struct notes {
	char **texts; /* owned */
	size_t count, capacity;
};
#define NOTES_EMPTY ((struct notes){ NULL, 0, 0 })

void notes_fini(struct notes *notes);
/* Appends a note, taking over text. */
void notes_add(struct notes *notes, char *text);
struct notes notes_copy(const struct notes *notes);
bool notes_equal(const struct notes *a, const struct notes *b);

/* The attributes and notes of one block of the plot, whatever its kind. */
struct block {
	enum block_kind kind;
	struct notes notes;
	struct value *values; /* by attribute less block_first; NULL while none was ever set */
};

void block_fini(struct block *block);
struct block block_copy(const struct block *block);
bool block_equal(const struct block *a, const struct block *b);
/* True where nothing is set and nothing noted. */
bool block_is_empty(const struct block *block);

/* The value as the plot has it, set or not. The attribute must be one of the block's kind. */
const struct value *block_value(const struct block *block, enum attribute a);
/* Sets (or, by an unset value, unsets) an attribute; takes over what value owns. */
void block_set(struct block *block, enum attribute a, struct value value);
/* The value that holds: the block's, else the default of an imperial plot; a block in force
 * (prices/in_force.h) has its values set. Not for attributes with derived defaults. */
const struct value *block_effective(const struct block *block, enum attribute a);
nm block_length(const struct block *block, enum attribute a);
int64_t block_number(const struct block *block, enum attribute a);
/* An amount in SI units. */
double block_amount(const struct block *block, enum attribute a);
/* A percentage as a share: 0.05 for 5 %. */
double block_share(const struct block *block, enum attribute a);

#endif
