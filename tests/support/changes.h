/* Changes to a plot as acts make them, at random. */
#ifndef SUPPORT_CHANGES_H
#define SUPPORT_CHANGES_H

#include "plot/plot.h"
#include "support/random.h"

/* Lays ground, crops or grows, changes attributes, legend, notes and fences. The plot has a legend;
 * it may be as it was. */
void change_at_random(struct plot *plot, struct random *random);

#endif
