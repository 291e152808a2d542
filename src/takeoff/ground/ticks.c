#include "takeoff/ground/ticks.h"
#include "base/memory.h"
#include "base/number.h"
#include "base/sort.h"

#include <assert.h>
#include <stdlib.h>

enum { SLOTS_AT_FIRST = 64 };

/* The slot of the place, or the free one for it: hashed by multiplication with 2^64 over the
 * golden ratio, with linear probing (Knuth, The Art of Computer Programming 3, 6.4). */
static struct tick *slot_of(const struct ticks *ticks, nm at)
{
	size_t i = (size_t)(((uint64_t)at * UINT64_C(0x9e3779b97f4a7c15)) >> 32);

	for (;; i++) {
		struct tick *slot = &ticks->slots[i & (ticks->slot_count - 1)];

		if (slot->number == 0 || slot->at == at)
			return slot;
	}
}

static void set_slots(struct ticks *ticks, size_t slot_count)
{
	free(ticks->slots);
	ticks->slots = memory_new(slot_count, sizeof *ticks->slots);
	ticks->slot_count = slot_count;
	ticks->list = memory_resize(ticks->list, slot_count / 2, sizeof *ticks->list);
	for (int i = 0; i < ticks->count; i++)
		*slot_of(ticks, ticks->list[i]) = (struct tick){ ticks->list[i], i + 1 };
}

void ticks_add(struct ticks *ticks, nm at)
{
	struct tick *slot;

	if ((size_t)ticks->count == ticks->slot_count / 2)
		set_slots(ticks, ticks->slot_count ? 2 * ticks->slot_count : SLOTS_AT_FIRST);
	slot = slot_of(ticks, at);
	if (slot->number > 0)
		return;
	ticks->list[ticks->count++] = at;
	*slot = (struct tick){ at, ticks->count };
}

static int compare_nm(const void *a, const void *b)
{
	return compare(*(const nm *)a, *(const nm *)b);
}

void ticks_number(struct ticks *ticks)
{
	sort(ticks->list, (size_t)ticks->count, sizeof *ticks->list, compare_nm);
	for (int i = 0; i < ticks->count; i++)
		slot_of(ticks, ticks->list[i])->number = i + 1;
}

int ticks_find(const struct ticks *ticks, nm at)
{
	const struct tick *slot = slot_of(ticks, at);

	assert(slot->number > 0);
	return slot->number - 1;
}

void ticks_fini(struct ticks *ticks)
{
	free(ticks->list);
	free(ticks->slots);
	*ticks = (struct ticks){ NULL, 0, NULL, 0 };
}
