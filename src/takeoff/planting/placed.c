#include "takeoff/planting/placed.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/cover.h"

#include <stdlib.h>

enum { CHAINS_FIRST = 64 };

void placed_begin(struct placed *placed, const struct placed_size *sizes, int kinds)
{
	*placed = (struct placed){ .kind_count = kinds,
		.kinds = memory_new((size_t)kinds, sizeof *placed->kinds) };
	for (int i = 0; i < kinds; i++)
		placed->kinds[i].size = sizes[i];
}

void placed_end(struct placed *placed)
{
	for (int i = 0; i < placed->kind_count; i++)
		free(placed->kinds[i].chains);
	free(placed->kinds);
	free(placed->list);
	*placed = (struct placed){ .list = NULL };
}

bool placed_add(struct placed *placed, const struct placed_plant *plant)
{
	placed->is_full = placed->count >= PLACED_MOST;
	if (placed->is_full)
		return false;
	placed->list = memory_grow(placed->list, placed->count, &placed->capacity,
		sizeof *placed->list);
	placed->list[placed->count++] = *plant;
	placed->kinds[plant->kind].count++;
	placed->kinds[plant->kind].specimens += plant->is_specimen;
	return true;
}

/* ---- Squares --------------------------------------------------------------------------------- */

static size_t chain_of(const struct placed_kind *kind, int64_t x, int64_t y)
{
	uint64_t mixed = (uint64_t)x * UINT64_C(0x9e3779b97f4a7c15) +
		(uint64_t)y * UINT64_C(0xc2b2ae3d27d4eb4f);

	return (size_t)((mixed ^ (mixed >> 32)) & (kind->chain_count - 1));
}

static void put_in_chain(struct placed *placed, struct placed_kind *kind, size_t i)
{
	struct placed_plant *plant = &placed->list[i];
	int *chain = &kind->chains[chain_of(kind, plant->at.x / kind->size.spacing,
		plant->at.y / kind->size.spacing)];

	plant->next = *chain;
	*chain = (int)i;
}

/* Has all plants of the kind in its table, anew where there are many more than chains. */
static void catch_up(struct placed *placed, int of)
{
	struct placed_kind *kind = &placed->kinds[of];
	size_t wanted = kind->chain_count ? kind->chain_count : CHAINS_FIRST;

	while (wanted < kind->count)
		wanted *= 2;
	if (wanted != kind->chain_count) {
		free(kind->chains);
		kind->chains = memory_new(wanted, sizeof *kind->chains);
		kind->chain_count = wanted;
		kind->seen = 0;
		for (size_t i = 0; i < wanted; i++)
			kind->chains[i] = -1;
	}
	for (; kind->seen < placed->count && !stop_asked(); kind->seen++)
		if (placed->list[kind->seen].kind == of)
			put_in_chain(placed, kind, kind->seen);
}

static const int *chain_at(const struct placed_walk *walk)
{
	const struct placed_kind *kind = &walk->placed->kinds[walk->kind];

	return &kind->chains[chain_of(kind, walk->x, walk->y)];
}

void placed_walk_begin(struct placed_walk *walk, struct placed *placed, int kind,
	const struct placed_ground *ground)
{
	nm side = placed->kinds[kind].size.spacing;

	*walk = (struct placed_walk){ .placed = placed, .kind = kind,
		.left = nm_most(ground->left, 0) / side, .top = nm_most(ground->top, 0) / side,
		.right = nm_most(ground->right, 0) / side,
		.bottom = nm_most(ground->bottom, 0) / side };
	catch_up(placed, kind);
	walk->x = walk->left;
	walk->y = walk->top;
	walk->next = *chain_at(walk);
}

static bool is_in_square(const struct placed_walk *walk, const struct placed_plant *plant)
{
	nm side = walk->placed->kinds[walk->kind].size.spacing;

	return plant->at.x / side == walk->x && plant->at.y / side == walk->y;
}

const struct placed_plant *placed_walk_next(struct placed_walk *walk)
{
	while (walk->y <= walk->bottom) {
		while (walk->next >= 0) {
			const struct placed_plant *plant = &walk->placed->list[walk->next];

			walk->next = plant->next;
			if (is_in_square(walk, plant))
				return plant;
		}
		if (++walk->x > walk->right) {
			walk->x = walk->left;
			walk->y++;
		}
		walk->next = *chain_at(walk);
	}
	return NULL;
}

/* ---- What is near ---------------------------------------------------------------------------- */

bool spots_are_nearer(struct spot a, struct spot b, nm twice)
{
	nm2 x = a.x - b.x, y = a.y - b.y;

	return 4 * (x * x + y * y) < (nm2)twice * twice;
}

static bool is_near_kind(struct placed *placed, struct spot at, int kind, int other)
{
	const struct placed_size *one = &placed->kinds[kind].size;
	const struct placed_size *two = &placed->kinds[other].size;
	nm twice = one->spacing + two->spacing;
	nm to_specimens = nm_most(twice, one->spread + two->spread);
	nm reach = (placed->kinds[other].specimens > 0 ? to_specimens : twice) / 2 + 1;
	const struct placed_plant *plant;
	struct placed_walk walk;

	placed_walk_begin(&walk, placed, other, &(struct placed_ground){ at.x - reach,
		at.y - reach, at.x + reach, at.y + reach });
	while ((plant = placed_walk_next(&walk)))
		if (spots_are_nearer(plant->at, at, plant->is_specimen ? to_specimens : twice))
			return true;
	return false;
}

bool placed_is_near(struct placed *placed, struct spot at, int kind)
{
	for (int i = 0; i < placed->kind_count; i++)
		if (placed->kinds[i].count > 0 && is_near_kind(placed, at, kind, i))
			return true;
	return false;
}
