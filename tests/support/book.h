/* Price books for tests, written with ' for ". */
#ifndef SUPPORT_BOOK_H
#define SUPPORT_BOOK_H

#include "takeoff/book.h"

/* Reads the book: 'format', 'version' and 'currency' stand before the keys of `rest`, such as
 * "'goods': [ ... ]". Fails the running test where it is refused; book_fini frees it. */
void book_of(struct book *book, const char *rest);
/* Reads the text as it is, but for the quotes. */
bool book_try(struct book *book, const char *text, struct book_fault *fault);
/* The file. */
void book_file(struct book *book, const char *path);

#endif
