/* Loads of loose material. A barrow and a truck are limited by volume and weight, a pickup by
 * weight. Loads are whole, the last one may be part full: loose volume / what a load is, up to the
 * next whole one. (Pearson, Estimating in Building Construction, its edition not noted, chapter
 * 9.) */
#ifndef TAKEOFF_COMMON_LOADS_H
#define TAKEOFF_COMMON_LOADS_H

#include "takeoff/common/figure.h"

struct loads {
	int64_t barrow, pickup, truck;
};

/* Loads of a loose volume, m3, of a density, kg/m3. allow: in force. */
struct loads loads_of(const struct block *allow, double volume, double density);

extern const struct figure_table loads_table;

#endif
