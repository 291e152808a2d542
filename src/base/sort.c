#include "base/sort.h"
#include "base/memory.h"
#include "base/stop.h"

#include <stdbool.h>
#include <stdlib.h>
#include <string.h>

/* So many items are sorted or merged before it is asked again whether to stop. */
enum { ITEMS_AN_ASK = 256 };

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
