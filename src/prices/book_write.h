/* Writing price books: new ones to fill in, and quotes into those that are there. */
#ifndef PRICES_BOOK_WRITE_H
#define PRICES_BOOK_WRITE_H

#include "prices/quote.h"

/* The currency of a book while nobody has named one: the code of ISO 4217, Codes for the
 * representation of currencies, where no currency is meant (by memory). */
#define BOOK_NO_CURRENCY "XXX"

/* Goods for a new book, sold in one pack. */
struct new_goods {
	struct wanted_goods goods;
	struct quote quote;
};

/* Adds the text of a book with these goods, whatever currency their quotes have. False, *fault
 * saying why, where nobody could read it: more goods than a book may have, say. */
bool book_make(struct text *out, const char *currency, const struct new_goods *list, int count,
	enum units units, struct book_fault *fault);

/* Where a quote stands in a book. */
struct quote_place {
	int row;   /* of the goods; ROW_NEW: they have none so far */
	int pack;  /* of that row's; their count: one more of them */
	struct wanted_goods goods; /* of a new row */
};

/* Adds the text of the book in `bytes`, which can be read, with the quote at its place. All else
 * stays as it is, in its order; the lines are laid out anew. False, *fault saying why, where nobody
 * could read it then. */
bool book_put(struct text *out, const struct text *bytes, const struct quote_place *place,
	const struct quote *quote, enum units units, struct book_fault *fault);

#endif
