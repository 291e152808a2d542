/* The reader's part for blocks: their attributes and notes, line by line. */
#ifndef PLOT_FORMAT_READ_BLOCK_H
#define PLOT_FORMAT_READ_BLOCK_H

#include "plot/plot.h"

/* A line of the block, from its keyword on: a note, or an attribute that it does not have yet.
 * False with d filled. */
bool block_read_line(struct block *block, struct scan *s, enum units units, struct diag *d);

#endif
