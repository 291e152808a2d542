/* What a step made of a plot, in the plot's own words: so small that each step is written down at
 * once, and complete, so that whoever reads it again needs no step. In order:
 *
 *	a whole plot         where the ground got another size, or nearly all of it changed
 *	a plot without rows  where more than letters changed
 *	cells X Y LETTERS    letters side by side from the cell X, Y on; such lines come last */
#ifndef PLOT_HISTORY_CHANGE_H
#define PLOT_HISTORY_CHANGE_H

#include "plot/history/step.h"

/* Appends what the step changed, as it is in the plot now; no line begins with "step ". */
void change_write(const struct step *step, const struct plot *plot, struct text *out);
/* Makes of a plot, as it was, what the words say. False, the plot untouched, where they make no
 * plot of it. */
bool change_read(const char *bytes, size_t length, struct plot *plot);

#endif
