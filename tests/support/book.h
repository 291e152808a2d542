/* Price books for tests, written with ' for ". */
#ifndef SUPPORT_BOOK_H
#define SUPPORT_BOOK_H

#include "support/random.h"
#include "prices/book.h"

/* Reads the book: 'format', 'version' and 'currency' stand before the keys of `rest`, such as
 * "'goods': [ ... ]". Fails the running test where it is refused; book_fini frees it. */
void book_of(struct book *book, const char *rest);
/* Reads the text as it is, but for the quotes. */
bool book_try(struct book *book, const char *text, struct book_fault *fault);
/* Prices for most of what a plot of bricks of the given size needs, from up to 3 suppliers, at
 * random: dear and cheap, in small packs and in large, by volume and by weight, free now and
 * then. */
void book_at_random(struct book *book, struct random *random, const char *block);

#endif
