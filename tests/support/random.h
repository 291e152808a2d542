/* Numbers that look random and are the same on every machine, so that a failing test can be run
 * again: name the seed in the test's message.
 *
 * The generator is splitmix64 (Steele, Lea, Flood 2014, "Fast splittable pseudorandom number
 * generators"). Not for secrets. */
#ifndef SUPPORT_RANDOM_H
#define SUPPORT_RANDOM_H

#include <stdint.h>

struct random {
	uint64_t state;        /* the seed at first; any value will do */
};

uint64_t random_next(struct random *r);

/* From 0 to limit - 1, limit from 1 on; even to within limit / 2^64. */
int random_below(struct random *r, int limit);

/* From low to high, both included; low <= high. */
int random_between(struct random *r, int low, int high);

#endif
