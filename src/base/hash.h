/* A hash of bytes: FNV-1a of 64 bits. It finds what is equal and what was torn; it is no guard
 * against forgery. */
#ifndef BASE_HASH_H
#define BASE_HASH_H

#include <stddef.h>
#include <stdint.h>

#define HASH_EMPTY UINT64_C(0xcbf29ce484222325)

/* The hash of what came before, HASH_EMPTY: nothing, followed by these bytes. */
uint64_t hash_bytes(uint64_t before, const void *bytes, size_t length);

#endif
