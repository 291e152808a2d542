/* A set of cells of a ground: one is put in, found or taken out in no time, however many there
 * are. */
#ifndef PLOT_CELL_SET_H
#define PLOT_CELL_SET_H

#include "plot/plot.h"

/* Begins with cell_set_of, ends with cell_set_fini. */
struct cell_set {
	int columns;
	size_t cells;
	bool *has; /* owned; NULL while nothing was put in */
};

/* Empty; of the ground only its size is asked. */
struct cell_set cell_set_of(const struct ground *size);
void cell_set_fini(struct cell_set *set);
/* Puts a cell of the ground in; false where it was in already. */
bool cell_set_add(struct cell_set *set, struct place at);
/* Takes it out; false where it was not in. */
bool cell_set_take(struct cell_set *set, struct place at);

#endif
