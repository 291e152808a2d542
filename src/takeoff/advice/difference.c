#include "takeoff/advice/attempt.h"

#include <math.h>
#include <string.h>

/* Less than that is no weight, but what sums of other numbers leave. */
#define GRAM 0.001

static int64_t blocks(const struct takeoff *takeoff)
{
	int64_t sum = 0;

	for (int i = 0; i < takeoff->cuttings.count; i++)
		sum += takeoff->cuttings.list[i].order;
	return sum;
}

static int64_t cuts(const struct takeoff *takeoff)
{
	int64_t sum = 0;

	for (int i = 0; i < takeoff->cuttings.count; i++)
		for (int j = 0; j < takeoff->cuttings.list[i].cut_count; j++) {
			const struct cut *cut = &takeoff->cuttings.list[i].cuts[j];

			sum += cut->blocks * cut->piece_count;
		}
	return sum;
}

static int64_t panels(const struct takeoff *takeoff)
{
	int64_t sum = 0;

	for (int i = 0; i < takeoff->fences.count; i++)
		sum += takeoff->fences.list[i].panels_bought;
	return sum;
}

static int64_t panel_pieces(const struct takeoff *takeoff)
{
	int64_t sum = 0;

	for (int i = 0; i < takeoff->fences.count; i++)
		sum += takeoff->fences.list[i].panel_pieces;
	return sum;
}

/* ---- What has no price ----------------------------------------------------------------------- */

static bool is_unpriced(const struct item_list *items, const struct item *item)
{
	const struct purchase *purchase = item_purchase(items, item);

	return purchase && !purchase->is_priced;
}

/* The first item without a price from `at` on; the count where there is none. */
static size_t next_unpriced(const struct item_list *items, size_t at)
{
	while (at < items->count && !is_unpriced(items, &items->list[at]))
		at++;
	return at;
}

static bool is_same_item(const struct item *a, const struct item *b)
{
	return a->good == b->good && strcmp(a->name, b->name) == 0 &&
		size_equal(&a->block, &b->block) && a->length == b->length &&
		a->height == b->height && a->across == b->across && a->order == b->order;
}

/* Whether what has no price is the same in both, and as much. */
static bool is_all_priced(const struct item_list *before, const struct item_list *after)
{
	size_t i = next_unpriced(before, 0), j = next_unpriced(after, 0);

	while (i < before->count && j < after->count) {
		if (!is_same_item(&before->list[i], &after->list[j]))
			return false;
		i = next_unpriced(before, i + 1);
		j = next_unpriced(after, j + 1);
	}
	return i == before->count && j == after->count;
}

struct difference difference_of(const struct takeoff *before, const struct takeoff *after)
{
	double weight = after->costs.weight - before->costs.weight;
	struct difference difference = {
		.blocks = blocks(after) - blocks(before),
		.cuts = cuts(after) - cuts(before),
		.panels = panels(after) - panels(before),
		.panel_pieces = panel_pieces(after) - panel_pieces(before),
		.weight = fabs(weight) < GRAM ? 0 : weight,
		.has_cost = before->book && is_all_priced(&before->items, &after->items),
	};

	if (difference.has_cost)
		difference.cost = after->costs.total - before->costs.total;
	return difference;
}
