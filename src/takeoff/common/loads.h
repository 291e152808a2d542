/* Loads in which loose material is moved.
 *
 * A barrow and a truck hold so much and carry so much, and the smaller of the two loads decides;
 * a pickup goes by what it carries. Loads are whole: the last one may be part full. */
#ifndef TAKEOFF_COMMON_LOADS_H
#define TAKEOFF_COMMON_LOADS_H

#include "takeoff/common/figure.h"

struct loads {
	int64_t barrow, pickup, truck;
};

/* Loads of so many m3, loose, of so many kg/m3. allow: the values in force. */
struct loads loads_of(const struct block *allow, double volume, double density);

extern const struct figure_table loads_table;

#endif
