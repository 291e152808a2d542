#include "takeoff/common/packing.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <stdlib.h>
#include <string.h>

/* Blocks cut alike, numbered in the order of cutting from `first` on. */
struct stack {
	struct cut cut;
	int64_t first;
	nm left; /* of each block, with room for one more kerf */
};

/* Equal pieces cut together: `each` from each of so many blocks. */
struct pass {
	nm place, needed; /* needed: of the block, with the kerf */
	int64_t each, blocks;
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

	return compare(other->place, one->place);
}

size_t batches_join(struct batch *batches, size_t count)
{
	size_t joined = 0;

	if (count > 1)
		sort(batches, count, sizeof *batches, compare_batches);
	for (size_t i = 0; i < count && !stop_asked(); i++) {
		if (joined > 0 && batches[joined - 1].place == batches[i].place)
			batches[joined - 1].count += batches[i].count;
		else
			batches[joined++] = batches[i];
	}
	return joined;
}

/* The result is valid until the next stack is added. */
static struct stack *add_stack(struct packing *packing, const struct stack *stack)
{
	packing->stacks = memory_grow(packing->stacks, packing->count, &packing->capacity,
		sizeof *packing->stacks);
	packing->stacks[packing->count] = *stack;
	return &packing->stacks[packing->count++];
}

/* The stack to cut from; NULL where no block has that much left. */
static struct stack *find_fullest(const struct packing *packing, nm needed)
{
	struct stack *best = NULL;

	for (size_t i = 0; i < packing->count; i++) {
		struct stack *stack = &packing->stacks[i];

		if (stack->left >= needed && (!best || stack->left < best->left ||
			(stack->left == best->left && stack->first < best->first)))
			best = stack;
	}
	return best;
}

/* Starts fresh blocks for so many pieces. */
static struct stack *open_stack(struct packing *packing, const struct saw *saw, nm needed,
	int64_t pieces)
{
	nm left = saw->block + saw->kerf;
	int64_t each = left / needed, blocks = quotient_up(pieces, each);
	struct stack fresh = { .cut.blocks = blocks, .first = packing->opened, .left = left };

	packing->opened += blocks;
	return add_stack(packing, &fresh);
}

static void add_places(struct arena *arena, struct cut *cut, nm place, int pieces)
{
	nm *places = arena_new(arena, (size_t)(cut->piece_count + pieces), sizeof *places);

	if (cut->piece_count > 0)
		memcpy(places, cut->pieces, (size_t)cut->piece_count * sizeof *places);
	for (int i = 0; i < pieces; i++)
		places[cut->piece_count + i] = place;
	cut->pieces = places;
	cut->piece_count += pieces;
}

/* Cuts from the first blocks of a stack; the others become a stack of their own. */
static void cut_from(struct packing *packing, struct stack *stack, const struct pass *pass)
{
	struct stack others = *stack;

	stack->cut.blocks = pass->blocks;
	stack->left -= pass->each * pass->needed;
	add_places(packing->arena, &stack->cut, pass->place, (int)pass->each);
	others.cut.blocks -= pass->blocks;
	others.first += pass->blocks;
	if (others.cut.blocks > 0)
		add_stack(packing, &others);
}

nm saw_piece(const struct saw *saw, nm place)
{
	return place - nm_least(saw->fit, place / 2);
}

/* Length of a block that a piece needs; over 0, so that pieces of no length do not fit without
 * end. */
static nm needed_for(const struct saw *saw, nm place)
{
	nm needed = saw_piece(saw, place) + saw->kerf;

	return needed > 0 ? needed : 1;
}

/* The fullest block stays the fullest when a piece is cut from it, so it gives all it can
 * before the next is touched. Returns how many pieces are left; 0 where blocks may be opened. */
static int64_t cut_batch(struct packing *packing, const struct saw *saw, const struct batch *batch,
	bool may_open)
{
	struct pass pass = { .place = batch->place, .needed = needed_for(saw, batch->place) };
	int64_t count = batch->count;

	while (count > 0 && !stop_asked()) {
		struct stack *stack = find_fullest(packing, pass.needed);

		if (!stack && !may_open)
			break;
		if (!stack)
			stack = open_stack(packing, saw, pass.needed, count);
		pass.each = nm_least(stack->left / pass.needed, count);
		pass.blocks = nm_least(stack->cut.blocks, count / pass.each);
		cut_from(packing, stack, &pass);
		count -= pass.blocks * pass.each;
	}
	return count;
}

static int compare_stacks(const void *a, const void *b)
{
	const struct stack *one = a, *other = b;

	return compare(one->first, other->first);
}

static const struct cut *list_cuts(struct packing *packing, int *count)
{
	struct cut *cuts = arena_new(packing->arena, packing->count, sizeof *cuts);

	if (packing->count > 1)
		sort(packing->stacks, packing->count, sizeof *packing->stacks, compare_stacks);
	for (size_t i = 0; i < packing->count; i++)
		cuts[i] = packing->stacks[i].cut;
	*count = (int)packing->count;
	free(packing->stacks);
	return cuts;
}

const struct cut *packing_cut_with(struct arena *arena, const struct saw *saw,
	const struct pieces *needed, const struct pieces *extras, int *count)
{
	struct packing packing = { .arena = arena };
	size_t lengths = batches_join(needed->batches, needed->count);

	for (size_t i = 0; i < lengths; i++)
		cut_batch(&packing, saw, &needed->batches[i], true);
	for (size_t i = 0; i < extras->count; i++)
		extras->batches[i].count = cut_batch(&packing, saw, &extras->batches[i], false);
	return list_cuts(&packing, count);
}

const struct cut *packing_cut(struct arena *arena, const struct saw *saw, struct batch *batches,
	size_t batch_count, int *count)
{
	return packing_cut_with(arena, saw, &(struct pieces){ batches, batch_count },
		&(struct pieces){ NULL, 0 }, count);
}
