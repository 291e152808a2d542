#include "takeoff/advice/near.h"
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
	nm cell;   /* of the plan as it is */
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
	nm width = room_width(trial->masonry.depth, trial->inside);

	return size.x > 0 && size.y > 0 && least(size.x, size.y) * cell >= width &&
		!has_short_side(trial, &outline, cell) && is_whole(trial, &outline, cell);
}

/* Tries sizes that differ by `off` cells in all; returns how many there are then. */
static int try_sizes(struct place sizes[], int count, int most, const struct trial *trial,
	struct place now, int off)
{
	for (int across = -off; across <= off && !stop_asked(); across++) {
		int down = off - abs(across);
		const struct place tries[] = { { now.x + across, now.y - down },
			{ now.x + across, now.y + down } };

		for (int i = down == 0; i < 2 && count < most; i++)
			if (rectangle_is_whole(trial, tries[i], trial->cell))
				sizes[count++] = tries[i];
	}
	return count;
}

static bool has_room(const struct trial *trial, const struct room *room)
{
	nm depth = trial->masonry.depth;
	struct place at;

	return !has_short_side(trial, room->outline, room->survey->cell) &&
		room_for_walls(room, depth, &at) &&
		room_is_wide(room, room_width(depth, trial->inside), &at);
}

/* Tries the drawing with cells of another side, nearest first, in whole inches or steps of 25
 * mm. Returns 0 where none will do. */
static nm find_cell(const struct trial *trial, const struct room *room, enum units units)
{
	nm cell = room->survey->cell, step = units == UNITS_METRIC ? 25 * NM_PER_MM : NM_PER_INCH;
	struct survey survey = *room->survey;
	const struct room as_if = { &survey, room->region, room->outline };
	nm below = (cell - 1) / step * step, above = cell / step * step + step;
	bool is_above_nearer = above - cell < cell - below;

	for (nm off = 0; off <= cell && !stop_asked(); off += step) {
		const nm tries[] = { below - off, above + off };

		for (int j = 0; j < 2; j++) {
			int i = is_above_nearer ? 1 - j : j;

			survey.cell = tries[i];
			if (2 * tries[i] >= cell && tries[i] <= 2 * cell &&
				has_room(trial, &as_if) && is_whole(trial, room->outline, tries[i]))
				return tries[i];
		}
	}
	return 0;
}

static struct trial trial_of(struct arena *arena, const struct takeoff *takeoff,
	const struct wall *wall)
{
	return (struct trial){ arena, side_book_new(arena), wall_masonry(takeoff->allow, wall->bed),
		block_length(takeoff->allow, ALLOW_INSIDE), takeoff->survey.cell };
}

int near_sizes(struct place sizes[], int most, struct arena *arena, const struct takeoff *takeoff,
	const struct wall *wall)
{
	const struct region *bed = &takeoff->survey.regions[wall->region];
	const struct trial trial = trial_of(arena, takeoff, wall);
	struct place size = { bed->most.x - bed->left + 1, bed->most.y - bed->first_cell.y + 1 };
	int count = 0;

	if (bed->cells != size.x * size.y)
		return 0;
	for (int off = 1; off <= NEAR_REACH; off++)
		count = try_sizes(sizes, count, most, &trial, size, off);
	return count;
}

nm near_cell(struct arena *arena, const struct takeoff *takeoff, const struct wall *wall)
{
	const struct trial trial = trial_of(arena, takeoff, wall);
	struct outline outline;
	const struct room room = { &takeoff->survey, wall->region, &outline };

	outline_trace(&outline, arena, &takeoff->plot, &takeoff->survey, wall->region);
	return find_cell(&trial, &room, plot_units(&takeoff->plot));
}
