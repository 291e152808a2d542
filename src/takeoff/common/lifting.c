#include "takeoff/common/lifting.h"
#include "base/measure.h"

double lift_most(enum units units)
{
	return units == UNITS_METRIC ? 23 : 50 * KG_PER_POUND;
}
