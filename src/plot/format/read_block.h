/* The reader's part for blocks: their attributes and notes, line by line. */
#ifndef PLOT_FORMAT_READ_BLOCK_H
#define PLOT_FORMAT_READ_BLOCK_H

#include "plot/block.h"

/* The rest of a line: a keyword and its value, which the block does not have yet. */
bool read_attribute(struct block *block, struct scan *s, enum units units, struct diag *d);
/* The same, or a note. */
bool read_block_line(struct block *block, struct scan *s, enum units units, struct diag *d);

#endif
