/* Measures in SI units, as doubles. */
#ifndef BASE_MEASURE_H
#define BASE_MEASURE_H

#include "base/length.h"

/* By definition. */
#define KG_PER_POUND 0.45359237
#define M3_PER_CUBIC_FOOT 0.028316846592
#define M3_PER_GALLON 0.003785411784 /* U.S. liquid gallon: 231 cu in */

double metres(nm length);
/* Square metres. */
double area_of(nm length, nm width);
/* Cubic metres under so many square metres. */
double volume_of(double area, nm depth);
/* Up to the next whole number: packs, loads, bags. Sums may end a hair above one; nobody buys a
 * pack for that, so up to 1e-9 over it is let pass. */
double whole(double amount);

#endif
