#include "takeoff/ground/marks.h"
#include "base/memory.h"

#include <assert.h>
#include <stdlib.h>

enum { SLOTS_AT_FIRST = 64 };

/* Where the place is or would go: by multiplication with 2^64 over the golden ratio, the next free one if
 * that is taken (Knuth, The Art of Computer Programming 3, 6.4). */
static struct mark *slot_of(const struct marks *marks, nm at)
{
	size_t i = (size_t)(((uint64_t)at * UINT64_C(0x9e3779b97f4a7c15)) >> 32);

	for (;; i++) {
		struct mark *slot = &marks->slots[i & (marks->slot_count - 1)];

		if (slot->number == 0 || slot->at == at)
			return slot;
	}
}

static void set_slots(struct marks *marks, size_t slot_count)
{
	free(marks->slots);
	marks->slots = memory_new(slot_count, sizeof *marks->slots);
	marks->slot_count = slot_count;
	marks->list = memory_resize(marks->list, slot_count / 2, sizeof *marks->list);
	for (int i = 0; i < marks->count; i++)
		*slot_of(marks, marks->list[i]) = (struct mark){ marks->list[i], i + 1 };
}

void marks_add(struct marks *marks, nm at)
{
	struct mark *slot;

	if ((size_t)marks->count == marks->slot_count / 2)
		set_slots(marks, marks->slot_count ? 2 * marks->slot_count : SLOTS_AT_FIRST);
	slot = slot_of(marks, at);
	if (slot->number > 0)
		return;
	marks->list[marks->count++] = at;
	*slot = (struct mark){ at, marks->count };
}

static int compare_nm(const void *a, const void *b)
{
	nm one = *(const nm *)a, other = *(const nm *)b;

	return (one > other) - (one < other);
}

void marks_number(struct marks *marks)
{
	if (marks->count > 1)
		qsort(marks->list, (size_t)marks->count, sizeof *marks->list, compare_nm);
	for (int i = 0; i < marks->count; i++)
		slot_of(marks, marks->list[i])->number = i + 1;
}

int marks_find(const struct marks *marks, nm at)
{
	const struct mark *slot = slot_of(marks, at);

	assert(slot->number > 0);
	return slot->number - 1;
}

void marks_fini(struct marks *marks)
{
	free(marks->list);
	free(marks->slots);
	*marks = (struct marks){ NULL, 0, NULL, 0 };
}
