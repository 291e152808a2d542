#include "base/hash.h"

#define PRIME UINT64_C(0x100000001b3)

uint64_t hash_bytes(uint64_t before, const void *bytes, size_t length)
{
	const unsigned char *at = bytes;

	for (size_t i = 0; i < length; i++)
		before = (before ^ at[i]) * PRIME;
	return before;
}
