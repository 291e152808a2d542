#include "takeoff/walls/room.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"

#include <stdlib.h>

/* A reflex corner: a grid point, and by sign the direction of the quarter outside the bed. */
struct nook {
	int x, y, band;
	int out_x, out_y;
};

/* Sorted by band, then x. Bands are `reach` grid steps high, the distance at which two corners
 * no longer clash. */
struct nooks {
	struct nook *list;
	size_t count, capacity;
	int reach;
};

nm room_width(nm depth, nm inside)
{
	return 2 * depth + nm_most(inside, 1);
}

bool room_short_side(const struct outline *outline, nm cell, nm least, struct side_place *place)
{
	for (; place->loop < outline->count && !stop_asked(); place->loop++, place->side = 0) {
		const struct loop *loop = &outline->loops[place->loop];

		for (; place->side < loop->count; place->side++)
			if (outline_side(loop, place->side) * cell < least)
				return true;
	}
	return false;
}

/* The bed is to the right of a side: below one that runs right, left of one that runs down. */
struct place room_side_cell(const struct outline *outline, struct side_place place)
{
	const struct loop *loop = &outline->loops[place.loop];
	const struct corner *a = &loop->corners[place.side];
	const struct corner *b = &loop->corners[(place.side + 1) % loop->count];

	return (struct place){ least(a->x, b->x) - (b->y > a->y),
		least(a->y, b->y) - (b->x < a->x) };
}

struct rectangle room_side_cells(const struct outline *outline, struct side_place place)
{
	const struct loop *loop = &outline->loops[place.loop];
	const struct corner *a = &loop->corners[place.side];
	const struct corner *b = &loop->corners[(place.side + 1) % loop->count];
	struct place first = room_side_cell(outline, place);

	return (struct rectangle){ first.x, first.y, first.x + most(abs(b->x - a->x) - 1, 0),
		first.y + most(abs(b->y - a->y) - 1, 0) };
}

bool room_is_wide(const struct room *room, nm width, struct place *at)
{
	nm cell = room->survey->cell;
	nm side = quotient_up(width, cell);

	return outline_is_wide(room->survey, room->region, side < 1 ? 1 : (int)side, at);
}

/* Along a loop the outside is on the left, and a reflex corner turns left: the outside lies
 * back along the side that comes in and ahead along the one that leaves. */
static void add_nooks(struct nooks *nooks, const struct loop *loop)
{
	for (int i = 0; i < loop->count && !stop_asked(); i++) {
		const struct corner *at = &loop->corners[i];
		const struct corner *before = &loop->corners[(i + loop->count - 1) % loop->count];
		const struct corner *next = &loop->corners[(i + 1) % loop->count];

		if (!at->reflex)
			continue;
		nooks->list = memory_grow(nooks->list, nooks->count, &nooks->capacity,
			sizeof *nooks->list);
		nooks->list[nooks->count++] = (struct nook){ at->x, at->y, at->y / nooks->reach,
			sign(before->x - at->x) + sign(next->x - at->x),
			sign(before->y - at->y) + sign(next->y - at->y) };
	}
}

static int compare_nooks(const void *a, const void *b)
{
	const struct nook *one = a, *other = b;
	int order = compare(one->band, other->band);

	order = order ? order : compare(one->x, other->x);
	return order ? order : compare(one->y, other->y);
}

/* Whether b lies inside of a and a inside of b, less than reach away both ways. */
static bool nooks_clash(const struct nook *a, const struct nook *b, int reach)
{
	int across = (a->x - b->x) * a->out_x, down = (a->y - b->y) * a->out_y;

	return b->out_x == -a->out_x && b->out_y == -a->out_y && across >= 0 && across < reach &&
		down >= 0 && down < reach;
}

/* Whether a corner clashes with one of a band. *low, the first of the band within reach in x,
 * moves right with a. */
static bool clashes_in_band(const struct nooks *nooks, const struct nook *a, int band, size_t *low)
{
	const struct nook *end = nooks->list + nooks->count;
	const struct nook *b = nooks->list + *low;

	while (b < end && (b->band < band || (b->band == band && b->x <= a->x - nooks->reach)))
		b++;
	*low = (size_t)(b - nooks->list);
	for (; b < end && b->band == band && b->x < a->x + nooks->reach; b++)
		if (nooks_clash(a, b, nooks->reach))
			return true;
	return false;
}

/* Corners that clash are in the same band or in neighbouring ones. *at is the cell within the
 * first such corner, in reading order. */
static bool find_clash(const struct nooks *nooks, struct place *at)
{
	size_t same = 0, below = 0;
	bool found = false;

	for (size_t i = 0; i < nooks->count && !stop_asked(); i++) {
		const struct nook *a = &nooks->list[i];
		struct place cell = { a->x - (a->out_x > 0), a->y - (a->out_y > 0) };

		if (!clashes_in_band(nooks, a, a->band, &same) &&
			!clashes_in_band(nooks, a, a->band + 1, &below))
			continue;
		if (!found || cell.y < at->y || (cell.y == at->y && cell.x < at->x))
			*at = cell;
		found = true;
	}
	return found;
}

bool room_for_walls(const struct room *room, nm depth, struct place *at)
{
	nm cell = room->survey->cell;
	struct nooks nooks = { .reach = (int)quotient_up(2 * depth, cell) };
	bool clashes;

	if (!room_is_wide(room, room_width(depth, 0), at))
		return false;
	for (int i = 0; i < room->outline->count; i++)
		add_nooks(&nooks, &room->outline->loops[i]);
	if (nooks.count == 0)
		return true;
	sort(nooks.list, nooks.count, sizeof *nooks.list, compare_nooks);
	clashes = find_clash(&nooks, at);
	free(nooks.list);
	return !clashes;
}
