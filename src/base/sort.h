/* Sorting. */
#ifndef BASE_SORT_H
#define BASE_SORT_H

#include <stddef.h>
#include <stdint.h>

/* Sorts `count` items of `size` bytes, which may be none; equal ones stay in their order. compare:
 * as for qsort. Takes room for as many again while it sorts. It can be stopped (base/stop.h): then
 * the items are in no order, and some may be there twice and others not at all. */
void sort(void *items, size_t count, size_t size, int (*compare)(const void *, const void *));

/* Sorts numbers, a million in a few hundredths of a second; it is not stopped. Takes room for as
 * many again. */
void sort_numbers(uint64_t *numbers, size_t count);

#endif
