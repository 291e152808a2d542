#include "takeoff/advice/advice.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/walls/room.h"
#include "takeoff/walls/wall.h"

#include <stdlib.h>

/* What every size tried for one bed needs. */
struct trial {
	struct arena *arena;
	struct side_book *book;
	struct masonry masonry;
	nm inside; /* least clear width between the walls */
};

static bool has_short_side(const struct trial *trial, const struct outline *outline, nm cell)
{
	struct side_place place = { 0, 0 };

	return room_short_side(outline, cell, trial->masonry.depth + trial->masonry.shortest,
		&place);
}

/* Whether some choice at its corners makes a side whole blocks in both courses. */
static bool can_be_whole(const struct masonry *masonry, struct side side)
{
	for (int choice = 0; choice < 4; choice++) {
		side.first_through = choice & 1;
		side.last_through = choice & 2;
		if (side_run(&side, masonry->depth, false).length % masonry->length == 0 &&
			side_run(&side, masonry->depth, true).length % masonry->length == 0)
			return true;
	}
	return false;
}

/* Whether every side can be whole: most sizes fail here, before a ring is laid. */
static bool may_be_whole(const struct trial *trial, const struct outline *outline, nm cell)
{
	for (int l = 0; l < outline->count; l++) {
		const struct loop *loop = &outline->loops[l];

		for (int i = 0; i < loop->count; i++)
			if (!can_be_whole(&trial->masonry, (struct side){
				.length = outline_side(loop, i) * cell,
				.first_reflex = loop->corners[i].reflex,
				.last_reflex = loop->corners[(i + 1) % loop->count].reflex }))
				return false;
	}
	return true;
}

/* Whether the ring bonds and is all whole blocks. There must be room for it. */
static bool is_whole(const struct trial *trial, const struct outline *outline, nm cell)
{
	struct ring_plan plan = { .arena = trial->arena, .book = trial->book, .outline = outline,
		.cell = cell, .masonry = trial->masonry };
	struct ring ring;

	return may_be_whole(trial, outline, cell) && ring_lay(&ring, &plan) && ring.cost == 0;
}

static bool rectangle_is_whole(const struct trial *trial, struct place size, nm cell)
{
	const struct corner corners[] = { { 0, 0, false }, { size.x, 0, false },
		{ size.x, size.y, false }, { 0, size.y, false } };
	const struct loop loop = { corners, 4, 2 * ((int64_t)size.x + size.y) };
	const struct outline outline = { &loop, 1 };
	int narrowest = least(size.x, size.y);

	return narrowest > 0 && narrowest * cell > 2 * trial->masonry.depth + trial->inside &&
		!has_short_side(trial, &outline, cell) && is_whole(trial, &outline, cell);
}

/* Tries sizes that differ by `off` cells in all. */
static void try_sizes(struct advice *out, const struct trial *trial, struct place now, int off,
	nm cell)
{
	for (int across = -off; across <= off && !stop_asked(); across++) {
		int down = off - abs(across);
		const struct place tries[] = { { now.x + across, now.y - down },
			{ now.x + across, now.y + down } };

		for (int i = down == 0; i < 2 && out->size_count < ADVICE_SIZES; i++)
			if (rectangle_is_whole(trial, tries[i], cell))
				out->sizes[out->size_count++] = tries[i];
	}
}

static bool has_room(const struct trial *trial, const struct room *room)
{
	nm depth = trial->masonry.depth;
	struct place at;

	return !has_short_side(trial, room->outline, room->survey->cell) &&
		room_for_walls(room, depth, &at) &&
		room_is_wide(room, 2 * depth + trial->inside, &at);
}

/* Tries the drawing with cells of another side, nearest first, in whole inches or steps of 25
 * mm. Returns 0 where none will do. */
static nm find_cell(const struct trial *trial, const struct room *room, enum units units)
{
	nm cell = room->survey->cell, step = units == UNITS_METRIC ? 25 * NM_PER_MM : NM_PER_INCH;
	struct survey survey = *room->survey;
	const struct room as_if = { &survey, room->region, room->outline };

	for (nm off = step; off <= cell && !stop_asked(); off += step) {
		const nm tries[] = { cell / step * step - off, cell / step * step + off };

		for (int i = 0; i < 2; i++) {
			survey.cell = tries[i];
			if (2 * tries[i] >= cell && tries[i] <= 2 * cell &&
				has_room(trial, &as_if) && is_whole(trial, room->outline, tries[i]))
				return tries[i];
		}
	}
	return 0;
}

