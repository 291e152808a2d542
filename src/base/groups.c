#include "base/groups.h"
#include "base/memory.h"
#include "base/stop.h"

#include <stdlib.h>

enum { SLOTS_AT_FIRST = 64, NONE_ALIKE = -1 };

/* What the members of a group are like. */
struct kind {
	uint64_t hash;
	int first;
};

/* A hash table of kinds, open addresses, at most half full. */
struct kinds {
	const char *items;
	size_t size;
	const struct alike *alike;
	struct kind *list;
	size_t count, capacity;
	int *slots;        /* numbers of kinds from 1; 0: free */
	size_t slot_count; /* a power of two */
};

static const void *item_at(const struct kinds *kinds, int at)
{
	return kinds->items + (size_t)at * kinds->size;
}

static bool is_of_kind(const struct kinds *kinds, const struct kind *kind, uint64_t hash, int item)
{
	return kind->hash == hash && kinds->alike->are_alike(item_at(kinds, kind->first),
		item_at(kinds, item), kinds->alike->context);
}

/* The slot of the item's kind, or the free one for it. item: NONE_ALIKE for a kind that has no
 * slot yet. */
static int *slot_of(const struct kinds *kinds, uint64_t hash, int item)
{
	for (size_t i = (size_t)(hash ^ hash >> 32);; i++) {
		int *slot = &kinds->slots[i & (kinds->slot_count - 1)];

		if (*slot == 0 || (item != NONE_ALIKE &&
			is_of_kind(kinds, &kinds->list[*slot - 1], hash, item)))
			return slot;
	}
}

static void set_slots(struct kinds *kinds, size_t slot_count)
{
	free(kinds->slots);
	kinds->slots = memory_new(slot_count, sizeof *kinds->slots);
	kinds->slot_count = slot_count;
	for (size_t i = 0; i < kinds->count && !stop_asked(); i++)
		*slot_of(kinds, kinds->list[i].hash, NONE_ALIKE) = (int)i + 1;
}

/* The number of the item's kind. */
static int kind_of(struct kinds *kinds, int item)
{
	uint64_t hash = kinds->alike->hash(item_at(kinds, item), kinds->alike->context);
	int *slot = slot_of(kinds, hash, item);

	if (*slot > 0)
		return *slot - 1;
	if (2 * kinds->count >= kinds->slot_count) {
		set_slots(kinds, 2 * kinds->slot_count);
		slot = slot_of(kinds, hash, item);
	}
	kinds->list = memory_grow(kinds->list, kinds->count, &kinds->capacity, sizeof *kinds->list);
	kinds->list[kinds->count++] = (struct kind){ hash, item };
	*slot = (int)kinds->count;
	return *slot - 1;
}

/* Gives each kind its part of the members, and fills them in. */
static struct groups groups_of(const struct kinds *kinds, int *of, int count)
{
	struct groups groups = {
		.list = memory_new(kinds->count, sizeof *groups.list),
		.count = (int)kinds->count,
		.members = memory_new((size_t)count, sizeof *groups.members),
		.of = of,
		.item_count = count,
	};
	int *next = groups.members;

	for (int i = 0; i < count && !stop_asked(); i++)
		groups.list[of[i]].count++;
	for (int i = 0; i < groups.count; i++) {
		groups.list[i].members = next;
		next += groups.list[i].count;
		groups.list[i].count = 0;
	}
	for (int i = 0; i < count && !stop_asked(); i++) {
		struct group *group = &groups.list[of[i]];

		groups.members[group->members - groups.members + group->count++] = i;
	}
	return groups;
}

struct groups groups_make(const void *items, int count, size_t size, const struct alike *alike)
{
	struct kinds kinds = { .items = items, .size = size, .alike = alike };
	int *of = memory_new((size_t)count, sizeof *of);
	struct groups groups;
	int done = 0;

	set_slots(&kinds, SLOTS_AT_FIRST);
	for (; done < count && !stop_asked(); done++)
		of[done] = kind_of(&kinds, done);
	groups = groups_of(&kinds, of, done);
	free(kinds.list);
	free(kinds.slots);
	return groups;
}

void groups_fini(struct groups *groups)
{
	free(groups->list);
	free(groups->members);
	free(groups->of);
	*groups = (struct groups){ NULL, 0, NULL, NULL, 0 };
}

int *groups_partners(const struct groups *groups, int first)
{
	int *partners = memory_new((size_t)groups->item_count, sizeof *partners);

	for (int i = 0; i < groups->item_count; i++)
		partners[i] = NO_PARTNER;
	for (int i = 0; i < groups->count && !stop_asked(); i++) {
		const struct group *group = &groups->list[i];
		int split = 0;

		while (split < group->count && group->members[split] < first)
			split++;
		for (int j = 0; j < split && split + j < group->count; j++) {
			int one = group->members[j], other = group->members[split + j];

			partners[one] = other;
			partners[other] = one;
		}
	}
	return partners;
}
