/* Drops are counted by boxes: for each lane, from how many to how many. Of a box it is known what
 * must be paid at least: with any price on a kilogram aboard, each good takes the recipe that is
 * the cheapest at these prices, and what the price brings in is taken off for as many drops as fit
 * the price best (Lagrange's multipliers). The best prices are sought; a box that must come to more
 * than the best mix known is dropped, others are halved until the drops are settled. Then all
 * recipes are tried, good by good, with the same prices. */
#include "takeoff/costs/blending.h"
#include "base/stop.h"

#include <math.h>
#include <stdlib.h>

enum { BOXES_MOST = 5000, HALVINGS = 16, SWEEPS = 2 };
static const double DROPS_MOST = 1e6, PRICE_MOST = 1000;

/* ---- What a box must come to ----------------------------------------------------------------- */

/* What the box must come to at least, INFINITY: it cannot be; with the recipes chosen for that,
 * and what they weigh by lane. */
static double least_of(struct blending *b, const struct box *box, const struct prices *prices,
	double *weights)
{
	double least = drops_cost(b, box, prices);

	for (int lane = 0; lane < b->lanes; lane++)
		weights[lane] = lane_of(b, lane)->before.weight;
	for (int i = 0; i < b->blend->count; i++) {
		double best = INFINITY;

		for (int j = 0; j < b->menus[i].count; j++) {
			const struct recipe *recipe = &b->menus[i].list[j];
			double cost = recipe_cost(b, prices, recipe);

			if (cost >= best || is_barred(b, box, recipe))
				continue;
			best = cost;
			b->chosen[i] = recipe;
		}
		if (best >= INFINITY)
			return INFINITY;
		for (int lane = 0; lane < b->lanes; lane++)
			weights[lane] += fmax(b->chosen[i]->aboard[lane], 0);
		least += best;
	}
	return least;
}

/* Seeks the best price for one lane: where what is aboard just fills the drops. */
static void fit_price(struct blending *b, const struct box *box, struct prices *prices, int lane)
{
	double full = full_price(lane_of(b, lane)), carries = lane_of(b, lane)->load.carries;
	double weights[LANES_SHARED_MOST] = { 0 }, low = full, high = full, drops;

	prices->of[lane] = full;
	if (least_of(b, box, prices, weights) >= INFINITY)
		return;
	if (weights[lane] < carries * box->from[lane])
		low = 0;
	else if (weights[lane] > carries * box->to[lane])
		high = full * PRICE_MOST;
	else
		return;
	drops = low < full ? box->from[lane] : box->to[lane];
	for (int i = 0; i < HALVINGS; i++) {
		prices->of[lane] = low > 0 ? sqrt(low * high) : (low + high) / 2;
		least_of(b, box, prices, weights);
		if (weights[lane] > carries * drops)
			low = prices->of[lane];
		else
			high = prices->of[lane];
	}
	prices->of[lane] = low < full ? low : high;
}

/* The same, with the best prices found. */
static double bound_of(struct blending *b, const struct box *box, struct prices *best,
	double *weights)
{
	struct prices prices = { { 0 } };
	double bound;

	for (int lane = 0; lane < b->lanes; lane++)
		prices.of[lane] = full_price(lane_of(b, lane));
	bound = least_of(b, box, &prices, weights);
	*best = prices;
	for (int i = 0; i < SWEEPS * b->lanes && bound < INFINITY; i++) {
		double next;

		fit_price(b, box, &prices, i % b->lanes);
		next = least_of(b, box, &prices, weights);
		if (next <= bound)
			continue;
		bound = next;
		*best = prices;
	}
	return least_of(b, box, best, weights);
}

/* ---- Boxes ----------------------------------------------------------------------------------- */

/* The lane whose drops are the least settled, -1: all are; *most: the drops to halve its box
 * after. */
static int lane_to_halve(const struct blending *b, const struct box *box, const double *weights,
	double *most)
{
	double worst = -1;
	int found = -1;

	for (int i = 0; i < b->lanes; i++) {
		const struct lane *lane = lane_of(b, i);
		double part = weights[i] / lane->load.carries, need = ceil(part - 1e-9);
		double open = (need - fmax(part, box->from[i])) * (double)lane->delivery;

		if (box->from[i] >= box->to[i] || open <= worst)
			continue;
		worst = fmax(open, 0);
		found = i;
		*most = fmin(fmax(need - 1, box->from[i]), box->to[i] - 1);
	}
	return found;
}

