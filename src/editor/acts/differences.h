/* What differs between two plots, in words. */
#ifndef EDITOR_ACTS_DIFFERENCES_H
#define EDITOR_ACTS_DIFFERENCES_H

#include "plot/plot.h"

/* Adds "12 cells and the title differ"; nothing where the plots are equal. */
void differences_add(const struct plot *a, const struct plot *b, struct text *out);

#endif