void advice_find(struct advice *out, struct arena *arena, const struct plot *plot,
	const struct takeoff *takeoff, const struct wall *wall)
{
	const struct region *bed = &takeoff->survey.regions[wall->region];
	const struct trial trial = { arena, side_book_new(arena),
		wall_masonry(takeoff->allow, wall->bed),
		block_length(takeoff->allow, ALLOW_INSIDE) };
	struct place size = { bed->most.x - bed->left + 1, bed->most.y - bed->first_cell.y + 1 };
	struct outline outline;
	const struct room room = { &takeoff->survey, wall->region, &outline };

	*out = (struct advice){ .size_count = 0 };
	outline_trace(&outline, arena, plot, &takeoff->survey, wall->region);
	if (outline.count == 1 && outline.loops[0].count == 4)
		for (int off = 1; off <= ADVICE_REACH; off++)
			try_sizes(out, &trial, size, off, takeoff->survey.cell);
	out->cell = find_cell(&trial, &room, plot_units(plot));
}

/* ---- Beds wall to wall ----------------------------------------------------------------------- */

/* A pair of regions, the earlier first, and the sides of cells they share. */
struct pair {
	int one, other;
	int64_t shared;
};

enum { PAIRS_MOST = 64 };

struct pairs {
	struct pair list[PAIRS_MOST];
	int count;
};

static void pair_add(struct pairs *pairs, const struct takeoff *takeoff, int a, int b, int sides)
{
	const struct region *regions = takeoff->survey.regions;
	int one = least(a, b), other = most(a, b);

	if (a == b || one == NO_REGION || !region_is_raised(&regions[a]) ||
		!region_is_raised(&regions[b]))
		return;
	for (int i = 0; i < pairs->count; i++) {
		if (pairs->list[i].one == one && pairs->list[i].other == other) {
			pairs->list[i].shared += sides;
			return;
		}
	}
	if (pairs->count < PAIRS_MOST)
		pairs->list[pairs->count++] = (struct pair){ one, other, sides };
}

/* Neighbours within row y, and across its lower edge. */
static void row_pairs(struct pairs *pairs, const struct takeoff *takeoff, int y)
{
	const struct survey *survey = &takeoff->survey;
	size_t first = survey->row_runs[y], end = survey->row_runs[y + 1];
	size_t below = end, below_end = y + 1 < survey->rows ? survey->row_runs[y + 2] : end;

	for (size_t i = first + 1; i < end; i++)
		pair_add(pairs, takeoff, survey->runs[i - 1].region, survey->runs[i].region, 1);
	for (size_t i = first; i < end && below < below_end;) {
		const struct run *a = &survey->runs[i], *b = &survey->runs[below];
		int right = least(a->right, b->right);

		pair_add(pairs, takeoff, a->region, b->region, right - most(a->left, b->left));
		i += a->right == right;
		below += b->right == right;
	}
}

/* Blocks that a pair would save, 0 if none. */
static int64_t pair_saves(const struct pair *pair, const struct takeoff *takeoff)
{
	const struct wall *one = walls_find(&takeoff->walls, pair->one);
	const struct wall *other = walls_find(&takeoff->walls, pair->other);
	nm length;

	if (!one || !other || !size_equal(&one->block, &other->block))
		return 0;
	length = 2 * pair->shared * takeoff->survey.cell - 4 * one->block.across;
	return length <= 0 ? 0 : length / one->block.along * least(one->courses, other->courses);
}

int advice_joinings(struct joining joinings[JOININGS_MOST], const struct takeoff *takeoff)
{
	struct pairs pairs = { .count = 0 };
	int count = 0;

	for (int y = 0; y < takeoff->survey.rows && !stop_asked(); y++)
		row_pairs(&pairs, takeoff, y);
	for (int i = 0; i < pairs.count && count < JOININGS_MOST; i++) {
		int64_t blocks = pair_saves(&pairs.list[i], takeoff);

		if (blocks > 0)
			joinings[count++] = (struct joining){ pairs.list[i].one,
				pairs.list[i].other, blocks };
	}
	return count;
}
