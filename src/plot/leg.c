#include "plot/leg.h"
#include "base/memory.h"
#include "base/number.h"
#include "base/sort.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

bool place_equal(struct place a, struct place b)
{
	return a.x == b.x && a.y == b.y;
}

int place_order(struct place a, struct place b)
{
	int order = compare(a.y, b.y);

	return order ? order : compare(a.x, b.x);
}

bool leg_is_straight(struct leg leg)
{
	return (leg.from.x == leg.to.x) != (leg.from.y == leg.to.y);
}

bool leg_is_upright(struct leg leg)
{
	return leg.from.x == leg.to.x;
}

struct leg leg_forward(struct leg leg)
{
	return (struct leg){ { least(leg.from.x, leg.to.x), least(leg.from.y, leg.to.y) },
		{ most(leg.from.x, leg.to.x), most(leg.from.y, leg.to.y) } };
}

int leg_length(struct leg leg)
{
	return abs(leg.to.x - leg.from.x) + abs(leg.to.y - leg.from.y);
}

bool leg_equal(struct leg a, struct leg b)
{
	return place_equal(a.from, b.from) && place_equal(a.to, b.to);
}

struct stretch leg_stretch(struct leg leg)
{
	struct leg f = leg_forward(leg);

	if (leg_is_upright(f))
		return (struct stretch){ true, f.from.x, f.from.y, f.to.y };
	return (struct stretch){ false, f.from.y, f.from.x, f.to.x };
}

static struct leg leg_of(const struct stretch *s)
{
	if (s->is_upright)
		return (struct leg){ { s->line, s->low }, { s->line, s->high } };
	return (struct leg){ { s->low, s->line }, { s->high, s->line } };
}

static bool is_one_line(const struct stretch *a, const struct stretch *b)
{
	return a->is_upright == b->is_upright && a->line == b->line;
}

int leg_overlap(struct leg a, struct leg b)
{
	struct stretch one = leg_stretch(a), other = leg_stretch(b);

	if (!is_one_line(&one, &other))
		return 0;
	return most(0, least(one.high, other.high) - most(one.low, other.low));
}

bool leg_covers(struct leg leg, struct leg part)
{
	return leg_overlap(leg, part) == leg_length(part);
}

bool leg_clip(struct leg leg, int columns, int rows, struct leg *within)
{
	struct leg clipped = { { held(leg.from.x, 0, columns), held(leg.from.y, 0, rows) },
		{ held(leg.to.x, 0, columns), held(leg.to.y, 0, rows) } };

	if (!leg_is_straight(clipped) || !leg_overlap(leg, clipped))
		return false;
	*within = clipped;
	return true;
}

void legs_fini(struct legs *legs)
{
	free(legs->items);
	*legs = LEGS_EMPTY;
}

void legs_add(struct legs *legs, struct leg leg)
{
	legs->items = memory_grow(legs->items, legs->count, &legs->capacity, sizeof *legs->items);
	legs->items[legs->count++] = leg;
}

void legs_add_all(struct legs *legs, const struct legs *more)
{
	for (size_t i = 0; i < more->count; i++)
		legs_add(legs, more->items[i]);
}

bool legs_equal(const struct legs *a, const struct legs *b)
{
	return a->count == b->count && (a->count == 0 ||
		memcmp(a->items, b->items, a->count * sizeof *a->items) == 0);
}

int64_t legs_length(const struct legs *legs)
{
	int64_t length = 0;

	for (size_t i = 0; i < legs->count; i++)
		length += leg_length(legs->items[i]);
	return length;
}

int stretch_compare(const struct stretch *a, const struct stretch *b)
{
	int order = compare(a->is_upright, b->is_upright);

	order = order ? order : compare(a->line, b->line);
	order = order ? order : compare(a->low, b->low);
	return order ? order : compare(a->high, b->high);
}

static int compare_legs(const void *a, const void *b)
{
	struct stretch one = leg_stretch(*(const struct leg *)a);
	struct stretch other = leg_stretch(*(const struct leg *)b);

	return stretch_compare(&one, &other);
}

/* A stretch in one number, in the order of stretches: a plot may have a million legs, and numbers
 * are sorted in a fraction of the time. Images of legs may lie as far outside of the plan as it is
 * wide. */
