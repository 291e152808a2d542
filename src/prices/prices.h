/* A price book as a file. */
#ifndef PRICES_PRICES_H
#define PRICES_PRICES_H

#include "prices/book.h"

/* Reads the book in the file. On failure *book holds nothing and message one line: what the
 * system said, "path:line:column: found ..., expected ...", or "path: goods[2].item: found ...,
 * expected ...". */
bool prices_read(const char *path, struct book *book, struct text *message);

/* Where the book is that the plot's head names: beside the plot's file, symbolic links followed,
 * but for a name that begins with a slash. New memory; NULL where it names none. */
char *prices_path(const struct plot *plot, const char *plot_path);

#endif
