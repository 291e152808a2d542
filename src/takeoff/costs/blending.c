#include "takeoff/costs/blending.h"

#include <math.h>

const struct lane *lane_of(const struct blending *b, int i)
{
	return &b->blend->kitchen.mixing->lanes[b->blend->kitchen.shared[i]];
}

/* ---- A whole mix ----------------------------------------------------------------------------- */

static struct mix_value value_of(const struct blending *b, const struct recipe *const *chosen)
{
	struct mix_value value = { 0, 0, 0 };

	for (int i = 0; i < b->blend->count; i++) {
		value.cost += chosen[i]->value.cost;
		value.surplus += chosen[i]->value.surplus;
		value.steps += chosen[i]->value.steps;
	}
	for (int lane = 0; lane < b->lanes; lane++) {
		struct aboard aboard = lane_of(b, lane)->before;

		for (int i = 0; i < b->blend->count; i++)
			if (chosen[i]->aboard[lane] >= 0)
				aboard_add(&aboard, chosen[i]->aboard[lane], 0, 1);
		value.cost += lane_cost(lane_of(b, lane), &aboard);
	}
	return value;
}

/* Whether what is chosen has more of the earlier offers than the steps in the wants. */
static bool is_earlier(const struct blending *b)
{
	for (int i = 0; i < b->blend->count; i++) {
		const struct want *want = b->blend->wants[i];

		for (int j = 0; j < want->offer_count; j++) {
			double more = b->chosen[i]->steps[j] - want->steps[j];

			if (more > 0 || more < 0)
				return more > 0;
		}
	}
	return false;
}

void take_chosen(struct blending *b)
{
	struct mix_value value = value_of(b, b->chosen);
	int order = mix_compare(&value, &b->best);

	if (order > 0 || (order == 0 && !is_earlier(b)))
		return;
	b->best = value;
	for (int i = 0; i < b->blend->count; i++)
		for (int j = 0; j < b->blend->wants[i]->offer_count; j++)
			b->blend->wants[i]->steps[j] = b->chosen[i]->steps[j];
}

/* ---- At prices ------------------------------------------------------------------------------- */

bool is_barred(const struct blending *b, const struct box *box, const struct recipe *recipe)
{
	for (int lane = 0; lane < b->lanes; lane++)
		if (box->to[lane] <= 0 && recipe->aboard[lane] >= 0)
			return true;
	return false;
}

double recipe_cost(const struct blending *b, const struct prices *prices,
	const struct recipe *recipe)
{
	double cost = (double)recipe->value.cost;

	for (int lane = 0; lane < b->lanes; lane++)
		cost += fmax(recipe->aboard[lane], 0) * prices->of[lane];
	return cost;
}

double full_price(const struct lane *lane)
{
	return (double)lane->delivery / lane->load.carries;
}

double drops_cost(const struct blending *b, const struct box *box, const struct prices *prices)
{
	double cost = 0;

	for (int i = 0; i < b->lanes; i++) {
		const struct lane *lane = lane_of(b, i);
		double price = prices->of[i];

		cost += ((double)lane->delivery - price * lane->load.carries) *
			(price <= full_price(lane) ? box->from[i] : box->to[i]);
		cost += price * lane->before.weight;
	}
	return cost;
}
