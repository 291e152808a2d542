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

/* A leg, and what is built along it: left of it or above it, and on the other side. */
struct laid_leg {
	bool is_upright;
	nm line, low, high; /* as in a stretch */
	struct ranges before, after;
};

/* In the order of joined legs: those on one line end one after the other. */
struct laid_legs {
	struct laid_leg *list; /* owned */
	size_t count;
};

static struct laid_legs laid_of(const struct legs *legs, nm cell)
{
	struct laid_legs laid = { memory_new(legs->count, sizeof *laid.list), legs->count };

	for (size_t i = 0; i < legs->count; i++) {
		struct stretch s = leg_stretch(legs->items[i]);

		laid.list[i] = (struct laid_leg){ .is_upright = s.is_upright, .line = s.line * cell,
			.low = s.low * cell, .high = s.high * cell };
	}
	return laid;
}

static void laid_fini(struct laid_legs *laid)
{
	for (size_t i = 0; i < laid->count; i++) {
		free(laid->list[i].before.list);
		free(laid->list[i].after.list);
	}
	free(laid->list);
}

/* The first on the line that ends past `low`; where there is none, the first after that line. */
static size_t first_past(const struct laid_legs *laid, bool is_upright, nm line, nm low)
{
	size_t first = 0, end = laid->count;

	while (first < end) {
		size_t middle = first + (end - first) / 2;
		const struct laid_leg *leg = &laid->list[middle];
		int order = compare(leg->is_upright, is_upright);

		order = order ? order : compare(leg->line, line);
		if (order < 0 || (order == 0 && leg->high <= low))
			first = middle + 1;
		else
			end = middle;
	}
	return first;
}

/* Adds a piece to the level or upright legs along it: to `before` where it is left of the leg or
 * above it, to `after` where it is on the other side, to both where it is on both. */
static void add_piece(struct laid_legs *laid, const struct cover_box *piece, bool is_upright)
{
	nm near = is_upright ? piece->left : piece->top;
	nm far = is_upright ? piece->right : piece->bottom;
	nm low = is_upright ? piece->top : piece->left;
	nm high = is_upright ? piece->bottom : piece->right;
	size_t i = first_past(laid, is_upright, near, low);

	while (i < laid->count && laid->list[i].is_upright == is_upright &&
		laid->list[i].line <= far) {
		struct laid_leg *leg = &laid->list[i];
		nm from = nm_most(leg->low, low), to = nm_least(leg->high, high);

		if (from >= to) {
			i = first_past(laid, is_upright, leg->line + (leg->low >= high), low);
			continue;
		}
		if (near < leg->line)
			ranges_add(&leg->before, from, to);
		if (leg->line < far)
			ranges_add(&leg->after, from, to);
		i++;
	}
}

static void add_ground(struct laid_legs *laid, const struct survey *survey,
	const struct zones *zones, const struct cover *ground)
{
	for (size_t i = 0; i < ground->count && !stop_asked(); i++) {
		const struct cover_box *piece = &ground->pieces[i];

		if (!is_built(survey, &zones->list[piece->owner]))
			continue;
		add_piece(laid, piece, false);
		add_piece(laid, piece, true);
	}
}

/* Where sleeves lie along a leg. The caller frees the list. */
static struct ranges sleeved_of(struct laid_leg *leg, nm past)
{
	struct ranges sleeved;

	ranges_join(&leg->before, 0);
	ranges_join(&leg->after, 0);
	sleeved = ranges_common(&leg->before, &leg->after);
	for (size_t i = 0; i < sleeved.count; i++) {
		struct range *range = &sleeved.list[i];

		range->low = nm_most(range->low - past, leg->low);
		range->high = nm_least(range->high + past, leg->high);
	}
	ranges_join(&sleeved, 0);
	return sleeved;
}

static struct sleeve sleeve_of(const struct laid_leg *leg, const struct range *range)
{
	bool is_upright = leg->is_upright;

	return (struct sleeve){
		{ is_upright ? leg->line : range->low, is_upright ? range->low : leg->line },
		{ is_upright ? leg->line : range->high, is_upright ? range->high : leg->line },
		range->high - range->low };
}

const struct sleeve *sleeves_find(const struct basis *basis, const struct zones *zones,
	const struct cover *ground, const struct legs *legs, int *count)
{
	nm past = block_length(basis->allow, ALLOW_SLEEVE_PAST);
	struct laid_legs laid = laid_of(legs, basis->survey->cell);
	struct sleeve *list = NULL;
	size_t found = 0, capacity = 0;

	add_ground(&laid, basis->survey, zones, ground);
	for (size_t i = 0; i < laid.count && !stop_asked(); i++) {
		struct laid_leg *leg = &laid.list[i];
		struct ranges sleeved = sleeved_of(leg, past);

		for (size_t j = 0; j < sleeved.count; j++) {
			list = arena_grow(basis->arena, list, found, &capacity, sizeof *list);
			list[found++] = sleeve_of(leg, &sleeved.list[j]);
		}
		free(sleeved.list);
	}
	laid_fini(&laid);
	*count = (int)found;
	return list;
}

static const struct figure figures[] = {
	{ "from_m", NULL, NULL, FIELD(SPOT, sleeve, from), .flags = ROW_KEY },
	{ "to_m", NULL, NULL, FIELD(SPOT, sleeve, to), .flags = ROW_KEY },
	{ "length_m", NULL, NULL, FIELD(LENGTH, sleeve, length) },
};
const struct figure_table sleeve_table = FIGURE_TABLE(sleeve, figures);
