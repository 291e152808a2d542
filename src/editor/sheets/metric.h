/* The defaults are in inches; in a metric plot the sheets for what is new come with rounder metric
 * values of its own, set. */
#ifndef EDITOR_SHEETS_METRIC_H
#define EDITOR_SHEETS_METRIC_H

#include "plot/attribute.h"

/* Sets the rounder values that a block of this kind has; all others stay as they are. */
void metric_fill(struct block *block);

#endif
