#include "support/random.h"

#include <assert.h>

uint64_t random_next(struct random *r)
{
	uint64_t z = r->state += UINT64_C(0x9e3779b97f4a7c15);

	z = (z ^ (z >> 30)) * UINT64_C(0xbf58476d1ce4e5b9);
	z = (z ^ (z >> 27)) * UINT64_C(0x94d049bb133111eb);
	return z ^ (z >> 31);
}

int random_below(struct random *r, int limit)
{
	assert(limit > 0);
	return (int)(random_next(r) % (uint64_t)limit);
}

int random_between(struct random *r, int low, int high)
{
	assert(low <= high);
	uint64_t span = (uint64_t)((int64_t)high - low) + 1;

	return (int)(low + (int64_t)(random_next(r) % span));
}
