#include "takeoff/costs/mix.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/costs/blend.h"

#include <math.h>
#include <stdlib.h>

/* Labels kept at a time: most orders need few. */
static const size_t widths[] = { 16, 128, 1024 };
enum { WIDTHS = sizeof widths / sizeof *widths };

double mix_surplus(double rest, double order)
{
	return rest < 0 ? round(-rest / order * 1e9) : 0;
}

int mix_compare(const struct mix_value *a, const struct mix_value *b)
{
	if (a->cost != b->cost)
		return compare(a->cost, b->cost);
	if (a->surplus < b->surplus || a->surplus > b->surplus)
		return a->surplus < b->surplus ? -1 : 1;
	return (a->steps > b->steps) - (a->steps < b->steps);
}

struct mix_value mix_value(const struct mixing *mixing)
{
	size_t lanes = (size_t)mixing->lane_count + 1;
	struct aboard *aboard = memory_new(lanes, sizeof *aboard);
	bool *is_theirs = memory_new(lanes, sizeof *is_theirs);
	struct mix_value value = { 0, 0, 0 };

	for (int i = 0; i < mixing->lane_count; i++)
		aboard[i] = mixing->lanes[i].before;
	for (int i = 0; i < mixing->want_count; i++) {
		const struct want *want = &mixing->wants[i];
		double rest = want->order;

		for (int j = 0; j < want->offer_count; j++) {
			const struct offer *offer = &want->offers[j];

			value.cost += offer_cost(offer, want->steps[j]);
			value.steps += want->steps[j];
			rest -= want->steps[j] * offer->size;
			if (offer->lane == NO_LANE)
				continue;
			is_theirs[offer->lane] = true;
			aboard_add(&aboard[offer->lane], offer->weight, offer->volume,
				want->steps[j]);
		}
		value.surplus += mix_surplus(rest, want->order);
	}
	for (int i = 0; i < mixing->lane_count; i++)
		if (is_theirs[i])
			value.cost += lane_cost(&mixing->lanes[i], &aboard[i]);
	free(is_theirs);
	free(aboard);
	return value;
}

/* ---- A good by itself ------------------------------------------------------------------------ */

/* What is wanted of one good, of its steps. */
static struct mix_value value_alone(const struct mixing *mixing, const struct want *want)
{
	struct mixing alone = *mixing;

	alone.wants = want;
	alone.want_count = 1;
	return mix_value(&alone);
}

/* The one offer that would be the cheapest if nothing else were bought. */
static void buy_one_kind(const struct mixing *mixing, const struct want *want)
{
	struct mix_value best = { 0, 0, 0 };
	int found = 0;

	for (int i = 0; i < want->offer_count; i++) {
		struct mix_value value;

		for (int j = 0; j < want->offer_count; j++)
			want->steps[j] = j == i ? offer_steps(&want->offers[j], want->order) : 0;
		value = value_alone(mixing, want);
		if (i > 0 && mix_compare(&value, &best) >= 0)
			continue;
		best = value;
		found = i;
	}
	for (int j = 0; j < want->offer_count; j++)
		want->steps[j] = j == found ? offer_steps(&want->offers[j], want->order) : 0;
}

/* True where it is the best mix if nothing else is bought. */
static bool buy_alone(const struct mixing *mixing, const struct want *want)
{
	struct arena arena = ARENA_EMPTY;
	struct mix_value best = value_alone(mixing, want);
	bool is_cut = true;

	for (int i = 0; i < WIDTHS && is_cut && !stop_asked(); i++) {
		const struct kitchen kitchen = { &arena, mixing, NULL, 0, widths[i] };
		struct menu menu = menu_of(&kitchen, want, &best);

		is_cut = menu.is_cut;
		for (int j = 0; j < menu.count && !stop_asked(); j++) {
			if (mix_compare(&menu.list[j].value, &best) > 0)
				continue;
			best = menu.list[j].value;
			for (int k = 0; k < want->offer_count; k++)
				want->steps[k] = menu.list[j].steps[k];
		}
		arena_clear(&arena);
	}
	return !is_cut;
}

/* ---- Goods that share lanes ------------------------------------------------------------------ */

static bool comes_by(const struct want *want, int lane)
{
	for (int i = 0; i < want->offer_count; i++)
		if (want->offers[i].lane == lane)
			return true;
	return false;
}

/* Adds to the blend whatever comes by a lane as the want does, and the lane if there is any; marks
 * what is taken. */
static void gather_lane(struct blend *blend, const struct want *want, int lane, int *shared,
	bool *is_taken)
{
	const struct mixing *mixing = blend->kitchen.mixing;
	int others = 0;

	for (int j = 0; j < mixing->want_count; j++) {
		const struct want *other = &mixing->wants[j];

		if (!comes_by(other, lane))
			continue;
		others += other != want;
		if (!is_taken[j])
			blend->wants[blend->count++] = other;
		is_taken[j] = true;
	}
	for (int k = 0; k < blend->kitchen.shared_count; k++)
		others = shared[k] == lane ? 0 : others;
	if (others > 0)
		shared[blend->kitchen.shared_count++] = lane;
}

/* Adds to the blend whatever shares a lane with what is in it, and these lanes. */
static void gather(struct blend *blend, int *shared, bool *is_taken)
{
	const struct mixing *mixing = blend->kitchen.mixing;

	for (int i = 0; i < blend->count; i++)
		for (int lane = 0; lane < mixing->lane_count; lane++)
			if (mixing->lanes[lane].delivery != 0 && comes_by(blend->wants[i], lane))
				gather_lane(blend, blend->wants[i], lane, shared, is_taken);
}

static bool blend_from(const struct mixing *mixing, int first, bool *is_taken, struct arena *arena)
{
	int *shared = arena_new(arena, (size_t)mixing->lane_count + 1, sizeof *shared);
	struct blend blend = { { arena, mixing, shared, 0, widths[WIDTHS - 1] },
		arena_new(arena, (size_t)mixing->want_count, sizeof *blend.wants), 0 };
	bool is_sure = true;

	blend.wants[blend.count++] = &mixing->wants[first];
	is_taken[first] = true;
	gather(&blend, shared, is_taken);
	for (int i = 0; i < blend.count; i++)
		is_sure = buy_alone(mixing, blend.wants[i]) && is_sure;
	if (blend.count == 1)
		return is_sure;
	return blend.kitchen.shared_count <= LANES_SHARED_MOST && blend_find(&blend);
}

bool mix_find(const struct mixing *mixing)
{
	bool *is_taken = memory_new((size_t)mixing->want_count, sizeof *is_taken);
	bool is_sure = true;

	for (int i = 0; i < mixing->want_count; i++)
		buy_one_kind(mixing, &mixing->wants[i]);
	for (int i = 0; i < mixing->want_count && !stop_asked(); i++) {
		struct arena arena = ARENA_EMPTY;

		if (!is_taken[i])
			is_sure = blend_from(mixing, i, is_taken, &arena) && is_sure;
		arena_clear(&arena);
	}
	free(is_taken);
	return is_sure;
}
