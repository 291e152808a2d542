/* What must hold of every plot. */
#ifndef SUPPORT_PLOT_CHECK_H
#define SUPPORT_PLOT_CHECK_H

#include "plot/plot.h"

bool plot_equal(const struct plot *a, const struct plot *b);
/* Asserts what must always hold: sides and axis in range, every cell's letter in the legend,
 * letters distinct and of their class, required attributes set, fences within the plan and as
 * fence.h says, plants as plants.h says, and of every text and value that reading it as written
 * gives it again. */
void plot_check(const struct plot *plot);
/* The same, and that its file says just this behind the ground. */
void plot_check_later(const struct plot *plot, const char *expected);

#endif
