#include "takeoff/services/sleeves.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <stdlib.h>

/* Along a leg. */
struct range {
	nm low, high; /* low < high once it is in a list */
};

struct ranges {
	struct range *list; /* owned */
	size_t count, capacity;
};

static void ranges_add(struct ranges *ranges, nm low, nm high)
{
	if (low >= high)
		return;
	ranges->list = memory_grow(ranges->list, ranges->count, &ranges->capacity,
		sizeof *ranges->list);
	ranges->list[ranges->count++] = (struct range){ low, high };
}

static int by_low(const void *a, const void *b)
{
	const struct range *one = a, *other = b;

	return compare(one->low, other->low);
}

/* Those that are no farther apart than that become one. */
static void ranges_join(struct ranges *ranges, nm apart)
{
	size_t count = 0;

	if (ranges->count > 1)
		sort(ranges->list, ranges->count, sizeof *ranges->list, by_low);
	for (size_t i = 0; i < ranges->count; i++) {
		struct range *last = count > 0 ? &ranges->list[count - 1] : NULL;

		if (last && ranges->list[i].low - last->high <= apart)
			last->high = nm_most(last->high, ranges->list[i].high);
		else
			ranges->list[count++] = ranges->list[i];
	}
	ranges->count = count;
}

/* What is in both; each is joined. */
static struct ranges ranges_common(const struct ranges *a, const struct ranges *b)
{
	struct ranges common = { NULL, 0, 0 };

	for (size_t i = 0, j = 0; i < a->count && j < b->count;) {
		const struct range *one = &a->list[i], *other = &b->list[j];

		ranges_add(&common, nm_most(one->low, other->low), nm_least(one->high,
			other->high));
		if (one->high < other->high)
			i++;
		else
			j++;
	}
	return common;
}

/* Whether what is built on a zone has to be taken up to get at what lies under it. */
static bool is_built(const struct survey *survey, const struct zone *zone)
{
	return zone->part == DIG_PATH || zone->part == DIG_PAD || zone_base(survey, zone) > 0;
}

/* Adds what of a piece lies along the leg, to `before` where it is left of the leg or above it, to
 * `after` where it is on the other side, to both where it is on both. */
static void add_piece(const struct cover_box *piece, const struct near_thing *leg,
	struct ranges *before, struct ranges *after)
{
	bool is_upright = leg->left == leg->right;
	nm line = is_upright ? leg->left : leg->top;
	nm near = is_upright ? piece->left : piece->top, far = is_upright ? piece->right :
		piece->bottom;
	nm low = nm_most(is_upright ? leg->top : leg->left, is_upright ? piece->top : piece->left);
	nm high = nm_least(is_upright ? leg->bottom : leg->right,
		is_upright ? piece->bottom : piece->right);

	if (near < line && line <= far)
		ranges_add(before, low, high);
	if (near <= line && line < far)
		ranges_add(after, low, high);
}

static struct ranges under_of(const struct basis *basis, const struct zones *zones,
	const struct cover *ground, const struct near_thing *leg)
{
	struct ranges before = { NULL, 0, 0 }, after = { NULL, 0, 0 }, under;

	for (size_t i = 0; i < ground->count && !stop_asked(); i++)
		if (is_built(basis->survey, &zones->list[ground->pieces[i].owner]))
			add_piece(&ground->pieces[i], leg, &before, &after);
	ranges_join(&before, 0);
	ranges_join(&after, 0);
	under = ranges_common(&before, &after);
	free(before.list);
	free(after.list);
	return under;
}

static struct sleeve sleeve_of(const struct near_thing *leg, const struct range *range)
{
	bool is_upright = leg->left == leg->right;

	return (struct sleeve){
		{ is_upright ? leg->left : range->low, is_upright ? range->low : leg->top },
		{ is_upright ? leg->left : range->high, is_upright ? range->high : leg->top },
		range->high - range->low };
}

const struct sleeve *sleeves_find(const struct basis *basis, const struct zones *zones,
	const struct cover *ground, const struct legs *legs, int *count)
{
	nm past = block_length(basis->allow, ALLOW_SLEEVE_PAST);
	struct sleeve *list = NULL;
	size_t found = 0, capacity = 0;

	for (size_t i = 0; i < legs->count && !stop_asked(); i++) {
		struct near_thing leg = near_leg(legs->items[i], basis->survey->cell, 0);
		struct ranges under = under_of(basis, zones, ground, &leg);
		bool is_upright = leg.left == leg.right;

		for (size_t j = 0; j < under.count; j++) {
			struct range *range = &under.list[j];

			range->low = nm_most(range->low - past, is_upright ? leg.top : leg.left);
			range->high = nm_least(range->high + past,
				is_upright ? leg.bottom : leg.right);
		}
		ranges_join(&under, 0);
		for (size_t j = 0; j < under.count; j++) {
			list = arena_grow(basis->arena, list, found, &capacity, sizeof *list);
			list[found++] = sleeve_of(&leg, &under.list[j]);
		}
		free(under.list);
	}
	*count = (int)found;
	return list;
}

static const struct figure figures[] = {
	{ "from_m", NULL, NULL, FIELD(SPOT, sleeve, from), .flags = ROW_KEY },
	{ "to_m", NULL, NULL, FIELD(SPOT, sleeve, to), .flags = ROW_KEY },
	{ "length_m", NULL, NULL, FIELD(LENGTH, sleeve, length) },
};
const struct figure_table sleeve_table = FIGURE_TABLE(sleeve, figures);