enum { PACKED_BITS = 18, PACKED_ZERO = 1 << (PACKED_BITS - 1), PACKED_MASK = 2 * PACKED_ZERO - 1 };

static uint64_t packed_part(int part)
{
	assert(part >= -PACKED_ZERO && part < PACKED_ZERO);
	return (uint64_t)(part + PACKED_ZERO);
}

static uint64_t packed(struct leg leg)
{
	struct stretch s = leg_stretch(leg);
	uint64_t line = (uint64_t)s.is_upright << PACKED_BITS | packed_part(s.line);

	return (line << PACKED_BITS | packed_part(s.low)) << PACKED_BITS | packed_part(s.high);
}

static int unpacked_part(uint64_t bits)
{
	return (int)(bits & PACKED_MASK) - PACKED_ZERO;
}

static struct leg unpacked(uint64_t bits)
{
	return leg_of(&(struct stretch){ bits >> 3 * PACKED_BITS,
		unpacked_part(bits >> 2 * PACKED_BITS), unpacked_part(bits >> PACKED_BITS),
		unpacked_part(bits) });
}

void legs_sort(struct legs *legs)
{
	uint64_t *list = memory_new(legs->count, sizeof *list);

	for (size_t i = 0; i < legs->count; i++)
		list[i] = packed(legs->items[i]);
	sort_numbers(list, legs->count);
	for (size_t i = 0; i < legs->count; i++)
		legs->items[i] = unpacked(list[i]);
	free(list);
}

void legs_join(struct legs *legs)
{
	size_t kept = 0;

	legs_sort(legs);
	for (size_t i = 0; i < legs->count; i++) {
		struct stretch next = leg_stretch(legs->items[i]), last = { 0 };

		if (kept)
			last = leg_stretch(legs->items[kept - 1]);
		if (kept && is_one_line(&last, &next) && next.low <= last.high) {
			last.high = most(last.high, next.high);
			legs->items[kept - 1] = leg_of(&last);
		} else {
			legs->items[kept++] = legs->items[i];
		}
	}
	legs->count = kept;
}

void legs_cut(struct legs *legs, struct leg off)
{
	struct stretch gone = leg_stretch(off);
	struct legs left = LEGS_EMPTY;

	for (size_t i = 0; i < legs->count; i++) {
		struct stretch before = leg_stretch(legs->items[i]), after = before;

		if (!leg_overlap(legs->items[i], off)) {
			legs_add(&left, legs->items[i]);
			continue;
		}
		before.high = gone.low;
		after.low = gone.high;
		if (before.high > before.low)
			legs_add(&left, leg_of(&before));
		if (after.high > after.low)
			legs_add(&left, leg_of(&after));
	}
	legs_fini(legs);
	*legs = left;
}

bool legs_cover(const struct legs *sorted, struct leg leg)
{
	size_t low = 0, high = sorted->count;
	struct stretch wanted = leg_stretch(leg);
	struct leg start;

	/* The last leg that starts no further on is the only one that can. */
	wanted.high = INT32_MAX;
	start = leg_of(&wanted);
	while (low < high) {
		size_t middle = low + (high - low) / 2;

		if (compare_legs(&sorted->items[middle], &start) <= 0)
			low = middle + 1;
		else
			high = middle;
	}
	return low > 0 && leg_covers(sorted->items[low - 1], leg);
}

/* Whether any two of the first `count` overlap. */
static bool some_overlap(const struct legs *legs, size_t count)
{
	struct legs first = LEGS_EMPTY;
	bool do_overlap = false;

	for (size_t i = 0; i < count; i++)
		legs_add(&first, legs->items[i]);
	legs_sort(&first);
	for (size_t i = 1; i < count && !do_overlap; i++)
		do_overlap = leg_overlap(first.items[i - 1], first.items[i]) > 0;
	legs_fini(&first);
	return do_overlap;
}

size_t legs_first_overlap(const struct legs *legs)
{
	size_t apart = 0, together = legs->count;

	if (!some_overlap(legs, legs->count))
		return legs->count;
	/* Of the first `apart` none overlap, of the first `together` some do. */
	while (together - apart > 1) {
		size_t middle = apart + (together - apart) / 2;

		if (some_overlap(legs, middle))
			together = middle;
		else
			apart = middle;
	}
	return together - 1;
}
