/* The reader's part for the lie of the ground: drops row by row, and the finished ground. */
#ifndef PLOT_FORMAT_READ_LEVELS_H
#define PLOT_FORMAT_READ_LEVELS_H

#include "plot/format/read_later.h"

/* The rest of a line after its keyword. */
bool read_levels(struct later_reader *r, struct scan *s, struct diag *d);
bool read_finish(struct later_reader *r, struct scan *s, struct diag *d);
bool read_fall(struct later_reader *r, struct scan *s, struct diag *d);
/* An indented line of the levels: a row of drops. */
bool read_drops(struct later_reader *r, struct scan *s, struct diag *d);

#endif
