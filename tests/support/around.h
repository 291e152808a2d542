/* Services and things kept, for tests. */
#ifndef SUPPORT_AROUND_H
#define SUPPORT_AROUND_H

#include "plot/plot.h"
#include "support/random.h"

/* Adds what the lines say, as the plot format has it after the fences: "service gas \"G\"
 * existing\n  line 0,0 4,0\n". */
void around_add(struct plot *plot, const char *lines);
/* Adds one to three services, of one to four legs, and up to two things kept; any may lie over each
 * other. */
void services_at_random(struct plot *plot, struct random *random);

#endif
