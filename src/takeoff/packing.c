#include "takeoff/packing.h"

#include <stdlib.h>
#include <string.h>

/* Blocks cut alike: `blocks` of them, one after the other from the `first`th cut on. */
struct stack {
	struct cut cut;
	int64_t first;
	nm left; /* of each block, with room for one more kerf */
};

struct packing {
	struct arena *arena;
	struct stack *stacks;
	size_t count, capacity;
	int64_t opened; /* blocks cut so far */
};

static int compare_batches(const void *a, const void *b)
{
	const struct batch *one = a, *other = b;

	return (one->place < other->place) - (one->place > other->place);
}

static size_t join_batches(struct batch *batches, size_t count)
{
	size_t joined = 0;

	if (count > 1)
		qsort(batches, count, sizeof *batches, compare_batches);
	for (size_t i = 0; i < count; i++) {
		if (joined > 0 && batches[joined - 1].place == batches[i].place)
			batches[joined - 1].count += batches[i].count;
		else
			batches[joined++] = batches[i];
	}
	return joined;
}

static size_t add_stack(struct packing *packing, const struct stack *stack)
{
	packing->stacks = memory_grow(packing->stacks, packing->count, &packing->capacity,
		sizeof *packing->stacks);
	packing->stacks[packing->count] = *stack;
	return packing->count++;
}

/* Whether to cut from one stack rather than from another. */
static bool is_fuller(const struct stack *a, const struct stack *b)
{
	return a->left != b->left ? a->left < b->left : a->first < b->first;
}

/* The stack to cut from; false where no block has that much left. */
static bool find_fullest(const struct packing *packing, nm needed, size_t *at)
{
	bool found = false;

	for (size_t i = 0; i < packing->count; i++) {
		const struct stack *stack = &packing->stacks[i];

		if (stack->left < needed || (found && !is_fuller(stack, &packing->stacks[*at])))
			continue;
		*at = i;
		found = true;
	}
	return found;
}

static size_t open_stack(struct packing *packing, nm left, int64_t blocks)
{
	struct stack fresh = { .cut.blocks = blocks, .first = packing->opened, .left = left };

	packing->opened += blocks;
	return add_stack(packing, &fresh);
}

static void add_places(struct packing *packing, struct cut *cut, nm place, int pieces)
{
	nm *places = arena_new(packing->arena, (size_t)(cut->piece_count + pieces), sizeof *places);

	if (cut->piece_count > 0)
		memcpy(places, cut->pieces, (size_t)cut->piece_count * sizeof *places);
	for (int i = 0; i < pieces; i++)
		places[cut->piece_count + i] = place;
	cut->pieces = places;
	cut->piece_count += pieces;
}

/* Cuts so many more pieces from each of the first `blocks` blocks of a stack; the others stay a stack
 * as it was. */
static void cut_from(struct packing *packing, size_t at, int64_t blocks, const struct batch *each,
	nm needed)
{
	struct stack others = packing->stacks[at];
	struct stack *taken = &packing->stacks[at];

	taken->cut.blocks = blocks;
	taken->left -= each->count * needed;
	add_places(packing, &taken->cut, each->place, (int)each->count);
	others.cut.blocks -= blocks;
	others.first += blocks;
	if (others.cut.blocks > 0)
		add_stack(packing, &others);
}

/* The fullest block, once a piece is cut from it, is still the fullest: it gives as many as it can
 * before the next one is touched. */
static void cut_batch(struct packing *packing, const struct saw *saw, struct batch batch)
{
	nm fit = saw->fit < batch.place / 2 ? saw->fit : batch.place / 2;
	nm needed = batch.place - fit + saw->kerf;

	while (batch.count > 0) {
		struct batch each = { .place = batch.place };
		int64_t blocks;
		size_t at = 0;

		if (!find_fullest(packing, needed, &at)) {
			nm left = saw->block + saw->kerf;
			int64_t most = left / needed;

			at = open_stack(packing, left, (batch.count + most - 1) / most);
		}
		each.count = packing->stacks[at].left / needed;
		blocks = packing->stacks[at].cut.blocks;
		if (blocks > batch.count / each.count)
			blocks = batch.count / each.count;
		if (blocks == 0) {
			blocks = 1;
			each.count = batch.count;
		}
		cut_from(packing, at, blocks, &each, needed);
		batch.count -= blocks * each.count;
	}
}

static int compare_stacks(const void *a, const void *b)
{
	const struct stack *one = a, *other = b;

	return (one->first > other->first) - (one->first < other->first);
}

const struct cut *packing_cut(struct arena *arena, const struct saw *saw, struct batch *batches,
	size_t batch_count, int *count)
{
	struct packing packing = { .arena = arena };
	struct cut *cuts;

	batch_count = join_batches(batches, batch_count);
	for (size_t i = 0; i < batch_count; i++)
		cut_batch(&packing, saw, batches[i]);
	if (packing.count > 1)
		qsort(packing.stacks, packing.count, sizeof *packing.stacks, compare_stacks);
	cuts = arena_new(arena, packing.count, sizeof *cuts);
	for (size_t i = 0; i < packing.count; i++)
		cuts[i] = packing.stacks[i].cut;
	*count = (int)packing.count;
	free(packing.stacks);
	return cuts;
}
