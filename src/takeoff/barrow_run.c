#include "takeoff/barrow_run.h"
#include "base/stop.h"
#include "takeoff/takeoff.h"

#include <math.h>

/* Ways by how much goes along them. */
struct weighing {
	const struct barrow_ways *ways;
	double volume, times_way;
};

static void weigh_way(struct weighing *weighing, nm way, double volume)
{
	if (way <= 0)
		return;
	weighing->volume += volume;
	weighing->times_way += volume * (double)way;
}

static void weigh(struct weighing *weighing, int region, double volume)
{
	weigh_way(weighing, region == NO_REGION ? weighing->ways->fences :
		weighing->ways->regions[region], volume);
}

static void weigh_stone(struct weighing *weighing, const struct stones *stones,
	enum stone_layer layer)
{
	for (int i = 0; i < stones->count && !stop_asked(); i++)
		if (stones->list[i].layer == layer)
			weigh(weighing, stones->list[i].region, stones->list[i].loose);
}

static void weigh_step(struct weighing *weighing, const struct takeoff *t, enum work_step step)
{
	switch (step) {
	case WORK_POSTS:
		weigh(weighing, NO_REGION, 1);
		break;
	case WORK_HAUL:
		for (int i = 0; i < t->earthwork.count && !stop_asked(); i++)
			weigh(weighing, t->earthwork.rows[i].region,
				earth_sum(&t->earthwork.rows[i].bank));
		break;
	case WORK_BASE:
		weigh_stone(weighing, &t->stones, STONE_BASE);
		break;
	case WORK_FILL:
		for (int i = 0; i < t->fills.count && !stop_asked(); i++)
			weigh(weighing, t->fills.list[i].region, t->fills.list[i].order);
		break;
	case WORK_SURFACE:
		weigh_stone(weighing, &t->stones, STONE_SURFACE);
		break;
	case WORK_MULCH:
		for (int i = 0; i < t->fills.count && !stop_asked(); i++)
			weigh(weighing, t->fills.list[i].region, t->fills.list[i].mulch);
		break;
	case WORK_LAWN:
		for (int i = 0; i < t->lawns.count && !stop_asked(); i++)
			weigh(weighing, t->lawns.list[i].region, t->lawns.list[i].order);
		break;
	default:
		break;
	}
}

static int64_t loads(const struct takeoff *takeoff, enum work_step step)
{
	const struct item_list *list = &takeoff->items;
	int64_t sum = 0;

	for (size_t i = 0; i < list->count; i++) {
		const struct item *item = &list->list[i];

		if (item->order > 0 && item_unit(item) == UNIT_M3 &&
			work_step_of_good(item->good) == step)
			sum += loads_of(takeoff->allow, item->order, item->unit_weight).barrow;
	}
	return sum;
}

struct barrow_run barrow_run_of(const struct takeoff *takeoff, enum work_step step)
{
	struct weighing weighing = { &takeoff->barrow_ways, 0, 0 };
	struct barrow_run run = { loads(takeoff, step), 0 };

	if (run.loads > 0 && takeoff->barrow_ways.regions)
		weigh_step(&weighing, takeoff, step);
	if (weighing.volume > 0)
		run.way = llround(weighing.times_way / weighing.volume);
	return run;
}
