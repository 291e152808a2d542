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
