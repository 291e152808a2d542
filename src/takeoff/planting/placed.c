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
	for (int i = 0; i < kinds; i++) {
		struct placed_kind *kind = &placed->kinds[i];

		kind->size = sizes[i];
		kind->tables[PLACED_DRIFTS].side = sizes[i].spacing;
		kind->tables[PLACED_SPECIMENS].side = nm_most(sizes[i].spacing, sizes[i].spread);
	}
}

void placed_end(struct placed *placed)
{
	for (int i = 0; i < placed->kind_count; i++)
		for (int table = 0; table < PLACED_TABLES; table++)
			free(placed->kinds[i].tables[table].chains);
	free(placed->kinds);
	free(placed->list);
	*placed = (struct placed){ .list = NULL };
}

static int table_of(const struct placed_plant *plant)
{
	return plant->is_specimen ? PLACED_SPECIMENS : PLACED_DRIFTS;
}

bool placed_add(struct placed *placed, const struct placed_plant *plant)
{
	placed->is_full = placed->count >= PLACED_MOST;
	if (placed->is_full)
		return false;
	placed->list = memory_grow(placed->list, placed->count, &placed->capacity,
		sizeof *placed->list);
	placed->list[placed->count++] = *plant;
	placed->kinds[plant->kind].tables[table_of(plant)].count++;
	return true;
}

/* ---- Squares --------------------------------------------------------------------------------- */

static size_t chain_of(const struct placed_table *table, int64_t x, int64_t y)
{
	uint64_t mixed = (uint64_t)x * UINT64_C(0x9e3779b97f4a7c15) +
		(uint64_t)y * UINT64_C(0xc2b2ae3d27d4eb4f);

	return (size_t)((mixed ^ (mixed >> 32)) & (table->chain_count - 1));
}

static void put_in_chain(struct placed *placed, struct placed_table *table, size_t i)
{
	struct placed_plant *plant = &placed->list[i];
	int *chain = &table->chains[chain_of(table, plant->at.x / table->side,
		plant->at.y / table->side)];

	plant->next = *chain;
	*chain = (int)i;
}

/* Has all plants of the kind in its table, anew where there are many more than chains. */
static void catch_up(struct placed *placed, int kind, int of)
{
	struct placed_table *table = &placed->kinds[kind].tables[of];
	size_t wanted = table->chain_count ? table->chain_count : CHAINS_FIRST;

	while (wanted < table->count)
		wanted *= 2;
	if (wanted != table->chain_count) {
		free(table->chains);
		table->chains = memory_new(wanted, sizeof *table->chains);
		table->chain_count = wanted;
		table->seen = 0;
		for (size_t i = 0; i < wanted; i++)
			table->chains[i] = -1;
	}
	for (; table->seen < placed->count && !stop_asked(); table->seen++) {
		const struct placed_plant *plant = &placed->list[table->seen];

		if (plant->kind == kind && table_of(plant) == of)
			put_in_chain(placed, table, table->seen);
	}
}

static const struct placed_table *table_at(const struct placed_walk *walk)
{
	return &walk->placed->kinds[walk->kind].tables[walk->table];
}

static int chain_at(const struct placed_walk *walk)
{
	const struct placed_table *table = table_at(walk);

	return table->chains[walk->is_of_all ? (size_t)walk->x :
		chain_of(table, walk->x, walk->y)];
}

static void enter(struct placed_walk *walk, int table)
{
	const struct placed_ground *ground = &walk->ground;
	nm side = walk->placed->kinds[walk->kind].tables[table].side;

	walk->table = table;
	catch_up(walk->placed, walk->kind, table);
	walk->left = nm_most(ground->left, 0) / side;
	walk->top = nm_most(ground->top, 0) / side;
	walk->right = nm_most(ground->right, 0) / side;
	walk->bottom = nm_most(ground->bottom, 0) / side;
	walk->is_of_all = (nm2)(walk->right - walk->left + 1) * (walk->bottom - walk->top + 1) >
		(nm2)table_at(walk)->chain_count;
	if (walk->is_of_all) {
		walk->left = walk->top = walk->bottom = 0;
		walk->right = (int64_t)table_at(walk)->chain_count - 1;
	}
	walk->x = walk->left;
	walk->y = walk->top;
	walk->next = chain_at(walk);
}

/* Goes over these tables of the kind. */
static void walk_tables(struct placed_walk *walk, struct placed *placed, int kind, int first,
	int last, const struct placed_ground *ground)
{
	*walk = (struct placed_walk){ .placed = placed, .ground = *ground, .kind = kind,
		.last = last };
	enter(walk, first);
}

void placed_walk_begin(struct placed_walk *walk, struct placed *placed, int kind,
	const struct placed_ground *ground)
{
	walk_tables(walk, placed, kind, PLACED_DRIFTS, PLACED_SPECIMENS, ground);
}

static bool is_in_square(const struct placed_walk *walk, const struct placed_plant *plant)
{
	nm side = table_at(walk)->side;

	return plant->at.x / side == walk->x && plant->at.y / side == walk->y;
}

const struct placed_plant *placed_walk_next(struct placed_walk *walk)
{
	for (;;) {
		while (walk->next >= 0) {
			const struct placed_plant *plant = &walk->placed->list[walk->next];

			walk->next = plant->next;
			if (walk->is_of_all || is_in_square(walk, plant))
				return plant;
		}
		if (++walk->x > walk->right) {
			walk->x = walk->left;
			walk->y++;
		}
		if (walk->y <= walk->bottom)
			walk->next = chain_at(walk);
		else if (walk->table < walk->last)
			enter(walk, walk->table + 1);
		else
			return NULL;
	}
}

/* ---- What is near ---------------------------------------------------------------------------- */

bool spots_are_nearer(struct spot a, struct spot b, nm twice)
{
	nm2 x = a.x - b.x, y = a.y - b.y;

	return 4 * (x * x + y * y) < (nm2)twice * twice;
}

/* Whether one in that table of a kind is nearer than half of `twice`. */
static bool is_near_some(struct placed *placed, struct spot at, int kind, int table, nm twice)
{
	const nm reach = twice / 2;
	const struct placed_plant *plant;
	struct placed_walk walk;

	if (placed->kinds[kind].tables[table].count == 0)
		return false;
	walk_tables(&walk, placed, kind, table, table, &(struct placed_ground){ at.x - reach,
		at.y - reach, at.x + reach, at.y + reach });
	while ((plant = placed_walk_next(&walk)))
		if (spots_are_nearer(plant->at, at, twice))
			return true;
	return false;
}

bool placed_is_near(struct placed *placed, struct spot at, int kind)
{
	const struct placed_size *one = &placed->kinds[kind].size;

	for (int i = 0; i < placed->kind_count; i++) {
		const struct placed_size *two = &placed->kinds[i].size;
		nm twice = one->spacing + two->spacing;

		if (is_near_some(placed, at, i, PLACED_DRIFTS, twice) ||
			is_near_some(placed, at, i, PLACED_SPECIMENS,
			nm_most(twice, one->spread + two->spread)))
			return true;
	}
	return false;
}
