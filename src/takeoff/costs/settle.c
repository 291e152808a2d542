#include "takeoff/costs/blending.h"
#include "base/sort.h"
#include "base/stop.h"

#include <math.h>
#include <stdlib.h>

enum { TRIES_MOST = 500000 };

struct try {
	const struct recipe *recipe;
	double cost; /* at the prices */
};

struct trying {
	struct blending *b;
	struct try **tries;  /* by good, the cheapest first */
	int *counts;
	double *later;       /* by good: what those from it on must come to */
	double room[LANES_SHARED_MOST];
};

static int by_cost(const void *one, const void *other)
{
	const struct try *a = one, *b = other;

	return (a->cost > b->cost) - (a->cost < b->cost);
}

static bool has_room(const struct trying *t, const struct recipe *recipe)
{
	for (int lane = 0; lane < t->b->lanes; lane++)
		if (recipe->aboard[lane] > t->room[lane])
			return false;
	return true;
}

static void load(struct trying *t, const struct recipe *recipe, double sign)
{
	for (int lane = 0; lane < t->b->lanes; lane++)
		t->room[lane] -= sign * fmax(recipe->aboard[lane], 0);
}

static void try_all(struct trying *t, int good, double cost)
{
	struct blending *b = t->b;

	if (good == b->blend->count) {
		take_chosen(b);
		return;
	}
	for (int i = 0; i < t->counts[good] && !b->is_cut; i++) {
		const struct try *try = &t->tries[good][i];

		if (cost + try->cost + t->later[good + 1] - b->hair > (double)b->best.cost)
			return;
		if (++b->tries > TRIES_MOST || stop_asked())
			b->is_cut = true;
		if (!has_room(t, try->recipe))
			continue;
		b->chosen[good] = try->recipe;
		load(t, try->recipe, 1);
		try_all(t, good + 1, cost + try->cost);
		load(t, try->recipe, -1);
	}
}

void settle(struct blending *b, const struct box *box, const struct prices *prices)
{
	int count = b->blend->count;
	struct trying t = { .b = b, .tries = memory_new((size_t)count, sizeof *t.tries),
		.counts = memory_new((size_t)count, sizeof *t.counts),
		.later = memory_new((size_t)count + 1, sizeof *t.later) };

	for (int lane = 0; lane < b->lanes; lane++)
		t.room[lane] = lane_of(b, lane)->load.carries * (box->to[lane] + 1e-9) -
			lane_of(b, lane)->before.weight;
	for (int i = count - 1; i >= 0; i--) {
		const struct menu *menu = &b->menus[i];

		t.tries[i] = memory_new((size_t)menu->count + 1, sizeof *t.tries[i]);
		for (int j = 0; j < menu->count; j++)
			if (!is_barred(b, box, &menu->list[j]))
				t.tries[i][t.counts[i]++] = (struct try){ &menu->list[j],
					recipe_cost(b, prices, &menu->list[j]) };
		sort(t.tries[i], (size_t)t.counts[i], sizeof *t.tries[i], by_cost);
		t.later[i] = t.later[i + 1] + t.tries[i][0].cost;
	}
	try_all(&t, 0, drops_cost(b, box, prices));
	for (int i = 0; i < count; i++)
		free(t.tries[i]);
	free(t.tries);
	free(t.counts);
	free(t.later);
}
