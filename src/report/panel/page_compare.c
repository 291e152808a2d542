#include "report/panel/page_compare.h"
#include "base/hash.h"
#include "base/stop.h"

#include <stdlib.h>
#include <string.h>

/* Figures of one label under one heading, those still to be found; the next of each is in
 * index.next. */
struct slot {
	const struct line *first; /* NULL: the slot is free */
	const struct line *left;  /* NULL: all were found */
};

/* A hash table with open addresses, at most half full. */
struct index {
	const struct page *page;
	struct slot *slots;
	size_t slot_count; /* a power of two */
	const struct line **next; /* by line */
};

static bool is_same(const struct line *a, const struct line *b)
{
	return strcmp(a->label, b->label) == 0 && strcmp(a->under, b->under) == 0;
}

static struct slot *slot_of(const struct index *index, const struct line *line)
{
	uint64_t hash = hash_bytes(HASH_EMPTY, line->label, strlen(line->label) + 1);

	hash = hash_bytes(hash, line->under, strlen(line->under));
	for (;; hash++) {
		struct slot *slot = &index->slots[hash & (index->slot_count - 1)];

		if (!slot->first || is_same(slot->first, line))
			return slot;
	}
}

/* From the last line on, so that the first of several alike is found first. */
static void index_fill(struct index *index)
{
	for (size_t i = index->page->count; i-- > 0 && !stop_asked();) {
		const struct line *line = &index->page->lines[i];
		struct slot *slot;

		if (line->kind != LINE_FIGURE)
			continue;
		slot = slot_of(index, line);
		index->next[i] = slot->left;
		*slot = (struct slot){ line, line };
	}
}

/* The line for the same figure; NULL where there is none that was not found before. */
static const struct line *index_find(struct index *index, const struct line *line)
{
	struct slot *slot = slot_of(index, line);
	const struct line *found = slot->left;

	if (found)
		slot->left = index->next[found - index->page->lines];
	return found;
}

void page_compare(struct page *page, const struct page *before)
{
	struct index index = { .page = before, .slot_count = 1 };

	while (index.slot_count < 2 * before->count + 1)
		index.slot_count *= 2;
	index.slots = memory_new(index.slot_count, sizeof *index.slots);
	index.next = memory_new(before->count, sizeof *index.next);
	index_fill(&index);
	for (size_t i = 0; i < page->count && !stop_asked(); i++) {
		struct line *line = &page->lines[i];
		const struct line *old;

		if (line->kind != LINE_FIGURE)
			continue;
		old = index_find(&index, line);
		line->is_changed = !old || strcmp(old->value, line->value) != 0;
	}
	free(index.slots);
	free(index.next);
}
