/* The values in force for a plot: its own, else the price book's, else the default. */
#ifndef PRICES_IN_FORCE_H
#define PRICES_IN_FORCE_H

#include "prices/book.h"

/* The plot with all values set that have a default in plots of its units, and bases by what is
 * allowed for: 4 in (100 mm), 6 in (150 mm) on clay or where frost is set. Other values whose
 * default is derived stay unset. Ground, runs and texts are the plot's and the book's own: the
 * result in the arena must not outlive them. */
struct plot plot_in_force(struct arena *arena, const struct plot *plot, const struct book *book);

#endif
