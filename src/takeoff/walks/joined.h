/* What paths join to: adds path-cut-off and fixture-no-path. */
#ifndef TAKEOFF_WALKS_JOINED_H
#define TAKEOFF_WALKS_JOINED_H

#include "takeoff/common/basis.h"
#include "takeoff/walks/walking.h"

void joined_check(const struct basis *basis, const struct walking *walking);

#endif
