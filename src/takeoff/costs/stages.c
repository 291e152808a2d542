#include "takeoff/costs/stages.h"

#include <math.h>

double stages_part_drops(const struct stages *stages, int lane, const struct aboard *aboard)
{
	const struct lane *by = &stages->lanes[lane];
	double part = stages->by_volume[lane] ? aboard->volume / by->load.holds :
		aboard->weight / by->load.carries;

	return part * (double)by->delivery;
}

/* Of a unit of the good. */
static double least_cost(const struct stages *stages, const struct offer *offer)
{
	struct aboard aboard = { offer->weight, offer->volume, true };
	double drops = offer->lane == NO_LANE ? 0 :
		stages_part_drops(stages, offer->lane, &aboard);

	return (offer->packs * (double)offer->price + drops) / offer->size;
}

/* One measure for all that comes by a lane, or parts of drops would not add up: the one that more
 * of the offers fill it by. */
static void find_measures(struct stages *stages, const struct kitchen *kitchen,
	const struct want *want)
{
	size_t lanes = (size_t)kitchen->mixing->lane_count + 1;
	double *more = arena_new(kitchen->arena, lanes, sizeof *more);

	stages->by_volume = arena_new(kitchen->arena, lanes, sizeof *stages->by_volume);
	for (int i = 0; i < want->offer_count; i++) {
		const struct offer *offer = &want->offers[i];
		const struct load *load;

		if (offer->lane == NO_LANE)
			continue;
		load = &stages->lanes[offer->lane].load;
		more[offer->lane] += (load->holds > 0 ? offer->volume / load->holds : 0) -
			offer->weight / load->carries;
	}
	for (int i = 0; i < kitchen->mixing->lane_count; i++) {
		stages->by_volume[i] = more[i] > 0;
		stages->hair += 1e-8 * (double)stages->lanes[i].delivery;
	}
}

/* From the last offer to the first. */
static void look_ahead(struct stages *stages, const struct want *want)
{
	double cost = INFINITY, size = 0;

	for (int i = want->offer_count - 1; i >= 0; i--) {
		struct stage *stage = &stages->list[i];
		double own = least_cost(stages, &want->offers[i]), own_size = want->offers[i].size;

		*stage = (struct stage){ .offer = &want->offers[i],
			.is_last = i == want->offer_count - 1 };
		if (!stage->is_last) {
			stage->cost_a_unit = cost;
			stage->steps_a_unit = 1 / size;
			stage->is_best = own < cost || (own <= cost && own_size >= size);
			stage->is_steady = stage->is_best ? own_size >= size : own_size <= size;
		}
		cost = fmin(cost, own);
		size = fmax(size, own_size);
		stages->rounding += floor(want->offers[i].packs) < want->offers[i].packs ? 0.5 : 0;
	}
}

static bool is_shared(const struct kitchen *kitchen, int lane)
{
	for (int i = 0; i < kitchen->shared_count; i++)
		if (kitchen->shared[i] == lane)
			return true;
	return false;
}

/* A lane of its own is open from the first offer that comes by it to the last. */
static void find_lanes(struct stages *stages, const struct kitchen *kitchen)
{
	size_t lanes = (size_t)kitchen->mixing->lane_count + 1;
	int *first = arena_new(kitchen->arena, lanes, sizeof *first);
	int *last = arena_new(kitchen->arena, lanes, sizeof *last);

	for (size_t i = 0; i < lanes; i++)
		last[i] = first[i] = -1;
	for (int at = 0; at < stages->count; at++) {
		int lane = stages->list[at].offer->lane;

		if (lane == NO_LANE || is_shared(kitchen, lane))
			continue;
		first[lane] = first[lane] < 0 ? at : first[lane];
		last[lane] = at;
	}
	for (int at = 0; at < stages->count; at++) {
		struct stage *stage = &stages->list[at];
		int *open = arena_new(kitchen->arena, lanes, sizeof *open);
		int *closing = arena_new(kitchen->arena, lanes, sizeof *closing);

		for (int i = 0; i < kitchen->mixing->lane_count; i++) {
			if (first[i] >= 0 && first[i] <= at && at < last[i])
				open[stage->own_count++] = i;
			if (last[i] != at)
				continue;
			closing[stage->closing_count++] = i;
			stage->closing_most += (double)stages->lanes[i].delivery;
		}
		stage->open_count = stage->own_count;
		for (int i = 0; i < kitchen->shared_count; i++)
			open[stage->open_count++] = kitchen->shared[i];
		stage->open = open;
		stage->closing = closing;
	}
}

void stages_init(struct stages *stages, const struct kitchen *kitchen, const struct want *want)
{
	*stages = (struct stages){ .count = want->offer_count, .hair = 1e-6,
		.lanes = kitchen->mixing->lanes,
		.list = arena_new(kitchen->arena, OFFERS_MOST, sizeof *stages->list) };
	find_measures(stages, kitchen, want);
	look_ahead(stages, want);
	find_lanes(stages, kitchen);
}
