/* A price book to fill in: a row for each of the goods that a plot buys, in the pack to ask for at
 * a counter (takeoff/costs/counter.h), without prices. Spoil is hauled in the steps of a truck. */
#ifndef REPORT_NEW_BOOK_H
#define REPORT_NEW_BOOK_H

#include "prices/quote.h"
#include "takeoff/takeoff.h"

/* Adds its text, of a takeoff that was counted without a book; currency NULL: none is known. False,
 * *message saying why in one line, where no book can hold so much. */
bool new_book(struct text *out, const struct takeoff *takeoff, const char *currency,
	struct text *message);

/* What it has of an item that is bought, and for which the book in force, if any, has no packs. */
struct quote new_quote(struct arena *arena, const struct item *item, enum units units);

#endif
