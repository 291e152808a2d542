/* The allowances that hold for a plot. */
#ifndef PRICES_ALLOW_H
#define PRICES_ALLOW_H

#include "prices/book.h"

/* What the plot sets, else what the book (NULL: none) sets, else nothing, so that the default holds. The
 * values are the plot's and the book's own: the result in the arena must not outlive them. */
const struct block *allow_in_force(struct arena *arena, const struct plot *plot,
	const struct book *book);

#endif
