#include "base/sort.h"
#include "base/memory.h"
#include "base/stop.h"

#include <stdbool.h>
#include <stdlib.h>
#include <string.h>

/* So many items are sorted or merged before it is asked again whether to stop. */
enum { ITEMS_AN_ASK = 256 };

/* Of a number. Fewer numbers than a digit has values are not worth a count of each. */
enum { DIGIT_BITS = 11, DIGIT_VALUES = 1 << DIGIT_BITS, NUMBER_BITS = 64 };

struct order {
	size_t size; /* of an item */
	int (*compare)(const void *, const void *);
};

/* Two sorted stretches of an array, one right after the other. */
struct halves {
	const char *from, *middle, *end;
};

static void merge(const struct order *order, const struct halves *halves, char *to)
{
	const char *one = halves->from, *other = halves->middle;

	/* In order already, as much of what is sorted is. */
	if (other == halves->end || order->compare(other - order->size, other) <= 0) {
		memcpy(to, one, (size_t)(halves->end - one));
		return;
	}
	for (unsigned i = 0; one < halves->middle || other < halves->end; i++) {
		bool is_first = other == halves->end ||
			(one < halves->middle && order->compare(one, other) <= 0);
		const char **next = is_first ? &one : &other;

		if (i % ITEMS_AN_ASK == 0 && stop_asked())
			return;
		memcpy(to, *next, order->size);
		to += order->size;
		*next += order->size;
	}
}

static const char *before(const char *at, size_t bytes, const char *end)
{
	return (size_t)(end - at) < bytes ? end : at + bytes;
}

/* Merges the sorted stretches of so many bytes two by two into another array. */
static void merge_all(const struct order *order, const struct halves *array, char *to)
{
	size_t stretch = (size_t)(array->middle - array->from);

	for (const char *at = array->from; at < array->end && !stop_asked();) {
		const char *middle = before(at, stretch, array->end);
		struct halves halves = { at, middle, before(middle, stretch, array->end) };

		merge(order, &halves, to);
		to += halves.end - at;
		at = halves.end;
	}
}

static void sort_stretches(const struct order *order, char *items, size_t count)
{
	for (size_t done = 0; done < count && !stop_asked(); done += ITEMS_AN_ASK)
		qsort(items + done * order->size,
			count - done < ITEMS_AN_ASK ? count - done : ITEMS_AN_ASK, order->size,
			order->compare);
}

void sort(void *items, size_t count, size_t size, int (*compare)(const void *, const void *))
{
	const struct order order = { size, compare };
	char *from = items, *spare = NULL, *to;

	if (count == 0)
		return;
	sort_stretches(&order, items, count);
	if (count > ITEMS_AN_ASK)
		spare = memory_new(count, size);
	to = spare;
	for (size_t done = ITEMS_AN_ASK; done < count && !stop_asked(); done *= 2) {
		struct halves array = { from, from + done * size, from + count * size };
		char *merged = to;

		merge_all(&order, &array, to);
		to = from;
		from = merged;
	}
	if (from == spare && spare && !stop_asked())
		memcpy(items, spare, count * size);
	free(spare);
}

/* ---- Numbers --------------------------------------------------------------------------------- */

static int compare_numbers(const void *a, const void *b)
{
	uint64_t one = *(const uint64_t *)a, other = *(const uint64_t *)b;

	return (one > other) - (one < other);
}

static size_t digit(uint64_t number, int shift)
{
	return number >> shift & (DIGIT_VALUES - 1);
}

/* Puts them into the order of one digit, else as they were: a radix sort's pass. False, with
 * nothing put, where all have the same. */
static bool put_by_digit(const uint64_t *from, uint64_t *to, size_t count, int shift)
{
	size_t places[DIGIT_VALUES] = { 0 }, place = 0;

	for (size_t i = 0; i < count; i++)
		places[digit(from[i], shift)]++;
	if (places[digit(from[0], shift)] == count)
		return false;
	for (size_t i = 0; i < DIGIT_VALUES; i++) {
		size_t with = places[i];

		places[i] = place;
		place += with;
	}
	for (size_t i = 0; i < count; i++)
		to[places[digit(from[i], shift)]++] = from[i];
	return true;
}

void sort_numbers(uint64_t *numbers, size_t count)
{
	uint64_t *from = numbers, *spare, *to;

	if (count < DIGIT_VALUES) {
		qsort(numbers, count, sizeof *numbers, compare_numbers);
		return;
	}
	to = spare = memory_new(count, sizeof *spare);
	for (int shift = 0; shift < NUMBER_BITS; shift += DIGIT_BITS) {
		uint64_t *next = from;

		if (!put_by_digit(from, to, count, shift))
			continue;
		from = to;
		to = next;
	}
	if (from == spare)
		memcpy(numbers, spare, count * sizeof *numbers);
	free(spare);
}
