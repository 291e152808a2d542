/* The allowances that hold for a plot. */
#ifndef PRICES_ALLOW_H
#define PRICES_ALLOW_H

#include "prices/book.h"

/* What holds where a plot sets nothing: a block whose values are the book's (NULL: none), else
 * the defaults. */
const struct block *allow_unset(const struct book *book);
/* What the plot sets, else what holds without. The
 * values are the plot's and the book's own: the result in the arena must not outlive them. */
const struct block *allow_in_force(struct arena *arena, const struct plot *plot,
	const struct book *book);

#endif
