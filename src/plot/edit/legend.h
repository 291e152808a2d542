/* Changing the legend together with the ground that lies under its letters. */
#ifndef PLOT_EDIT_LEGEND_H
#define PLOT_EDIT_LEGEND_H

#include "plot/plot.h"

/* Index of the letter's entry, or -1. */
int legend_index(const struct details *details, char letter);
/* Whether neither an entry nor a plant has it. */
bool legend_is_free(const struct details *details, char letter);
/* A letter of the class that is free, the first in the alphabet; NUL where all are taken. */
char legend_free_letter(const struct details *details, enum plot_class class);
/* Cells of the ground with a letter. */
int64_t legend_cells(const struct plot *plot, char letter);
/* Gives an entry another letter, on the ground and in drifts too. The letter must
 * be free and of its class. */
void legend_reletter(struct plot *plot, char letter, char to);
/* Removes an entry, with the drifts that fill all of its beds; its cells become `to`: open ground
 * or another letter of the legend. */
void legend_remove(struct plot *plot, char letter, char to);

#endif
