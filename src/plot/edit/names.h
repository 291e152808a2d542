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
/* Moves one cell there; where that is gone, to the nearest that is left of the patch of one letter
 * that it was in on the ground `before`. False where none is. */
bool names_move_cell(struct ground *before, struct place *at, names_way *way, const void *how);
/* Moves all names to where their cells go. A name whose cell is gone stays with what is left of
 * its patch; where nothing is it is gone too. */
void names_move(struct names *names, struct ground *before, names_way *way, const void *how);

#endif
