/* The reader's part for blocks: their attributes and notes, line by line. */
#ifndef PLOT_FORMAT_READ_BLOCK_H
#define PLOT_FORMAT_READ_BLOCK_H

#include "plot/block.h"

/* The rest of a line after "note". */
bool read_note(struct notes *notes, struct scan *s, struct diag *d);
/* The rest of a line: a keyword and its value, which the block does not have yet. */
bool read_attribute(struct block *block, struct scan *s, enum units units, struct diag *d);
/* The same, or a note. */
bool read_block_line(struct block *block, struct scan *s, enum units units, struct diag *d);
/* Fails at an indented line that belongs to no block. */
bool fail_indented(const struct scan *s, struct diag *d);

#endif
