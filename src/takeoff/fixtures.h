/* Fixtures by when they are set: one that stands in the hole of raised beds is there before their
 * walls, which close it in. */
#ifndef TAKEOFF_FIXTURES_H
#define TAKEOFF_FIXTURES_H

#include "takeoff/common/basis.h"

struct fixtures {
	int64_t inside; /* all their sides are against raised beds */
	int64_t others;
};

void fixtures_count(struct fixtures *out, const struct basis *basis);

#endif