static void look_into(struct blending *b, const struct box *box)
{
	double weights[LANES_SHARED_MOST] = { 0 }, most = 0, bound;
	struct prices prices;
	struct box part = *box;
	int lane;

	if (++b->boxes > BOXES_MOST || stop_asked())
		b->is_cut = true;
	if (b->is_cut)
		return;
	bound = bound_of(b, box, &prices, weights);
	if (bound < INFINITY)
		take_chosen(b);
	if (bound - b->hair > (double)b->best.cost)
		return;
	lane = lane_to_halve(b, box, weights, &most);
	if (lane < 0) {
		settle(b, box, &prices);
		return;
	}
	part.from[lane] = most + 1;
	look_into(b, &part);
	part.from[lane] = box->from[lane];
	part.to[lane] = most;
	look_into(b, &part);
}

/* ---- The whole ------------------------------------------------------------------------------- */

/* What all goods come to at least with parts of drops; their recipes for that are their menus. */
static double least_of_all(struct blending *b)
{
	const struct blend *blend = b->blend;
	double least = 0;

	for (int lane = 0; lane < b->lanes; lane++)
		least += full_price(lane_of(b, lane)) * lane_of(b, lane)->before.weight;
	for (int i = 0; i < blend->count; i++) {
		b->menus[i] = menu_least(&blend->kitchen, blend->wants[i]);
		b->is_cut = b->is_cut || b->menus[i].is_cut || b->menus[i].count == 0;
		if (b->menus[i].count == 0)
			return 0;
		b->chosen[i] = &b->menus[i].list[0];
		b->paid[i] = b->chosen[i]->paid;
		least += b->paid[i];
	}
	take_chosen(b);
	return least;
}

/* Menus of what may be in a mix that comes to so much more than that. */
static void make_menus(struct blending *b, double spare)
{
	const struct blend *blend = b->blend;

	for (int i = 0; i < blend->count; i++) {
		struct mix_value limit = { llround(ceil(b->paid[i] + spare)), 1, 0 };

		b->menus[i] = menu_of(&blend->kitchen, blend->wants[i], &limit);
		b->is_cut = b->is_cut || b->menus[i].is_cut || b->menus[i].count == 0;
	}
}

static struct box all_drops(const struct blending *b)
{
	struct box all = { { 0 }, { 0 } };

	for (int i = 0; i < b->lanes; i++) {
		const struct lane *lane = lane_of(b, i);

		all.from[i] = lane->before.is_used ? 1 : 0;
		all.to[i] = fmin(floor((double)b->best.cost / (double)lane->delivery), DROPS_MOST);
	}
	return all;
}

static struct mix_value value_before(const struct blending *b)
{
	const struct blend *blend = b->blend;
	struct want *wants = memory_new((size_t)blend->count, sizeof *wants);
	struct mixing mixing = *blend->kitchen.mixing;
	struct mix_value value;

	for (int i = 0; i < blend->count; i++)
		wants[i] = *blend->wants[i];
	mixing.wants = wants;
	mixing.want_count = blend->count;
	value = mix_value(&mixing);
	free(wants);
	return value;
}

bool blend_find(const struct blend *blend)
{
	struct blending b = { .blend = blend, .lanes = blend->kitchen.shared_count };
	double least, spare;
	bool is_short = true;

	b.menus = arena_new(blend->kitchen.arena, (size_t)blend->count, sizeof *b.menus);
	b.chosen = arena_new(blend->kitchen.arena, (size_t)blend->count, sizeof *b.chosen);
	b.paid = arena_new(blend->kitchen.arena, (size_t)blend->count, sizeof *b.paid);
	b.best = value_before(&b);
	for (int lane = 0; lane < b.lanes; lane++)
		b.hair += 1e-6 + 1e-5 * (double)lane_of(&b, lane)->delivery;
	least = least_of_all(&b);
	/* A short menu may do: it gives a good mix, and so tells how long it must be. */
	spare = ((double)b.best.cost - least) / 8 + b.hair;
	while (is_short && !b.is_cut) {
		make_menus(&b, spare);
		if (!b.is_cut) {
			struct box all = all_drops(&b);

			look_into(&b, &all);
		}
		is_short = spare < (double)b.best.cost - least + b.hair;
		spare *= 2;
	}
	return !b.is_cut && !stop_asked();
}
