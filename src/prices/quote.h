/* A quote: one pack of a price book in words, as a card has it and the file spells it, with what
 * it shares with others. */
#ifndef PRICES_QUOTE_H
#define PRICES_QUOTE_H

#include "prices/book.h"

/* Keys of the pack, up to the supplier; of its goods; of the book. */
enum quote_key {
	QUOTE_PACK, QUOTE_SIZE, QUOTE_PRICE, QUOTE_STEP, QUOTE_WEIGHT, QUOTE_SUPPLIER, QUOTE_SPEC,
	QUOTE_CURRENCY
};
enum { QUOTE_KEYS = QUOTE_CURRENCY + 1, QUOTE_NONE = -1 };

struct quote {
	const char *words[QUOTE_KEYS]; /* "": the key is left out */
};

/* "pack", "size". */
const char *quote_word(enum quote_key key);
/* The key at the end of a fault's path; QUOTE_NONE: it is about something else. */
int quote_key_of(const struct book_fault *fault);
bool quote_equal(const struct quote *a, const struct quote *b);

/* Of a pack that is in no book, in units of the kind: a measure is rounded up to a millionth of its
 * unit. What the pack does not say is left out. New words are in the arena. */
struct quote quote_of_pack(struct arena *arena, const struct pack *pack, enum units units);
/* Of a pack of a book, in its own words. bytes: of a book that can be read; row: of its goods; pack
 * may be the count of the row's packs, row ROW_NEW: then only what is shared is there. */
enum { ROW_NEW = -1 };
struct quote quote_of_book(struct arena *arena, const struct text *bytes, int row, int pack);

#endif
