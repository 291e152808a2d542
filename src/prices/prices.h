/* A price book as a file. */
#ifndef PRICES_PRICES_H
#define PRICES_PRICES_H

#include "prices/book.h"

/* Reads the book in the file. On failure *book needs no book_fini and message gets one line:
 * what the system said, "path:line:column: found ..., expected ...", or "path: goods[2].item:
 * found ..., expected ...". */
bool prices_read(const char *path, struct book *book, struct text *message);

/* Adds "path:line:column: found ..., expected ...", or "path: goods[2].item: found ...". */
void prices_fault(struct text *out, const char *path, const struct book_fault *fault);

/* The path of the book that the plot's head names, relative to the plot's file (symbolic links
 * followed) unless it begins with a slash. The caller frees it; NULL where the head names none. */
char *prices_path(const struct plot *plot, const char *plot_path);

#endif
