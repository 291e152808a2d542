/* The reader's part for what grows: kinds of plants, their specimens and drifts. */
#ifndef PLOT_FORMAT_READ_PLANT_H
#define PLOT_FORMAT_READ_PLANT_H

#include "plot/format/read_later.h"

/* The rest of a line after its keyword. */
bool read_plant(struct later_reader *r, struct scan *s, struct diag *d);
/* An indented line of a plant. */
bool read_plant_line(struct later_reader *r, struct scan *s, struct diag *d);

#endif
