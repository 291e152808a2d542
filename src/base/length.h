/* Lengths. Held as whole nanometres, in which an inch, its 64ths and a millimetre are all exact. */
#ifndef BASE_LENGTH_H
#define BASE_LENGTH_H

#include "base/scan.h"
#include "base/text.h"

#include <stdint.h>

typedef int64_t nm;

#define NM_PER_MM INT64_C(1000000)
#define NM_PER_CM INT64_C(10000000)
#define NM_PER_M INT64_C(1000000000)
#define NM_PER_INCH INT64_C(25400000)
#define NM_PER_FOOT INT64_C(304800000)
#define NM_PER_64TH (NM_PER_INCH / 64)
#define LENGTH_MOST (10000 * NM_PER_M) /* longest length that is read */

_Static_assert(NM_PER_FOOT == 12 * NM_PER_INCH, "the international foot");
_Static_assert(NM_PER_64TH * 64 == NM_PER_INCH, "64ths of an inch are exact");

/* What lengths, areas and volumes are shown in. */
enum units { UNITS_IMPERIAL, UNITS_METRIC };

/* Reads a length: one or more parts, each a number and a unit (ft in ' " m cm mm), all of one
 * system, larger units first, each unit once. The last part's number may be a decimal (1 to 6
 * places) or a fraction (1/2, 6 1/2; denominators 2, 4 .. 64). Blanks before a word unit are
 * optional; ' and " touch their number. No sign. Rounded to a nanometre, ties away from zero.
 * On failure fills d and returns false. A bare number is refused, its message showing it with a
 * unit of the given system. Takes no more than the length. */
bool length_scan(struct scan *s, enum units units, nm *length, struct diag *d);

/* Writes a length exactly, in the plot format's own form. Imperial: whole feet "4 ft", else exact
 * 64ths "6 1/2 in", else millimetres. Metric: whole metres "2 m", else millimetres with up to 6
 * places. length may be negative ("-" first). */
void length_write(struct text *out, nm length, enum units units);
/* Writes whole 64ths of an inch, 0 or more, with the fraction in lowest terms: "0 in", "6 1/2
 * in". */
void length_write_inches(struct text *out, nm length);

#endif
