/* Small arithmetic on whole numbers. */
#ifndef BASE_NUMBER_H
#define BASE_NUMBER_H

#include "base/length.h"

static inline int least(int a, int b)
{
	return a < b ? a : b;
}

static inline int most(int a, int b)
{
	return a > b ? a : b;
}

static inline nm nm_least(nm a, nm b)
{
	return a < b ? a : b;
}

static inline nm nm_most(nm a, nm b)
{
	return a > b ? a : b;
}

/* A length so many times, in millionths: exact but for what is below a nanometre. The result must
 * fit. */
static inline nm nm_times(nm length, int64_t millionths)
{
	return length / 1000000 * millionths + length % 1000000 * millionths / 1000000;
}

/* at, or the nearer of the two limits where it is outside them. */
static inline int held(int64_t at, int lowest, int highest)
{
	int64_t below = nm_least(at, highest);

	return below < lowest ? lowest : (int)below;
}

/* A number of 0 or more, divided by one above 0 and rounded up: how many of these hold it. */
static inline int64_t quotient_up(int64_t number, int64_t by)
{
	return (number + by - 1) / by;
}

/* The least multiple of one that is not below the other. */
static inline int64_t multiple_up(int64_t number, int64_t of)
{
	return quotient_up(number, of) * of;
}

/* -1, 0 or 1. */
static inline int sign(int64_t number)
{
	return (number > 0) - (number < 0);
}

/* As qsort wants it: under 0, 0 or over 0. */
static inline int compare(int64_t a, int64_t b)
{
	return (a > b) - (a < b);
}

#endif
