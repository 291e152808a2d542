/* The barrow loads of a step of work, and how far they go.
 *
 * Each material has loads of its own: nobody mixes them in one barrow. The way is that of
 * takeoff/walks/barrow_ways.h, on the average of where so much is put down or taken away. */
#ifndef TAKEOFF_BARROW_RUN_H
#define TAKEOFF_BARROW_RUN_H

#include "takeoff/common/work_steps.h"
#include "base/length.h"

struct takeoff;

struct barrow_run {
	int64_t loads; /* 0: none */
	nm way;        /* from the drop, one way; 0: there is no drop, or no barrow gets there */
};

/* Of what the step takes; of a takeoff whose items are there. */
struct barrow_run barrow_run_of(const struct takeoff *takeoff, enum work_step step);

#endif
