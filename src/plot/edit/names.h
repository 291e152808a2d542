/* Names of regions, as the ground under them changes. */
#ifndef PLOT_EDIT_NAMES_H
#define PLOT_EDIT_NAMES_H

#include "plot/plot.h"

/* Index of the name that counts for the region around a cell: the first in it; the count where it
 * has none. On open ground: of the names on that one cell. */
size_t names_of_region(struct plot *plot, struct place at);
/* Gives the region, or the cell of open ground, a name in place of the one that counts, or its
 * first one, at the cell; an empty text takes all its names away. */
void names_set(struct plot *plot, struct place at, const char *text);

/* Where a cell goes; false: it goes with all that is on it. */
typedef bool names_way(const void *how, struct place *at);
/* Moves all names to where their cells go. A name whose cell is gone stays with the patch of
 * one letter that it was in on the ground `before`, at the cell nearest to it that is left; where
 * none is it is gone too. */
void names_move(struct names *names, struct ground *before, names_way *way, const void *how);

#endif
