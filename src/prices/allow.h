/* The allowances in force for a plot. */
#ifndef PRICES_ALLOW_H
#define PRICES_ALLOW_H

#include "prices/book.h"

/* The allowances where a plot sets none: the book's (NULL: no book), else the defaults. */
const struct block *allow_unset(const struct book *book);
/* The plot's allowances, the others as from allow_unset. The values are the plot's and the
 * book's own: the result in the arena must not outlive them. */
const struct block *allow_in_force(struct arena *arena, const struct plot *plot,
	const struct book *book);

#endif
