/* The reader's part for what is on a plot and around it: services, houses, shade, things that are
 * kept, ties, the drop and the tap. */
#ifndef PLOT_FORMAT_READ_AROUND_H
#define PLOT_FORMAT_READ_AROUND_H

#include "plot/format/read_later.h"

/* The rest of a line after its keyword. */
bool read_service(struct later_reader *r, struct scan *s, struct diag *d);
bool read_house(struct later_reader *r, struct scan *s, struct diag *d);
bool read_shade(struct later_reader *r, struct scan *s, struct diag *d);
bool read_keep(struct later_reader *r, struct scan *s, struct diag *d);
bool read_tie(struct later_reader *r, struct scan *s, struct diag *d);
bool read_drop(struct later_reader *r, struct scan *s, struct diag *d);
bool read_tap(struct later_reader *r, struct scan *s, struct diag *d);
/* An indented line of a service; of a house, of shade or of what is kept. */
bool read_service_line(struct later_reader *r, struct scan *s, struct diag *d);
bool read_obstacle_line(struct later_reader *r, struct scan *s, struct diag *d);
/* The line that says where it is: "at X,Y" of a circle. */
const char *obstacle_line_words(const struct obstacle *obstacle);

#endif
