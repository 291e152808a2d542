/* Changing the legend together with the ground that lies under its letters. */
#ifndef PLOT_EDIT_LEGEND_H
#define PLOT_EDIT_LEGEND_H

#include "plot/plot.h"

/* Index of the letter's entry, or -1. */
int legend_index(const struct details *details, char letter);
/* A letter of the class that no entry has yet, the first in the alphabet; NUL where all are
 * taken. */
char legend_free_letter(const struct details *details, enum plot_class class);
/* Cells of the ground with a letter. */
int64_t legend_cells(const struct plot *plot, char letter);
/* Gives an entry another letter, on the ground too. The letter must be free and of its class. */
void legend_reletter(struct plot *plot, char letter, char to);
/* Removes an entry; its cells become `to`: open ground or another letter of the legend. */
void legend_remove(struct plot *plot, char letter, char to);

#endif
