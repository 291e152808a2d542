/* A point of the ground. */
#ifndef TAKEOFF_COMMON_SPOT_H
#define TAKEOFF_COMMON_SPOT_H

#include "base/length.h"

/* By its offsets from the datum, the plan's top left corner: to the right, and down. */
struct spot {
	nm x, y;
};

#endif
