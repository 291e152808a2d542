/* What one person lifts. */
#ifndef TAKEOFF_COMMON_LIFTING_H
#define TAKEOFF_COMMON_LIFTING_H

#include "base/length.h"

/* More than this, kg, one person should not lift: 50 lb, in a metric plot 23 kg. Common practice,
 * no published source. */
double lift_most(enum units units);

#endif
